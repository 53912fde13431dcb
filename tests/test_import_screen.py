"""The import screen by its keys: read, looked at, asked, taken in as one step, handed back."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from pathlib import Path

import pytest
from PySide6.QtCore import QMimeData, QPoint, QPointF, Qt, QUrl
from PySide6.QtGui import QDragEnterEvent, QDropEvent
from PySide6.QtWidgets import QApplication, QFileDialog, QWidget
from pytestqt.qtbot import QtBot

from db.repository import Repository
from desktop.planning.log_prospect import LEAVE_OUT, Fate
from desktop.training.table_mapping import Role
from tests.scenario import TODAY, closed_club, copy_of
from tests.work_area_scene import Said, area_in_use
from views.export_menu import ExportMenu
from views.file_drop import file_in
from views.gallery import ForgottenSettings
from views.import_area import ImportArea
from views.import_table import READ
from views.main_window import MainWindow
from views.record import MessageKind, Record
from views.theme import Scheme, Theme
from views.work_areas import DESK, IMPORT

pytestmark = pytest.mark.usefixtures("english")

HEADING = "Tag;Wer;Übung;Last;Wdh;Notiz\n"
LOG = HEADING + (
    "24.11.2025;Bow;Back squat;60;3x5;\n"
    "25.11.2025;Bow;Bench press;;5/5/4;slow\n"
    "26.11.2025;Bow;Bench press;45-50;5;\n"
    "26.11.2025;Bow;Sledge push;80;10;\n"
)


@pytest.fixture(scope="module")
def shelved(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return closed_club(tmp_path_factory.mktemp("club"))


@pytest.fixture
def club(shelved: Path, tmp_path: Path) -> Iterator[Repository]:
    with copy_of(shelved, tmp_path) as club:
        yield club


@pytest.fixture
def said() -> Said:
    return []


@pytest.fixture
def area(qtbot: QtBot, club: Repository, said: Said) -> ImportArea:
    made = area_in_use(ImportArea, club, TODAY, said, qtbot)
    made.show_trainee(None)
    return made


def opened(area: ImportArea, tmp_path: Path, text: str = LOG, name: str = "winter.csv") -> Path:
    path = tmp_path / name
    path.write_text(text, encoding="utf-8")
    area.open_file(path)
    return path


def fates(area: ImportArea) -> list[Fate]:
    assert area.prospect is not None
    return [line.fate for line in area.prospect.lines]


def role(area: ImportArea, place: int) -> Role:
    assert area.arriving is not None
    return area.arriving.mapping.roles[place]


def sessions(club: Repository) -> int:
    bow = club.trainee_named("Bow")
    assert bow is not None
    assert bow.id is not None
    return len([s for s in club.sessions(bow.id) if s.day < date(2026, 1, 1)])


def shown(area: ImportArea) -> list[str]:
    model = area.page.table.lines
    return [str(model.index(row, READ).data()) for row in range(model.rowCount())]


def test_the_first_thing_to_do_is_one_key_away(area: ImportArea, qtbot: QtBot) -> None:
    assert area.welcome.choose.hasFocus()
    qtbot.keyClick(area.welcome.choose, Qt.Key.Key_Space)
    dialog = area.findChild(QFileDialog)
    assert dialog is not None
    dialog.reject()


def test_every_line_says_what_becomes_of_it(area: ImportArea, tmp_path: Path) -> None:
    opened(area, tmp_path)
    assert fates(area) == [Fate.TAKEN, Fate.DOUBTFUL, Fate.REFUSED, Fate.REFUSED]
    assert shown(area)[0] == "24/11/2025 · Bow · Back squat · 3 × 5 at 60 kg"
    assert shown(area)[1].startswith("no load: read as none · 25/11/2025")
    assert "range" in shown(area)[2]
    assert area.page.take.text() == "Take in 3 sets"


def test_lines_are_filtered_by_key_and_read_in_full_below(
    area: ImportArea, tmp_path: Path, qtbot: QtBot
) -> None:
    opened(area, tmp_path)
    table = area.page.table
    assert table.hasFocus()
    qtbot.keyClick(table, Qt.Key.Key_R)
    assert len(shown(area)) == 2
    assert area.page.detail.text().startswith("Line 4, × refused: '45-50' is a range")
    qtbot.keyClick(table, Qt.Key.Key_Down)
    assert area.page.detail.text().startswith("Line 5")
    qtbot.keyClick(table, Qt.Key.Key_D)
    assert len(shown(area)) == 1
    qtbot.keyClick(table, Qt.Key.Key_A)
    assert len(shown(area)) == 4


def test_doubtful_lines_are_taken_only_when_the_coach_says_so(
    area: ImportArea, tmp_path: Path, qtbot: QtBot
) -> None:
    opened(area, tmp_path)
    qtbot.keyClick(area.page.table, Qt.Key.Key_T)
    assert area.prospect is not None
    assert area.prospect.sets == 6
    assert fates(area)[1] is Fate.DOUBTFUL
    qtbot.keyClick(area.page.table, Qt.Key.Key_T)
    assert area.page.take.text() == "Take in 3 sets"


def test_a_column_is_given_another_role_by_key(
    area: ImportArea, tmp_path: Path, qtbot: QtBot
) -> None:
    opened(area, tmp_path, LOG.replace("Last", "Foo"))
    choosers = area.page.table.header.choosers
    assert choosers[3].choice is Role.NOTHING
    chooser = choosers[3]
    chooser.setFocus()
    qtbot.keyClicks(chooser, "load")
    chooser.activated.emit(chooser.currentIndex())
    assert area.arriving is not None
    assert area.arriving.mapping.roles[3] is Role.LOAD
    assert "60 kg" in shown(area)[0]
    assert chooser.accessibleName() == "What Foo holds"


def test_a_role_that_may_stand_once_leaves_its_old_column(area: ImportArea, tmp_path: Path) -> None:
    opened(area, tmp_path)
    area.page.table.header.role_chosen.emit(5, Role.DATE)
    assert area.arriving is not None
    assert area.arriving.mapping.roles[0] is Role.NOTHING
    assert area.arriving.mapping.roles[5] is Role.DATE


def test_the_whole_import_is_one_step_of_undo(
    area: ImportArea, tmp_path: Path, club: Repository, qtbot: QtBot
) -> None:
    opened(area, tmp_path)
    qtbot.keyClick(area.page.table, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    assert sessions(club) == 1
    assert "Brought 3 sets in 1 session." in area.done.said.text()
    stack = area.record.undo_stack
    assert stack.count() == 1
    assert stack.undoText() == "Take in winter.csv"
    stack.undo()
    assert sessions(club) == 0
    stack.redo()
    assert sessions(club) == 1
    opened(area, tmp_path)
    assert fates(area)[0] is Fate.THERE


def test_a_name_is_told_and_a_new_exercise_is_made_like_another(
    area: ImportArea, tmp_path: Path, club: Repository, qtbot: QtBot
) -> None:
    opened(area, tmp_path)
    (chooser,) = area.page.names.choosers
    assert chooser.accessibleName() == "What is Sledge push?"
    chooser.setCurrentIndex(chooser.findText("a new exercise, like…"))
    chooser.activated.emit(chooser.currentIndex())
    field = area.page.chooser.field
    assert field.hasFocus()
    qtbot.keyClicks(field, "back squat")
    qtbot.keyClick(field, Qt.Key.Key_Return)
    assert fates(area)[3] is Fate.TAKEN
    qtbot.keyClick(area.page.table, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    made = club.exercise("sledge-push")
    assert made.own
    assert made.pattern == club.exercise("back-squat").pattern
    area.record.undo_stack.undo()
    assert "sledge-push" not in {each.key for each in club.exercises()}


def test_the_nearest_is_taken_for_all_and_a_name_can_be_left_out(
    area: ImportArea, tmp_path: Path, qtbot: QtBot
) -> None:
    opened(area, tmp_path, HEADING + "24.11.2025;Bow;Back squatt;60;5;\n")
    assert fates(area) == [Fate.REFUSED]
    qtbot.keyClick(area.page.table, Qt.Key.Key_F6)
    assert fates(area) == [Fate.TAKEN]
    area.answer("Back squatt", LEAVE_OUT)
    assert fates(area) == [Fate.LEFT_OUT]


def test_a_mapping_is_kept_by_name_and_offered_again(
    area: ImportArea, tmp_path: Path, club: Repository, qtbot: QtBot
) -> None:
    opened(area, tmp_path)
    area.page.table.header.role_chosen.emit(5, Role.NOTHING)
    qtbot.keyClicks(area.page.options.name, "boat house")
    area.take_in()
    assert [each.name for each in club.coach_settings().tables] == ["boat house"]
    opened(area, tmp_path)
    assert area.arriving is not None
    assert area.arriving.mapping.name == "boat house"
    assert role(area, 5) is Role.NOTHING
    kept = area.page.options.kept
    kept.setCurrentIndex(1)
    kept.activated.emit(kept.currentIndex())
    assert role(area, 5) is Role.NOTE


def test_lines_that_are_not_taken_are_handed_back(
    area: ImportArea, tmp_path: Path, said: Said
) -> None:
    opened(area, tmp_path)
    assert area.page.hand_back.isVisible()
    target = tmp_path / "back.csv"
    area.hand_back(target)
    text = target.read_text(encoding="utf-8-sig")
    assert text.count("\n") == 4
    assert "problem" in text.splitlines()[0]
    assert said[-1][0].startswith("3 lines saved")
    area.hand_back(tmp_path / "no" / "where.csv")
    assert said[-1][1] == MessageKind.ERROR.value


def test_whose_lines_they_are_is_the_trainee_chosen(area: ImportArea, tmp_path: Path) -> None:
    bow = area.record.repository.trainee_named("Bow")
    assert bow is not None
    area.show_trainee(bow.id)
    opened(area, tmp_path, "date,exercise,kg,reps\n2025-11-24,Back squat,60,5\n")
    assert area.arriving is not None
    assert area.arriving.mapping.trainee == "Bow"
    assert fates(area) == [Fate.TAKEN]


def test_what_cannot_be_read_is_said_beside_what_can(area: ImportArea, tmp_path: Path) -> None:
    (tmp_path / "photo.csv").write_bytes(b"\x89PNG\r\n\0\0")
    area.open_file(tmp_path / "photo.csv")
    assert "neither text" in area.welcome.wrong.text()
    area.open_file(tmp_path / "gone.csv")
    assert "No such file" in area.welcome.wrong.text()


def test_a_program_is_taken_in_and_out_again(area: ImportArea, club: Repository) -> None:
    folder = Path(__file__).parent.parent / "resources" / "demo"
    missing = folder / "program-first-winter.json"
    area.open_file(missing)
    assert "there is no exercise" in area.parcel_page.wrong.text()
    assert not area.parcel_page.take.isEnabled()


def test_a_long_import_shows_how_far_it_is_and_leaves_nothing_when_cancelled(
    area: ImportArea,
    tmp_path: Path,
    club: Repository,
    qtbot: QtBot,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setattr("views.steps_runner._FIRST_S", 0.0)
    monkeypatch.setattr("views.steps_runner._SLICE_S", 0.001)
    days = [date(2024, 1, 1).fromordinal(date(2024, 1, 1).toordinal() + n) for n in range(300)]
    text = "date,client,exercise,kg,reps\n" + "".join(
        f"{day},Bow,Back squat,60,5\n" for day in days
    )
    opened(area, tmp_path, text)
    qtbot.waitUntil(lambda: area.page.take.isEnabled() and not area.runner.busy)
    before = sessions(club)
    area.take_in()
    assert area.panel.isVisible()
    qtbot.waitUntil(lambda: area.panel.bar.value() > 0)
    qtbot.keyClick(area.panel, Qt.Key.Key_Escape)
    assert not area.panel.isVisible()
    assert sessions(club) == before
    assert area.record.undo_stack.count() == 0
    area.take_in()
    qtbot.waitUntil(lambda: not area.writer.busy, timeout=20_000)
    assert sessions(club) == before + 300


def test_reading_can_be_stopped(
    area: ImportArea, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("views.steps_runner._FIRST_S", 0.0)
    opened(area, tmp_path)
    assert area.runner.busy
    area.page.stop.click()
    assert not area.runner.busy


def test_markup_in_a_file_is_shown_and_never_rendered(area: ImportArea, tmp_path: Path) -> None:
    opened(area, tmp_path, HEADING + "24.11.2025;<b>Bow</b>;<img src=x>;60;5;\n")
    assert area.page.detail.textFormat() is Qt.TextFormat.PlainText
    questions = area.prospect.names if area.prospect else ()
    assert {each.name for each in questions} == {"<b>Bow</b>", "<img src=x>"}


def test_every_control_has_a_name(area: ImportArea, tmp_path: Path) -> None:
    opened(area, tmp_path)
    for widget in area.findChildren(QWidget):
        if widget.isVisibleTo(area) and widget.focusPolicy() & Qt.FocusPolicy.TabFocus:
            assert widget.accessibleName() or widget.metaObject().className() == "QScrollBar", (
                widget.metaObject().className()
            )


# --- the window ---------------------------------------------------------------------------------


@pytest.fixture
def window(qtbot: QtBot, club: Repository) -> MainWindow:
    theme, record = Theme(Scheme.LIGHT, calm=True), Record(club)
    made = MainWindow(record, TODAY, theme, ForgottenSettings())
    record.setParent(made)
    theme.setParent(made)
    qtbot.addWidget(made)
    with qtbot.waitExposed(made):
        made.show()
    made.activateWindow()
    qtbot.waitUntil(made.isActiveWindow)
    return made


def test_ctrl_i_opens_the_import(window: MainWindow, qtbot: QtBot) -> None:
    window.show_area(DESK)
    qtbot.keyClick(window, Qt.Key.Key_I, Qt.KeyboardModifier.ControlModifier)
    assert window.areas.key == IMPORT


def test_a_file_dropped_on_the_window_is_opened(window: MainWindow, tmp_path: Path) -> None:
    path = tmp_path / "winter.csv"
    path.write_text(LOG, encoding="utf-8")
    data = QMimeData()
    data.setUrls([QUrl.fromLocalFile(str(path))])
    copy, left, none = (
        Qt.DropAction.CopyAction, Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier,
    )  # fmt: skip
    QApplication.sendEvent(window, QDragEnterEvent(QPoint(10, 10), copy, data, left, none))
    QApplication.sendEvent(window, QDropEvent(QPointF(10, 10), copy, data, left, none))
    assert isinstance(window.areas.area, ImportArea)
    assert window.areas.area.arriving is not None
    data.setUrls([QUrl("https://example.org/log.csv")])
    assert file_in(data) is None


def test_logs_and_programs_are_exported_from_the_menu(
    window: MainWindow, club: Repository, tmp_path: Path
) -> None:
    bow = club.trainee_named("Bow")
    assert bow is not None
    window.roster.choose(bow.id)
    export: ExportMenu = window.export
    export.menu.aboutToShow.emit()
    texts = [action.text() for action in export.menu.actions() if action.text()]
    assert "Training log of Bow…" in texts
    assert "Training logs of &all…" in texts
    assert "Program Winter strength…" in texts
    export.log_of_one()
    dialog = window.findChild(QFileDialog)
    assert dialog is not None
    assert dialog.selectedFiles()[0].endswith("Training log of Bow.csv")
    dialog.fileSelected.emit(str(tmp_path / "bow.csv"))
    dialog.reject()
    assert "Back squat" in (tmp_path / "bow.csv").read_text(encoding="utf-8-sig")
    export.program(club.programs()[0])
    for dialog in window.findChildren(QFileDialog):
        dialog.fileSelected.emit(str(tmp_path / "program.json"))
        dialog.reject()
    assert "rungwise program" in (tmp_path / "program.json").read_text()
