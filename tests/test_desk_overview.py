"""The desk: everybody in one table, walked by keys, from what is kept."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest
from PySide6.QtCore import QPersistentModelIndex, QPoint, QRectF, Qt
from PySide6.QtGui import QAccessible
from pytestqt.modeltest import ModelTester
from pytestqt.qtbot import QtBot

from db.database import Database
from db.first_look import Glimpse, first_look
from db.repository import Repository
from desktop.planning.briefs import build_mark
from desktop.planning.desk import DeskRow, row_of
from desktop.planning.history import read_library, shipped_limits
from desktop.training.brief import GoalBrief, Spark, SparkKind
from desktop.training.quantities import Unit
from desktop.training.trainee import GoalKind, Trainee
from tests.scenario import TODAY, open_club
from views.desk_cells import cells_of, rank_of
from views.desk_columns import NOTHING, Cells, Column
from views.desk_model import DeskModel, Shown
from views.desk_order import order_of
from views.desk_overview import DeskOverview
from views.desk_table import GIVE_WAY
from views.desk_words import desk_cells
from views.gallery import ForgottenSettings
from views.load_area import LoadArea
from views.main_window import MainWindow
from views.record import Record
from views.spark_line import spark_points
from views.theme import Scheme, Theme
from views.work_areas import CAUTION, DELOAD, DESK, PROGRESS, SESSION, SHEET, TRAINEE, WEEK


@pytest.fixture(scope="module")
def club_file(tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("club")
    repository = open_club(folder, weeks=2)
    repository.database.copy_to(folder / "copy.db")
    repository.database.close()
    return folder / "copy.db"


@pytest.fixture
def path(club_file: Path, tmp_path: Path) -> Path:
    path = tmp_path / "club.db"
    path.write_bytes(club_file.read_bytes())
    return path


@pytest.fixture
def record(qtbot: QtBot, path: Path) -> Iterator[Record]:
    database = Database.open(path)
    yield Record(Repository(database))
    database.close()


def shown(qtbot: QtBot, record: Record) -> tuple[MainWindow, DeskOverview]:
    window = MainWindow(record, TODAY, Theme(Scheme.LIGHT, calm=True), ForgottenSettings())
    qtbot.addWidget(window)
    with qtbot.waitExposed(window):
        window.show()
    area = window.areas.area
    assert isinstance(area, DeskOverview)
    return window, area


def known(qtbot: QtBot, record: Record) -> tuple[MainWindow, DeskOverview]:
    window, desk = shown(qtbot, record)
    qtbot.waitUntil(lambda: record.roster_complete, timeout=5000)
    qtbot.wait(1)
    return window, desk


def names(desk: DeskOverview) -> list[str]:
    model = desk.table.rows
    return [model.cells(row).texts[Column.NAME] for row in range(model.rowCount())]


def text(desk: DeskOverview, name: str, column: Column) -> str:
    model = desk.table.rows
    return model.cells(names(desk).index(name)).texts[column]


def test_everybody_stands_in_one_table_by_need(qtbot: QtBot, record: Record) -> None:
    _, desk = known(qtbot, record)
    assert names(desk) == [entry.trainee.name for entry in record.roster(TODAY)]
    assert sorted(names(desk)) == ["Bow", "Cox", "Seat 2", "Seat 3", "Stroke"]
    assert text(desk, "Cox", Column.NEED).startswith("Note")
    assert desk.heading.detail.text() == "2 train today, 1 needs attention"
    assert desk.table.currentIndex().row() == 0


def test_the_keys_of_screens_mean_the_row_stood_on(qtbot: QtBot, record: Record) -> None:
    window, desk = known(qtbot, record)
    window.activateWindow()
    desk.table.setFocus()
    qtbot.keyClick(desk.table, Qt.Key.Key_Down)
    qtbot.keyClick(desk.table, Qt.Key.Key_3, Qt.KeyboardModifier.ControlModifier)
    second, third = (desk.table.rows.cells(row).trainee_id for row in (1, 2))
    assert window.areas.key == SESSION
    assert window.roster.trainee_id == second
    window.roster.choose(third)
    qtbot.keyClick(window, Qt.Key.Key_1, Qt.KeyboardModifier.ControlModifier)
    assert desk.table.place == third  # who was chosen elsewhere
    window.roster.setFocus()
    window.roster.choose(second)
    assert desk.table.place == second
    qtbot.keyClick(window, Qt.Key.Key_4, Qt.KeyboardModifier.ControlModifier)
    assert (window.areas.key, window.roster.trainee_id) == (PROGRESS, second)


def test_it_is_walked_by_keys_and_each_cell_leads_on(qtbot: QtBot, record: Record) -> None:
    window, desk = known(qtbot, record)
    desk.table.setFocus()
    qtbot.keyClick(desk.table, Qt.Key.Key_Down)
    second = names(desk)[1]
    assert desk.said.text().startswith(second)
    for _ in range(4):
        qtbot.keyClick(desk.table, Qt.Key.Key_Right)
    assert desk.table.area == PROGRESS
    assert desk.go.text().startswith("Progress")
    qtbot.keyClick(desk.table, Qt.Key.Key_Home, Qt.KeyboardModifier.NoModifier)
    assert desk.table.area == SESSION
    qtbot.keyClick(desk.table, Qt.Key.Key_Return)
    assert window.areas.key == SESSION
    chosen = record.repository.trainee_named(second)
    assert chosen is not None
    assert window.roster.trainee_id == chosen.id


def test_what_there_is_to_look_at_leads_to_where_it_is_done(qtbot: QtBot, record: Record) -> None:
    bow = record.repository.trainee_named("Bow")
    assert bow is not None
    record.save("Ask again", replace(bow, screened=None, screening_clear=None))
    window, desk = known(qtbot, record)
    desk.table.stand_on(bow.id)
    assert desk.table.area == CAUTION
    assert "screen" in desk.said.text()
    assert desk.go.text().startswith("Record the screening")
    qtbot.keyClick(desk.table, Qt.Key.Key_Return)
    assert window.areas.key == TRAINEE
    assert window.roster.trainee_id == bow.id


@pytest.mark.parametrize(
    ("column", "word", "part"),
    [(Column.DONE, "Week and load", WEEK), (Column.DELOAD, "Deload", DELOAD)],
)
def test_adherence_and_deload_lead_to_their_part_of_week_and_load(
    qtbot: QtBot, record: Record, column: Column, word: str, part: str
) -> None:
    window, desk = known(qtbot, record)
    desk.table.setCurrentIndex(desk.table.rows.index(1, column))
    assert desk.go.text().startswith(word)
    qtbot.keyClick(desk.table, Qt.Key.Key_Return)
    area = window.areas.area
    assert isinstance(area, LoadArea)
    assert area.parts.code == part


def test_the_sheet_is_one_key_away(qtbot: QtBot, record: Record) -> None:
    window, desk = known(qtbot, record)
    desk.table.setFocus()
    qtbot.keyClick(desk.table, Qt.Key.Key_Return, Qt.KeyboardModifier.ShiftModifier)
    assert window.areas.key == SHEET


def test_need_is_the_order_until_a_column_is_asked_for(qtbot: QtBot, record: Record) -> None:
    _, desk = known(qtbot, record)
    by_need = names(desk)
    desk.table.setFocus()
    assert desk.sorted.text() == "Sorted by need  S"
    qtbot.keyClick(desk.table, Qt.Key.Key_Home)
    qtbot.keyClick(desk.table, Qt.Key.Key_S)
    assert names(desk) == ["Bow", "Cox", "Seat 2", "Seat 3", "Stroke"]
    assert desk.sorted.accessibleName() == "Sorted by name"
    assert desk.table.currentIndex().row() == 0
    qtbot.keyClick(desk.table, Qt.Key.Key_S)
    assert names(desk) == ["Stroke", "Seat 3", "Seat 2", "Cox", "Bow"]
    qtbot.keyClick(desk.table, Qt.Key.Key_Right)
    qtbot.keyClick(desk.table, Qt.Key.Key_S)
    assert names(desk) == by_need
    assert desk.table.accessibleName() == "Everybody. Sorted by need"


def test_a_click_on_a_heading_sorts_and_the_heading_shows_it(qtbot: QtBot, record: Record) -> None:
    _, desk = known(qtbot, record)
    heading = desk.table.horizontalHeader()
    at = QPoint(heading.sectionViewportPosition(Column.LAST) + 5, 5)
    qtbot.mouseClick(heading.viewport(), Qt.MouseButton.LeftButton, pos=at)
    last = [entry.last for entry in record.roster(TODAY)]
    assert (
        text(desk, names(desk)[0], Column.LAST) == f"{(TODAY - min(filter(None, last))).days} days"
    )
    assert names(desk)[-1] == "Cox"  # never trained: nothing to sort by
    model = desk.table.rows
    assert model.headerData(Column.LAST, Qt.Orientation.Horizontal) == "Last \N{DOWNWARDS ARROW}"
    spoken = Qt.ItemDataRole.AccessibleTextRole
    told = model.headerData(Column.LAST, Qt.Orientation.Horizontal, spoken)
    assert told == "Last, Longest ago first"
    qtbot.mouseClick(heading.viewport(), Qt.MouseButton.LeftButton, pos=at)
    assert names(desk)[-1] == "Cox"
    assert model.headerData(Column.LAST, Qt.Orientation.Horizontal) == "Last \N{UPWARDS ARROW}"


@pytest.mark.parametrize("column", Column)
def test_every_column_sorts_both_ways_and_keeps_everybody(
    qtbot: QtBot, record: Record, column: Column
) -> None:
    _, desk = known(qtbot, record)
    for _ in range(2):
        desk.table.sort_by(column)
        assert sorted(names(desk)) == ["Bow", "Cox", "Seat 2", "Seat 3", "Stroke"]
        assert order_of(desk.to_recall()) == desk.table.rows.order


def test_the_order_is_kept_for_the_next_time_also_before_the_file_is_open(
    qtbot: QtBot, record: Record, path: Path
) -> None:
    window, desk = known(qtbot, record)
    desk.table.sort_by(Column.NAME)
    desk.table.sort_by(Column.NAME)
    backwards = names(desk)
    settings = ForgottenSettings()
    settings.keep(DESK, desk.to_recall())
    early = Record(glimpses=first_look(path, TODAY) or ())
    window = MainWindow(early, TODAY, Theme(Scheme.LIGHT, calm=True), settings)
    qtbot.addWidget(window)
    with qtbot.waitExposed(window):
        window.show()
    again = window.areas.area
    assert isinstance(again, DeskOverview)
    assert names(again) == backwards == ["Stroke", "Seat 3", "Seat 2", "Cox", "Bow"]
    again.table.sort_by(Column.LAST)
    window.close()
    assert settings.recalled(DESK) == "last"


@pytest.mark.parametrize("code", ["", "need", "-need", "nonsense", "-"])
def test_an_order_that_nobody_knows_is_by_need(code: str) -> None:
    assert order_of(code).by_need


def test_a_filter_keeps_rows_with_all_of_its_words(qtbot: QtBot, record: Record) -> None:
    _, desk = known(qtbot, record)
    qtbot.keyClicks(desk.filter, "under cox")
    assert names(desk) == ["Cox"]
    qtbot.keyClicks(desk.filter, "x")
    assert names(desk) == []
    assert desk.said.text() == "Nobody is like that."
    assert desk.go.isHidden()
    desk.filter.clear()
    qtbot.keyClick(desk.filter, Qt.Key.Key_Down)
    assert desk.table.hasFocus()
    qtbot.keyClick(desk.table, Qt.Key.Key_N)
    assert desk.who.code == Shown.ATTENTION
    assert names(desk) == ["Seat 2"]
    qtbot.keyClick(desk.table, Qt.Key.Key_A)
    assert len(names(desk)) == 5


def test_who_was_stood_on_stays_while_the_record_changes(qtbot: QtBot, record: Record) -> None:
    _, desk = known(qtbot, record)
    desk.table.setFocus()
    qtbot.keyClick(desk.table, Qt.Key.Key_Down)
    qtbot.keyClick(desk.table, Qt.Key.Key_Down)
    stood = desk.table.cells
    assert stood is not None
    record.save("Add", Trainee("Another", screened=TODAY))
    assert "Another" in names(desk)
    assert desk.table.cells is not None
    assert desk.table.cells.trainee_id == stood.trainee_id


def test_it_stands_before_the_file_is_open_and_is_completed_then(
    qtbot: QtBot, record: Record, path: Path
) -> None:
    _, desk = known(qtbot, record)
    complete = [desk.table.rows.cells(row) for row in range(5)]
    glimpses = first_look(path, TODAY)
    assert glimpses is not None
    early = Record(glimpses=glimpses)
    window, first = shown(qtbot, early)
    assert sorted(names(first)) == sorted(cells.texts[0] for cells in complete)
    assert {text(first, "Bow", c) for c in (Column.LAST, Column.NEXT)} == {"42 days", "today"}
    assert text(first, "Bow", Column.DONE) == ""
    assert window.roster.model.shown[0].text == "due today"
    early.attach(record.repository)
    assert [first.table.rows.cells(row) for row in range(5)] == complete
    assert early.roster_complete  # nothing had to be drawn up again


def test_what_is_kept_needs_no_reading_of_sets(qtbot: QtBot, record: Record) -> None:
    known(qtbot, record)
    seen: list[str] = []
    record.repository.database.query_hooks.append(lambda query: seen.append(str(query)))
    again = Record(record.repository)
    again.begin_roster(TODAY)
    assert again.roster_complete
    assert not [query for query in seen if "set_done" in query]


def test_progress_is_told_while_records_are_read(qtbot: QtBot, record: Record) -> None:
    desk = DeskOverview(record, TODAY, Theme(Scheme.LIGHT))
    qtbot.addWidget(desk)
    desk.refresh()
    assert not record.roster_complete
    assert desk.heading.detail.text() == "2 train today, reading records, 0 of 5"
    qtbot.waitUntil(lambda: record.roster_complete, timeout=5000)


def test_a_program_edited_is_looked_at_again_without_waiting(qtbot: QtBot, record: Record) -> None:
    known(qtbot, record)
    (program,) = record.repository.programs()
    record.save("Edit", replace(program, about="Changed."))
    assert not record.roster_complete
    assert len(record.roster(TODAY)) == 5
    qtbot.waitUntil(lambda: record.roster_complete, timeout=5000)
    assert len(record.repository.briefs(build_mark(), TODAY)) == 5


def test_columns_give_way_where_there_is_no_room(qtbot: QtBot, record: Record) -> None:
    _, desk = known(qtbot, record)
    desk.table.resize(480, 300)
    assert all(desk.table.isColumnHidden(column) for column in GIVE_WAY)
    assert not desk.table.isColumnHidden(Column.NEED)
    desk.table.resize(1400, 300)
    assert not any(desk.table.isColumnHidden(column) for column in Column)


def test_a_row_reads_itself_aloud(qtbot: QtBot, record: Record) -> None:
    _, desk = known(qtbot, record)
    model = desk.table.rows
    row = names(desk).index("Cox")
    spoken = model.index(row, 0).data(Qt.ItemDataRole.AccessibleTextRole)
    assert spoken.startswith("Cox. ")
    assert spoken.endswith("Last: never.")
    assert model.index(row, Column.LAST).data(Qt.ItemDataRole.AccessibleTextRole) == "Last: never"
    interface = QAccessible.queryAccessibleInterface(desk.table)
    assert interface.text(QAccessible.Text.Name) == "Everybody. Sorted by need"


def test_the_desks_model_keeps_the_rules(
    qtbot: QtBot, record: Record, qtmodeltester: ModelTester
) -> None:
    model = DeskModel()
    qtmodeltester.check(model)
    model.set_rows(*desk_cells(record, TODAY))
    qtmodeltester.check(model)
    kept = QPersistentModelIndex(model.index(0, 0))
    model.set_filter("nobody at all", Shown.ALL)
    assert not kept.isValid()
    qtmodeltester.check(model)


def test_words_are_made_when_they_are_asked_for() -> None:
    made: list[int] = []

    def cells_of(number: int) -> Cells:
        made.append(number)
        return Cells(number, (str(number),) * len(Column), ("",) * len(Column))

    model = DeskModel()
    model.set_rows(range(1000), cells_of)
    assert model.rowCount() == 1000
    assert made == []
    assert model.index(7, 0).data() == "7"
    assert made == [7]


def test_what_is_not_there_is_not_read_aloud() -> None:
    texts = ["Bow", "", "3 days", "today", NOTHING, "", "", NOTHING, ""]
    assert Cells(1, tuple(texts), ()).spoken == "Bow. Last: 3 days. Next: today."


@pytest.mark.parametrize(
    ("course", "ups"),
    [
        (((1, 5.0), (8, 6.0), (15, 4.0)), [10.0, 0.0, 20.0]),
        (((1, 5.0), (8, 5.0)), [10.0, 10.0]),  # level: in the middle
    ],
)
def test_a_spark_line_spans_its_place(
    course: tuple[tuple[int, float], ...], ups: list[float]
) -> None:
    points = spark_points(course, QRectF(0, 0, 100, 20), today=29)
    assert [point.y() for point in points] == ups
    assert points[0].x() == 0
    assert points[-1].x() < 100  # what was not trained lately ends before today


def test_a_first_look_sees_names_and_dates(path: Path) -> None:
    glimpses = first_look(path, TODAY)
    assert glimpses is not None
    assert {one.name for one in glimpses} == {"Bow", "Cox", "Seat 2", "Seat 3", "Stroke"}
    assert all(one.next is None and not one.looked_up for one in glimpses)  # no briefs yet


def test_a_first_look_leaves_alone_what_is_out_of_the_ordinary(tmp_path: Path) -> None:
    assert first_look(tmp_path / "not there.db", TODAY) is None
    for name, content in (("empty.db", b""), ("text.db", b"not a data file")):
        (tmp_path / name).write_bytes(content)
        assert first_look(tmp_path / name, TODAY) is None
        assert (tmp_path / name).read_bytes() == content


def test_a_day_done_is_no_longer_due_at_first_sight(record: Record, path: Path) -> None:
    record.begin_roster(TODAY)
    bow = record.repository.trainee_named("Bow")
    assert bow is not None
    entry = record.entry(bow.id)
    assert entry is not None
    glimpse = next(one for one in first_look(path, TODAY) or () if one.name == "Bow")
    assert glimpse == Glimpse(bow.id or 0, "Bow", entry.last, TODAY, True)
    assert glimpse.is_due(TODAY)
    assert not glimpse.is_due(date(2026, 11, 27))


def test_an_empty_roster_says_what_to_do_first(qtbot: QtBot) -> None:
    database = Database.open(":memory:")
    window, desk = shown(qtbot, Record(Repository(database)))
    assert desk.first_steps.isVisible()
    assert desk.board.isHidden()
    assert window.areas.key == DESK
    database.close()


def bows_row(path: Path) -> tuple[DeskRow, Database]:
    database = Database.open(path)
    repository = Repository(database)
    bow = repository.trainee_named("Bow")
    assert bow is not None
    assert bow.id is not None
    return row_of(repository, read_library(repository), bow.id, TODAY), database


def test_a_course_in_pounds_is_told_to_the_half(path: Path) -> None:
    row, database = bows_row(path)
    entry = replace(row.entry, trainee=replace(row.entry.trainee, unit=Unit.LB))
    spark = Spark(SparkKind.MAXIMUM, ((1, 112_999.0), (8, 130_000.0)), row.spark.line_id)
    pounds = replace(row, entry=entry, spark=spark)
    said = cells_of(pounds, TODAY, shipped_limits()).texts[Column.COURSE]
    assert said.endswith("249 to 286.5 lb")
    database.close()


def test_a_goal_without_a_day_comes_last_either_way(path: Path) -> None:
    row, database = bows_row(path)

    def ranked(kind: GoalKind, by: date | None = None) -> object:
        return rank_of(replace(row, goal=GoalBrief(1, kind, 20, None, by)), Column.GOAL)

    assert ranked(GoalKind.REPS) is None
    assert ranked(GoalKind.REPS, TODAY) == TODAY
    assert ranked(GoalKind.ONE_REP_MAX) == date.max  # not in a year
    database.close()
