"""What stands in place of a sheet on a day on which nothing is asked: why, and where to go."""

from __future__ import annotations

from datetime import date

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from views import words
from views.blocks import Block, Label, WordButton
from views.theme import Theme


class NoSheet(QWidget):
    """``day_wanted(date)``: the next day of training; ``program_wanted``: to assign one."""

    day_wanted = Signal(object)
    program_wanted = Signal()

    def __init__(self, theme: Theme, today: date, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._today = today
        self._next: date | None = None
        self.why = Label("", wrap=True)
        self.to_next = WordButton("", flush=True)
        self.to_program = WordButton(self.tr("Open the program"), flush=True)
        self.to_next.clicked.connect(lambda: self.day_wanted.emit(self._next))
        self.to_program.clicked.connect(self.program_wanted)
        block = Block(theme)
        block.body.addWidget(Label(self.tr("No sheet for this day"), "heading"))
        for widget in (self.why, self.to_next, self.to_program):
            block.body.addWidget(widget)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(block)
        column.addStretch(1)

    def say(self, why: str, next_day: date | None, *, program: bool) -> None:
        """Say why; offer the next day of training, or else the program."""
        self._next = next_day
        self.why.setText(why)
        self.to_program.setVisible(program)
        self.to_next.setVisible(next_day is not None and not program)
        if next_day is not None:
            text = self.tr("Next day of training: {day}")
            self.to_next.set_words(text.format(day=words.short_day(next_day, self._today)))
