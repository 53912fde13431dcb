"""Sessions kept in memory: those of the trainees last looked at, read again only where written.

Every answer about a trainee rests on all their sessions, and after one edit all but one of these
are as they were. A temporary trigger notes which sessions this connection writes, whatever the
way; where another connection has written, everything is forgotten.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from threading import get_ident
from typing import Final

from db.database import Database
from db.sessions import sessions_where
from db.shelf import in_pieces
from desktop.training.session import Session

MOST_TRAINEES: Final = 4
"""Ten years of a trainee take about 10 MB."""

_WATCH: Final = (
    "CREATE TEMP TABLE touched_session (id INTEGER PRIMARY KEY)",
    *(
        f"CREATE TEMP TRIGGER session_{event.lower()} AFTER {event} ON main.session"
        f" BEGIN INSERT OR IGNORE INTO touched_session VALUES ({row}.id); END"
        for event, row in (("INSERT", "new"), ("UPDATE", "new"), ("DELETE", "old"))
    ),
)


@dataclass(slots=True)
class _Kept:
    """One trainee's sessions in order, and the ids of those that are no longer sure."""

    sessions: tuple[Session, ...]
    unsure: set[int] = field(default_factory=set)


class KeptSessions:
    """The sessions of a data file by trainee. Of use to the thread that made it only; another one
    reads what is there and keeps nothing. So does a transaction that wrote sessions itself, since
    it may yet be undone.
    """

    def __init__(self, database: Database) -> None:
        self._database = database
        self._thread = get_ident()
        self._connection: object = None
        self._version = -1
        self._kept: dict[int, _Kept] = {}

    def watch(self) -> None:
        """Begin to note what is written; not within a transaction, which could undo that."""
        if get_ident() != self._thread or self._database.in_transaction:
            return
        connection = self._database.connection
        if connection is not self._connection:
            self._kept.clear()
            self._connection = connection
            for statement in _WATCH:
                self._database.execute(statement)

    def of(self, trainee_id: int) -> tuple[Session, ...]:
        """All sessions of the trainee by day and entry. As long as nothing is written, the same
        objects each time.
        """
        self.watch()
        if not self._look_out():
            return self._read(trainee_id)
        kept = self._kept.pop(trainee_id, None)
        if kept is None:
            kept = _Kept(self._read(trainee_id))
        elif kept.unsure:
            kept = _Kept(self._read_again(trainee_id, kept))
        self._kept[trainee_id] = kept  # the last one looked at
        while len(self._kept) > MOST_TRAINEES:
            del self._kept[next(iter(self._kept))]
        return kept.sessions

    def _look_out(self) -> bool:
        """Learn what was written since the last time; whether what is read now may be kept."""
        if get_ident() != self._thread or self._database.connection is not self._connection:
            return False
        version = self._database.data_version
        if version != self._version:
            self._kept.clear()
        self._version = version
        rows = self._database.execute("SELECT id FROM touched_session")
        if rows and self._database.in_transaction:
            return False
        if rows:
            self._database.execute("DELETE FROM touched_session")
        for kept in self._kept.values():
            kept.unsure.update(identity for (identity,) in rows)
        return True

    def _read(self, trainee_id: int) -> tuple[Session, ...]:
        return sessions_where(self._database, "s.trainee_id = ?", (trainee_id,))

    def _read_again(self, trainee_id: int, kept: _Kept) -> tuple[Session, ...]:
        sure = [session for session in kept.sessions if session.id not in kept.unsure]
        for piece in in_pieces(kept.unsure):
            marks = ", ".join("?" * len(piece))
            condition = f"s.trainee_id = ? AND s.id IN ({marks})"
            sure += sessions_where(self._database, condition, (trainee_id, *piece))
        return tuple(sorted(sure, key=lambda one: (one.day, one.entry, one.id or 0)))
