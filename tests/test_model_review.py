"""Corners of a replay: sets that are judged together, starts, changed schemes, pain and gaps."""

from __future__ import annotations

from dataclasses import replace

import pytest

from desktop.training.asking import follow_target, target_on
from desktop.training.equipment import discs_per_side, reachable_loads
from desktop.training.position import (
    TWO_FOR_TWO,
    Criterion,
    CriterionKind,
    Follow,
    Position,
    ProgressionRule,
    ScaledVariation,
    SchemeKind,
    SetScheme,
    Surroundings,
    Variable,
    VariableRange,
)
from desktop.training.preview import unroll
from desktop.training.program import RuleRevision
from desktop.training.reasons import ReasonCode
from desktop.training.replay import DeloadDays, SessionDone, State
from desktop.training.session import AskedSet, Outcome, SetDone
from desktop.training.trainee import DeloadWindow
from tests.test_replay import (
    BARBELL,
    CONTEXT,
    DOUBLE,
    LOAD_2_5,
    REPS_8_12,
    codes,
    day,
    did,
    outcomes,
    place,
    run,
    state_at,
)

TOTAL = ProgressionRule(
    (VariableRange(Variable.REPS, 20, 40, 2), LOAD_2_5),
    criterion=Criterion(CriterionKind.TOTAL),
    scheme=SetScheme(SchemeKind.TOTAL),
)
TOP = ProgressionRule(
    (REPS_8_12, LOAD_2_5),
    criterion=TWO_FOR_TWO,
    scheme=SetScheme(SchemeKind.TOP_AND_BACK_OFF, 10),
)


@pytest.mark.parametrize(
    ("reps", "outcome", "after"),
    [
        ((10, 8, 6), Outcome.MET, 9),
        ((10, 8, 7), Outcome.EXCEEDED, 9),
        ((10, 8, 5), Outcome.MISSED, 8),
        ((8, 8), Outcome.PARTIAL, 8),
    ],
)
def test_a_reached_total_replaces_the_test_of_each_straight_set(
    reps: tuple[int, ...], outcome: Outcome, after: int
) -> None:
    rule = replace(DOUBLE, criterion=Criterion(CriterionKind.TOTAL))
    result = run(did(0, *reps), start=state_at(rule=rule))
    assert outcomes(result) == [outcome]
    assert place(result) == (60_000, after)


def test_more_repetitions_at_a_lighter_load_are_not_also_counted_as_over() -> None:
    # 57.5 x 10 asks 76.7 and meets 60 x 8 (76.0), no more
    state = state_at(rule=replace(DOUBLE, criterion=TWO_FOR_TWO))
    light = [did(number, 10, 10, 10, load_g=57_500) for number in (0, 2)]
    result = run(*light, start=state)
    assert outcomes(result) == [Outcome.MET, Outcome.MET]
    assert codes(result) == [ReasonCode.REPEAT_LAST_SET] * 2
    # 57.5 x 13 asks 82.4, as 60 kg would 11 times: 2 over and more
    heavy = [did(number, 13, 13, 13, load_g=57_500) for number in (0, 2)]
    assert place(run(*heavy, start=state)) == (60_000, 9)


def test_repetitions_over_on_an_unmeasured_easier_variation_say_nothing() -> None:
    ordered = Surroundings(
        (0,), (ScaledVariation("easy", "Easy"), ScaledVariation("hard", "Hard")), bodyweight=True
    )
    rule = ProgressionRule((REPS_8_12,), criterion=TWO_FOR_TWO)
    state = state_at(Position(0, 8, 2, variation="hard"), rule, ordered)
    sets = (SetDone(0, 8, variation="hard"), SetDone(0, 8, variation="hard"))
    last = SetDone(0, 20, variation="easy")
    result = run(SessionDone(day(0), (sets[0], last, sets[1])), start=state)
    assert outcomes(result) == [Outcome.MET]
    assert result.state.successes == 0


def test_a_side_left_out_of_a_hold_counts_as_no_seconds() -> None:
    sides = ("left", "right", "left")
    sets = tuple(SetDone(0, seconds=20, side=side) for side in sides)
    start = State(None, surroundings=Surroundings((0,), bodyweight=True))
    position = run(SessionDone(day(0), sets), start=start).state.position
    assert position is not None
    assert (position.reps, position.hold_s, position.sets) == (None, 1, 2)


@pytest.mark.parametrize(
    ("scheme", "before"),
    [(SchemeKind.TOP_AND_BACK_OFF, 0), (SchemeKind.ASCENDING, 2)],
)
def test_the_lead_set_is_open_ended_where_its_surplus_counts(
    scheme: SchemeKind, before: int
) -> None:
    rule = replace(TOP, scheme=SetScheme(scheme, 10))
    sets = target_on(state_at(rule=rule), day(0), CONTEXT).sets
    assert [each.open_ended for each in sets] == [place == before for place in range(3)]
    assert sets[before].stop_at == 11


