"""The weeks ahead as an item model: weeks across, rows down. Cells are read when they are shown."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date
from enum import IntEnum
from itertools import groupby

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject, QPersistentModelIndex, Qt

from desktop.planning.program_weeks import DaySession, ProgramWeeks, SlotSession, WeekColumn
from desktop.training.program_edits import DayPlace, SlotPlace
from views import words
from views.slot_face import difficulty_text, work_text
from views.weeks_rows import (
    BarRow,
    DayRow,
    RatioRow,
    Row,
    SlotRow,
    TitleRow,
    easier_word,
    number_text,
    weeks_rows,
)
from views.weeks_texts import cell_sentence

Index = QModelIndex | QPersistentModelIndex


class WeeksRole(IntEnum):
    """Where the model keeps what a delegate draws: a `CellFace`, and the row."""

    FACE = Qt.ItemDataRole.UserRole
    ROW = Qt.ItemDataRole.UserRole + 1


@dataclass(frozen=True, slots=True)
class CellFace:
    """One cell: what is asked above, load or variation below. ``shade`` 0 to 1 is how hard it is
    among its row; ``value`` a number to draw as a bar.
    """

    above: str = ""
    below: str = ""
    shade: float | None = None
    deload: bool = False
    rolls_over: bool = False
    over: bool = False
    past: bool = False
    caution: bool = False
    value: float | None = None

    @property
    def text(self) -> str:
        """The cell in one line."""
        return " ".join(part for part in (self.above, self.below) if part)


EMPTY = CellFace()


class WeeksModel(QAbstractTableModel):
    """`show_weeks` is the only way that cells change; rows that stay are told cell by cell."""

    def __init__(self, today: date, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._today = today
        self._weeks: ProgramWeeks | None = None
        self._rows: tuple[Row, ...] = ()
        self._faces: dict[tuple[int, int], CellFace] = {}

    @property
    def weeks(self) -> ProgramWeeks | None:
        """What is shown."""
        return self._weeks

    @property
    def rows(self) -> tuple[Row, ...]:
        """The rows shown."""
        return self._rows

    @property
    def columns(self) -> tuple[WeekColumn, ...]:
        """The weeks shown."""
        return self._weeks.columns if self._weeks is not None else ()

    def show_weeks(self, weeks: ProgramWeeks) -> None:
        """Show other weeks."""
        rows = weeks_rows(weeks)
        same = (
            self._weeks is not None
            and len(self._weeks.columns) == len(weeks.columns)
            and _names(rows) == _names(self._rows)
        )
        if not same:
            self.beginResetModel()
            self._weeks, self._rows, self._faces = weeks, rows, {}
            self.endResetModel()
            return
        before, heads = self._rows, [_head(each) for each in self.columns]
        changed = [at for at, row in enumerate(rows) if not _same(row, self._rows[at])]
        self._weeks, self._rows = weeks, rows
        self._faces = {at: face for at, face in self._faces.items() if at[0] not in set(changed)}
        for at in changed:
            for first, last in _runs(before[at], rows[at]):
                self.dataChanged.emit(self.index(at, first), self.index(at, last))
        if heads != [_head(each) for each in weeks.columns]:
            self.headerDataChanged.emit(Qt.Orientation.Horizontal, 0, len(heads) - 1)

    def face(self, row: int, column: int) -> CellFace:
        """What a cell shows."""
        known = self._faces.get((row, column))
        if known is None:
            known = self._faces[row, column] = self._made(row, column)
        return known

    def sentence(self, row: int, column: int) -> str:
        """All that a cell stands for."""
        if self._weeks is None or not (0 <= row < len(self._rows) and column >= 0):
            return ""
        return cell_sentence(self._weeks, self._rows[row], column, self._today)

    def place(self, row: int, column: int) -> SlotPlace | DayPlace | None:
        """Where a cell's rule stands in the program."""
        shown = self._rows[row] if 0 <= row < len(self._rows) else None
        sessions: tuple[SlotSession, ...] | tuple[DaySession, ...] = ()
        if isinstance(shown, SlotRow | DayRow):
            sessions = shown.weeks.cells[column]
        return next((each.place for each in sessions if each.place is not None), None)

    def index_of(self, place: SlotPlace, column: int) -> QModelIndex:
        """The cell of a slot in or after a week; the first of its row where there is none."""
        for at, row in enumerate(self._rows):
            if not isinstance(row, SlotRow):
                continue
            places = [{each.place for each in cell} for cell in row.weeks.cells]
            found = [week for week, each in enumerate(places) if place in each]
            if found:
                later = [week for week in found if week >= column]
                return self.index(at, (later or found)[0])
        return QModelIndex()

    def _made(self, row: int, column: int) -> CellFace:
        assert self._weeks is not None
        match self._rows[row]:
            case SlotRow(_, weeks):
                return self._slot_face(row, column)
            case DayRow(_, weeks):
                return self._day_face(weeks.cells[column])
            case BarRow(_, values, _, _):
                return CellFace(number_text(values[column] or None), value=values[column])
            case RatioRow(_, values):
                return CellFace(number_text(values[column]))
            case TitleRow():
                return EMPTY

    def _slot_face(self, row: int, column: int) -> CellFace:
        shown = self._rows[row]
        assert self._weeks is not None
        assert isinstance(shown, SlotRow)
        weeks, sessions = shown.weeks, shown.weeks.cells[column]
        if not sessions:
            return EMPTY
        last = sessions[-1]
        caution = any(each.cautions for each in sessions)
        if last.position is None:
            return CellFace("–", caution=caution, past=last.done is not None)
        unit = self._weeks.trainee.unit
        here = (last.position, weeks.exercise, weeks.around, unit)
        return CellFace(
            above=work_text(last.slot, last.position),
            below=difficulty_text(last.slot, *here),
            shade=weeks.shades[column],
            deload=last.deload,
            rolls_over=any(each.rolls_over for each in sessions),
            past=last.done is not None,
            caution=caution,
        )

    def _day_face(self, sessions: tuple[DaySession, ...]) -> CellFace:
        if not any(each.positions for each in sessions):
            return EMPTY
        assert self._weeks is not None
        exercises = self._weeks.history.library.exercises
        minutes = max(round(each.minutes(exercises)) for each in sessions)
        room = self._weeks.trainee.minutes_per_session
        over = room is not None and minutes > room
        return CellFace(words.number(minutes), over=over, caution=over)

    def rowCount(self, parent: Index = QModelIndex()) -> int:
        return 0 if parent.isValid() else len(self._rows)

    def columnCount(self, parent: Index = QModelIndex()) -> int:
        return 0 if parent.isValid() else len(self.columns)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        if not index.isValid() or self._weeks is None:
            return None
        at = (index.row(), index.column())
        if role == WeeksRole.FACE:
            return self.face(*at)
        if role == WeeksRole.ROW:
            return self._rows[at[0]]
        if role == Qt.ItemDataRole.DisplayRole:
            return self.face(*at).text
        if role == Qt.ItemDataRole.AccessibleTextRole:
            return self.sentence(*at)
        return None

    def headerData(
        self,
        section: int,
        orientation: Qt.Orientation,
        role: int = Qt.ItemDataRole.DisplayRole,
    ) -> object:
        if role not in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.AccessibleTextRole):
            return None
        if orientation is Qt.Orientation.Vertical:
            return self._rows[section].name if section < len(self._rows) else None
        if section >= len(self.columns):
            return None
        column = self.columns[section]
        return " ".join(part for part in (words.number(column.number), easier_word(column)) if part)


