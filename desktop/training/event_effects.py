"""What each kind of event does to a line."""

from __future__ import annotations

from dataclasses import replace

from desktop.training.adjusting import fitted, on_equipment
from desktop.training.asking import mover_of
from desktop.training.demand import scaled
from desktop.training.position import Position, Surroundings, Variable
from desktop.training.program import RuleRevision
from desktop.training.progression import Mover, shown
from desktop.training.quantities import same_load
from desktop.training.reasons import Reason, ReasonCode, reason
from desktop.training.replayed_session import after_session
from desktop.training.scheme import recounted
from desktop.training.state import (
    Cleared,
    Context,
    DeloadDays,
    Event,
    Overridden,
    SessionDone,
    State,
    Step,
    StepKind,
    Surrounded,
)


def after_event(
    state: State, event: RuleRevision | Event, context: Context
) -> tuple[State, Step | None]:
    """The state after one event, and the step that it made (None: none)."""
    match event:
        case SessionDone():
            return after_session(state, event, context)
        case Overridden():
            return _after_override(state, event)
        case RuleRevision():
            return _after_revision(state, event, context)
        case Surrounded():
            return _after_change(state, event)
        case DeloadDays():
            return replace(state, deloads=(*state.deloads, event)), None
        case _:
            return _after_clearance(state, event)


def _after_override(state: State, event: Overridden) -> tuple[State, Step]:
    why = reason(ReasonCode.OVERRIDE, note=event.note, day=event.day)
    after = replace(
        state,
        position=event.position,
        successes=0,
        misses=0,
        sore=0,
        held=None,
        correctable=0,
        before_growth=None,
        fixed_reps=event.position.reps,
        vouched=event.day,
        reason=why,
    )
    return after, Step(event.day, StepKind.OVERRIDE, state.position, after.position, why)


def _after_revision(
    state: State, event: RuleRevision, context: Context
) -> tuple[State, Step | None]:
    if event.rule == state.rule:
        return replace(state, rule_day=event.day), None
    revised = replace(
        state,
        rule=event.rule,
        rule_day=event.day,
        successes=0,
        misses=0,
        steps=0,
        counting_from=event.day,
    )
    if state.position is None:
        return revised, None
    counted = recounted(state.position, state.rule.scheme, event.rule.scheme)
    mover = mover_of(revised, context)
    position = fitted(counted, mover)
    why = _range_changed(state.position, position, event, mover)
    revised = replace(revised, position=position, fixed_reps=position.reps)
    if position != state.position:
        revised = replace(revised, reason=why, before_growth=None)
    return revised, Step(event.day, StepKind.RULE, state.position, position, why)


def _range_changed(before: Position, after: Position, event: RuleRevision, mover: Mover) -> Reason:
    """What a new rule did: the variable that tells most, of those that changed."""
    told = (
        Variable.LOAD,
        Variable.VARIATION,
        Variable.REPS if after.reps is not None else Variable.HOLD,
        Variable.SETS,
        Variable.TEMPO,
    )
    for variable in told:
        old, new = (shown(each, variable, mover) for each in (before, after))
        if old != new:
            return reason(
                ReasonCode.RANGE_CHANGED,
                variable=variable.value,
                before=old,
                after=new,
                day=event.day,
            )
    return reason(ReasonCode.RANGE_CHANGED, day=event.day)


def _after_change(state: State, event: Surrounded) -> tuple[State, Step | None]:
    changed = replace(state, surroundings=event.surroundings)
    if state.position is None:
        return changed, None
    position = on_equipment(state.position, event.surroundings)
    if same_load(position.load_g, state.position.load_g):
        if position.variation == state.position.variation:
            return changed, None
        why = reason(
            ReasonCode.VARIATION_LOST,
            before=_name(state.position, event.surroundings),
            after=_name(position, event.surroundings),
            day=event.day,
        )
    else:
        why = reason(
            ReasonCode.EQUIPMENT_LOST,
            before_g=state.position.load_g,
            after_g=position.load_g,
            day=event.day,
        )
    changed = replace(
        changed, position=position, successes=0, misses=0, before_growth=None, reason=why
    )
    return changed, Step(event.day, StepKind.SURROUNDINGS, state.position, position, why)


def _name(position: Position, around: Surroundings) -> str | None:
    step = scaled(around, position.variation)
    return step.name if step else position.variation


def _after_clearance(state: State, event: Cleared) -> tuple[State, Step | None]:
    if state.held is None:
        return state, None
    why = reason(ReasonCode.CLEARED, day=event.day)
    cleared = replace(state, held=None, sore=0, reason=why)
    return cleared, Step(event.day, StepKind.CLEARANCE, state.position, state.position, why)
