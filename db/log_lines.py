"""Lines of cells to lines of a training log.

The same cells come again and again in a log: each group of those that belong together is read
once, and lines that say the same share what was read.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import date
from operator import itemgetter
from typing import Final, Generic, TypeVar

from db.log_cells import ASKED, NAMES, SAID, SET, CellReader
from db.log_rows import COLUMNS, LogRow, Problem, RowFormat
from desktop.training.sentence import sentence

T = TypeVar("T")

_OF_A_SESSION: Final = tuple(
    name for name in COLUMNS if name not in ("trainee", "date", "unit", "activity", "body_mass")
)

Wrong = tuple[tuple[str, str], ...]


class _Memory(dict[tuple[str, ...], tuple[T, Wrong]], Generic[T]):
    """What groups of cells say, by the cells as written: the value, and what is wrong."""

    def __init__(
        self,
        names: Sequence[str],
        group: Sequence[str],
        read: Callable[[CellReader], T],
        row_format: RowFormat,
    ) -> None:
        super().__init__()
        self._names = tuple(name for name in group if name in names)
        self._read = read
        self._format = row_format
        self.cells_of = _picker([names.index(name) for name in self._names])

    def __missing__(self, cells: tuple[str, ...]) -> tuple[T, Wrong]:
        stripped = zip(self._names, map(str.strip, cells), strict=True)
        reader = CellReader({name: text for name, text in stripped if text}, self._format)
        value = self._read(reader)
        found = self[cells] = value, tuple(reader.problems)
        return found


class LineReader:
    """Reads the lines of one file, whose columns are called ``names`` ("": not read)."""

    def __init__(self, names: Sequence[str], row_format: RowFormat) -> None:
        self._names = _Memory(names, NAMES, CellReader.names, row_format)
        self._done = _Memory(names, SET, CellReader.done, row_format)
        self._asked = _Memory(names, ASKED, CellReader.asked, row_format)
        self._said = _Memory(names, SAID, CellReader.said, row_format)
        self._load = names.index("load") if "load" in names else None
        self._of_a_session = [names.index(name) for name in _OF_A_SESSION if name in names]

    def read(
        self, line: int, trainee: str, day: date, cells: Sequence[str]
    ) -> tuple[LogRow, list[Problem]]:
        """The line with a cell for each name, and what is wrong with it; worthless where that is
        not empty.
        """
        names, done, asked, about = self._names, self._done, self._asked, self._said
        (exercise, line_name, variation, asked_variation, number), wrong_names = names[
            names.cells_of(cells)
        ]
        made, wrong_set = done[done.cells_of(cells)]
        wanted, wrong_asked = asked[asked.cells_of(cells)]
        said, wrong_said = about[about.cells_of(cells)]
        row = LogRow(
            line, trainee, day, said.unit, exercise != "" and not said.activity, exercise,
            line_name, variation, number, made, wanted, asked_variation, said,
        )  # fmt: skip
        wrong = wrong_set + wrong_asked + wrong_names + wrong_said
        if made is not None and row.session and not wrong:
            return row, []
        return self._looked_through(row, cells, wrong)

    def _looked_through(
        self, row: LogRow, cells: Sequence[str], wrong: Wrong
    ) -> tuple[LogRow, list[Problem]]:
        """A line that is not simply a set of an exercise."""
        session = not row.said.activity and any(cells[at].strip() for at in self._of_a_session)
        row = row.but(session=session)
        amiss = [*wrong, *self._amiss(row, cells)]
        if not amiss and not session and row.said.body_mass_g is None and not row.said.activity:
            amiss.append(("", sentence("nothing to record in this line")))
        return row, [Problem(row.line, column, text) for column, text in amiss]

    def _amiss(self, row: LogRow, cells: Sequence[str]) -> Wrong:
        """What does not go together."""
        done, asked, states = row.done, row.asked, row.said.states
        if row.said.activity:
            if row.exercise or done or asked:
                text = sentence("another activity and an exercise cannot share a line")
                return (("activity", text),)
        elif row.exercise:
            if done is None and asked is None and not states:
                return (("reps", sentence("no repetitions and no seconds: what was done?")),)
            if done is None and self._load is not None and cells[self._load].strip():
                return (("reps", sentence("a load, but neither repetitions nor seconds")),)
        elif done or asked or states:
            return (("exercise", sentence("which exercise?")),)
        return ()


def _picker(places: Sequence[int]) -> Callable[[Sequence[str]], tuple[str, ...]]:
    """Takes the cells at these places out of a line."""
    if not places:
        return lambda _cells: ()
    if len(places) == 1:
        (place,) = places
        return lambda cells: (cells[place],)
    return itemgetter(*places)
