"""Copied parts: slots, a day or a phase taken out of one program and put into another.

On the way they are a program file of their own, so that they can also be sent as text.
"""

from __future__ import annotations

from collections.abc import Container, Sequence
from dataclasses import dataclass, replace
from enum import StrEnum
from typing import Final

from db.json_files import InvalidFile
from db.program_files import exercises_of, program_bytes, program_from
from desktop.training.program import Phase, Program, Slot, TrainingDay
from desktop.training.program_edits import (
    DayPlace,
    SlotPlace,
    add_day,
    add_phase,
    add_slot,
    day_at,
    free_weekday,
    phase_at,
    slot_at,
)
from desktop.training.sentence import sentence

NAME: Final = "Copied"


class PartKind(StrEnum):
    """What was copied."""

    SLOTS = "slots"
    DAY = "day"
    PHASE = "phase"


class CannotPaste(ValueError):
    """The text is no part of a program, or asks for exercises that are not there."""


@dataclass(frozen=True, slots=True)
class CopiedPart:
    """What was copied, as a program that holds only that."""

    kind: PartKind
    program: Program

    @property
    def slots(self) -> tuple[Slot, ...]:
        """All slots of it."""
        return tuple(s for phase in self.program.phases for day in phase.days for s in day.slots)

    @property
    def text(self) -> str:
        """The part as the text of a program file."""
        return program_bytes(self.program).decode()


def copied_slots(program: Program, places: Sequence[SlotPlace]) -> CopiedPart:
    """The slots at ``places``, in the order of the program."""
    slots = tuple(slot_at(program, place) for place in sorted(places))
    return CopiedPart(PartKind.SLOTS, _holding(TrainingDay("", slots)))


def copied_day(program: Program, place: DayPlace) -> CopiedPart:
    """A day with its slots."""
    return CopiedPart(PartKind.DAY, _holding(day_at(program, place)))


def copied_phase(program: Program, at: int) -> CopiedPart:
    """A phase with its days."""
    return CopiedPart(PartKind.PHASE, Program(NAME, (phase_at(program, at),)))


def part_from(text: str, kind: str, known: Container[str]) -> CopiedPart:
    """The part that ``text`` holds; ``kind`` as it was copied, "" where that is not known: then
    it is a phase, or a day where there is only one. Raises CannotPaste.
    """
    try:
        program = program_from(text.encode())
    except InvalidFile as error:
        raise CannotPaste(
            sentence("what was copied is no part of a program: {error}", error=error)
        ) from error
    missing = [key for key in exercises_of(program) if key not in known]
    if missing:
        raise CannotPaste(
            sentence(
                "these exercises are not in the catalogue: {listed}", listed=", ".join(missing)
            )
        )
    if kind in PartKind.__members__.values():
        return CopiedPart(PartKind(kind), program)
    alone = len(program.phases) == 1 and len(program.phases[0].days) == 1
    return CopiedPart(PartKind.DAY if alone else PartKind.PHASE, program)


def pasted(
    program: Program, at: SlotPlace | DayPlace | int, part: CopiedPart
) -> tuple[Program, SlotPlace | DayPlace | int]:
    """The program with the part behind ``at`` (a phase by its number), and where it stands.

    Slots go behind a slot, at the end of a day, or onto the last day of a phase; a day behind a
    day, on a weekday that is free; phases behind a phase.
    """
    phase = at if isinstance(at, int) else at.phase
    match part.kind:
        case PartKind.SLOTS:
            return _with_slots(program, at, part)
        case PartKind.DAY:
            return _with_day(program, at, part)
        case PartKind.PHASE:
            for number, each in enumerate(part.program.phases, start=1):
                program = add_phase(program, phase + number, each)
            return program, phase + 1


def _holding(day: TrainingDay) -> Program:
    return Program(NAME, (Phase("", 1, (day,)),))


def _with_slots(
    program: Program, at: SlotPlace | DayPlace | int, part: CopiedPart
) -> tuple[Program, SlotPlace | DayPlace | int]:
    if isinstance(at, int):
        if not phase_at(program, at).days:
            program = add_day(program, DayPlace(at, 0), TrainingDay("", weekday=0))
        at = DayPlace(at, len(phase_at(program, at).days) - 1)
    if isinstance(at, DayPlace):
        at = SlotPlace(at.phase, at.day, len(day_at(program, at).slots) - 1)
    first = replace(at, slot=at.slot + 1)
    for number, slot in enumerate(part.slots):
        program = add_slot(program, replace(first, slot=first.slot + number), slot)
    return program, first


def _with_day(
    program: Program, at: SlotPlace | DayPlace | int, part: CopiedPart
) -> tuple[Program, SlotPlace | DayPlace | int]:
    phase = at if isinstance(at, int) else at.phase
    days = phase_at(program, phase).days
    behind = len(days) if isinstance(at, int) else at.day + 1
    day = part.program.phases[0].days[0]
    if day.weekday is not None and day.weekday in {each.weekday for each in days}:
        day = replace(day, weekday=free_weekday(phase_at(program, phase)))
    if day.weekday is None and not day.name:
        day = replace(day, name=NAME)
    there = DayPlace(phase, behind)
    return add_day(program, there, day), there
