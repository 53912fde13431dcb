"""The headers of the weeks ahead: phases and weeks above, days and slots at the left."""

from __future__ import annotations

from datetime import date
from itertools import groupby
from math import ceil
from typing import Final

from PySide6.QtCore import QDate, QLocale, QRect, QRectF, QSize, Qt
from PySide6.QtGui import QFontMetricsF, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QHeaderView, QWidget

from desktop.training.program import PhasePurpose
from views import words
from views.phase_line import phase_name, purpose_word
from views.severity_mark import draw_mark
from views.theme import TextSize, Theme
from views.weeks_model import WeeksModel
from views.weeks_rows import BarRow, DayRow, TitleRow, easier_word

NAMES: Final = 216
_BAND: Final = 22
_WEEK: Final = 34


class WeekHeader(QHeaderView):
    """Phases as bars across their weeks; below, each week's number and first day."""

    def __init__(self, theme: Theme, model: WeeksModel, parent: QWidget | None = None) -> None:
        super().__init__(Qt.Orientation.Horizontal, parent)
        self._theme, self._model = theme, model
        self.setSectionsClickable(False)
        self.setHighlightSections(False)
        self.setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        theme.changed.connect(self.updateGeometry)

    def sizeHint(self) -> QSize:
        return QSize(0, self._theme.px(_BAND + _WEEK))

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self.viewport())
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.fillRect(self.viewport().rect(), self._theme.colour("background"))
        self._draw_phases(painter)
        for section in range(self.count()):
            left = self.sectionViewportPosition(section)
            wide = self.sectionSize(section)
            if left + wide >= 0 and left <= self.viewport().width():
                self._draw_week(painter, section, QRectF(left, self._theme.px(_BAND), wide,
                                                         self._theme.px(_WEEK)))  # fmt: skip
        painter.end()

    def _draw_phases(self, painter: QPainter) -> None:
        weeks = self._model.weeks
        if weeks is None:
            return
        for place, group in groupby(enumerate(weeks.columns), lambda pair: pair[1].phase):
            sections = [section for section, _ in group]
            left = self.sectionViewportPosition(sections[0])
            right = self.sectionViewportPosition(sections[-1]) + self.sectionSize(sections[-1])
            bar = QRectF(left + 1.5, 1.5, right - left - 3, self._theme.px(_BAND) - 4)
            if bar.right() < 0 or bar.left() > self.viewport().width():
                continue
            phase = weeks.program.phases[place]
            deload = phase.purpose is PhasePurpose.DELOAD
            style = Qt.PenStyle.DashLine if deload else Qt.PenStyle.SolidLine
            painter.setPen(QPen(self._theme.colour("muted" if deload else "line"), 1, style))
            painter.setBrush(self._theme.colour("surface"))
            corner = self._theme.px(3)
            painter.drawRoundedRect(bar, corner, corner)
            font = self._theme.font(TextSize.SMALL, bold=not deload)
            metrics = QFontMetricsF(font)
            painter.setFont(font)
            seen = bar.intersected(QRectF(self.viewport().rect())).adjusted(2, 0, -2, 0)
            name = phase_name(phase)
            if deload and metrics.horizontalAdvance(name) > seen.width():
                name = purpose_word(PhasePurpose.DELOAD)
            painter.setPen(self._theme.colour("muted" if deload else "text"))
            shown = metrics.elidedText(name, Qt.TextElideMode.ElideRight, seen.width())
            painter.drawText(seen, Qt.AlignmentFlag.AlignCenter, shown)

    def _draw_week(self, painter: QPainter, section: int, rect: QRectF) -> None:
        column = self._model.columns[section]
        weeks = self._model.weeks
        assert weeks is not None
        half = QRectF(rect.left(), rect.top(), rect.width(), rect.height() / 2)
        painter.setFont(self._theme.font(TextSize.SMALL, bold=column.now))
        painter.setPen(self._theme.colour("accent" if column.now else "text"))
        painter.drawText(half, Qt.AlignmentFlag.AlignCenter, words.number(column.number))
        below = easier_word(column) or (_in_short(column.first) if weeks.dated else "")
        painter.setFont(self._theme.font(TextSize.SMALL))
        painter.setPen(self._theme.colour("muted"))
        half.moveTop(rect.center().y() - 1)
        metrics = QFontMetricsF(painter.font())
        shown = metrics.elidedText(below, Qt.TextElideMode.ElideRight, rect.width())
        painter.drawText(half, Qt.AlignmentFlag.AlignCenter, shown)
        if column.now:
            wide = metrics.horizontalAdvance("00")
            line = QRectF(rect.center().x() - wide / 2, rect.center().y() - 2, wide, 2)
            painter.fillRect(line, self._theme.colour("accent"))
        if column.cautions:
            side = self._theme.px(8)
            place = QRectF(rect.right() - side - 3, rect.top() + 2, side, side)
            draw_mark(painter, place, "caution", self._theme.colour("caution"))


