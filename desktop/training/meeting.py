"""What a set as done is worth against the set as asked."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from math import floor

from desktop.training.demand import demand, effective_load_g, rank
from desktop.training.position import Surroundings
from desktop.training.quantities import SAME_LOAD_G, at_least, same_load
from desktop.training.session import AskedSet, SetDone


def set_meets(asked: AskedSet, done: SetDone, around: Surroundings) -> bool:
    """Whether variation, load and clean amount are at least those asked.

    Where load or variation differ, the demand of the whole set decides if it is known.
    """
    harder = _variation_at_least(asked.variation, done.variation, around)
    if harder and at_least(done.load_g, asked.load_g) and done.amount >= _amount(asked):
        return True
    same_place = done.variation == asked.variation and same_load(done.load_g, asked.load_g)
    if same_place or asked.reps is None or not done.reps:
        return False
    wanted = demand(asked.load_g, asked.reps, asked.variation, around)
    reached = demand(done.load_g, done.reps, done.variation, around)
    return wanted is not None and reached is not None and reached >= wanted - 1e-6


def each_met(
    asked: Sequence[AskedSet], done: Sequence[SetDone], around: Surroundings
) -> tuple[int, int, bool]:
    """How many asked sets were met, of how many, and whether more than asked was done.

    Sets asked alike may be met in any order, so that an extra set makes up for a short one.
    """
    if all(_closed(each) == asked[0] for each in asked[1:]):
        meeting = [each for each in done if set_meets(asked[0], each, around)]
        surplus = len(meeting) > len(asked) or any(
            _surpasses(asked[0], each, around) for each in meeting
        )
        return min(len(meeting), len(asked)), len(asked), surplus
    pairs = [(a, d) for a, d in zip(asked, done, strict=False) if set_meets(a, d, around)]
    surplus = len(done) > len(asked) or any(_surpasses(a, d, around) for a, d in pairs)
    return len(pairs), len(asked), surplus


def total_met(
    asked: Sequence[AskedSet], done: Sequence[SetDone], around: Surroundings
) -> tuple[int, int, bool]:
    """The total as one set: met where the sets at the asked place or harder add up to it."""
    wanted = sum(_amount(each) for each in asked)
    counted = [each for each in done if place_at_least(asked[0], each, around)]
    reached = sum(each.amount for each in counted)
    return int(reached >= wanted), 1, reached > wanted


def place_at_least(asked: AskedSet, done: SetDone, around: Surroundings) -> bool:
    """Whether load and variation are at least those asked."""
    return at_least(done.load_g, asked.load_g) and _variation_at_least(
        asked.variation, done.variation, around
    )


def amount_over(asked: AskedSet, done: SetDone, around: Surroundings) -> int:
    """The amount beyond what was asked; at an easier place what its demand is worth at the asked
    one, so that more repetitions with less load are not counted twice.
    """
    over = done.amount - _amount(asked)
    if over <= 0 or not done.reps or place_at_least(asked, done, around):
        return over
    wanted = effective_load_g(asked.load_g, asked.variation, around)
    reached = demand(done.load_g, done.reps, done.variation, around)
    if wanted is None or reached is None:
        return 0
    return min(over, floor(30 * (reached / wanted - 1) - _amount(asked) + 1e-6))


def _amount(asked: AskedSet) -> int:
    return asked.reps if asked.reps is not None else asked.seconds or 0


def _variation_at_least(asked: str | None, done: str | None, around: Surroundings) -> bool:
    if asked == done:
        return True
    wanted, reached = rank(around, asked), rank(around, done)
    return wanted is not None and reached is not None and reached >= wanted


def _surpasses(asked: AskedSet, done: SetDone, around: Surroundings) -> bool:
    """Whether a set that meets what was asked is more than that, at the asked place or above."""
    if not place_at_least(asked, done, around):
        return False
    more = done.amount > _amount(asked) or done.load_g > asked.load_g + SAME_LOAD_G
    return more or done.variation != asked.variation


def _closed(asked: AskedSet) -> AskedSet:
    """The set without an open end, which asks no other amount."""
    return replace(asked, open_ended=False, stop_at=None) if asked.open_ended else asked
