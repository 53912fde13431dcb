"""Loads in a sorted list: which are one, which enclose another, which comes next.

All loads are grams per implement, signed on the bodyweight axis (assistance below 0), and two
loads within `quantities.SAME_LOAD_G` are one load.
"""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Iterable, Sequence

from desktop.training.quantities import SAME_LOAD_G, same_load


def distinct(loads: Iterable[int]) -> tuple[int, ...]:
    """The loads sorted, each at most once: one that lies within 10 g of the last kept is dropped.

    Every load given is within 10 g of one kept, and those kept are further apart.
    """
    kept: list[int] = []
    for load_g in sorted(loads):
        if not kept or not same_load(load_g, kept[-1]):
            kept.append(load_g)
    return tuple(kept)


def found(loads: Sequence[int], load_g: int) -> int | None:
    """The nearest of the sorted ``loads`` that is one load with ``load_g``; None if none."""
    at = bisect_left(loads, load_g)
    near = [each for each in loads[max(at - 1, 0) : at + 1] if same_load(each, load_g)]
    return min(near, key=lambda each: abs(each - load_g), default=None)


def next_up(loads: Sequence[int], load_g: int) -> int | None:
    """The smallest of the sorted ``loads`` that is at least ``load_g``, or is one load with it.

    None where all are lighter.
    """
    same = found(loads, load_g)
    if same is not None:
        return same
    at = bisect_left(loads, load_g)
    return loads[at] if at < len(loads) else None


def round_down(loads: Sequence[int], load_g: int) -> int | None:
    """The largest of the sorted ``loads`` that is at most ``load_g``, or is one load with it.

    None where all are heavier.
    """
    same = found(loads, load_g)
    if same is not None:
        return same
    at = bisect_left(loads, load_g)
    return loads[at - 1] if at else None


def next_down(loads: Sequence[int], load_g: int) -> int | None:
    """The largest of the sorted ``loads`` that is really lighter than ``load_g``; None if none."""
    at = bisect_left(loads, load_g - SAME_LOAD_G)
    return loads[at - 1] if at else None


def enclosing(loads: Sequence[int], load_g: int) -> tuple[int | None, int | None]:
    """The two of the sorted ``loads`` on either side of ``load_g``, None where there is none.

    Both are the same where the load itself can be made.
    """
    return round_down(loads, load_g), next_up(loads, load_g)
