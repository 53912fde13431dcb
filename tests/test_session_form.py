"""The session form, typed by real keys over a real data file."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest
from PySide6.QtCore import QLocale, Qt
from PySide6.QtWidgets import QApplication, QLabel, QLineEdit
from pytestqt.qtbot import QtBot

from db.database import Database
from db.repository import Repository
from desktop.planning.assignments import assign
from desktop.planning.days import day_plan
from desktop.planning.session_draft import Field
from desktop.planning.typed_cells import Row
from desktop.planning.typed_session import CellPlace
from desktop.training.exercises import Exercise, LoadingKind, Measure, Muscle, Pattern
from desktop.training.position import Position, ProgressionRule, Variable, VariableRange
from desktop.training.program import Phase, Program, Slot, TrainingDay
from desktop.training.quantities import Unit
from desktop.training.session import Outcome, Session, SetDone
from desktop.training.trainee import Trainee
from tests.keyboard import focused, strike, type_in
from views.next_time import OUTCOME_MARKS
from views.record import Record
from views.session_form import SessionForm
from views.set_cell import SetCell
from views.theme import Scheme, Theme

KEY = Qt.Key
CTRL = Qt.KeyboardModifier.ControlModifier
SHIFT = Qt.KeyboardModifier.ShiftModifier
ALT = Qt.KeyboardModifier.AltModifier
NONE = Qt.KeyboardModifier.NoModifier

MONDAY = date(2026, 11, 16)
THURSDAY = date(2026, 11, 19)
NEXT_MONDAY = date(2026, 11, 23)
TODAY = date(2026, 11, 26)

SQUAT = Exercise("squat", "Back squat", Pattern.SQUAT, LoadingKind.BARBELL, (Muscle.QUADRICEPS,))
DIP = Exercise("dip", "Dip", Pattern.HORIZONTAL_PUSH, LoadingKind.BODYWEIGHT, (Muscle.TRICEPS,))
LUNGE = Exercise(
    "lunge", "Lunge", Pattern.LUNGE, LoadingKind.DUMBBELL, (Muscle.GLUTES,), unilateral=True
)
PLANK = Exercise(
    "plank", "Plank", Pattern.TRUNK, LoadingKind.BODYWEIGHT, (Muscle.TRUNK,), measure=Measure.HOLD
)
GOBLET = Exercise(
    "goblet", "Goblet squat", Pattern.SQUAT, LoadingKind.DUMBBELL, (Muscle.QUADRICEPS,)
)

REPS = VariableRange(Variable.REPS, 8, 12)
LOAD = VariableRange(Variable.LOAD, increment=2_500)
HOLD = VariableRange(Variable.HOLD, 20, 60, 5)
SLOTS = (
    Slot("squat", ProgressionRule((REPS, LOAD)), Position(60_000, 10, 3)),
    Slot("dip", ProgressionRule((REPS, LOAD)), Position(0, 8, 3)),
    Slot("plank", ProgressionRule((HOLD,)), Position(hold_s=30, sets=2)),
)


@pytest.fixture
def record(tmp_path: Path, qapp: QApplication, english: None) -> Iterator[Record]:
    """Two trainees on a program of three exercises, Mondays and Thursdays; nothing done yet."""
    database = Database.open(tmp_path / "data.db")
    repository = Repository(database)
    repository.save(SQUAT, DIP, LUNGE, PLANK, GOBLET)
    days = (TrainingDay("Monday", SLOTS, 0), TrainingDay("Thursday", SLOTS, 3))
    program = repository.save(Program("Winter", (Phase("All", 12, days),))).saved[0]
    for name in ("Bow", "Stroke"):
        trainee = repository.save(Trainee(name)).saved[0]
        repository.save(*assign(repository, trainee.id, program.id, MONDAY).aggregates)
    made = Record(repository)
    yield made
    database.close()


@pytest.fixture
def form(record: Record, qtbot: QtBot, qapp: QApplication) -> SessionForm:
    """Bow's Monday, shown and ready to be typed."""
    theme = Theme(Scheme.LIGHT, calm=True)
    theme.apply(qapp)
    form = SessionForm(record, TODAY, theme)
    qtbot.addWidget(form)
    form.resize(1040, 720)
    with qtbot.waitExposed(form):
        form.show()
    form.activateWindow()
    bow = record.repository.trainee_named("Bow")
    assert bow is not None
    form.show_trainee(bow.id)
    form.open_day(MONDAY)
    return form


