"""Progress: what the chart of one line shows, and the numbers of the sentence above it."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from statistics import NormalDist
from typing import TYPE_CHECKING, Final

from db.repository import Repository
from desktop.planning.history import History, read_history
from desktop.planning.marks import Mark, marks_of
from desktop.planning.schedule import WEEK, place_on, slot_of
from desktop.planning.surroundings import (
    Scope,
    scope_of,
    surrounded_of,
    surroundings_at,
    trained_parts,
)
from desktop.training.coach import CoachSettings
from desktop.training.demand import effective_load_g
from desktop.training.exercises import Exercise, Measure
from desktop.training.position import ScaledVariation, Surroundings
from desktop.training.program import Line
from desktop.training.scale import ALL_FAMILIES
from desktop.training.session import LineDone, Session, SetDone
from desktop.training.strength import MOST_REPS, Estimate, StrengthError, estimate, one_rep_max
from desktop.training.trainee import Goal, GoalKind

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    from desktop.training.trend import Trend

LEAST_POINTS: Final = 4
LEAST_SPAN: Final = timedelta(days=14)
"""Fewer or closer points make no trend worth showing (common practice)."""

FORECAST_DAYS: Final = 84
BAND: Final = 0.8

EVERY_FAMILY: Final = ((date.min, ALL_FAMILIES),)


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


@dataclass(frozen=True, slots=True)
class BestSet:
    """A session's best working set and its highest load. ``top_g`` is the highest effective load
    (None where it is not known), ``work_g`` the most of effective load x repetitions in one set,
    ``amount`` clean repetitions or seconds. ``counted`` False: an easier week, or pain.
    """

    day: date
    session_id: int | None
    top_g: float | None
    amount: int
    done: SetDone
    work_g: float | None = None
    counted: bool = True


@dataclass(frozen=True, slots=True)
class Week:
    """One week of the line: volume (grams of effective load x repetitions, both implements),
    hard sets done, and those that the program asked for.
    """

    first: date
    volume_g: float
    hard_sets: int
    planned_sets: int


@dataclass(frozen=True, slots=True, eq=False)
class Curve:
    """A trend or forecast: ordinals of days and, for each, grams with an 80 % band."""

    days: NDArray[np.float64]
    level_g: NDArray[np.float64]
    low_g: NDArray[np.float64]
    high_g: NDArray[np.float64]


@dataclass(frozen=True, slots=True)
class Statement:
    """The answer in numbers: gain a week as fractions with its 80 % interval, the probability of
    a plateau, today's level in grams.
    """

    gain_per_week: float
    gain_low: float
    gain_high: float
    plateau: float
    level_g: float


@dataclass(frozen=True, slots=True)
class GoalLine:
    """A goal of the line, and by the trend the days between which it is reached (None: not in a
    year, or no trend).
    """

    goal: Goal
    earliest: date | None = None
    likely: date | None = None
    latest: date | None = None


@dataclass(frozen=True, slots=True, eq=False)
class LineProgress:
    """Everything that the chart of one line shows. ``scale`` holds the variations of the record in
    order of difficulty, as they stood on the last day trained.
    """

    line: Line
    exercise: Exercise
    today: date
    points: tuple[Point, ...]
    best_sets: tuple[BestSet, ...]
    weeks: tuple[Week, ...]
    marks: tuple[Mark, ...]
    goals: tuple[GoalLine, ...]
    trend: Curve | None = None
    forecast: Curve | None = None
    statement: Statement | None = None
    scale: tuple[ScaledVariation, ...] = ()


def progress(
    repository: Repository, line_id: int, today: date, *, week_starts: int = 0
) -> LineProgress:
    """The chart of one line up to ``today``. ``week_starts``: 0 = Monday."""
    line = repository.line(line_id)
    return progress_of(read_history(repository, line.trainee_id), line, today, week_starts)


def progress_of(history: History, line: Line, today: date, week_starts: int = 0) -> LineProgress:
    """The chart of one line up to ``today``, from what was read."""
    done = [
        (session, part) for session, part in trained_parts(history, line) if session.day <= today
    ]
    around = surroundings_by_day(history, line, [session.day for session, _ in done])
    points = points_of(history, line, done, around)
    trend = trend_of(points, history.library.settings)
    exercise = history.exercise_of(line)
    return LineProgress(
        line=line,
        exercise=exercise,
        today=today,
        points=points,
        best_sets=tuple(_best_set(session, part, around[session.day]) for session, part in done),
        weeks=_weeks(history, line, exercise, done, around, today, week_starts),
        marks=marks_of(history, line, today),
        goals=tuple(_goal_line(goal, trend) for goal in history.goals if goal.line_id == line.id),
        trend=_trend_curve(trend) if trend else None,
        forecast=_forecast_curve(trend, today) if trend else None,
        statement=_statement(trend, history.library.settings) if trend else None,
        scale=around[done[-1][0].day].scale if done else (),
    )


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


def points_of(
    history: History,
    line: Line,
    done: Sequence[tuple[Session, LineDone]],
    around: dict[date, Surroundings],
) -> tuple[Point, ...]:
    """The best estimate of each session; none for holds and sets of too many repetitions."""
    if history.exercise_of(line).measure is Measure.HOLD:
        return ()
    equation = history.library.settings.equation
    found = (_point(session, part, around[session.day], equation) for session, part in done)
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


def _point(session: Session, part: LineDone, around: Surroundings, equation: str) -> Point | None:
    best: tuple[Estimate, SetDone, float] | None = None
    alike = {(s.load_g, s.reps, s.rir, s.variation): s for s in part.working_sets}
    for done in alike.values():
        load_g = effective_load_g(done.load_g, done.variation, around)
        if not done.reps or load_g is None:
            continue
        estimated = estimate_by(load_g, done.reps, done.rir, equation, tested=part.test)
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
        counted=_counted(part),
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


def _counted(part: LineDone) -> bool:
    return not part.deload and part.worst_pain == 0


def _best_set(session: Session, part: LineDone, around: Surroundings) -> BestSet:
    best = best_of(part.working_sets, around)
    loads = [effective_load_g(s.load_g, s.variation, around) for s in part.working_sets]
    known = [load for load in loads if load is not None]
    work = [
        load * (one.reps or 0)
        for load, one in zip(loads, part.working_sets, strict=True)
        if load is not None
    ]
    top_g, work_g = max(known, default=None), max(work, default=None)
    return BestSet(
        session.day, session.id, top_g, best.amount, best, work_g, counted=_counted(part)
    )


def best_of(sets: Sequence[SetDone], around: Surroundings) -> SetDone:
    """The set that asked most: by demand, else by variation, load and clean amount in turn.

    There must be at least one.
    """
    places = {step.key: place for place, step in enumerate(around.scale)}

    def worth(done: SetDone) -> tuple[float, int, int, int]:
        load_g = effective_load_g(done.load_g, done.variation, around) or 0.0
        demand = load_g * (1 + (done.reps or 0) / 30)
        return (demand, places.get(done.variation or "", -1), done.load_g, done.amount)

    return max(sets, key=worth)


def _weeks(
    history: History,
    line: Line,
    exercise: Exercise,
    done: Sequence[tuple[Session, LineDone]],
    around: dict[date, Surroundings],
    today: date,
    week_starts: int,
) -> tuple[Week, ...]:
    if not done:
        return ()
    volume: dict[date, float] = {}
    sets: dict[date, int] = {}
    for session, part in done:
        first = week_of(session.day, week_starts)
        volume[first] = volume.get(first, 0.0) + sum(
            (effective_load_g(one.load_g, one.variation, around[session.day]) or 0.0)
            * (one.reps or 0)
            * exercise.implements
            for one in part.working_sets
        )
        sets[first] = sets.get(first, 0) + len(part.working_sets)
    span = range((week_of(today, week_starts) - min(sets)).days // 7 + 1)
    weeks = [min(sets) + index * WEEK for index in span]
    return tuple(
        Week(first, volume.get(first, 0.0), sets.get(first, 0), _planned(history, line, first))
        for first in weeks
    )


def week_of(day: date, week_starts: int) -> date:
    """The first day of the week that ``day`` lies in."""
    return day - timedelta(days=(day.weekday() - week_starts) % 7)


def _planned(history: History, line: Line, first: date) -> int:
    """Sets of the line that the program's week around ``first`` asks for by its slots."""
    place = place_on(history, first + timedelta(days=3))
    if place is None or place.phase is None:
        return 0
    slots = (slot_of(day, line.exercise, line.name) for day in place.phase.days)
    return sum(slot.start.sets for slot in slots if slot is not None)


