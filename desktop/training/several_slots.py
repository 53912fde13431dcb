"""Edits of several slots at once: each sets one thing and leaves everything else as it is."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace

from desktop.training.position import ProgressionRule, Variable, VariableRange
from desktop.training.program import Program, Slot
from desktop.training.program_edits import SlotPlace, remove_slot, slot_at, with_slot


@dataclass(frozen=True, slots=True)
class SharedEdit:
    """What all slots get; None stays as it is. ``no_rir``: nothing is asked in reserve."""

    sets: int | None = None
    rest_s: int | None = None
    target_rir: float | None = None
    no_rir: bool = False


def with_shared_edit(program: Program, places: Iterable[SlotPlace], edit: SharedEdit) -> Program:
    """The program with ``edit`` in every slot at ``places``. Where sets grow, their range begins
    with the number given; holds are asked nothing in reserve.
    """
    for place in places:
        program = with_slot(program, place, _edited(slot_at(program, place), edit))
    return program


def without_slots(program: Program, places: Iterable[SlotPlace]) -> Program:
    """The program without the slots at ``places``."""
    for place in sorted(places, reverse=True):
        program = remove_slot(program, place)
    return program


def shared_value(values: Iterable[object]) -> object | None:
    """What all ``values`` are; None where they differ."""
    found = set(values)
    return found.pop() if len(found) == 1 else None


def _edited(slot: Slot, edit: SharedEdit) -> Slot:
    if edit.sets is not None:
        rule = _with_sets(slot.rule, edit.sets)
        slot = replace(slot, start=replace(slot.start, sets=edit.sets), rule=rule)
    if edit.rest_s is not None:
        slot = replace(slot, rest_s=edit.rest_s)
    if slot.start.hold_s is None and (edit.target_rir is not None or edit.no_rir):
        slot = replace(slot, rule=replace(slot.rule, target_rir=edit.target_rir))
    return slot


def _with_sets(rule: ProgressionRule, sets: int) -> ProgressionRule:
    """A range of sets shifted so that it begins with ``sets``."""

    def shifted(ranged: VariableRange) -> VariableRange:
        if ranged.variable is not Variable.SETS or ranged.floor is None:
            return ranged
        ceiling = ranged.ceiling
        if ceiling is not None:
            ceiling += sets - ranged.floor
        return replace(ranged, floor=sets, ceiling=ceiling)

    return replace(rule, ranges=tuple(map(shifted, rule.ranges)))
