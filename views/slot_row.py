"""A slot as one row: name and what it asks, the step strip, the sessions to come as small cells.

The row paints itself, so that a day of many slots opens at once and an edit repaints one row.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from PySide6.QtCore import QEvent, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QFocusEvent,
    QFontMetricsF,
    QHelpEvent,
    QPainter,
    QPaintEvent,
    QPen,
)
from PySide6.QtWidgets import QSizePolicy, QToolTip, QWidget

from views.acting_row import ActingRow
from views.slot_face import NextCell, SlotFace
from views.step_strip import paint_strip, strip_colours, strip_fonts
from views.theme import TextSize, Theme
from views.tips import plain_tip

ROW_HEIGHT: Final = 54
_CELL_HEIGHT: Final = 34
_CELL_GAP: Final = 3
_GAP: Final = 16
_INSIDE: Final = 16


@dataclass(frozen=True, slots=True)
class RowColumns:
    """Where the parts of all rows lie, in pixels: the same for every row of the page."""

    left: float
    name: float
    strip_x: float
    strip: float
    next_x: float
    cell: float
    count: int


def row_columns(width: float, theme: Theme) -> RowColumns:
    """The columns in ``width``: fewer and narrower cells where there is less room."""
    scale = theme.px(100) / 100
    room = width / scale - 2 * _INSIDE
    name = min(420.0, max(150.0, room * 0.228))
    if room >= 1500:
        count, cell = 8, 66.0
    elif room >= 1300:
        count, cell = 8, 58.0
    elif room >= 900:
        count, cell = 8, 43.0
    elif room >= 760:
        count, cell = 6, 43.0
    else:
        count, cell = 4 if room >= 660 else 3 if room >= 600 else 2, 43.0
    cells = count * cell + (count - 1) * _CELL_GAP
    next_x = _INSIDE + room - cells
    strip_x = _INSIDE + name + _GAP
    strip = max(60.0, next_x - _GAP - strip_x)
    return RowColumns(
        _INSIDE * scale,
        name * scale,
        strip_x * scale,
        strip * scale,
        next_x * scale,
        cell * scale,
        count,
    )


class SlotRow(ActingRow):
    """One slot. ``acted(RowAct)`` for what keys ask; ``chosen`` when it takes the focus."""

    chosen = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setLayoutDirection(Qt.LayoutDirection.LeftToRight)  # a figure is never mirrored
        self._theme = theme
        self._face: SlotFace | None = None
        self._open = False
        self._marked = False
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        theme.changed.connect(self.updateGeometry)

    @property
    def face(self) -> SlotFace | None:
        """What is shown."""
        return self._face

    def show_face(self, face: SlotFace) -> None:
        """Show another face; repaints only where something changed."""
        if face != self._face:
            self._face = face
            self._speak(face)
            self.update()

    def set_open(self, is_open: bool) -> None:
        """Show that the slot is edited beneath."""
        if is_open != self._open:
            self._open = is_open
            self.update()

    def set_marked(self, is_marked: bool) -> None:
        """Show that the slot is marked, to be changed together with others."""
        if is_marked != self._marked:
            self._marked = is_marked
            if self._face is not None:
                self._speak(self._face)
            self.update()

    def _speak(self, face: SlotFace) -> None:
        marked = self.tr("marked") if self._marked else ""
        self.setAccessibleName(". ".join(part for part in (face.sentence, marked) if part))
        self.setAccessibleDescription(
            self.tr("Return edits, Space marks, Alt with the arrows moves, Delete removes.")
        )

    def _next_rects(self) -> list[QRectF]:
        columns = row_columns(self.width(), self._theme)
        height = self._theme.px(_CELL_HEIGHT)
        top = (self.height() - height) / 2
        step = columns.cell + self._theme.px(_CELL_GAP)
        return [
            QRectF(columns.next_x + place * step, top, columns.cell, height)
            for place in range(columns.count)
        ]

    def _draw_ground(self, painter: QPainter, columns: RowColumns) -> None:
        """The hairline under the row; for the chosen one its ground and a bar at the edge."""
        whole = QRectF(self.rect())
        if self.hasFocus() or self._open:
            painter.fillRect(whole, self._theme.colour("background"))
        if self.hasFocus() or self._open:
            bar = QRectF(0, 0, self._theme.px(3), whole.height())
            painter.fillRect(bar, self._theme.colour("accent"))
        if self._marked:
            self._draw_tick(painter, whole)
        if not self._open:
            painter.setPen(self._theme.colour("line"))
            bottom = whole.height() - 0.5
            painter.drawLine(
                QPointF(columns.left, bottom), QPointF(whole.width() - columns.left, bottom)
            )

    def _draw_tick(self, painter: QPainter, whole: QRectF) -> None:
        """A tick in the margin: the slot is marked."""
        side = self._theme.px(7)
        left, middle = self._theme.px(5), whole.height() / 2
        pen = QPen(self._theme.colour("accent"), max(1.8, self._theme.px(1.8)))
        pen.setCapStyle(Qt.PenCapStyle.RoundCap)
        painter.setPen(pen)
        foot = QPointF(left + side * 0.38, middle + side * 0.5)
        painter.drawLine(QPointF(left, middle), foot)
        painter.drawLine(foot, QPointF(left + side, middle - side * 0.6))

    def _draw_words(self, painter: QPainter, face: SlotFace, columns: RowColumns) -> None:
        name_font = self._theme.font(TextSize.BODY, bold=True)
        small_font = self._theme.font(TextSize.SMALL)
        name_metrics, small_metrics = QFontMetricsF(name_font), QFontMetricsF(small_font)
        block = name_metrics.height() + self._theme.px(2) + small_metrics.height()
        top = (self.height() - block) / 2
        room = columns.name
        for font, metrics, text, role in (
            (name_font, name_metrics, face.name, "text"),
            (small_font, small_metrics, face.asks, "muted"),
        ):
            painter.setFont(font)
            painter.setPen(self._theme.colour(role))
            shown = metrics.elidedText(text, Qt.TextElideMode.ElideRight, room)
            painter.drawText(QPointF(columns.left, top + metrics.ascent()), shown)
            top += metrics.height() + self._theme.px(2)

    def _draw_next(self, painter: QPainter, face: SlotFace) -> None:
        for rect, cell in zip(self._next_rects(), face.cells, strict=False):
            self._draw_cell(painter, rect, cell)

    def _draw_cell(self, painter: QPainter, rect: QRectF, cell: NextCell) -> None:
        line = self._theme.colour("line")
        pen = QPen(line, 1, Qt.PenStyle.DashLine if cell.deload else Qt.PenStyle.SolidLine)
        painter.setPen(Qt.PenStyle.NoPen if cell.rolls_over else pen)
        painter.setBrush(self._theme.colour("accent_soft" if cell.rolls_over else "surface"))
        corner = self._theme.px(3)
        painter.drawRoundedRect(rect.adjusted(0.5, 0.5, -0.5, -0.5), corner, corner)
        above = self._theme.font(TextSize.SMALL, bold=True)
        below = self._theme.font(TextSize.SMALL)
        below.setPointSizeF(below.pointSizeF() * 0.94)
        half = QRectF(rect.left(), rect.top() + self._theme.px(1), rect.width(), rect.height() / 2)
        if not cell.below:
            half.setHeight(rect.height() - self._theme.px(2))
        quiet = "text" if cell.rolls_over else "muted"
        for font, text, role in ((above, cell.above, "text"), (below, cell.below, quiet)):
            painter.setFont(font)
            painter.setPen(self._theme.colour(role))
            metrics = QFontMetricsF(font)
            room = rect.width() - self._theme.px(2)
            shown = metrics.elidedText(text, Qt.TextElideMode.ElideRight, room)
            painter.drawText(half, Qt.AlignmentFlag.AlignCenter, shown)
            half.moveTop(half.top() + half.height() - self._theme.px(1.5))

    def sizeHint(self) -> QSize:
        return QSize(self._theme.px(560), self._theme.px(ROW_HEIGHT))

    def minimumSizeHint(self) -> QSize:
        return QSize(self._theme.px(320), self._theme.px(ROW_HEIGHT))

    def paintEvent(self, event: QPaintEvent) -> None:
        face = self._face
        if face is None:
            return
        painter = QPainter(self)
        painter.setLayoutDirection(self.layoutDirection())
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        columns = row_columns(self.width(), self._theme)
        self._draw_ground(painter, columns)
        self._draw_words(painter, face, columns)
        fonts = strip_fonts(self._theme)
        colours = strip_colours(self._theme.palette)
        height = QFontMetricsF(fonts.caption).height() + QFontMetricsF(fonts.cell).height() * 1.67
        strip = QRectF(columns.strip_x, (self.height() - height) / 2, columns.strip, height)
        painter.save()
        painter.setClipRect(strip)
        paint_strip(painter, strip, face.strip, colours, fonts, face.unit)
        painter.restore()
        self._draw_next(painter, face)
        painter.end()

    def event(self, event: QEvent) -> bool:
        if event.type() is QEvent.Type.ToolTip and isinstance(event, QHelpEvent):
            self._show_tip(event)
            return True
        return super().event(event)

    def _show_tip(self, event: QHelpEvent) -> None:
        face = self._face
        if face is None:
            return
        place = QPointF(event.pos())
        for rect, cell in zip(self._next_rects(), face.cells, strict=False):
            if rect.contains(place):
                QToolTip.showText(event.globalPos(), plain_tip(cell.words), self)
                return
        if place.x() < row_columns(self.width(), self._theme).strip_x:
            QToolTip.showText(event.globalPos(), plain_tip(f"{face.name}\n{face.asks}"), self)
        else:
            QToolTip.hideText()

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        self.chosen.emit()