@pytest.mark.parametrize(
    "scheme", [SchemeKind.STRAIGHT, SchemeKind.TOP_AND_BACK_OFF, SchemeKind.ASCENDING]
)
def test_the_weeks_ahead_do_what_the_criterion_needs_on_the_set_it_looks_at(
    scheme: SchemeKind,
) -> None:
    state = state_at(rule=replace(TOP, scheme=SetScheme(scheme, 10)))
    ahead = unroll(state, [day(3 * number) for number in range(4)], CONTEXT)
    positions = [each.target.position for each in ahead]
    assert [each.reps for each in positions if each is not None] == [8, 8, 9, 9]


def test_the_weeks_ahead_keep_the_reserve_that_the_criterion_needs() -> None:
    rule = replace(DOUBLE, criterion=Criterion(CriterionKind.RESERVE), target_rir=2.0)
    ahead = unroll(state_at(rule=rule), [day(3 * number) for number in range(3)], CONTEXT)
    positions = [each.target.position for each in ahead]
    assert [each.reps for each in positions if each is not None] == [8, 9, 10]


def test_pain_in_a_warm_up_counts_where_nothing_else_was_done() -> None:
    warm_up = SetDone(20_000, 5, warm_up=True, pain=7)
    result = run(SessionDone(day(0), (warm_up,)))
    assert outcomes(result) == [Outcome.EXCLUDED]
    assert target_on(result.state, day(2), CONTEXT).sets == ()
    harmless = run(SessionDone(day(0), (replace(warm_up, pain=0),)))
    assert outcomes(harmless) == [Outcome.SKIPPED]


def test_a_line_of_a_total_begins_with_the_sum_of_its_first_session() -> None:
    result = run(did(0, 10, 9, 8), start=State(None, TOTAL, BARBELL))
    assert place(result) == (60_000, 27)


def test_a_line_with_a_top_set_begins_with_the_heaviest_set_that_was_lifted() -> None:
    sets = (SetDone(105_000, 0), SetDone(100_000, 5), SetDone(90_000, 8), SetDone(90_000, 8))
    result = run(SessionDone(day(0), sets), start=State(None, TOP, BARBELL))
    assert place(result) == (100_000, 5)


@pytest.mark.parametrize(
    ("reps", "before", "after", "then"),
    [(10, DOUBLE, TOTAL, 30), (30, TOTAL, DOUBLE, 10), (30, TOTAL, TOP, 10), (9, TOP, DOUBLE, 9)],
)
def test_a_rule_that_begins_to_count_the_total_goes_on_with_the_same_work(
    reps: int, before: ProgressionRule, after: ProgressionRule, then: int
) -> None:
    state = state_at(Position(60_000, reps, 3), before)
    result = run(start=state, rules=[RuleRevision(day(3), after)])
    assert place(result) == (60_000, then)


def test_a_hold_too_goes_on_with_the_same_work_as_a_total() -> None:
    hold = ProgressionRule((VariableRange(Variable.HOLD, 10, 30, 5),))
    total = ProgressionRule(
        (VariableRange(Variable.HOLD, 30, 120, 5),), scheme=SetScheme(SchemeKind.TOTAL)
    )
    state = state_at(Position(0, None, 3, 20), hold, Surroundings((0,), bodyweight=True))
    position = run(start=state, rules=[RuleRevision(day(3), total)]).state.position
    assert position is not None
    assert position.hold_s == 60


def test_days_in_two_deloads_are_taken_off_a_gap_once() -> None:
    windows = (DeloadDays(day(5), day(11)), DeloadDays(day(8), day(12)), DeloadDays(day(9), day(9)))
    state = run(did(0, 8, 8, 8), *windows).state
    assert target_on(state, day(22), CONTEXT).reason.code is not ReasonCode.GAP_REPEAT
    asked = target_on(state, day(23), CONTEXT).reason
    assert (asked.code, asked["days"]) == (ReasonCode.GAP_REPEAT, 15)


def test_discs_are_found_for_whole_numbers_written_with_a_point() -> None:
    pairs = {20_000.0: 2, 1_250.0: 1}
    assert discs_per_side(102_500.0, 20_000.0, pairs) == (20_000, 20_000, 1_250)  # type: ignore[arg-type]
    assert reachable_loads(20_000.0, {1_250.0: 1.0}) == (20_000, 22_500)  # type: ignore[arg-type, dict-item]


