"""The application put together: files, backups, notices, and a log without names."""

from __future__ import annotations

import logging
from collections.abc import Iterator
from datetime import date
from pathlib import Path

import pytest
from pytestqt.qtbot import QtBot

from desktop import paths
from desktop.__main__ import _window_wanted
from desktop.application import Desk
from desktop.log import QuietFormatter, start_log
from desktop.settings import Settings
from desktop.training.trainee import Trainee
from views.notice import Notice
from views.theme import Theme


@pytest.fixture
def desk(qtbot: QtBot, home: Path) -> Iterator[Desk]:
    made = Desk(Settings(paths.config_folder() / "settings.ini"), Theme(calm=True))
    yield made
    made.close()


@pytest.mark.parametrize(
    ("given", "window"),
    [
        ([], True),
        (["--database", "club.db"], True),
        (["--database=club.db"], True),
        (["roster"], False),
        (["--help"], False),
        (["--database", "club.db", "roster"], False),
    ],
)
def test_a_window_opens_where_no_verb_is_given(given: list[str], window: bool) -> None:
    assert _window_wanted(given)[0] is window


def test_a_new_file_opens_with_the_catalogue_and_is_backed_up_on_closing(desk: Desk) -> None:
    path = paths.default_data_file()
    assert desk.open(path)
    assert desk.window is not None
    assert desk.record is not None
    assert desk.record.repository.exercises()
    desk.close()
    assert (paths.backup_folder() / f"rungwise-{date.today().isoformat()}.db").exists()


def test_the_demo_opens_in_a_file_of_its_own(desk: Desk) -> None:
    assert desk.open(paths.default_data_file())
    assert desk.window is not None
    desk.window.demo_wanted.emit()
    assert desk.record is not None
    assert len(desk.record.repository.trainees()) >= 6
    assert desk.record.repository.database.path == paths.data_folder() / "demo.db"


def test_a_file_that_is_not_ours_is_refused_in_words_and_the_open_one_stays(
    desk: Desk, home: Path
) -> None:
    assert desk.open(paths.default_data_file())
    stranger = home / "stranger.db"
    stranger.write_text("not a data file of any kind, but long enough to have a header " * 20)
    before = desk.window
    assert not desk.open(stranger)
    assert isinstance(desk.notice, Notice)
    assert desk.window is before


def test_the_unexpected_is_logged_without_names_and_told_once(
    desk: Desk, home: Path, caplog: pytest.LogCaptureFixture
) -> None:
    desk.open(paths.default_data_file())
    for _ in range(2):
        try:
            raise ValueError("Bow has an ache")
        except ValueError as error:
            desk.unexpected(ValueError, error, error.__traceback__)
    assert desk.notice is not None
    assert desk.notice.isVisible()
    written = "".join(QuietFormatter().format(record) for record in caplog.records)
    assert "ValueError" in written
    assert "Bow" not in written
    desk.notice.close()


def test_the_log_holds_types_and_places_alone(home: Path) -> None:
    root = logging.getLogger()
    before = root.handlers[:], root.level
    try:
        path = start_log(paths.log_folder())
        try:
            raise KeyError("Bow")
        except KeyError:
            logging.getLogger("rungwise").info("unexpected", exc_info=True)
        text = path.read_text(encoding="utf-8")
    finally:
        for handler in root.handlers[:]:
            if handler not in before[0]:
                root.removeHandler(handler)
                handler.close()
        root.setLevel(before[1])
    assert "KeyError" in text
    assert "test_application.py" in text
    assert "Bow" not in text


def test_what_another_process_writes_appears_in_the_window(desk: Desk) -> None:
    from db.database import Database
    from db.repository import Repository

    path = paths.default_data_file()
    assert desk.open(path)
    other = Database.open(path)
    Repository(other).save(Trainee("Sculler"))
    other.close()
    desk.look_elsewhere()
    assert desk.window is not None
    assert [entry.trainee.name for entry in desk.window.roster.model.shown] == ["Sculler"]
