"""Erasing a trainee for good cannot be undone, so the name has to be typed."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QDialog, QHBoxLayout, QLineEdit, QVBoxLayout, QWidget

from views.blocks import Label, MainButton, WordButton
from views.captioned import Captioned
from views.theme import Theme


class EraseQuestion(QDialog):
    """``confirmed`` once the name was typed and the button pressed."""

    confirmed = Signal()

    def __init__(self, theme: Theme, name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._name = name
        self.setWindowTitle(self.tr("Erase for good"))
        self.setModal(False)
        self.field = QLineEdit()
        self.field.setAccessibleName(self.tr("The name"))
        self.field.textChanged.connect(self._typed)
        self.erase = MainButton(self.tr("Erase for good"))
        self.erase.setEnabled(False)
        self.erase.clicked.connect(self._confirm)
        close = WordButton(self.tr("Keep"))
        close.clicked.connect(self.close)
        column = QVBoxLayout(self)
        edge = theme.grid(3)
        column.setContentsMargins(edge, edge, edge, edge)
        column.setSpacing(theme.px(12))
        heading = self.tr("Erase everything of {name}?").format(name=name)
        column.addWidget(Label(heading, "heading", wrap=True))
        explained = self.tr(
            "Everything of this person goes from the data file and from every backup and copy of "
            "it; a damaged copy, which cannot be rewritten, is removed. Files written elsewhere "
            "(sheets, exports) stay. It cannot be undone."
        )
        column.addWidget(Label(explained, wrap=True))
        column.addWidget(
            Captioned(theme, self.tr("Type the name to go on"), self.field, 320, grow=True)
        )
        row = QHBoxLayout()
        row.addStretch(1)
        row.addWidget(close)
        row.addWidget(self.erase)
        column.addLayout(row)
        self.setMinimumWidth(theme.grid(60))

    def _typed(self, text: str) -> None:
        self.erase.setEnabled(text.strip() == self._name.strip())

    def _confirm(self) -> None:
        self.close()
        self.confirmed.emit()
