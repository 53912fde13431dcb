"""The trend: against a reference implementation, on simulated trainees, and at its edges."""

from __future__ import annotations

import math
from collections.abc import Sequence
from contextlib import suppress

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from numpy.typing import NDArray

from desktop.training.state_space import Process, merge
from desktop.training.trend import (
    CANDIDATES,
    MOST_DAYS,
    SLOPE_PRIOR_PER_WEEK,
    GoalForecast,
    TooFewSessions,
    Trend,
    TrendError,
    smooth,
)
from tests.simulated_trainees import Floats, band_coverage, plateau_rates

WANDERING = Process(2e-6, 1e-9)
STEADY = Process(1e-6, 0.0)
SLOPE_PRIOR = (SLOPE_PRIOR_PER_WEEK / 7) ** 2


def gaining(
    per_week: float, days: Sequence[float] = tuple(range(0, 120, 3)), sd: float = 0.05
) -> Trend:
    """A trend through a gain without noise, told that there is noise."""
    on = np.asarray(days, dtype=np.float64)
    return smooth(on, math.log(100_000) + per_week * on / 7, np.full(len(on), sd**2))


def noisy(days: Floats, seed: int) -> tuple[Floats, Floats]:
    rng = np.random.default_rng(seed)
    variances = rng.uniform(0.03, 0.1, len(days)) ** 2
    return 4 + 0.001 * days + rng.normal(0, np.sqrt(variances)), variances


