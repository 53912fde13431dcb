"""Candidates: the exercises that a draft chooses from, each with its price.

The price says how far an exercise is from the first that a coach would take for the aim: how it
is loaded, how usual it is (the order of the catalogue), what it asks of somebody's practice.
All common practice.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from typing import Final

from desktop.drafting.prescription import (
    Prescription,
    Role,
    is_skill,
    most_minutes_a_set,
    place_of,
    prescription,
    usable_scale,
)
from desktop.drafting.wishes import Aim, DraftWishes
from desktop.training.exercises import Exercise, LoadingKind, Measure, Muscle, Pattern
from desktop.training.trainee import Experience
from desktop.training.volume import LEGS, PULLS, PUSHES, muscle_shares

_LOADING_PRICE: Final[Mapping[Aim, Mapping[LoadingKind, float]]] = {
    Aim.STRENGTH: {
        LoadingKind.BARBELL: 0.0,
        LoadingKind.DUMBBELL: 1.0,
        LoadingKind.BODYWEIGHT: 1.0,
        LoadingKind.KETTLEBELL: 1.5,
        LoadingKind.STACK: 1.5,
        LoadingKind.BAND: 3.0,
    },
    Aim.SIZE: {
        LoadingKind.BARBELL: 0.3,
        LoadingKind.DUMBBELL: 0.0,
        LoadingKind.STACK: 0.0,
        LoadingKind.BODYWEIGHT: 1.0,
        LoadingKind.KETTLEBELL: 1.5,
        LoadingKind.BAND: 3.0,
    },
    Aim.SKILL: {
        LoadingKind.BODYWEIGHT: 0.0,
        LoadingKind.BARBELL: 1.5,
        LoadingKind.DUMBBELL: 1.5,
        LoadingKind.KETTLEBELL: 1.5,
        LoadingKind.STACK: 2.5,
        LoadingKind.BAND: 3.0,
    },
}
_RANK_PRICE: Final = 0.35
_HOLD_PRICE: Final = 5.0
_NO_GROWTH_PRICE: Final = 4.0
_ONE_SIDED_PRICE: Final = 0.5
_NARROW_PRICE: Final = 1.0

# What should wait until somebody has trained for a while.
_PRACTISED: Final[Mapping[str, Experience]] = {
    "planche": Experience.INTERMEDIATE,
    "front-lever": Experience.INTERMEDIATE,
    "push-press": Experience.INTERMEDIATE,
    "good-morning": Experience.ADVANCED,
    "kettlebell-swing": Experience.INTERMEDIATE,
    "get-up": Experience.INTERMEDIATE,
    "overhead-carry": Experience.INTERMEDIATE,
    "wide-deadlift": Experience.INTERMEDIATE,
    "kneeling-hamstring-lowering": Experience.INTERMEDIATE,
    "rollout": Experience.INTERMEDIATE,
    "lying-body-lever": Experience.INTERMEDIATE,
    "bench-dip": Experience.INTERMEDIATE,
    "dip": Experience.INTERMEDIATE,
    "muscle-up": Experience.ADVANCED,
}

_A_PATTERN: Final = 4
_TOO_DEAR: Final = 3.0


@dataclass(frozen=True, slots=True)
class Candidate:
    """An exercise that can be taken: how it is asked for, minutes a set (change-over apart), what
    one set counts for each muscle, and its price.
    """

    exercise: Exercise
    prescribed: Prescription
    minutes: float
    shares: Mapping[Muscle, float]
    price: float

    @property
    def key(self) -> str:
        """The exercise's key."""
        return self.exercise.key

    @property
    def pattern(self) -> Pattern:
        """The exercise's pattern."""
        return self.exercise.pattern

    @property
    def role(self) -> Role:
        """What it is to a day."""
        return self.prescribed.role


def possible(exercises: Iterable[Exercise], wishes: DraftWishes) -> tuple[Exercise, ...]:
    """What equipment and level allow, avoided or not, in the order of the catalogue."""
    level = place_of(wishes.level)
    return tuple(
        exercise
        for exercise in exercises
        if wishes.can_do(exercise)
        and place_of(_PRACTISED.get(exercise.key, Experience.NOVICE)) <= level
    )


def candidates(exercises: Iterable[Exercise], wishes: DraftWishes) -> tuple[Candidate, ...]:
    """The exercises to choose from: for each pattern the cheapest, of each kind a few."""
    ranks: Counter[tuple[Pattern, LoadingKind]] = Counter()
    priced: list[tuple[float, Exercise]] = []
    for exercise in possible(exercises, wishes):
        kind = (exercise.pattern, exercise.loading)
        price = _price(exercise, wishes) + _RANK_PRICE * ranks[kind]
        ranks[kind] += 1
        if not wishes.avoid.forbids(exercise):
            priced.append((price, exercise))
    priced.sort(key=lambda one: one[0])
    return tuple(_candidate(exercise, price, wishes) for price, exercise in _short(priced))


def nearly_equal(one: Exercise, other: Exercise) -> bool:
    """Whether two exercises of one pattern train the same muscles directly."""
    return one.pattern is other.pattern and set(one.direct) == set(other.direct)


def _short(priced: list[tuple[float, Exercise]]) -> Iterable[tuple[float, Exercise]]:
    """A short list: the cheapest of those that are nearly equal, of each pattern a few, and none
    that is far from the first that comes to mind.
    """
    kept: dict[Pattern, list[tuple[float, Exercise]]] = {}
    for price, exercise in priced:
        others = kept.setdefault(exercise.pattern, [])
        if any(nearly_equal(exercise, other) for _, other in others):
            continue
        few = exercise.pattern is not Pattern.SINGLE_JOINT
        if few and others and (len(others) == _A_PATTERN or price > others[0][0] + _TOO_DEAR):
            continue
        others.append((price, exercise))
        yield price, exercise


def _candidate(exercise: Exercise, price: float, wishes: DraftWishes) -> Candidate:
    prescribed = prescription(exercise, wishes)
    minutes = most_minutes_a_set(prescribed.blocks, (exercise,))
    return Candidate(exercise, prescribed, minutes, muscle_shares(exercise), price)


def _price(exercise: Exercise, wishes: DraftWishes) -> float:
    price = _LOADING_PRICE[wishes.aim][exercise.loading]
    held = exercise.measure is Measure.HOLD
    skilled = wishes.aim is Aim.SKILL and is_skill(exercise)
    if held and exercise.pattern in LEGS | PUSHES | PULLS and not skilled:
        price += _HOLD_PRICE
    if exercise.unilateral and exercise.pattern in PUSHES | PULLS | {Pattern.SQUAT, Pattern.HINGE}:
        price += _ONE_SIDED_PRICE
    if len(exercise.direct) < 2 and exercise.pattern in LEGS | PUSHES | PULLS and not skilled:
        price += _NARROW_PRICE
    if exercise.loading is LoadingKind.BODYWEIGHT and len(usable_scale(exercise, wishes)) < 2:
        price += _NO_GROWTH_PRICE
    return price
