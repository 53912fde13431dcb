"""What a day asks, slot by slot, with all that helps to do it."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from db.errors import NotFound
from desktop.planning.assignments import CannotAssign, assign, lines_needed
from desktop.planning.days import day_plan
from desktop.planning.history import read_history
from desktop.planning.standing import line_for
from desktop.training.equipment import Equipment
from desktop.training.position import Position
from desktop.training.program import Assignment, Phase, Program, TrainingDay
from desktop.training.session import AskedSet
from desktop.training.trainee import EquipmentFrom, Trainee
from tests.strength_room import (
    BENCH,
    DAY,
    LIGHT_SQUAT,
    MONDAY,
    PUSH_UP,
    SQUAT,
    WEEK,
    Room,
    as_asked,
    open_room,
)


@pytest.fixture
def room(tmp_path: Path) -> Room:
    return open_room(tmp_path)


def test_the_first_day_asks_the_starts_of_the_slots(room: Room) -> None:
    plan = day_plan(room.repository, room.trainee_id, MONDAY)
    assert (plan.week, plan.why_empty, plan.deload) == (1, "", False)
    assert plan.program is not None
    assert plan.phase is not None
    assert (plan.program.name, plan.phase.name) == ("Winter strength", "Base")
    squat, push_up = plan.slots
    assert squat.target.sets == tuple(AskedSet(60_000, reps=8) for _ in range(3))
    assert push_up.target.position == PUSH_UP.start
    assert (squat.last_time, squat.last_day, squat.best) == (None, None, None)


def test_a_barbell_slot_tells_its_discs_bar_and_warm_up(room: Room) -> None:
    squat, push_up = day_plan(room.repository, room.trainee_id, MONDAY).slots
    assert squat.bar is not None
    assert (squat.bar.name, squat.discs) == ("bar", (20_000,))
    loads = [each.load_g for each in squat.warm_up]
    assert loads == sorted(loads)
    assert loads[-1] < 60_000
    assert squat.share is None
    assert push_up.discs is None


def test_a_bodyweight_slot_tells_its_set_up_and_share(room: Room) -> None:
    push_up = day_plan(room.repository, room.trainee_id, MONDAY).slots[1]
    assert push_up.set_up == "chair, 45 cm"
    assert push_up.share is not None
    assert push_up.share.value == pytest.approx(0.51, abs=0.01)
    assert push_up.warm_up == ()


def test_a_load_that_cannot_be_made_has_no_discs(room: Room) -> None:
    room.save(EquipmentFrom(room.trainee_id, MONDAY, Equipment()))
    squat = day_plan(room.repository, room.trainee_id, MONDAY).slots[0]
    assert squat.target.position == SQUAT.start
    assert (squat.loading, squat.bar, squat.discs) == (None, None, None)


def test_the_next_eight_sessions_follow_from_this_one(room: Room) -> None:
    squat = day_plan(room.repository, room.trainee_id, MONDAY).slots[0]
    ahead = squat.next_positions
    assert [one.reps for one in ahead[:3]] == [9, 10, 11]
    assert [one.sets for one in ahead[:5]] == [3, 3, 3, 2, 3]  # the deload in the fifth week
    assert len(ahead) == 7  # the program ends
    light = day_plan(room.repository, room.trainee_id, MONDAY + 4 * DAY).slots[0]
    assert light.next_positions == ()


def test_last_time_and_the_best_set_are_told(room: Room) -> None:
    room.train_weeks(2)
    squat = day_plan(room.repository, room.trainee_id, MONDAY + 2 * WEEK).slots[0]
    assert squat.last_day == MONDAY + WEEK
    assert squat.last_time is not None
    assert squat.best is not None
    assert (squat.best.load_g, squat.best.reps) == (60_000, 9)
    assert [cell.value for cell in squat.strip[0].cells if cell.here] == [10]


def test_the_plan_of_a_day_looks_at_sessions_before_it_only(room: Room) -> None:
    before = day_plan(room.repository, room.trainee_id, MONDAY)
    room.train(MONDAY)
    after = day_plan(room.repository, room.trainee_id, MONDAY)
    assert [slot.target for slot in after.slots] == [slot.target for slot in before.slots]


def test_a_line_held_for_pain_asks_nothing(room: Room) -> None:
    room.train(MONDAY, lambda asked: replace(as_asked(asked), pain=5))
    squat = day_plan(room.repository, room.trainee_id, MONDAY + WEEK).slots[0]
    assert squat.target.sets == ()
    assert squat.warm_up == ()


def test_minutes_follow_what_is_asked(room: Room) -> None:
    whole = day_plan(room.repository, room.trainee_id, MONDAY).minutes
    easy = day_plan(room.repository, room.trainee_id, MONDAY + 4 * WEEK).minutes
    assert 5 < easy < whole < 40
    assert day_plan(room.repository, room.trainee_id, MONDAY + DAY).minutes == 0


def test_a_slot_without_a_line_is_planned_without_writing(room: Room) -> None:
    program = room.repository.program(room.program_id)
    day = program.phases[0].days[0]
    named = replace(SQUAT, line_name="pause", start=Position(50_000, reps=8, sets=3))
    phase = replace(program.phases[0], days=(replace(day, slots=(named, named)),))
    room.save(replace(program, phases=(phase,)))
    plan = day_plan(room.repository, room.trainee_id, MONDAY)
    assert [slot.line.id for slot in plan.slots] == [None, None]
    assert plan.slots[0].target.position == named.start
    assert len(plan.slots[0].next_positions) == 3
    assert room.repository.line_of(room.trainee_id, "back-squat", "pause") is None


def test_a_line_without_start_and_sessions_takes_that_of_its_slot(room: Room) -> None:
    line = room.save(replace(room.line("back-squat"), starts=()))
    history = read_history(room.repository, room.trainee_id)
    assert line_for(history, SQUAT, MONDAY).starts[0].position == SQUAT.start
    room.train(MONDAY)
    history = read_history(room.repository, room.trainee_id)
    assert line_for(history, SQUAT, MONDAY) == line


def test_the_number_of_queries_does_not_grow_with_the_record(room: Room) -> None:
    queries: list[object] = []
    room.repository.shared_version()  # begins to watch what is written, once
    room.repository.database.query_hooks.append(queries.append)
    day_plan(room.repository, room.trainee_id, MONDAY)
    at_first = len(queries)
    assert at_first <= 30
    room.train_weeks(3)
    queries.clear()
    day_plan(room.repository, room.trainee_id, MONDAY + 3 * WEEK)
    assert 0 < len(queries) <= at_first


def test_an_unknown_trainee_is_told(room: Room) -> None:
    with pytest.raises(NotFound):
        day_plan(room.repository, 99, MONDAY)


# Assigning a program


def test_assigning_ends_what_ran_and_makes_the_lines_that_are_missing(room: Room) -> None:
    slots = (SQUAT, LIGHT_SQUAT, replace(BENCH, line_name="close"))
    spring = Program("Spring", (Phase("all", 4, (TrainingDay("all", slots, 0),)),))
    spring_id = room.save(spring).id
    assert spring_id is not None
    start = MONDAY + 4 * WEEK
    given = assign(room.repository, room.trainee_id, spring_id, start)
    assert [one.ended for one in given.ended] == [start - DAY]
    (line,) = given.lines
    assert (line.exercise, line.name) == ("bench-press", "close")
    assert (line.starts[0].day, line.starts[0].kind) == (start, "program")
    assert room.repository.assignments(room.trainee_id)[0].ended is None  # nothing written yet
    room.repository.save(*given.aggregates)
    assert lines_needed(room.repository, given.assignment) == ()
    plan = day_plan(room.repository, room.trainee_id, start)
    assert plan.program is not None
    assert plan.program.name == "Spring"


def test_what_cannot_be_assigned_is_told(room: Room) -> None:
    def refused(start_weeks: int, weekdays: tuple[int, ...] = (), program_id: int = 0) -> str:
        with pytest.raises(CannotAssign) as told:
            assign(
                room.repository,
                room.trainee_id,
                program_id or room.program_id,
                MONDAY + start_weeks * WEEK,
                weekdays,
            )
        return str(told.value)

    empty = room.save(Program("Empty", (Phase("nothing", 1),))).id
    assert empty is not None
    assert "no training day yet" in refused(9, program_id=empty)
    assert "is assigned from 2026-09-07 on already" in refused(0)
    assert "weekdays are 0" in refused(9, (7,))
    assert "once" in refused(9, (1, 1))


def test_an_ended_program_is_left_as_it_is(room: Room) -> None:
    (running,) = room.repository.assignments(room.trainee_id)
    room.repository.save(replace(running, ended=MONDAY + WEEK))
    given = assign(room.repository, room.trainee_id, room.program_id, MONDAY + 3 * WEEK)
    assert given.ended == ()
    assert given.assignment == Assignment(room.trainee_id, room.program_id, MONDAY + 3 * WEEK)


def test_somebody_new_gets_every_line_of_the_program_once(room: Room) -> None:
    newcomer = room.save(Trainee("Seat 3"))
    assert newcomer.id is not None
    given = assign(room.repository, newcomer.id, room.program_id, MONDAY)
    names = sorted((line.exercise, line.name) for line in given.lines)
    assert names == [
        ("back-squat", ""),
        ("back-squat", "light"),
        ("bench-press", ""),
        ("l-sit", ""),
        ("push-up", ""),
    ]
