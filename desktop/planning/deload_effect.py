"""Deload effect: whether an easier week helped, as performance before and after with its doubt.

Each line's level before is where the trend through the eight weeks up to the window ends; its
level after is the middle of the trend through the four weeks behind it. Sessions of the window
itself and sore ones do not count. Before and after are no proof: nobody knows what would have come
without the easier week, so what the earlier trend promised stands beside it.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from statistics import NormalDist, fmean
from typing import TYPE_CHECKING, Final

from desktop.planning.history import History
from desktop.planning.progress import Point, points_of, surroundings_by_day
from desktop.training.coach import CoachSettings
from desktop.training.exercises import Exercise
from desktop.training.program import Line
from desktop.training.trainee import DeloadWindow

if TYPE_CHECKING:
    from desktop.training.trend import Trend

BEFORE: Final = timedelta(days=56)
AFTER: Final = timedelta(days=28)
LEAST_BEFORE: Final = 3
LEAST_AFTER: Final = 2
"""So many sessions of a line make a level (common practice)."""

BAND: Final = 0.8


@dataclass(frozen=True, slots=True)
class Change:
    """A change of strength as fractions: the likely one, and the band that holds 80 %."""

    likely: float
    low: float
    high: float

    @property
    def clear(self) -> bool:
        """Whether the whole band lies on one side of no change."""
        return self.low > 0 or self.high < 0


@dataclass(frozen=True, slots=True)
class LineChange:
    """One line around a window. ``promised``: what the trend before would have brought by then."""

    line: Line
    exercise: Exercise
    change: Change
    promised: float
    before: int
    after: int


@dataclass(frozen=True, slots=True)
class DeloadEffect:
    """What became of performance around a window. ``change`` is the mean of the lines, None where
    no line has sessions enough; ``waiting`` is the first day on which it can be asked again, None
    where no more data will come.
    """

    window: DeloadWindow
    lines: tuple[LineChange, ...] = ()
    change: Change | None = None
    promised: float = 0.0
    waiting: date | None = None


def effect_of(history: History, window: DeloadWindow, today: date) -> DeloadEffect:
    """Performance before and after ``window``, from sessions up to ``today``."""
    found = [_line(history, line, window, today) for line in history.lines]
    measured = [each for each in found if each is not None]
    ends = window.last + AFTER
    waiting = ends if today < ends else None
    if not measured:
        return DeloadEffect(window, waiting=waiting)
    mean = fmean(level for _, level, _ in measured)
    sd = math.sqrt(sum(variance for _, _, variance in measured)) / len(measured)
    return DeloadEffect(
        window,
        tuple(line for line, _, _ in measured),
        change_of(mean, sd),
        math.expm1(fmean(math.log1p(line.promised) for line, _, _ in measured)),
        waiting,
    )


def change_of(mean: float, sd: float) -> Change:
    """The change for a difference of logarithms with its standard deviation."""
    reach = NormalDist().inv_cdf((1 + BAND) / 2) * sd
    return Change(math.expm1(mean), math.expm1(mean - reach), math.expm1(mean + reach))


def _line(
    history: History, line: Line, window: DeloadWindow, today: date
) -> tuple[LineChange, float, float] | None:
    """One line with its difference of logarithms and the variance of that."""
    until = min(today, window.last + AFTER)
    done = [
        (session, part)
        for session, part in history.trained(line)
        if window.first - BEFORE <= session.day <= until
    ]
    if not done:
        return None
    around = surroundings_by_day(history, line, [session.day for session, _ in done])
    points = [point for point in points_of(history, line, done, around) if point.counted]
    before = [point for point in points if point.day < window.first]
    after = [point for point in points if point.day > window.last]
    if len(before) < LEAST_BEFORE or len(after) < LEAST_AFTER:
        return None
    level, variance, promised = level_change(before, after, history.library.settings)
    change = change_of(level, math.sqrt(variance))
    line_change = LineChange(
        line, history.exercise_of(line), change, math.expm1(promised), len(before), len(after)
    )
    return line_change, level, variance


def level_change(
    before: Sequence[Point], after: Sequence[Point], settings: CoachSettings
) -> tuple[float, float, float]:
    """The difference of the levels (natural logarithms), its variance, and what the trend before
    promised for the same day. The two sides share no session, so their variances add.
    """
    from desktop.training.trend import smooth  # numpy: only when there is something to compare

    def trend_of(points: Sequence[Point]) -> Trend:
        return smooth(
            [point.day.toordinal() for point in points],
            [math.log(point.one_rep_max_g) for point in points],
            [point.log_sd**2 for point in points],
            half_life_days=7 * settings.trend_half_life_weeks,
        )

    earlier, later = trend_of(before), trend_of(after)
    middle = (later.days[0] + later.days[-1]) / 2
    levels, sds = later.forecast([middle])
    was, was_sd = earlier.forecast([earlier.days[-1]])
    promised, _ = earlier.forecast([middle])
    return (
        float(levels[0] - was[0]),
        float(sds[0] ** 2 + was_sd[0] ** 2),
        float(promised[0] - was[0]),
    )
