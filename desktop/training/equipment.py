"""What a trainee owns. The loads that can be made from it: discs, loads and loading."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from typing import Final

from desktop.training.discs import InvalidEquipment as InvalidEquipment
from desktop.training.discs import discs_per_side as discs_per_side
from desktop.training.discs import reachable_loads as reachable_loads
from desktop.training.loads import distinct as distinct
from desktop.training.loads import enclosing as enclosing
from desktop.training.loads import found as found
from desktop.training.loads import next_down as next_down
from desktop.training.loads import next_up as next_up
from desktop.training.loads import round_down as round_down
from desktop.training.quantities import MAX_LOAD_G

MOST_PLATES: Final = 100


@dataclass(frozen=True, slots=True)
class Bar:
    """A bar: its name and its mass in grams, collars apart.

    ``collars_g``: its own pair of collars where it has one; None: the equipment's.
    """

    name: str
    mass_g: int
    collars_g: int | None = None

    def __post_init__(self) -> None:
        _check("a bar", self.mass_g, 1)
        _check("a pair of collars", self.collars_g or 0)


@dataclass(frozen=True, slots=True)
class Discs:
    """Discs of one mass (grams each) and how many of them are owned (not pairs)."""

    mass_g: int
    count: int

    def __post_init__(self) -> None:
        _check("a disc", self.mass_g, 1)
        if self.count < 0:
            raise InvalidEquipment(f"0 or more discs are owned, not {self.count}")


@dataclass(frozen=True, slots=True)
class Band:
    """An elastic band: two measured points (stretch in mm, pull in grams).

    Measure it where it is used: at the top of the movement (short) and at the bottom (long).
    All four 0: not measured, so that its order among the others is all that is known.
    """

    name: str
    short_mm: int
    short_g: int
    long_mm: int
    long_g: int

    def __post_init__(self) -> None:
        if not self.measured:
            return
        if not (0 < self.short_mm < self.long_mm and 0 < self.short_g < self.long_g):
            raise InvalidEquipment(
                f"band {self.name!r}: both stretches and pulls are above 0 and the longer one "
                "pulls more; all four 0 where it was not measured"
            )

    @property
    def measured(self) -> bool:
        """Whether its pull is known."""
        return any((self.short_mm, self.short_g, self.long_mm, self.long_g))


@dataclass(frozen=True, slots=True)
class Stack:
    """A machine's stack of plates: first, step and last in grams; ``half_step_g`` where a small
    extra plate can be added (0: none). ``name`` tells the machine.
    """

    name: str
    first_g: int
    step_g: int
    last_g: int
    half_step_g: int = 0

    def __post_init__(self) -> None:
        _check("the first plate of a stack", self.first_g)
        _check("the whole stack", self.last_g, self.first_g)
        _check("a step of a stack", self.step_g, 1)
        _check("the extra plate of a stack", self.half_step_g)
        if (self.last_g - self.first_g) // self.step_g > MOST_PLATES:
            raise InvalidEquipment(f"a stack has at most {MOST_PLATES} steps")


@dataclass(frozen=True, slots=True)
class AdjustableDumbbell:
    """A dumbbell handle (with its own collars) loaded with discs of its own; ``handles`` are
    owned (2: a pair can be made, which shares the discs).
    """

    handle_g: int
    handles: int
    discs: tuple[Discs, ...]

    def __post_init__(self) -> None:
        _check("a handle", self.handle_g)
        if self.handles < 1:
            raise InvalidEquipment(f"1 or more handles are owned, not {self.handles}")


class Place(StrEnum):
    """Things of the surroundings that some exercises need."""

    BAR = "bar"
    LOW_BAR = "low bar"
    RINGS = "rings"
    STRAPS = "straps"
    PARALLEL_BARS = "parallel bars"
    BENCH = "bench"
    WALL = "wall"


@dataclass(frozen=True, slots=True)
class Height:
    """A box, chair, stair step or bar to use: its name in the trainee's words and height in mm."""

    name: str
    height_mm: int


@dataclass(frozen=True, slots=True)
class Equipment:
    """All that one trainee can use at one time; masses in grams, heights in millimetres.

    ``bars`` stand in the order of use: a load is put on the first that can carry it.
    ``collars_g`` is the pair together; it goes on with discs, a bare bar needs none.

    ``dumbbells_g`` and ``kettlebells_g`` list each single implement owned (a pair is two entries).
    ``vest_g`` lists the added loads that a vest or belt can make, ``assistance_g`` (positive) what
    an assisted machine takes off. ``boxes`` raise hands or feet; ``bar_heights`` are bars to row
    under.
    """

    bars: tuple[Bar, ...] = ()
    discs: tuple[Discs, ...] = ()
    collars_g: int = 0
    dumbbells_g: tuple[int, ...] = ()
    adjustable: tuple[AdjustableDumbbell, ...] = ()
    kettlebells_g: tuple[int, ...] = ()
    stacks: tuple[Stack, ...] = ()
    vest_g: tuple[int, ...] = ()
    assistance_g: tuple[int, ...] = ()
    bands: tuple[Band, ...] = ()
    boxes: tuple[Height, ...] = ()
    bar_heights: tuple[Height, ...] = ()
    places: tuple[Place, ...] = ()

    def __post_init__(self) -> None:
        _check("a pair of collars", self.collars_g)
        for what, masses in (
            ("a dumbbell", self.dumbbells_g),
            ("a kettlebell", self.kettlebells_g),
            ("a vest", self.vest_g),
            ("assistance", self.assistance_g),
        ):
            for mass_g in masses:
                _check(what, mass_g)


def _check(what: str, mass_g: int, least_g: int = 0) -> None:
    if not least_g <= mass_g <= MAX_LOAD_G:
        raise InvalidEquipment(f"{what} is {least_g} to {MAX_LOAD_G} g, not {mass_g}")
