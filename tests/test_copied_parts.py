"""Parts of programs are copied as program files, and pasted where they belong."""

from __future__ import annotations

from dataclasses import replace

import pytest

from desktop.planning.copied_parts import (
    CannotPaste,
    PartKind,
    copied_day,
    copied_phase,
    copied_slots,
    part_from,
    pasted,
)
from desktop.training.position import Position, ProgressionRule, Variable, VariableRange
from desktop.training.program import Phase, Program, Slot, TrainingDay
from desktop.training.program_edits import DayPlace, SlotPlace, slot_at, with_slot
from desktop.training.several_slots import (
    SharedEdit,
    shared_value,
    with_shared_edit,
    without_slots,
)

REPS = VariableRange(Variable.REPS, 8, 12)
LOAD = VariableRange(Variable.LOAD, increment=2_500)
SETS = VariableRange(Variable.SETS, 3, 4)
SQUAT = Slot("squat", ProgressionRule((REPS, SETS, LOAD), target_rir=2.0), Position(60_000, 8, 3))
ROW = Slot("row", ProgressionRule((REPS, LOAD)), Position(40_000, 8, 3), rest_s=90)
PLANK = Slot("plank", ProgressionRule(), Position(hold_s=30, sets=3))
PROGRAM = Program(
    "Winter",
    (
        Phase("Base", 4, (TrainingDay("Legs", (SQUAT, ROW), 0), TrainingDay("Trunk", (PLANK,), 2))),
        Phase("Peak", 2, (TrainingDay("Legs", (SQUAT,), 0),)),
    ),
)
KNOWN = {"squat", "row", "plank"}


def exercises(program: Program, phase: int = 0) -> list[list[str]]:
    return [[slot.exercise for slot in day.slots] for day in program.phases[phase].days]


def test_slots_go_behind_a_slot_also_through_text() -> None:
    part = copied_slots(PROGRAM, [SlotPlace(0, 1, 0), SlotPlace(0, 0, 0)])
    again = part_from(part.text, part.kind.value, KNOWN)
    assert again == part
    program, there = pasted(PROGRAM, SlotPlace(0, 0, 0), again)
    assert exercises(program) == [["squat", "squat", "plank", "row"], ["plank"]]
    assert there == SlotPlace(0, 0, 1)
    assert program.phases[0].days[0].slots[1] == SQUAT


def test_slots_go_to_the_end_of_a_day_or_of_a_phase() -> None:
    part = copied_slots(PROGRAM, [SlotPlace(0, 0, 1)])
    program, _ = pasted(PROGRAM, DayPlace(0, 1), part)
    assert exercises(program) == [["squat", "row"], ["plank", "row"]]
    program, _ = pasted(PROGRAM, 1, part)
    assert exercises(program, 1) == [["squat", "row"]]
    empty = replace(PROGRAM, phases=(Phase("New", 3),))
    program, _ = pasted(empty, 0, part)
    assert exercises(program) == [["row"]]


def test_a_day_takes_a_weekday_that_is_free() -> None:
    part = copied_day(PROGRAM, DayPlace(0, 0))
    program, there = pasted(PROGRAM, DayPlace(0, 0), part)
    assert [day.weekday for day in program.phases[0].days] == [0, 4, 2]
    assert there == DayPlace(0, 1)
    program, _ = pasted(replace(PROGRAM, phases=(Phase("New", 3),)), 0, part)
    assert program.phases[0].days[0] == PROGRAM.phases[0].days[0]


def test_a_phase_goes_behind_a_phase_of_another_program() -> None:
    other = Program("Spring", (Phase("Start", 1),))
    part = part_from(copied_phase(PROGRAM, 1).text, PartKind.PHASE.value, KNOWN)
    program, there = pasted(other, 0, part)
    assert [phase.name for phase in program.phases] == ["Start", "Peak"]
    assert there == 1


def test_text_from_elsewhere_is_a_day_or_its_phases() -> None:
    assert part_from(copied_day(PROGRAM, DayPlace(0, 0)).text, "", KNOWN).kind is PartKind.DAY
    assert part_from(copied_phase(PROGRAM, 0).text, "", KNOWN).kind is PartKind.PHASE


@pytest.mark.parametrize("text", ["", "3 x 8", '{"schema": "rungwise program", "version": 99}'])
def test_what_is_no_program_is_refused_with_a_sentence(text: str) -> None:
    with pytest.raises(CannotPaste, match="no part of a program"):
        part_from(text, "", KNOWN)


def test_exercises_that_are_not_there_are_named() -> None:
    part = copied_day(PROGRAM, DayPlace(0, 0))
    with pytest.raises(CannotPaste, match="row"):
        part_from(part.text, part.kind.value, {"squat"})


EVERY = (SlotPlace(0, 0, 0), SlotPlace(0, 0, 1), SlotPlace(0, 1, 0))


def test_one_edit_reaches_all_slots_and_leaves_the_rest() -> None:
    program = with_shared_edit(PROGRAM, EVERY, SharedEdit(sets=4))
    slots = [slot for day in program.phases[0].days for slot in day.slots]
    assert [slot.start.sets for slot in slots] == [4, 4, 4]
    grown = slots[0].rule.range_of(Variable.SETS)
    assert grown is not None
    assert (grown.floor, grown.ceiling) == (4, 5)
    assert [slot.rest_s for slot in slots] == [120, 90, 120]
    assert program.phases[1] == PROGRAM.phases[1]
    rested = with_shared_edit(PROGRAM, EVERY, SharedEdit(rest_s=150))
    assert {slot.rest_s for day in rested.phases[0].days for slot in day.slots} == {150}


def test_a_range_of_sets_without_an_end_begins_with_the_number_given() -> None:
    open_end = ProgressionRule((REPS, VariableRange(Variable.SETS, 3)))
    program = with_slot(PROGRAM, EVERY[0], replace(SQUAT, rule=open_end))
    edited = slot_at(with_shared_edit(program, EVERY[:1], SharedEdit(sets=5)), EVERY[0])
    assert edited.start.sets == 5
    assert edited.rule.ranges == (REPS, VariableRange(Variable.SETS, 5))


def test_a_hold_is_asked_nothing_in_reserve() -> None:
    program = with_shared_edit(PROGRAM, EVERY, SharedEdit(target_rir=1.0))
    rirs = [slot.rule.target_rir for day in program.phases[0].days for slot in day.slots]
    assert rirs == [1.0, 1.0, None]
    none = with_shared_edit(program, EVERY, SharedEdit(no_rir=True))
    assert none.phases[0].days[0].slots[0].rule.target_rir is None


def test_all_marked_slots_go_at_once() -> None:
    assert exercises(without_slots(PROGRAM, EVERY[:2])) == [[], ["plank"]]


def test_a_value_is_shared_only_where_all_agree() -> None:
    assert shared_value([3, 3]) == 3
    assert shared_value([3, 4]) is None
    assert shared_value([]) is None