def _goal_line(goal: Goal, trend: Trend | None) -> GoalLine:
    if trend is None or goal.kind is not GoalKind.ONE_REP_MAX or goal.value <= 0:
        return GoalLine(goal)
    reached = trend.date_to_reach(math.log(goal.value))
    return GoalLine(
        goal,
        *(
            None if day is None else date.fromordinal(day)
            for day in (reached.earliest, reached.likely, reached.latest)
        ),
    )


def _trend_curve(trend: Trend) -> Curve:
    import numpy as np

    low, high = trend.band(BAND)
    return Curve(trend.days, np.exp(trend.level), np.exp(low), np.exp(high))


def _forecast_curve(trend: Trend, today: date) -> Curve:
    """From the last point, a day at a time, to twelve weeks after ``today``."""
    import numpy as np

    last = int(trend.days[-1])
    days = np.arange(last, max(last, today.toordinal()) + FORECAST_DAYS + 1, dtype=np.float64)
    mean, _ = trend.forecast(days)
    low, high = trend.forecast_band(days, BAND)
    return Curve(days, np.exp(mean), np.exp(low), np.exp(high))


def _statement(trend: Trend, settings: CoachSettings) -> Statement:
    slope, sd = float(trend.slope_per_day[-1]), float(trend.slope_sd[-1])
    reach = NormalDist().inv_cdf((1 + BAND) / 2) * sd
    return Statement(
        gain_per_week=math.expm1(7 * slope),
        gain_low=math.expm1(7 * (slope - reach)),
        gain_high=math.expm1(7 * (slope + reach)),
        plateau=plateau_probability(trend, settings),
        level_g=math.exp(float(trend.level[-1])),
    )
