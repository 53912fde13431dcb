"""Pages of a printed sheet: the head on every one, slots that are never broken, the foot."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from PySide6.QtCore import QPointF, QRectF, QSizeF

from views import words
from views.paper import Paper
from views.sheet_parts import Block, Box, Line, Page, Part, PlacedBlock, Sheet, Text
from views.sheet_texts import SheetText, sheet_aloud, translate
from views.sheet_type import Density, Role, SheetType, mm
from views.slot_layout import columns_for, lay_out_slot

SIDE: Final = mm(11)
EDGE: Final = mm(10)
_LEAST_BOX: Final = mm(15)
_LEAST_NOTE: Final = mm(25)
_GAP: Final = mm(1.2)


def lay_out_sheet(text: SheetText, paper: Paper) -> Sheet:
    """The sheet on as few pages as can be, as large as they hold. Needs a QGuiApplication."""
    made = [_laid_out(text, paper, density) for density in Density]
    return min(made, key=lambda sheet: len(sheet.pages))


def page_size(paper: Paper) -> QSizeF:
    """The size of a page on the sheet's grid."""
    return QSizeF(mm(paper.width_mm), mm(paper.height_mm))


def _laid_out(text: SheetText, paper: Paper, density: Density) -> Sheet:
    type_ = SheetType(density)
    size = page_size(paper)
    width = size.width() - 2 * SIDE
    columns = columns_for(text.slots, width)
    blocks = [lay_out_slot(slot, columns, type_, text.unit) for slot in text.slots]
    blocks.append(_afterwards(text, width, type_))
    head = _head(text, width, type_)
    caution = type_.wrapped(text.caution, Role.SMALL, width - mm(24), 4)
    foot_top = size.height() - EDGE - len(caution) * type_.line_height(Role.SMALL)
    room = foot_top - mm(1.5) - EDGE - head.height
    flows = flow(blocks, room)
    pages = tuple(
        Page(
            (
                PlacedBlock(QPointF(SIDE, EDGE), head),
                *stacked(flow, EDGE + head.height),
                PlacedBlock(
                    QPointF(SIDE, foot_top), foot(caution, width, number, len(flows), type_)
                ),
            )
        )
        for number, flow in enumerate(flows, start=1)
    )
    title = f"{text.trainee}, {text.day}"
    return Sheet(paper, type_, pages, title, sheet_aloud(text))


def flow(blocks: Sequence[Block], room: float) -> list[list[Block]]:
    """Blocks on pages, in order. What does not fit begins the next page; slots done in turn stay
    on one page where it holds them.
    """
    pages: list[list[Block]] = [[]]
    left = room
    for group in _groups(blocks):
        together = sum(block.height for block in group)
        if together > left and together <= room and pages[-1]:
            pages.append([])
            left = room
        for block in group:
            if block.height > left and pages[-1]:
                pages.append([])
                left = room
            pages[-1].append(block)
            left -= block.height
    return pages


def _groups(blocks: Sequence[Block]) -> list[list[Block]]:
    groups: list[list[Block]] = []
    for block in blocks:
        if groups and block.pair and groups[-1][-1].pair == block.pair:
            groups[-1].append(block)
        else:
            groups.append([block])
    return groups


def stacked(blocks: Sequence[Block], top: float) -> list[PlacedBlock]:
    placed: list[PlacedBlock] = []
    y = top
    for place, block in enumerate(blocks):
        placed.append(PlacedBlock(QPointF(SIDE, y), block))
        after = blocks[place + 1] if place + 1 < len(blocks) else None
        if block.pair and after is not None and after.pair == block.pair:
            placed.append(PlacedBlock(QPointF(SIDE, y), _tie(block, after)))
        y += block.height
    return placed


def _tie(first: Block, second: Block) -> Block:
    """A line in the margin that ties two slots done in turn."""
    x, inset = -mm(2.5), mm(2)
    line = Line(QPointF(x, inset), QPointF(x, first.height + second.height - inset), strong=True)
    return Block(0, (line,))


def _head(text: SheetText, width: float, type_: SheetType) -> Block:
    """Who and when, and what the day belongs to."""
    tall, low = type_.line_height(Role.TRAINEE), type_.line_height(Role.DAY)
    day_width = type_.width(text.day, Role.DAY)
    baseline = type_.metrics(Role.TRAINEE).ascent() - type_.metrics(Role.DAY).ascent()
    parts: list[Part] = [Text(QRectF(0, baseline, width, low), text.day, Role.DAY, right=True)]
    y = 0.0
    for name in type_.wrapped(text.trainee, Role.TRAINEE, width - day_width - mm(6), 2):
        parts.append(Text(QRectF(0, y, width, tall), name, Role.TRAINEE))
        y += tall
    minutes_width = type_.width(text.minutes, Role.HOW) + mm(4) if text.minutes else 0.0
    height = type_.line_height(Role.HOW)
    if text.minutes:
        parts.append(Text(QRectF(0, y, width, height), text.minutes, Role.HOW, True, right=True))
    for line in type_.wrapped(text.belongs_to, Role.HOW, width - minutes_width, 2):
        parts.append(Text(QRectF(0, y, width, height), line, Role.HOW, quiet=True))
        y += height
    y += mm(1.6)
    parts.append(Line(QPointF(0, y), QPointF(width, y), strong=True))
    return Block(y, tuple(parts))


def _afterwards(text: SheetText, width: float, type_: SheetType) -> Block:
    """Boxes of the whole session, and what the boxes above mean."""
    y, tall = mm(2.5), type_.density.box
    parts: list[Part] = []
    left = 0.0
    *captions, _note = text.afterwards
    most = (width - _LEAST_NOTE) / len(captions) - _GAP
    for caption in captions:
        needed = type_.width(caption, Role.CAPTION) + mm(1.6)
        wide = min(most, max(_LEAST_BOX, needed))
        parts.append(Box(QRectF(left, y, wide, tall), caption))
        left += wide + _GAP
    parts.append(Box(QRectF(left, y, width - left, tall), text.afterwards[-1]))
    y += tall + mm(1)
    height = type_.line_height(Role.SMALL)
    for line in type_.wrapped(text.legend, Role.SMALL, width, 3):
        parts.append(Text(QRectF(0, y, width, height), line, Role.SMALL, quiet=True))
        y += height
    return Block(y, tuple(parts))


def foot(caution: Sequence[str], width: float, number: int, count: int, type_: SheetType) -> Block:
    height = type_.line_height(Role.SMALL)
    parts: list[Part] = [
        Text(QRectF(0, place * height, width, height), line, Role.SMALL)
        for place, line in enumerate(caution)
    ]
    said = translate("Sheet", "page {number} of {count}")
    text = said.format(number=words.number(number), count=words.number(count))
    last = QRectF(0, (len(caution) - 1) * height, width, height)
    parts.append(Text(last, text, Role.SMALL, right=True))
    return Block(height * len(caution), tuple(parts))
