"""Version 4 of the schema, as it was shipped: never edited, only followed by further versions.

The index of a line's sets holds all that counting by week reads, so that it never goes to the
table. That of an exercise's sets only serves its removal, which needs no more than its key.
"""

from __future__ import annotations

STATEMENTS = (
    "DROP INDEX set_of_line",
    "DROP INDEX set_of_exercise",
    "CREATE INDEX set_of_line ON set_done (line_id, warm_up, day, exercise, reps, seconds, load_g)",
    "CREATE INDEX set_of_exercise ON set_done (exercise)",
)