def reference(
    days: Floats, values: Floats, variances: Floats, process: Process
) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Smoothed states and covariances by statsmodels' general state-space model, on any days.

    The first observation gives the first state, as in `smooth`, and is then left out.
    """
    from statsmodels.tsa.statespace.mlemodel import MLEModel

    count = len(days)
    gaps = np.append(np.diff(days), 1.0)
    model = MLEModel(np.append(np.nan, values[1:]), k_states=2)
    transition = np.zeros((2, 2, count))
    transition[0, 0] = transition[1, 1] = 1
    transition[0, 1] = gaps
    noise = np.zeros((2, 2, count))
    noise[0, 0] = process.level_variance * gaps + process.slope_variance * gaps**3 / 3
    noise[0, 1] = noise[1, 0] = process.slope_variance * gaps**2 / 2
    noise[1, 1] = process.slope_variance * gaps
    model["design"] = np.array([[1.0, 0.0]])
    model["selection"] = np.eye(2)
    model["transition"] = transition
    model["state_cov"] = noise
    model["obs_cov"] = variances.reshape(1, 1, count)
    model.ssm.initialize_known(np.array([values[0], 0.0]), np.diag([variances[0], SLOPE_PRIOR]))
    found = model.ssm.smooth()
    return found.smoothed_state, found.smoothed_state_cov


def assert_same(trend: Trend, states: Floats, covariances: Floats) -> None:
    for found, expected in (
        (trend.level, states[0]),
        (trend.slope_per_day, states[1]),
        (trend.level_sd, np.sqrt(covariances[0, 0])),
        (trend.slope_sd, np.sqrt(covariances[1, 1])),
    ):
        np.testing.assert_allclose(found, expected, rtol=1e-6, atol=1e-9)


@pytest.mark.parametrize("seed", range(3))
@pytest.mark.parametrize("process", [WANDERING, STEADY, CANDIDATES[0], CANDIDATES[-1]])
def test_the_trend_on_irregular_days_is_that_of_a_reference(process: Process, seed: int) -> None:
    rng = np.random.default_rng(seed)
    days = np.cumsum(rng.integers(1, 15, 60)).astype(np.float64)
    values, variances = noisy(days, seed)
    trend = smooth(days, values, variances, process=process)
    assert_same(trend, *reference(days, values, variances, process))


def test_the_trend_on_regular_days_is_that_of_an_unobserved_components_model() -> None:
    from statsmodels.tsa.statespace.structural import UnobservedComponents

    days = np.arange(80.0)
    values, _ = noisy(days, 5)
    variances = np.full(80, 0.05**2)
    model = UnobservedComponents(np.append(np.nan, values[1:]), "local linear trend")
    model.update(np.array([variances[0], STEADY.level_variance, STEADY.slope_variance]))
    model.ssm.initialize_known(np.array([values[0], 0.0]), np.diag([variances[0], SLOPE_PRIOR]))
    found = model.ssm.smooth()
    trend = smooth(days, values, variances, process=STEADY)
    assert_same(trend, found.smoothed_state, found.smoothed_state_cov)


def test_between_observations_the_forecast_is_that_of_a_reference() -> None:
    days = np.array([0.0, 3, 10, 40, 41, 60])
    values, variances = noisy(days, 6)
    every = np.arange(61.0)
    seen, spread = np.full(61, np.nan), np.ones(61)
    seen[days.astype(int)], spread[days.astype(int)] = values, variances
    states, covariances = reference(every, seen, spread, WANDERING)
    mean, sd = smooth(days, values, variances, process=WANDERING).forecast(every)
    np.testing.assert_allclose(mean, states[0], rtol=1e-6)
    np.testing.assert_allclose(sd, np.sqrt(covariances[0, 0]), rtol=1e-6)


@pytest.mark.slow
def test_the_band_holds_the_truth_of_simulated_trainees_four_times_in_five() -> None:
    found = band_coverage(trainees=25, seed=20)
    assert 0.75 <= np.mean([kind.all_days for kind in found]) <= 0.85
    assert 0.75 <= np.mean([kind.last_day for kind in found]) <= 0.88
    assert 0.72 <= np.mean([kind.four_weeks for kind in found]) <= 0.92


@pytest.mark.slow
def test_plateaus_are_found_more_often_the_longer_they_last_and_seldom_by_mistake() -> None:
    cases = ((0.01, 0), (0.005, 0), (0.01, 8), (0.01, 16), (0.0, 36))
    gaining, slowly, short, long, flat = plateau_rates(60, seed=3, cases=cases)
    assert gaining.called == 0
    assert slowly.called <= 0.1
    assert short.called < long.called < flat.called
    assert long.called >= 0.35
    assert flat.called >= 0.5


def test_a_steady_gain_is_seen_as_it_is() -> None:
    trend = gaining(0.01)
    assert trend.slope_per_week == pytest.approx(math.expm1(0.01), rel=0.02)
    assert trend.probability_slope_above(0) > 0.99
    assert trend.plateau_probability() < 0.01
    assert not trend.is_plateau()


def test_no_gain_is_a_plateau_and_a_loss_is_one_more_surely() -> None:
    flat, losing = gaining(0.0), gaining(-0.01)
    assert flat.is_plateau()
    assert 0.5 < flat.plateau_probability() < losing.plateau_probability()


def test_no_plateau_is_called_on_a_few_sessions() -> None:
    assert not gaining(-0.01, range(0, 40, 3)).is_plateau()
    assert not gaining(-0.01, range(0, 100, 20)).is_plateau()


def test_a_higher_gain_is_less_probable() -> None:
    trend = gaining(0.005)
    asked = [trend.probability_slope_above(rate) for rate in (-0.5, 0, 0.005, 0.01, 1e6)]
    assert asked == sorted(asked, reverse=True)


@pytest.mark.parametrize("rate", [-1, -2, math.nan, math.inf])
def test_an_impossible_rate_is_refused(rate: float) -> None:
    with pytest.raises(TrendError, match="above -1"):
        gaining(0.01).probability_slope_above(rate)


def test_without_a_session_there_is_no_trend() -> None:
    with pytest.raises(TooFewSessions, match="at least one"):
        smooth([], [], [])


def test_one_session_gives_its_level_and_says_nothing_of_the_slope() -> None:
    trend = smooth([10], [4.5], [0.05**2])
    assert trend.level.tolist() == [4.5]
    assert trend.level_sd[0] == pytest.approx(0.05)
    assert trend.slope_per_week == 0
    assert 7 * trend.slope_sd[0] == pytest.approx(SLOPE_PRIOR_PER_WEEK)
    assert trend.probability_slope_above(0) == pytest.approx(0.5)
    assert not trend.is_plateau()


def test_two_sessions_move_the_slope_no_further_than_they_can_tell() -> None:
    trend = smooth([0, 7], [4.5, 4.6], [0.05**2] * 2)
    assert 0 < trend.slope_per_week < 0.02
    assert trend.slope_sd[-1] > 0.8 * SLOPE_PRIOR_PER_WEEK / 7


def test_several_sets_on_one_day_are_one_better_known_entry() -> None:
    trend = smooth([0, 5, 5, 9], [4.0, 4.1, 4.3, 4.2], [0.01, 0.02, 0.01, 0.01])
    merged = smooth([0, 5, 9], [4.0, (4.1 + 2 * 4.3) / 3, 4.2], [0.01, 0.02 / 3, 0.01])
    assert trend.days.tolist() == [0, 5, 9]
    np.testing.assert_allclose(trend.level, merged.level, rtol=1e-12)
    np.testing.assert_allclose(trend.level_sd, merged.level_sd, rtol=1e-12)


def test_entries_in_any_order_give_the_same_trend() -> None:
    days = np.arange(0.0, 60, 4)
    values, variances = noisy(days, 7)
    order = np.random.default_rng(8).permutation(len(days))
    mixed = smooth(days[order], values[order], variances[order])
    straight = smooth(days, values, variances)
    assert mixed.level.tolist() == straight.level.tolist()
    assert mixed.days.tolist() == days.tolist()


def test_merging_keeps_the_weight_of_what_is_merged() -> None:
    days, values, variances = merge([0, 2, 3], [1.0, 3.0, 5.0], [1.0, 1.0, 1.0], [0, 0, 1])
    assert (days, values, variances) == ([1, 3], [2, 5], [0.5, 1])


def test_the_band_lies_around_the_level_and_widens_with_its_share() -> None:
    trend = gaining(0.01)
    low, high = trend.band()
    wide_low, wide_high = trend.band(0.95)
    assert (wide_low < low).all()
    assert (low < trend.level).all()
    assert (high < wide_high).all()
    np.testing.assert_allclose(high - trend.level, 1.2816 * trend.level_sd, rtol=1e-4)


@pytest.mark.parametrize("share", [0, 1, -0.5, math.nan])
def test_an_impossible_share_is_refused(share: float) -> None:
    with pytest.raises(TrendError, match="between 0 and 1"):
        gaining(0.01).band(share)


def test_a_forecast_starts_at_the_level_and_its_slope_halves_in_the_half_life() -> None:
    trend = smooth(
        range(0, 200, 2), [0.002 * day for day in range(0, 200, 2)], [1e-6] * 100, process=STEADY
    )
    last, slope = trend.days[-1], trend.slope_per_day[-1]
    mean, sd = trend.forecast(last + np.array([0.0, 0.5, 84, 1000]))
    assert mean[0] == trend.level[-1]
    assert sd[0] == trend.level_sd[-1]
    assert (np.diff(sd) > 0).all()
    rate = math.log(2) / 84
    assert mean[2] - mean[0] == pytest.approx(slope * 0.5 / rate)
    assert mean[3] - mean[0] == pytest.approx(slope / rate, rel=1e-3)


def test_a_forecast_is_smooth_where_its_formulas_change() -> None:
    trend = smooth(range(0, 60, 3), [0.001 * day for day in range(0, 60, 3)], [1e-4] * 20)
    change = trend.days[-1] + 84 * 0.01 / math.log(2)
    mean, sd = trend.forecast([change - 1e-6, change + 1e-6])
    assert mean[0] == pytest.approx(mean[1], rel=1e-6)
    assert sd[0] == pytest.approx(sd[1], rel=1e-6)


def test_without_damping_a_forecast_goes_straight_on() -> None:
    days = np.arange(0.0, 60, 3)
    values, variances = noisy(days, 9)
    trend = smooth(days, values, variances, process=WANDERING, half_life_days=math.inf)
    asked = np.arange(day := days[-1], day + 100)
    seen = np.append(values, np.full(99, np.nan))
    every = np.append(days, asked[1:])
    states, covariances = reference(every, seen, np.append(variances, np.ones(99)), WANDERING)
    mean, sd = trend.forecast(asked)
    np.testing.assert_allclose(mean, states[0, len(days) - 1 :], rtol=1e-6)
    np.testing.assert_allclose(sd, np.sqrt(covariances[0, 0, len(days) - 1 :]), rtol=1e-6)


def test_a_forecast_keeps_the_shape_asked_for() -> None:
    trend = gaining(0.01)
    mean, sd = trend.forecast(130)
    assert (mean.shape, sd.shape) == ((), ())
    assert trend.forecast([])[0].shape == (0,)
    low, high = trend.forecast_band([[130], [140]])
    assert low.shape == (2, 1)
    assert (low < high).all()


def test_on_the_days_observed_the_forecast_is_the_trend() -> None:
    days = np.array([0.0, 4, 5, 20])
    trend = smooth(days, *noisy(days, 10))
    mean, sd = trend.forecast(days)
    np.testing.assert_allclose(mean, trend.level, rtol=1e-9)
    np.testing.assert_allclose(sd, trend.level_sd, rtol=1e-9)


@pytest.mark.parametrize("day", [-1.0, MOST_DAYS + 200.0, math.nan])
def test_a_forecast_before_the_first_session_or_never_is_refused(day: float) -> None:
    with pytest.raises(TrendError):
        gaining(0.01).forecast([10, day])


def test_a_goal_has_an_interval_that_holds_the_likely_day() -> None:
    trend = gaining(0.01, sd=0.02)
    goal = trend.level[-1] + 0.04
    found = trend.date_to_reach(goal)
    assert found.earliest is not None
    assert found.likely is not None
    assert found.latest is not None
    assert trend.days[-1] < found.earliest < found.likely < found.latest
    mean, _ = trend.forecast([found.likely - 1, found.likely])
    assert mean[0] < goal <= mean[1]


def test_a_goal_reached_already_is_reached_on_the_last_day() -> None:
    trend = gaining(0.01)
    last = int(trend.days[-1])
    assert trend.date_to_reach(trend.level[-1] - 1) == GoalForecast(last, last, last)


def test_a_goal_out_of_reach_is_not_in_a_year() -> None:
    assert gaining(0.0).date_to_reach(math.log(200_000)) == GoalForecast(None, None, None)
    near = gaining(0.0).date_to_reach(math.log(104_000))
    assert near.earliest is not None
    assert (near.likely, near.latest) == (None, None)


@pytest.mark.parametrize(
    ("goal", "within"), [(math.nan, 365), (math.inf, 365), (12, -1), (12, MOST_DAYS + 1)]
)
def test_an_impossible_goal_is_refused(goal: float, within: int) -> None:
    with pytest.raises(TrendError, match="a goal is a finite logarithm"):
        gaining(0.01).date_to_reach(goal, within_days=within)


@pytest.mark.parametrize(
    ("days", "values", "variances", "message"),
    [
        ([1, 2], [4.0], [0.01], "three lists of the same length"),
        ([[1]], [[4.0]], [[0.01]], "three lists"),
        (1, 4.0, 0.01, "three lists"),
        ([math.nan], [4.0], [0.01], "days are finite"),
        ([1], [math.inf], [0.01], "logarithms are finite numbers from -100 to 100"),
        ([1], [101.0], [0.01], "logarithms"),
        ([1], [4.0], [0.0], "variances are finite numbers from 1e-08 to 100"),
        ([1], [4.0], [-1.0], "variances"),
        ([0, MOST_DAYS + 1], [4.0, 4.0], [0.01, 0.01], "more than 40000 apart"),
    ],
)
def test_impossible_observations_are_refused_with_what_is_allowed(
    days: list[float], values: list[float], variances: list[float], message: str
) -> None:
    with pytest.raises(TrendError, match=message):
        smooth(days, values, variances)


@pytest.mark.parametrize("half_life", [0, -84, math.nan])
def test_an_impossible_half_life_is_refused(half_life: float) -> None:
    with pytest.raises(TrendError, match="allowed is above 0"):
        smooth([1], [4.0], [0.01], half_life_days=half_life)


@pytest.mark.parametrize("prior", [0, 0.2, math.nan])
def test_an_impossible_slope_prior_is_refused(prior: float) -> None:
    with pytest.raises(TrendError, match=r"allowed is up to 0\.1"):
        smooth([1], [4.0], [0.01], slope_prior_per_week=prior)


@pytest.mark.parametrize("process", [Process(-1e-9, 0), Process(0, 0.02), Process(math.nan, 0)])
def test_an_impossible_process_is_refused(process: Process) -> None:
    with pytest.raises(TrendError, match=r"from 0 to 0\.01"):
        smooth([1], [4.0], [0.01], process=process)


observations = st.lists(
    st.tuples(
        st.floats(0, MOST_DAYS) | st.integers(0, 50),
        st.floats(-100, 100),
        st.floats(1e-8, 100),
    ),
    max_size=12,
)
processes = st.none() | st.builds(Process, st.floats(0, 0.01), st.floats(0, 0.01))


@given(observations, processes, st.floats(0.001, 0.1), st.floats(1e-3, 1e6))
def test_any_observations_give_a_finite_trend_or_a_trend_error(
    seen: list[tuple[float, float, float]],
    process: Process | None,
    prior: float,
    half_life: float,
) -> None:
    days, values, variances = (list(column) for column in zip(*seen, strict=True)) if seen else (
        [], [], []
    )  # fmt: skip
    with suppress(TrendError):
        trend = smooth(
            days,
            values,
            variances,
            process=process,
            half_life_days=half_life,
            slope_prior_per_week=prior,
        )
        for column in (trend.level, trend.slope_per_day, trend.level_sd, trend.slope_sd):
            assert np.isfinite(column).all()
        first, last = trend.days[0], trend.days[-1]
        mean, sd = trend.forecast([first, (first + last) / 2, last, last + 1, last + 400])
        assert np.isfinite(mean).all()
        assert np.isfinite(sd).all()
        assert 0 <= trend.plateau_probability() <= 1
        trend.date_to_reach(4.6)
