"""The panel of backups, and the way back through the window."""

from __future__ import annotations

import os
from collections.abc import Iterator
from datetime import date, timedelta
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel
from pytestqt.qtbot import QtBot

from db.backup import back_up_on_closing
from db.database import Database
from db.repository import Repository
from desktop import paths
from desktop.application import Desk
from desktop.planning.safe_keeping import Contents, Difference, Preview, SafeKeeping
from desktop.settings import Settings
from desktop.training.session import Session
from desktop.training.trainee import Trainee
from views.safe_keeping import SafeKeepingPanel, changes_text, contents_text
from views.theme import Theme

TODAY = date(2026, 3, 2)


@pytest.fixture
def keeping(tmp_path: Path) -> SafeKeeping:
    """Two backups: of one session, of two; by now there are three, and Ada."""
    made = SafeKeeping(tmp_path / "club.db", tmp_path / "backups")
    database = Database.open(made.path)
    repository = Repository(database)
    (zoe,) = repository.save(Trainee("<b>Zoë</b>")).saved
    for number in range(3):
        repository.save(Session(zoe.id, TODAY + timedelta(days=number)))
        if number < 2:
            back_up_on_closing(database, made.folder, TODAY + timedelta(days=number))
    repository.save(Trainee("Ada"))
    database.close()
    return made


def test_the_panel_tells_of_each_backup_what_it_would_change(
    qtbot: QtBot, english: None, keeping: SafeKeeping
) -> None:
    panel = SafeKeepingPanel(Theme(calm=True), keeping, TODAY)
    qtbot.addWidget(panel)
    panel.show()
    assert [panel.list.item(row).text()[:10] for row in range(2)] == ["03/03/2026", "02/03/2026"]
    assert panel.then.text() == "In it: 1 trainee, 2 sessions, the last of Tue 3 Mar."
    assert panel.changes.text().splitlines() == [
        "Going back to it would change:",
        "<b>Zoë</b>: 1 session lost",
        "Ada: 1 other fact goes, comes back or changes",
    ]
    assert panel.changes.textFormat() is Qt.TextFormat.PlainText
    qtbot.keyClick(panel.list, Qt.Key.Key_Down)
    assert "2 sessions lost" in panel.changes.text()
    with qtbot.waitSignal(panel.restore_wanted) as wanted:
        panel.go_back.click()
    assert wanted.args[0].day == TODAY
    assert panel.isHidden()


def test_a_bad_backup_is_said_and_cannot_be_taken(
    qtbot: QtBot, english: None, keeping: SafeKeeping
) -> None:
    newest = keeping.backups()[0]
    newest.path.write_bytes(newest.path.read_bytes()[:9_000])
    panel = SafeKeepingPanel(Theme(calm=True), keeping, TODAY)
    qtbot.addWidget(panel)
    assert "damaged" in panel.then.text()
    assert not panel.go_back.isEnabled()
    panel.list.setCurrentRow(1)
    assert panel.go_back.isEnabled()


def test_with_trouble_the_newest_good_backup_is_chosen(
    qtbot: QtBot, english: None, keeping: SafeKeeping
) -> None:
    newest = keeping.backups()[0]
    newest.path.write_bytes(bytes(9_000))
    panel = SafeKeepingPanel(Theme(calm=True), keeping, TODAY, "club.db is damaged.")
    qtbot.addWidget(panel)
    assert panel.list.currentRow() == 1
    said = [label.text() for label in panel.findChildren(QLabel)]
    assert "club.db is damaged." in said


def test_without_a_backup_it_says_so(qtbot: QtBot, tmp_path: Path) -> None:
    panel = SafeKeepingPanel(
        Theme(calm=True), SafeKeeping(tmp_path / "x.db", tmp_path / "b"), TODAY
    )
    qtbot.addWidget(panel)
    assert panel.then.text() == "There is no backup yet."
    assert not panel.go_back.isEnabled()


def test_the_words_of_a_preview(english: None) -> None:
    nothing = Contents(0, 0, None)
    assert contents_text(nothing, TODAY) == "In it: 0 trainees, 0 sessions."
    assert "cannot be compared" in changes_text(Preview(nothing))
    assert changes_text(Preview(nothing, nothing)) == "It holds the same as the present file."
    all_of_it = Difference("Zoë", 1, 2, 3, 1, 1, 2)
    assert changes_text(Preview(nothing, nothing, (all_of_it,), True)).splitlines()[1:] == [
        "Zoë: 1 session lost; 2 sessions come back; 3 sessions as they were before;"
        " 4 other facts go, come back or change",
        "Programs change back.",
    ]


# Through the window


@pytest.fixture
def desk(qtbot: QtBot, home: Path) -> Iterator[Desk]:
    made = Desk(Settings(paths.config_folder() / "settings.ini"), Theme(calm=True))
    yield made
    if made.keeper.panel is not None:
        made.keeper.panel.close()
    made.close()


def test_going_back_keeps_what_was_there_and_shows_what_came_back(desk: Desk) -> None:
    path = paths.default_data_file()
    assert desk.open(path)
    assert desk.record is not None
    assert desk.window is not None
    desk.record.save("Add", Trainee("Zoë"))
    back_up_on_closing(desk.record.repository.database, paths.backups_of(path), TODAY)
    desk.record.save("Add", Trainee("Eve"))
    desk.window.keeping_wanted.emit("backups")
    assert desk.keeper.panel is not None
    assert desk.keeper.panel.isVisible()
    desk.keeper.panel.go_back.click()
    assert [one.name for one in desk.record.repository.trainees()] == ["Zoë"]
    assert not desk.record.undo_stack.canUndo()
    assert len(list(path.parent.glob("*.before-restoring-*.db"))) == 1


def test_a_damaged_file_is_opened_with_the_offer_of_a_backup(desk: Desk) -> None:
    path = paths.default_data_file()
    database = Database.open(path)
    Repository(database).save(*(Trainee(f"Trainee {n}", notes="n" * 900) for n in range(40)))
    back_up_on_closing(database, paths.backups_of(path), TODAY)
    database.close()
    os.truncate(path, 9_000)
    assert not desk.open(path)
    assert desk.notice is None
    assert desk.keeper.panel is not None
    desk.keeper.panel.go_back.click()
    assert desk.record is not None
    assert len(desk.record.repository.trainees()) == 40
    (kept,) = path.parent.glob("*.damaged-*.db")
    assert kept.stat().st_size == 9_000