def _head(column: WeekColumn) -> tuple[object, ...]:
    """What the header shows of a week."""
    return (column.first, column.phase, column.easier, column.proposed, column.now, column.cautions)


def _same(one: Row, other: Row) -> bool:
    """Whether a row shows the same; rows of slots that nothing touched are the very same."""
    if isinstance(one, SlotRow) and isinstance(other, SlotRow):
        return one.weeks is other.weeks or one.weeks == other.weeks
    return one == other


def _runs(before: Row, after: Row) -> Iterator[tuple[int, int]]:
    """First and last of the columns next to each other in which a row shows something else."""
    pairs = zip(_cells(before), _cells(after), strict=True)
    differ = [at for at, (one, other) in enumerate(pairs) if one != other]
    for _, run in groupby(enumerate(differ), lambda pair: pair[1] - pair[0]):
        columns = [column for _, column in run]
        yield columns[0], columns[-1]


def _cells(row: Row) -> Sequence[object]:
    match row:
        case SlotRow():
            return tuple(zip(row.weeks.cells, row.weeks.shades, strict=True))
        case DayRow():
            return row.weeks.cells
        case BarRow() | RatioRow():
            return row.values
        case TitleRow():
            return ()


def _names(rows: tuple[Row, ...]) -> list[tuple[type, str]]:
    return [(type(row), row.name) for row in rows]
