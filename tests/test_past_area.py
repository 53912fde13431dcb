"""The past as a screen: searched, corrected, moved, joined and repaired by real keys."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from datetime import timedelta
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication
from pytestqt.modeltest import ModelTester
from pytestqt.qtbot import QtBot

from db.repository import Repository
from desktop.training.session import Session
from tests.keyboard import focused, strike, type_in
from tests.scenario import TODAY, closed_club, copy_of
from views.past_area import PastArea
from views.record import Record
from views.theme import Scheme, Theme

KEY = Qt.Key
CTRL = Qt.KeyboardModifier.ControlModifier
NONE = Qt.KeyboardModifier.NoModifier


@pytest.fixture(scope="module")
def club(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The club's file, made once."""
    return closed_club(tmp_path_factory.mktemp("club"))


@pytest.fixture
def repository(club: Path, tmp_path: Path, english: None) -> Iterator[Repository]:
    """A copy of the club."""
    with copy_of(club, tmp_path) as repository:
        yield repository


@pytest.fixture
def area(repository: Repository, qtbot: QtBot, qapp: QApplication) -> PastArea:
    """Bow's past, shown."""
    theme = Theme(Scheme.LIGHT, calm=True)
    theme.apply(qapp)
    area = PastArea(Record(repository), TODAY, theme)
    qtbot.addWidget(area)
    area.resize(1040, 720)
    with qtbot.waitExposed(area):
        area.show()
    area.activateWindow()
    area.show_trainee(bow(repository))
    return area


def bow(repository: Repository) -> int:
    trainee = repository.trainee_named("Bow")
    assert trainee is not None
    assert trainee.id is not None
    return trainee.id


def sessions(area: PastArea) -> tuple[Session, ...]:
    return area.record.repository.sessions(bow(area.record.repository))


def test_the_latest_session_stands_first_and_in_full(area: PastArea) -> None:
    last = sessions(area)[-1]
    row = area.table.row
    assert row is not None
    assert row.session_id == last.id
    assert len(area.table.past.rows) == len(sessions(area))
    assert any(text.startswith("Entered") for text in area.detail.said)


def test_a_search_finds_by_exercise_and_shows_its_sets(area: PastArea) -> None:
    strike(KEY.Key_F, modifier=CTRL)
    type_in("l-sit")
    rows = area.table.past.rows
    assert 0 < len(rows) < len(sessions(area))
    assert all("L-sit" in row.exercises and " s" in row.exercises for row in rows)
    type_in(" 2026-10")
    assert 0 < len(area.table.past.rows) < len(rows)
    strike(KEY.Key_Escape)
    assert len(area.table.past.rows) == len(sessions(area))
    strike(KEY.Key_Down)
    assert focused() is area.table


def test_return_opens_the_session(area: PastArea, qtbot: QtBot) -> None:
    with qtbot.waitSignal(area.session_wanted) as opened:
        strike(KEY.Key_Return)
    assert opened.args == [sessions(area)[-1].id]


def test_a_session_moves_to_another_date_after_its_effect_was_said(area: PastArea) -> None:
    before = sessions(area)
    strike(KEY.Key_F2)
    type_in((TODAY + timedelta(days=1)).isoformat())
    strike(KEY.Key_Return)
    assert "today at the latest" in area.dates.wrong.text()
    focused().selectAll()  # type: ignore[attr-defined]
    day = before[-1].day - timedelta(days=1)
    type_in(day.isoformat())
    strike(KEY.Key_Return)
    assert area.effects.isVisible()
    assert area.effects.text.text()
    assert sessions(area) == before
    strike(KEY.Key_Return)
    assert sessions(area)[-1].day == day
    assert any("day" in text for text in area.detail.said)
    area.record.undo_stack.undo()
    assert [(one.id, one.day, one.lines) for one in sessions(area)] == [
        (one.id, one.day, one.lines) for one in before
    ]


def test_two_sessions_are_joined_in_one_step(area: PastArea) -> None:
    before = sessions(area)
    last, other = before[-1], before[-2]
    near = replace(other, day=last.day - timedelta(days=1))
    area.record.save("Move", near)
    strike(KEY.Key_F3)
    strike(KEY.Key_Return)
    assert area.effects.isVisible()
    strike(KEY.Key_Return)
    after = sessions(area)
    assert len(after) == len(before) - 1
    assert sum(len(p.sets) for p in after[-1].lines) == sum(
        len(p.sets) for one in (last, other) for p in one.lines
    )
    area.record.undo_stack.undo()
    assert [(one.id, one.lines) for one in sessions(area)] == [
        (one.id, one.lines) for one in before
    ]


def test_an_exercise_is_another_one_everywhere_in_one_step(area: PastArea) -> None:
    before = sessions(area)
    of_squat = [one for one in before if any(p.exercise == "back-squat" for p in one.lines)]
    area.table.stand_on(of_squat[-1].id or 0)
    strike(KEY.Key_F4)
    type_in("back")
    strike(KEY.Key_Return)
    type_in("l-sit")
    strike(KEY.Key_Return)
    assert not area.effects.isVisible()  # held, not counted: refused in words
    strike(KEY.Key_F4)
    type_in("back")
    strike(KEY.Key_Return)
    type_in("bench")
    strike(KEY.Key_Return)
    assert area.effects.isVisible()
    assert f"{len(of_squat)} sessions" in area.effects.title.text()
    strike(KEY.Key_Return)
    assert not any(p.exercise == "back-squat" for one in sessions(area) for p in one.lines)
    assert sum(len(p.sets) for one in sessions(area) for p in one.lines) == sum(
        len(p.sets) for one in before for p in one.lines
    )
    area.record.undo_stack.undo()
    assert [one.lines for one in sessions(area)] == [one.lines for one in before]


def test_a_session_is_removed_and_comes_back(area: PastArea) -> None:
    before = sessions(area)
    strike(KEY.Key_Delete)
    strike(KEY.Key_Escape)
    assert sessions(area) == before
    strike(KEY.Key_Delete)
    strike(KEY.Key_Return)
    assert len(sessions(area)) == len(before) - 1
    area.record.undo_stack.undo()
    assert len(sessions(area)) == len(before)


def test_the_model_keeps_the_rules(area: PastArea, qtmodeltester: ModelTester) -> None:
    qtmodeltester.check(area.table.past)


def test_an_empty_list_says_why(area: PastArea, repository: Repository) -> None:
    strike(KEY.Key_F, modifier=CTRL)
    type_in("zzqq")
    assert area.empty.isVisible()
    assert "Esc shows them all" in area.empty.text()
    strike(KEY.Key_Escape)
    assert not area.empty.isVisible()
    cox = repository.trainee_named("Cox")
    assert cox is not None
    area.show_trainee(cox.id)
    assert "Nothing is on record yet" in area.empty.text()
    strike(KEY.Key_Delete, KEY.Key_F2, KEY.Key_F3, KEY.Key_F4)
    assert not area.effects.isVisible()


def test_a_session_changed_elsewhere_is_told_and_nothing_is_overwritten(area: PastArea) -> None:
    before = sessions(area)
    last, other = before[-1], before[-2]
    act = area.desk.join(last, other)
    area.record.repository.save(replace(other, note="changed elsewhere"))
    said: list[str] = []
    area.record.message.connect(lambda text, _kind: said.append(text))
    assert not act.do()
    assert said
    assert len(sessions(area)) == len(before)
    assert not area.record.undo_stack.canUndo()
