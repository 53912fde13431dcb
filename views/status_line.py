"""The quiet line at the foot of the window: the one place for words to the coach."""

from __future__ import annotations

from PySide6.QtCore import Qt, QTimer
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QHBoxLayout, QWidget

from views.blocks import Label, Tone, WordButton
from views.record import MessageKind
from views.theme import Theme

_SHOWN_MS = 12_000


class StatusLine(QWidget):
    """Shows the last message, with Undo beside it where something was done.

    Errors stay until the next message; others fade from view by themselves. The line keeps its
    height, so that nothing jumps.
    """

    def __init__(self, theme: Theme, undo: QAction, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._text = Label(tone="muted")
        self._text.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self._text.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self._undo = WordButton(self.tr("Undo"))
        self._undo.clicked.connect(undo.trigger)
        self._undo.hide()
        row = QHBoxLayout(self)
        row.addWidget(self._text, 1)
        row.addWidget(self._undo)
        self._timer = QTimer(self)
        self._timer.setSingleShot(True)
        self._timer.timeout.connect(self.clear)
        theme.changed.connect(self._space)
        self._space()

    @property
    def text(self) -> str:
        """What stands there."""
        return self._text.text()

    def say(self, text: str, kind: str = MessageKind.NOTE) -> None:
        """Show a message."""
        tones: dict[str, Tone] = {MessageKind.ERROR.value: "stop", MessageKind.DONE.value: "text"}
        self._text.set_tone(tones.get(kind, "muted"))
        shown = self.tr("Error: {text}").format(text=text) if kind == MessageKind.ERROR else text
        self._text.setText(shown)
        self._text.setAccessibleName(shown)
        self._text.setToolTip("")
        self._undo.setVisible(kind == MessageKind.DONE)
        if kind == MessageKind.ERROR:
            self._timer.stop()
        else:
            self._timer.start(_SHOWN_MS)

    def clear(self) -> None:
        """Show nothing."""
        self._text.clear()
        self._undo.hide()

    def _space(self) -> None:
        self.layout().setContentsMargins(self._theme.grid(3), 0, self._theme.grid(3), 0)  # type: ignore[union-attr]
        self.setFixedHeight(self._theme.grid(4))
