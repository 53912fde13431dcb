"""Published values of volume, each with its source."""

from __future__ import annotations

import pytest

from desktop.training.exercises import Exercise, LoadingKind, Muscle, Pattern
from desktop.training.schedule import tempo_seconds
from desktop.training.session import SetDone
from desktop.training.volume import MARKS, hard_sets, tonnage

PRESS = Exercise(
    "press",
    "Press",
    Pattern.HORIZONTAL_PUSH,
    LoadingKind.BARBELL,
    (Muscle.CHEST,),
    (Muscle.TRICEPS,),
)
EXTENSION = Exercise(
    "extension", "Extension", Pattern.SINGLE_JOINT, LoadingKind.STACK, (Muscle.TRICEPS,)
)


def test_four_direct_and_eight_indirect_sets_are_eight() -> None:
    # Arithmetic from the counting of Pelland 2024 (preprint, 67 studies): indirect sets are half.
    volume = hard_sets([(EXTENSION, 4), (PRESS, 8)])
    assert volume.by_muscle[Muscle.TRICEPS] == 8.0


def test_volume_load_mean_load_and_density() -> None:
    # BMJ Mil Health 2020;168:314-319, DOI 10.1136/bmjmilitary-2020-001590, Table 1.
    straight = tonnage([SetDone(65_000, 8)] * 3, PRESS)
    assert straight.load_g == 1_560_000
    ascending = tonnage([SetDone(55_000, 10), SetDone(65_000, 8), SetDone(75_000, 6)], PRESS)
    assert ascending.load_g == 1_520_000
    assert ascending.mean_load_g is not None
    assert round(ascending.mean_load_g / 1000) == 63
    assert straight.load_g / 1000 / 45 == pytest.approx(34.7, abs=0.05)


def test_tempo_3_1_1_takes_five_seconds() -> None:
    # Same table: 3 s down, 1 s hold, 1 s up.
    assert tempo_seconds("3-1-1") == 5


def test_the_marks_are_those_published() -> None:
    # Iversen 2021, Sports Med 51(10):2079-2095; Schoenfeld 2017, J Sports Sci 35(11):1073-1082.
    assert [(mark.sets, mark.source[:8]) for mark in MARKS] == [(4, "Iversen "), (10, "Schoenfe")]
