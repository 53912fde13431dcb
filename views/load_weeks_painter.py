"""Paints the sixteen weeks: bars and averages above, figures and shaded cells below."""

from __future__ import annotations

from datetime import date
from math import ceil
from typing import Final

from PySide6.QtCore import QCoreApplication, QPointF, QRectF, Qt
from PySide6.QtGui import QFontMetricsF, QPainter, QPen, QPolygonF

from desktop.planning.load import TrainedWeek
from views import words
from views.axis_ticks import round_ticks, short_date
from views.day_loads import draw_stack
from views.load_texts import load_text
from views.load_weeks_layout import WeeksLayout
from views.theme import TextSize, Theme

translate = QCoreApplication.translate

_WIDE_DAY: Final = date(2026, 11, 30)
"""As wide as the shortest way to write a day gets."""

DEEPEST: Final = 0.42
"""So much of the accent is laid under a number at the most: text on it stays readable."""

_RIGHT: Final = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter


def paint_weeks(painter: QPainter, sheet: WeeksLayout, *, focused: bool) -> None:
    """Draw the weeks as ``sheet`` lays them out."""
    told = sheet.told
    painter.setFont(sheet.theme.font(TextSize.SMALL))
    most = max([1.0, *(day.load for week in told.weeks for day in week.days)]) * 1.06
    _draw_axis(painter, sheet, most)
    for index in sheet.seen:
        _draw_week(painter, sheet, index, sheet.plot.height() / most)
    _draw_averages(painter, sheet, sheet.plot.height() / most)
    _draw_rows(painter, sheet)
    _draw_earlier(painter, sheet)
    _draw_choice(painter, sheet, focused=focused)


def average_points(sheet: WeeksLayout, each: float) -> tuple[QPolygonF, QPolygonF]:
    """The averages over 7 and over 28 days as points of the picture, ``each`` pixels a unit; empty
    without a trend.
    """
    told = sheet.told
    short, long = QPolygonF(), QPolygonF()
    if told.trend is None:
        return short, long
    begins = told.weeks[sheet.seen.start].first.toordinal()
    ends = told.weeks[sheet.seen.stop - 1].last.toordinal()
    plot, wide = sheet.plot, sheet.column / 7
    for day, near, far in zip(told.trend.days, told.trend.short, told.trend.long, strict=True):
        if begins <= day <= ends:
            x = plot.left() + (day - begins + 0.5) * wide
            short.append(QPointF(x, plot.bottom() - near * each))
            long.append(QPointF(x, plot.bottom() - far * each))
    return short, long


def _draw_axis(painter: QPainter, sheet: WeeksLayout, most: float) -> None:
    plot, theme = sheet.plot, sheet.theme
    line = painter.fontMetrics().height()
    for value in round_ticks(0, most, 3):
        y = round(plot.bottom() - value * plot.height() / most) + 0.5
        painter.setPen(QPen(theme.colour("line"), 1))
        painter.drawLine(QPointF(plot.left(), y), QPointF(plot.right(), y))
        painter.setPen(theme.colour("muted"))
        place = QRectF(0, y - line / 2, plot.left() - theme.px(8), line)
        painter.drawText(place, _RIGHT, load_text(value))


def _draw_week(painter: QPainter, sheet: WeeksLayout, index: int, each: float) -> None:
    week, plot = sheet.told.weeks[index], sheet.plot
    left = plot.left() + (index - sheet.seen.start) * sheet.column
    wide = sheet.column / 7
    for place, day in enumerate(week.days):
        room = QRectF(left + place * wide + 0.5, plot.top(), max(2.0, wide - 1.5), plot.height())
        top = draw_stack(painter, sheet.theme, room, day, each)
        if day.unrated:
            painter.setPen(sheet.theme.colour("caution"))
            high = painter.fontMetrics().height()
            mark = QRectF(room.center().x() - high / 2, top - high, high, high)
            painter.drawText(mark, Qt.AlignmentFlag.AlignCenter, "?")
    _draw_head(painter, sheet, left, index)


def _draw_head(painter: QPainter, sheet: WeeksLayout, left: float, index: int) -> None:
    week, line = sheet.told.weeks[index], sheet.head.height() / 2
    running = week.first <= sheet.told.today <= week.last
    first = QRectF(left, sheet.head.top(), sheet.column, line)
    centre = Qt.AlignmentFlag.AlignCenter
    if _is_named(sheet, index):
        painter.setPen(sheet.theme.colour("accent" if running else "muted"))
        painter.drawText(first.adjusted(-40, 0, 40, 0), centre, short_date(week.first))
    painter.setPen(sheet.theme.colour("caution" if week.load.unrated else "muted"))
    painter.drawText(first.translated(0, line).adjusted(-9, 0, 9, 0), centre, aside_word(week))


