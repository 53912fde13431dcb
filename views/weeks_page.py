"""The weeks ahead: the whole program on one page; every cell leads to its rule."""

from __future__ import annotations

from datetime import date
from typing import Final

from PySide6.QtCore import QModelIndex, Qt, Signal
from PySide6.QtGui import QKeyEvent, QMouseEvent, QResizeEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QHBoxLayout,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from desktop.planning.program_weeks import ProgramWeeks
from desktop.training.program_edits import DayPlace, SlotPlace
from views import words
from views.blocks import Label
from views.captioned import keyed_word
from views.elided_label import ElidedLabel
from views.theme import Theme
from views.weeks_delegate import WeeksDelegate
from views.weeks_headers import NameHeader, WeekHeader
from views.weeks_model import WeeksModel
from views.weeks_rows import BarRow, DayRow, TitleRow

WEEKS_KEY: Final = "F6"
PRINT_KEY: Final = "Ctrl+P"
_ROW: Final = 34
_LOW: Final = 26
_BAR: Final = 48
_NARROW: Final = 50
_WIDE: Final = 92


class WeeksTable(QTableView):
    """The table; arrows walk, Return asks for the rule of a cell. ``chosen(QModelIndex)``."""

    chosen = Signal(QModelIndex)
    left = Signal()

    def __init__(self, theme: Theme, model: WeeksModel, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setLayoutDirection(Qt.LayoutDirection.LeftToRight)  # weeks go on to the right
        self._theme, self._weeks = theme, model
        self.setProperty("kind", "desk")
        self.setModel(model)
        self.setItemDelegate(WeeksDelegate(theme, self))
        self.setHorizontalHeader(WeekHeader(theme, model, self))
        self.setVerticalHeader(NameHeader(theme, model, self))
        self.setSelectionMode(QAbstractItemView.SelectionMode.NoSelection)
        self.setShowGrid(False)
        self.setTabKeyNavigation(False)
        self.setCornerButtonEnabled(False)
        self.setCornerWidget(QWidget())
        self.setMouseTracking(True)
        self.setHorizontalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setAccessibleName(self.tr("Weeks ahead"))
        self.setAccessibleDescription(self.tr("Arrows choose a cell, Return leads to its rule."))
        model.modelReset.connect(self.fit)
        theme.changed.connect(self.fit)

    def fit(self) -> None:
        """Heights by what the rows hold; weeks as wide as the room allows."""
        header = self.verticalHeader()
        for at, row in enumerate(self._weeks.rows):
            high = _ROW
            if isinstance(row, BarRow):
                high = _BAR if any(row.values) else _LOW
            elif isinstance(row, DayRow):
                high = _LOW
            elif isinstance(row, TitleRow):
                high = _ROW + 4
            header.resizeSection(at, self._theme.px(high))
        count = max(1, self._weeks.columnCount())
        room = self.viewport().width() // count
        wide = max(self._theme.px(_NARROW), min(self._theme.px(_WIDE), room))
        for column in range(self._weeks.columnCount()):
            self.setColumnWidth(column, wide)
        self.clearSpans()
        for at, row in enumerate(self._weeks.rows):
            if isinstance(row, TitleRow) and count > 1:
                self.setSpan(at, 0, 1, count)

    def show_from(self, column: int) -> None:
        """Let a week stand near the left, with one before it."""
        wide = self.columnWidth(0) if self._weeks.columnCount() else 0
        self.horizontalScrollBar().setValue(max(0, column - 1) * wide)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.fit()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            if self.currentIndex().isValid():
                self.chosen.emit(self.currentIndex())
        elif event.key() == Qt.Key.Key_Escape:
            self.left.emit()
        else:
            super().keyPressEvent(event)

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        index = self.indexAt(event.position().toPoint())
        if index.isValid():
            self.chosen.emit(index)

    def keyboardSearch(self, search: str) -> None:
        """Letters do nothing here."""


class WeeksPage(QWidget):
    """Weeks across, slots down. ``rule_wanted(place)`` for a cell chosen; ``left`` to go back."""

    rule_wanted = Signal(object)
    left = Signal()
    print_wanted = Signal()

    def __init__(self, theme: Theme, today: date, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self.model = WeeksModel(today, self)
        self.table = WeeksTable(theme, self.model)
        self.back = keyed_word(self.tr("Program"), WEEKS_KEY, tone="")
        self.print = keyed_word(self.tr("Print"), PRINT_KEY, tone="")
        self.title = ElidedLabel("title")
        self.detail = ElidedLabel(tone="muted")
        self._top = QHBoxLayout()
        self._top.addWidget(self.title)
        self._top.addWidget(self.detail, 1)
        self._top.addWidget(self.print)
        self._top.addWidget(self.back)
        self.said = Label(wrap=True)
        self.said.setAlignment(Qt.AlignmentFlag.AlignTop | Qt.AlignmentFlag.AlignLeft)
        self._column = QVBoxLayout(self)
        self._column.addLayout(self._top)
        self._column.addWidget(self.table, 1)
        self._column.addWidget(self.said)
        self.table.selectionModel().currentChanged.connect(self._say)
        self.table.chosen.connect(self._choose)
        self.table.clicked.connect(self._say)
        self.table.left.connect(self.left)
        self.back.clicked.connect(self.left)
        self.print.clicked.connect(self.print_wanted)
        self.model.modelReset.connect(self._start)
        theme.changed.connect(self._space)
        self._space()

    def show_weeks(self, weeks: ProgramWeeks) -> None:
        """Show a program's weeks; the cursor stays where it can."""
        program = weeks.program
        text = self.tr("from the starts of its slots, for nobody yet")
        if weeks.dated:
            text = self.tr("from where {name} stands")
        elif weeks.trainee.name:
            text = self.tr("from the starts of its slots, with what {name} has")
        told = (words.weeks(program.weeks), text.format(name=weeks.trainee.name))
        self._head(program.name, words.DOT.join(told))
        at = self.table.currentIndex()
        kept = (at.row(), at.column()) if at.isValid() else None
        self.model.show_weeks(weeks)
        if kept and not self.table.currentIndex().isValid():
            self._go(self.model.index(*kept))
        self._say(self.table.currentIndex())

    def say_working(self, name: str) -> None:
        """Say that the weeks are being computed."""
        self._head(name, self.tr("being worked out …"))

    def _head(self, name: str, detail: str) -> None:
        self.title.say(name)
        self.detail.say(words.DOT.join((self.tr("weeks ahead"), detail)))
        self._fit_head()

    def _fit_head(self) -> None:
        """The title stands whole where it leaves room for the rest."""
        wanted = self.title.sizeHint().width() + 2
        self.title.setFixedWidth(min(wanted, round(self.width() * 0.55)))

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit_head()

    def go_to(self, place: SlotPlace | None) -> None:
        """Put the cursor on a slot's cell in the week that runs, else in its first one."""
        now = next((n for n, each in enumerate(self.model.columns) if each.now), 0)
        index = self.model.index_of(place, now) if place is not None else QModelIndex()
        if index.isValid():
            self._go(index)
            self.table.show_from(index.column())
        elif not self.table.currentIndex().isValid():
            self._start()
        self.table.setFocus(Qt.FocusReason.OtherFocusReason)

    def _start(self) -> None:
        """The first slot in the week that runs."""
        now = next((n for n, each in enumerate(self.model.columns) if each.now), 0)
        if self.model.rowCount():
            self._go(self.model.index(min(1, self.model.rowCount() - 1), now))
            self.table.show_from(now)

    def _go(self, index: QModelIndex) -> None:
        if index.isValid():
            self.table.setCurrentIndex(index)
            self.table.scrollTo(index)

    def _say(self, index: QModelIndex, _before: QModelIndex | None = None) -> None:
        shown = self.model.sentence(index.row(), index.column()) if index.isValid() else ""
        self.said.setText(shown)

    def _choose(self, index: QModelIndex) -> None:
        place: SlotPlace | DayPlace | None = self.model.place(index.row(), index.column())
        if place is not None:
            self.rule_wanted.emit(place)

    def _space(self) -> None:
        edge = self._theme.grid(3)
        self._column.setContentsMargins(edge, self._theme.grid(2), edge, self._theme.grid(1))
        self._column.setSpacing(self._theme.px(8))
        self._top.setSpacing(self._theme.grid(2))
        line = self.said.fontMetrics().lineSpacing()
        self.said.setFixedHeight(3 * line + 2)
