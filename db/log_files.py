"""The training log as a file: text to lines that can be taken and problems named by line.

The format is described in resources/formats.md. Nothing here knows the data file: what the names
in the log stand for is decided by db.log_import.
"""

from __future__ import annotations

import csv
import io
import re
from collections.abc import Iterator, Mapping, Sequence
from contextlib import suppress
from dataclasses import dataclass, field
from datetime import date
from operator import itemgetter
from pathlib import Path
from typing import Any, Final, Literal, NamedTuple

from rapidfuzz import process

from db.log_cells import without_mark
from db.log_lines import LineReader
from db.log_rows import COLUMNS, PROBLEM_COLUMN, LogRow, Problem, RowFormat
from db.steps import Steps, finished
from desktop.training.quantities import Unit
from desktop.training.sentence import sentence

DateOrder = Literal["day first", "month first"]
DecimalMark = Literal[".", ","]

SEPARATORS: Final = (",", ";", "\t")
_SLICE: Final = 200
MOST_BYTES: Final = 200_000_000
_ISO: Final = re.compile(r"([0-9]{4})-([0-9]{1,2})-([0-9]{1,2})(?:[T ].*)?")
_DOTTED: Final = re.compile(r"([0-9]{1,2})\.\s?([0-9]{1,2})\.\s?([0-9]{4})")
_SLASHED: Final = re.compile(r"([0-9]{1,2})([/-])([0-9]{1,2})\2([0-9]{4})")
_SHORT: Final = re.compile(r"[0-9]{1,2}([./-])[0-9]{1,2}\1[0-9]{2}")
_COMMA_NUMBER: Final = re.compile(r"[+\-−]?[0-9]*,[0-9]*(?:\s?[a-zA-Z]+)?")
_POINT_NUMBER: Final = re.compile(r"[+\-−]?[0-9]*\.[0-9]*(?:\s?[a-zA-Z]+)?")
_COMMA_GROUP: Final = re.compile(r"[+\-−]?[1-9][0-9]{0,2},[0-9]{3}")
_NUMBER_COLUMNS: Final = ("load", "asked_load", "body_mass", "rir", "asked_rir", "effort")
_EARLIEST: Final = date(1900, 1, 1)
_FIRST_LINE: Final = re.compile(r"[^\r\n]*[^\s][^\r\n]*")
_FORMULA_START: Final = re.compile(r"'*[=+\-@\t\r]")


class UnreadableLog(ValueError):
    """The file is no text or no table; the sentence says what was expected."""


@dataclass(frozen=True, slots=True)
class LogPreview:
    """A log as read: the lines that can be taken and what is wrong with the others.

    ``heading`` and ``cells`` (by line, not trimmed) are as written, so that lines can be handed
    back; ``spoiled`` are the lines with problems as far as they could be read, to tell which good
    lines belong together with them.
    ``remarks`` concern the whole file. ``date_order`` is None where every date is ISO.
    """

    rows: tuple[LogRow, ...]
    problems: tuple[Problem, ...]
    remarks: tuple[str, ...] = ()
    separator: str = ","
    decimal_mark: DecimalMark | None = None
    date_order: DateOrder | None = None
    heading: tuple[str, ...] = ()
    cells: Mapping[int, Sequence[str]] = field(default_factory=dict)
    spoiled: tuple[LogRow, ...] = ()


def read_log(
    path: Path,
    *,
    trainee: str = "",
    unit: Unit | None = None,
    date_order: DateOrder | None = None,
    latest: date | None = None,
) -> LogPreview:
    """Read the log at ``path``; UTF-8 (with mark or without), UTF-16 with mark, else Windows-1252.

    For the options see `read_log_text`. Raises UnreadableLog and OSError.
    """
    size = path.stat().st_size
    if size > MOST_BYTES:
        raise UnreadableLog(
            sentence(
                "{file} is no training log: {size} MB are too many",
                file=path.name,
                size=size // 1_000_000,
            )
        )
    return read_log_text(
        decode(path.read_bytes()), trainee=trainee, unit=unit, date_order=date_order, latest=latest
    )


