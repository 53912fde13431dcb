"""Tables in files of any origin: text with separators, or the sheets of a workbook, as lines of
cells. Nothing here knows what the columns mean.

Only values are read: no formula is computed, no link followed, nothing executed.
"""

from __future__ import annotations

import csv
import io
import warnings
import zipfile
from collections.abc import Iterable, Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from datetime import date, datetime, time, timedelta
from decimal import Decimal
from itertools import islice
from pathlib import Path
from typing import Any, Final

from db.log_files import MOST_BYTES, SEPARATORS, UnreadableLog, decode, neutral
from db.log_rows import PROBLEM_COLUMN
from db.steps import Steps
from desktop.training.sentence import sentence

MOST_LINES: Final = 250_000
MOST_COLUMNS: Final = 200
MOST_LETTERS: Final = 10_000
_MOST_UNPACKED: Final = 400_000_000
_MOST_PACKED_TIMES: Final = 400
_MOST_PARTS: Final = 2_000
_PROLOG: Final = 65_536
_SLICE: Final = 500
_OLD_WORKBOOK: Final = b"\xd0\xcf\x11\xe0"
_SAMPLE_LINES: Final = 50


class UnreadableTable(UnreadableLog):
    """The file is no table that can be read; the sentence says why."""


class Figure(str):
    """A number that a workbook holds as a number: its text has a decimal point, wherever."""

    __slots__ = ()


@dataclass(frozen=True, slots=True)
class TableLine:
    """One line that is not blank: its number in the file (from 1) and its cells, trimmed.

    Days of a workbook are ISO dates, its numbers are `Figure`.
    """

    number: int
    cells: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Table:
    """The lines of a table. ``separator`` is "" and ``sheets`` names all of them in a workbook;
    ``sheet`` is the one read; ``day_zero`` is the day that its numbers of days count from.
    ``remarks`` say what was not read.
    """

    name: str
    lines: tuple[TableLine, ...]
    separator: str = ""
    sheet: str = ""
    sheets: tuple[str, ...] = ()
    day_zero: date = date(1899, 12, 30)
    remarks: tuple[str, ...] = ()

    @property
    def width(self) -> int:
        """The number of columns of the widest line."""
        return max((len(line.cells) for line in self.lines), default=0)


Reading = Steps[Table]


def reading_of(path: Path, sheet: str = "") -> Reading:
    """Reads the table in ``path`` step by step; yields the share done, 0 to 1.

    ``sheet`` names the sheet of a workbook ("": the first one with more than one line).
    Raises UnreadableTable and OSError.
    """
    size = path.stat().st_size
    if size > MOST_BYTES:
        raise UnreadableTable(
            sentence(
                "{file} is too large: {size} MB, at most 200",
                file=path.name,
                size=size // 1_000_000,
            )
        )
    with path.open("rb") as stream:
        start = stream.read(4)
    if start.startswith(_OLD_WORKBOOK):
        raise UnreadableTable(
            sentence(
                "{file} is a workbook of an old kind, or locked by a password: save it as "
                ".xlsx without a password, or as CSV",
                file=path.name,
            )
        )
    if start.startswith(b"PK"):
        return (yield from _workbook(path, sheet))
    return (yield from _text(path))


def hand_back(
    heading: Sequence[str],
    lines: Iterable[tuple[Sequence[str], str]],
    target: Path,
    separator: str = ",",
) -> int:
    """Write lines as they were, each with the reason why it was not taken in a column "problem",
    as CSV in UTF-8; returns how many. No cell is a formula for a spreadsheet.
    """
    kept = [i for i, name in enumerate(heading) if name.strip().casefold() != PROBLEM_COLUMN]
    count = 0
    with target.open("w", encoding="utf-8-sig", newline="") as stream:
        writer = csv.writer(stream, delimiter=separator or ",", lineterminator="\n")
        writer.writerow([*(heading[i] for i in kept), PROBLEM_COLUMN])
        for cells, reason in lines:
            short = [cells[i].strip() if i < len(cells) else "" for i in kept]
            writer.writerow([*map(_harmless, short), reason])
            count += 1
    return count


