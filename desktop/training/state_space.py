"""State space: the local linear trend, filtered forward and smoothed back over irregular days.

The state is a level and a slope per day; between observations the level gains the slope, and both
wander (continuous-time random walks, so that a gap of a week and seven gaps of a day agree). Two by
two matrices are written out in plain floats: a step costs a microsecond or two, a matrix library
costs thirty times that.

Kalman filter and Rauch-Tung-Striebel smoother as in any textbook: Durbin & Koopman 2012, Time
Series Analysis by State Space Methods (cited from memory). Standard library only.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import NamedTuple


@dataclass(frozen=True, slots=True)
class Process:
    """How much level and slope wander by themselves: variance per day of each (the slope is per
    day, so its variance is per day squared, per day)."""

    level_variance: float
    slope_variance: float


class Moments(NamedTuple):
    """Mean and covariance of level and slope (per day) at one day."""

    level: float
    slope: float
    level_variance: float
    covariance: float
    slope_variance: float


def filter_forward(
    days: Sequence[float],
    values: Sequence[float],
    variances: Sequence[float],
    process: Process,
    slope_prior_variance: float,
) -> tuple[list[Moments], float]:
    """The state at each of the ascending `days` given everything up to it, and the log-likelihood.

    Nothing is assumed about the first level (the first observation gives it); the first slope is
    none, with the prior variance. Constants are left out of the log-likelihood.
    """
    # `predict` is written out here: thousands of calls would take as long as the arithmetic.
    level_variance, slope_variance = process.level_variance, process.slope_variance
    level, slope, before = values[0], 0.0, days[0]
    p, c, s = variances[0], 0.0, slope_prior_variance
    filtered = [Moments(level, slope, p, c, s)]
    twice, log, moments = 0.0, math.log, Moments._make
    for index in range(1, len(days)):
        gap, before = days[index] - before, days[index]
        noise = slope_variance * gap
        level += gap * slope
        p += gap * (2 * c + gap * s) + level_variance * gap + noise * gap * gap / 3
        c += gap * s + noise * gap / 2
        s += noise
        measured = variances[index]
        total = p + measured
        error = values[index] - level
        twice += log(total) + error * error / total
        slope_gain = c / total
        level += p / total * error
        slope += slope_gain * error
        s -= slope_gain * c
        c *= measured / total
        p *= measured / total
        filtered.append(moments((level, slope, p, c, s)))
    return filtered, -twice / 2


def smooth_back(
    days: Sequence[float], filtered: Sequence[Moments], process: Process
) -> list[Moments]:
    """The state at each day given all observations, from the filter's states."""
    later = filtered[-1]
    smoothed = [later]
    for index in range(len(days) - 2, -1, -1):
        later = smooth_step(filtered[index], days[index + 1] - days[index], later, process)
        smoothed.append(later)
    smoothed.reverse()
    return smoothed


def predict(state: Moments, gap: float, process: Process) -> Moments:
    """The state `gap` days later, nothing observed in between."""
    level, slope, p, c, s = state
    level_noise, slope_noise = process.level_variance * gap, process.slope_variance * gap
    return Moments(
        level + gap * slope,
        slope,
        p + gap * (2 * c + gap * s) + level_noise + slope_noise * gap * gap / 3,
        c + gap * s + slope_noise * gap / 2,
        s + slope_noise,
    )


