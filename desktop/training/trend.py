"""Trend: is this trainee getting stronger, is it a plateau or noise, when does the goal come.

A local linear trend (level and slope) is drawn through the natural logarithms of estimated maxima
on irregular dates. Everything here is in logarithms: 0.01 is about 1 %, and a slope is a rate of
gain. Bands are about the trainee's true level, not about the next single session. Few sessions give
wide bands, not an error: one alone says nothing of the slope beyond `SLOPE_PRIOR_PER_WEEK`.

How much level and slope wander is averaged over a small grid, each candidate weighted by how well
it fits. Of simulated trainees with known truth (novice and trained gains, straight lines, plateaus,
a lay-off, random walks) the 80 % band then holds the truth 75-85 % of the time, 72 % where strength
wanders wildly; twelve weeks ahead 75-95 %, wildly 65 %.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from statistics import NormalDist
from typing import Final

import numpy as np
from numpy.typing import ArrayLike, NDArray

from desktop.training.state_space import (
    Moments,
    Process,
    average_process,
    filter_forward,
    merge,
    predict,
    smooth_back,
    smooth_step,
)

BAND: Final = 0.8
"""Share of the truth that a band is meant to hold."""

HALF_LIFE_DAYS: Final = 84.0
"""A forecast's slope halves in 12 weeks: published gains flatten, linear in ln(weeks) (Steele
2022, Res Q Exerc Sport, DOI 10.1080/02701367.2022.2070592). The half-life itself is a setting."""

SLOPE_PRIOR_PER_WEEK: Final = 0.02
"""What is known of a slope before any session: none, give or take 2 % a week. Novices gain
1.1-2.3 %, trained 0.2-0.3 % a week (arithmetic from Steele 2022 and Latella 2020, J Strength Cond
Res 34(9):2412-2418)."""

PLATEAU_PER_WEEK: Final = 0.001
"""A gain under 0.1 % a week is no gain (a setting)."""

PLATEAU_CERTAINTY: Final = 0.55
PLATEAU_DAYS: Final = 42
PLATEAU_SESSIONS: Final = 6
"""A plateau is called from this probability on, never from less than six weeks and six days of
training. Slopes are hard to see in noise: of simulated trainees this calls about 1 in 100 who gain
0.5 % a week and 1 in 9 who gain 0.25 %; of those who stall 1 in 7 after eight weeks, 1 in 3 after
twelve, half after sixteen. A lower certainty finds more and is wrong more often; a setting."""

GOAL_DAYS: Final = 365
"""How far ahead a goal is looked for."""

CANDIDATES: Final = tuple(
    Process(level, slope) for level in (1e-8, 1e-6) for slope in (1e-12, 3e-10, 3e-9, 3e-8)
)
"""The grid of wandering, variances per day: level from none to 0.3 % in a week; slope from none to
0.3 % a week in a week. Chosen so that bands hold on simulated trainees; not published values."""

MOST_DAYS: Final = 40_000
MOST_LOG: Final = 100.0
VARIANCES: Final = (1e-8, 100.0)
_MOST_PROCESS: Final = 0.01
_MOST_SLOPE_PRIOR: Final = 0.1
_LEAST_SLOPE_SD: Final = 1e-12  # below what floats can tell from certainty

Floats = NDArray[np.float64]


class TrendError(ValueError):
    """Observations or a question from which no trend can be drawn. The text says what is
    allowed."""


class TooFewSessions(TrendError):
    """There is no observation at all."""


@dataclass(frozen=True, slots=True)
class GoalForecast:
    """The days by which a goal has been reached with a probability of 10, 50 and 90 % (for an
    interval of 80 %), on the trend's own axis. None: not in a year."""

    earliest: int | None
    likely: int | None
    latest: int | None


