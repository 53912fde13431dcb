"""A notice that is not modal: what is wrong, what to do, and text to copy."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QDialog, QHBoxLayout, QPlainTextEdit, QVBoxLayout, QWidget

from views.blocks import Label, MainButton, WordButton
from views.theme import Theme


class Notice(QDialog):
    """Shows a sentence and its remedy; ``details`` can be read and copied."""

    def __init__(
        self,
        theme: Theme,
        sentence: str,
        remedy: str,
        details: str = "",
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("Rungwise"))
        self.setModal(False)
        self.setAttribute(Qt.WidgetAttribute.WA_QuitOnClose)
        column = QVBoxLayout(self)
        edge = theme.grid(3)
        column.setContentsMargins(edge, edge, edge, edge)
        column.setSpacing(theme.px(12))
        column.addWidget(Label(sentence, "heading", wrap=True))
        column.addWidget(Label(remedy, wrap=True))
        row = QHBoxLayout()
        row.addStretch(1)
        if details:
            text = QPlainTextEdit(details)
            text.setReadOnly(True)
            text.setAccessibleName(self.tr("Details"))
            column.addWidget(text)
            copy = WordButton(self.tr("Copy the text"))
            copy.clicked.connect(lambda: QGuiApplication.clipboard().setText(details))
            row.addWidget(copy)
        close = MainButton(self.tr("Close"))
        close.clicked.connect(self.close)
        row.addWidget(close)
        column.addLayout(row)
        self.setMinimumWidth(theme.grid(60))
