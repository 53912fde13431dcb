"""A cell of the sheet: one value of one set, typed as text, with keys that move on."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from enum import Enum, auto
from typing import Final

from PySide6.QtCore import QEvent, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QFocusEvent, QKeyEvent, QPainter, QPaintEvent, QPolygonF
from PySide6.QtWidgets import QLineEdit, QSizePolicy, QWidget

from desktop.planning.typed_cells import Row
from views import words
from views.blocks import restyle
from views.session_texts import spoken_difference
from views.theme import TextSize, Theme


class Command(Enum):
    """What a key in a cell asks for."""

    NEXT = auto()
    BACK = auto()
    UP = auto()
    DOWN = auto()
    SLOT_UP = auto()
    SLOT_DOWN = auto()
    CONFIRM = auto()
    AS_ASKED = auto()
    EXTRA_SET = auto()
    DROP_SET = auto()
    WARM_UP = auto()
    UNTYPE = auto()
    RETYPE = auto()


_TALL: Final = 22
_LOW: Final = 18
_NONE: Final = Qt.KeyboardModifier.NoModifier
_CTRL: Final = Qt.KeyboardModifier.ControlModifier
_SHIFT: Final = Qt.KeyboardModifier.ShiftModifier

# Keys that act wherever the text cursor stands.
_KEYS: Final = {
    (_NONE, Qt.Key.Key_Return): Command.CONFIRM,
    (_NONE, Qt.Key.Key_Enter): Command.CONFIRM,
    (_NONE, Qt.Key.Key_Up): Command.UP,
    (_NONE, Qt.Key.Key_Down): Command.DOWN,
    (_NONE, Qt.Key.Key_PageUp): Command.SLOT_UP,
    (_NONE, Qt.Key.Key_PageDown): Command.SLOT_DOWN,
    (_NONE, Qt.Key.Key_Space): Command.AS_ASKED,
    (_NONE, Qt.Key.Key_Equal): Command.AS_ASKED,
    (_SHIFT, Qt.Key.Key_Equal): Command.AS_ASKED,
    (_NONE, Qt.Key.Key_F5): Command.WARM_UP,
    (_CTRL, Qt.Key.Key_N): Command.EXTRA_SET,
    (_CTRL, Qt.Key.Key_Delete): Command.DROP_SET,
    (_CTRL, Qt.Key.Key_Z): Command.UNTYPE,
    (_CTRL | _SHIFT, Qt.Key.Key_Z): Command.RETYPE,
    (_CTRL, Qt.Key.Key_Y): Command.RETYPE,
}


@dataclass(frozen=True, slots=True)
class Difference:
    """How far a value is from what was asked: its sign, and the number with a minus if below."""

    sign: int
    number: str

    @property
    def text(self) -> str:
        """With its sign: "+1"."""
        return f"+{self.number}" if self.sign > 0 else self.number

    @property
    def spoken(self) -> str:
        """Read aloud."""
        return spoken_difference(self.sign, self.number.lstrip(words.MINUS))


MayStep = Callable[[Command], bool]


class SetCell(QLineEdit):
    """One value of one set.

    ``typed(text)`` at every change by hand; ``commanded(Command)``; ``entered`` and ``left`` with
    the focus. ``may_step`` says whether typing can be taken back or done again: where not, the
    key is the window's.
    """

    typed = Signal(str)
    commanded = Signal(object)
    entered = Signal()
    left = Signal()

    def __init__(
        self, theme: Theme, row: Row, may_step: MayStep, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._theme = theme
        self._may_step = may_step
        self._difference: Difference | None = None
        self._marked: tuple[str, str, Difference | None] = ("", "", None)
        self.row = row
        self.setProperty("kind", "cell")
        self.setProperty("row", "done" if row is Row.DONE else "quiet")
        self.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        self.setMaxLength(60)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setContextMenuPolicy(Qt.ContextMenuPolicy.NoContextMenu)
        self.textEdited.connect(self.typed)
        self._space()
        theme.changed.connect(self._space)

    def show_text(self, text: str, placeholder: str = "") -> None:
        """Show a text; the cursor stays where it is when nothing changes."""
        if text != self.text():
            self.setText(text)
        if placeholder != self.placeholderText():
            self.setPlaceholderText(placeholder)

    def show_state(self, wrong: str, doubt: str, difference: Difference | None) -> None:
        """Mark what is wrong or doubtful, and the difference from what was asked."""
        if self._marked == (wrong, doubt, difference):
            return
        self._marked = (wrong, doubt, difference)
        self._difference = difference
        state = "wrong" if wrong else "doubt" if doubt else ""
        told = wrong or doubt or (difference.spoken if difference else "")
        self.setAccessibleDescription(told)
        if self.property("state") != state:
            self.setProperty("state", state)
            restyle(self)
        self.update()

    def _space(self) -> None:
        self.updateGeometry()
        size = TextSize.BODY if self.row is Row.DONE else TextSize.SMALL
        self.setFont(self._theme.font(size, bold=self.row is Row.DONE))

    def _commanded(self, event: QKeyEvent) -> Command | None:
        modifiers = event.modifiers() & ~Qt.KeyboardModifier.KeypadModifier
        command = _KEYS.get((modifiers, Qt.Key(event.key())))
        if command in (Command.UNTYPE, Command.RETYPE) and not self._may_step(command):
            return None
        if event.key() == Qt.Key.Key_Space and self.text() and not self._all_selected():
            return None  # within a text it is a space
        return command

    def _all_selected(self) -> bool:
        return self.hasSelectedText() and len(self.selectedText()) == len(self.text())

    def _leaves_by(self, event: QKeyEvent) -> Command | None:
        """Left and right move the text cursor, and on from either end."""
        if event.modifiers() & ~Qt.KeyboardModifier.KeypadModifier != _NONE:
            return None
        whole = self._all_selected()
        at_end = not self.hasSelectedText() and self.cursorPosition() == len(self.text())
        at_start = not self.hasSelectedText() and self.cursorPosition() == 0
        if event.key() == Qt.Key.Key_Right and (whole or at_end):
            return Command.NEXT
        if event.key() == Qt.Key.Key_Left and (whole or at_start):
            return Command.BACK
        return None

    def sizeHint(self) -> QSize:
        """The same height in every state: a border that grows takes from the inside."""
        height = self._theme.px(_TALL if self.row is Row.DONE else _LOW)
        return QSize(super().sizeHint().width(), height)

    def minimumSizeHint(self) -> QSize:
        return QSize(0, self.sizeHint().height())

    def event(self, event: QEvent) -> bool:
        if event.type() == QEvent.Type.ShortcutOverride and isinstance(event, QKeyEvent):
            undo = (Qt.Key.Key_Z, Qt.Key.Key_Y)
            if self._commanded(event) is not None:
                event.accept()
                return True
            if event.modifiers() & _CTRL and event.key() in undo:
                event.ignore()  # the field's own undo would hide the window's
                return True
        return super().event(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        command = self._commanded(event) or self._leaves_by(event)
        if command is not None:
            self.commanded.emit(command)
        elif event.key() == Qt.Key.Key_Delete and event.modifiers() == _NONE:
            self.clear()
            self.typed.emit("")
        else:
            super().keyPressEvent(event)

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        if event.reason() is not Qt.FocusReason.MouseFocusReason:
            self.selectAll()
        self.entered.emit()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        self.deselect()
        self.left.emit()

    def paintEvent(self, event: QPaintEvent) -> None:
        super().paintEvent(event)
        if self._difference is not None:
            painter = QPainter(self)
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            self._draw_difference(painter, self._difference)
            painter.end()

    def _draw_difference(self, painter: QPainter, difference: Difference) -> None:
        """A triangle and the signed number: up and green for more, down and amber for less."""
        px = self._theme.px
        more = difference.sign > 0
        colour = self._theme.colour("good" if more else "caution")
        side, left, middle = px(8), px(6), self.height() / 2
        base, tip = (middle + side / 2, middle - side / 2) if more else (
            middle - side / 2, middle + side / 2,
        )  # fmt: skip
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(colour)
        painter.drawPolygon(
            QPolygonF(
                [QPointF(left, base), QPointF(left + side, base), QPointF(left + side / 2, tip)]
            )
        )
        text = difference.text
        room = self.width() - 2 * left - side - self.fontMetrics().horizontalAdvance(self.text())
        font = self._theme.font(TextSize.SMALL)
        font.setPointSizeF(font.pointSizeF() * 0.88)
        painter.setFont(font)
        wide = painter.fontMetrics().horizontalAdvance(text)
        if wide + px(6) <= room:
            painter.setPen(colour)
            place = QRectF(left + side + px(2), 0, wide + px(2), self.height())
            painter.drawText(place, Qt.AlignmentFlag.AlignVCenter, text)
