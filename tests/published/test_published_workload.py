"""Published values of workload: monotony, strain, moving averages."""

from __future__ import annotations

import math

import pytest

from desktop.training.workload import LONG_DAYS, SHORT_DAYS, ewma, monotony, strain

# A week of daily loads; figures are arithmetic from the published definition: monotony = mean over
# standard deviation, strain = week's load × monotony (Foster 1998, Med Sci Sports Exerc
# 30(7):1164-1168). The source does not say which deviation, so both.
WEEK = (600, 200, 400, 500, 100, 650, 0)


def test_monotony_and_strain_with_the_population_deviation() -> None:
    assert monotony(WEEK) == pytest.approx(1.4924, abs=5e-5)
    assert strain(WEEK) == pytest.approx(3656.4, abs=0.05)


def test_monotony_and_strain_with_the_sample_deviation() -> None:
    assert monotony(WEEK, sample=True) == pytest.approx(1.3817, abs=5e-5)
    assert strain(WEEK, sample=True) == pytest.approx(3385.2, abs=0.05)


def test_a_week_with_the_published_mean_and_deviation_has_the_published_monotony() -> None:
    # BMJ Mil Health 2020;168:314-319, DOI 10.1136/bmjmilitary-2020-001590, Table 1: 790/897 = 0.88.
    # One day stands out from six equal ones so that mean and deviation are those of the table.
    apart = 897 * 7 / math.sqrt(6)
    usual = 790 - apart / 7
    found = monotony([usual] * 6 + [usual + apart])
    assert found is not None
    assert round(found, 2) == 0.88


@pytest.mark.parametrize(("days", "weight"), [(SHORT_DAYS, 0.25), (LONG_DAYS, 0.0689655)])
def test_todays_load_weighs_as_published_in_the_moving_average(days: int, weight: float) -> None:
    # Williams 2017, Br J Sports Med 51(3):209-210, DOI 10.1136/bjsports-2016-096589:
    # today = load·λ + (1 - λ)·yesterday, λ = 2/(N + 1).
    assert ewma([0, 1], days)[1] == pytest.approx(weight, abs=5e-8)
    before, today = ewma([400, 100], days)
    assert today == pytest.approx(100 * weight + (1 - weight) * before, abs=1e-4)
