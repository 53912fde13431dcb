"""Workload: loads by day and week, monotony, strain, moving averages."""

from __future__ import annotations

import math
from datetime import date, timedelta
from itertools import pairwise

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop.training.session import Activity, Session
from desktop.training.workload import (
    MOST_DAILY_LOAD,
    Rated,
    WeekLoad,
    WorkloadError,
    daily_loads,
    ewma,
    monotony,
    strain,
    training_load,
    week_loads,
)

MONDAY = date(2026, 3, 2)
loads = st.lists(st.floats(0, 5000), max_size=14)


def day(offset: int) -> date:
    return MONDAY + timedelta(days=offset)


def session(offset: int, effort: float | None, minutes: int | None) -> Session:
    return Session(trainee_id=1, day=day(offset), effort=effort, minutes=minutes)


def rowing(offset: int, effort: float, minutes: int) -> Activity:
    return Activity(trainee_id=1, day=day(offset), name="rowing", minutes=minutes, effort=effort)


@pytest.mark.parametrize("sample", [False, True])
@pytest.mark.parametrize("same", [[], [400], [0] * 7, [0.1] * 7])
def test_without_variation_monotony_and_strain_are_undefined(
    same: list[float], sample: bool
) -> None:
    assert monotony(same, sample) is None
    assert strain(same, sample) is None


def test_variation_too_small_to_compute_with_is_no_variation() -> None:
    assert monotony([1e-200, 2e-200]) is None


@given(loads)
def test_the_sample_deviation_gives_the_lower_monotony(daily: list[float]) -> None:
    population, sample = monotony(daily), monotony(daily, sample=True)
    if population is None:
        assert sample is None
    else:
        assert sample is not None
        assert 0 <= sample < population


@given(loads)
def test_strain_is_the_load_times_monotony(daily: list[float]) -> None:
    ratio, found = monotony(daily), strain(daily)
    assert found == (None if ratio is None else pytest.approx(sum(daily) * ratio))


@given(loads, st.integers(1, 60))
def test_an_average_stays_between_the_lowest_and_the_highest_load(
    daily: list[float], days: int
) -> None:
    averages = ewma(daily, days)
    assert isinstance(averages, np.ndarray)
    assert averages.shape == (len(daily),)
    if daily:
        assert averages.min() >= min(daily) - 1e-9
        assert averages.max() <= max(daily) + 1e-9


def test_an_average_over_one_day_is_the_load_itself() -> None:
    assert ewma([3, 0, 5], 1).tolist() == [3, 0, 5]


@pytest.mark.parametrize("load", [-1, math.nan, math.inf, MOST_DAILY_LOAD + 1])
def test_an_impossible_load_is_refused(load: float) -> None:
    for ask in (monotony, strain, lambda daily: ewma(daily, 7)):
        with pytest.raises(WorkloadError, match="allowed is 0 to 1000000"):
            ask([load, 100])


@pytest.mark.parametrize("days", [0, -7, 40_001])
def test_an_average_over_an_impossible_span_is_refused(days: int) -> None:
    with pytest.raises(WorkloadError, match="allowed is 1 to 40000"):
        ewma([100], days)


def test_training_load_is_effort_times_minutes() -> None:
    assert training_load(7, 60) == 420
    assert training_load(0, 60) == 0


@pytest.mark.parametrize(
    ("effort", "minutes", "allowed"),
    [(10.5, 60, "0 to 10"), (-1, 60, "0 to 10"), (math.nan, 60, "0 to 10"), (5, -1, "0 to 1440"),
     (5, 1441, "0 to 1440"), (5, math.nan, "0 to 1440")],
)  # fmt: skip
def test_impossible_effort_or_length_is_refused(
    effort: float, minutes: float, allowed: str
) -> None:
    with pytest.raises(WorkloadError, match=allowed):
        training_load(effort, minutes)


def test_sessions_and_other_activities_add_up_by_day() -> None:
    entries: list[Rated] = [session(0, 6, 60), rowing(0, 3, 40), session(2, 5, 50)]
    entries.append(rowing(9, 5, 100))
    assert daily_loads(entries, day(0), day(3)) == (480, 0, 250, 0)


