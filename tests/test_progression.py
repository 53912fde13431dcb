"""The counter that rolls over: what one fulfilled criterion does to a position."""

from __future__ import annotations

from dataclasses import replace

import pytest

from desktop.training.demand import demand, position_demand
from desktop.training.position import (
    FrequencyCondition,
    InvalidRule,
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
from desktop.training.progression import Mover, grow, in_betweens
from desktop.training.reasons import ReasonCode

REPS_8_12 = VariableRange(Variable.REPS, 8, 12)
SETS_3_4 = VariableRange(Variable.SETS, 3, 4)
LOAD_2_5 = VariableRange(Variable.LOAD, increment=2500)
PUSH_UPS = (
    ScaledVariation("hands-450", "hands on 45 cm", 0.57, 0.03),
    ScaledVariation("hands-300", "hands on 30 cm", 0.61, 0.03),
    ScaledVariation("floor", "floor", 0.665, 0.03),
)
BY_ORDER = (
    ScaledVariation("tuck", "tuck"),
    ScaledVariation("one leg", "one leg"),
    ScaledVariation("full", "full"),
)
BARBELL = Surroundings(loads_g=tuple(range(20_000, 200_001, 2_500)))
BODY = Surroundings(scale=PUSH_UPS, body_mass_g=70_000, bodyweight=True)


def rule(*ranges: VariableRange, **more: object) -> ProgressionRule:
    return ProgressionRule(ranges=ranges, **more)  # type: ignore[arg-type]


def mover(
    *ranges: VariableRange, around: Surroundings = BARBELL, rir: float | None = None
) -> Mover:
    return Mover(rule(*ranges), around, last_rir=rir)


def steps(position: Position, moving: Mover, count: int) -> list[Position]:
    reached = []
    for _ in range(count):
        position = grow(position, moving).position
        reached.append(position)
    return reached


def test_linear_loading_adds_one_increment() -> None:
    grown = grow(Position(100_000, 5, 3), mover(LOAD_2_5))
    assert grown.position == Position(102_500, 5, 3)
    assert grown.reason.code is ReasonCode.GROW


def test_double_progression_grows_repetitions_and_then_load() -> None:
    moving = mover(REPS_8_12, LOAD_2_5)
    reached = steps(Position(60_000, 10, 3), moving, 4)
    assert [(p.load_g, p.reps) for p in reached] == [
        (60_000, 11),
        (60_000, 12),
        (62_500, 8),
        (62_500, 9),
    ]


def test_triple_progression_goes_from_three_sets_of_twelve_to_four_of_nine() -> None:
    moving = mover(REPS_8_12, SETS_3_4, LOAD_2_5)
    reached = steps(Position(60_000, 12, 3), moving, 5)
    assert [(p.sets, p.reps, p.load_g) for p in reached] == [
        (4, 9, 60_000),
        (4, 10, 60_000),
        (4, 11, 60_000),
        (4, 12, 60_000),
        (3, 8, 62_500),
    ]


@pytest.mark.parametrize(
    ("loads", "reps", "expected"),
    [
        # 12 x 60 kg -> 62.5 kg from 8
        ((60_000, 62_500), 12, Position(62_500, 8, 3)),
        # 12 x 20 kg -> 22.5 kg from 8
        ((20_000, 22_500), 12, Position(22_500, 8, 3)),
        # 12 x 20 kg -> 25 kg: even 8 ask 31.7 against 28, 13 % over: one more rep first
        ((20_000, 25_000), 12, Position(20_000, 13, 3)),
        ((20_000, 25_000), 13, Position(20_000, 14, 3)),
        # 14 x 20 kg: 29.3; 8 x 25 kg is then 8 % over
        ((20_000, 25_000), 14, Position(25_000, 8, 3)),
    ],
)
def test_repetitions_restart_where_the_demand_matches(
    loads: tuple[int, int], reps: int, expected: Position
) -> None:
    moving = mover(REPS_8_12, LOAD_2_5, around=Surroundings(loads_g=loads))
    assert grow(Position(loads[0], reps, 3), moving).position == expected


def test_a_variation_step_matches_repetitions_by_share_of_body_mass() -> None:
    moving = mover(REPS_8_12, VariableRange(Variable.VARIATION), around=BODY)
    grown = grow(Position(0, 12, 3, variation="hands-450"), moving)
    assert grown.position == Position(0, 8, 3, variation="hands-300")
    assert grown.reason["share_before"] == 0.57
    assert grown.reason["share_after"] == 0.61


def test_a_waiting_jump_says_how_many_repetitions_it_needs() -> None:
    moving = mover(REPS_8_12, LOAD_2_5, around=Surroundings(loads_g=(20_000, 25_000)))
    grown = grow(Position(20_000, 12, 3), moving)
    assert grown.reason.code is ReasonCode.IN_BETWEEN
    assert grown.reason["reps_needed"] == 14
    assert grown.reason["after"] == 25_000
    assert grown.reason["over"] == pytest.approx(25 * (38 / 30) / 28 - 1)


def test_three_in_reserve_let_the_smallest_step_pass_the_limit() -> None:
    around = Surroundings(loads_g=(20_000, 25_000))
    grown = grow(Position(20_000, 12, 3), mover(REPS_8_12, LOAD_2_5, around=around, rir=3))
    assert grown.position == Position(25_000, 8, 3)
    assert grown.reason["over"] == pytest.approx(0.131, abs=0.001)


def test_three_in_reserve_do_not_skip_a_smaller_load() -> None:
    around = Surroundings(loads_g=(20_000, 22_500, 25_000))
    moving = mover(REPS_8_12, replace(LOAD_2_5, increment=5_000), around=around, rir=3)
    assert grow(Position(20_000, 12, 3), moving).position == Position(20_000, 13, 3)


def test_a_jump_that_no_number_of_repetitions_reaches_stays_and_says_so() -> None:
    around = Surroundings(loads_g=(4_000, 40_000))
    grown = grow(Position(4_000, 12, 3), mover(REPS_8_12, LOAD_2_5, around=around))
    assert not grown.grew
    assert grown.position == Position(4_000, 12, 3)
    assert grown.reason["reps_needed"] is None


def test_fixed_repetitions_return_after_the_jump() -> None:
    around = Surroundings(loads_g=(20_000, 25_000))
    moving = replace(mover(LOAD_2_5, around=around), fixed_reps=8)
    position = Position(20_000, 8, 3)
    waited = 0
    while position.load_g == 20_000:
        position = grow(position, moving).position
        waited += 1
    assert position == Position(25_000, 8, 3)
    # 25 kg x 8 = 31.67; within 10 % of 20 kg x r from r = 14 on; so six more, then the jump
    assert waited == 7


def test_holds_reset_to_the_floor_of_the_next_variation() -> None:
    hold = VariableRange(Variable.HOLD, 10, 30, 5, floors=(("one leg", 5),))
    around = Surroundings(scale=BY_ORDER, body_mass_g=70_000, bodyweight=True)
    moving = mover(hold, VariableRange(Variable.VARIATION), around=around)
    grown = grow(Position(0, None, 4, hold_s=30, variation="tuck"), moving)
    assert grown.position == Position(0, None, 4, hold_s=5, variation="one leg")


def test_where_order_alone_is_known_matching_restarts_at_the_floor() -> None:
    around = Surroundings(scale=BY_ORDER, body_mass_g=70_000, bodyweight=True)
    moving = mover(REPS_8_12, VariableRange(Variable.VARIATION), around=around)
    grown = grow(Position(0, 12, 3, variation="tuck"), moving)
    assert grown.position == Position(0, 8, 3, variation="one leg")


def test_bodyweight_keeps_its_variation_when_the_vest_grows() -> None:
    around = replace(BODY, loads_g=(0, 5_000, 10_000))
    moving = mover(
        VariableRange(Variable.REPS, 5, 12),
        VariableRange(Variable.VARIATION),
        LOAD_2_5,
        around=around,
    )
    grown = grow(Position(0, 12, 3, variation="floor"), moving)
    assert (grown.position.variation, grown.position.load_g) == ("floor", 5_000)


def test_assistance_and_added_load_lie_on_one_axis() -> None:
    pull_up = (ScaledVariation("pull-up", "pull-up", 0.955, 0.02),)
    around = Surroundings((-10_000, -5_000, 0, 2_500, 5_000), pull_up, 70_000, bodyweight=True)
    moving = mover(VariableRange(Variable.REPS, 5, 8), LOAD_2_5, around=around)
    position = Position(-5_000, 8, 3, variation="pull-up")
    loads = [p.load_g for p in steps(position, moving, 9)]
    assert sorted(set(loads)) == [0, 2_500, 5_000]
    assert loads == sorted(loads)


def test_slow_tempo_grows_before_repetitions() -> None:
    moving = mover(VariableRange(Variable.TEMPO, 3, 5), REPS_8_12, LOAD_2_5)
    reached = steps(Position(60_000, 8, 3, tempo_s=4), moving, 2)
    assert [(p.tempo_s, p.reps) for p in reached] == [(5, 8), (3, 9)]


@pytest.mark.parametrize(
    ("then", "expected"), [(WhenSlower.RESET, 8), (WhenSlower.KEEP, 12), (WhenSlower.MATCH, 8)]
)
def test_each_policy_is_followed_when_a_slower_variable_moves(
    then: WhenSlower, expected: int
) -> None:
    moving = mover(replace(REPS_8_12, when_slower=then), LOAD_2_5)
    assert grow(Position(60_000, 12, 3), moving).position.reps == expected


def test_load_may_reset_when_the_variation_moves() -> None:
    around = replace(BODY, loads_g=(0, 5_000))
    load = VariableRange(Variable.LOAD, 0, 5_000, 5_000, when_slower=WhenSlower.RESET)
    moving = mover(load, VariableRange(Variable.VARIATION), around=around)
    grown = grow(Position(5_000, None, 3, hold_s=10, variation="hands-450"), moving)
    assert (grown.position.load_g, grown.position.variation) == (0, "hands-300")


def test_an_increment_goes_to_the_smallest_load_that_is_at_least_as_much() -> None:
    around = Surroundings(loads_g=(60_000, 61_000, 63_000, 65_000))
    assert grow(Position(60_000, 5, 3), mover(LOAD_2_5, around=around)).position.load_g == 63_000


def test_a_pound_load_a_few_grams_short_is_the_same_load() -> None:
    around = Surroundings(loads_g=(60_000, 62_494))
    assert grow(Position(60_000, 5, 3), mover(LOAD_2_5, around=around)).position.load_g == 62_494


def test_a_variation_step_below_the_least_is_passed_over() -> None:
    close = (PUSH_UPS[0], replace(PUSH_UPS[1], share=0.575), PUSH_UPS[2])
    around = replace(BODY, scale=close)
    grown = grow(
        Position(0, 12, 3, variation="hands-450"),
        mover(REPS_8_12, VariableRange(Variable.VARIATION), around=around),
    )
    assert grown.position.variation in {"floor", "hands-450"}
    kinds = {
        b.kind
        for b in in_betweens(
            Position(0, 12, 3, variation="hands-450"),
            mover(REPS_8_12, VariableRange(Variable.VARIATION), around=around),
        )
    }
    assert "variation" in kinds


def test_what_cannot_be_set_up_is_passed_over() -> None:
    missing = (PUSH_UPS[0], replace(PUSH_UPS[1], available=False), PUSH_UPS[2])
    moving = mover(
        VariableRange(Variable.REPS, 8, 20),
        VariableRange(Variable.VARIATION),
        around=replace(BODY, scale=missing),
    )
    grown = grow(Position(0, 20, 3, variation="hands-450"), moving)
    assert grown.position.variation == "floor"


def test_a_rule_at_every_ceiling_is_complete_and_says_so() -> None:
    moving = mover(REPS_8_12, replace(LOAD_2_5, floor=20_000, ceiling=60_000))
    grown = grow(Position(60_000, 12, 3), moving)
    assert grown.reason.code is ReasonCode.COMPLETE
    assert not grown.grew


def test_without_a_heavier_load_the_next_slower_variable_grows() -> None:
    moving = mover(
        REPS_8_12,
        replace(LOAD_2_5, floor=20_000, ceiling=90_000),
        SETS_3_4,
        around=Surroundings(loads_g=(60_000,)),
    )
    grown = grow(Position(60_000, 12, 3), moving)
    assert grown.position.sets == 4


def test_in_betweens_are_listed_with_what_each_costs() -> None:
    around = Surroundings(loads_g=(20_000, 22_500, 25_000))
    moving = mover(REPS_8_12, replace(LOAD_2_5, increment=5_000), around=around)
    offers = {o.kind: o for o in in_betweens(Position(20_000, 12, 3, tempo_s=3), moving)}
    assert set(offers) == {"one more rep", "one more set", "slower tempo", "smaller discs"}
    assert offers["one more rep"].demand_change == pytest.approx(43 / 42 - 1)
    assert offers["one more set"].demand_change == pytest.approx(1 / 3)
    assert offers["smaller discs"].position.load_g == 22_500
    assert offers["smaller discs"].demand_change == pytest.approx(0.125)
    assert offers["slower tempo"].demand_change is None


def test_a_total_is_compared_set_by_set() -> None:
    scheme = SetScheme(SchemeKind.TOTAL)
    assert position_demand(Position(60_000, 30, 3), scheme, BARBELL) == demand(
        60_000, 10, None, BARBELL
    )


def test_the_settings_of_the_coach_move_the_limits() -> None:
    around = Surroundings(loads_g=(20_000, 25_000))
    generous = ProgressionSettings(jump_limit=0.2)
    moving = Mover(rule(REPS_8_12, LOAD_2_5), around, generous)
    assert grow(Position(20_000, 12, 3), moving).position == Position(25_000, 8, 3)


@pytest.mark.parametrize(
    ("build", "words"),
    [
        (lambda: VariableRange(Variable.REPS, 8, 12, 0), "at least 1"),
        (lambda: VariableRange(Variable.REPS, None, 12), "floor"),
        (lambda: VariableRange(Variable.REPS, 8, 6), "below the floor"),
        (lambda: VariableRange(Variable.REPS, 8, 12, 3), "grid"),
        (lambda: VariableRange(Variable.HOLD, 5, 30, 5, floors=(("tuck", 0),)), "every floor"),
        (lambda: VariableRange(Variable.HOLD, 5, 30, 5, floors=(("tuck", 35),)), "above"),
        (lambda: VariableRange(Variable.REPS, 8, 12, easiest="x"), "variation"),
        (lambda: VariableRange(Variable.VARIATION, 1), "easiest and hardest"),
        (lambda: rule(REPS_8_12, REPS_8_12), "twice"),
        (lambda: rule(REPS_8_12, VariableRange(Variable.HOLD, 5, 30, 5)), "not both"),
        (lambda: rule(VariableRange(Variable.REPS, 8), LOAD_2_5), "slowest"),
        (lambda: rule(LOAD_2_5, REPS_8_12), "slowest"),
        (lambda: rule(target_rir=11), "0 to 10"),
        (lambda: rule(start_percent=0), "above 0 to 100 %"),
        (lambda: rule(start_percent=101), "above 0 to 100 %"),
        (lambda: FrequencyCondition(), "steps or of weeks"),
        (lambda: FrequencyCondition(steps=3, most=8), "1 to 7"),
    ],
)
def test_an_impossible_rule_says_what_is_allowed(build: object, words: str) -> None:
    with pytest.raises(InvalidRule, match=words):
        build()  # type: ignore[operator]
