"""Long work before the window: how far it is stands in a panel, and it can be cancelled."""

from __future__ import annotations

from collections.abc import Callable, Generator
from typing import Any

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QWidget

from views.steps_runner import StepsRunner
from views.theme import Theme
from views.work_panel import WorkPanel


class LongWork(QObject):
    """One piece of work at a time; ``cancelled`` when the coach gives it up."""

    cancelled = Signal()

    def __init__(self, theme: Theme, window: QWidget) -> None:
        super().__init__(window)
        self.runner = StepsRunner(self)
        self.panel = WorkPanel(theme, window)
        self._text = ""
        self.runner.went_on.connect(lambda: self.panel.begin(self._text))
        self.runner.progressed.connect(lambda share: self.panel.bar.setValue(round(1000 * share)))
        self.runner.ended.connect(self.panel.end)
        self.panel.given_up.connect(self._give_up)

    def start(
        self,
        text: str,
        work: Generator[float, None, Any],
        then: Callable[[Any], None],
        wrong: Callable[[Exception], None],
    ) -> None:
        """Do ``work``, which ``text`` names; its result goes to ``then``, what it raises to
        ``wrong``.
        """
        self._text = text
        self.runner.start(work, then, wrong)

    def _give_up(self) -> None:
        self.runner.give_up()
        self.cancelled.emit()
