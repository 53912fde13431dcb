"""Where the parts of one slot lie on the printed sheet: what to do at the left, boxes beside it."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from typing import Final

from PySide6.QtCore import QPointF, QRectF, QSizeF

from desktop.training.quantities import Unit
from views.loading_texts import DiscText
from views.sheet_parts import Block, Box, Disc, Line, Part, Sleeve, Strip, Text
from views.sheet_type import Role, SheetType, mm
from views.slot_texts import SlotText
from views.strip_layout import StripLayout, fitted

GUTTER: Final = mm(9.5)
CELL_WIDTHS: Final = (mm(22), mm(19), mm(18.4))  # of 3, 4 and 5 sets side by side
CELL_GAP: Final = mm(2)
COLUMN_GAP: Final = mm(5)
LEAST_COLUMNS: Final = 3
MOST_COLUMNS: Final = 5
_DISC_HEIGHTS: Final = (mm(3.6), mm(6.6))
_SHAFT: Final = mm(5)


@dataclass(frozen=True, slots=True)
class Columns:
    """How the width of a slot is divided: the same for all slots of a sheet."""

    width: float
    sets: int

    @property
    def cell(self) -> float:
        """Width of the boxes of one set."""
        return CELL_WIDTHS[self.sets - LEAST_COLUMNS]

    @property
    def panel(self) -> float:
        """Width of the boxes of all sets."""
        return self.sets * self.cell + (self.sets - 1) * CELL_GAP

    @property
    def panel_left(self) -> float:
        """Where the boxes begin."""
        return self.width - self.panel

    @property
    def text(self) -> float:
        """Width of the text."""
        return self.panel_left - GUTTER - COLUMN_GAP


def columns_for(slots: Sequence[SlotText], width: float) -> Columns:
    """Room for the sets of the slot that has most of them, within reason."""
    most = max((len(slot.sets) for slot in slots), default=0)
    return Columns(width, max(LEAST_COLUMNS, min(MOST_COLUMNS, most)))


def lay_out_slot(slot: SlotText, columns: Columns, type_: SheetType, unit: Unit) -> Block:
    """The slot as one block, from the space above it to the rule below."""
    space = type_.density.space
    text = _Column(GUTTER, space, columns.text if slot.sets else columns.width - GUTTER, type_)
    text.put(slot.name, Role.NAME, most=2)
    number = Text(QRectF(0, space, GUTTER, type_.line_height(Role.NAME)), slot.number, Role.NAME)
    if not slot.sets:
        text.put(slot.held, Role.HOW, most=3)
        return _block(slot, columns, [number, *text.parts], text.y + space)
    _say(text, slot)
    boxes, below = _boxes(slot, columns, space, type_)
    strip, bottom = _strip(slot, columns, text.y, below, type_, unit)
    return _block(slot, columns, [number, *text.parts, *boxes, *strip], bottom + space)


def _block(slot: SlotText, columns: Columns, parts: Sequence[Part], height: float) -> Block:
    rule = Line(QPointF(0, height), QPointF(columns.width, height))
    return Block(height, (*parts, rule), slot.pair)


@dataclass(slots=True)
class _Column:
    """Lines of text one below the other."""

    left: float
    y: float
    width: float
    type: SheetType
    parts: list[Part] = field(default_factory=list)

    def put(self, text: str, role: Role, *, most: int = 2, quiet: bool = False) -> float:
        """Add a text; how wide its last line is."""
        wide = 0.0
        for line in self.type.wrapped(text, role, self.width, most) if text else ():
            height = self.type.line_height(role)
            rect = QRectF(self.left, self.y, self.width, height)
            self.parts.append(Text(rect, line, role, quiet))
            self.y += height
            wide = self.type.width(line, role)
        return wide


def _say(text: _Column, slot: SlotText) -> None:
    together = " ".join(slot.asked)
    fits = text.type.width(together, Role.ASKED) <= text.width
    asked_width = 0.0
    for asked in (together,) if fits else slot.asked:
        asked_width = text.put(asked, Role.ASKED, most=3)
    line = text.type.line_height(Role.ASKED)
    drawing = _discs(slot.discs, text.type)
    if drawing.width and asked_width + mm(4) + drawing.width <= text.width:
        left = text.left + text.width - drawing.width
        text.parts += drawing.at(left, text.y - line / 2)
        drawing = _Drawing()
    text.put(slot.how, Role.HOW)
    if drawing.width:
        text.parts += drawing.at(text.left, text.y + _DISC_HEIGHTS[1] / 2 + mm(0.4))
        text.y += _DISC_HEIGHTS[1] + mm(0.8)
    text.put(slot.set_up, Role.SET_UP)
    for note in slot.notes:
        text.put(note, Role.SET_UP, most=4)
    text.put(slot.between, Role.BODY, most=4)
    text.put(slot.warm_up, Role.BODY)
    text.y += mm(0.6)
    text.put(slot.cue, Role.BODY)
    text.put(slot.why, Role.BODY, most=3, quiet=True)
    together = ". ".join(slot.before)
    fits = text.type.width(together, Role.BODY) <= text.width
    for said in (together,) if fits else slot.before:
        text.put(said, Role.BODY, quiet=True)


@dataclass(frozen=True, slots=True)
class _Drawing:
    """A bar's end with its discs, from 0, the middle of the bar at height 0."""

    width: float = 0.0
    parts: tuple[Sleeve | Disc, ...] = ()

    def at(self, left: float, middle: float) -> Iterator[Part]:
        for part in self.parts:
            rect = part.rect.translated(left, middle)
            yield Disc(rect, part.label) if isinstance(part, Disc) else Sleeve(rect)


