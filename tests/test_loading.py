"""From what a trainee owns to loads, and from a load to what goes where."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop.training.bands import BandPull, band_pull, pull_g
from desktop.training.equipment import (
    AdjustableDumbbell,
    Band,
    Bar,
    Discs,
    Equipment,
    InvalidEquipment,
    Stack,
)
from desktop.training.exercises import Exercise, LoadingKind, Muscle, Pattern
from desktop.training.loading import CannotLoad, Loading, MadeWith, loading, reachable
from desktop.training.quantities import Unit, format_load, grams, same_load

LONG_BAR = Bar("long bar", 20_000)
SHORT_BAR = Bar("short bar", 15_000)
POUND_DISCS = tuple(
    Discs(grams(mass, Unit.LB), count)
    for mass, count in ((45, 10), (35, 2), (25, 2), (10, 4), (5, 2), (2.5, 2))
)


def exercise(kind: LoadingKind, implements: int = 1, name: str = "Press") -> Exercise:
    return Exercise(
        key=name.casefold(),
        name=name,
        pattern=Pattern.VERTICAL_PUSH,
        loading=kind,
        direct=(Muscle.SHOULDERS,),
        implements=implements,
    )


BARBELL = exercise(LoadingKind.BARBELL)
BODYWEIGHT = exercise(LoadingKind.BODYWEIGHT)


def made(equipment: Equipment, what: Exercise, load_g: int) -> Loading:
    """The loading, which must be possible."""
    found = loading(equipment, what, load_g)
    assert isinstance(found, Loading)
    return found


def test_every_five_pounds_from_45_to_500_are_found_and_shown_as_such() -> None:
    equipment = Equipment(bars=(Bar("bar", grams(45, Unit.LB)),), discs=POUND_DISCS)
    loads = reachable(equipment, BARBELL)
    for pounds in range(45, 501, 5):
        target_g = grams(pounds, Unit.LB)
        assert target_g in loads
        found = made(equipment, BARBELL, target_g)
        assert format_load(found.load_g, Unit.LB) == f"{pounds} lb"
        on_bar_g = grams(45, Unit.LB) + 2 * sum(found.discs_per_side)
        assert same_load(on_bar_g, target_g)


def test_no_pound_load_drifts_off_its_marks() -> None:
    equipment = Equipment(bars=(Bar("bar", grams(45, Unit.LB)),), discs=POUND_DISCS)
    for load_g in reachable(equipment, BARBELL):
        pounds = round(load_g / 453.59237 * 2) / 2
        assert load_g == grams(pounds, Unit.LB)


def test_a_metric_load_beside_a_pound_load_stays_metric() -> None:
    # 107.5 kg lies 1 g beside 237 lb.
    discs = (Discs(25_000, 2), Discs(15_000, 2), Discs(2_500, 2), Discs(1_250, 2), *POUND_DISCS[3:])
    loads = reachable(Equipment(bars=(LONG_BAR,), discs=discs), BARBELL)
    assert 107_500 in loads


def test_metric_discs_on_a_pound_bar_leave_its_pound_loads_alone() -> None:
    bar = Bar("bar", grams(45, Unit.LB))
    equipment = Equipment(bars=(bar,), discs=(*POUND_DISCS, Discs(2_500, 2)))
    loads = reachable(equipment, BARBELL)
    assert grams(500, Unit.LB) in loads
    assert grams(45, Unit.LB) + 5_000 in loads
    assert list(loads) == sorted(loads)


def test_a_bar_of_odd_mass_with_metric_discs_is_added_up_to_the_gram() -> None:
    equipment = Equipment(bars=(Bar("weighed", 20_185),), discs=(Discs(2_500, 2),))
    assert reachable(equipment, BARBELL) == (20_185, 25_185)


def test_a_disc_without_its_like_stays_off_the_bar() -> None:
    equipment = Equipment(bars=(LONG_BAR,), discs=(Discs(10_000, 3), Discs(5_000, 1)))
    assert reachable(equipment, BARBELL) == (20_000, 40_000)


def test_discs_of_one_mass_listed_twice_make_a_pair() -> None:
    equipment = Equipment(bars=(LONG_BAR,), discs=(Discs(5_000, 1), Discs(5_000, 1)))
    assert reachable(equipment, BARBELL) == (20_000, 30_000)


def test_collars_go_on_with_the_discs_and_a_bare_bar_needs_none() -> None:
    equipment = Equipment(bars=(LONG_BAR,), discs=(Discs(10_000, 2),), collars_g=5_000)
    assert reachable(equipment, BARBELL) == (20_000, 25_000, 45_000)
    assert made(equipment, BARBELL, 20_000).collars_g == 0
    assert made(equipment, BARBELL, 45_000) == Loading(
        45_000, MadeWith.BAR, bar=LONG_BAR, collars_g=5_000, discs_per_side=(10_000,)
    )


def test_a_bar_may_have_collars_of_its_own() -> None:
    thin = Bar("thin bar", 8_000, collars_g=500)
    equipment = Equipment(bars=(thin,), discs=(Discs(1_000, 2),), collars_g=5_000)
    assert reachable(equipment, BARBELL) == (8_000, 8_500, 10_500)


def test_the_first_bar_that_can_carry_the_load_is_taken() -> None:
    equipment = Equipment(bars=(LONG_BAR, SHORT_BAR), discs=(Discs(2_500, 2), Discs(5_000, 2)))
    assert reachable(equipment, BARBELL) == (15_000, 20_000, 25_000, 30_000, 35_000)
    assert made(equipment, BARBELL, 30_000).bar == LONG_BAR
    assert made(equipment, BARBELL, 30_000).discs_per_side == (5_000,)
    assert made(equipment, BARBELL, 15_000).bar == SHORT_BAR


def test_a_load_that_cannot_be_made_names_the_two_around_it() -> None:
    equipment = Equipment(bars=(LONG_BAR,), discs=(Discs(10_000, 2),))
    assert loading(equipment, BARBELL, 31_000) == CannotLoad(31_000, 20_000, 40_000)
    assert loading(equipment, BARBELL, 50_000) == CannotLoad(50_000, 40_000, None)
    assert loading(equipment, BARBELL, 10_000) == CannotLoad(10_000, None, 20_000)


@pytest.mark.parametrize("kind", [k for k in LoadingKind if k is not LoadingKind.BODYWEIGHT])
def test_without_equipment_nothing_can_be_loaded(kind: LoadingKind) -> None:
    assert reachable(Equipment(), exercise(kind)) == ()
    assert loading(Equipment(), exercise(kind), 0) == CannotLoad(0, None, None)


def test_a_pair_of_dumbbells_needs_two_alike() -> None:
    equipment = Equipment(dumbbells_g=(16_000, 12_000, 16_004, 20_000))
    assert reachable(equipment, exercise(LoadingKind.DUMBBELL)) == (12_000, 16_000, 20_000)
    pair = exercise(LoadingKind.DUMBBELL, 2)
    assert reachable(equipment, pair) == (16_000,)
    assert made(equipment, pair, 16_000) == Loading(16_000, MadeWith.DUMBBELL, 2)
    assert loading(equipment, pair, 20_000) == CannotLoad(20_000, 16_000, None)


def test_two_handles_share_the_discs() -> None:
    handle = AdjustableDumbbell(2_000, 2, (Discs(1_000, 6), Discs(2_500, 2)))
    equipment = Equipment(adjustable=(handle,))
    one = exercise(LoadingKind.DUMBBELL)
    # One handle: three pairs of 1 kg and one of 2.5 kg; two handles: one pair of 1 kg each.
    assert reachable(equipment, one) == (2_000, 4_000, 6_000, 7_000, 8_000, 9_000, 11_000, 13_000)
    pair = exercise(LoadingKind.DUMBBELL, 2)
    assert reachable(equipment, pair) == (2_000, 4_000)
    assert made(equipment, pair, 4_000) == Loading(
        4_000, MadeWith.HANDLE, 2, handle_g=2_000, discs_per_side=(1_000,)
    )


def test_one_handle_makes_no_pair() -> None:
    equipment = Equipment(adjustable=(AdjustableDumbbell(2_000, 1, (Discs(1_000, 4),)),))
    assert reachable(equipment, exercise(LoadingKind.DUMBBELL, 2)) == ()


def test_kettlebells_are_single_pieces() -> None:
    equipment = Equipment(kettlebells_g=(24_000, 16_000, 16_000))
    assert reachable(equipment, exercise(LoadingKind.KETTLEBELL)) == (16_000, 24_000)
    pair = exercise(LoadingKind.KETTLEBELL, 2)
    assert made(equipment, pair, 16_000) == Loading(16_000, MadeWith.KETTLEBELL, 2)


def test_a_stack_makes_half_steps_with_its_small_plate() -> None:
    stack = Stack("cable", 5_000, 5_000, 15_000, half_step_g=2_500)
    equipment = Equipment(stacks=(stack,))
    what = exercise(LoadingKind.STACK)
    assert reachable(equipment, what) == (5_000, 7_500, 10_000, 12_500, 15_000, 17_500)
    assert made(equipment, what, 10_000) == Loading(10_000, MadeWith.STACK, stack=stack)
    assert made(equipment, what, 12_500).half_step
    plain = Equipment(stacks=(Stack("cable", 5_000, 5_000, 17_000),))
    assert reachable(plain, what) == (5_000, 10_000, 15_000)


def test_a_stack_in_pounds_shows_pounds() -> None:
    step_g = grams(10, Unit.LB)
    stack = Stack("", step_g, step_g, 40 * step_g, half_step_g=grams(2.5, Unit.LB))
    loads = reachable(Equipment(stacks=(stack,)), exercise(LoadingKind.STACK))
    assert loads[-2:] == (grams(400, Unit.LB), grams(402.5, Unit.LB))


def test_a_stack_named_like_the_exercise_is_its_machine() -> None:
    press, cable = Stack("Press", 10_000, 10_000, 30_000), Stack("cable", 5_000, 5_000, 10_000)
    equipment = Equipment(stacks=(cable, press))
    assert reachable(equipment, exercise(LoadingKind.STACK)) == (10_000, 20_000, 30_000)
    assert reachable(equipment, exercise(LoadingKind.STACK, name="Curl")) == (
        5_000,
        10_000,
        20_000,
        30_000,
    )


BAND = Band("wide", 200, 6_000, 600, 12_000)
UNMEASURED = Band("narrow", 0, 0, 0, 0)


def test_bodyweight_has_one_signed_axis() -> None:
    equipment = Equipment(vest_g=(5_000, 10_000), assistance_g=(20_000, 10_000), bands=(BAND,))
    assert reachable(equipment, BODYWEIGHT) == (-20_000, -10_000, -9_700, 0, 5_000, 10_000)
    assert made(equipment, BODYWEIGHT, 0) == Loading(0, MadeWith.BODY_ALONE)
    assert made(equipment, BODYWEIGHT, 10_000) == Loading(10_000, MadeWith.VEST)
    assert made(equipment, BODYWEIGHT, -10_000) == Loading(-10_000, MadeWith.ASSISTANCE)
    assert made(equipment, BODYWEIGHT, -9_700) == Loading(
        -9_700, MadeWith.ASSISTANCE, band=BAND, at_bottom_g=-12_000
    )
    assert loading(equipment, BODYWEIGHT, 20_000) == CannotLoad(20_000, 10_000, None)


def test_the_body_alone_needs_nothing() -> None:
    assert reachable(Equipment(), BODYWEIGHT) == (0,)


def test_a_band_exercise_pulls_against_the_mean_of_each_measured_band() -> None:
    equipment = Equipment(bands=(UNMEASURED, BAND))
    assert reachable(equipment, exercise(LoadingKind.BAND)) == (9_700,)
    assert made(equipment, exercise(LoadingKind.BAND), 9_700) == Loading(
        9_700, MadeWith.BAND, band=BAND, at_bottom_g=12_000
    )


def test_a_band_goes_through_zero_and_its_two_points() -> None:
    assert pull_g(BAND, 0) == 0
    assert pull_g(BAND, 200) == pytest.approx(6_000)
    assert pull_g(BAND, 600) == pytest.approx(12_000)
    # 35 x - 0.025 x² from 200 to 600 mm has the mean 35 * 400 - 0.025 * (200² + 200 * 600 + 600²)
    # / 3 = 9 667 g, given to 100 g.
    assert band_pull(BAND) == BandPull(9_700, 12_000)
    straight = Band("straight", 100, 1_000, 300, 3_000)
    assert band_pull(straight) == BandPull(2_000, 3_000)


@given(
    short_mm=st.integers(50, 500),
    longer_mm=st.integers(50, 800),
    short_g=st.integers(500, 20_000),
    more_g=st.integers(100, 30_000),
)
def test_the_mean_pull_agrees_with_adding_up_small_pieces(
    short_mm: int, longer_mm: int, short_g: int, more_g: int
) -> None:
    band = Band("any", short_mm, short_g, short_mm + longer_mm, short_g + more_g)
    middles = [short_mm + longer_mm * (n + 0.5) / 400 for n in range(400)]
    mean = sum(pull_g(band, stretch) for stretch in middles) / 400
    assert band_pull(band).mean_g == pytest.approx(mean, abs=51)


def test_a_weak_band_still_pulls_something() -> None:
    assert band_pull(Band("thread", 100, 10, 300, 30)) == BandPull(100, 100)


def test_nothing_is_said_of_a_band_where_it_was_not_measured() -> None:
    for stretch in (-1, 601):
        with pytest.raises(InvalidEquipment, match="measured from 0 to 600 mm"):
            pull_g(BAND, stretch)
    with pytest.raises(InvalidEquipment, match="was not measured"):
        band_pull(UNMEASURED)


@pytest.mark.parametrize(
    ("build", "said"),
    [
        (lambda: Bar("bar", 0), "a bar is 1 to 2000000 g, not 0"),
        (lambda: Bar("bar", 20_000, -1), "a pair of collars is 0 to"),
        (lambda: Discs(0, 2), "a disc is 1 to"),
        (lambda: Discs(5_000, -1), "0 or more discs"),
        (lambda: Band("b", 600, 6_000, 200, 12_000), "the longer one pulls more"),
        (lambda: Band("b", 200, 6_000, 600, 6_000), "the longer one pulls more"),
        (lambda: Band("b", 0, 0, 600, 6_000), "all four 0 where it was not measured"),
        (lambda: Stack("s", 5_000, 0, 10_000), "a step of a stack is 1 to"),
        (lambda: Stack("s", 5_000, 5_000, 1_000), "the whole stack is 5000 to"),
        (lambda: Stack("s", 5_000, 5, 10_000), "at most 100 steps"),
        (lambda: AdjustableDumbbell(-1, 1, ()), "a handle is 0 to"),
        (lambda: AdjustableDumbbell(2_000, 0, ()), "1 or more handles"),
        (lambda: Equipment(collars_g=-1), "a pair of collars is 0 to"),
        (lambda: Equipment(dumbbells_g=(-1,)), "a dumbbell is 0 to"),
        (lambda: Equipment(assistance_g=(-20_000,)), "assistance is 0 to"),
    ],
)
def test_impossible_equipment_is_refused_with_what_is_allowed(build: object, said: str) -> None:
    assert callable(build)
    with pytest.raises(InvalidEquipment, match=said):
        build()


metric_equipment = st.builds(
    Equipment,
    bars=st.lists(st.sampled_from([LONG_BAR, SHORT_BAR]), max_size=2, unique=True).map(tuple),
    discs=st.lists(
        st.builds(
            Discs,
            st.sampled_from([500, 1_250, 2_500, 567, 4_536, 5_000, 20_000]),
            st.integers(0, 5),
        ),
        max_size=5,
    ).map(tuple),
    collars_g=st.sampled_from([0, 500, 5_000]),
    dumbbells_g=st.lists(st.integers(1, 20).map(lambda kg: kg * 1_000), max_size=6).map(tuple),
    vest_g=st.lists(st.integers(0, 20_000), max_size=3).map(tuple),
    assistance_g=st.lists(st.integers(0, 50_000), max_size=3).map(tuple),
)


@given(
    equipment=metric_equipment,
    kind=st.sampled_from(LoadingKind),
    implements=st.integers(1, 2),
)
def test_every_reachable_load_can_be_set_up_and_adds_up(
    equipment: Equipment, kind: LoadingKind, implements: int
) -> None:
    what = exercise(kind, implements)
    loads = reachable(equipment, what)
    assert list(loads) == sorted(set(loads))
    for load_g in loads[:40]:
        found = made(equipment, what, load_g)
        assert same_load(found.load_g, load_g)
        if found.bar is not None:
            discs = 2 * sum(found.discs_per_side)
            assert same_load(found.bar.mass_g + found.collars_g + discs, load_g)
