"""The roster kept: read once, and after an edit read again only for those it touched."""

from __future__ import annotations

from datetime import date
from time import perf_counter

from PySide6.QtCore import QObject, QTimer, Signal

from db.changes import Changes, Kind
from db.errors import NotFound
from db.repository import Repository
from desktop.planning.roster import (
    RosterEntry,
    by_need,
    roster,
    roster_entry,
    roster_without_cautions,
)

_SLICE_S = 0.03
_SHARED = frozenset({Kind.EXERCISE, Kind.PROGRAM, Kind.SETTINGS})


class RosterSource(QObject):
    """Entries by need. `begin` gives them without cautions at once and completes them in slices
    between events; ``completed`` follows. `entries` completes them at once where nothing began.
    """

    completed = Signal()

    def __init__(self, repository: Repository, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._repository = repository
        self._today: date | None = None
        self._entries: dict[int, RosterEntry] = {}
        self._waiting: list[int] = []
        self._timer = QTimer(self)
        self._timer.setInterval(0)
        self._timer.timeout.connect(self._slice)

    @property
    def complete(self) -> bool:
        """Whether everybody was read with cautions."""
        return not self._waiting

    def entries(self, today: date) -> tuple[RosterEntry, ...]:
        """Everybody by need, as far as known."""
        if self._today != today:
            self._today = today
            self._keep(roster(self._repository, today))
        return by_need(self._entries.values())

    def begin(self, today: date) -> None:
        """Read what one look gives, and the rest when there is time."""
        self._today = today
        self._keep(roster_without_cautions(self._repository, today))
        self._waiting = list(self._entries)
        self._timer.start()

    def forget(self, changes: Changes) -> None:
        """Read again those whom ``changes`` touched."""
        if self._today is None:
            return
        if not changes.trainees or changes.kinds & _SHARED:
            if changes.kinds:
                self._today = None
                self._waiting = []
                self._timer.stop()
            return
        for trainee_id in changes.trainees:
            self._read(trainee_id)

    def _keep(self, entries: tuple[RosterEntry, ...]) -> None:
        self._entries = {e.trainee.id: e for e in entries if e.trainee.id is not None}

    def _read(self, trainee_id: int) -> None:
        assert self._today is not None
        try:
            entry = roster_entry(self._repository, trainee_id, self._today)
        except NotFound:
            self._entries.pop(trainee_id, None)
            return
        if entry.trainee.archived:
            self._entries.pop(trainee_id, None)
        else:
            self._entries[trainee_id] = entry

    def _slice(self) -> None:
        started = perf_counter()
        while self._waiting and perf_counter() - started < _SLICE_S:
            self._read(self._waiting.pop(0))
        if not self._waiting:
            self._timer.stop()
            self.completed.emit()
