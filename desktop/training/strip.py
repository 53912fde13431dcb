"""The step strip: every variable's range as cells, where the line stands and what comes next."""

from __future__ import annotations

from desktop.training.asking import mover_of
from desktop.training.demand import load_up, rank
from desktop.training.loads import distinct
from desktop.training.position import Position, Variable, VariableRange
from desktop.training.progression import Mover, grow, moving_variable
from desktop.training.quantities import same_load
from desktop.training.state import Context, State
from desktop.training.target import StripCell, StripVariable

SHOWN = 7  # cells of one variable; longer ranges are windowed round the place
BEFORE = 2  # of them before the place, where the range goes on that far


def strip(state: State, context: Context) -> tuple[StripVariable, ...]:
    """The cells of every variable of the rule, fastest first; empty without a position."""
    if state.position is None:
        return ()
    mover = mover_of(state, context)
    following = grow(state.position, mover).position
    moving = moving_variable(state.position, mover)
    place = mover.rule.ranges.index(moving) if moving is not None else -1
    return tuple(
        _cells(ranged, state.position, following, rolls=at < place, mover=mover)
        for at, ranged in enumerate(mover.rule.ranges)
    )


def _cells(
    ranged: VariableRange, here: Position, following: Position, *, rolls: bool, mover: Mover
) -> StripVariable:
    if ranged.variable is Variable.VARIATION:
        return _variation_cells(ranged, here, following, rolls, mover)
    values = _values(ranged, here, following, mover)
    now, then = here.value(ranged.variable), following.value(ranged.variable)
    cells = [
        StripCell(
            value,
            here=_is(value, now, ranged),
            next=_is(value, then, ranged) and not _is(value, now, ranged),
        )
        for value in values
    ]
    return _windowed(ranged.variable.value, cells, rolls)


def _is(value: int, other: int | None, ranged: VariableRange) -> bool:
    if other is None:
        return False
    return same_load(value, other) if ranged.variable is Variable.LOAD else value == other


def _values(ranged: VariableRange, here: Position, following: Position, mover: Mover) -> list[int]:
    """All values of a range on its grid; loads: here, next and what the rule steps to beyond."""
    stands = [v for p in (here, following) if (v := p.value(ranged.variable)) is not None]
    if ranged.variable is Variable.LOAD:
        return _load_values(ranged, stands, mover)
    floor = ranged.floor_at(here.variation)
    top = ranged.ceiling if ranged.ceiling is not None else max([floor, *stands]) + 2
    return sorted({*range(floor, top + 1, ranged.increment), *stands})


def _load_values(ranged: VariableRange, stands: list[int], mover: Mover) -> list[int]:
    """Where the load stands, what comes next, and one step beyond: a load has no end to draw."""
    beyond = load_up(mover.around, max(stands) + ranged.increment)
    if beyond is None or (ranged.ceiling is not None and beyond > ranged.ceiling):
        return list(distinct(stands))
    return list(distinct([*stands, beyond]))


def _variation_cells(
    ranged: VariableRange, here: Position, following: Position, rolls: bool, mover: Mover
) -> StripVariable:
    scale = mover.around.scale
    first = rank(mover.around, ranged.easiest) or 0
    last = rank(mover.around, ranged.hardest)
    cells = [
        StripCell(
            step.key,
            step.name,
            here=step.key == here.variation,
            next=step.key == following.variation and step.key != here.variation,
        )
        for step in scale[first : None if last is None else last + 1]
        if step.available or step.key == here.variation
    ]
    return _windowed(ranged.variable.value, cells, rolls)


def _windowed(variable: str, cells: list[StripCell], rolls: bool) -> StripVariable:
    """At most ``SHOWN`` cells round the place, with counts of those left out at either end."""
    place = next((at for at, cell in enumerate(cells) if cell.here), 0)
    start = max(min(place - BEFORE, len(cells) - SHOWN), 0)
    shown = cells[start : start + SHOWN]
    return StripVariable(
        variable,
        tuple(shown),
        rolls_next=rolls,
        more_below=start,
        more_above=len(cells) - start - len(shown),
    )
