"""The sheet of a group: what several trainees are asked on one day, side by side on one page."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from datetime import date
from typing import Final

from PySide6.QtCore import QPointF, QRectF

from desktop.planning.days import DayPlan
from views import words
from views.general_caution import general_caution, red_flags
from views.paper import Paper
from views.sheet_layout import EDGE, SIDE, flow, foot, page_size, stacked
from views.sheet_parts import Block, Box, Line, Page, Part, PlacedBlock, Sheet, Text
from views.sheet_texts import SheetError, belongs_to, long_date, nothing_asked, slots_of, translate
from views.sheet_type import Density, Role, SheetType, mm
from views.slot_texts import SlotText, plain

MOST_ACROSS: Final = 4
_LEAST_ACROSS: Final = 2
_GAP: Final = mm(5)
_BOX_GAP: Final = mm(0.8)
_NUMBER: Final = mm(5)


@dataclass(frozen=True, slots=True)
class GroupColumn:
    """One trainee's part: their place in the order of typing, what they are asked, or why nothing
    is (``why``).
    """

    number: int
    name: str
    belongs_to: str
    slots: tuple[SlotText, ...]
    why: str = ""


@dataclass(frozen=True, slots=True)
class GroupText:
    """All words of a group's sheet."""

    day: str
    columns: tuple[GroupColumn, ...]
    legend: str
    caution: str


def group_text(plans: Sequence[DayPlan], day: date) -> GroupText:
    """The words of the group's sheet. Raises SheetError where nobody is asked anything."""
    columns = tuple(_column(number, plan) for number, plan in enumerate(plans, start=1))
    if not any(slot.sets for column in columns for slot in column.slots):
        text = translate("Sheet", "Nobody is asked anything on {day}.")
        raise SheetError(text.format(day=words.short_day(day)))
    return GroupText(long_date(day), columns, _legend(), f"{general_caution()} {red_flags()}")


def lay_out_group(text: GroupText, paper: Paper) -> Sheet:
    """The group's sheet on as few pages as can be, as large as they hold. Needs a
    QGuiApplication.
    """
    made = [_laid_out(text, paper, density) for density in Density]
    return min(made, key=lambda sheet: len(sheet.pages))


def group_aloud(text: GroupText) -> str:
    """The sheet as text, for whoever hears it rather than sees it."""
    lines = [f"{text.day}."]
    for column in text.columns:
        said = [
            f"{slot.number} {slot.name}: {' '.join(slot.asked) or slot.held}"
            for slot in column.slots
        ]
        lines.append(f"{column.number} {column.name}. {'. '.join(said) or column.why}")
    return "\n".join(lines)


def _column(number: int, plan: DayPlan) -> GroupColumn:
    slots = slots_of(plan)
    asked = any(slot.sets for slot in slots)
    return GroupColumn(
        number,
        plain(plan.trainee.name),
        plain(belongs_to(plan)),
        slots if asked else (),
        "" if asked else nothing_asked(plan, slots),
    )


def _laid_out(text: GroupText, paper: Paper, density: Density) -> Sheet:
    type_ = SheetType(density)
    size = page_size(paper)
    width = size.width() - 2 * SIDE
    across = max(_LEAST_ACROSS, min(MOST_ACROSS, len(text.columns)))
    wide = (width - (across - 1) * _GAP) / across
    head = _head(text, width, type_)
    small = type_.wrapped(f"{text.legend} {text.caution}", Role.SMALL, width - mm(24), 6)
    foot_top = size.height() - EDGE - len(small) * type_.line_height(Role.SMALL)
    room = foot_top - mm(1.5) - EDGE - head.height
    columns = [part for one in text.columns for part in _trainee(one, wide, room, type_)]
    bands = [_band(columns[at : at + across], wide, type_) for at in range(0, len(columns), across)]
    flows = flow(bands, room)
    pages = tuple(
        Page(
            (
                PlacedBlock(QPointF(SIDE, EDGE), head),
                *stacked(blocks, EDGE + head.height),
                PlacedBlock(QPointF(SIDE, foot_top), foot(small, width, number, len(flows), type_)),
            )
        )
        for number, blocks in enumerate(flows, start=1)
    )
    return Sheet(paper, type_, pages, text.day, group_aloud(text))


def _head(text: GroupText, width: float, type_: SheetType) -> Block:
    tall = type_.line_height(Role.DAY)
    count = translate("Sheet", "{count} trainees").format(count=words.number(len(text.columns)))
    parts: tuple[Part, ...] = (
        Text(QRectF(0, 0, width, tall), text.day, Role.DAY),
        Text(QRectF(0, 0, width, tall), count, Role.HOW, quiet=True, right=True),
        Line(QPointF(0, tall + mm(1)), QPointF(width, tall + mm(1)), strong=True),
    )
    return Block(tall + mm(1), parts)


def _band(columns: Sequence[Block], wide: float, type_: SheetType) -> Block:
    """Columns side by side, with a hairline between them and one below."""
    height = max(column.height for column in columns) + type_.density.space
    parts: list[Part] = []
    for place, column in enumerate(columns):
        left = place * (wide + _GAP)
        parts += [_moved(part, left) for part in column.parts]
        if place:
            middle = left - _GAP / 2
            parts.append(Line(QPointF(middle, mm(2)), QPointF(middle, height - mm(1))))
    right = len(columns) * (wide + _GAP) - _GAP
    parts.append(Line(QPointF(0, height), QPointF(right, height)))
    return Block(height, tuple(parts))


