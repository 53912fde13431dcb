"""A chart on paper: the same series as on the screen, drawn as lines on the sheet's own grid.

Black and greys, and the accent for what is estimated, so that it reads on any printer. The chart
library has no part in it.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

import numpy as np
from PySide6.QtCore import QCoreApplication, QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QPainter, QPen, QPolygonF

from views import words
from views.axis_ticks import day_ticks, round_ticks
from views.chart_window import fitting
from views.palettes import LIGHT
from views.paper_chart import PaperChart
from views.progress_series import Band, Floats, Shape, broken_line, step_line
from views.progress_texts import goal_words, mark_word
from views.series_cut import cut, flattened
from views.sheet_type import Role, SheetType, mm

translate = QCoreApplication.translate

_LEFT, _FOOT, _BARS = mm(9), mm(4), mm(7)
_SOLID: Final = Qt.PenStyle.SolidLine
_SPOT: Final = mm(0.75)
_TICK_ROOM, _VALUE_ROOM = mm(17), mm(6)
_HAIRLINE, _THIN, _LINE = mm(0.15), mm(0.25), mm(0.45)
_GRID: Final = QColor("#D9D9D9")
_STRIP: Final = QColor("#EFEFEF")
_GREY: Final = QColor("#606060")
_PALER: Final = QColor("#8C8C8C")


def paint_chart(painter: QPainter, chart: PaperChart, type_: SheetType) -> None:
    """Draw ``chart`` on the grid of the sheet."""
    _Drawing(painter, chart, type_).draw()


class _Drawing:
    """One chart being drawn: days and values become places of its frame."""

    def __init__(self, painter: QPainter, chart: PaperChart, type_: SheetType) -> None:
        self._painter, self._chart, self._type = painter, chart, type_
        shown = cut(chart.series, chart.first, chart.last)
        self._low, self._high = fitting(shown, chart.first, chart.last)
        self._series = flattened(shown, self._low, self._high)
        left = _LEFT
        if shown.values:
            left = max(type_.width(name, Role.SMALL) for name in shown.values) + mm(2)
        self._frame = chart.rect.adjusted(left, 0, 0, -_FOOT - _BARS)

    def draw(self) -> None:
        """Everything, from the back to the front."""
        self._painter.save()
        self._draw_strips()
        self._draw_values()
        self._draw_days()
        self._draw_bars()
        self._draw_trend()
        self._draw_line()
        self._draw_goals()
        self._draw_spots()
        self._painter.restore()

    # Places

    def _x(self, day: float) -> float:
        share = (day - self._chart.first) / (self._chart.last - self._chart.first)
        return self._frame.left() + share * self._frame.width()

    def _y(self, value: float) -> float:
        share = (value - self._low) / (self._high - self._low)
        return self._frame.bottom() - share * self._frame.height()

    def _points(self, days: Floats, values: Floats) -> list[QPointF]:
        pairs = zip(days, values, strict=True)
        return [QPointF(self._x(float(day)), self._y(float(value))) for day, value in pairs]

    def _pen(
        self, colour: QColor, width: float, style: Qt.PenStyle = Qt.PenStyle.SolidLine
    ) -> None:
        self._painter.setPen(QPen(colour, width, style, Qt.PenCapStyle.FlatCap))

    # Ground and axes

    def _draw_strips(self) -> None:
        for strip in self._series.strips:
            left, right = (
                self._x(strip.first.toordinal() - 0.5),
                self._x(strip.last.toordinal() + 0.5),
            )
            place = QRectF(left, self._frame.top(), right - left, self._frame.height())
            self._painter.fillRect(place.intersected(self._frame), _STRIP)
            self._write_in(place.center().x(), self._frame.bottom() - mm(3.2), mark_word(strip))

    def _draw_values(self) -> None:
        named = self._series.values
        ticks: Sequence[tuple[float, str]] = [(float(at), name) for at, name in enumerate(named)]
        if not named:
            most = max(2, int(self._frame.height() / _VALUE_ROOM))
            found = round_ticks(self._low, self._high, most)
            ticks = [(value, words.number(value)) for value in found]
        for value, text in ticks:
            y = self._y(value)
            self._pen(_GRID, _HAIRLINE)
            self._painter.drawLine(QPointF(self._frame.left(), y), QPointF(self._frame.right(), y))
            place = QRectF(self._chart.rect.left(), y - mm(2), 0, mm(4))
            place.setRight(self._frame.left() - mm(1.2))
            self._write(place, text, Qt.AlignmentFlag.AlignRight)

    def _draw_days(self) -> None:
        most = max(2, int(self._frame.width() / _TICK_ROOM))
        foot = self._chart.rect.bottom() - _FOOT
        for tick in day_ticks(self._chart.first, self._chart.last, most, self._chart.week_starts):
            self._write_in(self._x(tick.day), foot + mm(0.4), tick.text, inside=False)
        today = self._x(self._series.today)
        if self._chart.first < self._series.today < self._chart.last:
            self._pen(_PALER, _HAIRLINE)
            top, bottom = self._frame.top(), self._frame.bottom()
            self._painter.drawLine(QPointF(today, top), QPointF(today, bottom))

    def _draw_bars(self) -> None:
        """Hard sets a week: an outline for what was planned, filled for what was done."""
        most = max([max(w.hard_sets, w.planned_sets) for w in self._series.weeks] or [1])
        foot = self._chart.rect.bottom() - _FOOT
        room = _BARS - mm(1.5)
        for week in self._series.weeks:
            left = self._x(week.first.toordinal()) + mm(0.4)
            right = self._x(week.first.toordinal() + 7) - mm(0.4)
            for sets, filled in ((week.planned_sets, False), (week.hard_sets, True)):
                tall = sets / max(most, 1) * room
                bar = QRectF(left, foot - tall, right - left, tall)
                if filled:
                    self._painter.fillRect(bar, _PALER)
                elif sets:
                    self._pen(_PALER, _HAIRLINE)
                    self._painter.setBrush(Qt.BrushStyle.NoBrush)
                    self._painter.drawRect(bar)

    # What was measured

    def _draw_trend(self) -> None:
        for band, share, style in (
            (self._series.trend, 0.16, Qt.PenStyle.SolidLine),
            (self._series.forecast, 0.08, Qt.PenStyle.DashLine),
        ):
            if band is not None:
                self._draw_band(band, share)
                self._pen(LIGHT.colour("accent"), _LINE, style)
                self._painter.drawPolyline(self._points(band.days, band.middle))

    def _draw_band(self, band: Band, share: float) -> None:
        # Mixed with white, not see-through: some printers make pictures of what is see-through.
        accent = LIGHT.colour("accent")
        parts = (accent.red(), accent.green(), accent.blue())
        mixed = QColor(*(round(255 - (255 - part) * share) for part in parts))
        edge = self._points(band.days, band.low)
        edge += reversed(self._points(band.days, band.high))
        self._painter.setPen(Qt.PenStyle.NoPen)
        self._painter.setBrush(mixed)
        self._painter.drawPolygon(QPolygonF(edge))

    def _draw_line(self) -> None:
        """From session to session, where there is no trend."""
        series = self._series
        if series.trend is not None or len(series.spots) < 2:
            return
        self._pen(_GREY, _THIN)
        if series.steps:
            self._painter.drawPolyline(self._points(*step_line(series.days, series.heights)))
            return
        days, values = broken_line(series)
        breaks = np.flatnonzero(np.isnan(values))
        for part_days, part in zip(np.split(days, breaks), np.split(values, breaks), strict=True):
            kept = ~np.isnan(part)
            self._painter.drawPolyline(self._points(part_days[kept], part[kept]))

    def _draw_goals(self) -> None:
        good = LIGHT.colour("good")
        for value, line in self._series.goals:
            y = self._y(value)
            self._pen(good, _THIN, Qt.PenStyle.DotLine)
            self._painter.drawLine(QPointF(self._frame.left(), y), QPointF(self._frame.right(), y))
            text = translate("Progress", "goal {what}").format(
                what=goal_words(line, self._series.unit, self._chart.names)
            )
            place = QRectF(self._frame.left(), y - mm(3.6), self._frame.width() - mm(0.5), mm(3.4))
            self._write(place.adjusted(mm(0.5), 0, 0, 0), text, self._free_side(value), good)

    def _free_side(self, value: float) -> Qt.AlignmentFlag:
        """The end of the frame at which the trend is farther from a value."""
        bands = [band for band in (self._series.trend, self._series.forecast) if band is not None]
        if not bands:
            return Qt.AlignmentFlag.AlignRight
        first, last = float(bands[0].middle[0]), float(bands[-1].middle[-1])
        at_right = abs(last - value) > abs(first - value)
        return Qt.AlignmentFlag.AlignRight if at_right else Qt.AlignmentFlag.AlignLeft

    def _draw_spots(self) -> None:
        size = _SPOT if len(self._series.spots) < 150 else _SPOT * 0.6
        for spot, record in zip(self._series.spots, self._series.records, strict=True):
            ink = QColor(Qt.GlobalColor.black) if spot.counted else _PALER
            at = QPointF(self._x(spot.day), self._y(spot.value))
            hollow = spot.shape in (Shape.RING, Shape.HOLLOW_SQUARE)
            self._pen(ink, _THIN)
            self._painter.setBrush(QBrush(QColor(Qt.GlobalColor.white) if hollow else ink))
            if spot.shape in (Shape.SQUARE, Shape.HOLLOW_SQUARE):
                self._painter.drawRect(QRectF(at.x() - size, at.y() - size, 2 * size, 2 * size))
            else:
                self._painter.drawEllipse(at, size, size)
            if record:
                self._draw_star(QPointF(at.x(), at.y() - mm(2.2)), size * 1.3)

    def _draw_star(self, middle: QPointF, size: float) -> None:
        corners = []
        for place in range(10):
            reach = size if place % 2 == 0 else size * 0.45
            turn = np.pi * (place / 5 - 0.5)
            corners.append(
                QPointF(
                    middle.x() + reach * float(np.cos(turn)),
                    middle.y() + reach * float(np.sin(turn)),
                )
            )
        self._painter.setPen(Qt.PenStyle.NoPen)
        self._painter.setBrush(LIGHT.colour("good"))
        self._painter.drawPolygon(QPolygonF(corners))

    # Words

    def _write_in(self, middle: float, top: float, text: str, *, inside: bool = True) -> None:
        """Small words round a place, kept within the frame."""
        wide = self._type.width(text, Role.CAPTION)
        left = middle - wide / 2
        if inside:
            left = min(max(left, self._frame.left()), self._frame.right() - wide)
        else:
            left = min(left, self._chart.rect.right() - wide)
        place = QRectF(left, top, wide, mm(3))
        self._write(place, text, Qt.AlignmentFlag.AlignLeft, role=Role.CAPTION)

    def _write(
        self, place: QRectF, text: str, side: Qt.AlignmentFlag, colour: QColor = _GREY,
        role: Role = Role.SMALL,
    ) -> None:  # fmt: skip
        self._painter.setFont(self._type.font(role))
        self._painter.setPen(colour)
        flags = side | Qt.AlignmentFlag.AlignVCenter
        flags = flags | Qt.TextFlag.TextDontClip | Qt.TextFlag.TextSingleLine
        self._painter.drawText(place, int(flags), text)