def _harmless(cell: str) -> str:
    plain = cell.strip().lstrip("+-−").replace(".", "").replace(",", "").replace("/", "")
    return cell if plain.isdigit() else neutral(cell)


# --- text ---------------------------------------------------------------------------------------


def _text(path: Path) -> Reading:
    try:
        text = decode(path.read_bytes())
    except UnreadableLog as error:
        raise UnreadableTable(
            sentence(
                "{file} is no table: it is neither text (CSV) nor a workbook (.xlsx)",
                file=path.name,
            )
        ) from error
    yield 0.1
    separator = vote_for_separator(text)
    lines: list[TableLine] = []
    remarks: list[str] = []
    reader = csv.reader(io.StringIO(text, newline=""), delimiter=separator, strict=True)
    name, number, total = path.name, 1, text.count("\n") + 1
    try:
        for cells in reader:
            _take(lines, number, list(map(str.strip, cells)), name)
            number = reader.line_num + 1
            if len(lines) % _SLICE == 0:
                yield min(1.0, 0.1 + 0.9 * number / total)
    except csv.Error as error:
        remarks.append(
            sentence(
                "the rest from line {line} on was not read: broken quotation ({error})",
                line=number,
                error=error,
            )
        )
    if not lines:
        raise UnreadableTable(sentence("{file} is empty", file=path.name))
    return Table(path.name, tuple(lines), separator, remarks=tuple(remarks))


def vote_for_separator(text: str) -> str:
    """Comma, semicolon or tab: the one by which most of the first lines have the same number of
    columns, the more columns the better.
    """
    first = islice(io.StringIO(text), 4 * _SAMPLE_LINES)
    sample = [line for line in first if line.strip()][:_SAMPLE_LINES]

    def votes(separator: str) -> tuple[float, int]:
        try:
            widths = [len(row) for row in csv.reader(sample, delimiter=separator)]
        except csv.Error:
            return (0.0, 0)
        split = [width for width in widths if width > 1]
        if not split:
            return (0.0, 0)
        usual = max(set(split), key=split.count)
        # A decimal comma splits some lines only; a separator splits all of them alike.
        return (split.count(usual) / len(widths), usual)

    def rank(separator: str) -> float:
        agreed, width = votes(separator)
        return agreed * (1 + min(width, 12) / 12)

    return max(SEPARATORS, key=rank)


def _take(lines: list[TableLine], number: int, cells: list[str], name: str) -> None:
    while cells and not cells[-1]:
        cells.pop()
    if not cells:
        return
    if len(lines) >= MOST_LINES:
        raise UnreadableTable(
            sentence(
                "{name} has more than {most_lines} lines: split it",
                name=name,
                most_lines=MOST_LINES,
            )
        )
    if len(cells) > MOST_COLUMNS:
        raise UnreadableTable(
            sentence(
                "{name}, line {number}: {cells} columns; at most {most_columns} are read",
                name=name,
                number=number,
                cells=len(cells),
                most_columns=MOST_COLUMNS,
            )
        )
    if max(map(len, cells)) > MOST_LETTERS:
        raise UnreadableTable(
            sentence(
                "{name}, line {number}: a cell of more than {most_letters} letters",
                name=name,
                number=number,
                most_letters=MOST_LETTERS,
            )
        )
    lines.append(TableLine(number, tuple(cells)))


# --- workbooks ----------------------------------------------------------------------------------


def _workbook(path: Path, wanted: str) -> Reading:
    _check_archive(path)
    yield 0.02
    from openpyxl import load_workbook  # late: 145 ms that most starts never need

    try:
        with _quiet():
            book = load_workbook(path, read_only=True, data_only=True, keep_links=False)
    except Exception as error:  # whatever a damaged archive or its XML makes of the reader
        raise _damaged(path) from error
    try:
        sheets = tuple(sheet.title for sheet in book.worksheets)
        if not sheets:
            raise UnreadableTable(sentence("{file} holds no sheet with cells", file=path.name))
        names = [wanted] if wanted in sheets else list(sheets)
        for place, name in enumerate(names):
            table = yield from _sheet(path, book[name], sheets, book.epoch)
            if len(table.lines) > 1 or place == len(names) - 1:
                if not table.lines:
                    raise UnreadableTable(sentence("{file} is empty", file=path.name))
                return table
    finally:
        book.close()
    raise AssertionError("the last sheet always answers")


