"""Warm-up ramps: reachable, rising, below the working set, and none where none is needed."""

from __future__ import annotations

from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop.training.loads import distinct
from desktop.training.session import AskedSet
from desktop.training.warm_up import Ramp, RampStep, warm_up_ramp

BAR_LOADS = tuple(range(20_000, 200_001, 2_500))
DUMBBELLS = tuple(range(2_000, 40_001, 2_000))


def short(ramp: tuple[AskedSet, ...]) -> list[tuple[int, int | None]]:
    return [(each.load_g, each.reps) for each in ramp]


@pytest.mark.parametrize(
    ("work_g", "reps", "loads", "ramp"),
    [
        (100_000, 5, BAR_LOADS, [(40_000, 5), (60_000, 3), (80_000, 2)]),
        (102_500, 5, BAR_LOADS, [(40_000, 5), (60_000, 3), (80_000, 2)]),
        # 40 and 60 % are lighter than the bar: the empty bar once.
        (30_000, 8, BAR_LOADS, [(20_000, 5), (22_500, 2)]),
        # The bar is 89 % of it.
        (22_500, 8, BAR_LOADS, []),
        (20_000, 8, BAR_LOADS, []),
        (100_000, 12, BAR_LOADS, [(40_000, 5), (60_000, 3)]),
        (24_000, 8, DUMBBELLS, [(8_000, 5), (14_000, 3), (18_000, 2)]),
        (10_000, 8, DUMBBELLS, []),
        (100_000, 5, None, [(40_000, 5), (60_000, 3), (80_000, 2)]),
        (61_300, 5, None, [(24_500, 5), (36_500, 3), (49_000, 2)]),
        (100_000, 5, (), []),
        (0, 5, BAR_LOADS, []),
        (100_000, None, BAR_LOADS, []),
    ],
)
def test_a_ramp_is_made_of_reachable_loads(
    work_g: int, reps: int | None, loads: tuple[int, ...] | None, ramp: list[tuple[int, int]]
) -> None:
    assert short(warm_up_ramp(work_g, reps, loads)) == ramp


ADDED = (-20_000, 0, 5_000, 10_000, 20_000, 30_000)


@pytest.mark.parametrize(
    ("work_g", "body_g", "ramp"),
    [
        (0, 76_000.0, []),
        (-20_000, 76_000.0, []),
        (5_000, 76_000.0, [(0, 5)]),
        # 80 % of 106 kg is 8.8 kg above the body's part.
        (30_000, 76_000.0, [(0, 5), (5_000, 2)]),
        (20_000, None, [(0, 5), (5_000, 5), (10_000, 3)]),
    ],
)
def test_bodyweight_is_warmed_up_for_added_load_alone(
    work_g: int, body_g: float | None, ramp: list[tuple[int, int]]
) -> None:
    made = warm_up_ramp(
        work_g, 5, ADDED, bodyweight=True, body_part_g=body_g, variation="chin over bar"
    )
    assert short(made) == ramp
    assert all(each.variation == "chin over bar" for each in made)


def test_a_coach_may_ramp_otherwise() -> None:
    own = Ramp(steps=(RampStep(50, 4),), light_g=0)
    assert short(warm_up_ramp(8_000, 8, DUMBBELLS, ramp=own)) == [(4_000, 4)]


@given(
    work_g=st.integers(-50_000, 300_000),
    reps=st.integers(1, 30),
    loads=st.none() | st.lists(st.integers(-50_000, 300_000), max_size=40).map(distinct),
    bodyweight=st.booleans(),
    body_g=st.none() | st.floats(0, 150_000),
)
def test_a_ramp_rises_and_stays_below_the_working_set(
    work_g: int,
    reps: int,
    loads: tuple[int, ...] | None,
    bodyweight: bool,
    body_g: float | None,
) -> None:
    ramp = warm_up_ramp(work_g, reps, loads, bodyweight=bodyweight, body_part_g=body_g)
    made = [each.load_g for each in ramp]
    assert all(0 <= load_g < work_g for load_g in made)
    assert all(b - a > 10 for a, b in pairwise(made))
    if loads is not None:
        assert set(made) <= {*loads, 0}
