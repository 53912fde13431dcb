"""Discs for a load: exact against brute force, fewest first, then largest first."""

from __future__ import annotations

from collections.abc import Mapping
from itertools import pairwise, product

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop.training.equipment import InvalidEquipment, discs_per_side, reachable_loads
from desktop.training.quantities import MAX_LOAD_G, same_load

KILOGRAM_DISCS = {25_000: 2, 20_000: 1, 10_000: 2, 5_000: 1, 2_500: 2, 1_250: 1}

disc_pairs = st.dictionaries(
    st.one_of(
        st.sampled_from([250, 500, 1_250, 2_500, 5_000, 10_000, 20_000, 25_000]),
        st.sampled_from([567, 1_134, 2_268, 4_536, 11_340, 15_876, 20_412]),
        st.integers(1, 25_000),
    ),
    st.integers(0, 3),
    max_size=5,
)


def every_choice(pairs: Mapping[int, int]) -> list[tuple[int, ...]]:
    """Every choice of discs for one side, largest first."""
    masses = sorted(pairs, reverse=True)
    return [
        tuple(mass for mass, number in zip(masses, numbers, strict=True) for _ in range(number))
        for numbers in product(*(range(pairs[mass] + 1) for mass in masses))
    ]


@pytest.mark.parametrize(
    ("load_g", "discs"),
    [
        (20_000, ()),
        (60_000, (20_000,)),
        (62_500, (20_000, 1_250)),
        (100_000, (25_000, 10_000, 5_000)),
        # 25 + 20 + 10 + 2.5: two discs of 25 and one of 5 and 2.5 are as many, but larger first.
        (135_000, (25_000, 25_000, 5_000, 2_500)),
        (19_000, None),
        (21_000, None),
        (61_250, None),
        (500_000, None),
        (-20_000, None),
    ],
)
def test_discs_are_the_fewest_then_the_largest(load_g: int, discs: tuple[int, ...] | None) -> None:
    assert discs_per_side(load_g, 20_000, KILOGRAM_DISCS) == discs


def test_taking_the_largest_disc_first_would_miss_this_load() -> None:
    assert discs_per_side(80_000, 20_000, {25_000: 1, 15_000: 2}) == (15_000, 15_000)


def test_few_discs_are_preferred_to_a_large_one() -> None:
    # 25 + 5 + 5 + 5 on each side, or 20 + 20.
    assert discs_per_side(100_000, 20_000, {25_000: 1, 20_000: 2, 5_000: 3}) == (20_000, 20_000)


def test_a_load_within_ten_grams_is_the_same_load() -> None:
    assert discs_per_side(60_010, 20_000, {20_000: 1}) == (20_000,)
    assert discs_per_side(59_990, 20_000, {20_000: 1}) == (20_000,)
    assert discs_per_side(60_011, 20_000, {20_000: 1}) is None
    assert discs_per_side(19_990, 20_000, {}) == ()
    assert discs_per_side(19_989, 20_000, {}) is None


@given(pairs=disc_pairs, data=st.data())
def test_discs_agree_with_every_choice_tried(pairs: dict[int, int], data: st.DataObject) -> None:
    choices = every_choice(pairs)
    near = data.draw(st.sampled_from(choices))
    load_g = 20_000 + 2 * sum(near) + data.draw(st.integers(-30, 30))
    fitting = [each for each in choices if same_load(20_000 + 2 * sum(each), load_g)]
    best = min(fitting, key=lambda each: (len(each), [-mass for mass in each]), default=None)
    assert discs_per_side(load_g, 20_000, pairs) == best


@given(pairs=disc_pairs)
def test_reachable_loads_are_every_choice_and_nothing_else(pairs: dict[int, int]) -> None:
    sums = {20_000 + 2 * sum(each) for each in every_choice(pairs)}
    loads = reachable_loads(20_000, pairs)
    assert loads[0] == 20_000
    assert set(loads) <= sums
    assert all(any(same_load(each, load_g) for load_g in loads) for each in sums)
    assert all(not same_load(a, b) for a, b in pairwise(loads))
    assert list(loads) == sorted(loads)


@given(pairs=disc_pairs)
def test_discs_sum_to_each_reachable_load(pairs: dict[int, int]) -> None:
    for load_g in reachable_loads(15_000, pairs)[:50]:
        discs = discs_per_side(load_g, 15_000, pairs)
        assert discs is not None
        assert same_load(15_000 + 2 * sum(discs), load_g)
        assert list(discs) == sorted(discs, reverse=True)
        assert all(discs.count(mass_g) <= pairs[mass_g] for mass_g in discs)


def test_forty_discs_of_twenty_odd_masses_are_searched_exactly() -> None:
    pairs = {997 + 1_201 * n: 1 for n in range(20)}
    loads = reachable_loads(20_000, pairs)
    heaviest = 20_000 + 2 * sum(pairs)
    assert loads[-1] == heaviest
    assert discs_per_side(heaviest, 20_000, pairs) == tuple(sorted(pairs, reverse=True))
    middle = loads[len(loads) // 2]
    discs = discs_per_side(middle, 20_000, pairs)
    assert discs is not None
    assert same_load(20_000 + 2 * sum(discs), middle)


def test_nothing_is_listed_above_the_heaviest_load_there_is() -> None:
    assert reachable_loads(MAX_LOAD_G - 1_000, {500: 2}) == (MAX_LOAD_G - 1_000, MAX_LOAD_G)


@pytest.mark.parametrize(
    ("bar_g", "pairs", "said"),
    [
        (-1, {}, "a bar weighs 0 to"),
        (20_000, {0: 1}, "a disc weighs 1 to"),
        (20_000, {5_000: -1}, "0 or more pairs"),
        (20_000, {5_000: 60, 2_500: 60}, "at most 100 pairs of discs, not 120"),
    ],
)
def test_impossible_discs_are_refused_with_what_is_allowed(
    bar_g: int, pairs: dict[int, int], said: str
) -> None:
    with pytest.raises(InvalidEquipment, match=said):
        reachable_loads(bar_g, pairs)
