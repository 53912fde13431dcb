"""What is known of the trainee before the first word is read."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date

from desktop.training.exercises import Exercise, HeightUse, LoadingKind, Measure
from desktop.training.quantities import Unit


@dataclass(frozen=True, slots=True)
class KnownExercise:
    """An exercise as notes may name it.

    ``names``: what it is called; ``variations``: each key with what it is called; ``lines``: the
    names of the trainee's lines of it.
    """

    key: str
    names: tuple[str, ...]
    hold: bool = False
    bodyweight: bool = False
    banded: bool = False
    pair: bool = False
    one_sided: bool = False
    hand_held: bool = False
    heights: tuple[HeightUse, ...] = ()
    variations: tuple[tuple[str, tuple[str, ...]], ...] = ()
    lines: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class KnownHeight:
    """A box, chair or bar the trainee owns: its name, its height in mm, and what stands on it."""

    name: str
    height_mm: int
    uses: tuple[HeightUse, ...] = (HeightUse.HANDS, HeightUse.FEET)


@dataclass(frozen=True, slots=True)
class Known:
    """All that reading takes beside the text.

    ``unit``: of numbers without one. ``day``: of what stands under no date; dates without a year
    are the last before it. ``day_first``: how 3/4 is meant; None: both ways may be. ``remembered``:
    what the trainee calls exercises, each with the key.
    """

    exercises: tuple[KnownExercise, ...]
    unit: Unit
    day: date
    day_first: bool | None = True
    remembered: tuple[tuple[str, str], ...] = ()
    heights: tuple[KnownHeight, ...] = ()


def known_exercise(exercise: Exercise, lines: Iterable[str] = ()) -> KnownExercise:
    """An exercise of the catalogue as notes may name it, with its listed variations."""
    return KnownExercise(
        key=exercise.key,
        names=(exercise.name, *exercise.other_names),
        hold=exercise.measure is Measure.HOLD,
        bodyweight=exercise.loading is LoadingKind.BODYWEIGHT,
        banded=exercise.loading is LoadingKind.BAND,
        pair=exercise.implements == 2,
        one_sided=exercise.unilateral,
        hand_held=exercise.loading in (LoadingKind.DUMBBELL, LoadingKind.KETTLEBELL),
        heights=exercise.heights,
        variations=tuple((one.key, (one.name, *one.other_names)) for one in exercise.variations),
        lines=tuple(lines),
    )