def _draw_earlier(painter: QPainter, sheet: WeeksLayout) -> None:
    """How many weeks have no room at the left: Left goes there."""
    if not sheet.seen.start:
        return
    painter.setPen(sheet.theme.colour("muted"))
    place = QRectF(0, sheet.head.top(), sheet.left - sheet.theme.px(8), sheet.line)
    painter.drawText(place, _RIGHT, earlier_word(sheet))


def earlier_word(sheet: WeeksLayout) -> str:
    """The weeks before those that have room, in a word; "" for none."""
    if not sheet.seen.start:
        return ""
    text = translate("Load", "{count} earlier")
    count = words.number(sheet.seen.start)
    return f"\N{SINGLE LEFT-POINTING ANGLE QUOTATION MARK} {text.format(count=count)}"


def aside_word(week: TrainedWeek) -> str:
    """What is to be said of a week in one short word."""
    if week.load.unrated:
        return translate("Load", "in part")
    if all(day.away for day in week.days):
        return translate("Load", "away")
    return translate("Load", "deload") if week.eased else ""


def _is_named(sheet: WeeksLayout, index: int) -> bool:
    """Whether the week's day has room: every one, or every second or third, from the last back."""
    metrics = QFontMetricsF(sheet.theme.font(TextSize.SMALL))
    needed = metrics.horizontalAdvance(short_date(_WIDE_DAY)) + sheet.theme.px(4)
    every = max(1, ceil(needed / sheet.column))
    return (sheet.seen.stop - 1 - index) % every == 0


def _draw_averages(painter: QPainter, sheet: WeeksLayout, each: float) -> None:
    short, long = average_points(sheet, each)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    for line, is_long in ((short, False), (long, True)):
        pen = average_pen(sheet.theme, long=is_long)
        round_it = QPen(sheet.theme.colour("surface"), pen.widthF() + sheet.theme.px(2))
        painter.setPen(round_it)  # so that the line is seen on the bars too
        painter.drawPolyline(line)
        painter.setPen(pen)
        painter.drawPolyline(line)


def average_pen(theme: Theme, *, long: bool) -> QPen:
    """The pen of an average: thin and whole over 7 days, thicker and dashed over 28."""
    pen = QPen(theme.colour("text"), theme.px(2) if long else theme.px(1))
    if long:
        pen.setStyle(Qt.PenStyle.DashLine)
    return pen


def _draw_rows(painter: QPainter, sheet: WeeksLayout) -> None:
    text, muted = sheet.theme.colour("text"), sheet.theme.colour("muted")
    shade = sheet.theme.colour("accent")
    corner = sheet.theme.px(3)
    for number, row in enumerate(sheet.rows):
        painter.setPen(muted)
        start = sheet.cell(number, sheet.seen.start)
        name = QRectF(0, start.top(), sheet.left - sheet.theme.px(8), start.height())
        painter.drawText(name, _RIGHT, row.name)
        for index in sheet.seen:
            cell = sheet.cell(number, index).adjusted(1, 1, -1, -1)
            depth = row.shades[index]
            if depth is not None:
                painter.setPen(Qt.PenStyle.NoPen)
                shade.setAlphaF(0.04 + DEEPEST * depth if depth else 0.02)
                painter.setBrush(shade)
                painter.drawRoundedRect(cell, corner, corner)
            painter.setPen(text)
            painter.drawText(cell, Qt.AlignmentFlag.AlignCenter, row.texts[index])


def _draw_choice(painter: QPainter, sheet: WeeksLayout, *, focused: bool) -> None:
    """The chosen week has a frame, thicker while the keys act here."""
    if sheet.at not in sheet.seen:
        return
    top, bottom = sheet.plot.top() - sheet.theme.px(4), sheet.cell(len(sheet.rows) - 1, sheet.at)
    wide = 2.0 if focused else 1.0
    frame = QRectF(bottom.left(), top, bottom.width(), bottom.bottom() - top + sheet.theme.px(2))
    painter.setPen(QPen(sheet.theme.colour("accent"), wide))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    corner = sheet.theme.px(3)
    painter.drawRoundedRect(frame.adjusted(0.5, 0.5, -0.5, -0.5), corner, corner)
