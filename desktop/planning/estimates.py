"""Estimates: the best one of each session of a line, and the trend through them."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from datetime import date, timedelta
from typing import TYPE_CHECKING, Final, NamedTuple

from desktop.planning.history import History
from desktop.planning.surroundings import Scope, scope_of, surrounded_of, surroundings_at
from desktop.training.coach import CoachSettings
from desktop.training.demand import effective_load_g
from desktop.training.exercises import Measure
from desktop.training.position import Surroundings
from desktop.training.program import Line
from desktop.training.quantities import MAX_LOAD_G
from desktop.training.scale import ALL_FAMILIES
from desktop.training.session import LineDone, Session, SetDone
from desktop.training.strength import (
    MOST_REPS,
    Estimate,
    StrengthError,
    estimate,
    one_rep_max,
)

if TYPE_CHECKING:
    from desktop.training.trend import Trend

LEAST_POINTS: Final = 4
LEAST_SPAN: Final = timedelta(days=14)
"""Fewer or closer points make no trend worth showing (common practice)."""

EVERY_FAMILY: Final = ((date.min, ALL_FAMILIES),)


class Worked(NamedTuple):
    """A line's part of one session: its working sets, each with its effective load in grams (None:
    not known). ``counted`` as in `is_counted`. A tuple, since ten years of them are made while
    somebody waits for a chart.
    """

    session: Session
    part: LineDone
    around: Surroundings
    working: tuple[SetDone, ...]
    loads: list[float | None]
    counted: bool


Done = Sequence[tuple[Session, LineDone]]
"""A line's part of each session, oldest first."""


class Point(NamedTuple):
    """The best estimate of one session. ``load_g`` is the effective load of its set, ``added_g``
    the load as typed; ``rir`` None: not told. ``counted`` False: left out of the trend (an easier
    week, or pain). A tuple, as `Worked` is.
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
    alike: dict[tuple[int, int], tuple[tuple[SetDone, ...], list[float | None], bool]] = {}

    def load_of(one: SetDone, here: Surroundings) -> float | None:
        key = (id(here), one.load_g, one.variation)
        if key not in known:
            known[key] = effective_load_g(one.load_g, one.variation, here)
        return known[key]

    found: list[Worked] = []
    for session, part in done:
        here = around[session.day]
        key = (id(part), id(here))  # parts alike are one object when a chart reads them
        told = alike.get(key)
        if told is None:
            working = part.working_sets
            loads = [load_of(one, here) for one in working]
            told = alike[key] = (working, loads, is_counted(part))
        found.append(Worked(session, part, here, *told))
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
    alike: dict[tuple[int, int], _Best | None] = {}
    found: list[Point] = []
    for each in worked:
        key = (id(each.part), id(each.around))
        best = alike[key] if key in alike else alike.setdefault(key, _best(each, estimates))
        if best is not None:
            found.append(_point(each, *best))
    return tuple(found)


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


_Best = tuple[SetDone, float, float, Estimate]
"""A set with its effective load and estimated maximum, in grams, and the estimate for one gram."""


class _Estimates(dict[tuple[int, float | None, bool], Estimate | None]):
    """Estimates for one gram by repetitions, reserve and whether it was a test: the maximum is so
    many times the load. In years of training the same ones come again and again.
    """

    def __init__(self, equation: str) -> None:
        super().__init__()
        self._equation = equation

    def __missing__(self, key: tuple[int, float | None, bool]) -> Estimate | None:
        reps, rir, tested = key
        found = self[key] = estimate_by(1.0, reps, rir, self._equation, tested=tested)
        return found


def _best(worked: Worked, estimates: _Estimates) -> _Best | None:
    """The working set of the highest estimate; None where none can be estimated."""
    best: _Best | None = None
    before: SetDone | None = None
    for done, load_g in zip(worked.working, worked.loads, strict=True):
        if done is before or not done.reps or load_g is None or load_g > MAX_LOAD_G:
            continue  # sets alike are one object when read
        before = done
        for_one = estimates[done.reps, done.rir, worked.part.test]
        if for_one is None:
            continue
        value_g = load_g * for_one.value_g
        if best is None or value_g > best[2]:
            best = (done, load_g, value_g, for_one)
    return best


def _point(
    worked: Worked, done: SetDone, load_g: float, value_g: float, for_one: Estimate
) -> Point:
    session = worked.session
    return Point(
        session.day, session.id, value_g, for_one.log_sd, for_one.certain, load_g, done.load_g,
        done.reps or 0, done.rir, done.variation, worked.counted, worked.part.test,
    )  # fmt: skip


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
