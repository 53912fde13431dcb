"""The starting point: what a test asks, and the first position that its result gives.

Submaximal tests of 3-10 repetitions for loads, repetition or hold tests for variations. How much
of a test's result is taken for the first sessions is common practice; so are the shares below.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from math import expm1, floor

from desktop.training.adjusting import easier_variation
from desktop.training.demand import demand, effective_load_g, load_at, rank
from desktop.training.position import Position, ProgressionRule, Surroundings, Variable
from desktop.training.progression import Mover
from desktop.training.sentence import sentence
from desktop.training.session import AskedSet, SetDone
from desktop.training.strength import estimate, load_for
from desktop.training.trainee import Experience
from desktop.training.warm_up import warm_up_ramp

ADULT_AGE = 18
RESERVE_AT_START = 2.0  # repetitions kept in reserve in the first sessions; common practice
HOLD_SHARE = 0.6  # of the longest hold that is trained at first; common practice
NO_TEST_REPS = 10  # without an estimate the ramp's last set aims at so many; common practice


class AssessmentError(ValueError):
    """A test result from which no start can be computed; the message says what is needed."""


@dataclass(frozen=True, slots=True)
class EffortLimits:
    """How hard a test may be: repetitions to aim at, and those to stop with in reserve."""

    fewest_reps: int
    most_reps: int
    stop_rir: float


@dataclass(frozen=True, slots=True)
class LoadTest:
    """A ramped test: rising sets, then one set to be read. ``sets`` are loads in grams."""

    limits: EffortLimits
    ramp: tuple[AskedSet, ...]
    test: AskedSet


def limits_for(experience: Experience, age: int | None, *, cleared: bool) -> EffortLimits:
    """How hard somebody may be tested.

    Beginners, minors, those of unknown age and anyone without a clear screening test with 6-10
    repetitions and stop with 2 in reserve; others with 3-10 and 1 in reserve. A maximum is never
    asked for. Common practice.
    """
    careful = experience is Experience.NOVICE or age is None or age < ADULT_AGE or not cleared
    return EffortLimits(6, 10, 2.0) if careful else EffortLimits(3, 10, 1.0)


def load_test(
    around: Surroundings,
    limits: EffortLimits,
    *,
    guess_g: float | None = None,
    variation: str | None = None,
) -> LoadTest:
    """Sets that ramp up to one set of the middle of the allowed repetitions.

    ``guess_g``: a guess of the one-repetition maximum (effective load, grams). Without it the
    test begins at the lightest load that adds something, and the coach raises it from set to set.
    """
    reps = (limits.fewest_reps + limits.most_reps + 1) // 2
    if guess_g is None:
        lightest = next((load for load in around.loads_g or () if load > 0), 0)
        asked = AskedSet(lightest, NO_TEST_REPS, variation=variation, rir=limits.stop_rir)
        return LoadTest(limits, (), asked)
    wanted = load_for(guess_g, reps, limits.stop_rir)
    load = load_at(wanted, variation, around)
    if load is None:
        lowest = (around.loads_g or (0,))[0]
        load = lowest
    asked = AskedSet(
        load,
        reps,
        variation=variation,
        rir=limits.stop_rir,
        open_ended=True,
        stop_at=limits.most_reps,
    )
    body = effective_load_g(load, variation, around)
    ramp = warm_up_ramp(
        load,
        reps,
        around.loads_g,
        bodyweight=around.bodyweight,
        body_part_g=None if body is None or not around.bodyweight else body - load,
        variation=variation,
    )
    return LoadTest(limits, ramp, asked)


def start_from_load(
    done: SetDone, sets: int, rule: ProgressionRule, around: Surroundings
) -> tuple[Position, float]:
    """First position from a test with a load, and by which fraction it may be off.

    The estimated maximum of the test, taken down to the rule's fewest repetitions with the
    reserve of the rule (2 where it names none), rounded down to a reachable load. Raises
    AssessmentError where the load, the body mass or the repetitions do not allow an estimate.
    """
    reps = _first_reps(rule, done)
    effective = effective_load_g(done.load_g, done.variation, around)
    if effective is None:
        raise AssessmentError(
            sentence("the effective load is not known: give a load, or the body mass")
        )
    if not done.reps or (found := estimate(effective, done.reps, done.rir, tested=True)) is None:
        raise AssessmentError(
            sentence("an estimate needs 1 to 15 repetitions, those in reserve included")
        )
    reserve = RESERVE_AT_START if rule.target_rir is None else rule.target_rir
    wanted = min(
        load_for(found.value_g, reps, reserve, equation) for equation in ("epley", "brzycki")
    )
    load = load_at(wanted, done.variation, around)
    if load is None:
        lowest = (around.loads_g or (0,))[0]
        raise AssessmentError(
            sentence("no load is light enough: the lightest is {lowest:g} kg", lowest=lowest / 1000)
        )
    position = Position(load, reps, sets, tempo_s=_first_tempo(rule), variation=done.variation)
    return position, expm1(found.log_sd)


def start_from_amount(
    done: SetDone, sets: int, rule: ProgressionRule, around: Surroundings
) -> tuple[Position, float | None]:
    """First position on a variation scale from a test of repetitions or seconds.

    The hardest variation on which the test promises the rule's floor with the reserve kept. Where
    the shares are not known, the tested variation, or the next easier one if the test fell short.
    The fraction is that of the effective load, None where it is not known.
    """
    if rank(around, done.variation) is None:
        raise AssessmentError(sentence("the variation tested is not on this trainee's scale"))
    if done.reps is None:
        return _start_from_hold(done, sets, rule, around), None
    ranged = rule.range_of(Variable.REPS)
    reserve = RESERVE_AT_START if rule.target_rir is None else rule.target_rir
    able = done.reps + (done.rir or 0.0)
    reached = demand(done.load_g, able, done.variation, around)
    start = Position(
        done.load_g, _first_reps(rule, done), sets, None, _first_tempo(rule), done.variation
    )
    if reached is None or ranged is None:
        return _by_order(start, able - reserve, rule, around), None
    for step in reversed(around.scale):
        effective = effective_load_g(done.load_g, step.key, around)
        if not step.available or effective is None:
            continue
        promised = floor(30 * (reached / effective - 1) - reserve + 1e-9)
        if promised >= ranged.floor_at(step.key):
            top = promised if ranged.ceiling is None else min(promised, ranged.ceiling)
            here = replace(start, variation=step.key, reps=top)
            return here, (step.plus_minus or 0.0) / (step.share or 1.0)
    easiest = next((step for step in around.scale if step.available), around.scale[0])
    lowest = ranged.floor_at(easiest.key)
    return replace(start, variation=easiest.key, reps=lowest), None


def _first_reps(rule: ProgressionRule, done: SetDone) -> int:
    ranged = rule.range_of(Variable.REPS)
    return ranged.floor_at(done.variation) if ranged else (done.reps or 1)


def _first_tempo(rule: ProgressionRule) -> int | None:
    ranged = rule.range_of(Variable.TEMPO)
    return ranged.floor if ranged else None


def _by_order(
    start: Position, promised: float, rule: ProgressionRule, around: Surroundings
) -> Position:
    """Where only the order is known: the tested variation, or the next easier one."""
    ranged = rule.range_of(Variable.REPS)
    if ranged is None:
        return start
    lowest = ranged.floor_at(start.variation)
    if promised >= lowest:
        top = floor(promised) if ranged.ceiling is None else min(floor(promised), ranged.ceiling)
        return replace(start, reps=top)
    easier = easier_variation(start, Mover(rule, around))
    return replace(easier or start, reps=lowest)


def _start_from_hold(
    done: SetDone, sets: int, rule: ProgressionRule, around: Surroundings
) -> Position:
    """Seconds: a share of the longest hold, on the range's grid; easier where that is too short."""
    ranged = rule.range_of(Variable.HOLD)
    if ranged is None:
        raise AssessmentError(sentence("the rule counts repetitions: test with repetitions"))
    start = Position(done.load_g, None, sets, 1, _first_tempo(rule), done.variation)
    seconds = int((done.seconds or 0) * HOLD_SHARE)
    lowest = ranged.floor_at(done.variation)
    if seconds < lowest:
        easier = easier_variation(start, Mover(rule, around)) or start
        return replace(easier, hold_s=ranged.floor_at(easier.variation))
    on_grid = lowest + (seconds - lowest) // ranged.increment * ranged.increment
    return replace(
        start, hold_s=on_grid if ranged.ceiling is None else min(on_grid, ranged.ceiling)
    )
