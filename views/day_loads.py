"""The days of a week as bars: sessions filled, other activities hatched on top of them."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from typing import Final

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QBrush, QFontMetricsF, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from desktop.planning.load import DayLoad
from views import words
from views.load_texts import day_text, load_text
from views.theme import TextSize, Theme

_PLOT: Final = 128
_WIDEST: Final = 44


class DayLoads(QWidget):
    """Seven bars. A day with a session that has no effort or minutes bears a question mark."""

    def __init__(self, theme: Theme, today: date, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setLayoutDirection(Qt.LayoutDirection.LeftToRight)  # a figure is never mirrored
        self._theme, self._today = theme, today
        self._days: tuple[DayLoad, ...] = ()
        self._least = 1.0
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        theme.changed.connect(self.updateGeometry)

    @property
    def days(self) -> tuple[DayLoad, ...]:
        """What is shown."""
        return self._days

    def show_days(self, days: Sequence[DayLoad], at_least: float) -> None:
        """Show other days; the axis reaches ``at_least`` so far, so that weeks compare."""
        self._days, self._least = tuple(days), at_least
        spoken = "; ".join(day_text(day, self._today) for day in days)
        self.setAccessibleName(self.tr("Load by day. {days}").format(days=spoken))
        self.update()

    def sizeHint(self) -> QSize:
        small = QFontMetricsF(self._theme.font(TextSize.SMALL)).height()
        return QSize(self._theme.px(340), self._theme.px(_PLOT) + round(3.6 * small))

    def minimumSizeHint(self) -> QSize:
        return QSize(self._theme.px(220), self.sizeHint().height())

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setLayoutDirection(self.layoutDirection())
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        small = self._theme.font(TextSize.SMALL)
        painter.setFont(small)
        line = QFontMetricsF(small).height()
        foot = self.height() - 2.3 * line
        most = max([1.0, self._least, *(day.load for day in self._days)])
        wide = self.width() / 7
        painter.setPen(QPen(self._theme.colour("line"), 1))
        painter.drawLine(QPointF(0, round(foot) + 0.5), QPointF(self.width(), round(foot) + 0.5))
        for place, day in enumerate(self._days):
            column = QRectF(place * wide, 0, wide, foot)
            self._draw_day(painter, column, day, (foot - 1.3 * line) / most)
            self._draw_name(painter, QRectF(place * wide, foot + 3, wide, line), day)
        painter.end()

    def _draw_day(self, painter: QPainter, column: QRectF, day: DayLoad, each: float) -> None:
        wide = min(self._theme.px(_WIDEST), column.width() * 0.62)
        left = column.center().x() - wide / 2
        top = draw_stack(painter, self._theme, QRectF(left, 0, wide, column.bottom()), day, each)
        said = load_text(day.load) if day.load else ""
        if day.unrated:
            said = f"{said} + ?" if said else "?"
        painter.setPen(self._theme.colour("caution" if day.unrated else "text"))
        line = painter.fontMetrics().height()
        above = QRectF(column.left(), top - line - 1, column.width(), line)
        painter.drawText(above, Qt.AlignmentFlag.AlignCenter, said)

    def _draw_name(self, painter: QPainter, rect: QRectF, day: DayLoad) -> None:
        here = day.day == self._today
        painter.setPen(self._theme.colour("accent" if here else "muted"))
        centre = Qt.AlignmentFlag.AlignCenter
        name = f"{words.short_weekday(day.day.weekday())} {day.day.day}"
        painter.drawText(rect, centre, name)
        aside = self._aside(day)
        painter.drawText(rect.translated(0, rect.height()), centre, aside)

    def _aside(self, day: DayLoad) -> str:
        """What is to be said of a day in one word."""
        if day.away:
            return self.tr("away")
        if day.planned:
            return self.tr("left out") if day.day < self._today else self.tr("planned")
        if day.day == self._today:
            return self.tr("today")
        return self.tr("deload") if day.eased else ""


def draw_stack(painter: QPainter, theme: Theme, room: QRectF, day: DayLoad, each: float) -> float:
    """Draw one day's bar up from the foot of ``room``, ``each`` pixels a unit; where it ends."""
    foot = room.bottom()
    colour = theme.colour("accent")
    painter.setPen(Qt.PenStyle.NoPen)
    if day.sessions:
        high = max(1.0, day.sessions * each)
        painter.setBrush(colour)
        painter.drawRect(QRectF(room.left(), foot - high, room.width(), high))
        foot -= high
    if day.activities:
        high = max(2.0, day.activities * each)
        part = QRectF(room.left() + 0.5, foot - high + 0.5, room.width() - 1, high - 1)
        if day.sessions:
            part.adjust(0, 0, 0, -1)
        painter.setPen(QPen(colour, 1))
        painter.setBrush(QBrush(colour, Qt.BrushStyle.BDiagPattern))
        painter.drawRect(part)
        foot -= high
    return foot
