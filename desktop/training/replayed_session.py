"""What one session does to a line: the heart of a replay."""

from __future__ import annotations

from dataclasses import dataclass, replace

from desktop.training.adjusting import back_off, corrected, instead_of, on_equipment, raised_to
from desktop.training.asking import mover_of, target_on, untrained_days
from desktop.training.demand import demand
from desktop.training.judging import Judgement, every_set_harder, judge, weaker_sides
from desktop.training.position import CriterionKind, Position, ProgressionRule, SchemeKind, Variable
from desktop.training.progression import Mover, grow, shown
from desktop.training.quantities import same_load
from desktop.training.reasons import Reason, ReasonCode, reason
from desktop.training.scheme import position_asked
from desktop.training.session import AskedSet, Outcome, SetDone
from desktop.training.state import (
    BackOffMark,
    Context,
    LastTotal,
    SessionDone,
    State,
    Step,
    StepKind,
)

TOTALS_KEPT = 12  # places whose last total is remembered; older ones are no comparison any more


def after_session(state: State, event: SessionDone, context: Context) -> tuple[State, Step | None]:
    """The state after one session and the step it made.

    Warm-ups do not count, but pain in one does. No working set: SKIPPED, nothing changes. Pain, a
    deload, a test, or a line on which nothing was asked: EXCLUDED, the position stays.
    """
    working = tuple(done for done in event.sets if not done.warm_up)
    if not working and _worst_pain(event) < context.settings.pain_no_increase:
        return state, _step(state, state, event, Outcome.SKIPPED, reason(ReasonCode.SKIPPED))
    excluded = _excluded(state, event, context)
    if excluded is not None:
        after, why = excluded
        return after, _step(state, after, event, Outcome.EXCLUDED, why)
    asked = event.asked or target_on(state, event.day, context).sets
    if state.position is None or not asked:
        return _started(state, working, event)
    return _counted(state, asked, working, event, context)


def _excluded(state: State, event: SessionDone, context: Context) -> tuple[State, Reason] | None:
    """State and reason where the session does not count for the line; None where it does."""
    worst = _worst_pain(event)
    if worst >= context.settings.pain_no_increase:
        trained = any(not done.warm_up for done in event.sets)
        since = event.day if trained else state.last_trained
        return _sore(replace(state, last_trained=since), worst, event, context)
    if state.held is not None:
        why = reason(ReasonCode.EXCLUDED_HELD, day=event.day)
        return replace(state, last_trained=event.day), why
    if event.test:
        why = reason(ReasonCode.EXCLUDED_TEST, day=event.day)
    elif event.deload or any(w.first <= event.day <= w.last for w in state.deloads):
        why = reason(ReasonCode.EXCLUDED_DELOAD, day=event.day)
    else:
        return None
    return replace(state, last_trained=event.day, sore=0), why


def _worst_pain(event: SessionDone) -> int:
    return max((done.pain for done in event.sets), default=0)


def _sore(state: State, worst: int, event: SessionDone, context: Context) -> tuple[State, Reason]:
    """Pain: no increase; from a threshold on, or when it comes again, nothing is asked."""
    settings = context.settings
    times = state.sore + 1
    if worst >= settings.pain_hold or times >= settings.pain_in_a_row:
        why = reason(ReasonCode.PAIN_HOLD, pain=worst, times=times, day=event.day)
        return replace(state, sore=times, held=why), why
    why = reason(ReasonCode.PAIN_NO_INCREASE, pain=worst, day=event.day)
    return replace(state, sore=times, reason=why), why


