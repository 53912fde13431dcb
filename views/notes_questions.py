"""The open question of the notes: what is doubtful, and answers to choose by key."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QListWidget, QListWidgetItem, QWidget

from views.blocks import Block, Label, WordButton
from views.flow_layout import FlowLayout
from views.theme import Theme

_ROW = 24
_MOST = 6


class NotesQuestions(Block):
    """One question at a time. ``answered(place)`` with the place of the answer in the list,
    ``stepped(by)`` for another question.
    """

    answered = Signal(int)
    stepped = Signal(int)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(theme, parent=parent)
        self.place = Label("", "small", "muted")
        self.said = Label("", "heading", "caution", wrap=True)
        self.hint = Label("", tone="muted", wrap=True)
        self.list = AnswerList(theme)
        self.list.taken.connect(self.answered)
        self.list.stepped.connect(self.stepped)
        self.before = WordButton(self.tr("Before"), "Shift+F8", tone="muted")
        self.after = WordButton(self.tr("Next"), "F8", tone="muted")
        self.before.clicked.connect(lambda: self.stepped.emit(-1))
        self.after.clicked.connect(lambda: self.stepped.emit(1))
        head = FlowLayout()
        head.setContentsMargins(0, 0, 0, 0)
        for each in (self.place, self.before, self.after):
            head.addWidget(each)
        self.body.addLayout(head)
        for widget in (self.said, self.hint, self.list):
            self.body.addWidget(widget)

    def ask(
        self, place: str, said: str, hint: str, answers: Sequence[str], *, several: bool
    ) -> None:
        """Ask one question; ``several``: there are others."""
        self.place.setText(place)
        self.said.setText(said)
        self.hint.setText(hint)
        self.hint.setVisible(bool(hint))
        self.list.setAccessibleName(said)
        self.list.offer(answers)
        self.before.setVisible(several)
        self.after.set_words(self.tr("Next") if several else self.tr("Answer"))


class AnswerList(QListWidget):
    """Answers with their number: a digit takes one at once, Return the one stood on."""

    taken = Signal(int)
    stepped = Signal(int)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self.setProperty("kind", "quiet")
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.itemClicked.connect(lambda item: self.taken.emit(self.row(item)))
        theme.changed.connect(self._space)

    def offer(self, answers: Sequence[str]) -> None:
        """Show these."""
        self.clear()
        for number, text in enumerate(answers, 1):
            item = QListWidgetItem(f"{number}  {text}" if number < 10 else text)
            self.addItem(item)
        if answers:
            self.setCurrentRow(0)
        self._space()

    @property
    def shown(self) -> tuple[str, ...]:
        """The answers shown."""
        return tuple(self.item(row).text() for row in range(self.count()))

    def _space(self) -> None:
        row = self._theme.px(_ROW)
        for each in range(self.count()):
            self.item(each).setSizeHint(QSize(0, row))
        self.setFixedHeight(max(1, min(_MOST, self.count())) * row + self._theme.px(4))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key, digit = event.key(), event.text()
        if digit.isdigit() and 0 < int(digit) <= self.count():
            self.taken.emit(int(digit) - 1)
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Space):
            if self.currentRow() >= 0:
                self.taken.emit(self.currentRow())
        else:
            super().keyPressEvent(event)
