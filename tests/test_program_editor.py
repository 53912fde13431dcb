"""The program editor by real keys: a program typed from a blank page, edited, undone."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QWidget
from pytestqt.qtbot import QtBot

from desktop.planning.starters import starters
from desktop.training.position import Variable
from desktop.training.program import PhasePurpose
from desktop.training.program_edits import SlotPlace
from desktop.training.rules import ReadyRule, ready_rule_of
from tests.keyboard import focused, press, type_in
from tests.typed_programs import (
    page_of,
    program_of,
    shown,
    slot,
    slots_of,
    stored,
    type_program,
)
from views.phase_line import PhaseLine
from views.program_editor import ProgramEditor
from views.program_page import PHASE
from views.record import Record

pytestmark = pytest.mark.usefixtures("english")


@pytest.fixture
def record(tmp_path: Path) -> Iterator[Record]:
    with stored(tmp_path) as record:
        yield record


@pytest.fixture
def editor(record: Record, qtbot: QtBot) -> Iterator[ProgramEditor]:
    with shown(record, qtbot) as editor:
        yield editor


def test_a_program_of_two_days_is_typed_by_keyboard(editor: ProgramEditor) -> None:
    type_program(editor)
    program = program_of(editor)
    assert program.name == "Winter strength"
    (phase,) = program.phases
    assert [day.weekday for day in phase.days] == [0, 2]
    assert slots_of(editor, 0) == ["back-squat", "bench-press", "bent-over-row"]
    assert slots_of(editor, 1) == ["deadlift", "overhead-press", "plank"]
    squat = slot(editor, 0, 0)
    assert (squat.start.sets, squat.start.reps, squat.start.load_g) == (3, 6, 60_000)
    reps = squat.rule.range_of(Variable.REPS)
    assert reps is not None
    assert (reps.floor, reps.ceiling) == (6, 9)
    plank = slot(editor, 1, 2)
    assert (plank.start.hold_s, plank.start.reps) == (20, None)
    assert editor.record.repository.program_named("Winter strength") == program


def test_every_edit_is_one_undo_with_its_own_name(editor: ProgramEditor) -> None:
    type_program(editor)
    stack = editor.record.undo_stack
    texts = [stack.text(at) for at in range(stack.count())]
    assert texts[:3] == ["New program", "Rename New program", "Back squat: add"]
    assert texts[-1] == "Plank: add"
    while stack.canUndo():
        stack.undo()
    assert editor.record.repository.programs() == ()
    assert editor.program is None
    while stack.canRedo():
        stack.redo()
    assert len(editor.record.repository.programs()) == 1


def test_arrows_walk_over_headings_rows_and_fields(editor: ProgramEditor) -> None:
    type_program(editor)
    page = page_of(editor)
    page.focus(PHASE)
    press("Down")
    walked = []
    for _ in range(10):
        walked.append(focused())
        press("Down")
    first, second = page.days
    assert walked == [
        first.head, *first.rows, first.finder, second.head, *second.rows, second.finder,
    ]  # fmt: skip
    press("Home") if focused() in second.rows else press("Up")
    assert focused() is second.rows[2]
    press("Home")
    assert focused() is second.rows[0]
    press("End")
    assert focused() is second.rows[2]
    press("Escape")
    assert focused() is second.head
    press("Escape")
    assert isinstance(focused(), PhaseLine)


def test_a_slot_is_moved_duplicated_and_removed_by_key(editor: ProgramEditor) -> None:
    type_program(editor)
    page = page_of(editor)
    page.focus(SlotPlace(0, 0, 0))
    press("Alt+Down")
    assert slots_of(editor) == ["bench-press", "back-squat", "bent-over-row"]
    assert focused() is page.days[0].rows[1]
    press("Alt+Down", "Alt+Down")
    assert slots_of(editor, 1)[0] == "back-squat"
    assert focused() is page.days[1].rows[0]
    press("Alt+Up", "Alt+Up")
    assert slots_of(editor) == ["bench-press", "back-squat", "bent-over-row"]
    press("Ctrl+D")
    assert slots_of(editor) == ["bench-press", "back-squat", "back-squat", "bent-over-row"]
    assert focused() is page.days[0].rows[2]
    press("Delete")
    assert slots_of(editor) == ["bench-press", "back-squat", "bent-over-row"]
    assert focused() is page.days[0].rows[2]
    press("Delete", "Delete", "Delete")
    assert slots_of(editor) == []
    assert focused() is page.days[0].finder


def test_return_edits_a_slot_and_escape_leaves_it(editor: ProgramEditor) -> None:
    type_program(editor)
    page = page_of(editor)
    page.focus(SlotPlace(0, 0, 0))
    press("Return")
    assert focused() is page.slot_panel.fields.sets
    type_in("4")
    press("Return")
    assert focused() is page.slot_panel.fields.amount
    assert slot(editor, 0, 0).start.sets == 4
    page.slot_panel.fields.rest.setFocus()
    page.slot_panel.fields.rest.selectAll()
    type_in("2:30")
    press("Escape")
    assert page.open_place is None
    assert focused() is page.days[0].rows[0]
    assert slot(editor, 0, 0).rest_s == 150
    assert editor.record.undo_stack.undoText() == "Back squat: rest"


def test_what_is_typed_shows_in_the_row_before_it_is_saved(editor: ProgramEditor) -> None:
    type_program(editor)
    page = page_of(editor)
    page.open(SlotPlace(0, 0, 0))
    field = page.slot_panel.fields.amount
    field.setFocus()
    field.selectAll()
    type_in("9")
    face = page.days[0].rows[0].face
    assert face is not None
    assert [cell.above for cell in face.cells[:2]] == ["3×9", "3×6"]
    assert face.cells[1].rolls_over
    assert slot(editor, 0, 0).start.reps == 6


def test_a_wrong_range_is_said_beside_it_and_nothing_typed_is_lost(editor: ProgramEditor) -> None:
    type_program(editor)
    page = page_of(editor)
    page.open(SlotPlace(0, 0, 0))
    row = page.slot_panel.rule.ranges.rows[0]
    before = program_of(editor)
    ceiling = row.fields[1]
    ceiling.setFocus()
    ceiling.selectAll()
    type_in("4")
    press("Return")
    assert row.error.text() == "To 4 is below from 6: allowed is 6 and more."
    assert ceiling.text() == "4"
    assert program_of(editor) == before
    ceiling.setFocus()
    ceiling.selectAll()
    type_in("10")
    press("Return")
    assert row.error.text() == ""
    reps = slot(editor, 0, 0).rule.range_of(Variable.REPS)
    assert reps is not None
    assert reps.ceiling == 10


def test_a_ready_made_rule_is_chosen_by_its_name(editor: ProgramEditor) -> None:
    type_program(editor)
    page = page_of(editor)
    page.open(SlotPlace(0, 0, 0))
    box = page.slot_panel.rule.ready
    assert box.currentText() == "repetitions, then load"
    box.setFocus()
    press("Down")
    assert box.currentText() == "repetitions, sets, then load"
    assert ready_rule_of(slot(editor, 0, 0).rule) is ReadyRule.REPS_SETS_LOAD
    assert [row.variable for row in page.slot_panel.rule.ranges.rows] == [
        Variable.REPS, Variable.SETS, Variable.LOAD,
    ]  # fmt: skip


def test_the_order_of_growth_changes_by_key(editor: ProgramEditor) -> None:
    type_program(editor)
    page = page_of(editor)
    page.open(SlotPlace(0, 0, 0))
    page.slot_panel.rule.more[Variable.SETS].click()
    rows = page.slot_panel.rule.ranges.rows
    assert [row.variable for row in rows] == [Variable.REPS, Variable.SETS, Variable.LOAD]
    rows[1].take_focus()
    press("Alt+Left")
    ranges = slot(editor, 0, 0).rule.ranges
    assert [each.variable for each in ranges] == [Variable.SETS, Variable.REPS, Variable.LOAD]
    press("Alt+Right")
    ranges = slot(editor, 0, 0).rule.ranges
    assert [each.variable for each in ranges] == [Variable.REPS, Variable.SETS, Variable.LOAD]


def test_an_open_ended_variable_cannot_become_faster(editor: ProgramEditor) -> None:
    type_program(editor)
    page = page_of(editor)
    page.open(SlotPlace(0, 0, 0))
    rows = page.slot_panel.rule.ranges.rows
    rows[1].take_focus()
    before = program_of(editor)
    press("Alt+Left")
    said = page.slot_panel.rule.ranges.rows[0].error.text()
    assert said == "Say how far: only the slowest may go on without an end."
    assert program_of(editor) == before


def test_an_exercise_is_replaced_everywhere(editor: ProgramEditor) -> None:
    type_program(editor)
    page = page_of(editor)
    page.focus(SlotPlace(0, 0, 0))
    press("Ctrl+D", "Ctrl+H")
    assert page.replace_bar.old.choice == "back-squat"
    type_in("front squat")
    press("Return")
    assert slots_of(editor) == ["front-squat", "front-squat", "bench-press", "bent-over-row"]
    assert slot(editor, 0, 0).start.load_g == 60_000
    assert editor.record.undo_stack.undoText() == "Back squat becomes Front squat everywhere"
    press("Escape")
    assert page.replace_bar.isHidden()


def test_the_finder_offers_what_is_like_it_and_arrows_choose(editor: ProgramEditor) -> None:
    type_program(editor)
    page = page_of(editor)
    page.focus_finder(0)
    type_in("squa")
    offered = page.days[0].finder.candidates
    assert len(offered) > 3
    press("Down", "Return")
    assert slots_of(editor)[-1] == offered[1].key
    type_in("squa")
    press("Escape")
    assert page.days[0].finder.text() == ""
    assert page.days[0].finder.candidates == ()


def test_phases_are_added_lengthened_moved_and_removed(editor: ProgramEditor) -> None:
    type_program(editor)
    page = page_of(editor)
    page.focus(PHASE)
    press("Return")
    assert focused() is page.phase_panel.name
    press("Return")
    page.phase_panel.weeks.selectAll()
    type_in("5")
    press("Return")
    assert program_of(editor).weeks == 5
    page.phase_panel.added.emit(PhasePurpose.DELOAD)
    program = program_of(editor)
    assert [each.purpose for each in program.phases] == [PhasePurpose.BUILD, PhasePurpose.DELOAD]
    assert program.phases[1].days == program.phases[0].days
    assert page.scene.at == 1
    press("Escape")
    assert isinstance(focused(), PhaseLine)
    press("Alt+Left")
    assert program_of(editor).phases[0].purpose is PhasePurpose.DELOAD
    assert page.scene.at == 0
    press("Delete")
    assert len(program_of(editor).phases) == 1
    press("Delete")
    assert len(program_of(editor).phases) == 1


def test_a_day_is_renamed_moved_to_another_weekday_and_never_onto_a_taken_one(
    editor: ProgramEditor,
) -> None:
    type_program(editor)
    page = page_of(editor)
    page.days[0].head.setFocus()
    press("Return")
    type_in("Squat and press")
    press("Return")
    day = program_of(editor).phases[0].days[0]
    assert day.name == "Squat and press"
    box = page.day_panel.weekday
    box.choose(2)
    box.picked.emit()
    assert page.day_panel.error.text().startswith("Wednesday is taken")
    assert program_of(editor).phases[0].days[0] == day
    box.choose(None)
    box.picked.emit()
    assert program_of(editor).phases[0].days[0].weekday is None
    press("Escape")
    assert focused() is page.days[0].head
    press("Ctrl+D")
    assert len(program_of(editor).phases[0].days) == 3
    press("Delete")
    assert len(program_of(editor).phases[0].days) == 2


def test_a_proposal_mends_the_balance_and_can_be_undone(editor: ProgramEditor) -> None:
    type_program(editor)
    page = page_of(editor)
    before = program_of(editor)
    finding = next(each for each in page.scene.found if each.proposal is not None)
    page.balance.mended.emit(finding)
    assert program_of(editor).phases != before.phases
    assert finding not in page.scene.found
    editor.record.undo_stack.undo()
    assert program_of(editor).phases == before.phases


def test_a_program_is_given_to_the_trainee_and_ended(editor: ProgramEditor) -> None:
    type_program(editor)
    store = editor.record.repository
    bow = store.trainees()[0]
    assert bow.id is not None
    editor.show_trainee(bow.id)
    page = page_of(editor)
    assert page.head.assign.text() == "Give to Bow  F9"
    QTest.keyClick(page, Qt.Key.Key_F9)
    panel = page.assign_panel
    assert focused() is panel.start
    panel.start.selectAll()
    type_in("2026-11-02")
    panel.days[2].setChecked(False)
    panel.give.click()
    assert panel.error.text().startswith("The program has 2 days a week")
    panel.days[3].setFocus()
    QTest.keyClick(panel.days[3], Qt.Key.Key_Space)
    QTest.keyClick(panel.days[3], Qt.Key.Key_Return)
    (given,) = store.assignments(bow.id)
    assert (given.start, given.weekdays) == (date(2026, 11, 2), (0, 3))
    assert {line.exercise for line in store.lines(bow.id)} >= {"back-squat", "plank"}
    assert page.scene.week == 4
    assert "Bow started on Mon 2 Nov" in page.head.detail
    page.head.end.click()
    assert store.assignments(bow.id)[0].ended == date(2026, 11, 25)
    editor.record.undo_stack.undo()
    editor.record.undo_stack.undo()
    assert store.assignments(bow.id) == ()


def test_loads_stand_in_the_unit_of_the_trainee(editor: ProgramEditor) -> None:
    type_program(editor)
    cox = editor.record.repository.trainees()[1]
    editor.show_trainee(cox.id)
    page = page_of(editor)
    page.open(SlotPlace(0, 0, 0))
    field = page.slot_panel.fields.load
    field.setFocus()
    field.selectAll()
    type_in("135")
    press("Return")
    assert slot(editor, 0, 0).start.load_g == 61_235


def test_an_empty_shelf_teaches_and_a_starter_is_loaded(editor: ProgramEditor) -> None:
    shelf = editor.shelf
    assert shelf.rows == []
    starter = starters()[0].program
    shelf.starter_taken.emit(starter)
    assert program_of(editor).phases == starter.phases
    editor.show_shelf()
    assert [row.program.name for row in shelf.rows] == [starter.name]
    assert focused() is shelf.rows[0]
    press("Ctrl+D")
    assert program_of(editor).name == f"{starter.name} 2"
    press("F4")
    assert [row.program.name for row in shelf.rows] == [starter.name, f"{starter.name} 2"]
    press("Delete")
    assert len(shelf.rows) == 1
    editor.record.undo_stack.undo()
    assert len(shelf.rows) == 2
    press("Up", "Return")
    assert program_of(editor).name == starter.name


def test_a_renamed_program_keeps_its_phases(editor: ProgramEditor) -> None:
    type_program(editor)
    page = page_of(editor)
    page.head.name.setFocus()
    page.head.name.selectAll()
    type_in("Spring")
    press("Escape")
    assert page.head.name.text() == "Winter strength"
    page.head.name.setFocus()
    page.head.name.selectAll()
    type_in("Spring")
    press("Return")
    assert program_of(editor).name == "Spring"
    assert len(program_of(editor).phases[0].days) == 2


def test_every_row_reads_itself_aloud(editor: ProgramEditor) -> None:
    type_program(editor)
    page = page_of(editor)
    named = [row.accessibleName() for block in page.days for row in block.rows]
    assert named[0].startswith("Back squat. 3 sets")
    assert "Reps 6 of 6 to 9, next 7" in named[0]
    for widget in page.findChildren(QWidget):
        if widget.focusPolicy() is not Qt.FocusPolicy.NoFocus and widget.isVisible():
            assert widget.accessibleName() or widget.accessibleDescription(), widget


def test_markup_in_a_note_stays_plain(editor: ProgramEditor) -> None:
    type_program(editor)
    page = page_of(editor)
    page.open(SlotPlace(0, 0, 0))
    note = page.slot_panel.fields.note
    note.setFocus()
    type_in("<b>slow</b>")
    press("Return")
    assert slot(editor, 0, 0).note == "<b>slow</b>"
    row = page.days[0].rows[0]
    assert row.face is not None
    assert "<b>slow</b>" in row.face.asks
    row.grab()
    QTest.mouseMove(row, QPoint(5, 5))
