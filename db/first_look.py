"""A first look into a data file: who is in it, for the first paint, from one query.

It takes no more than the standard library, because the store itself takes longer to import than a
window to show. It only looks: whatever is out of the ordinary is left to `Database.open`.
"""

from __future__ import annotations

import sqlite3
from contextlib import closing
from datetime import date
from pathlib import Path
from typing import NamedTuple

from db.migrations import APPLICATION_ID, LADDER, version_of
from desktop.training.name_order import NameKey, name_key

_QUERY = """
SELECT t.id, t.name, (SELECT max(day) FROM session s WHERE s.trainee_id = t.id), b.next_days
FROM trainee t LEFT JOIN brief b
ON b.trainee_id = t.id AND b.first <= :today AND b.until > :today
WHERE NOT t.archived
"""


class Glimpse(NamedTuple):
    """One trainee at first sight: the last session and, where a brief tells it, the next training
    day (``looked_up`` False: not known yet).
    """

    trainee_id: int
    name: str
    last: date | None = None
    next: date | None = None
    looked_up: bool = False

    def is_due(self, today: date) -> bool:
        """Whether today is a training day that is not done yet."""
        return self.next == today


def first_look(path: Path, today: date) -> tuple[Glimpse, ...] | None:
    """Everybody who is not archived, those due today first, then by next day and name; None where
    the file is missing, of another version or cannot be read like that.
    """
    if not path.is_file():
        return None
    try:
        with closing(sqlite3.connect(f"{path.resolve().as_uri()}?mode=ro", uri=True)) as connection:
            (application,) = connection.execute("PRAGMA application_id").fetchone()
            if application != APPLICATION_ID or version_of(connection) != len(LADDER):
                return None
            rows = connection.execute(_QUERY, {"today": today.toordinal()}).fetchall()
    except sqlite3.Error:
        return None
    return tuple(sorted((_glimpse(row, today) for row in rows), key=_order))


def _glimpse(row: tuple[int, str, int | None, str | None], today: date) -> Glimpse:
    trainee_id, name, last, next_days = row
    looked_up = next_days is not None and next_days != "?"
    least = today.toordinal() + (last == today.toordinal())
    days = (int(day) for day in (next_days or "").split(",") if looked_up and day)
    following = next((day for day in days if day >= least), None)
    return Glimpse(
        trainee_id,
        name,
        date.fromordinal(last) if last is not None else None,
        date.fromordinal(following) if following is not None else None,
        looked_up,
    )


def _order(glimpse: Glimpse) -> tuple[date, NameKey]:
    return (glimpse.next or date.max, name_key(glimpse.name))
