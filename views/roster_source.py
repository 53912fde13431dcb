"""The desk kept: everybody's row, from kept briefs at once, the others drawn up between events."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date
from time import perf_counter
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer, Signal

from db.changes import Changes, Kind
from db.errors import NotFound, StoreError

if TYPE_CHECKING:
    from db.repository import Repository
    from desktop.planning.desk import DeskRow
    from desktop.planning.history import Library

_SLICE_S = 0.03
_TOLD_EVERY_S = 0.3
_AT_ONCE = 2
_SHARED = frozenset({Kind.EXERCISE, Kind.PROGRAM, Kind.SETTINGS})


class RosterSource(QObject):
    """Rows by need. `begin` gives what is kept at once and draws up the rest in slices between
    events; ``went_on`` tells of that now and then, and once more when everybody is known.
    """

    went_on = Signal()

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._repository: Repository | None = None
        self._library: Library | None = None
        self._today = date.min
        self._rows: dict[int, DeskRow] = {}
        self._waiting: dict[int, None] = {}
        self._sorted: tuple[DeskRow, ...] | None = None
        self._told = 0.0
        self._timer = QTimer(self)
        self._timer.setInterval(0)
        self._timer.timeout.connect(self._slice)

    @property
    def complete(self) -> bool:
        """Whether everybody is known with all cautions."""
        return not self._waiting

    @property
    def progress(self) -> tuple[int, int]:
        """How many of how many are known."""
        return len(self._rows) - len(self._waiting), len(self._rows)

    def begin(self, repository: Repository, today: date) -> None:
        """Read what is kept, and draw up the rest when there is time."""
        self._repository, self._today, self._library = repository, today, None
        self._read_kept()

    def rows(self) -> tuple[DeskRow, ...]:
        """Everybody by need, as far as known."""
        if self._sorted is None:
            from desktop.planning.desk import by_need

            self._sorted = by_need(self._rows.values())
        return self._sorted

    def row(self, trainee_id: int | None) -> DeskRow | None:
        """One trainee's row, drawn up now where it was not yet."""
        if trainee_id in self._waiting and trainee_id is not None:
            self._draw_up(trainee_id)
        return self._rows.get(trainee_id) if trainee_id is not None else None

    def forget(self, changes: Changes) -> None:
        """Something was written: those whom ``changes`` touched are looked at again, at once
        where they are few.
        """
        if self._repository is None or not changes.kinds:
            return
        if changes.kinds & _SHARED:
            self._library = None
        if not changes.trainees or changes.kinds & _SHARED:
            self._read_kept()
            return
        self._wait_for(changes.trainees)
        if len(changes.trainees) <= _AT_ONCE:
            for trainee_id in changes.trainees:
                self._draw_up(trainee_id)

    def _read_kept(self) -> None:
        """What is known of those whose brief is gone stands until they are looked at again."""
        from desktop.planning.desk import kept_rows

        assert self._repository is not None
        before, self._sorted = self._rows, None
        rows, missing = kept_rows(self._repository, self._shared(), self._today)
        self._rows = rows | {each: before[each] for each in missing if each in before}
        self._waiting = {}
        unknown = set(missing)
        self._wait_for(  # those at the top first
            each
            for row in self.rows()
            if (each := row.entry.trainee.id) is not None and each in unknown
        )

    def _wait_for(self, trainee_ids: Iterable[int]) -> None:
        self._waiting |= dict.fromkeys(trainee_ids)
        if self._waiting and not self._timer.isActive():
            self._told = perf_counter()
            self._timer.start()

    def _draw_up(self, trainee_id: int) -> None:
        from desktop.planning.desk import row_of

        assert self._repository is not None
        self._waiting.pop(trainee_id, None)
        self._sorted = None
        try:
            row = row_of(self._repository, self._shared(), trainee_id, self._today)
        except NotFound:
            self._rows.pop(trainee_id, None)
            return
        if row.entry.trainee.archived:
            self._rows.pop(trainee_id, None)
        else:
            self._rows[trainee_id] = row

    def _shared(self) -> Library:
        if self._library is None:
            from desktop.planning.history import read_library

            assert self._repository is not None
            self._library = read_library(self._repository)
        return self._library

    def _slice(self) -> None:
        assert self._repository is not None
        if self._repository.database.closed:
            self._timer.stop()
            return
        started = perf_counter()
        try:
            while self._waiting and perf_counter() - started < _SLICE_S:
                self._draw_up(next(iter(self._waiting)))
        except StoreError:  # the file cannot be read: whoever reads it next says so
            self._waiting = {}
        if not self._waiting:
            self._timer.stop()
        if not self._waiting or perf_counter() - self._told > _TOLD_EVERY_S:
            self._told = perf_counter()
            self.went_on.emit()
