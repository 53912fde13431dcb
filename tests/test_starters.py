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
from desktop.training.program import PhasePurpose
from desktop.training.rules import start_within

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
