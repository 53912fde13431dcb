"""Every check of recovery on one trainee's record, and what is set aside."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest

from desktop.planning.cautions import cautions, dismissal, last_easier
from desktop.planning.history import read_history
from desktop.training.equipment import Equipment
from desktop.training.limits import LimitId, Severity
from desktop.training.position import Position, ProgressionRule, Variable, VariableRange
from desktop.training.program import Override, Phase, Program, RuleRevision, TrainingDay
from desktop.training.recovery import Caution
from desktop.training.session import Activity, AskedSet, LineDone, Session, SetDone, Wellness
from desktop.training.trainee import Clearance, DeloadWindow, EquipmentFrom, Experience
from tests.strength_room import (
    BENCH,
    DAY,
    L_SIT,
    LINEAR,
    MONDAY,
    OWNED,
    PUSH_UP,
    SQUAT,
    WEEK,
    Room,
    as_asked,
    open_room,
)

WEDNESDAY = MONDAY + 2 * DAY


@pytest.fixture
def room(tmp_path: Path) -> Room:
    return open_room(tmp_path)


def told(room: Room, day: date) -> dict[LimitId, Caution]:
    return {one.limit: one for one in cautions(room.repository, room.trainee_id, day)}


def sore(level: int) -> Callable[[AskedSet], SetDone]:
    return lambda asked: replace(as_asked(asked), pain=level)


def squats(room: Room, day: date, load_g: int, reps: int = 8, rir: float | None = 2) -> Session:
    asked = tuple(AskedSet(load_g, reps) for _ in range(3))
    done = tuple(SetDone(load_g, reps, rir=rir) for _ in range(3))
    part = LineDone(room.line_id("back-squat"), "back-squat", asked, done)
    return room.save(Session(room.trainee_id, day, (part,)))


# The trainee


def test_a_well_run_first_week_has_only_what_the_program_leaves_out(room: Room) -> None:
    assert list(told(room, MONDAY)) == [LimitId.TOO_SELDOM]


def test_facts_about_the_trainee_are_looked_at(room: Room) -> None:
    room.update_trainee(screened=None, screening_clear=None, activities_recorded=False)
    assert {LimitId.SCREENING, LimitId.LOAD_INCOMPLETE} <= set(told(room, MONDAY))
    room.update_trainee(birth_year=2010)
    young = told(room, MONDAY)
    assert LimitId.MINOR in young
    assert LimitId.TOO_SELDOM not in young  # said of adults only
    room.update_trainee(birth_year=1950)
    assert LimitId.OLDER in told(room, MONDAY)


def test_a_red_flag_goes_before_everything_until_a_clearance(room: Room) -> None:
    flagged = room.train(MONDAY, red_flag=True)
    room.update_trainee(screened=None)
    first = cautions(room.repository, room.trainee_id, WEDNESDAY)[0]
    assert (first.limit, first.severity) == (LimitId.RED_FLAG, Severity.STOP)
    assert first.sessions == (flagged.id,)
    room.update_trainee(clearances=(Clearance(WEDNESDAY, "a physician"),))
    assert LimitId.RED_FLAG not in told(room, WEDNESDAY)


def test_a_screening_that_was_not_clear_asks_for_clearance(room: Room) -> None:
    room.update_trainee(screening_clear=False)
    assert LimitId.CLEARANCE in told(room, MONDAY)


def test_a_gap_of_everything_is_told_once(room: Room) -> None:
    room.train_weeks(1)
    found = cautions(room.repository, room.trainee_id, MONDAY + 20 * DAY)
    gaps = [one for one in found if one.limit is LimitId.GAP]
    assert [(one.line_id, one["days"]) for one in gaps] == [(None, 16)]


def test_a_line_left_out_while_others_were_trained_is_told(room: Room) -> None:
    room.train(MONDAY)
    room.train(WEDNESDAY)
    for week in range(1, 4):
        room.train(WEDNESDAY + week * WEEK)
    gaps = [
        one
        for one in cautions(room.repository, room.trainee_id, MONDAY + 3 * WEEK + 3 * DAY)
        if one.limit is LimitId.GAP
    ]
    assert {one.line_id for one in gaps} == {room.line_id("back-squat"), room.line_id("push-up")}


def test_a_line_that_no_longer_stands_in_the_phase_has_no_gap(room: Room) -> None:
    room.train_weeks(8)
    assert LimitId.GAP not in told(room, MONDAY + 8 * WEEK - DAY)
    assert LimitId.GAP not in told(room, MONDAY + 8 * WEEK)  # and none after the program


# Lines


def test_pain_is_told_and_strong_pain_stops(room: Room) -> None:
    session = room.train(MONDAY, sore(2))
    mild = told(room, WEDNESDAY)[LimitId.PAIN]
    assert (mild["pain"], mild["times"], mild.sessions) == (2, 1, (session.id,))
    room.train(MONDAY + WEEK, sore(1))
    held = told(room, MONDAY + WEEK + DAY)[LimitId.PAIN_HOLD]
    assert (held.severity, held["times"]) == (Severity.STOP, 2)
    assert LimitId.PAIN not in told(room, MONDAY + WEEK + DAY)


def test_pain_of_today_is_told_today(room: Room) -> None:
    room.train(MONDAY, sore(2))
    assert told(room, MONDAY)[LimitId.PAIN]["pain"] == 2


def test_an_override_far_above_what_was_done_is_told(room: Room) -> None:
    room.train(MONDAY)
    line = room.line("back-squat")
    jump = Override(MONDAY + DAY, Position(70_000, reps=10, sets=4))
    room.save(replace(line, overrides=(jump,)))
    found = told(room, WEDNESDAY)
    assert found[LimitId.LOAD_STEP]["after_g"] == 70_000
    assert found[LimitId.SEVERAL_AT_ONCE]["variables"] == "reps, sets, load"
    later = told(room, MONDAY + 5 * WEEK)
    assert LimitId.LOAD_STEP not in later


def test_a_roll_over_that_keeps_the_demand_is_no_jump(room: Room) -> None:
    squats(room, MONDAY, 20_000, reps=12)
    found = told(room, WEDNESDAY)
    assert LimitId.LOAD_STEP not in found  # 20 to 22.5 kg, but from 8 repetitions again


def test_what_the_equipment_does_not_allow_is_told(room: Room) -> None:
    coarse = replace(OWNED, discs=OWNED.discs[:1])
    room.save(EquipmentFrom(room.trainee_id, MONDAY, coarse))
    line = room.line("back-squat")
    top = Override(MONDAY, Position(60_000, reps=12, sets=3))
    room.save(replace(line, overrides=(top,)))
    room.train(MONDAY)
    jump = told(room, WEDNESDAY)[LimitId.EQUIPMENT_JUMP]
    assert jump["next_load_g"] == 100_000
    assert jump.line_id == line.id


def test_a_rule_at_every_ceiling_is_told(room: Room) -> None:
    line = room.line("bench-press")
    short = ProgressionRule((VariableRange(Variable.REPS, 5, 6),))
    room.save(replace(line, revisions=(RuleRevision(MONDAY, short),)))
    room.train(WEDNESDAY)
    room.train(WEDNESDAY + WEEK)
    complete = told(room, WEDNESDAY + WEEK + DAY)[LimitId.RULE_COMPLETE]
    assert (complete["reps"], complete["load"]) == (6, 40_000)


def test_a_line_that_no_longer_gains_is_probably_at_a_plateau(room: Room) -> None:
    for ago in range(0, 140, 5):
        squats(room, MONDAY - ago * DAY, 50_000 + ago // 5 * 350)
    found = told(room, MONDAY)
    assert found[LimitId.PLATEAU].line_id == room.line_id("back-squat")
    assert found[LimitId.PLATEAU]["probability"] > 0.8  # type: ignore[operator]
    assert LimitId.PLATEAU not in told(room, MONDAY + 5 * WEEK)  # too long ago to say


# Days and weeks


def days_of(*named: tuple[int, tuple[object, ...]]) -> Program:
    days = tuple(TrainingDay(str(day), slots, day) for day, slots in named)  # type: ignore[arg-type]
    return Program("Close", (Phase("all", 12, days),))


def test_planned_days_too_close_are_told_before_they_are_done(tmp_path: Path) -> None:
    room = open_room(tmp_path, days_of((0, (SQUAT,)), (1, (SQUAT,)), (2, (L_SIT,)), (3, (L_SIT,))))
    (close,) = [
        one
        for one in cautions(room.repository, room.trainee_id, MONDAY)
        if one.limit is LimitId.TOO_CLOSE
    ]
    assert (close["pattern"], close["planned"]) == ("squat", True)
    room.train(MONDAY)
    room.train(MONDAY + DAY)
    done = told(room, MONDAY + DAY)[LimitId.TOO_CLOSE]
    assert done["planned"] is False
    assert len(done.sessions) == 2


def test_an_easier_week_may_lie_close(tmp_path: Path) -> None:
    room = open_room(tmp_path, days_of((0, (SQUAT,)), (1, (SQUAT,))))
    room.save(DeloadWindow(room.trainee_id, MONDAY, MONDAY + 9 * DAY))
    room.train(MONDAY)
    room.train(MONDAY + DAY)
    assert LimitId.TOO_CLOSE not in told(room, MONDAY + DAY)


def test_muscles_are_counted_by_the_last_weeks_where_no_program_runs(room: Room) -> None:
    (given,) = room.repository.assignments(room.trainee_id)
    room.repository.remove(given)
    assert LimitId.TOO_SELDOM not in told(room, MONDAY)
    for day in range(0, 36, 3):
        squats(room, MONDAY + day * DAY, 60_000)
    seldom = told(room, MONDAY + 35 * DAY)[LimitId.TOO_SELDOM]
    assert seldom["planned"] is False
    assert "chest" in str(seldom["muscles"])
    assert "quadriceps" not in str(seldom["muscles"])
    assert LimitId.TOO_SELDOM not in told(room, MONDAY + 20 * DAY)  # too short a record


def test_weeks_without_an_easier_one_are_told_of_the_experienced(room: Room) -> None:
    room.update_trainee(experience=Experience.ADVANCED)
    for week in range(10):
        squats(room, MONDAY + (week - 10) * WEEK, 60_000)
    assert told(room, MONDAY)[LimitId.NO_DELOAD]["weeks"] == 10
    room.save(DeloadWindow(room.trainee_id, MONDAY + 7 * DAY, MONDAY + 13 * DAY))
    assert LimitId.NO_DELOAD not in told(room, MONDAY)  # one comes within a week


def test_a_break_or_a_deload_counts_as_an_easier_week(room: Room) -> None:
    def since() -> date | None:
        return last_easier(read_history(room.repository, room.trainee_id), MONDAY)

    assert since() is None
    for ago in (60, 50, 36, 29, 22, 15, 8, 1):
        squats(room, MONDAY - ago * DAY, 60_000)
    assert since() == MONDAY - 36 * DAY
    room.save(DeloadWindow(room.trainee_id, MONDAY - 20 * DAY, MONDAY - 14 * DAY))
    assert since() == MONDAY - 13 * DAY


def test_two_signals_at_once_ask_for_a_deload(room: Room) -> None:
    for ago in (20, 13, 10):
        felt = squats(room, MONDAY - ago * DAY, 60_000, rir=3)
        room.save(replace(felt, wellness=Wellness(4, 4, 4, 4), effort=6.0))
    assert LimitId.REACTIVE_DELOAD not in told(room, MONDAY)
    for ago in (5, 2):
        felt = squats(room, MONDAY - ago * DAY, 60_000, rir=1)
        room.save(replace(felt, wellness=Wellness(2, 2, 3, None), effort=8.0))
    found = told(room, MONDAY)[LimitId.REACTIVE_DELOAD]
    assert found["signals"] == "wellness, effort"
    room.save(DeloadWindow(room.trainee_id, MONDAY, MONDAY + 6 * DAY))
    assert LimitId.REACTIVE_DELOAD not in told(room, MONDAY)


def test_bodyweight_work_counts_into_the_sessions_volume(room: Room) -> None:
    for ago in (20, 10, 3, 1):
        done = tuple(SetDone(0, 8, variation="floor") for _ in range(3 if ago > 7 else 4))
        part = LineDone(room.line_id("push-up"), "push-up", sets=(*done, SetDone(0, 8, pain=1)))
        effort = 6.0 if ago > 7 else 8.0
        room.save(Session(room.trainee_id, MONDAY - ago * DAY, (part,), effort=effort))
    assert LimitId.REACTIVE_DELOAD not in told(room, MONDAY)  # harder, but more work; one ache


def test_a_week_of_like_days_is_monotonous(room: Room) -> None:
    for ago in range(1, 8):
        minutes = 45 if ago == 1 else 60
        room.save(Activity(room.trainee_id, MONDAY - ago * DAY, "rowing", minutes, 5))
    found = told(room, MONDAY)[LimitId.MONOTONY]
    assert found["week_ends"] == MONDAY - DAY
    assert LimitId.MONOTONY not in told(room, MONDAY + WEEK)


# Setting aside


def test_a_caution_set_aside_comes_back_when_its_evidence_changes(room: Room) -> None:
    room.train(MONDAY, sore(2))
    found = told(room, WEDNESDAY)[LimitId.PAIN]
    squat = room.line_id("back-squat")
    push_up = next(
        one
        for one in cautions(room.repository, room.trainee_id, WEDNESDAY)
        if one.limit is LimitId.PAIN and one.line_id != squat
    )
    for one in (found, push_up):
        room.save(dismissal(one, room.trainee_id, WEDNESDAY, "a bruise"))
    aside = [
        one
        for one in cautions(room.repository, room.trainee_id, WEDNESDAY)
        if one.limit is LimitId.PAIN
    ]
    assert len(aside) <= 1
    session = room.repository.sessions(room.trainee_id)[0]
    worse = tuple(
        replace(part, sets=tuple(replace(done, pain=3) for done in part.sets))
        for part in session.lines
    )
    room.save(replace(session, lines=worse))
    assert LimitId.PAIN in told(room, WEDNESDAY)


def test_a_line_never_saved_still_gets_its_cautions(room: Room) -> None:
    program = room.repository.program(room.program_id)
    named = replace(BENCH, line_name="close", rule=LINEAR)
    day = replace(program.phases[0].days[0], slots=(named, PUSH_UP))
    room.save(replace(program, phases=(replace(program.phases[0], days=(day,)),)))
    room.save(EquipmentFrom(room.trainee_id, MONDAY, Equipment()))
    assert LimitId.PLATEAU not in told(room, MONDAY)