def decode(data: bytes) -> str:
    """The text of a file; raises UnreadableLog where it is none."""
    if data.startswith((b"\xff\xfe", b"\xfe\xff")):
        encodings: tuple[str, ...] = ("utf-16",)
    else:
        encodings = ("utf-8-sig", "cp1252")
    for encoding in encodings:
        try:
            text = data.decode(encoding)
        except UnicodeDecodeError:
            continue
        if "\0" not in text:
            return text
    raise UnreadableLog(
        sentence("this is no text file: a training log is a table of text in UTF-8")
    )


def read_log_text(
    text: str,
    *,
    trainee: str = "",
    unit: Unit | None = None,
    date_order: DateOrder | None = None,
    latest: date | None = None,
) -> LogPreview:
    """Read a log from its text, whole; see `reading_log`."""
    return finished(reading_log(text, trainee, unit, date_order, latest))


def reading_log(
    text: str,
    trainee: str = "",
    unit: Unit | None = None,
    date_order: DateOrder | None = None,
    latest: date | None = None,
) -> Steps[LogPreview]:
    """Read a log from its text, step by step.

    ``trainee`` and ``unit`` serve lines that name none; ``date_order`` decides what the file
    leaves open; dates after ``latest`` are problems. Raises UnreadableLog where there is no
    heading with a date and an exercise, an activity or a body mass.
    """
    separator = _separator(text)
    records, broken = _records(text, separator)
    if not records.cells:
        raise UnreadableLog(sentence("the file is empty: the first line names the columns"))
    heading, table = records.cells[0], records.after_heading()
    names, remarks = _names(heading)
    _check_heading(names, trainee)
    columns = {name: index for index, name in enumerate(names) if name}
    row_format, mark = _row_format(table, columns, unit)
    days = _Days(table, columns["date"], date_order, latest)
    lines = _Lines(names, LineReader(names, row_format), days, trainee)
    rows: list[LogRow] = []
    spoiled: list[LogRow] = []
    problems = list(broken)
    for start in range(0, len(table.lines), _SLICE):
        yield start / len(table.lines)
        end = start + _SLICE
        for line, cells in zip(table.lines[start:end], table.cells[start:end], strict=True):
            row, wrong = lines.read(line, cells)
            if not wrong:
                rows.append(row)
            elif any(map(str.strip, cells)):
                problems += wrong
                spoiled.append(row)
    return LogPreview(
        rows=tuple(rows),
        problems=tuple(problems),
        remarks=tuple(remarks),
        separator=separator,
        decimal_mark=mark,
        date_order=days.order,
        heading=tuple(cell.strip() for cell in heading),
        cells=dict(zip(table.lines, table.cells, strict=True)),
        spoiled=tuple(spoiled),
    )


def write_back(preview: LogPreview, reasons: dict[int, str], target: Path) -> None:
    """Write the lines named in ``reasons`` to ``target``, as they were, with a column that says
    why each was not taken. What is mended can be imported again.
    """
    names, _ = _names(preview.heading)
    kept = [index for index, name in enumerate(names) if name != PROBLEM_COLUMN]
    with target.open("w", encoding="utf-8-sig", newline="") as stream:
        writer = csv.writer(stream, delimiter=preview.separator, lineterminator="\n")
        writer.writerow([*(preview.heading[index] for index in kept), PROBLEM_COLUMN])
        for line in sorted(reasons):
            if line not in preview.cells:
                continue
            cells = [cell.strip() for cell in preview.cells[line]]
            short = [cells[index] if index < len(cells) else "" for index in kept]
            spilled = cells[len(names) :]
            writer.writerow([*(_harmless(cell) for cell in short), reasons[line], *spilled])


def neutral(text: str) -> str:
    """``text`` so that no spreadsheet takes it for a formula; reading takes the mark off again."""
    return "'" + text if _FORMULA_START.match(text) else text


def _harmless(cell: str) -> str:
    plain = cell.strip().lstrip("+-−").replace(".", "").replace(",", "").replace("/", "")
    return cell if plain.isdigit() or cell.startswith("'") else neutral(cell)


# --- the table ----------------------------------------------------------------------------------


def _separator(text: str) -> str:
    """The separator that splits the first line into the most columns; by default the comma."""
    first = _FIRST_LINE.search(text)
    return max(SEPARATORS, key=first[0].count) if first else SEPARATORS[0]


