"""Test weeks: a week of tests put into a program, of its own lines or, where it has none, a
standard one.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

from desktop.drafting.wishes import DraftWishes, EquipmentClass, equipment_of
from desktop.training.assessment_day import (
    assessment_phase,
    program_tests,
    standard_tests,
    with_assessment,
)
from desktop.training.equipment import Equipment
from desktop.training.exercises import Exercise
from desktop.training.program import PhasePurpose, Program


def with_test_week(
    program: Program,
    exercises: Mapping[str, Exercise],
    at: int,
    name: str,
    owned: Equipment | None = None,
) -> Program:
    """The program with a week of tests before phase ``at`` (the number of phases: at the end).

    Tested are the program's own lines; a program that has none yet is given a test for each
    pattern with what is ``owned`` (None: not known, so with everything). Where nothing at all can
    be tested the program comes back as it was. Raises ValueError for a place that is not there.
    """
    if program_tests(program, exercises):
        return with_assessment(program, exercises, at, name)
    equipment = equipment_of(EquipmentClass.MIXED) if owned is None else owned
    can_do = DraftWishes(1, 60, equipment).can_do
    tests = standard_tests(exercises.values(), can_do)
    if not tests:
        return program
    near = program.phases[min(at, len(program.phases) - 1)].days if program.phases else ()
    phase = assessment_phase(tests, [day.weekday for day in near], name)
    return replace(program, phases=(*program.phases[:at], phase, *program.phases[at:]))


def begins_with_tests(program: Program) -> bool:
    """Whether the first week of a program is one of tests."""
    return bool(program.phases) and program.phases[0].purpose is PhasePurpose.ASSESS
