"""A word to act on that shows its key; the key itself belongs to the screen around it."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeySequence
from PySide6.QtWidgets import QWidget

from views.blocks import Tone, WordButton


class KeyWord(WordButton):
    """Acts by the mouse and leaves the cursor where it is. The key acts at once, by a shortcut of
    the screen; a button's own would first play being pressed.
    """

    def __init__(
        self,
        text: str,
        key: str = "",
        *,
        strong: bool = False,
        tone: Tone = "",
        parent: QWidget | None = None,
    ) -> None:
        self._shown = QKeySequence(key).toString(QKeySequence.SequenceFormat.NativeText) or key
        super().__init__(text, strong=strong, tone=tone, parent=parent)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)

    def set_words(self, text: str) -> None:
        super().set_words(text)
        if self._shown:
            self.setText(f"{self.text()}  {self._shown}")
