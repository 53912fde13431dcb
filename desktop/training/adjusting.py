"""Moves that are not growth: back-off, new ranges, lost equipment, lifts and corrections."""

from __future__ import annotations

from dataclasses import replace

from desktop.training.demand import (
    ROUNDING_G,
    effective_load_g,
    lighter,
    load_at,
    position_demand,
    rank,
    reps_per_set,
)
from desktop.training.loads import found, next_down
from desktop.training.position import (
    BackOff,
    Position,
    ProgressionRule,
    SchemeKind,
    Surroundings,
    Variable,
    VariableRange,
)
from desktop.training.progression import Mover, at_floor


def back_off(position: Position, mover: Mover) -> tuple[Variable, Position] | None:
    """One step easier as the rule's miss policy says, and which variable gave way.

    Where that one cannot give, the next of load, variation and repetitions (or seconds) does;
    None where nothing can.
    """
    first = mover.rule.miss.back_off
    for kind in (first, *(kind for kind in BackOff if kind is not first)):
        eased = _eased(position, kind, mover)
        if eased is not None:
            return eased
    return None


def instead_of(gave_way: Variable, rule: ProgressionRule) -> str | None:
    """What the rule names to give way, where another variable did; None where it did itself."""
    named = rule.miss.back_off
    amount = named is BackOff.REPS and gave_way is Variable.HOLD
    return None if amount or gave_way.value == named.value else named.value


def _eased(position: Position, kind: BackOff, mover: Mover) -> tuple[Variable, Position] | None:
    match kind:
        case BackOff.LOAD:
            eased = lighter(position, mover.rule.miss.percent, load_step(mover.rule), mover.around)
            return None if eased is None else (Variable.LOAD, eased)
        case BackOff.VARIATION:
            easier = easier_variation(position, mover)
            return None if easier is None else (Variable.VARIATION, easier)
        case _:
            return amount_to_floor(position, mover.rule)


def load_step(rule: ProgressionRule) -> int:
    """The rule's LOAD increment in grams; 1 where load does not grow."""
    growing = rule.range_of(Variable.LOAD)
    return growing.increment if growing else 1


def easier_variation(position: Position, mover: Mover) -> Position | None:
    """The next easier variation that can be set up, within the rule's range; None without one."""
    here = rank(mover.around, position.variation)
    if here is None:
        return None
    ranged = mover.rule.range_of(Variable.VARIATION)
    first = rank(mover.around, ranged.easiest) if ranged and ranged.easiest else 0
    for step in reversed(mover.around.scale[first or 0 : here]):
        if step.available:
            return replace(position, variation=step.key)
    return None


def amount_to_floor(position: Position, rule: ProgressionRule) -> tuple[Variable, Position] | None:
    """Repetitions or seconds at the smaller of now and their floor; None where that is no less."""
    for variable in (Variable.REPS, Variable.HOLD):
        ranged = rule.range_of(variable)
        now = position.value(variable)
        if ranged is not None and now is not None:
            floor = ranged.floor_at(position.variation)
            return (variable, position.at(variable, floor)) if floor < now else None
    return None


def fitted(position: Position, mover: Mover) -> Position:
    """The position inside the rule's ranges and the equipment of the day.

    A position inside stays. Else the nearest variation, the nearest repetitions, with the load that
    has the same estimated maximum at those, rounded down, and the nearest load. Effective load
    rises by no more than the jump limit: a line that stands further below its new ranges comes as
    near as that, and grows into them.
    """
    after = position
    for ranged in mover.rule.ranges:
        if ranged.variable is Variable.VARIATION:
            after = _clipped_variation(after, ranged, mover)
    for ranged in mover.rule.ranges:
        if ranged.variable not in (Variable.VARIATION, Variable.LOAD):
            after = _clipped(after, ranged)
    if mover.rule.range_of(Variable.HOLD) is not None:
        after = replace(after, reps=None)
    elif mover.rule.range_of(Variable.REPS) is not None:
        after = replace(after, hold_s=None)
    if after.reps != position.reps and after.reps is not None and position.reps is not None:
        after = _same_maximum(position, after, mover)
    growing = mover.rule.range_of(Variable.LOAD)
    if growing is not None:
        after = _clipped_load(position, after, growing, mover)
    return on_equipment(after, mover.around)


def _clipped(position: Position, ranged: VariableRange) -> Position:
    floor = ranged.floor_at(position.variation)
    value = position.value(ranged.variable)
    if value is None or value < floor:
        return position.at(ranged.variable, floor)
    if ranged.ceiling is not None and value > ranged.ceiling:
        return position.at(ranged.variable, ranged.ceiling)
    return position


