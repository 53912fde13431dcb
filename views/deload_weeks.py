"""The weeks to come as bars: sets asked with the easier week, over those asked without it."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, timedelta
from math import ceil
from typing import Final

from PySide6.QtCore import QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QBrush,
    QFontMetricsF,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPen,
)
from PySide6.QtWidgets import QSizePolicy, QWidget

from desktop.planning.deload_plan import WeekPlanned
from desktop.training.trainee import DeloadWindow
from views import words
from views.axis_ticks import short_date
from views.theme import TextSize, Theme

_WIDE_DAY: Final = date(2026, 11, 30)
"""As wide as the shortest way to write a day gets."""


_PLOT: Final = 84


class DeloadWeeks(QWidget):
    """``moved(weeks)`` when the easier week is moved by Left, Right or a click; ``accepted`` on
    Return.
    """

    moved = Signal(int)
    accepted = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setLayoutDirection(Qt.LayoutDirection.LeftToRight)  # a figure is never mirrored
        self._theme = theme
        self._weeks: tuple[WeekPlanned, ...] = ()
        self._window: DeloadWindow | None = None
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        theme.changed.connect(self.updateGeometry)

    @property
    def weeks(self) -> tuple[WeekPlanned, ...]:
        """What is shown."""
        return self._weeks

    def show_weeks(self, weeks: Sequence[WeekPlanned], window: DeloadWindow, today: date) -> None:
        """Show the weeks; the one that ``window`` begins in has a frame."""
        self._weeks, self._window = tuple(weeks), window
        spoken = "; ".join(
            self.tr("{day}: {sets}").format(
                day=words.short_day(week.first, today), sets=words.sets(week.sets)
            )
            for week in weeks
        )
        text = self.tr("Deload from {day}. Sets a week: {weeks}")
        self.setAccessibleName(text.format(day=words.short_day(window.first, today), weeks=spoken))
        self.setAccessibleDescription(self.tr("Left and right move it by a week, Return plans it."))
        self.update()

    def column(self, place: int) -> QRectF:
        """Where a week is drawn."""
        wide = self.width() / max(1, len(self._weeks))
        return QRectF(place * wide, 0, wide, self.height())

    @property
    def place(self) -> int | None:
        """The week in which the easier week begins; None where it is not among them."""
        for place, week in enumerate(self._weeks):
            if self._window and week.first <= self._window.first < week.first + timedelta(days=7):
                return place
        return None

    def sizeHint(self) -> QSize:
        line = QFontMetricsF(self._theme.font(TextSize.SMALL)).height()
        return QSize(self._theme.px(480), round(self._theme.px(_PLOT) + 2.9 * line))

    def minimumSizeHint(self) -> QSize:
        return QSize(self._theme.px(240), self.sizeHint().height())

    def keyPressEvent(self, event: QKeyEvent) -> None:
        plain = not event.modifiers() & ~Qt.KeyboardModifier.KeypadModifier
        by = {Qt.Key.Key_Left: -1, Qt.Key.Key_Right: 1}.get(Qt.Key(event.key()))
        if plain and by is not None:
            self.moved.emit(by)
        elif plain and event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.accepted.emit()
        else:
            super().keyPressEvent(event)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        here = self.place
        for place in range(len(self._weeks)):
            if self.column(place).contains(event.position()) and here not in (None, place):
                self.moved.emit(place - (here or 0))

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setLayoutDirection(self.layoutDirection())
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        small = self._theme.font(TextSize.SMALL)
        painter.setFont(small)
        line = QFontMetricsF(small).height()
        most = max((max(week.sets, week.usual_sets) for week in self._weeks), default=1) or 1
        foot = self.height() - 1.6 * line
        each = (foot - 1.5 * line) / most
        needed = QFontMetricsF(small).horizontalAdvance(short_date(_WIDE_DAY)) + self._theme.px(6)
        every = max(1, ceil(needed / max(1.0, self.column(0).width())))
        for place, week in enumerate(self._weeks):
            self._draw_week(painter, self.column(place), week, foot, each)
            if (place - (self.place or 0)) % every == 0:
                here = place == self.place
                painter.setPen(self._theme.colour("accent" if here else "muted"))
                name = self.column(place)
                rect = QRectF(name.left() - 20, foot + 2, name.width() + 40, line)
                painter.drawText(rect, Qt.AlignmentFlag.AlignCenter, short_date(week.first))
        self._draw_frame(painter)
        painter.end()

    def _draw_week(
        self, painter: QPainter, column: QRectF, week: WeekPlanned, foot: float, each: float
    ) -> None:
        colour = self._theme.colour
        wide = min(column.width() - self._theme.px(8), self._theme.px(60))
        left = column.center().x() - wide / 2
        usual = QRectF(left, foot - week.usual_sets * each, wide, week.usual_sets * each)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(colour("line"))
        painter.drawRoundedRect(usual, 2, 2)
        bar = QRectF(left, foot - week.sets * each, wide, week.sets * each)
        if week.eased:
            painter.setBrush(colour("surface"))
            painter.drawRect(bar)
            painter.setPen(QPen(colour("accent"), 1))
            painter.setBrush(QBrush(colour("accent"), Qt.BrushStyle.BDiagPattern))
            painter.drawRect(bar.adjusted(0.5, 0.5, -0.5, -0.5))
        else:
            painter.setBrush(colour("accent"))
            painter.drawRoundedRect(bar, 2, 2)
        line = painter.fontMetrics().height()
        above = QRectF(column.left(), min(bar.top(), usual.top()) - line, column.width(), line)
        painter.setPen(colour("text"))
        painter.drawText(above, Qt.AlignmentFlag.AlignCenter, words.number(week.sets))

    def _draw_frame(self, painter: QPainter) -> None:
        if self.place is None:
            return
        painter.setPen(QPen(self._theme.colour("accent"), 2.0 if self.hasFocus() else 1.0))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        corner = self._theme.px(3)
        frame = self.column(self.place).adjusted(1.5, 1.5, -1.5, -1.5)
        painter.drawRoundedRect(frame, corner, corner)
