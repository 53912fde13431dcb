"""Pieces: what a chain of figures says by itself, and what numbers are plausible.

The bounds are common practice.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from typing import Final

from desktop.notes.figures import Factor
from desktop.notes.reading import Doubt, ReadSet, Span
from desktop.training.quantities import Unit

SURE_SETS: Final = 10
"""So many sets are plausible; up to `MOST_SETS` they may be."""
MOST_SETS: Final = 20
SURE_REPS: Final = 50
MOST_REPS: Final = 200
MOST_SECONDS: Final = 3_600
MOST_LOAD_G: Final = 1_000_000
LOADED_REPS: Final = 30
"""Beyond so many repetitions a number beside a loaded exercise is rather its load."""

Sets = tuple[ReadSet, ...]


class What(StrEnum):
    """What a chain says."""

    WORK = "work"
    LOAD = "load"
    COUNT = "count"
    BARE = "bare"
    NOTHING = "nothing"


@dataclass(frozen=True, slots=True)
class Piece:
    """What a chain says: ``sets`` (load None where it does not say one), ``loads`` in grams, or a
    ``count`` of sets. ``doubt`` with what else it may be: ``others``. ``counted``: it says itself
    how many sets.
    """

    what: What
    span: Span
    sets: Sets = ()
    loads: tuple[int, ...] = ()
    count: int = 0
    unit: Unit | None = None
    doubt: Doubt | None = None
    others: tuple[Sets, ...] = ()
    counted: bool = False
    bare: Factor | None = None
    joint: str = ""
