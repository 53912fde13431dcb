"""Answers of the command line: as plain values for JSON, and as text. Masses in JSON are grams."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import asdict
from datetime import date
from itertools import groupby
from typing import Any

from db.json_files import sparse
from desktop.planning.days import DayPlan, SlotPlan, WhyEmpty
from desktop.planning.roster import RosterEntry
from desktop.training.demand import scaled
from desktop.training.exercises import LoadingKind
from desktop.training.position import Position
from desktop.training.quantities import Unit, format_load
from desktop.training.reasons import Reason
from desktop.training.session import AskedSet
from desktop.training.state import Replay
from desktop.training.target import Target

Sentence = Callable[[Reason, Unit, date], str]
"""Words for a reason, in a unit, seen from a day."""

WHY_EMPTY = {
    WhyEmpty.NO_PROGRAM: "no program is assigned",
    WhyEmpty.NOT_STARTED: "the program has not begun",
    WhyEmpty.ENDED: "the program has ended",
    WhyEmpty.REST_DAY: "this is no training day",
    WhyEmpty.AWAY: "the trainee is away",
    WhyEmpty.CLEARANCE_NEEDED: (
        "nothing is proposed until a licensed professional's clearance is recorded"
    ),
}


def targets(plan: DayPlan, sentence: Sentence) -> list[dict[str, Any]]:
    """What each slot of the day asks; empty where the day asks nothing."""
    return [_slot(slot, plan, sentence) for slot in plan.slots]


def _slot(slot: SlotPlan, plan: DayPlan, sentence: Sentence) -> dict[str, Any]:
    target = slot.target
    unit = plan.trainee.unit
    return {
        "exercise": slot.exercise.key,
        "name": slot.exercise.name,
        "line": slot.line.name,
        "variation": _variation(target),
        "variation_name": _variation_name(slot),
        "set_up": slot.set_up,
        "sets": [asdict(one) for one in target.sets],
        "warm_up": [asdict(one) for one in slot.warm_up],
        "discs_per_side_g": None if slot.discs is None else list(slot.discs),
        "rest_s": slot.slot.rest_s,
        "tempo": slot.slot.tempo,
        "deload": target.deload,
        "reason": sentence(target.reason, unit, plan.day),
        "reason_code": target.reason.code.value,
        "notes": [sentence(note, unit, plan.day) for note in target.notes],
    }


def _variation(target: Target) -> str | None:
    if target.sets:
        return target.sets[0].variation
    return None if target.position is None else target.position.variation


def _variation_name(slot: SlotPlan) -> str:
    step = scaled(slot.state.surroundings, _variation(slot.target))
    return "" if step is None else step.name


def targets_text(plan: DayPlan, sentence: Sentence) -> Iterator[str]:
    """The same to read, line by line."""
    yield " · ".join([plan.trainee.name, *_occasion(plan)])
    if not plan.slots:
        yield f"  Nothing is asked: {WHY_EMPTY.get(plan.why_empty, 'the day is empty')}."
    for slot in plan.slots:
        unit = plan.trainee.unit
        set_up = slot.set_up or _variation_name(slot)
        name = ", ".join(part for part in (slot.exercise.name, slot.line.name, set_up) if part)
        yield f"  {name}: {sets_text(slot.target.sets, unit, slot.exercise.loading)}"
        for why in (slot.target.reason, *slot.target.notes):
            yield f"      {sentence(why, unit, plan.day)}"


def _occasion(plan: DayPlan) -> Iterator[str]:
    yield plan.day.isoformat()
    if plan.program is not None:
        week = "" if plan.week is None else f", week {plan.week}"
        yield plan.program.name + week
    if plan.training_day is not None:
        yield plan.training_day.name
    if plan.deload:
        yield "deload"


def sets_text(sets: Sequence[AskedSet], unit: Unit, loading: LoadingKind) -> str:
    """Sets in short: "3 × 8 at 60 kg (2 in reserve)"; alike ones together."""
    if not sets:
        return "nothing"
    parts = []
    for asked, alike in groupby(sets):
        parts.append(f"{len(list(alike))} × {_asked_text(asked, unit, loading)}")
    return ", ".join(parts)


def _asked_text(asked: AskedSet, unit: Unit, loading: LoadingKind) -> str:
    text = f"{asked.seconds} s" if asked.reps is None else str(asked.reps)
    if loading is not LoadingKind.BODYWEIGHT:
        text += f" at {format_load(asked.load_g, unit)}"
    elif asked.load_g > 0:
        text += f" with {format_load(asked.load_g, unit)}"
    elif asked.load_g < 0:
        text += f" with {format_load(-asked.load_g, unit)} of help"
    if asked.tempo_s is not None:
        text += f", {asked.tempo_s} s each"
    if asked.open_ended:
        stop = "" if asked.stop_at is None else f", stop at {asked.stop_at}"
        text += f" or more{stop}"
    return text if asked.rir is None else f"{text} ({asked.rir:g} in reserve)"


def roster_values(entries: Iterable[RosterEntry]) -> list[dict[str, Any]]:
    """Everybody with their last and next training day (ISO dates or null)."""
    return [
        {
            "name": entry.trainee.name,
            "last": None if entry.last is None else entry.last.isoformat(),
            "next": None if entry.next is None else entry.next.isoformat(),
            "due_today": entry.due_today,
            "headline": entry.headline.code.value,
            "cautions": [
                {"limit": str(caution.limit), "severity": str(caution.severity)}
                for caution in entry.cautions
            ],
        }
        for entry in entries
    ]


def roster_text(entries: Sequence[RosterEntry]) -> Iterator[str]:
    """The same as a table."""
    width = max((len(entry.trainee.name) for entry in entries), default=0)
    for entry in entries:
        last = entry.last.isoformat() if entry.last else "never".ljust(10)
        following = entry.next.isoformat() if entry.next else "none".ljust(10)
        cautions = ", ".join(dict.fromkeys(str(caution.limit) for caution in entry.cautions))
        line = f"{entry.trainee.name:{width}}  last {last}  next {following}  {cautions}"
        yield line.rstrip()


def replay_values(
    replay: Replay, target: Target | None, unit: Unit, day: date, sentence: Sentence
) -> dict[str, Any]:
    """Where a line stands and every step; with the target where one was asked for."""
    state = sparse(replay.state)
    state["position"] = _position(replay.state.position)
    state["reason"] = _reason(replay.state.reason, unit, day, sentence)
    state["held"] = _reason(replay.state.held, unit, day, sentence)
    for name in ("successes", "misses", "last_day", "back_offs"):
        state.setdefault(name, sparse(getattr(replay.state, name)))
    values: dict[str, Any] = {
        "state": state,
        "steps": [
            {
                "day": step.day.isoformat(),
                "kind": step.kind.value,
                "outcome": None if step.outcome is None else step.outcome.value,
                "before": _position(step.before),
                "after": _position(step.after),
                "reason": _reason(step.reason, unit, day, sentence),
            }
            for step in replay.steps
        ],
    }
    if target is not None:
        values["target"] = {
            "position": _position(target.position),
            "sets": [asdict(one) for one in target.sets],
            "reason": _reason(target.reason, unit, day, sentence),
            "notes": [_reason(note, unit, day, sentence) for note in target.notes],
        }
    return values


def replay_text(
    replay: Replay, target: Target | None, unit: Unit, day: date, sentence: Sentence
) -> Iterator[str]:
    """The same to read."""
    for step in replay.steps:
        outcome = f", {step.outcome.value}" if step.outcome else ""
        yield f"{step.day}  {step.kind.value}{outcome}: {position_text(step.after, unit)}"
        yield f"    {sentence(step.reason, unit, day)}"
    yield f"now: {position_text(replay.state.position, unit)}"
    if target is not None:
        yield f"target: {position_text(target.position if target.sets else None, unit)}"
        yield f"    {sentence(target.reason, unit, day)}"


def position_text(position: Position | None, unit: Unit) -> str:
    """A position in short: "3 × 8 at 60 kg, floor"."""
    if position is None:
        return "nothing"
    amount = f"{position.hold_s} s" if position.reps is None else str(position.reps)
    text = f"{position.sets} × {amount}"
    if position.load_g:
        text += f" at {format_load(position.load_g, unit)}"
    if position.tempo_s is not None:
        text += f", {position.tempo_s} s each"
    return text if position.variation is None else f"{text}, {position.variation}"


def _position(position: Position | None) -> dict[str, Any] | None:
    return None if position is None else asdict(position)


def _reason(
    reason: Reason | None, unit: Unit, day: date, sentence: Sentence
) -> dict[str, Any] | None:
    if reason is None:
        return None
    return {
        "code": reason.code.value,
        "values": {name: sparse(value) for name, value in reason.values},
        "text": sentence(reason, unit, day),
    }
