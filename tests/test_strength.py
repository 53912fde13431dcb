"""Strength: equations and inverses, the chart, the effort scale, the default estimate."""

from __future__ import annotations

import math
from contextlib import suppress

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop.training.quantities import MAX_LOAD_G
from desktop.training.strength import (
    ASSUMED_RIR,
    CERTAIN_REPS,
    EQUATIONS,
    ESTIMATED_REPS,
    MEASURED_LOG_SD,
    MOST_REPS,
    TEXTBOOK_CHART,
    StrengthError,
    estimate,
    load_for,
    one_rep_max,
    percent_for,
    reps_at,
    rir_from_rpe,
    rpe_from_rir,
)

equations = st.sampled_from(sorted(EQUATIONS))
loads = st.floats(1, MAX_LOAD_G)
reps_to_ten = st.integers(1, 10)
rirs = st.floats(0, 5)
anything = st.floats() | st.integers() | st.booleans()


@given(loads, reps_to_ten, rirs, equations)
def test_the_load_for_an_estimated_maximum_is_the_load_lifted(
    load: float, reps: int, rir: float, equation: str
) -> None:
    maximum = one_rep_max(load, reps, rir, equation)
    assert load_for(maximum, reps, rir, equation) == pytest.approx(load, rel=1e-12)


@given(loads, equations)
def test_a_single_with_none_in_reserve_is_the_load_itself(load: float, equation: str) -> None:
    assert one_rep_max(load, 1, 0, equation) == load
    assert load_for(load, 1, 0, equation) == load


@given(st.floats(1, 1000), st.integers(1, 19), equations)
def test_more_repetitions_or_more_load_mean_a_higher_maximum(
    load: float, reps: int, equation: str
) -> None:
    here = one_rep_max(load, reps, 0, equation)
    assert one_rep_max(load, reps + 1, 0, equation) > here
    assert one_rep_max(load + 1, reps, 0, equation) > here


@given(st.integers(1, 9), st.integers(1, 9), equations)
def test_a_repetition_in_reserve_counts_like_one_done(reps: int, rir: int, equation: str) -> None:
    assert one_rep_max(100, reps, rir, equation) == one_rep_max(100, reps + rir, 0, equation)


@given(st.floats(1.01, MOST_REPS), equations)
def test_repetitions_and_percentages_are_inverse(reps: float, equation: str) -> None:
    assert reps_at(percent_for(reps, 0, equation), equation) == pytest.approx(reps, rel=1e-9)


@given(st.integers(1, 19), equations)
def test_more_repetitions_go_with_a_smaller_percentage(reps: int, equation: str) -> None:
    assert percent_for(reps + 1, 0, equation) < percent_for(reps, 0, equation) <= 100


@pytest.mark.parametrize("equation", EQUATIONS)
def test_near_the_maximum_one_repetition_is_expected(equation: str) -> None:
    assert reps_at(100, equation) == 1
    assert reps_at(99.9, equation) == pytest.approx(1, abs=0.25)


@pytest.mark.parametrize("equation", EQUATIONS)
@pytest.mark.parametrize("percent", [0, -10, 100.1, 30, 1e-300, math.nan, math.inf, True])
def test_a_percentage_without_repetitions_is_refused(percent: float, equation: str) -> None:
    with pytest.raises(StrengthError, match=r"is used from \d\d\.\d to 100 %"):
        reps_at(percent, equation)


def test_the_textbook_chart_falls_with_repetitions() -> None:
    assert list(TEXTBOOK_CHART) == sorted(TEXTBOOK_CHART)
    assert list(TEXTBOOK_CHART.values()) == sorted(TEXTBOOK_CHART.values(), reverse=True)


@pytest.mark.parametrize(
    "load", [0, -60_000, math.nan, math.inf, MAX_LOAD_G + 1, 10**400, True, "60"]
)
def test_an_impossible_load_is_refused_with_what_is_allowed(load: float) -> None:
    with pytest.raises(StrengthError, match="allowed is above 0, at most 2000000 g"):
        one_rep_max(load, 5)
    with pytest.raises(StrengthError, match="allowed is above 0"):
        estimate(load, 5, 0)
    if load != MAX_LOAD_G + 1:
        with pytest.raises(StrengthError, match="allowed is above 0, at most 6000000 g"):
            load_for(load, 5)


@pytest.mark.parametrize("reps", [0, 0.5, -3, math.nan, math.inf, 10**400, True])
def test_impossible_repetitions_are_refused(reps: float) -> None:
    with pytest.raises(StrengthError, match="allowed is 1 to 10000"):
        one_rep_max(60_000, reps)


@pytest.mark.parametrize("rir", [-1, math.nan, math.inf, 10**400, False])
def test_an_impossible_reserve_is_refused(rir: float) -> None:
    with pytest.raises(StrengthError, match="allowed is 0 to 10000"):
        load_for(60_000, 5, rir)
    with pytest.raises(StrengthError, match="allowed is 0 to 10000"):
        rpe_from_rir(rir)


