"""Why a caution is set aside: one line that asks for a reason, and takes no for an answer."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QLineEdit, QWidget


class ReasonField(QLineEdit):
    """Hidden until it is asked for. ``given(why)`` on Return, once there is a reason; ``left()`` on
    Escape.
    """

    given = Signal(str)
    left = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._usual = self.tr("Why not now? Return keeps it with the record")
        self.setAccessibleName(self.tr("Why this caution is set aside"))
        self.returnPressed.connect(self._give)
        self.hide()

    def ask(self) -> None:
        """Show it, empty, with the cursor in it."""
        self.clear()
        self.setPlaceholderText(self._usual)
        self.setAccessibleDescription("")
        self.show()
        self.setFocus(Qt.FocusReason.OtherFocusReason)

    def _give(self) -> None:
        why = " ".join(self.text().split())
        if why:
            self.given.emit(why)
            return
        missing = self.tr("Needed: the reason, in a word or two. Esc leaves the caution open.")
        self.clear()
        self.setPlaceholderText(missing)
        self.setAccessibleDescription(missing)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self.hide()
            self.left.emit()
            return
        super().keyPressEvent(event)