class _Records(NamedTuple):
    """Records of a table, with the line of the file that each begins in."""

    lines: Sequence[int]
    cells: list[list[str]]

    def after_heading(self) -> _Records:
        """All but the first."""
        return _Records(self.lines[1:], self.cells[1:])


def _records(text: str, separator: str) -> tuple[_Records, list[Problem]]:
    """Records with the line they start in; a broken quotation ends the reading with a problem."""
    with suppress(csv.Error):
        reader = _reader(text, separator)
        read = list(reader)
        if len(read) == reader.line_num and all(map(any, read)):  # a record a line, none blank
            return _Records(range(1, len(read) + 1), read), []
    lines: list[int] = []
    records, reader, line = _Records(lines, []), _reader(text, separator), 1
    try:
        for cells in reader:
            if any(cells):
                lines.append(line)
                records.cells.append(cells)
            line = reader.line_num + 1
    except csv.Error as error:
        return records, [
            Problem(
                line, "", sentence("broken quotation, the rest was not read ({error})", error=error)
            )
        ]
    return records, []


def _reader(text: str, separator: str) -> Any:
    return csv.reader(io.StringIO(text, newline=""), delimiter=separator, strict=True)


def _names(heading: Sequence[str]) -> tuple[list[str], list[str]]:
    """Our name of each column ("" where it is none of ours), and remarks about those."""
    known = (*COLUMNS, PROBLEM_COLUMN)
    names: list[str] = []
    remarks: list[str] = []
    for cell in heading:
        name = re.sub(r"[\s_-]+", "_", cell.strip().casefold()).strip("_")
        if name in known and name not in names:
            names.append(name)
            continue
        names.append("")
        if name in known:
            raise UnreadableLog(
                sentence("the column {cell!r} stands twice in the heading", cell=cell)
            )
        if name:
            near = process.extractOne(name, known, score_cutoff=75)
            remarks.append(
                sentence(
                    "the column {cell!r} is not read; did you mean {near!r}?",
                    cell=cell,
                    near=near[0],
                )
                if near
                else sentence("the column {cell!r} is not read", cell=cell)
            )
    return names, remarks


def _check_heading(names: Sequence[str], trainee: str) -> None:
    missing = [] if "date" in names else ["date"]
    if not trainee and "trainee" not in names:
        missing.append("trainee")
    if not {"exercise", "activity", "body_mass", "effort"} & set(names):
        missing.append("exercise")
    if missing:
        listed = missing[0]
        for another in missing[1:]:
            listed = sentence("{listed} and no {another}", listed=listed, another=another)
        raise UnreadableLog(
            sentence(
                "line 1 must name the columns, and there is no {missing} among them: a log has "
                "the columns {columns}",
                missing=listed,
                columns=", ".join(COLUMNS),
            )
        )


def _row_format(
    table: _Records, columns: dict[str, int], unit: Unit | None
) -> tuple[RowFormat, DecimalMark | None]:
    """The decimal mark that the whole file speaks for: the comma only where one stands that can
    be no thousands, and no point contradicts.
    """
    comma = point = False
    for cell in _cells_in(table, [columns[n] for n in _NUMBER_COLUMNS if n in columns]):
        if "," in cell and _COMMA_NUMBER.fullmatch(cell) and not _COMMA_GROUP.match(cell):
            comma = True
        elif "." in cell and _POINT_NUMBER.fullmatch(cell):
            point = True
    if comma and point:
        return RowFormat(None, mixed=True, unit=unit), None
    mark: DecimalMark | None = "," if comma else None
    return RowFormat(mark, unit=unit), mark or ("." if point else None)


def _cells_in(table: _Records, columns: list[int]) -> Iterator[str]:
    """What stands in these columns, each text once a column."""
    for index in columns:
        try:
            found = set(map(itemgetter(index), table.cells))
        except IndexError:  # a line is shorter
            found = {cells[index] for cells in table.cells if index < len(cells)}
        yield from filter(None, map(str.strip, found))


class _Named(dict[str, str]):
    """Names by cells as written; ``usual`` where a cell is blank."""

    def __init__(self, usual: str) -> None:
        super().__init__()
        self._usual = usual

    def __missing__(self, cell: str) -> str:
        name = self[cell] = without_mark(cell.strip()) or self._usual
        return name


