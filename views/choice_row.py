"""A row of words of which one holds, each with its key: a span, a measure."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QButtonGroup, QHBoxLayout, QPushButton, QWidget

from views.blocks import restyle
from views.theme import Theme


@dataclass(frozen=True, slots=True)
class Choice:
    """What can be chosen: its code, its word, and its key ("" for none)."""

    code: str
    word: str
    key: str = ""


class ChoiceRow(QWidget):
    """Words side by side; ``chosen(code)`` when the coach takes another one.

    Keys act while the focus lies anywhere in ``keys_in``, so that bare letters never meet a field
    elsewhere in the window.
    """

    chosen = Signal(str)

    def __init__(
        self, theme: Theme, name: str, keys_in: QWidget, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._theme, self._keys_in = theme, keys_in
        self._code = ""
        self._buttons: dict[str, QPushButton] = {}
        self._shortcuts: list[QShortcut] = []
        self._group = QButtonGroup(self)
        self._row = QHBoxLayout(self)
        self._row.setContentsMargins(0, 0, 0, 0)
        self._row.setSpacing(theme.px(2))
        self.setAccessibleName(name)

    @property
    def code(self) -> str:
        """What holds."""
        return self._code

    @property
    def codes(self) -> tuple[str, ...]:
        """What can be chosen, in order."""
        return tuple(self._buttons)

    def offer(self, choices: Sequence[Choice], code: str) -> None:
        """Offer these words, ``code`` holding."""
        for shortcut in self._shortcuts:
            shortcut.setParent(None)
            shortcut.deleteLater()
        for button in self._buttons.values():
            self._group.removeButton(button)
            self._row.removeWidget(button)
            button.setParent(None)
            button.deleteLater()
        self._shortcuts, self._buttons = [], {}
        for choice in choices:
            self._buttons[choice.code] = self._button(choice)
        self.choose(code)

    def choose(self, code: str) -> None:
        """Let ``code`` hold, without telling anybody."""
        self._code = code
        for each, button in self._buttons.items():
            button.setChecked(each == code)
            button.setProperty("strong", "true" if each == code else "false")
            button.setProperty("tone", "" if each == code else "muted")
            restyle(button)

    def _button(self, choice: Choice) -> QPushButton:
        button = QPushButton(f"{choice.word}  {choice.key}".rstrip().replace("&", "&&"))
        button.setProperty("kind", "word")
        button.setCheckable(True)
        button.setAutoDefault(False)
        button.setCursor(Qt.CursorShape.PointingHandCursor)
        button.setAccessibleName(choice.word)
        button.clicked.connect(lambda _checked=False, code=choice.code: self._take(code))
        self._group.addButton(button)
        self._row.addWidget(button)
        if choice.key:
            shortcut = QShortcut(QKeySequence(choice.key), self._keys_in)
            shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            shortcut.activated.connect(lambda code=choice.code: self._take(code))
            self._shortcuts.append(shortcut)
        return button

    def _take(self, code: str) -> None:
        changed = code != self._code
        self.choose(code)
        if changed:
            self.chosen.emit(code)
