"""The marks of severity, told apart by shape: a ring for a note, a triangle for caution, an
octagon for stop.
"""

from __future__ import annotations

from math import cos, pi, sin

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFontMetrics, QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QSizePolicy, QWidget

from views.theme import Theme


def draw_mark(painter: QPainter, rect: QRectF, severity: str, colour: QColor) -> None:
    """Draw the mark of "note", "caution" or "stop" into ``rect``."""
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    if severity == "note":
        pen = QPen(colour, max(1.5, rect.width() / 7))
        painter.setPen(pen)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        inside = pen.widthF() / 2
        painter.drawEllipse(rect.adjusted(inside, inside, -inside, -inside))
    else:
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(colour)
        painter.drawPolygon(_triangle(rect) if severity == "caution" else _octagon(rect))
    painter.restore()


class SeverityMark(QWidget):
    """A mark as a widget; it is decoration beside a word, so it takes no focus."""

    def __init__(self, theme: Theme, severity: str = "note", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._severity = severity
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        theme.changed.connect(self.updateGeometry)

    def set_severity(self, severity: str) -> None:
        """Show another mark."""
        self._severity = severity
        self.update()

    def sizeHint(self) -> QSize:
        """As high as a line of text, so that it stands beside the first one."""
        line = QFontMetrics(self._theme.font()).height()
        return QSize(self._theme.px(13), line)

    def paintEvent(self, event: QPaintEvent) -> None:
        role = {"note": "accent", "caution": "caution", "stop": "stop"}[self._severity]
        painter = QPainter(self)
        side = self._theme.px(12)
        place = QRectF(0, (self.height() - side) / 2, side, side)
        draw_mark(painter, place, self._severity, self._theme.colour(role))
        painter.end()


def _triangle(rect: QRectF) -> QPolygonF:
    return QPolygonF(
        [QPointF(rect.center().x(), rect.top()), rect.bottomRight(), rect.bottomLeft()]
    )


def _octagon(rect: QRectF) -> QPolygonF:
    centre, radius = rect.center(), rect.width() / 2 / cos(pi / 8)
    angles = [(2 * corner + 1) * pi / 8 for corner in range(8)]
    return QPolygonF([centre + QPointF(radius * cos(a), radius * sin(a)) for a in angles])
