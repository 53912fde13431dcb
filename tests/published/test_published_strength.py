"""Published values of strength: equations, chart, effort scale, noise."""

from __future__ import annotations

import pytest

from desktop.training.quantities import Unit, grams, in_unit
from desktop.training.strength import (
    EQUATIONS,
    MEASURED_LOG_SD,
    TEXTBOOK_CHART,
    load_for,
    one_rep_max,
    percent_for,
    rir_from_rpe,
)

# Multipliers in % by the equations as printed: Epley 1985; Brzycki 1993; Lander 1985; Lombardi
# 1989; Mayhew 1992; O'Conner 1989; Wathan 1994 (arithmetic from the published coefficients).
MULTIPLIERS = [
    ("epley", 5, 116.6667),
    ("brzycki", 5, 112.5000),
    ("lander", 5, 113.7089),
    ("lombardi", 5, 117.4619),
    ("mayhew", 5, 119.0107),
    ("oconner", 5, 112.5000),
    ("wathan", 5, 116.5825),
    ("epley", 10, 133.3333),
    ("brzycki", 10, 133.3333),
    ("lander", 10, 134.0704),
    ("lombardi", 10, 125.8925),
    ("mayhew", 10, 130.9343),
    ("oconner", 10, 125.0000),
    ("wathan", 10, 134.7467),
]


@pytest.mark.parametrize(("equation", "reps", "percent"), MULTIPLIERS)
def test_multipliers_are_the_published_ones(equation: str, reps: int, percent: float) -> None:
    assert one_rep_max(100_000, reps, equation=equation) / 1000 == pytest.approx(percent, abs=5e-5)
    assert percent_for(reps, equation=equation) == pytest.approx(10_000 / percent, abs=5e-5)


def test_the_seven_are_all_there() -> None:
    assert {equation for equation, _, _ in MULTIPLIERS} == set(EQUATIONS)
    for name, equation in EQUATIONS.items():
        assert equation.name == name
        assert equation.source


@pytest.mark.parametrize(
    ("pounds", "reps", "maximum"),
    [(110, 5, 128.33), (115, 4, 130.33), (110, 6, 132.00), (105, 8, 133.00), (115, 5, 134.17)],
)
def test_a_chain_of_sets_worked_in_pounds(pounds: int, reps: int, maximum: float) -> None:
    # Worked chain by Epley's equation, as a secondary text prints it, pounds.
    load_g = grams(pounds, Unit.LB)
    found = one_rep_max(load_g, reps)
    assert float(in_unit(round(found), Unit.LB)) == pytest.approx(maximum, abs=0.011)
    assert load_for(found, reps) == pytest.approx(load_g)


def test_at_twenty_repetitions_the_equations_span_135_to_212_percent() -> None:
    # Why no equation is used beyond (arithmetic from the published coefficients).
    multipliers = [one_rep_max(100, 20, equation=equation) for equation in EQUATIONS]
    assert round(min(multipliers)) == 135
    assert round(max(multipliers)) == 212


def test_the_chart_is_the_textbook_one() -> None:
    # NSCA, Essentials of Strength Training and Conditioning, as secondary texts print it.
    one_to_ten = [100, 95, 93, 90, 87, 85, 83, 80, 77, 75]
    assert dict(TEXTBOOK_CHART) == dict(enumerate(one_to_ten, 1)) | {11: 70, 12: 67, 15: 65}


def test_up_to_ten_repetitions_epley_is_near_the_textbook_chart() -> None:
    # Arithmetic from both: never more than two and a half points apart.
    for reps in range(2, 11):
        assert percent_for(reps) == pytest.approx(TEXTBOOK_CHART[reps], abs=2.5)


@pytest.mark.parametrize(
    ("rpe", "rir"),
    [
        (10, (0, 0)),
        (9.5, (0, 0)),
        (9, (1, 1)),
        (8.5, (1, 2)),
        (8, (2, 2)),
        (7.5, (2, 3)),
        (7, (3, 3)),
        (6.5, None),
        (6, (4, 6)),
        (5.5, (4, 6)),
        (5, (4, 6)),
        (4.5, None),
        (4, None),
        (0, None),
    ],
)
def test_ratings_of_effort_stand_for_the_published_reserve(
    rpe: float, rir: tuple[float, float] | None
) -> None:
    # Zourdos 2016, J Strength Cond Res 30(1):267-275, DOI 10.1519/JSC.0000000000001049.
    assert rir_from_rpe(rpe) == rir


def test_a_measured_maximum_varies_by_the_published_median() -> None:
    # Grgic 2020, Sports Med Open 6:31, DOI 10.1186/s40798-020-00260-z: median CV 4.2 %.
    assert MEASURED_LOG_SD == 0.042