def type_cells(*texts: str) -> None:
    """Type into one cell after the other, each ended by Return."""
    for text in texts:
        type_in(text)
        strike(KEY.Key_Return)


def save() -> None:
    strike(KEY.Key_Return, modifier=CTRL)


def sessions(form: SessionForm) -> tuple[Session, ...]:
    assert form.trainee_id is not None
    return form.record.repository.sessions(form.trainee_id)


def texts(form: SessionForm, line: int, row: Row = Row.DONE) -> list[str]:
    assert form.draft is not None
    return [each.text(row) for each in form.draft.lines[line].sets]


def reps(session: Session, line: int) -> list[int | None]:
    return [done.reps for done in session.lines[line].sets]


def where(form: SessionForm) -> CellPlace | None:
    return form.page.place


def test_the_cursor_stands_in_the_first_done_cell(form: SessionForm) -> None:
    assert focused().accessibleName() == "Back squat, set 1, repetitions done"
    assert where(form) == CellPlace(0, 0, Row.DONE)


def test_the_planned_day_comes_filled_in(form: SessionForm) -> None:
    blocks = form.page.blocks
    assert [block.name.text() for block in blocks] == ["Back squat", "Dip", "Plank"]
    assert blocks[0].asked.text().replace("\N{NO-BREAK SPACE}", " ") == "3 × 10 at 60 kg"
    assert blocks[0].sheet.rows == (Row.DONE, Row.LOAD, Row.RESERVE, Row.PAIN)
    assert blocks[1].sheet.rows == (Row.DONE, Row.RESERVE, Row.PAIN)
    assert blocks[2].sheet.count == 2


def test_a_session_is_typed_saved_undone_and_done_again(form: SessionForm) -> None:
    strike(KEY.Key_Space, KEY.Key_Equal)  # two sets as asked
    type_cells("9")
    type_cells("8", "8", "7")
    strike(KEY.Key_F8)  # the plank as asked
    assert focused() is form.typing.foot.fields[Field.EFFORT]
    type_cells("7", "55")
    save()
    (session,) = sessions(form)
    assert reps(session, 0) == [10, 10, 9]
    assert reps(session, 1) == [8, 8, 7]
    assert [done.seconds for done in session.lines[2].sets] == [30, 30]
    assert session.effort == 7
    assert session.minutes == 55
    assert session.lines[0].asked[0].reps == 10
    assert session.week == 1
    assert all(done.rir is None for line in session.lines for done in line.sets)
    assert form.showing_outcomes

    stack = form.record.undo_stack
    assert "Session of Bow" in stack.undoText()
    stack.undo()
    assert sessions(form) == ()
    assert texts(form, 0) == ["10", "10", "9"]  # what was typed is there as a draft
    assert focused().accessibleName().startswith("Back squat, set")
    stack.redo()
    assert len(sessions(form)) == 1
    assert form.draft is not None
    assert form.draft.session_id is not None


def test_what_comes_next_is_told_with_its_reason(form: SessionForm) -> None:
    strike(KEY.Key_F9)
    form.page.go_to(CellPlace(1, 2, Row.DONE))
    type_in("5")
    save()
    squat, dip, _plank = form.outcomes.rows
    shown = squat.change.text().replace("\N{NO-BREAK SPACE}", " ")
    assert shown == "3 × 10 at 60 kg → 3 × 11 at 60 kg"
    assert "11 reps" in squat.why.text()
    assert "again" in dip.change.text()


def test_as_asked_for_all_leaves_what_is_typed(form: SessionForm) -> None:
    strike(KEY.Key_Right)
    type_in("6")
    strike(KEY.Key_F9)
    assert texts(form, 0) == ["10", "6", "10"]
    assert texts(form, 2) == ["30", "30"]
    assert focused() is form.typing.foot.fields[Field.EFFORT]


def test_arrows_walk_through_the_sheet(form: SessionForm) -> None:
    strike(KEY.Key_Right, KEY.Key_Down)
    assert where(form) == CellPlace(0, 1, Row.LOAD)
    strike(KEY.Key_Down, KEY.Key_Down, KEY.Key_Down)
    assert where(form) == CellPlace(1, 1, Row.DONE)
    strike(KEY.Key_Left, KEY.Key_Up)
    assert where(form) == CellPlace(0, 0, Row.PAIN)
    strike(KEY.Key_PageDown, KEY.Key_PageDown)
    assert where(form) == CellPlace(2, 0, Row.DONE)
    strike(KEY.Key_PageUp)
    assert where(form) == CellPlace(1, 0, Row.DONE)


