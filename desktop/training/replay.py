"""Replay: from a start and dated events to where a line stands, with every step explained.

Nothing is stored as truth but what happened; where a line stands is computed from it each time.
Events run in date order; on one day: surroundings, rule, deload, then sessions and overrides by
their entry order (an override before a session of the same entry), then clearance.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date

from desktop.training.asking import starting_state
from desktop.training.position import Position
from desktop.training.program import RuleRevision
from desktop.training.reasons import ReasonCode
from desktop.training.shared_ends import shared_ends
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
from desktop.training.track import tracked

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
    return tracked(rule_revisions, start, events, context)[0]


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
    begin, end = shared_ends(before.steps, after.steps)
    old, new = (_keyed(each.steps[begin : len(each.steps) - end]) for each in (before, after))
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
