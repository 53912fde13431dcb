"""Places on the days of trainees: two sessions never share one, whatever comes at once."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from datetime import date

from db.database import Database
from desktop.training.session import Session

_Day = tuple[int, date]


class DaysTaken:
    """Which places of which days are taken, while sessions are written one behind the other.

    ``sessions`` tell the trainees and days that it is about.
    """

    def __init__(self, database: Database, sessions: Iterable[Session]) -> None:
        spans: dict[int, tuple[date, date]] = {}
        for session in sessions:
            first, last = spans.get(session.trainee_id, (session.day, session.day))
            spans[session.trainee_id] = min(first, session.day), max(last, session.day)
        self._taken: dict[_Day, dict[int, int]] = {}
        self._new = 0
        for trainee_id, (first, last) in spans.items():
            for identity, day, entry in database.execute(
                "SELECT id, day, entry FROM session WHERE trainee_id = ? AND day BETWEEN ? AND ?",
                (trainee_id, first.toordinal(), last.toordinal()),
            ):
                self._on((trainee_id, date.fromordinal(day)))[identity] = entry

    def stays(self, session: Session) -> Session:
        """The session as it is, in its place."""
        self._put(session)
        return session

    def behind_others(self, session: Session, before: Session | None = None) -> Session:
        """The session, behind all others of its day where its place is taken; ``before``: where it
        stood until now.
        """
        if before is not None:
            self._on((before.trainee_id, before.day)).pop(before.id or 0, None)
        taken = self._on((session.trainee_id, session.day)).values()
        if session.entry in taken:
            session = replace(session, entry=max(taken) + 1)
        return self.stays(session)

    def _put(self, session: Session) -> None:
        self._new -= session.id is None
        place = self._new if session.id is None else session.id
        self._on((session.trainee_id, session.day))[place] = session.entry

    def _on(self, day: _Day) -> dict[int, int]:
        return self._taken.setdefault(day, {})
