"""The signals that ask for an easier week, and what such a week asks."""

from __future__ import annotations

from datetime import date, timedelta

import pytest

from desktop.limits import load_limits
from desktop.training.deload import (
    Effort,
    Seen,
    Signal,
    WorkDone,
    aches,
    eased_load,
    eased_sets,
    effort_rising,
    mean_wellness,
    plateaus,
    reactive_deload,
    wellness_down,
)
from desktop.training.limits import LimitId
from desktop.training.session import Wellness

LIMIT = load_limits()[LimitId.REACTIVE_DELOAD]
TODAY = date(2026, 11, 25)


def ago(days: int) -> date:
    return TODAY - timedelta(days=days)


def test_plateaus_are_a_signal_from_two_lines_on() -> None:
    assert plateaus({1: 0.9, 2: 0.79}, 0.8) is None
    seen = plateaus({1: 0.9, 2: 0.8, 3: 0.1}, 0.8)
    assert seen == Seen(Signal.PLATEAUS, (("lines", 2),))


def test_wellness_is_the_mean_of_what_was_answered() -> None:
    assert mean_wellness(Wellness()) is None
    assert mean_wellness(Wellness(sleep=2, stress=5)) == 3.5


@pytest.mark.parametrize(
    ("answers", "down"),
    [
        ([(10, 4.0), (12, 4.0), (1, 3.5), (3, 3.5)], True),
        ([(10, 4.0), (12, 4.0), (1, 3.6), (3, 3.6)], False),
        ([(10, 4.0), (12, 4.0), (1, 2.0)], False),  # one answer says nothing
        ([(10, 4.0), (1, 2.0), (3, 2.0)], False),
        ([(28, 4.0), (40, 4.0), (1, 2.0), (3, 2.0)], False),  # too long ago
        ([(10, 4.0), (12, 4.0), (-1, 1.0), (-2, 1.0)], False),  # not yet
    ],
)
def test_wellness_is_down_by_half_a_point_over_a_week(
    answers: list[tuple[int, float]], down: bool
) -> None:
    seen = wellness_down([(ago(days), mean) for days, mean in answers], TODAY)
    assert (seen is not None) is down


def work(days: int, rir: float, load_g: int = 60_000) -> WorkDone:
    return WorkDone(1, (load_g, None, 8), ago(days), rir)


def effort(days: int, rated: float, volume_g: float = 1000) -> Effort:
    return Effort(ago(days), rated, volume_g)


@pytest.mark.parametrize(
    ("done", "rising"),
    [
        ([work(10, 2.3), work(2, 1.1)], True),
        ([work(10, 2.3), work(2, 1.5)], False),
        ([work(10, 3), work(2, 0, load_g=62_500)], False),  # not the same work
        ([work(2, 0)], False),
    ],
)
def test_effort_rises_when_the_same_work_leaves_less_in_reserve(
    done: list[WorkDone], rising: bool
) -> None:
    seen = effort_rising(done, [], TODAY)
    assert (seen is not None) is rising
    if seen is not None:
        assert seen.evidence == (("rir_before", 2.3), ("rir_now", 1.1))


@pytest.mark.parametrize(
    ("efforts", "rising"),
    [
        ([effort(10, 6), effort(12, 6), effort(1, 7), effort(3, 7)], True),
        ([effort(10, 6), effort(12, 6), effort(1, 7), effort(3, 6)], False),
        ([effort(10, 6), effort(12, 6), effort(1, 7, 1100), effort(3, 7, 1100)], False),
        ([effort(10, 6), effort(1, 9), effort(3, 9)], False),
    ],
)
def test_effort_rises_when_sessions_of_no_more_work_are_rated_harder(
    efforts: list[Effort], rising: bool
) -> None:
    assert (effort_rising([], efforts, TODAY) is not None) is rising


def test_aches_of_two_weeks_are_a_signal() -> None:
    assert aches([ago(14), ago(-1)], TODAY) is None
    seen = aches([ago(13), ago(2)], TODAY)
    assert seen == Seen(Signal.ACHES, (("ache_days", 2), ("last_ache", ago(2))))


def test_a_deload_is_due_at_two_signals() -> None:
    ache = Seen(Signal.ACHES, (("ache_days", 2),))
    still = Seen(Signal.PLATEAUS, (("lines", 2),))
    assert reactive_deload(LIMIT, [ache]) is None
    caution = reactive_deload(LIMIT, [still, ache], (5,))
    assert caution is not None
    assert caution.evidence == (("signals", "plateaus, aches"), ("lines", 2), ("ache_days", 2))
    assert caution.sessions == (5,)


@pytest.mark.parametrize(
    ("sets", "factor", "asked"),
    [(3, 0.6, 2), (5, 0.6, 3), (4, 0.6, 3), (1, 0.6, 1), (10, 0.7, 7), (3, 0.01, 1), (4, 1.0, 4)],
)
def test_a_deload_rounds_sets_up_and_leaves_at_least_one(
    sets: int, factor: float, asked: int
) -> None:
    assert eased_sets(sets, factor) == asked


def test_a_deload_takes_its_percentage_off_the_load() -> None:
    assert eased_load(60_000, 10) == pytest.approx(54_000)
