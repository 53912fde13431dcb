"""Series: one measure of a line's progress as numbers to draw, in the trainee's unit.

Days are ordinals. Nothing here knows how it is drawn.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum
from functools import cached_property
from typing import Final, NamedTuple

import numpy as np
from numpy.typing import NDArray

from desktop.planning.marks import Mark, MarkKind
from desktop.planning.progress import BestSet, Curve, GoalLine, LineProgress, Point, Week
from desktop.training.exercises import Measure
from desktop.training.quantities import Unit
from views.measures import (
    Shown,
    at_load,
    goals_by,
    is_bodyweight,
    usual_load,
    value_by,
    variations_used,
)

FEW_REPS: Final = 5
MANY_REPS: Final = 11
"""Up to the first a spot is a square, from the second on a ring, between them a disc."""

Floats = NDArray[np.float64]


class Shape(StrEnum):
    """A spot's shape: by repetitions, and hollow where the estimate is less certain."""

    SQUARE = "square"
    HOLLOW_SQUARE = "hollow square"
    DISC = "disc"
    RING = "ring"


class Spot(NamedTuple):
    """One session: its day, its value, how it looks, and what it stands for. ``counted`` False:
    an easier week, or pain. A tuple, since ten years of them are made while somebody waits.
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
class Second:
    """What a series is compared with: named, on the same axes. ``moved``: by so many days."""

    name: str
    spots: tuple[Spot, ...]
    trend: Band | None = None
    moved: int = 0


@dataclass(frozen=True, eq=False)  # no slots: its arrays are made once
class Series:
    """All that is drawn of one measure. ``values`` names the steps of the value axis where they
    are variations. ``steps``: the value holds from one session to the next. ``records``: for each
    spot, whether nothing before it was as much. ``load_g``: what repetitions are counted at.
    ``relative``: values are percent of body mass.
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
    records: tuple[bool, ...] = ()
    load_g: int | None = None
    second: Second | None = None
    relative: bool = False

    @property
    def counts(self) -> bool:
        """Whether values are repetitions or seconds, which another load makes incomparable."""
        return self.shown is Shown.HOLD or (self.shown is Shown.SET and self.bodyweight)

    @property
    def record(self) -> Spot | None:
        """The best of all that counts: the latest record."""
        return next(
            (self.spots[i] for i in reversed(range(len(self.records))) if self.records[i]), None
        )

    @cached_property
    def days(self) -> Floats:
        """The day of each spot."""
        return np.array([day for day, *_ in self.spots], dtype=np.float64)

    @cached_property
    def by_look(self) -> dict[tuple[Shape, bool], NDArray[np.int64]]:
        """Which spots look alike: by shape, and whether they count, their places ascending."""
        found: dict[tuple[Shape, bool], list[int]] = {
            (shape, counted): [] for shape in Shape for counted in (True, False)
        }
        for index, (_, _, shape, _, _, counted) in enumerate(self.spots):
            found[shape, counted].append(index)
        return {look: np.array(places, dtype=np.int64) for look, places in found.items()}

    @cached_property
    def heights(self) -> Floats:
        """The value of each spot."""
        return np.array([value for _, value, *_ in self.spots], dtype=np.float64)


def series_of(
    progress: LineProgress, shown: Shown, unit: Unit, load_g: int | None = None
) -> Series:
    """One measure of ``progress``, masses in ``unit``. ``load_g``: the load at which repetitions
    are counted where that is shown (None: the usual one).
    """
    factor = 1 / float(unit.grams_each)
    estimates = shown is Shown.ESTIMATE
    chosen = (load_g or usual_load(progress)) if shown is Shown.AT_LOAD else None
    spots = _estimated(progress, factor) if estimates else _spots(progress, shown, factor, chosen)
    names = {step.key: step.name for step in progress.scale}
    used = variations_used(progress) if shown is Shown.VARIATION else ()
    kinds = (MarkKind.DELOAD, MarkKind.ABSENCE)
    changes = () if shown is Shown.VARIATION else _changes(progress, names)
    return Series(
        shown=shown,
        unit=unit,
        today=progress.today.toordinal(),
        bodyweight=is_bodyweight(progress),
        spots=spots,
        trend=_band(progress.trend, factor) if estimates else None,
        forecast=_band(progress.forecast, factor) if estimates else None,
        goals=goals_by(progress, shown, factor, chosen),
        strips=tuple(mark for mark in progress.marks if mark.kind in kinds),
        moments=(*_begun(progress), *changes),
        pains=tuple(mark for mark in progress.marks if mark.kind is MarkKind.PAIN),
        body_mass=_body_mass(progress.marks, factor),
        values=tuple(names.get(key, key) for key in used),
        steps=shown in (Shown.LOAD, Shown.MOMENT, Shown.VARIATION),
        weeks=progress.weeks,
        records=records_of(spots, shown, comparable=not _alike_only(progress, shown)),
        load_g=chosen,
    )


def records_of(spots: Sequence[Spot], shown: Shown, *, comparable: bool = True) -> tuple[bool, ...]:
    """For each session, whether it beat all before it.

    An easier week, pain and an uncertain estimate set no record, nor does the first session: it had
    nothing to beat. ``comparable`` False: only sets of the same variation and load are compared.
    """
    most: dict[tuple[str | None, int] | None, float] = {}
    found: list[bool] = []
    estimated = shown is Shown.ESTIMATE
    for _, value, _, best, point, counted in spots:
        if not counted or (estimated and (point is None or not point.certain)):
            found.append(False)
            continue
        key = None if comparable else (best.done.variation, best.done.load_g)
        before = most.get(key)
        found.append(before is not None and value > before)
        if before is None or value > before:
            most[key] = value
    return tuple(found)


def _alike_only(progress: LineProgress, shown: Shown) -> bool:
    """Whether values of another variation or load cannot be compared."""
    return shown is Shown.HOLD or (shown is Shown.SET and is_bodyweight(progress))


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
    shapes = {
        (reps, certain): shape_of(reps, certain=certain)
        for reps, certain in {(point.reps, point.certain) for point in progress.points}
    }
    return tuple(
        Spot(
            point.day.toordinal(), point.one_rep_max_g * factor,
            shapes[point.reps, point.certain], bests[point.day, point.session_id], point,
            point.counted,
        )
        for point in progress.points
    )  # fmt: skip


def _spots(
    progress: LineProgress, shown: Shown, factor: float, load_g: int | None
) -> tuple[Spot, ...]:
    value = value_by(progress, shown, factor)
    bests = progress.best_sets if load_g is None else at_load(progress, load_g)
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
        for best in bests
        if (height := value(best)) is not None
    )


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
