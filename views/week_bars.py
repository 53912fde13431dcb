"""Hard sets a week, done over planned, under the chart whose days they share."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from typing import Final

import numpy as np
from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from desktop.planning.progress import Week
from views.chart import DayPlot
from views.theme import Theme

_WIDTH: Final = 6.2
_MIDDLE: Final = 3.0
"""From the first day of a week to its middle: days lie on whole numbers."""


class WeekBars(QWidget):
    """One bar a week; ``pointed(index)`` tells the week under the pointer."""

    pointed = Signal(int)

    def __init__(self, theme: Theme, above: DayPlot, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme, self._above = theme, above
        self._weeks: tuple[Week, ...] = ()
        self.plot = DayPlot(theme)
        self.plot.follow(above)
        self.plot.name_values(lambda *_: ())
        self.plot.name_days(self.counts)
        self.plot.pointed.connect(self._point)
        self.plot.days_moved.connect(self._fit)
        column = QVBoxLayout(self)
        column.setContentsMargins(2, 0, 2, 0)
        column.addWidget(self.plot)
        theme.changed.connect(self._redraw)

    def show_weeks(self, weeks: Sequence[Week]) -> None:
        """Draw these weeks."""
        self._weeks = tuple(weeks)
        self._redraw()

    def line_up(self) -> None:
        """Take the same room at the left as the chart above."""
        self.plot.keep_left(self._above.left_room)

    def _redraw(self) -> None:
        self.plot.begin()
        middles = np.array([each.first.toordinal() + _MIDDLE for each in self._weeks])
        planned = np.array([each.planned_sets for each in self._weeks], dtype=np.float64)
        done = np.array([each.hard_sets for each in self._weeks], dtype=np.float64)
        if middles.size:
            self.plot.add_bars("planned", middles, planned, _WIDTH, "line")
            self.plot.add_bars("done", middles, done, _WIDTH, "accent")
        self.plot.finish()
        self.line_up()
        self._fit()

    def _fit(self) -> None:
        first, last = self.plot.days
        seen = [w for w in self._weeks if first <= w.first.toordinal() + _MIDDLE <= last]
        most = max((max(week.hard_sets, week.planned_sets) for week in seen), default=0)
        self.plot.show_values(0, max(most, 1) * 1.05)

    def counts(self, first: float, last: float, pixels: float) -> Sequence[tuple[float, str]]:
        """The sets done under each bar; under every other one and so on where it gets narrow."""
        room = self.plot.text_width("00") + self._theme.px(4)
        every = max(1, int(np.ceil(room / (7 / max(last - first, 1) * pixels))))
        return [
            (week.first.toordinal() + _MIDDLE, str(week.hard_sets))
            for index, week in enumerate(reversed(self._weeks))
            if index % every == 0 and first <= week.first.toordinal() + _MIDDLE <= last
        ]

    def _point(self, day: float, _value: float) -> None:
        under = date.fromordinal(max(int(day + 0.5), 1))
        for index, week in enumerate(self._weeks):
            if 0 <= (under - week.first).days < 7:
                self.pointed.emit(index)
                return