def _moved(part: Part, left: float) -> Part:
    match part:
        case Text():
            return Text(part.rect.translated(left, 0), part.text, part.role, part.quiet, part.right)
        case Box():
            return Box(part.rect.translated(left, 0), part.caption)
        case Line():
            return Line(part.start + QPointF(left, 0), part.end + QPointF(left, 0), part.strong)
    raise TypeError(f"a column holds no {type(part).__name__}")


@dataclass(slots=True)
class _Pen:
    """Writes parts one below the other in a column."""

    width: float
    type: SheetType
    y: float = 0.0
    parts: list[Part] = field(default_factory=list)

    def text(
        self, text: str, role: Role, *, most: int = 2, quiet: bool = False, left: float = 0
    ) -> None:
        """A text on at most ``most`` lines."""
        for line in self.type.wrapped(text, role, self.width - left, most) if text else ():
            height = self.type.line_height(role)
            self.parts.append(
                Text(QRectF(left, self.y, self.width - left, height), line, role, quiet)
            )
            self.y += height

    def across(self, captions: Sequence[str]) -> int:
        """How many boxes go side by side, so that no caption is cut."""
        longest = max(self.type.width(each, Role.CAPTION) for each in captions) + mm(1.6)
        for count in range(MOST_ACROSS, 1, -1):
            if (self.width - (count - 1) * _BOX_GAP) / count >= longest:
                return count
        return 1

    def boxes(self, captions: Sequence[str], across: int = 0) -> None:
        """Boxes side by side, all alike; room for ``across`` of them (0: as many as there are)."""
        count = across or len(captions)
        wide = (self.width - (count - 1) * _BOX_GAP) / count
        tall = self.type.density.box
        for place, caption in enumerate(captions):
            left = place * (wide + _BOX_GAP)
            self.parts.append(Box(QRectF(left, self.y, wide, tall), caption))
        self.y += tall + _BOX_GAP


def _trainee(column: GroupColumn, wide: float, room: float, type_: SheetType) -> Iterator[Block]:
    """The parts of one trainee: as many columns as their slots need."""
    head = _named(column, wide, type_)
    if not column.slots:
        head.y += mm(1.6)
        head.text(column.why, Role.BODY, most=6)
        yield Block(head.y, tuple(head.parts))
        return
    pen, empty = head, True
    for slot in column.slots:
        tried = _slot(slot, wide, type_)
        if not empty and pen.y + tried.y + 2 * type_.density.box > room:
            yield Block(pen.y, tuple(pen.parts))
            pen = _named(column, wide, type_)
        pen.parts += [_lowered(part, pen.y) for part in tried.parts]
        pen.y += tried.y
        empty = False
    pen.y += mm(1.5)
    pen.boxes((translate("Sheet", "effort 0-10"), translate("Sheet", "minutes")))
    yield Block(pen.y, tuple(pen.parts))


def _named(column: GroupColumn, wide: float, type_: SheetType) -> _Pen:
    pen = _Pen(wide, type_, type_.density.space)
    tall = type_.line_height(Role.NAME)
    pen.parts.append(Text(QRectF(0, pen.y, _NUMBER, tall), f"{column.number}", Role.NAME, True))
    pen.text(column.name, Role.NAME, most=2, left=_NUMBER)
    pen.text(column.belongs_to, Role.SMALL, most=3, quiet=True)
    return pen


def _slot(slot: SlotText, wide: float, type_: SheetType) -> _Pen:
    pen = _Pen(wide, type_, mm(1.6))
    pen.text(f"{slot.number} {slot.name}", Role.SET, most=3)
    if not slot.sets:
        pen.text(slot.held, Role.SMALL, most=4)
        return pen
    pen.text(" ".join(slot.asked), Role.SET_UP, most=3)
    pen.text(words.DOT.join(p for p in (slot.how, slot.set_up) if p), Role.SMALL, most=3)
    for note in slot.notes:
        pen.text(note, Role.SMALL, most=3)
    pen.y += mm(0.6)
    across = min(pen.across(slot.sets), max(3, len(slot.sets)))
    for at in range(0, len(slot.sets), across):
        pen.boxes(slot.sets[at : at + across], across)
    pen.boxes(_beside(slot))
    return pen


def _beside(slot: SlotText) -> tuple[str, ...]:
    """What is noted once for all sets: another load, reserve, pain."""
    load = next((c for row in slot.boxes for c in row if "kg" in c or "lb" in c), "")
    last = slot.boxes[-1]
    return tuple(caption for caption in (load, *last) if caption)


def _lowered(part: Part, down: float) -> Part:
    match part:
        case Text():
            return Text(part.rect.translated(0, down), part.text, part.role, part.quiet, part.right)
        case Box():
            return Box(part.rect.translated(0, down), part.caption)
    raise TypeError(f"a slot holds no {type(part).__name__}")


def _legend() -> str:
    return translate(
        "Sheet",
        "Upper boxes: clean repetitions or seconds of each set, under what is asked. Lower boxes: "
        "the load where it was another, how many more would have been clean, pain 0 to 10; where "
        "pain grows, stop that exercise and tell your coach.",
    )
