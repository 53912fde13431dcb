"""The keyboard map: every key that acts, by what it does, in a panel at the right."""

from __future__ import annotations

from collections.abc import Sequence
from contextlib import suppress

from PySide6.QtCore import Qt
from PySide6.QtGui import QAction, QFontMetrics, QKeyEvent, QKeySequence
from PySide6.QtWidgets import QApplication, QFrame, QGridLayout, QHBoxLayout, QVBoxLayout, QWidget

from views.blocks import Label, Page, WordButton
from views.theme import Theme

_WIDTH = 40
_KEY_COLUMN = 17
_MAY_BREAK = "\N{ZERO WIDTH SPACE}"  # long keys go on in the next line

Keys = Sequence[tuple[str, str]]


class KeyboardMap(QFrame):
    """What can be done by key; reads the window's menus and the keys of the area shown."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("kind", "map")
        self._theme = theme
        self._key_column = theme.grid(_KEY_COLUMN)
        self.close_button = WordButton(self.tr("Close"), tone="muted")
        self.close_button.clicked.connect(self.put_away)
        self._before: QWidget | None = None
        self._page = Page(theme)
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.addWidget(self._page)
        self.hide()

    def open(self, groups: Sequence[tuple[str, Keys]]) -> None:
        """Show the keys and take the cursor."""
        self._before = QApplication.focusWidget()
        self.show_keys(groups)
        self.show()
        self.close_button.setFocus()

    def put_away(self) -> None:
        """Hide, and put the cursor back where it was."""
        now = QApplication.focusWidget()
        here = now is not None and self.isAncestorOf(now)
        self.hide()
        with suppress(RuntimeError):  # it may be gone with its screen
            if here and self._before is not None and self._before.isVisible():
                self._before.setFocus(Qt.FocusReason.OtherFocusReason)
        self._before = None

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self.put_away()
        else:
            super().keyPressEvent(event)

    def show_keys(self, groups: Sequence[tuple[str, Keys]]) -> None:
        """Show groups of (what it does, its keys)."""
        body = self._page.body
        self.close_button.setParent(None)
        while (item := body.takeAt(0)) is not None:
            if (widget := item.widget()) is not None:
                widget.deleteLater()
        top = QHBoxLayout()
        top.addWidget(Label(self.tr("Keys"), "title"), 1)
        top.addWidget(self.close_button)
        head = QWidget()
        head.setLayout(top)
        top.setContentsMargins(0, 0, 0, 0)
        body.addWidget(head)
        metrics = QFontMetrics(self._theme.font())
        named = [key for _, keys in groups for _, key in keys]
        longest = max((metrics.horizontalAdvance(key) for key in named), default=0)
        self._key_column = min(longest + 1, self._theme.grid(_KEY_COLUMN))
        for heading, keys in groups:
            body.addWidget(Label(heading, "heading"))
            body.addWidget(self._table(keys))
        body.addStretch(1)
        self.setFixedWidth(self._theme.grid(_WIDTH))

    def _table(self, keys: Keys) -> QWidget:
        table = QWidget()
        grid = QGridLayout(table)
        grid.setContentsMargins(0, 0, 0, self._theme.grid())
        grid.setHorizontalSpacing(self._theme.grid(2))
        grid.setVerticalSpacing(self._theme.px(4))
        grid.setColumnStretch(0, 1)
        for row, (does, key) in enumerate(keys):
            grid.addWidget(Label(does, wrap=True), row, 0)
            keyed = Label(key.replace("+", f"+{_MAY_BREAK}"), tone="accent", wrap=True)
            keyed.setAccessibleName(key)
            keyed.setFixedWidth(self._key_column)
            grid.addWidget(keyed, row, 1)
        return table


def keys_of(actions: Sequence[QAction]) -> list[tuple[str, str]]:
    """What each action with a key does, and the key as this system writes it."""
    native = QKeySequence.SequenceFormat.NativeText
    return [
        (action.text().replace("&", ""), action.shortcut().toString(native))
        for action in actions
        if not action.shortcut().isEmpty()
    ]
