"""Ways out of a caution: what is done in one step, and what only says where to look."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest

from desktop.planning.caution_ways import Way, WayKind, day_off, moved_from, ways_of
from desktop.planning.cautions import cautions
from desktop.planning.days import day_plan
from desktop.planning.history import read_history
from desktop.planning.schedule import days_planned, training_day_on
from desktop.training.limits import LimitId, Proposal
from desktop.training.position import Position, Variable, VariableRange
from desktop.training.program import (
    Assignment,
    Line,
    Override,
    Program,
    TrainingDay,
    WeekdaysFrom,
)
from desktop.training.recovery import Caution
from desktop.training.trainee import DeloadWindow
from tests.strength_room import (
    DAY,
    MONDAY,
    PROGRAM,
    SQUAT,
    WEEK,
    Room,
    as_asked,
    open_room,
)


@pytest.fixture
def room(tmp_path: Path) -> Room:
    return open_room(tmp_path)


def told(room: Room, limit: LimitId, day: date) -> Caution:
    return next(c for c in cautions(room.repository, room.trainee_id, day) if c.limit is limit)


def ways(room: Room, caution: Caution, day: date) -> dict[WayKind, Way]:
    history = read_history(room.repository, room.trainee_id)
    return {way.kind: way for way in ways_of(history, caution, day)}


def asked(room: Room, exercise: str, day: date) -> Position | None:
    plan = day_plan(room.repository, room.trainee_id, day)
    return next(s.target.position for s in plan.slots if s.exercise.key == exercise)


def any_caution(room: Room, proposal: Proposal) -> Caution:
    limit = next(
        each
        for each in read_history(room.repository, room.trainee_id).library.limits.values()
        if each.proposal is proposal
    )
    return Caution(limit.id, limit.severity, (), limit.source, limit.proposal)


def test_every_proposal_has_a_way(room: Room) -> None:
    history = read_history(room.repository, room.trainee_id)
    for proposal in Proposal:
        assert ways_of(history, any_caution(room, proposal), MONDAY)


def test_a_large_step_can_be_taken_back(room: Room) -> None:
    room.train(MONDAY)
    line = room.line("back-squat")
    before = asked(room, "back-squat", MONDAY + WEEK)
    room.save(replace(line, overrides=(Override(MONDAY + DAY, Position(70_000, 10, 4)),)))
    today = MONDAY + 2 * DAY
    caution = told(room, LimitId.LOAD_STEP, today)
    hold = ways(room, caution, today)[WayKind.HOLD]
    assert isinstance(hold.changed, Line)
    assert hold.position == before
    room.save(hold.changed)
    assert asked(room, "back-squat", MONDAY + WEEK) == before
    assert LimitId.LOAD_STEP not in {
        c.limit for c in cautions(room.repository, room.trainee_id, today)
    }


def test_a_line_held_for_pain_goes_on_lighter_when_the_coach_says_so(room: Room) -> None:
    room.train(MONDAY, lambda one: replace(as_asked(one), pain=6))
    today = MONDAY + DAY
    held = told(room, LimitId.PAIN_HOLD, today)
    found = ways(room, held, today)
    assert {WayKind.LIGHTER, WayKind.SUBSTITUTE, WayKind.CLEARANCE} == set(found)
    lighter = found[WayKind.LIGHTER]
    assert isinstance(lighter.changed, Line)
    assert lighter.position is not None
    before = room.line("back-squat")
    if held.line_id == before.id:
        assert lighter.position.load_g < 60_000
    room.save(lighter.changed)
    still = [
        c
        for c in cautions(room.repository, room.trainee_id, today)
        if c.limit is LimitId.PAIN_HOLD and c.line_id == held.line_id
    ]
    assert not still


def test_an_easier_week_begins_on_the_next_monday_with_the_coachs_factors(room: Room) -> None:
    caution = any_caution(room, Proposal.PLAN_A_DELOAD)
    deload = ways(room, caution, MONDAY + DAY)[WayKind.DELOAD]
    assert isinstance(deload.changed, DeloadWindow)
    assert deload.day == deload.changed.first == MONDAY + WEEK
    assert (deload.changed.sets_factor, deload.changed.load_percent) == (0.6, 10.0)
    room.save(deload.changed)
    assert set(ways(room, caution, MONDAY + DAY)) == {WayKind.PLANNER}  # it is planned already


def test_a_day_off_comes_between_hard_days(tmp_path: Path) -> None:
    days = (
        TrainingDay("squat", (SQUAT,), weekday=0),
        TrainingDay("squat again", (replace(SQUAT, line_name="again"),), weekday=1),
    )
    program = Program("Close", (replace(PROGRAM.phases[0], days=days, weeks=8),))
    room = open_room(tmp_path, program)
    caution = told(room, LimitId.TOO_CLOSE, MONDAY)
    off = ways(room, caution, MONDAY)[WayKind.DAY_OFF]
    assert off.weekday == 2  # a day that the trainee named, one day on
    assert off.changed is not None
    room.save(off.changed)
    limits = {c.limit for c in cautions(room.repository, room.trainee_id, MONDAY)}
    assert LimitId.TOO_CLOSE not in limits


@pytest.mark.parametrize(("today", "first"), [(0, 0), (1, 1), (2, 7), (6, 7)])
def test_a_day_that_moves_leaves_what_was_planned_before(
    tmp_path: Path, today: int, first: int
) -> None:
    days = (
        TrainingDay("squat", (SQUAT,), weekday=0),
        TrainingDay("squat again", (replace(SQUAT, line_name="again"),), weekday=1),
    )
    program = Program("Close", (replace(PROGRAM.phases[0], days=days, weeks=8),))
    room = open_room(tmp_path, program)
    on, sunday = MONDAY + 2 * WEEK + today * DAY, MONDAY + 2 * WEEK - DAY
    before = days_planned(read_history(room.repository, room.trainee_id), MONDAY, sunday)
    off = day_off(read_history(room.repository, room.trainee_id), on)
    assert off is not None
    assert off.weekday == 2
    assert off.day == MONDAY + 2 * WEEK + first * DAY
    assert isinstance(off.changed, Assignment)
    room.save(off.changed)
    history = read_history(room.repository, room.trainee_id)
    assert days_planned(history, MONDAY, sunday) == before == 4
    for week in range(8):
        monday = MONDAY + week * WEEK
        planned = [
            day for day in range(7) if training_day_on(history, monday + day * DAY) is not None
        ]
        moved = monday + WEEK > off.day
        assert planned == ([0, 2] if moved else [0, 1]), week
    again = moved_from(off.changed, off.day, (0, 3))
    assert again.moves == (WeekdaysFrom(off.day, (0, 3)),)
    assert moved_from(off.changed, MONDAY, (0, 3)) == replace(
        off.changed, weekdays=(0, 3), moves=()
    )


def test_well_spaced_days_need_no_day_off(room: Room) -> None:
    history = read_history(room.repository, room.trainee_id)
    assert day_off(history, MONDAY) is None
    caution = any_caution(room, Proposal.MOVE_A_DAY)
    assert set(ways(room, caution, MONDAY)) == {WayKind.PROGRAM}


def test_what_changes_something_carries_it_and_the_rest_does_not(room: Room) -> None:
    room.train(MONDAY, lambda one: replace(as_asked(one), pain=6))
    history = read_history(room.repository, room.trainee_id)
    acts = {WayKind.HOLD, WayKind.LIGHTER, WayKind.DELOAD, WayKind.DAY_OFF, WayKind.GROW}
    for caution in cautions(room.repository, room.trainee_id, MONDAY + DAY):
        for way in ways_of(history, caution, MONDAY + DAY):
            assert (way.changed is not None) == (way.kind in acts)


def about_the_squat(room: Room, limit: LimitId) -> Caution:
    found = read_history(room.repository, room.trainee_id).library.limits[limit]
    line_id = room.line_id("back-squat")
    return Caution(limit, found.severity, (), found.source, found.proposal, line_id)


@pytest.mark.parametrize("limit", [LimitId.PLATEAU, LimitId.RULE_COMPLETE])
def test_another_variable_grows_from_where_the_line_stands(room: Room, limit: LimitId) -> None:
    room.train(MONDAY)
    today, then = MONDAY + DAY, MONDAY + WEEK
    before = asked(room, "back-squat", then)
    assert before is not None
    grown = ways(room, about_the_squat(room, limit), today)[WayKind.GROW]
    assert grown.grows == VariableRange(Variable.SETS, 3, 4)
    assert grown.settles == (limit is LimitId.PLATEAU)  # a trend is another only weeks later
    assert isinstance(grown.changed, Line)
    room.save(grown.changed)
    assert asked(room, "back-squat", then) == before  # nothing harder at once
    (revision,) = room.line("back-squat").revisions
    variables = [each.variable for each in revision.rule.ranges]
    assert variables == [Variable.REPS, Variable.SETS, Variable.LOAD]
    assert WayKind.GROW not in ways(room, about_the_squat(room, limit), today)


def test_nobody_guided_to_three_sets_is_offered_a_fourth(room: Room) -> None:
    room.train(MONDAY)
    room.update_trainee(birth_year=MONDAY.year - 70)
    found = ways(room, about_the_squat(room, LimitId.PLATEAU), MONDAY + DAY)
    assert WayKind.GROW not in found
    assert WayKind.VARIABLE in found


def test_while_a_clearance_is_needed_nothing_else_is_proposed(room: Room) -> None:
    room.train(MONDAY, red_flag=True)
    today = MONDAY + DAY
    history = read_history(room.repository, room.trainee_id)
    for proposal in Proposal:
        caution = any_caution(room, proposal)
        assert all(way.changed is None for way in ways_of(history, caution, today))
    assert set(ways(room, told(room, LimitId.RED_FLAG, today), today)) == {WayKind.CLEARANCE}