def _started(state: State, working: tuple[SetDone, ...], event: SessionDone) -> tuple[State, Step]:
    """A line without a starting point begins where its first session was."""
    done = weaker_sides(working)
    lead, amount = _begun_with(done, state.rule.scheme.kind)
    holds = lead.reps is None
    position = Position(
        load_g=lead.load_g,
        reps=None if holds else amount,
        hold_s=amount if holds else None,
        sets=len(done),
        tempo_s=lead.tempo_s,
        variation=lead.variation,
    )
    mover = Mover(state.rule, state.surroundings)
    position = on_equipment(position, mover.around)
    why = reason(ReasonCode.START, kind="history", plus_minus=None, day=event.day)
    after = replace(
        state,
        position=position,
        successes=0,
        misses=0,
        sore=0,
        last_day=event.day,
        last_trained=event.day,
        before_growth=None,
        fixed_reps=position.reps,
        counting_from=event.day,
        reason=why,
    )
    return after, _step(state, after, event, None, why)


def _begun_with(done: tuple[SetDone, ...], scheme: SchemeKind) -> tuple[SetDone, int]:
    """The set that a line begins with and its amount: the easiest of straight sets with the least
    of their amounts, the heaviest in a scheme with a lead set, the sum for a total.
    """
    lead = min(done, key=lambda each: (each.load_g, each.amount))
    match scheme:
        case SchemeKind.STRAIGHT:
            amount = min(each.amount for each in done)
        case SchemeKind.TOTAL:
            amount = sum(each.amount for each in done)
        case _:
            lead = max(done, key=lambda each: (each.amount > 0, each.load_g, each.amount))
            amount = lead.amount
    return lead, max(amount, 1)


@dataclass(frozen=True, slots=True)
class _Move:
    """What a counted session comes to: position, streaks, why, and whether the rule grew."""

    position: Position
    reason: Reason
    successes: int = 0
    misses: int = 0
    grew: bool = False
    backed_off: bool = False


def _counted(
    state: State,
    asked: tuple[AskedSet, ...],
    working: tuple[SetDone, ...],
    event: SessionDone,
    context: Context,
) -> tuple[State, Step]:
    assert state.position is not None
    stood = position_asked(asked, state.position, state.rule)
    state = _streaks_after_gap(state, event, context)
    judgement = judge(
        asked,
        working,
        state.rule,
        state.surroundings,
        lambda load_g, variation: _last_total(state, load_g, variation),
        context.settings,
    )
    mover = replace(mover_of(state, context), last_rir=judgement.last.rir)
    move = _move(state, stood, judgement, asked, working, event, mover)
    position = on_equipment(move.position, state.surroundings)
    why = Reason(move.reason.code, (*move.reason.values, ("day", event.day)))
    after = replace(
        state,
        position=position,
        successes=move.successes,
        misses=move.misses,
        sore=0,
        last_day=event.day,
        last_trained=event.day,
        totals=_totals(state, asked, judgement),
        back_offs=(*state.back_offs, BackOffMark(event.day, stood))
        if move.backed_off
        else state.back_offs,
        deloads=tuple(window for window in state.deloads if window.last > event.day),
        last_rir=judgement.last.rir,
        steps=state.steps + move.grew,
        correctable=max(state.correctable - 1, 0),
        before_growth=stood if move.grew else None,
        reason=why,
    )
    return after, _step(state, after, event, judgement.outcome, why)


def _move(
    state: State,
    stood: Position,
    judgement: Judgement,
    asked: tuple[AskedSet, ...],
    working: tuple[SetDone, ...],
    event: SessionDone,
    mover: Mover,
) -> _Move:
    """Where a counted session leads from where the line stood."""
    if mover.rule.follow is not None:
        follow = mover.rule.follow
        why = reason(ReasonCode.FOLLOWS, line=follow.line_name, percent=follow.percent)
        return _Move(stood, why)
    if judgement.outcome is Outcome.MISSED:
        return _missed(state, stood, judgement, event, mover)
    if judgement.outcome is Outcome.IMPROVED:
        why = reason(ReasonCode.IMPROVED, total=judgement.total, before=judgement.before)
        return _Move(stood, why)
    if judgement.outcome is Outcome.PARTIAL:
        why = reason(ReasonCode.PARTIAL, done=judgement.met, asked=judgement.asked)
        return _Move(stood, why)
    if state.correctable and (better := _easy_start(stood, judgement, mover)) is not None:
        return better
    return _succeeded(state, stood, judgement, asked, working, mover)


