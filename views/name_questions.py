"""Names of a file that are not known here: what each one stands for, asked one under the other."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QHBoxLayout, QScrollArea, QVBoxLayout, QWidget

from desktop.planning.log_prospect import LEAVE_OUT, NameQuestion
from views import words
from views.blocks import Block, Label, WordButton
from views.captioned import ChoiceBox
from views.theme import Theme

_FIND, _LIKE = "find", "like"
_LEAST, _WIDE = 190, 248


class NameQuestions(Block):
    """``answered(name, meaning)`` with a key, a trainee's name, or `LEAVE_OUT`; ``find_wanted``
    and ``like_wanted`` (a NameQuestion) where the coach wants another one than the nearest, or a
    new exercise; ``nearest_taken`` for all that are open.
    """

    answered = Signal(str, str)
    find_wanted = Signal(object)
    like_wanted = Signal(object)
    nearest_taken = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(theme, parent=parent)
        self._rows: list[_NameRow] = []
        self._title = Label(self.tr("Names"), "heading")
        self._said = Label(tone="muted", wrap=True)
        self.nearest = WordButton(self.tr("Nearest for all"), "F6", flush=True)
        self.nearest.clicked.connect(self.nearest_taken)
        ground = QWidget()
        self._list = QVBoxLayout(ground)
        self._list.setContentsMargins(0, 0, 0, 0)
        self._list.addStretch(1)
        self._scroll = QScrollArea()
        self._scroll.setWidget(ground)
        self._scroll.setWidgetResizable(True)
        for each in (ground, self._scroll.viewport()):
            each.setAutoFillBackground(False)
        self._scroll.setFrameShape(QFrame.Shape.NoFrame)
        self._scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self._scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        for widget in (self._title, self._said):
            self.body.addWidget(widget)
        self.body.addWidget(self._scroll, 1)
        self.body.addWidget(self.nearest)
        theme.changed.connect(self._measure)
        self._measure()

    @property
    def choosers(self) -> tuple[ChoiceBox, ...]:
        """The choosers, in order."""
        return tuple(row.chooser for row in self._rows)

    def ask(self, questions: Sequence[NameQuestion], shown: Callable[[str], str]) -> None:
        """Ask these, in this order; ``shown`` gives the name of a key."""
        while len(self._rows) > len(questions):
            row = self._rows.pop()
            row.hide()
            row.deleteLater()
        while len(self._rows) < len(questions):
            row = _NameRow(self._theme)
            row.said.connect(self._said_of)
            self._list.insertWidget(len(self._rows), row)
            self._rows.append(row)
        for row, question in zip(self._rows, questions, strict=True):
            row.ask(question, shown)
        unanswered = [each for each in questions if not each.answer]
        self._said.setText(self._sentence(len(unanswered)))
        self.nearest.setVisible(any(each.nearest for each in unanswered))

    def _sentence(self, count: int) -> str:
        if not count:
            return self.tr("All of them are told. They are kept with the mapping.")
        if count == 1:
            return self.tr("1 name is not known here. Its lines wait until you say what it means.")
        text = self.tr(
            "{count} names are not known here. Their lines wait until you say what they mean."
        )
        return text.format(count=words.number(count))

    def _said_of(self, question: NameQuestion, meaning: str) -> None:
        if meaning == _FIND:
            self.find_wanted.emit(question)
        elif meaning == _LIKE:
            self.like_wanted.emit(question)
        else:
            self.answered.emit(question.name, meaning)

    def _measure(self) -> None:
        self.setMinimumWidth(self._theme.px(_LEAST))
        self.setMaximumWidth(self._theme.px(_WIDE))
        self._list.setSpacing(self._theme.grid())


class _NameRow(QWidget):
    """One name with its chooser."""

    said = Signal(object, str)

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self._question: NameQuestion | None = None
        self._name = Label("", wrap=True)
        self._lines = Label("", "small", "muted")
        self.chooser = ChoiceBox("")
        self.chooser.setSizeAdjustPolicy(
            ChoiceBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
        )
        self.chooser.picked.connect(self._picked)
        head = QHBoxLayout()
        head.addWidget(self._name, 1)
        head.addWidget(self._lines, 0, Qt.AlignmentFlag.AlignTop)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, theme.px(10), 0)
        column.setSpacing(theme.px(2))
        column.addLayout(head)
        column.addWidget(self.chooser)

    def ask(self, question: NameQuestion, shown: Callable[[str], str]) -> None:
        """Ask what a name stands for."""
        self._question = question
        trainee = question.kind == "trainee"
        self._name.setText(question.name)
        count = words.number(question.lines)
        one = question.lines == 1
        text = self.tr("1 line") if one else self.tr("{count} lines").format(count=count)
        self._lines.setText(text)
        which = self.tr("Which trainee is {name}?") if trainee else self.tr("What is {name}?")
        self.chooser.setAccessibleName(which.format(name=question.name))
        self.chooser.offer(self._choices(question, shown), question.answer)

    def _choices(
        self, question: NameQuestion, shown: Callable[[str], str]
    ) -> list[tuple[Any, str]]:
        trainee = question.kind == "trainee"
        ask = self.tr("which trainee?") if trainee else self.tr("which exercise?")
        choices: list[tuple[Any, str]] = [("", ask)]
        choices += [(key, name) for key, name in question.nearest]
        if trainee:
            choices.append((question.name, self.tr("new on the roster")))
            choices.append((_FIND, self.tr("another trainee…")))
        else:
            choices.append((_FIND, self.tr("another exercise…")))
            choices.append((_LIKE, self.tr("a new exercise, like…")))
        choices.append((LEAVE_OUT, self.tr("leave its lines out")))
        if question.answer not in {value for value, _ in choices}:
            choices.insert(1, (question.answer, shown(question.answer)))
        return choices

    def _picked(self) -> None:
        if self._question is None:
            return
        meaning = str(self.chooser.choice)
        if meaning in (_FIND, _LIKE):
            self.chooser.choose(self._question.answer)
        if meaning != self._question.answer:
            self.said.emit(self._question, meaning)