@dataclass(frozen=True, slots=True, eq=False)
class Trend:
    """A smoothed trend, one entry for each day observed, ascending.

    `level` and `level_sd` are natural logarithms, `slope_per_day` and `slope_sd` logarithms per
    day; all four arrays are as long as `days`. The last entry is what is known today.
    """

    days: Floats
    level: Floats
    slope_per_day: Floats
    level_sd: Floats
    slope_sd: Floats
    process: Process
    half_life_days: float
    filtered: tuple[Moments, ...]
    smoothed: tuple[Moments, ...]

    @property
    def slope_per_week(self) -> float:
        """The latest rate of gain as a fraction a week: 0.01 is 1 %."""
        return math.expm1(7 * self.smoothed[-1].slope)

    def band(self, share: float = BAND) -> tuple[Floats, Floats]:
        """Lower and upper limit of the level on each day, holding `share` of the truth."""
        reach = _reach(share) * self.level_sd
        return self.level - reach, self.level + reach

    def forecast(self, days: ArrayLike) -> tuple[Floats, Floats]:
        """Mean and standard deviation of the level on `days` (absolute, shape kept).

        After the last observation the slope fades by `half_life_days`; between observations it is
        the smoothed trend itself. Raises TrendError before the first observation or more than
        `MOST_DAYS` after the last.
        """
        asked = _floats("days", days, -math.inf, math.inf)
        first, last = self.days[0], self.days[-1]
        if asked.size and not (asked.min() >= first and asked.max() <= last + MOST_DAYS):
            raise TrendError(f"a forecast is made from day {first:g} to {last + MOST_DAYS:g} only")
        states = [self._at(day) for day in asked.ravel().tolist()]
        mean = np.array([level for level, _ in states]).reshape(asked.shape)
        sd = np.array([math.sqrt(max(variance, 0.0)) for _, variance in states])
        return mean, sd.reshape(asked.shape)

    def forecast_band(self, days: ArrayLike, share: float = BAND) -> tuple[Floats, Floats]:
        """Lower and upper limit of the level on `days`, holding `share` of the truth."""
        mean, sd = self.forecast(days)
        reach = _reach(share)
        return mean - reach * sd, mean + reach * sd

    def probability_slope_above(self, per_week: float = 0.0) -> float:
        """The probability that the latest rate of gain is above `per_week` (0.001: 0.1 %)."""
        if not -1 < per_week < math.inf:
            raise TrendError(f"{per_week!r} a week: allowed is a fraction above -1, like 0.001")
        above = self.smoothed[-1].slope - math.log1p(per_week) / 7
        return NormalDist().cdf(above / max(float(self.slope_sd[-1]), _LEAST_SLOPE_SD))

    def plateau_probability(self, per_week: float = PLATEAU_PER_WEEK) -> float:
        """The probability that the latest rate of gain is under `per_week`: no longer gaining."""
        return 1 - self.probability_slope_above(per_week)

    def is_plateau(
        self, per_week: float = PLATEAU_PER_WEEK, certainty: float = PLATEAU_CERTAINTY
    ) -> bool:
        """Whether a plateau is called: `plateau_probability` of at least `certainty`, on at least
        `PLATEAU_SESSIONS` days of training over at least `PLATEAU_DAYS`."""
        return self.long_enough and self.plateau_probability(per_week) >= certainty

    @property
    def long_enough(self) -> bool:
        """Whether there are days enough, over time enough, to call a plateau at all."""
        return len(self.days) >= PLATEAU_SESSIONS and float(np.ptp(self.days)) >= PLATEAU_DAYS

    def date_to_reach(
        self, log_goal: float, share: float = BAND, within_days: int = GOAL_DAYS
    ) -> GoalForecast:
        """When the level reaches `log_goal` (a natural logarithm), as an interval of `share`.

        Whole days after the last observation, 0 if it is reached already, on the trend's own axis.
        Raises TrendError for a goal that is not finite or a search beyond `MOST_DAYS`.
        """
        reach = _reach(share)
        if not math.isfinite(log_goal) or not 0 <= within_days <= MOST_DAYS:
            raise TrendError(
                f"a goal is a finite logarithm looked for within 0 to {MOST_DAYS} days, "
                f"not {log_goal!r} within {within_days!r}"
            )
        ahead = self.days[-1] + np.arange(within_days + 1)
        mean, sd = self.forecast(ahead)

        def first(level: Floats) -> int | None:
            reached = np.flatnonzero(level >= log_goal)
            return math.ceil(ahead[reached[0]]) if reached.size else None

        return GoalForecast(first(mean + reach * sd), first(mean), first(mean - reach * sd))

    def _at(self, day: float) -> tuple[float, float]:
        last = self.days[-1]
        if day >= last:
            return _damped(self.smoothed[-1], day - float(last), self.process, self.half_life_days)
        index = int(np.searchsorted(self.days, day, side="right"))
        before = predict(self.filtered[index - 1], day - float(self.days[index - 1]), self.process)
        gap = float(self.days[index]) - day
        state = smooth_step(before, gap, self.smoothed[index], self.process)
        return state.level, state.level_variance


