"""The weeks ahead by real keys, the sessions beside a rule, marks, the clipboard, printing."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtTest import QAbstractItemModelTester
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from desktop.planning.assignments import assign
from desktop.training.position import FrequencyCondition, Variable
from desktop.training.program import Line
from desktop.training.program_edits import DayPlace, SlotPlace, with_slot
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
    weeks_of,
)
from views.program_editor import ProgramEditor
from views.program_page import PHASE
from views.record import Record
from views.weeks_model import WeeksRole
from views.weeks_rows import BarRow, DayRow, RatioRow, SlotRow, TitleRow

pytestmark = pytest.mark.usefixtures("english")

FOUR_DAYS = (
    (
        "back squat 3x6-9 60", "bench press 3x8-12 40", "bent over row 3x8-12 35",
        "romanian deadlift 3x8-12 50", "plank 3x20-60s", "calf raise 3x10-15 40",
    ),
    (
        "deadlift 3x5-8 80", "overhead press 3x6-10 25", "pull-up 3x4-8", "split squat 3x8-12 10",
        "push-up 3x5-12", "l-sit 4x5-20s",
    ),
    (
        "front squat 3x6-9 45", "dumbbell bench press 3x8-12 16", "one-arm dumbbell row 3x8-12 20",
        "hip thrust 3x8-12 60", "farmer's carry 3x30-60s 24", "side plank 3x20-40s",
    ),
    (
        "back squat 2x8-10 50", "bench press 2x8-10 35", "bent over row 2x10-12 30",
        "overhead press 2x8-10 20", "plank 2x20-60s", "push-up 2x5-12",
    ),
)  # fmt: skip


@pytest.fixture
def record(tmp_path: Path) -> Iterator[Record]:
    with stored(tmp_path) as record:
        yield record


@pytest.fixture
def editor(record: Record, qtbot: QtBot) -> Iterator[ProgramEditor]:
    with shown(record, qtbot) as editor:
        yield editor


def give_to_bow(editor: ProgramEditor, start: date = date(2026, 11, 2)) -> None:
    store = editor.record.repository
    bow = store.trainees()[0]
    program = program_of(editor)
    assert bow.id is not None
    assert program.id is not None
    store.save(*assign(store, bow.id, program.id, start, (0, 3)).aggregates)
    editor.record.took_in(editor.record.repository.save(bow))
    editor.show_trainee(bow.id)


def squat_of_bow(editor: ProgramEditor) -> Line:
    store = editor.record.repository
    bow = store.trainees()[0]
    assert bow.id is not None
    line = store.line_of(bow.id, "back-squat")
    assert line is not None
    return line


def test_four_days_with_six_slots_each_are_typed_by_keyboard(editor: ProgramEditor) -> None:
    press("Ctrl+Shift+N")
    type_in("Four days")
    press("Return")
    for number, day in enumerate(FOUR_DAYS):
        if number:
            press("Ctrl+Shift+D")
        for line in day:
            type_in(line)
            press("Return")
    program = program_of(editor)
    assert program.name == "Four days"
    assert [len(day.slots) for day in program.phases[0].days] == [6, 6, 6, 6]
    assert [day.weekday for day in program.phases[0].days] == [0, 2, 4, 6]
    typed = [slots_of(editor, day) for day in range(4)]
    assert typed[0][:3] == ["back-squat", "bench-press", "bent-over-row"]
    assert typed[3][0] == "back-squat"
    assert slot(editor, 3, 0).start.load_g == 50_000
    assert len({key for day in typed for key in day}) > 15
    assert editor.record.repository.program_named("Four days") == program
    press("F6")
    weeks = weeks_of(editor)
    rows = [row for row in weeks.model.rows if isinstance(row, SlotRow)]
    assert len(rows) == 24
    assert weeks.model.columnCount() == program.weeks


def test_a_key_shows_the_weeks_ahead_and_leads_back_to_the_rule(editor: ProgramEditor) -> None:
    type_program(editor)
    page_of(editor).focus(SlotPlace(0, 1, 0))
    press("F6")
    weeks = weeks_of(editor)
    table = weeks.table
    assert focused() is table
    assert weeks.model.rows[table.currentIndex().row()].name == "Deadlift"
    assert weeks.said.text().startswith("Week 1, Build: Deadlift. 3 × 5 at 80 kg.")
    press("Right", "Right", "Right", "Right")
    assert weeks.said.text().startswith("Week 5, Build: Deadlift. 3 × 5 at 85 kg.")
    assert "Dec" not in weeks.said.text()  # for nobody days are only imagined
    press("Return")
    page = page_of(editor)
    assert page.open_place == SlotPlace(0, 1, 0)
    assert focused() is page.slot_panel.fields.sets
    press("Escape", "F6")
    assert focused() is weeks.table
    press("Escape")
    assert page.isVisible()


def test_rows_hold_days_slots_hard_sets_and_balance(editor: ProgramEditor) -> None:
    type_program(editor)
    press("F6")
    model = weeks_of(editor).model
    kinds = [type(row) for row in model.rows]
    assert kinds[:5] == [DayRow, SlotRow, SlotRow, SlotRow, DayRow]
    assert kinds.count(TitleRow) == 2
    assert kinds[-1] is RatioRow
    marked = [row for row in model.rows if isinstance(row, BarRow) and row.marked]
    assert len(marked) == 13
    text = model.sentence(model.rows.index(marked[0]), 0)
    assert text.startswith("Week 1, Build: quadriceps, 4.5 hard sets. At or above 4 (")
    day = model.sentence(0, 0)
    assert "About" in day
    assert "min" in day


def test_an_edit_tells_only_the_cells_that_changed(editor: ProgramEditor, qtbot: QtBot) -> None:
    type_program(editor)
    press("F6")
    weeks = weeks_of(editor)
    QAbstractItemModelTester(
        weeks.model, QAbstractItemModelTester.FailureReportingMode.Fatal, weeks
    )
    told: list[tuple[int, int, int]] = []
    weeks.model.dataChanged.connect(
        lambda first, last, *_: told.append((first.row(), first.column(), last.column()))
    )
    resets: list[bool] = []
    weeks.model.modelReset.connect(lambda: resets.append(True))
    place = SlotPlace(0, 0, 1)
    bench = slot(editor, 0, 1)
    heavier = replace(bench, start=replace(bench.start, load_g=42_500))
    editor.record.save("load", with_slot(program_of(editor), place, heavier))
    weeks_of(editor)
    assert {row for row, _, _ in told} == {0, 2}  # minutes of the day may follow, and the slot
    assert resets == []
    at = weeks.model.index(2, 0)
    assert at.data(WeeksRole.FACE).below == "42.5"
    editor.record.undo_stack.undo()
    weeks_of(editor)
    assert weeks.model.index(2, 0).data(Qt.ItemDataRole.DisplayRole) == "3×8 40"


def test_a_running_program_is_told_from_its_days(editor: ProgramEditor) -> None:
    type_program(editor)
    give_to_bow(editor)
    page_of(editor).focus(SlotPlace(0, 0, 0))
    press("F6")
    weeks = weeks_of(editor)
    assert [column.number for column in weeks.model.columns if column.now] == [4]
    assert "from where Bow stands" in weeks.detail.whole
    assert "Mon 23 Nov" not in weeks.said.text()  # Monday of this week is over
    weeks.table.setCurrentIndex(weeks.model.index(1, 4))
    assert "Mon 30 Nov: 3 × 6 at 60 kg." in weeks.said.text()
    assert "No trend yet" in weeks.said.text()


def test_twelve_sessions_stand_beside_the_rule_and_follow_what_is_typed(
    editor: ProgramEditor, qtbot: QtBot
) -> None:
    type_program(editor)
    page = page_of(editor)
    page.open(SlotPlace(0, 0, 0))
    block = page.slot_panel.ahead
    qtbot.waitUntil(lambda: len(block.lines) == 2)
    well, missed = block.lines
    assert [cell.cell.above for cell in well.cells[:5]] == ["3×6", "3×7", "3×8", "3×9", "3×6"]
    assert len(well.cells) == len(missed.cells) == 12
    assert [at for at, cell in enumerate(missed.cells) if cell.missed] == [3, 7, 11]
    field = page.slot_panel.fields.amount
    field.setFocus()
    field.selectAll()
    type_in("9")
    qtbot.waitUntil(lambda: block.lines[0].cells[0].cell.above == "3×9")
    assert slot(editor, 0, 0).start.reps == 6
    assert "If one in four is missed" in block.accessibleName()
    block.grab()


def test_one_more_day_the_smallest_step_and_floors_are_edited(editor: ProgramEditor) -> None:
    type_program(editor)
    page = page_of(editor)
    page.open(SlotPlace(0, 1, 2))
    rule = page.slot_panel.rule
    rule.extras.weeks.setFocus()
    type_in("6")
    press("Return")
    assert slot(editor, 1, 2).rule.frequency == FrequencyCondition(None, 6, 4)
    assert editor.record.undo_stack.undoText() == "Plank: one more day a week"
    floors = rule.ranges.floors[Variable.HOLD]
    assert not floors.open.isHidden()
    floors.open.click()
    key = "full" if "full" in floors.fields else next(iter(floors.fields))
    floors.fields[key].setFocus()
    type_in("30")
    press("Return")
    hold = slot(editor, 1, 2).rule.range_of(Variable.HOLD)
    assert hold is not None
    assert (key, 30) in hold.floors
    before = program_of(editor)
    floors = rule.ranges.floors[Variable.HOLD]
    floors.fields[key].setFocus()
    floors.fields[key].selectAll()
    type_in("90")
    press("Return")
    assert floors.error.text() == "A floor lies above to 60: allowed is up to that."
    assert program_of(editor) == before


def test_marked_slots_change_together(editor: ProgramEditor) -> None:
    type_program(editor)
    page = page_of(editor)
    page.focus(SlotPlace(0, 0, 0))
    press("Shift+Down", "Shift+Down")
    assert page.marks == {SlotPlace(0, 0, at) for at in range(3)}
    press("Down", "Down", "Down", "Space")  # past the field and the heading, onto the deadlift
    assert SlotPlace(0, 1, 0) in page.marks
    assert page.marked.count.text() == "4 slots marked"
    press("Return")
    assert focused() is page.marked.sets
    type_in("5")
    press("Return")
    sets = [each.start.sets for day in program_of(editor).phases[0].days for each in day.slots]
    assert sets == [5, 5, 5, 5, 3, 3]
    assert editor.record.undo_stack.undoText() == "4 slots: sets"
    page.marked.rest.setFocus()
    page.marked.rest.selectAll()
    type_in("3:00")
    press("Return")
    assert slot(editor, 0, 2).rest_s == 180
    editor.record.undo_stack.undo()
    assert slot(editor, 0, 2).rest_s == 120
    press("Escape")
    assert page.marks == frozenset()
    assert page.marked.isHidden()


def test_everything_is_marked_and_removed_in_one_act(editor: ProgramEditor) -> None:
    type_program(editor)
    page = page_of(editor)
    page.focus(SlotPlace(0, 0, 1))
    press("Ctrl+A")
    assert len(page.marks) == 6
    assert page.days[0].rows[0].accessibleName().endswith("marked")
    press("Delete")
    assert [len(day.slots) for day in program_of(editor).phases[0].days] == [0, 0]
    editor.record.undo_stack.undo()
    assert [len(day.slots) for day in program_of(editor).phases[0].days] == [3, 3]


def test_slots_days_and_phases_are_pasted_into_another_program(editor: ProgramEditor) -> None:
    type_program(editor)
    page = page_of(editor)
    page.focus(SlotPlace(0, 0, 0))
    press("Space", "Down", "Space", "Ctrl+C")
    assert "rungwise program" in QGuiApplication.clipboard().text()
    press("F4", "Ctrl+Shift+N")
    type_in("Spring")
    press("Return", "Escape")
    page = page_of(editor)
    page.focus(DayPlace(0, 0))
    press("Ctrl+V")
    assert slots_of(editor) == ["back-squat", "bench-press"]
    assert focused() is page.days[0].rows[0]
    assert editor.record.undo_stack.undoText() == "Paste 2 slots"
    page.focus(DayPlace(0, 0))
    press("Ctrl+C", "Ctrl+V")
    assert [day.weekday for day in program_of(editor).phases[0].days] == [0, 2]
    assert slots_of(editor, 1) == ["back-squat", "bench-press"]
    page.focus(PHASE)
    press("Ctrl+C", "Ctrl+V")
    phases = program_of(editor).phases
    assert len(phases) == 2
    assert phases[0] == phases[1]
    assert page.scene.at == 1


def test_what_cannot_be_pasted_is_said(editor: ProgramEditor) -> None:
    type_program(editor)
    page = page_of(editor)
    said: list[str] = []
    editor.record.message.connect(lambda text, _kind: said.append(text))
    before = program_of(editor)
    QGuiApplication.clipboard().setText("three sets of squats")
    page.focus(SlotPlace(0, 0, 0))
    press("Ctrl+V")
    assert said[-1].startswith("What was copied is no part of a program")
    QGuiApplication.clipboard().setText("")
    press("Ctrl+V")
    assert said[-1] == "Nothing was copied yet."
    assert program_of(editor) == before


def test_a_rule_is_changed_for_one_trainee_and_taken_back(editor: ProgramEditor) -> None:
    type_program(editor)
    give_to_bow(editor)
    page = page_of(editor)
    before = program_of(editor)
    page.open(SlotPlace(0, 0, 0))
    changes = page.slot_panel.changes
    assert changes.only.text() == "Change the rule for Bow only"
    changes.only.setChecked(True)
    assert not page.slot_panel.fields.isEnabled()
    box = page.slot_panel.rule.ready
    box.choose(ReadyRule.LOAD)
    box.picked.emit()
    assert program_of(editor) == before
    revisions = squat_of_bow(editor).revisions
    assert [ready_rule_of(one.rule) for one in revisions] == [ReadyRule.LOAD]
    assert editor.record.undo_stack.undoText() == "Linear loading, for Bow"
    face = page.days[0].rows[0].face
    assert face is not None
    assert face.asks.startswith("changed for Bow")
    (button,) = changes.buttons
    button.click()
    assert squat_of_bow(editor).revisions == ()
    assert changes.buttons == []
    editor.record.undo_stack.undo()
    editor.record.undo_stack.undo()
    assert program_of(editor) == before


def test_a_program_is_saved_as_pdf(editor: ProgramEditor, tmp_path: Path) -> None:
    type_program(editor)
    said: list[str] = []
    editor.record.message.connect(lambda text, _kind: said.append(text))
    path = tmp_path / "program.pdf"
    editor.printing.save(path)
    assert path.read_bytes().startswith(b"%PDF")
    assert said[-1] == f"Program saved to {path}"
    editor.printing.save(tmp_path / "missing" / "program.pdf")
    assert "cannot be written" in said[-1]
    press("Ctrl+P")
    menu = QApplication.activePopupWidget()
    assert menu is not None
    assert [action.text() for action in menu.actions()] == ["Save as PDF…", "Print…"]
    menu.close()
