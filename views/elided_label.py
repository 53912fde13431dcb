"""A label of one line that shows as much as there is room for."""

from __future__ import annotations

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QPainter, QPaintEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from views.blocks import Label, Size, Tone


class ElidedLabel(Label):
    """Plain text whose end gives way to dots."""

    def __init__(
        self, text: str = "", size: Size = "body", tone: Tone = "", parent: QWidget | None = None
    ) -> None:
        super().__init__(text, size, tone, parent=parent)
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)

    def minimumSizeHint(self) -> QSize:
        return QSize(0, super().minimumSizeHint().height())

    def paintEvent(self, _event: QPaintEvent) -> None:
        room = self.contentsRect()
        text = self.fontMetrics().elidedText(self.text(), Qt.TextElideMode.ElideRight, room.width())
        painter = QPainter(self)
        painter.setPen(self.palette().color(self.foregroundRole()))
        painter.drawText(room, Qt.AlignmentFlag.AlignVCenter, text)
