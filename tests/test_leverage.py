"""Shares of body mass: order, monotony, ranges, and what is refused."""

from __future__ import annotations

import math
import re
from collections.abc import Callable

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop.training.exercises import (
    BodyShare,
    HoldGeometry,
    PushUpGeometry,
    RowGeometry,
    Sex,
    Variation,
)
from desktop.training.holds import full_moment
from desktop.training.leverage import (
    LeverageError,
    Share,
    distinguishable,
    hold_share,
    push_up_share,
    row_angle,
    row_share,
    variation_share,
)
from desktop.training.position import ScaledVariation
from desktop.training.share import known_within, order_only

STATURES = st.integers(1000, 2500)
HOLD_ORDER = [
    (125, 135, 0, False),
    (90, 120, 0, False),
    (125, 135, 0, True),
    (0, 0, 45, False),
    (0, 90, 0, False),
    (0, 0, 0, False),
]


def value(share: Share) -> float:
    """The number of a share that has one."""
    assert share.value is not None
    return share.value


@given(STATURES, st.integers(-760, 760), st.integers(0, 200))
def test_higher_hands_or_lower_feet_never_ask_more_of_a_push_up(
    stature: int, above: int, more: int
) -> None:
    harder, easier = (
        push_up_share(max(height, 0), max(-height, 0), stature)
        for height in (above, min(above + more, 760))
    )
    if harder.value is not None and easier.value is not None:
        assert easier.value <= harder.value
        assert 0 < easier.value < 0.76


@given(STATURES, st.integers(0, 2500), st.integers(0, 300))
def test_a_lower_bar_never_makes_a_row_easier(stature: int, bar: int, lower: int) -> None:
    try:
        high = row_share(row_angle(bar + lower, 0, stature))
        low = row_share(row_angle(bar, 0, stature))
    except LeverageError:
        return
    if high.value is not None and low.value is not None:
        assert low.value >= high.value


@pytest.mark.parametrize(
    ("hands_mm", "feet_mm", "depends"),
    [(609.6, 0, True), (304.8, 0, False), (0, 0, False), (0, 304.8, False), (0, 609.6, False)],
)
def test_stature_matters_for_high_hands_only(
    hands_mm: float, feet_mm: float, depends: bool
) -> None:
    # Ebben 2011, J Strength Cond Res 25(10):2891-2894: for hands on 60.96 cm only.
    short, tall = (push_up_share(hands_mm, feet_mm, stature) for stature in (1650, 1900))
    assert (abs(value(tall) - value(short)) > 0.03) is depends


@pytest.mark.parametrize("hold", ["front lever", "planche"])
@pytest.mark.parametrize("sex", ["m", "f"])
def test_holds_get_harder_in_the_order_in_which_they_are_learnt(hold: str, sex: str) -> None:
    shares = [value(hold_share(hold, sex, *angles)) for angles in HOLD_ORDER]
    assert shares == sorted(shares)
    assert shares[-1] == 1
    assert len(set(shares)) == len(shares)


@given(
    st.sampled_from(["front lever", "planche"]),
    st.sampled_from(["m", "f"]),
    st.integers(0, 150),
    st.integers(0, 160),
    st.integers(0, 80),
    st.booleans(),
)
def test_no_bent_position_exceeds_the_full_one(
    hold: str, sex: str, hip: int, knee: int, straddle: int, one_leg: bool
) -> None:
    assert 0 < value(hold_share(hold, sex, hip, knee, straddle, one_leg)) <= 1 + 1e-12


def test_a_tight_tuck_is_less_sure_than_an_open_one() -> None:
    assert hold_share("planche", "m", 125, 135).plus_minus == 0.06
    assert hold_share("planche", "m", 90, 120).plus_minus == 0.03


def test_l_sits_beyond_level_or_in_straddle_are_known_by_order_only() -> None:
    for share in (hold_share("l-sit", "f", 30, 0), hold_share("l-sit", "f", 0, 0, 40)):
        assert share.order_only
        assert share.grade == "order only"
        assert share.plus_minus is None


def test_an_l_sit_below_level_is_easier() -> None:
    assert value(hold_share("l-sit", "m", -40, 0)) == pytest.approx(math.cos(math.radians(40)))


@pytest.mark.parametrize(
    ("hands_mm", "feet_mm", "stature"),
    [(900, 0, 1750), (0, 650, 1750), (1028, 0, 2000), (0, 742, 2000)],
)
def test_the_push_up_model_holds_up_to_its_stated_heights(
    hands_mm: float, feet_mm: float, stature: float
) -> None:
    assert not push_up_share(hands_mm, feet_mm, stature).order_only
    beyond = push_up_share(hands_mm and hands_mm + 10, feet_mm and feet_mm + 10, stature)
    assert beyond.order_only


def test_push_ups_on_the_knees_are_known_on_one_level_alone() -> None:
    assert value(push_up_share(0, 0, 1750, knees=True)) == 0.52
    assert push_up_share(300, 300, 1750, knees=True).value == 0.52
    assert push_up_share(300, 0, 1750, knees=True).order_only


