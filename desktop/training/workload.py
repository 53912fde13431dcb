"""Workload: training load by day and week, monotony, strain and the load's moving averages.

Training load is the rating of a whole session's effort (0-10) times its minutes, in arbitrary
units; other activities count too, and days without an entry count 0. Monotony and strain: Foster
1998, Med Sci Sports Exerc 30(7):1164-1168. No ratio of a short to a long average is made here: as
a sign of injury risk it is criticised (Impellizzeri 2021, Sports Med, DOI
10.1007/s40279-020-01378-6); the trend itself is shown.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from typing import TYPE_CHECKING, Final, Protocol

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

SHORT_DAYS: Final = 7
LONG_DAYS: Final = 28
"""Spans of the two moving averages shown: Williams 2017, Br J Sports Med 51(3):209-210, DOI
10.1136/bjsports-2016-096589."""

MOST_EFFORT: Final = 10
MOST_MINUTES: Final = 1440
MOST_DAILY_LOAD: Final = 1_000_000
MOST_DAYS: Final = 40_000
_WEEK: Final = 7


class WorkloadError(ValueError):
    """A load, rating or span that cannot be. The text says what is allowed."""


class Rated(Protocol):
    """A session or another activity: a day, how hard it was (0-10) and how long (minutes)."""

    @property
    def day(self) -> date: ...
    @property
    def effort(self) -> float | None: ...
    @property
    def minutes(self) -> int | None: ...


@dataclass(frozen=True, slots=True)
class WeekLoad:
    """One week: its first day, the seven daily loads, their sum, monotony and strain.

    `unrated` counts entries without effort or minutes, which add nothing. `incomplete`: some load
    is missing, because of those or because the coach says that not every activity is recorded; the
    figures are then a lower limit. `whole` is false for a week that reaches out of the span asked
    for: its missing days are no rest days, so monotony and strain are None.
    """

    first: date
    daily: tuple[float, ...]
    load: float
    monotony: float | None
    strain: float | None
    unrated: int
    incomplete: bool
    whole: bool


def training_load(session_rpe: float, minutes: float) -> float:
    """The load of one session or activity in arbitrary units: effort (0-10) × minutes.

    Raises WorkloadError for effort outside 0-10 or minutes outside 0-1440.
    """
    if not 0 <= session_rpe <= MOST_EFFORT:
        raise WorkloadError(f"effort {session_rpe!r}: allowed is 0 to {MOST_EFFORT}")
    if not 0 <= minutes <= MOST_MINUTES:
        raise WorkloadError(f"{minutes!r} minutes: allowed is 0 to {MOST_MINUTES}")
    return float(session_rpe) * float(minutes)


def monotony(daily_loads: Sequence[float], sample: bool = False) -> float | None:
    """Mean of the daily loads over their standard deviation; None when it is undefined.

    Give all days of the week, rest days as 0. The source does not say which standard deviation:
    the population's is the default, `sample` takes the sample's. Undefined without variation (all
    days the same, fewer than two days). Raises WorkloadError for a load outside 0 to
    `MOST_DAILY_LOAD`.
    """
    loads = _checked(daily_loads)
    if not loads or min(loads) == max(loads):
        return None
    mean = math.fsum(loads) / len(loads)
    squares = math.fsum((load - mean) ** 2 for load in loads)
    deviation = math.sqrt(squares / (len(loads) - sample))
    return mean / deviation if deviation else None


def strain(daily_loads: Sequence[float], sample: bool = False) -> float | None:
    """The week's load times its monotony, in arbitrary units; None when monotony is.

    Raises WorkloadError as `monotony` does.
    """
    ratio = monotony(daily_loads, sample)
    return None if ratio is None else math.fsum(daily_loads) * ratio


def ewma(daily_loads: Sequence[float], days: int) -> NDArray[np.float64]:
    """The exponentially weighted moving average of daily loads over `days`, one value per day.

    today = load·λ + (1 - λ)·yesterday with λ = 2 / (days + 1): Williams 2017, Br J Sports Med
    51(3):209-210, DOI 10.1136/bjsports-2016-096589. The first value is the first load (from
    memory). Raises WorkloadError for an impossible load or `days` under 1.
    """
    import numpy as np  # here, so that a start without charts does not wait for it

    if not 1 <= days <= MOST_DAYS:
        raise WorkloadError(f"an average over {days!r} days: allowed is 1 to {MOST_DAYS}")
    weight = 2 / (days + 1)
    averages: list[float] = []
    for load in _checked(daily_loads):
        before = averages[-1] if averages else load
        averages.append(load * weight + (1 - weight) * before)
    return np.array(averages, dtype=np.float64)


def daily_loads(entries: Iterable[Rated], first: date, last: date) -> tuple[float, ...]:
    """The training load of each day from `first` to `last`, both included; days without an entry
    are 0, entries of one day add up, entries outside the span or without a rating are left out.

    Raises WorkloadError for a span that ends before it starts or is over `MOST_DAYS` long.
    """
    count = _span(first, last)
    loads = [0.0] * count
    for entry in entries:
        index = (entry.day - first).days
        if 0 <= index < count and entry.effort is not None and entry.minutes is not None:
            loads[index] += training_load(entry.effort, entry.minutes)
    return tuple(loads)


def week_loads(
    entries: Iterable[Rated],
    first: date,
    last: date,
    *,
    week_starts: int = 0,
    activities_recorded: bool = True,
    sample: bool = False,
) -> tuple[WeekLoad, ...]:
    """Every week that has a day from `first` to `last`, in order, whether trained in or not.

    `entries` are sessions and other activities together, in any order; those outside the span are
    left out. `week_starts` is the weekday a week starts on (0 = Monday). `activities_recorded` is
    false where the coach says that other activities are not all recorded.
    Raises WorkloadError for an impossible span, weekday, effort or length.
    """
    if week_starts not in range(_WEEK):
        raise WorkloadError(f"a week starts on weekday 0 (Monday) to 6, not {week_starts!r}")
    _span(first, last)
    inside = [entry for entry in entries if first <= entry.day <= last]
    lead = (first.weekday() - week_starts) % _WEEK
    count = -(-(lead + (last - first).days + 1) // _WEEK)
    by_week: list[list[Rated]] = [[] for _ in range(count)]
    for entry in inside:
        by_week[(lead + (entry.day - first).days) // _WEEK].append(entry)
    return tuple(
        _week(
            by_week[index],
            first + timedelta(days=_WEEK * index - lead),
            (first, last),
            activities_recorded,
            sample,
        )
        for index in range(count)
    )


def _week(
    entries: Sequence[Rated],
    starts: date,
    span: tuple[date, date],
    activities_recorded: bool,
    sample: bool,
) -> WeekLoad:
    ends = starts + timedelta(days=_WEEK - 1)
    daily = daily_loads(entries, starts, ends)
    unrated = sum(entry.effort is None or entry.minutes is None for entry in entries)
    whole = span[0] <= starts and ends <= span[1]
    return WeekLoad(
        first=starts,
        daily=daily,
        load=math.fsum(daily),
        monotony=monotony(daily, sample) if whole else None,
        strain=strain(daily, sample) if whole else None,
        unrated=unrated,
        incomplete=unrated > 0 or not activities_recorded,
        whole=whole,
    )


def _span(first: date, last: date) -> int:
    count = (last - first).days + 1
    if not 1 <= count <= MOST_DAYS or first.year < 2 or last.year > 9998:  # weeks reach out
        raise WorkloadError(
            f"{first} to {last}: allowed is a span of 1 to {MOST_DAYS} days in the years 2 to 9998"
        )
    return count


def _checked(daily_loads: Sequence[float]) -> list[float]:
    for load in daily_loads:
        if not 0 <= load <= MOST_DAILY_LOAD:
            raise WorkloadError(f"a daily load of {load!r}: allowed is 0 to {MOST_DAILY_LOAD}")
    return [float(load) for load in daily_loads]
