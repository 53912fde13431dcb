"""Buttons act at once, on every key that is meant for them."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLineEdit, QVBoxLayout, QWidget
from pytestqt.qtbot import QtBot

from views.blocks import MainButton, WordButton

KEYS = (Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Space)


@pytest.mark.parametrize("key", KEYS)
@pytest.mark.parametrize("kind", [WordButton, MainButton])
def test_a_focused_button_acts_on_return_as_on_space(
    qtbot: QtBot, kind: type[WordButton | MainButton], key: Qt.Key
) -> None:
    button = kind("Open")
    qtbot.addWidget(button)
    with qtbot.waitExposed(button):
        button.show()
    with qtbot.waitSignal(button.clicked):
        qtbot.keyClick(button, key)


def test_keys_after_a_shortcut_go_where_it_led(qtbot: QtBot) -> None:
    window = QWidget()
    column = QVBoxLayout(window)
    field, open_it = QLineEdit(), WordButton("Open", "F4")
    column.addWidget(field)
    column.addWidget(open_it)
    open_it.clicked.connect(field.setFocus)
    qtbot.addWidget(window)
    with qtbot.waitActive(window):
        window.show()
    open_it.setFocus()
    qtbot.keyClick(window, Qt.Key.Key_F4)
    assert field.hasFocus()
