"""Published and modelled values of leverage, each with its source."""

from __future__ import annotations

import csv
from importlib.resources import files

import pytest

from desktop.training.exercises import Sex
from desktop.training.holds import full_moment
from desktop.training.leverage import (
    calf_raise_share,
    dip_share,
    hold_share,
    pistol_share,
    pull_up_share,
    push_up_share,
    row_share,
    split_squat_share,
    squat_share,
)
from desktop.training.segments import SAMPLE_STATURE_MM, SEGMENTS, SIDES, body_mass_sum

# Studies of the push-up on the floor lie 2-5 points apart, so closer agreement means nothing.
AGREEMENT = 0.035
STATURE_MM = 1750

# Ebben 2011, J Strength Cond Res 25(10):2891-2894, peak vertical force, n = 23 (second-hand).
EBBEN = [
    ("hands on 60.96 cm", 609.6, 0, False, 0.41),
    ("knees", 0, 0, True, 0.49),
    ("hands on 30.48 cm", 304.8, 0, False, 0.55),
    ("floor", 0, 0, False, 0.64),
    ("feet on 30.48 cm", 0, 304.8, False, 0.70),
    ("feet on 60.96 cm", 0, 609.6, False, 0.74),
]

# Melrose and Dawes 2015, J Athl Enhancement, n = 40: suspension-strap row with straight arms.
MELROSE = [(30, 0.3744), (45, 0.5288), (60, 0.6808), (75, 0.7938)]


@pytest.mark.parametrize(("how", "hands", "feet", "knees", "published"), EBBEN)
def test_push_ups_agree_with_measured_forces(
    how: str, hands: float, feet: float, knees: bool, published: float
) -> None:
    share = push_up_share(hands, feet, STATURE_MM, knees)
    assert share.value == pytest.approx(published, abs=AGREEMENT), how


@pytest.mark.parametrize(("angle", "published"), MELROSE)
def test_rows_on_straps_are_the_published_shares(angle: float, published: float) -> None:
    share = row_share(angle, straps=True)
    assert share.value == pytest.approx(published)
    assert share.grade == "published"


@pytest.mark.parametrize(("angle", "published"), MELROSE)
def test_rows_under_a_bar_agree_with_rows_on_straps(angle: float, published: float) -> None:
    assert row_share(angle).value == pytest.approx(published, abs=AGREEMENT)


# From the segment masses of de Leva 1996, J Biomech 29(9):1223-1230 (arithmetic).
def test_fixed_shares_follow_from_the_segment_masses() -> None:
    assert pull_up_share(Sex.MALE).value == pytest.approx(0.955, abs=0.0005)
    assert pull_up_share(Sex.FEMALE).value == pytest.approx(0.961, abs=0.0005)
    assert dip_share(Sex.FEMALE) == pull_up_share(Sex.FEMALE)
    assert squat_share(Sex.MALE).value == pytest.approx(0.886, abs=0.0005)
    assert squat_share(Sex.FEMALE).value == pytest.approx(0.878, abs=0.0005)
    assert pistol_share(Sex.MALE).value == pytest.approx(0.943, abs=0.0005)
    assert calf_raise_share(Sex.MALE).value == pytest.approx(0.973, abs=0.0005)


# Helme, J Strength Cond Res, DOI 10.1519/JSC.0000000000003727: 84.4 ± 3.6 % on the front leg with
# the rear foot raised; split squat and lunge about 75 %.
def test_split_squats_load_the_front_leg_as_published() -> None:
    raised = split_squat_share(rear_foot_raised=True)
    assert raised.value == pytest.approx(0.844, abs=0.01)
    assert raised.plus_minus == 0.036
    assert split_squat_share().value == 0.75


# Model values by the segment data of de Leva 1996; nothing published to compare with.
# (hip, knee, straddle, one leg), men, women.
ABOUT_THE_SHOULDERS = [
    ("tuck", (125, 135, 0, False), 0.63, 0.66),
    ("open tuck", (90, 120, 0, False), 0.76, 0.77),
    ("one leg", (125, 135, 0, True), 0.82, 0.83),
    ("straddle", (0, 0, 45, False), 0.91, 0.91),
    ("half lay", (0, 90, 0, False), 0.93, 0.92),
    ("full", (0, 0, 0, False), 1.0, 1.0),
]
ABOUT_THE_HIPS = [
    ("tuck", (0, 90, 0, False), 0.77, 0.73),
    ("one leg", (0, 90, 0, True), 0.88, 0.87),
    ("full", (0, 0, 0, False), 1.0, 1.0),
]


@pytest.mark.parametrize("hold", ["front lever", "planche"])
@pytest.mark.parametrize(("how", "angles", "men", "women"), ABOUT_THE_SHOULDERS)
def test_levers_and_planches_have_the_modelled_moments(
    hold: str, how: str, angles: tuple[float, float, float, bool], men: float, women: float
) -> None:
    assert round(hold_share(hold, "m", *angles).value or 0, 2) == men, how
    assert round(hold_share(hold, "f", *angles).value or 0, 2) == women, how


@pytest.mark.parametrize(("how", "angles", "men", "women"), ABOUT_THE_HIPS)
def test_l_sits_have_the_modelled_moments(
    how: str, angles: tuple[float, float, float, bool], men: float, women: float
) -> None:
    assert round(hold_share("l-sit", "m", *angles).value or 0, 2) == men, how
    assert round(hold_share("l-sit", "f", *angles).value or 0, 2) == women, how


def test_full_positions_have_the_modelled_moments() -> None:
    assert round(full_moment("front lever", "m"), 3) == 0.239
    assert round(full_moment("planche", "f"), 3) == 0.223
    assert round(full_moment("l-sit", "m"), 3) == 0.073
    assert round(full_moment("l-sit", "f"), 3) == 0.066


# de Leva 1996, J Biomech 29(9):1223-1230.
def test_segment_masses_add_up_to_the_body() -> None:
    assert body_mass_sum(Sex.MALE) == pytest.approx(1.0000, abs=1e-9)
    assert body_mass_sum(Sex.FEMALE) == pytest.approx(0.9999, abs=1e-9)


def test_the_segment_table_is_that_of_the_data_file() -> None:
    text = (files("resources") / "body-segments.csv").read_text(encoding="utf-8")
    rows = list(csv.DictReader(line for line in text.splitlines() if not line.startswith("#")))
    assert [row["segment"] for row in rows] == list(SIDES)
    for row in rows:
        for sex in Sex:
            segment = SEGMENTS[sex][row["segment"]]
            assert segment.mass * 100 == pytest.approx(float(row[f"mass_pct_{sex}"]))
            assert segment.centre * 100 == pytest.approx(float(row[f"com_pct_{sex}"]))
            assert segment.length_mm == float(row[f"length_mm_{sex}"])
    assert f"{SAMPLE_STATURE_MM[Sex.MALE] / 1000} m" in text
    assert f"{SAMPLE_STATURE_MM[Sex.FEMALE] / 1000} m" in text
