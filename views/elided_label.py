"""A label that gives way: what has no room ends in dots, and stands whole in its tooltip."""

from __future__ import annotations

from html import escape
from math import ceil

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QFontMetricsF, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from views.blocks import Label, Size, Tone


class ElidedLabel(Label):
    """One line of plain text that never asks for room; `say` sets it."""

    def __init__(self, size: Size = "body", tone: Tone = "", parent: QWidget | None = None) -> None:
        super().__init__("", size, tone, parent=parent)
        self._whole = ""
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Preferred)

    @property
    def whole(self) -> str:
        """All of the text."""
        return self._whole

    def say(self, text: str) -> None:
        """Show another text."""
        self._whole = text
        self.setAccessibleName(text)
        self.updateGeometry()
        self._fit()

    def _fit(self) -> None:
        metrics = self.fontMetrics()
        shown = metrics.elidedText(self._whole, Qt.TextElideMode.ElideRight, self.width())
        if shown != self.text():
            self.setText(shown)
            self.setToolTip("" if shown == self._whole else f"<p>{escape(self._whole)}</p>")

    def sizeHint(self) -> QSize:
        # A part of a pixel too few would already end the text in dots.
        wide = ceil(QFontMetricsF(self.font()).horizontalAdvance(self._whole)) + 1
        return QSize(wide, super().sizeHint().height())

    def minimumSizeHint(self) -> QSize:
        return QSize(0, super().minimumSizeHint().height())

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def paintEvent(self, event: QPaintEvent) -> None:
        self._fit()
        super().paintEvent(event)
