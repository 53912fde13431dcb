"""Tables of figures, written as a spreadsheet with every cell as what it is, or as text.

Text stays text whatever it begins with: no formula, no link is ever made of it.
"""

from __future__ import annotations

import csv
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from pathlib import Path
from typing import Any, Final

from db.files import replacing
from db.log_files import neutral

Cell = str | int | float | date | None

_WIDEST: Final = 32
_MOST_NAMED: Final = 31
_FORBIDDEN: Final = str.maketrans(dict.fromkeys("[]:*?/\\'", " "))


@dataclass(frozen=True, slots=True)
class BookTable:
    """One sheet of a workbook: its name, the words of its columns, its rows."""

    name: str
    columns: tuple[str, ...]
    rows: tuple[tuple[Cell, ...], ...]


def write_book(tables: Sequence[BookTable], target: Path) -> None:
    """Write ``tables`` as the sheets of a workbook (.xlsx).

    What stood at ``target`` stays whole until the new file is complete. Raises CannotWrite.
    """
    import xlsxwriter  # only where a spreadsheet is wanted

    options = {
        "strings_to_formulas": False,
        "strings_to_urls": False,
        "strings_to_numbers": False,
        "default_date_format": "yyyy-mm-dd",
    }
    with replacing(target) as unfinished:
        book: Any = xlsxwriter.Workbook(str(unfinished), options)
        bold = book.add_format({"bold": True})
        taken: set[str] = set()
        for table in tables:
            sheet = book.add_worksheet(_sheet_name(table.name, taken))
            for place, word in enumerate(table.columns):
                sheet.write_string(0, place, word, bold)
            for line, row in enumerate(table.rows, start=1):
                for place, cell in enumerate(row):
                    _write(sheet, line, place, cell)
            sheet.freeze_panes(1, 0)
            for place, word in enumerate(table.columns):
                texts = [str(row[place]) for row in table.rows[:100] if row[place] is not None]
                sheet.set_column(place, place, min(max(map(len, [word, *texts])) + 2, _WIDEST))
        book.close()


def write_table(table: BookTable, target: Path) -> None:
    """Write ``table`` as text: UTF-8 with a mark at the beginning, commas, decimal points and ISO
    dates, whatever the locale.

    What stood at ``target`` stays whole until the new file is complete. Raises CannotWrite.
    """
    with (
        replacing(target) as unfinished,
        unfinished.open("w", encoding="utf-8-sig", newline="") as stream,
    ):
        lines = csv.writer(stream, lineterminator="\n")
        lines.writerow(table.columns)
        lines.writerows([_as_text(cell) for cell in row] for row in table.rows)


def _as_text(cell: Cell) -> str:
    if cell is None:
        return ""
    if isinstance(cell, date):
        return cell.isoformat()
    return neutral(cell) if isinstance(cell, str) else f"{cell:.12g}"


def _write(sheet: Any, line: int, place: int, cell: Cell) -> None:
    if cell is None:
        return
    if isinstance(cell, str):
        sheet.write_string(line, place, cell)
    elif isinstance(cell, date):
        sheet.write_datetime(line, place, cell)
    else:
        sheet.write_number(line, place, cell)


def _sheet_name(wanted: str, taken: set[str]) -> str:
    """A name that a workbook takes and that is not used yet."""
    name = " ".join(wanted.translate(_FORBIDDEN).split())[:_MOST_NAMED] or "Sheet"
    number = 2
    base = name
    while name.casefold() in taken:
        name = f"{base[: _MOST_NAMED - 4]} {number}"
        number += 1
    taken.add(name.casefold())
    return name
