"""Where sixteen weeks lie in their picture: bars and averages above, a table of weeks below."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import Final

from PySide6.QtCore import QRectF
from PySide6.QtGui import QFontMetricsF

from desktop.planning.load import LoadHistory, TrainedWeek
from desktop.training.exercises import Muscle
from views import words
from views.exercise_words import muscle_word
from views.load_texts import load_text, monotony_text
from views.theme import TextSize, Theme

ROW: Final = 22
PLOT: Final = 120


@dataclass(frozen=True, slots=True)
class WeekRow:
    """One row of the table: its name, what stands in each week, and how deep each cell is shaded
    (0 to 1; None: not at all).
    """

    name: str
    texts: tuple[str, ...]
    shades: tuple[float | None, ...]


@dataclass(frozen=True, slots=True)
class WeeksLayout:
    """The picture ``width`` pixels wide, with the week at ``at`` chosen: weeks are columns, those
    ``seen`` have room. ``left`` is where the first column begins, after the names of the rows;
    ``line`` is the height of a line of text, ``high`` that of a row.
    """

    theme: Theme
    told: LoadHistory
    at: int
    rows: tuple[WeekRow, ...]
    width: float
    left: float
    seen: range
    line: float
    high: float

    @property
    def column(self) -> float:
        """The width of a week."""
        return (self.width - self.left) / max(1, len(self.seen))

    @property
    def plot(self) -> QRectF:
        """Where bars and averages are drawn."""
        top = self.theme.px(6)
        return QRectF(self.left, top, self.width - self.left, self.theme.px(PLOT))

    @property
    def head(self) -> QRectF:
        """The names of the weeks: the day they begin, and whether they were easier."""
        return QRectF(self.left, self.plot.bottom() + 2, self.plot.width(), 2 * self.line)

    def cell(self, row: int, index: int) -> QRectF:
        """The cell of a row in a week."""
        gap = self.theme.px(8) if row >= len(FIGURE_ROWS) else 0
        top = self.head.bottom() + self.theme.px(4) + row * self.high + gap
        left = self.left + (index - self.seen.start) * self.column
        return QRectF(left, top, self.column, self.high)

    @property
    def height(self) -> int:
        """What the picture needs."""
        last = self.cell(max(0, len(self.rows) - 1), self.seen.start)
        return round(last.bottom()) + self.theme.px(4)

    def week_at(self, x: float) -> int | None:
        """The week under a place across; None beside them."""
        place = self.seen.start + int((x - self.left) // self.column)
        return place if x >= self.left and place in self.seen else None


def laid_out(
    theme: Theme, told: LoadHistory, at: int, rows: tuple[WeekRow, ...], width: float
) -> WeeksLayout:
    """The picture in this width: the last weeks that have room, and the chosen one among them."""
    metrics = QFontMetricsF(theme.font(TextSize.SMALL))
    left = max((metrics.horizontalAdvance(row.name) for row in rows), default=0.0) + theme.px(12)
    count = len(told.weeks)
    room = max(1, min(count, int((width - left) / least_column(theme))))
    first = min(count - room, at)
    seen = range(first, first + room)
    return WeeksLayout(theme, told, at, rows, width, left, seen, metrics.height(), theme.px(ROW))


def least_column(theme: Theme) -> float:
    """The least width in which every number of a column can be read."""
    metrics = QFontMetricsF(theme.font(TextSize.SMALL))
    return metrics.horizontalAdvance("0000") + theme.px(10)


FIGURE_ROWS: Final = ("load", "monotony", "strain", "sessions")


def week_rows(weeks: Sequence[TrainedWeek]) -> tuple[WeekRow, ...]:
    """The figures of each week, then hard sets by muscle, shaded by their number."""
    most = max(
        [10.0, *(sets for week in weeks for sets in week.sets_done.by_muscle.values())],
    )
    muscles = [
        WeekRow(
            muscle_word(muscle),
            tuple(_sets_text(week.sets_done.by_muscle.get(muscle, 0.0)) for week in weeks),
            tuple(week.sets_done.by_muscle.get(muscle, 0.0) / most for week in weeks),
        )
        for muscle in Muscle
    ]
    return (*_figure_rows(weeks), *muscles)


def _figure_rows(weeks: Sequence[TrainedWeek]) -> tuple[WeekRow, ...]:
    translate = words.translate
    none = (None,) * len(weeks)

    def row(name: str, text: Callable[[TrainedWeek], str]) -> WeekRow:
        return WeekRow(name, tuple(text(week) for week in weeks), none)

    def strain(week: TrainedWeek) -> str:
        return "" if week.load.strain is None else load_text(week.load.strain)

    return (
        row(translate("Load", "load"), lambda w: load_text(w.load.load) if w.load.load else ""),
        row(translate("Load", "monotony"), lambda w: monotony_text(w.load.monotony)),
        row(translate("Load", "strain"), strain),
        row(translate("Load", "sessions"), _sessions),
    )


def _sessions(week: TrainedWeek) -> str:
    if not week.done and not week.planned:
        return ""
    return f"{week.done}/{week.planned}" if week.planned else f"{week.done}"


def _sets_text(sets: float) -> str:
    return words.number(sets, 1) if sets else ""
