"""One load of those on record, stepped through by keys: what repetitions are counted at."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QHBoxLayout, QWidget

from desktop.training.quantities import Unit
from views import words
from views.blocks import Label, WordButton
from views.theme import Theme


class LoadSteps(QWidget):
    """Shows a load between a lighter and a heavier one; ``chosen(grams)`` when it changes.

    Alt+Down and Alt+Up step while the focus lies in ``keys_in``.
    """

    chosen = Signal(int)

    def __init__(self, theme: Theme, keys_in: QWidget, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._loads: tuple[int, ...] = ()
        self._unit = Unit.KG
        self.load_g: int | None = None
        self.word = Label("", "heading")
        self.lighter = WordButton("\N{SINGLE LEFT-POINTING ANGLE QUOTATION MARK}")
        self.heavier = WordButton("\N{SINGLE RIGHT-POINTING ANGLE QUOTATION MARK}")
        self.lighter.setAccessibleName(self.tr("A lighter load"))
        self.heavier.setAccessibleName(self.tr("A heavier load"))
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(theme.px(2))
        for widget in (self.lighter, self.word, self.heavier):
            row.addWidget(widget)
        for button, key, by in ((self.lighter, "Alt+Down", -1), (self.heavier, "Alt+Up", 1)):
            button.setToolTip(QKeySequence(key).toString(QKeySequence.SequenceFormat.NativeText))
            button.clicked.connect(lambda _checked=False, by=by: self.step(by))
            shortcut = QShortcut(QKeySequence(key), keys_in)
            shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            shortcut.activated.connect(lambda by=by: self.step(by))

    def offer(self, loads: Sequence[int], load_g: int | None, unit: Unit) -> None:
        """Offer these loads (grams, ascending), standing on ``load_g``; nobody is told."""
        self._loads, self._unit, self.load_g = tuple(loads), unit, load_g
        self._show()

    def step(self, by: int) -> None:
        """Go to the next heavier or lighter load, where there is one."""
        if not self.isVisible() or self.load_g not in self._loads:
            return
        place = self._loads.index(self.load_g) + by
        if 0 <= place < len(self._loads):
            self.load_g = self._loads[place]
            self._show()
            self.chosen.emit(self.load_g)

    def _show(self) -> None:
        self.word.setText("" if self.load_g is None else words.load(self.load_g, self._unit))
        place = self._loads.index(self.load_g) if self.load_g in self._loads else -1
        self.lighter.setEnabled(place > 0)
        self.heavier.setEnabled(0 <= place < len(self._loads) - 1)