def _succeeded(
    state: State,
    stood: Position,
    judgement: Judgement,
    asked: tuple[AskedSet, ...],
    working: tuple[SetDone, ...],
    mover: Mover,
) -> _Move:
    """All sets met: lifted where more was loaded, then one step if the criterion holds."""
    lifted, question = _lifted(stood, asked, working, mover)
    moved = lifted is not None
    position = stood if lifted is None else lifted
    if judgement.too_hard:
        why = reason(
            ReasonCode.REPEAT_HARD, rir=judgement.last.rir, target_rir=mover.rule.target_rir
        )
        return _Move(position, why)
    if not judgement.fulfils:
        why = _not_yet(judgement, mover.rule)
        return _Move(position, question or _lift_told(stood, position, why))
    successes = (0 if moved else state.successes) + 1
    needed = mover.rule.criterion.sessions
    if successes < needed:
        why = reason(ReasonCode.REPEAT_MET, streak=successes, needed=needed)
        why = question or _lift_told(stood, position, why)
        return _Move(position, why, successes=successes)
    growth = grow(position, mover)
    why = growth.reason
    if moved and growth.grew:
        why = _lift_told(stood, growth.position, why)
    return _Move(growth.position, question or why, grew=growth.grew)


def _lift_told(stood: Position, position: Position, why: Reason) -> Reason:
    """That more was loaded than asked, where the load rose by it and nothing else must be said."""
    if why.code is ReasonCode.IN_BETWEEN or position.load_g <= stood.load_g:
        return why
    return reason(ReasonCode.LIFTED, before_g=stood.load_g, after_g=position.load_g)


def _lifted(
    stood: Position, asked: tuple[AskedSet, ...], working: tuple[SetDone, ...], mover: Mover
) -> tuple[Position | None, Reason | None]:
    """The position lifted by work clearly above what was asked, or the question to the coach."""
    if mover.rule.scheme.kind is not SchemeKind.STRAIGHT:
        return None, None
    ranged = mover.rule.range_of(Variable.REPS)
    floor = ranged.floor_at(stood.variation) if ranged else stood.amount
    easiest = every_set_harder(asked[0], weaker_sides(working), mover.around, floor)
    if easiest is None:
        return None, None
    lifted = raised_to(stood, easiest.load_g, easiest.variation, easiest.reps, mover)
    if lifted is not None:
        return lifted, None
    if not same_load(easiest.load_g, stood.load_g):
        loads = {"done_g": easiest.load_g, "asked_g": stood.load_g}
        return None, reason(ReasonCode.LIFT_ASKED, **loads)
    harder = replace(stood, variation=easiest.variation)
    done, asked_for = (shown(each, Variable.VARIATION, mover) for each in (harder, stood))
    return None, reason(ReasonCode.LIFT_ASKED, done=done, asked=asked_for)


def _not_yet(judgement: Judgement, rule: ProgressionRule) -> Reason:
    """Why a session that met everything does not fulfil the criterion."""
    if rule.criterion.kind is CriterionKind.RESERVE:
        needed = (rule.target_rir or 0.0) + 1
        return reason(ReasonCode.REPEAT_RESERVE, rir=judgement.last.rir, needed=needed)
    return reason(ReasonCode.REPEAT_LAST_SET, done=judgement.last_over, needed=rule.criterion.over)


