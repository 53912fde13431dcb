"""The progress screen: the answer in words, the keys, the table, the files that it saves."""

from __future__ import annotations

import csv
from collections.abc import Iterator
from dataclasses import replace
from datetime import timedelta
from pathlib import Path

import openpyxl
import pytest
from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QAccessible, QImage
from PySide6.QtSvg import QSvgRenderer
from PySide6.QtTest import QAbstractItemModelTester
from PySide6.QtWidgets import QFileDialog, QWidget
from pytestqt.qtbot import QtBot

from db.database import Database
from desktop.planning.history import read_history
from desktop.planning.line_history import read_about
from desktop.planning.progress import GoalLine, LineProgress, Statement, progress, progress_of
from desktop.planning.progress_export import COLUMNS, write_progress, write_progress_book
from desktop.planning.trained_lines import trained_lines
from desktop.training.exercises import Exercise
from desktop.training.program import Line
from desktop.training.quantities import Unit
from desktop.training.session import LineDone, Session, SetDone
from desktop.training.trainee import Goal, GoalKind
from tests.chart_scenes import FIRST, TODAY, WEEK, Scene, open_scene
from views.chart_block import ChartBlock
from views.measures import Shown
from views.progress_area import ProgressArea
from views.progress_picture import save_png, save_svg
from views.progress_series import series_of
from views.progress_texts import legend_text, spot_text, week_text
from views.record import MessageKind, Record
from views.statement_texts import statement_text
from views.theme import Theme

pytestmark = pytest.mark.usefixtures("english")

DAY = timedelta(days=1)


@pytest.fixture
def scene() -> Iterator[Scene]:
    database = Database.open(":memory:")
    yield open_scene(database)
    database.close()


@pytest.fixture(scope="module")
def stored() -> Iterator[Scene]:
    """The scene for tests that write nothing."""
    database = Database.open(":memory:")
    yield open_scene(database)
    database.close()


@pytest.fixture
def area(qtbot: QtBot, scene: Scene) -> ProgressArea:
    made = ProgressArea(Record(scene.repository), TODAY, Theme("light", calm=True))
    qtbot.addWidget(made)
    made.resize(1064, 760)
    made.show_trainee(scene.trainee_id)
    with qtbot.waitExposed(made):
        made.show()
    qtbot.waitUntil(lambda: made.block is not None)
    return made


def block_of(area: ProgressArea) -> ChartBlock:
    assert area.block is not None
    return area.block


def take(area: ProgressArea, scene: Scene, exercise: str) -> ChartBlock:
    """Choose a line as by the list."""
    area.lines.setCurrentIndex(area.lines.findData(scene.line_id(exercise)))
    area.lines.chosen.emit(scene.line_id(exercise))
    return block_of(area)


def progress_in(scene: Scene, exercise: str) -> LineProgress:
    return progress(scene.repository, scene.line_id(exercise), TODAY)


def spoken(widget: QWidget, text: QAccessible.Text = QAccessible.Text.Name) -> str:
    return QAccessible.queryAccessibleInterface(widget).text(text)


# The answer in words


def told(scene: Scene, statement: Statement, *goals: GoalLine) -> str:
    found = replace(progress_in(scene, "back-squat"), statement=statement, goals=goals)
    return statement_text(found, Unit.KG)


@pytest.mark.parametrize(
    ("gain", "low", "high", "plateau", "words"),
    [
        (0.006, 0.002, 0.010, 0.05,
         "Up 0.6 % a week (80 %: 0.2 to 1.0). A plateau is unlikely (5 %)."),
        (0.0001, -0.003, 0.0032, 0.6,
         "Level: 0.0 % a week (80 %: −0.3 to 0.3). A plateau is likely (60 %)."),
        (0.002, -0.001, 0.005, 0.4,
         "Up 0.2 % a week (80 %: −0.1 to 0.5). A plateau is possible (40 %)."),
        (-0.008, -0.012, -0.004, 0.998,
         "Down 0.8 % a week (80 %: −1.2 to −0.4). No gain is to be seen (99 %)."),
        (0.0006, -0.0001, 0.0013, 0.9,
         "Up 0.1 % a week (80 %: 0.0 to 0.1). A plateau is very likely (90 %)."),
    ],
)  # fmt: skip
def test_the_statement_says_gain_interval_and_plateau(
    stored: Scene, gain: float, low: float, high: float, plateau: float, words: str
) -> None:
    assert told(stored, Statement(gain, low, high, plateau, 80_000)) == words


