"""The counter that rolls over: one step of a position by its rule.

When the criterion is fulfilled, the fastest variable grows by one increment; where that would
pass its ceiling, the next slower one grows and the faster ones are reset, matched or kept.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace

from desktop.training.demand import (
    load_up,
    position_demand,
    rank,
    reps_per_set,
    scaled,
)
from desktop.training.loads import next_down, next_up
from desktop.training.position import (
    Position,
    ProgressionRule,
    ProgressionSettings,
    ScaledVariation,
    Surroundings,
    Variable,
    VariableRange,
    WhenSlower,
)
from desktop.training.quantities import SAME_LOAD_G
from desktop.training.reasons import Reason, ReasonCode, ReasonValue, reason
from desktop.training.target import InBetween

MOST_REPS = 100  # past this no jump is waited for; common practice, no source

Offer = Callable[[str, Position, Variable], None]


@dataclass(frozen=True, slots=True)
class Growth:
    """Where a step leads and why. ``grew`` False: the position stays (a complete rule)."""

    position: Position
    reason: Reason
    grew: bool = True


@dataclass(frozen=True, slots=True)
class Mover:
    """What a step needs to know: the rule, the surroundings of the day, the coach's settings,
    the last set's repetitions in reserve (None: not told), and the repetitions that a rule
    without a range of them returns to.
    """

    rule: ProgressionRule
    around: Surroundings
    settings: ProgressionSettings = ProgressionSettings()
    last_rir: float | None = None
    fixed_reps: int | None = None


def grow(position: Position, mover: Mover) -> Growth:
    """One step up: the fastest variable that can grow does, the faster ones follow their policy.

    A jump in demand above the limit is not taken: one more repetition is asked instead. A rule
    without ranges is meant to stay as it is.
    """
    if not mover.rule.ranges:
        return Growth(position, reason(ReasonCode.REPEAT_MET), grew=False)
    for place, moving in enumerate(mover.rule.ranges):
        moved = _advanced(position, moving, mover)
        if moved is None:
            continue
        jump = _restarted(position, moved, place, mover)
        over = step_over(position, jump, moving.variable, mover)
        if over is not None and _too_far(over, moving, place, mover):
            waiting = _waiting(position, jump, moving, over, mover)
            if waiting is not None:
                return waiting
        return Growth(jump, _grown(position, jump, moving, place, over, mover))
    return Growth(position, reason(ReasonCode.COMPLETE), grew=False)


def moving_variable(position: Position, mover: Mover) -> VariableRange | None:
    """The range that the next step would move; None where the rule stands at every ceiling."""
    return next(
        (r for r in mover.rule.ranges if _advanced(position, r, mover) is not None),
        None,
    )


def step_over(before: Position, after: Position, moved: Variable, mover: Mover) -> float | None:
    """By which fraction a step raises the demand; None where it cannot be compared.

    A step of SETS compares total repetitions. Holds are not compared.
    """
    if not before.reps or not after.reps:
        return None
    if moved is Variable.SETS:
        return _total_reps(after, mover) / _total_reps(before, mover) - 1
    if moved not in (Variable.LOAD, Variable.VARIATION):
        return None
    old = position_demand(before, mover.rule.scheme, mover.around)
    new = position_demand(after, mover.rule.scheme, mover.around)
    return None if old is None or new is None else new / old - 1


def in_betweens(position: Position, mover: Mover) -> tuple[InBetween, ...]:
    """Smaller steps that the rule or the equipment allows now, with what each costs in demand."""
    found: list[InBetween] = []

    def offer(kind: str, candidate: Position, moved: Variable) -> None:
        change = step_over(position, candidate, moved, mover)
        if change is None and moved is Variable.REPS:
            change = _demand_change(position, candidate, mover)
        found.append(InBetween(candidate, change, kind))

    if position.reps is not None:
        offer("one more rep", replace(position, reps=position.reps + 1), Variable.REPS)
    offer("one more set", replace(position, sets=position.sets + 1), Variable.SETS)
    if position.tempo_s is not None:
        offer("slower tempo", replace(position, tempo_s=position.tempo_s + 1), Variable.TEMPO)
    _offer_loads(position, mover, offer)
    return tuple(found)


def _offer_loads(position: Position, mover: Mover, offer: Offer) -> None:
    loads = mover.around.loads_g
    growing = mover.rule.range_of(Variable.LOAD)
    if loads is not None and growing is not None:
        nearest = next_up(loads, position.load_g + SAME_LOAD_G + 1)
        regular = next_up(loads, position.load_g + growing.increment)
        if nearest is not None and (regular is None or nearest < regular - SAME_LOAD_G):
            offer("smaller discs", replace(position, load_g=nearest), Variable.LOAD)
    harder = _next_variation(position, None, mover, least=0.0)
    regular_step = next(
        (
            _next_variation(position, r, mover)
            for r in mover.rule.ranges
            if r.variable is Variable.VARIATION
        ),
        None,
    )
    if harder is not None and regular_step is not None and harder.key != regular_step.key:
        offer("variation", replace(position, variation=harder.key), Variable.VARIATION)


def _advanced(position: Position, moving: VariableRange, mover: Mover) -> Position | None:
    """The position with this one variable a step further; None at its ceiling."""
    match moving.variable:
        case Variable.VARIATION:
            step = _next_variation(position, moving, mover)
            return None if step is None else replace(position, variation=step.key)
        case Variable.LOAD:
            load = load_up(mover.around, position.load_g + moving.increment)
            if load is None or _above(load, moving.ceiling, SAME_LOAD_G):
                return None
            return replace(position, load_g=load)
        case _:
            value = position.value(moving.variable) or 0
            if moving.ceiling is not None and value >= moving.ceiling:
                return None
            floor = moving.floor_at(position.variation)
            grown = _next_on_grid(value, floor, moving.increment)
            if moving.ceiling is not None:
                grown = min(grown, moving.ceiling)
            return position.at(moving.variable, grown)


def _next_on_grid(value: int, floor: int, increment: int) -> int:
    return floor if value < floor else floor + ((value - floor) // increment + 1) * increment


def _above(value: int, ceiling: int | None, tolerance: int) -> bool:
    return ceiling is not None and value > ceiling + tolerance


def _next_variation(
    position: Position, moving: VariableRange | None, mover: Mover, least: float | None = None
) -> ScaledVariation | None:
    """The easiest available variation that is harder by at least the least step."""
    here = rank(mover.around, position.variation)
    if here is None:
        return None
    last = rank(mover.around, moving.hardest) if moving and moving.hardest else None
    steps = mover.around.scale[here + 1 : None if last is None else last + 1]
    wanted = mover.rule.least_share_step if least is None else least
    share = mover.around.scale[here].share
    for step in steps:
        if not step.available:
            continue
        if share is None or step.share is None or step.share - share >= wanted - 1e-9:
            return step
    return None


def _restarted(before: Position, moved: Position, place: int, mover: Mover) -> Position:
    """Faster variables reset, kept or matched after the one at ``place`` has moved."""
    after = moved
    matching: VariableRange | None = None
    for faster in mover.rule.ranges[:place]:
        if faster.then is WhenSlower.MATCH:
            matching = faster
        elif faster.then is WhenSlower.RESET:
            after = at_floor(after, faster, mover.around)
    if matching is not None:
        after = _matched(before, after, matching, mover.rule.ranges[place].variable, mover)
    elif mover.rule.range_of(Variable.REPS) is None and mover.fixed_reps is not None:
        after = replace(after, reps=mover.fixed_reps)
    return after


def at_floor(position: Position, ranged: VariableRange, around: Surroundings) -> Position:
    """The position with one variable at its floor (LOAD: the smallest reachable one above it)."""
    match ranged.variable:
        case Variable.VARIATION:
            start = rank(around, ranged.easiest) or 0
            steps = [step for step in around.scale[start:] if step.available]
            return replace(position, variation=steps[0].key) if steps else position
        case Variable.LOAD:
            if ranged.floor is None:
                return position
            load = load_up(around, ranged.floor)
            return position if load is None else replace(position, load_g=load)
        case _:
            return position.at(ranged.variable, ranged.floor_at(position.variation))


def _matched(
    before: Position, after: Position, ranged: VariableRange, moved: Variable, mover: Mover
) -> Position:
    """REPS restart at the smallest value whose demand is at least the share of the old one's.

    Where the two sides cannot be compared, at the floor. Other variables than REPS restart there.
    """
    lowest = at_floor(after, ranged, mover.around)
    if ranged.variable is not Variable.REPS or before.reps is None:
        return lowest
    floor = ranged.floor_at(after.variation)
    top = floor if ranged.ceiling is None else ranged.ceiling
    for reps in range(floor, max(top, floor) + 1, ranged.increment):
        candidate = replace(after, reps=reps)
        over = step_over(before, candidate, _compared(moved), mover)
        if over is None:
            return lowest
        if 1 + over >= mover.settings.match_demand - 1e-9:
            return candidate
    return replace(after, reps=max(top, floor))


def _compared(moved: Variable) -> Variable:
    """SETS compare by total repetitions, everything else by demand."""
    return moved if moved is Variable.SETS else Variable.LOAD


def _total_reps(position: Position, mover: Mover) -> float:
    per_set = reps_per_set(position, mover.rule.scheme)
    return (per_set or 0.0) * position.sets


def _demand_change(before: Position, after: Position, mover: Mover) -> float | None:
    old = position_demand(before, mover.rule.scheme, mover.around)
    new = position_demand(after, mover.rule.scheme, mover.around)
    return None if old is None or new is None else new / old - 1


def _too_far(over: float, moving: VariableRange, place: int, mover: Mover) -> bool:
    """Whether a step passes the jump limit. One more set counts only where repetitions are
    matched to it: as the only thing that grows it is the smallest step there is.
    """
    if moving.variable is Variable.SETS:
        faster = mover.rule.ranges[:place]
        if not any(each.then is WhenSlower.MATCH for each in faster):
            return False
    return over > mover.settings.jump_limit + 1e-9


def _waiting(
    position: Position, jump: Position, moving: VariableRange, over: float, mover: Mover
) -> Growth | None:
    """One more repetition in place of a jump (none where no number of them would lead to it);
    None where the jump passes all the same.
    """
    easy = mover.last_rir is not None and mover.last_rir >= mover.settings.easy_jump_rir
    if position.reps is None or (easy and _smallest_step(position, jump, moving, mover)):
        return None
    needed = _reps_needed(position, jump, moving.variable, mover)
    why = reason(
        ReasonCode.IN_BETWEEN,
        variable=moving.variable.value,
        after=shown(jump, moving.variable, mover),
        reps_needed=needed,
        over=over,
        amount=position.reps,
    )
    if needed is None:
        return Growth(position, why, grew=False)
    return Growth(replace(position, reps=position.reps + 1), why)


def _smallest_step(before: Position, after: Position, moving: VariableRange, mover: Mover) -> bool:
    """Whether nothing smaller than this step can be loaded or set up."""
    if moving.variable is Variable.LOAD:
        loads = mover.around.loads_g
        if loads is None:
            return True
        lower = next_down(loads, after.load_g)
        return lower is None or lower <= before.load_g + SAME_LOAD_G
    if moving.variable is Variable.VARIATION:
        nearest = _next_variation(before, None, mover, least=0.0)
        return nearest is None or nearest.key == after.variation
    return True


def _reps_needed(position: Position, jump: Position, moved: Variable, mover: Mover) -> int | None:
    """How many repetitions at the old place bring the jump within the limit; None: too many."""
    assert position.reps is not None
    for reps in range(position.reps + 1, MOST_REPS + 1):
        over = step_over(replace(position, reps=reps), jump, moved, mover)
        if over is None or over <= mover.settings.jump_limit + 1e-9:
            return reps
    return None


def _grown(
    before: Position,
    after: Position,
    moving: VariableRange,
    place: int,
    over: float | None,
    mover: Mover,
) -> Reason:
    values: dict[str, ReasonValue] = {
        "variable": moving.variable.value,
        "before": shown(before, moving.variable, mover),
        "after": shown(after, moving.variable, mover),
        "amount": before.amount,
    }
    if place:
        values["restart"] = after.amount
    if over is not None:
        values["over"] = over
    if moving.variable is Variable.VARIATION:
        old, new = scaled(mover.around, before.variation), scaled(mover.around, after.variation)
        if old and new and old.share is not None and new.share is not None:
            values |= {"share_before": old.share, "share_after": new.share}
            values["plus_minus"] = new.plus_minus
    return reason(ReasonCode.ROLL_OVER if place else ReasonCode.GROW, **values)


def shown(position: Position, variable: Variable, mover: Mover) -> int | str | None:
    """A variable's value for a reason: a number, or the name of the variation."""
    if variable is not Variable.VARIATION:
        return position.value(variable)
    step = scaled(mover.around, position.variation)
    return step.name if step else position.variation
