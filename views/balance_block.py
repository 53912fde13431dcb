"""Below the days: hard sets by muscle with the published marks, balance in words, and for what is
missing one action that mends it.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QBoxLayout, QGridLayout, QVBoxLayout, QWidget

from desktop.training.balance import Finding
from desktop.training.exercises import Exercise
from desktop.training.program import Program
from desktop.training.volume import MARKS, Volume
from views import words
from views.balance_words import finding_text, patterns_text, proposal_text, ratio_text
from views.blocks import Block, Label, WordButton
from views.flow_layout import FieldFlow
from views.language import marks_said
from views.muscle_bars import MuscleBars, muscle_sets
from views.severity_mark import SeverityMark
from views.terms import Term, explain
from views.theme import Theme

_MOST = 5


class BalanceBlock(Block):
    """Volume and balance of one phase. ``mended(Finding)`` when its action is chosen."""

    mended = Signal(object)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(theme, parent=parent)
        self._heading = Label(self.tr("Hard sets a week, by muscle"), "heading")
        explain(self._heading, Term.HARD_SET)
        self._marks = Label(tone="muted")
        self._why = WordButton(self.tr("Why"))
        self._sources = Label(_sources(), "small", "muted", wrap=True)
        self._bars = MuscleBars(theme)
        self._patterns = Label(wrap=True)
        self._ratios = Label(tone="muted", wrap=True)
        self._list = QGridLayout()
        self._rest = Label(size="small", tone="muted")
        self._sources.hide()
        self._why.clicked.connect(lambda: self._sources.setVisible(self._sources.isHidden()))
        self._assemble()

    def show_balance(
        self,
        program: Program,
        volume: Volume,
        found: Sequence[Finding],
        exercises: Mapping[str, Exercise],
    ) -> None:
        """Show a phase's volume and what was found in it."""
        self._bars.show_sets(muscle_sets(volume))
        text = self.tr("dotted: published marks at {marks}")
        self._marks.setText(text.format(marks=_listed_marks()))
        self._patterns.setText(patterns_text(volume) or self.tr("Nothing planned yet"))
        self._ratios.setText(ratio_text(volume) if volume.by_pattern else "")
        self._fill(program, found, exercises)
        self.setVisible(bool(volume.by_pattern))

    def _fill(
        self, program: Program, found: Sequence[Finding], exercises: Mapping[str, Exercise]
    ) -> None:
        while (item := self._list.takeAt(0)) is not None:
            if (widget := item.widget()) is not None:
                widget.hide()
                widget.deleteLater()
        top = Qt.AlignmentFlag.AlignTop
        for row, finding in enumerate(found[:_MOST]):
            mark = SeverityMark(self._theme, "note")
            mark.setContentsMargins(0, self._theme.px(6), 0, 0)
            self._list.addWidget(mark, row, 0, top)
            said = QWidget()
            flow = FieldFlow(self._theme.px(10), 0, said, centred=True)
            flow.addWidget(Label(finding_text(finding, exercises)))
            action = proposal_text(program, finding, exercises)
            if action:
                button = WordButton(action, flush=True)
                button.clicked.connect(lambda _on=False, f=finding: self.mended.emit(f))
                flow.addWidget(button)
            self._list.addWidget(said, row, 1)
        more = len(found) - _MOST
        self._rest.setText(
            self.tr("and {count} more").format(count=more) if more > 0 else
            "" if found else self.tr("Nothing is missing, nothing piles up.")
        )  # fmt: skip

    def _assemble(self) -> None:
        line = QWidget()
        top = FieldFlow(self._theme.px(10), 0, line, centred=True)
        for part in (self._heading, self._marks, self._why):
            top.addWidget(part)
        left = QVBoxLayout()
        left.setSpacing(self._theme.grid())
        left.addWidget(line)
        left.addWidget(self._sources)
        left.addWidget(self._bars)
        left.addStretch(1)
        right = QVBoxLayout()
        right.setSpacing(self._theme.px(6))
        balance = Label(self.tr("Balance"), "heading")
        balance.setMinimumHeight(self._why.sizeHint().height())
        right.addWidget(balance)
        right.addWidget(self._patterns)
        right.addWidget(self._ratios)
        right.addSpacing(self._theme.px(4))
        self._list.setColumnStretch(1, 1)
        self._list.setHorizontalSpacing(self._theme.px(8))
        self._list.setVerticalSpacing(self._theme.px(2))
        right.addLayout(self._list)
        right.addWidget(self._rest)
        right.addStretch(1)
        self._halves = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        self._halves.setSpacing(self._theme.grid(4))
        self._halves.addLayout(left, 11)
        self._halves.addLayout(right, 9)
        self.body.addLayout(self._halves)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        beside = self.width() >= self._theme.px(760)
        self._halves.setDirection(
            QBoxLayout.Direction.LeftToRight if beside else QBoxLayout.Direction.TopToBottom
        )


def _listed_marks() -> str:
    return words.listed([words.number(mark.sets) for mark in MARKS])


def _sources() -> str:
    return marks_said(MARKS)
