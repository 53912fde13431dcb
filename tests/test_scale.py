"""The variation scale of one trainee: what can be set up, in which order, and the next step."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop.catalogue import load_catalogue
from desktop.training.equipment import Equipment, Height, Place
from desktop.training.exercises import (
    Exercise,
    LoadingKind,
    Muscle,
    Pattern,
    PushUpGeometry,
    Sex,
    Variation,
)
from desktop.training.leverage import LeverageError
from desktop.training.position import ScaledVariation
from desktop.training.scale import (
    ALL_FAMILIES,
    effective_load_g,
    families,
    family_of,
    missing_needs,
    next_harder,
    scale,
    set_up,
    share_of,
    variation_name,
)
from desktop.training.trainee import Trainee

CATALOGUE = {exercise.key: exercise for exercise in load_catalogue()}
BODYWEIGHT = [e for e in CATALOGUE.values() if e.loading is LoadingKind.BODYWEIGHT]
PUSH_UP, BAR_ROW, L_SIT = (CATALOGUE[key] for key in ("push-up", "bar-row", "l-sit"))

ANN = Trainee("Ann", sex=Sex.FEMALE, stature_mm=1680)
BEN = Trainee("Ben", sex=Sex.MALE, stature_mm=1750)
KEPT = ("hands-300", "bench", "hands-9000")
CHAIR, STAIR, TABLE = Height("chair", 450), Height("stair", 170), Height("table", 1000)
HOME = Equipment(boxes=(CHAIR, STAIR), places=(Place.WALL,))


def keys(steps: tuple[ScaledVariation, ...]) -> list[str]:
    """The keys of a scale, easiest first."""
    return [step.key for step in steps]


def test_a_scale_holds_what_can_be_set_up_easiest_first() -> None:
    assert keys(scale(PUSH_UP, BEN, HOME)) == [
        "wall",
        "hands-450",
        "hands-170",
        "floor",
        "feet-170",
        "feet-450",
        "archer",
        "one-arm",
    ]


def test_a_height_is_named_in_the_trainees_words() -> None:
    steps = {step.key: step for step in scale(PUSH_UP, BEN, HOME)}
    assert steps["hands-450"].name == "hands on chair, 45 cm"
    assert steps["feet-170"].name == "feet on stair, 17 cm"
    assert steps["hands-450"].share == pytest.approx(0.508, abs=0.001)
    assert steps["hands-450"].plus_minus == 0.03
    assert steps["hands-450"].modelled


def test_without_recorded_equipment_every_listed_variation_counts() -> None:
    assert keys(scale(PUSH_UP, BEN, None)) == ["wall", "bench", "floor", "archer", "one-arm"]


def test_families_are_kept_apart_unless_the_coach_mixes_them() -> None:
    assert families(PUSH_UP) == ("", "knees")
    assert keys(scale(PUSH_UP, BEN, HOME, "knees")) == ["knees-raised", "knees"]
    mixed = keys(scale(PUSH_UP, BEN, HOME, ALL_FAMILIES))
    assert mixed.index("hands-450") < mixed.index("knees") < mixed.index("hands-170")
    assert family_of(PUSH_UP, "knees") == "knees"
    assert family_of(PUSH_UP, "hands-450") == ""


def test_hands_or_feet_beyond_the_model_stand_at_the_ends() -> None:
    steps = keys(scale(PUSH_UP, BEN, Equipment(boxes=(TABLE, CHAIR))))
    assert steps == [
        "wall",
        "hands-1000",
        "hands-450",
        "floor",
        "feet-450",
        "feet-1000",
        "archer",
        "one-arm",
    ]


def test_a_height_owned_twice_makes_one_variation() -> None:
    owned = Equipment(boxes=(CHAIR, Height("stool", 450)))
    steps = [step for step in scale(PUSH_UP, BEN, owned) if step.key == "hands-450"]
    assert [step.name for step in steps] == ["hands on chair, 45 cm"]


def test_bars_of_known_height_stand_for_leans_by_eye() -> None:
    bars = (Height("rail", 1000), Height("gate", 1200), Height("lintel", 2300))
    owned = Equipment(bar_heights=bars, places=(Place.LOW_BAR,))
    assert keys(scale(BAR_ROW, BEN, owned)) == ["bar-1200", "bar-1000", "one-arm"]
    only_lintel = Equipment(bar_heights=bars[2:])
    assert keys(scale(BAR_ROW, BEN, only_lintel))[0] == "lean-30"


def test_a_bar_below_the_shoulders_reach_is_harder_than_all_that_is_known() -> None:
    owned = Equipment(bar_heights=(Height("bench", 500), Height("rail", 1000)))
    steps = scale(BAR_ROW, BEN, owned)
    assert keys(steps)[:2] == ["bar-1000", "bar-500"]
    assert steps[1].share is None


def test_l_sits_known_by_order_keep_their_place_after_the_ranked_ones() -> None:
    steps = scale(L_SIT, BEN, Equipment())
    assert keys(steps) == ["feet-down", "tuck", "one-leg", "full", "straddle", "raised"]
    assert [step.share is None for step in steps] == [True, False, False, False, True, True]


def test_variations_from_the_record_stay_on_the_scale_but_are_not_available() -> None:
    steps = scale(PUSH_UP, BEN, Equipment(), also=[*KEPT, "nonsense"])
    kept = {step.key: step.available for step in steps}
    assert kept == {
        "wall": True,
        "hands-9000": False,
        "bench": False,
        "hands-300": False,
        "floor": True,
        "archer": True,
        "one-arm": True,
    }
    assert next(s for s in steps if s.key == "hands-300").name == "hands on 30 cm"
    rows = scale(BAR_ROW, BEN, Equipment(), also=["bar-2300", "bar-1000"])
    assert [(s.key, s.share is None) for s in rows] == [("bar-2300", True), ("bar-1000", False)]


def test_only_bodyweight_exercises_have_a_scale() -> None:
    assert scale(CATALOGUE["back-squat"], BEN, HOME) == ()
    assert families(CATALOGUE["back-squat"]) == ()
    assert family_of(CATALOGUE["back-squat"], "floor") == ""


def test_a_listed_geometry_that_does_not_fit_the_body_is_left_out() -> None:
    tower = Variation("tower", "hands on a tower", push_up=PushUpGeometry(hands_mm=3000))
    floor = Variation("floor", "floor", push_up=PushUpGeometry())
    exercise = push_ups(tower, floor)
    assert keys(scale(exercise, BEN, None)) == ["floor"]
    assert keys(scale(exercise, BEN, None, also=["tower"])) == ["tower", "floor"]
    share = share_of(exercise, "tower", BEN)
    assert share is not None
    assert share.order_only
    assert "further apart" in share.source


def push_ups(*variations: Variation) -> Exercise:
    """A push-up exercise of its own with these variations."""
    return Exercise(
        "own",
        "Own",
        Pattern.HORIZONTAL_PUSH,
        LoadingKind.BODYWEIGHT,
        (Muscle.CHEST,),
        variations=variations,
    )


def test_needs_are_met_by_what_serves_as_well() -> None:
    owned = Equipment(
        boxes=(CHAIR,),
        bar_heights=(Height("rail", 1000),),
        places=(Place.RINGS,),
    )
    needs = ("rings", "straps", "low bar", "box", "step", "bench", "bar")
    assert missing_needs(needs, owned) == ("bench", "bar")
    assert missing_needs(("box", "step"), Equipment(places=(Place.BENCH,))) == ("step",)


def test_the_next_harder_variation_is_the_smallest_step_that_is_large_enough() -> None:
    steps = scale(PUSH_UP, BEN, HOME)
    harder = [next_harder(steps, "hands-450", least) for least in (0.01, 0.11, 0.16)]
    assert [step.key for step in harder if step] == ["hands-170", "floor", "feet-170"]


def test_a_step_known_by_order_counts_as_a_step() -> None:
    steps = scale(PUSH_UP, BEN, HOME)
    after_wall, after_last_known = next_harder(steps, "wall", 0.2), next_harder(steps, "feet-450")
    assert after_wall is not None
    assert after_last_known is not None
    assert (after_wall.key, after_last_known.key) == ("hands-450", "archer")
    assert next_harder(steps, "one-arm") is None


def test_what_cannot_be_set_up_is_passed_over() -> None:
    steps = scale(PUSH_UP, BEN, HOME, also=["hands-300"])
    step = next_harder(steps, "hands-450")
    assert step is not None
    assert step.key == "hands-170"


def test_an_unknown_variation_has_no_next_step() -> None:
    with pytest.raises(LeverageError, match="not on the scale: wall, hands-450"):
        next_harder(scale(PUSH_UP, BEN, HOME), "hands-300")
    with pytest.raises(LeverageError, match="which is empty"):
        next_harder((), "floor")


@pytest.mark.parametrize(
    ("exercise", "key", "name", "what"),
    [
        (PUSH_UP, "hands-450", "hands on chair, 45 cm", "chair, 45 cm"),
        (PUSH_UP, "hands-455", "hands on 45.5 cm", "45.5 cm"),
        (PUSH_UP, "floor", "hands and feet on the floor", ""),
        (PUSH_UP, "bar-450", "bar-450", ""),
        (BAR_ROW, "bar-1000", "under rail, 100 cm", "rail, 100 cm"),
        (BAR_ROW, "bar-1100", "bar at 110 cm", "110 cm"),
    ],
)
def test_every_variation_has_a_name_and_a_set_up(
    exercise: Exercise, key: str, name: str, what: str
) -> None:
    owned = Equipment(boxes=(CHAIR,), bar_heights=(Height("rail", 1000),))
    assert variation_name(exercise, key, owned) == name
    assert set_up(exercise, key, owned) == what


def test_names_need_no_recorded_equipment() -> None:
    assert variation_name(PUSH_UP, "feet-300", None) == "feet on 30 cm"


def test_the_share_of_any_variation_can_be_told() -> None:
    floor, box = share_of(PUSH_UP, "floor", BEN), share_of(PUSH_UP, "hands-300", BEN)
    assert floor is not None
    assert floor.value == pytest.approx(0.665)
    assert box is not None
    assert box.value == pytest.approx(0.569, abs=0.001)
    assert share_of(PUSH_UP, "nonsense", BEN) is None
    assert share_of(PUSH_UP, None, BEN) is None


def test_the_only_variation_need_not_be_named() -> None:
    exercise = push_ups(Variation("floor", "floor", push_up=PushUpGeometry()))
    share = share_of(exercise, None, BEN)
    assert share is not None
    assert share.value == pytest.approx(0.665)


@pytest.mark.parametrize(
    ("key", "variation", "load_g", "body_mass_g", "effective_g"),
    [
        ("back-squat", None, 60_000, 80_000, 60_000),
        ("dumbbell-row", None, 20_000, None, 20_000),
        ("kettlebell-swing", None, 16_000, 80_000, 16_000),
        ("leg-press", None, 100_000, 80_000, 100_000),
        ("band-row", None, 9_000, 80_000, 9_000),
        ("pull-up", "full", 0, 80_000, 76_400),
        ("pull-up", "full", 10_000, 80_000, 86_400),
        ("pull-up", "full", -20_000, 80_000, 56_400),
        ("pull-up", "full", -80_000, 80_000, None),
        ("pull-up", "full", 0, None, None),
        ("pull-up", "archer", 0, 80_000, None),
        ("pull-up", "nonsense", 0, 80_000, None),
        ("push-up", "floor", 0, 80_000, 53_200),
    ],
)
def test_the_effective_load_of_every_loading_kind(
    key: str,
    variation: str | None,
    load_g: int,
    body_mass_g: int | None,
    effective_g: float | None,
) -> None:
    effective = effective_load_g(CATALOGUE[key], variation, load_g, body_mass_g, BEN)
    assert effective == (None if effective_g is None else pytest.approx(effective_g))


HEIGHTS = st.integers(0, 2500).map(lambda mm: Height("a height", mm))


@given(
    st.sampled_from(BODYWEIGHT),
    st.sampled_from([ANN, BEN, Trainee("Cid")]),
    st.builds(
        Equipment,
        boxes=st.lists(HEIGHTS, max_size=5).map(tuple),
        bar_heights=st.lists(HEIGHTS, max_size=3).map(tuple),
        places=st.lists(st.sampled_from(Place), max_size=7).map(tuple),
    ),
    st.sampled_from([None, ALL_FAMILIES]),
)
def test_scales_are_sorted_and_every_step_is_harder(
    exercise: Exercise, trainee: Trainee, owned: Equipment, family: str | None
) -> None:
    steps = scale(exercise, trainee, owned, family)
    shares = [step.share for step in steps if step.share is not None]
    assert shares == sorted(shares)
    assert len(set(keys(steps))) == len(steps)
    for step in steps:
        share = share_of(exercise, step.key, trainee)
        assert share is not None
        assert share.value == step.share
        assert variation_name(exercise, step.key, owned) == step.name
        harder = next_harder(steps, step.key, 0.02)
        if harder is not None and harder.share is not None and step.share is not None:
            assert harder.share - step.share >= 0.02 - 1e-9
