"""Everything that takes the focus has a name, and Tab reaches it."""

from __future__ import annotations

from collections.abc import Iterator
from importlib.util import find_spec

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible
from PySide6.QtWidgets import QAbstractSpinBox, QApplication, QLabel, QWidget
from pytestqt.qtbot import QtBot

from tests.scenario import TODAY, open_club
from views.gallery import ForgottenSettings
from views.main_window import MainWindow
from views.record import Record
from views.theme import Scheme, Theme
from views.work_areas import WORK_AREAS


@pytest.fixture(scope="module")
def record(tmp_path_factory: pytest.TempPathFactory, qapp: QApplication) -> Iterator[Record]:
    repository = open_club(tmp_path_factory.mktemp("club"), weeks=1)
    yield Record(repository)
    repository.database.close()


@pytest.fixture
def window(qtbot: QtBot, record: Record) -> MainWindow:
    theme = Theme(Scheme.LIGHT, calm=True)
    made = MainWindow(record, TODAY, theme, ForgottenSettings())
    qtbot.addWidget(made)
    with qtbot.waitExposed(made):
        made.show()
    made.roster.step(1)
    made.map.show_keys(made.menus.key_groups())
    return made


AREAS = [entry.key for entry in WORK_AREAS if find_spec(entry.module)]


def focusable(root: QWidget) -> list[QWidget]:
    """What can be reached by Tab and is shown."""
    return [
        widget
        for widget in root.findChildren(QWidget)
        if widget.focusPolicy() & Qt.FocusPolicy.TabFocus
        and widget.isVisible()
        and not isinstance(widget.parent(), QAbstractSpinBox)
    ]


@pytest.mark.parametrize("key", AREAS)
def test_everything_that_takes_the_focus_has_a_name(window: MainWindow, key: str) -> None:
    window.show_area(key)
    nameless = []
    for widget in focusable(window):
        interface = QAccessible.queryAccessibleInterface(widget)
        if not interface.text(QAccessible.Text.Name).strip():
            nameless.append(f"{type(widget).__name__} in {type(widget.parent()).__name__}")
    assert not nameless


@pytest.mark.parametrize("key", AREAS)
def test_labels_never_render_markup(window: MainWindow, key: str) -> None:
    window.show_area(key)
    rich = [
        label.text()
        for label in window.findChildren(QLabel)
        if label.textFormat() is not Qt.TextFormat.PlainText and label.text()
    ]
    assert not rich


def test_tab_goes_through_the_trainee_form_and_comes_back(window: MainWindow) -> None:
    window.show_area("trainee")
    start = window.roster.filter
    seen: list[QWidget] = []
    widget: QWidget | None = start
    while widget is not None and len(seen) < 3000:
        seen.append(widget)
        widget = widget.nextInFocusChain()
        if widget is start:
            break
    missing = [each for each in focusable(window) if each not in seen]
    assert not missing
