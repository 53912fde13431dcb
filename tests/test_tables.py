"""Tables of any origin: what is read of them, what is refused, and nothing executed."""

from __future__ import annotations

import csv
import zipfile
from datetime import date, datetime, time
from pathlib import Path

import pytest
import xlsxwriter
from hypothesis import given
from hypothesis import strategies as st

from db.steps import finished
from db.tables import (
    MOST_LETTERS,
    Figure,
    Table,
    UnreadableTable,
    hand_back,
    reading_of,
    vote_for_separator,
)


def read_table(path: Path, sheet: str = "") -> Table:
    return finished(reading_of(path, sheet))


def written(path: Path, *rows: list[object], **options: object) -> Path:
    """A workbook with these rows."""
    book = xlsxwriter.Workbook(str(path), {"default_date_format": "dd/mm/yyyy", **options})
    book.set_properties({"created": datetime(2026, 1, 1)})
    sheet = book.add_worksheet("Log")
    for place, row in enumerate(rows):
        for column, value in enumerate(row):
            if isinstance(value, datetime):
                sheet.write_datetime(place, column, value)
            elif value is not None:
                sheet.write(place, column, value)
    book.close()
    return path


def cells(path: Path) -> list[tuple[str, ...]]:
    return [line.cells for line in read_table(path).lines]


@pytest.mark.parametrize(
    ("text", "separator"),
    [
        ("a,b,c\n1,2,3\n", ","),
        ("a;b;c\n1,5;2,5;3\n2,5;1;4,5\n", ";"),
        ("a\tb\n1,5\t2\n3,5\t4\n", "\t"),
        ('day;note\n2026-11-23;"a, b, c, d"\n2026-11-24;"e, f"\n', ";"),
        ("Log of the winter\ndate;exercise;reps\n2026-11-23;squat;5\n", ";"),
        ("just words\n", ","),
    ],
)
def test_the_lines_vote_for_their_separator(text: str, separator: str) -> None:
    assert vote_for_separator(text) == separator


@pytest.mark.parametrize("encoding", ["utf-8", "utf-8-sig", "utf-16", "cp1252"])
def test_text_is_read_in_every_usual_encoding(tmp_path: Path, encoding: str) -> None:
    path = tmp_path / "log.csv"
    path.write_bytes("Datum;Übung\r\n23.11.2026;Bankdrücken\r\n".encode(encoding))
    assert cells(path) == [("Datum", "Übung"), ("23.11.2026", "Bankdrücken")]


def test_blank_lines_are_passed_over_and_lines_keep_their_numbers(tmp_path: Path) -> None:
    path = tmp_path / "log.csv"
    path.write_text('a,b\n\n,\n1,"two\nlines"\n3,4\n')
    table = read_table(path)
    assert [line.number for line in table.lines] == [1, 4, 6]


def test_a_broken_quotation_ends_the_reading_with_a_remark(tmp_path: Path) -> None:
    path = tmp_path / "log.csv"
    path.write_text('a,b\n1,2\n"3,4\n')
    table = read_table(path)
    assert len(table.lines) == 2
    assert "quotation" in table.remarks[0]


def test_a_workbook_gives_values_as_they_are_shown(tmp_path: Path) -> None:
    path = written(
        tmp_path / "log.xlsx",
        ["day", "load", "reps", "hold", "ok", None, "sum"],
        [datetime(2026, 11, 23), 62.5, 5, 0.1 + 0.2, True],
        [],
        ["2026-11-24", "60,5", "5/5/4"],
    )
    table = read_table(path)
    assert table.sheets == ("Log",)
    assert [line.number for line in table.lines] == [1, 2, 4]
    first = table.lines[1].cells
    assert first == ("2026-11-23", "62.5", "5", "0.3", "yes")
    assert isinstance(first[1], Figure)
    assert not isinstance(table.lines[2].cells[1], Figure)


def test_a_workbook_that_counts_days_from_1904_says_so(tmp_path: Path) -> None:
    path = written(tmp_path / "log.xlsx", ["day"], [datetime(2026, 11, 23)], date_1904=True)
    table = read_table(path)
    assert table.lines[1].cells == ("2026-11-23",)
    assert table.day_zero == date(1904, 1, 1)


def test_times_are_minutes_and_seconds(tmp_path: Path) -> None:
    path = tmp_path / "log.xlsx"
    book = xlsxwriter.Workbook(str(path))
    sheet = book.add_worksheet()
    sheet.write(0, 0, "hold")
    sheet.write_datetime(1, 0, time(0, 30), book.add_format({"num_format": "hh:mm"}))
    book.close()
    assert cells(path)[1] == ("00:30",)


def test_formulas_give_what_was_stored_and_are_never_computed(tmp_path: Path) -> None:
    path = tmp_path / "log.xlsx"
    book = xlsxwriter.Workbook(str(path))
    sheet = book.add_worksheet()
    sheet.write_row(0, 0, ["load", "reps"])
    sheet.write_formula(1, 0, "=50+10", value=60)
    sheet.write(1, 1, 5)
    book.close()
    assert cells(path)[1] == ("60", "5")


