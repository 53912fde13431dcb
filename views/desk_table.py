"""The desk's table: drawn by hand, walked by keys, each cell leads to the screen it speaks of."""

from __future__ import annotations

from datetime import date

from PySide6.QtCore import (
    QModelIndex,
    QPersistentModelIndex,
    QRect,
    QRectF,
    QSize,
    Qt,
    Signal,
)
from PySide6.QtGui import QFontMetrics, QKeyEvent, QMouseEvent, QPainter, QResizeEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QHeaderView,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QTableView,
    QWidget,
)

from views.desk_columns import Cells, Column
from views.desk_model import NUMBERS, DeskModel
from views.desk_order import Order, order_text
from views.severity_mark import draw_mark
from views.spark_line import draw_spark
from views.theme import TextSize, Theme

_Index = QModelIndex | QPersistentModelIndex

WIDTHS = {
    Column.NAME: 116,
    Column.LAST: 70,
    Column.NEXT: 104,
    Column.DONE: 70,
    Column.STILL: 104,
    Column.DELOAD: 74,
    Column.GOAL: 122,
    Column.COURSE: 76,
}
"""Pixels at 100 % text; what there is to look at takes the rest."""

_COLUMNS = tuple(Column)
LEAST_NEED = 208
WANTED_NEED = 440
MOST_ROOM = 1.5
"""Once what there is to look at has as much room as wanted, the others grow up to so much."""

GIVE_WAY = (Column.COURSE, Column.GOAL, Column.STILL, Column.DONE, Column.DELOAD)
"""Columns that are left out, one after the other, where there is no room; the sentence under the
table still says what stands in them.
"""


# Flags are combined once: to combine them in Python takes longer than to draw a word.
_SIDES = {
    True: Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignRight,
    False: Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft,
}
_SELECTED = QStyle.StateFlag.State_Selected.value
_FOCUSED = QStyle.StateFlag.State_HasFocus.value


class DeskDelegate(QStyledItemDelegate):
    """Draws one cell: words, the mark of a caution before them, or the spark line."""

    def __init__(self, theme: Theme, rows: DeskModel, today: date, parent: QWidget) -> None:
        super().__init__(parent)
        self._theme, self._rows, self._today = theme, rows, today.toordinal()
        self._fit()
        theme.changed.connect(self._fit)

    def _fit(self) -> None:
        theme = self._theme
        self._plain, self._bold = theme.font(TextSize.BODY), theme.font(TextSize.BODY, bold=True)
        self._metrics = QFontMetrics(self._plain)
        self._bold_metrics = QFontMetrics(self._bold)
        self._line = theme.colour("line")
        self._soft, self._accent = theme.colour("accent_soft"), theme.colour("accent")
        self._tones = {name: theme.colour(name) for name in ("text", "muted", "caution", "stop")}
        self._edge = theme.px(8)

    def sizeHint(self, option: QStyleOptionViewItem, index: _Index) -> QSize:
        return QSize(0, self._theme.grid(4))

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: _Index) -> None:
        rect: QRect = option.rect
        state: int = option.state.value
        column = _COLUMNS[index.column()]
        cells = self._rows.cells(index.row())
        chosen = bool(state & _SELECTED)
        if chosen:
            painter.fillRect(rect, self._soft)
        painter.setPen(self._line)
        painter.drawLine(rect.bottomLeft(), rect.bottomRight())
        if cells.texts[column]:
            inside = rect.adjusted(self._edge, 0, -self._edge, -1)
            if column is Column.COURSE:
                self._draw_course(painter, inside, cells)
            else:
                self._draw_words(painter, inside, cells, column, chosen)
        if state & _FOCUSED:
            self._draw_focus(painter, rect)

    def _draw_focus(self, painter: QPainter, rect: QRect) -> None:
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(self._accent)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        corner = self._theme.px(3)
        painter.drawRoundedRect(QRectF(rect).adjusted(0.5, 0.5, -0.5, -1.5), corner, corner)
        painter.restore()

    def _draw_course(self, painter: QPainter, inside: QRect, cells: Cells) -> None:
        place = QRectF(inside).adjusted(0, self._edge, -2, -self._edge)
        draw_spark(
            painter, place, cells.course, self._today, self._tones["muted"], self._tones["text"]
        )

    def _draw_words(
        self, painter: QPainter, inside: QRect, cells: Cells, column: Column, chosen: bool
    ) -> None:
        strong = column is Column.NAME
        painter.setFont(self._bold if strong else self._plain)
        painter.setPen(self._tones[self._tone(cells, column, chosen)])
        if column is Column.NEED and cells.severity:
            inside = self._draw_mark(painter, inside, cells.severity)
        metrics = self._bold_metrics if strong else self._metrics
        text = metrics.elidedText(cells.texts[column], Qt.TextElideMode.ElideRight, inside.width())
        painter.drawText(inside, _SIDES[column in NUMBERS], text)

    def _draw_mark(self, painter: QPainter, inside: QRect, severity: str) -> QRect:
        side = self._theme.px(10)
        top = inside.center().y() - side / 2 + 0.5
        role = {"note": "muted", "caution": "caution", "stop": "stop"}[severity]
        room = side + self._theme.px(6)
        mirrored = painter.layoutDirection() is Qt.LayoutDirection.RightToLeft
        left = inside.right() - side if mirrored else inside.left()
        draw_mark(painter, QRectF(left, top, side, side), severity, self._tones[role])
        painter.setPen(self._tones["text" if role == "muted" else role])
        return inside.adjusted(0, 0, -room, 0) if mirrored else inside.adjusted(room, 0, 0, 0)

    @staticmethod
    def _tone(cells: Cells, column: Column, chosen: bool) -> str:
        strong = column in (Column.NAME, Column.NEED) or column in cells.marked
        return "text" if strong or chosen else "muted"


