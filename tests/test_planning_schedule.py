"""Which training day falls on a date, and what stands in its way."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta
from itertools import islice
from pathlib import Path

import pytest

from desktop.planning.days import WhyEmpty, day_plan, next_day_of
from desktop.planning.history import History, read_history
from desktop.planning.schedule import (
    deload_on,
    deload_windows,
    line_days,
    place_on,
    training_day_on,
    training_days,
    weekdays_of,
)
from desktop.training.program import Assignment, Phase, Program, TrainingDay
from desktop.training.session import Session
from desktop.training.trainee import Absence, Clearance, DeloadWindow
from tests.strength_room import BENCH, DAY, L_SIT, MONDAY, PUSH_UP, SQUAT, WEEK, Room, open_room


@pytest.fixture
def room(tmp_path: Path) -> Room:
    return open_room(tmp_path)


def history(room: Room) -> History:
    return read_history(room.repository, room.trainee_id)


def name_on(room: Room, day: date) -> str | None:
    planned = training_day_on(history(room), day)
    return planned.name if planned else None


def why(room: Room, day: date) -> WhyEmpty:
    return day_plan(room.repository, room.trainee_id, day).why_empty


def program_of(*days: TrainingDay, weeks: int = 4) -> Program:
    return Program("In turn", (Phase("all", weeks, days),))


# Weekdays and weeks


def test_days_fall_on_their_weekdays(room: Room) -> None:
    week = [name_on(room, MONDAY + n * DAY) for n in range(7)]
    assert week == ["squat and push", None, "bench", None, "light", None, None]


def test_the_assignment_may_name_other_weekdays(tmp_path: Path) -> None:
    room = open_room(tmp_path, weekdays=(1, 3))
    week = [name_on(room, MONDAY + n * DAY) for n in range(7)]
    assert week == [None, "squat and push", None, "bench", "light", None, None]
    place = place_on(history(room), MONDAY)
    assert place is not None
    assert weekdays_of(history(room), place) == (1, 3, 4)


def test_of_two_days_on_one_weekday_the_first_is_trained(tmp_path: Path) -> None:
    days = TrainingDay("first", (SQUAT,), 0), TrainingDay("second", (BENCH,), 0)
    room = open_room(tmp_path, program_of(*days))
    assert name_on(room, MONDAY) == "first"


@pytest.mark.parametrize(
    ("ahead", "name"),
    [(0, "Base"), (27, "Base"), (28, "Easy"), (35, "Heavy"), (55, "Heavy"), (56, None)],
)
def test_phases_follow_each_other_by_weeks(room: Room, ahead: int, name: str | None) -> None:
    place = place_on(history(room), MONDAY + ahead * DAY)
    assert place is not None
    assert (place.phase.name if place.phase else None) == name


# Why nothing is asked


def test_every_empty_day_says_why(room: Room) -> None:
    assert why(room, MONDAY) == ""
    assert why(room, MONDAY - DAY) == "not started"
    assert why(room, MONDAY + DAY) == "rest day"
    assert why(room, MONDAY + 8 * WEEK) == "ended"
    room.save(Absence(room.trainee_id, MONDAY + 2 * DAY, None))
    assert why(room, MONDAY) == ""
    assert why(room, MONDAY + 2 * DAY) == "away"


def test_without_a_program_nothing_is_asked(room: Room) -> None:
    (given,) = room.repository.assignments(room.trainee_id)
    ended = room.save(replace(given, ended=MONDAY + 6 * DAY))
    assert why(room, MONDAY + WEEK) == "ended"
    room.repository.remove(ended)
    assert why(room, MONDAY) == "no program"
    assert next_day_of(read_history(room.repository, room.trainee_id), MONDAY) is None


def test_a_red_flag_stops_everything_until_a_clearance(room: Room) -> None:
    room.train(MONDAY, red_flag=True)
    wednesday = MONDAY + 2 * DAY
    plan = day_plan(room.repository, room.trainee_id, wednesday)
    assert plan.why_empty == "clearance needed"
    assert plan.slots == ()
    assert plan.training_day is not None
    room.update_trainee(clearances=(Clearance(wednesday, "a physician"),))
    assert why(room, MONDAY + DAY) == "clearance needed"
    assert why(room, wednesday) == ""


def test_a_screening_that_was_not_clear_stops_everything_until_a_clearance(room: Room) -> None:
    room.update_trainee(screened=MONDAY, screening_clear=False)
    assert why(room, MONDAY) == "clearance needed"
    room.update_trainee(clearances=(Clearance(MONDAY, "a physician"),))
    assert why(room, MONDAY) == ""


# Deloads and absences


def test_a_deload_phase_is_a_deload_for_every_line(room: Room) -> None:
    (easy,) = deload_windows(history(room))
    assert (easy.first, easy.last) == (MONDAY + 4 * WEEK, MONDAY + 5 * WEEK - DAY)
    plan = day_plan(room.repository, room.trainee_id, MONDAY + 4 * WEEK)
    assert plan.deload
    (squat,) = plan.slots
    assert squat.target.deload
    assert len(squat.target.sets) == 2  # 3 x 0.6, rounded up


def test_a_recorded_deload_goes_before_that_of_the_phase(room: Room) -> None:
    monday = MONDAY + 4 * WEEK
    room.save(DeloadWindow(room.trainee_id, monday, monday + 2 * DAY, sets_factor=0.3))
    found = deload_on(history(room), monday)
    assert found is not None
    assert found.sets_factor == 0.3
    later = deload_on(history(room), monday + 3 * DAY)
    assert later is not None
    assert later.id is None
    assert deload_on(history(room), MONDAY) is None


def test_a_program_that_was_replaced_no_longer_brings_its_deload(room: Room) -> None:
    room.save(Assignment(room.trainee_id, room.program_id, MONDAY + WEEK))
    assert [one.first for one in deload_windows(history(room))] == [MONDAY + 5 * WEEK]


def test_the_next_training_day_passes_over_days_away(room: Room) -> None:
    def following(after: date) -> date | None:
        return next_day_of(read_history(room.repository, room.trainee_id), after)

    assert following(MONDAY - DAY) == MONDAY
    assert following(MONDAY) == MONDAY + 2 * DAY
    room.save(Absence(room.trainee_id, MONDAY + DAY, MONDAY + 5 * DAY))
    assert following(MONDAY) == MONDAY + WEEK
    assert following(MONDAY + 8 * WEEK) is None


def test_the_days_of_a_line_run_over_the_phases(room: Room) -> None:
    days = line_days(history(room), "back-squat", "", MONDAY, 20)
    assert days == tuple(MONDAY + week * WEEK for week in range(1, 8))
    assert line_days(history(room), "back-squat", "light", MONDAY, 2) == (
        MONDAY + 4 * DAY,
        MONDAY + 11 * DAY,
    )


# Rotations

FIRST, SECOND, THIRD = (
    TrainingDay("squat", (SQUAT,)),
    TrainingDay("bench", (BENCH,)),
    TrainingDay("push", (PUSH_UP,)),
)


def test_a_rotation_goes_on_after_the_last_session_done(tmp_path: Path) -> None:
    room = open_room(tmp_path, program_of(FIRST, SECOND, THIRD))
    assert name_on(room, MONDAY) == "squat"
    assert name_on(room, MONDAY + 2 * DAY) == "squat"  # Monday was missed
    room.train(MONDAY + 2 * DAY)
    assert name_on(room, MONDAY + 2 * DAY) == "squat"  # what was done that day
    assert name_on(room, MONDAY + 4 * DAY) == "bench"
    assert name_on(room, MONDAY + DAY) is None  # not one of the trainee's days


def test_the_days_of_a_rotation_come_in_turn(tmp_path: Path) -> None:
    room = open_room(tmp_path, program_of(FIRST, SECOND, THIRD), weekdays=(1, 4))
    coming = [(day, one.name) for day, one in islice(training_days(history(room), MONDAY), 4)]
    tuesday, friday = MONDAY + DAY, MONDAY + 4 * DAY
    assert coming == [
        (tuesday, "squat"),
        (friday, "bench"),
        (tuesday + WEEK, "push"),
        (friday + WEEK, "squat"),
    ]


def test_without_named_days_a_rotation_leaves_a_full_day_between(tmp_path: Path) -> None:
    room = open_room(tmp_path, program_of(FIRST, SECOND))
    room.update_trainee(weekdays=())
    coming = [day for day, _ in islice(training_days(history(room), MONDAY - DAY), 3)]
    assert coming == [MONDAY, MONDAY + 2 * DAY, MONDAY + 4 * DAY]
    room.save(Session(room.trainee_id, MONDAY))
    assert name_on(room, MONDAY + DAY) is None
    place = place_on(history(room), MONDAY)
    assert place is not None
    assert weekdays_of(history(room), place) == ()


def test_days_with_a_weekday_go_before_the_rotation(tmp_path: Path) -> None:
    fixed = TrainingDay("hold", (L_SIT,), weekday=2)
    room = open_room(tmp_path, program_of(FIRST, fixed, SECOND))
    coming = [one.name for _, one in islice(training_days(history(room), MONDAY - DAY), 5)]
    assert coming == ["squat", "hold", "bench", "squat", "hold"]
    place = place_on(history(room), MONDAY)
    assert place is not None
    assert weekdays_of(history(room), place) == (0, 2, 4)


def test_after_the_last_week_there_are_no_weekdays(room: Room) -> None:
    place = place_on(history(room), MONDAY + 9 * WEEK)
    assert place is not None
    assert weekdays_of(history(room), place) == ()
    assert training_day_on(history(room), MONDAY + 9 * WEEK) is None


def test_weeks_begin_on_monday_also_where_the_start_does_not(room: Room) -> None:
    (given,) = room.repository.assignments(room.trainee_id)
    room.repository.save(replace(given, start=MONDAY + 2 * DAY))
    assert why(room, MONDAY) == "not started"
    plan = day_plan(room.repository, room.trainee_id, MONDAY + timedelta(days=2))
    assert plan.week == 1
    assert day_plan(room.repository, room.trainee_id, MONDAY + WEEK).week == 2