def _clipped_variation(position: Position, ranged: VariableRange, mover: Mover) -> Position:
    around = mover.around
    here = rank(around, position.variation)
    first, last = rank(around, ranged.easiest), rank(around, ranged.hardest)
    if here is None:
        return at_floor(position, ranged, around)
    if first is not None and here < first:
        wanted = rank(around, at_floor(position, ranged, around).variation) or 0
        for step in reversed(around.scale[here + 1 : wanted + 1]):
            near = replace(position, variation=step.key)
            if step.available and _within_jump(position, near, mover):
                return near
        return position
    if last is not None and here > last:
        return replace(position, variation=ranged.hardest)
    return position


def _clipped_load(
    before: Position, after: Position, ranged: VariableRange, mover: Mover
) -> Position:
    """``after`` with its load between floor and ceiling, or as near to the floor as may be."""
    if ranged.ceiling is not None and after.load_g > ranged.ceiling:
        return replace(after, load_g=ranged.ceiling)
    if ranged.floor is None or after.load_g >= ranged.floor:
        return after
    raised = at_floor(after, ranged, mover.around)
    if _within_jump(before, raised, mover):
        return raised
    most = _most_effective_g(before, mover) or 0.0
    load = load_at(most, after.variation, mover.around)
    return after if load is None else replace(after, load_g=max(load, after.load_g))


def _within_jump(before: Position, after: Position, mover: Mover) -> bool:
    """Whether effective load rises by no more than the jump limit, or cannot be compared."""
    most = _most_effective_g(before, mover)
    new = effective_load_g(after.load_g, after.variation, mover.around)
    return most is None or new is None or new <= most + ROUNDING_G


def _most_effective_g(position: Position, mover: Mover) -> float | None:
    """The effective load in grams that a jump from here may reach; None where it is not known."""
    now = effective_load_g(position.load_g, position.variation, mover.around)
    return None if now is None else now * (1 + mover.settings.jump_limit)


def _same_maximum(before: Position, after: Position, mover: Mover) -> Position:
    """``after`` with the load whose estimated maximum equals that of ``before``."""
    old = position_demand(before, mover.rule.scheme, mover.around)
    most = _most_effective_g(before, mover)
    reps = reps_per_set(after, mover.rule.scheme)
    if old is None or most is None or reps is None or after.variation != before.variation:
        return after
    if mover.around.bodyweight and mover.rule.range_of(Variable.LOAD) is None:
        return after
    load = load_at(min(old / (1 + reps / 30), most), after.variation, mover.around)
    return after if load is None else replace(after, load_g=load)


def on_equipment(position: Position, around: Surroundings) -> Position:
    """The position with a load and a variation that can be had: the next lower one, if any."""
    after = position
    if around.loads_g is not None:
        same = found(around.loads_g, position.load_g)
        load = same if same is not None else next_down(around.loads_g, position.load_g)
        if load is not None and load != position.load_g:
            after = replace(after, load_g=load)
    here = rank(around, position.variation)
    if here is not None and not around.scale[here].available:
        for step in reversed(around.scale[:here]):
            if step.available:
                return replace(after, variation=step.key)
    return after


def raised_to(
    position: Position, load_g: int, variation: str | None, reps: int | None, mover: Mover
) -> Position | None:
    """The position lifted to what was done in every set; None where that is more than the jump
    limit above it, which the coach is asked about.
    """
    most = _most_effective_g(position, mover)
    new = effective_load_g(load_g, variation, mover.around)
    if most is None or new is None or new > most + ROUNDING_G:
        return None
    lifted = on_equipment(replace(position, load_g=load_g, variation=variation), mover.around)
    if reps is None or position.reps is None or mover.rule.scheme.kind is SchemeKind.TOTAL:
        return lifted
    ranged = mover.rule.range_of(Variable.REPS)
    if ranged is None:
        return lifted
    top = reps if ranged.ceiling is None else min(reps, ranged.ceiling)
    return replace(lifted, reps=max(top, ranged.floor_at(variation)))


def corrected(position: Position, demand_done: float, mover: Mover) -> Position | None:
    """A starting position put right by what was done: the load whose demand at the repetitions
    asked (plus those to be kept in reserve) is ``demand_done``, at most ``start_correction``
    away; None where load does not grow or nothing changes.
    """
    reps = reps_per_set(position, mover.rule.scheme)
    old = effective_load_g(position.load_g, position.variation, mover.around)
    if mover.rule.range_of(Variable.LOAD) is None or reps is None or old is None:
        return None
    reserve = mover.rule.target_rir or 0.0
    wanted = demand_done / (1 + (reps + reserve) / 30)
    margin = mover.settings.start_correction
    wanted = min(max(wanted, old * (1 - margin)), old * (1 + margin))
    load = load_at(wanted, position.variation, mover.around)
    if load is None or load == position.load_g:
        return None
    return replace(position, load_g=load)
