"""Where a draft comes from: solved beside the window, given up at any time."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QObject, QRunnable, Qt, QThreadPool, Signal

from desktop.planning.drafts import Draft, GoingOn, Wish

Work = Callable[[GoingOn], Draft]


class DraftSource(QObject):
    """`want` starts the work; ``going_on(Wish | None)`` tells what is tried (None: all as wished),
    then ``made(Draft)`` follows, or ``failed(Exception)``. Nothing more comes after `give_up`.
    """

    going_on = Signal(object)
    made = Signal(object)
    failed = Signal(object)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._run: _Run | None = None
        self._ending: set[_Run] = set()

    @property
    def working(self) -> bool:
        """Whether a draft is still to come."""
        return self._run is not None

    def want(self, work: Work) -> None:
        """Do ``work``; what was wanted before is given up."""
        self.give_up()
        run = self._run = _Run(work)
        self._ending.add(run)
        run.told.went_on.connect(self._told, Qt.ConnectionType.QueuedConnection)
        run.told.ended.connect(self._ended, Qt.ConnectionType.QueuedConnection)
        QThreadPool.globalInstance().start(run)

    def give_up(self) -> None:
        """End the work at the next thing it would try."""
        if self._run is not None:
            self._run.given_up = True
            self._run = None

    def _told(self, run: _Run, relaxed: Wish | None) -> None:
        if run is self._run:
            self.going_on.emit(relaxed)

    def _ended(self, run: _Run, outcome: Draft | Exception | None) -> None:
        self._ending.discard(run)
        if run is not self._run:
            return
        self._run = None
        if isinstance(outcome, Draft):
            self.made.emit(outcome)
        else:
            self.failed.emit(outcome)


class _GivenUp(Exception):
    """The work is not wanted any more."""


class _Told(QObject):
    """What a run says, the run first; it lives where the window does."""

    went_on = Signal(object, object)
    ended = Signal(object, object)


class _Run(QRunnable):
    """One piece of work. Python keeps it until it has ended, so Qt must not delete it."""

    def __init__(self, work: Work) -> None:
        super().__init__()
        self.setAutoDelete(False)
        self._work = work
        self.told = _Told()
        self.given_up = False

    def run(self) -> None:
        outcome: Draft | Exception | None = None
        try:
            outcome = self._work(self._goes_on)
        except _GivenUp:
            pass
        except Exception as error:  # handled in the window, like any other
            outcome = error
        self.told.ended.emit(self, outcome)

    def _goes_on(self, relaxed: Wish | None) -> None:
        if self.given_up:
            raise _GivenUp
        self.told.went_on.emit(self, relaxed)