def test_rows_are_known_by_order_only_where_no_number_is_published() -> None:
    assert value(row_share(90)) == 0.79
    assert row_share(90.1).order_only
    assert row_share(29, straps=True).order_only
    assert row_share(76, straps=True).order_only
    assert row_share(52.5, straps=True).grade == "modelled"
    assert value(row_share(52.5, straps=True)) == pytest.approx((0.5288 + 0.6808) / 2)


def test_the_angle_of_a_row_follows_from_bar_feet_and_stature() -> None:
    assert row_angle(0.35 * 1800, 0, 1800) == pytest.approx(90)
    assert row_angle(0.35 * 1800 + 0.39 * 1800, 0, 1800) == pytest.approx(60)
    assert row_angle(0.35 * 1800, 300, 1800) > 90


@pytest.mark.parametrize(
    ("call", "says"),
    [
        (lambda: push_up_share(-1, 0, 1750), "height of hands -1 mm"),
        (lambda: push_up_share(0, math.inf, 1750), "height of feet inf mm"),
        (lambda: push_up_share(0, math.nan, 1750), "height of feet nan mm"),
        (lambda: push_up_share(0, 0, 175), "1000 to 2500 mm"),
        (lambda: push_up_share(1400, 0, 1750), "at most 1334 mm"),
        (lambda: row_angle(2100, 0, 1750), "0 to 1977 mm"),
        (lambda: row_angle(0, 2000, 1750), "1248 to 3978 mm"),
        (lambda: row_share(-1), "0 to 180"),
        (lambda: row_share(181), "0 to 180"),
        (lambda: hold_share("flag", "m", 0, 0), "front lever, planche, l-sit"),
        (lambda: hold_share("planche", "x", 0, 0), '"m" and "f"'),
        (lambda: hold_share("planche", "m", -1, 0), "hip -1°; allowed is 0 to 150°"),
        (lambda: hold_share("planche", "m", 0, 161), "knee 161°"),
        (lambda: hold_share("planche", "m", 0, 0, 81), "straddle 81°"),
        (lambda: hold_share("planche", "m", math.nan, 0), "hip nan°"),
        (lambda: hold_share("l-sit", "m", -80, 100), "behind the hips"),
        (lambda: full_moment("flag", "m"), "front lever, planche, l-sit"),
    ],
)
def test_impossible_geometry_is_refused_and_the_allowed_named(
    call: Callable[[], object], says: str
) -> None:
    with pytest.raises(LeverageError, match=re.escape(says)):
        call()


@pytest.mark.parametrize(
    ("variation", "grade", "number"),
    [
        (Variation("a", "a", push_up=PushUpGeometry()), "modelled", 0.665),
        (Variation("a", "a", row=RowGeometry(lean_deg=30)), "modelled", 0.395),
        (Variation("a", "a", row=RowGeometry(straps=True, lean_deg=45)), "published", 0.5288),
        (Variation("a", "a", row=RowGeometry(bar_mm=609)), "modelled", 0.79),
        (Variation("a", "a", hold=HoldGeometry("planche")), "modelled", 1.0),
        (Variation("a", "a", share=BodyShare(0.9, 0.8, 0.02, "s")), "modelled", 0.8),
        (Variation("a", "a", share=BodyShare(0.9, 0.8, 0.02, "s", True)), "published", 0.8),
        (Variation("a", "a"), "order only", None),
    ],
)
def test_a_variation_has_the_share_of_whatever_geometry_it_gives(
    variation: Variation, grade: str, number: float | None
) -> None:
    share = variation_share(variation, Sex.FEMALE, 1740)
    assert share.grade == grade
    assert share.value == (None if number is None else pytest.approx(number, abs=0.001))


def test_a_share_by_sex_takes_the_trainees_column() -> None:
    variation = Variation("a", "a", share=BodyShare(0.9, 0.8, 0.02, "s"))
    assert variation_share(variation, Sex.MALE, None).value == 0.9


def test_an_unknown_stature_widens_the_uncertainty_where_it_matters() -> None:
    floor = Variation("a", "a", push_up=PushUpGeometry())
    raised = Variation("b", "b", push_up=PushUpGeometry(hands_mm=600))
    assert variation_share(floor, Sex.MALE, None).plus_minus == pytest.approx(0.03)
    wide = variation_share(raised, Sex.MALE, None)
    assert wide.plus_minus is not None
    assert wide.plus_minus > 0.05
    too_high = Variation("c", "c", push_up=PushUpGeometry(hands_mm=1000))
    assert variation_share(too_high, Sex.MALE, None).order_only


def test_differences_within_the_joint_uncertainty_are_not_told_apart() -> None:
    low, near, far = (Share(v, 0.03, "modelled", "s") for v in (0.5, 0.54, 0.55))
    assert not distinguishable(low, near)
    assert distinguishable(low, far)
    assert distinguishable(low, ScaledVariation("a", "a", 0.6, 0.03))
    assert distinguishable(low, order_only("known by order"))


def test_what_is_known_by_order_has_no_uncertainty_to_widen() -> None:
    share = order_only("known by order")
    assert known_within(share, 0.1) is share
