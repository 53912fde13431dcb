"""Hard sets a week, done over planned, under the chart whose days they share."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from typing import Final

import numpy as np
from PySide6.QtCore import Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QVBoxLayout, QWidget

from desktop.planning.progress import Week
from views import words
from views.chart import DayPlot
from views.theme import Theme

_WIDTH: Final = 6.2
_ROOM: Final = 1.2
"""From the longest bar to the top of the view."""

_MOST_APART: Final = 4
_MIDDLE: Final = 3.0
"""From the first day of a week to its middle: days lie on whole numbers."""


class WeekBars(QWidget):
    """One bar a week; ``pointed(index)`` tells the week under the pointer."""

    pointed = Signal(int)

    def __init__(self, theme: Theme, above: DayPlot, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme, self._above = theme, above
        self._weeks: tuple[Week, ...] = ()
        self._width = _WIDTH
        self.plot = DayPlot(theme)
        self.plot.follow(above)
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
        self.plot.name_days(self.counts)
        self._draw_bars(_WIDTH)
        self.plot.finish()
        self.line_up()
        self._fit()

    def _draw_bars(self, width: float) -> None:
        self._width = width
        middles = np.array([each.first.toordinal() + _MIDDLE for each in self._weeks])
        planned = np.array([each.planned_sets for each in self._weeks], dtype=np.float64)
        done = np.array([each.hard_sets for each in self._weeks], dtype=np.float64)
        if middles.size:
            self.plot.add_bars("planned", middles, planned, width, "line")
            self.plot.add_bars("done", middles, done, width, "accent")

    def _fit(self) -> None:
        first, last = self.plot.days
        seen = [w for w in self._weeks if first <= w.first.toordinal() + _MIDDLE <= last]
        most = max((max(week.hard_sets, week.planned_sets) for week in seen), default=0)
        self.plot.show_values(0, max(most, 1) * _ROOM)
        width = 7.0 if self._every(first, last, self._pixels()) > _MOST_APART else _WIDTH
        if width != self._width:  # gaps of less than a pixel would come and go
            self._draw_bars(width)
        self.plot.name_values(self.scale)  # which rests on the days, not on the values alone

    def counts(self, first: float, last: float, pixels: float) -> Sequence[tuple[float, str]]:
        """The sets done under each bar, or every other one; where it gets narrower, `scale`."""
        every = self._every(first, last, pixels)
        if every > _MOST_APART:
            return []
        return [
            (week.first.toordinal() + _MIDDLE, str(week.hard_sets))
            for index, week in enumerate(reversed(self._weeks))
            if index % every == 0 and first <= week.first.toordinal() + _MIDDLE <= last
        ]

    def scale(self, _low: float, high: float, _pixels: float) -> Sequence[tuple[float, str]]:
        """The most in view beside the bars, where they are too narrow for words of their own."""
        if self._every(*self.plot.days, self._pixels()) <= _MOST_APART:
            return []
        most = round(high / _ROOM)
        return [(float(most), words.number(most))]

    def _pixels(self) -> float:
        return self.plot.width() - self.plot.left_room

    def _every(self, first: float, last: float, pixels: float) -> int:
        """Under each how manieth bar there is room for words."""
        room = self.plot.text_width("00") + self._theme.px(4)
        return max(1, int(np.ceil(room / (7 / max(last - first, 1) * max(pixels, 1)))))

    def _point(self, day: float, _value: float) -> None:
        under = date.fromordinal(max(int(day + 0.5), 1))
        for index, week in enumerate(self._weeks):
            if 0 <= (under - week.first).days < 7:
                self.pointed.emit(index)
                return

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()
