"""Files of numbers: the tables behind a picture as text, or several as one workbook."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

from db.books import BookTable as BookTable
from db.books import write_book, write_table


def write_numbers(table: BookTable, target: Path) -> None:
    """Write one table as text (CSV). Raises CannotWrite."""
    write_table(table, target)


def write_workbook(tables: Sequence[BookTable], target: Path) -> None:
    """Write each table as a sheet of a workbook (.xlsx). Raises CannotWrite."""
    write_book(tables, target)
