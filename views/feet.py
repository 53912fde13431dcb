"""Feet of a screen, one at a time; those that are not shown take no room."""

from __future__ import annotations

from PySide6.QtWidgets import QSizePolicy, QStackedWidget, QWidget


class Feet(QStackedWidget):
    """A stack that is as tall as the foot it shows."""

    def show_foot(self, foot: QWidget) -> None:
        """Show one of the feet."""
        across, down = QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Ignored
        for place in range(self.count()):
            each = self.widget(place)
            if each is not None:
                each.setSizePolicy(across, across if each is foot else down)
        self.setCurrentWidget(foot)