def test_return_at_the_end_of_a_row_goes_to_the_next_exercise(form: SessionForm) -> None:
    form.page.go_to(CellPlace(0, 2, Row.RESERVE))
    type_cells("1")
    assert where(form) == CellPlace(1, 0, Row.DONE)


def test_a_wrong_text_stays_and_is_explained_and_stops_saving(form: SessionForm) -> None:
    type_cells("ten")
    assert where(form) == CellPlace(0, 0, Row.DONE)
    assert "Not a number" in form.page.callout.text
    assert "Not a number" in focused().accessibleDescription()
    strike(KEY.Key_Down)
    strike(KEY.Key_PageDown)
    save()
    assert sessions(form) == ()
    assert where(form) == CellPlace(0, 0, Row.DONE)
    assert texts(form, 0)[0] == "ten"
    strike(KEY.Key_Delete)
    assert texts(form, 0)[0] == ""
    assert form.page.callout.text == ""


@pytest.mark.parametrize(
    ("row", "text", "told"),
    [
        (Row.DONE, "900", "Allowed: 0 to 100."),
        (Row.LOAD, "1000000000", "Allowed: 0 to 1000."),
        (Row.LOAD, "100 lb", "kg are typed here: that is 45.36. Return again takes it."),
        (Row.LOAD, "1,250", "Thousands or a decimal?"),
        (Row.DONE, "8/7", "One number"),
        (Row.RESERVE, "-1", "Allowed: 0 to 10."),
        (Row.PAIN, "11", "Allowed: 0 to 10."),
    ],
)
def test_bad_input_is_refused_beside_the_cell(
    form: SessionForm, row: Row, text: str, told: str
) -> None:
    form.page.go_to(CellPlace(0, 0, row))
    type_in(text)
    assert told in form.page.callout.text


def test_a_doubtful_load_is_asked_about_once(form: SessionForm) -> None:
    strike(KEY.Key_F9)
    form.page.go_to(CellPlace(0, 0, Row.LOAD))
    type_cells("625")
    assert where(form) == CellPlace(0, 0, Row.LOAD)
    assert "625 kg against 60 kg" in form.page.callout.text
    save()
    assert sessions(form) == ()
    strike(KEY.Key_Return)
    assert where(form) == CellPlace(0, 1, Row.LOAD)
    save()
    assert sessions(form)[0].lines[0].sets[0].load_g == 625_000


def test_typing_is_taken_back_word_by_word(form: SessionForm) -> None:
    type_cells("12")
    type_cells("11")
    strike(KEY.Key_Z, modifier=CTRL)
    assert texts(form, 0) == ["12", "", ""]
    strike(KEY.Key_Z, modifier=CTRL)
    assert texts(form, 0) == ["", "", ""]
    strike(KEY.Key_Z, modifier=CTRL | SHIFT)
    assert texts(form, 0) == ["12", "", ""]


def test_an_extra_set_comes_and_goes(form: SessionForm) -> None:
    strike(KEY.Key_N, modifier=CTRL)
    assert where(form) == CellPlace(0, 3, Row.DONE)
    type_in("6")
    assert texts(form, 0) == ["", "", "", "6"]
    strike(KEY.Key_Delete, modifier=CTRL)
    assert texts(form, 0) == ["", "", ""]
    assert isinstance(focused(), SetCell)


def test_weight_is_added_to_the_body(form: SessionForm) -> None:
    form.page.go_to(CellPlace(1, 0, Row.DONE))
    strike(KEY.Key_F8)
    form.page.go_to(CellPlace(1, 0, Row.DONE))
    strike(KEY.Key_F2)
    assert where(form) == CellPlace(1, 0, Row.LOAD)
    type_cells("+10", "-20")
    save()
    loads = [done.load_g for done in sessions(form)[0].lines[1].sets]
    assert loads == [10_000, -20_000, 0]


def test_an_exercise_is_added_by_a_few_letters_on_a_rest_day(form: SessionForm) -> None:
    strike(KEY.Key_PageDown, modifier=ALT)
    assert form.draft is not None
    assert form.draft.day == date(2026, 11, 17)
    assert not form.page.empty.isHidden()
    strike(KEY.Key_F3)
    type_in("lnge")
    assert form.typing.choice.shown[0].startswith("Lunge")
    strike(KEY.Key_Return)
    assert focused().accessibleName() == "Lunge, set 1, repetitions done"
    type_cells("8/7")
    form.page.go_to(CellPlace(0, 0, Row.LOAD))
    type_in("16")
    save()
    strike(KEY.Key_Return)
    (session,) = sessions(form)
    left, right = session.lines[0].sets
    assert (left.side, left.reps, right.side, right.reps) == ("left", 8, "right", 7)
    assert left.load_g == 16_000
    assert session.program_id is None
    form.record.undo_stack.undo()
    assert sessions(form) == ()
    lines = form.record.repository.lines(form.trainee_id or 0)
    assert "lunge" not in {line.exercise for line in lines}