def test_the_first_sheet_with_lines_is_read_and_another_can_be_chosen(tmp_path: Path) -> None:
    path = tmp_path / "log.xlsx"
    book = xlsxwriter.Workbook(str(path))
    book.add_worksheet("Cover").write(0, 0, "My winter")
    for name in ("November", "December"):
        sheet = book.add_worksheet(name)
        sheet.write_row(0, 0, ["date", "reps"])
        sheet.write_row(1, 0, [name, 5])
    book.close()
    table = read_table(path)
    assert (table.sheet, table.sheets) == ("November", ("Cover", "November", "December"))
    assert read_table(path, "December").lines[1].cells == ("December", "5")


def bomb(path: Path, size: int) -> Path:
    with zipfile.ZipFile(path, "w", zipfile.ZIP_DEFLATED) as archive:
        archive.writestr("[Content_Types].xml", "<Types/>")
        with archive.open("xl/worksheets/sheet1.xml", "w", force_zip64=True) as stream:
            for _ in range(size // 1_000_000):
                stream.write(b" " * 1_000_000)
    return path


def test_an_archive_that_unpacks_without_bound_is_refused_before_it_is_unpacked(
    tmp_path: Path,
) -> None:
    with pytest.raises(UnreadableTable, match="unpacks to 30 MB"):
        read_table(bomb(tmp_path / "bomb.xlsx", 30_000_000))


def test_a_workbook_with_declarations_is_refused(tmp_path: Path) -> None:
    path = tmp_path / "log.xlsx"
    with zipfile.ZipFile(path, "w") as archive:
        archive.writestr("[Content_Types].xml", "<Types/>")
        archive.writestr(
            "xl/workbook.xml", '<?xml version="1.0"?><!DOCTYPE a [<!ENTITY b "bb">]><a>&b;</a>'
        )
    with pytest.raises(UnreadableTable, match="declarations"):
        read_table(path)


@pytest.mark.parametrize(
    ("name", "data", "said"),
    [
        ("old.xls", b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1" + b"\0" * 600, "old kind"),
        ("cut.xlsx", b"PK\x03\x04 and no more", "no workbook"),
        ("picture.png", b"\x89PNG\r\n\x1a\n\0\0\0\rIHDR", "neither text"),
        ("empty.csv", b"", "empty"),
        ("blank.csv", b"\n\n;;\n", "empty"),
        ("wide.csv", b"a," * 300 + b"\n", "200"),
        ("long.csv", b"a,b\n" + b"x" * (MOST_LETTERS + 1) + b",2\n", "letters"),
    ],
)
def test_what_is_no_table_is_refused_with_a_sentence(
    tmp_path: Path, name: str, data: bytes, said: str
) -> None:
    path = tmp_path / name
    path.write_bytes(data)
    with pytest.raises(UnreadableTable, match=said):
        read_table(path)


def test_another_archive_is_no_workbook(tmp_path: Path) -> None:
    path = tmp_path / "photos.zip"
    with zipfile.ZipFile(path, "w") as archive:
        archive.writestr("one.txt", "1")
    with pytest.raises(UnreadableTable, match="not a workbook"):
        read_table(path)


def is_read_or_refused(path: Path) -> bool:
    """Whether there is a table with something in every line, or a sentence that says why not."""
    try:
        table = read_table(path)
    except UnreadableTable as refused:
        return bool(str(refused))
    return all(any(line.cells) for line in table.lines)


@given(st.binary(max_size=300))
def test_no_bytes_break_the_reading(tmp_path_factory: pytest.TempPathFactory, data: bytes) -> None:
    for start in (b"", b"PK\x03\x04", b"\xef\xbb\xbf"):
        path = tmp_path_factory.getbasetemp() / "fuzz.any"
        path.write_bytes(start + data)
        assert is_read_or_refused(path)


@given(st.integers(0, 4000), st.integers(0, 255))
def test_a_damaged_workbook_is_refused_or_read_and_nothing_else(
    tmp_path_factory: pytest.TempPathFactory, at: int, byte: int
) -> None:
    path = tmp_path_factory.getbasetemp() / "damaged.xlsx"
    whole = written(path, ["date", "reps"], ["2026-11-23", 5]).read_bytes()
    at %= len(whole)
    path.write_bytes(whole[:at] + bytes([byte]) + whole[at + 1 :])
    assert is_read_or_refused(path)


def test_lines_are_handed_back_as_they_were_with_the_reason(tmp_path: Path) -> None:
    target = tmp_path / "back.csv"
    lines = [(("2026-11-23", "=cmd", "-5"), "which exercise?"), (("x",), "no date")]
    assert hand_back(("date", "exercise", "load", "Problem"), lines, target, ";") == 2
    with target.open(encoding="utf-8-sig", newline="") as stream:
        read = list(csv.reader(stream, delimiter=";"))
    assert read == [
        ["date", "exercise", "load", "problem"],
        ["2026-11-23", "'=cmd", "-5", "which exercise?"],
        ["x", "", "", "no date"],
    ]
