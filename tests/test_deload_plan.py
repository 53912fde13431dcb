"""The easier week: when it is due and why, what it asks, and what it does to the weeks after it."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest

from desktop.planning.deload_plan import (
    DeloadBasis,
    DeloadPlan,
    DeloadProposal,
    eased_as,
    monday_from,
    moved,
    plan_of,
    proposal_of,
)
from desktop.planning.history import read_history
from desktop.training.deload import Signal
from desktop.training.program import Program
from desktop.training.session import Wellness
from desktop.training.trainee import DeloadWindow
from tests.strength_room import DAY, MONDAY, PROGRAM, WEEK, Room, as_asked, open_room

LONG = Program("Long", (replace(PROGRAM.phases[0], weeks=30),), deload_every=4)


@pytest.fixture
def room(tmp_path: Path) -> Room:
    return open_room(tmp_path, LONG)


def proposed(room: Room, today: date) -> DeloadProposal:
    return proposal_of(read_history(room.repository, room.trainee_id), today)


def planned(room: Room, window: DeloadWindow, today: date, weeks: int = 6) -> DeloadPlan:
    return plan_of(read_history(room.repository, room.trainee_id), window, today, weeks)


def window_from(room: Room, first: date) -> DeloadWindow:
    return DeloadWindow(room.trainee_id, first, first + 6 * DAY)


# When


def test_the_cycle_of_the_program_names_the_week(room: Room) -> None:
    room.train_weeks(2)
    found = proposed(room, MONDAY + 2 * WEEK)
    assert found.basis is DeloadBasis.CYCLE
    assert (found.every, found.built, found.since) == (4, 2, MONDAY)
    assert found.window.first == found.due == MONDAY + 4 * WEEK
    assert found.window.last == found.window.first + 6 * DAY
    assert found.window.planned


def test_a_cycle_that_is_over_proposes_the_next_week(room: Room) -> None:
    room.train_weeks(6)
    found = proposed(room, MONDAY + 6 * WEEK + DAY)
    assert found.due == MONDAY + 4 * WEEK
    assert found.window.first == MONDAY + 7 * WEEK


def test_without_a_program_the_coachs_setting_holds(room: Room) -> None:
    room.train_weeks(1)
    (assignment,) = room.repository.assignments(room.trainee_id)
    room.save(replace(assignment, ended=MONDAY + 6 * DAY))
    found = proposed(room, MONDAY + WEEK)
    assert found.every == room.repository.coach_settings().deload_every_weeks == 6


def test_a_program_that_wants_none_gets_none_proposed(tmp_path: Path) -> None:
    room = open_room(tmp_path, replace(LONG, deload_every=None))
    room.train_weeks(1)
    found = proposed(room, MONDAY + WEEK)
    assert (found.basis, found.every, found.due) == (DeloadBasis.NONE, None, None)
    assert found.window.first == MONDAY + WEEK  # where one would begin


def test_two_signals_at_once_ask_for_the_next_week(room: Room) -> None:
    room.train_weeks(3)
    for week, feel in ((0, 4), (1, 4), (2, 4), (3, 2)):
        for session in room.repository.sessions(room.trainee_id):
            if MONDAY + week * WEEK <= session.day < MONDAY + (week + 1) * WEEK:
                room.save(replace(session, wellness=Wellness(feel, feel, feel, feel)))
    sore = room.train(MONDAY + 3 * WEEK, lambda asked: replace(as_asked(asked), pain=1))
    room.save(replace(sore, wellness=Wellness(2, 2, 2, 2)))
    room.train(MONDAY + 3 * WEEK + 2 * DAY, wellness=Wellness(2, 2, 2, 2))
    found = proposed(room, MONDAY + 3 * WEEK + 3 * DAY)
    assert found.basis is DeloadBasis.SIGNALS
    assert {each.signal for each in found.signals} == {Signal.WELLNESS, Signal.ACHES}
    assert found.needed == 2
    assert found.window.first == MONDAY + 4 * WEEK
    assert not found.window.planned


def test_a_phase_of_the_program_goes_before_the_cycle(tmp_path: Path) -> None:
    room = open_room(tmp_path)  # its fifth week is easy
    room.train_weeks(2)
    found = proposed(room, MONDAY + 2 * WEEK)
    assert found.basis is DeloadBasis.PROGRAM
    assert found.window.first == MONDAY + 4 * WEEK
    assert found.window.id is None


def test_what_the_coach_planned_is_what_comes(room: Room) -> None:
    room.train_weeks(1)
    mine = room.save(window_from(room, MONDAY + 3 * WEEK))
    found = proposed(room, MONDAY + WEEK)
    assert (found.basis, found.window) == (DeloadBasis.RECORDED, mine)
    room.repository.remove(mine)
    assert proposed(room, MONDAY + WEEK).basis is DeloadBasis.CYCLE


def test_nobody_trained_yet_has_nothing_to_ease(room: Room) -> None:
    found = proposed(room, MONDAY)
    assert (found.basis, found.built, found.since) == (DeloadBasis.NONE, 0, None)


@pytest.mark.parametrize("ahead", range(7))
def test_windows_begin_on_a_monday(ahead: int) -> None:
    found = monday_from(MONDAY + ahead * DAY)
    assert found.weekday() == 0
    assert 0 <= (found - (MONDAY + ahead * DAY)).days < 7


def test_a_window_moves_by_weeks_but_not_into_the_past(room: Room) -> None:
    here = window_from(room, MONDAY + WEEK)
    assert moved(here, 2, MONDAY + DAY).first == MONDAY + 3 * WEEK
    assert moved(here, -1, MONDAY + DAY).first == MONDAY
    assert moved(here, -2, MONDAY + DAY) == here


def test_a_window_takes_the_coachs_factors(room: Room) -> None:
    settings = room.repository.coach_settings()
    room.repository.save(replace(settings, deload_sets_factor=0.5, deload_load_percent=15.0))
    history = read_history(room.repository, room.trainee_id)
    made = eased_as(history, window_from(room, MONDAY))
    assert (made.sets_factor, made.load_percent) == (0.5, 15.0)


# What


def test_each_slot_is_shown_beside_what_it_would_ask(room: Room) -> None:
    room.train_weeks(1)
    plan = planned(room, window_from(room, MONDAY + WEEK), MONDAY + WEEK)
    assert [(day.name, day.day) for day in plan.days] == [
        ("squat and push", MONDAY + WEEK),
        ("bench", MONDAY + WEEK + 2 * DAY),
        ("light", MONDAY + WEEK + 4 * DAY),
    ]
    squat = plan.days[0].slots[0]
    assert squat.usual.position is not None
    assert squat.eased.position is not None
    assert (squat.usual.position.sets, squat.usual.position.load_g) == (3, 60_000)
    # 3 sets x 0.6 are 1.8, so 2; 90 % of 60 kg are 54, rounded down to what can be loaded.
    assert (squat.eased.position.sets, squat.eased.position.load_g) == (2, 52_500)
    assert squat.eased.position.reps == squat.usual.position.reps
    assert plan.days[0].minutes < plan.days[0].usual_minutes


def test_the_eased_week_has_fewer_sets_and_the_others_as_many(room: Room) -> None:
    room.train_weeks(1)
    plan = planned(room, window_from(room, MONDAY + 2 * WEEK), MONDAY + WEEK)
    assert [week.eased for week in plan.weeks] == [False, True, *[False] * 4]
    assert [week.first for week in plan.weeks] == [MONDAY + n * WEEK for n in range(1, 7)]
    assert plan.weeks[1].sets < plan.weeks[1].usual_sets
    assert all(week.sets == week.usual_sets for week in plan.weeks[:1])


def test_lines_stand_one_step_behind_after_it(room: Room) -> None:
    room.train_weeks(1)
    plan = planned(room, window_from(room, MONDAY + WEEK), MONDAY + WEEK, weeks=3)
    later = {(each.exercise.key, each.line_name): each for each in plan.later}
    bench = later["bench-press", ""]
    assert bench.planned.position is not None
    assert bench.usual.position is not None
    assert bench.usual.position.load_g - bench.planned.position.load_g == 2_500


def test_a_recorded_window_is_moved_not_doubled(room: Room) -> None:
    room.train_weeks(1)
    mine = room.save(window_from(room, MONDAY + 2 * WEEK))
    plan = planned(room, moved(mine, 1, MONDAY + WEEK), MONDAY + WEEK)
    assert [week.eased for week in plan.weeks] == [False, False, True, False, False, False]


def test_a_phase_of_the_program_is_shown_beside_the_week_without_it(tmp_path: Path) -> None:
    room = open_room(tmp_path)  # its fifth week is easy
    room.train_weeks(3)
    today = MONDAY + 3 * WEEK
    own = proposed(room, today).window
    plan = planned(room, own, today, weeks=5)
    (squat,) = plan.days[0].slots
    assert (len(squat.usual.sets), len(squat.eased.sets)) == (3, 2)
    assert [week.eased for week in plan.weeks] == [False, True, False, False, False]
    elsewhere = planned(room, window_from(room, today), today, weeks=5)
    assert [week.eased for week in elsewhere.weeks] == [True, True, False, False, False]
    assert elsewhere.weeks[1].usual_sets == plan.weeks[1].sets  # the phase eases on both sides


def test_without_a_program_there_is_nothing_to_compare(room: Room) -> None:
    (assignment,) = room.repository.assignments(room.trainee_id)
    room.save(replace(assignment, ended=MONDAY))
    plan = planned(room, window_from(room, MONDAY + WEEK), MONDAY + DAY)
    assert (plan.days, plan.weeks, plan.later) == ((), (), ())


def test_a_line_that_ends_with_the_easier_week_stands_nowhere_else(tmp_path: Path) -> None:
    room = open_room(tmp_path)  # after its fourth week the bench press is asked no more
    room.train_weeks(3)
    history = read_history(room.repository, room.trainee_id)
    today = MONDAY + 3 * WEEK
    plan = plan_of(history, window_from(room, today), today)
    assert plan.days
    told = {each.exercise.key: each for each in plan.later}
    assert "bench-press" not in told  # its last target is that of the easier week
    assert not any(each.planned.deload or each.usual.deload for each in plan.later)