@pytest.mark.parametrize(
    ("earliest", "latest", "words"),
    [
        (11, 114, "82 kg between 7 December and 20 March."),
        (11, None, "82 kg: 7 December at the earliest, perhaps not within a year."),
        (None, None, "82 kg: not within a year at this rate."),
        (-2, 114, "82 kg by 20 March, perhaps already."),
        (-2, None, "82 kg may be reached, or not within a year."),
        (-9, -2, "82 kg is reached."),
    ],
)
def test_the_statement_says_when_the_goal_comes(
    stored: Scene, earliest: int | None, latest: int | None, words: str
) -> None:
    goal = Goal(stored.trainee_id, 1, GoalKind.ONE_REP_MAX, 82_000)
    days = [None if each is None else TODAY + each * DAY for each in (earliest, latest)]
    line = GoalLine(goal, days[0], None, days[1])
    said = told(stored, Statement(0.006, 0.002, 0.01, 0.05, 80_000), line)
    assert said.endswith(words)


def test_a_wish_is_named_beside_its_forecast(stored: Scene) -> None:
    goal = Goal(stored.trainee_id, 1, GoalKind.ONE_REP_MAX, 82_000, by=TODAY + 400 * DAY)
    line = GoalLine(goal, TODAY + 11 * DAY, None, TODAY + 114 * DAY)
    said = told(stored, Statement(0.006, 0.002, 0.01, 0.05, 80_000), line)
    assert "82 kg (wanted by 31 December 2027) between 7 December and 20 March." in said


@pytest.mark.parametrize(
    ("sessions", "words"),
    [
        (1, "Three more sessions make a trend."),
        (2, "Two more sessions make a trend."),
        (3, "One more session makes a trend."),
    ],
)
def test_too_few_sessions_say_how_many_are_missing(
    stored: Scene, sessions: int, words: str
) -> None:
    history = read_history(stored.repository, stored.trainee_id)
    first = history.sessions[: 3 * sessions]
    line = history.line(stored.line_id("back-squat"))
    found = progress_of(history.with_sessions(first), line, first[-1].day)
    said = statement_text(found, Unit.KG)
    assert said.startswith("Best so far (Mon 10 Aug): 5 × 67.5 kg.") or sessions > 1
    assert words in said


def test_sessions_too_close_together_say_from_when_on(scene: Scene) -> None:
    line = scene.repository.save(Line(scene.newcomer_id, "deadlift")).saved[0]
    sets = (SetDone(90_000, 5, rir=2.0),)
    for ahead in range(4):
        done = LineDone(line.id, "deadlift", sets=sets)
        scene.repository.save(Session(scene.newcomer_id, TODAY - ahead * DAY, (done,)))
    history = read_history(scene.repository, scene.newcomer_id)
    said = statement_text(progress_of(history, line, TODAY), Unit.KG)
    assert said.endswith("A trend needs two weeks: from 7 December on.")


def test_sets_beyond_what_equations_take_say_so(stored: Scene) -> None:
    found = replace(progress_in(stored, "push-up"), points=(), statement=None, goals=())
    said = statement_text(found, Unit.KG)
    assert said.endswith("Such sets give no estimate of the maximum, so no trend.")


def test_a_long_pause_is_told(stored: Scene) -> None:
    history = read_history(stored.repository, stored.trainee_id)
    line = history.line(stored.line_id("back-squat"))
    said = statement_text(progress_of(history, line, TODAY + 30 * DAY), Unit.KG)
    assert said.endswith("Last done 33 days ago.")


def test_a_hold_tells_its_best_and_its_goal(stored: Scene) -> None:
    said = statement_text(progress_in(stored, "l-sit"), Unit.KG)
    assert said == "Best so far (Wed 25 Nov): 24 s, one leg straight. Goal: 30 s."


def test_a_session_is_read_out_with_its_doubts(stored: Scene) -> None:
    found = progress_in(stored, "back-squat")
    series = series_of(found, Shown.ESTIMATE, Unit.KG)
    ache = next(spot for spot in series.spots if spot.best.day == FIRST + 9 * WEEK)
    assert spot_text(ache, series, TODAY, {}) == (
        "Mon 12 Oct: 5 × 72.5 kg, 2 in reserve; estimated 88.2 kg (80 %: 79.4 to 98); "
        "pain 3 of 10; not counted"
    )
    twelve = next(spot for spot in series.spots if spot.point and spot.point.reps == 12)
    assert "uncertain" in spot_text(twelve, series, TODAY, {})


