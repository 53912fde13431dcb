"""Replay: from a start and dated events to where a line stands, with every step explained.

Nothing is stored as truth but what happened; where a line stands is computed from it each time.
Events run in date order; on one day: surroundings, rule, deload, then sessions and overrides by
their entry order (an override before a session of the same entry), then clearance.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from datetime import date
from itertools import groupby

from desktop.training.adjusting import fitted, on_equipment
from desktop.training.asking import mover_of, starting_state
from desktop.training.demand import scaled
from desktop.training.position import Position, Surroundings
from desktop.training.program import RuleRevision
from desktop.training.quantities import same_load
from desktop.training.reasons import ReasonCode, reason
from desktop.training.replayed_session import after_session
from desktop.training.scheme import recounted
from desktop.training.state import (
    BackOffMark,
    Cleared,
    Context,
    DeloadDays,
    Event,
    LastTotal,
    Overridden,
    Replay,
    SessionDone,
    State,
    Step,
    StepKind,
    Surrounded,
)

__all__ = [
    "BackOffMark",
    "Cleared",
    "Context",
    "DeloadDays",
    "Event",
    "LastTotal",
    "Overridden",
    "Replay",
    "SessionDone",
    "State",
    "Step",
    "StepKind",
    "Surrounded",
    "replay",
    "starting_state",
    "what_changed",
]


def replay(
    rule_revisions: Sequence[RuleRevision],
    start: State,
    events: Iterable[Event],
    context: Context,
) -> Replay:
    """Apply events and rule revisions to ``start``, in order of date and entry.

    The order of arrival does not matter. A replay may go on from the state of an earlier one:
    revisions up to the last one applied there are passed over.
    """
    revisions = [r for r in rule_revisions if start.rule_day is None or r.day > start.rule_day]
    state = start
    steps: list[Step] = []
    for event in _in_order([*revisions, *events]):
        state, step = _after(state, event, context)
        if step is not None:
            steps.append(step)
    return Replay(state, tuple(steps))


def _in_order(events: list[RuleRevision | Event]) -> list[RuleRevision | Event]:
    """The events in the order they take effect; what is told alike is ordered by its contents,
    so that the order of arrival never matters. Revisions of one day stay as given.
    """
    ordered: list[RuleRevision | Event] = []
    for _, alike in groupby(sorted(events, key=_order), key=_order):
        group = list(alike)
        if len(group) > 1 and not isinstance(group[0], RuleRevision):
            group.sort(key=repr)
        ordered.extend(group)
    return ordered


def _order(event: RuleRevision | Event) -> tuple[date, int, int, int, int]:
    """Date, rank on the day, entry, overrides before sessions, the session's id."""
    match event:
        case Surrounded():
            return (event.day, 0, 0, 0, 0)
        case RuleRevision():
            return (event.day, 1, 0, 0, 0)
        case DeloadDays():
            return (event.first, 2, 0, 0, 0)
        case Overridden():
            return (event.day, 3, event.entry, 0, 0)
        case SessionDone():
            return (event.day, 3, event.entry, 1, event.session_id or 0)
        case _:
            return (event.day, 4, 0, 0, 0)


def _after(
    state: State, event: RuleRevision | Event, context: Context
) -> tuple[State, Step | None]:
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
    position = fitted(counted, mover_of(revised, context))
    why = reason(ReasonCode.RANGE_CHANGED, day=event.day, changed=position != state.position)
    revised = replace(revised, position=position, fixed_reps=position.reps)
    if position != state.position:
        revised = replace(revised, reason=why, before_growth=None)
    return revised, Step(event.day, StepKind.RULE, state.position, position, why)


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


@dataclass(frozen=True, slots=True)
class StepChange:
    """One step that differs between two replays; None where only the other has it."""

    day: date
    session_id: int | None
    before: Step | None
    after: Step | None


def what_changed(before: Replay, after: Replay) -> tuple[StepChange, ...]:
    """The steps that differ between two replays of one line, oldest first.

    Steps are the same when they come from the same session (or the same kind of event on the same
    day) and lead to the same position with the same outcome.
    """
    old, new = _keyed(before.steps), _keyed(after.steps)
    changes = [
        StepChange(day, session_id, old.get(key), new.get(key))
        for key in sorted(old.keys() | new.keys(), key=repr)
        for day, _, session_id, _ in [key]
        if _effect(old.get(key)) != _effect(new.get(key))
    ]
    return tuple(sorted(changes, key=lambda change: change.day))


_Key = tuple[date, StepKind, int | None, int]


def _keyed(steps: Sequence[Step]) -> dict[_Key, Step]:
    keyed: dict[_Key, Step] = {}
    for step in steps:
        count = 0
        while (key := (step.day, step.kind, step.session_id, count)) in keyed:
            count += 1
        keyed[key] = step
    return keyed


def _effect(step: Step | None) -> tuple[Position | None, object, ReasonCode] | None:
    return None if step is None else (step.after, step.outcome, step.reason.code)
