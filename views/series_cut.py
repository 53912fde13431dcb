"""A series cut to some days and values: a drawing hides nothing that runs out of its frame."""

from __future__ import annotations

import math
from dataclasses import replace
from datetime import date

import numpy as np

from views.progress_series import Band, Floats, Series


def cut(series: Series, first: float, last: float) -> Series:
    """What of ``series`` lies on the days from first to last."""

    def inside(day: float) -> bool:
        return first <= day <= last

    strips = [
        replace(
            mark,
            first=max(mark.first, date.fromordinal(math.ceil(first))),
            last=min(mark.last, date.fromordinal(math.floor(last))),
        )
        for mark in series.strips
        if mark.first.toordinal() <= last and mark.last.toordinal() >= first
    ]
    second = series.second
    if second is not None:
        second = replace(
            second,
            spots=tuple(spot for spot in second.spots if inside(spot.day)),
            trend=_cut_band(second.trend, first, last),
        )
    return replace(
        series,
        second=second,
        records=tuple(
            record
            for record, spot in zip(series.records, series.spots, strict=True)
            if inside(spot.day)
        ),
        spots=tuple(spot for spot in series.spots if inside(spot.day)),
        trend=_cut_band(series.trend, first, last),
        forecast=_cut_band(series.forecast, first, last),
        strips=tuple(strips),
        moments=tuple(moment for moment in series.moments if inside(moment.day)),
        pains=tuple(mark for mark in series.pains if inside(mark.first.toordinal())),
        body_mass=_cut_masses(series.body_mass, first, last),
        weeks=tuple(
            week
            for week in series.weeks
            if inside(week.first.toordinal()) and inside(week.first.toordinal() + 6)
        ),
    )


def flattened(series: Series, low: float, high: float) -> Series:
    """``series`` with bands and goals that keep to the values from low to high."""

    def flat(band: Band | None) -> Band | None:
        if band is None:
            return None
        lines = (np.clip(line, low, high) for line in (band.middle, band.low, band.high))
        return Band(band.days, *lines)

    second = series.second
    return replace(
        series,
        second=replace(second, trend=flat(second.trend)) if second is not None else None,
        trend=flat(series.trend),
        forecast=flat(series.forecast),
        goals=tuple(goal for goal in series.goals if low <= goal[0] <= high),
    )


def _cut_masses(
    masses: tuple[Floats, Floats] | None, first: float, last: float
) -> tuple[Floats, Floats] | None:
    if masses is None:
        return None
    days, values = masses
    kept = (days >= first) & (days <= last)
    return (days[kept], values[kept]) if kept.any() else None


def _cut_band(band: Band | None, first: float, last: float) -> Band | None:
    if band is None or band.days[-1] < first or band.days[0] > last:
        return None
    ends = np.clip([first, last], band.days[0], band.days[-1])
    days = np.union1d(ends, band.days[(band.days >= first) & (band.days <= last)])
    lines = (np.interp(days, band.days, line) for line in (band.middle, band.low, band.high))
    return Band(days, *lines)
