"""A whole program as weeks: what each asks, where easier ones are, and what an edit touches."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from datetime import date, timedelta
from pathlib import Path

import pytest

from db.database import Database
from db.repository import Repository
from desktop.catalogue import load_catalogue
from desktop.demo import MONDAY_AFTER, fill
from desktop.planning.history import History, read_history, read_library
from desktop.planning.line_memory import LineMemory
from desktop.planning.outlook import Onlooker
from desktop.planning.program_weeks import ProgramWeeks, SlotWeeks
from desktop.planning.standing import key_of
from desktop.planning.weeks import weeks_of
from desktop.planning.weeks_table import program_weeks, weeks_in_steps
from desktop.training.limits import LimitId
from desktop.training.position import Follow, Position, ProgressionRule, Variable, VariableRange
from desktop.training.program import Phase, PhasePurpose, Program, Slot, TrainingDay
from desktop.training.program_edits import SlotPlace, slot_at, with_slot
from desktop.training.trainee import Experience, Trainee

TODAY = date(2026, 11, 26)
DOUBLE = ProgressionRule(
    (VariableRange(Variable.REPS, 8, 10), VariableRange(Variable.LOAD, increment=2_500))
)
SQUAT = Slot("back-squat", DOUBLE, Position(60_000, 8, 3))
PRESS = Slot("bench-press", DOUBLE, Position(40_000, 8, 3))
LATER = Slot("deadlift", DOUBLE, Position(80_000, 8, 3))
MONDAY = TrainingDay("Legs", (SQUAT, PRESS), 0)
THURSDAY = TrainingDay("Press", (PRESS,), 3)
PROGRAM = Program(
    "Plain",
    (
        Phase("Build", 3, (MONDAY, THURSDAY)),
        Phase("", 1, (MONDAY, THURSDAY), PhasePurpose.DELOAD),
        Phase("Later", 2, (replace(MONDAY, slots=(SQUAT, LATER)),)),
    ),
    deload_every=None,
)


@pytest.fixture(scope="module")
def repository(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Repository]:
    path: Path = tmp_path_factory.mktemp("weeks") / "demo.db"
    repository = Repository(Database.open(path))
    repository.sync_catalogue(load_catalogue())
    fill(repository, MONDAY_AFTER)
    yield repository
    repository.database.close()


@pytest.fixture(scope="module")
def nobody(repository: Repository) -> Onlooker:
    return Onlooker(read_library(repository), TODAY)


@pytest.fixture(scope="module")
def bow(repository: Repository) -> Onlooker:
    trainee = repository.trainee_named("Bow")
    assert trainee is not None
    assert trainee.id is not None
    library = read_library(repository)
    return Onlooker(library, MONDAY_AFTER, read_history(repository, trainee.id, library))


def program_of(onlooker: Onlooker) -> Program:
    assert onlooker.history is not None
    return onlooker.library.programs[onlooker.history.assignments[-1].program_id]


def row(weeks: ProgramWeeks, day: int, place: int) -> SlotWeeks:
    return weeks.days[day].rows[place]


def asked(found: SlotWeeks) -> list[tuple[int | None, int] | None]:
    """Repetitions and kilograms in each week's last session."""
    return [
        (cell[-1].position.reps, cell[-1].position.load_g // 1000)
        if cell and cell[-1].position
        else None
        for cell in found.cells
    ]


def test_each_week_asks_what_the_week_before_earned(nobody: Onlooker) -> None:
    weeks = program_weeks(PROGRAM, nobody)
    assert asked(row(weeks, 0, 0)) == [(8, 60), (9, 60), (10, 60), (8, 56), (8, 62), (9, 62)]
    assert not weeks.dated
    assert [column.number for column in weeks.columns] == [1, 2, 3, 4, 5, 6]


def test_a_line_of_two_days_goes_on_from_one_to_the_other(nobody: Onlooker) -> None:
    weeks = program_weeks(PROGRAM, nobody)
    assert asked(row(weeks, 0, 1))[:3] == [(8, 40), (10, 40), (9, 42)]
    assert asked(row(weeks, 1, 0))[:3] == [(9, 40), (8, 42), (10, 42)]


def test_rows_of_all_phases_stand_on_one_page_and_are_empty_elsewhere(nobody: Onlooker) -> None:
    weeks = program_weeks(PROGRAM, nobody)
    assert [[each.exercise.key for each in day.rows] for day in weeks.days] == [
        ["back-squat", "bench-press", "deadlift"],
        ["bench-press"],
    ]
    assert asked(row(weeks, 0, 2)) == [None] * 4 + [(8, 80), (9, 80)]
    assert [column.phase for column in weeks.columns] == [0, 0, 0, 1, 2, 2]


def test_a_line_that_begins_later_has_no_gap_before_it(nobody: Onlooker) -> None:
    long = replace(PROGRAM, phases=(Phase("Wait", 20, (THURSDAY,)), PROGRAM.phases[2]))
    assert asked(program_weeks(long, nobody).days[0].rows[1])[-2:] == [(8, 80), (9, 80)]


def test_easier_weeks_are_told_by_phase_and_proposed_by_count(nobody: Onlooker) -> None:
    weeks = program_weeks(PROGRAM, nobody)
    assert [column.easier for column in weeks.columns] == [False] * 3 + [True] + [False] * 2
    counted = program_weeks(replace(PROGRAM, deload_every=2), nobody)
    assert [column.proposed for column in counted.columns] == [False, False, True] + [False] * 3
    assert counted.days[0].rows[0].cells[2][0].deload


def test_a_program_without_an_easier_week_is_told_once(nobody: Onlooker) -> None:
    long = replace(PROGRAM, phases=(Phase("On and on", 20, (MONDAY,)),))
    assert not any(column.cautions for column in program_weeks(long, nobody).columns)
    advanced = Trainee("Cox", experience=Experience.ADVANCED, id=7)
    onlooker = replace(nobody, history=History(advanced, nobody.library))
    columns = program_weeks(long, onlooker).columns
    told = [column.number for column in columns if column.cautions]
    assert len(told) == 1
    assert columns[told[0] - 1].cautions[0].limit is LimitId.NO_DELOAD


def test_hard_sets_and_minutes_follow_the_targets(nobody: Onlooker) -> None:
    weeks = program_weeks(PROGRAM, nobody)
    assert weeks.columns[0].volume.push == 6
    assert weeks.columns[3].volume.push == 4
    first = weeks.days[0].cells[0][0]
    assert 15 < first.minutes(weeks.history.library.exercises) < 30


def test_shade_is_load_between_the_rows_easiest_and_hardest(nobody: Onlooker) -> None:
    shades = row(program_weeks(PROGRAM, nobody), 0, 0).shades
    assert shades[3] == 0
    assert shades[4] == shades[5] == 1
    assert shades[0] is not None
    assert 0 < shades[0] < 1


def test_a_line_that_follows_another_asks_its_share(nobody: Onlooker) -> None:
    light = replace(SQUAT, line_name="light", rule=replace(DOUBLE, follow=Follow("", 80.0)))
    program = replace(
        PROGRAM, phases=(Phase("Build", 2, (MONDAY, replace(THURSDAY, slots=(light,)))),)
    )
    weeks = program_weeks(program, nobody)
    assert [load for _, load in filter(None, asked(row(weeks, 1, 0)))] == [48, 48]


def test_a_running_program_goes_on_from_the_record(bow: Onlooker) -> None:
    program = program_of(bow)
    weeks = program_weeks(program, bow)
    assert weeks.dated
    now = next(column for column in weeks.columns if column.now)
    assert now.first <= MONDAY_AFTER <= now.first + timedelta(days=6)
    assert bow.history is not None
    told = weeks_of(bow.history, MONDAY_AFTER, 1)
    found = {
        (each.day, key_of(each.slot)): each.target
        for day in weeks.days
        for slot in day.rows
        for cell in slot.cells
        for each in cell
    }
    for day in told[0].days:
        for slot in day.slots:
            key = (slot.slot.exercise, slot.slot.line_name)
            assert found[day.day, key] == slot.target


def test_what_is_over_stands_as_it_was_asked(bow: Onlooker) -> None:
    weeks = program_weeks(program_of(bow), bow)
    squat = row(weeks, 0, 0)
    over = [each for cell in squat.cells for each in cell if each.done is not None]
    assert len(over) > 8
    assert all(each.day < MONDAY_AFTER for each in over)
    assert over[-1].position is not None
    assert over[-1].done is not None
    assert over[-1].position.load_g == over[-1].done.asked[0].load_g


def test_the_trend_tells_the_chance_of_a_session(bow: Onlooker) -> None:
    weeks = program_weeks(program_of(bow), bow)
    coming = [each for cell in row(weeks, 0, 0).cells for each in cell if each.target]
    expected = weeks.expected(coming[0])
    assert expected is not None
    assert expected.low_g < expected.likely_g < expected.high_g
    assert expected.chance is not None
    assert 0 < expected.chance < 1
    assert weeks.expected(next(c for cell in row(weeks, 0, 0).cells for c in cell)) is None


def test_an_edit_computes_only_the_line_it_touches(bow: Onlooker) -> None:
    program, memory = program_of(bow), LineMemory()
    whole = list(weeks_in_steps(program, bow, memory))
    assert len(whole) > 5
    assert list(weeks_in_steps(program, bow, memory)) == whole[-1:]
    place = SlotPlace(len(program.phases) - 1, 0, 0)
    slot = slot_at(program, place)
    ranges = (replace(slot.rule.ranges[0], ceiling=12), *slot.rule.ranges[1:])
    edited = with_slot(program, place, replace(slot, rule=replace(slot.rule, ranges=ranges)))
    *steps, after = weeks_in_steps(edited, bow, memory)
    assert len(steps) <= 2  # the line and the one that follows it
    assert after == program_weeks(edited, bow)
