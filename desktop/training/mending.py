"""Mending: a proposal of the balance check, made an edit of the program."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

from desktop.training.balance import (
    AddSlot,
    Finding,
    KeepVariable,
    MoveDay,
    PairSlots,
    RemoveSlot,
)
from desktop.training.exercises import Exercise
from desktop.training.position import Variable
from desktop.training.program import Phase, PhasePurpose, Program, Slot
from desktop.training.program_edits import (
    DayPlace,
    SlotPlace,
    add_slot,
    day_at,
    free_pair,
    phase_at,
    remove_slot,
    slot_at,
    with_day,
    with_slot,
)
from desktop.training.rules import new_slot


def mended(program: Program, finding: Finding, exercises: Mapping[str, Exercise]) -> Program:
    """The program after the finding's proposal; as it was where there is none."""
    match finding.proposal:
        case AddSlot(day, key):
            end = len(day_at(program, DayPlace(finding.phase, day)).slots)
            place = SlotPlace(finding.phase, day, end)
            return add_slot(program, place, new_slot(exercises[key]))
        case MoveDay(day, weekday):
            at = DayPlace(finding.phase, day)
            return with_day(program, at, replace(day_at(program, at), weekday=weekday))
        case PairSlots(day, first, second):
            return _paired(program, DayPlace(finding.phase, day), first, second)
        case RemoveSlot(day, slot):
            return remove_slot(program, SlotPlace(finding.phase, day, slot))
        case KeepVariable():
            return _kept(program, finding.phase, finding.proposal)
        case _:
            return program


def _paired(program: Program, day: DayPlace, first: int, second: int) -> Program:
    letter = free_pair(day_at(program, day))
    for slot in (first, second):
        place = SlotPlace(day.phase, day.day, slot)
        program = with_slot(program, place, replace(slot_at(program, place), pair=letter))
    return program


def _kept(program: Program, phase: int, keep: KeepVariable) -> Program:
    """The variable as the building phase before had it, in every slot of the line."""
    line = (keep.exercise, keep.line_name)
    places = _places_of(program, phase, line)
    if keep.variable not in {each.value for each in Variable}:
        return remove_slot(program, places[-1]) if len(places) > 1 else program
    before = _slot_before(program, phase, line)
    if before is None:
        return program
    variable = Variable(keep.variable)
    for place in places:
        slot = _with_variable_of(slot_at(program, place), before, variable)
        program = with_slot(program, place, slot)
    return program


def _places_of(program: Program, phase: int, line: tuple[str, str]) -> list[SlotPlace]:
    return [
        SlotPlace(phase, d, s)
        for d, day in enumerate(phase_at(program, phase).days)
        for s, slot in enumerate(day.slots)
        if (slot.exercise, slot.line_name) == line
    ]


def _slot_before(program: Program, phase: int, line: tuple[str, str]) -> Slot | None:
    building = (
        each for each in reversed(program.phases[:phase]) if each.purpose is PhasePurpose.BUILD
    )
    before: Phase | None = next(building, None)
    slots = (slot for day in before.days for slot in day.slots) if before else iter(())
    return next((slot for slot in slots if (slot.exercise, slot.line_name) == line), None)


def _with_variable_of(slot: Slot, before: Slot, variable: Variable) -> Slot:
    start = slot.start
    value = before.start.value(variable)
    if value is not None:
        start = start.at(variable, value)
    old = before.rule.range_of(variable)
    ranges = [each for each in slot.rule.ranges if each.variable is not variable]
    if old is not None:
        here = next(
            (n for n, each in enumerate(slot.rule.ranges) if each.variable is variable),
            before.rule.ranges.index(old),
        )
        ranges.insert(here, old)
    return replace(slot, start=start, rule=replace(slot.rule, ranges=tuple(ranges)))
