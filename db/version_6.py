"""Version 6 of the schema, as it was shipped: never edited, only followed by further versions.

The weekdays of an assignment may change from a day on: ``moves`` holds which, as JSON. Assignments
from before have none.
"""

from __future__ import annotations

STATEMENTS = ("ALTER TABLE assignment ADD COLUMN moves TEXT NOT NULL DEFAULT '[]'",)
