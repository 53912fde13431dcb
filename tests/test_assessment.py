"""The starting point: how hard a test may be, and what its result gives."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop.training.assessment import (
    AssessmentError,
    EffortLimits,
    limits_for,
    load_test,
    start_from_amount,
    start_from_load,
)
from desktop.training.position import (
    Position,
    ProgressionRule,
    ScaledVariation,
    Surroundings,
    Variable,
    VariableRange,
)
from desktop.training.session import SetDone
from desktop.training.strength import one_rep_max
from desktop.training.trainee import Experience

REPS = VariableRange(Variable.REPS, 8, 12)
LOAD = VariableRange(Variable.LOAD, increment=2_500)
DOUBLE = ProgressionRule((REPS, LOAD))
BARBELL = Surroundings(tuple(range(20_000, 200_001, 2_500)))
SCALE = (
    ScaledVariation("chair", "hands on a chair", 0.55, 0.03),
    ScaledVariation("step", "hands on a step", 0.60, 0.03, available=False),
    ScaledVariation("floor", "floor", 0.64, 0.03),
)
BODY = Surroundings((0,), SCALE, 70_000, bodyweight=True)
CLIMB = ProgressionRule((REPS, VariableRange(Variable.VARIATION)))
HOLD = ProgressionRule((VariableRange(Variable.HOLD, 10, 30, 5), VariableRange(Variable.VARIATION)))
ORDERED = replace(BODY, scale=tuple(replace(s, share=None, plus_minus=None) for s in SCALE))


@pytest.mark.parametrize(
    ("experience", "age", "cleared", "expected"),
    [
        (Experience.ADVANCED, 30, True, EffortLimits(3, 10, 1.0)),
        (Experience.NOVICE, 30, True, EffortLimits(6, 10, 2.0)),
        (Experience.ADVANCED, 17, True, EffortLimits(6, 10, 2.0)),
        (Experience.ADVANCED, None, True, EffortLimits(6, 10, 2.0)),
        (Experience.ADVANCED, 30, False, EffortLimits(6, 10, 2.0)),
    ],
)
def test_a_maximum_is_never_asked_of_anyone(
    experience: Experience, age: int | None, cleared: bool, expected: EffortLimits
) -> None:
    assert limits_for(experience, age, cleared=cleared) == expected
    assert expected.fewest_reps >= 3


def test_a_load_test_ramps_up_to_one_set_to_be_read() -> None:
    test = load_test(BARBELL, EffortLimits(3, 10, 1.0), guess_g=100_000)
    loads = [each.load_g for each in test.ramp]
    assert loads == sorted(loads)
    assert loads[-1] < test.test.load_g
    assert (test.test.reps, test.test.stop_at, test.test.open_ended) == (7, 10, True)
    assert test.test.load_g == 77_500  # 100 / (1 + 8 / 30) = 78.9, rounded down


def test_without_a_guess_the_test_begins_light() -> None:
    assert load_test(BARBELL, EffortLimits(6, 10, 2.0)).test.load_g == 20_000
    assert load_test(Surroundings(), EffortLimits(6, 10, 2.0)).test.load_g == 0


def test_a_guess_below_every_load_begins_at_the_lightest() -> None:
    assert load_test(BARBELL, EffortLimits(6, 10, 2.0), guess_g=10_000).test.load_g == 20_000
    weighted = replace(BODY, loads_g=(0, 5_000, 10_000))
    test = load_test(weighted, EffortLimits(6, 10, 2.0), guess_g=70_000, variation="floor")
    assert test.test.load_g == 5_000


def test_a_start_keeps_two_in_reserve_and_is_rounded_down() -> None:
    # 80 kg x 5 with 1 in reserve: Epley 96.0, Brzycki 92.9 (36/31), their mean 94.5;
    # for 8 with 2 in reserve (10 to failure) both ask 94.5 / 1.333 = 70.8, down to 70
    position, off = start_from_load(SetDone(80_000, 5, rir=1), 3, DOUBLE, BARBELL)
    assert position == Position(70_000, 8, 3)
    assert 0.04 < off < 0.15


def test_the_rules_own_reserve_and_tempo_are_taken() -> None:
    rule = ProgressionRule((VariableRange(Variable.TEMPO, 3, 5), REPS, LOAD), target_rir=0)
    position, _ = start_from_load(SetDone(80_000, 5, rir=1), 3, rule, BARBELL)
    assert (position.load_g, position.tempo_s) == (72_500, 3)
    linear, _ = start_from_load(SetDone(80_000, 5, rir=1), 3, ProgressionRule((LOAD,)), BARBELL)
    assert linear.reps == 5


@given(st.integers(20, 200), st.integers(1, 10), st.sampled_from([0.0, 1.0, 2.0]))
def test_a_start_never_asks_more_than_the_test_showed(kilos: int, reps: int, rir: float) -> None:
    anything = Surroundings()
    done = SetDone(kilos * 1000, reps, rir=rir)
    position, _ = start_from_load(done, 3, DOUBLE, anything)
    assert position.reps is not None
    shown = max(one_rep_max(done.load_g, reps, rir, name) for name in ("epley", "brzycki"))
    assert one_rep_max(position.load_g, position.reps, 2.0) <= shown + 1


@pytest.mark.parametrize(
    ("done", "around", "words"),
    [
        (SetDone(80_000, 18, rir=0), BARBELL, "1 to 15"),
        (SetDone(80_000, None, seconds=20), BARBELL, "1 to 15"),
        (SetDone(0, 5), BARBELL, "effective load"),
        (SetDone(20_000, 1, rir=0), BARBELL, "lightest is 20 kg"),
    ],
)
def test_a_test_that_says_nothing_is_refused_with_what_is_needed(
    done: SetDone, around: Surroundings, words: str
) -> None:
    with pytest.raises(AssessmentError, match=words):
        start_from_load(done, 3, DOUBLE, around)


@pytest.mark.parametrize(
    ("reps", "variation", "expected"),
    [
        # 20 on the chair: 0.55 x 1.667 = 0.917; on the floor 30 x (0.917 / 0.64 - 1) - 2 = 10.98
        (20, "chair", ("floor", 10)),
        # 12 on the chair: 0.77 promises 4 on the floor, so the chair (12 - 2)
        (12, "chair", ("chair", 10)),
        (30, "floor", ("floor", 12)),
        (5, "chair", ("chair", 8)),
    ],
)
def test_a_repetition_test_places_on_the_scale(
    reps: int, variation: str, expected: tuple[str, int]
) -> None:
    position, _ = start_from_amount(SetDone(0, reps, variation=variation), 3, CLIMB, BODY)
    assert (position.variation, position.reps) == expected


@pytest.mark.parametrize(
    ("reps", "expected"), [(12, ("floor", 10)), (30, ("floor", 12)), (7, ("chair", 8))]
)
def test_where_order_alone_is_known_the_tested_variation_or_the_next_easier_is_the_start(
    reps: int, expected: tuple[str, int]
) -> None:
    position, off = start_from_amount(SetDone(0, reps, variation="floor"), 3, CLIMB, ORDERED)
    assert (position.variation, position.reps) == expected
    assert off is None


def test_open_ranges_and_rules_without_repetitions_start_too() -> None:
    endless = ProgressionRule((VariableRange(Variable.REPS, 5),), target_rir=1)
    position, _ = start_from_amount(SetDone(0, 20, variation="floor"), 3, endless, BODY)
    assert position.reps == 19
    by_order, _ = start_from_amount(SetDone(0, 20, variation="floor"), 3, endless, ORDERED)
    assert by_order.reps == 19
    fixed = ProgressionRule((VariableRange(Variable.SETS, 2, 4),))
    alone, _ = start_from_amount(SetDone(0, 20, variation="floor"), 3, fixed, BODY)
    assert alone.reps == 20


@pytest.mark.parametrize(
    ("seconds", "variation", "expected"),
    [
        (40, "floor", ("floor", 20)),
        (90, "floor", ("floor", 30)),
        (12, "floor", ("chair", 10)),
        (12, "chair", ("chair", 10)),
    ],
)
def test_a_hold_starts_at_a_share_of_the_longest_one(
    seconds: int, variation: str, expected: tuple[str, int]
) -> None:
    done = SetDone(0, seconds=seconds, variation=variation)
    position, _ = start_from_amount(done, 4, HOLD, BODY)
    assert (position.variation, position.hold_s) == expected


def test_an_endless_hold_starts_on_its_grid() -> None:
    endless = ProgressionRule((VariableRange(Variable.HOLD, 10, None, 10),))
    done = SetDone(0, seconds=90, variation="floor")
    assert start_from_amount(done, 4, endless, BODY)[0].hold_s == 50


def test_a_hold_needs_a_rule_of_seconds_and_a_known_variation() -> None:
    with pytest.raises(AssessmentError, match="repetitions"):
        start_from_amount(SetDone(0, seconds=20, variation="floor"), 3, CLIMB, BODY)
    with pytest.raises(AssessmentError, match="scale"):
        start_from_amount(SetDone(0, 20, variation="wall"), 3, CLIMB, BODY)
