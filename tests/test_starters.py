"""The programs that ship: every exercise is known, every start lies within its rule."""

from __future__ import annotations

from datetime import date
from itertools import pairwise

import pytest

from desktop.catalogue import load_catalogue
from desktop.limits import load_limits
from desktop.planning.history import Library
from desktop.planning.outlook import Onlooker, outlook
from desktop.planning.starters import Starter, named, starters
from desktop.training.balance import FindingCode, findings
from desktop.training.coach import CoachSettings
from desktop.training.exercises import Muscle, Pattern
from desktop.training.position import Position, Variable
from desktop.training.program import PhasePurpose, Slot
from desktop.training.rules import start_within
from desktop.training.schedule import frequency_planned, session_minutes, volume_planned

CATALOGUE = {each.key: each for each in load_catalogue()}
TODAY = date(2026, 11, 26)
STARTERS = starters()
LIBRARY = Library(CATALOGUE, {}, CoachSettings(), load_limits())


def test_there_are_starters_for_a_bar_and_for_nothing() -> None:
    names = [each.program.name for each in STARTERS]
    assert {"Three days, barbell and bar", "Two days, no equipment"} <= set(names)
    assert len(set(names)) == len(names)
    assert named(STARTERS[0].program, "Winter").name == "Winter"


@pytest.mark.parametrize("starter", STARTERS, ids=lambda each: each.file)
def test_every_slot_of_a_starter_can_be_followed(starter: Starter) -> None:
    program = starter.program
    assert program.about
    for index, phase in enumerate(program.phases):
        for day in phase.days:
            for slot in day.slots:
                exercise = CATALOGUE[slot.exercise]
                assert start_within(slot.start, slot.rule, exercise) == slot.start, slot
                seen = outlook(program, index, slot, Onlooker(LIBRARY, TODAY))
                assert seen.strip
                assert len(seen.sessions) == 8
                assert seen.sessions[0].position == slot.start, slot
                positions = [each.position for each in seen.sessions]
                assert all(one != other for one, other in pairwise(positions)), slot


@pytest.mark.parametrize("starter", STARTERS, ids=lambda each: each.file)
def test_starters_have_easier_weeks_and_nothing_close_together(starter: Starter) -> None:
    program = starter.program
    assert any(phase.purpose is PhasePurpose.DELOAD for phase in program.phases)
    codes = {each.code for each in findings(program, CATALOGUE)}
    assert FindingCode.FOLLOWING_DAYS not in codes
    assert FindingCode.SEVERAL_GROW not in codes
    if "no equipment" not in program.name:  # nothing to pull on
        assert FindingCode.PUSH_TO_PULL not in codes


LARGE = (
    Muscle.QUADRICEPS, Muscle.HAMSTRINGS, Muscle.GLUTES, Muscle.CHEST, Muscle.UPPER_BACK,
    Muscle.LATS, Muscle.SHOULDERS, Muscle.BICEPS, Muscle.TRICEPS, Muscle.TRUNK,
)  # fmt: skip
UNTRAINED = {"two-days-no-equipment.json": {Muscle.UPPER_BACK, Muscle.LATS, Muscle.BICEPS}}
# What a program cannot have, as its text says, and what has no place in so few days.
LEFT_OUT = {
    "two-days-no-equipment.json": {
        Pattern.HORIZONTAL_PULL, Pattern.VERTICAL_PULL, Pattern.VERTICAL_PUSH, Pattern.CARRY,
    },
    "two-days-body-weight-and-a-bar.json": {Pattern.CARRY},
    "two-days-dumbbells.json": {Pattern.VERTICAL_PULL},
    "three-days-dumbbells-for-size.json": {Pattern.VERTICAL_PULL},
    "three-days-barbell-and-bar.json": {Pattern.CARRY},
    "four-days-barbell.json": {Pattern.CARRY},
    "three-days-holds-floor-and-bar.json": {Pattern.CARRY},
    "four-days-holds-with-rings.json": {Pattern.CARRY},
}  # fmt: skip


def test_there_are_starters_for_every_equipment_and_two_to_five_days() -> None:
    assert len(STARTERS) >= 8
    days = {len(starter.program.phases[0].days) for starter in STARTERS}
    assert days == {2, 3, 4, 5}
    names = " ".join(starter.program.name for starter in STARTERS)
    for word in ("no equipment", "dumbbells", "barbell", "mixed", "holds"):
        assert word in names


@pytest.mark.parametrize("starter", STARTERS, ids=lambda each: each.file)
def test_a_starter_says_what_it_is_and_for_whom_it_is_not(starter: Starter) -> None:
    program = starter.program
    assert program.about.count("licensed professional") == 1
    assert "common practice" in program.about
    for phase in program.phases:
        names = [day.name for day in phase.days]
        assert len(set(names)) == len(names)
        assert all(len(name) > 3 for name in names)


@pytest.mark.parametrize("starter", STARTERS, ids=lambda each: each.file)
def test_a_starter_meets_the_marks_in_a_plausible_time(starter: Starter) -> None:
    for phase in starter.program.phases:
        volume = volume_planned(phase, CATALOGUE)
        often = frequency_planned(phase, CATALOGUE)
        for muscle in LARGE:
            if muscle in UNTRAINED.get(starter.file, set()):
                continue
            # At least 4 weekly sets a muscle: Iversen 2021, Sports Med 51(10):2079-2095.
            assert volume.by_muscle[muscle] >= 4, muscle
            if "for size" in starter.program.name:
                # 10 and more: Schoenfeld 2017, J Sports Sci 35(11):1073-1082.
                assert volume.by_muscle[muscle] >= 10, muscle
            # On 2 or more days a week: WHO 2020.
            assert often.by_muscle[muscle] >= 2, muscle
        for day in phase.days:
            assert 25 <= session_minutes(day, CATALOGUE) <= 60
            assert session_minutes(day, CATALOGUE, _at_the_most) <= 65


@pytest.mark.parametrize("starter", STARTERS, ids=lambda each: each.file)
def test_what_a_starter_leaves_out_is_known(starter: Starter) -> None:
    for finding in findings(starter.program, CATALOGUE):
        if finding.code is FindingCode.PUSH_TO_PULL:
            continue
        assert finding.code is FindingCode.PATTERN_MISSING, finding
        assert Pattern(str(finding["pattern"])) in LEFT_OUT.get(starter.file, set())


def _at_the_most(slot: Slot) -> Position:
    for variable in (Variable.REPS, Variable.HOLD):
        ranged = slot.rule.range_of(variable)
        if ranged is not None and ranged.ceiling is not None:
            return slot.start.at(variable, ranged.ceiling)
    return slot.start
