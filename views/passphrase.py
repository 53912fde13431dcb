"""The passphrase of a data file: asked for at opening, and set, changed or removed."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QDialog, QHBoxLayout, QLineEdit, QVBoxLayout, QWidget

from views.blocks import Label, MainButton, WordButton
from views.captioned import Captioned
from views.theme import Theme

LEAST_LETTERS = 8
_WIDTH = 320


class PassphraseQuestion(QDialog):
    """``given(str)`` when a passphrase was typed; ``sentence`` says why it is asked for."""

    given = Signal(str)

    def __init__(self, theme: Theme, sentence: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("Passphrase"))
        self.field = hidden_field(self.tr("Passphrase"))
        self.open_button = MainButton(self.tr("Open"))
        self.open_button.setDefault(True)
        self.open_button.clicked.connect(self._give)
        column = _column(self, theme)
        column.addWidget(Label(sentence, "heading", wrap=True))
        column.addWidget(Captioned(theme, self.tr("Passphrase"), self.field, _WIDTH, grow=True))
        column.addLayout(_foot(self, self.open_button))
        self.field.setFocus()

    def _give(self) -> None:
        text = self.field.text()
        if text:
            self.close()
            self.given.emit(text)


class PassphraseChange(QDialog):
    """``wanted(str)``: the new passphrase, or "" to be without one."""

    wanted = Signal(str)

    def __init__(self, theme: Theme, *, there: bool, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("Passphrase"))
        self.first = hidden_field(self.tr("New passphrase"))
        self.second = hidden_field(self.tr("The same again"))
        self.why_not = Label(tone="stop", wrap=True)
        self.set_button = MainButton(self.tr("Set the passphrase"))
        self.set_button.setDefault(True)
        self.set_button.clicked.connect(self._set)
        self.remove_button = WordButton(self.tr("Remove the passphrase"))
        self.remove_button.clicked.connect(lambda: self._want(""))
        self.remove_button.setVisible(there)
        column = _column(self, theme)
        column.addWidget(Label(self.tr("Passphrase of the data file"), "heading"))
        explained = self.tr(
            "With a passphrase the data file and all its backups are encrypted; they are written "
            "anew now. Nobody can open them without it, and nobody can help if it is forgotten: "
            "write it down and keep it where the file is not."
        )
        column.addWidget(Label(explained, wrap=True))
        column.addWidget(Captioned(theme, self.tr("New passphrase"), self.first, _WIDTH, grow=True))
        column.addWidget(
            Captioned(theme, self.tr("The same again"), self.second, _WIDTH, grow=True)
        )
        column.addWidget(self.why_not)
        column.addLayout(_foot(self, self.remove_button, self.set_button))
        self.first.setFocus()

    def _set(self) -> None:
        text = self.first.text()
        if len(text) < LEAST_LETTERS:
            least = self.tr("At least {count} letters; several words are good.")
            self.why_not.setText(least.format(count=LEAST_LETTERS))
        elif text != self.second.text():
            self.why_not.setText(self.tr("The two are not the same."))
        else:
            self._want(text)

    def _want(self, text: str) -> None:
        self.close()
        self.wanted.emit(text)


def hidden_field(name: str) -> QLineEdit:
    """A field that does not show what is typed."""
    field = QLineEdit()
    field.setEchoMode(QLineEdit.EchoMode.Password)
    field.setAccessibleName(name)
    return field


def _column(dialog: QDialog, theme: Theme) -> QVBoxLayout:
    dialog.setModal(False)
    dialog.setMinimumWidth(theme.grid(60))
    column = QVBoxLayout(dialog)
    edge = theme.grid(3)
    column.setContentsMargins(edge, edge, edge, edge)
    column.setSpacing(theme.px(12))
    return column


def _foot(dialog: QDialog, *buttons: QWidget) -> QHBoxLayout:
    row = QHBoxLayout()
    row.addStretch(1)
    close = WordButton(dialog.tr("Close"))
    close.clicked.connect(dialog.close)
    for button in (close, *buttons):
        row.addWidget(button)
    return row
