"""From somebody else's table to lines of a training log, by the roles of its columns.

What was assumed is named as a doubt of its line; what cannot be read is a problem of it. Nothing
here knows the data file.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from typing import Final

from db.log_files import LogPreview
from db.log_names import folded
from db.log_rows import LogRow, Problem
from db.steps import Steps
from db.tables import Table
from desktop.planning.table_columns import Columns
from desktop.planning.table_lines import LineMapper
from desktop.training.sentence import sentence
from desktop.training.table_mapping import Role, TableMapping

_SLICE: Final = 200
_FAR_ABOVE: Final = 8  # times; a decimal mark lost makes it ten
_ENOUGH_LOADS: Final = 3


@dataclass(frozen=True, slots=True)
class MappedTable:
    """A table as read by a mapping: the log it makes, and the doubts of its good lines."""

    preview: LogPreview
    doubts: tuple[Problem, ...] = ()


def mapping_of(
    table: Table,
    columns: Columns,
    mapping: TableMapping,
    latest: date,
) -> Steps[MappedTable]:
    """Reads a table by ``mapping`` step by step; yields the share done.

    ``latest``: later days are problems. The doubts `NO_LOAD` and `BODY` of the lines are none where
    the exercise is loaded by the body or a band, which whoever knows the exercises decides.
    ``preview`` has the lines of the table by number; a line that makes several sets makes several
    rows of the same number.
    """
    mapper = LineMapper(table, mapping, latest)
    rows: list[LogRow] = []
    spoiled: list[LogRow] = []
    problems: list[Problem] = []
    doubts: list[Problem] = []
    for number, line in enumerate(columns.lines):
        made, said = mapper.rows(line)
        problems += said.problems
        if said.problems:
            spoiled += made
        else:
            rows += made
            doubts += said.doubts
        if number % _SLICE == 0:
            yield number / len(columns.lines)
    doubts += _slips(rows)
    preview = LogPreview(
        rows=tuple(rows),
        problems=tuple(problems),
        remarks=table.remarks,
        separator=table.separator or ",",
        decimal_mark=mapping.decimal_mark or None,
        date_order=mapping.date_order or None,
        heading=columns.headers,
        cells={line.number: line.cells for line in columns.lines},
        spoiled=tuple(spoiled),
    )
    return MappedTable(preview, tuple(doubts))


def _slips(rows: Sequence[LogRow]) -> list[Problem]:
    """Loads far above all others of the exercise in the table: most likely a decimal mark lost."""
    loads: dict[tuple[str, str], list[tuple[int, int]]] = {}
    for row in rows:
        if row.done is not None and row.done.load_g > 0:
            whose = (folded(row.trainee), folded(row.exercise))
            loads.setdefault(whose, []).append((row.done.load_g, row.line))
    found: dict[int, Problem] = {}
    for each in loads.values():
        usual = sorted(load for load, _ in each)[(len(each) - 1) // 2]
        for load, line in each:
            if len(each) >= _ENOUGH_LOADS and load >= _FAR_ABOVE * usual:
                said = sentence(
                    "a load {times} times that of the other lines: is a decimal mark missing?",
                    times=round(load / usual),
                )
                found[line] = Problem(line, Role.LOAD.value, said)
    return list(found.values())
