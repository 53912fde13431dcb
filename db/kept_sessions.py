"""Sessions kept in memory: those of the trainees last looked at, read again only where written.

Every answer about a trainee rests on all their sessions, and after one edit all but one of these
are as they were.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field
from typing import Final

from db.database import Database
from db.sessions import sessions_where
from db.shelf import in_pieces
from desktop.training.session import Session

MOST_TRAINEES: Final = 4
"""Ten years of a trainee take about 10 MB."""


@dataclass(slots=True)
class _Kept:
    """One trainee's sessions in order, and the ids of those that are no longer sure."""

    sessions: tuple[Session, ...]
    unsure: set[int] = field(default_factory=set)


class KeptSessions:
    """The sessions of a data file by trainee, as far as `forget` and `doubt` leave them."""

    def __init__(self, database: Database) -> None:
        self._database = database
        self._kept: dict[int, _Kept] = {}

    def forget(self) -> None:
        """Anything may have been written."""
        self._kept.clear()

    def doubt(self, session_ids: Iterable[int]) -> None:
        """These sessions were written."""
        for kept in self._kept.values():
            kept.unsure.update(session_ids)

    def of(self, trainee_id: int) -> tuple[Session, ...]:
        """All sessions of the trainee by day and entry. As long as nothing is written, the same
        objects each time.
        """
        kept = self._kept.pop(trainee_id, None)
        if kept is None:
            kept = _Kept(all_sessions(self._database, trainee_id))
        elif kept.unsure:
            kept = _Kept(self._read_again(trainee_id, kept))
        self._kept[trainee_id] = kept  # the last one looked at
        while len(self._kept) > MOST_TRAINEES:
            del self._kept[next(iter(self._kept))]
        return kept.sessions

    def _read_again(self, trainee_id: int, kept: _Kept) -> tuple[Session, ...]:
        sure = [session for session in kept.sessions if session.id not in kept.unsure]
        for piece in in_pieces(kept.unsure):
            marks = ", ".join("?" * len(piece))
            condition = f"s.trainee_id = ? AND s.id IN ({marks})"
            sure += sessions_where(self._database, condition, (trainee_id, *piece))
        return tuple(sorted(sure, key=lambda one: (one.day, one.entry, one.id or 0)))


def all_sessions(database: Database, trainee_id: int) -> tuple[Session, ...]:
    """All sessions of the trainee by day and entry, read now."""
    return sessions_where(database, "s.trainee_id = ?", (trainee_id,))
