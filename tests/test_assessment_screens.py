"""Tests of a trainee on the screens: put into a program, typed, read into starts, printed."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, timedelta
from pathlib import Path

import pytest
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from db.database import Database
from db.repository import Repository
from desktop.catalogue import load_catalogue
from desktop.planning.assessment_weeks import with_test_week
from desktop.planning.assignments import assign
from desktop.planning.days import day_plan
from desktop.training.equipment import Bar, Discs, Equipment, Place
from desktop.training.position import Position, ProgressionRule, Variable, VariableRange
from desktop.training.program import Line, Phase, PhasePurpose, Program, Slot, TrainingDay
from desktop.training.trainee import EquipmentFrom, Trainee
from tests.keyboard import focused, press
from tests.typed_programs import in_window
from views.past_desk import PastDesk
from views.program_editor import ProgramEditor
from views.record import Record
from views.session_form import SessionForm
from views.sheet_texts import sheet_text
from views.theme import Theme

MONDAY = date(2026, 11, 23)
TODAY = date(2026, 11, 26)
WEEK = timedelta(days=7)
CATALOGUE = {each.key: each for each in load_catalogue()}

REPS = VariableRange(Variable.REPS, 8, 12)
LOAD = VariableRange(Variable.LOAD, increment=2_500)
HOLD = VariableRange(Variable.HOLD, 10, 30, 5)
VARIATION = VariableRange(Variable.VARIATION)
SLOTS = (
    Slot("back-squat", ProgressionRule((REPS, LOAD)), Position(40_000, 8, 3), rest_s=150),
    Slot("bench-press", ProgressionRule((REPS, LOAD)), Position(30_000, 8, 3), rest_s=150),
    Slot(
        "l-sit", ProgressionRule((HOLD, VARIATION)), Position(hold_s=10, sets=3, variation="tuck")
    ),
)
PROGRAM = Program("Winter", (Phase("Base", 6, (TrainingDay("All", SLOTS, 0),)),))

pytestmark = pytest.mark.usefixtures("english")


@pytest.fixture
def record(tmp_path: Path) -> Iterator[Record]:
    repository = Repository(Database.open(tmp_path / "rungwise.db"))
    repository.sync_catalogue(CATALOGUE.values())
    repository.save(PROGRAM, Trainee("Bow", weekdays=(0, 3)))
    yield Record(repository)
    repository.database.close()


@pytest.fixture
def editor(record: Record, qtbot: QtBot) -> Iterator[ProgramEditor]:
    area = ProgramEditor(record, TODAY, Theme(calm=True))
    window = in_window(area, qtbot)
    area.show_trainee(None)
    program = record.repository.programs()[0]
    assert program.id is not None
    area.open_program(program.id)
    yield area
    window.close()


@pytest.fixture
def tested(record: Record) -> Record:
    """Bow has begun the program, with its week of tests first, on Monday."""
    store = record.repository
    program = store.save(with_test_week(store.programs()[0], CATALOGUE, 0, "Tests")).saved[0]
    bow = store.trainees()[0]
    discs = tuple(Discs(grams, 4) for grams in (20_000, 10_000, 5_000, 2_500, 1_250))
    owned = Equipment(bars=(Bar("bar", 20_000),), discs=discs, places=tuple(Place))
    store.save(EquipmentFrom(bow.id or 0, MONDAY, owned))
    store.save(*assign(store, bow.id or 0, program.id, MONDAY).aggregates)
    return record


@pytest.fixture
def form(tested: Record, qtbot: QtBot) -> Iterator[SessionForm]:
    area = SessionForm(tested, TODAY, Theme(calm=True))
    window = in_window(area, qtbot)
    area.show_trainee(tested.repository.trainees()[0].id)
    area.open_day(MONDAY)
    yield area
    window.close()


def purposes(editor: ProgramEditor) -> list[PhasePurpose]:
    assert editor.program is not None
    return [phase.purpose for phase in editor.program.phases]


def lines(record: Record) -> dict[str, Line]:
    bow = record.repository.trainees()[0]
    return {line.exercise: line for line in record.repository.lines(bow.id or 0)}


# In the program


def test_a_test_week_is_put_first_and_again_as_a_re_test_by_key(
    editor: ProgramEditor, record: Record
) -> None:
    assert editor.page is not None
    assert "Put a test week first" in editor.page.head.test.text()
    press("F8")
    assert purposes(editor) == [PhasePurpose.ASSESS, PhasePurpose.BUILD]
    assert editor.page.scene.at == 0
    faces = editor.page.scene.days[0].slots
    assert faces[0].asks == "test with reps in reserve · rest 3:00"
    assert faces[-1].asks.startswith("test: held while it is clean")
    assert "Test again at the end" in editor.page.head.test.text()
    press("F8")
    assert purposes(editor) == [PhasePurpose.ASSESS, PhasePurpose.BUILD, PhasePurpose.ASSESS]
    assert editor.program is not None
    assert editor.program.phases[2].name == "Re-test"
    record.undo_stack.undo()
    record.undo_stack.undo()
    assert purposes(editor) == [PhasePurpose.BUILD]


def test_under_a_running_program_tests_come_at_the_end(tested: Record, qtbot: QtBot) -> None:
    area = ProgramEditor(tested, TODAY, Theme(calm=True))
    window = in_window(area, qtbot)
    area.show_trainee(tested.repository.trainees()[0].id)
    assert area.page is not None
    assert "Test again at the end" in area.page.head.test.text()
    window.close()


def test_a_program_without_lines_gets_a_standard_day_with_what_is_owned() -> None:
    blank = Program("Blank", (Phase("Build", 6, (TrainingDay("", weekday=0),)),))
    bars = with_test_week(blank, CATALOGUE, 0, "Tests")
    floor = with_test_week(blank, CATALOGUE, 0, "Tests", Equipment())
    assert bars.phases[0].purpose is PhasePurpose.ASSESS
    assert bars.phases[0].days[0].slots[0].exercise == "back-squat"
    assert "back-squat" not in {slot.exercise for slot in floor.phases[0].days[0].slots}
    assert with_test_week(blank, {}, 0, "Tests") == blank


def test_giving_a_program_asks_for_the_weekdays_of_its_training(
    editor: ProgramEditor, record: Record
) -> None:
    two = TrainingDay("More", SLOTS[:1], 3)
    assert editor.program is not None
    days = (*editor.program.phases[0].days, two)
    program = Program("Two", (Phase("Base", 4, days),))
    saved = record.repository.save(with_test_week(program, CATALOGUE, 0, "Tests")).saved[0]
    editor.show_trainee(record.repository.trainees()[0].id)
    editor.open_program(saved.id)
    assert editor.page is not None
    editor.page.head.assign.click()
    chosen = [day for day, box in editor.page.assign_panel.days.items() if box.isChecked()]
    assert chosen == [0, 3]


# In the session


def test_the_block_says_that_it_is_a_test_and_where_to_stop(form: SessionForm) -> None:
    squat, bench, hold = form.page.blocks
    assert squat.asked.text().startswith("Test: sets of 10, from 20\N{NO-BREAK SPACE}kg up to ")
    assert squat.reserve.text() == (
        "No maximum: end after the first set with 2 or fewer clean reps left"
    )
    assert bench.asked.text().startswith("Test: ")
    assert hold.asked.text() == "Test: 10 s or more"
    assert (
        hold.reserve.text() == "No maximum: hold while it is clean, stop at\N{NO-BREAK SPACE}45 s"
    )


def type_tests(form: SessionForm) -> None:
    """One set of squats is read; of the bench press too many; the hold is clean for 30 s."""
    squat, bench, hold = (block.sheet for block in form.page.blocks)
    for sheet, cells in ((squat, ("8", "60", "2")), (bench, ("14", "40", "6")), (hold, ("30",))):
        cell = sheet.cell(0, sheet.rows[0])
        assert cell is not None
        cell.setFocus()
        for number, text in enumerate(cells):
            if number:
                press("Down")
            press("Ctrl+A")
            QTest.keyClicks(focused(), text)


def save(form: SessionForm) -> None:
    """Save; what lies far from what was asked is meant."""
    for _ in range(8):
        press("Ctrl+Return")
        if form.showing_outcomes or form.effects.isVisible():
            return
        press("Return")
    raise AssertionError("not saved")


def test_saving_a_test_saves_its_starts_in_the_same_act(form: SessionForm, tested: Record) -> None:
    before = lines(tested)
    type_tests(form)
    acts = tested.undo_stack.count()
    save(form)
    assert tested.undo_stack.count() == acts + 1
    squat, bench, hold = form.outcomes.rows
    assert squat.change.text() == "3 × 8 at 40 kg → 3 × 8 at 60 kg"
    assert squat.why.text().startswith("Read from this test, ± ")
    assert squat.why.text().endswith("%; the first 2 sessions may correct it")
    assert bench.change.text() == "3 × 8 at 30 kg, as before"
    assert bench.why.text().startswith("No start could be read: ")
    assert hold.change.text() == "3 × 10 s → 3 × 15 s"
    assert "how far off is not known" in hold.why.text()

    bow = tested.repository.trainees()[0]
    plan = day_plan(tested.repository, bow.id or 0, MONDAY + WEEK)
    assert [slot.target.position for slot in plan.slots[:1]] == [Position(60_000, 8, 3)]
    form.open_day(MONDAY + WEEK)
    said = form.page.blocks[0].why.text()
    assert said.startswith("Start from a test, ± ")
    assert said.endswith("the first 2 sessions may correct it")

    tested.undo_stack.undo()
    assert {key: line.starts for key, line in lines(tested).items()} == {
        key: line.starts for key, line in before.items()
    }


def test_a_corrected_test_is_read_again_and_a_removed_one_gives_no_start(
    form: SessionForm, tested: Record
) -> None:
    type_tests(form)
    save(form)
    press("Alt+Left")
    cell = form.page.blocks[0].sheet.cell(0, form.page.blocks[0].sheet.rows[1])
    assert cell is not None
    cell.setFocus()
    press("Ctrl+A")
    QTest.keyClicks(cell, "70")
    save(form)
    assert "60 kg → " in form.effects.text.text()  # said before it is saved
    press("Return")
    assert [one.position.load_g for one in lines(tested)["back-squat"].starts] == [70_000]
    form.after.remove_wanted.emit()
    assert lines(tested)["back-squat"].starts == ()
    tested.undo_stack.undo()
    assert [one.position.load_g for one in lines(tested)["back-squat"].starts] == [70_000]


# On paper


def test_the_sheet_of_a_test_day_asks_for_clean_work_and_says_where_to_stop(
    tested: Record,
) -> None:
    bow = tested.repository.trainees()[0]
    squat, _, hold = sheet_text(day_plan(tested.repository, bow.id or 0, MONDAY)).slots
    assert squat.asked[0].startswith("Test: sets of 10, from 20\N{NO-BREAK SPACE}kg up to ")
    assert squat.notes == ("No maximum: end after the first set with 2 or fewer clean reps left",)
    assert hold.asked == ("Test: 10 s or more",)
    assert hold.notes == ("No maximum: hold while it is clean, stop at\N{NO-BREAK SPACE}45 s",)
    assert hold.sets == ("10 s+",)
    assert hold.boxes[0] == ("seconds", "clean")
    assert not squat.why


def test_a_test_moved_to_another_day_takes_its_start_along(
    form: SessionForm, tested: Record
) -> None:
    type_tests(form)
    save(form)
    bow = tested.repository.trainees()[0]
    session = tested.repository.sessions(bow.id or 0)[0]
    acts = tested.undo_stack.count()
    desk = PastDesk(tested, TODAY)
    tuesday = MONDAY + timedelta(days=1)
    assert desk.move(session, tuesday).do()
    assert [one.day for one in lines(tested)["back-squat"].starts] == [tuesday]
    assert desk.remove(tested.repository.session(session.id or 0)).do()
    assert lines(tested)["back-squat"].starts == ()
    assert tested.undo_stack.count() == acts + 2
    tested.undo_stack.undo()
    tested.undo_stack.undo()
    assert [one.day for one in lines(tested)["back-squat"].starts] == [MONDAY]
