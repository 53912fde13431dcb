"""Real keys into whatever has the focus; shared by the tests of screens."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeySequence
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget

PLAIN = Qt.KeyboardModifier.NoModifier


def focused() -> QWidget:
    widget = QApplication.focusWidget()
    assert widget is not None
    return widget


def press(*keys: str) -> None:
    """Keys by name ("Alt+Down")."""
    for key in keys:
        QTest.keySequence(focused(), QKeySequence(key))


def strike(*keys: Qt.Key, modifier: Qt.KeyboardModifier = PLAIN) -> None:
    """Keys by code, all with one modifier."""
    for key in keys:
        QTest.keyClick(focused(), key, modifier)


def type_in(text: str) -> None:
    """Letter by letter: one may move the focus."""
    for letter in text:
        QTest.keyClick(focused(), letter)  # type: ignore[call-overload]
