"""A second series: what a line is compared with, on the axes of the first."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

import numpy as np

from desktop.planning.progress import LineProgress
from desktop.planning.rivals import Rival, RivalKind
from desktop.training.quantities import Unit
from views.measures import Shown, measures_of
from views.progress_series import Band, Floats, Second, Series, Spot, series_of

OF_MASS = frozenset({Shown.ESTIMATE, Shown.LOAD})
"""Measures that can be told relative to body mass."""


def compared(
    series: Series, rival: Rival, name: str, other: LineProgress | None, unit: Unit
) -> Series:
    """``series`` with a second one called ``name``.

    Goals and forecast are left out. Two trainees are compared relative to body mass where both are
    on record. ``other``: the progress of another line.
    """
    bare = replace(series, goals=(), forecast=None)
    match rival.kind:
        case RivalKind.EARLIER:
            return replace(bare, second=_moved(series, name, rival.days))
        case RivalKind.VARIATION:
            return _parted(bare, name, rival.key)
    # Places on a scale of variations mean something else on every line.
    told = other is not None and series.shown in measures_of(other)
    if other is None or not told or series.shown is Shown.VARIATION:
        return replace(bare, second=Second(name, ()))
    beside = series_of(other, series.shown, unit, series.load_g)
    if rival.kind is RivalKind.TRAINEE and series.shown in OF_MASS:
        first, second = _relative(bare), _relative(beside)
        if first is not None and second is not None:
            return replace(first, second=Second(name, _counted(second.spots), second.trend))
    return replace(bare, second=Second(name, _counted(beside.spots), beside.trend))


def _counted(spots: Iterable[Spot]) -> tuple[Spot, ...]:
    """Easier weeks and pain say nothing where two are compared."""
    return tuple(spot for spot in spots if spot.counted)


def _moved(series: Series, name: str, days: int) -> Second:
    until = series.today - days
    spots = tuple(spot._replace(day=spot.day + days) for spot in series.spots if spot.day <= until)
    band = series.trend
    if band is not None:
        kept = band.days <= until
        lines = (line[kept] for line in (band.middle, band.low, band.high))
        band = Band(band.days[kept] + days, *lines) if kept.any() else None
    return Second(name, _counted(spots), band, moved=days)


def _parted(series: Series, name: str, variation: str) -> Series:
    """The sessions of one variation apart from all others, without a trend through both."""

    def of_it(spot: Spot) -> bool:
        estimated = spot.point if series.shown is Shown.ESTIMATE else None
        return (estimated or spot.best.done).variation == variation

    kept = [not of_it(spot) for spot in series.spots]
    return replace(
        series,
        spots=tuple(spot for spot in series.spots if not of_it(spot)),
        records=tuple(r for r, here in zip(series.records, kept, strict=True) if here),
        trend=None,
        second=Second(name, _counted(spot for spot in series.spots if of_it(spot))),
    )


def _relative(series: Series) -> Series | None:
    """``series`` in percent of the body mass of the day; None where no body mass is on record."""
    if series.body_mass is None:
        return None
    days, masses = series.body_mass

    def share(values: Floats, on: Floats) -> Floats:
        last = np.searchsorted(days, on, side="right") - 1
        return np.asarray(values / masses[np.maximum(last, 0)] * 100, dtype=np.float64)

    heights = share(series.heights, series.days)
    band = series.trend
    if band is not None:
        lines = (share(line, band.days) for line in (band.middle, band.low, band.high))
        band = Band(band.days, *lines)
    return replace(
        series,
        spots=tuple(
            spot._replace(value=float(value))
            for spot, value in zip(series.spots, heights, strict=True)
        ),
        trend=band,
        relative=True,
    )
