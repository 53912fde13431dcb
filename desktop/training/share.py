"""A share: what part of the body an exercise loads, how sure that is, and how it is known."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import Final, Literal

from desktop.training.position import ScaledVariation

Grade = Literal["published", "modelled", "order only"]

PUBLISHED: Final = "published"
MODELLED: Final = "modelled"
ORDER_ONLY: Final = "order only"


class LeverageError(ValueError):
    """A geometry that cannot be; the message says what is allowed."""


@dataclass(frozen=True, slots=True)
class Share:
    """A share of body mass, or of the full position's moment for a static hold.

    ``value`` and ``plus_minus`` are fractions, None where only the order of the variations is
    known. ``source`` cites what it rests on, or says why nothing more than order is known.
    """

    value: float | None
    plus_minus: float | None
    grade: Grade
    source: str

    @property
    def order_only(self) -> bool:
        """Whether no number is known."""
        return self.value is None


def order_only(why: str) -> Share:
    """A share that is not known as a number, because of ``why``."""
    return Share(None, None, ORDER_ONLY, why)


def known_within(share: Share, more: float) -> Share:
    """``share`` with ``more`` (a fraction) added to its uncertainty."""
    if share.plus_minus is None:
        return share
    return replace(share, plus_minus=share.plus_minus + more)


def distinguishable(a: Share | ScaledVariation, b: Share | ScaledVariation) -> bool:
    """Whether ``a`` and ``b`` differ by more than their joint uncertainty (root sum of squares).

    Where either is known by order alone, the order is what is known: True.
    """
    first, second = _value(a), _value(b)
    if first is None or second is None:
        return True
    return abs(first - second) > math.hypot(a.plus_minus or 0, b.plus_minus or 0)


def _value(known: Share | ScaledVariation) -> float | None:
    return known.value if isinstance(known, Share) else known.share
