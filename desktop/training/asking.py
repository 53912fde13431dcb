"""What a line is asked on a day: its position after gap, pain, equipment and deload."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from datetime import date, timedelta

from desktop.training.adjusting import amount_to_floor, easier_variation, load_step, on_equipment
from desktop.training.deload import eased_load, eased_sets
from desktop.training.demand import eased_to, effective_load_g, lighter
from desktop.training.position import (
    Position,
    ProgressionRule,
    ProgressionSettings,
    SchemeKind,
    Surroundings,
)
from desktop.training.program import LineStart
from desktop.training.progression import Mover, grow, in_betweens
from desktop.training.reasons import Reason, ReasonCode, reason
from desktop.training.scheme import asked_sets
from desktop.training.session import AskedSet
from desktop.training.state import Context, DeloadDays, State
from desktop.training.target import InBetween, Target
from desktop.training.trainee import DeloadWindow


def target_on(
    state: State, day: date, context: Context, *, deload: DeloadWindow | None = None
) -> Target:
    """What the line asks on ``day``; no sets where nothing is asked, and why.

    A gap is derived here and never stored: once trained, what was asked becomes the position.
    """
    if state.position is None:
        return Target(None, (), reason(ReasonCode.START_NEEDED))
    if state.held is not None:
        return Target(state.position, (), state.held)
    why = state.reason or reason(ReasonCode.REPEAT_MET)
    position, gap = after_gap(state, day, context.settings)
    if position is None:
        assert gap is not None
        return Target(state.position, (), gap, notes=(why,))
    notes: tuple[Reason, ...] = ()
    if gap is not None:
        notes, why = (why,), gap
    position = on_equipment(position, state.surroundings)
    if deload is not None:
        return _deload_target(position, state, deload, (why, *notes))
    mover = mover_of(state, context)
    return Target(
        position,
        asked_sets(position, state.rule, state.surroundings),
        why,
        notes,
        _ways_between(position, why, mover),
    )


def follow_target(
    leader: Target,
    rule: ProgressionRule,
    surroundings: Surroundings,
    own: Position | None = None,
    held: Reason | None = None,
) -> Target:
    """What a following line asks: a percentage of the leader's effective load, rounded down.

    Sets and repetitions are its ``own`` (by default the leader's), fewer sets in an easier week,
    which is noted, so that a line that follows this one is eased as well.
    It never asks more load than the leader; where the leader asks nothing, or it is ``held``
    itself, it asks nothing.
    """
    if held is not None:
        return Target(own, (), held)
    follow = rule.follow
    if follow is None or leader.position is None or not leader.sets:
        return Target(leader.position, (), leader.reason, leader.notes)
    lead = leader.position
    position = replace(own or lead, load_g=lead.load_g, variation=lead.variation)
    effective = effective_load_g(lead.load_g, lead.variation, surroundings)
    if effective is not None:
        wanted = effective * follow.percent / 100
        load = eased_to(wanted, lead.load_g, lead.variation, surroundings)
        position = replace(position, load_g=load)
    why = reason(ReasonCode.FOLLOWS, line=follow.line_name, percent=follow.percent)
    if not leader.deload:
        return Target(position, asked_sets(position, rule, surroundings), why)
    eased = [each for each in (leader.reason, *leader.notes) if each.code is ReasonCode.DELOAD]
    if own is not None:
        position = _fewer_sets(position, _sets_factor(eased), rule)
    sets = tuple(map(_closed, asked_sets(position, rule, surroundings)))
    return Target(position, sets, why, tuple(eased), deload=True)


def starting_state(
    start: LineStart, rule: ProgressionRule, surroundings: Surroundings, context: Context
) -> State:
    """The state of a line at its start. Starts found by a test or from history may be corrected
    by the first sessions; the coach's own word is not.
    """
    correctable = 0 if start.kind == "coach" else context.settings.start_sessions
    return State(
        position=start.position,
        rule=rule,
        surroundings=surroundings,
        correctable=correctable,
        counting_from=start.day,
        fixed_reps=start.position.reps,
        vouched=start.day,
        reason=reason(
            ReasonCode.START, kind=start.kind, plus_minus=start.plus_minus, sessions=correctable
        ),
    )


def mover_of(state: State, context: Context) -> Mover:
    """What a step of this state needs to know."""
    return Mover(state.rule, state.surroundings, context.settings, state.last_rir, state.fixed_reps)


def untrained_days(since: date, day: date, deloads: Iterable[DeloadDays]) -> int:
    """Days between two dates, without those of a deload in between, each taken off once."""
    days = (day - since).days
    counted = since
    for window in sorted(deloads, key=lambda each: each.first):
        first = max(window.first, counted + timedelta(days=1))
        last = min(window.last, day - timedelta(days=1))
        if first <= last:
            days -= (last - first).days + 1
            counted = last
    return days


def after_gap(
    state: State, day: date, settings: ProgressionSettings
) -> tuple[Position | None, Reason | None]:
    """The position after the days without this line and the reason; no position where a new
    starting point is needed. Thresholds are common practice (settings).
    """
    assert state.position is not None
    since = max((d for d in (state.last_trained, state.vouched) if d), default=None)
    if since is None:
        return state.position, None
    days = untrained_days(since, day, state.deloads)
    if days < settings.gap_repeat_days:
        return state.position, None
    if days >= settings.gap_restart_days:
        return None, reason(ReasonCode.GAP_RESTART, days=days)
    base = state.before_growth or state.position
    if days < settings.gap_lighter_days:
        return base, reason(ReasonCode.GAP_REPEAT, days=days)
    mover = Mover(state.rule, state.surroundings, settings)
    if days < settings.gap_easier_days:
        return _eased(base, days, settings.gap_lighter_percent, mover, easier=False)
    return _eased(base, days, settings.gap_easier_percent, mover, easier=True)


def _eased(
    base: Position, days: int, percent: float, mover: Mover, *, easier: bool
) -> tuple[Position, Reason]:
    """Less load, else (after long gaps) an easier variation, else the floor of reps or seconds."""
    eased = lighter(base, percent, load_step(mover.rule), mover.around)
    if eased is not None:
        return eased, reason(ReasonCode.GAP_LIGHTER, days=days, percent=percent)
    variation = easier_variation(base, mover) if easier else None
    if variation is not None:
        return variation, reason(ReasonCode.GAP_EASIER, days=days)
    floor = amount_to_floor(base, mover.rule)
    if floor is not None:
        return floor[1], reason(ReasonCode.GAP_TO_FLOOR, days=days)
    return base, reason(ReasonCode.GAP_REPEAT, days=days)


def _deload_target(
    position: Position, state: State, window: DeloadWindow, notes: tuple[Reason, ...]
) -> Target:
    eased = _fewer_sets(position, window.sets_factor, state.rule)
    effective = effective_load_g(position.load_g, position.variation, state.surroundings)
    if effective is not None:
        wanted = eased_load(effective, window.load_percent)
        load = eased_to(wanted, position.load_g, position.variation, state.surroundings)
        eased = replace(eased, load_g=load)
    why = reason(
        ReasonCode.DELOAD, sets_factor=window.sets_factor, load_percent=window.load_percent
    )
    sets_asked = tuple(map(_closed, asked_sets(eased, state.rule, state.surroundings)))
    return Target(eased, sets_asked, why, notes, deload=True)


def _fewer_sets(position: Position, factor: float, rule: ProgressionRule) -> Position:
    sets = eased_sets(position.sets, factor)
    eased = replace(position, sets=sets)
    if rule.scheme.kind is SchemeKind.TOTAL:
        return _share_of_total(eased, sets / position.sets)
    return eased


def _sets_factor(eased: Iterable[Reason]) -> float:
    """By how much an easier week cuts the sets."""
    factors = (each.get("sets_factor") for each in eased)
    return next((each for each in factors if isinstance(each, float)), 1.0)


def _share_of_total(position: Position, part: float) -> Position:
    if position.reps is not None:
        return replace(position, reps=max(int(position.reps * part), 1))
    return replace(position, hold_s=max(int((position.hold_s or 0) * part), 1))


def _closed(asked: AskedSet) -> AskedSet:
    """No open-ended set in an easier week."""
    return replace(asked, open_ended=False, stop_at=None)


def _ways_between(position: Position, why: Reason, mover: Mover) -> tuple[InBetween, ...]:
    """In-betweens, where the last step or the next one waits for a jump."""
    waits = why.code is ReasonCode.IN_BETWEEN
    if waits or grow(position, mover).reason.code is ReasonCode.IN_BETWEEN:
        return in_betweens(position, mover)
    return ()
