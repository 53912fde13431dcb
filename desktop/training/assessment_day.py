"""The assessment day: a test for each pattern, ramped or placed on a scale, and what it gives.

Never a maximum: how hard a test may be is said by `assessment.limits_for`. Which exercises are
tested, how many on one day, and how a ramp rises where no strength is known is common practice.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Final

from desktop.training.assessment import (
    NO_TEST_REPS,
    AssessmentError,
    EffortLimits,
    load_test,
    start_from_amount,
    start_from_load,
)
from desktop.training.demand import effective_load_g, load_at
from desktop.training.exercises import Exercise, LoadingKind, Measure, Pattern
from desktop.training.judging import weaker_sides
from desktop.training.position import Position, ProgressionRule, Surroundings, Variable
from desktop.training.program import Phase, PhasePurpose, Program, Slot, TrainingDay
from desktop.training.rules import new_slot
from desktop.training.session import AskedSet, SetDone
from desktop.training.strength import estimate

TESTED: Final = (
    Pattern.SQUAT,
    Pattern.HORIZONTAL_PUSH,
    Pattern.HORIZONTAL_PULL,
    Pattern.HINGE,
    Pattern.VERTICAL_PUSH,
    Pattern.VERTICAL_PULL,
    Pattern.TRUNK,
    Pattern.LUNGE,
)
"""In the order of the day: what follows one another tires different muscles."""

MOST_TESTS: Final = 6
"""On one day; more go on a second one."""

TEST_REST_S: Final = 180
MOST_REPS: Final = 20
MOST_SECONDS: Final = 60
_CAREFUL_REPS: Final = 12
_CAREFUL_SECONDS: Final = 45
_RISING_SETS: Final = 4
_RISE: Final = 1.25
_LOADED_FIRST: Final = (
    LoadingKind.BARBELL,
    LoadingKind.DUMBBELL,
    LoadingKind.BODYWEIGHT,
    LoadingKind.KETTLEBELL,
    LoadingKind.STACK,
)


@dataclass(frozen=True, slots=True)
class LineTest:
    """What one line is asked on a test day.

    ``ramp``: to warm up. ``sets``: those whose results are read; of rising sets the trainee stops
    after the first that leaves no more than ``limits.stop_rir`` in reserve. ``by_load``: read as
    an estimate of strength; else as a place on the variation scale, or seconds.
    """

    limits: EffortLimits
    ramp: tuple[AskedSet, ...]
    sets: tuple[AskedSet, ...]
    by_load: bool


# Which tests


def standard_tests(
    exercises: Iterable[Exercise], can_do: Callable[[Exercise], bool]
) -> tuple[Slot, ...]:
    """A test for each pattern with what can be done, where no program says which exercises."""
    able = [each for each in exercises if can_do(each) and not each.retired]
    found = (_first_of(pattern, able) for pattern in TESTED)
    return tuple(_test_slot(new_slot(each)) for each in found if each is not None)


def program_tests(program: Program, exercises: Mapping[str, Exercise]) -> tuple[Slot, ...]:
    """A test for each line of a program: one of each pattern first, in the order of the day, then
    the others. Lines that follow another, carries and exercises of one joint are not tested.
    """
    slots: dict[tuple[str, str], Slot] = {}
    for phase in program.phases:
        if phase.purpose is PhasePurpose.BUILD:
            for day in phase.days:
                for slot in day.slots:
                    slots.setdefault((slot.exercise, slot.line_name), slot)
    by_pattern: dict[Pattern, list[Slot]] = {pattern: [] for pattern in TESTED}
    for slot in slots.values():
        exercise = exercises.get(slot.exercise)
        if exercise and exercise.pattern in by_pattern and slot.rule.follow is None:
            by_pattern[exercise.pattern].append(slot)
    rounds = max(map(len, by_pattern.values()), default=0)
    return tuple(
        _test_slot(found[turn])
        for turn in range(rounds)
        for found in by_pattern.values()
        if turn < len(found)
    )


def assessment_phase(
    tests: Sequence[Slot], weekdays: Sequence[int | None] = (), name: str = "Assessment"
) -> Phase:
    """One week of tests: one day, or more where there are many; on ``weekdays`` in turn (none: in
    rotation). Raises ValueError without a test.
    """
    if not tests:
        raise ValueError("an assessment needs at least one test")
    parts = [tests[at : at + MOST_TESTS] for at in range(0, len(tests), MOST_TESTS)]
    names = ["Tests"] if len(parts) == 1 else ["First tests", "More tests", "Last tests"]
    days = tuple(
        TrainingDay(
            names[min(number, len(names) - 1)],
            tuple(part),
            weekdays[number] if number < len(weekdays) else None,
        )
        for number, part in enumerate(parts)
    )
    return Phase(name, 1, days, PhasePurpose.ASSESS)


def with_assessment(
    program: Program, exercises: Mapping[str, Exercise], at: int = 0, name: str = "Assessment"
) -> Program:
    """The program with a week of tests of its own lines before phase ``at``: 0 first of all, the
    number of phases as a re-test at the end. At most as many days as the program has; the lines
    that then have no test keep the starts of their slots.
    """
    if not 0 <= at <= len(program.phases):
        raise ValueError(f"before phase 0 to {len(program.phases)}, not {at}")
    near = program.phases[min(at, len(program.phases) - 1)]
    weekdays = _apart([day.weekday for day in near.days])
    tests = program_tests(program, exercises)[: MOST_TESTS * max(1, len(weekdays))]
    phase = assessment_phase(tests, weekdays, name)
    return replace(program, phases=(*program.phases[:at], phase, *program.phases[at:]))


# What is asked


def line_test(
    exercise: Exercise,
    rule: ProgressionRule,
    around: Surroundings,
    limits: EffortLimits,
    *,
    position: Position | None = None,
    known_strength: bool = False,
) -> LineTest:
    """The test of one line with what surrounds it.

    ``position``: where the line stands, or begins. ``known_strength``: it was trained there, so
    that the ramp can rise towards an estimate; else rising sets begin with the lightest load.
    """
    if is_by_load(exercise, rule):
        variation = position.variation if position else None
        guess = _guess(position, rule, around) if position and known_strength else None
        if guess is None:
            return LineTest(limits, (), _rising(around, limits, variation), by_load=True)
        test = load_test(around, limits, guess_g=guess, variation=variation)
        return LineTest(limits, test.ramp, (test.test,), by_load=True)
    return LineTest(limits, (), (_amount_set(exercise, rule, around, limits, position),), False)


def is_by_load(exercise: Exercise, rule: ProgressionRule) -> bool:
    """Whether a test of the line is read as an estimated maximum: it counts repetitions, and what
    grows is a load rather than a variation.
    """
    if exercise.measure is Measure.HOLD or rule.range_of(Variable.HOLD) is not None:
        return False
    if exercise.loading is LoadingKind.BODYWEIGHT:
        return (
            rule.range_of(Variable.VARIATION) is None and rule.range_of(Variable.LOAD) is not None
        )
    return exercise.loading is not LoadingKind.BAND


# What it gives


def start_from_test(
    exercise: Exercise,
    done: Sequence[SetDone],
    sets: int,
    rule: ProgressionRule,
    around: Surroundings,
) -> tuple[Position, float | None]:
    """The first position from the sets of a test, rounded down, and by which fraction it may be
    off (None: not known). Of several sets that which shows most counts; of two sides the weaker.

    Raises AssessmentError where nothing can be read from them.
    """
    working = [each for each in weaker_sides([d for d in done if not d.warm_up]) if each.amount]
    if not working:
        raise AssessmentError("no set was done")
    if any(each.pain for each in working):
        raise AssessmentError("there was pain: no start is taken from it")
    if is_by_load(exercise, rule):
        return start_from_load(_strongest(working, around), sets, rule, around)
    return start_from_amount(_furthest(working, around), sets, rule, around)


def _first_of(pattern: Pattern, able: Sequence[Exercise]) -> Exercise | None:
    """The first exercise of the pattern: loaded if it can be, repetitions but for the trunk."""
    wanted = Measure.HOLD if pattern is Pattern.TRUNK else Measure.REPS
    found = [each for each in able if each.pattern is pattern and each.measure is wanted]
    loadings = list(_LOADED_FIRST)
    found = [each for each in found if each.loading in loadings]
    return min(
        found, key=lambda each: (each.unilateral, loadings.index(each.loading)), default=None
    )


def _test_slot(slot: Slot) -> Slot:
    return replace(slot, rest_s=TEST_REST_S, pair="", start=replace(slot.start, sets=1))


def _apart(weekdays: Sequence[int | None]) -> tuple[int | None, ...]:
    """The weekdays of which none follows another directly."""
    kept: list[int | None] = []
    for weekday in weekdays:
        last = kept[-1] if kept else None
        if weekday is None or last is None or weekday - last > 1:
            kept.append(weekday)
    return tuple(kept)


def _guess(position: Position, rule: ProgressionRule, around: Surroundings) -> float | None:
    """The maximum (effective load, grams) that the position promises with its reserve."""
    effective = effective_load_g(position.load_g, position.variation, around)
    if effective is None or not position.reps or effective <= 0:
        return None
    found = estimate(effective, position.reps, rule.target_rir)
    return found.value_g if found else None


def _rising(
    around: Surroundings, limits: EffortLimits, variation: str | None
) -> tuple[AskedSet, ...]:
    """Sets from the lightest load up, each a quarter heavier, as far as the equipment goes."""
    first = load_test(around, limits, variation=variation).test
    loads = [first.load_g]
    while len(loads) < _RISING_SETS and loads[-1] > 0:
        higher = _heavier(loads[-1], variation, around)
        if higher is None:
            break
        loads.append(higher)
    reps = min(NO_TEST_REPS, limits.most_reps)
    return tuple(
        replace(first, load_g=load_g, reps=reps, open_ended=False, stop_at=None) for load_g in loads
    )


def _heavier(load_g: int, variation: str | None, around: Surroundings) -> int | None:
    """The load a quarter above, rounded down; at least the next that can be made."""
    effective = effective_load_g(load_g, variation, around)
    if around.loads_g is None or effective is None:
        return None
    wanted = load_at(effective * _RISE, variation, around)
    above = [each for each in around.loads_g if each > load_g]
    if not above:
        return None
    return wanted if wanted is not None and wanted > load_g else above[0]


def _amount_set(
    exercise: Exercise,
    rule: ProgressionRule,
    around: Surroundings,
    limits: EffortLimits,
    position: Position | None,
) -> AskedSet:
    """One open set at the line's variation: the rule's least or more, and where to stop."""
    careful = limits.stop_rir >= 2
    able = [step.key for step in around.scale if step.available]
    variation = position.variation if position else None
    if around.scale and variation not in able:
        variation = able[0] if able else variation
    load_g = position.load_g if position else 0
    if exercise.measure is Measure.HOLD or rule.range_of(Variable.HOLD) is not None:
        ranged = rule.range_of(Variable.HOLD)
        least = ranged.floor_at(variation) if ranged else 1
        most = max(least, _CAREFUL_SECONDS if careful else MOST_SECONDS)
        return AskedSet(load_g, None, least, variation, open_ended=True, stop_at=most)
    ranged = rule.range_of(Variable.REPS)
    least = ranged.floor_at(variation) if ranged else 1
    most = max(least, _CAREFUL_REPS if careful else MOST_REPS)
    return AskedSet(
        load_g, least, None, variation, rir=limits.stop_rir, open_ended=True, stop_at=most
    )


def _strongest(working: Sequence[SetDone], around: Surroundings) -> SetDone:
    """The set with the highest estimate; where none gives one, the heaviest."""

    def value(done: SetDone) -> tuple[float, int]:
        effective = effective_load_g(done.load_g, done.variation, around)
        found = None
        if effective is not None and effective > 0 and done.reps:
            found = estimate(effective, done.reps, done.rir)
        return (found.value_g if found else 0.0, done.load_g)

    return max(working, key=value)


def _furthest(working: Sequence[SetDone], around: Surroundings) -> SetDone:
    """The set of the hardest variation, and of those the longest."""
    places = [step.key for step in around.scale]

    def value(done: SetDone) -> tuple[int, int]:
        return (places.index(done.variation) if done.variation in places else -1, done.amount)

    return max(working, key=value)