def test_what_was_asked_in_one_session_only_lasts_for_its_open_set() -> None:
    asked = (AskedSet(60_000, 8, open_ended=True, stop_at=11), AskedSet(52_500, 8))
    sets = (SetDone(60_000, 10), SetDone(52_500, 8))
    events = [SessionDone(day(number), sets, asked) for number in (0, 2)]
    state = state_at(Position(60_000, 8, 2), TOP)
    assert place(run(*events, start=state)) == (60_000, 9)


def test_a_follower_too_does_fewer_sets_in_an_easier_week() -> None:
    window = DeloadWindow(1, day(0), day(6))
    leader = target_on(state_at(), day(0), CONTEXT, deload=window)
    light = replace(TOP, follow=Follow("heavy", 85))
    own = Position(40_000, 8, 4)
    asked = follow_target(leader, light, BARBELL, own)
    # 60 kg eased to 52.5, of which 85 % are 44.6; 4 x 0.6 sets are 3
    assert [(each.load_g, each.open_ended) for each in asked.sets] == [
        (42_500, False),
        (37_500, False),
        (37_500, False),
    ]
    assert len(follow_target(leader, light, BARBELL).sets) == len(leader.sets) == 2


def test_a_follower_of_a_follower_is_eased_as_well() -> None:
    window = DeloadWindow(1, day(0), day(6))
    heavy = target_on(state_at(), day(0), CONTEXT, deload=window)
    own = Position(60_000, 8, 3)
    medium = follow_target(heavy, replace(DOUBLE, follow=Follow("heavy", 90)), BARBELL, own)
    rule = replace(DOUBLE, follow=Follow("medium", 90))
    light = follow_target(medium, rule, BARBELL, Position(40_000, 8, 5))
    # 60 kg eased to 52.5, of which 90 % are 47.25, and 90 % of 45 are 40.5; 5 x 0.6 sets are 3
    assert [(each.load_g, each.reps) for each in light.sets] == [(40_000, 8)] * 3
    assert [note.code for note in light.notes] == [ReasonCode.DELOAD]
    assert light.reason.code is ReasonCode.FOLLOWS


def test_a_follower_held_for_pain_asks_nothing_though_its_leader_does() -> None:
    light = replace(DOUBLE, follow=Follow("heavy", 85))
    held = run(did(0, 8, 8, 8, pain=6), start=state_at(rule=light)).state
    leader = target_on(state_at(), day(2), CONTEXT)
    asked = follow_target(leader, light, BARBELL, held.position, held.held)
    assert asked.sets == ()
    assert asked.reason.code is ReasonCode.PAIN_HOLD


def test_where_no_load_is_as_light_as_an_easier_week_asks_the_lightest_is_asked() -> None:
    two = Surroundings((55_000, 60_000))
    window = DeloadWindow(1, day(0), day(6))
    eased = target_on(state_at(around=two), day(0), CONTEXT, deload=window)
    assert {each.load_g for each in eased.sets} == {55_000}
    light = replace(DOUBLE, follow=Follow("heavy", 80))
    leader = target_on(state_at(around=two), day(0), CONTEXT)
    assert {each.load_g for each in follow_target(leader, light, two).sets} == {55_000}


def test_a_side_left_out_counts_as_no_repetitions() -> None:
    sides = ("left", "right", "left")
    sets = tuple(SetDone(60_000, 8, side=side) for side in sides)
    result = run(SessionDone(day(0), sets), start=state_at(Position(60_000, 8, 2)))
    assert outcomes(result) == [Outcome.MISSED]


def test_new_ranges_leave_the_load_where_its_share_is_not_known() -> None:
    unknown = Surroundings((0, 5_000), (ScaledVariation("only", "Only"),), bodyweight=True)
    state = state_at(Position(5_000, 5, 3, variation="only"), around=unknown)
    rule = ProgressionRule((VariableRange(Variable.REPS, 12, 15), LOAD_2_5))
    assert place(run(start=state, rules=[RuleRevision(day(1), rule)])) == (5_000, 12)


def test_a_better_lead_set_than_last_time_is_an_improvement() -> None:
    rule = replace(DOUBLE, scheme=SetScheme(SchemeKind.TOP_AND_BACK_OFF, 10))
    state = state_at(Position(100_000, 8, 3), rule)
    events = [
        SessionDone(day(number), (SetDone(100_000, top), SetDone(90_000, 8), SetDone(90_000, rest)))
        for number, top, rest in ((0, 6, 8), (3, 7, 6), (6, 7, 8))
    ]
    result = run(*events, start=state)
    assert outcomes(result) == [Outcome.MISSED, Outcome.IMPROVED, Outcome.MISSED]
    assert (result.state.misses, place(result)) == (1, (100_000, 8))
