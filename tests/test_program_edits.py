"""Edits of a program: each does one thing, and its opposite takes it back."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from desktop.catalogue import load_catalogue
from desktop.training.balance import (
    Finding,
    FindingCode,
    KeepVariable,
    PairSlots,
    RemoveSlot,
    Wishes,
    findings,
)
from desktop.training.exercises import Exercise
from desktop.training.mending import mended
from desktop.training.position import Position, ProgressionRule, Variable, VariableRange
from desktop.training.program import Phase, PhasePurpose, Program, Slot, TrainingDay
from desktop.training.program_edits import (
    DayPlace,
    NoSuchPlace,
    SlotPlace,
    add_day,
    add_phase,
    add_slot,
    day_at,
    duplicate_day,
    duplicate_slot,
    free_name,
    free_pair,
    free_weekday,
    move_day,
    move_phase,
    move_slot,
    phase_after,
    phase_at,
    remove_day,
    remove_phase,
    remove_slot,
    replace_exercise,
    slot_at,
    slots_with,
    with_phase,
    with_slot,
)
from desktop.training.rules import new_slot
from tests import strategies

CATALOGUE = {each.key: each for each in load_catalogue()}
KEYS = ("back-squat", "push-up", "plank")
marked = st.builds(  # what a slot holds does not matter to an edit, but that it is told apart
    Slot,
    st.sampled_from(KEYS),
    st.just(ProgressionRule()),
    st.just(Position(reps=8)),
    note=st.integers(0, 999).map(str),
)
programs = strategies.programs(KEYS, marked)


def all_slots(program: Program) -> Counter[str]:
    return Counter(
        repr(slot) for phase in program.phases for day in phase.days for slot in day.slots
    )


def slot_places(program: Program) -> list[SlotPlace]:
    return [
        SlotPlace(p, d, s)
        for p, phase in enumerate(program.phases)
        for d, day in enumerate(phase.days)
        for s, _ in enumerate(day.slots)
    ]


@st.composite
def programs_with_a_slot(draw: st.DrawFn) -> tuple[Program, SlotPlace]:
    program = draw(programs)
    places = slot_places(program)
    assume(places)
    return program, draw(st.sampled_from(places))


@given(programs_with_a_slot(), st.sampled_from([1, -1]))
def test_a_slot_moved_and_moved_back_stands_where_it_stood(
    case: tuple[Program, SlotPlace], by: int
) -> None:
    program, place = case
    moved, there = move_slot(program, place, by)
    assert slot_at(moved, there) == slot_at(program, place)
    assert all_slots(moved) == all_slots(program)
    if there != place:
        assert move_slot(moved, there, -by) == (program, place)
    else:
        assert moved == program


@given(programs_with_a_slot())
def test_a_duplicate_stands_behind_and_removing_it_takes_it_back(
    case: tuple[Program, SlotPlace],
) -> None:
    program, place = case
    doubled, behind = duplicate_slot(program, place)
    assert slot_at(doubled, behind) == slot_at(doubled, place)
    assert remove_slot(doubled, behind) == program


@given(programs_with_a_slot())
def test_a_slot_removed_and_added_again_is_as_before(case: tuple[Program, SlotPlace]) -> None:
    program, place = case
    slot = slot_at(program, place)
    assert add_slot(remove_slot(program, place), place, slot) == program


@given(programs_with_a_slot(), st.integers(-5, 5))
def test_days_and_phases_move_there_and_back(case: tuple[Program, SlotPlace], by: int) -> None:
    program, place = case
    moved, there = move_day(program, place.of_day, by)
    assert move_day(moved, there, place.day - there.day)[0] == program
    later, at = move_phase(program, place.phase, by)
    assert move_phase(later, at, place.phase - at)[0] == program


@given(programs_with_a_slot())
def test_a_day_duplicated_is_taken_back_by_removing_it(case: tuple[Program, SlotPlace]) -> None:
    program, place = case
    doubled, behind = duplicate_day(program, place.of_day)
    assert day_at(doubled, behind).slots == day_at(program, place.of_day).slots
    assert remove_day(doubled, behind) == program


@given(programs_with_a_slot())
def test_replacing_an_exercise_leaves_none_of_it_and_touches_nothing_else(
    case: tuple[Program, SlotPlace],
) -> None:
    program, place = case
    before = slot_at(program, place).exercise
    after = CATALOGUE["front-squat"]
    changed = replace_exercise(program, before, after, CATALOGUE)
    assert not slots_with(changed, before)
    assert slots_with(changed, after.key) == slots_with(program, before)
    for other in set(KEYS) - {before}:
        places = slots_with(program, other)
        assert [slot_at(changed, p) for p in places] == [slot_at(program, p) for p in places]


@given(programs)
def test_the_last_phase_stays(program: Program) -> None:
    assume(program.phases)
    while len(program.phases) > 1:
        program = remove_phase(program, 0)
    assert remove_phase(program, 0) == program


SQUAT = new_slot(CATALOGUE["back-squat"])
PRESS = new_slot(CATALOGUE["bench-press"])
ROW = new_slot(CATALOGUE["bent-over-row"])
PROGRAM = Program(
    "Winter strength",
    (
        Phase(
            "Base",
            4,
            (
                TrainingDay("Monday", (SQUAT, PRESS), weekday=0),
                TrainingDay("Thursday", (ROW,), weekday=3),
            ),
        ),
    ),
)


def test_a_slot_moves_over_the_edge_of_its_day() -> None:
    moved, there = move_slot(PROGRAM, SlotPlace(0, 0, 1), 1)
    assert there == SlotPlace(0, 1, 0)
    assert [len(day.slots) for day in moved.phases[0].days] == [1, 2]
    assert move_slot(PROGRAM, SlotPlace(0, 0, 0), -1) == (PROGRAM, SlotPlace(0, 0, 0))
    assert move_slot(PROGRAM, SlotPlace(0, 1, 0), 1) == (PROGRAM, SlotPlace(0, 1, 0))


def test_a_place_that_is_not_there_is_said_so() -> None:
    with pytest.raises(NoSuchPlace, match="2 slots"):
        slot_at(PROGRAM, SlotPlace(0, 0, 2))
    with pytest.raises(NoSuchPlace, match="1 phases"):
        phase_at(PROGRAM, 1)
    with pytest.raises(NoSuchPlace):
        add_slot(PROGRAM, SlotPlace(0, 1, 2), ROW)
    with pytest.raises(ValueError, match="1 or -1"):
        move_slot(PROGRAM, SlotPlace(0, 0, 0), 2)


def test_a_new_phase_takes_the_days_along() -> None:
    easy = phase_after(PROGRAM, 0, "Easy", PhasePurpose.DELOAD)
    longer = add_phase(PROGRAM, 1, easy)
    assert (longer.weeks, longer.phases[1].days) == (5, PROGRAM.phases[0].days)
    assert with_phase(longer, 1, replace(easy, weeks=0)).phases[1].weeks == 1


def test_one_more_day_leaves_a_day_between() -> None:
    phase = PROGRAM.phases[0]
    assert free_weekday(phase) == 5
    assert free_weekday(replace(phase, days=())) == 0
    turning = tuple(replace(day, weekday=None) for day in phase.days)
    assert free_weekday(replace(phase, days=turning)) is None
    longer = add_day(PROGRAM, DayPlace(0, 2), TrainingDay("Saturday", weekday=5))
    assert duplicate_day(longer, DayPlace(0, 0))[0].phases[0].days[1].weekday == 2


def test_pairs_and_names_take_what_is_free() -> None:
    paired = with_slot(PROGRAM, SlotPlace(0, 0, 0), replace(SQUAT, pair="a"))
    assert free_pair(day_at(paired, DayPlace(0, 0))) == "B"
    assert free_name("Winter", ["winter", "Winter 2"]) == "Winter 3"
    assert free_name("Spring", ["Winter"]) == "Spring"


# Mending what the balance check found

WISHES = Wishes(minutes=15, weekdays=(0, 1, 2, 3, 4, 5, 6))


def found(program: Program, code: FindingCode, wishes: Wishes = WISHES) -> int:
    return sum(each.code is code for each in findings(program, CATALOGUE, wishes))


def mend_first(program: Program, code: FindingCode, wishes: Wishes = WISHES) -> Program:
    first = next(each for each in findings(program, CATALOGUE, wishes) if each.code is code)
    assert first.proposal is not None
    return mended(program, first, CATALOGUE)


@pytest.mark.parametrize("code", [FindingCode.PATTERN_MISSING, FindingCode.OVER_TIME])
def test_applying_a_proposal_leaves_less_to_find(code: FindingCode) -> None:
    program = PROGRAM
    for _ in range(found(program, code)):
        before = found(program, code)
        after = mend_first(program, code)
        assert after != program
        program = after
        if found(program, code) < before:
            return
    pytest.fail(f"{code} does not go away")


def test_every_missing_pattern_can_be_added() -> None:
    program, wishes = PROGRAM, Wishes()
    while found(program, FindingCode.PATTERN_MISSING, wishes):
        before = found(program, FindingCode.PATTERN_MISSING, wishes)
        try:
            program = mend_first(program, FindingCode.PATTERN_MISSING, wishes)
        except AssertionError:
            break  # no exercise, or no day, for that pattern
        assert found(program, FindingCode.PATTERN_MISSING, wishes) == before - 1


def test_following_days_are_moved_apart() -> None:
    days = (
        TrainingDay("Monday", (SQUAT,), weekday=0),
        TrainingDay("Tuesday", (SQUAT,), weekday=1),
    )
    program = Program("Close", (Phase("Base", 4, days),))
    apart = mend_first(program, FindingCode.FOLLOWING_DAYS, Wishes())
    assert found(apart, FindingCode.FOLLOWING_DAYS, Wishes()) == 0


def grown(reps: tuple[int, int], sets: int, load_g: int = 60_000) -> Slot:
    rule = ProgressionRule(
        (VariableRange(Variable.REPS, *reps), VariableRange(Variable.LOAD, increment=2500))
    )
    return Slot("back-squat", rule, Position(load_g, reps=reps[0], sets=sets))


def two_phases(before: tuple[Slot, ...], after: tuple[Slot, ...]) -> Program:
    def phase(name: str, slots: tuple[Slot, ...]) -> Phase:
        days = (TrainingDay(f"Day {n}", (slot,), weekday=2 * n) for n, slot in enumerate(slots))
        return Phase(name, 4, tuple(days))

    return Program("Both at once", (phase("Base", before), phase("More", after)))


def test_one_of_two_that_grow_at_once_is_kept_as_it_was() -> None:
    program = two_phases((grown((5, 7), 3),), (grown((8, 10), 4),))
    code = FindingCode.SEVERAL_GROW
    assert found(program, code, Wishes()) == 1
    assert found(mend_first(program, code, Wishes()), code, Wishes()) == 0


def test_a_variable_is_kept_with_the_range_it_had() -> None:
    sets = VariableRange(Variable.SETS, 3, 4)
    before = grown((5, 7), 3)
    ranges = before.rule.ranges
    before = replace(before, rule=ProgressionRule((ranges[0], sets, ranges[1])))
    after = grown((8, 10), 4)
    keep = KeepVariable("back-squat", "", "sets")
    finding = Finding(FindingCode.SEVERAL_GROW, 1, proposal=keep)
    kept = slot_at(mended(two_phases((before,), (after,)), finding, CATALOGUE), SlotPlace(1, 0, 0))
    assert kept.start == replace(after.start, sets=3)
    assert kept.rule.ranges == (after.rule.ranges[0], sets, after.rule.ranges[1])
    # A hold that turned into repetitions has no number of them to go back to.
    hold = Slot("back-squat", ProgressionRule(), Position(60_000, None, 3, hold_s=20))
    keep = replace(keep, variable="reps")
    finding = replace(finding, proposal=keep)
    kept = slot_at(mended(two_phases((hold,), (after,)), finding, CATALOGUE), SlotPlace(1, 0, 0))
    assert kept.start == after.start
    assert kept.rule.ranges == after.rule.ranges[1:]


def test_a_day_more_is_taken_off_again() -> None:
    fixed = ProgressionRule((VariableRange(Variable.REPS, 5, 7),))
    heavier = replace(grown((5, 7), 3, 70_000), rule=fixed)
    program = two_phases((replace(grown((5, 7), 3), rule=fixed),), (heavier, heavier))
    code = FindingCode.SEVERAL_GROW
    once = mend_first(program, code, Wishes())
    assert slots_with(once, "back-squat") == (SlotPlace(0, 0, 0), SlotPlace(1, 0, 0))
    # Said again of a program that has one day left, it takes nothing.
    again = next(each for each in findings(program, CATALOGUE, Wishes()) if each.code is code)
    assert mended(once, again, CATALOGUE) == once


def test_nothing_is_kept_from_before_the_first_phase() -> None:
    program = two_phases((grown((5, 7), 3),), (grown((8, 10), 4),))
    keep = KeepVariable("back-squat", "", "sets")
    for phase in (0, 1):
        finding = Finding(FindingCode.SEVERAL_GROW, phase, proposal=keep)
        assert (mended(program, finding, CATALOGUE) == program) is (phase == 0)


def test_a_long_day_is_shortened_by_a_pair_or_by_a_slot_less() -> None:
    slots = (grown((5, 7), 3), new_slot(CATALOGUE["push-up"]), new_slot(CATALOGUE["plank"]))
    program = Program("Long", (Phase("Base", 4, (TrainingDay("Monday", slots, weekday=0),)),))
    finding = Finding(FindingCode.OVER_TIME, 0, proposal=PairSlots(0, 0, 2, 4.0))
    day = day_at(mended(program, finding, CATALOGUE), DayPlace(0, 0))
    assert [slot.pair for slot in day.slots] == ["A", "", "A"]
    assert [replace(slot, pair="") for slot in day.slots] == list(slots)
    finding = replace(finding, proposal=RemoveSlot(0, 1, 6.0))
    day = day_at(mended(program, finding, CATALOGUE), DayPlace(0, 0))
    assert day.slots == (slots[0], slots[2])


def test_a_finding_without_a_proposal_changes_nothing() -> None:
    nobody: dict[str, Exercise] = {
        key: CATALOGUE[key] for key in ("back-squat", "bench-press", "bent-over-row")
    }
    missing = findings(PROGRAM, nobody, Wishes())[0]
    assert missing.proposal is None
    assert mended(PROGRAM, missing, nobody) == PROGRAM
