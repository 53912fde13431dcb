"""A whole program on paper, in the style of the sheets: phases, days, and what each week asks."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Final

from PySide6.QtCore import QPointF, QRectF

from desktop.planning.program_weeks import ProgramWeeks
from views.paper import Paper, usual_paper
from views.program_text import PrintedDay, PrintedPhase, ProgramText, program_text
from views.sheet_layout import EDGE, SIDE, flow, foot, page_size, stacked
from views.sheet_parts import Block, Line, Page, Part, PlacedBlock, Sheet, Text
from views.sheet_type import Density, Role, SheetType, mm

_NAME: Final = mm(54)
_COLUMN_GAP: Final = mm(1)
_MOST: Final = 9


def make_program_sheet(weeks: ProgramWeeks, paper: Paper | None = None) -> Sheet:
    """The pages of a program on ``paper`` (None: as usual in the locale's country).

    Needs a QGuiApplication.
    """
    return lay_out_program(program_text(weeks, _MOST), paper or usual_paper())


def lay_out_program(text: ProgramText, paper: Paper) -> Sheet:
    """The program on pages; a day's table is never broken. Needs a QGuiApplication."""
    type_ = SheetType(Density.USUAL)
    size = page_size(paper)
    width = size.width() - 2 * SIDE
    head = _head(text, width, type_)
    caution = type_.wrapped(text.caution, Role.SMALL, width - mm(24), 4)
    foot_top = size.height() - EDGE - len(caution) * type_.line_height(Role.SMALL)
    blocks = [block for phase in text.phases for block in _phase(phase, width, type_)]
    flows = flow(blocks, foot_top - mm(1.5) - EDGE - head.height)
    pages = tuple(
        Page(
            (
                PlacedBlock(QPointF(SIDE, EDGE), head),
                *stacked(page, EDGE + head.height),
                PlacedBlock(
                    QPointF(SIDE, foot_top), foot(caution, width, number, len(flows), type_)
                ),
            )
        )
        for number, page in enumerate(flows, start=1)
    )
    return Sheet(paper, type_, pages, text.name, program_aloud(text))


def program_aloud(text: ProgramText) -> str:
    """The program as text, for whoever hears it rather than sees it."""
    lines = [f"{text.name}. {text.detail}."]
    for phase in text.phases:
        lines.append(f"{phase.name}, {phase.detail}.")
        for day in phase.days:
            lines.append(f"{day.name}:")
            for slot in day.slots:
                asked = [
                    f"{week.above}: {cell.above} {cell.below}".strip()
                    for week, cell in zip(day.weeks, slot.cells, strict=True)
                    if cell.above
                ]
                lines.append(f"{slot.name}, {slot.how}. {'; '.join(asked)}.")
    return "\n".join(lines)


def _head(text: ProgramText, width: float, type_: SheetType) -> Block:
    parts: list[Part] = []
    tall, low = type_.line_height(Role.TRAINEE), type_.line_height(Role.HOW)
    whose = type_.width(text.whose, Role.DAY) + mm(6) if text.whose else 0.0
    if text.whose:
        baseline = type_.metrics(Role.TRAINEE).ascent() - type_.metrics(Role.DAY).ascent()
        place = QRectF(0, baseline, width, type_.line_height(Role.DAY))
        parts.append(Text(place, text.whose, Role.DAY, right=True))
    y = 0.0
    for line in type_.wrapped(text.name, Role.TRAINEE, width - whose, 2):
        parts.append(Text(QRectF(0, y, width, tall), line, Role.TRAINEE))
        y += tall
    for line in type_.wrapped(text.detail, Role.HOW, width, 2):
        parts.append(Text(QRectF(0, y, width, low), line, Role.HOW, quiet=True))
        y += low
    y += mm(1.6)
    parts.append(Line(QPointF(0, y), QPointF(width, y), strong=True))
    return Block(y + mm(1), tuple(parts))


def _phase(phase: PrintedPhase, width: float, type_: SheetType) -> Iterator[Block]:
    """The heading of a phase with its first day, then its other days; hard sets at the end."""
    heading = _heading(phase, width, type_)
    tables = [_day(day, width, type_) for day in phase.days]
    if tables:
        yield _together(heading, tables[0])
        yield from tables[1:]
    else:
        yield heading
    if phase.volume:
        yield _paragraph(phase.volume, width, type_)


def _heading(phase: PrintedPhase, width: float, type_: SheetType) -> Block:
    top, high = mm(3), type_.line_height(Role.NAME)
    detail = f"  {phase.detail}"
    room = width - type_.width(detail, Role.BODY)
    name = type_.elided(phase.name, Role.NAME, room)
    left = type_.width(name, Role.NAME)
    return Block(
        top + high,
        (
            Text(QRectF(0, top, width, high), name, Role.NAME),
            Text(QRectF(left, top, width - left, high), detail, Role.BODY, quiet=True),
        ),
    )


def _paragraph(text: str, width: float, type_: SheetType) -> Block:
    high, y = type_.line_height(Role.SMALL), mm(1)
    parts: list[Part] = []
    for line in type_.wrapped(text, Role.SMALL, width, 3):
        parts.append(Text(QRectF(0, y, width, high), line, Role.SMALL, quiet=True))
        y += high
    return Block(y, tuple(parts))


def _day(day: PrintedDay, width: float, type_: SheetType) -> Block:
    """A day's table: slots down, weeks across."""
    wide = (width - _NAME) / max(_MOST, len(day.weeks)) - _COLUMN_GAP
    small, set_, cell = (type_.line_height(role) for role in (Role.SMALL, Role.SET, Role.CELL))
    y = mm(2)
    parts: list[Part] = []
    head = max(type_.line_height(Role.SET_UP), 2 * small)
    for at, line in enumerate(type_.wrapped(day.name, Role.SET_UP, _NAME, 2)):
        high = type_.line_height(Role.SET_UP)
        parts.append(Text(QRectF(0, y + at * high, _NAME, high), line, Role.SET_UP))
        head = max(head, (at + 1) * high)
    for at, week in enumerate(day.weeks):
        left = _NAME + at * (wide + _COLUMN_GAP)
        parts.append(_fitting(QRectF(left, y, wide, small), week.above, Role.SMALL, type_))
        parts.append(_fitting(QRectF(left, y + small, wide, small), week.below, Role.SMALL, type_))
    y += head + mm(0.6)
    parts.append(Line(QPointF(0, y), QPointF(width, y)))
    y += mm(0.6)
    for slot in day.slots:
        how = type_.wrapped(slot.how, Role.SMALL, _NAME - mm(2), 2)
        name = type_.elided(slot.name, Role.SET, _NAME - mm(2))
        parts.append(Text(QRectF(0, y, _NAME, set_), name, Role.SET))
        for at, line in enumerate(how):
            place = QRectF(0, y + set_ + at * small, _NAME, small)
            parts.append(Text(place, line, Role.SMALL, quiet=True))
        for at, each in enumerate(slot.cells):
            left = _NAME + at * (wide + _COLUMN_GAP)
            parts.append(_fitting(QRectF(left, y, wide, set_), each.above, Role.SET, type_))
            below = QRectF(left, y + set_, wide, cell)
            parts.append(_fitting(below, each.below, Role.CELL, type_))
        y += set_ + max(cell, len(how) * small) + mm(0.8)
        parts.append(Line(QPointF(0, y), QPointF(width, y)))
        y += mm(0.6)
    return Block(y, tuple(parts))


def _fitting(rect: QRectF, text: str, role: Role, type_: SheetType) -> Text:
    """A text of one line cut to its column."""
    return Text(rect, type_.elided(text, role, rect.width()), role)


def _together(first: Block, second: Block) -> Block:
    """Two blocks as one that is not broken."""
    below = tuple(_moved(part, first.height) for part in second.parts)
    return Block(first.height + second.height, (*first.parts, *below))


def _moved(part: Part, down: float) -> Part:
    match part:
        case Text(rect, text, role, quiet, right):
            return Text(rect.translated(0, down), text, role, quiet, right)
        case Line(start, end, strong):
            shift = QPointF(0, down)
            return Line(start + shift, end + shift, strong)
        case _:
            return part
