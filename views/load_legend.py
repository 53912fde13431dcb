"""The samples beside the words of a legend: filled, hatched, a whole and a dashed line."""

from __future__ import annotations

from datetime import date
from typing import Final, Literal

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QFontMetrics, QPainter, QPaintEvent
from PySide6.QtWidgets import QHBoxLayout, QSizePolicy, QWidget

from desktop.planning.load import DayLoad
from views.blocks import Label
from views.day_loads import draw_stack
from views.flow_layout import FieldFlow
from views.load_weeks_painter import average_pen
from views.theme import TextSize, Theme

Sample = Literal["sessions", "activities", "short", "long"]

_WIDE: Final = 18


class SampleMark(QWidget):
    """One sample; decoration beside a word."""

    def __init__(self, theme: Theme, sample: Sample, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme, self._sample = theme, sample
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        theme.changed.connect(self.updateGeometry)

    def sizeHint(self) -> QSize:
        line = QFontMetrics(self._theme.font(TextSize.SMALL)).height()
        return QSize(self._theme.px(_WIDE), line)

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if self._sample in ("short", "long"):
            painter.setPen(average_pen(self._theme, long=self._sample == "long"))
            middle = self.height() / 2
            painter.drawLine(QPointF(0, middle), QPointF(self.width(), middle))
        else:
            side = self._theme.px(10)
            room = QRectF((self.width() - side) / 2, 0, side, self.height() / 2 + side / 2)
            filled = self._sample == "sessions"
            day = DayLoad(date.min, float(filled), float(not filled))
            draw_stack(painter, self._theme, room, day, side)
        painter.end()


class LoadLegend(QWidget):
    """Samples with their words, going on in the next line where there is no room."""

    def __init__(
        self,
        theme: Theme,
        samples: tuple[tuple[Sample, str], ...],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        flow = FieldFlow(theme.px(14), theme.px(2), self, centred=True)
        for sample, word in samples:
            pair = QWidget()
            row = QHBoxLayout(pair)
            row.setContentsMargins(0, 0, 0, 0)
            row.setSpacing(theme.px(5))
            row.addWidget(SampleMark(theme, sample))
            row.addWidget(Label(word, "small", "muted"), 0, Qt.AlignmentFlag.AlignVCenter)
            flow.addWidget(pair)
