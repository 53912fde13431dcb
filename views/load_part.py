"""A part of the area of week and load: what the area shows and asks of each."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from desktop.planning.history import History


class LoadPart(QWidget):
    """One of the parts. It says by signals where else the coach wants to go."""

    area_wanted = Signal(str)
    session_wanted = Signal(int)

    def show_history(self, history: History) -> None:
        """Show a trainee, read anew."""
        raise NotImplementedError

    def leave(self) -> None:
        """Something else is shown: end what takes long."""
