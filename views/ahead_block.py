"""Draws the next twelve sessions twice: as asked, and with one in four missed."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from PySide6.QtCore import QEvent, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QFontMetricsF, QHelpEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QToolTip, QWidget

from views.ahead_lines import SESSIONS, AheadCell, AheadLine, discs_text, line_words
from views.theme import TextSize, Theme
from views.tips import plain_tip

_CELL: Final = 50
_GAP: Final = 3
_NAME: Final = 150
_LEAST: Final = 52


class AheadBlock(QWidget):
    """Two lines of cells; a missed one is crossed, a roll-over tinted, an easier one dashed."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setLayoutDirection(Qt.LayoutDirection.LeftToRight)  # a figure is never mirrored
        self._theme = theme
        self._lines: tuple[AheadLine, ...] = ()
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        theme.changed.connect(self.updateGeometry)

    @property
    def lines(self) -> tuple[AheadLine, ...]:
        """What is shown."""
        return self._lines

    def show_lines(self, lines: Sequence[AheadLine]) -> None:
        """Show other sessions."""
        if tuple(lines) == self._lines:
            return
        self._lines = tuple(lines)
        self.setAccessibleName(". ".join(map(line_words, self._lines)))
        self.updateGeometry()
        self.update()

    def cells_at(self) -> list[tuple[QRectF, AheadCell]]:
        """Every cell that has room, and where it stands."""
        name, top = self._theme.px(_NAME), 0.0
        gap, high = self._theme.px(_GAP), self._line_height()
        room = self.width() - name
        there = max((len(line.cells) for line in self._lines), default=SESSIONS) or SESSIONS
        count = max(1, min(there, int((room + gap) // (self._theme.px(_LEAST) + gap))))
        wide = min((room - gap * (count - 1)) / count, self._theme.px(104))
        placed: list[tuple[QRectF, AheadCell]] = []
        for line in self._lines:
            for at, cell in enumerate(line.cells[:count]):
                placed.append((QRectF(name + at * (wide + gap), top, wide, high), cell))
            top += high + self._theme.px(6)
        return placed

    def _line_height(self) -> float:
        discs = any(cell.discs for line in self._lines for cell in line.cells)
        return self._theme.px(_CELL if discs else _CELL - 14)

    def sizeHint(self) -> QSize:
        high = 2 * (self._line_height() + self._theme.px(6))
        return QSize(self._theme.px(400), round(high))

    def minimumSizeHint(self) -> QSize:
        return QSize(self._theme.px(_NAME + _LEAST), self.sizeHint().height())

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setLayoutDirection(self.layoutDirection())
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        small = self._theme.font(TextSize.SMALL)
        top, high = 0.0, self._line_height()
        painter.setFont(small)
        painter.setPen(self._theme.colour("muted"))
        metrics = QFontMetricsF(small)
        for line in self._lines:
            rect = QRectF(0, top, self._theme.px(_NAME) - self._theme.px(8), high)
            shown = metrics.elidedText(line.heading, Qt.TextElideMode.ElideRight, rect.width())
            painter.drawText(rect, Qt.AlignmentFlag.AlignVCenter, shown)
            top += high + self._theme.px(6)
        for rect, cell in self.cells_at():
            self._draw(painter, rect, cell)
        painter.end()

    def _draw(self, painter: QPainter, rect: QRectF, cell: AheadCell) -> None:
        colour, shown = self._theme.colour, cell.cell
        style = Qt.PenStyle.DashLine if shown.deload else Qt.PenStyle.SolidLine
        painter.setPen(QPen(colour("caution" if cell.missed else "line"), 1, style))
        painter.setBrush(colour("accent_soft" if shown.rolls_over else "surface"))
        corner = self._theme.px(3)
        painter.drawRoundedRect(rect.adjusted(0.5, 0.5, -0.5, -0.5), corner, corner)
        quiet = "text" if shown.rolls_over else "muted"
        bold, plain = self._theme.font(TextSize.SMALL, bold=True), self._theme.font(TextSize.SMALL)
        plain.setPointSizeF(plain.pointSizeF() * 0.94)
        rows = [(shown.above, bold, "text"), (shown.below, plain, quiet)]
        if cell.discs:
            rows.append((discs_text(cell), plain, quiet))
        rows = [row for row in rows if row[0]]
        each = (rect.height() - 4) / max(1, len(rows))
        for at, (text, font, role) in enumerate(rows):
            painter.setFont(font)
            painter.setPen(colour(role))
            place = QRectF(rect.left() + 2, rect.top() + 2 + at * each, rect.width() - 4, each)
            fitted = QFontMetricsF(font).elidedText(
                text, Qt.TextElideMode.ElideRight, place.width()
            )
            painter.drawText(place, Qt.AlignmentFlag.AlignCenter, fitted)
        if cell.missed:
            side = self._theme.px(7)
            mark = QRectF(rect.right() - side - 3, rect.top() + 3, side, side)
            painter.setPen(QPen(colour("caution"), max(1.5, self._theme.px(1.5))))
            painter.drawLine(mark.topLeft(), mark.bottomRight())
            painter.drawLine(mark.topRight(), mark.bottomLeft())

    def event(self, event: QEvent) -> bool:
        if event.type() is QEvent.Type.ToolTip and isinstance(event, QHelpEvent):
            place = QPointF(event.pos())
            for rect, cell in self.cells_at():
                if rect.contains(place):
                    QToolTip.showText(event.globalPos(), plain_tip(cell.words), self)
                    return True
            QToolTip.hideText()
            return True
        return super().event(event)
