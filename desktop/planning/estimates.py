"""Estimates: the best one of each session of a line, and the trend through them."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from typing import TYPE_CHECKING, Final, NamedTuple

from desktop.planning.history import History
from desktop.planning.surroundings import Scope, scope_of, surrounded_of, surroundings_at
from desktop.training.coach import CoachSettings
from desktop.training.demand import effective_load_g
from desktop.training.exercises import Measure
from desktop.training.position import Surroundings
from desktop.training.program import Line
from desktop.training.scale import ALL_FAMILIES
from desktop.training.session import LineDone, Session, SetDone
from desktop.training.strength import MOST_REPS, Estimate, StrengthError, estimate, one_rep_max

if TYPE_CHECKING:
    from desktop.training.trend import Trend

LEAST_POINTS: Final = 4
LEAST_SPAN: Final = timedelta(days=14)
"""Fewer or closer points make no trend worth showing (common practice)."""

EVERY_FAMILY: Final = ((date.min, ALL_FAMILIES),)


class Worked(NamedTuple):
    """A line's part of one session: its working sets, each with its effective load in grams (None:
    not known). A tuple, since ten years of them are made while somebody waits for a chart.
    """

    session: Session
    part: LineDone
    around: Surroundings
    working: tuple[SetDone, ...]
    loads: list[float | None]


Done = Sequence[tuple[Session, LineDone]]
"""A line's part of each session, oldest first."""


@dataclass(frozen=True, slots=True)
class Point:
    """The best estimate of one session. ``load_g`` is the effective load of its set, ``added_g``
    the load as typed; ``rir`` None: not told. ``counted`` False: left out of the trend (an easier
    week, or pain).
    """

    day: date
    session_id: int | None
    one_rep_max_g: float
    log_sd: float
    certain: bool
    load_g: float
    added_g: int
    reps: int
    rir: float | None
    variation: str | None
    counted: bool = True
    test: bool = False


def surroundings_by_day(
    history: History, line: Line, days: Iterable[date]
) -> dict[date, Surroundings]:
    """What surrounded the line on each of ``days`` (ascending), with all variations on record."""
    scope = Scope(also=scope_of(history, line, ()).also, families=EVERY_FAMILY)
    changes = list(surrounded_of(history, line, scope))
    now: Surroundings | None = None
    by_day: dict[date, Surroundings] = {}
    for day in days:
        if now is None:
            now = surroundings_at(history, line, day, scope)
        while changes and changes[0].day <= day:
            now = changes.pop(0).surroundings
        by_day[day] = now
    return by_day


def worked_of(done: Done, around: dict[date, Surroundings]) -> tuple[Worked, ...]:
    """The working sets of each session with their effective loads."""
    # Years of training hold few different loads: each is reckoned once while nothing changes.
    known: dict[tuple[int, int, str | None], float | None] = {}

    def load_of(one: SetDone, here: Surroundings) -> float | None:
        key = (id(here), one.load_g, one.variation)
        if key not in known:
            known[key] = effective_load_g(one.load_g, one.variation, here)
        return known[key]

    found: list[Worked] = []
    for session, part in done:
        here, working = around[session.day], part.working_sets
        found.append(Worked(session, part, here, working, [load_of(one, here) for one in working]))
    return tuple(found)


def points_of(
    history: History, line: Line, done: Done, around: dict[date, Surroundings]
) -> tuple[Point, ...]:
    """The best estimate of each session; none for holds and sets of too many repetitions."""
    return points_in(history, line, worked_of(done, around))


def points_in(history: History, line: Line, worked: Sequence[Worked]) -> tuple[Point, ...]:
    """`points_of`, from working sets with their loads."""
    if history.exercise_of(line).measure is Measure.HOLD:
        return ()
    estimates = _Estimates(history.library.settings.equation)
    found = (_point(each, estimates) for each in worked)
    return tuple(point for point in found if point is not None)


def trend_of(points: Sequence[Point], settings: CoachSettings) -> Trend | None:
    """The trend through the counted points; None where they are too few or too close."""
    counted = [point for point in points if point.counted]
    if len(counted) < LEAST_POINTS or counted[-1].day - counted[0].day < LEAST_SPAN:
        return None
    from desktop.training.trend import smooth  # numpy: only when there is something to draw

    return smooth(
        [point.day.toordinal() for point in counted],
        [math.log(point.one_rep_max_g) for point in counted],
        [point.log_sd**2 for point in counted],
        half_life_days=7 * settings.trend_half_life_weeks,
    )


def plateau_probability(trend: Trend, settings: CoachSettings) -> float:
    """The probability that the gain a week is under what the coach counts as rising."""
    return trend.plateau_probability(settings.plateau_slope_percent / 100)


class _Estimates(dict[tuple[float, int, float | None, bool], Estimate | None]):
    """Estimates by effective load, repetitions, reserve and whether it was a test. In years of
    training the same set comes again and again: it is estimated once.
    """

    def __init__(self, equation: str) -> None:
        super().__init__()
        self._equation = equation

    def __missing__(self, key: tuple[float, int, float | None, bool]) -> Estimate | None:
        load_g, reps, rir, tested = key
        found = self[key] = estimate_by(load_g, reps, rir, self._equation, tested=tested)
        return found


def _point(worked: Worked, estimates: _Estimates) -> Point | None:
    session, part = worked.session, worked.part
    best: tuple[Estimate, SetDone, float] | None = None
    before: SetDone | None = None
    for done, load_g in zip(worked.working, worked.loads, strict=True):
        if done is before or not done.reps or load_g is None:
            continue  # sets alike are one object when read
        before = done
        estimated = estimates[load_g, done.reps, done.rir, part.test]
        if estimated and (best is None or estimated.value_g > best[0].value_g):
            best = (estimated, done, load_g)
    if best is None:
        return None
    estimated, done, load_g = best
    return Point(
        day=session.day,
        session_id=session.id,
        one_rep_max_g=estimated.value_g,
        log_sd=estimated.log_sd,
        certain=estimated.certain,
        load_g=load_g,
        added_g=done.load_g,
        reps=done.reps or 0,
        rir=done.rir,
        variation=done.variation,
        counted=is_counted(part),
        test=part.test,
    )


def estimate_by(
    load_g: float, reps: int, rir: float | None, equation: str, *, tested: bool = False
) -> Estimate | None:
    """The estimate by the coach's equation ("" the default mean), with the default's uncertainty.

    None where no estimate is made: a load outside what the equations take, too many repetitions.
    """
    try:
        default = estimate(load_g, reps, rir, tested=tested)
    except StrengthError:
        return None
    if default is None or not equation or reps + (rir or 0) > MOST_REPS:
        return default
    value_g = one_rep_max(load_g, reps, rir or 0.0, equation)
    return Estimate(value_g, default.log_sd, default.certain)


def is_counted(part: LineDone) -> bool:
    """Whether a session part counts for trends and bests: no easier week, no pain."""
    return not part.deload and part.worst_pain == 0
