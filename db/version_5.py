"""Version 5 of the schema, as it was shipped: never edited, only followed by further versions.

A goal may be a load for so many repetitions, as it was said: ``value`` is then the load as it is
typed, and ``reps`` counts. Goals from before have none: their value is the maximum itself.
"""

from __future__ import annotations

STATEMENTS = ("ALTER TABLE goal ADD COLUMN reps INTEGER",)
