"""Sixteen weeks on one axis: load by day with its averages, the week's figures, sets by muscle."""

from __future__ import annotations

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QKeyEvent, QMouseEvent, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from desktop.planning.load import LoadHistory
from views.load_texts import week_sentence, week_span
from views.load_weeks_layout import WeeksLayout, laid_out, week_rows
from views.load_weeks_painter import paint_weeks
from views.theme import Theme


class LoadWeeks(QWidget):
    """The weeks as columns, the last ones that have room. ``chosen(index)`` when the coach takes
    another week: Left and Right, Home and End, or a click.
    """

    chosen = Signal(int)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setLayoutDirection(Qt.LayoutDirection.LeftToRight)  # a figure is never mirrored
        self._theme = theme
        self._layout: WeeksLayout | None = None
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        theme.changed.connect(self._lay_out)

    @property
    def drawn(self) -> WeeksLayout | None:
        """What lies where now; None before anything was shown."""
        return self._layout

    def show_load(self, told: LoadHistory, at: int) -> None:
        """Show these weeks, the one at ``at`` chosen."""
        rows = week_rows(told.weeks)
        self._layout = laid_out(self._theme, told, at, rows, self.width())
        spoken = "; ".join(f"{row.name} {row.texts[at]}" for row in rows if row.texts[at])
        self.setAccessibleName(
            self.tr("{week}. {sentence} {figures}").format(
                week=week_span(told.weeks[at], told.today),
                sentence=week_sentence(told, at),
                figures=spoken,
            )
        )
        self.setAccessibleDescription(self.tr("Left and right choose a week."))
        self.updateGeometry()
        self.update()

    def _lay_out(self) -> None:
        """In another width, or with text of another size."""
        old = self._layout
        if old is not None:
            self._layout = laid_out(self._theme, old.told, old.at, old.rows, self.width())
            self.updateGeometry()

    def sizeHint(self) -> QSize:
        return QSize(self._theme.px(640), self._layout.height if self._layout else 0)

    def minimumSizeHint(self) -> QSize:
        return QSize(self._theme.px(280), self.sizeHint().height())

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if self._layout is None:
            return
        at, last = self._layout.at, len(self._layout.told.weeks) - 1
        wanted = {
            Qt.Key.Key_Left: at - 1,
            Qt.Key.Key_Right: at + 1,
            Qt.Key.Key_Home: 0,
            Qt.Key.Key_End: last,
        }.get(Qt.Key(event.key()))
        plain = not event.modifiers() & ~Qt.KeyboardModifier.KeypadModifier
        if wanted is None or not plain:
            super().keyPressEvent(event)
        elif 0 <= wanted <= last and wanted != at:
            self.chosen.emit(wanted)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        place = self._layout.week_at(event.position().x()) if self._layout else None
        if place is not None and self._layout is not None and place != self._layout.at:
            self.chosen.emit(place)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._lay_out()

    def paintEvent(self, event: QPaintEvent) -> None:
        if self._layout is None:
            return
        painter = QPainter(self)
        painter.setLayoutDirection(self.layoutDirection())
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        paint_weeks(painter, self._layout, focused=self.hasFocus())
        painter.end()
