"""The chart of one line: a series over days, with a cursor that goes from session to session."""

from __future__ import annotations

import math
from typing import Final

import numpy as np
from PySide6.QtCore import QMargins, QRectF, Qt, Signal
from PySide6.QtGui import QFocusEvent, QKeyEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QVBoxLayout, QWidget

from views import words
from views.chart import DayPlot
from views.chart_window import fitting, limits_of, span_of
from views.progress_series import Series, broken_line, step_line
from views.progress_texts import goal_words, mark_word
from views.theme import Theme

_ZOOM: Final = 0.7
_BAND, _AHEAD = 0.18, 0.10
_SIZES: Final = ((150, 8.0), (400, 6.0), (math.inf, 5.0))
"""Up to so many sessions in view, spots of this size."""

_MOST_STARS: Final = 40
_STAR: Final = 11
"""Pixels from a spot up to its star."""


class LinePlot(QWidget):
    """Draws a `Series`. ``chosen(index)``: the cursor stands on another spot (-1: on none);
    ``opened(index)``: that session is wanted; ``painted``: the first picture is on its way.
    """

    chosen = Signal(int)
    opened = Signal(int)
    painted = Signal()

    def __init__(self, theme: Theme, week_starts: int = 0, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setLayoutDirection(Qt.LayoutDirection.LeftToRight)  # a figure is never mirrored
        self._theme = theme
        self.plot = DayPlot(theme, week_starts)
        self._series: Series | None = None
        self._names: dict[str, str] = {}
        self._weeks: int | None = None
        self._index = -1
        self._size = _SIZES[0][1]
        self._drawn = (0.0, 0.0)
        self._was_painted = False
        self.body_mass_shown = False
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        column = QVBoxLayout(self)
        column.setContentsMargins(QMargins(2, 2, 2, 2))
        column.addWidget(self.plot)
        self.plot.pointed.connect(self._point)
        self.plot.opened.connect(self._open)
        self.plot.days_moved.connect(self._fit)
        self.plot.resized.connect(self._draw_records)
        theme.changed.connect(self._redraw)

    @property
    def index(self) -> int:
        """The spot that the cursor stands on; -1 for none."""
        return self._index

    @property
    def series(self) -> Series | None:
        """What is drawn."""
        return self._series

    def show_series(self, series: Series, names: dict[str, str], weeks: int | None) -> None:
        """Draw ``series`` over the last ``weeks`` (None: all) and some way ahead.

        ``names``: the variations by key.
        """
        self._series = None  # nothing is fitted while the days move
        self.plot.keep_within(*limits_of(series))
        self.plot.show_days(*span_of(series, weeks))
        self._series, self._names, self._weeks, self._index = series, names, weeks, -1
        self._redraw()

    def show_weeks(self, weeks: int | None) -> None:
        """Bring the last ``weeks`` (None: all) into view."""
        self._weeks = weeks
        if self._series is not None:
            self.show_days(*span_of(self._series, weeks))

    def show_days(self, first: float, last: float) -> None:
        """Bring these days into view; the values follow where the days moved."""
        self.plot.show_days(first, last)

    def show_body_mass(self, shown: bool) -> None:
        """Draw body mass along the foot, or take it away."""
        self.body_mass_shown = shown
        self._redraw()

    def choose(self, index: int) -> None:
        """Put the cursor on a spot (-1: on none) and bring it into view."""
        if self._series is None or index == self._index or index >= len(self._series.spots):
            return
        self._index = index
        if index < 0:
            self.plot.mark(None)
        else:
            spot = self._series.spots[index]
            self._reveal(spot.day)
            self.plot.mark(spot.day, spot.value)
        self.chosen.emit(index)

    def zoom(self, factor: float) -> None:
        """Show fewer (below 1) or more days, round the cursor where it is in view."""
        first, last = self.plot.days
        middle = (first + last) / 2
        if self._series is not None and self._index >= 0:
            day = self._series.spots[self._index].day
            middle = day if first <= day <= last else middle
        reach = [(middle - first) * factor, (last - middle) * factor]
        self.show_days(middle - reach[0], middle + reach[1])

    # What is drawn

    def _redraw(self) -> None:
        series = self._series
        if series is None:
            return
        self.plot.begin()
        self._name_values(series)
        self._draw_surroundings(series)
        self._draw_trend(series)
        self._draw_spots(series)
        self._draw_second(series)
        for index, (value, line) in enumerate(series.goals):
            label = self.tr("goal {what}").format(what=goal_words(line, series.unit, self._names))
            self.plot.add_level(f"goal {index}", value, "good", label)
        first, last = limits_of(series)
        self.plot.keep_within(first, last)
        self._fit()
        self.plot.finish()
        if self._index >= 0:
            spot = series.spots[self._index]
            self.plot.mark(spot.day, spot.value)

    def _name_values(self, series: Series) -> None:
        named = series.values
        if named:
            self.plot.name_values(lambda _low, _high, _px: list(enumerate(named)))
            longest = max(self.plot.text_width(name) for name in named)
            self.plot.keep_left(longest + self._theme.px(16))
        else:
            self.plot.name_values(None)
            self.plot.keep_left(0)

    def _draw_surroundings(self, series: Series) -> None:
        for index, mark in enumerate(series.strips):
            first, last = mark.first.toordinal() - 0.5, mark.last.toordinal() + 0.5
            self.plot.add_strip(f"strip {index}", first, last, mark_word(mark))
        for index, moment in enumerate(series.moments):
            edge = "second" if moment.kind == "variation" else "top"
            self.plot.add_moment(
                f"{moment.kind} {index}",
                moment.day,
                "line",
                moment.label,
                edge,  # type: ignore[arg-type]
            )
        today = self.tr("today")
        self.plot.add_moment("today", series.today, "muted", today, gives_way=True)

    def _draw_trend(self, series: Series) -> None:
        for name, band, alpha, width, dash in (
            ("trend", series.trend, _BAND, 2.0, "solid"),
            ("forecast", series.forecast, _AHEAD, 1.5, "dash"),
        ):
            if band is not None:
                self.plot.add_band(f"{name} band", band.days, band.low, band.high, "accent", alpha)
                self.plot.add_line(name, band.days, band.middle, "accent", width=width, dash=dash)  # type: ignore[arg-type]

    def _draw_spots(self, series: Series) -> None:
        days, values = series.days, series.heights
        if series.steps:
            self.plot.add_line("steps", *step_line(days, values), "accent", width=1.5)
        elif series.trend is None and series.forecast is None and days.size > 1:
            self.plot.add_line("between", *broken_line(series), "muted", width=1)
        self._scatter_spots(series, self._size_in_view(series))

    def _size_in_view(self, series: Series) -> float:
        """The more sessions in view, the smaller their spots."""
        first, last = np.searchsorted(series.days, self.plot.days)
        return next(size for most, size in _SIZES if last - first <= most)

    def _scatter_spots(self, series: Series, size: float) -> None:
        """The sessions by shape, in view and as far again to both sides; smaller, and behind the
        trend, where very many are in view.
        """
        first, last = self.plot.days
        self._size = size
        self._drawn = begun, ended = 2 * first - last, 2 * last - first
        low, high = np.searchsorted(series.days, (begun, ended))
        days, values = series.days, series.heights
        for (shape, counted), alike in series.by_look.items():
            name, role = shape.value, "text"
            if not counted:
                name, role = f"{name}, paler", "muted"
            taken = alike[(alike >= low) & (alike < high)]
            if taken.size:
                self.plot.add_spots(name, days[taken], values[taken], shape, role, size)
            else:
                self.plot.take_away(name)

    def _draw_second(self, series: Series) -> None:
        """What it is compared with: hollow diamonds and dashes, in a colour of their own."""
        second = series.second
        if second is None or not second.spots:
            return
        days = np.array([spot.day for spot in second.spots], dtype=np.float64)
        values = np.array([spot.value for spot in second.spots])
        band = second.trend
        along, heights = (days, values) if band is None else (band.days, band.middle)
        self.plot.add_line("second", along, heights, "second", width=2, dash="dash")
        self.plot.add_signs("second spots", days, values, "diamond", "second")

    # What is in view

    def _fit(self) -> None:
        """Values in view as the days in view need them."""
        series = self._series
        if series is None:
            return
        low, high = fitting(series, *self.plot.days)
        self.plot.show_values(low, high)
        first, last = self.plot.days
        size = self._size_in_view(series)
        if size != self._size or first < self._drawn[0] or last > self._drawn[1]:
            self._scatter_spots(series, size)
        self._draw_records()
        self._draw_pains(series, low, high)
        self._draw_body_mass(series, low, high)
        self.plot.pin()

    def _draw_records(self) -> None:
        """A star above each best so far; only above the last in view where there are very many."""
        series = self._series
        if series is None:
            return
        first, last = self.plot.days
        seen = (series.days >= first) & (series.days <= last)
        best = np.flatnonzero(np.array(series.records, dtype=bool) & seen)
        if best.size > _MOST_STARS:
            best = best[-1:]
        if best.size:
            room = self.plot.value_of_pixels(self._theme.px(_STAR), *self.plot.values)
            heights = series.heights[best] + room
            self.plot.add_signs("records", series.days[best], heights, "star", "good")
        else:
            self.plot.take_away("records")

    def _draw_pains(self, series: Series, low: float, high: float) -> None:
        if series.pains:
            days = np.array([mark.first.toordinal() for mark in series.pains], dtype=np.float64)
            heights = np.full(days.size, low + (high - low) * 0.07)
            self.plot.add_signs("pain", days, heights, "triangle", "caution")

    def _draw_body_mass(self, series: Series, low: float, high: float) -> None:
        """Along the foot, in a scale of its own: its end says what it is."""
        if not self.body_mass_shown or series.body_mass is None:
            for name in ("body mass", "body mass words"):
                self.plot.take_away(name)
            return
        days, masses = series.body_mass
        span = max(float(np.ptp(masses)), 1.0)
        heights = low + (high - low) * (0.08 + 0.1 * (masses - masses.min()) / span)
        self.plot.add_line("body mass", days, heights, "muted", width=1.5, dash="dot")
        ends = [words.number(float(mass), 1) for mass in (masses[0], masses[-1])]
        shown = f" {words.ARROW} ".join(dict.fromkeys(ends))
        text = self.tr("body mass {mass} {unit}").format(mass=shown, unit=series.unit.value)
        self.plot.add_words("body mass words", days[-1], heights[-1], text, "muted")

    def _reveal(self, day: int) -> None:
        first, last = self.plot.days
        if not first <= day <= last:
            shift = day - (first + last) / 2
            self.show_days(first + shift, last + shift)

    # The cursor

    def _point(self, day: float, _value: float) -> None:
        series = self._series
        if series is None or not series.spots:
            return
        nearest = int(np.abs(series.days - day).argmin())
        if self.plot.pixels_between(day, series.spots[nearest].day) <= self._theme.px(32):
            self.choose(nearest)

    def _open(self) -> None:
        if self._index >= 0:
            self.opened.emit(self._index)

    def _step(self, by: int) -> None:
        count = len(self._series.spots) if self._series is not None else 0
        if not count:
            return
        if self._index < 0:
            self.choose(self._last_in_view() if by < 0 else self._first_in_view())
        else:
            self.choose(min(max(self._index + by, 0), count - 1))

    def _first_in_view(self) -> int:
        assert self._series is not None
        after = np.flatnonzero(self._series.days >= self.plot.days[0])
        return int(after[0]) if after.size else len(self._series.spots) - 1

    def _last_in_view(self) -> int:
        assert self._series is not None
        before = np.flatnonzero(self._series.days <= self.plot.days[1])
        return int(before[-1]) if before.size else 0

    def keyPressEvent(self, event: QKeyEvent) -> None:
        last = len(self._series.spots) - 1 if self._series is not None else -1
        match event.key():
            case Qt.Key.Key_Left:
                self._step(-1)
            case Qt.Key.Key_Right:
                self._step(1)
            case Qt.Key.Key_Home:
                self.choose(min(0, last))
            case Qt.Key.Key_End:
                self.choose(last)
            case Qt.Key.Key_Plus | Qt.Key.Key_Equal:
                self.zoom(_ZOOM)
            case Qt.Key.Key_Minus:
                self.zoom(1 / _ZOOM)
            case Qt.Key.Key_Return | Qt.Key.Key_Enter:
                self._open()
            case _:
                super().keyPressEvent(event)

    def paintEvent(self, _event: QPaintEvent) -> None:
        if not self._was_painted:
            self._was_painted = True
            self.painted.emit()
        if self.hasFocus():
            painter = QPainter(self)
            painter.setLayoutDirection(self.layoutDirection())
            painter.setPen(QPen(self._theme.colour("accent"), 1))
            painter.drawRect(QRectF(self.rect()).adjusted(0.5, 0.5, -0.5, -0.5))

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        self.update()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        self.update()
