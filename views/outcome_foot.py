"""The foot under what a session meant: back, undo, and on to the next trainee."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QSizePolicy, QVBoxLayout, QWidget

from views.blocks import WordButton, rule
from views.flow_layout import FlowLayout
from views.key_word import KeyWord
from views.theme import Theme


class OutcomeFoot(QWidget):
    """``back_wanted``, ``undo_wanted``, ``remove_wanted``, ``next_wanted``."""

    back_wanted = Signal()
    undo_wanted = Signal()
    remove_wanted = Signal()
    next_wanted = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self.back = KeyWord(self.tr("Back to the session"), "Alt+Left")
        self.undo = WordButton(self.tr("Undo saving"))
        self.remove = WordButton(self.tr("Remove the session"), tone="muted")
        self.next = KeyWord(self.tr("Next trainee"), "Ctrl+Return", strong=True)
        between = QWidget()
        between.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        row = FlowLayout()
        row.setSpacing(theme.grid())
        for widget in (self.back, self.undo, self.remove, between, self.next):
            row.addWidget(widget)
        row.setAlignment(self.next, Qt.AlignmentFlag.AlignRight)
        self._column = QVBoxLayout(self)
        self._line = QHBoxLayout()
        self._line.addWidget(rule())
        self._column.addLayout(self._line)
        self._column.addLayout(row)
        self.back.clicked.connect(self.back_wanted)
        self.undo.clicked.connect(self.undo_wanted)
        self.remove.clicked.connect(self.remove_wanted)
        self.next.clicked.connect(self.next_wanted)
        theme.changed.connect(self._space)
        self._space()

    def show_next(self, name: str) -> None:
        """Who comes next; "" where nobody is due."""
        text = self.tr("Next: {name}").format(name=name) if name else self.tr("To the desk")
        self.next.set_words(text)

    def _space(self) -> None:
        edge = self._theme.grid(3)
        inset = self._theme.px(7)  # the words have a margin of their own
        self._line.setContentsMargins(inset, 0, inset, 0)
        self._column.setContentsMargins(edge - inset, 0, edge - inset, self._theme.px(10))
        self._column.setSpacing(self._theme.px(8))
