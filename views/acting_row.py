"""Rows that take the focus and act on keys: of programs, of days, of slots."""

from __future__ import annotations

from enum import Enum, auto
from typing import Final

from PySide6.QtCore import QEvent, Qt, Signal
from PySide6.QtGui import QKeyEvent, QMouseEvent
from PySide6.QtWidgets import QWidget


class RowAct(Enum):
    """What a key in a row asks for."""

    BEFORE = auto()
    AFTER = auto()
    MOVE_UP = auto()
    MOVE_DOWN = auto()
    DUPLICATE = auto()
    REMOVE = auto()
    EDIT = auto()
    EXCHANGE = auto()
    LEAVE = auto()
    FIRST = auto()
    LAST = auto()
    MARK = auto()
    MARK_BEFORE = auto()
    MARK_AFTER = auto()
    MARK_ALL = auto()
    COPY = auto()
    PASTE = auto()


_PLAIN: Final = {
    Qt.Key.Key_Up: RowAct.BEFORE,
    Qt.Key.Key_Down: RowAct.AFTER,
    Qt.Key.Key_Delete: RowAct.REMOVE,
    Qt.Key.Key_Return: RowAct.EDIT,
    Qt.Key.Key_Enter: RowAct.EDIT,
    Qt.Key.Key_F2: RowAct.EXCHANGE,
    Qt.Key.Key_Escape: RowAct.LEAVE,
    Qt.Key.Key_Home: RowAct.FIRST,
    Qt.Key.Key_End: RowAct.LAST,
    Qt.Key.Key_Space: RowAct.MARK,
}
_ALT: Final = {Qt.Key.Key_Up: RowAct.MOVE_UP, Qt.Key.Key_Down: RowAct.MOVE_DOWN}
_SHIFT: Final = {Qt.Key.Key_Up: RowAct.MARK_BEFORE, Qt.Key.Key_Down: RowAct.MARK_AFTER}
_CTRL: Final = {
    Qt.Key.Key_D: RowAct.DUPLICATE,
    Qt.Key.Key_A: RowAct.MARK_ALL,
    Qt.Key.Key_C: RowAct.COPY,
    Qt.Key.Key_V: RowAct.PASTE,
}


def act_of(event: QKeyEvent) -> RowAct | None:
    """What a key asks of the row (or the heading of a day) that has the focus."""
    held = event.modifiers() & ~Qt.KeyboardModifier.KeypadModifier
    keys = {
        Qt.KeyboardModifier.NoModifier: _PLAIN,
        Qt.KeyboardModifier.AltModifier: _ALT,
        Qt.KeyboardModifier.ShiftModifier: _SHIFT,
        Qt.KeyboardModifier.ControlModifier: _CTRL,
    }.get(held, {})
    return keys.get(Qt.Key(event.key()))


class ActingRow(QWidget):
    """A row that takes the focus and says what its keys ask for by ``acted(RowAct)``."""

    acted = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)

    def event(self, event: QEvent) -> bool:
        wanted = event.type() is QEvent.Type.ShortcutOverride
        if wanted and isinstance(event, QKeyEvent) and act_of(event) is not None:
            event.accept()
            return True
        if event.type() in (QEvent.Type.FocusIn, QEvent.Type.FocusOut):
            self.update()
        return super().event(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        act = act_of(event)
        if act is None:
            super().keyPressEvent(event)
        else:
            self.acted.emit(act)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        self.setFocus(Qt.FocusReason.MouseFocusReason)

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        self.acted.emit(RowAct.EDIT)
