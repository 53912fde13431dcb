"""Printed sheets: where things lie on paper, the file, the printer, the ink."""

from __future__ import annotations

import os
import re
import subprocess
import sys
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import QLocale, QRectF
from PySide6.QtGui import QColor

from desktop.training.session import AskedSet
from tests.paper_pictures import page_image
from tests.sheet_plans import (
    L_SIT,
    POUNDS,
    PUSH_UP,
    ROW,
    SQUAT,
    TRAINEE,
    asked,
    exercise,
    full_slot,
    plan,
    slot,
)
from views.paper import Paper, usual_paper
from views.sheet_layout import page_size
from views.sheet_parts import Box, Disc, Page, Part, Strip, Text
from views.sheet_type import Density, Role, SheetType, mm
from views.sheets import (
    SheetError,
    make_sheet,
    print_sheet,
    set_paper,
    write_pdf,
    write_sheet,
)

pytestmark = pytest.mark.usefixtures("qapp", "english")

ROOT = Path(__file__).resolve().parent.parent
LONG = exercise("Kreuzhebengewichtsreduktionsvorbereitungsmaßnahme mit Trap-Stange " * 3)
RISING = tuple(AskedSet(100_000 + 12_340 * n, 10 - n) for n in range(7))
PAIR = [replace(one, slot=replace(one.slot, pair="a")) for one in (full_slot(), full_slot(ROW))]

PLANS = {
    "one slot": plan(full_slot()),
    "six slots": plan(*[full_slot()] * 6),
    "fourteen slots": plan(*[full_slot()] * 14),
    "pairs": plan(*[full_slot()] * 4, *PAIR, full_slot()),
    "many unlike sets": plan(slot(SQUAT, RISING), trainee=POUNDS),
    "ten sets": plan(slot(PUSH_UP, asked(10, 0)), slot(L_SIT, asked(4, 0, reps=None, seconds=20))),
    "long names": plan(
        replace(full_slot(LONG), exercise=LONG),
        trainee=replace(TRAINEE, name="Maximiliane-Alexandrina von und zu Hinterwaldhausen " * 2),
    ),
    "one held": plan(full_slot(), slot(sets=())),
}


def parts_of(page: Page) -> Iterator[tuple[Part, QRectF]]:
    """Every part of a page and where it lies on it."""
    for placed in page.blocks:
        for part in placed.block.parts:
            match part:
                case Text() | Box() | Disc():
                    yield part, part.rect.translated(placed.at)
                case Strip():
                    yield part, QRectF(part.at + placed.at, part.layout.size)
                case _:
                    continue


def texts_of(page: Page) -> list[str]:
    return [part.text for part, _ in parts_of(page) if isinstance(part, Text)]


@pytest.mark.parametrize("paper", Paper)
@pytest.mark.parametrize("name", PLANS)
def test_everything_lies_on_the_paper_and_boxes_hold_a_pencil(name: str, paper: Paper) -> None:
    sheet = make_sheet(PLANS[name], paper)
    size = page_size(paper)
    inside = QRectF(mm(5), mm(5), size.width() - mm(10), size.height() - mm(10))
    for page in sheet.pages:
        boxes = []
        for part, rect in parts_of(page):
            assert inside.contains(rect), part
            if isinstance(part, Box):
                assert rect.width() >= mm(9)
                assert rect.height() >= mm(8)
                boxes.append(rect.adjusted(1, 1, -1, -1))
        for place, box in enumerate(boxes):
            assert not any(box.intersects(other) for other in boxes[place + 1 :])


@pytest.mark.parametrize("name", PLANS)
def test_texts_boxes_and_strips_keep_clear_of_each_other(name: str) -> None:
    sheet = make_sheet(PLANS[name], Paper.A4)
    for page in sheet.pages:
        inked = [
            rect.adjusted(2, 3, -2, -3)
            if not isinstance(part, Text)
            else _inked(part, rect, sheet.type).adjusted(2, 3, -2, -3)
            for part, rect in parts_of(page)
            if not isinstance(part, Disc)
        ]
        for place, one in enumerate(inked):
            assert not any(one.intersects(other) for other in inked[place + 1 :])


