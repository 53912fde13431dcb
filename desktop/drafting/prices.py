"""Prices: what the optimum wants by level and aim, and what it costs to miss a condition.

Sets and slots by level are common practice but for the mark that is named; the prices only say
which condition gives way first.
"""

from __future__ import annotations

from typing import Final

from desktop.drafting.wishes import Aim
from desktop.training.volume import MARKS

# Hard sets a muscle that are worth their time, and those that are enough, by level.
WANTED_SETS: Final = {
    Aim.STRENGTH: (6, 9, 11),
    Aim.SIZE: (8, MARKS[1].sets, 12),
    Aim.SKILL: (5, 7, 8),
}
MOST_SETS: Final = {
    Aim.STRENGTH: (18, 20, 24),
    Aim.SIZE: (20, 24, 28),
    Aim.SKILL: (16, 18, 20),
}
WORTH_COMING: Final = 0.7
ENOUGH_MINUTES: Final = 50
"""Part of the minutes that a day should use, up to so many."""

MOST_SLOTS: Final = (6, 7, 8)
MORE_IN_TURN: Final = 2
LEAST_SLOTS: Final = 3
MOST_SMALL: Final = {Aim.STRENGTH: 1, Aim.SIZE: 3, Aim.SKILL: 1}
VARIETY_PRICE: Final = (3.0, 1.5, 0.8)

OVER: Final = 400.0
MISSED: Final = 1000.0  # a condition of the wishes: coverage, marks, sessions a week, ratio
CLOSE: Final = 150.0
PATTERN: Final = 40.0
NO_SKILL: Final = 40.0
SHORT_DAY: Final = 60.0
LOPSIDED: Final = 4.0
SET_SHORT: Final = 3.0
SECOND_DAY: Final = 5.0
IDLE_MINUTE: Final = 0.4
UNUSUAL_SET: Final = 0.6
A_SLOT: Final = 1.0
TOGETHER: Final = 2.5
PAIRING: Final = 1.5
LATE_SQUAT: Final = 0.05
