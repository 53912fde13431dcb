"""A word with its key acts at once, so that what is typed next goes where it is meant to."""

from __future__ import annotations

from PySide6.QtGui import QKeySequence
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLineEdit, QVBoxLayout, QWidget
from pytestqt.qtbot import QtBot

from views.blocks import WordButton


def test_a_key_acts_before_the_next_one_is_typed(qtbot: QtBot) -> None:
    window = QWidget()
    column = QVBoxLayout(window)
    button = WordButton("Add", "Ctrl+K")
    first, second = QLineEdit(), QLineEdit()
    for part in (button, first, second):
        column.addWidget(part)
    button.clicked.connect(second.setFocus)
    qtbot.addWidget(window)
    with qtbot.waitActive(window):
        window.show()
        window.activateWindow()
    first.setFocus()
    QTest.keySequence(first, QKeySequence("Ctrl+K"))
    focused = QApplication.focusWidget()
    assert focused is second
    QTest.keyClicks(second, "8")
    assert (first.text(), second.text()) == ("", "8")
    assert not button.isDown()


def test_a_button_that_is_off_does_not_act(qtbot: QtBot) -> None:
    window = QWidget()
    column = QVBoxLayout(window)
    button = WordButton("Add", "Ctrl+K")
    column.addWidget(button)
    button.setEnabled(False)
    acted: list[bool] = []
    button.clicked.connect(lambda: acted.append(True))
    qtbot.addWidget(window)
    with qtbot.waitActive(window):
        window.show()
        window.activateWindow()
    QTest.keySequence(window, QKeySequence("Ctrl+K"))
    assert acted == []
