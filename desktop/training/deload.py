"""Deload: the signals that ask for an easier week, and what such a week asks.

No published value says by how much a deload cuts; the factors are the coach's settings. What the
sources agree on: volume and load go down, repetitions in reserve up, exercises and frequency stay
(Rogerson 2024, Sports Med Open 10:26, DOI 10.1186/s40798-024-00691-y; Bell 2023, Sports Med Open
9:87, DOI 10.1186/s40798-023-00633-0). The thresholds of the signals are common practice.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from enum import StrEnum
from fractions import Fraction
from statistics import fmean
from typing import Final

from desktop.training.limits import Limit
from desktop.training.recovery import Caution, Evidence
from desktop.training.session import Wellness

WEEK: Final = timedelta(days=7)
COMPARED: Final = timedelta(days=28)
"""The last week is compared with the three before it."""

PLATEAU_LINES: Final = 2
WELLNESS_DROP: Final = 0.5
LEAST_ANSWERS: Final = 2
RESERVE_DROP: Final = 1.0
EFFORT_RISE: Final = 1.0
SAME_WORK: Final = 1.05
ACHE_DAYS: Final = timedelta(days=14)


class Signal(StrEnum):
    """One of the four things that, at least two together, ask for a deload."""

    PLATEAUS = "plateaus"
    WELLNESS = "wellness"
    EFFORT = "effort"
    ACHES = "aches"


@dataclass(frozen=True, slots=True)
class Seen:
    """A signal with the numbers it was seen in."""

    signal: Signal
    evidence: Evidence


@dataclass(frozen=True, slots=True)
class WorkDone:
    """The lead set of one line on a day; equal ``work`` (load, variation, amount) compares."""

    line_id: int
    work: tuple[int, str | None, int]
    day: date
    rir: float


@dataclass(frozen=True, slots=True)
class Effort:
    """A session's effort (0-10) and its volume load in grams."""

    day: date
    effort: float
    volume_g: float


def plateaus(probabilities: Mapping[int, float], at_least: float) -> Seen | None:
    """At least two lines that have each probably stopped gaining."""
    still = [line for line, probability in probabilities.items() if probability >= at_least]
    if len(still) < PLATEAU_LINES:
        return None
    return Seen(Signal.PLATEAUS, (("lines", len(still)),))


def mean_wellness(wellness: Wellness) -> float | None:
    """The mean of the answers given (each 1 bad to 5 good), None where none was given."""
    answers = (wellness.sleep, wellness.soreness, wellness.stress, wellness.motivation)
    given = [answer for answer in answers if answer is not None]
    return fmean(given) if given else None


def wellness_down(answers: Iterable[tuple[date, float]], today: date) -> Seen | None:
    """Wellness of the last seven days half a point under that of the three weeks before.

    At least two answers on either side; fewer say nothing.
    """
    before, now = _split(answers, today)
    if min(len(before), len(now)) < LEAST_ANSWERS or fmean(before) - fmean(now) < WELLNESS_DROP:
        return None
    return Seen(Signal.WELLNESS, (("wellness_before", fmean(before)), ("wellness_now", fmean(now))))


def effort_rising(work: Iterable[WorkDone], efforts: Iterable[Effort], today: date) -> Seen | None:
    """The same work takes more: fewer repetitions in reserve, or a higher session effort.

    Both count as one signal. Reserve: for work (load, variation, amount) done before and in the
    last week, the mean falls by at least one. Effort: up by at least one while the volume load is
    not up by more than 5 %.
    """
    return _reserve_falling(work, today) or _session_effort_rising(efforts, today)


def aches(days: Iterable[date], today: date) -> Seen | None:
    """Pain noted in a session of the last two weeks."""
    recent = sorted(day for day in days if timedelta(0) <= today - day < ACHE_DAYS)
    if not recent:
        return None
    return Seen(Signal.ACHES, (("ache_days", len(recent)), ("last_ache", recent[-1])))


def reactive_deload(
    limit: Limit, seen: Sequence[Seen], sessions: tuple[int, ...] = ()
) -> Caution | None:
    """A deload is due when at least the limit's number of signals is seen at once."""
    if len(seen) < limit.threshold:
        return None
    signals: Evidence = (("signals", ", ".join(each.signal for each in seen)),)
    evidence = sum((each.evidence for each in seen), signals)
    return Caution(limit.id, limit.severity, evidence, limit.source, limit.proposal, None, sessions)


def eased_sets(sets: int, factor: float) -> int:
    """The sets of an easier week: times ``factor``, rounded up, never none.

    The factor counts as the decimal number it prints as: 10 sets x 0.7 are 7.
    """
    wanted = sets * Fraction(str(factor))
    return max(1, -(-wanted.numerator // wanted.denominator))


def eased_load(effective_g: float, percent: float) -> float:
    """The effective load in grams of an easier week, ``percent`` lower; before it is rounded down
    to a load that can be made.
    """
    return effective_g * (1 - percent / 100)


def _reserve_falling(work: Iterable[WorkDone], today: date) -> Seen | None:
    by_work: dict[tuple[object, ...], list[tuple[date, float]]] = defaultdict(list)
    for done in work:
        by_work[done.line_id, done.work].append((done.day, done.rir))
    pairs = [_split(days, today) for days in by_work.values()]
    means = [(fmean(before), fmean(now)) for before, now in pairs if before and now]
    if not means:
        return None
    was, now = fmean(before for before, _ in means), fmean(now for _, now in means)
    if was - now < RESERVE_DROP:
        return None
    return Seen(Signal.EFFORT, (("rir_before", was), ("rir_now", now)))


def _session_effort_rising(efforts: Iterable[Effort], today: date) -> Seen | None:
    given = list(efforts)
    before, now = _split(((each.day, each.effort) for each in given), today)
    volume_before, volume_now = _split(((each.day, each.volume_g) for each in given), today)
    if min(len(before), len(now)) < LEAST_ANSWERS:
        return None
    rise = fmean(now) - fmean(before)
    if rise < EFFORT_RISE or fmean(volume_now) > fmean(volume_before) * SAME_WORK:
        return None
    return Seen(Signal.EFFORT, (("effort_before", fmean(before)), ("effort_now", fmean(now))))


def _split(days: Iterable[tuple[date, float]], today: date) -> tuple[list[float], list[float]]:
    """The values of the three weeks before the last one, and of the last seven days."""
    before: list[float] = []
    now: list[float] = []
    for day, value in days:
        ago = today - day
        if timedelta(0) <= ago < WEEK:
            now.append(value)
        elif WEEK <= ago < COMPARED:
            before.append(value)
    return before, now
