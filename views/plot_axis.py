"""An axis of a plot whose ticks and words come from one function."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from views.chart_library import pg

Ticks = Callable[[float, float, float], Sequence[tuple[float, str]]]
"""From the lowest and highest value in view and the pixels between to values with their words."""


class PlotAxis(pg.AxisItem):
    """At the "bottom" or "left" of a plot. ``origin`` is what 0 stands for inside."""

    def __init__(self, side: str, ticks: Ticks, origin: int = 0) -> None:
        super().__init__(side)
        self.ticks = ticks
        self._origin = origin
        self._words: dict[float, str] = {}

    def use(self, ticks: Ticks) -> None:
        """Take ticks from another function."""
        self.ticks = ticks
        self.picture = None
        self.update()

    def tickValues(self, low: float, high: float, size: float) -> list[tuple[float, list[float]]]:
        found = self.ticks(low + self._origin, high + self._origin, size)
        self._words = {value - self._origin: text for value, text in found}
        return [(1.0, list(self._words))]

    def tickStrings(self, values: list[float], _scale: float, _spacing: float) -> list[str]:
        return [self._words.get(value, "") for value in values]