def test_an_entry_without_a_rating_adds_nothing_to_its_day() -> None:
    entries = [session(0, None, 60), session(0, 6, None), session(-1, 5, 50), session(1, 4, 30)]
    assert daily_loads(entries, day(0), day(1)) == (0, 120)


@pytest.mark.parametrize(
    ("first", "last"),
    [(day(1), day(0)), (date(1, 1, 1), date(1, 1, 2)), (date(9999, 12, 30), date(9999, 12, 31)),
     (date(1800, 1, 1), date(2000, 1, 1))],
)  # fmt: skip
def test_an_impossible_span_is_refused(first: date, last: date) -> None:
    with pytest.raises(WorkloadError, match="allowed is a span"):
        daily_loads([], first, last)
    with pytest.raises(WorkloadError, match="allowed is a span"):
        week_loads([], first, last)


@pytest.mark.parametrize("weekday", [-1, 7])
def test_an_impossible_weekday_is_refused(weekday: int) -> None:
    with pytest.raises(WorkloadError, match="0 \\(Monday\\) to 6"):
        week_loads([], day(0), day(6), week_starts=weekday)


def test_a_week_holds_its_days_their_sum_monotony_and_strain() -> None:
    entries: list[Rated] = [session(0, 6, 100), rowing(1, 4, 50), session(3, 5, 80)]
    (week,) = week_loads(entries, day(0), day(6))
    daily = (600.0, 200.0, 0.0, 400.0, 0.0, 0.0, 0.0)
    assert week == WeekLoad(
        first=day(0),
        daily=daily,
        load=1200,
        monotony=monotony(daily),
        strain=strain(daily),
        unrated=0,
        incomplete=False,
        whole=True,
    )


def test_an_untrained_week_between_two_is_there_with_no_load() -> None:
    weeks = week_loads([session(15, 5, 60), session(1, 5, 60)], day(0), day(20))
    assert [week.load for week in weeks] == [300, 0, 300]
    assert [week.monotony for week in weeks][1] is None


def test_a_week_that_reaches_out_of_the_span_has_no_monotony() -> None:
    weeks = week_loads([session(2, 5, 60), session(8, 5, 60), session(0, 9, 90)], day(1), day(8))
    assert [week.whole for week in weeks] == [False, False]
    assert [week.load for week in weeks] == [300, 300]  # the session before the span is left out
    assert all(week.monotony is None and week.strain is None for week in weeks)


def test_a_week_starts_on_the_day_the_coach_counts_from() -> None:
    sunday = 6
    weeks = week_loads([session(6, 5, 60)], day(0), day(6), week_starts=sunday)
    assert [week.first for week in weeks] == [day(-1), day(6)]
    assert [week.load for week in weeks] == [0, 300]


def test_missing_ratings_and_unrecorded_activities_make_a_week_incomplete() -> None:
    (week,) = week_loads([session(0, 6, 60), session(2, None, 60)], day(0), day(6))
    assert (week.incomplete, week.unrated) == (True, 1)
    (week,) = week_loads([session(0, 6, 60)], day(0), day(6), activities_recorded=False)
    assert (week.incomplete, week.unrated) == (True, 0)


@given(
    st.lists(
        st.builds(
            session,
            st.integers(-10, 60),
            st.none() | st.floats(0, 10),
            st.none() | st.integers(0, 300),
        ),
        max_size=20,
    ),
    st.integers(0, 50),
    st.integers(0, 6),
)
def test_weeks_hold_every_day_of_the_span_once(
    entries: list[Session], length: int, week_starts: int
) -> None:
    weeks = week_loads(entries, day(0), day(length), week_starts=week_starts)
    assert sum(week.load for week in weeks) == pytest.approx(
        sum(daily_loads(entries, day(0), day(length)))
    )
    assert all(week.first.weekday() == week_starts for week in weeks)
    assert weeks[0].first <= day(0)
    assert weeks[-1].first <= day(length) < weeks[-1].first + timedelta(days=7)
    gaps = [(later.first - week.first).days for week, later in pairwise(weeks)]
    assert set(gaps) <= {7}
