"""A program editor in a window, and real keys for it; shared by the tests of the editor."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from datetime import date
from pathlib import Path

from PySide6.QtWidgets import QApplication, QMainWindow, QWidget
from pytestqt.qtbot import QtBot

from db.database import Database
from db.repository import Repository
from desktop.catalogue import load_catalogue
from desktop.training.program import Program, Slot
from desktop.training.program_edits import SlotPlace, slot_at
from desktop.training.quantities import Unit
from desktop.training.trainee import Trainee
from tests.keyboard import press, type_in
from views.program_editor import ProgramEditor
from views.program_page import ProgramPage
from views.record import Record
from views.theme import Theme
from views.weeks_page import WeeksPage

TODAY = date(2026, 11, 26)  # a Thursday


@contextmanager
def stored(folder: Path) -> Iterator[Record]:
    """A record with the catalogue and two trainees, one in pounds."""
    repository = Repository(Database.open(folder / "rungwise.db"))
    repository.sync_catalogue(load_catalogue())
    repository.save(Trainee("Bow", unit=Unit.KG, weekdays=(0, 3)), Trainee("Cox", unit=Unit.LB))
    yield Record(repository)
    repository.database.close()


@contextmanager
def shown(record: Record, qtbot: QtBot) -> Iterator[ProgramEditor]:
    """The editor in an active window, on its empty shelf."""
    area = ProgramEditor(record, TODAY, Theme(calm=True))
    window = in_window(area, qtbot)
    area.show_trainee(None)
    area.shelf.take_focus()
    yield area
    window.close()


def in_window(area: QWidget, qtbot: QtBot) -> QMainWindow:
    """A work area in an active window as large as it usually is."""
    window = QMainWindow()
    window.setCentralWidget(area)
    window.resize(1064, 760)
    qtbot.addWidget(window)
    with qtbot.waitActive(window):
        window.show()
        window.activateWindow()
    return window


def page_of(editor: ProgramEditor) -> ProgramPage:
    assert editor.page is not None
    return editor.page


def weeks_of(editor: ProgramEditor) -> WeeksPage:
    """The weeks ahead, once they are computed."""
    while editor.weeks.working:
        QApplication.processEvents()
    assert editor.weeks.page is not None
    return editor.weeks.page


def program_of(editor: ProgramEditor) -> Program:
    assert editor.program is not None
    return editor.program


def slots_of(editor: ProgramEditor, day: int = 0, phase: int = 0) -> list[str]:
    return [slot.exercise for slot in program_of(editor).phases[phase].days[day].slots]


def slot(editor: ProgramEditor, day: int, place: int) -> Slot:
    return slot_at(program_of(editor), SlotPlace(0, day, place))


def type_program(editor: ProgramEditor) -> None:
    """Two days with three slots each, without a mouse."""
    press("Ctrl+Shift+N")
    type_in("Winter strength")
    press("Return")
    for line in ("back squat 3x6-9 60", "bench press 3x8-12 40", "bent over row 3x8-12 35"):
        type_in(line)
        press("Return")
    press("Ctrl+Shift+D")
    for line in ("deadlift 3x5-8 80", "overhead press 3x6-10 25", "plank 3x20-60s"):
        type_in(line)
        press("Return")
