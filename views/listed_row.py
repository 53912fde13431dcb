"""One line of a list on a form: what it says, what can be done with it, and its note below."""

from __future__ import annotations

from collections.abc import Callable, Iterable

from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from views.blocks import Label, Tone, WordButton
from views.theme import Theme

Act = tuple[str, Tone, Callable[[], object]]
"""The word of a button, how it is meant, and what it does."""


class ListedRow(QWidget):
    """A ``text`` with buttons for ``acts``, each named for a reader with the text; the ``note``,
    where there is one, and whatever is added to ``column``, stand below.
    """

    def __init__(self, theme: Theme, text: str, note: str, acts: Iterable[Act]) -> None:
        super().__init__()
        self.column = QVBoxLayout(self)
        self.column.setContentsMargins(0, 0, 0, 0)
        self.column.setSpacing(0)
        line = QHBoxLayout()
        line.setSpacing(theme.px(4))
        line.addWidget(Label(text, wrap=True), 1)
        for word, tone, does in acts:
            button = WordButton(word, tone=tone)
            button.setAccessibleName(f"{word}: {text}")
            button.clicked.connect(lambda _on=False, act=does: act())
            line.addWidget(button)
        self.column.addLayout(line)
        if note:
            self.column.addWidget(Label(note, "small", "muted", wrap=True))
