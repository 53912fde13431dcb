"""Easier weeks of a trainee, those to come and those that were, and whether each helped."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QVBoxLayout, QWidget

from desktop.planning.deload_effect import DeloadEffect
from desktop.training.trainee import DeloadWindow
from views import words
from views.blocks import Block, Label, WordButton, rule
from views.deload_texts import change_text, effect_text, factors_text, line_words, window_text
from views.theme import Theme


class DeloadList(Block):
    """One row each, the last one first. ``removed(DeloadWindow)`` when the coach takes one back."""

    removed = Signal(object)

    def __init__(self, theme: Theme, today: date, parent: QWidget | None = None) -> None:
        super().__init__(theme, parent=parent)
        self._look, self._today = theme, today
        self.rows: list[QWidget] = []
        self.body.addWidget(Label(self.tr("Deloads"), "heading"))
        self._note = Label(
            self.tr(
                "Before and after are no proof: nobody knows what would have come without it. "
                "Strength is the trend of the estimated maximum, up to eight weeks before and four "
                "weeks after."
            ),
            "small",
            "muted",
            wrap=True,
        )
        self._none = Label(
            self.tr("None yet. Once one is over, here it is told whether it helped."),
            tone="muted",
            wrap=True,
        )
        self._list = QVBoxLayout()
        self._list.setSpacing(theme.grid())
        self.body.addWidget(self._none)
        self.body.addLayout(self._list)
        self.body.addWidget(self._note)

    def show_effects(self, effects: Sequence[DeloadEffect]) -> None:
        """Show these windows, each with what became of it."""
        for row in self.rows:
            row.hide()
            row.deleteLater()
        self.rows = [self._row(effect, first=not place) for place, effect in enumerate(effects)]
        for row in self.rows:
            self._list.addWidget(row)
        self._none.setVisible(not effects)
        self._note.setVisible(any(effect.change for effect in effects))

    def _row(self, effect: DeloadEffect, *, first: bool) -> QWidget:
        window, px = effect.window, self._look.px
        made = QWidget()
        column = QVBoxLayout(made)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(px(3))
        if not first:
            column.addWidget(rule())
        head = QHBoxLayout()
        head.setSpacing(px(12))
        head.addWidget(Label(window_text(window, self._today)))
        detail = words.DOT.join((self._kind(window), factors_text(window)))
        head.addWidget(Label(detail, tone="muted", wrap=True), 1)
        if window.id is not None:
            remove = WordButton(self.tr("Remove"), tone="muted")
            text = self.tr("Remove the deload {days}")
            remove.setAccessibleName(text.format(days=window_text(window, self._today)))
            remove.clicked.connect(lambda _on=False: self.removed.emit(window))
            head.addWidget(remove)
        column.addLayout(head)
        said = effect_text(effect, self._today)
        if said:
            tone = "" if effect.change and effect.change.clear else "muted"
            column.addWidget(Label(said, tone="text" if not tone else "muted", wrap=True))
        if effect.change is not None:
            column.addWidget(self._lines_of(effect))
        return made

    def _lines_of(self, effect: DeloadEffect) -> QWidget:
        """Each exercise on its own, folded away until it is asked for."""
        made = QWidget()
        column = QVBoxLayout(made)
        column.setContentsMargins(0, 0, 0, 0)
        table = QWidget()
        grid = QGridLayout(table)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setColumnStretch(1, 1)
        for row, line in enumerate(effect.lines):
            grid.addWidget(
                Label(line_words(line.exercise, line.line.name), "small", "muted"), row, 0
            )
            grid.addWidget(Label(change_text(line.change), "small", wrap=True), row, 1)
            text = self.tr("{before} before, {after} after")
            counted = text.format(before=line.before, after=line.after)
            grid.addWidget(Label(counted, "small", "muted"), row, 2)
        table.hide()
        more = WordButton(self.tr("By exercise"), flush=True)
        more.clicked.connect(lambda: table.setVisible(table.isHidden()))
        column.addWidget(more, 0, Qt.AlignmentFlag.AlignLeft)
        column.addWidget(table)
        return made

    def _kind(self, window: DeloadWindow) -> str:
        if window.id is None:
            return self.tr("by the program")
        return self.tr("planned") if window.planned else self.tr("by the signs")