def _inked(part: Text, rect: QRectF, type_: SheetType) -> QRectF:
    wide = type_.width(part.text, part.role)
    left = rect.right() - wide if part.right else rect.left()
    return QRectF(left, rect.top(), wide, rect.height())


@pytest.mark.parametrize("name", PLANS)
def test_nothing_that_is_asked_is_ever_cut(name: str) -> None:
    sheet = make_sheet(PLANS[name], Paper.A4)
    for page in sheet.pages:
        for part, rect in parts_of(page):
            if isinstance(part, Text) and part.role in (Role.ASKED, Role.HOW, Role.SET):
                assert "…" not in part.text
                assert sheet.type.width(part.text, part.role) <= rect.width() + 1, part.text


def test_every_page_has_the_head_the_caution_and_its_number() -> None:
    sheet = make_sheet(PLANS["fourteen slots"], Paper.A4)
    count = len(sheet.pages)
    assert count > 1
    for number, page in enumerate(sheet.pages, start=1):
        texts = texts_of(page)
        assert "Seat 2" in texts
        assert "Thursday, 26 November 2026" in texts
        assert f"page {number} of {count}" in texts
        assert any("Chest pain" in text or "stop and seek" in text for text in texts)


def test_no_slot_is_left_out_or_broken() -> None:
    sheet = make_sheet(PLANS["fourteen slots"], Paper.LETTER)
    numbers = [
        [
            part.text
            for part, _ in parts_of(page)
            if isinstance(part, Text) and part.role is Role.NAME
        ]
        for page in sheet.pages
    ]
    found = [text for page in numbers for text in page if text.isdigit()]
    assert found == [str(number) for number in range(1, 15)]


def test_boxes_for_the_session_come_once_at_the_end() -> None:
    sheet = make_sheet(PLANS["fourteen slots"], Paper.A4)
    captions = [
        [part.caption for part, _ in parts_of(page) if isinstance(part, Box)]
        for page in sheet.pages
    ]
    assert [("effort 0-10" in page) for page in captions] == [False] * (len(captions) - 1) + [True]
    assert captions[-1].count("minutes") == 1


def test_slots_done_in_turn_stay_on_one_page() -> None:
    sheet = make_sheet(PLANS["pairs"], Paper.LETTER)
    where = {
        text: number
        for number, page in enumerate(sheet.pages)
        for text in texts_of(page)
        if text in ("A1", "A2")
    }
    assert where["A1"] == where["A2"]


def test_six_slots_fit_on_one_page_and_few_are_set_larger() -> None:
    six = make_sheet(PLANS["six slots"], Paper.A4)
    assert len(six.pages) == 1
    one = make_sheet(PLANS["one slot"], Paper.A4)
    assert one.type.density is Density.LARGE
    assert six.type.density.box >= mm(8)


def test_what_is_asked_can_be_read_from_a_metre() -> None:
    """Capitals of 3 mm and more even where a sheet is set close (20/20 reads 1.5 mm at 1 m)."""
    for density in Density:
        type_ = SheetType(density)
        assert type_.metrics(Role.ASKED).capHeight() >= mm(3)


def test_long_text_is_wrapped_and_a_long_word_broken() -> None:
    type_ = SheetType()
    lines = type_.wrapped("a" * 200, Role.BODY, mm(40), 3)
    assert len(lines) == 3
    assert lines[-1].endswith("…")
    assert all(type_.width(line, Role.BODY) <= mm(40) for line in lines)
    assert type_.wrapped("short", Role.BODY, mm(40), 1) == ("short",)
    assert "".join(type_.wrapped("🏋 " * 30, Role.BODY, mm(30), 9)).count("🏋") == 30


@pytest.mark.parametrize(
    ("locale", "paper"),
    [("en_GB", Paper.A4), ("de_DE", Paper.A4), ("en_US", Paper.LETTER), ("fr_CA", Paper.LETTER)],
)
def test_the_paper_is_the_country_s(locale: str, paper: Paper) -> None:
    assert usual_paper(QLocale(locale)) is paper


