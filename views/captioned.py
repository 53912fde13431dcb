"""A field with its caption above it, short forms of such, and choices from a short list."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from PySide6.QtCore import Signal
from PySide6.QtGui import QKeySequence, QWheelEvent
from PySide6.QtWidgets import QComboBox, QHBoxLayout, QSizePolicy, QVBoxLayout, QWidget

from views.blocks import Label, Tone, WordButton
from views.flow_layout import FieldFlow
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


def keyed_word(
    word: str, key: str, *, tone: Tone = "muted", flush: bool = False, parent: QWidget | None = None
) -> WordButton:
    """A word with its key beside it, where the key itself is listened for elsewhere."""
    native = QKeySequence(key).toString(QKeySequence.SequenceFormat.NativeText)
    button = WordButton(f"{word}  {native}", tone=tone, flush=flush, parent=parent)
    button.setAccessibleName(word)
    return button


class ChoiceBox(QComboBox):
    """One of a few words. ``picked`` when the coach chooses another one."""

    picked = Signal()

    def __init__(self, name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        # Not as the items' data: Qt would give an enumeration of strings back as plain strings.
        self._values: list[Any] = []
        self.setAccessibleName(name)
        self.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToContents)
        self.activated.connect(lambda _index: self.picked.emit())

    @property
    def choice(self) -> Any:
        """What is chosen; None where nothing is."""
        row = self.currentIndex()
        return self._values[row] if 0 <= row < len(self._values) else None

    def offer(self, choices: Sequence[tuple[Any, str]], chosen: Any) -> None:
        """Offer (value, word) pairs, ``chosen`` among them; emits nothing."""
        values = [value for value, _ in choices]
        shown = [self.itemText(row) for row in range(self.count())]
        if values != self._values or shown != [word for _, word in choices]:
            self.clear()
            self._values = values
            self.addItems([word for _, word in choices])
            wide = self.view().sizeHintForColumn(0) + 2 * self.fontMetrics().height()
            self.view().setMinimumWidth(wide)
        self.choose(chosen)

    def choose(self, value: Any) -> None:
        """Show ``value`` as chosen; emits nothing."""
        known = value in self._values
        self.setCurrentIndex(self._values.index(value) if known else -1)

    def wheelEvent(self, event: QWheelEvent) -> None:
        """The wheel scrolls the page; it never changes a choice by accident."""
        event.ignore()


class CaptionedForm(QVBoxLayout):
    """The layout of a short form: captioned fields in flowing lines, and in the ``foot`` what is
    wrong with ``buttons`` beside it.
    """

    def __init__(self, theme: Theme, form: QWidget, error: QWidget, *buttons: QWidget) -> None:
        super().__init__(form)
        self._theme = theme
        fields = QWidget()
        self._flow = FieldFlow(theme.grid(1.5), theme.px(4), fields)
        self.foot = QHBoxLayout()
        self.foot.setSpacing(theme.grid())
        self.foot.addWidget(error, 1)
        for button in buttons:
            self.foot.addWidget(button)
        self.setContentsMargins(0, 0, 0, 0)
        self.setSpacing(theme.px(4))
        self.addWidget(fields)
        self.addLayout(self.foot)

    def put(self, caption: str, field: QWidget, width: int, *, grow: bool = False) -> Captioned:
        """Add a field; as in `Captioned`."""
        made = Captioned(self._theme, caption, field, width, grow=grow)
        self._flow.addWidget(made)
        return made
