"""Hard sets a week by muscle as bars, against the published marks."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

from PySide6.QtCore import QCoreApplication, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QFontMetricsF, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from desktop.training.exercises import Muscle
from desktop.training.volume import MARKS, Volume
from views import words
from views.exercise_words import muscle_word
from views.severity_mark import draw_mark
from views.theme import TextSize, Theme

_ROW: Final = 21
_BAR: Final = 8


@dataclass(frozen=True, slots=True)
class MuscleSets:
    """One muscle and its hard sets in a week; ``planned``: of so many (None: nothing to compare).
    ``to_come``: the week still runs, so what is planned is held against the marks.
    """

    muscle: Muscle
    sets: float
    planned: float | None = None
    to_come: bool = False

    @property
    def judged(self) -> float:
        """The number that is held against the marks."""
        return max(self.sets, self.planned or 0.0) if self.to_come else self.sets

    @property
    def told(self) -> str:
        """The number, and of how many where those differ."""
        if self.planned is None or round(self.planned, 1) == round(self.sets, 1):
            return words.number(self.sets, 1)
        text = QCoreApplication.translate("MuscleBars", "{done} of {planned}")
        return text.format(done=words.number(self.sets, 1), planned=words.number(self.planned, 1))


def muscle_sets(
    volume: Volume, planned: Volume | None = None, *, to_come: bool = False
) -> tuple[MuscleSets, ...]:
    """Every muscle with its hard sets, in the order of the body, beside those ``planned``."""
    return tuple(
        MuscleSets(
            muscle,
            volume.by_muscle.get(muscle, 0.0),
            None if planned is None else planned.by_muscle.get(muscle, 0.0),
            to_come,
        )
        for muscle in Muscle
    )


class MuscleBars(QWidget):
    """One bar a muscle; a muscle under the first mark says so in words, beside a triangle."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setLayoutDirection(Qt.LayoutDirection.LeftToRight)  # a figure is never mirrored
        self._theme = theme
        self._shown: tuple[MuscleSets, ...] = ()
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        theme.changed.connect(self.updateGeometry)

    def show_sets(self, shown: Sequence[MuscleSets]) -> None:
        """Show other numbers."""
        self._shown = tuple(shown)
        spoken = ", ".join(f"{muscle_word(each.muscle)} {each.told}" for each in shown)
        self.setAccessibleName(self.tr("Hard sets a week: {sets}").format(sets=spoken))
        self.updateGeometry()
        self.update()

    def _said(self, sets: float) -> str:
        """What is said of a number under the first mark."""
        least = MARKS[0].sets
        if sets == 0:
            return self.tr("none")
        return self.tr("under {count}").format(count=least) if sets < least else ""

    def sizeHint(self) -> QSize:
        rows = max(1, len(self._shown))
        top = round(QFontMetricsF(self._theme.font(TextSize.SMALL)).height()) + self._theme.px(4)
        return QSize(self._theme.px(360), self._theme.px(_ROW) * rows + top)

    def minimumSizeHint(self) -> QSize:
        return QSize(self._theme.px(240), self.sizeHint().height())

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setLayoutDirection(self.layoutDirection())
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        small = self._theme.font(TextSize.SMALL)
        metrics = QFontMetricsF(small)
        painter.setFont(small)
        left = max((metrics.horizontalAdvance(muscle_word(m)) for m in Muscle), default=0) + 8
        right = metrics.horizontalAdvance(self._said(1)) + self._theme.px(56)
        room = max(40.0, self.width() - left - right)
        most = max(
            [max(each.sets, each.planned or 0) for each in self._shown] + [MARKS[-1].sets * 1.15]
        )
        each_set = room / most
        tall = self._theme.px(_ROW)
        top = metrics.height() + self._theme.px(2)
        self._draw_marks(painter, left, each_set, top, top + tall * len(self._shown))
        for place, shown in enumerate(self._shown):
            row = QRectF(0, top + place * tall, self.width(), tall)
            self._draw_row(painter, row, shown, left, each_set)
        painter.end()

    def _draw_marks(
        self, painter: QPainter, left: float, each_set: float, top: float, foot: float
    ) -> None:
        muted = self._theme.colour("muted")
        for mark in MARKS:
            x = round(left + mark.sets * each_set) + 0.5
            painter.setPen(QPen(muted, 1, Qt.PenStyle.DotLine))
            painter.drawLine(QPointF(x, top), QPointF(x, foot))
            painter.setPen(muted)
            place = QRectF(x - 30, 0, 60, top)
            painter.drawText(place, Qt.AlignmentFlag.AlignCenter, words.number(mark.sets))

    def _draw_row(
        self, painter: QPainter, row: QRectF, shown: MuscleSets, left: float, each_set: float
    ) -> None:
        right_middle = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
        left_middle = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
        colour = self._theme.colour
        painter.setPen(colour("muted"))
        name = QRectF(0, row.top(), left - 8, row.height())
        painter.drawText(name, right_middle, muscle_word(shown.muscle))
        high = self._theme.px(_BAR)
        bar = QRectF(left, row.center().y() - high / 2, shown.sets * each_set, high)
        painter.setPen(Qt.PenStyle.NoPen)
        end = bar.right()
        if shown.planned:
            track = QRectF(bar.left(), bar.top(), shown.planned * each_set, high)
            painter.setBrush(colour("line"))
            painter.drawRoundedRect(track, 2, 2)
            end = max(end, track.right())
        painter.setBrush(colour("accent"))
        painter.drawRoundedRect(bar, 2, 2)
        if shown.sets or shown.planned:
            text = shown.told
            wide = QFontMetricsF(painter.font()).horizontalAdvance(text)
            number = QRectF(end + self._theme.px(6), row.top() + 1, wide, row.height() - 2)
            painter.fillRect(number.adjusted(-2, 0, 2, 0), colour("surface"))
            painter.setPen(colour("text"))
            painter.drawText(number, left_middle, text)
        said = self._said(shown.judged)
        under = 0 < shown.judged < MARKS[0].sets
        painter.setPen(colour("caution" if under else "muted"))
        if shown.sets or shown.planned:
            painter.drawText(row, right_middle, said)
        else:
            painter.drawText(row.adjusted(left, 0, 0, 0), left_middle, said)
        if under:
            wide = QFontMetricsF(painter.font()).horizontalAdvance(said)
            side = self._theme.px(9)
            x = row.right() - wide - side - self._theme.px(5)
            place = QRectF(x, row.center().y() - side / 2, side, side)
            draw_mark(painter, place, "caution", colour("caution"))