def _sheet(path: Path, sheet: Any, sheets: tuple[str, ...], epoch: datetime) -> Reading:
    lines: list[TableLine] = []
    number = 0
    try:
        total = sheet.max_row or 0
        rows = sheet.iter_rows(values_only=True, max_col=MOST_COLUMNS + 1)
        while batch := _next_rows(rows):
            for row in batch:
                number += 1
                _take(lines, number, [_cell(value) for value in row], path.name)
            if number > 4 * MOST_LINES:
                raise UnreadableTable(
                    sentence(
                        "{file} has more than {most_lines} lines: split it",
                        file=path.name,
                        most_lines=MOST_LINES,
                    )
                )
            yield min(1.0, number / max(total, number))
    except UnreadableTable:
        raise
    except Exception as error:
        raise _damaged(path) from error
    return Table(path.name, tuple(lines), sheet=sheet.title, sheets=sheets, day_zero=epoch.date())


def _next_rows(rows: Iterator[tuple[Any, ...]]) -> list[tuple[Any, ...]]:
    with _quiet():
        return list(islice(rows, _SLICE))


@contextmanager
def _quiet() -> Iterator[None]:
    """What the reader warns of (looks, checks, extensions) is nothing that is read here."""
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        yield


def _damaged(path: Path) -> UnreadableTable:
    return UnreadableTable(f"{path.name} is no workbook that can be read; save it as CSV instead")


def _check_archive(path: Path) -> None:
    """Refuse what would unpack to far more than a table, before anything is unpacked."""
    try:
        with zipfile.ZipFile(path) as archive:
            parts = archive.infolist()
            if "[Content_Types].xml" not in archive.namelist():
                raise UnreadableTable(
                    sentence("{file} is an archive, not a workbook (.xlsx)", file=path.name)
                )
            unpacked = sum(part.file_size for part in parts)
            packed = max(1, sum(part.compress_size for part in parts))
            if (
                len(parts) > _MOST_PARTS
                or unpacked > _MOST_UNPACKED
                or (unpacked > 10_000_000 and unpacked / packed > _MOST_PACKED_TIMES)
            ):
                raise UnreadableTable(
                    sentence(
                        "{file} unpacks to {unpacked} MB: that is no training log",
                        file=path.name,
                        unpacked=unpacked // 1_000_000,
                    )
                )
            for part in parts:
                if part.filename.endswith((".xml", ".rels")):
                    _check_part(archive, part, path.name)
    except UnreadableTable:
        raise
    except Exception as error:  # whatever a damaged or locked archive makes of the reader
        raise _damaged(path) from error


def _check_part(archive: zipfile.ZipFile, part: zipfile.ZipInfo, name: str) -> None:
    """A workbook has no use for declarations, which can make little text grow without bound."""
    with archive.open(part) as stream:
        start = stream.read(_PROLOG)
    declared = b"<!DOCTYPE" in start or b"<!ENTITY" in start
    if declared or start.startswith((b"\xff\xfe", b"\xfe\xff")):
        raise UnreadableTable(
            sentence("{name} holds declarations that no workbook needs: it is not read", name=name)
        )


def _cell(value: Any) -> str:
    if value is None:
        return ""
    if isinstance(value, str):
        return value.strip()
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, int):
        return Figure(value)
    if isinstance(value, float):
        return _figure(value)
    if isinstance(value, datetime):
        return value.date().isoformat()
    if isinstance(value, date):
        return value.isoformat()
    if isinstance(value, time):
        return value.isoformat("minutes" if not value.second else "seconds")
    if isinstance(value, timedelta):
        seconds = int(value.total_seconds())
        return f"{seconds // 60}:{seconds % 60:02d}"
    return str(value).strip()


def _figure(value: float) -> str:
    """As the sheet shows it: what adding in binary leaves behind is taken off."""
    if value != value or value in (float("inf"), float("-inf")):
        return ""
    exact = Decimal(repr(round(value, 6)))
    return Figure(f"{exact.normalize() + 0:f}")
