"""The roster at the left: one line a trainee, who needs attention and why, and a filter."""

from __future__ import annotations

from collections.abc import Sequence
from enum import IntEnum
from typing import Any

from PySide6.QtCore import (
    QAbstractListModel,
    QEvent,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    QRect,
    QRectF,
    QSize,
    Qt,
    Signal,
)
from PySide6.QtGui import QFontMetrics, QKeyEvent, QPainter
from PySide6.QtWidgets import (
    QAbstractItemView,
    QLineEdit,
    QListView,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QVBoxLayout,
    QWidget,
)

from views.blocks import Label
from views.roster_line import RosterLine
from views.severity_mark import draw_mark
from views.theme import TextSize, Theme

_WIDEST = 336  # pixels: with large text the work keeps the larger part of the window

_Index = QModelIndex | QPersistentModelIndex


# Flags are combined once: to combine them in Python takes longer than to draw a word.
_TOP = Qt.AlignmentFlag.AlignTop | Qt.AlignmentFlag.AlignLeft
_BOTTOM = Qt.AlignmentFlag.AlignBottom | Qt.AlignmentFlag.AlignLeft
_SELECTED = QStyle.StateFlag.State_Selected.value
_POINTED_AT = QStyle.StateFlag.State_MouseOver.value
_FOCUSED = QStyle.StateFlag.State_HasFocus.value


class RosterRole(IntEnum):
    """What else the model answers than the name: the whole line."""

    LINE = Qt.ItemDataRole.UserRole + 1


class RosterModel(QAbstractListModel):
    """Lines of the roster that pass the filter; `set_lines` is the only way they change."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._all: tuple[RosterLine, ...] = ()
        self._shown: tuple[RosterLine, ...] = ()
        self._filter = ""

    @property
    def shown(self) -> tuple[RosterLine, ...]:
        """The lines that pass the filter, in order."""
        return self._shown

    @property
    def known(self) -> frozenset[int]:
        """Everybody, whatever the filter."""
        return frozenset(line.trainee_id for line in self._all)

    def set_lines(self, lines: Sequence[RosterLine]) -> None:
        """Show other lines."""
        self._all = tuple(lines)
        self._refill()

    def set_filter(self, text: str) -> None:
        """Show only names that hold all words of ``text``, whatever the case."""
        self._filter = text.casefold()
        self._refill()

    def row_of(self, trainee_id: int | None) -> int:
        """Where a trainee stands among those shown; -1 where not."""
        ids = [line.trainee_id for line in self._shown]
        return ids.index(trainee_id) if trainee_id in ids else -1

    def _refill(self) -> None:
        parts = self._filter.split()
        self.beginResetModel()
        self._shown = tuple(
            line for line in self._all if all(part in line.name.casefold() for part in parts)
        )
        self.endResetModel()

    def rowCount(self, parent: _Index = QModelIndex()) -> int:
        return 0 if parent.isValid() else len(self._shown)

    def data(self, index: _Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if not index.isValid() or index.row() >= len(self._shown):
            return None
        line = self._shown[index.row()]
        if role == Qt.ItemDataRole.DisplayRole:
            return line.name
        if role == RosterRole.LINE:
            return line
        if role == Qt.ItemDataRole.AccessibleTextRole:
            return f"{line.name}, {line.text}"
        return None


class RosterDelegate(QStyledItemDelegate):
    """Draws a trainee's two lines: the name, and what to look at."""

    def __init__(self, theme: Theme, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._theme = theme

    def sizeHint(self, option: QStyleOptionViewItem, index: _Index) -> QSize:
        name = QFontMetrics(self._theme.font(TextSize.BODY))
        line = QFontMetrics(self._theme.font(TextSize.SMALL))
        inside = 2 * self._theme.px(6) + self._theme.px(2)
        return QSize(0, name.height() + line.height() + inside)

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: _Index) -> None:
        line = index.data(RosterRole.LINE)
        if line is None:
            return
        rect: QRect = option.rect
        state: int = option.state.value
        chosen = bool(state & _SELECTED)
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        self._draw_ground(painter, rect, state)
        inside = rect.adjusted(
            self._theme.px(8), self._theme.px(6), -self._theme.px(8), -self._theme.px(6)
        )
        self._draw_words(painter, inside, line, chosen, option.direction)
        painter.restore()

    def _draw_ground(self, painter: QPainter, rect: QRect, state: int) -> None:
        corner = self._theme.px(3)
        ground = QRectF(rect).adjusted(0.5, 0.5, -0.5, -0.5)
        if state & _SELECTED:
            painter.setBrush(self._theme.colour("accent_soft"))
        elif state & _POINTED_AT:
            painter.setBrush(self._theme.colour("background"))
        focused = state & _FOCUSED
        painter.setPen(self._theme.colour("accent") if focused else Qt.PenStyle.NoPen)
        painter.drawRoundedRect(ground, corner, corner)

    def _draw_words(
        self,
        painter: QPainter,
        inside: QRect,
        line: RosterLine,
        chosen: bool,
        direction: Qt.LayoutDirection,
    ) -> None:
        name_font = self._theme.font(TextSize.BODY, bold=chosen)
        line_font = self._theme.font(TextSize.SMALL)
        metrics = QFontMetrics(name_font)
        room = inside.width()
        if line.severity:
            side = self._theme.px(9)
            room -= side + self._theme.px(4)
            top = inside.top() + (metrics.height() - side) / 2
            mark = QRect(inside.right() - side, round(top), side, side)
            place = QRectF(QStyle.visualRect(direction, inside, mark))
            draw_mark(painter, place, line.severity, self._theme.colour(line.tone))
        painter.setFont(name_font)
        painter.setPen(self._theme.colour("text"))
        name = metrics.elidedText(line.name, Qt.TextElideMode.ElideRight, room)
        painter.drawText(inside, _TOP, name)
        painter.setFont(line_font)
        quiet = chosen and line.tone == "muted"
        painter.setPen(self._theme.colour("text" if quiet else line.tone))
        text = QFontMetrics(line_font).elidedText(
            line.text, Qt.TextElideMode.ElideRight, inside.width()
        )
        painter.drawText(inside, _BOTTOM, text)


