"""Comparing: one second series beside the line shown, chosen by letters from a short list."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from typing import Final

from PySide6.QtCore import QObject, Qt, Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QWidget

from db.errors import StoreError
from desktop.planning.history import History
from desktop.planning.progress import LineProgress
from desktop.planning.rivals import Rival, RivalKind, rival_progress, rivals_of
from desktop.planning.trained_lines import line_name
from views.blocks import WordButton
from views.chooser import Chooser
from views.comparison_texts import comparison_text, rival_name, rival_word
from views.progress_series import Series
from views.record import Record
from views.second_series import compared
from views.theme import Theme

_YEAR: Final = 364


class Comparing(QObject):
    """What the line shown is compared with. ``changed``: something else, or nothing any more.

    ``asked``: the coach wants to compare, which `ask` answers. ``button`` and ``chooser`` are to be
    put on the screen; C is the key in ``keys_in``.
    """

    changed = Signal()
    asked = Signal()

    def __init__(
        self, record: Record, today: date, theme: Theme, week_starts: int, keys_in: QWidget
    ) -> None:
        super().__init__(keys_in)
        self._record, self._today, self._week_starts = record, today, week_starts
        self._rivals: tuple[Rival, ...] = ()
        self._other: LineProgress | None = None
        self.rival: Rival | None = None
        self.button = WordButton(self.tr("Compare…"))
        self.button.setText(self.tr("Compare…") + "  C")  # a bare letter must not act elsewhere
        self.chooser = Chooser(theme)
        self.button.clicked.connect(lambda _checked=False: self.asked.emit())
        shortcut = QShortcut(QKeySequence("C"), keys_in)
        shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        shortcut.activated.connect(self.asked)
        self.chooser.chosen.connect(self.choose)

    def ask(self, about: History, progress: LineProgress, weeks: int | None) -> None:
        """Ask what to compare ``progress`` with; ``weeks``: the span in view (None: all)."""
        spans = (7 * weeks,) if weeks is not None and 7 * weeks < _YEAR else ()
        try:
            repository = self._record.repository
            self._rivals = rivals_of(repository, about, progress, (*spans, _YEAR))
        except StoreError as error:
            self._record.reported(error)
            return
        title = self.tr("Compare {name} with").format(name=line_name(about, progress.line.id))
        self.chooser.ask(title, self.tr("a line, a trainee, an earlier time"), self._found)

    def choose(self, rival: Rival | None) -> None:
        """Compare with this; None: with nothing."""
        self.rival, self._other = rival, None
        self.read()
        self.changed.emit()

    def read(self) -> None:
        """Read again what is compared with."""
        if self.rival is None:
            return
        try:
            repository = self._record.repository
            self._other = rival_progress(repository, self.rival, self._today, self._week_starts)
        except StoreError as error:
            self.rival = None
            self._record.reported(error)

    def beside(self, series: Series) -> Series:
        """``series`` with the second one."""
        if self.rival is None:
            return series
        return compared(series, self.rival, rival_name(self.rival), self._other, series.unit)

    def sentence(self, about: History, series: Series, progress: LineProgress) -> str:
        """The comparison in words; "" where nothing is compared."""
        if self.rival is None:
            return ""
        another = self.rival.kind is RivalKind.TRAINEE
        own = about.trainee.name if another else line_name(about, progress.line.id)
        return comparison_text(own, series, progress, self.rival, self._other)

    @property
    def other(self) -> LineProgress | None:
        """The progress of the rival's line, where it has one of its own."""
        return self._other

    def _found(self, text: str) -> Sequence[tuple[str, Rival | None]]:
        wanted = text.casefold().split()
        nothing = [(self.tr("Nothing any more"), None)] if self.rival is not None else []
        options = [*nothing, *((rival_word(rival), rival) for rival in self._rivals)]
        return [
            (word, rival)
            for word, rival in options
            if all(part in word.casefold() for part in wanted)
        ]