def test_another_exercise_is_done_instead(form: SessionForm) -> None:
    strike(KEY.Key_F3, modifier=SHIFT)
    type_in("goblet")
    strike(KEY.Key_Return)
    assert [block.name.text() for block in form.page.blocks][:2] == ["Back squat", "Goblet squat"]
    strike(KEY.Key_F9)  # fills what was not replaced
    assert texts(form, 0) == ["", "", ""]
    assert texts(form, 2) == ["8", "8", "8"]
    form.page.go_to(CellPlace(1, 0, Row.DONE))
    type_cells("10")
    form.page.go_to(CellPlace(1, 0, Row.LOAD))
    type_in("20")
    save()
    planned, done = sessions(form)[0].lines[:2]
    assert planned.skipped
    assert planned.note == "Instead: Goblet squat"
    assert done.sets == (SetDone(20_000, 10),)


def test_a_correction_that_changes_nothing_says_why(form: SessionForm) -> None:
    for day in (MONDAY, THURSDAY):
        form.open_day(day)
        strike(KEY.Key_F9)
        save()
    form.open_day(MONDAY)
    form.page.go_to(CellPlace(0, 0, Row.RESERVE))
    type_in("3")
    save()
    assert "No target changes: training went on as asked" in form.effects.text.text()


def test_the_past_is_corrected_with_its_effect_told_first(form: SessionForm) -> None:
    for day in (MONDAY, THURSDAY):
        form.open_day(day)
        strike(KEY.Key_F9)
        save()
        if form.effects.isVisible():
            strike(KEY.Key_Return)
    form.open_day(MONDAY)
    form.page.go_to(CellPlace(0, 0, Row.DONE))
    type_in("4")
    save()
    assert "New caution: Back squat" in form.effects.text.text()
    assert "\N{RIGHTWARDS ARROW}" not in form.effects.text.text()
    strike(KEY.Key_Escape)
    assert sessions(form)[0].lines[0].sets[0].reps == 10
    save()
    save()
    assert sessions(form)[0].lines[0].sets[0].reps == 4
    form.open_day(THURSDAY)
    form.page.go_to(CellPlace(0, 0, Row.DONE))
    type_in("4")
    save()
    told = form.effects.text.text().replace("\N{NO-BREAK SPACE}", " ")
    assert "Back squat" in told
    assert "3 × 12 at 60 kg → 3 × 11 at 60 kg" in told
    strike(KEY.Key_Return)
    assert form.outcomes.rows[0].change.text()
    changes = form.record.repository.session_changes(sessions(form)[1].id or 0)
    assert [change.what.value for change in changes] == ["entered", "corrected"]


def test_sessions_and_training_days_are_walked_by_key(form: SessionForm) -> None:
    strike(KEY.Key_F9)
    save()
    strike(KEY.Key_PageDown, modifier=CTRL)
    assert form.draft is not None
    assert form.draft.day == THURSDAY
    assert texts(form, 0) == ["", "", ""]
    strike(KEY.Key_PageUp, modifier=CTRL | SHIFT)
    assert form.draft.day == MONDAY
    assert texts(form, 0) == ["10", "10", "10"]
    strike(KEY.Key_Home, modifier=ALT)
    assert form.draft.day == TODAY


def test_a_day_is_typed_as_the_locale_writes_it(form: SessionForm) -> None:
    strike(KEY.Key_D, modifier=CTRL)
    type_in("19/11/2026")
    strike(KEY.Key_Return)
    assert form.draft is not None
    assert form.draft.day == THURSDAY


def test_a_day_to_come_is_looked_at_but_not_saved(form: SessionForm) -> None:
    form.open_day(date(2026, 11, 30))
    strike(KEY.Key_F9)
    save()
    assert sessions(form) == ()
    assert focused() is form.heading.field


