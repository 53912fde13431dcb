"""A chooser: type a few letters, take one of a short list. A panel, never a dialog."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any

from PySide6.QtCore import QEvent, QObject, QSize, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QFrame,
    QHBoxLayout,
    QLineEdit,
    QListWidget,
    QListWidgetItem,
    QVBoxLayout,
    QWidget,
)

from views.blocks import Label, OneLine, WordButton
from views.theme import Theme

Options = Sequence[tuple[str, Any]]
Find = Callable[[str], Options]
MOST_SHOWN = 6
_ROW = 22


class Chooser(QFrame):
    """Asks for one of several options. ``chosen(value)`` or ``given_up`` ends it, both hide it."""

    chosen = Signal(object)
    given_up = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._find: Find = lambda _text: ()
        self._options: Options = ()
        self.setProperty("kind", "block")
        self._title = OneLine("", "heading")
        self._hint = Label(self.tr("Return takes it, Esc leaves"), "small", "muted", wrap=True)
        self.field = QLineEdit()
        self.list = QListWidget()
        self.list.setProperty("kind", "quiet")
        self.list.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._leave = WordButton(self.tr("Leave"), tone="muted")
        head = QHBoxLayout()
        head.addWidget(self._title)
        head.addWidget(self._hint, 1)
        head.addWidget(self._leave)
        self._column = QVBoxLayout(self)
        self._column.addLayout(head)
        self._column.addWidget(self.field)
        self._column.addWidget(self.list)
        self.field.textEdited.connect(self._refill)
        self.field.returnPressed.connect(self._take)
        self.field.installEventFilter(self)
        self.list.itemClicked.connect(lambda _item: self._take())
        self._leave.clicked.connect(self.give_up)
        theme.changed.connect(self._space)
        self._space()
        self.hide()

    def ask(self, title: str, placeholder: str, find: Find) -> None:
        """Ask for one of what ``find`` answers to the letters typed ("" at first)."""
        self._find = find
        self._title.setText(title)
        self.field.setAccessibleName(title)
        self.list.setAccessibleName(title)
        self.field.setPlaceholderText(placeholder)
        self.field.clear()
        self._refill("")
        self.show()
        self.field.setFocus(Qt.FocusReason.ShortcutFocusReason)

    def give_up(self) -> None:
        """Leave without a choice."""
        self.hide()
        self.given_up.emit()

    @property
    def said(self) -> str:
        """What is said beside the question."""
        return self._hint.text()

    @property
    def shown(self) -> tuple[str, ...]:
        """The options shown now."""
        return tuple(name for name, _ in self._options)

    def _refill(self, text: str) -> None:
        self._options = tuple(self._find(text))
        self.list.clear()
        for name, _ in self._options:
            item = QListWidgetItem(name)
            item.setSizeHint(QSize(0, self._theme.px(_ROW)))
            self.list.addItem(item)
        if self._options:
            self.list.setCurrentRow(0)
        nothing = self.tr("Nothing is called like that: try other letters")
        known = self.tr("Return takes it, Esc leaves")
        unknown = not self._options and bool(text.strip())
        self._hint.setText(nothing if unknown else known)
        self._hint.set_tone("stop" if unknown else "muted")

    def _take(self) -> None:
        row = self.list.currentRow()
        if 0 <= row < len(self._options):
            self.hide()
            self.chosen.emit(self._options[row][1])

    def _step(self, rows: int) -> None:
        count = self.list.count()
        if count:
            self.list.setCurrentRow(max(0, min(count - 1, self.list.currentRow() + rows)))

    def _space(self) -> None:
        px = self._theme.px
        self._column.setContentsMargins(px(16), px(10), px(16), px(10))
        self._column.setSpacing(px(6))
        self.list.setFixedHeight(MOST_SHOWN * px(_ROW) + px(4))

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() == QEvent.Type.KeyPress and isinstance(event, QKeyEvent):
            step = {Qt.Key.Key_Down: 1, Qt.Key.Key_Up: -1}.get(Qt.Key(event.key()))
            if step is not None:
                self._step(step)
                return True
            if event.key() == Qt.Key.Key_Escape:
                self.give_up()
                return True
        return super().eventFilter(watched, event)
