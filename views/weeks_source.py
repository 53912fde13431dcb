"""Where the weeks ahead come from: at once where little is new, else in slices of a frame."""

from __future__ import annotations

import time
from collections.abc import Iterator
from typing import Final

from PySide6.QtCore import QObject, QTimer, Signal

from desktop.planning.line_memory import LineMemory
from desktop.planning.outlook import Onlooker
from desktop.planning.program_weeks import ProgramWeeks
from desktop.planning.weeks_table import weeks_in_steps
from desktop.training.program import Program

_AT_ONCE_MS: Final = 60
_SLICE_MS: Final = 12


class WeeksSource(QObject):
    """`want` asks for a program's weeks; ``made(ProgramWeeks)`` follows, at once or soon."""

    made = Signal(object)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.memory = LineMemory()
        self._steps: Iterator[ProgramWeeks | None] | None = None
        self._timer = QTimer(self)
        self._timer.setInterval(0)
        self._timer.timeout.connect(lambda: self._work(_SLICE_MS))

    @property
    def working(self) -> bool:
        """Whether weeks were asked for and are still to come."""
        return self._steps is not None

    def want(self, program: Program, onlooker: Onlooker) -> None:
        """Compute; what was asked for before is given up."""
        self._steps = weeks_in_steps(program, onlooker, self.memory)
        self._work(_AT_ONCE_MS)
        if self._steps is not None:
            self._timer.start()

    def stop(self) -> None:
        """Give up what is still to come."""
        self._steps = None
        self._timer.stop()

    def _work(self, milliseconds: float) -> None:
        until = time.perf_counter() + milliseconds / 1000
        while self._steps is not None:
            found = next(self._steps)
            if found is not None:
                self.stop()
                self.made.emit(found)
            elif time.perf_counter() > until:
                return
