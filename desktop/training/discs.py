"""Discs for a load: an exact search over counted pairs, fewest discs first, then largest first.

A table holds, for each number of discs, the set of sums that so many discs on one side can make.
A set of sums is one integer whose bit n says that the sum n can be made (in units of the discs'
common divisor), so that adding a disc to every sum at once is one shift. Counts are limited and
sets are odd in real rooms, which is why taking the largest disc first would miss loads.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import lru_cache
from math import gcd
from typing import Final

from desktop.training.quantities import MAX_LOAD_G, SAME_LOAD_G

MOST_PAIRS: Final = 100


class InvalidEquipment(ValueError):
    """Equipment that cannot be; the message says what is allowed."""


def discs_per_side(load_g: int, bar_g: int, pairs: Mapping[int, int]) -> tuple[int, ...] | None:
    """The discs on each side of a bar that make ``load_g``, in grams, largest first.

    ``bar_g`` is the bar with its collars, ``pairs`` how many pairs there are of each disc mass
    (grams: number). Of all ways the one with the fewest discs, then with the largest first. A
    load within 10 g is the same load. Empty for the bare bar, None when it cannot be made.
    Raises InvalidEquipment for masses below 1 g, negative numbers or more than 100 pairs.
    """
    table = _table(_checked(bar_g, pairs))
    load_g, bar_g = int(load_g), int(bar_g)  # whole numbers of other kinds count as well
    lowest_g = load_g - bar_g - SAME_LOAD_G
    highest_g = load_g - bar_g + SAME_LOAD_G
    # Each side carries half; round the window inwards to whole units.
    window = (-(-lowest_g // (2 * table.unit_g)), highest_g // (2 * table.unit_g))
    for count, sums in enumerate(table.stages[-1]):
        if _holds(sums, window):
            return table.pick(count, window)
    return None


def reachable_loads(bar_g: int, pairs: Mapping[int, int]) -> tuple[int, ...]:
    """Every load in grams that a bar (with its collars) and pairs of discs make, sorted.

    The bar itself is included. Sums within 10 g of the next lighter one listed are the same load
    and stand once; above `MAX_LOAD_G` nothing is listed. Raises as `discs_per_side`.
    """
    table = _table(_checked(bar_g, pairs))
    bar_g = int(bar_g)
    step_g = 2 * table.unit_g
    sums = 0
    for of_count in table.stages[-1]:
        sums |= of_count
    marks = f"{sums:b}"[::-1]
    loads: list[int] = []
    at = 0
    while 0 <= at <= (MAX_LOAD_G - bar_g) // step_g:
        loads.append(bar_g + at * step_g)
        at = marks.find("1", at + SAME_LOAD_G // step_g + 1)
    return tuple(loads)


@dataclass(frozen=True, slots=True)
class _Table:
    """``stages[i][n]``: sums that n of the i lightest kinds of disc can make on one side, as bits
    in units of ``unit_g``; ``kinds`` are (units, number a side), lightest first.
    """

    unit_g: int
    kinds: tuple[tuple[int, int], ...]
    stages: tuple[tuple[int, ...], ...]

    def pick(self, count: int, window: tuple[int, int]) -> tuple[int, ...]:
        """Exactly ``count`` discs with a sum in ``window`` (units), as many large ones as can be;
        there must be such discs.
        """
        lowest, highest = window
        picked: list[int] = []
        for (units, number), lighter in zip(
            reversed(self.kinds), reversed(self.stages[:-1]), strict=True
        ):
            taken = min(number, count)
            while not _holds(
                lighter[count - taken], (lowest - taken * units, highest - taken * units)
            ):
                taken -= 1
            picked += [units * self.unit_g] * taken
            count -= taken
            lowest -= taken * units
            highest -= taken * units
        return tuple(picked)


def _holds(sums: int, window: tuple[int, int]) -> bool:
    lowest, highest = max(window[0], 0), window[1]
    return lowest <= highest and bool(sums >> lowest & ((1 << (highest - lowest + 1)) - 1))


@lru_cache(maxsize=32)
def _table(kinds_g: tuple[tuple[int, int], ...]) -> _Table:
    unit_g = gcd(*(mass_g for mass_g, _ in kinds_g)) or 1
    kinds = tuple((mass_g // unit_g, number) for mass_g, number in kinds_g)
    possible = (1 << (MAX_LOAD_G // (2 * unit_g) + 1)) - 1
    stages: list[tuple[int, ...]] = [(1,)]
    for units, number in kinds:
        sums = stages[-1]
        for _ in range(number):
            without, with_one = (*sums, 0), (0, *(each << units & possible for each in sums))
            sums = tuple(a | b for a, b in zip(without, with_one, strict=True))
        stages.append(sums)
    return _Table(unit_g, kinds, tuple(stages))


def _checked(bar_g: int, pairs: Mapping[int, int]) -> tuple[tuple[int, int], ...]:
    if not 0 <= bar_g <= MAX_LOAD_G:
        raise InvalidEquipment(f"a bar weighs 0 to {MAX_LOAD_G} g, not {bar_g}")
    for mass_g, number in pairs.items():
        if not 1 <= mass_g <= MAX_LOAD_G:
            raise InvalidEquipment(f"a disc weighs 1 to {MAX_LOAD_G} g, not {mass_g}")
        if number < 0:
            raise InvalidEquipment(f"there are 0 or more pairs of {mass_g} g, not {number}")
    if sum(pairs.values()) > MOST_PAIRS:
        raise InvalidEquipment(f"at most {MOST_PAIRS} pairs of discs, not {sum(pairs.values())}")
    counted = ((int(mass_g), int(number)) for mass_g, number in pairs.items() if number)
    return tuple(sorted(counted))