def test_a_bodyweight_set_is_read_out_with_its_variation(stored: Scene) -> None:
    found = progress_in(stored, "push-up")
    names = {step.key: step.name for step in found.scale}
    series = series_of(found, Shown.LOAD, Unit.KG)
    said = spot_text(series.spots[0], series, TODAY, names)
    assert said.startswith(
        "Fri 14 Aug: 6 reps, hands on table, 75 cm, 2 in reserve; effective load"
    )


def test_a_week_is_read_out_against_its_plan(stored: Scene) -> None:
    weeks = progress_in(stored, "back-squat").weeks
    assert week_text(weeks[7], TODAY, Unit.KG) == (
        "Week of Mon 28 Sept: 2 of 4 hard sets planned; load × reps 880 kg"  # 2 × 8 × 55 kg
    )
    unplanned = replace(progress_in(stored, "push-up").weeks[0], volume_g=0.0)
    assert week_text(unplanned, TODAY, Unit.KG) == "Week of Mon 10 Aug: 3 hard sets, none planned"


def test_the_legend_explains_what_is_to_be_seen_and_nothing_else(stored: Scene) -> None:
    squat = series_of(progress_in(stored, "back-squat"), Shown.ESTIMATE, Unit.KG)
    assert legend_text(squat) == (
        "■ up to 5 reps   ● 6 to 10 reps   ○ 11 reps and more, uncertain   "
        "paler: deload or pain, not counted   ★ best so far   ▲ pain"
    )
    hold = series_of(progress_in(stored, "l-sit"), Shown.HOLD, Unit.KG)
    assert legend_text(hold) == "★ best so far"


# The screen


def test_the_line_trained_last_is_shown_first(area: ProgressArea, scene: Scene) -> None:
    about = read_about(scene.repository, scene.trainee_id)
    lasts = [one.last for one in trained_lines(scene.repository, about, TODAY)]
    assert lasts == sorted(lasts, key=lambda day: day or FIRST, reverse=True)
    assert area.lines.currentText() == "Bench press"
    assert [area.lines.itemText(place) for place in range(area.lines.count())] == [
        "Bench press",
        "L-sit",
        "Back squat",
        "Deadlift",
        "Push-up",
    ]
    assert area.statement.text() == statement_text(progress_in(scene, "bench-press"), Unit.KG)


def test_lines_measures_and_spans_are_chosen_by_keys(
    qtbot: QtBot, area: ProgressArea, scene: Scene
) -> None:
    block = block_of(area)
    block.chart.setFocus()
    qtbot.keyClick(block.chart, Qt.Key.Key_PageDown, Qt.KeyboardModifier.ControlModifier)
    assert area.lines.currentText() == "L-sit"
    assert list(area.measures.codes) == ["hold", "moment", "variation"]
    qtbot.keyClick(block.chart, Qt.Key.Key_V)
    assert block.chart.series is not None
    assert block.chart.series.shown is Shown.VARIATION
    qtbot.keyClick(block.chart, Qt.Key.Key_PageUp, Qt.KeyboardModifier.ControlModifier)
    assert list(area.measures.codes) == ["estimate", "load", "set", "at load"]
    qtbot.keyClick(block.chart, Qt.Key.Key_L)
    assert area.detail.whole == "Stroke · highest load of a session"
    for key, code in ((Qt.Key.Key_1, "8"), (Qt.Key.Key_3, "52"), (Qt.Key.Key_4, "all")):
        qtbot.keyClick(block.chart, key)
        assert area.spans.code == code
    assert block.chart.plot.days[0] <= FIRST.toordinal()


def test_the_read_out_is_one_line_that_follows_the_cursor(
    qtbot: QtBot, area: ProgressArea, scene: Scene
) -> None:
    block = take(area, scene, "back-squat")
    height = block.read_out.height()
    assert not block.open.isEnabled()
    qtbot.keyClick(block.chart, Qt.Key.Key_Home)
    assert block.read_out.text().startswith("Mon 10 Aug: 5 × 67.5 kg")
    assert spoken(block.chart, QAccessible.Text.Description) == block.read_out.text()
    assert block.read_out.height() == height
    block.bars.plot.pointed.emit((FIRST + 7 * WEEK).toordinal() + 1.0, 0.0)
    assert block.read_out.text().startswith("Week of Mon 28 Sept")


def test_enter_opens_the_session_under_the_cursor(
    qtbot: QtBot, area: ProgressArea, scene: Scene
) -> None:
    block = take(area, scene, "back-squat")
    qtbot.keyClick(block.chart, Qt.Key.Key_Home)
    with qtbot.waitSignal(area.session_wanted) as wanted:
        qtbot.keyClick(block.chart, Qt.Key.Key_Return)
    assert scene.repository.session(wanted.args[0]).day == FIRST