def smooth_step(state: Moments, gap: float, later: Moments, process: Process) -> Moments:
    """The state smoothed with what is known of the state `gap` days later."""
    level, slope, p, c, s = state
    # `predict` written out
    level_noise, slope_noise = process.level_variance * gap, process.slope_variance * gap
    ahead_level = level + gap * slope
    ahead_p = p + gap * (2 * c + gap * s) + level_noise + slope_noise * gap * gap / 3
    ahead_c = c + gap * s + slope_noise * gap / 2
    ahead_s = s + slope_noise
    determinant = ahead_p * ahead_s - ahead_c * ahead_c
    level_cross, slope_cross = p + gap * c, c + gap * s
    # gain = covariance of (state, ahead) times the inverse of ahead's covariance
    g11 = (level_cross * ahead_s - c * ahead_c) / determinant
    g12 = (c * ahead_p - level_cross * ahead_c) / determinant
    g21 = (slope_cross * ahead_s - s * ahead_c) / determinant
    g22 = (s * ahead_p - slope_cross * ahead_c) / determinant
    later_level, later_slope, later_p, later_c, later_s = later
    up, turn = later_level - ahead_level, later_slope - slope
    dp, dc, ds = later_p - ahead_p, later_c - ahead_c, later_s - ahead_s
    h11, h12 = g11 * dp + g12 * dc, g11 * dc + g12 * ds
    h21, h22 = g21 * dp + g22 * dc, g21 * dc + g22 * ds
    return Moments._make(
        (
            level + g11 * up + g12 * turn,
            slope + g21 * up + g22 * turn,
            p + h11 * g11 + h12 * g12,
            c + h11 * g21 + h12 * g22,
            s + h21 * g21 + h22 * g22,
        )
    )


def average_process(
    days: Sequence[float],
    values: Sequence[float],
    variances: Sequence[float],
    candidates: Sequence[Process],
    slope_prior_variance: float,
) -> Process:
    """The mean of the candidates, each weighted by its likelihood on these observations.

    An average moves smoothly as sessions come in, where the single likeliest candidate would jump.
    Observations are first gathered by week: sessions of one week say little of how strength
    wanders, and ten years then cost what five hundred points cost.
    """
    weeks = _by_week(days, values, variances)
    fits = [_log_likelihood(*weeks, process, slope_prior_variance) for process in candidates]
    best = max(fits)
    weights = [math.exp(fit - best) for fit in fits]
    whole = sum(weights)
    pairs = list(zip(weights, candidates, strict=True))
    return Process(
        sum(weight * process.level_variance for weight, process in pairs) / whole,
        sum(weight * process.slope_variance for weight, process in pairs) / whole,
    )


def _log_likelihood(
    days: Sequence[float],
    values: Sequence[float],
    variances: Sequence[float],
    process: Process,
    slope_prior_variance: float,
) -> float:
    """The log-likelihood of `filter_forward`, without keeping its states: half the time."""
    level_variance, slope_variance = process.level_variance, process.slope_variance
    level, slope, before = values[0], 0.0, days[0]
    p, c, s = variances[0], 0.0, slope_prior_variance
    twice, log = 0.0, math.log
    for index in range(1, len(days)):
        day = days[index]
        gap = day - before
        before = day
        noise = slope_variance * gap
        level += gap * slope
        p += gap * (2 * c + gap * s) + level_variance * gap + noise * gap * gap / 3
        c += gap * s + noise * gap / 2
        s += noise
        total = p + variances[index]
        error = values[index] - level
        twice += log(total) + error * error / total
        slope_gain = c / total
        level += p / total * error
        slope += slope_gain * error
        s -= slope_gain * c
        kept = variances[index] / total
        c *= kept
        p *= kept
    return -twice / 2


def merge(
    days: Sequence[float],
    values: Sequence[float],
    variances: Sequence[float],
    keys: Sequence[float],
) -> tuple[list[float], list[float], list[float]]:
    """Neighbouring observations with the same key as one each: means weighted by 1/variance.

    For observations of one day this loses nothing: the filter would come to the same state.
    """
    starts = [0, *(i for i, (a, b) in enumerate(pairwise(keys), 1) if a != b), len(keys)]
    merged: tuple[list[float], list[float], list[float]] = ([], [], [])
    for start, end in pairwise(starts):
        first, value, variance = days[start], values[start], variances[start]
        if end - start > 1:
            whole = spread = total = 0.0
            for index in range(start, end):
                weight = 1 / variances[index]
                whole += weight
                spread += weight * (days[index] - first)
                total += weight * values[index]
            first, value, variance = first + spread / whole, total / whole, 1 / whole
        merged[0].append(first)
        merged[1].append(value)
        merged[2].append(variance)
    return merged


def _by_week(
    days: Sequence[float], values: Sequence[float], variances: Sequence[float]
) -> tuple[list[float], list[float], list[float]]:
    weeks = [math.floor((day - days[0]) / 7) for day in days]
    return merge(days, values, variances, weeks)
