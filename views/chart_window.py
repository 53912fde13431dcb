"""What of a series is in view: the days of a span, and the values that these need."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

import numpy as np
from numpy.typing import NDArray

from views.measures import Shown
from views.progress_series import Series

_AHEAD_SHARE: Final = 0.5
_MOST_AHEAD: Final = 84
_LITTLE_AHEAD: Final = 7
_GOAL_REACH: Final = 1.0
"""A goal further away than this share of what is seen is not brought into view."""


def span_of(series: Series, weeks: int | None) -> tuple[float, float]:
    """First and last day to show of the last ``weeks`` (None: all), with some way ahead."""
    begun = min([spot.day for spot in series.spots[:1]] or [series.today])
    past = 7 * weeks if weeks is not None else max(series.today - begun, 28)
    ahead = _LITTLE_AHEAD
    if series.forecast is not None:
        ahead = min(_MOST_AHEAD, round(past * _AHEAD_SHARE))
    margin = 3 if weeks is None else 0
    return float(series.today - past - margin), float(series.today + ahead)


def fitting(series: Series, first: float, last: float) -> tuple[float, float]:
    """The lowest and highest value to show for these days, with room for words at the edges."""
    seen = _seen(series, first, last)
    if not seen:
        seen = [0.0, 1.0]
    low, high = min(seen), max(seen)
    for value, _ in series.goals:
        if low - _GOAL_REACH * (high - low) <= value <= high + _GOAL_REACH * (high - low):
            low, high = min(low, value), max(high, value)
    least = {Shown.VARIATION: 1.0, Shown.HOLD: 5.0, Shown.SET: 5.0}.get(series.shown, 5.0)
    if high - low < least:
        middle = (high + low) / 2
        low, high = middle - least / 2, middle + least / 2
    room = high - low
    second = any(moment.kind == "variation" for moment in series.moments)
    return low - 0.16 * room, high + (0.32 if second else 0.2) * room


def _seen(series: Series, first: float, last: float) -> list[float]:
    second = series.second
    seen = (series.days >= first) & (series.days <= last)
    spots: list[float] = series.heights[seen].tolist()
    if second is not None:
        spots += [spot.value for spot in second.spots if first <= spot.day <= last]
    around: list[float] = []
    for band in (series.trend, series.forecast, second.trend if second is not None else None):
        if band is not None:
            around += _inside(band.days, (band.low, band.high), first, last)
    if not spots:
        return around
    # A wide band ahead must not press the sessions flat: it may take as much again, no more.
    spread = max(max(spots) - min(spots), 0.05 * max(spots))
    bounded = [min(max(v, min(spots) - spread), max(spots) + spread) for v in around]
    return [*spots, *bounded]


def _inside(
    days: NDArray[np.float64],
    edges: Sequence[NDArray[np.float64]],
    first: float,
    last: float,
) -> list[float]:
    taken = (days >= first) & (days <= last)
    return [
        float(end)
        for edge in edges
        if taken.any()
        for end in (edge[taken].min(), edge[taken].max())
    ]


def limits_of(series: Series) -> tuple[float, float]:
    """The days that can be scrolled to: all that is known, a year at least, and a little more."""
    first = min([spot.day for spot in series.spots[:1]] or [series.today])
    return float(min(first, series.today - 365) - 14), float(series.today + _MOST_AHEAD + 14)
