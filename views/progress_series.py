"""Series: one measure of a line's progress as numbers to draw, in the trainee's unit.

Days are ordinals. Nothing here knows how it is drawn.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from datetime import date
from enum import StrEnum
from typing import Final

import numpy as np
from numpy.typing import NDArray

from desktop.planning.marks import Mark, MarkKind
from desktop.planning.progress import BestSet, Curve, GoalLine, LineProgress, Point, Week
from desktop.training.exercises import LoadingKind, Measure
from desktop.training.quantities import Unit
from desktop.training.trainee import GoalKind

FEW_REPS: Final = 5
MANY_REPS: Final = 11
"""Up to the first a spot is a square, from the second on a ring, between them a disc."""

Floats = NDArray[np.float64]


class Shown(StrEnum):
    """What the chart shows of a line."""

    ESTIMATE = "estimate"
    LOAD = "load"
    SET = "set"
    HOLD = "hold"
    VARIATION = "variation"


class Shape(StrEnum):
    """A spot's shape: by repetitions, and hollow where the estimate is less certain."""

    SQUARE = "square"
    HOLLOW_SQUARE = "hollow square"
    DISC = "disc"
    RING = "ring"


@dataclass(frozen=True, slots=True)
class Spot:
    """One session: its day, its value, how it looks, and what it stands for. ``counted`` False:
    an easier week, or pain.
    """

    day: int
    value: float
    shape: Shape
    best: BestSet
    point: Point | None = None
    counted: bool = True


@dataclass(frozen=True, slots=True, eq=False)
class Band:
    """A line with its 80 % band."""

    days: Floats
    middle: Floats
    low: Floats
    high: Floats


@dataclass(frozen=True, slots=True)
class Moment:
    """A day on which something began: a program, a phase, another variation."""

    day: int
    kind: str
    label: str


@dataclass(frozen=True, slots=True, eq=False)
class Series:
    """All that is drawn of one measure. ``values`` names the steps of the value axis where they
    are variations. ``steps``: the value holds from one session to the next.
    """

    shown: Shown
    unit: Unit
    today: int
    bodyweight: bool
    spots: tuple[Spot, ...]
    trend: Band | None = None
    forecast: Band | None = None
    goals: tuple[tuple[float, GoalLine], ...] = ()
    strips: tuple[Mark, ...] = ()
    moments: tuple[Moment, ...] = ()
    pains: tuple[Mark, ...] = ()
    body_mass: tuple[Floats, Floats] | None = None
    values: tuple[str, ...] = ()
    steps: bool = False
    weeks: tuple[Week, ...] = ()

    @property
    def counts(self) -> bool:
        """Whether values are repetitions or seconds, which another load makes incomparable."""
        return self.shown is Shown.HOLD or (self.shown is Shown.SET and self.bodyweight)

    @property
    def days(self) -> Floats:
        """The day of each spot."""
        return np.array([spot.day for spot in self.spots], dtype=np.float64)

    @property
    def heights(self) -> Floats:
        """The value of each spot."""
        return np.array([spot.value for spot in self.spots], dtype=np.float64)


def measures_of(progress: LineProgress) -> tuple[Shown, ...]:
    """What can be shown of a line, the most telling first; nothing before its first session."""
    if not progress.best_sets:
        return ()
    held = progress.exercise.measure is Measure.HOLD
    loads = {best.done.load_g for best in progress.best_sets}
    told = any(best.top_g is not None for best in progress.best_sets)
    able = {
        Shown.HOLD: held,
        Shown.ESTIMATE: bool(progress.points),
        Shown.LOAD: told and (not held or len(loads) > 1),
        Shown.SET: not held,
        Shown.VARIATION: len(_used(progress)) > 1,
    }
    return tuple(shown for shown, possible in able.items() if possible)


