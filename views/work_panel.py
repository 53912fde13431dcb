"""What stands in front of the window while something long is written: how far, and Cancel."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QDialog, QHBoxLayout, QProgressBar, QVBoxLayout, QWidget

from views.blocks import Label, WordButton
from views.theme import Theme


class WorkPanel(QDialog):
    """Keeps keys from everything else meanwhile, since nobody else may write. ``given_up`` when
    the coach cancels, by the word or by Escape.
    """

    given_up = Signal()

    def __init__(self, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent, Qt.WindowType.Sheet)
        self.setWindowTitle(self.tr("Rungwise"))
        self.setWindowModality(Qt.WindowModality.WindowModal)
        self.said = Label("", "heading", wrap=True)
        self.bar = progress_bar(self.tr("How far it is"))
        self.cancel = WordButton(self.tr("Cancel"), "Esc")
        self.cancel.clicked.connect(self.reject)
        row = QHBoxLayout()
        row.addWidget(Label(self.tr("Cancelled, nothing is changed."), "small", "muted"), 1)
        row.addWidget(self.cancel)
        column = QVBoxLayout(self)
        edge = theme.grid(3)
        column.setContentsMargins(edge, edge, edge, theme.grid(2))
        column.setSpacing(theme.px(12))
        for widget in (self.said, self.bar):
            column.addWidget(widget)
        column.addLayout(row)
        self.setMinimumWidth(theme.grid(48))
        self.rejected.connect(self.given_up)

    def begin(self, text: str) -> None:
        """Stand in front, at the beginning."""
        self.said.setText(text)
        self.bar.setValue(0)
        self.open()
        self.cancel.setFocus(Qt.FocusReason.OtherFocusReason)

    def end(self) -> None:
        """Go, since the work has ended."""
        self.blockSignals(True)
        self.done(QDialog.DialogCode.Accepted)
        self.blockSignals(False)


def progress_bar(name: str) -> QProgressBar:
    """A quiet bar from 0 to 1000, without a text."""
    bar = QProgressBar()
    bar.setRange(0, 1000)
    bar.setTextVisible(False)
    bar.setAccessibleName(name)
    return bar
