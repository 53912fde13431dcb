"""The preview of a table that came in: what becomes of each line, what it was read as, and the
line as it stands in the file.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any, Final

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QPersistentModelIndex, Qt, Signal
from PySide6.QtGui import QPainter, QPen
from PySide6.QtWidgets import (
    QAbstractItemView,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QTableView,
    QWidget,
)

from desktop.planning.arriving_files import ArrivingTable, folded
from desktop.planning.log_prospect import Fate, LineFate, Prospect
from desktop.training.quantities import Unit
from desktop.training.table_mapping import Role
from views.column_header import ColumnHeader
from views.import_texts import FATE_TONES, fate_word, line_text
from views.theme import Theme

LINE, FATE, READ = 0, 1, 2
FIRST: Final = 3
_AT_FAULT: Final = Qt.ItemDataRole.UserRole + 1
_NARROW, _WIDE = 72, 200
_Index = QModelIndex | QPersistentModelIndex

FILTERS: Final[dict[str, frozenset[Fate]]] = {
    "all": frozenset(Fate),
    "doubtful": frozenset({Fate.DOUBTFUL}),
    "refused": frozenset({Fate.REFUSED, Fate.HELD}),
}


class LineModel(QAbstractTableModel):
    """Lines of the file; `set_lines` and `set_filter` are the only ways they change."""

    def __init__(self, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self._theme = theme
        self._arriving: ArrivingTable | None = None
        self._prospect: Prospect | None = None
        self._unit = Unit.KG
        self._filter = "all"
        self._rows: list[LineFate] = []

    def set_lines(self, arriving: ArrivingTable, prospect: Prospect, unit: Unit) -> None:
        """Show what becomes of the lines of a table; loads in ``unit``."""
        self.beginResetModel()
        self._arriving, self._prospect, self._unit = arriving, prospect, unit
        self._choose()
        self.endResetModel()

    def set_filter(self, name: str) -> None:
        """Show all lines, or those that are doubtful or refused."""
        self.beginResetModel()
        self._filter = name
        self._choose()
        self.endResetModel()

    def _choose(self) -> None:
        lines = self._prospect.lines if self._prospect is not None else ()
        self._rows = [line for line in lines if line.fate in FILTERS[self._filter]]

    def line(self, row: int) -> LineFate | None:
        """The line in a row."""
        return self._rows[row] if 0 <= row < len(self._rows) else None

    def text(self, line: LineFate) -> str:
        """A line as it was read, or why it was not."""
        known = self._prospect.exercises if self._prospect is not None else {}
        return line_text(line, lambda name: known.get(folded(name), name), self._unit)

    def rowCount(self, parent: _Index = QModelIndex()) -> int:
        return 0 if parent.isValid() else len(self._rows)

    def columnCount(self, parent: _Index = QModelIndex()) -> int:
        if parent.isValid() or self._arriving is None:
            return 0
        return FIRST + len(self._arriving.columns.headers)

    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:
        if role != Qt.ItemDataRole.DisplayRole or orientation != Qt.Orientation.Horizontal:
            return None
        own = (self.tr("Line"), self.tr("Is"), self.tr("Read as"))
        if section < FIRST:
            return own[section]
        headers = self._arriving.columns.headers if self._arriving is not None else ()
        return headers[section - FIRST] if section - FIRST < len(headers) else None

    def data(self, index: _Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        line = self.line(index.row())
        if line is None:
            return None
        column = index.column()
        if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.AccessibleTextRole):
            if column == LINE:
                return str(line.number)
            if column == FATE:
                return fate_word(line.fate)
            return self.text(line) if column == READ else self._cell(line, column - FIRST)
        if role == Qt.ItemDataRole.ForegroundRole:
            tone = FATE_TONES.get(line.fate, "muted")
            if column == LINE or (column >= FIRST and line.fate in (Fate.THERE, Fate.LEFT_OUT)):
                tone = "muted"
            return self._theme.colour("text" if column >= FIRST and tone != "muted" else tone)
        if role == Qt.ItemDataRole.TextAlignmentRole and column == LINE:
            return int(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        if role == _AT_FAULT:
            return self._at_fault(line, column - FIRST)
        return None

    def _cell(self, line: LineFate, place: int) -> str:
        cells = self._prospect.plan.preview.cells.get(line.number, ()) if self._prospect else ()
        return cells[place].strip() if place < len(cells) else ""

    def _at_fault(self, line: LineFate, place: int) -> str:
        """The tone of the mark under a cell that is doubtful or refused; "" for none."""
        if self._arriving is None or place < 0 or not line.at:
            return ""
        roles = self._arriving.mapping.roles
        if self._arriving.own:
            name = folded(self._arriving.columns.headers[place]).replace(" ", "_")
        else:
            name = roles[place].value if place < len(roles) else ""
        if not name or name not in line.at:
            return ""
        return "caution" if line.fate is Fate.DOUBTFUL else "stop"


class LineDelegate(QStyledItemDelegate):
    """Marks cells: refused ones are underlined, doubtful ones with dots."""

    def __init__(self, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self._theme = theme

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: _Index) -> None:
        super().paint(painter, option, index)
        tone = index.data(_AT_FAULT)
        if not tone:
            return
        rect = option.rect
        painter.save()
        pen = QPen(self._theme.colour(tone), self._theme.px(2))
        dotted = tone == "caution"
        pen.setStyle(Qt.PenStyle.DotLine if dotted else Qt.PenStyle.SolidLine)
        painter.setPen(pen)
        low, gap = rect.bottom() - self._theme.px(2), self._theme.px(4)
        painter.drawLine(rect.left() + gap, low, rect.right() - gap, low)
        painter.restore()


class ImportTable(QTableView):
    """Lines by keyboard; ``moved`` when another one is stood on."""

    moved = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self.lines = LineModel(theme, self)
        self.setModel(self.lines)
        self.setItemDelegate(LineDelegate(theme, self))
        self.header = ColumnHeader(theme, self, FIRST)
        self.setHorizontalHeader(self.header)
        self.verticalHeader().hide()
        self.setProperty("kind", "quiet")
        self.setAccessibleName(self.tr("Lines of the file"))
        self.setShowGrid(False)
        self.setCornerWidget(QWidget())
        self.setWordWrap(False)
        self.setTabKeyNavigation(False)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setHorizontalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.selectionModel().currentRowChanged.connect(lambda _now, _before: self.moved.emit())
        self._roles: Sequence[Role] = ()
        theme.changed.connect(self._space)
        self._space()

    @property
    def line(self) -> LineFate | None:
        """The line stood on."""
        return self.lines.line(self.currentIndex().row())

    def show_lines(self, arriving: ArrivingTable, prospect: Prospect, unit: Unit) -> None:
        """Show a table; who stood on a line stays there."""
        number = self.line.number if self.line is not None else None
        fresh = self.lines.columnCount() != FIRST + len(arriving.columns.headers)
        self.lines.set_lines(arriving, prospect, unit)
        roles: Sequence[Role] = () if arriving.own else arriving.mapping.roles
        self.header.offer(arriving.columns.headers, roles)
        if fresh or roles != self._roles:
            self._roles = roles
            self._widen()
        self._stand_on(number)

    def show_only(self, name: str) -> None:
        """Show all lines, or the doubtful or refused ones."""
        self.lines.set_filter(name)
        self._stand_on(None)

    def _stand_on(self, number: int | None) -> None:
        rows = range(self.lines.rowCount())
        row = next((r for r in rows if (line := self.lines.line(r)) and line.number == number), 0)
        self.setCurrentIndex(self.lines.index(row, READ))
        self.horizontalScrollBar().setValue(0)

    def _widen(self) -> None:
        px = self._theme.px
        self.setColumnWidth(LINE, px(44))
        self.setColumnWidth(FATE, px(88))
        self.setColumnWidth(READ, px(316))
        for column in range(FIRST, self.lines.columnCount()):
            likes = min(px(_WIDE), self.sizeHintForColumn(column) + px(10))
            chooser = self.header.width_for(column - FIRST)
            self.setColumnWidth(column, max(px(_NARROW), likes, chooser))
        self.header.place()

    def _space(self) -> None:
        self.verticalHeader().setDefaultSectionSize(
            self.fontMetrics().height() + self._theme.px(10)
        )
        if self.lines.columnCount():
            self._widen()
