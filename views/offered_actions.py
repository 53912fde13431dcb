"""Actions that one button offers in a menu."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QObject
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QMenu, QWidget


class OfferedActions(QObject):
    """``actions`` as they were added; ``owner`` is the screen that offers them."""

    def __init__(self, owner: QWidget) -> None:
        super().__init__(owner)
        self.owner = owner
        self.actions: list[QAction] = []

    def add(self, text: str, act: Callable[[], None]) -> None:
        """One more action, in the words of the menu."""
        action = QAction(text, self)
        action.triggered.connect(lambda _checked=False: act())
        self.actions.append(action)

    def ask_how(self, below: QWidget) -> None:
        """Offer the actions in a menu under a button."""
        menu = QMenu(self.owner)
        menu.addActions(self.actions)
        menu.aboutToHide.connect(menu.deleteLater)
        menu.popup(below.mapToGlobal(below.rect().bottomLeft()))
        menu.setActiveAction(self.actions[0])