@pytest.mark.parametrize(("paper", "box"), [(Paper.A4, "595 842"), (Paper.LETTER, "612 792")])
def test_the_file_has_its_pages_its_paper_and_its_fonts_inside(
    tmp_path: Path, paper: Paper, box: str
) -> None:
    path = tmp_path / "sheet.pdf"
    count = write_pdf(PLANS["fourteen slots"], path, paper)
    data = path.read_bytes()
    assert data.startswith(b"%PDF-")
    assert len(re.findall(rb"/Type /Page\b(?!s)", data)) == count
    boxes = set(re.findall(rb"/MediaBox \[0 0 (\d+)[.\d]* (\d+)[.\d]*\]", data))
    assert {b" ".join(one).decode() for one in boxes} == {box}
    fonts = data.count(b"/Type /FontDescriptor")
    assert fonts >= 2
    assert len(re.findall(rb"/FontFile[23]? \d+ 0 R", data)) == fonts


def test_a_refused_sheet_leaves_the_old_file_alone(tmp_path: Path) -> None:
    path = tmp_path / "sheet.pdf"
    path.write_text("old")
    with pytest.raises(SheetError):
        write_pdf(plan(), path)
    assert path.read_text() == "old"
    with pytest.raises(SheetError, match="cannot be written"):
        write_pdf(PLANS["one slot"], tmp_path / "nowhere" / "sheet.pdf")


def test_paper_is_black_on_white_whatever_the_screen_looks_like() -> None:
    image = page_image(make_sheet(PLANS["six slots"], Paper.A4), 0, 50)
    assert image.pixelColor(0, 0) == QColor("white")
    shades = {
        image.pixel(x, y) for x in range(0, image.width(), 3) for y in range(0, image.height(), 3)
    }
    for shade in shades:
        colour = QColor(shade)
        assert (
            max(colour.red(), colour.green(), colour.blue())
            - min(colour.red(), colour.green(), colour.blue())
            == 0
        )
    assert min(QColor(shade).lightness() for shade in shades) < 60


def test_every_page_has_ink_in_every_picture() -> None:
    sheet = make_sheet(PLANS["fourteen slots"], Paper.A4)
    for page in range(len(sheet.pages)):
        image = page_image(sheet, page, 20)
        dark = [
            (x, y)
            for x in range(image.width())
            for y in range(image.height())
            if QColor(image.pixel(x, y)).lightness() < 120
        ]
        assert len(dark) > 100


def test_lines_break_alike_whatever_the_screen(tmp_path: Path) -> None:
    before = make_sheet(PLANS["long names"], Paper.A4)
    write_sheet(before, tmp_path / "sheet.pdf")
    page_image(before, 0, 300)
    after = make_sheet(PLANS["long names"], Paper.A4)
    assert [texts_of(page) for page in before.pages] == [texts_of(page) for page in after.pages]


def test_a_printer_takes_all_pages_or_those_chosen(tmp_path: Path) -> None:
    from PySide6.QtPrintSupport import QPrinter

    sheet = make_sheet(PLANS["fourteen slots"], Paper.A4)
    for chosen, count in (((1, 0), len(sheet.pages)), ((2, 2), 1)):
        path = tmp_path / f"{count}.pdf"
        printer = QPrinter(QPrinter.PrinterMode.HighResolution)
        printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
        printer.setOutputFileName(str(path))
        set_paper(printer, sheet.paper)
        assert print_sheet(sheet, printer, *chosen)
        assert len(re.findall(rb"/Type /Page\b(?!s)", path.read_bytes())) == count


def test_a_sheet_is_written_without_screen_and_window(tmp_path: Path) -> None:
    path = tmp_path / "sheet.pdf"
    bare = {
        name: value
        for name, value in os.environ.items()
        if name not in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM")
    }
    made = subprocess.run(
        [
            sys.executable,
            "-W",
            "error",
            "-c",
            "import sys\nfrom pathlib import Path\nfrom tests.sheet_plans import full_slot, plan\n"
            "from views.sheets import write_pdf\n"
            f"for _ in range(2): assert write_pdf(plan(full_slot()), Path({str(path)!r})) == 1\n"
            "assert 'views.main_window' not in sys.modules",
        ],
        cwd=ROOT,
        env={**bare, "PYTHONPATH": str(ROOT)},
        capture_output=True,
        text=True,
        timeout=60,
        check=False,
    )
    assert made.returncode == 0, made.stderr
    assert path.read_bytes().startswith(b"%PDF-")
