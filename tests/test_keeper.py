"""Who gets in, by the window: passphrase, lock and erasing, with real keys and real files."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import closing
from datetime import date
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from db import cipher
from db.backup import back_up_on_closing
from db.database import Database
from db.repository import Repository
from desktop import paths
from desktop.application import Desk
from desktop.planning.session_draft import Field
from desktop.settings import Settings
from desktop.training.trainee import Trainee
from views.erase_question import EraseQuestion
from views.lock_panel import IdleWatch, LockPanel
from views.passphrase import PassphraseChange, PassphraseQuestion
from views.session_form import SessionForm
from views.theme import Theme
from views.work_areas import SESSION

SECRET = "three wet oars"
NAME = "Zoe <b>Quillington</b>"
TODAY = date(2026, 3, 2)


@pytest.fixture
def desk(qtbot: QtBot, home: Path) -> Iterator[Desk]:
    """The window over a file of one trainee, with a backup."""
    path = paths.default_data_file()
    with closing(Database.open(path)) as database:
        Repository(database).save(Trainee(NAME, notes="torn meniscus"))
        back_up_on_closing(database, paths.backups_of(path), TODAY)
    made = Desk(Settings(paths.config_folder() / "settings.ini"), Theme(calm=True))
    assert made.open(path)
    yield made
    made.close()


@pytest.fixture
def quick_keys() -> Iterator[None]:
    pytest.importorskip("sqlcipher3")
    with closing(cipher.library().connect(":memory:")) as connection:
        connection.execute("PRAGMA cipher_default_kdf_iter = 1000")
    yield
    with closing(cipher.library().connect(":memory:")) as connection:
        connection.execute("PRAGMA cipher_default_kdf_iter = 256000")


def wish(desk: Desk, what: str) -> None:
    assert desk.window is not None
    desk.window.keeping_wanted.emit(what)


def set_passphrase(qtbot: QtBot, desk: Desk, text: str) -> None:
    wish(desk, "passphrase")
    change = desk.keeper.question
    assert isinstance(change, PassphraseChange)
    qtbot.keyClicks(change.first, text)
    qtbot.keyClicks(change.second, text)
    qtbot.keyClick(change.second, Qt.Key.Key_Return)


def names(desk: Desk) -> list[str]:
    assert desk.record is not None
    return [one.name for one in desk.record.repository.trainees()]


def test_a_passphrase_is_set_and_asked_for_at_the_next_opening(
    qtbot: QtBot, desk: Desk, quick_keys: None
) -> None:
    path = paths.default_data_file()
    set_passphrase(qtbot, desk, SECRET)
    assert names(desk) == [NAME], "open again at once"
    desk.close()
    assert not any(b"meniscus" in file.read_bytes() for file in path.parent.rglob("*.db*"))
    assert not desk.open(path)
    question = desk.keeper.question
    assert isinstance(question, PassphraseQuestion)
    qtbot.keyClicks(question.field, "something else")
    qtbot.keyClick(question.field, Qt.Key.Key_Return)
    again = desk.keeper.question
    assert isinstance(again, PassphraseQuestion)
    assert again is not question
    assert desk.record is None
    qtbot.keyClicks(again.field, SECRET)
    qtbot.keyClick(again.field, Qt.Key.Key_Return)
    assert names(desk) == [NAME]
    wish(desk, "passphrase")
    change = desk.keeper.question
    assert isinstance(change, PassphraseChange)
    change.remove_button.click()
    assert names(desk) == [NAME]
    assert path.read_bytes().startswith(cipher.MAGIC)


def test_two_different_or_short_passphrases_are_not_taken(qtbot: QtBot, desk: Desk) -> None:
    change = PassphraseChange(Theme(calm=True), there=False)
    qtbot.addWidget(change)
    change.show()
    assert change.remove_button.isHidden()
    with qtbot.assertNotEmitted(change.wanted):
        qtbot.keyClicks(change.first, "short")
        qtbot.keyClick(change.first, Qt.Key.Key_Return)
        assert "At least 8" in change.why_not.text()
        qtbot.keyClicks(change.first, "er than that")
        qtbot.keyClick(change.first, Qt.Key.Key_Return)
    assert change.why_not.text() == "The two are not the same."
    assert change.first.echoMode() is change.first.EchoMode.Password


# The lock


def test_while_locked_nothing_can_be_seen_or_done(
    qtbot: QtBot, desk: Desk, quick_keys: None
) -> None:
    set_passphrase(qtbot, desk, SECRET)
    window = desk.window
    assert window is not None
    with qtbot.waitExposed(window):
        window.show()
    area = window.areas.key
    wish(desk, "lock")
    panel = desk.keeper.lock_panel
    assert isinstance(panel, LockPanel)
    assert panel.size() == window.size()
    content = window.centralWidget()
    assert content is not None
    assert content.isHidden()
    for key in (Qt.Key.Key_N, Qt.Key.Key_2, Qt.Key.Key_O, Qt.Key.Key_B, Qt.Key.Key_Z):
        qtbot.keyClick(window, key, Qt.KeyboardModifier.ControlModifier)
        qtbot.keyClick(panel.field, key, Qt.KeyboardModifier.ControlModifier)
    assert window.areas.key == area
    assert not [w for w in QApplication.topLevelWidgets() if w.isVisible() and w is not window]
    panel.field.clear()
    qtbot.keyClicks(panel.field, "wrong")
    qtbot.keyClick(panel.field, Qt.Key.Key_Return)
    assert panel.why_not.text() == "That is not the passphrase."
    assert content.isHidden()
    qtbot.keyClicks(panel.field, SECRET)
    qtbot.keyClick(panel.field, Qt.Key.Key_Return)
    assert content.isVisible()
    assert window.menuBar().isEnabled()
    assert desk.keeper.lock_panel is None
    qtbot.keyClick(window, Qt.Key.Key_N, Qt.KeyboardModifier.ControlModifier)
    assert window.areas.key != area


def test_without_a_passphrase_the_lock_says_that_it_only_hides(qtbot: QtBot, desk: Desk) -> None:
    from views.blocks import Label

    wish(desk, "lock")
    panel = desk.keeper.lock_panel
    assert panel is not None
    assert any("only hidden" in label.text() for label in panel.findChildren(Label))
    assert panel.field.isHidden()
    panel.go_on.click()
    assert desk.keeper.lock_panel is None


def test_the_window_is_locked_after_idle_minutes_and_typing_puts_it_off(qtbot: QtBot) -> None:
    from PySide6.QtWidgets import QLineEdit

    field = QLineEdit()
    qtbot.addWidget(field)
    field.show()
    watch = IdleWatch()
    with qtbot.assertNotEmitted(watch.idle):
        watch.wait(0.01)  # 600 ms
        for _ in range(4):
            qtbot.wait(250)
            qtbot.keyClick(field, Qt.Key.Key_A)
    with qtbot.waitSignal(watch.idle, timeout=2_000):
        pass
    watch.wait(0)


def test_the_idle_minutes_are_remembered_and_ticked(desk: Desk) -> None:
    wish(desk, "lock after 15")
    assert Settings(paths.config_folder() / "settings.ini").lock_minutes == 15
    wish(desk, "lock after 0")
    assert Settings(paths.config_folder() / "settings.ini").lock_minutes == 0


# Erasing


def test_erasing_needs_the_name_typed_and_leaves_nothing(qtbot: QtBot, desk: Desk) -> None:
    path = paths.default_data_file()
    assert desk.record is not None
    assert desk.window is not None
    desk.record.save("Add", Trainee("Bo"))
    desk.window.roster.choose(1)
    wish(desk, "erase")
    question = desk.keeper.question
    assert isinstance(question, EraseQuestion)
    qtbot.keyClicks(question.field, "Bo")
    assert not question.erase.isEnabled()
    question.field.clear()
    qtbot.keyClicks(question.field, NAME)
    question.erase.click()
    assert names(desk) == ["Bo"]
    assert desk.record is not None
    assert not desk.record.undo_stack.canUndo()
    desk.close()
    files = [file for file in path.parent.parent.rglob("*") if file.is_file()]
    assert len(files) > 3
    assert not [file for file in files if b"Quillington" in file.read_bytes()]
    assert not [file for file in files if b"meniscus" in file.read_bytes()]


def test_what_was_being_typed_of_somebody_erased_is_nowhere(qtbot: QtBot, desk: Desk) -> None:
    assert desk.record is not None
    assert desk.window is not None
    desk.record.save("Add", Trainee("Bo"))
    desk.window.roster.choose(1)
    desk.window.show_area(SESSION)
    form = desk.window.areas.area
    assert isinstance(form, SessionForm)
    qtbot.keyClicks(form.typing.foot.fields[Field.NOTE], "ache of Quillington")
    desk.window.areas.leave()
    path = paths.default_data_file()
    holding = [file.name for file in path.parent.iterdir() if b"ache of" in contents(file)]
    assert holding  # the draft is in the file, before anything was saved
    wish(desk, "erase")
    question = desk.keeper.question
    assert isinstance(question, EraseQuestion)
    qtbot.keyClicks(question.field, NAME)
    question.erase.click()
    assert names(desk) == ["Bo"]
    desk.close()
    files = [file for file in path.parent.parent.rglob("*") if file.is_file()]
    assert [file for file in files if b"Quillington" in contents(file)] == []


def contents(file: Path) -> bytes:
    return file.read_bytes() if file.is_file() else b""


def test_with_nobody_chosen_nothing_is_asked(desk: Desk) -> None:
    assert desk.window is not None
    desk.window.roster.choose(None)
    wish(desk, "erase")
    assert desk.keeper.question is None
