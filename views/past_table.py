"""The list of the past as a table: one session a row, the latest first."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from typing import Any, Final

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QPersistentModelIndex, Qt, Signal
from PySide6.QtGui import QKeyEvent, QResizeEvent
from PySide6.QtWidgets import QAbstractItemView, QHeaderView, QTableView, QWidget

from views.theme import Theme

Index = QModelIndex | QPersistentModelIndex

_DAY, _WHAT, _SETS, _NOTE = range(4)
_LEFT: Final = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
_RIGHT: Final = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter


@dataclass(frozen=True, slots=True)
class PastRow:
    """One session as the table shows it. ``draft``: typed, not saved; then there is no number."""

    session_id: int | None
    day: date
    day_text: str
    exercises: str
    sets: int
    note: str


class PastModel(QAbstractTableModel):
    """Sessions. `set_rows` is the one way in which they change."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.rows: tuple[PastRow, ...] = ()

    def set_rows(self, rows: Sequence[PastRow]) -> None:
        """Show other sessions."""
        self.beginResetModel()
        self.rows = tuple(rows)
        self.endResetModel()

    def rowCount(self, parent: Index = QModelIndex()) -> int:
        return 0 if parent.isValid() else len(self.rows)

    def columnCount(self, parent: Index = QModelIndex()) -> int:
        return 0 if parent.isValid() else 4

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if not index.isValid():
            return None
        row = self.rows[index.row()]
        shown = (row.day_text, row.exercises, str(row.sets) if row.sets else "", row.note)
        values = (row.day, row.exercises, row.sets, row.note)
        match role:
            case Qt.ItemDataRole.DisplayRole:
                return shown[index.column()]
            case Qt.ItemDataRole.EditRole:
                return values[index.column()]
            case Qt.ItemDataRole.TextAlignmentRole:
                return _RIGHT if index.column() == _SETS else _LEFT
            case Qt.ItemDataRole.ToolTipRole if index.column() in (_WHAT, _NOTE):
                # Plain text: a tooltip would render what looks like markup.
                text = shown[index.column()].replace("&", "&amp;").replace("<", "&lt;")
                return f"<p>{text}</p>" if text else None
        return None

    def headerData(
        self,
        section: int,
        orientation: Qt.Orientation,
        role: int = Qt.ItemDataRole.DisplayRole,
    ) -> Any:
        if orientation is not Qt.Orientation.Horizontal or not 0 <= section < 4:
            return None
        if role == Qt.ItemDataRole.DisplayRole:
            return (
                self.tr("Day"),
                self.tr("What was done"),
                self.tr("Sets"),
                self.tr("Note"),
            )[section]
        if role == Qt.ItemDataRole.TextAlignmentRole:
            return _RIGHT if section == _SETS else _LEFT
        return None


class PastTable(QTableView):
    """Sessions of the past. ``chosen(row)`` when another one stands under the cursor, ``opened``
    by Return or a double click.
    """

    chosen = Signal(int)
    opened = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self.past = PastModel(self)
        self.setModel(self.past)
        self.setAccessibleName(self.tr("Sessions on record"))
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setTabKeyNavigation(False)
        self.setShowGrid(False)
        self.setWordWrap(False)
        self.setProperty("kind", "sheet")
        self.verticalHeader().hide()
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        heading = self.horizontalHeader()
        heading.setHighlightSections(False)
        self.selectionModel().currentRowChanged.connect(lambda now, _: self.chosen.emit(now.row()))
        self.doubleClicked.connect(lambda _index: self.opened.emit())
        theme.changed.connect(self._space)
        self._space()

    @property
    def row(self) -> PastRow | None:
        """The session under the cursor."""
        at = self.currentIndex()
        return self.past.rows[at.row()] if at.isValid() else None

    def show_rows(self, rows: Sequence[PastRow]) -> None:
        """Show other sessions; the cursor stays on the same one where it is still there."""
        before = self.row
        self.past.set_rows(rows)
        self._space()
        kept = [
            at
            for at, row in enumerate(rows)
            if before is not None and (row.session_id, row.day) == (before.session_id, before.day)
        ]
        if rows:
            self.selectRow(kept[0] if kept else 0)
            self.scrollTo(self.currentIndex())
        else:
            self.chosen.emit(-1)

    def stand_on(self, session_id: int) -> None:
        """Put the cursor on a session."""
        for at, row in enumerate(self.past.rows):
            if row.session_id == session_id:
                self.selectRow(at)
                self.scrollTo(self.currentIndex())

    def _space(self) -> None:
        self.verticalHeader().setDefaultSectionSize(self._theme.grid(3))
        heading = self.horizontalHeader()
        modes = QHeaderView.ResizeMode
        for column in (_DAY, _SETS, _NOTE):
            heading.setSectionResizeMode(column, modes.Interactive)
            self.setColumnHidden(column, False)
        heading.setSectionResizeMode(_WHAT, modes.Stretch)
        for column in (_DAY, _SETS, _NOTE):
            wide = max(self.sizeHintForColumn(column), heading.sectionSizeHint(column))
            self.setColumnWidth(column, min(wide, self._theme.grid(16)))
        self._hide_least()

    def _hide_least(self) -> None:
        """What was done needs room: where there is little, notes and numbers stand beside only."""
        noted = any(row.note for row in self.past.rows)
        room = self.viewport().width() - self.columnWidth(_DAY)
        for column, least, wanted in ((_SETS, 12, True), (_NOTE, 20, noted)):
            self.setColumnHidden(column, False)
            left = room - self.columnWidth(column)
            shown = wanted and left >= self._theme.grid(least)
            self.setColumnHidden(column, not shown)
            room = left if shown else room

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._hide_least()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and self.row is not None:
            self.opened.emit()
        else:
            super().keyPressEvent(event)
