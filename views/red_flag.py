"""The banner of a red flag: stop, seek medical help, and nothing is asked until a clearance."""

from __future__ import annotations

from PySide6.QtWidgets import QFrame, QHBoxLayout, QWidget

from views.blocks import Label
from views.general_caution import red_flags


class RedFlagBanner(QFrame):
    """Hidden until it is shown."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("kind", "banner")
        self.setProperty("tone", "stop")
        row = QHBoxLayout(self)
        stop = self.tr(
            "Nothing is asked of this trainee until a licensed professional's clearance is "
            "recorded with name and date."
        )
        row.addWidget(Label(f"{red_flags()} {stop}", tone="stop", wrap=True))
        self.hide()
