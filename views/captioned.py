"""A field with its caption above it, and choices from a short list."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from PySide6.QtCore import Signal
from PySide6.QtGui import QWheelEvent
from PySide6.QtWidgets import QComboBox, QSizePolicy, QVBoxLayout, QWidget

from views.blocks import Label
from views.theme import Theme


class Captioned(QWidget):
    """``field`` of ``width`` pixels (at 100 % text) under a caption; ``grow``: or wider."""

    def __init__(
        self,
        theme: Theme,
        caption: str,
        field: QWidget,
        width: int,
        *,
        grow: bool = False,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._theme, self._width, self._grow = theme, width, grow
        self.caption = Label(caption, "small", "muted")
        self.field = field
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(theme.px(2))
        column.addWidget(self.caption)
        column.addWidget(field)
        across = QSizePolicy.Policy.Expanding if grow else QSizePolicy.Policy.Fixed
        self.setSizePolicy(across, QSizePolicy.Policy.Fixed)
        field.setSizePolicy(across, QSizePolicy.Policy.Fixed)
        theme.changed.connect(self._space)
        self._space()

    def _space(self) -> None:
        wide = self._theme.px(self._width)
        if self._grow:
            self.field.setMinimumWidth(wide)
        else:
            self.field.setFixedWidth(wide)


class ChoiceBox(QComboBox):
    """One of a few words. ``picked`` when the coach chooses another one."""

    picked = Signal()

    def __init__(self, name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName(name)
        self.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToContents)
        self.activated.connect(lambda _index: self.picked.emit())

    @property
    def choice(self) -> Any:
        """What is chosen."""
        return self.currentData()

    def offer(self, choices: Sequence[tuple[Any, str]], chosen: Any) -> None:
        """Offer (value, word) pairs; emits nothing. A value not among them adds itself."""
        shown = [(self.itemData(row), self.itemText(row)) for row in range(self.count())]
        if shown != list(choices):
            self.clear()
            for value, word in choices:
                self.addItem(word, value)
            wide = self.view().sizeHintForColumn(0) + 2 * self.fontMetrics().height()
            self.view().setMinimumWidth(wide)
        self.choose(chosen)

    def choose(self, value: Any) -> None:
        """Show ``value`` as chosen; emits nothing."""
        for row in range(self.count()):
            if self.itemData(row) == value:
                self.setCurrentIndex(row)
                return
        self.setCurrentIndex(-1)

    def wheelEvent(self, event: QWheelEvent) -> None:
        """The wheel scrolls the page; it never changes a choice by accident."""
        event.ignore()
