"""Ready-made rules fit every exercise they are offered for, and shorthand makes slots of them."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop.catalogue import load_catalogue
from desktop.training.exercises import Exercise, Measure
from desktop.training.position import (
    CriterionKind,
    MissPolicy,
    Position,
    ProgressionRule,
    SchemeKind,
    SetScheme,
    Variable,
    VariableRange,
)
from desktop.training.program import Slot
from desktop.training.quantities import Unit
from desktop.training.rules import (
    ReadyRule,
    exchanged,
    new_slot,
    ready_rule,
    ready_rule_of,
    rules_for,
    start_within,
    with_ready_rule,
)
from desktop.training.shorthand import read_shorthand, slot_from
from tests import strategies

CATALOGUE = {each.key: each for each in load_catalogue()}
exercises = st.sampled_from(list(CATALOGUE.values()))


def fits(start: Position, rule: ProgressionRule, exercise: Exercise) -> bool:
    counted = start.hold_s if exercise.measure is Measure.HOLD else start.reps
    if counted is None or (start.reps is None) == (start.hold_s is None):
        return False
    for ranged in rule.ranges:
        value = start.value(ranged.variable)
        if ranged.variable in (Variable.LOAD, Variable.VARIATION):
            continue
        if value is None or value < ranged.floor_at(start.variation):
            return False
        if ranged.ceiling is not None and value > ranged.ceiling:
            return False
    return True


@given(exercises)
def test_every_offered_rule_is_recognised_and_its_start_lies_within(exercise: Exercise) -> None:
    assert rules_for(exercise)
    for kind in rules_for(exercise):
        rule = ready_rule(kind, exercise)
        assert ready_rule_of(rule) is kind
        slot = new_slot(exercise, kind)
        assert fits(slot.start, rule, exercise)
        assert start_within(slot.start, rule, exercise) == slot.start


@given(exercises, strategies.positions, st.sampled_from(list(ReadyRule)))
def test_any_start_is_brought_within_a_rule(
    exercise: Exercise, start: Position, kind: ReadyRule
) -> None:
    if kind not in rules_for(exercise):
        kind = rules_for(exercise)[0]
    rule = ready_rule(kind, exercise)
    fitted = start_within(start, rule, exercise)
    assert fits(fitted, rule, exercise)
    assert start_within(fitted, rule, exercise) == fitted


@given(exercises, exercises)
def test_an_exchanged_slot_counts_what_the_new_exercise_counts(
    before: Exercise, after: Exercise
) -> None:
    slot = exchanged(new_slot(before), after, before)
    assert slot.exercise == after.key
    assert fits(slot.start, slot.rule, after)
    if slot.start.variation is not None:
        assert slot.start.variation in [each.key for each in after.variations]


def test_sets_and_rest_stay_when_an_exercise_is_exchanged() -> None:
    squat, front = CATALOGUE["back-squat"], CATALOGUE["front-squat"]
    slot = slot_from(read_shorthand("x 4x6-9 80", Unit.KG), squat)
    other = exchanged(slot, front, squat)
    assert (other.start, other.rule, other.rest_s) == (slot.start, slot.rule, slot.rest_s)
    assert exchanged(slot, CATALOGUE["push-up"], squat).start.load_g == 0


@pytest.mark.parametrize(
    ("text", "name", "sets", "low", "high", "seconds", "load_g"),
    [
        ("back squat", "back squat", None, None, None, False, None),
        ("back squat 3x8-12", "back squat", 3, 8, 12, False, None),
        ("back squat 3 x 8–12 62.5", "back squat", 3, 8, 12, False, 62_500),
        ("back squat 3×5 62,5 kg", "back squat", 3, 5, 5, False, 62_500),
        ("squat 5x5 at 135 lb", "squat", 5, 5, 5, False, 61_235),
        ("plank 3x20-60s", "plank", 3, 20, 60, True, None),
        ("pull-up 3x5-8 -20", "pull-up", 3, 5, 8, False, -20_000),
        ("hang 0x8", "hang 0x8", None, None, None, False, None),
        ("hang 3x12-8", "hang 3x12-8", None, None, None, False, None),
        ("3x8", "", 3, 8, 8, False, None),
        ("row 3x8 1,250", "row", 3, 8, 8, False, None),
    ],
)
def test_shorthand_is_read_as_coaches_write_it(
    text: str,
    name: str,
    sets: int | None,
    low: int | None,
    high: int | None,
    seconds: bool,
    load_g: int | None,
) -> None:
    said = read_shorthand(text, Unit.KG)
    assert (said.name, said.sets, said.low, said.high) == (name, sets, low, high)
    assert (said.seconds, said.load_g) == (seconds, load_g)


@given(exercises, st.text(max_size=30))
def test_whatever_is_typed_makes_a_slot(exercise: Exercise, text: str) -> None:
    slot = slot_from(read_shorthand(text, Unit.KG), exercise)
    assert isinstance(slot, Slot)
    assert fits(slot.start, slot.rule, exercise)


def test_one_number_of_repetitions_leaves_the_load_to_grow() -> None:
    slot = slot_from(read_shorthand("x 5x5 100", Unit.KG), CATALOGUE["back-squat"])
    assert ready_rule_of(slot.rule) is ReadyRule.LOAD
    assert (slot.start.sets, slot.start.reps, slot.start.load_g) == (5, 5, 100_000)


def test_a_slot_by_another_rule_keeps_its_work_and_the_coachs_choices() -> None:
    squat = CATALOGUE["back-squat"]
    chosen = ProgressionRule(
        (VariableRange(Variable.REPS, 8, 12), VariableRange(Variable.LOAD)),
        miss=MissPolicy(3),
        target_rir=2.0,
    )
    slot = Slot("back-squat", chosen, Position(60_000, 10, 3), line_name="light", rest_s=90)
    total = with_ready_rule(slot, ReadyRule.TOTAL_REPS, squat)
    # 3 x 10 are a total of 30, spread over the four sets of such a rule.
    assert (total.start.reps, total.start.sets, total.start.load_g) == (30, 4, 60_000)
    assert total.rule.scheme.kind is SchemeKind.TOTAL
    assert total.rule.criterion.kind is CriterionKind.TOTAL
    assert (total.rule.miss, total.rule.target_rir) == (MissPolicy(3), 2.0)
    assert (total.line_name, total.rest_s) == ("light", 90)
    # And back: 30 over 4 sets are 7 in each, 8 being the fewest of the range.
    back = with_ready_rule(total, ReadyRule.REPS_LOAD, squat)
    assert (back.start.reps, back.start.sets) == (8, 4)
    assert back.rule.scheme.kind is SchemeKind.STRAIGHT
    # A rule of the same kind leaves criterion and scheme to the coach.
    topped = replace(slot, rule=replace(chosen, scheme=SetScheme(SchemeKind.TOP_AND_BACK_OFF)))
    linear = with_ready_rule(topped, ReadyRule.LOAD, squat)
    assert linear.rule.scheme.kind is SchemeKind.TOP_AND_BACK_OFF
    assert linear.start == slot.start


def test_where_seconds_were_given_a_total_begins_with_its_fewest_repetitions() -> None:
    held = Slot("pull-up", ProgressionRule(), Position(hold_s=30, sets=3))
    total = with_ready_rule(held, ReadyRule.TOTAL_REPS, CATALOGUE["pull-up"])
    assert (total.start.hold_s, total.start.reps) == (None, 20)
