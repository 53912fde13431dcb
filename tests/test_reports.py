"""Reports: what they say, how it lies on pages, and what is saved."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from datetime import timedelta
from pathlib import Path

import openpyxl
import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QColor
from pytestqt.qtbot import QtBot

from db.database import Database
from desktop.planning.coach_month import CoachMonth, coach_month, progressed
from desktop.planning.history import read_history
from desktop.planning.report import (
    ReportError,
    TraineeReport,
    report_of,
    trainee_report,
    weekly_sets,
)
from desktop.planning.report_export import MONTH_COLUMNS
from desktop.training.trainee import Goal, GoalKind, Trainee
from tests.chart_scenes import DAY, FIRST, TODAY, WEEK, Scene, open_scene
from tests.paper_pictures import page_image
from views.measures import Shown
from views.month_report import headings, lay_out_month, month_aloud, month_rows
from views.paper import Paper
from views.paper_chart import PaperChart
from views.record import MessageKind, Record
from views.report_area import EVERYBODY, PROGRAM, ReportArea
from views.report_layout import lay_out_report
from views.report_texts import report_aloud, report_text
from views.sheet_layout import page_size
from views.sheet_parts import Sheet, Text
from views.sheets import write_report_pdf
from views.theme import Theme

pytestmark = pytest.mark.usefixtures("english")


@pytest.fixture(scope="module")
def scene() -> Iterator[Scene]:
    database = Database.open(":memory:")
    yield open_scene(database)
    database.close()


@pytest.fixture(scope="module")
def report(scene: Scene) -> TraineeReport:
    return trainee_report(scene.repository, scene.trainee_id, FIRST, TODAY)


def whole_month(scene: Scene) -> CoachMonth:
    work = coach_month(scene.repository, TODAY - 4 * WEEK + DAY, TODAY)
    while True:
        try:
            next(work)
        except StopIteration as end:
            made: CoachMonth = end.value
            return made


def texts_of(sheet: Sheet) -> list[str]:
    return [
        part.text
        for page in sheet.pages
        for placed in page.blocks
        for part in placed.block.parts
        if isinstance(part, Text)
    ]


def charts_of(sheet: Sheet) -> list[PaperChart]:
    return [
        part
        for page in sheet.pages
        for placed in page.blocks
        for part in placed.block.parts
        if isinstance(part, PaperChart)
    ]


# What it says


def test_the_page_begins_with_what_was_better_than_ever(
    qapp: object, report: TraineeReport
) -> None:
    text = report_text(report)
    records = [line for line in report.lines if line.is_record]
    assert len(text.bests) == len(records) > 0
    for line in records:
        before = [one.amount for one in line.progress.best_sets if one.day < line.best.day]
        assert before  # the first set of all is no record
    squat = next(line for line in report.lines if line.name == "Back squat")
    assert any(best.startswith("Back squat: ") for best in text.bests) == squat.is_record
    assert "Better than ever before" in texts_of(lay_out_report(report, Paper.A4))


def test_one_session_and_one_set_are_told_as_one(report: TraineeReport) -> None:
    line = replace(report.lines[0], sessions=1, hard_sets=1)
    done = report_text(replace(report, lines=(line,))).lines[0].facts[0]
    assert (done.caption, done.value) == ("Done", "1 session, 1 hard set")


def test_a_goal_is_told_though_its_line_was_not_trained(scene: Scene) -> None:
    goal = Goal(scene.trainee_id, scene.line_id("l-sit"), GoalKind.HOLD, 30, by=TODAY + 9 * DAY)
    saved = scene.repository.save(goal).saved[0]
    after = FIRST + 8 * WEEK
    known = read_history(scene.repository, scene.trainee_id)
    without = known.with_sessions(
        replace(one, lines=tuple(part for part in one.lines if part.exercise != "l-sit"))
        for one in known.sessions
    )
    told = report_text(report_of(without, after, TODAY)).ahead
    assert "Goal: L-sit, 30 s by Saturday, 5 December 2026." in told
    first = next(line for line in report_of(known, FIRST, TODAY).lines if line.gain is not None)
    assert first.progress.goals  # of the lines with a trend the one with a goal comes first
    scene.repository.remove(saved)


def test_a_report_counts_what_was_done_in_its_span_alone(scene: Scene) -> None:
    last = FIRST + 4 * WEEK - DAY
    early = trainee_report(scene.repository, scene.trainee_id, FIRST, last)
    assert early.sessions == early.days == 4 * 3
    assert early.planned == 4 * 2
    squat = next(line for line in early.lines if line.name == "Back squat")
    assert (squat.sessions, squat.hard_sets) == (4, 16)
    assert squat.best.day <= last
    assert all(one.day <= last for one in squat.progress.best_sets)
    assert early.weeks == 4
    assert dict(weekly_sets(early)) == {
        muscle: sets / 4 for muscle, sets in early.volume.by_muscle.items()
    }


def test_a_later_session_changes_no_earlier_report(scene: Scene) -> None:
    history = read_history(scene.repository, scene.trainee_id)
    last = FIRST + 6 * WEEK
    shorter = history.with_sessions(one for one in history.sessions if one.day <= last)
    texts = [report_text(report_of(each, FIRST, last)) for each in (history, shorter)]
    assert texts[0] == texts[1]


def test_the_change_of_a_line_is_that_of_its_trend(report: TraineeReport) -> None:
    squat = report.lines[0]
    trend = squat.progress.trend
    assert trend is not None
    assert (squat.first_g, squat.last_g) == (trend.level_g[0], trend.level_g[-1])
    text = report_text(report)
    assert text.lines[0].change == "83.8 → 92.5 kg, +10.4 %"
    assert text.lines[0].sentence.startswith("Up 0.7 % a week")
    names = [line.name for line in text.lines]
    assert sorted(names[:3]) == ["Back squat", "Bench press", "Push-up"]  # those with a trend first
    assert text.lines[-1].change == ""


def test_the_facts_say_sessions_adherence_and_body_mass(report: TraineeReport) -> None:
    facts = {fact.caption: fact.value for fact in report_text(report).facts}
    assert facts["Sessions"] == "44"
    assert facts["Days trained"] == "44, 28 planned"
    assert facts["Body mass"] == "74 → 74.9 kg"
    assert facts["Sessions with pain"] == "1"


def test_cautions_come_in_plain_words_with_their_source(report: TraineeReport) -> None:
    said = report_text(report).cautions
    assert [one.severity for one in said][:1] == ["Caution"]
    assert all(one.sentence and one.source for one in said)
    assert "Goal: Back squat, 112 kg." in report_aloud(report_text(report))


def test_a_span_that_ends_before_it_begins_is_refused(scene: Scene) -> None:
    with pytest.raises(ReportError, match="ends before it begins"):
        trainee_report(scene.repository, scene.trainee_id, TODAY, FIRST)
    with pytest.raises(ReportError):
        next(coach_month(scene.repository, TODAY, FIRST))


# On paper


@pytest.mark.parametrize("paper", list(Paper))
def test_every_part_lies_within_its_page(qapp: object, report: TraineeReport, paper: Paper) -> None:
    sheet = lay_out_report(report, paper)
    size = page_size(paper)
    for page in sheet.pages:
        for placed in page.blocks:
            bottom = placed.at.y() + placed.block.height
            assert bottom <= size.height()
            for part in placed.block.parts:
                if isinstance(part, Text | PaperChart):
                    assert placed.at.x() + part.rect.right() <= size.width()
                    assert placed.at.y() + part.rect.bottom() <= size.height()


def test_each_line_has_a_chart_over_the_span(qapp: object, report: TraineeReport) -> None:
    charts = charts_of(lay_out_report(report, Paper.A4))
    assert len(charts) == len(report.lines)
    for chart in charts:
        assert chart.first <= FIRST.toordinal()
        assert chart.last >= TODAY.toordinal()
    by_measure = {chart.series.shown for chart in charts}
    assert by_measure == {Shown.ESTIMATE, Shown.HOLD}


def test_a_chart_leaves_ink_where_its_sessions_are(qapp: object, report: TraineeReport) -> None:
    sheet = lay_out_report(report, Paper.A4)
    placed, chart = next(
        (placed, part)
        for placed in sheet.pages[0].blocks
        for part in placed.block.parts
        if isinstance(part, PaperChart)
    )
    image = page_image(sheet, 0, 96)
    scale = image.width() / page_size(Paper.A4).width()
    area = chart.rect.translated(placed.at)
    dark = sum(
        image.pixelColor(x, y).lightness() < 60
        for x in range(int(area.left() * scale), int(area.right() * scale))
        for y in range(int(area.top() * scale), int(area.bottom() * scale))
    )
    assert dark > 9 * len(chart.series.spots)
    assert image.pixelColor(1, 1) == QColor("white")


def test_a_pdf_has_the_pages_of_the_report(
    qapp: object, tmp_path: Path, report: TraineeReport
) -> None:
    target = tmp_path / "report.pdf"
    assert write_report_pdf(report, target, Paper.A4) == 2
    content = target.read_bytes()
    assert content.startswith(b"%PDF-")
    assert content.count(b"/Type /Page\n") == 2


# Everybody


def test_the_coachs_report_has_a_row_for_each_trainee(qapp: object, scene: Scene) -> None:
    month = whole_month(scene)
    rows = month_rows(month)
    assert [row.name for row in rows] == ["Cox", "Stroke"]
    assert (rows[0].sessions, rows[0].progress) == ("0", "Not trained")
    assert "Up: Push-up" in rows[1].progress
    assert month.sessions == sum(report.sessions for report in month.reports)
    assert month.kept == 1.0
    assert sum(sets for _, sets in month.weeks) == sum(
        line.hard_sets for report in month.reports for line in report.lines
    )
    sheet = lay_out_month(month, Paper.A4)
    for word in headings():
        assert word in texts_of(sheet)
    assert "Stroke" in month_aloud(month)


def test_a_line_is_up_only_where_its_band_lies_above_level(report: TraineeReport) -> None:
    up, down = progressed(report)
    assert down == []
    for line in up:
        assert line.progress.statement is not None
        assert line.progress.statement.gain_low > 0


def test_the_columns_are_named_on_every_page(qapp: object, scene: Scene) -> None:
    with_many = whole_month(scene)
    month = CoachMonth(with_many.first, with_many.last, with_many.reports * 40, with_many.weeks)
    sheet = lay_out_month(month, Paper.A4)
    assert len(sheet.pages) > 1
    assert texts_of(sheet).count(headings()[0]) == len(sheet.pages)


# On the screen


@pytest.fixture
def area(qtbot: QtBot, scene: Scene) -> ReportArea:
    made = ReportArea(Record(scene.repository), TODAY, Theme("light", calm=True))
    qtbot.addWidget(made)
    made.resize(1064, 760)
    made.show_trainee(scene.trainee_id)
    with qtbot.waitExposed(made):
        made.show()
    return made


def test_the_last_sixteen_weeks_are_shown_and_spans_are_keys(
    qtbot: QtBot, area: ReportArea
) -> None:
    assert (area.first, area.last) == (TODAY - timedelta(weeks=16) + DAY, TODAY)
    assert area.sheet is not None
    assert area.preview.isVisible()
    area.preview.setFocus()
    qtbot.keyClick(area.preview, Qt.Key.Key_2)
    assert area.first == TODAY - timedelta(weeks=8) + DAY
    assert area.from_field.day == area.first


def test_everybody_is_one_key_away(qtbot: QtBot, area: ReportArea) -> None:
    area.preview.setFocus()
    qtbot.keyClick(area.preview, Qt.Key.Key_E)
    assert area.kinds.code == EVERYBODY
    qtbot.waitUntil(lambda: area.sheet is not None and area.sheet.title.startswith("All"))
    assert area.numbers.isEnabled()
    qtbot.keyClick(area.preview, Qt.Key.Key_T)
    assert area.sheet is not None
    assert area.sheet.title.startswith("Stroke")


def test_the_program_is_one_key_away_and_can_be_printed(
    qtbot: QtBot, area: ReportArea, scene: Scene, tmp_path: Path
) -> None:
    area.preview.setFocus()
    qtbot.keyClick(area.preview, Qt.Key.Key_P)
    assert area.kinds.code == PROGRAM
    qtbot.waitUntil(lambda: area.sheet is not None)
    assert area.sheet is not None
    assert area.sheet.title == "Winter strength"
    assert "Base" in texts_of(area.sheet)
    assert area.spans.isHidden()  # it has weeks of its own
    assert not area.numbers.isEnabled()
    area.output.save_pdf(tmp_path / "program.pdf")
    assert (tmp_path / "program.pdf").read_bytes().startswith(b"%PDF")
    area.show_trainee(scene.newcomer_id)
    assert not area.save.isEnabled()
    assert area._why.text() == "Cox has no program now: give them one first."
    qtbot.keyClick(area.kinds, Qt.Key.Key_T)
    assert area.spans.isVisible()


def saved(area: ReportArea, path: Path) -> None:
    figures = area.numbers_shown()
    assert figures is not None
    area.saving.save_book(figures, path)


def test_the_numbers_of_everybody_and_of_one_are_saved_as_text_too(
    qtbot: QtBot, area: ReportArea, tmp_path: Path
) -> None:
    one = area.numbers_shown()
    assert one is not None
    assert [word for word, _ in one.tables] == ["Sessions"]
    ((_, sessions),) = one.tables
    assert area.report is not None
    assert len(sessions.rows) == sum(len(line.progress.best_sets) for line in area.report.lines)
    area.preview.setFocus()
    qtbot.keyClick(area.preview, Qt.Key.Key_E)
    qtbot.waitUntil(lambda: area.sheet is not None and area.sheet.title.startswith("All"))
    saved(area, tmp_path / "month.xlsx")
    book = openpyxl.load_workbook(tmp_path / "month.xlsx")
    assert book.sheetnames == ["trainees", "weeks"]
    people = list(book["trainees"].iter_rows(values_only=True))
    assert people[0] == MONTH_COLUMNS
    assert [row[0] for row in people[1:]] == ["Cox", "Stroke"]
    assert area.month is not None
    assert sum(int(str(row[1])) for row in people[1:]) == area.month.sessions


def test_a_span_without_training_says_so(area: ReportArea, scene: Scene) -> None:
    area.show_span(FIRST - 20 * WEEK, FIRST - 10 * WEEK)
    assert area.sheet is None
    assert not area.save.isEnabled()
    area.show_trainee(scene.newcomer_id)
    assert area.sheet is None
    area.show_span(TODAY, FIRST)
    assert area.sheet is None


def test_pages_and_numbers_are_saved_and_it_is_said(area: ReportArea, tmp_path: Path) -> None:
    said: list[tuple[str, str]] = []
    area.record.message.connect(lambda text, kind: said.append((text, kind)))
    area.output.save_pdf(tmp_path / "report.pdf")
    saved(area, tmp_path / "report.xlsx")
    area.output.save_pdf(tmp_path / "missing" / "report.pdf")
    saved(area, tmp_path / "missing" / "report.xlsx")
    done, error = MessageKind.DONE.value, MessageKind.ERROR.value
    assert [kind for _, kind in said] == [done, done, error, error]
    book = openpyxl.load_workbook(tmp_path / "report.xlsx")
    assert area.report is not None
    assert book.sheetnames == [*(line.name for line in area.report.lines), "muscles"]


def test_a_name_of_markup_stays_a_name(qapp: object, scene: Scene) -> None:
    repository = scene.repository
    evil = repository.save(Trainee("<b>Bow</b>")).saved[0]
    text = report_text(trainee_report(repository, evil.id, FIRST, TODAY))
    assert text.trainee == "<b>Bow</b>"
    repository.remove(evil)
