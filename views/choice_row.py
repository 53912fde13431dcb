"""Words to choose by, each with its key: one of a row (a span, a measure), or one on and off."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QButtonGroup, QHBoxLayout, QPushButton, QWidget

from views.blocks import restyle
from views.flow_layout import FlowLayout
from views.theme import Theme


class Choice(NamedTuple):
    """What can be chosen: its code, its word, and its key ("" for none)."""

    code: str
    word: str
    key: str = ""


class ChoiceRow(QWidget):
    """Words side by side, in more lines where there is no room; ``chosen(code)`` when the coach
    takes another one.

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
        self._choices: tuple[Choice, ...] = ()
        self._buttons: dict[str, QPushButton] = {}
        self._shortcuts: list[QShortcut] = []
        self._group = QButtonGroup(self)
        self._row = FlowLayout(self, in_line=True)
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
        if tuple(choices) == self._choices:
            self.choose(code)
            return
        self._choices = tuple(choices)
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
            _show_checked(button, each == code)

    def _button(self, choice: Choice) -> QPushButton:
        button = _word_to_check(choice.word, choice.key)
        button.clicked.connect(lambda _checked=False, code=choice.code: self._take(code))
        self._group.addButton(button)
        self._row.addWidget(button)
        if choice.key:
            shortcut = _key(choice.key, self._keys_in)
            shortcut.activated.connect(lambda code=choice.code: self._take(code))
            self._shortcuts.append(shortcut)
        return button

    def _take(self, code: str) -> None:
        changed = code != self._code
        self.choose(code)
        if changed:
            self.chosen.emit(code)


class ToggleWord(QWidget):
    """A word that is on or off; ``toggled(on)`` when the coach turns it."""

    toggled = Signal(bool)

    def __init__(
        self, word: str, key: str, keys_in: QWidget, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self.button = _word_to_check(word, key)
        self.button.clicked.connect(self._turned)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(self.button)
        _key(key, keys_in).activated.connect(self.button.click)
        _show_checked(self.button, False)

    @property
    def on(self) -> bool:
        """Whether it is on."""
        return self.button.isChecked()

    def _turned(self) -> None:
        _show_checked(self.button, self.on)
        self.toggled.emit(self.on)


def _word_to_check(word: str, key: str) -> QPushButton:
    button = QPushButton(f"{word}  {key}".rstrip().replace("&", "&&"))
    button.setProperty("kind", "word")
    button.setCheckable(True)
    button.setAutoDefault(False)
    button.setCursor(Qt.CursorShape.PointingHandCursor)
    button.setAccessibleName(word)
    return button


def _show_checked(button: QPushButton, on: bool) -> None:
    button.setChecked(on)
    button.setProperty("strong", "true" if on else "false")
    button.setProperty("tone", "" if on else "muted")
    restyle(button)


def _key(key: str, keys_in: QWidget) -> QShortcut:
    shortcut = QShortcut(QKeySequence(key), keys_in)
    shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
    return shortcut
