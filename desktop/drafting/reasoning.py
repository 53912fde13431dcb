"""Reasoning: what a draft says about its choices."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from itertools import combinations
from typing import Final

from desktop.drafting.candidates import Candidate, possible
from desktop.drafting.explanations import Explanation, Why, explain
from desktop.drafting.prescription import most_of
from desktop.drafting.week import LEAST_SETS, MAJOR, TIMES_A_WEEK, Taken
from desktop.drafting.wishes import Aim, DraftWishes, Wish
from desktop.training.balance import FUNDAMENTAL
from desktop.training.exercises import Exercise, LoadingKind, Muscle
from desktop.training.program import PhasePurpose, Program
from desktop.training.schedule import (
    WEEK,
    frequency_planned,
    least_days_between,
    session_minutes,
    volume_planned,
)
from desktop.training.trainee import Experience
from desktop.training.volume import MARKS

Days = tuple[tuple[Taken, ...], ...]

EASIER_EVERY: Final = 6


def explained(
    exercises: tuple[Exercise, ...],
    choice: tuple[Candidate, ...],
    days: Days,
    program: Program,
    wishes: DraftWishes,
) -> tuple[Explanation, ...]:
    """Every choice of a draft with its reason: week, exercises, sets, balance, minutes, weeks."""
    return (
        *_week(wishes),
        *_exercises(choice, days, wishes),
        *_rules(days),
        *_muscles(exercises, program, wishes),
        *_patterns(exercises, days, wishes),
        *_minutes(exercises, program, wishes),
        *_weeks(program, wishes),
    )


def _week(wishes: DraftWishes) -> Iterator[Explanation]:
    weekdays = wishes.training_weekdays
    between = least_days_between(weekdays) or WEEK
    yield explain(Why.DAYS, weekdays=", ".join(map(str, weekdays)), rest_days=between - 1)
    if wishes.days < TIMES_A_WEEK:
        yield explain(Why.ONE_DAY, advised=TIMES_A_WEEK)


def _exercises(
    choice: tuple[Candidate, ...], days: Days, wishes: DraftWishes
) -> Iterator[Explanation]:
    """Each exercise once, in the order in which the week brings them."""
    times = Counter(one.candidate.key for day in days for one in day)
    of = Counter(one.pattern for one in choice)
    for one in _once(days):
        yield explain(
            Why.CHOSEN,
            exercise=one.candidate.key,
            pattern=one.candidate.pattern.value,
            role=one.candidate.role.value,
            days=times[one.candidate.key],
            sets=one.sets,
            of=of[one.candidate.pattern],
        )
    for number, day in enumerate(days):
        for one, other in combinations(day, 2):
            if one.pair and one.pair == other.pair:
                weekday = wishes.training_weekdays[number]
                first, second = one.candidate.key, other.candidate.key
                yield explain(Why.PAIRED, day=weekday, first=first, second=second)


def _rules(days: Days) -> Iterator[Explanation]:
    loaded = False
    for one in _once(days):
        slot = one.slots[0]
        counted = slot.rule.ranges[0]
        loaded = loaded or one.candidate.exercise.loading is not LoadingKind.BODYWEIGHT
        yield explain(
            Why.RULE,
            exercise=one.candidate.key,
            variables=", ".join(each.variable.value for each in slot.rule.ranges),
            fewest=counted.floor,
            most=counted.ceiling,
            rest_s=slot.rest_s,
            reserve=slot.rule.target_rir,
        )
    yield explain(Why.STARTS, loaded=loaded)


def _muscles(
    exercises: tuple[Exercise, ...], program: Program, wishes: DraftWishes
) -> Iterator[Explanation]:
    known = {each.key: each for each in exercises}
    volume = volume_planned(program.phases[0], known)
    sessions = frequency_planned(program.phases[0], known).by_muscle
    mark = (MARKS[1] if wishes.aim is Aim.SIZE else MARKS[0]).sets
    for muscle in MAJOR:
        sets = volume.by_muscle.get(muscle, 0.0)
        if sets >= mark:
            times = sessions.get(muscle, 0.0)
            yield explain(Why.MUSCLE, muscle=muscle.value, sets=sets, days=times, mark=mark)
        else:
            cause = _cause_of_few(muscle, exercises, wishes, sets)
            yield explain(
                Why.MUSCLE_SHORT, muscle=muscle.value, sets=sets, mark=mark, cause=cause.value
            )
    yield explain(
        Why.BALANCE,
        push=volume.push,
        pull=volume.pull,
        upper=volume.upper,
        lower=volume.lower,
    )


def _cause_of_few(
    muscle: Muscle, exercises: tuple[Exercise, ...], wishes: DraftWishes, sets: float
) -> Wish:
    able = [each for each in possible(exercises, wishes) if muscle in each.direct]
    if not able:
        return Wish.EQUIPMENT
    if all(wishes.avoid.forbids(each) for each in able):
        return Wish.AVOID
    return Wish.MINUTES if sets >= LEAST_SETS or wishes.days > 1 else Wish.DAYS


def _patterns(
    exercises: tuple[Exercise, ...], days: Days, wishes: DraftWishes
) -> Iterator[Explanation]:
    trained = {one.candidate.pattern for day in days for one in day}
    for pattern in FUNDAMENTAL:
        if pattern in trained:
            continue
        able = [each for each in possible(exercises, wishes) if each.pattern is pattern]
        cause = Wish.MINUTES
        if not able:
            cause = Wish.EQUIPMENT
        elif all(wishes.avoid.forbids(each) for each in able):
            cause = Wish.AVOID
        yield explain(Why.PATTERN_LEFT_OUT, pattern=pattern.value, cause=cause.value)
    weekdays = wishes.training_weekdays
    for one, other in combinations(range(len(days)), 2):
        if (weekdays[other] - weekdays[one]) % WEEK not in (1, WEEK - 1):
            continue
        held = [{each.candidate.pattern for each in days[day]} for day in (one, other)]
        for pattern in FUNDAMENTAL:
            if pattern in held[0] & held[1]:
                first, second = weekdays[one], weekdays[other]
                yield explain(Why.PATTERN_CLOSE, pattern=pattern.value, first=first, second=second)


def _minutes(
    exercises: tuple[Exercise, ...], program: Program, wishes: DraftWishes
) -> Iterator[Explanation]:
    """The longest of a day in any phase, as it starts and at the most repetitions."""
    known = {each.key: each for each in exercises}
    for number, day in enumerate(program.phases[0].days):
        same = [phase.days[number] for phase in program.phases]
        yield explain(
            Why.MINUTES,
            day=day.name,
            minutes=max(session_minutes(each, known) for each in same),
            most=max(session_minutes(each, known, most_of) for each in same),
            allowed=wishes.minutes,
        )


def _weeks(program: Program, wishes: DraftWishes) -> Iterator[Explanation]:
    if any(phase.purpose is PhasePurpose.DELOAD for phase in program.phases):
        yield explain(Why.EASIER_WEEKS, every=EASIER_EVERY)
    elif wishes.level is Experience.NOVICE:
        yield explain(Why.NO_EASIER_WEEKS, level=wishes.level.value)


def _once(days: Days) -> Iterator[Taken]:
    seen: set[str] = set()
    for day in days:
        for one in day:
            if one.candidate.key not in seen:
                seen.add(one.candidate.key)
                yield one
