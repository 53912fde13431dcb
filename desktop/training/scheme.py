"""Sets from a position: straight, top set with back-offs, ascending, or a total."""

from __future__ import annotations

from dataclasses import replace

from desktop.training.demand import eased_to, effective_load_g
from desktop.training.position import (
    CriterionKind,
    Position,
    ProgressionRule,
    SchemeKind,
    SetScheme,
    Surroundings,
)
from desktop.training.session import AskedSet

OPEN_END = 1  # repetitions past what the criterion needs at which an open last set stops


def asked_sets(
    position: Position, rule: ProgressionRule, around: Surroundings
) -> tuple[AskedSet, ...]:
    """The working sets that a position asks, in the order done; loads in grams, reachable.

    Back-off and ascending sets are derived from the lead set and rounded down. A total is spread
    evenly, the larger sets first.
    """
    lead = AskedSet(
        load_g=position.load_g,
        reps=position.reps,
        seconds=position.hold_s if position.reps is None else None,
        variation=position.variation,
        tempo_s=position.tempo_s,
        rir=rule.target_rir,
    )
    count = position.sets
    percent = rule.scheme.percent
    match rule.scheme.kind:
        case SchemeKind.TOP_AND_BACK_OFF:
            back_off = _eased(lead, percent, around)
            return (_last(lead, rule), *(back_off for _ in range(count - 1)))
        case SchemeKind.ASCENDING:
            steps = [percent * (count - 1 - place) for place in range(count - 1)]
            eased = (_eased(lead, min(step, 90.0), around) for step in steps)
            return (*eased, _last(lead, rule))
        case SchemeKind.TOTAL:
            return _spread(lead, position.amount, count)
        case _:
            return (*(lead for _ in range(count - 1)), _last(lead, rule))


def position_asked(
    asked: tuple[AskedSet, ...], position: Position, rule: ProgressionRule
) -> Position:
    """The position that ``asked`` came from: before a step the line stands where it was asked."""
    lead = asked[-1] if rule.scheme.kind is SchemeKind.ASCENDING else asked[0]
    total = rule.scheme.kind is SchemeKind.TOTAL
    reps, seconds = lead.reps, lead.seconds
    if total:
        reps = None if reps is None else sum(each.reps or 0 for each in asked)
        seconds = None if seconds is None else sum(each.seconds or 0 for each in asked)
    return replace(
        position,
        load_g=lead.load_g,
        reps=reps,
        hold_s=seconds,
        sets=len(asked),
        tempo_s=lead.tempo_s if lead.tempo_s is not None else position.tempo_s,
        variation=lead.variation if lead.variation is not None else position.variation,
    )


def recounted(position: Position, before: SetScheme, after: SetScheme) -> Position:
    """The same work where a rule begins, or ceases, to count the total over all sets."""
    was_total, is_total = (each.kind is SchemeKind.TOTAL for each in (before, after))
    if was_total == is_total:
        return position
    amount = position.amount
    counted = amount * position.sets if is_total else max(amount // position.sets, 1)
    if position.reps is None:
        return replace(position, hold_s=counted)
    return replace(position, reps=counted)


def _last(lead: AskedSet, rule: ProgressionRule) -> AskedSet:
    """The last straight set, or the lead set: open-ended where the criterion looks past it."""
    if rule.criterion.kind is not CriterionKind.LAST_SET_OVER or lead.reps is None:
        return lead
    stop = lead.reps + rule.criterion.over + OPEN_END
    return replace(lead, open_ended=True, stop_at=stop)


def _eased(lead: AskedSet, percent: float, around: Surroundings) -> AskedSet:
    effective = effective_load_g(lead.load_g, lead.variation, around)
    if effective is None:
        return lead
    wanted = effective * (1 - percent / 100)
    return replace(lead, load_g=eased_to(wanted, lead.load_g, lead.variation, around))


def _spread(lead: AskedSet, total: int, count: int) -> tuple[AskedSet, ...]:
    each, rest = divmod(total, count)
    amounts = [each + (1 if place < rest else 0) for place in range(count)]
    if lead.reps is not None:
        return tuple(replace(lead, reps=amount) for amount in amounts)
    return tuple(replace(lead, seconds=amount) for amount in amounts)
