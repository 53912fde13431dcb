"""The words of the model refuse what cannot be."""

from __future__ import annotations

import pytest

from desktop.training.exercises import (
    Exercise,
    LoadingKind,
    Muscle,
    Pattern,
    PushUpGeometry,
    RowGeometry,
    Variation,
)
from desktop.training.program import Phase, Program

PULL_UP = Exercise(
    "pull-up",
    "Pull-up",
    Pattern.VERTICAL_PULL,
    LoadingKind.BODYWEIGHT,
    (Muscle.LATS,),
    variations=(Variation("full", "full"),),
)


def test_a_variation_has_one_geometry_at_most() -> None:
    with pytest.raises(ValueError, match="at most one"):
        Variation("both", "both", push_up=PushUpGeometry(), row=RowGeometry())
    assert Variation("by order", "by order").order_only


def test_a_variation_is_found_by_its_key() -> None:
    assert PULL_UP.variation("full").name == "full"
    with pytest.raises(KeyError, match="no variation"):
        PULL_UP.variation("one arm")


def test_weeks_outside_a_program_have_no_phase() -> None:
    program = Program("Winter", (Phase("Base", 4), Phase("Build", 8)))
    names = [phase and phase.name for phase in map(program.phase_of_week, (0, 1, 4, 5, 12, 13))]
    assert names == [None, "Base", "Base", "Build", "Build", None]
    assert program.weeks == 12
