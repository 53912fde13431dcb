"""The way from one session to the next and the one before: training days, sessions on record."""

from __future__ import annotations

from PySide6.QtCore import QObject, Signal

from desktop.planning.session_days import (
    session_after,
    session_before,
    training_day_after,
    training_day_before,
)
from views.record import Record
from views.session_desk import Opened


class SessionWay(QObject):
    """``found(day, session_id)``; None: whatever stands on the day. Where there is nothing further
    the coach is told.
    """

    found = Signal(object, object)

    def __init__(self, record: Record) -> None:
        super().__init__(record)
        self._record = record

    def training_day(self, opened: Opened | None, *, after: bool) -> None:
        """The training day after or before, planned or done."""
        if opened is None:
            return
        step = training_day_after if after else training_day_before
        day = step(opened.history, opened.draft.day)
        if day is None:
            self._record.say(self.tr("There is no further training day."))
        else:
            self.found.emit(day, None)

    def session(self, opened: Opened | None, *, after: bool) -> None:
        """The session on record after or before."""
        if opened is None:
            return
        step = session_after if after else session_before
        session = step(opened.history, opened.draft.day, opened.draft.entry)
        if session is None:
            self._record.say(self.tr("No further session is on record."))
        else:
            self.found.emit(session.day, session.id)
