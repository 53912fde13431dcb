"""Moves that are not growth, more days a week, and the strip: the corners of the model."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

import pytest

from desktop.training.adjusting import back_off, corrected, easier_variation, fitted, on_equipment
from desktop.training.adjusting import raised_to as raised
from desktop.training.asking import after_gap, follow_target, target_on
from desktop.training.demand import lighter, load_at, load_down, load_up, position_demand
from desktop.training.frequency import propose_day
from desktop.training.judging import every_set_harder, judge
from desktop.training.position import (
    BackOff,
    Criterion,
    Follow,
    FrequencyCondition,
    InvalidRule,
    MissPolicy,
    Position,
    ProgressionRule,
    ProgressionSettings,
    ScaledVariation,
    SchemeKind,
    SetScheme,
    Surroundings,
    Variable,
    VariableRange,
    WhenSlower,
)
from desktop.training.preview import unroll
from desktop.training.program import RuleRevision
from desktop.training.progression import Mover, at_floor, grow, in_betweens
from desktop.training.reasons import Reason, ReasonCode, reason
from desktop.training.replay import (
    Cleared,
    Context,
    Event,
    Overridden,
    SessionDone,
    State,
    Surrounded,
    replay,
    what_changed,
)
from desktop.training.scheme import asked_sets
from desktop.training.session import AskedSet, Outcome, SetDone
from desktop.training.strip import strip
from desktop.training.target import Target
from desktop.training.trainee import DeloadWindow

DAY_0 = date(2026, 3, 2)
CONTEXT = Context()
REPS_8_12 = VariableRange(Variable.REPS, 8, 12)
LOAD = VariableRange(Variable.LOAD, increment=2_500)
VARIATION = VariableRange(Variable.VARIATION)
DOUBLE = ProgressionRule((REPS_8_12, LOAD))
BARBELL = Surroundings(tuple(range(20_000, 100_001, 2_500)))
SCALE = (
    ScaledVariation("chair", "hands on a chair", 0.55, 0.03),
    ScaledVariation("step", "hands on a step", 0.60, 0.03),
    ScaledVariation("floor", "floor", 0.64, 0.03),
)
BODY = Surroundings((0,), SCALE, 70_000, bodyweight=True)
UNWEIGHED = replace(BODY, body_mass_g=None)


def test_a_back_off_goes_an_easier_variation_within_the_rules_range() -> None:
    rule = ProgressionRule((REPS_8_12, VARIATION), miss=MissPolicy(back_off=BackOff.VARIATION))
    floor = Position(0, 8, 3, variation="floor")
    assert back_off(floor, Mover(rule, BODY)) == (
        Variable.VARIATION,
        replace(floor, variation="step"),
    )
    narrow = replace(rule, ranges=(REPS_8_12, replace(VARIATION, easiest="floor")))
    assert back_off(floor, Mover(narrow, BODY)) is None
    unknown = replace(floor, variation="wall")
    assert easier_variation(unknown, Mover(rule, BODY)) is None


def test_a_hold_backs_off_in_seconds() -> None:
    rule = ProgressionRule((VariableRange(Variable.HOLD, 10, 30, 5),))
    eased = back_off(Position(0, None, 3, hold_s=25), Mover(rule, Surroundings((0,))))
    assert eased == (Variable.HOLD, Position(0, None, 3, hold_s=10))


def test_loads_and_variations_outside_new_ranges_are_brought_inside() -> None:
    bounded = replace(LOAD, floor=40_000, ceiling=60_000)
    mover = Mover(ProgressionRule((REPS_8_12, bounded)), BARBELL)
    assert fitted(Position(37_500, 8, 3), mover).load_g == 40_000
    assert fitted(Position(80_000, 8, 3), mover).load_g == 60_000
    ranged = ProgressionRule((REPS_8_12, replace(VARIATION, easiest="step", hardest="step")))
    for here in ("chair", "step", "floor", "unheard of"):
        inside = fitted(Position(0, 8, 3, variation=here), Mover(ranged, BODY))
        assert inside.variation == "step"


def test_a_floor_out_of_reach_is_grown_into() -> None:
    bounded = replace(LOAD, floor=40_000)
    rule = ProgressionRule((REPS_8_12, bounded))
    near = fitted(Position(30_000, 8, 3), Mover(rule, BARBELL))
    assert near == Position(32_500, 8, 3)  # 10 % more than 30 kg, rounded down
    grown = grow(replace(near, reps=12), Mover(rule, BARBELL))
    assert grown.position == Position(35_000, 8, 3)
    # Fewer repetitions bring the load up by 10 % at most, and the floor brings it no further.
    strong = ProgressionRule((VariableRange(Variable.REPS, 3, 5), bounded))
    assert fitted(Position(30_000, 10, 3), Mover(strong, BARBELL)) == Position(32_500, 5, 3)
    # Where nothing between can be loaded the line stays; where nothing is loaded yet the floor is.
    gap = Surroundings((30_000, 40_000))
    assert fitted(Position(30_000, 8, 3), Mover(rule, gap)) == Position(30_000, 8, 3)
    assert fitted(Position(0, 8, 3), Mover(rule, BARBELL)) == Position(40_000, 8, 3)
    assert fitted(Position(25_000, 8, 3), Mover(rule, gap)) == Position(25_000, 8, 3)


def test_a_variation_out_of_reach_is_grown_into() -> None:
    rule = ProgressionRule((REPS_8_12, replace(VARIATION, easiest="floor")))
    chair = Position(0, 8, 3, variation="chair")
    # The floor asks 16 % more than the chair, the step 9 %.
    near = fitted(chair, Mover(rule, BODY))
    assert near == replace(chair, variation="step")
    assert grow(replace(near, reps=12), Mover(rule, BODY)).position.variation == "floor"
    none_between = replace(BODY, scale=(SCALE[0], SCALE[2]))
    assert fitted(chair, Mover(rule, none_between)) == chair
    # By order alone nothing can be compared, and the coach's word holds.
    assert fitted(chair, Mover(rule, UNWEIGHED)).variation == "floor"


def test_repetitions_begin_at_the_floor_of_the_variation_that_the_rule_leads_to() -> None:
    floors = replace(VARIATION, easiest="step"), (("step", 5),)
    hold = VariableRange(Variable.HOLD, 10, 30, 5, floors=floors[1])
    rule = ProgressionRule((hold, floors[0]))
    fresh = Position(0, None, 3, hold_s=3, variation="chair")
    assert fitted(fresh, Mover(rule, BODY)) == replace(fresh, variation="step", hold_s=5)


def test_new_repetitions_keep_the_maximum_below_the_ceiling_of_load() -> None:
    strong = ProgressionRule((VariableRange(Variable.REPS, 3, 5), replace(LOAD, ceiling=62_500)))
    assert fitted(Position(60_000, 10, 3), Mover(strong, BARBELL)) == Position(62_500, 5, 3)
    light = Surroundings((80_000,))
    easy = ProgressionRule((VariableRange(Variable.REPS, 15, 20), LOAD))
    assert fitted(Position(80_000, 5, 3), Mover(easy, light)) == Position(80_000, 15, 3)


def test_bodyweight_without_a_load_range_only_changes_repetitions() -> None:
    rule = ProgressionRule((VariableRange(Variable.REPS, 15, 20), VARIATION))
    after = fitted(Position(0, 8, 3, variation="step"), Mover(rule, BODY))
    assert after == Position(0, 15, 3, variation="step")


def test_a_rule_may_turn_from_repetitions_to_seconds_and_back() -> None:
    holds = ProgressionRule((VariableRange(Variable.HOLD, 10, 30, 5),))
    held = fitted(Position(0, 8, 3), Mover(holds, Surroundings((0,))))
    assert held == Position(0, None, 3, hold_s=10)
    assert fitted(held, Mover(DOUBLE, BARBELL)) == Position(0, 8, 3)


def test_a_lost_variation_goes_to_the_next_easier_that_can_be_set_up() -> None:
    gone = replace(SCALE[1], available=False)
    around = replace(BODY, scale=(SCALE[0], gone, SCALE[2]))
    assert on_equipment(Position(0, 8, 3, variation="step"), around).variation == "chair"
    none_easier = replace(BODY, scale=(gone, SCALE[2]))
    assert on_equipment(Position(0, 8, 3, variation="step"), none_easier).variation == "step"
    state = State(Position(0, 8, 3, variation="step"), surroundings=BODY)
    result = replay((), state, [Surrounded(DAY_0, around)], CONTEXT)
    assert result.steps[0].reason.code is ReasonCode.VARIATION_LOST
    weighed = replay((), state, [Surrounded(DAY_0, replace(BODY, body_mass_g=71_000))], CONTEXT)
    assert weighed.steps == ()


def test_a_lift_needs_a_known_load_and_stays_inside_the_repetitions() -> None:
    position = Position(60_000, 8, 3)
    assert raised(position, 65_000, None, 20, Mover(DOUBLE, BARBELL)) == Position(65_000, 12, 3)
    assert raised(position, 67_500, None, 8, Mover(DOUBLE, BARBELL)) is None
    open_end = ProgressionRule((VariableRange(Variable.REPS, 8),))
    assert raised(position, 65_000, None, 20, Mover(open_end, BARBELL)) == Position(65_000, 20, 3)
    linear = ProgressionRule((LOAD,))
    assert raised(position, 65_000, None, 9, Mover(linear, BARBELL)) == Position(65_000, 8, 3)
    holds = Position(10_000, None, 3, hold_s=10)
    assert raised(holds, 11_000, None, None, Mover(DOUBLE, Surroundings((11_000,)))) == replace(
        holds, load_g=11_000
    )
    body = Position(0, 8, 3, variation="floor")
    assert raised(body, 0, "floor", 8, Mover(DOUBLE, UNWEIGHED)) is None


def test_a_start_is_corrected_only_where_load_grows_and_something_changes() -> None:
    position = Position(60_000, 8, 3)
    assert corrected(position, 76_000, Mover(DOUBLE, BARBELL)) is None
    assert corrected(position, 200_000, Mover(DOUBLE, BARBELL)) == Position(70_000, 8, 3)
    assert corrected(position, 90_000, Mover(ProgressionRule((REPS_8_12,)), BARBELL)) is None


def test_without_body_mass_nothing_is_compared() -> None:
    assert load_at(40_000, "floor", UNWEIGHED) is None
    position = Position(0, 8, 3, variation="floor")
    assert grow(position, Mover(ProgressionRule((REPS_8_12, VARIATION)), UNWEIGHED)).grew
    asked = AskedSet(0, 8, variation="floor")
    assert every_set_harder(asked, [SetDone(5_000, 8, variation="floor")], UNWEIGHED, 8) is None


def test_any_load_can_be_made_where_no_equipment_is_recorded() -> None:
    anything = Surroundings()
    assert load_up(anything, 61_234) == 61_234
    assert load_down(anything, 60_000, 2_500) == 57_500
    assert load_down(anything, 2_500, 2_500) is None
    assert lighter(Position(60_000, 8), 7.5, 2_500, anything) == Position(55_000, 8)
    assert lighter(Position(2_500, 8), 50, 2_500, anything) is None
    vest = replace(BODY, loads_g=None)
    assert lighter(Position(0, 8, variation="floor"), 10, 2_500, vest) == Position(
        -5_000, 8, variation="floor"
    )
    unweighed = replace(UNWEIGHED, loads_g=(-5_000, 0))
    assert lighter(Position(0, 8, variation="floor"), 10, 2_500, unweighed) == Position(
        -5_000, 8, variation="floor"
    )


def test_where_no_load_is_low_enough_the_lowest_is_taken() -> None:
    few = Surroundings((58_000, 59_000, 60_000))
    assert lighter(Position(60_000, 8), 7.5, 2_500, few) == Position(58_000, 8)
    heavy_steps = replace(BODY, loads_g=(-5_000, 40_000))
    eased = lighter(Position(40_000, 8, variation="floor"), 5, 100_000, heavy_steps)
    assert eased == Position(-5_000, 8, variation="floor")


def test_demand_of_a_hold_is_its_effective_load() -> None:
    hold = Position(10_000, None, 3, hold_s=20)
    assert position_demand(hold, SetScheme(), Surroundings()) == 10_000


def test_two_overrides_of_one_day_are_two_steps() -> None:
    state = State(Position(60_000, 8, 3), DOUBLE, BARBELL)
    words = [Overridden(DAY_0, Position(60_000, 8, n), entry=n) for n in (1, 2)]
    once, twice = replay((), state, words[:1], CONTEXT), replay((), state, words, CONTEXT)
    assert len(what_changed(once, twice)) == 1


def test_the_floor_of_a_variation_without_its_own_is_the_common_one() -> None:
    hold = VariableRange(Variable.HOLD, 10, 30, 5, floors=(("tuck", 5),))
    assert (hold.floor_at("tuck"), hold.floor_at("full")) == (5, 10)


def test_an_open_range_grows_without_end() -> None:
    rule = ProgressionRule((VariableRange(Variable.REPS, 8),))
    assert grow(Position(0, 100, 3), Mover(rule, BARBELL)).position.reps == 101


def test_new_repetitions_stay_where_no_load_fits_them() -> None:
    rule = ProgressionRule((VariableRange(Variable.REPS, 3, 5), LOAD))
    bounded = replace(LOAD, ceiling=20_000)
    body = ProgressionRule((VariableRange(Variable.REPS, 3, 5), bounded, VARIATION))
    assert fitted(Position(60_000, 8, 3), Mover(rule, Surroundings((70_000,)))).reps == 5
    assert fitted(Position(0, 8, 3, variation="floor"), Mover(body, BODY)).reps == 5


def test_a_load_that_must_restart_stays_where_it_has_no_floor_or_none_is_reachable() -> None:
    position = Position(20_000, 8, 3)
    assert at_floor(position, LOAD, BARBELL) == position
    assert at_floor(position, replace(LOAD, floor=200_000), BARBELL) == position
    nothing = replace(BODY, scale=tuple(replace(s, available=False) for s in SCALE))
    body = Position(0, 8, 3, variation="floor")
    assert at_floor(body, VARIATION, nothing) == body


def test_a_line_off_its_scale_cannot_go_harder() -> None:
    rule = ProgressionRule((VARIATION,))
    assert grow(Position(0, 8, 3, variation="wall"), Mover(rule, BODY)).grew is False


def test_other_variables_than_repetitions_match_at_their_floor() -> None:
    sets = VariableRange(Variable.SETS, 2, 3, when_slower=WhenSlower.MATCH)
    grown = grow(Position(60_000, 8, 3), Mover(ProgressionRule((sets, LOAD)), BARBELL))
    assert grown.position == Position(62_500, 8, 2)


def test_a_match_that_no_repetitions_reach_takes_the_most() -> None:
    few = VariableRange(Variable.REPS, 1, 2)
    sets = VariableRange(Variable.SETS, 1, 2)
    position = Position(60_000, 12, 1)
    grown = grow(position, Mover(ProgressionRule((few, sets)), BARBELL))
    assert (grown.position.sets, grown.position.reps) == (2, 2)


def test_without_equipment_every_jump_is_the_smallest() -> None:
    rule = ProgressionRule((REPS_8_12, replace(LOAD, increment=20_000)))
    easy = Mover(rule, Surroundings(), last_rir=4)
    assert grow(Position(60_000, 12, 3), easy).position.load_g == 80_000
    sets = ProgressionRule((VariableRange(Variable.REPS, 8, 8), VariableRange(Variable.SETS, 1, 3)))
    assert grow(Position(60_000, 8, 1), Mover(sets, BARBELL, last_rir=4)).position.sets == 2
    steep = replace(BODY, scale=(SCALE[0], replace(SCALE[2], share=0.9)))
    body = Mover(ProgressionRule((REPS_8_12, VARIATION)), steep, last_rir=4)
    assert grow(Position(0, 12, 3, variation="chair"), body).position.variation == "floor"


def test_in_betweens_of_a_hold_are_sets_alone() -> None:
    rule = ProgressionRule((VariableRange(Variable.HOLD, 10, 30, 5),))
    offers = in_betweens(Position(0, None, 3, hold_s=10), Mover(rule, Surroundings((0,))))
    assert [offer.kind for offer in offers] == ["one more set"]


def test_back_off_sets_never_rise_and_stop_at_the_lowest_load() -> None:
    rule = ProgressionRule((REPS_8_12,), scheme=SetScheme(SchemeKind.TOP_AND_BACK_OFF, 10))
    only = Surroundings((60_000, 70_000))
    assert [a.load_g for a in asked_sets(Position(60_000, 8, 2), rule, only)] == [60_000, 60_000]
    lost = asked_sets(Position(50_000, 8, 2), rule, only)
    assert [a.load_g for a in lost] == [50_000, 50_000]
    unknown = asked_sets(Position(0, 8, 2, variation="floor"), rule, UNWEIGHED)
    assert [a.load_g for a in unknown] == [0, 0]


def test_a_total_of_seconds_is_spread_and_eased() -> None:
    rule = ProgressionRule(
        (VariableRange(Variable.HOLD, 30, 120, 10),), scheme=SetScheme(SchemeKind.TOTAL)
    )
    state = State(Position(0, None, 4, hold_s=62), rule, Surroundings((0,)))
    asked = target_on(state, DAY_0, CONTEXT).sets
    assert [each.seconds for each in asked] == [16, 16, 15, 15]
    window = DeloadWindow(1, DAY_0, DAY_0 + timedelta(days=6))
    eased = target_on(state, DAY_0, CONTEXT, deload=window)
    assert [each.seconds for each in eased.sets] == [16, 15, 15]
    reps = ProgressionRule(
        (VariableRange(Variable.REPS, 20, 40),), scheme=SetScheme(SchemeKind.TOTAL)
    )
    counted = State(Position(60_000, 30, 3), reps, BARBELL)
    lighter_week = target_on(counted, DAY_0, CONTEXT, deload=window)
    assert [(each.load_g, each.reps) for each in lighter_week.sets] == [(52_500, 10), (52_500, 10)]


def test_a_deload_of_what_cannot_be_eased_cuts_sets_alone() -> None:
    window = DeloadWindow(1, DAY_0, DAY_0)
    state = State(Position(0, 8, 5, variation="floor"), ProgressionRule((REPS_8_12,)), UNWEIGHED)
    assert len(target_on(state, DAY_0, CONTEXT, deload=window).sets) == 3
    heavy = State(Position(20_000, 8, 5), DOUBLE, Surroundings((20_000,)))
    assert target_on(heavy, DAY_0, CONTEXT, deload=window).sets[0].load_g == 20_000


def test_a_follower_without_a_leader_asks_nothing() -> None:
    held = Target(Position(60_000, 5, 3), (), reason(ReasonCode.PAIN_HOLD))
    rule = ProgressionRule(follow=Follow("heavy", 85))
    assert follow_target(held, rule, BARBELL).sets == ()
    asking = Target(
        Position(0, 8, 3, variation="floor"), (AskedSet(0, 8),), reason(ReasonCode.START)
    )
    assert follow_target(asking, rule, BODY).position == asking.position
    assert follow_target(asking, rule, UNWEIGHED).position == asking.position


def test_a_gap_that_nothing_can_ease_repeats() -> None:
    rule = ProgressionRule((REPS_8_12,))
    state = State(
        Position(0, 8, 3),
        rule,
        Surroundings((0,)),
        last_trained=DAY_0,
        reason=Reason("start"),  # type: ignore[arg-type]
    )
    position, why = after_gap(state, DAY_0 + timedelta(days=40), ProgressionSettings())
    assert position == state.position
    assert why is not None
    assert why.code is ReasonCode.GAP_REPEAT


def test_untrained_and_never_vouched_for_is_no_gap() -> None:
    state = State(Position(60_000, 8, 3), DOUBLE, BARBELL)
    target = target_on(state, DAY_0, CONTEXT)
    assert target.reason.code is ReasonCode.REPEAT_MET


def test_an_extra_set_in_a_scheme_of_different_sets_is_more_than_asked() -> None:
    asked = (AskedSet(60_000, 8), AskedSet(55_000, 10))
    sets = (SetDone(60_000, 8), SetDone(55_000, 10), SetDone(55_000, 10))
    verdict = judge(asked, sets, DOUBLE, BARBELL, lambda *_: None, ProgressionSettings())
    assert verdict.outcome is Outcome.EXCEEDED
    assert (
        judge(asked, sets[:2], DOUBLE, BARBELL, lambda *_: None, ProgressionSettings()).outcome
        is Outcome.MET
    )


def test_sets_above_the_load_but_below_the_floor_lift_nothing() -> None:
    asked = AskedSet(60_000, 8)
    assert every_set_harder(asked, [SetDone(65_000, 7)], BARBELL, 8) is None


def test_a_harder_variation_at_the_same_repetitions_is_more_than_asked() -> None:
    rule = ProgressionRule((REPS_8_12, VARIATION))
    state = State(Position(0, 8, 1, variation="chair"), rule, BODY)
    done = SessionDone(DAY_0, (SetDone(0, 8, variation="step"),))
    assert replay((), state, [done], CONTEXT).steps[0].outcome is Outcome.EXCEEDED
    easier = SessionDone(DAY_0, (SetDone(0, 8, variation="chair"),))
    harder = replace(state, position=Position(0, 8, 1, variation="step"))
    assert replay((), harder, [easier], CONTEXT).steps[0].outcome is Outcome.MISSED


def test_events_before_a_start_only_prepare_it() -> None:
    state = State(None)
    events: list[Event] = [Surrounded(DAY_0, BARBELL), Cleared(DAY_0)]
    result = replay([RuleRevision(DAY_0, DOUBLE)], state, events, CONTEXT)
    assert result.steps == ()
    assert (result.state.rule, result.state.surroundings) == (DOUBLE, BARBELL)
    again = replay([RuleRevision(DAY_0 + timedelta(days=1), DOUBLE)], result.state, [], CONTEXT)
    assert again.steps == ()


@pytest.mark.parametrize(
    ("trained", "possible", "expected"),
    [
        ({0, 3}, {0, 1, 2, 3, 4, 5}, 5),
        ({0, 2}, {0, 2, 4}, 4),
        ({0}, range(7), 2),
    ],
)
def test_one_more_day_keeps_a_full_day_between(
    trained: set[int], possible: set[int], expected: int
) -> None:
    state = State(Position(60_000, 8, 3), steps=6, counting_from=DAY_0)
    proposed = propose_day(state, FrequencyCondition(steps=6), trained, possible, DAY_0)
    assert proposed == reason(ReasonCode.PROPOSE_DAY, weekday=expected)


def test_where_no_day_fits_the_days_in_the_way_are_named() -> None:
    state = State(Position(60_000, 8, 3), steps=6)
    crowded = propose_day(state, FrequencyCondition(steps=6), {0, 2, 4}, {0, 1, 2, 3, 4}, DAY_0)
    assert crowded == reason(ReasonCode.PROPOSE_DAY_IMPOSSIBLE, weekdays="0,2,4")
    full = propose_day(state, FrequencyCondition(steps=6), {0, 3}, {0, 3}, DAY_0)
    assert full == reason(ReasonCode.PROPOSE_DAY_IMPOSSIBLE, weekdays="0,3")


def test_a_day_is_proposed_only_when_its_own_condition_holds() -> None:
    state = State(Position(60_000, 8, 3), steps=2, counting_from=DAY_0)
    weeks = FrequencyCondition(weeks=4)
    assert propose_day(state, weeks, {0}, range(7), DAY_0 + timedelta(days=27)) is None
    assert propose_day(state, weeks, {0}, range(7), DAY_0 + timedelta(days=28)) is not None
    assert propose_day(state, FrequencyCondition(steps=3), {0}, range(7), DAY_0) is None
    most = FrequencyCondition(weeks=4, most=1)
    assert propose_day(state, most, {0}, range(7), DAY_0 + timedelta(days=28)) is None
    unknown = State(Position(60_000, 8, 3))
    assert propose_day(unknown, weeks, {0}, range(7), DAY_0) is None


def test_the_strip_windows_long_ranges_and_marks_what_rolls_over() -> None:
    rule = ProgressionRule((VariableRange(Variable.REPS, 5, 20), LOAD))
    middle = strip(State(Position(60_000, 12, 3), rule, BARBELL), CONTEXT)
    assert [cell.value for cell in middle[0].cells] == [10, 11, 12, 13, 14, 15, 16]
    assert (middle[0].more_below, middle[0].more_above) == (5, 4)
    assert [cell.value for cell in middle[1].cells] == [60_000, 62_500]
    assert not middle[0].rolls_next
    top = strip(State(Position(60_000, 20, 3), rule, BARBELL), CONTEXT)
    assert top[0].rolls_next
    assert [cell.value for cell in top[1].cells] == [60_000, 62_500, 65_000]
    assert [cell.next for cell in top[1].cells] == [False, True, False]
    assert strip(State(None), CONTEXT) == ()


def test_the_strip_of_a_finished_load_shows_no_more() -> None:
    rule = ProgressionRule((REPS_8_12, replace(LOAD, ceiling=60_000)))
    cells = strip(State(Position(60_000, 12, 3), rule, BARBELL), CONTEXT)[1].cells
    assert [cell.value for cell in cells] == [60_000]


def test_the_strip_names_variations_and_hides_what_cannot_be_set_up() -> None:
    around = replace(BODY, scale=(SCALE[0], replace(SCALE[1], available=False), SCALE[2]))
    rule = ProgressionRule((REPS_8_12, replace(VARIATION, hardest="floor")))
    cells = strip(State(Position(0, 8, 3, variation="chair"), rule, around), CONTEXT)[1].cells
    assert [cell.label for cell in cells] == ["hands on a chair", "floor"]


def test_a_variable_without_a_value_has_no_place_on_its_strip() -> None:
    rule = ProgressionRule((VariableRange(Variable.TEMPO, 2, 4), LOAD))
    cells = strip(State(Position(60_000, 8, 3), rule, BARBELL), CONTEXT)[0].cells
    assert not any(cell.here for cell in cells)


def test_days_ahead_on_which_nothing_is_asked_stay_as_they_are() -> None:
    held = State(Position(60_000, 8, 3), DOUBLE, BARBELL, held=reason(ReasonCode.PAIN_HOLD))
    days = [DAY_0, DAY_0 + timedelta(days=2)]
    assert [ahead.target.sets for ahead in unroll(held, days, CONTEXT)] == [(), ()]


@pytest.mark.parametrize(
    ("build", "words"),
    [
        (lambda: Criterion(sessions=0), "1 to 10"),
        (lambda: Criterion(over=0), "1 to 10"),
        (lambda: MissPolicy(misses=6), "1 to 5"),
        (lambda: MissPolicy(percent=0), "at most 50"),
        (lambda: SetScheme(percent=60), "at most 50"),
        (lambda: Follow("heavy", 0), "100 %"),
        (lambda: VariableRange(Variable.LOAD, 60_000, 50_000), "below the floor"),
        (lambda: Position().at(Variable.VARIATION, 1), "not numbered"),
    ],
)
def test_impossible_settings_say_what_is_allowed(build: object, words: str) -> None:
    with pytest.raises(InvalidRule, match=words):
        build()  # type: ignore[operator]


def test_every_variable_but_the_variation_has_a_number() -> None:
    position = Position(60_000, 8, 3, 20, 4, "floor")
    values = [position.value(variable) for variable in Variable]
    assert values == [60_000, 8, 3, 20, 4, None]
    for variable in (Variable.LOAD, Variable.REPS, Variable.SETS, Variable.HOLD, Variable.TEMPO):
        assert position.at(variable, 7).value(variable) == 7


def test_reasons_are_read_by_name() -> None:
    why = reason(ReasonCode.GAP_REPEAT, days=16)
    assert why["days"] == 16
    assert why.get("weeks", 2) == 2
    with pytest.raises(KeyError):
        why["weeks"]


def test_what_cannot_be_set_up_is_skipped_on_the_way_down() -> None:
    two_gone = (SCALE[0], *(replace(step, available=False) for step in SCALE[1:]))
    around = replace(BODY, scale=two_gone)
    assert on_equipment(Position(0, 8, 3, variation="floor"), around).variation == "chair"
    none_left = replace(BODY, scale=two_gone[1:])
    assert on_equipment(Position(0, 8, 3, variation="floor"), none_left).variation == "floor"
