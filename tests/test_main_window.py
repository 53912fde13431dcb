"""The window: roster, areas, cautions, messages, and what it remembers."""

from __future__ import annotations

import subprocess
import sys
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QLabel, QPushButton, QWidget
from pytestqt.modeltest import ModelTester
from pytestqt.qtbot import QtBot

from db.database import Database
from db.repository import Repository
from desktop.training.trainee import Trainee
from tests.scenario import TODAY, open_club
from views.desk_overview import DeskOverview
from views.desk_words import roster_lines
from views.gallery import ForgottenSettings
from views.main_window import MainWindow
from views.record import MessageKind, Record
from views.roster import RosterModel
from views.theme import Scheme, Theme
from views.trainee_form import TraineeForm
from views.work_areas import DESK, PROGRAM, SESSION, TRAINEE, WORK_AREAS


@pytest.fixture(scope="module")
def club_file(tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("club")
    repository = open_club(folder, weeks=1)
    repository.database.copy_to(folder / "copy.db")
    repository.database.close()
    return folder / "copy.db"


@pytest.fixture
def record(qtbot: QtBot, club_file: Path, tmp_path: Path) -> Iterator[Record]:
    path = tmp_path / "club.db"
    path.write_bytes(club_file.read_bytes())
    database = Database.open(path)
    yield Record(Repository(database))
    database.close()


@pytest.fixture
def empty(qtbot: QtBot) -> Iterator[Record]:
    database = Database.open(":memory:")
    yield Record(Repository(database))
    database.close()


def shown(qtbot: QtBot, record: Record, settings: ForgottenSettings | None = None) -> MainWindow:
    theme = Theme(Scheme.LIGHT, calm=True)
    window = MainWindow(record, TODAY, theme, settings or ForgottenSettings())
    qtbot.addWidget(window)
    with qtbot.waitExposed(window):
        window.show()
    return window


def button(window: QWidget, name: str) -> QPushButton:
    found = [b for b in window.findChildren(QPushButton) if b.accessibleName() == name]
    assert found, f"no button {name!r}"
    return found[-1]


def test_the_window_starts_without_charts_scipy_and_spreadsheets() -> None:
    code = (
        "import sys, desktop.application, views.main_window, views.desk_overview; "
        "print(*{'pyqtgraph', 'scipy', 'openpyxl', 'xlsxwriter', 'pandas'} & set(sys.modules))"
    )
    started = subprocess.run([sys.executable, "-c", code], check=True, stdout=subprocess.PIPE)
    assert started.stdout.split() == []


def test_the_first_paint_waits_for_neither_the_store_nor_the_model() -> None:
    late = {"peewee", "msgspec", "numpy", "db.repository", "desktop.planning.history"}
    code = (
        "import sys, desktop.application, views.main_window, views.desk_overview; "
        f"print(*{late!r} & set(sys.modules))"
    )
    started = subprocess.run([sys.executable, "-c", code], check=True, stdout=subprocess.PIPE)
    assert started.stdout.split() == []


def test_an_empty_file_says_what_to_do_first(qtbot: QtBot, empty: Record) -> None:
    window = shown(qtbot, empty)
    with qtbot.waitSignal(window.demo_wanted):
        button(window, "Open the demo scenario").click()
    button(window, "Add a trainee").click()
    assert window.areas.key == TRAINEE


def test_a_trainee_is_added_by_typing_a_name(qtbot: QtBot, empty: Record) -> None:
    window = shown(qtbot, empty)
    window.add_trainee()
    form = window.areas.area
    assert isinstance(form, TraineeForm)
    qtbot.keyClicks(form.person.name, "Bow")
    qtbot.keyClick(form.person.name, Qt.Key.Key_Return)
    (bow,) = empty.repository.trainees()
    assert window.roster.trainee_id == bow.id
    qtbot.keyClicks(form.person.stature, "175,5")
    qtbot.keyClick(form.person.stature, Qt.Key.Key_Return)
    assert empty.repository.trainee(bow.id or 0).stature_mm == 1755
    empty.undo_stack.undo()
    assert empty.repository.trainee(bow.id or 0).stature_mm is None
    assert form.person.stature.text() == ""


def test_equipment_typed_in_rows_is_kept_from_today_on(qtbot: QtBot, record: Record) -> None:
    window = shown(qtbot, record)
    bow = record.repository.trainee_named("Bow")
    assert bow is not None
    assert bow.id is not None
    before = record.repository.equipment(bow.id)
    window.roster.choose(bow.id)
    window.show_area(TRAINEE)
    form = window.areas.area
    assert isinstance(form, TraineeForm)
    name, mass = form.equipment.lists["bars"].fields[1]
    name.setText("short bar")
    qtbot.keyClicks(mass, "15")
    qtbot.keyClick(mass, Qt.Key.Key_Return)
    after = record.repository.equipment(bow.id)
    assert [bar.name for bar in after[-1].equipment.bars] == ["bar", "short bar"]
    assert after[-1].day == TODAY
    assert after[: len(before)] == before
    assert replace(after[-1].equipment, bars=()) == replace(before[-1].equipment, bars=())


def test_a_name_that_is_taken_is_refused_beside_the_field(qtbot: QtBot, record: Record) -> None:
    window = shown(qtbot, record)
    window.add_trainee()
    form = window.areas.area
    assert isinstance(form, TraineeForm)
    qtbot.keyClicks(form.person.name, "Bow")
    qtbot.keyClick(form.person.name, Qt.Key.Key_Return)
    assert form.person.name_error.text()
    assert len(record.repository.trainees()) == 5


def test_the_roster_finds_by_parts_of_a_name(qtbot: QtBot, record: Record) -> None:
    window = shown(qtbot, record)
    window.roster.start_search()
    qtbot.keyClicks(window.roster.filter, "STR")
    assert [line.name for line in window.roster.model.shown] == ["Stroke"]
    qtbot.keyClick(window.roster.filter, Qt.Key.Key_Return)
    stroke = record.repository.trainee_named("Stroke")
    assert stroke is not None
    assert window.roster.trainee_id == stroke.id
    assert len(window.roster.model.shown) == 5


def test_the_roster_is_read_first_without_and_then_with_cautions(
    qtbot: QtBot, record: Record
) -> None:
    window = shown(qtbot, record)
    qtbot.waitUntil(lambda: any(line.severity for line in window.roster.model.shown), timeout=3000)
    assert record.roster_complete
    cox = next(e for e in record.roster(TODAY) if e.trainee.name == "Cox")
    assert [caution.limit for caution in cox.cautions] == ["minor"]


def test_a_caution_set_aside_is_recorded_and_can_come_back(qtbot: QtBot, record: Record) -> None:
    window = shown(qtbot, record)
    cox = record.repository.trainee_named("Cox")
    assert cox is not None
    assert cox.id is not None
    qtbot.waitUntil(lambda: record.roster_complete, timeout=3000)
    window.roster.choose(cox.id)
    assert window.banner.isVisible()
    assert window.banner.current is not None
    window.banner.dismissed.emit(window.banner.current, "parents were told")
    (aside,) = record.repository.dismissed(cox.id)
    assert (aside.limit, aside.why) == ("minor", "parents were told")
    assert window.banner.isHidden()
    record.undo_stack.undo()
    assert window.banner.isVisible()


def test_names_with_markup_are_shown_as_they_are(qtbot: QtBot, empty: Record) -> None:
    empty.save("Add", Trainee("<b>Bow</b> & co"))
    window = shown(qtbot, empty)
    window.roster.step(1)
    window.show_area(TRAINEE)
    window.show_area(DESK)
    area = window.areas.area
    assert isinstance(area, DeskOverview)
    assert area.table.cells is not None
    assert area.table.cells.texts[0] == "<b>Bow</b> & co"
    assert area.said.text().startswith("<b>Bow</b> & co")


def test_errors_stay_and_things_done_offer_undo(qtbot: QtBot, empty: Record) -> None:
    window = shown(qtbot, empty)
    empty.save("Add Bow", Trainee("Bow"))
    empty.say("Added Bow", MessageKind.DONE)
    assert window.status.text == "Added Bow"
    button(window.status, "Undo").click()
    assert empty.repository.trainees() == ()
    empty.say("The disk is full.", MessageKind.ERROR)
    assert window.status.text == "Error: The disk is full."


def test_it_opens_where_it_was_closed(qtbot: QtBot, record: Record) -> None:
    settings = ForgottenSettings()
    first = shown(qtbot, record, settings)
    first.roster.step(3)
    first.close()
    again = shown(qtbot, record, settings)
    assert again.roster.trainee_id == first.roster.trainee_id is not None
    assert settings.geometry


def test_every_area_has_a_number_key_and_f1_lists_them(qtbot: QtBot, empty: Record) -> None:
    window = shown(qtbot, empty)
    keys = {key for _, group in window.menus.key_groups() for _, key in group}
    assert {"Ctrl+1", "Ctrl+5", "Ctrl+L", "F1", "Ctrl+Z", "Ctrl+Shift+Z"} <= keys
    assert window.map.isHidden()
    window.menus.map_wanted.emit()
    assert window.map.isVisible()


def test_each_screen_takes_the_cursor_from_the_one_before(qtbot: QtBot, record: Record) -> None:
    window = shown(qtbot, record)
    window.activateWindow()
    window.roster.step(1)
    for entry in WORK_AREAS:
        window.show_area(DESK)
        assert window.areas.area is not None
        window.areas.area.setFocus()
        window.menus.area_chosen.emit(entry.key)
        qtbot.wait(1)
        focused = QApplication.focusWidget()
        assert focused is not None, entry.key
        assert window.areas.area.isAncestorOf(focused), (entry.key, focused)


def test_who_walks_the_roster_goes_on_walking_it(qtbot: QtBot, record: Record) -> None:
    window = shown(qtbot, record)
    window.activateWindow()
    window.roster.filter.setFocus()
    for entry in WORK_AREAS[:5]:
        window.menus.area_chosen.emit(entry.key)
    assert window.roster.filter.hasFocus()


def test_with_no_program_yet_the_cursor_is_where_one_begins(qtbot: QtBot, empty: Record) -> None:
    window = shown(qtbot, empty)
    window.activateWindow()
    empty.save("Add Bow", Trainee("Bow"))
    window.roster.step(1)
    window.menus.area_chosen.emit(TRAINEE)
    assert isinstance(window.areas.area, TraineeForm)
    window.areas.area.person.name.setFocus()
    window.menus.area_chosen.emit(PROGRAM)
    focused = QApplication.focusWidget()
    assert isinstance(focused, QPushButton)
    assert focused.text() == "New program"


def test_the_map_follows_the_screen_and_gives_the_cursor_back(qtbot: QtBot, record: Record) -> None:
    window = shown(qtbot, record)
    window.activateWindow()
    assert window.areas.area is not None
    window.areas.area.setFocus()
    before = QApplication.focusWidget()
    window.menus.map_wanted.emit()
    assert window.map.close_button.hasFocus()
    there = {label.text() for label in window.map.findChildren(QLabel)}
    window.show_area(SESSION)
    qtbot.wait(1)
    assert {label.text() for label in window.map.findChildren(QLabel)} != there
    window.show_area(DESK)
    window.map.close_button.setFocus()
    qtbot.keyClick(window.map.close_button, Qt.Key.Key_Escape)
    assert window.map.isHidden()
    assert QApplication.focusWidget() is before


def test_undo_names_the_act_in_the_menu(qtbot: QtBot, empty: Record) -> None:
    window = shown(qtbot, empty)
    empty.save("Add Bow", Trainee("Bow"))
    assert "Add Bow" in window.menus.undo.text()


def test_another_process_is_noticed(qtbot: QtBot, record: Record) -> None:
    window = shown(qtbot, record)
    assert not record.look_for_changes_elsewhere()
    other = Database.open(record.repository.database.path)
    Repository(other).save(Trainee("Sculler"))
    other.close()
    assert record.look_for_changes_elsewhere()
    assert "Sculler" in [line.name for line in window.roster.model.shown]


def test_the_rosters_model_keeps_the_rules(
    qtbot: QtBot, record: Record, qtmodeltester: ModelTester
) -> None:
    model = RosterModel()
    qtmodeltester.check(model)
    model.set_lines(roster_lines(record, TODAY))
    qtmodeltester.check(model)
    model.set_filter("s")
    assert model.rowCount() < 5


def test_the_theme_changes_while_the_window_stands(qtbot: QtBot, record: Record) -> None:
    window = shown(qtbot, record)
    before = window.roster.width()
    theme = window.theme
    application = QApplication.instance()
    assert isinstance(application, QApplication)
    theme.apply(application)
    theme.choose(Scheme.DARK)
    theme.resize_text(150)
    assert window.roster.width() == before * 3 // 2
    theme.resize_text(100)