def test_the_table_tells_the_same_sessions(qtbot: QtBot, area: ProgressArea, scene: Scene) -> None:
    block = take(area, scene, "back-squat")
    QAbstractItemModelTester(
        block.table.rows, QAbstractItemModelTester.FailureReportingMode.Warning
    )
    block.chart.setFocus()
    qtbot.keyClick(block.chart, Qt.Key.Key_T)
    assert block.table.isVisible()
    series = block.chart.series
    assert series is not None
    rows = block.table.rows
    assert rows.rowCount() == len(series.spots)
    values = [rows.index(row, 1).data(Qt.ItemDataRole.EditRole) for row in range(rows.rowCount())]
    assert values == [spot.value for spot in series.spots]
    assert [rows.index(0, column).data() for column in range(5)] == [
        "Mon 10 Aug",
        "82.1",
        "5 × 67.5 kg",
        "2",
        "",
    ]
    assert rows.index(7, 4).data() == "not counted"
    block.table.selectRow(2)
    assert block.chart.index == 2
    with qtbot.waitSignal(area.session_wanted):
        qtbot.keyClick(block.table, Qt.Key.Key_Return)
    qtbot.keyClick(block.table, Qt.Key.Key_T)
    assert not block.table.isVisible()


def test_body_mass_is_drawn_when_it_is_asked_for(
    qtbot: QtBot, area: ProgressArea, scene: Scene
) -> None:
    block = take(area, scene, "back-squat")
    assert "body mass" not in block.chart.plot.parts()
    block.chart.setFocus()
    qtbot.keyClick(block.chart, Qt.Key.Key_B)
    assert "body mass" in block.chart.plot.parts()


def test_a_corrected_session_moves_its_point_and_the_cursor_stays(
    area: ProgressArea, scene: Scene, qtbot: QtBot
) -> None:
    block = take(area, scene, "deadlift")
    qtbot.keyClick(block.chart, Qt.Key.Key_End)
    assert block.session_id is not None
    before = block.chart.series
    session = scene.repository.session(block.session_id)
    heavier = [
        replace(part, sets=tuple(replace(one, load_g=one.load_g + 10_000) for one in part.sets))
        for part in session.lines
    ]
    area.record.save("Correct a session", replace(session, lines=tuple(heavier)))
    assert before is not None
    assert block.chart.series is not None
    assert block.chart.series.heights[-1] > before.heights[-1]
    assert block.session_id == session.id
    area.record.undo_stack.undo()
    assert block.chart.series.heights[-1] == before.heights[-1]


def test_nothing_to_show_says_what_to_do_first(
    qtbot: QtBot, area: ProgressArea, scene: Scene
) -> None:
    area.show_trainee(scene.newcomer_id)
    assert area.beginning.isVisible()
    assert not block_of(area).isVisible()
    with qtbot.waitSignal(area.area_wanted) as wanted:
        area.beginning.action.click()
    assert wanted.args == ["program"]
    area.show_trainee(scene.trainee_id)
    assert block_of(area).isVisible()


def test_every_part_that_takes_the_focus_has_a_name(area: ProgressArea, scene: Scene) -> None:
    take(area, scene, "back-squat")
    area.table.button.click()
    for widget in area.findChildren(QWidget):
        if widget.isVisible() and widget.focusPolicy() != Qt.FocusPolicy.NoFocus:
            assert spoken(widget), widget
    assert spoken(block_of(area).chart) == "Back squat: estimated one-repetition maximum"


def test_large_text_puts_spans_under_measures_and_nothing_runs_out_at_the_side(
    qtbot: QtBot, area: ProgressArea, scene: Scene, qapp: object
) -> None:
    area.theme.resize_text(150)
    take(area, scene, "push-up")
    area.resize(900, 760)
    qtbot.wait(20)
    assert block_of(area).width() <= 900
    assert area.measures.y() <= area.spans.y()


# Files


def test_the_numbers_are_saved_as_they_are_whatever_the_locale(
    tmp_path: Path, scene: Scene, german: None
) -> None:
    target = tmp_path / "squat.csv"
    assert write_progress(progress_in(scene, "back-squat"), Unit.KG, target) == 15
    with target.open(encoding="utf-8-sig", newline="") as stream:
        lines = list(csv.DictReader(stream))
    assert tuple(lines[0]) == COLUMNS
    assert lines[0]["date"] == "2026-08-10"
    assert (lines[0]["load"], lines[0]["reps"], lines[0]["rir"]) == ("67.5", "5", "2")
    assert float(lines[0]["estimated_maximum"]) == pytest.approx(82.13)
    assert [line["counted"] for line in lines].count("no") == 2


