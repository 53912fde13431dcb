"""When what is typed is written down: at once where another field begins, soon within a field."""

from __future__ import annotations

from collections.abc import Callable
from typing import Final

from PySide6.QtCore import QObject, QTimer
from PySide6.QtWidgets import QApplication

SOON_MS: Final = 250
AGAIN_MS: Final = 1_000


class DraftKeeper(QObject):
    """Calls ``keep`` so that what is kept is never older than the field being typed in.

    ``keep`` says whether it could be written; where not, it is tried again.
    """

    def __init__(self, keep: Callable[[], bool], parent: QObject) -> None:
        super().__init__(parent)
        self._keep = keep
        self._timer = QTimer(self)
        self._timer.setSingleShot(True)
        self._timer.timeout.connect(self.keep)
        application = QApplication.instance()
        assert isinstance(application, QApplication)
        application.focusChanged.connect(self._moved)

    def typed(self, going_on: bool) -> None:
        """Something was typed; ``going_on`` in the same field as before."""
        if going_on:
            self._timer.start(SOON_MS)
        else:
            self.keep()

    def keep(self) -> None:
        """Write down what is typed, now."""
        self._timer.stop()
        if not self._keep():
            self._timer.start(AGAIN_MS)

    def forget(self) -> None:
        """What was typed is kept otherwise."""
        self._timer.stop()

    def _moved(self) -> None:
        """Another field has the cursor: the one before is complete."""
        if self._timer.isActive():
            self.keep()
