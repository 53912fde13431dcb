"""The numbers behind the pictures of week and load, and how they are saved."""

from __future__ import annotations

import csv
from collections.abc import Iterator
from datetime import date
from pathlib import Path

import openpyxl
import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFileDialog, QMenu
from pytestqt.qtbot import QtBot

from db.books import BookTable, write_table
from db.errors import CannotWrite
from desktop.planning.deload_plan import plan_of, proposal_of
from desktop.planning.history import read_history
from desktop.planning.load import load_history_of
from desktop.planning.load_export import (
    AHEAD_COLUMNS,
    DAY_COLUMNS,
    WEEK_COLUMNS,
    ahead_table,
    day_table,
    week_table,
)
from desktop.training.exercises import Muscle
from desktop.training.session import Activity
from tests.strength_room import DAY, MONDAY, WEEK, Room, open_room
from views.load_area import DELOAD, LoadArea
from views.load_weeks_layout import laid_out, week_rows
from views.load_weeks_painter import earlier_word
from views.record import MessageKind, Record
from views.theme import Theme

pytestmark = pytest.mark.usefixtures("english")

TODAY = MONDAY + 2 * WEEK + 2 * DAY


@pytest.fixture
def room(tmp_path: Path) -> Iterator[Room]:
    made = open_room(tmp_path)
    made.train(MONDAY, effort=6, minutes=50)
    made.save(Activity(made.trainee_id, MONDAY + DAY, "=rowing", 60, 4))
    made.train(MONDAY + WEEK, effort=None, minutes=50)
    yield made
    made.repository.database.close()


def rows(table: BookTable) -> list[dict[str, object]]:
    return [dict(zip(table.columns, row, strict=True)) for row in table.rows]


def test_days_and_weeks_are_those_of_the_picture(room: Room) -> None:
    told = load_history_of(read_history(room.repository, room.trainee_id), TODAY, weeks=3)
    days = rows(day_table(told))
    assert tuple(days[0]) == DAY_COLUMNS
    assert len(days) == 2 * 7 + 3  # up to today
    first, second, unrated = days[0], days[1], days[7]
    assert (first["date"], first["load_of_sessions"], first["average_7_days"]) == (MONDAY, 300, 300)
    assert second["load_of_activities"] == 240
    assert second["average_7_days"] == 240 / 4 + 300 * 3 / 4
    assert (unrated["sessions_without_rating"], unrated["load_of_sessions"]) == (1, 0)
    weeks = rows(week_table(told))
    assert tuple(weeks[0]) == WEEK_COLUMNS
    assert [week["load"] for week in weeks] == [540, 0, 0]
    assert [week["incomplete"] for week in weeks] == ["no", "yes", "no"]
    assert weeks[0]["monotony"] == pytest.approx(0.6271, abs=1e-4)  # mean 77.14, deviation 123.02
    assert weeks[2]["monotony"] is None  # it still runs
    shown = told.weeks[0].sets_done.by_muscle
    assert {m: weeks[0][f"{m.name.lower()}_done"] for m in Muscle if m in shown} == dict(shown)


def test_averages_are_those_of_the_evening_and_no_later_than_today(room: Room) -> None:
    told = load_history_of(read_history(room.repository, room.trainee_id), TODAY, weeks=3)
    assert told.averages_on(MONDAY) == (300, 300)
    assert told.averages_on(MONDAY - DAY) is None
    assert told.averages_on(TODAY + WEEK) == told.averages_on(TODAY)
    assert told.trend is not None
    assert told.averages_on(TODAY) == (told.trend.short[-1], told.trend.long[-1])


def test_the_weeks_to_come_stand_beside_those_without_the_deload(room: Room) -> None:
    history = read_history(room.repository, room.trainee_id)
    plan = plan_of(history, proposal_of(history, TODAY).window, TODAY)
    table = rows(ahead_table(plan))
    assert tuple(table[0]) == AHEAD_COLUMNS
    assert [week["sets"] for week in table] == [week.sets for week in plan.weeks]
    eased = [week for week in table if week["deload"] == "yes"]
    assert all(int(str(w["sets"])) < int(str(w["sets_without_it"])) for w in eased)


