"""The sheet of a group: everybody of a day side by side, in the order of typing."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import closing
from dataclasses import replace
from datetime import timedelta
from pathlib import Path

import pytest
from PySide6.QtCore import QRectF
from PySide6.QtGui import QColor

from db.repository import Repository
from desktop.planning.groups import group_plans
from desktop.planning.session_days import due_next
from tests.paper_pictures import page_image
from tests.scenario import TODAY, open_club
from tests.sheet_plans import TRAINEE, full_slot, plan, slot
from views.paper import Paper
from views.sheet_layout import page_size
from views.sheet_parts import Box, Page, Sheet, Text
from views.sheet_type import mm
from views.sheets import SheetError, make_group_sheet, write_group_pdf

pytestmark = pytest.mark.usefixtures("qapp", "english")

DAY = plan().day
GROUPS = {
    "two": (3, 2),
    "four": (6, 6, 6, 6),
    "seven": (2, 3, 4, 2, 3, 4, 2),
    "many slots": (14, 2),
}


def group(sizes: tuple[int, ...]) -> Sheet:
    plans = [
        replace(plan(*[full_slot()] * count), trainee=replace(TRAINEE, name=f"Seat {number}"))
        for number, count in enumerate(sizes, start=1)
    ]
    return make_group_sheet(plans, DAY, Paper.A4)


def rects(page: Page) -> Iterator[tuple[Text | Box, QRectF]]:
    for placed in page.blocks:
        for part in placed.block.parts:
            if isinstance(part, Text | Box):
                yield part, part.rect.translated(placed.at)


@pytest.mark.parametrize("name", GROUPS)
def test_everything_lies_on_the_paper_and_boxes_hold_a_pencil(name: str) -> None:
    sheet = group(GROUPS[name])
    size = page_size(Paper.A4)
    inside = QRectF(mm(5), mm(5), size.width() - mm(10), size.height() - mm(10))
    for page in sheet.pages:
        boxes = []
        for part, rect in rects(page):
            assert inside.contains(rect), part
            if isinstance(part, Box):
                assert rect.width() >= mm(9)
                assert rect.height() >= mm(8)
                boxes.append(rect.adjusted(1, 1, -1, -1))
        for place, box in enumerate(boxes):
            assert not any(box.intersects(other) for other in boxes[place + 1 :])


def test_four_trainees_with_six_exercises_stand_on_one_page() -> None:
    assert len(group(GROUPS["four"]).pages) == 1


def test_everybody_is_named_in_the_order_of_typing(tmp_path: Path) -> None:
    with closing(open_club(tmp_path).database) as database:
        repository = Repository(database)
        day = TODAY + timedelta(days=4)  # a Monday
        plans = group_plans(repository, day)
        names = [each.trainee.name for each in plans]
        assert names == ["Bow", "Seat 2"]
        first = due_next(repository, day, None)
        assert first is not None
        following = due_next(repository, day, first.id)
        assert following is not None
        assert [first.name, following.name] == names
        sheet = make_group_sheet(plans, day, Paper.A4)
        said = sheet.spoken.splitlines()
        assert [line[:5] for line in said[1:]] == ["1 Bow", "2 Sea"]


def test_who_is_held_is_told_why_and_nobody_at_all_is_an_error() -> None:
    held = replace(plan(slot(sets=())), trainee=replace(TRAINEE, name="Cox"))
    sheet = make_group_sheet([plan(full_slot()), held], DAY, Paper.A4)
    assert any("Cox" in part.text for part, _ in rects(sheet.pages[0]) if isinstance(part, Text))
    with pytest.raises(SheetError, match="Nobody is asked anything"):
        make_group_sheet([held], DAY, Paper.A4)


def test_the_file_has_as_many_pages_and_the_picture_has_ink(tmp_path: Path) -> None:
    sheet = group(GROUPS["two"])
    image = page_image(sheet, 0, 50)
    white = QColor("white").rgb()
    assert any(image.pixel(x, y) != white for x in range(0, image.width(), 3) for y in (30, 60, 90))
    path = tmp_path / "group.pdf"
    assert write_group_pdf([plan(full_slot())], DAY, path) == 1
    assert path.read_bytes().startswith(b"%PDF")