def test_what_is_typed_is_there_again_after_a_look_elsewhere(form: SessionForm) -> None:
    type_cells("9")
    stroke = form.record.repository.trainee_named("Stroke")
    bow = form.trainee_id
    assert stroke is not None
    form.show_trainee(stroke.id)
    assert texts(form, 0) == ["", "", ""]
    form.show_trainee(bow)
    assert texts(form, 0) == ["9", "", ""]


def test_saving_leads_on_to_the_next_trainee_of_the_day(form: SessionForm, qtbot: QtBot) -> None:
    stroke = form.record.repository.trainee_named("Stroke")
    assert stroke is not None
    form.trainee_wanted.connect(form.show_trainee)
    strike(KEY.Key_F9)
    save()
    with qtbot.waitSignal(form.trainee_wanted) as wanted:
        save()
    assert wanted.args == [stroke.id]
    assert form.draft is not None
    assert form.draft.trainee_id == stroke.id
    assert form.draft.day == MONDAY
    assert where(form) == CellPlace(0, 0, Row.DONE)


def test_the_coach_sets_the_next_target_otherwise(form: SessionForm) -> None:
    strike(KEY.Key_F9)
    save()
    form.outcomes.rows[0].override.click()
    editor = form.outcomes.rows[0].editor
    assert editor is not None
    for text in ("3", "8", "65"):
        type_in(text)
        strike(KEY.Key_Return)
    editor.note.setFocus()
    type_in("feels light")
    strike(KEY.Key_Return)
    plan = day_plan(form.record.repository, form.trainee_id or 0, THURSDAY)
    assert plan.slots[0].target.position == Position(65_000, 8, 3)
    shown = form.outcomes.rows[0].change.text().replace("\N{NO-BREAK SPACE}", " ")
    assert shown == "3 × 10 at 60 kg → 3 × 8 at 65 kg"
    form.record.undo_stack.undo()
    plan = day_plan(form.record.repository, form.trainee_id or 0, THURSDAY)
    assert plan.slots[0].target.position == Position(60_000, 11, 3)


def test_pain_raises_its_caution_at_once(form: SessionForm) -> None:
    strike(KEY.Key_F9)
    form.page.go_to(CellPlace(1, 0, Row.PAIN))
    type_in("5")
    save()
    session = sessions(form)[0]
    assert session.lines[1].worst_pain == 5
    assert "nothing is asked" in form.outcomes.rows[1].change.text()


def test_a_red_flag_stops_everything(form: SessionForm) -> None:
    form.typing.foot.flag.click()
    strike(KEY.Key_F9)
    assert texts(form, 0) == ["", "", ""]
    assert not form.heading.all.isEnabled()
    save()
    assert sessions(form)[0].red_flag
    plan = day_plan(form.record.repository, form.trainee_id or 0, THURSDAY)
    assert plan.why_empty == "clearance needed"
    assert form.outcomes.rows == []
    shown = " ".join(each.text() for each in form.outcomes.findChildren(QLabel))
    assert shown.count("nothing is asked") == 3
    assert "kg" not in shown


def test_wellness_and_body_mass_are_asked_seldom(form: SessionForm) -> None:
    strike(KEY.Key_F9)
    strike(KEY.Key_F7)
    assert focused() is form.typing.foot.fields[Field.MASS]
    type_cells("72,5", "4", "9")
    assert "Allowed: 1 to 5." in form.typing.foot.fields[Field.SORENESS].accessibleDescription()
    save()
    assert sessions(form) == ()
    assert focused() is form.typing.foot.fields[Field.SORENESS]
    type_cells("3")
    save()
    assert sessions(form)[0].wellness.soreness == 3
    masses = form.record.repository.body_masses(form.trainee_id or 0)
    assert [each.mass_g for each in masses] == [72_500]
    form.record.undo_stack.undo()
    assert form.record.repository.body_masses(form.trainee_id or 0) == ()


def test_a_block_keeps_its_height_while_it_is_typed_in(form: SessionForm) -> None:
    block = form.page.blocks[0]
    QApplication.processEvents()
    before = block.height()
    for text in ("12", "x", "4"):
        type_in(text)
        strike(KEY.Key_Right)
        QApplication.processEvents()
        assert block.height() == before


def test_every_field_has_a_name_to_be_read(form: SessionForm) -> None:
    fields = [each for each in form.findChildren(QLineEdit) if each.isVisible()]
    assert fields
    assert all(each.accessibleName() for each in fields)


