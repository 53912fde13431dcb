"""Weeks ahead: the program unrolled, eased weeks placed, and what the trend expects."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta
from math import log

import pytest

from desktop.limits import load_limits
from desktop.training.asking import starting_state
from desktop.training.exercises import Exercise, LoadingKind, Muscle, Pattern
from desktop.training.limits import LimitId
from desktop.training.position import (
    Follow,
    Position,
    ProgressionRule,
    Surroundings,
    Variable,
    VariableRange,
)
from desktop.training.program import LineStart, RuleRevision, Slot, TrainingDay
from desktop.training.reasons import ReasonCode, reason
from desktop.training.state import Context, State
from desktop.training.trainee import DeloadWindow, Experience
from desktop.training.weeks import (
    Outlook,
    lines_ahead,
    no_deload_before,
    planned_deloads,
    weeks_ahead,
)

MONDAY = date(2026, 11, 30)
SQUAT = Exercise("squat", "Squat", Pattern.SQUAT, LoadingKind.BARBELL, (Muscle.QUADRICEPS,))
PUSH_UP = Exercise(
    "push-up", "Push-up", Pattern.HORIZONTAL_PUSH, LoadingKind.BODYWEIGHT, (Muscle.CHEST,)
)
EXERCISES = {each.key: each for each in (SQUAT, PUSH_UP)}
REPS = VariableRange(Variable.REPS, 8, 12)
LOAD = VariableRange(Variable.LOAD, increment=2_500)
DOUBLE = ProgressionRule((REPS, LOAD))
BARBELL = Surroundings(tuple(range(20_000, 200_001, 2_500)))
STANDS = State(Position(60_000, 8, 3), DOUBLE, BARBELL)
HEAVY = Slot("squat", DOUBLE, Position(60_000, 8, 3))
PRESS = Slot("push-up", ProgressionRule((REPS,)), Position(0, 8, 3))
DAY = TrainingDay("Monday", (HEAVY, PRESS), 0)
CONTEXT = Context()
OUTLOOK = Outlook({("squat", ""): STANDS}, EXERCISES, CONTEXT)


def mondays(count: int, day: TrainingDay = DAY) -> list[tuple[date, TrainingDay]]:
    return [(MONDAY + timedelta(weeks=number), day) for number in range(count)]


def test_each_week_asks_what_the_week_before_earned() -> None:
    weeks = weeks_ahead(mondays(6), OUTLOOK)
    squat = [week.days[0].slots[0].target.position for week in weeks]
    assert [(p.load_g, p.reps) for p in squat if p] == [
        (60_000, 8),
        (60_000, 9),
        (60_000, 10),
        (60_000, 11),
        (60_000, 12),
        (62_500, 8),
    ]
    assert [week.first for week in weeks] == [day for day, _ in mondays(6)]


def test_hard_sets_and_minutes_are_told_for_each_week() -> None:
    week = weeks_ahead(mondays(1), OUTLOOK)[0]
    assert week.volume.by_muscle == {Muscle.QUADRICEPS: 3, Muscle.CHEST: 3}
    # warm-up and changes apart, six sets of about half a minute with rests of two minutes
    assert 12 < week.minutes < 30
    assert week.minutes == week.days[0].minutes


def test_a_line_that_stands_twice_on_a_day_moves_once() -> None:
    twice = replace(DAY, slots=(HEAVY, HEAVY))
    (line,) = lines_ahead(mondays(2, twice), OUTLOOK).values()
    assert line.times.days == tuple(day for day, _ in mondays(2))
    asked = [slot.target.position for week in weeks_ahead(mondays(2, twice), OUTLOOK)
             for slot in week.days[0].slots]  # fmt: skip
    assert [p.reps for p in asked if p] == [8, 8, 9, 9]


def test_a_follower_with_a_day_of_its_own_asks_a_share_of_where_its_leader_stands() -> None:
    light = Slot(
        "squat", ProgressionRule((REPS,), follow=Follow("", 80)), Position(0, 8, 2), "light"
    )
    between, after = MONDAY + timedelta(days=3), MONDAY + timedelta(days=10)
    days = [
        (MONDAY, TrainingDay("Heavy", (HEAVY,))),
        (between, TrainingDay("Light", (light,))),
        (after, TrainingDay("Light", (light,))),
    ]
    heavier = RuleRevision(after, ProgressionRule((VariableRange(Variable.REPS, 3, 5), LOAD)))
    outlook = replace(
        OUTLOOK,
        states={
            ("squat", ""): replace(STANDS, position=Position(60_000, 12, 3)),
            ("squat", "light"): State(light.start, light.rule, BARBELL),
        },
        rules={("squat", ""): (heavier,)},
    )
    lines = lines_ahead(days, outlook)
    leader, follower = lines[("squat", "")], lines[("squat", "light")]
    # Monday earned 62.5 kg x 8; the new range makes that 67.5 x 5, since 62.5 x (1 + 8/30) is
    # 79.2 and 79.2 / (1 + 5/30) is 67.9. 80 % of them are 50 and, rounded down, 52.5.
    assert leader.state_before(between, CONTEXT).position == Position(62_500, 8, 3)
    assert leader.target_on(after, CONTEXT).position == Position(67_500, 5, 3)
    assert [t.position.load_g for t in follower.targets.values() if t.position] == [50_000, 52_500]


def test_a_chain_of_followers_holds_on_days_that_only_the_last_of_them_has() -> None:
    def following(name: str, leader: str) -> Slot:
        rule = ProgressionRule((REPS,), follow=Follow(leader, 90))
        return Slot("squat", rule, Position(30_000, 8, 2), name)

    medium, light = following("medium", ""), following("light", "medium")
    days = [
        (MONDAY, TrainingDay("Heavy", (HEAVY, medium))),
        (MONDAY + timedelta(days=3), TrainingDay("Light", (light,))),
    ]
    states = {
        ("squat", each.line_name): State(each.start, each.rule, BARBELL)
        for each in (HEAVY, medium, light)
    }
    asked = lines_ahead(days, replace(OUTLOOK, states=states))[("squat", "light")].targets
    # 60 kg, of which 90 % are 54, of which, rounded down to 52.5, 90 % are 47.25.
    assert [target.position.load_g for target in asked.values() if target.position] == [45_000]


def test_a_line_that_nobody_trained_yet_has_no_gap_before_its_first_day() -> None:
    start = LineStart(MONDAY - timedelta(weeks=30), Position(60_000, 8, 3))
    begun = starting_state(start, DOUBLE, BARBELL, CONTEXT)
    weeks = weeks_ahead(mondays(2), replace(OUTLOOK, states={("squat", ""): begun}))
    asked = [week.days[0].slots[0].target.position for week in weeks]
    assert asked == [Position(60_000, 8, 3), Position(60_000, 9, 3)]


def test_an_easier_week_is_placed_and_changes_nothing_after_it() -> None:
    eased = DeloadWindow(1, MONDAY + timedelta(weeks=1), MONDAY + timedelta(days=13))
    weeks = weeks_ahead(mondays(3), replace(OUTLOOK, deloads=(eased,)))
    assert [week.deload for week in weeks] == [False, True, False]
    assert len(weeks[1].days[0].slots[0].target.sets) == 2
    after = weeks[2].days[0].slots[0].target.position
    assert after == Position(60_000, 9, 3)


def test_easier_weeks_follow_a_number_of_building_weeks() -> None:
    eased = DeloadWindow(1, MONDAY, MONDAY)
    weeks = planned_deloads(12, 3, MONDAY, (), eased)
    assert [(w.first - MONDAY).days // 7 for w in weeks] == [3, 7, 11]
    assert all((w.last - w.first).days == 6 for w in weeks)
    recorded = DeloadWindow(1, MONDAY + timedelta(weeks=1), MONDAY + timedelta(days=13))
    moved = planned_deloads(8, 3, MONDAY, (recorded,), eased)
    assert [(w.first - MONDAY).days // 7 for w in moved] == [5]
    assert planned_deloads(12, None, MONDAY, (), eased) == ()


def test_a_following_line_keeps_behind_its_leader_all_the_way() -> None:
    light = Slot(
        "squat", ProgressionRule((REPS,), follow=Follow("", 80)), Position(0, 8, 2), "light"
    )
    day = TrainingDay("Monday", (HEAVY, light), 0)
    states = {("squat", ""): STANDS, ("squat", "light"): State(light.start, light.rule, BARBELL)}
    weeks = weeks_ahead(mondays(12, day), replace(OUTLOOK, states=states))
    for week in weeks:
        leads, follows = (slot.target.position for slot in week.days[0].slots)
        assert leads
        assert follows
        assert follows.load_g <= 0.8 * leads.load_g


def test_a_rule_that_begins_later_holds_from_its_day() -> None:
    heavy = ProgressionRule((VariableRange(Variable.REPS, 3, 5), LOAD))
    rules = {("squat", ""): (RuleRevision(MONDAY + timedelta(weeks=2), heavy),)}
    weeks = weeks_ahead(mondays(4), replace(OUTLOOK, rules=rules))
    reps = [week.days[0].slots[0].target.position for week in weeks]
    assert [p.reps for p in reps if p] == [8, 9, 5, 3]


def test_the_trend_says_how_likely_each_target_is() -> None:
    def forecast(_: date) -> tuple[float, float]:
        return log(80_000), 0.05

    weeks = weeks_ahead(mondays(8), replace(OUTLOOK, forecasts={("squat", ""): forecast}))
    first, last = (week.days[0].slots[0].expected for week in (weeks[0], weeks[-1]))
    assert first
    assert last
    assert (first.low_g, first.likely_g) == pytest.approx((75_036, 80_000), rel=1e-3)
    assert first.high_g == pytest.approx(85_290, rel=1e-3)
    assert first.chance
    assert last.chance
    assert last.chance < first.chance
    # 60 kg x 8: Epley 76.0, Brzycki 74.5, their mean 75.2; (ln 80 - ln 75.2) / 0.05 = 1.23 SD
    assert first.chance == pytest.approx(0.89, abs=0.01)
    assert weeks[0].days[0].slots[1].expected is None


def test_where_no_maximum_can_be_estimated_there_is_no_chance() -> None:
    holds = ProgressionRule((VariableRange(Variable.HOLD, 10, 30, 5),))
    many = ProgressionRule((VariableRange(Variable.REPS, 20, 30),))
    for rule, start in ((holds, Position(0, None, 3, 10)), (many, Position(60_000, 25, 3))):
        slot = Slot("push-up", rule, start)
        forecasts = {("push-up", ""): lambda _: (log(50_000), 0.1)}
        outlook = replace(OUTLOOK, states={}, forecasts=forecasts)
        week = weeks_ahead(mondays(1, TrainingDay("Monday", (slot,), 0)), outlook)[0]
        expected = week.days[0].slots[0].expected
        assert expected
        assert expected.chance is None


def test_cautions_to_come_are_told_in_their_week() -> None:
    jump = replace(STANDS, surroundings=Surroundings((20_000, 60_000, 80_000)))
    outlook = replace(
        OUTLOOK,
        states={("squat", ""): replace(jump, position=Position(60_000, 12, 3))},
        limits=load_limits(),
        since=MONDAY - timedelta(weeks=6),
        experience=Experience.ADVANCED,
    )
    weeks = weeks_ahead(mondays(6), outlook)
    found = [{caution.limit for caution in week.cautions} for week in weeks]
    assert found[0] == set()
    assert LimitId.EQUIPMENT_JUMP in found[1]
    assert LimitId.NO_DELOAD in found[2]
    assert LimitId.RULE_COMPLETE in found[5]  # the push-up stands at 12 of 8 to 12


def test_without_limits_nothing_is_warned_of() -> None:
    outlook = replace(OUTLOOK, since=MONDAY - timedelta(weeks=40), experience=Experience.ADVANCED)
    assert no_deload_before(MONDAY, outlook) is None
    assert no_deload_before(MONDAY, replace(outlook, limits=load_limits())) is not None
    assert [week.cautions for week in weeks_ahead(mondays(2), outlook)] == [(), ()]


def test_an_easier_week_raises_no_caution_about_the_missing_one() -> None:
    eased = DeloadWindow(1, MONDAY, MONDAY + timedelta(days=6))
    outlook = replace(
        OUTLOOK,
        limits=load_limits(),
        deloads=(eased,),
        since=MONDAY - timedelta(weeks=20),
        experience=Experience.ADVANCED,
    )
    assert [week.cautions for week in weeks_ahead(mondays(2), outlook)] == [(), ()]


def test_a_line_on_which_nothing_is_asked_stays_so() -> None:
    held = replace(STANDS, held=reason(ReasonCode.PAIN_HOLD))
    outlook = replace(OUTLOOK, states={("squat", ""): held})
    weeks = weeks_ahead(mondays(2), outlook)
    assert [week.days[0].slots[0].target.sets for week in weeks] == [(), ()]
    assert weeks[0].volume.by_muscle == {Muscle.CHEST: 3}


def test_the_same_outlook_gives_the_same_weeks() -> None:
    assert weeks_ahead(mondays(20), OUTLOOK) == weeks_ahead(mondays(20), OUTLOOK)