def test_text_is_written_the_same_in_every_locale_and_never_as_a_formula(tmp_path: Path) -> None:
    table = BookTable("t", ("day", "what", "load"), ((date(2026, 9, 7), "=1+1", 2.5),))
    target = tmp_path / "t.csv"
    write_table(table, target)
    assert target.read_bytes().startswith(b"\xef\xbb\xbf")
    with target.open(encoding="utf-8-sig", newline="") as stream:
        assert list(csv.reader(stream)) == [
            ["day", "what", "load"],
            ["2026-09-07", "'=1+1", "2.5"],
        ]
    with pytest.raises(CannotWrite):
        write_table(table, tmp_path / "missing" / "t.csv")


def opened(qtbot: QtBot, room: Room) -> LoadArea:
    area = LoadArea(Record(room.repository), TODAY, Theme("light", calm=True))
    qtbot.addWidget(area)
    area.resize(1064, 776)
    area.show_trainee(room.trainee_id)
    with qtbot.waitExposed(area):
        area.show()
    return area


def test_the_menu_offers_each_table_and_all_of_it(
    qtbot: QtBot, room: Room, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    area = opened(qtbot, room)
    said: list[tuple[str, str]] = []
    area.record.message.connect(lambda text, kind: said.append((text, kind)))
    asked: list[str] = []

    def answered(dialog: QFileDialog) -> None:
        asked.append(Path(dialog.selectedFiles()[0]).name)
        dialog.fileSelected.emit(str(tmp_path / asked[-1]))

    monkeypatch.setattr(QFileDialog, "open", answered)
    menu = area.week.saving.menu()
    assert isinstance(menu, QMenu)
    words = [action.text() for action in menu.actions()]
    assert words == ["Days (CSV)…", "Weeks and muscles (CSV)…", "All of it (spreadsheet)…"]
    for action in menu.actions():
        action.trigger()
    assert asked == [
        f"Load of Seat 2 {TODAY.isoformat()} days.csv",
        f"Load of Seat 2 {TODAY.isoformat()} weeks.csv",
        f"Load of Seat 2 {TODAY.isoformat()}.xlsx",
    ]
    assert [kind for _, kind in said] == 3 * [MessageKind.DONE.value]
    assert openpyxl.load_workbook(tmp_path / asked[-1]).sheetnames == ["days", "weeks"]
    area.show_part(DELOAD)
    ahead = area.deload.saving.menu()
    assert ahead is not None
    assert [a.text() for a in ahead.actions()] == [
        "Weeks to come (CSV)…",
        "All of it (spreadsheet)…",
    ]


def test_a_file_that_cannot_be_written_is_said(qtbot: QtBot, room: Room, tmp_path: Path) -> None:
    area = opened(qtbot, room)
    now = area.week.numbers_shown()
    assert now is not None
    with qtbot.waitSignal(area.record.message) as said:
        area.week.saving.save_book(now, tmp_path / "missing" / "load.xlsx")
    assert said.args is not None
    assert said.args[0].startswith("Not saved: ")


def test_weeks_without_room_are_counted_at_the_left(qtbot: QtBot, room: Room) -> None:
    area = opened(qtbot, room)
    told = area.week.told
    assert told is not None
    sheet = laid_out(area.theme, told, 15, week_rows(told.weeks), 600)
    assert sheet.seen.start > 0
    assert earlier_word(sheet) == f"‹ {sheet.seen.start} earlier"
    assert earlier_word(laid_out(area.theme, told, 15, week_rows(told.weeks), 4000)) == ""


def test_numbers_are_one_key_away(
    qtbot: QtBot, room: Room, monkeypatch: pytest.MonkeyPatch
) -> None:
    area = opened(qtbot, room)
    asked: list[object] = []
    monkeypatch.setattr(area.week.saving, "ask_how", asked.append)
    qtbot.keyClick(area.week, Qt.Key.Key_S, Qt.KeyboardModifier.ControlModifier)
    assert asked == [area.week.numbers]
