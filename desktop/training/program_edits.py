"""Edits of a program: each takes a program and gives the program after the edit.

Places count from 0. A place that is not there raises NoSuchPlace; an edit that would change
nothing (the first slot moved up) gives the program as it was.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, replace
from string import ascii_uppercase
from typing import Final, TypeVar

from desktop.training.exercises import Exercise
from desktop.training.program import Phase, PhasePurpose, Program, Slot, TrainingDay
from desktop.training.rules import exchanged

MOST_WEEKS: Final = 104

T = TypeVar("T")


class NoSuchPlace(IndexError):
    """The program has no phase, day or slot at this place; the message says what it has."""


@dataclass(frozen=True, slots=True, order=True)
class DayPlace:
    """A training day: its phase and its place within it."""

    phase: int
    day: int


@dataclass(frozen=True, slots=True, order=True)
class SlotPlace:
    """A slot: phase, day and place within the day."""

    phase: int
    day: int
    slot: int

    @property
    def of_day(self) -> DayPlace:
        """The day that holds it."""
        return DayPlace(self.phase, self.day)


# Reading


def phase_at(program: Program, phase: int) -> Phase:
    """The phase at a place."""
    return _at(program.phases, phase, "phases")


def day_at(program: Program, place: DayPlace) -> TrainingDay:
    """The day at a place."""
    return _at(phase_at(program, place.phase).days, place.day, "days")


def slot_at(program: Program, place: SlotPlace) -> Slot:
    """The slot at a place."""
    return _at(day_at(program, place.of_day).slots, place.slot, "slots")


def slots_with(program: Program, exercise: str) -> tuple[SlotPlace, ...]:
    """Where the exercise stands, in order."""
    return tuple(
        SlotPlace(p, d, s)
        for p, phase in enumerate(program.phases)
        for d, day in enumerate(phase.days)
        for s, slot in enumerate(day.slots)
        if slot.exercise == exercise
    )


# Phases


def with_phase(program: Program, at: int, phase: Phase) -> Program:
    """The program with ``phase`` in place of the one at ``at``; weeks are kept within 1 to 104."""
    phase_at(program, at)
    weeks = max(1, min(MOST_WEEKS, phase.weeks))
    return replace(program, phases=_with(program.phases, at, replace(phase, weeks=weeks)))


def add_phase(program: Program, at: int, phase: Phase) -> Program:
    """The program with another phase so that it stands at ``at``."""
    return replace(program, phases=_inserted(program.phases, at, phase))


def remove_phase(program: Program, at: int) -> Program:
    """The program without a phase; the last one stays, for a program has at least one."""
    phase_at(program, at)
    if len(program.phases) == 1:
        return program
    return replace(program, phases=_without(program.phases, at))


def move_phase(program: Program, at: int, by: int) -> tuple[Program, int]:
    """The phase so many places later (or earlier), and where it stands then."""
    phase_at(program, at)
    phases, place = _shifted(program.phases, at, by)
    return replace(program, phases=phases), place


def phase_after(
    program: Program, at: int, name: str, purpose: PhasePurpose = PhasePurpose.BUILD
) -> Phase:
    """A new phase like the one at ``at``, with its days: one week for a deload, else as long."""
    model = phase_at(program, at)
    weeks = 1 if purpose is not PhasePurpose.BUILD else model.weeks
    return Phase(name, weeks, model.days, purpose)


# Days


def with_day(program: Program, place: DayPlace, day: TrainingDay) -> Program:
    """The program with ``day`` in place of the one at ``place``."""
    day_at(program, place)
    return _in_phase(program, place.phase, lambda days: _with(days, place.day, day))


def add_day(program: Program, place: DayPlace, day: TrainingDay) -> Program:
    """The program with another day so that it stands at ``place``."""
    return _in_phase(program, place.phase, lambda days: _inserted(days, place.day, day))


def remove_day(program: Program, place: DayPlace) -> Program:
    """The program without a day."""
    day_at(program, place)
    return _in_phase(program, place.phase, lambda days: _without(days, place.day))


def duplicate_day(program: Program, place: DayPlace) -> tuple[Program, DayPlace]:
    """The day once more, right behind it: on the next weekday that leaves a day between and is
    free, under its own name.
    """
    day = day_at(program, place)
    taken = {each.weekday for each in phase_at(program, place.phase).days}
    copy = replace(day, weekday=_free_weekday(day.weekday, taken))
    behind = DayPlace(place.phase, place.day + 1)
    return add_day(program, behind, copy), behind


def move_day(program: Program, place: DayPlace, by: int) -> tuple[Program, DayPlace]:
    """The day so many places later within its phase, and where it stands then."""
    day_at(program, place)
    days, at = _shifted(phase_at(program, place.phase).days, place.day, by)
    return _in_phase(program, place.phase, lambda _: days), DayPlace(place.phase, at)


def free_weekday(phase: Phase) -> int | None:
    """A weekday for one more day: two after the last one, else the first free; None where the
    phase's days are done in turn, or all are taken.
    """
    fixed = [day.weekday for day in phase.days if day.weekday is not None]
    if phase.days and not fixed:
        return None
    return _free_weekday(fixed[-1], set(fixed)) if fixed else 0


# Slots


def with_slot(program: Program, place: SlotPlace, slot: Slot) -> Program:
    """The program with ``slot`` in place of the one at ``place``."""
    slot_at(program, place)
    return _in_day(program, place.of_day, lambda slots: _with(slots, place.slot, slot))


def add_slot(program: Program, place: SlotPlace, slot: Slot) -> Program:
    """The program with another slot so that it stands at ``place``."""
    return _in_day(program, place.of_day, lambda slots: _inserted(slots, place.slot, slot))


def remove_slot(program: Program, place: SlotPlace) -> Program:
    """The program without a slot."""
    slot_at(program, place)
    return _in_day(program, place.of_day, lambda slots: _without(slots, place.slot))


def duplicate_slot(program: Program, place: SlotPlace) -> tuple[Program, SlotPlace]:
    """The slot once more, right behind it."""
    behind = replace(place, slot=place.slot + 1)
    return add_slot(program, behind, slot_at(program, place)), behind


def move_slot(program: Program, place: SlotPlace, by: int) -> tuple[Program, SlotPlace]:
    """The slot one place down (``by`` 1) or up (-1), over the edge of its day into the next one
    of the phase, and where it stands then.
    """
    if by not in (1, -1):
        raise ValueError(f"a slot moves by 1 or -1, not {by}")
    slot = slot_at(program, place)
    count = len(day_at(program, place.of_day).slots)
    to = place.slot + by
    if 0 <= to < count:
        slots, _ = _shifted(day_at(program, place.of_day).slots, place.slot, by)
        return _in_day(program, place.of_day, lambda _: slots), replace(place, slot=to)
    day = place.day + by
    if not 0 <= day < len(phase_at(program, place.phase).days):
        return program, place
    neighbour = DayPlace(place.phase, day)
    end = 0 if by > 0 else len(day_at(program, neighbour).slots)
    there = SlotPlace(place.phase, day, end)
    return add_slot(remove_slot(program, place), there, slot), there


def replace_exercise(
    program: Program, before: str, after: Exercise, exercises: Mapping[str, Exercise]
) -> Program:
    """The program with ``after`` wherever ``before`` stood, in every phase."""
    old = exercises[before]
    for place in slots_with(program, before):
        program = with_slot(program, place, exchanged(slot_at(program, place), after, old))
    return program


def free_pair(day: TrainingDay) -> str:
    """The first letter that pairs no slots of the day yet."""
    taken = {slot.pair.upper() for slot in day.slots}
    return next((letter for letter in ascii_uppercase if letter not in taken), "")


def free_name(name: str, taken: Iterable[str]) -> str:
    """``name``, or with the first number behind it that makes it one of its own."""
    known = {each.casefold() for each in taken}
    if name.casefold() not in known:
        return name
    number = 2
    while f"{name} {number}".casefold() in known:
        number += 1
    return f"{name} {number}"


def _in_phase(
    program: Program,
    at: int,
    change: Callable[[tuple[TrainingDay, ...]], tuple[TrainingDay, ...]],
) -> Program:
    phase = phase_at(program, at)
    return replace(
        program, phases=_with(program.phases, at, replace(phase, days=change(phase.days)))
    )


def _in_day(
    program: Program, place: DayPlace, change: Callable[[tuple[Slot, ...]], tuple[Slot, ...]]
) -> Program:
    day = day_at(program, place)
    return with_day(program, place, replace(day, slots=change(day.slots)))


def _free_weekday(after: int | None, taken: Iterable[int | None]) -> int | None:
    if after is None:
        return None
    ahead = [(after + step) % 7 for step in (2, 3, 4, 5, 1, 6)]
    return next((weekday for weekday in ahead if weekday not in set(taken)), None)


def _at(parts: tuple[T, ...], at: int, what: str) -> T:
    if not 0 <= at < len(parts):
        raise NoSuchPlace(f"there are {len(parts)} {what}; none has the place {at}")
    return parts[at]


def _with(parts: tuple[T, ...], at: int, part: T) -> tuple[T, ...]:
    return (*parts[:at], part, *parts[at + 1 :])


def _without(parts: tuple[T, ...], at: int) -> tuple[T, ...]:
    return (*parts[:at], *parts[at + 1 :])


def _inserted(parts: tuple[T, ...], at: int, part: T) -> tuple[T, ...]:
    if not 0 <= at <= len(parts):
        raise NoSuchPlace(f"there are {len(parts)}; a new one stands at 0 to {len(parts)}")
    return (*parts[:at], part, *parts[at:])


def _shifted(parts: tuple[T, ...], at: int, by: int) -> tuple[tuple[T, ...], int]:
    to = max(0, min(len(parts) - 1, at + by))
    return _inserted(_without(parts, at), to, parts[at]), to
