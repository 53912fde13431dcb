"""Paints a page of a sheet: black on white, on any painter."""

from __future__ import annotations

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QPainter, QPen

from views.paper_chart import PaperChart
from views.sheet_parts import Box, Disc, Line, Part, Sheet, Sleeve, Strip, Text
from views.sheet_type import PER_MM, Role, SheetType, mm
from views.step_strip import PAPER as INK
from views.step_strip import paint_layout

_LEFT = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
_RIGHT = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
_FRAME = mm(0.25)
_HAIRLINE = mm(0.2)
_STRONG = mm(0.6)


def paint_page(painter: QPainter, sheet: Sheet, page: int, per_mm: float) -> None:
    """Paint page ``page`` (from 0) from the painter's origin, ``per_mm`` of its units to the
    millimetre. The ground is left as it is: paper is white.
    """
    painter.save()
    painter.setLayoutDirection(Qt.LayoutDirection.LeftToRight)  # as the blocks were laid out
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setRenderHint(QPainter.RenderHint.TextAntialiasing)
    painter.scale(per_mm / PER_MM, per_mm / PER_MM)
    for placed in sheet.pages[page].blocks:
        painter.save()
        painter.translate(placed.at)
        for part in placed.block.parts:
            _paint(painter, part, sheet.type)
        painter.restore()
    painter.restore()


def _paint(painter: QPainter, part: Part, type_: SheetType) -> None:
    match part:
        case Text():
            painter.setFont(type_.font(part.role))
            painter.setPen(INK.text if part.quiet else INK.here)
            side = _RIGHT if part.right else _LEFT
            flags = side | Qt.TextFlag.TextDontClip | Qt.TextFlag.TextSingleLine
            painter.drawText(part.rect, int(flags), part.text)
        case Line():
            painter.setPen(QPen(INK.here, _STRONG) if part.strong else QPen(INK.edge, _HAIRLINE))
            painter.drawLine(part.start, part.end)
        case Box():
            _paint_box(painter, part, type_)
        case Sleeve():
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(INK.edge)
            painter.drawRect(part.rect)
        case Disc():
            _paint_disc(painter, part, type_)
        case Strip():
            painter.save()
            painter.translate(part.at)
            paint_layout(painter, part.layout, INK, type_.strip_fonts())
            painter.restore()
        case PaperChart():
            from views.chart_painter import paint_chart  # numpy: only where there is a chart

            paint_chart(painter, part, type_)


def _paint_box(painter: QPainter, box: Box, type_: SheetType) -> None:
    painter.setPen(QPen(INK.here, _FRAME))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawRect(box.rect)
    painter.setFont(type_.font(Role.CAPTION))
    painter.setPen(INK.caption)
    inside = box.rect.adjusted(mm(0.7), mm(0.3), -mm(0.3), 0)
    caption = type_.elided(box.caption, Role.CAPTION, inside.width())
    top = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop
    painter.drawText(inside, int(top | Qt.TextFlag.TextSingleLine), caption)


def _paint_disc(painter: QPainter, disc: Disc, type_: SheetType) -> None:
    painter.setPen(QPen(INK.here, _FRAME))
    painter.setBrush(INK.ground)
    corner = mm(0.6)
    painter.drawRoundedRect(QRectF(disc.rect), corner, corner)
    painter.setFont(type_.font(Role.DISC))
    painter.setPen(INK.here)
    flags = Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextDontClip
    painter.drawText(disc.rect, int(flags), disc.label)
