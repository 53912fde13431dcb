"""What a session asks of one line, and what the equipment allows in between."""

from __future__ import annotations

from dataclasses import dataclass

from desktop.training.position import Position
from desktop.training.reasons import Reason
from desktop.training.session import AskedSet


@dataclass(frozen=True, slots=True)
class InBetween:
    """A smaller step than the next one: what it would ask and by how much demand grows
    (fraction of today's; None where it cannot be computed).
    """

    position: Position
    demand_change: float | None
    kind: str  # "one more rep", "one more set", "slower tempo", "smaller discs", "variation"


@dataclass(frozen=True, slots=True)
class Target:
    """What one line is asked on a day. ``position`` None or no ``sets``: nothing is asked, and
    ``reason`` says why. ``notes``: what else changed it on this day (gap, deload, equipment).
    """

    position: Position | None
    sets: tuple[AskedSet, ...]
    reason: Reason
    notes: tuple[Reason, ...] = ()
    in_betweens: tuple[InBetween, ...] = ()
    deload: bool = False


@dataclass(frozen=True, slots=True)
class StripCell:
    """One cell of a step strip: a value in the model's units (grams, counts, seconds) or a
    variation's key with its name.
    """

    value: int | str
    label: str = ""
    here: bool = False
    next: bool = False


@dataclass(frozen=True, slots=True)
class StripVariable:
    """One variable's cells, in ascending order; ``rolls_next``: the next step passes on to the
    following (slower) variable. ``more_below`` and ``more_above`` count cells not shown.
    """

    variable: str
    cells: tuple[StripCell, ...]
    rolls_next: bool = False
    more_below: int = 0
    more_above: int = 0