def _discs(discs: Sequence[DiscText], type_: SheetType) -> _Drawing:
    if not discs:
        return _Drawing()
    low, high = _DISC_HEIGHTS
    placed: list[Sleeve | Disc] = []
    x = _SHAFT
    for disc in discs:
        wide = max(mm(4.4), type_.width(disc.label, Role.DISC) + mm(1.2))
        tall = low + (high - low) * disc.share**0.5
        placed.append(Disc(QRectF(x, -tall / 2, wide, tall), disc.label))
        x += wide + mm(0.4)
    end = x + mm(2)
    return _Drawing(end, (Sleeve(QRectF(0, -mm(0.5), end, mm(1))), *placed))


def _boxes(
    slot: SlotText, columns: Columns, top: float, type_: SheetType
) -> tuple[list[Part], float]:
    """The boxes of every set, in rows of sets; where they end."""
    line = type_.line_height(Role.SET) + mm(0.5)
    role, beside = _set_role(slot.sets, columns.cell, type_)
    head = line if beside else 2 * line
    tall = head + type_.density.box * len(slot.boxes)
    parts: list[Part] = []
    for place, asked in enumerate(slot.sets):
        row, column = divmod(place, columns.sets)
        left = columns.panel_left + column * (columns.cell + CELL_GAP)
        y = top + row * (tall + mm(1))
        number = QRectF(left, y, columns.cell, line)
        parts.append(Text(number, f"{place + 1}", Role.SET, quiet=True))
        parts.append(Text(number.translated(0, head - line), asked, role, right=True))
        parts += _cell(slot.boxes, QRectF(left, y + head, columns.cell, type_.density.box))
    rows = (len(slot.sets) - 1) // columns.sets + 1
    return parts, top + rows * tall + (rows - 1) * mm(1)


def _set_role(sets: Sequence[str], width: float, type_: SheetType) -> tuple[Role, bool]:
    """The type of what each set asks, and whether it stands beside the set's number: nothing that
    is asked is ever cut.
    """
    longest = max(type_.width(each, Role.SET) for each in sets)
    if longest <= width - mm(4):
        return Role.SET, True
    return (Role.SET if longest <= width else Role.SMALL), False


def _cell(boxes: Sequence[Sequence[str]], first: QRectF) -> Iterator[Box]:
    """The boxes of one set, row by row from ``first``, which is as wide as all of a row."""
    for row, captions in enumerate(boxes):
        wide = first.width() / len(captions)
        for column, caption in enumerate(captions):
            corner = first.topLeft() + QPointF(column * wide, row * first.height())
            yield Box(QRectF(corner, QSizeF(wide, first.height())), caption)


def _strip(
    slot: SlotText, columns: Columns, text_end: float, boxes_end: float, type_: SheetType,
    unit: Unit,
) -> tuple[list[Part], float]:  # fmt: skip
    """The strip where the block stays lowest: under the boxes, under the text, or across."""
    whole = max(text_end, boxes_end)
    if not slot.strip:
        return [], whole
    gap = mm(1.2)
    choices: list[tuple[float, Strip]] = []
    for left, above, beside, width in (
        (columns.panel_left, boxes_end, text_end, columns.panel),
        (GUTTER, text_end, boxes_end, columns.text),
        (GUTTER, whole, whole, columns.width - GUTTER),
    ):
        layout: StripLayout = fitted(slot.strip, type_.strip_fonts(), unit, width)
        if layout.size.width() <= width:
            bottom = max(above + gap + layout.size.height(), beside)
            choices.append((bottom, Strip(QPointF(left, above + gap), layout)))
    if not choices:
        return [], whole
    bottom, strip = min(choices, key=lambda each: each[0])
    return [strip], bottom
