"""The named parts of one plot: lines, bands, spots, bars, strips and words.

A part that was there in the last drawing is used again: to make and remove an item of the library
takes longer than to give it other points. Places are those of the view, where days are counted
from the plot's own origin.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any, Final

import numpy as np
from PySide6.QtCore import Qt
from PySide6.QtGui import QBrush, QColor, QFont, QPainterPath, QPen
from PySide6.QtWidgets import QGraphicsPathItem

from views.chart_library import Floats, pg

BEHIND, UNDER, LINE, SPOT, CURSOR = -20, -10, 0, 10, 20
"""How deep parts lie."""

_MANY: Final = 800
"""Points from which a smooth line is drawn in segments, which then is ten times faster."""

_NO_PEN: Final = Qt.PenStyle.NoPen


class PlotParts:
    """What is drawn in one view. Between `begin` and `finish` all is drawn again; what is not goes
    away. In between drawings each part can be drawn anew or taken away by itself.
    """

    def __init__(self, view: Any) -> None:
        self._view = view
        self._items: dict[str, Any] = {}
        self._before: dict[str, Any] = {}

    def begin(self) -> None:
        """A new drawing begins."""
        self._before |= self._items
        self._items = {}

    def finish(self) -> None:
        """The drawing is done."""
        for item in self._before.values():
            self._view.removeItem(item)
        self._before = {}

    def take_away(self, name: str) -> None:
        """Remove a part, where it is there."""
        for items in (self._items, self._before):
            if name in items:
                self._view.removeItem(items.pop(name))

    def names(self) -> tuple[str, ...]:
        """The names of what is drawn."""
        return tuple(self._items)

    def __getitem__(self, name: str) -> Any:
        return self._items[name]

    def line(self, name: str, x: Floats, y: Floats, pen: QPen) -> None:
        """A line through points; it breaks where one is not a number."""
        item = self._taken(name, pg.PlotCurveItem, LINE)
        # Joints of segments show, and each begins its dashes again: only where there are many.
        many = pen.style() == Qt.PenStyle.SolidLine and x.size > _MANY
        item.setSegmentedLineMode("on" if many else "off")
        item.setData(x, y, pen=pen, connect="finite")

    def band(self, name: str, x: Floats, low: Floats, high: Floats, colour: QColor) -> None:
        """The ground between two lines."""
        item = self._taken(name, QGraphicsPathItem, UNDER)
        around = np.concatenate([x, x[::-1]]), np.concatenate([low, high[::-1]])
        path: QPainterPath = pg.arrayToQPath(*around)
        item.setPath(path)
        item.setPen(QPen(_NO_PEN))
        item.setBrush(QBrush(colour))

    def spots(
        self, name: str, x: Floats, y: Floats, symbol: str, size: float, pen: QPen, brush: QBrush,
        depth: int = SPOT,
    ) -> None:  # fmt: skip
        """Spots of one shape and size (in pixels)."""
        item = self._taken(name, pg.ScatterPlotItem, depth)
        item.setData(x=x, y=y, symbol=symbol, size=size, pen=pen, brush=brush)

    def bars(
        self, name: str, middles: Floats, heights: Floats, width: float, colour: QColor, depth: int
    ) -> None:
        """Bars standing on 0."""
        item = self._taken(name, lambda: pg.BarGraphItem(x=[], height=[], width=width), depth)
        item.setOpts(x=middles, height=heights, width=width, brush=colour, pen=QPen(_NO_PEN))

    def level(self, name: str, value: float, pen: QPen) -> None:
        """A line across at one value."""
        self._straight(name, value, pen, 0, LINE)

    def moment(self, name: str, at: float, pen: QPen, depth: int = UNDER) -> None:
        """A line down at one place."""
        self._straight(name, at, pen, 90, depth)

    def strip(self, name: str, first: float, last: float, colour: QColor) -> None:
        """A strip from the top of the view to its foot."""
        item = self._taken(
            name, lambda: pg.LinearRegionItem(movable=False, pen=QPen(_NO_PEN)), BEHIND
        )
        item.setBrush(colour)
        item.setRegion((first, last))

    def words(
        self, name: str, text: str, colour: QColor, font: QFont, ground: QBrush,
        anchor: tuple[float, float] = (0, 0),
    ) -> Any:  # fmt: skip
        """Words on a ground of their own, whose place is set by who wants them."""
        item = self._taken(name, lambda: pg.TextItem(anchor=anchor), LINE)
        item.fill = ground
        item.setFont(font)
        item.setText(text, colour)
        return item

    def _straight(self, name: str, at: float, pen: QPen, angle: int, depth: int) -> None:
        item = self._taken(name, lambda: pg.InfiniteLine(angle=angle), depth)
        item.setPen(pen)
        item.setValue(at)

    def _taken(self, name: str, make: Callable[[], Any], depth: int) -> Any:
        """The part called ``name``, as it stood in the last drawing or new."""
        item = self._items[name] if name in self._items else self._before.pop(name, None)
        if item is None:
            item = make()
            self._view.addItem(item, ignoreBounds=True)
        item.setZValue(depth)
        self._items[name] = item
        return item
