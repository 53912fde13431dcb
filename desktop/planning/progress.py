"""Progress: what the chart of one line shows, and the numbers of the sentence above it."""

from __future__ import annotations

import math
from dataclasses import dataclass
from datetime import date
from statistics import NormalDist
from typing import TYPE_CHECKING, Final

from db.repository import Repository
from desktop.planning.best_sets import BestSet as BestSet
from desktop.planning.best_sets import best_of as best_of
from desktop.planning.best_sets import best_sets_of
from desktop.planning.estimates import LEAST_POINTS as LEAST_POINTS
from desktop.planning.estimates import LEAST_SPAN as LEAST_SPAN
from desktop.planning.estimates import Point as Point
from desktop.planning.estimates import estimate_by as estimate_by
from desktop.planning.estimates import plateau_probability as plateau_probability
from desktop.planning.estimates import points_in, worked_of
from desktop.planning.estimates import points_of as points_of
from desktop.planning.estimates import surroundings_by_day as surroundings_by_day
from desktop.planning.estimates import trend_of as trend_of
from desktop.planning.goals import maximum_of, reached_by
from desktop.planning.history import History
from desktop.planning.line_history import read_about, with_line
from desktop.planning.marks import Mark, marks_of
from desktop.planning.surroundings import surroundings_at
from desktop.planning.training_weeks import Week as Week
from desktop.planning.training_weeks import week_of as week_of
from desktop.planning.training_weeks import weeks_of
from desktop.training.coach import CoachSettings
from desktop.training.exercises import Exercise
from desktop.training.position import ScaledVariation
from desktop.training.program import Line
from desktop.training.trainee import Goal

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    from desktop.training.trend import Trend

FORECAST_DAYS: Final = 84
BAND: Final = 0.8


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
    year, or no trend). ``maximum_g``: the one-repetition maximum that a load asks, where it can be
    told.
    """

    goal: Goal
    earliest: date | None = None
    likely: date | None = None
    latest: date | None = None
    maximum_g: float | None = None


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
    history = with_line(repository, read_about(repository, line.trainee_id), line, today)
    return progress_of(history, line, today, week_starts)


def progress_of(history: History, line: Line, today: date, week_starts: int = 0) -> LineProgress:
    """The chart of one line up to ``today``, from what was read."""
    done = [(session, part) for session, part in history.trained(line) if session.day <= today]
    around = surroundings_by_day(history, line, [session.day for session, _ in done])
    worked = worked_of(done, around)
    points = points_in(history, line, worked)
    trend = trend_of(points, history.library.settings)
    bests = best_sets_of(worked)
    here = around[done[-1][0].day] if done else surroundings_at(history, line, today)
    variation = bests[-1].done.variation if bests else None
    equation = history.library.settings.equation
    goals = [
        (goal, maximum_of(goal, here, variation, equation))
        for goal in history.goals
        if goal.line_id == line.id
    ]
    return LineProgress(
        line=line,
        exercise=history.exercise_of(line),
        today=today,
        points=points,
        best_sets=bests,
        weeks=weeks_of(history, line, bests, today, week_starts),
        marks=marks_of(history, line, today),
        goals=tuple(_goal_line(goal, maximum_g, trend) for goal, maximum_g in goals),
        trend=_trend_curve(trend) if trend else None,
        forecast=_forecast_curve(trend, today) if trend else None,
        statement=_statement(trend, history.library.settings) if trend else None,
        scale=around[done[-1][0].day].scale if done else (),
    )


def _goal_line(goal: Goal, maximum_g: float | None, trend: Trend | None) -> GoalLine:
    reached = reached_by(trend, maximum_g)
    return GoalLine(goal, reached.earliest, reached.likely, reached.latest, maximum_g)


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
