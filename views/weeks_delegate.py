"""Draws a cell of the weeks ahead: target with its load as a shade, minutes, or a bar."""

from __future__ import annotations

from PySide6.QtCore import QObject, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPen
from PySide6.QtWidgets import QAbstractItemView, QStyle, QStyledItemDelegate, QStyleOptionViewItem

from desktop.training.volume import MARKS
from views import words
from views.severity_mark import draw_mark
from views.theme import TextSize, Theme
from views.weeks_model import CellFace, Index, WeeksRole
from views.weeks_rows import BarRow, DayRow, Row, TitleRow

_CENTRE = Qt.AlignmentFlag.AlignCenter


class WeeksDelegate(QStyledItemDelegate):
    """One cell. Shade is load, a dashed edge an easier week, a bar at the left a roll-over."""

    def __init__(self, theme: Theme, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        theme.changed.connect(self._dress)
        self._dress()

    def _dress(self) -> None:
        theme = self._theme
        self._bold = theme.font(TextSize.SMALL, bold=True)
        self._plain = theme.font(TextSize.SMALL)
        self._plain.setPointSizeF(self._plain.pointSizeF() * 0.94)
        roles = ("surface", "line", "text", "muted", "accent", "accent_soft", "caution")
        self._colours = {role: theme.colour(role) for role in roles}
        self._metrics = {
            self._bold.toString(): QFontMetricsF(self._bold),
            self._plain.toString(): QFontMetricsF(self._plain),
        }
        self._shades = [
            _between(self._colours["surface"], self._colours["accent_soft"], 0.2 + 0.8 * step / 8)
            for step in range(9)
        ]

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        face: CellFace = index.data(WeeksRole.FACE)
        row: Row = index.data(WeeksRole.ROW)
        rect = QRectF(option.rect)
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if isinstance(row, BarRow):
            self._draw_bar(painter, rect, face, row)
        elif isinstance(row, DayRow):
            self._draw_number(painter, rect, face)
        elif isinstance(row, TitleRow):
            self._draw_title(painter, rect, row, option)
        elif face.text:
            self._draw_target(painter, rect, face)
        if option.state & QStyle.StateFlag.State_HasFocus:
            painter.setPen(QPen(self._colours["accent"], self._theme.px(2)))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            corner = self._theme.px(3)
            painter.drawRoundedRect(rect.adjusted(1, 1, -1, -1), corner, corner)
        painter.restore()

    def _draw_target(self, painter: QPainter, rect: QRectF, face: CellFace) -> None:
        inner = rect.adjusted(1.5, 1.5, -1.5, -1.5)
        corner = self._theme.px(3)
        style = Qt.PenStyle.DashLine if face.deload else Qt.PenStyle.SolidLine
        painter.setPen(QPen(self._colours["muted" if face.deload else "line"], 1, style))
        shaded = face.shade is not None
        ground = self._colours["surface"]
        if face.shade is not None:
            ground = self._shades[round(face.shade * 8)]
        painter.setBrush(ground)
        painter.drawRoundedRect(inner, corner, corner)
        if face.rolls_over:
            edge = QRectF(inner.left(), inner.top() + 2, self._theme.px(3), inner.height() - 4)
            painter.fillRect(edge, self._colours["accent"])
        half = QRectF(inner.left(), inner.top(), inner.width(), inner.height() / 2 + 1)
        if not face.below:
            half.setHeight(inner.height())
        second = "text" if shaded else "muted"
        font = self._plain if face.past else self._bold
        self._write(painter, half, face.above, font, "text" if not face.past else second)
        half.moveTop(inner.top() + inner.height() / 2 - 1)
        self._write(painter, half, face.below, self._plain, second)
        self._mark(painter, rect, face)

    def _draw_number(self, painter: QPainter, rect: QRectF, face: CellFace) -> None:
        self._write(painter, rect, face.above, self._plain, "caution" if face.over else "muted")
        self._mark(painter, rect, face)

    def _draw_bar(self, painter: QPainter, rect: QRectF, face: CellFace, row: BarRow) -> None:
        value = face.value or 0.0
        if not any(row.values):
            self._write(painter, rect, words.number(0), self._plain, "muted")
            return
        line = self._metrics[self._plain.toString()].height()
        room = rect.height() - line - 1
        foot = rect.bottom() - 1
        if row.marked:
            painter.setPen(QPen(self._colours["muted"], 1, Qt.PenStyle.DotLine))
            for mark in MARKS:
                y = round(foot - room * mark.sets / row.most) + 0.5
                painter.drawLine(QPointF(rect.left(), y), QPointF(rect.right(), y))
        if value:
            high = max(1.0, room * value / row.most)
            side = rect.width() * 0.3
            bar = QRectF(rect.left() + side, foot - high, rect.width() - 2 * side, high)
            under = row.marked and value < MARKS[0].sets
            painter.setPen(QPen(self._colours["accent"], 1))
            painter.setBrush(self._colours["surface" if under else "accent"])
            painter.drawRect(bar)
            above = QRectF(rect.left(), foot - high - line, rect.width(), line)
            self._write(painter, above, face.above, self._plain, "text")
        painter.setPen(self._colours["line"])
        painter.drawLine(QPointF(rect.left(), foot), QPointF(rect.right(), foot))

    def _draw_title(
        self, painter: QPainter, rect: QRectF, row: TitleRow, option: QStyleOptionViewItem
    ) -> None:
        """What the rows below show, where it can be seen."""
        widget = option.widget
        if isinstance(widget, QAbstractItemView):
            rect = rect.intersected(QRectF(widget.viewport().rect()))
        painter.setFont(self._plain)
        painter.setPen(self._colours["muted"])
        painter.drawText(rect, Qt.AlignmentFlag.AlignVCenter, row.detail)

    def _write(self, painter: QPainter, rect: QRectF, text: str, font: QFont, role: str) -> None:
        if not text:
            return
        metrics = self._metrics[font.toString()]
        painter.setFont(font)
        painter.setPen(self._colours[role])
        room = rect.width() - self._theme.px(2)
        if metrics.horizontalAdvance(text) > room:
            text = metrics.elidedText(text, Qt.TextElideMode.ElideRight, room)
        painter.drawText(rect, _CENTRE, text)

    def _mark(self, painter: QPainter, rect: QRectF, face: CellFace) -> None:
        if face.caution:
            side = self._theme.px(8)
            place = QRectF(rect.right() - side - 3, rect.top() + 3, side, side)
            draw_mark(painter, place, "caution", self._colours["caution"])

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        return QSize(self._theme.px(52), self._theme.px(34))


def _between(one: QColor, other: QColor, share: float) -> QColor:
    """A colour between two."""
    parts = zip(one.getRgb()[:3], other.getRgb()[:3], strict=True)  # type: ignore[index]
    return QColor(*(round(a + (b - a) * share) for a, b in parts))
