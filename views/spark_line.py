"""A spark line: the course of some months in the height of one line of text."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen, QPolygonF

LEAST_POINTS = 2


def spark_points(course: Sequence[tuple[int, float]], place: QRectF, today: int) -> list[QPointF]:
    """Where the values of ``course`` (by ordinal of the day) stand in ``place``, whose right edge
    is ``today``: the lowest at the bottom, the highest at the top; all alike in the middle.
    """
    first = course[0][0]
    days = max(today - first, 1)
    values = [value for _, value in course]
    low, high = min(values), max(values)

    def at(day: int, value: float) -> QPointF:
        part = (value - low) / (high - low) if high > low else 0.5
        x = place.left() + place.width() * (day - first) / days
        return QPointF(x, place.bottom() - place.height() * part)

    return [at(day, value) for day, value in course]


def draw_spark(
    painter: QPainter,
    place: QRectF,
    course: Sequence[tuple[int, float]],
    today: int,
    line: QColor,
    dot: QColor,
) -> None:
    """Draw ``course`` with a dot on its last value; fewer than two values are not drawn."""
    if len(course) < LEAST_POINTS:
        return
    points = spark_points(course, place, today)
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(QPen(line, 1))
    painter.drawPolyline(QPolygonF(points))
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(dot)
    painter.drawEllipse(points[-1], 2, 2)
    painter.restore()
