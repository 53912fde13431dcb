"""The examples in the guide are what the model does."""

from __future__ import annotations

from datetime import date, timedelta
from pathlib import Path

import pytest

from desktop.training.asking import starting_state, target_on
from desktop.training.position import (
    Position,
    ProgressionRule,
    ScaledVariation,
    Surroundings,
    Variable,
    VariableRange,
)
from desktop.training.program import LineStart
from desktop.training.progression import Mover, grow
from desktop.training.replay import SessionDone, replay
from desktop.training.session import SetDone
from desktop.training.state import Context

PAGE = Path(__file__).resolve().parent.parent / "resources" / "guide" / "decisions.md"
BARBELL = Surroundings(loads_g=tuple(range(20_000, 200_001, 2_500)))
REPS, SETS = VariableRange(Variable.REPS, 8, 12), VariableRange(Variable.SETS, 3, 4)
LOAD, VARIATION = VariableRange(Variable.LOAD, increment=2_500), VariableRange(Variable.VARIATION)
PUSH_UPS = Surroundings(
    (0,),
    (ScaledVariation("hands on 45 cm", "", 0.57), ScaledVariation("hands on 30 cm", "", 0.61)),
    body_mass_g=70_000,
    bodyweight=True,
)
HOLD = VariableRange(Variable.HOLD, 10, 30, 5, floors=(("one leg", 5),))
LEGS = tuple(ScaledVariation(name, "") for name in ("tuck", "one leg", "full"))
DAY = date(2026, 9, 7)


def told(position: Position) -> str:
    amount = f"{position.hold_s} s" if position.hold_s else str(position.reps)
    where = position.variation or f"{position.load_g / 1000:g} kg"
    return f"{position.sets} × {amount}, {where}"


def told_steps(
    start: Position, ranges: tuple[VariableRange, ...], around: Surroundings, count: int
) -> str:
    said = [told(start)]
    for _ in range(count):
        start = grow(start, Mover(ProgressionRule(ranges), around)).position
        said.append(told(start))
    return " → ".join(said)


@pytest.mark.parametrize(
    ("start", "ranges", "around", "count"),
    [
        (Position(100_000, 5, 3), (LOAD,), BARBELL, 2),
        (Position(60_000, 11, 3), (REPS, LOAD), BARBELL, 3),
        (Position(60_000, 12, 3), (REPS, SETS, LOAD), BARBELL, 5),
        (Position(0, 12, 3, variation="hands on 45 cm"), (REPS, VARIATION), PUSH_UPS, 2),
        (
            Position(0, None, 4, hold_s=25, variation="tuck"),
            (HOLD, VARIATION),
            Surroundings((0,), LEGS, 70_000, bodyweight=True),
            3,
        ),
        (
            Position(20_000, 12, 3),
            (REPS, LOAD),
            Surroundings(loads_g=(20_000, 25_000)),
            3,
        ),
    ],
)
def test_steps_on_the_page_are_those_of_the_model(
    start: Position, ranges: tuple[VariableRange, ...], around: Surroundings, count: int
) -> None:
    assert told_steps(start, ranges, around, count) in PAGE.read_text(encoding="utf-8")


def done(number: int, *reps: int) -> SessionDone:
    sets = tuple(SetDone(60_000, each) for each in reps)
    return SessionDone(DAY + timedelta(days=number), sets, session_id=number)


def test_the_back_off_on_the_page_is_that_of_the_model() -> None:
    start = starting_state(
        LineStart(DAY, Position(60_000, 8, 3)), ProgressionRule((REPS, LOAD)), BARBELL, Context()
    )
    after = replay((), start, [done(0, 8, 7, 6), done(3, 8, 7, 5)], Context()).state.position
    assert after is not None
    assert f"60 kg becomes {after.load_g / 1000:g} kg" in PAGE.read_text(encoding="utf-8")


def test_the_gaps_on_the_page_are_those_of_the_model() -> None:
    start = starting_state(
        LineStart(DAY, Position(60_000, 8, 3)), ProgressionRule((REPS, LOAD)), BARBELL, Context()
    )
    state = replay((), start, [done(0, 8, 8, 8)], Context()).state
    page = PAGE.read_text(encoding="utf-8")
    for days in (14, 20, 40, 100):
        asked = target_on(state, DAY + timedelta(days=days), Context()).position
        assert asked is not None
        assert f"after {days} days {told(asked)}" in page
