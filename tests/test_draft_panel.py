"""Drafting a program by keys: wishes, the draft with its reasons, what to relax, taking it."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from pytestqt.qtbot import QtBot

from db.database import Database
from db.repository import Repository
from desktop.catalogue import load_catalogue
from desktop.planning.drafts import Draft, EquipmentClass, GoingOn
from desktop.training.equipment import Equipment
from desktop.training.trainee import EquipmentFrom, Trainee
from tests.keyboard import focused, press, type_in
from tests.typed_programs import TODAY, shown
from views.draft_panel import DraftPanel
from views.draft_source import DraftSource
from views.program_editor import ProgramEditor
from views.record import Record

PATIENCE_MS = 20_000

pytestmark = pytest.mark.usefixtures("english")


@pytest.fixture
def record(tmp_path: Path) -> Iterator[Record]:
    repository = Repository(Database.open(tmp_path / "rungwise.db"))
    repository.sync_catalogue(load_catalogue())
    bow = repository.save(
        Trainee("Bow", weekdays=(0, 3), minutes_per_session=45, avoid="overhead work.")
    ).saved[0]
    owned = Equipment(dumbbells_g=tuple(kg * 1000 for kg in (8, 8, 12, 12, 16, 16)))
    repository.save(EquipmentFrom(bow.id, TODAY, owned))
    yield Record(repository)
    repository.database.close()


@pytest.fixture
def editor(record: Record, qtbot: QtBot) -> Iterator[ProgramEditor]:
    with shown(record, qtbot) as editor:
        yield editor


def panel_of(editor: ProgramEditor) -> DraftPanel:
    assert editor.drafting is not None
    return editor.drafting


def made(panel: DraftPanel, qtbot: QtBot) -> Draft:
    qtbot.waitUntil(lambda: not panel.working, timeout=PATIENCE_MS)
    assert panel.draft is not None
    return panel.draft


def test_a_program_is_drafted_explained_taken_and_undone_by_keys(
    editor: ProgramEditor, record: Record, qtbot: QtBot
) -> None:
    press("F7")
    panel = panel_of(editor)
    assert focused() is panel.wishes.days
    type_in("2")
    press("Return")
    type_in("50")
    press("Ctrl+Return")
    assert panel.working
    assert panel.cancel.isVisible()
    assert "balances best" in panel.state.text()
    program = made(panel, qtbot).program
    assert program is not None
    assert len(program.phases[0].days) == 2
    said = panel.result.texts
    assert program.name in said
    assert "Trained on Monday and Thursday, as far apart as they can be" in said
    assert any("grows by" in text and "sets on" in text for text in said)
    assert any("at the most; 50 are there" in text for text in said)
    assert record.repository.programs() == ()  # nothing is saved before it is taken
    assert focused() is panel.act
    press("Return")
    assert editor.program is not None
    assert editor.program.name == program.name
    assert editor.program.phases == program.phases
    assert record.undo_stack.count() == 1
    record.undo_stack.undo()
    assert record.repository.programs() == ()
    assert editor.shelf.isVisible()


def test_impossible_wishes_say_which_to_relax_and_one_key_does_it(
    editor: ProgramEditor, qtbot: QtBot
) -> None:
    press("F7")
    panel = panel_of(editor)
    type_in("2")
    press("Return")
    type_in("12")
    panel.wishes.equipment.choose(EquipmentClass.NONE)
    press("Ctrl+Return")
    draft = made(panel, qtbot)
    assert draft.program is None
    minutes = draft.relaxations[0].to
    assert "These wishes cannot be met together" in panel.result.texts
    assert focused() is panel.result.ways[0]
    assert panel.result.ways[0].text() == f"Give it {minutes} min a session"
    press("Return")
    assert panel.wishes.minutes.whole == minutes
    assert made(panel, qtbot).program is not None
    press("Ctrl+Return")
    assert editor.program is not None


def test_a_wish_nobody_could_meet_is_said_beside_the_fields(editor: ProgramEditor) -> None:
    press("F7")
    panel = panel_of(editor)
    type_in("9")
    press("Ctrl+Return")
    assert not panel.working
    assert panel.wishes.error.text()
    press("Ctrl+A")
    type_in("3")
    panel.wishes.avoid.setFocus()
    type_in("zzz")
    press("Ctrl+Return")
    assert not panel.working
    assert "no exercise has that" in panel.wishes.error.text()
    assert panel.wishes.avoid.text() == "zzz"
    assert focused() is panel.wishes.avoid


def test_drafting_can_be_given_up_and_changed_wishes_drop_the_draft(
    editor: ProgramEditor, qtbot: QtBot
) -> None:
    press("F7")
    panel = panel_of(editor)
    press("Ctrl+Return")
    assert panel.cancel.isVisible()
    press("Esc")
    assert not panel.working
    assert panel.result.texts == ()
    assert panel.isVisible()
    press("Ctrl+Return")
    made(panel, qtbot)
    panel.wishes.days.setFocus()
    type_in("2")
    assert not panel_of(editor).result.texts
    press("Esc")
    assert editor.shelf.isVisible()


def test_for_a_trainee_the_wishes_begin_with_what_is_on_record(
    editor: ProgramEditor, record: Record, qtbot: QtBot
) -> None:
    bow = record.repository.trainee_named("Bow")
    assert bow is not None
    editor.show_trainee(bow.id)
    editor.shelf.take_focus()
    press("F7")
    panel = panel_of(editor)
    assert panel.wishes.said is not None
    assert (panel.wishes.said.days, panel.wishes.said.minutes) == (2, 45)
    assert panel.wishes.said.kind is None
    assert panel.wishes.equipment.currentText() == "what Bow owns"
    assert "overhead work" in panel.wishes.about.text()
    press("Ctrl+Return")
    program = made(panel, qtbot).program
    assert program is not None
    assert [day.weekday for day in program.phases[0].days] == [0, 3]


def test_an_error_while_drafting_is_told_in_the_window(qtbot: QtBot) -> None:
    source = DraftSource()

    def broken(_going_on: GoingOn) -> Draft:
        raise RuntimeError("broken")

    with qtbot.waitSignal(source.failed) as told:
        source.want(broken)
    assert isinstance(told.args[0], RuntimeError)
    assert not source.working
