"""Loads in a sorted list, 10 g being nothing."""

from __future__ import annotations

from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop.training.loads import distinct, enclosing, found, next_down, next_up, round_down
from desktop.training.quantities import same_load

LOADS = (-20_000, 0, 5_000, 7_500)

load_lists = st.lists(st.integers(-3_000, 3_000), max_size=40).map(distinct)
wanted = st.integers(-3_100, 3_100)


@pytest.mark.parametrize(
    ("load_g", "down", "up", "below"),
    [
        (-20_011, None, -20_000, None),
        (-20_010, -20_000, -20_000, None),
        (-20_000, -20_000, -20_000, None),
        (-10_000, -20_000, 0, -20_000),
        (5_010, 5_000, 5_000, 0),
        (5_011, 5_000, 7_500, 5_000),
        (4_990, 5_000, 5_000, 0),
        (7_511, 7_500, None, 7_500),
    ],
)
def test_a_load_lies_between_two(
    load_g: int, down: int | None, up: int | None, below: int | None
) -> None:
    assert round_down(LOADS, load_g) == down
    assert next_up(LOADS, load_g) == up
    assert enclosing(LOADS, load_g) == (down, up)
    assert next_down(LOADS, load_g) == below


def test_without_loads_nothing_is_found() -> None:
    assert enclosing((), 0) == (None, None)
    assert next_down((), 0) is None
    assert found((), 0) is None


def test_the_nearest_of_two_that_are_one_load_is_found() -> None:
    assert found((0, 12), 7) == 12
    assert found((0, 12), 5) == 0


@given(loads=load_lists, load_g=wanted)
def test_rounding_agrees_with_looking_at_every_load(loads: tuple[int, ...], load_g: int) -> None:
    same = [each for each in loads if same_load(each, load_g)]
    below = [each for each in loads if each < load_g and not same_load(each, load_g)]
    above = [each for each in loads if each > load_g and not same_load(each, load_g)]
    down, up = enclosing(loads, load_g)
    assert down in same if same else down == max(below, default=None)
    assert up in same if same else up == min(above, default=None)
    assert next_down(loads, load_g) == max(below, default=None)


@given(st.lists(st.integers(-200, 200), max_size=30))
def test_distinct_keeps_one_of_each_load(loads: list[int]) -> None:
    kept = distinct(loads)
    assert set(kept) <= set(loads)
    assert all(any(same_load(load_g, each) for each in kept) for load_g in loads)
    assert all(b - a > 10 for a, b in pairwise(kept))