class DeskTable(QTableView):
    """``opened(trainee_id, area)`` on Return or a double click: the screen that the cell speaks
    of; ``moved()`` when another cell is stood on; ``order_changed()`` when rows are sorted anew.
    """

    opened = Signal(int, str)
    moved = Signal()
    order_changed = Signal()

    def __init__(self, theme: Theme, today: date, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._walked = False
        self._room = 0
        self._column = Column.NEED
        self.rows = DeskModel(self)
        self.setModel(self.rows)
        self.setItemDelegate(DeskDelegate(theme, self.rows, today, self))
        self.setProperty("kind", "desk")
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setTabKeyNavigation(False)
        self.setShowGrid(False)
        self.setWordWrap(False)
        self.verticalHeader().hide()
        heading = self.horizontalHeader()
        heading.setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        heading.setHighlightSections(False)
        heading.setSectionsClickable(True)
        heading.sectionClicked.connect(lambda section: self.sort_by(_COLUMNS[section]))
        self.selectionModel().currentChanged.connect(self._stood)
        self.doubleClicked.connect(self._open)
        theme.changed.connect(self._space)
        self._space()
        self.set_order(Order())

    @property
    def cells(self) -> Cells | None:
        """The row stood on."""
        index = self.currentIndex()
        return self.rows.cells(index.row()) if index.isValid() else None

    @property
    def area(self) -> str:
        """The screen that the cell stood on speaks of; "" on none."""
        cells, index = self.cells, self.currentIndex()
        return cells.areas[index.column()] if cells is not None else ""

    @property
    def sentence(self) -> str:
        """The row stood on, in full where the table is short: why, what has no room, and the course
        in words.
        """
        cells = self.cells
        if cells is None:
            return ""
        untold = [each for each in Column if self.isColumnHidden(each) or each is Column.COURSE]
        return cells.told(untold)

    @property
    def place(self) -> int | None:
        """The trainee stood on, once the coach has walked there; None at first."""
        return self.cells.trainee_id if self._walked and self.cells is not None else None

    def stand_on(self, trainee_id: int | None) -> None:
        """Stand on a trainee, in the column stood in before; on the first one where they are not
        shown.
        """
        row = max(self.rows.row_of(trainee_id), 0) if trainee_id is not None else 0
        self._walked = self._walked or trainee_id is not None
        self.setCurrentIndex(self.rows.index(row, self._column))

    def _stood(self, now: _Index, _before: _Index) -> None:
        if now.isValid():
            self._column = _COLUMNS[now.column()]
        self.moved.emit()

    def sort_on(self) -> None:
        """Sort by the column stood on."""
        self.sort_by(self._column)

    def sort_by(self, column: Column) -> None:
        """Sort by a column; by the same one again the other way round."""
        self.set_order(self.rows.order.after(column))

    def set_order(self, order: Order) -> None:
        """Show the rows in an order, from the first one on."""
        self.rows.set_order(order)
        self.stand_on(None)
        name = self.tr("Everybody. {order}").format(order=order_text(order))
        self.setAccessibleName(name)
        self.order_changed.emit()

    def _open(self, index: _Index) -> None:
        if index.isValid():
            cells = self.rows.cells(index.row())
            self.opened.emit(cells.trainee_id, cells.areas[index.column()])

    def _space(self) -> None:
        self.verticalHeader().setDefaultSectionSize(self._theme.grid(4))
        self._fit()

    def _fit(self) -> None:
        """The columns for which there is room; what there is to look at takes what is left.

        The room is that of the last resize: to ask the viewport for it makes the binding look
        through all classes of widgets, which takes a tenth of an empty window's start.
        """
        room = self._room
        widths = {column: self._theme.px(width) for column, width in WIDTHS.items()}
        least = self._theme.px(LEAST_NEED)
        left_out = set()
        for column in GIVE_WAY:
            if least + sum(widths[each] for each in widths if each not in left_out) <= room:
                break
            left_out.add(column)
        for column in widths:
            self.setColumnHidden(column, column in left_out)
        shown = [column for column in widths if column not in left_out]
        taken = sum(widths[column] for column in shown)
        spare = (room - self._theme.px(WANTED_NEED)) / taken
        for column in shown:
            self.setColumnWidth(column, int(widths[column] * max(1.0, min(spare, MOST_ROOM))))
        others = sum(self.columnWidth(column) for column in shown)
        self.setColumnWidth(Column.NEED, max(room - others, least))

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._room = event.size().width()
        self._fit()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        self._walked = True
        super().mousePressEvent(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        self._walked = True
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self._open(self.currentIndex())
        elif event.key() == Qt.Key.Key_S and not event.modifiers():
            self.sort_on()
        else:
            super().keyPressEvent(event)
