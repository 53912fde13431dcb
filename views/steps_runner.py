"""Long work in slices of the event loop, so that the window stays alive and it can be given up."""

from __future__ import annotations

from collections.abc import Callable, Generator
from time import monotonic
from typing import Any, Final

from PySide6.QtCore import QObject, QTimer, Signal

from db.steps import uncollected

_FIRST_S: Final = 0.15
_SLICE_S: Final = 0.02


class StepsRunner(QObject):
    """Drives one piece of work at a time. What is done within a blink is done at once; what takes
    longer goes on in slices: ``went_on`` says so once, ``progressed(share)`` after each.

    The work is a generator that yields the share done and returns its result; given up, it is
    closed where it stands.
    """

    went_on = Signal()
    progressed = Signal(float)
    ended = Signal()

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._work: Generator[float, None, Any] | None = None
        self._then: Callable[[Any], None] = lambda _result: None
        self._wrong: Callable[[Exception], None] = lambda _error: None
        self._timer = QTimer(self)
        self._timer.setSingleShot(True)
        self._timer.timeout.connect(lambda: self._slice(_SLICE_S))

    @property
    def busy(self) -> bool:
        """Whether there is work that has not ended."""
        return self._work is not None

    def start(
        self,
        work: Generator[float, None, Any],
        then: Callable[[Any], None],
        wrong: Callable[[Exception], None],
    ) -> None:
        """Do ``work`` and give its result to ``then``, or what it raised to ``wrong``; work that
        is still going on is given up.
        """
        self.give_up()
        self._work, self._then, self._wrong = work, then, wrong
        self._slice(_FIRST_S)
        if self.busy:
            self.went_on.emit()

    def give_up(self) -> None:
        """End the work where it stands."""
        work, self._work = self._work, None
        self._timer.stop()
        if work is not None:
            work.close()
            self.ended.emit()

    def _slice(self, seconds: float) -> None:
        work, until = self._work, monotonic() + seconds
        if work is None:
            return
        share = 0.0
        try:
            with uncollected():
                while monotonic() < until:
                    share = next(work)
        except StopIteration as end:
            self._end(self._then, end.value)
        except Exception as error:
            self._end(self._wrong, error)
        else:
            self.progressed.emit(share)
            self._timer.start(0)

    def _end(self, what: Callable[[Any], None], value: Any) -> None:
        self._work = None
        self.ended.emit()
        what(value)