def test_a_name_that_looks_like_a_formula_stays_a_name(tmp_path: Path, scene: Scene) -> None:
    found = progress_in(scene, "back-squat")
    evil: Exercise = replace(found.exercise, name="=1+1")
    target = tmp_path / "squat.csv"
    write_progress(replace(found, exercise=evil), Unit.KG, target)
    with target.open(encoding="utf-8-sig", newline="") as stream:
        assert next(csv.DictReader(stream))["exercise"] == "'=1+1"


def test_a_workbook_holds_numbers_days_and_harmless_text(tmp_path: Path, scene: Scene) -> None:
    found = progress_in(scene, "back-squat")
    evil: Exercise = replace(found.exercise, name="=1+1")
    target = tmp_path / "squat.xlsx"
    both = [("Back squat", replace(found, exercise=evil)), ("back squat", found)]
    write_progress_book(both, Unit.KG, target)
    book = openpyxl.load_workbook(target)
    assert book.sheetnames == ["Back squat", "back squat 2"]
    sheet = book["Back squat"]
    assert [cell.value for cell in sheet[1]] == list(COLUMNS)
    first = dict(zip(COLUMNS, sheet[2], strict=True))
    assert (first["exercise"].value, first["exercise"].data_type) == ("=1+1", "s")
    assert first["date"].is_date
    assert (first["load"].value, first["reps"].value) == (67.5, 5)
    assert first["estimated_maximum"].value == pytest.approx(82.13)
    assert first["seconds"].value is None
    assert sheet.max_row == 1 + len(found.best_sets)
    assert book["back squat 2"]["B2"].value == "Back squat"


def test_pictures_are_light_even_where_the_screen_is_dark(
    tmp_path: Path, area: ProgressArea, scene: Scene
) -> None:
    area.theme.choose("dark")
    take(area, scene, "back-squat")
    saving = area.saving
    said: list[tuple[str, str]] = []
    area.record.message.connect(lambda text, kind: said.append((text, kind)))
    picture = area.what_to_save().picture
    png, svg = tmp_path / "squat.png", tmp_path / "squat.svg"
    saving.write(png, lambda target: save_png(picture, target))
    saving.write(svg, lambda target: save_svg(picture, target))
    image = QImage(str(png))
    assert image.size() == QSize(2400, 1600)
    assert image.pixelColor(5, 5).name() == "#ffffff"
    renderer = QSvgRenderer(str(svg))
    assert renderer.isValid()
    assert renderer.viewBox().size() == QSize(1200, 800)
    text = svg.read_text(encoding="utf-8")
    assert "Up 0.7 % a week" in text
    assert "goal 112 kg" in text
    assert [kind for _, kind in said] == [MessageKind.DONE.value] * 2


def test_a_file_that_cannot_be_written_says_why(
    tmp_path: Path, area: ProgressArea, scene: Scene
) -> None:
    said: list[tuple[str, str]] = []
    area.record.message.connect(lambda text, kind: said.append((text, kind)))
    now = area.what_to_save()
    nowhere = tmp_path / "missing" / "chart"
    area.saving.write(nowhere, now.write_numbers)
    area.saving.write(nowhere, lambda target: save_svg(now.picture, target))
    area.saving.write(nowhere, lambda target: save_png(now.picture, target))
    assert [kind for _, kind in said] == [MessageKind.ERROR.value] * 3
    assert all(text.startswith("Not saved: ") for text, _ in said)


def test_the_question_where_to_proposes_a_name(qtbot: QtBot, area: ProgressArea) -> None:
    area.saving.save_csv()
    dialogs = area.findChildren(QFileDialog)
    assert len(dialogs) == 1
    assert dialogs[0].selectedFiles()[0].endswith("Stroke - Bench press - 2026-11-26.csv")
    dialogs[0].reject()
    qtbot.waitUntil(lambda: not area.findChildren(QFileDialog))


def test_the_other_button_offers_our_own_actions(area: ProgressArea) -> None:
    block = block_of(area)
    assert [action.text() for action in block.chart.actions()] == [
        "Save as picture (PNG)…",
        "Save as drawing (SVG)…",
        "Save the numbers (CSV)…",
        "Save the numbers (spreadsheet)…",
    ]
