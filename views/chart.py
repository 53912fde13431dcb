"""A plot over days in the look of the house.

Importing this imports the chart library. Colours are roles of the palette, days are ordinals, and
each part has a name by which it is found again.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any, Final, Literal

import numpy as np
from PySide6.QtCore import QPointF, Qt, Signal
from PySide6.QtGui import QBrush, QFontMetricsF, QPen
from PySide6.QtWidgets import QSizePolicy, QVBoxLayout, QWidget

from views import words
from views.axis_ticks import day_ticks, round_ticks
from views.chart_library import Floats, pg
from views.edge_words import Edge, EdgeWord, places_of
from views.plot_axis import PlotAxis, Ticks
from views.plot_parts import CURSOR, LINE, SPOT, UNDER, PlotParts
from views.progress_series import Shape
from views.theme import TextSize, Theme

Dash = Literal["solid", "dash", "dot"]
Sign = Literal["triangle", "star", "diamond"]

_DASHES: Final = {
    "solid": Qt.PenStyle.SolidLine,
    "dash": Qt.PenStyle.DashLine,
    "dot": Qt.PenStyle.DotLine,
}
_ORIGIN: Final = 737_425
"""1 January 2020: days are counted from here inside, since a drawing keeps six digits only."""

_LEFT, _FOOT = 56, 24
_TICK_ROOM: Final = 80
_VALUE_ROOM: Final = 36
_LEAST_DAYS: Final = 14
_TINY: Final = 5.0
_VEIL: Final = 0.85
_FAINT: Final = 0.45
_EDGE: Final = 20
"""Nearer to the top than so many pixels a value has no line: words stand there."""
_SHAPES: Final = {Shape.SQUARE: "s", Shape.HOLLOW_SQUARE: "s", Shape.DISC: "o", Shape.RING: "o"}
_SIGNS: Final = {"triangle": "t1", "star": "star", "diamond": "d"}


@dataclass(slots=True)
class _Pinned:
    """Words kept at an edge of the view, whatever is scrolled to: over a day at the top or foot,
    or above a value at the right.
    """

    item: Any
    at: float
    edge: Edge | Literal["right"]
    width: float
    gives_way: bool = False


class DayPlot(QWidget):
    """A plot of values over days. Numbers of one axis only; the wheel and dragging move days.

    ``pointed(day, value)`` follows the pointer, ``pressed`` and ``opened`` are a click and a
    double click, ``days_moved`` follows the span of days in view.
    """

    pointed = Signal(float, float)
    pressed = Signal()
    opened = Signal()
    days_moved = Signal()
    resized = Signal()

    def __init__(self, theme: Theme, week_starts: int = 0, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        pg.setConfigOptions(antialias=True)
        self.theme = theme
        self._week_starts = week_starts
        self._bottom = PlotAxis("bottom", self._dates, _ORIGIN)
        self._left = PlotAxis("left", self._numbers)
        # A view with two axes: the library's own plot has menus and buttons besides, and half of
        # the time that it takes to be made goes into them.
        self._widget: Any = pg.GraphicsView(self)
        self._view: Any = pg.ViewBox(enableMenu=False)
        self._parts = PlotParts(self._view)
        self._pinned: list[_Pinned] = []
        self._dressed = False
        theme.changed.connect(self._undress)
        self._set_up()
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self._widget)

    def _set_up(self) -> None:
        grid = self._widget.centralLayout
        grid.setContentsMargins(1, 1, 1, 1)
        grid.setSpacing(0)
        for part, row, column in ((self._left, 0, 0), (self._view, 0, 1), (self._bottom, 1, 1)):
            grid.addItem(part, row, column)
        for axis in (self._left, self._bottom):
            axis.linkToView(self._view)
        self._view.setMouseEnabled(True, False)
        self._view.disableAutoRange()
        for part in (self._widget, self._widget.viewport()):
            part.setFocusPolicy(Qt.FocusPolicy.NoFocus)
            part.setContextMenuPolicy(Qt.ContextMenuPolicy.NoContextMenu)
        self._widget.setFrameShape(self._widget.Shape.NoFrame)
        # Its wish is the size that it has, by which a page round it could never shrink again.
        self._widget.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Ignored)
        self._widget.scene().sigMouseMoved.connect(self._moved)
        self._widget.scene().sigMouseClicked.connect(self._clicked)
        self._view.sigXRangeChanged.connect(lambda *_: self.days_moved.emit())
        self._view.sigRangeChanged.connect(lambda *_: self.pin())
        self._view.sigResized.connect(lambda *_: self.pin())
        self._view.sigResized.connect(lambda *_: self.resized.emit())
        self._dress()

    def begin(self) -> None:
        """Draw all again from now on, in the theme's colours and type; `finish` takes away what
        was not.
        """
        if not self._dressed:
            self._dress()
        self._parts.begin()
        self._pinned = []

    def finish(self) -> None:
        """The drawing is done."""
        self._parts.finish()

    def _undress(self) -> None:
        self._dressed = False

    def _dress(self) -> None:
        self._dressed = True
        self._widget.setBackground(self.theme.colour("surface"))
        muted, line = self.theme.colour("muted"), self.theme.colour("line")
        for axis in (self._bottom, self._left):
            axis.setTextPen(muted)
            axis.setPen(pg.mkPen(None))
            axis.setTickPen(pg.mkPen(line, width=1))
            axis.setStyle(tickFont=self.theme.font(TextSize.SMALL), tickLength=0)
        self._left.setGrid(255)
        self._left.setZValue(self._view.zValue() - 1)
        self._bottom.setHeight(self.theme.px(_FOOT))
        self._left.setWidth(self.theme.px(_LEFT))

    def follow(self, other: DayPlot) -> None:
        """Show the same days as ``other`` from now on."""
        self._view.setXLink(other._view)

    def add_line(
        self, name: str, days: Floats, values: Floats, role: str, *, width: float = 1,
        dash: Dash = "solid",
    ) -> None:  # fmt: skip
        """A line through values; it breaks where one is not a number."""
        self._parts.line(name, days - _ORIGIN, values, self._pen(role, width, dash))

    def add_band(
        self, name: str, days: Floats, low: Floats, high: Floats, role: str, alpha: float
    ) -> None:
        """The ground between two lines."""
        colour = self.theme.colour(role)
        colour.setAlphaF(alpha)
        self._parts.band(name, days - _ORIGIN, low, high, colour)

    def add_spots(
        self, name: str, days: Floats, values: Floats, shape: Shape, role: str, size: float = 8
    ) -> None:
        """Spots of one shape; tiny ones behind the lines."""
        hollow = shape in (Shape.HOLLOW_SQUARE, Shape.RING)
        depth = SPOT if size > _TINY else UNDER
        self._scatter(name, days, values, _SHAPES[shape], role, size, hollow=hollow, depth=depth)

    def add_signs(self, name: str, days: Floats, values: Floats, sign: Sign, role: str) -> None:
        """Small triangles, stars or hollow diamonds."""
        self._scatter(name, days, values, _SIGNS[sign], role, 9, hollow=sign == "diamond")

    def add_bars(
        self, name: str, middles: Floats, heights: Floats, width: float, role: str
    ) -> None:
        """Bars standing on 0."""
        colour, depth = self.theme.colour(role), UNDER if role == "line" else LINE
        self._parts.bars(name, middles - _ORIGIN, heights, width, colour, depth)

    def add_level(self, name: str, value: float, role: str, label: str, dash: Dash = "dot") -> None:
        """A line across at one value, its words above its right end."""
        self._parts.level(name, value, self._pen(role, 1.5, dash))
        self._label(name, value, label, "right", role)

    def add_moment(
        self, name: str, day: float, role: str, label: str, edge: Edge = "top", *,
        gives_way: bool = False,
    ) -> None:  # fmt: skip
        """A thin line down one day, with its words at the edge; they may give way to others."""
        self._parts.moment(name, day - _ORIGIN, self._pen(role, 1, "solid"))
        self._label(name, day, label, edge, "muted", gives_way=gives_way)

    def add_strip(self, name: str, first: float, last: float, label: str) -> None:
        """A quiet strip over days, with its words at the foot."""
        ground = self.theme.colour("background")
        self._parts.strip(name, first - _ORIGIN, last - _ORIGIN, ground)
        self._label(name, (first + last) / 2, label, "foot", "muted")

    def add_words(self, name: str, day: float, value: float, label: str, role: str) -> None:
        """Words to the right of a value."""
        font = self.theme.font(TextSize.SMALL)
        colour = self.theme.colour(role)
        item = self._parts.words(name, label, colour, font, self._veil(), (0, 0.5))
        item.setPos(day - _ORIGIN, value)

    def take_away(self, name: str) -> None:
        """Remove a part, where it is there."""
        self._parts.take_away(name)

    def mark(self, day: float | None, value: float = 0.0) -> None:
        """Put the cursor on a spot; None takes it away."""
        if day is None:
            self.take_away("cursor")
            self.take_away("cursor ring")
            return
        self._parts.moment("cursor", day - _ORIGIN, self._pen("accent", 1, "solid"), CURSOR)
        ring = (np.array([day]), np.array([value]))
        self._scatter("cursor ring", *ring, "o", "accent", 16, hollow=None, width=2, depth=CURSOR)

    def show_days(self, first: float, last: float) -> None:
        """Bring these days into view."""
        last = max(last, first + _LEAST_DAYS)
        self._view.setXRange(first - _ORIGIN, last - _ORIGIN, padding=0)

    def show_values(self, low: float, high: float) -> None:
        """Bring these values into view."""
        self._view.setYRange(low, high, padding=0)

    def keep_within(self, first: float, last: float) -> None:
        """The days that can be scrolled to."""
        self._view.setLimits(xMin=first - _ORIGIN, xMax=last - _ORIGIN, minXRange=_LEAST_DAYS)

    def name_values(self, ticks: Ticks | None) -> None:
        """Other words beside values than numbers; None: numbers."""
        self._left.use(ticks or self._numbers)

    def name_days(self, ticks: Ticks | None) -> None:
        """Other words under days than dates; None: dates."""
        self._bottom.use(ticks or self._dates)

    def keep_left(self, pixels: float) -> None:
        """Room for the words beside values, so that plots stand under each other."""
        self._left.setWidth(round(max(pixels, self.theme.px(_LEFT))))

    @property
    def left_room(self) -> float:
        """Pixels kept for the words beside values."""
        return float(self._left.width())

    @property
    def days(self) -> tuple[float, float]:
        """The days in view."""
        first, last = self._view.viewRange()[0]
        return float(first) + _ORIGIN, float(last) + _ORIGIN

    @property
    def values(self) -> tuple[float, float]:
        """The values in view."""
        low, high = self._view.viewRange()[1]
        return float(low), float(high)

    def pixels_between(self, day: float, other: float) -> float:
        """How far two days lie apart on the screen."""
        first, last = self.days
        return float(abs(other - day) / (last - first) * self._view.width())

    def value_of_pixels(self, pixels: float, low: float, high: float) -> float:
        """What so many pixels upwards are in values while these are in view."""
        return pixels * (high - low) / max(float(self._view.height()), 1.0)

    def parts(self) -> tuple[str, ...]:
        """The names of what is drawn."""
        return self._parts.names()

    def item(self, name: str) -> Any:
        """What the library draws a part by."""
        return self._parts[name]

    def data_of(self, name: str) -> tuple[Floats, Floats]:
        """Days and values of a line or of spots."""
        days, values = self._parts[name].getData()
        return np.asarray(days, dtype=np.float64) + _ORIGIN, np.asarray(values, dtype=np.float64)

    def labels(self) -> tuple[str, ...]:
        """The words at the edges in view."""
        return tuple(p.item.toPlainText() for p in self._pinned if p.item.isVisible())

    def day_words(self) -> tuple[str, ...]:
        """What stands under the days in view, at this width."""
        return tuple(text for _, text in self._bottom.ticks(*self.days, self._view.width()))

    def value_words(self) -> tuple[str, ...]:
        """What stands beside the values in view, at this height."""
        return tuple(text for _, text in self._left.ticks(*self.values, self._view.height()))

    def _dates(self, first: float, last: float, pixels: float) -> Sequence[tuple[float, str]]:
        most = int(pixels / self.theme.px(_TICK_ROOM))
        return [(tick.day, tick.text) for tick in day_ticks(first, last, most, self._week_starts)]

    def _numbers(self, low: float, high: float, pixels: float) -> Sequence[tuple[float, str]]:
        most = int(pixels / self.theme.px(_VALUE_ROOM))
        edge = self.theme.px(_EDGE) if self._pinned else 0
        top = high - (high - low) * edge / max(pixels, 1)
        return [
            (value, words.number(value)) for value in round_ticks(low, high, most) if value < top
        ]

    def _scatter(
        self, name: str, days: Floats, values: Floats, symbol: str, role: str, size: float, *,
        hollow: bool | None, width: float = 1.5, depth: int = SPOT,
    ) -> None:  # fmt: skip
        """``hollow`` None: what lies under it shows."""
        brush = QBrush(self.theme.colour("surface" if hollow else role))
        if hollow is None:
            brush = QBrush(Qt.BrushStyle.NoBrush)
        pen, pixels = self._pen(role, width, "solid"), self.theme.px(size)
        if size <= _TINY:  # a crowd: where many lie it is darker, and the trend stands out
            faint = pen.color()
            faint.setAlphaF(_FAINT / 2 if hollow else _FAINT)
            pen, brush = QPen(Qt.PenStyle.NoPen), QBrush(faint)
        self._parts.spots(name, days - _ORIGIN, values, symbol, pixels, pen, brush, depth)

    def _label(
        self, name: str, at: float, label: str, edge: Edge | Literal["right"], role: str, *,
        gives_way: bool = False,
    ) -> None:  # fmt: skip
        font, colour = self.theme.font(TextSize.SMALL), self.theme.colour(role)
        ground = self._veil() if edge == "right" else QBrush(Qt.BrushStyle.NoBrush)
        item = self._parts.words(f"{name} words", label, colour, font, ground)
        width = self.text_width(label) + self.theme.px(8)
        self._pinned.append(_Pinned(item, at, edge, width, gives_way))

    def _veil(self) -> QBrush:
        """Under words that lines run through: they are only just seen there."""
        colour = self.theme.colour("surface")
        colour.setAlphaF(_VEIL)
        return QBrush(colour)

    def pin(self) -> None:
        """Put the words at their edges, inside the view; where two would meet the later goes."""
        (first, last), (low, high) = self.days, self.values
        width, height = self._view.width(), self._view.height()
        if width <= 1 or height <= 1:
            return
        row = (high - low) / height * self.theme.px(18)
        rows = {"top": (high, 0.0), "second": (high - row, 0.0), "foot": (low, 1.0)}
        at_edges = []
        for label in self._pinned:
            if label.edge == "right":
                label.item.setAnchor(QPointF(1, 1))
                label.item.setPos(last - _ORIGIN, label.at)
            else:
                pixel = (label.at - first) / (last - first) * width
                at_edges.append(EdgeWord(pixel, label.width, label.edge, gives_way=label.gives_way))
        labels = [label for label in self._pinned if label.edge != "right"]
        for label, place in zip(labels, places_of(at_edges, width), strict=True):
            label.item.setVisible(place is not None)
            if place is None:
                continue
            value, anchor = rows[place.edge]
            middle = (place.start + label.width / 2) / width
            label.item.fill = self._veil() if place.crossed else QBrush(Qt.BrushStyle.NoBrush)
            label.item.setAnchor(QPointF(0.5, anchor))
            label.item.setPos(first + middle * (last - first) - _ORIGIN, value)

    def text_width(self, text: str) -> float:
        """Pixels that small words take."""
        return QFontMetricsF(self.theme.font(TextSize.SMALL)).horizontalAdvance(text)

    def _pen(self, role: str, width: float, dash: Dash) -> QPen:
        grown = width * self.theme.text_percent / 100
        pen: QPen = pg.mkPen(self.theme.colour(role), width=grown, style=_DASHES[dash])
        return pen

    def _moved(self, place: QPointF) -> None:
        if self._view.sceneBoundingRect().contains(place):
            at = self._view.mapSceneToView(place)
            self.pointed.emit(at.x() + _ORIGIN, at.y())

    def _clicked(self, event: Any) -> None:
        if event.button() == Qt.MouseButton.LeftButton:
            (self.opened if event.double() else self.pressed).emit()