def _missed(
    state: State, stood: Position, judgement: Judgement, event: SessionDone, mover: Mover
) -> _Move:
    """A miss: corrected while the start is fresh, repeated, or backed off after too many."""
    if state.correctable:
        lower = _correction(stood, judgement, mover)
        if lower is not None and lower.load_g < stood.load_g:
            return _Move(lower, _start_corrected(stood, lower))
    misses = state.misses + 1
    allowed = mover.rule.miss.misses
    if misses < allowed:
        why = reason(ReasonCode.MISSED, streak=misses, allowed=allowed)
        return _Move(stood, why, misses=misses)
    eased = back_off(stood, mover)
    if eased is None:
        why = reason(ReasonCode.BACK_OFF_IMPOSSIBLE, misses=misses)
        return _Move(stood, why, misses=misses)
    variable, position = eased
    if _seen_before(state, stood, event, mover):
        why = reason(
            ReasonCode.PLATEAU,
            weeks=mover.settings.plateau_weeks,
            load_g=stood.load_g,
            amount=stood.amount,
            variable=variable.value,
        )
    else:
        why = reason(
            ReasonCode.BACK_OFF,
            variable=variable.value,
            before=shown(stood, variable, mover),
            after=shown(position, variable, mover),
            misses=misses,
            instead_of=instead_of(variable, mover.rule),
        )
    return _Move(position, why, backed_off=True)


def _seen_before(state: State, stood: Position, event: SessionDone, mover: Mover) -> bool:
    """Whether the line backed off from the same place within the weeks that mean a plateau."""
    days = 7 * mover.settings.plateau_weeks
    return any(
        (event.day - mark.day).days <= days
        and same_load(mark.position.load_g, stood.load_g)
        and mark.position.variation == stood.variation
        for mark in state.back_offs
    )


def _easy_start(stood: Position, judgement: Judgement, mover: Mover) -> _Move | None:
    """A starting point that was clearly too easy, put right by what was done."""
    spare = judgement.last.rir is not None and (
        judgement.last.rir >= (mover.rule.target_rir or 0.0) + mover.settings.start_rir_margin
    )
    if not spare and judgement.last_over < mover.settings.start_rir_margin:
        return None
    higher = _correction(stood, judgement, mover)
    if higher is None or higher.load_g <= stood.load_g:
        return None
    return _Move(higher, _start_corrected(stood, higher))


def _correction(stood: Position, judgement: Judgement, mover: Mover) -> Position | None:
    lead = judgement.lead
    if lead.reps is None:
        return None
    to_failure = lead.reps + (lead.rir or 0.0)
    reached = demand(lead.load_g, to_failure, lead.variation, mover.around)
    return None if reached is None else corrected(stood, reached, mover)


def _start_corrected(before: Position, after: Position) -> Reason:
    return reason(ReasonCode.START_CORRECTED, before_g=before.load_g, after_g=after.load_g)


def _streaks_after_gap(state: State, event: SessionDone, context: Context) -> State:
    """Streaks end where the line was not trained for too long."""
    if state.last_day is None:
        return state
    days = untrained_days(state.last_day, event.day, state.deloads)
    if days <= context.settings.streak_gap_days:
        return state
    return replace(state, successes=0, misses=0)


def _last_total(state: State, load_g: int, variation: str | None) -> int | None:
    """The clean total of the last counted session at this load and variation."""
    for last in state.totals:
        if same_load(last.load_g, load_g) and last.variation == variation:
            return last.total
    return None


def _totals(
    state: State, asked: tuple[AskedSet, ...], judgement: Judgement
) -> tuple[LastTotal, ...]:
    """The totals by place, the latest first."""
    lead = judgement.lead
    latest = LastTotal(lead.load_g, lead.variation, judgement.total)
    others = [
        last
        for last in state.totals
        if not (same_load(last.load_g, lead.load_g) and last.variation == lead.variation)
    ]
    return (latest, *others[: TOTALS_KEPT - 1])


def _step(
    before: State, after: State, event: SessionDone, outcome: Outcome | None, why: Reason
) -> Step:
    return Step(
        event.day,
        StepKind.SESSION,
        before.position,
        after.position,
        why,
        outcome,
        event.session_id,
    )
