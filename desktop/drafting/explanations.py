"""Explanations: why a draft is as it is, as codes with values; the screens turn them into words."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from desktop.drafting.wishes import Wish
from desktop.training.reasons import ReasonValue


class Why(StrEnum):
    """What is explained. The comment behind a code names its values."""

    DAYS = "days"  # weekdays (names joined), rest_days (least full days between)
    CHOSEN = "chosen"  # exercise, pattern, role, days, sets, of (how many came into question)
    RULE = "rule"  # exercise, variables, fewest, most, rest_s, reserve (None: not asked)
    MUSCLE = "muscle"  # muscle, sets, days, mark
    MUSCLE_SHORT = "muscle short"  # muscle, sets, mark, cause (the wish that holds it back)
    BALANCE = "balance"  # push, pull, upper, lower
    PATTERN_LEFT_OUT = "pattern left out"  # pattern, cause
    PATTERN_CLOSE = "pattern close"  # pattern, first, second (weekdays)
    ONE_DAY = "one day"  # advised (sessions a week)
    PAIRED = "paired"  # day, first, second
    MINUTES = "minutes"  # day, minutes, most (at the most repetitions), allowed
    EASIER_WEEKS = "easier weeks"  # every (weeks)
    NO_EASIER_WEEKS = "no easier weeks"  # level
    STARTS = "starts"  # loaded (whether any load has to be set before it begins)


@dataclass(frozen=True, slots=True)
class Explanation:
    """A code and its values, in the order given."""

    code: Why
    values: tuple[tuple[str, ReasonValue], ...] = ()

    def __getitem__(self, name: str) -> ReasonValue:
        for key, value in self.values:
            if key == name:
                return value
        raise KeyError(name)


def explain(code: Why, **values: ReasonValue) -> Explanation:
    """An explanation from keyword values."""
    return Explanation(code, tuple(values.items()))


@dataclass(frozen=True, slots=True)
class Relaxation:
    """A wish that can be relaxed so that a program can be drafted, and to what: minutes, days, a
    class of equipment, or what is allowed again. It was tried: a draft with it exists.
    """

    wish: Wish
    to: int | str
