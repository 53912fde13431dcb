"""The print work area: which day it shows, what it says where nothing is asked, what keys do."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from datetime import date, timedelta
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFileDialog, QWidget
from pytestqt.qtbot import QtBot

from db.repository import Repository
from desktop.training.trainee import Trainee
from tests.scenario import TODAY, open_club
from views.paper import Paper
from views.record import MessageKind, Record
from views.sheet_area import SheetArea
from views.theme import Scheme, Theme

DAY = timedelta(days=1)
NEXT_MONDAY = TODAY + 4 * DAY

pytestmark = pytest.mark.usefixtures("english")


@pytest.fixture(scope="module")
def club(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Repository]:
    repository = open_club(tmp_path_factory.mktemp("club"))
    yield repository
    repository.database.close()


@pytest.fixture
def said() -> list[tuple[str, str]]:
    return []


@pytest.fixture
def area(qtbot: QtBot, club: Repository, said: list[tuple[str, str]]) -> SheetArea:
    theme = Theme(Scheme.LIGHT, calm=True)
    record = Record(club)
    record.message.connect(lambda text, kind: said.append((text, kind)))
    made = SheetArea(record, TODAY, theme)
    record.setParent(made)
    theme.setParent(made)
    qtbot.addWidget(made)
    made.resize(1000, 700)
    made.show()
    made.show_trainee(id_of(club, "Bow"))
    return made


def id_of(club: Repository, name: str) -> int | None:
    return named(club, name).id


def named(club: Repository, name: str) -> Trainee:
    found = club.trainee_named(name)
    assert found is not None
    return found


def press(qtbot: QtBot, widget: QWidget, key: Qt.Key, modifier: Qt.KeyboardModifier) -> None:
    """A key with a modifier: a shortcut acts in the active window only."""
    window = widget.window()
    window.activateWindow()
    qtbot.waitUntil(window.isActiveWindow)
    qtbot.keyClick(widget, key, modifier)


def test_a_trainee_begins_at_the_next_day_of_training(area: SheetArea, club: Repository) -> None:
    assert area.day == TODAY
    assert area.sheet is not None
    assert area.sheet.title == "Bow, Thursday, 26 November 2026"
    area.show_trainee(id_of(club, "Seat 3"))
    assert area.day == TODAY + DAY


def test_the_day_is_stepped_and_typed(area: SheetArea, qtbot: QtBot) -> None:
    area.preview.setFocus()
    press(qtbot, area.preview, Qt.Key.Key_PageDown, Qt.KeyboardModifier.ControlModifier)
    assert area.day == NEXT_MONDAY
    press(qtbot, area.preview, Qt.Key.Key_PageUp, Qt.KeyboardModifier.ControlModifier)
    assert area.day == TODAY
    press(qtbot, area.preview, Qt.Key.Key_PageDown, Qt.KeyboardModifier.AltModifier)
    assert area.day == TODAY + DAY
    press(qtbot, area.preview, Qt.Key.Key_Home, Qt.KeyboardModifier.AltModifier)
    assert area.day == TODAY
    area.field.setText("30/11/2026")
    qtbot.keyClick(area.field, Qt.Key.Key_Return)
    assert area.day == NEXT_MONDAY
    area.field.setText("")
    qtbot.keyClick(area.field, Qt.Key.Key_Return)
    assert area.field.day == NEXT_MONDAY


def test_a_rest_day_says_so_and_leads_on(area: SheetArea) -> None:
    area.show_day(TODAY + DAY)
    assert not area.preview.isVisible()
    assert area.empty.why.text() == "Fri 27 Nov is a rest day of Bow: nothing is asked."
    assert not area.save.isEnabled()
    assert not area.print.isEnabled()
    assert not area.empty.to_program.isVisible()
    area.empty.to_next.click()
    assert area.day == NEXT_MONDAY
    assert area.sheet is not None
    assert area.save.isEnabled()


def test_without_a_program_the_program_is_offered(
    area: SheetArea, club: Repository, qtbot: QtBot
) -> None:
    area.show_trainee(id_of(club, "Cox"))
    assert "has no program" in area.empty.why.text()
    with qtbot.waitSignal(area.area_wanted) as wanted:
        area.empty.to_program.click()
    assert wanted.args == ["program"]


def test_the_sheet_is_saved_and_a_failure_told(
    area: SheetArea, tmp_path: Path, said: list[tuple[str, str]]
) -> None:
    path = tmp_path / "sheet.pdf"
    area.save_pdf(path)
    assert path.read_bytes().startswith(b"%PDF-")
    assert said == [(f"Sheet saved to {path}", MessageKind.DONE)]
    area.save_pdf(tmp_path / "nowhere" / "sheet.pdf")
    assert said[-1][1] == MessageKind.ERROR


def test_the_paper_chosen_is_kept_by_the_theme(area: SheetArea, qtbot: QtBot) -> None:
    assert area.sheet is not None
    assert (area.sheet.paper, area.theme.paper_chosen) == (Paper.A4, "")
    with qtbot.waitSignal(area.theme.changed):
        area.papers.chosen.emit(Paper.LETTER)
    assert area.theme.paper_chosen == "letter"


def test_the_preview_is_larger_and_smaller_by_keys(area: SheetArea, qtbot: QtBot) -> None:
    preview = area.preview
    qtbot.keyClick(preview, Qt.Key.Key_1)
    width = preview.zoom
    qtbot.keyClick(preview, Qt.Key.Key_Plus)
    assert preview.zoom > width
    qtbot.keyClick(preview, Qt.Key.Key_0)
    page = preview.zoom
    assert page < width
    qtbot.keyClick(preview, Qt.Key.Key_Minus)
    assert preview.zoom < page
    for _ in range(20):
        qtbot.keyClick(preview, Qt.Key.Key_Plus)
    assert preview.zoom == 2.0


def test_the_preview_reads_itself_aloud(area: SheetArea) -> None:
    assert "Bench press" in area.preview.accessibleDescription()


def test_a_change_of_the_record_is_shown(
    area: SheetArea, club: Repository, said: list[tuple[str, str]]
) -> None:
    trainee = named(club, "Bow")
    area.record.save("Rename", replace(trainee, name="Bow again"))
    assert area.sheet is not None
    assert area.sheet.title.startswith("Bow again, ")
    area.record.undo_stack.undo()
    assert area.sheet.title.startswith("Bow, ")


def test_the_dialog_for_a_file_proposes_a_name_that_every_system_takes(
    area: SheetArea, qtbot: QtBot, tmp_path: Path
) -> None:
    area.ask_where()
    dialog = area.findChild(QFileDialog)
    assert dialog is not None
    assert Path(dialog.selectedFiles()[0]).name == "Bow 2026-11-26.pdf"
    dialog.fileSelected.emit(str(tmp_path / "chosen.pdf"))
    dialog.reject()
    assert (tmp_path / "chosen.pdf").exists()


def test_today_without_training_shows_the_next_day(qtbot: QtBot, club: Repository) -> None:
    theme = Theme(Scheme.DARK, calm=True)
    record = Record(club)
    area = SheetArea(record, date(2026, 11, 27), theme)
    record.setParent(area)
    theme.setParent(area)
    qtbot.addWidget(area)
    area.show()
    area.show_trainee(id_of(club, "Bow"))
    assert area.day == NEXT_MONDAY


def test_the_group_of_a_day_stands_on_one_sheet(area: SheetArea, qtbot: QtBot) -> None:
    area.show_day(NEXT_MONDAY)
    assert area.sheet is not None
    alone = area.sheet.spoken
    press(qtbot, area, Qt.Key.Key_G, Qt.KeyboardModifier.ControlModifier)
    assert area.grouped
    assert area.sheet is not None
    assert "1 Bow" in area.sheet.spoken
    assert "2 Seat 2" in area.sheet.spoken
    press(qtbot, area, Qt.Key.Key_G, Qt.KeyboardModifier.ControlModifier)
    assert area.sheet is not None
    assert area.sheet.spoken == alone


def test_a_day_on_which_nobody_trains_has_no_sheet_of_a_group(area: SheetArea) -> None:
    area.show_group(True)
    area.show_day(NEXT_MONDAY - DAY)
    assert area.sheet is None
    assert "Nobody is asked anything" in area.empty.why.text()
