"""What a trainee owns, and the loads and heights that can be made from it."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum


@dataclass(frozen=True, slots=True)
class Bar:
    """A bar: its name and its mass in grams, collars apart."""

    name: str
    mass_g: int


@dataclass(frozen=True, slots=True)
class Discs:
    """Discs of one mass (grams each) and how many of them are owned (not pairs)."""

    mass_g: int
    count: int


@dataclass(frozen=True, slots=True)
class Band:
    """An elastic band: two measured points (stretch in mm, pull in grams)."""

    name: str
    short_mm: int
    short_g: int
    long_mm: int
    long_g: int


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


@dataclass(frozen=True, slots=True)
class AdjustableDumbbell:
    """A dumbbell handle loaded with discs; ``handles`` are owned (2: a pair can be made)."""

    handle_g: int
    handles: int
    discs: tuple[Discs, ...]


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

    ``dumbbells_g`` and ``kettlebells_g`` list each single implement owned (a pair is two entries).
    ``vest_g`` lists the added loads that a vest or belt can make, ``assistance_g`` (positive) what
    an assisted machine takes off. ``boxes`` raise hands or feet; ``bar_heights`` are bars to row under.
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
