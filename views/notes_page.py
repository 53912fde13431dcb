"""The parts of the notes screen: the text, the question asked, what is proposed."""

from __future__ import annotations

from datetime import date

from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from views.blocks import Block, Heading, Label, MainButton, WordButton
from views.captioned import Captioned
from views.chooser import Chooser
from views.date_field import DateField
from views.notes_proposal import NotesProposal
from views.notes_questions import NotesQuestions
from views.notes_text import NotesText
from views.theme import Theme


class NotesPage(QWidget):
    """Holds the widgets; what they do is decided by `views.notes_area`."""

    def __init__(self, theme: Theme, today: date, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self.open = WordButton(self.tr("Open a text…"), "Ctrl+Shift+O")
        self.heading = Heading(theme, self.open)
        self.text = NotesText(theme)
        self.text.setPlaceholderText(self.tr(
            "Paste what was written, as it was written:\n\n"
            "Mon 23 Nov\nsquat 3x5 60kg\nbench 45 8,8,7 rpe 8\npush ups 12/10/9"
        ))  # fmt: skip
        self.day = DateField(self.tr("Day of what stands under no date"), today)
        self.day.set_day(today)
        self.place = Label("", "small", "text")
        shapes = self.tr("underlined: read   waved: doubtful   dashed: not read")
        self.legend = Label(shapes, "small", "muted", wrap=True)
        self.asking = NotesQuestions(theme)
        self.chooser = Chooser(theme)
        self.proposal = NotesProposal(theme)
        self.empty = Label(
            self.tr(
                "What is read appears here, day by day, before anything is saved. What is "
                "doubtful is asked; words that nothing came of stay visible in the text."
            ),
            tone="muted",
            wrap=True,
        )
        self.said = Label("", tone="muted", wrap=True)
        self.take = MainButton("")

        self._lay_out()
        theme.changed.connect(self._space)
        self._space()

    def _lay_out(self) -> None:
        left = Block(self._theme)
        caption = self.tr("Day of what stands under no date")
        left.body.addWidget(Captioned(self._theme, caption, self.day, 130))
        left.body.addWidget(self.text, 1)
        below = QHBoxLayout()
        below.addWidget(self.legend, 1)
        below.addWidget(self.place)
        left.body.addLayout(below)
        right = self._right = QVBoxLayout()
        right.addWidget(self.chooser)
        right.addWidget(self.asking)
        right.addWidget(self.empty)
        right.addWidget(self.proposal, 1)
        middle = self._middle = QHBoxLayout()
        middle.addWidget(left, 1)
        middle.addLayout(right, 1)
        foot = self._foot = QHBoxLayout()
        foot.addWidget(self.said, 1)
        foot.addWidget(self.take)
        column = self._column = QVBoxLayout(self)
        column.addWidget(self.heading)
        column.addLayout(middle, 1)
        column.addLayout(foot)

    def _space(self) -> None:
        edge, gap = self._theme.grid(3), self._theme.px(12)
        self._column.setContentsMargins(edge, self._theme.grid(2), edge, self._theme.grid())
        for layout in (self._column, self._middle, self._right, self._foot):
            layout.setSpacing(gap)
        self.said.setMinimumHeight(2 * self.said.fontMetrics().lineSpacing())