def smooth(
    days: ArrayLike,
    log_one_rep_max: ArrayLike,
    variances: ArrayLike,
    *,
    process: Process | None = None,
    half_life_days: float = HALF_LIFE_DAYS,
    slope_prior_per_week: float = SLOPE_PRIOR_PER_WEEK,
) -> Trend:
    """The trend through ln(estimated maximum) on `days`, each with the variance of its error.

    `days` are numbers of days on any axis (date.toordinal), in any order; several observations of
    one day become one entry. `variances` are of the logarithm: the square of an estimate's
    `log_sd`. `process` None averages `CANDIDATES`; `half_life_days` inf does not damp.

    Raises TooFewSessions without an observation, TrendError for arrays of different length or more
    than one dimension, values that are not finite, days more than `MOST_DAYS` apart, logarithms
    beyond `MOST_LOG`, variances outside `VARIANCES`, or settings outside their range.
    """
    _check_settings(process, half_life_days, slope_prior_per_week)
    observations = _merged_by_day(days, log_one_rep_max, variances)
    slope_prior = (slope_prior_per_week / 7) ** 2
    chosen = process or average_process(*observations, CANDIDATES, slope_prior)
    filtered, _ = filter_forward(*observations, chosen, slope_prior)
    smoothed = smooth_back(observations[0], filtered, chosen)
    columns = np.array(smoothed).T
    return Trend(
        days=np.array(observations[0]),
        level=columns[0],
        slope_per_day=columns[1],
        level_sd=np.sqrt(np.maximum(columns[2], 0.0)),
        slope_sd=np.sqrt(np.maximum(columns[4], 0.0)),
        process=chosen,
        half_life_days=half_life_days,
        filtered=tuple(filtered),
        smoothed=tuple(smoothed),
    )


def _damped(
    state: Moments, ahead: float, process: Process, half_life: float
) -> tuple[float, float]:
    """Level and its variance `ahead` days on, the slope (and every later change of it) fading."""
    rate = math.log(2) / half_life
    faded = rate * ahead
    if faded < 1e-2:  # the closed forms cancel here: their series, exact to 1e-6
        carried = ahead * (1 - faded / 2 + faded * faded / 6)
        wandered = ahead**3 / 3 * (1 - faded * 3 / 4 + faded * faded * 7 / 20)
    else:
        carried = -math.expm1(-faded) / rate
        wandered = (ahead - 2 * carried - math.expm1(-2 * faded) / (2 * rate)) / rate**2
    variance = (
        state.level_variance
        + carried * (2 * state.covariance + carried * state.slope_variance)
        + process.level_variance * ahead
        + process.slope_variance * wandered
    )
    return state.level + carried * state.slope, variance


def _merged_by_day(
    days: ArrayLike, values: ArrayLike, variances: ArrayLike
) -> tuple[list[float], list[float], list[float]]:
    columns = (
        _floats("days", days, -math.inf, math.inf),
        _floats("logarithms", values, -MOST_LOG, MOST_LOG),
        _floats("variances", variances, *VARIANCES),
    )
    if any(column.ndim != 1 or column.shape != columns[0].shape for column in columns):
        raise TrendError("days, logarithms and variances are three lists of the same length")
    if not columns[0].size:
        raise TooFewSessions("a trend needs at least one observation")
    if np.ptp(columns[0]) > MOST_DAYS:
        raise TrendError(f"the days lie more than {MOST_DAYS} apart")
    order = np.argsort(columns[0], kind="stable")
    ordered: list[Sequence[float]] = [column[order].tolist() for column in columns]
    return merge(ordered[0], ordered[1], ordered[2], keys=ordered[0])


def _floats(what: str, values: ArrayLike, low: float, high: float) -> Floats:
    array = np.asarray(values, dtype=np.float64)
    if not (np.isfinite(array) & (array >= low) & (array <= high)).all():
        raise TrendError(f"{what} are finite numbers from {low:g} to {high:g}")
    return array


def _reach(share: float) -> float:
    if not 0 < share < 1:
        raise TrendError(f"{share!r} is no share of the truth: allowed is between 0 and 1")
    return NormalDist().inv_cdf((1 + share) / 2)


def _check_settings(process: Process | None, half_life: float, slope_prior: float) -> None:
    if not half_life > 0:
        raise TrendError(f"a half-life of {half_life!r} days: allowed is above 0")
    if not 0 < slope_prior <= _MOST_SLOPE_PRIOR:
        raise TrendError(f"a slope prior of {slope_prior!r}: allowed is up to {_MOST_SLOPE_PRIOR}")
    wandering = (process.level_variance, process.slope_variance) if process else ()
    if not all(0 <= variance <= _MOST_PROCESS for variance in wandering):
        raise TrendError(f"process variances are from 0 to {_MOST_PROCESS}, not {wandering}")