def series_of(progress: LineProgress, shown: Shown, unit: Unit) -> Series:
    """One measure of ``progress``, masses in ``unit``."""
    factor = 1 / float(unit.grams_each)
    bodyweight = progress.exercise.loading is LoadingKind.BODYWEIGHT
    estimates = shown is Shown.ESTIMATE
    used = _used(progress)
    names = {step.key: step.name for step in progress.scale}
    kinds = (MarkKind.DELOAD, MarkKind.ABSENCE)
    return Series(
        shown=shown,
        unit=unit,
        today=progress.today.toordinal(),
        bodyweight=bodyweight,
        spots=_estimated(progress, factor) if estimates else _spots(progress, shown, factor),
        trend=_band(progress.trend, factor) if estimates else None,
        forecast=_band(progress.forecast, factor) if estimates else None,
        goals=_goals(progress, shown, factor),
        strips=tuple(mark for mark in progress.marks if mark.kind in kinds),
        moments=(
            *_begun(progress),
            *(() if shown is Shown.VARIATION else _changes(progress, names)),
        ),
        pains=tuple(mark for mark in progress.marks if mark.kind is MarkKind.PAIN),
        body_mass=_body_mass(progress.marks, factor),
        values=tuple(names.get(key, key) for key in used) if shown is Shown.VARIATION else (),
        steps=shown in (Shown.LOAD, Shown.VARIATION),
        weeks=progress.weeks,
    )


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
    return replace(
        series,
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

    return replace(
        series,
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


def step_line(days: Floats, values: Floats) -> tuple[Floats, Floats]:
    """A line that holds each value until the next day: two points for every step."""
    if days.size < 2:
        return days, values
    return np.repeat(days, 2)[1:], np.repeat(values, 2)[:-1]


def broken_line(series: Series) -> tuple[Floats, Floats]:
    """A line from session to session that breaks where another variation or load begins."""
    days: list[float] = []
    values: list[float] = []
    before: tuple[str | None, int] | None = None
    for spot in series.spots:
        counted_at = (spot.best.done.variation, spot.best.done.load_g)
        if series.counts and days and counted_at != before:
            days.append(float(spot.day))
            values.append(np.nan)
        before = counted_at
        days.append(float(spot.day))
        values.append(spot.value)
    return np.array(days), np.array(values)


def shape_of(amount: int, *, certain: bool) -> Shape:
    """How a set of so many repetitions is drawn."""
    if amount <= FEW_REPS:
        return Shape.SQUARE if certain else Shape.HOLLOW_SQUARE
    return Shape.DISC if certain and amount < MANY_REPS else Shape.RING


def _estimated(progress: LineProgress, factor: float) -> tuple[Spot, ...]:
    bests = {(best.day, best.session_id): best for best in progress.best_sets}
    return tuple(
        Spot(
            point.day.toordinal(),
            point.one_rep_max_g * factor,
            shape_of(point.reps, certain=point.certain),
            bests[point.day, point.session_id],
            point,
            point.counted,
        )
        for point in progress.points
    )


def _spots(progress: LineProgress, shown: Shown, factor: float) -> tuple[Spot, ...]:
    value = _value(progress, shown, factor)
    points = {(point.day, point.session_id): point for point in progress.points}
    held = progress.exercise.measure is Measure.HOLD
    return tuple(
        Spot(
            best.day.toordinal(),
            height,
            Shape.DISC if held else shape_of(best.amount, certain=best.amount < MANY_REPS),
            best,
            points.get((best.day, best.session_id)),
            best.counted,
        )
        for best in progress.best_sets
        if (height := value(best)) is not None
    )


def _value(
    progress: LineProgress, shown: Shown, factor: float
) -> Callable[[BestSet], float | None]:
    bodyweight = progress.exercise.loading is LoadingKind.BODYWEIGHT
    used = _used(progress)

    def value(best: BestSet) -> float | None:
        match shown:
            case Shown.LOAD:
                return None if best.top_g is None else best.top_g * factor
            case Shown.SET if not bodyweight:
                return None if best.work_g is None else best.work_g * factor
            case Shown.VARIATION:
                key = best.done.variation
                return float(used.index(key)) if key in used else None
        return float(best.amount)

    return value


def _used(progress: LineProgress) -> tuple[str, ...]:
    """The variations on record and in goals, easiest first."""
    keys = {best.done.variation for best in progress.best_sets}
    keys |= {goal.goal.variation for goal in progress.goals}
    return tuple(step.key for step in progress.scale if step.key in keys)


def _band(curve: Curve | None, factor: float) -> Band | None:
    if curve is None:
        return None
    kept = _kept(curve.days)
    lines = (line[kept] * factor for line in (curve.level_g, curve.low_g, curve.high_g))
    return Band(curve.days[kept], *lines)


def _kept(days: Floats) -> NDArray[np.intp]:
    """The places of a smooth curve that are drawn: all of the last year, one a week before it:
    ten years drawn by days would take as long as all the rest.
    """
    lately = int(np.searchsorted(days, days[-1] - 366))
    _, first = np.unique(days[:lately] // 7, return_index=True)
    return np.concatenate([first, np.arange(lately, days.size)])


def _goals(
    progress: LineProgress, shown: Shown, factor: float
) -> tuple[tuple[float, GoalLine], ...]:
    used = _used(progress)
    found: list[tuple[float, GoalLine]] = []
    for line in progress.goals:
        goal = line.goal
        match (goal.kind, shown):
            case (GoalKind.ONE_REP_MAX, Shown.ESTIMATE):
                found.append((goal.value * factor, line))
            case (GoalKind.HOLD, Shown.HOLD):
                found.append((float(goal.value), line))
            case (GoalKind.REPS, Shown.SET) if progress.exercise.loading is LoadingKind.BODYWEIGHT:
                found.append((float(goal.value), line))
            case (GoalKind.VARIATION, Shown.VARIATION) if goal.variation in used:
                found.append((float(used.index(goal.variation)), line))
    return tuple(found)


def _begun(progress: LineProgress) -> list[Moment]:
    kinds = (MarkKind.PROGRAM, MarkKind.PHASE)
    return [
        Moment(mark.first.toordinal(), mark.kind.value, mark.label)
        for mark in progress.marks
        if mark.kind in kinds and mark.first <= progress.today
    ]


def _changes(progress: LineProgress, names: dict[str, str]) -> list[Moment]:
    """The first session of every other variation, and of the first one where there are more."""
    moments: list[Moment] = []
    before: str | None = None
    for best in progress.best_sets:
        key = best.done.variation
        if key is not None and key != before:
            moments.append(Moment(best.day.toordinal(), "variation", names.get(key, key)))
            before = key
    return moments if len(moments) > 1 else []


def _body_mass(marks: Sequence[Mark], factor: float) -> tuple[Floats, Floats] | None:
    entries = [mark for mark in marks if mark.kind is MarkKind.BODY_MASS]
    if not entries:
        return None
    days = np.array([mark.first.toordinal() for mark in entries], dtype=np.float64)
    return days, np.array([mark.value * factor for mark in entries], dtype=np.float64)
