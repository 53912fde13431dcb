"""The points of a chart as a plain table: the same sessions, read line by line."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from typing import Any, Final

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QPersistentModelIndex, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QAbstractItemView, QHeaderView, QTableView, QWidget

from views import words
from views.measures import Shown
from views.progress_series import Series, Spot
from views.progress_texts import asides, axis_unit, measure_word, set_words, tenths
from views.terms import Term, meaning
from views.theme import Theme

Index = QModelIndex | QPersistentModelIndex

_VALUE, _RESERVE, _NOTE = 1, 3, 4
_LOOKED_AT: Final = 100
"""Rows that the width of a column is taken from."""

_LEFT: Final = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
_RIGHT: Final = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter


@dataclass(frozen=True, slots=True)
class Row:
    """One session: what is shown in each column, and the value behind it."""

    texts: tuple[str, ...]
    values: tuple[Any, ...]


class SpotModel(QAbstractTableModel):
    """Sessions, oldest first. `set_rows` is the one way in which they change."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._rows: tuple[Row, ...] = ()
        self._headings: tuple[str, ...] = ("",) * 5

    def set_rows(self, headings: tuple[str, ...], rows: tuple[Row, ...]) -> None:
        """Show other sessions."""
        self.beginResetModel()
        self._headings, self._rows = headings, rows
        self.endResetModel()

    def rowCount(self, parent: Index = QModelIndex()) -> int:
        return 0 if parent.isValid() else len(self._rows)

    def columnCount(self, parent: Index = QModelIndex()) -> int:
        return 0 if parent.isValid() else len(self._headings)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if not index.isValid():
            return None
        row = self._rows[index.row()]
        if role == Qt.ItemDataRole.DisplayRole:
            return row.texts[index.column()]
        if role == Qt.ItemDataRole.EditRole:
            return row.values[index.column()]
        if role == Qt.ItemDataRole.TextAlignmentRole:
            return _RIGHT if index.column() in (_VALUE, _RESERVE) else _LEFT
        if role == Qt.ItemDataRole.ToolTipRole and index.column() == _NOTE:
            return row.texts[_NOTE]  # which may not have room
        return None

    def headerData(
        self,
        section: int,
        orientation: Qt.Orientation,
        role: int = Qt.ItemDataRole.DisplayRole,
    ) -> Any:
        if orientation is not Qt.Orientation.Horizontal or section >= len(self._headings):
            return None
        if role == Qt.ItemDataRole.DisplayRole:
            return self._headings[section]
        if role == Qt.ItemDataRole.ToolTipRole and section == _RESERVE:
            return meaning(Term.RIR)
        if role == Qt.ItemDataRole.TextAlignmentRole:
            return _RIGHT if section in (_VALUE, _RESERVE) else _LEFT
        return None


class ProgressTable(QTableView):
    """The sessions of a `Series`. ``chosen(index)`` and ``opened(index)`` as in the chart."""

    chosen = Signal(int)
    opened = Signal(int)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._quiet = False
        self.rows = SpotModel(self)
        self.setModel(self.rows)
        self.setAccessibleName(self.tr("Sessions of the chart"))
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setTabKeyNavigation(False)
        self.setShowGrid(False)
        self.setWordWrap(False)
        self.setProperty("kind", "quiet")
        self.verticalHeader().hide()
        self.horizontalHeader().setResizeContentsPrecision(_LOOKED_AT)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.horizontalHeader().setHighlightSections(False)
        self.horizontalHeader().setStretchLastSection(True)
        self.selectionModel().currentRowChanged.connect(lambda now, _: self._took(now))
        self.doubleClicked.connect(lambda index: self.opened.emit(index.row()))
        theme.changed.connect(self._space)
        self._space()

    def show_series(self, series: Series, names: dict[str, str], today: date) -> None:
        """Show the sessions of ``series``; ``names``: the variations by key."""
        value = axis_unit(series) or measure_word(series.shown, bodyweight=series.bodyweight)
        headings = (self.tr("Day"), value, self.tr("Set"), self.tr("RIR"), self.tr("Note"))
        whole = all(spot.value == round(spot.value) for spot in series.spots)
        self.rows.set_rows(
            headings,
            tuple(
                _row(spot, series, names, today, whole, record=record)
                for spot, record in zip(series.spots, series.records, strict=True)
            ),
        )
        self._space()
        self.scrollToBottom()

    def choose(self, index: int) -> None:
        """Stand on a session, without telling anybody (-1: on none)."""
        self._quiet = True
        if index < 0:
            self.clearSelection()
        else:
            self.selectRow(index)
            self.scrollTo(self.rows.index(index, 0))
        self._quiet = False

    def _took(self, index: QModelIndex) -> None:
        if index.isValid() and not self._quiet:
            self.chosen.emit(index.row())

    def _space(self) -> None:
        heading = self.horizontalHeader()
        heading.setSectionResizeMode(QHeaderView.ResizeMode.Interactive)
        self.verticalHeader().setDefaultSectionSize(self._theme.grid(3))
        for column in range(self.rows.columnCount() - 1):  # the last takes what is left
            self.resizeColumnToContents(column)
            self.setColumnWidth(column, self.columnWidth(column) + self._theme.grid())

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and self.currentIndex().isValid():
            self.opened.emit(self.currentIndex().row())
        else:
            super().keyPressEvent(event)


def _row(
    spot: Spot, series: Series, names: dict[str, str], today: date, whole: bool, *, record: bool
) -> Row:
    day = words.short_day(spot.best.day, today)
    done = set_words(spot, series, names, reserve=False)
    rir = spot.point.rir if spot.point is not None else spot.best.done.rir
    reserve = "" if rir is None else words.number(rir, 1)
    if series.shown is Shown.VARIATION:
        value = series.values[int(spot.value)]
    else:
        value = words.number(spot.value, 0) if whole else tenths(spot.value)
    note = "; ".join(asides(spot, series, record=record))
    return Row((day, value, done, reserve, note), (spot.best.day, spot.value, done, rir, note))
