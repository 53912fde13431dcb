"""Why: codes with values, which the screens turn into words."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from enum import StrEnum
from typing import Final

RETEST_NOTE: Final = "re-test"
"""The note of the override that the start by a later test acts as."""

ReasonValue = int | float | str | bool | date | None


class ReasonCode(StrEnum):
    """Every reason the model can give; views.reason_sentences has a sentence for each.

    The comment behind a code names its values (masses in grams, spans in days).
    """

    START = "start"  # kind, plus_minus (fraction), sessions (that may correct it)
    GROW = "grow"  # variable, before, after, amount, day
    # variable, before, after, amount, day, restart, over; share_before, share_after, plus_minus
    ROLL_OVER = "roll over"
    REPEAT_MET = "repeat met"  # streak, needed
    REPEAT_RESERVE = "repeat reserve"  # rir (None: not told), needed
    REPEAT_LAST_SET = "repeat last set"  # done, needed
    REPEAT_HARD = "repeat hard"  # rir, target_rir
    IMPROVED = "improved"  # total, before
    PARTIAL = "partial"  # done, asked
    MISSED = "missed"  # streak, allowed
    SKIPPED = "skipped"
    CLEARED = "cleared"
    EXCLUDED_DELOAD = "excluded deload"
    EXCLUDED_TEST = "excluded test"
    EXCLUDED_HELD = "excluded held"
    # variable, before, after, misses, instead_of (the one that could not give, None: it did)
    BACK_OFF = "back off"
    BACK_OFF_IMPOSSIBLE = "back off impossible"  # misses
    PLATEAU = "plateau"  # weeks, load_g, reps
    IN_BETWEEN = "in-between"  # variable, after, reps_needed, over (fraction), amount
    COMPLETE = "complete"
    LIFTED = "lifted"  # before_g, after_g
    LIFT_ASKED = "lift asked"  # done_g, asked_g; done, asked where the variation was another
    RANGE_CHANGED = "range changed"  # variable, before, after (none: the position lay within)
    EQUIPMENT_LOST = "equipment lost"  # before_g, after_g
    VARIATION_LOST = "variation lost"  # before, after
    OVERRIDE = "override"  # note
    PAIN_NO_INCREASE = "pain no increase"  # pain
    PAIN_HOLD = "pain hold"  # pain, times
    GAP_REPEAT = "gap repeat"  # days
    GAP_LIGHTER = "gap lighter"  # days, percent
    GAP_TO_FLOOR = "gap to floor"  # days
    GAP_EASIER = "gap easier"  # days
    GAP_RESTART = "gap restart"  # days
    DELOAD = "deload"  # sets_factor, load_percent
    FOLLOWS = "follows"  # line, percent
    PROPOSE_DAY = "propose day"  # weekday
    PROPOSE_DAY_IMPOSSIBLE = "propose day impossible"  # weekdays
    START_NEEDED = "start needed"
    CLEARANCE_NEEDED = "clearance needed"
    TEST = "test"  # fewest, most (repetitions to aim at), stop_rir, hold, rising
    START_CORRECTED = "start corrected"  # before_g, after_g


@dataclass(frozen=True, slots=True)
class Reason:
    """A code and its values, in the order given; ``reason["days"]`` reads one of them."""

    code: ReasonCode
    values: tuple[tuple[str, ReasonValue], ...] = ()

    def __getitem__(self, name: str) -> ReasonValue:
        for key, value in self.values:
            if key == name:
                return value
        raise KeyError(name)

    def get(self, name: str, default: ReasonValue = None) -> ReasonValue:
        """The value called ``name``, or ``default`` where the reason has none."""
        return next((value for key, value in self.values if key == name), default)


def reason(code: ReasonCode, **values: ReasonValue) -> Reason:
    """Build a reason from keyword values."""
    return Reason(code, tuple(values.items()))
