"""The weeks ahead within the program area: made when they are first asked for."""

from __future__ import annotations

from datetime import date

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QStackedWidget

from desktop.planning.outlook import Onlooker
from desktop.planning.program_weeks import ProgramWeeks
from desktop.planning.weeks_table import program_weeks
from desktop.training.program import Program
from views.theme import Theme
from views.weeks_page import WeeksPage
from views.weeks_source import WeeksSource


class WeeksAhead(QObject):
    """One of the ``faces`` of the program area. ``rule_wanted(place)`` for a cell chosen, ``left``
    to go back, ``print_wanted``.
    """

    rule_wanted = Signal(object)
    left = Signal()
    print_wanted = Signal()

    def __init__(self, faces: QStackedWidget, theme: Theme, today: date) -> None:
        super().__init__(faces)
        self._faces, self._theme, self._today = faces, theme, today
        self._source = WeeksSource(self)
        self.page: WeeksPage | None = None

    @property
    def working(self) -> bool:
        """Whether the weeks are still being computed."""
        return self._source.working

    def show(self, program: Program, onlooker: Onlooker) -> WeeksPage:
        """Show a program's weeks, at once or, where there is much to compute, soon."""
        page = self.page or self._made()
        self._faces.setCurrentWidget(page)
        self._source.want(program, onlooker)
        if self._source.working:
            page.say_working(program.name)
        return page

    def now(self, program: Program, onlooker: Onlooker) -> ProgramWeeks:
        """A program's weeks at once, for printing."""
        return program_weeks(program, onlooker, self._source.memory)

    def _made(self) -> WeeksPage:
        page = WeeksPage(self._theme, self._today)
        page.left.connect(self.left)
        page.rule_wanted.connect(self.rule_wanted)
        page.print_wanted.connect(self.print_wanted)
        self._source.made.connect(page.show_weeks)
        self._faces.addWidget(page)
        self.page = page
        return page
