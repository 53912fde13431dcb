"""Trainees whose true strength is known, to measure how honest the trend's bands are.

Invented: gains and noise of a plausible size, drawn from a seed. `band_coverage` and
`plateau_rates` give the tables that the tests check in small and the benchmark prints in full.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import Final

import numpy as np
from numpy.typing import NDArray

from desktop.training.trend import PLATEAU_CERTAINTY, smooth

Floats = NDArray[np.float64]
Truth = Callable[[np.random.Generator, Floats], Floats]

NOISE: Final = (0.042, 0.10)
"""Spread of a session's error: from a measured maximum to a set of eight with three in reserve."""


@dataclass(frozen=True, slots=True)
class SimulatedTrainee:
    """Days trained, ln(estimated maximum) as seen, the variances of its error, and the truth on
    those days and on `ahead` (four and twelve weeks after the last)."""

    days: Floats
    seen: Floats
    variances: Floats
    truth: Floats
    ahead: Floats
    truth_ahead: Floats


@dataclass(frozen=True, slots=True)
class Coverage:
    """Share of the truth inside the 80 % band: over all days, on the last day, four and twelve
    weeks ahead."""

    kind: str
    all_days: float
    last_day: float
    four_weeks: float
    twelve_weeks: float


@dataclass(frozen=True, slots=True)
class PlateauRate:
    """Of trainees who gained `gain_per_week` until `stalled_weeks` before the end, the share that
    is called a plateau: a false alarm where they never stalled, a detection where they did."""

    gain_per_week: float
    stalled_weeks: int
    called: float


def _novice(rng: np.random.Generator, weeks: Floats) -> Floats:
    return np.asarray(np.log(1 + rng.uniform(0.25, 0.5) * np.log1p(weeks) / math.log(53)))


def _trained(rng: np.random.Generator, weeks: Floats) -> Floats:
    whole = _novice(rng, weeks + rng.uniform(52, 200))
    return np.asarray(whole - whole[0])


def _straight(rng: np.random.Generator, weeks: Floats) -> Floats:
    return np.asarray(rng.uniform(-0.002, 0.015) * weeks)


def _flat(_rng: np.random.Generator, weeks: Floats) -> Floats:
    return np.zeros_like(weeks)


def _stalling(rng: np.random.Generator, weeks: Floats) -> Floats:
    stall = rng.uniform(0.3, 0.7) * weeks[-1]
    return np.asarray(rng.uniform(0.003, 0.012) * np.minimum(weeks, stall))


def _lay_off(rng: np.random.Generator, weeks: Floats) -> Floats:
    back = rng.uniform(0.3, 0.7) * weeks[-1]
    lost = np.where(weeks > back, 0.06 * np.exp(-(weeks - back) / 4), 0.0)
    return np.asarray(rng.uniform(0.002, 0.008) * weeks - lost)


def _wandering(level_variance: float, slope_variance: float) -> Truth:
    def truth(rng: np.random.Generator, weeks: Floats) -> Floats:
        count = round(7 * weeks[-1]) + 1
        slope = rng.normal(0, 0.01 / 7) + np.cumsum(rng.normal(0, math.sqrt(slope_variance), count))
        level = np.cumsum(slope + rng.normal(0, math.sqrt(level_variance), count))
        return np.asarray(level[np.rint(7 * weeks).astype(int)])

    return truth


KINDS: Final[dict[str, Truth]] = {
    "novice": _novice,
    "trained": _trained,
    "straight line": _straight,
    "flat": _flat,
    "stalling": _stalling,
    "lay-off": _lay_off,
    "calm wandering": _wandering(1e-6, 1e-10),
    "wandering": _wandering(3e-6, 1e-9),
    "wild wandering": _wandering(1e-5, 1e-8),
}


def simulate(kind: str, rng: np.random.Generator) -> SimulatedTrainee:
    """One trainee of 8 to 60 weeks, one to three sessions a week on changing days."""
    days = _training_days(rng, int(rng.integers(8, 60)), int(rng.integers(1, 4)))
    ahead = days[-1] + np.array([28.0, 84.0])
    truth = KINDS[kind](rng, np.concatenate([days, ahead]) / 7)
    sd = rng.uniform(*NOISE) * rng.uniform(0.8, 1.25, len(days))
    seen = truth[:-2] + rng.normal(0, sd)
    return SimulatedTrainee(days, seen, sd**2, truth[:-2], ahead, truth[-2:])


def band_coverage(
    trainees: int, seed: int, kinds: Sequence[str] = tuple(KINDS)
) -> tuple[Coverage, ...]:
    """How often the 80 % band holds the truth, for `trainees` of each kind."""
    rng = np.random.default_rng(seed)
    return tuple(_coverage(kind, trainees, rng) for kind in kinds)


def _coverage(kind: str, trainees: int, rng: np.random.Generator) -> Coverage:
    inside: list[Floats] = []
    ahead: list[Floats] = []
    for _ in range(trainees):
        trainee = simulate(kind, rng)
        trend = smooth(trainee.days, trainee.seen, trainee.variances)
        inside.append(_within(trainee.truth, trend.band()))
        ahead.append(_within(trainee.truth_ahead, trend.forecast_band(trainee.ahead)))
    four_weeks, twelve_weeks = np.mean(ahead, axis=0).tolist()
    return Coverage(
        kind,
        float(np.mean(np.concatenate(inside))),
        float(np.mean([one[-1] for one in inside])),
        four_weeks,
        twelve_weeks,
    )


def plateau_rates(
    trainees: int,
    seed: int,
    cases: Sequence[tuple[float, int]] = (
        (0.01, 0),
        (0.005, 0),
        (0.0025, 0),
        (0.01, 8),
        (0.01, 12),
        (0.01, 16),
        (0.005, 8),
        (0.005, 12),
        (0.005, 16),
        (0.0, 36),
    ),
    certainty: float = PLATEAU_CERTAINTY,
) -> tuple[PlateauRate, ...]:
    """How often a plateau is called on the last of 36 weeks, two sessions a week, noise 0.06; for
    each case a gain a week and the weeks stalled at the end (0: none, a call is a false alarm)."""
    rng = np.random.default_rng(seed)
    return tuple(
        PlateauRate(gain, stalled, _called(gain, stalled, trainees, certainty, rng))
        for gain, stalled in cases
    )


def _called(
    gain: float, stalled: int, trainees: int, certainty: float, rng: np.random.Generator
) -> float:
    called = 0
    for _ in range(trainees):
        days = _training_days(rng, 36, 2)
        truth = gain * np.minimum(days / 7, 36 - stalled)
        seen = truth + rng.normal(0, 0.06, len(days))
        trend = smooth(days, seen, np.full(len(days), 0.06**2))
        called += trend.is_plateau(certainty=certainty)
    return called / trainees


def _training_days(rng: np.random.Generator, weeks: int, per_week: int) -> Floats:
    days = [
        7 * week + np.sort(rng.choice(7, per_week, replace=False)).astype(np.float64)
        for week in range(weeks)
    ]
    whole = np.concatenate(days)
    return np.asarray(whole - whole[0])


def _within(truth: Floats, band: tuple[Floats, Floats]) -> Floats:
    return np.asarray((band[0] <= truth) & (truth <= band[1]), dtype=np.float64)
