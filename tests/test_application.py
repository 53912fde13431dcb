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
from desktop.training.quantities import Unit
from desktop.training.trainee import Trainee
from views.desk_overview import DeskOverview
from views.import_area import ImportArea
from views.notice import Notice
from views.theme import Theme
from views.trainee_form import TraineeForm


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
        (["winter.rungwise.json"], True),
        (["--database", "club.db", "winter.json"], True),
        (["-winter.json"], False),
    ],
)
def test_a_window_opens_where_no_verb_is_given(given: list[str], window: bool) -> None:
    assert _window_wanted(given)[0] is window


def test_a_file_named_at_the_start_is_the_data_file_or_one_to_bring_in() -> None:
    assert _window_wanted(["club.db"]) == (True, Path("club.db"), None)
    both = _window_wanted(["--database", "club.db", "winter.json"])
    assert both == (True, Path("club.db"), Path("winter.json"))


@pytest.mark.parametrize("first_sight", [False, True])
def test_a_program_file_opens_where_files_are_brought_in(
    desk: Desk, qtbot: QtBot, first_sight: bool
) -> None:
    path = paths.default_data_file()
    if first_sight:
        desk.open(path)
        desk.close()
    assert desk.start(path)
    desk.bring_in(Path("resources/programs/two-days-dumbbells.json").absolute())
    assert desk.window is not None
    window = desk.window
    qtbot.waitUntil(lambda: window.areas.key == "import")
    area = window.areas.area
    assert isinstance(area, ImportArea)
    qtbot.waitUntil(lambda: area.parcel is not None)


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
    assert [line.name for line in desk.window.roster.model.shown] == ["Sculler"]


def test_the_next_start_stands_where_the_last_one_ended(desk: Desk, qtbot: QtBot) -> None:
    path = paths.default_data_file()
    assert desk.open(path)
    assert desk.window is not None
    assert desk.record is not None
    desk.record.save("two people", Trainee("Bow"), Trainee("Stroke"))
    stroke = desk.record.repository.trainees()[-1].id
    desk.window.resize(790, 703)
    desk.window.roster.choose(stroke)
    desk.window.show_area("past")
    desk.close()

    again = Desk(Settings(paths.config_folder() / "settings.ini"), Theme(calm=True))
    try:
        assert again.start(path)
        assert again.window is not None
        assert (again.window.width(), again.window.height()) == (790, 703)
        assert again.window.roster.trainee_id == stroke
        assert again.window.areas.key == "past"
        again.window.show_area("desk")
        again.close()
        assert again.start(path)
        assert again.window.areas.key == "desk"
        qtbot.waitUntil(lambda: again.record is not None and again.record.attached)
        assert again.window.roster.trainee_id == stroke
    finally:
        again.close()


def test_a_chart_that_stood_there_last_comes_before_the_roster_is_read(
    desk: Desk, qtbot: QtBot
) -> None:
    path = paths.default_data_file()
    assert desk.open(path)
    assert desk.window is not None
    assert desk.record is not None
    desk.record.save("somebody", Trainee("Bow"))
    bow = desk.record.repository.trainees()[-1].id
    desk.window.roster.choose(bow)
    desk.window.show_area("progress")
    desk.close()

    again = Desk(Settings(paths.config_folder() / "settings.ini"), Theme(calm=True))
    try:
        assert again.start(path)
        assert again.window is not None
        assert again.record is not None
        assert again.window.area_waiting == "progress"
        assert again.window.roster.known == {bow}
        assert not again.record.reads_roster
        qtbot.waitUntil(lambda: again.window is not None and again.window.areas.key == "progress")
        assert again.window.roster.trainee_id == bow
        qtbot.waitUntil(lambda: again.record is not None and again.record.roster_complete)
        assert again.window.areas.key == "progress"
    finally:
        again.close()


def test_the_first_start_offers_the_unit_and_somebody_new_has_it(desk: Desk) -> None:
    assert desk.open(paths.default_data_file())
    assert desk.window is not None
    assert desk.record is not None
    area = desk.window.areas.area
    assert isinstance(area, DeskOverview)
    assert area.first_steps.unit.code == "kg"
    area.first_steps.unit.chosen.emit("lb")
    assert desk.record.repository.coach_settings().unit is Unit.LB
    assert area.first_steps.unit.code == "lb"
    desk.window.add_trainee()
    form = desk.window.areas.area
    assert isinstance(form, TraineeForm)
    assert form.person.unit.currentData() == "lb"


def test_what_goes_wrong_with_the_data_leaves_no_name_in_the_log(
    desk: Desk, home: Path, caplog: pytest.LogCaptureFixture
) -> None:
    from PySide6.QtWidgets import QPlainTextEdit

    from db.errors import StoreError

    root = logging.getLogger()
    before = root.handlers[:], root.level
    try:
        path = start_log(paths.log_folder())
        assert desk.open(paths.default_data_file())
        assert desk.record is not None
        store = desk.record.repository
        desk.record.save("Add", Trainee("Quillington", notes="torn meniscus"))
        for act in (
            lambda: store.save(Trainee("Quillington")),
            lambda: int("Quillington"),
            lambda: ["torn meniscus"].index("Quillington"),
        ):
            try:
                act()
            except (StoreError, ValueError) as error:
                desk.unexpected(type(error), error, error.__traceback__)
        written = path.read_text(encoding="utf-8")
        assert desk.notice is not None
        report = desk.notice.findChildren(QPlainTextEdit)[0].toPlainText()
    finally:
        for handler in root.handlers[:]:
            if handler not in before[0]:
                root.removeHandler(handler)
                handler.close()
        root.setLevel(before[1])
    desk.notice.close()
    assert "ValueError" in written
    assert "ValueError" in report
    for text in (written, report):
        assert "Quillington" not in text
        assert "meniscus" not in text