class _Lines:
    """Reads the lines of one log: who, when, and the rest."""

    def __init__(self, names: Sequence[str], reader: LineReader, days: _Days, trainee: str) -> None:
        self._width = len(names)
        self._reader = reader
        self._days = days
        self._trainee = trainee
        self._who = names.index("trainee") if "trainee" in names else None
        self._names = _Named(trainee)
        self._when = names.index("date")

    def read(self, line: int, cells: list[str]) -> tuple[LogRow, list[Problem]]:
        """A line and what is wrong with it."""
        width = self._width
        filled = cells if len(cells) == width else [*cells, *[""] * (width - len(cells))]
        day = self._days[filled[self._when]]
        name = self._trainee if self._who is None else self._names[filled[self._who]]
        known = _EARLIEST if isinstance(day, str) else day
        row, wrong = self._reader.read(line, name, known, filled)
        if name and known is day and len(cells) <= width:
            return row, wrong
        return row, [*self._amiss(line, cells, name, day), *wrong]

    def _amiss(self, line: int, cells: list[str], name: str, day: date | str) -> Iterator[Problem]:
        if any(map(str.strip, cells[self._width :])):
            text = sentence(
                "{cells} cells for {columns} columns: put numbers and texts that hold the "
                "separator into double quotation marks",
                cells=len(cells),
                columns=self._width,
            )
            yield Problem(line, "", text)
        if isinstance(day, str):
            yield Problem(line, "date", day)
        if not name:
            yield Problem(line, "trainee", sentence("who? the line names no trainee"))


# --- dates --------------------------------------------------------------------------------------


class _Days(dict[str, date | str]):
    """Dates by cells as written, or what is wrong with them. Whether the day or the month comes
    first is decided by the whole file.
    """

    def __init__(
        self,
        table: _Records,
        column: int,
        order: DateOrder | None,
        latest: date | None,
    ) -> None:
        super().__init__()
        self._latest = latest
        slashed = [
            match for cell in _cells_in(table, [column]) if (match := _SLASHED.fullmatch(cell))
        ]
        day_first = any(int(match[1]) > 12 for match in slashed)
        month_first = any(int(match[3]) > 12 for match in slashed)
        self._contradiction = order is None and day_first and month_first
        self.order = order
        if order is None and day_first != month_first:
            self.order = "day first" if day_first else "month first"

    def __missing__(self, cell: str) -> date | str:
        found = self[cell] = self._day(without_mark(cell.strip()))
        return found

    def _day(self, text: str) -> date | str:
        """The date, or what is wrong with it."""
        if not text:
            return sentence("no date: write it as 2026-11-30")
        parts = self._parts(text)
        if isinstance(parts, str):
            return parts
        try:
            day = date(*parts)
        except ValueError:
            return sentence("{text} is no day of the calendar", text=text)
        if day < _EARLIEST:
            return sentence("{text} is before {year}", text=text, year=_EARLIEST.year)
        if self._latest is not None and day > self._latest:
            return sentence(
                "{text} lies in the future: dates up to {latest} are taken",
                text=text,
                latest=self._latest,
            )
        return day

    def _parts(self, text: str) -> tuple[int, int, int] | str:
        if match := _ISO.fullmatch(text):
            return int(match[1]), int(match[2]), int(match[3])
        if match := _DOTTED.fullmatch(text):
            return int(match[3]), int(match[2]), int(match[1])
        if _SHORT.fullmatch(text):
            return sentence("{text}: write the year with four digits", text=text)
        match = _SLASHED.fullmatch(text)
        if match is None:
            return sentence("{text!r} is no date: write it as 2026-11-30", text=text)
        first, second, year = int(match[1]), int(match[3]), int(match[4])
        if self._contradiction:
            return sentence(
                "{text}: in this file the day comes first in some dates and the month in others; "
                "write dates as 2026-11-30",
                text=text,
            )
        if self.order is None and first != second:
            return sentence(
                "{text} may be day or month first, and no date of the file tells; say which, or "
                "write dates as 2026-11-30",
                text=text,
            )
        return (year, first, second) if self.order == "month first" else (year, second, first)