class Roster(QWidget):
    """The left side: filter, trainees, how many. ``chosen(trainee_id)`` when another is picked."""

    chosen = Signal(int)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._trainee_id: int | None = None
        self.setProperty("kind", "side")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.model = RosterModel(self)
        self.filter = QLineEdit()
        self.filter.setPlaceholderText(self.tr("Find a trainee"))
        self.filter.setAccessibleName(self.tr("Find a trainee by name"))
        self.filter.installEventFilter(self)
        self.list = QListView()
        self.list.setProperty("kind", "quiet")
        self.list.setAccessibleName(self.tr("Roster"))
        self.list.setModel(self.model)
        self.list.setItemDelegate(RosterDelegate(theme, self.list))
        self.list.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.list.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.list.setMouseTracking(True)
        self.list.setUniformItemSizes(True)
        self._caption = Label(self.tr("Roster"), "small", "muted")
        self.count = Label("", "small", "muted", wrap=True)
        self._column = QVBoxLayout(self)
        for widget in (self._caption, self.filter):
            self._column.addWidget(widget)
        self._column.addWidget(self.list, 1)
        self._column.addWidget(self.count)
        self.filter.textChanged.connect(self._filter_changed)
        self.filter.returnPressed.connect(self._take_first)
        self.list.selectionModel().currentChanged.connect(self._current_changed)
        theme.changed.connect(self._space)
        self._space()

    @property
    def known(self) -> frozenset[int]:
        """Who is on the roster."""
        return self.model.known

    @property
    def trainee_id(self) -> int | None:
        """Who is chosen."""
        return self._trainee_id

    def set_lines(self, lines: Sequence[RosterLine]) -> None:
        """Show other lines; the trainee chosen stays chosen."""
        self.model.set_lines(lines)
        self._mark_chosen()
        self.count.setText(
            self.tr("1 trainee")
            if len(lines) == 1
            else self.tr("{count} trainees").format(count=len(lines))
        )

    def choose(self, trainee_id: int | None) -> None:
        """Mark a trainee as chosen; emits ``chosen`` where it is another one."""
        another = trainee_id != self._trainee_id
        self._trainee_id = trainee_id
        self._mark_chosen()
        if another and trainee_id is not None:
            self.chosen.emit(trainee_id)

    def step(self, rows: int) -> None:
        """Choose the trainee so many rows further down; stops at the ends."""
        if not self.model.shown:
            return
        row = self.model.row_of(self._trainee_id) + rows
        row = max(0, min(len(self.model.shown) - 1, row))
        self.choose(self.model.shown[row].trainee_id)

    def start_search(self) -> None:
        """Put the cursor into the filter, ready to type."""
        self.filter.setFocus(Qt.FocusReason.ShortcutFocusReason)
        self.filter.selectAll()

    def _filter_changed(self, text: str) -> None:
        self.filter.setClearButtonEnabled(True)  # its icon is slow to find: not before it helps
        self.model.set_filter(text)
        self._mark_chosen()

    def _take_first(self) -> None:
        if self.model.shown:
            self.choose(self.model.shown[0].trainee_id)
            self.filter.clear()
            self.list.setFocus(Qt.FocusReason.OtherFocusReason)

    def _current_changed(self, current: QModelIndex, _before: QModelIndex) -> None:
        line = current.data(RosterRole.LINE)
        if line is not None:
            self.choose(line.trainee_id)

    def _mark_chosen(self) -> None:
        row = self.model.row_of(self._trainee_id)
        selection = self.list.selectionModel()
        if row < 0:
            selection.clear()
        elif selection.currentIndex().row() != row or not selection.hasSelection():
            index = self.model.index(row)
            selection.setCurrentIndex(index, selection.SelectionFlag.ClearAndSelect)
            self.list.scrollTo(index)

    def _space(self) -> None:
        edge = self._theme.grid(2)
        self.setFixedWidth(min(self._theme.grid(27), _WIDEST))
        self._column.setContentsMargins(edge, self._theme.grid(2), self._theme.grid(), edge)
        self._column.setSpacing(self._theme.grid())
        self.list.doItemsLayout()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        down = isinstance(event, QKeyEvent) and event.type() == QEvent.Type.KeyPress
        if watched is self.filter and down and event.key() == Qt.Key.Key_Down:  # type: ignore[attr-defined]
            self.list.setFocus(Qt.FocusReason.OtherFocusReason)
            return True
        return super().eventFilter(watched, event)
