"""What a phase plans for a week: how often each day comes, its hard sets, spacing and minutes."""

from __future__ import annotations

import re
from collections import defaultdict
from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass
from itertools import pairwise
from typing import Final

from desktop.training.exercises import Exercise, Measure, Muscle, Pattern
from desktop.training.position import Position, SchemeKind
from desktop.training.program import Phase, Slot, TrainingDay
from desktop.training.volume import Volume, exercise_of, hard_sets, muscle_shares

WEEK: Final = 7

PositionOf = Callable[[Slot], Position]


def start_of(slot: Slot) -> Position:
    """The position a slot starts from: what is planned while nobody has trained it."""
    return slot.start


def times_a_week(phase: Phase, sessions_a_week: float | None = None) -> tuple[float, ...]:
    """How often each training day comes in a week, in the order of the days.

    A day with a weekday comes once. Days without share the rest of ``sessions_a_week`` in turn
    (None: once each).
    """
    fixed = sum(day.weekday is not None for day in phase.days)
    turning = len(phase.days) - fixed
    each = 1.0
    if turning and sessions_a_week is not None:
        each = max(sessions_a_week - fixed, 0.0) / turning
    return tuple(each if day.weekday is None else 1.0 for day in phase.days)


def volume_planned(
    phase: Phase,
    exercises: Mapping[str, Exercise],
    sessions_a_week: float | None = None,
    position_of: PositionOf = start_of,
) -> Volume:
    """The hard sets of one week of the phase, at each slot's position. Raises UnknownExercise."""
    return hard_sets(
        (exercise_of(exercises, slot.exercise), position_of(slot).sets * times)
        for day, times in zip(phase.days, times_a_week(phase, sessions_a_week), strict=True)
        for slot in day.slots
    )


@dataclass(frozen=True, slots=True)
class Frequency:
    """Sessions a week by pattern and by muscle (direct or indirect); what has none is absent."""

    by_pattern: Mapping[Pattern, float]
    by_muscle: Mapping[Muscle, float]


def frequency_planned(
    phase: Phase, exercises: Mapping[str, Exercise], sessions_a_week: float | None = None
) -> Frequency:
    """How many of a week's sessions train each pattern and muscle. Raises UnknownExercise."""
    return _frequency(
        ([exercise_of(exercises, slot.exercise) for slot in day.slots], times)
        for day, times in zip(phase.days, times_a_week(phase, sessions_a_week), strict=True)
    )


def least_days_between(weekdays: Iterable[int]) -> int | None:
    """The least days from one of the weekdays (0 = Monday) to the next, week after week.

    7 for a single one, None for none.
    """
    ordered = sorted(set(weekdays))
    if not ordered:
        return None
    return min(after - before for before, after in pairwise([*ordered, ordered[0] + WEEK]))


@dataclass(frozen=True, slots=True)
class Timing:
    """How long things take, in seconds; common practice.

    ``rep_s``: one repetition where no tempo is given. ``change_over_s``: from one exercise to the
    next, setting up included. ``warm_up_s``: before the first one.
    """

    rep_s: float = 3.0
    change_over_s: float = 120.0
    warm_up_s: float = 0.0


TIMING: Final = Timing()


def session_minutes(
    day: TrainingDay,
    exercises: Mapping[str, Exercise],
    position_of: PositionOf = start_of,
    timing: Timing = TIMING,
) -> float:
    """Minutes of one training day: sets x (work + rest) for each slot, and the change-overs.

    Work is repetitions x tempo, or the seconds held; twice where sides are trained one after the
    other. Slots of one pair letter are done in turn, and one is rested from while the others work:
    a round takes all their work, or the longest work with its rest, whichever is longer.
    Raises UnknownExercise.
    """
    paired: dict[str, list[_Timed]] = {}
    alone: list[list[_Timed]] = []
    for slot in day.slots:
        timed = _timed(slot, exercise_of(exercises, slot.exercise), position_of(slot), timing)
        if slot.pair:
            paired.setdefault(slot.pair, []).append(timed)
        else:
            alone.append([timed])
    in_turn = sum(_rounds_s(group) for group in (*alone, *paired.values()))
    whole = in_turn + len(day.slots) * timing.change_over_s
    return (whole + timing.warm_up_s) / 60 if day.slots else 0.0


@dataclass(frozen=True, slots=True)
class _Timed:
    sets: int
    work_s: float
    rest_s: float


def _timed(slot: Slot, exercise: Exercise, position: Position, timing: Timing) -> _Timed:
    amount: float = position.amount
    if slot.rule.scheme.kind is SchemeKind.TOTAL:
        amount /= max(position.sets, 1)
    if exercise.measure is Measure.REPS:
        amount *= position.tempo_s or tempo_seconds(slot.tempo) or timing.rep_s
    sides = 2 if exercise.unilateral else 1
    return _Timed(position.sets, amount * sides, slot.rest_s)


def tempo_seconds(tempo: str) -> int | None:
    """Seconds of one repetition at a tempo like "3-1-1" (down, held, up); None where not given.

    Anything may stand between the numbers; three or four marks with nothing between are one
    second-count each. A letter in place of a number (as fast as can be) counts as one second.
    """
    run_together = re.fullmatch(r"\s*[0-9A-Za-z]{3,4}\s*", tempo)
    parts: list[str] = re.findall(r"[0-9A-Za-z]" if run_together else r"[0-9]+|[A-Za-z]+", tempo)
    return sum(int(part) if part.isdigit() else 1 for part in parts) or None


def _rounds_s(group: list[_Timed]) -> float:
    """Seconds of slots done in turn, until the one with the most sets is through."""
    seconds = 0.0
    for number in range(max(timed.sets for timed in group)):
        going = [timed for timed in group if timed.sets > number]
        work_s = sum(timed.work_s for timed in going)
        seconds += max(work_s, *(timed.work_s + timed.rest_s for timed in going))
    return seconds


def _frequency(days: Iterable[tuple[list[Exercise], float]]) -> Frequency:
    patterns: defaultdict[Pattern, float] = defaultdict(float)
    muscles: defaultdict[Muscle, float] = defaultdict(float)
    for exercises, times in days:
        # Keys of a dict rather than a set: the same order every time.
        for pattern in dict.fromkeys(exercise.pattern for exercise in exercises):
            patterns[pattern] += times
        for muscle in dict.fromkeys(m for each in exercises for m in muscle_shares(each)):
            muscles[muscle] += times
    return Frequency(dict(patterns), dict(muscles))
