"""Feet of a screen, one at a time; those that are not shown take no room."""

from __future__ import annotations

from PySide6.QtWidgets import QVBoxLayout, QWidget


class Feet(QWidget):
    """As tall as the foot it shows, unlike a stack, which is as tall as its tallest page."""

    def __init__(self, *feet: QWidget) -> None:
        super().__init__()
        self._feet = feet
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        for foot in feet:
            column.addWidget(foot)
        self.show_foot(feet[0])

    def show_foot(self, foot: QWidget) -> None:
        """Show one of the feet."""
        foot.show()
        for each in self._feet:
            each.setVisible(each is foot)
