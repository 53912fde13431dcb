"""Moving to another computer by the window: everything out as one file, and in again."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import closing
from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from db.database import Database
from db.everything import read_everything, read_file, write_file
from db.files import UNFINISHED
from db.repository import Repository
from db.steps import finished
from desktop import paths
from desktop.application import Desk
from desktop.planning.everything_files import arriving, leave, writing_everything
from desktop.settings import Settings
from desktop.training.trainee import Trainee
from tests.scenario import open_club
from views.theme import Theme
from views.work_areas import IMPORT

TODAY = date(2026, 3, 2)

pytestmark = pytest.mark.usefixtures("english")


@pytest.fixture(scope="module")
def whole(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Everything of another computer, as a file."""
    folder = tmp_path_factory.mktemp("elsewhere")
    repository = open_club(folder, weeks=1)
    with closing(repository.database):
        write_file(read_everything(repository.database), folder / "everything.json")
    return folder / "everything.json"


@pytest.fixture
def desk(qtbot: QtBot, home: Path) -> Iterator[Desk]:
    """The window over a file of one trainee."""
    path = paths.default_data_file()
    with closing(Database.open(path)) as database:
        Repository(database).save(Trainee("Sculler"))
    made = Desk(Settings(paths.config_folder() / "settings.ini"), Theme(calm=True))
    assert made.open(path)
    yield made
    made.close()


def names(desk: Desk) -> list[str]:
    assert desk.record is not None
    return [one.name for one in desk.record.repository.trainees()]


def looked_at(qtbot: QtBot, desk: Desk, source: Path) -> None:
    assert desk.window is not None
    desk.window.bring_in(source)
    qtbot.waitUntil(lambda: desk.keeper.moving is not None, timeout=5000)
    qtbot.waitUntil(
        lambda: desk.keeper.moving is not None and desk.keeper.moving.panel is not None,
        timeout=20000,
    )


def unfinished(folder: Path) -> list[str]:
    return [path.name for path in folder.iterdir() if UNFINISHED in path.name]


def test_everything_is_taken_over_after_a_look_and_what_was_there_is_kept(
    qtbot: QtBot, desk: Desk, whole: Path
) -> None:
    path = paths.default_data_file()
    looked_at(qtbot, desk, whole)
    assert desk.keeper.moving is not None
    panel = desk.keeper.moving.panel
    assert panel is not None
    said = panel.change.text().splitlines()
    assert len(said) == 6
    assert said[0].startswith("Bow comes in: 2 sessions, the last of ")
    assert "Sculler goes: no session" in said
    assert names(desk) == ["Sculler"]
    qtbot.keyClick(panel.take, Qt.Key.Key_Return)
    assert names(desk) == ["Bow", "Cox", "Seat 2", "Seat 3", "Stroke"]
    assert desk.window is not None
    assert desk.window.status.text.startswith("Everything is taken over")
    (kept,) = path.parent.glob("*.before-restoring-*.db")
    with closing(Database.open(kept)) as database:
        assert [one.name for one in Repository(database).trainees()] == ["Sculler"]
    assert unfinished(path.parent) == []
    assert desk.record is not None
    there = read_everything(desk.record.repository.database)
    wanted = read_file(whole)
    assert replace(there, exercises=()) == replace(wanted, exercises=())


def test_what_was_only_looked_at_leaves_nothing(qtbot: QtBot, desk: Desk, whole: Path) -> None:
    folder = paths.default_data_file().parent
    looked_at(qtbot, desk, whole)
    assert desk.keeper.moving is not None
    panel = desk.keeper.moving.panel
    assert panel is not None
    assert unfinished(folder)
    qtbot.keyClick(panel, Qt.Key.Key_Escape)
    assert unfinished(folder) == []
    assert names(desk) == ["Sculler"]
    looked_at(qtbot, desk, whole)
    desk.close()
    assert unfinished(folder) == []


def test_a_file_that_holds_no_such_thing_is_said_to_and_changes_nothing(
    qtbot: QtBot, desk: Desk, tmp_path: Path
) -> None:
    strange = tmp_path / "strange.json"
    strange.write_text('{"schema": "rungwise everything", "version": 1, "trainees": [{"x": 1}]}')
    assert desk.window is not None
    desk.window.bring_in(strange)
    qtbot.waitUntil(lambda: "strange.json" in desk.window.status.text, timeout=5000)  # type: ignore[union-attr]
    assert desk.window.areas.key == IMPORT
    assert names(desk) == ["Sculler"]
    assert unfinished(paths.default_data_file().parent) == []


def test_everything_is_written_from_the_menu_and_reads_back_the_same(
    qtbot: QtBot, desk: Desk, tmp_path: Path
) -> None:
    assert desk.window is not None
    assert desk.record is not None
    export = desk.window.export
    export.menu.aboutToShow.emit()
    texts = [action.text() for action in export.menu.actions()]
    assert "&Everything, for another computer…" in texts
    out = tmp_path / "out.json"
    export.write_everything(out)
    qtbot.waitUntil(out.exists, timeout=5000)
    assert read_file(out) == read_everything(desk.record.repository.database)
    assert desk.window.status.text.startswith("1 trainee and 0 sessions saved")
    export.write_everything(tmp_path / "no folder" / "out.json")
    assert desk.window.status.text.startswith("Error: ")


def test_a_person_is_given_all_about_them_and_nothing_of_others(
    qtbot: QtBot, desk: Desk, tmp_path: Path
) -> None:
    assert desk.window is not None
    assert desk.record is not None
    desk.record.save("Add", Trainee("Bow / <b>stern</b>"))
    desk.window.menus.give_wanted.emit()
    assert desk.window.status.text == "Choose a trainee first."
    bow = desk.record.repository.trainee_named("Bow / <b>stern</b>")
    assert bow is not None
    desk.window.roster.choose(bow.id)
    desk.window.export.menu.aboutToShow.emit()
    texts = [action.text() for action in desk.window.export.menu.actions()]
    assert "For Bow / <b>stern</b>: all that is kept…" in texts
    desk.window.export.give(bow, tmp_path)
    (folder,) = (each for each in tmp_path.iterdir() if each.name.startswith("Bow"))
    assert sorted(each.name for each in folder.iterdir()) == ["everything.json", "training-log.csv"]
    assert [one.name for one in read_file(folder / "everything.json").trainees] == [bow.name]
    assert b"Sculler" not in b"".join(each.read_bytes() for each in folder.iterdir())


def test_given_up_half_way_nothing_is_left(whole: Path, tmp_path: Path) -> None:
    path = tmp_path / "club.db"
    with closing(Database.open(path)) as database:
        Repository(database).save(Trainee("Sculler"))
    work = arriving(whole, path, "")
    assert 0 <= next(work) < 1
    assert unfinished(tmp_path)
    work.close()
    assert unfinished(tmp_path) == []
    taking = finished(arriving(whole, path, ""))
    leave(taking)
    assert unfinished(tmp_path) == []
    out = tmp_path / "out.json"
    writing = writing_everything(path, "", out)
    shares = [next(writing), next(writing)]
    assert shares == sorted(shares)
    writing.close()
    assert not out.exists()
    assert unfinished(tmp_path) == []
