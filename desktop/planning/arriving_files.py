"""Files that come in: what kind they are, and what there is to say before anything is taken.

A training log of our own is known by its heading, programs and trainees by their schema; any other
table is read by a mapping. Everything that may take long comes in steps.
"""

from __future__ import annotations

import csv
import io
from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date
from pathlib import Path
from typing import Final

from db.json_files import InvalidFile
from db.log_files import UnreadableLog, decode, reading_log
from db.log_names import folded as folded
from db.log_rows import COLUMNS, PROBLEM_COLUMN
from db.log_rows import LogRow as LogRow
from db.program_files import SCHEMA as PROGRAM_SCHEMA
from db.program_files import read_program
from db.repository import Repository
from db.steps import Steps
from db.tables import Table, reading_of
from db.trainee_files import SCHEMA as TRAINEES_SCHEMA
from db.trainee_files import TraineesFile, read_trainees
from desktop.planning.table_columns import Columns, Known, columns_of, fitting, guessed
from desktop.planning.table_import import MappedTable, mapping_of
from desktop.training.program import Program
from desktop.training.quantities import Unit
from desktop.training.sentence import sentence, sentence_of
from desktop.training.table_mapping import TableMapping

_OWN: Final = frozenset((*COLUMNS, PROBLEM_COLUMN))
_OWN_NEEDS: Final = ("trainee", "date")
MOST_KEPT: Final = 50


class CannotRead(ValueError):
    """The file cannot be taken; the sentence says why and what could be."""


@dataclass(frozen=True, slots=True)
class ArrivingTable:
    """A table that came in. ``own``: a training log as documented, whose columns are known.

    ``columns`` are its heading and lines, ``mapping`` how they are read (of an own log only unit,
    order of dates and names count), ``guess`` what was guessed, ``kept`` the
    coach's mappings for files with this heading.
    """

    path: Path
    table: Table
    columns: Columns
    mapping: TableMapping
    own: bool = False
    kept: tuple[TableMapping, ...] = ()
    guess: TableMapping = TableMapping()


Arriving = ArrivingTable | Program | TraineesFile


def opening(
    path: Path, repository: Repository, unit: Unit | None = None, sheet: str = ""
) -> Steps[Arriving]:
    """What is in ``path``, read step by step; a kept mapping for such files is used at once.

    ``unit``: of loads in a table that names none. Raises CannotRead, StoreError and OSError.
    """
    try:
        with path.open("rb") as stream:
            start = stream.read(4096).lstrip(b"\xef\xbb\xbf \t\r\n")
        if start.startswith(b"{"):
            return _json(path, start)
        table = yield from reading_of(path, sheet)
    except (UnreadableLog, InvalidFile) as error:
        raise CannotRead(sentence_of(error)) from error
    columns = columns_of(table)
    if _is_own(columns):
        mapping = TableMapping(headers=columns.headers, unit=unit)
        return ArrivingTable(path, table, columns, mapping, own=True)
    known = Known(
        frozenset(
            folded(name)
            for one in repository.exercises(retired=True)
            for name in (one.key, one.name, *one.other_names)
        ),
        frozenset(folded(one.name) for one in repository.trainees(archived=True)),
    )
    columns, mapping = guessed(table, known, unit)
    kept = fitting(repository.coach_settings().tables, columns.headers)
    return ArrivingTable(
        path, table, columns, kept[0] if kept else mapping, kept=kept, guess=mapping
    )


def _json(path: Path, start: bytes) -> Arriving:
    if TRAINEES_SCHEMA.encode() in start:
        return read_trainees(path)
    if PROGRAM_SCHEMA.encode() in start:
        return read_program(path)
    raise CannotRead(
        sentence(
            "{file} is neither a program nor a trainee file of this program, nor a table",
            file=path.name,
        )
    )


def _is_own(columns: Columns) -> bool:
    names = [folded(name).replace(" ", "_") for name in columns.headers]
    return all(name in _OWN for name in names) and all(name in names for name in _OWN_NEEDS)


def reading(arriving: ArrivingTable, today: date) -> Steps[MappedTable]:
    """Its lines as lines of a log, step by step. Raises CannotRead."""
    if not arriving.own:
        return (yield from mapping_of(arriving.table, arriving.columns, arriving.mapping, today))
    wanted = arriving.mapping
    try:
        preview = yield from reading_log(
            _text(arriving), wanted.trainee, wanted.unit, wanted.date_order or None, today
        )
    except UnreadableLog as error:
        raise CannotRead(sentence_of(error)) from error
    return MappedTable(replace(preview, separator=arriving.table.separator or ","))


def _text(arriving: ArrivingTable) -> str:
    """The log as text: from the file itself, or from the sheet of a workbook."""
    if arriving.table.separator:
        return decode(arriving.path.read_bytes())
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\n")
    number = 1
    for line in arriving.table.lines:
        out.write("\n" * (line.number - number))  # so that lines keep their numbers
        writer.writerow(line.cells)
        number = line.number + 1
    return out.getvalue()


def with_kept(tables: Sequence[TableMapping], mapping: TableMapping) -> tuple[TableMapping, ...]:
    """The kept mappings with ``mapping`` as the newest; one of the same name goes."""
    others = [each for each in tables if folded(each.name) != folded(mapping.name)]
    return (*others[-(MOST_KEPT - 1) :], mapping)
