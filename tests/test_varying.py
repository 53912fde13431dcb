"""Another variable: what a rule gets besides, and that nothing harder is asked with it."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from desktop.training.adjusting import fitted
from desktop.training.position import (
    Follow,
    Position,
    ProgressionRule,
    SchemeKind,
    SetScheme,
    Surroundings,
    Variable,
    VariableRange,
)
from desktop.training.progression import Mover
from desktop.training.varying import MOST_SETS, another_variable

REPS, HOLD = VariableRange(Variable.REPS, 8, 12), VariableRange(Variable.HOLD, 10, 30, 5)
SETS, TEMPO = VariableRange(Variable.SETS, 3, 4), VariableRange(Variable.TEMPO, 3, 5)
LOAD, VARIATION = VariableRange(Variable.LOAD, increment=2_500), VariableRange(Variable.VARIATION)
R, H, S, L, V, T = (
    Variable.REPS,
    Variable.HOLD,
    Variable.SETS,
    Variable.LOAD,
    Variable.VARIATION,
    Variable.TEMPO,
)


@pytest.mark.parametrize(
    ("ranges", "position", "order"),
    [
        ((LOAD,), Position(60_000, 5, 3), (R, L)),
        ((VARIATION,), Position(0, 5, 3), (R, V)),
        ((REPS, LOAD), Position(60_000, 8, 3), (R, S, L)),
        ((REPS,), Position(60_000, 12, 3), (R, S)),
        ((TEMPO, REPS, VARIATION), Position(0, 8, 3, tempo_s=3), (T, R, S, V)),
        ((HOLD, VARIATION), Position(0, None, 4, hold_s=20), (H, S, V)),
        ((), Position(60_000, 8, 3), (R,)),
    ],
)
def test_the_range_comes_before_what_makes_it_heavier(
    ranges: tuple[VariableRange, ...], position: Position, order: tuple[Variable, ...]
) -> None:
    found = another_variable(ProgressionRule(ranges), position)
    assert found is not None
    added, rule = found
    assert tuple(each.variable for each in rule.ranges) == order
    assert added in rule.ranges
    assert added.floor == position.value(added.variable)


@pytest.mark.parametrize(
    ("rule", "position"),
    [
        (ProgressionRule((REPS, SETS, LOAD)), Position(60_000, 8, 3)),
        (ProgressionRule((REPS, LOAD)), Position(60_000, 8, MOST_SETS)),
        (ProgressionRule(follow=Follow("", 85.0)), Position(60_000, 8, 3)),
        (ProgressionRule((VariableRange(R, 8), )), Position(60_000, 8, 3)),
        (
            ProgressionRule((REPS, LOAD), scheme=SetScheme(SchemeKind.TOTAL)),
            Position(60_000, 30, 3),
        ),
    ],
)  # fmt: skip
def test_where_none_fits_there_is_none(rule: ProgressionRule, position: Position) -> None:
    assert another_variable(rule, position) is None


@settings(max_examples=40, deadline=None)
@given(
    reps=st.integers(8, 12),
    sets=st.integers(1, 5),
    load_g=st.sampled_from((60_000, 62_500, 65_000)),
)
def test_the_position_stands_inside_the_new_rule(reps: int, sets: int, load_g: int) -> None:
    position = Position(load_g, reps, sets)
    found = another_variable(ProgressionRule((REPS, LOAD)), position)
    assert found is not None
    around = Surroundings(loads_g=(60_000, 62_500, 65_000))
    assert fitted(position, Mover(found[1], around)) == position
