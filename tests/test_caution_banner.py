"""The banner: what can be done is done from it, and why is told with the sessions behind it."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from desktop.training.limits import LimitId
from desktop.training.position import Position
from desktop.training.program import Override
from desktop.training.session import LineDone, Session, SetDone
from desktop.training.trainee import DeloadWindow
from tests.strength_room import DAY, MONDAY, Room, as_asked, open_room
from views.blocks import WordButton
from views.caution_banner import CautionBanner
from views.gallery import ForgottenSettings
from views.load_area import CAUTIONS, LoadArea
from views.main_window import MainWindow
from views.record import Record
from views.theme import Theme
from views.work_areas import PROGRAM, SESSION

pytestmark = pytest.mark.usefixtures("english")


@pytest.fixture
def room(tmp_path: Path) -> Iterator[Room]:
    made = open_room(tmp_path)
    yield made
    made.repository.database.close()


def opened(qtbot: QtBot, room: Room, today: date) -> MainWindow:
    window = MainWindow(
        Record(room.repository), today, Theme("light", calm=True), ForgottenSettings()
    )
    qtbot.addWidget(window)
    with qtbot.waitExposed(window):
        window.show()
    window.activateWindow()
    window.roster.choose(room.trainee_id)
    window.show_area(SESSION)
    return window


def turned_to(banner: CautionBanner, limit: LimitId) -> CautionBanner:
    """The banner at the caution of this limit."""
    for _ in range(20):
        if banner.current is not None and banner.current.limit is limit:
            return banner
        banner._next()
    raise AssertionError(f"no {limit} in the banner")


def squats(room: Room, day: date, load_g: int) -> None:
    """Three sets on a day, as they were typed from a notebook."""
    done = LineDone(
        room.line_id("back-squat"), "back-squat", (), 3 * (SetDone(load_g, 5, rir=2.0),)
    )
    room.save(Session(room.trainee_id, day, (done,)))


def words_in(banner: CautionBanner) -> list[str]:
    assert banner.ways is not None
    return [button.accessibleName() for button in banner.ways.buttons]


def way_of(banner: CautionBanner, word: str) -> WordButton:
    assert banner.ways is not None
    return next(one for one in banner.ways.buttons if one.accessibleName() == word)


def key(code: Qt.Key) -> None:
    widget = QApplication.focusWidget()
    assert widget is not None
    QTest.keyClick(widget, code)


def test_a_step_is_taken_back_from_the_banner_as_one_act(qtbot: QtBot, room: Room) -> None:
    room.train(MONDAY)
    line = room.line("back-squat")
    room.save(replace(line, overrides=(Override(MONDAY + DAY, Position(70_000, 8, 3)),)))
    window = opened(qtbot, room, MONDAY + 2 * DAY)
    banner = turned_to(window.banner, LimitId.LOAD_STEP)
    banner._do.setFocus()
    key(Qt.Key.Key_Space)
    assert banner.ways is not None
    assert banner.ways.ways[0].hasFocus()
    assert words_in(banner)[0] == "Stay at 3 × 9 at 60 kg"
    key(Qt.Key.Key_Space)
    assert window.areas.key == SESSION  # nothing was left for it
    assert window._record.undo_stack.count() == 1
    assert len(room.line("back-squat").overrides) == 2
    assert banner.current is None or banner.current.limit is not LimitId.LOAD_STEP
    window._record.undo_stack.undo()
    assert len(room.line("back-squat").overrides) == 1


def test_a_plateau_is_answered_and_set_aside_in_one_act(qtbot: QtBot, room: Room) -> None:
    for ago in range(0, 140, 5):
        squats(room, MONDAY - ago * DAY, 50_000 + ago // 5 * 350)
    window = opened(qtbot, room, MONDAY)
    banner = turned_to(window.banner, LimitId.PLATEAU)
    banner._do.click()
    assert "Let sets grow too, from 3 to 4" in words_in(banner)
    said = next(words for words in words_in(banner) if words.startswith("Deload from"))
    way_of(banner, said).click()
    assert window._record.undo_stack.count() == 1
    (window_saved,) = room.repository.deloads(room.trainee_id)
    assert isinstance(window_saved, DeloadWindow)
    (aside,) = room.repository.dismissed(room.trainee_id)
    assert (aside.limit, aside.why) == ("plateau", said)
    window._record.undo_stack.undo()
    assert room.repository.deloads(room.trainee_id) == ()
    assert room.repository.dismissed(room.trainee_id) == ()


def test_why_names_the_source_and_the_sessions_and_folds_away(qtbot: QtBot, room: Room) -> None:
    session = room.train(MONDAY, lambda one: replace(as_asked(one), pain=2))
    window = opened(qtbot, room, MONDAY + DAY)
    banner = turned_to(window.banner, LimitId.PAIN)
    banner._why.click()
    assert banner._source.isVisible()
    assert banner._source.text() == "Source: common practice"
    assert words_in(banner)[-1] == "Session of Mon 7 Sept"
    with qtbot.waitSignal(banner.session_wanted) as asked:
        way_of(banner, "Session of Mon 7 Sept").click()
    assert asked.args == [session.id]
    banner._why.click()
    assert banner.ways is None
    assert not banner._source.isVisible()


def test_escape_folds_the_ways_away(qtbot: QtBot, room: Room) -> None:
    room.train(MONDAY, lambda one: replace(as_asked(one), pain=2))
    window = opened(qtbot, room, MONDAY + DAY)
    banner = turned_to(window.banner, LimitId.PAIN)
    banner._do.click()
    key(Qt.Key.Key_Escape)
    assert banner.ways is None
    assert banner._do.hasFocus()


def test_a_way_that_only_leads_on_opens_its_screen(qtbot: QtBot, room: Room) -> None:
    room.train(MONDAY, lambda one: replace(as_asked(one), pain=6))
    window = opened(qtbot, room, MONDAY + DAY)
    banner = turned_to(window.banner, LimitId.PAIN_HOLD)
    banner._do.click()
    way_of(banner, "Record a clearance").click()
    area = window.areas.area
    assert isinstance(area, LoadArea)
    assert area.parts.code == CAUTIONS
    forms = [row.form for row in area.cautions.rows if row.form is not None]
    assert [form.by.hasFocus() for form in forms] == [True]
    banner._do.click()
    way_of(banner, "Take another exercise").click()
    assert window.areas.key == PROGRAM


def test_nothing_is_set_aside_without_a_reason(qtbot: QtBot, room: Room) -> None:
    window = opened(qtbot, room, MONDAY + DAY)
    banner = turned_to(window.banner, LimitId.TOO_SELDOM)
    banner._aside.click()
    key(Qt.Key.Key_Return)
    assert room.repository.dismissed(room.trainee_id) == ()
    assert banner._reason.placeholderText().startswith("Needed: the reason")
    key(Qt.Key.Key_Escape)
    assert not banner._reason.isVisible()
    assert banner._aside.hasFocus()
    banner._aside.click()
    banner._reason.setText("  in January ")
    key(Qt.Key.Key_Return)
    (aside,) = room.repository.dismissed(room.trainee_id)
    assert aside.why == "in January"
