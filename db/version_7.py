"""Version 7 of the schema, as it was shipped: never edited, only followed by further versions.

No query reads the index of an exercise's sets, and each set that is written had to go into it. It
only served the removal of an exercise, which is refused anyway while sessions hold it.
"""

from __future__ import annotations

STATEMENTS = ("DROP INDEX set_of_exercise",)
