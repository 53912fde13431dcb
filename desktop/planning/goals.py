"""Goals: which ones an exercise can have, what maximum one asks, and when the trend reaches it."""

from __future__ import annotations

import math
from dataclasses import dataclass
from datetime import date
from typing import TYPE_CHECKING

from desktop.planning.estimates import estimate_by
from desktop.planning.history import History
from desktop.planning.surroundings import equipment_on
from desktop.training.demand import effective_load_g
from desktop.training.exercises import Exercise, LoadingKind, Measure
from desktop.training.position import Surroundings
from desktop.training.scale import ALL_FAMILIES, scale
from desktop.training.trainee import Goal, GoalKind

if TYPE_CHECKING:
    from desktop.training.trend import Trend


@dataclass(frozen=True, slots=True)
class Reached:
    """The days between which a goal is reached with 80 % certainty, and the likeliest; None: not
    within a year.
    """

    earliest: date | None = None
    likely: date | None = None
    latest: date | None = None


NOT_SAID = Reached()
"""No trend, or nothing that a trend could reach."""


def kinds_of(exercise: Exercise) -> tuple[GoalKind, ...]:
    """What a goal of an exercise can be measured in, the usual one first."""
    variation = (GoalKind.VARIATION,) if exercise.variations else ()
    if exercise.measure is Measure.HOLD:
        return (GoalKind.HOLD, *variation)
    if exercise.loading is LoadingKind.BODYWEIGHT:
        return (GoalKind.REPS, GoalKind.ONE_REP_MAX, *variation)
    return (GoalKind.ONE_REP_MAX,)


def maximum_of(
    goal: Goal, around: Surroundings, variation: str | None, equation: str
) -> float | None:
    """The one-repetition maximum in grams that a goal asks; None where it asks none, or where it
    cannot be told: body mass or share not known, or too many repetitions.

    ``variation`` is the one done last, for a goal that names none.
    """
    if goal.kind is not GoalKind.ONE_REP_MAX:
        return None
    if goal.reps is None:
        return float(goal.value) if goal.value > 0 else None
    effective = effective_load_g(goal.value, goal.variation or variation, around)
    if effective is None:
        return None
    found = estimate_by(effective, goal.reps, 0.0, equation)
    return found.value_g if found is not None else None


def variation_names(history: History, exercise: Exercise, today: date) -> dict[str, str]:
    """The variations of an exercise by key, easiest first: those that the trainee can set up,
    then those that still need something.
    """
    owned = equipment_on(history.equipment, today)
    steps = scale(exercise, history.trainee, owned, ALL_FAMILIES)
    names = {step.key: step.name for step in steps}
    for each in exercise.variations:
        names.setdefault(each.key, each.name)
    return names


def reached_by(trend: Trend | None, maximum_g: float | None) -> Reached:
    """When a trend reaches a maximum in grams."""
    if trend is None or maximum_g is None:
        return NOT_SAID
    found = trend.date_to_reach(math.log(maximum_g))
    earliest, likely, latest = (
        None if day is None else date.fromordinal(day)
        for day in (found.earliest, found.likely, found.latest)
    )
    return Reached(earliest, likely, latest)
