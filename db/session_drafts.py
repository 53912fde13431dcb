"""Drafts of sessions in the data file: what is being typed, kept at every field until it is saved.

What a draft holds is text of the caller's; here it is only kept. Writing one does not wait for the
disk: it outlives the end of the process, whenever that comes, and costs typing nothing. What is
saved for good is written through as ever.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from db.database import Database


@dataclass(frozen=True, slots=True)
class DraftKey:
    """Whose session of which day; ``session_id`` None: one that is not on record yet."""

    trainee_id: int
    day: date
    session_id: int | None = None

    @property
    def row(self) -> tuple[int, int, int]:
        """The key as it stands in the table."""
        return self.trainee_id, self.day.toordinal(), self.session_id or 0


@dataclass(frozen=True, slots=True)
class StoredDraft:
    """One draft; ``at_work``: it stood in the form when it was written."""

    key: DraftKey
    text: str
    at_work: bool = False


def keep_draft(database: Database, draft: StoredDraft) -> None:
    """Write a draft over the one before. Raises FileBusy at once while another process writes."""
    with database.without_waiting():
        put_draft(database, draft)


def put_draft(database: Database, draft: StoredDraft) -> None:
    """Write a draft over the one before, as a part of the transaction that runs."""
    database.execute(
        "INSERT INTO session_draft (trainee_id, day, session_id, at_work, value)"
        " VALUES (?, ?, ?, ?, ?) ON CONFLICT (trainee_id, day, session_id)"
        " DO UPDATE SET at_work = excluded.at_work, value = excluded.value",
        (*draft.key.row, int(draft.at_work), draft.text),
    )


def drop_draft(database: Database, key: DraftKey) -> None:
    """Take a draft away; where there is none, nothing is written."""
    where = "trainee_id = ? AND day = ? AND session_id = ?"
    if database.execute(f"SELECT 1 FROM session_draft WHERE {where}", key.row):
        database.execute(f"DELETE FROM session_draft WHERE {where}", key.row)


def draft_of(database: Database, key: DraftKey) -> StoredDraft | None:
    """The draft under ``key``."""
    condition = "trainee_id = ? AND day = ? AND session_id = ?"
    return next(iter(_where(database, condition, key.row)), None)


def drafts(database: Database) -> tuple[StoredDraft, ...]:
    """All drafts, by trainee and day."""
    return _where(database, "1 = 1", ())


def drafts_of(database: Database, trainee_id: int) -> tuple[StoredDraft, ...]:
    """All drafts of one trainee, by day."""
    return _where(database, "trainee_id = ?", (trainee_id,))


def _where(
    database: Database, condition: str, parameters: tuple[int, ...]
) -> tuple[StoredDraft, ...]:
    rows = database.execute(
        "SELECT trainee_id, day, session_id, value, at_work FROM session_draft"
        f" WHERE {condition} ORDER BY trainee_id, day, session_id",
        parameters,
    )
    return tuple(
        StoredDraft(
            DraftKey(trainee_id, date.fromordinal(day), session_id or None), text, bool(at_work)
        )
        for trainee_id, day, session_id, text, at_work in rows
    )
