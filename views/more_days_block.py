"""Lines that are ready for one more day a week, each with the word that takes it."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QWidget

from desktop.planning.more_days import MoreDay
from desktop.training.quantities import Unit
from views import words
from views.blocks import Block, Label, WordButton
from views.flow_layout import FieldFlow
from views.reason_texts import reason_text
from views.sentences import begun_small
from views.severity_mark import SeverityMark
from views.theme import Theme


class MoreDaysBlock(Block):
    """``taken(MoreDay)`` when a proposal is accepted; hidden where there is none."""

    taken = Signal(object)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(theme, parent=parent)
        self._shown: tuple[tuple[MoreDay, ...], tuple[str, ...]] | None = None
        self.buttons: list[WordButton] = []
        self.hide()

    def show_days(self, found: Sequence[MoreDay], others: Sequence[str]) -> None:
        """Show proposals; ``others`` train by the same program, and it changes for them too."""
        if (tuple(found), tuple(others)) == self._shown:
            return
        self._shown = (tuple(found), tuple(others))
        while (item := self.body.takeAt(0)) is not None:
            if (widget := item.widget()) is not None:
                widget.hide()
                widget.deleteLater()
        self.buttons = []
        for more in found:
            self.body.addWidget(self._row(more))
        if others and any(more.weekday is not None for more in found):
            text = self.tr("{names} train by this program too: it changes for all of them.")
            if len(others) == 1:
                text = self.tr("{names} trains by this program too: it changes for both.")
            self.body.addWidget(Label(text.format(names=words.listed(others)), "small", "muted"))
        self.setVisible(bool(found))

    def _row(self, more: MoreDay) -> QWidget:
        row = QWidget()
        line = QHBoxLayout(row)
        line.setContentsMargins(0, 0, 0, 0)
        line.setSpacing(self._theme.px(8))
        line.addWidget(SeverityMark(self._theme, "note"))
        said = QWidget()
        flow = FieldFlow(self._theme.px(10), 0, said, centred=True)
        name = ", ".join(part for part in (more.exercise.name, more.slot.line_name) if part)
        why = reason_text(more.why, Unit.KG)
        flow.addWidget(Label(f"{name}: {begun_small(why)}."))
        if more.weekday is not None:
            text = self.tr("Train it on {weekday} too")
            button = WordButton(text.format(weekday=words.weekday(more.weekday)), flush=True)
            button.clicked.connect(lambda _on=False: self.taken.emit(more))
            self.buttons.append(button)
            flow.addWidget(button)
        line.addWidget(said, 1)
        return row