class NameHeader(QHeaderView):
    """Days in bold with "min", slots indented, muscles and patterns at the right."""

    def __init__(self, theme: Theme, model: WeeksModel, parent: QWidget | None = None) -> None:
        super().__init__(Qt.Orientation.Vertical, parent)
        self._theme, self._model = theme, model
        self.setSectionsClickable(False)
        self.setHighlightSections(False)
        self.setSectionResizeMode(QHeaderView.ResizeMode.Fixed)

    def sizeHint(self) -> QSize:
        """As wide as the days' names need, up to a quarter of the table."""
        bold = QFontMetricsF(self._theme.font(TextSize.BODY, bold=True))
        names = [row.name for row in self._model.rows if isinstance(row, DayRow)]
        unit = QFontMetricsF(self._theme.font(TextSize.SMALL)).horizontalAdvance(self.tr("min"))
        longest = max((bold.horizontalAdvance(name) for name in names), default=0.0)
        table = self.parentWidget()
        most = table.width() / 4 if table is not None else 0.0
        wide = min(longest + unit + self._theme.px(20), most)
        return QSize(max(self._theme.px(NAMES), ceil(wide)), 0)

    def paintSection(self, painter: QPainter, rect: QRect, section: int) -> None:
        painter.save()
        painter.fillRect(rect, self._theme.colour("background"))
        row = self._model.rows[section]
        room = QRectF(rect).adjusted(0, 0, -self._theme.px(8), 0)
        middle = Qt.AlignmentFlag.AlignVCenter
        match row:
            case DayRow(name, _):
                unit = self.tr("min")
                small = QFontMetricsF(self._theme.font(TextSize.SMALL))
                self._write(painter, room, unit, middle | Qt.AlignmentFlag.AlignRight, "muted")
                room.setRight(room.right() - small.horizontalAdvance(unit) - self._theme.px(8))
                self._write(painter, room, name, middle, "text", bold=True)
            case TitleRow(name, _):
                self._write(painter, room, name, middle, "text", bold=True)
            case BarRow():
                self._write(painter, room, row.name, middle | Qt.AlignmentFlag.AlignRight, "muted")
            case _:
                room.setLeft(room.left() + self._theme.px(8))
                self._write(painter, room, row.name, middle, "text")
        painter.restore()

    def _write(
        self,
        painter: QPainter,
        rect: QRectF,
        text: str,
        where: Qt.AlignmentFlag,
        role: str,
        *,
        bold: bool = False,
    ) -> None:
        size = TextSize.SMALL if role == "muted" else TextSize.BODY
        font = self._theme.font(size, bold=bold)
        painter.setFont(font)
        painter.setPen(self._theme.colour(role))
        shown = QFontMetricsF(font).elidedText(text, Qt.TextElideMode.ElideRight, rect.width())
        painter.drawText(rect, where, shown)


def _in_short(day: date) -> str:
    """Day and month as short as the locale says them, without the year."""
    return QLocale().toString(QDate(day.year, day.month, day.day), "d MMM")
