"""The desk as an item model: a row a trainee, those that pass the filter, in one order."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from enum import IntEnum, StrEnum
from typing import Any

from PySide6.QtCore import (
    QAbstractTableModel,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    Qt,
)

from views.desk_columns import Cells, Column, explanation, heading
from views.desk_order import Order, in_order, marked_heading, order_text
from views.tips import plain_tip

_Index = QModelIndex | QPersistentModelIndex
_COLUMNS = tuple(Column)
_RIGHT = int(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
_LEFT = int(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
NUMBERS = (Column.LAST, Column.DONE)


class DeskRole(IntEnum):
    """What else the model answers than words: the whole row."""

    CELLS = Qt.ItemDataRole.UserRole + 1


class Shown(StrEnum):
    """Who is shown."""

    ALL = "all"
    TODAY = "today"
    ATTENTION = "attention"


def _no_rank(_row: Any, _column: Column) -> Any:
    return None


class DeskModel(QAbstractTableModel):
    """`set_rows` is the only way rows change, `set_order` the only way their order does. Words are
    made when they are first asked for.
    """

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._rows: Sequence[Any] = ()
        self._cells_of: Callable[[Any], Cells] = lambda row: row
        self._rank_of: Callable[[Any, Column], Any] = _no_rank
        self._made: dict[int, Cells] = {}
        self._shown: list[int] = []
        self._words: list[str] = []
        self._who = Shown.ALL
        self._headings = tuple(map(heading, Column))
        self.order = Order()

    def set_rows(
        self,
        rows: Sequence[Any],
        cells_of: Callable[[Any], Cells],
        rank_of: Callable[[Any, Column], Any] = _no_rank,
    ) -> None:
        """Show other rows, which come by need; ``cells_of`` gives the words of one, ``rank_of``
        what it is sorted by in a column (None: nothing there).
        """
        self.beginResetModel()
        self._rows, self._cells_of, self._rank_of, self._made = rows, cells_of, rank_of, {}
        self._fill()
        self.endResetModel()

    def set_filter(self, text: str, who: str) -> None:
        """Show only rows in which every word of ``text`` stands somewhere, whatever the case, of
        those that ``who`` says.
        """
        self.beginResetModel()
        self._words, self._who = text.casefold().split(), Shown(who)
        self._fill()
        self.endResetModel()

    def set_order(self, order: Order) -> None:
        """Show the rows in another order."""
        self.beginResetModel()
        self.order = order
        self._fill()
        self.endResetModel()

    def cells(self, row: int) -> Cells:
        """The cells of the row shown at this place."""
        return self._cells(self._shown[row])

    def row_of(self, trainee_id: int | None) -> int:
        """Where a trainee stands among those shown; -1 where not."""
        for row, place in enumerate(self._shown):
            if self._cells(place).trainee_id == trainee_id:
                return row
        return -1

    def _cells(self, place: int) -> Cells:
        made = self._made.get(place)
        if made is None:
            made = self._made[place] = self._cells_of(self._rows[place])
        return made

    def _fill(self) -> None:
        places = range(len(self._rows))
        ordered = in_order(places, self.order, lambda at, by: self._rank_of(self._rows[at], by))
        if not self._words and self._who is Shown.ALL:
            self._shown = list(ordered)
        else:
            self._shown = [place for place in ordered if self._passes(self._cells(place))]

    def _passes(self, cells: Cells) -> bool:
        if not _is_one(cells, self._who):
            return False
        said = cells.spoken.casefold() if self._words else ""
        return all(word in said for word in self._words)

    def rowCount(self, parent: _Index = QModelIndex()) -> int:
        return 0 if parent.isValid() else len(self._shown)

    def columnCount(self, parent: _Index = QModelIndex()) -> int:
        return 0 if parent.isValid() else len(_COLUMNS)

    def data(self, index: _Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        row, column = index.row(), index.column()
        if not index.isValid() or row >= len(self._shown):
            return None
        if role == Qt.ItemDataRole.DisplayRole:
            return self.cells(row).texts[column]
        if role == DeskRole.CELLS:
            return self.cells(row)
        if role == Qt.ItemDataRole.ToolTipRole:
            tip = self.cells(row).texts[column]
            return plain_tip(tip) if column != Column.NAME else None
        if role == Qt.ItemDataRole.TextAlignmentRole:
            return _RIGHT if column in NUMBERS else _LEFT
        if role == Qt.ItemDataRole.AccessibleTextRole:
            cells = self.cells(row)
            if column == Column.NAME:
                return cells.spoken
            return f"{self._headings[column]}: {cells.texts[column]}"
        return None

    def headerData(
        self,
        section: int,
        orientation: Qt.Orientation,
        role: int = Qt.ItemDataRole.DisplayRole,
    ) -> Any:
        if orientation is not Qt.Orientation.Horizontal or section >= len(_COLUMNS):
            return None
        sorted_by = section == self.order.column and not self.order.by_need
        if role == Qt.ItemDataRole.DisplayRole:
            name = self._headings[section]
            return marked_heading(name, self.order.turned) if sorted_by else name
        if role == Qt.ItemDataRole.AccessibleTextRole:
            name = self._headings[section]
            return f"{name}, {order_text(self.order)}" if sorted_by else name
        if role == Qt.ItemDataRole.ToolTipRole:
            return explanation(_COLUMNS[section])
        if role == Qt.ItemDataRole.TextAlignmentRole:
            return _RIGHT if section in NUMBERS else _LEFT
        return None


def _is_one(cells: Cells, who: Shown) -> bool:
    if who is Shown.TODAY:
        return cells.due
    if who is Shown.ATTENTION:
        return cells.severity in ("caution", "stop")
    return True
