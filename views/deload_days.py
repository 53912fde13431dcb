"""What an easier week asks, slot by slot, beside what the week would ask otherwise."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from PySide6.QtWidgets import QGridLayout, QWidget

from desktop.planning.deload_plan import DayEased
from desktop.training.quantities import Unit
from views import words
from views.blocks import Block, Label
from views.deload_texts import line_words, target_text
from views.theme import Theme


class DeloadDays(Block):
    """A table of days: exercise, as usual, in the easier week."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(theme, parent=parent)
        self._space_of = theme
        self.title = Label(self.tr("What it asks"), "heading")
        self._none = Label(
            self.tr("No training is planned in these days, so there is nothing to ease."),
            tone="muted",
            wrap=True,
        )
        self.grid = QGridLayout()
        for column, stretch in enumerate((5, 5, 0, 5)):
            self.grid.setColumnStretch(column, stretch)
        self.body.addWidget(self.title)
        self.body.addWidget(self._none)
        self.body.addLayout(self.grid)

    def show_days(self, days: Sequence[DayEased], unit: Unit, today: date) -> None:
        """Show other days."""
        while (item := self.grid.takeAt(0)) is not None:
            if (widget := item.widget()) is not None:
                widget.hide()
                widget.deleteLater()
        px = self._space_of.px
        self.grid.setHorizontalSpacing(px(12))
        self.grid.setVerticalSpacing(px(3))
        self._none.setVisible(not days)
        row = 0
        if days:
            for column, text in ((1, self.tr("as usual")), (3, self.tr("deload"))):
                self.grid.addWidget(Label(text, "small", "muted"), row, column)
            row += 1
        for day in days:
            row = self._add_day(day, row, unit, today)

    def _add_day(self, day: DayEased, row: int, unit: Unit, today: date) -> int:
        said = [words.short_day(day.day, today)]
        if day.name.casefold() != words.weekday(day.day.weekday()).casefold():
            said.append(day.name)
        said.append(
            self.tr("{usual} {arrow} {eased}").format(
                usual=words.minutes(round(day.usual_minutes)),
                arrow=words.ARROW,
                eased=words.minutes(round(day.minutes)),
            )
        )
        head = Label(words.DOT.join(said), wrap=True)
        head.setContentsMargins(0, self._space_of.px(6) if row > 1 else 0, 0, 0)
        self.grid.addWidget(head, row, 0, 1, 4)
        for ahead, slot in enumerate(day.slots, start=row + 1):
            name = line_words(slot.exercise, slot.line_name)
            self.grid.addWidget(Label(name, tone="muted", wrap=True), ahead, 0)
            usual = Label(target_text(slot.usual, slot.exercise, unit), wrap=True)
            self.grid.addWidget(usual, ahead, 1)
            self.grid.addWidget(Label(words.ARROW, tone="muted"), ahead, 2)
            eased = Label(target_text(slot.eased, slot.exercise, unit), tone="accent", wrap=True)
            self.grid.addWidget(eased, ahead, 3)
        return row + len(day.slots) + 1
