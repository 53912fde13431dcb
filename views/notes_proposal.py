"""What the notes propose: days, exercises, sets, each leading on to what can be changed."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QHBoxLayout, QScrollArea, QVBoxLayout, QWidget

from desktop.planning.noted import Noted, ProposedDay, ProposedLine, Question
from views import words
from views.blocks import Block, Label, WordButton
from views.notes_texts import line_title, set_up_name, sets_text
from views.theme import Theme


class NotesProposal(QScrollArea):
    """``exercise_wanted(ProposedLine)``: the coach means another one; ``question_wanted(Question)``
    jumps to what is asked.
    """

    exercise_wanted = Signal(object)
    question_wanted = Signal(object)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self.names: list[WordButton] = []
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        ground = QWidget()
        self._column = QVBoxLayout(ground)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(theme.px(12))
        self.setWidget(ground)
        for each in (ground, self.viewport()):
            each.setAutoFillBackground(False)

    def show_noted(
        self, noted: Noted | None, recorded: Callable[[ProposedDay, ProposedLine], bool]
    ) -> None:
        """Show what is proposed; ``recorded``: whether a day has an exercise already."""
        while (item := self._column.takeAt(0)) is not None:
            if (widget := item.widget()) is not None:
                widget.hide()
                widget.deleteLater()
        self.names = []
        if noted is not None:
            for day in noted.days:
                block = Block(self._theme)
                block.body.addLayout(self._head(day))
                for line in day.lines:
                    block.body.addLayout(self._line(day, line, noted, recorded(day, line)))
                self._column.addWidget(block)
        self._column.addStretch(1)

    def _head(self, day: ProposedDay) -> QHBoxLayout:
        row = QHBoxLayout()
        row.addWidget(Label(words.short_day(day.day), "heading"))
        for question in day.questions:
            row.addWidget(self._jump(self.tr("? which day"), question, self.tr("Which day is it?")))
        row.addStretch(1)
        return row

    def _line(
        self, day: ProposedDay, line: ProposedLine, noted: Noted, recorded: bool
    ) -> QVBoxLayout:
        title = line_title(line, noted.reading.text)
        name = WordButton(title, strong=True, flush=True)
        name.setAccessibleName(self.tr("{name}: choose another exercise").format(name=title))
        name.clicked.connect(lambda _on=False: self.exercise_wanted.emit(line))
        self.names.append(name)
        head = QHBoxLayout()
        head.addWidget(name)
        head.addStretch(1)
        head.addWidget(self._state(day, line, recorded, title))
        text = sets_text([each.read for each in line.sets], noted.reading.unit,
                         lambda key: set_up_name(line, key)) if line.sets else ""  # fmt: skip
        column = QVBoxLayout()
        column.setSpacing(0)
        column.addLayout(head)
        column.addWidget(Label(text or self.tr("no set"), wrap=True))
        if line.note:
            column.addWidget(Label(line.note, "small", "muted", wrap=True))
        return column

    def _state(self, day: ProposedDay, line: ProposedLine, recorded: bool, title: str) -> QWidget:
        if line.entry.questions:
            spoken = self.tr("Answer the question about {name}").format(name=title)
            return self._jump(self.tr("? doubtful"), line.entry.questions[0], spoken)
        if recorded:
            return Label(self.tr("= on record already"), "small", "muted")
        if not line.sets:
            return Label(self.tr("– left out"), "small", "muted")
        if line.certain and not day.questions:
            return Label(self.tr("✓ certain"), "small", "good")
        return Label(self.tr("? doubtful"), "small", "caution")

    def _jump(self, text: str, question: Question, spoken: str) -> WordButton:
        """A word that leads to the question."""
        button = WordButton(text, tone="caution", flush=True)
        button.setProperty("scale", "small")
        button.setAccessibleName(spoken)
        button.clicked.connect(lambda _on=False: self.question_wanted.emit(question))
        return button
