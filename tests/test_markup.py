"""Markup in names, typed or imported, is shown as it is: by widgets, in tooltips, on paper."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from datetime import date
from importlib.util import find_spec

import pytest
from PySide6.QtCore import QAbstractItemModel, QAbstractListModel, Qt
from PySide6.QtWidgets import (
    QAbstractItemView,
    QApplication,
    QLabel,
    QMessageBox,
    QTextEdit,
    QWidget,
)
from pytestqt.qtbot import QtBot

from db.repository import Repository
from desktop.planning.days import day_plan
from tests.scenario import TODAY, open_club
from views.gallery import ForgottenSettings, settle
from views.main_window import MainWindow
from views.record import Record
from views.theme import Theme
from views.work_areas import WORK_AREAS

MARK = '<img src="file:///x.png"><b>'
AREAS = [entry.key for entry in WORK_AREAS if find_spec(entry.module)]


def marked_club(repository: Repository) -> None:
    """Put markup before every name and text of the club."""
    for trainee in repository.trainees():
        marked = replace(trainee, name=MARK + trainee.name, notes=MARK, aims=MARK, avoid="")
        repository.save(marked)
        for session in repository.sessions(trainee.id or 0):
            lines = tuple(
                replace(
                    one,
                    note=MARK,
                    reason=MARK,
                    sets=tuple(replace(done, note=MARK) for done in one.sets),
                )
                for one in session.lines
            )
            repository.save(replace(session, lines=lines, note=MARK))
    for exercise in repository.exercises():
        scale = tuple(replace(one, name=MARK + one.name) for one in exercise.variations)
        repository.save(
            replace(exercise, name=MARK + exercise.name, cue=MARK, variations=scale, own=True)
        )
    for program in repository.programs():
        phases = tuple(
            replace(
                phase,
                name=MARK + phase.name,
                days=tuple(
                    replace(
                        day,
                        name=MARK + day.name,
                        slots=tuple(replace(slot, note=MARK) for slot in day.slots),
                    )
                    for day in phase.days
                ),
            )
            for phase in program.phases
        )
        repository.save(replace(program, name=MARK + program.name, about=MARK, phases=phases))


@pytest.fixture(scope="module")
def record(tmp_path_factory: pytest.TempPathFactory, qapp: QApplication) -> Iterator[Record]:
    repository = open_club(tmp_path_factory.mktemp("club"), weeks=3)
    marked_club(repository)
    yield Record(repository)
    repository.database.close()


@pytest.fixture
def window(qtbot: QtBot, record: Record) -> MainWindow:
    made = MainWindow(record, TODAY, Theme(calm=True), ForgottenSettings())
    qtbot.addWidget(made)
    with qtbot.waitExposed(made):
        made.show()
    qtbot.waitUntil(lambda: record.roster_complete, timeout=5000)
    made.roster.choose(1)
    return made


# Qt takes a tip for rich text where it finds a tag in it; an escaped one is none.


def rendered(root: QWidget) -> list[str]:
    """Where a text with the mark would be taken for markup."""
    found = []
    for widget in (root, *root.findChildren(QWidget)):
        where = f"{type(widget).__module__}.{type(widget).__name__}"
        if isinstance(widget, QLabel) and MARK in widget.text():
            plain = widget.textFormat() is Qt.TextFormat.PlainText
            found += [] if plain else [f"{where}: {widget.text()!r}"]
        if isinstance(widget, (QMessageBox, QTextEdit)) and "<img" in str(widget.property("html")):
            found.append(f"{where} shows rich text")
        for kind, tip in (("tool", widget.toolTip()), ("status", widget.statusTip())):
            if MARK in tip:
                found.append(f"{where} {kind} tip: {tip!r}")
        if isinstance(widget, QAbstractItemView) and widget.model() is not None:
            found += [f"{where} item tip: {tip!r}" for tip in item_tips(widget.model())]
    return found


def item_tips(model: QAbstractItemModel) -> Iterator[str]:
    """The tips of a list or table with raw marks in them."""
    columns = 1 if isinstance(model, QAbstractListModel) else model.columnCount()
    for row in range(model.rowCount()):
        for column in range(columns):
            tip = model.data(model.index(row, column), Qt.ItemDataRole.ToolTipRole)
            if MARK in str(tip or ""):
                yield str(tip)


@pytest.mark.parametrize("key", AREAS)
def test_no_area_takes_a_name_for_markup(window: MainWindow, key: str) -> None:
    window.show_area(key)
    settle(80)
    shown = [w.text() for w in window.findChildren(QLabel) if MARK in w.text()]
    assert shown or window.areas.area is not None
    assert rendered(window) == []


def test_the_search_finds_what_would_be_rendered(qtbot: QtBot) -> None:
    label = QLabel(MARK + "Bow")
    label.setToolTip(MARK + "Bow")
    qtbot.addWidget(label)
    assert len(rendered(label)) == 2


def test_on_paper_markup_stands_as_it_is(record: Record, qapp: QApplication) -> None:
    from views.sheet_texts import sheet_text

    plan = day_plan(record.repository, 1, date(2026, 11, 23))
    assert plan.slots
    assert MARK in repr(sheet_text(plan))