def test_pounds_stay_pounds(record: Record, form: SessionForm) -> None:
    bow = record.repository.trainee_named("Bow")
    assert bow is not None
    record.save("Pounds", replace(bow, unit=Unit.LB))
    strike(KEY.Key_F9)
    form.page.go_to(CellPlace(0, 0, Row.LOAD))
    type_in("135")
    save()
    form.open_day(MONDAY)
    assert texts(form, 0, Row.LOAD)[0] == "135"


def test_a_comma_is_written_where_the_locale_has_one(form: SessionForm) -> None:
    QLocale.setDefault(QLocale("de_DE"))
    strike(KEY.Key_F9)
    form.page.go_to(CellPlace(0, 0, Row.LOAD))
    type_in("62.5")
    save()
    form.open_day(MONDAY)
    assert texts(form, 0, Row.LOAD)[0] == "62,5"


def test_nothing_is_saved_where_nothing_is_typed(form: SessionForm, qtbot: QtBot) -> None:
    with qtbot.waitSignal(form.record.message):
        save()
    assert sessions(form) == ()


def test_a_session_taken_out_comes_back_by_undo(form: SessionForm) -> None:
    strike(KEY.Key_F9)
    save()
    form.after.remove.click()
    assert sessions(form) == ()
    form.record.undo_stack.undo()
    assert len(sessions(form)) == 1


def test_the_outcome_words_have_marks_of_their_own(form: SessionForm) -> None:
    marks = [mark for mark, _ in OUTCOME_MARKS.values()]
    assert set(OUTCOME_MARKS) == set(Outcome)
    assert len({(mark, tone) for mark, tone in OUTCOME_MARKS.values()}) == len(marks)


def test_another_activity_is_typed_and_goes_on_record_at_once(form: SessionForm) -> None:
    strike(KEY.Key_F7)
    form.typing.foot.go_to(Field.ACTIVITY)
    type_in("cycling")
    strike(KEY.Key_Return)
    type_in("40")
    strike(KEY.Key_Return)
    type_in("5")
    strike(KEY.Key_Return)
    repository, trainee_id = form.record.repository, form.trainee_id
    assert trainee_id is not None
    (activity,) = repository.activities(trainee_id)
    assert (activity.name, activity.minutes, activity.effort) == ("cycling", 40, 5.0)
    assert activity.day == MONDAY
    assert "cycling 40 min" in form.typing.foot.activities.text()
    assert focused() is form.typing.foot.fields[Field.ACTIVITY]
    assert form.draft is not None
    assert form.draft.blank
    form.record.undo_stack.undo()
    assert repository.activities(trainee_id) == ()


def test_an_activity_half_typed_is_asked_for_when_saving(form: SessionForm) -> None:
    strike(KEY.Key_F9)
    form.typing.foot.go_to(Field.ACTIVITY)
    type_in("swimming")
    save()
    assert focused() is form.typing.foot.fields[Field.ACTIVITY_MINUTES]
    assert "How many minutes" in form.typing.foot.callout.text
    type_in("30")
    strike(KEY.Key_Return)
    type_in("6")
    save()
    assert form.trainee_id is not None
    assert [each.name for each in form.record.repository.activities(form.trainee_id)] == [
        "swimming"
    ]
    assert len(sessions(form)) == 1


def test_an_activity_is_taken_while_the_session_is_not_ready(form: SessionForm) -> None:
    type_in("x")
    form.typing.foot.go_to(Field.ACTIVITY)
    type_in("cycling")
    strike(KEY.Key_Return)
    type_in("40")
    strike(KEY.Key_Return)
    type_in("11")
    strike(KEY.Key_Return)
    assert form.trainee_id is not None
    assert form.record.repository.activities(form.trainee_id) == ()
    assert "0 to 10" in form.typing.foot.callout.text
    strike(KEY.Key_Backspace)
    strike(KEY.Key_Return)
    (activity,) = form.record.repository.activities(form.trainee_id)
    assert activity.effort == 1.0
    assert texts(form, 0)[0] == "x"


def test_sets_left_blank_go_and_the_cursor_goes_on(form: SessionForm, qtbot: QtBot) -> None:
    strike(KEY.Key_N, modifier=CTRL)
    strike(KEY.Key_N, modifier=CTRL)
    assert where(form) == CellPlace(0, 4, Row.DONE)
    type_in("6")
    save()
    assert form.showing_outcomes
    strike(KEY.Key_Left, modifier=ALT)  # back to cells that are fewer than before
    qtbot.wait(0)
    assert texts(form, 0) == ["6", "", ""]
    assert isinstance(focused(), SetCell)
