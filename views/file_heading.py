"""A heading that names a file: however long its name is, it gives way."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHBoxLayout, QSizePolicy, QWidget

from views.elided_label import ElidedLabel
from views.theme import Theme


class FileHeading(QWidget):
    """A title, what belongs to it in muted words, and actions at the right."""

    def __init__(self, theme: Theme, *actions: QWidget, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.title = ElidedLabel("title")
        self.title.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Preferred)
        self.detail = ElidedLabel(tone="muted")
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(theme.grid(3))
        row.addWidget(self.title)
        row.addWidget(self.detail, 1)
        for action in actions:
            row.addWidget(action, 0, Qt.AlignmentFlag.AlignVCenter)

    def say(self, title: str, detail: str = "") -> None:
        """Show a title and what belongs to it."""
        self.title.say(title)
        self.title.updateGeometry()
        self.detail.say(detail)
        self.detail.setVisible(bool(detail))