@pytest.mark.parametrize("equation", EQUATIONS)
@pytest.mark.parametrize(("reps", "rir"), [(21, 0), (15, 5.5), (37, 0), (37.92, 0), (40, 0)])
def test_no_equation_is_used_over_twenty_repetitions(
    reps: float, rir: float, equation: str
) -> None:
    with pytest.raises(StrengthError, match="no estimate above 20"):
        one_rep_max(60_000, reps, rir, equation)


def test_an_unknown_equation_is_refused_with_the_seven() -> None:
    with pytest.raises(StrengthError, match="allowed are epley, brzycki, lander, lombardi"):
        one_rep_max(60_000, 5, equation="Epley")


@given(anything, anything, anything, st.sampled_from([*EQUATIONS, "other"]))
def test_any_number_gives_a_finite_answer_or_a_strength_error(
    load: float, reps: float, rir: float, equation: str
) -> None:
    with suppress(StrengthError):
        assert math.isfinite(one_rep_max(load, reps, rir, equation))
    with suppress(StrengthError):
        assert math.isfinite(load_for(load, reps, rir, equation))
    with suppress(StrengthError):
        assert math.isfinite(percent_for(reps, rir, equation))
    with suppress(StrengthError):
        assert 1 <= reps_at(load, equation) <= MOST_REPS


@given(anything, anything, anything | st.none())
def test_any_set_gives_an_estimate_none_or_a_strength_error(
    load: float, reps: float, rir: float | None
) -> None:
    with suppress(StrengthError):
        found = estimate(load, reps, rir)
        assert found is None or (found.value_g >= load and 0 < found.log_sd < 1)


@pytest.mark.parametrize("reps", range(1, 21))
def test_the_estimate_is_certain_then_uncertain_then_none(reps: int) -> None:
    found = estimate(60_000, reps, 0)
    if reps > ESTIMATED_REPS:
        assert found is None
    else:
        assert found is not None
        assert found.certain is (reps <= CERTAIN_REPS)


def test_the_estimate_is_the_mean_of_two_equations() -> None:
    found = estimate(60_000, 5, 2)
    assert found is not None
    both = (one_rep_max(60_000, 7, 0, "epley"), one_rep_max(60_000, 7, 0, "brzycki"))
    assert found.value_g == pytest.approx(sum(both) / 2)


def test_a_measured_maximum_has_the_noise_of_a_measured_maximum() -> None:
    found = estimate(100_000, 1, 0)
    assert found is not None
    assert (found.value_g, found.log_sd, found.certain) == (100_000, MEASURED_LOG_SD, True)


@given(st.integers(1, 14), st.floats(0, 6))
def test_noise_grows_with_repetitions_and_reserve(reps: int, rir: float) -> None:
    here = estimate(60_000, reps, rir)
    for harder in (estimate(60_000, reps + 1, rir), estimate(60_000, reps, rir + 0.5)):
        assert harder is None or (here is not None and harder.log_sd > here.log_sd)


def test_a_blank_reserve_is_unknown_and_never_none_left() -> None:
    blank, known = estimate(60_000, 5, None), estimate(60_000, 5, ASSUMED_RIR)
    assert blank is not None
    assert known is not None
    assert blank.value_g == known.value_g
    assert not blank.certain
    assert known.certain
    failed = estimate(60_000, 5, 0)
    assert failed is not None
    assert blank.log_sd > failed.log_sd


@pytest.mark.parametrize("rpe", [-0.5, 10.5, 8.3, math.nan, math.inf, True, "9"])
def test_a_rating_off_the_scale_is_refused(rpe: float) -> None:
    with pytest.raises(StrengthError, match="half steps from 0 to 10"):
        rir_from_rpe(rpe)


@pytest.mark.parametrize(
    ("rir", "rpe"),
    [
        (0, (10, 10)),
        (0.5, (9, 9.5)),
        (1, (9, 9)),
        (1.5, (8.5, 8.5)),
        (1.25, (8.5, 9)),
        (2, (8, 8)),
        (3, (7, 7)),
        (3.5, (6, 7)),
        (4, (5, 6)),
        (6, (5, 6)),
        (6.5, None),
    ],
)
def test_a_reserve_is_called_by_the_scale(rir: float, rpe: tuple[float, float] | None) -> None:
    assert rpe_from_rir(rir) == rpe


@given(st.integers(0, 6))
def test_what_a_reserve_is_called_stands_for_that_reserve(rir: int) -> None:
    called = rpe_from_rir(rir)
    assert called is not None
    for rpe in called:
        meant = rir_from_rpe(rpe)
        assert meant is not None
        assert meant[0] <= rir <= meant[1]


def test_a_watched_test_is_less_noisy_than_a_set_with_a_called_reserve() -> None:
    called, watched = (estimate(80_000, 5, 2, tested=tested) for tested in (False, True))
    assert called
    assert watched
    assert watched.value_g == called.value_g
    assert watched.log_sd < called.log_sd
    blank = estimate(80_000, 5, None, tested=True)
    assert blank == estimate(80_000, 5, None)
