"""The cautions of the last weeks: what was seen, from when to when, each in a line."""

from __future__ import annotations

from datetime import date
from typing import Final

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from desktop.planning.caution_history import WEEKS, SeenCaution, seen_cautions
from desktop.planning.history import History
from views import words
from views.blocks import Block, Label, WordButton, rule
from views.caution_acts import sentence_of
from views.caution_texts import severity_word
from views.record import Record
from views.severity_mark import SeverityMark
from views.severity_words import word_width
from views.steps_runner import StepsRunner
from views.theme import Theme

_SHOWN: Final = 8


class CautionsSeen(Block):
    """Reads the past in slices, so that the screen stands before it is known."""

    def __init__(self, record: Record, today: date, theme: Theme) -> None:
        super().__init__(theme)
        self._record, self._today, self._look = record, today, theme
        self._history: History | None = None
        self._found: tuple[SeenCaution, ...] = ()
        self.rows: list[QWidget] = []
        self._runner = StepsRunner(self)
        title = self.tr("Seen in the last {weeks}")
        self.body.addWidget(Label(title.format(weeks=words.weeks(WEEKS)), "heading"))
        self._said = Label(tone="muted", wrap=True)
        self.more = WordButton("", flush=True)
        self._list = QVBoxLayout()
        self._list.setSpacing(theme.grid())
        self.body.addWidget(self._said)
        self.body.addLayout(self._list)
        self.body.addWidget(self.more, 0, Qt.AlignmentFlag.AlignLeft)
        self.more.clicked.connect(self._show_all)

    def show_history(self, history: History) -> None:
        """Show what was seen of a trainee."""
        self._history = history
        self._fill((), "")
        self._runner.start(seen_cautions(history, self._today), self._show, self._wrong)
        if self._runner.busy:
            self._fill((), self.tr("Reading the days trained…"))

    def leave(self) -> None:
        """Read on no longer."""
        self._runner.give_up()

    def _show(self, found: tuple[SeenCaution, ...]) -> None:
        self._found = found
        self._fill(found[:_SHOWN], "" if found else self.tr("Nothing was seen."))
        self.more.setVisible(len(found) > _SHOWN)
        self.more.set_words(self.tr("All {count}").format(count=words.number(len(found))))

    def _show_all(self) -> None:
        self.more.hide()
        self._fill(self._found, "")

    def _wrong(self, error: Exception) -> None:
        raise error

    def _fill(self, shown: tuple[SeenCaution, ...], said: str) -> None:
        for row in self.rows:
            row.hide()
            row.deleteLater()
        self.rows = [self._row(one) for one in shown]
        for row in self.rows:
            self._list.addWidget(row)
        self._said.setText(said)
        self._said.setVisible(bool(said))
        self.more.hide()

    def _row(self, seen: SeenCaution) -> QWidget:
        made = QWidget()
        column = QVBoxLayout(made)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(self._look.px(2))
        line = QHBoxLayout()
        line.setSpacing(self._look.px(10))
        severity = seen.caution.severity.value
        top = Qt.AlignmentFlag.AlignTop
        line.addWidget(SeverityMark(self._look, severity), 0, top)
        word = Label(severity_word(severity))
        word.setMinimumWidth(word_width(self._look))
        line.addWidget(word, 0, top)
        line.addWidget(Label(self._sentence(seen), wrap=True), 1)
        line.addWidget(Label(self._when(seen), tone="muted"), 0, top)
        column.addWidget(rule())
        column.addLayout(line)
        return made

    def _sentence(self, seen: SeenCaution) -> str:
        assert self._history is not None
        text = sentence_of(self._record, self._history, seen.caution, seen.last)
        return text[:1].upper() + text[1:]

    def _when(self, seen: SeenCaution) -> str:
        first, last = (words.short_day(day, self._today) for day in (seen.first, seen.last))
        if seen.now:
            return self.tr("since {day}").format(day=first)
        return first if first == last else f"{first} \N{EN DASH} {last}"
