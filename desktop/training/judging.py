"""What was done against what was asked: the outcome of one session for one line."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from itertools import zip_longest
from typing import Final

from desktop.training.demand import effective_load_g
from desktop.training.meeting import amount_over, each_met, place_at_least, total_met
from desktop.training.position import (
    CriterionKind,
    ProgressionRule,
    ProgressionSettings,
    SchemeKind,
    Surroundings,
)
from desktop.training.quantities import SAME_LOAD_G
from desktop.training.session import AskedSet, Outcome, SetDone

_LED: Final = (SchemeKind.TOP_AND_BACK_OFF, SchemeKind.ASCENDING)
"""The schemes whose lead set speaks for the session."""


@dataclass(frozen=True, slots=True)
class Judgement:
    """A session's result. ``met`` counts the asked sets that were met; ``fulfils``: the rule's
    criterion holds in this session; ``too_hard``: reserve reported well under its target.
    ``total``: clean amount over all working sets, or of the lead set where it speaks for them;
    ``before``: the same of the last time at the place asked (None: there is none);
    ``lead`` the set that speaks for the session; ``last`` the last one asked (with the reserve of
    the hardest set where that was too hard); ``last_over``: its amount beyond what was asked.
    """

    outcome: Outcome
    met: int
    asked: int
    total: int
    before: int | None
    fulfils: bool
    too_hard: bool
    lead: SetDone
    last: SetDone
    last_over: int


def judge(
    asked: Sequence[AskedSet],
    sets: Sequence[SetDone],
    rule: ProgressionRule,
    around: Surroundings,
    last_total: Callable[[int, str | None], int | None],
    settings: ProgressionSettings,
) -> Judgement:
    """Judge the working sets of one session; there must be at least one, and one set asked.

    ``last_total(load_g, variation)`` gives the clean total the last time at that place, or None.
    Sides of a unilateral exercise count as one set by the weaker side. For schemes with a lead
    set that one alone is judged (ascending sets that ended below it by themselves); for a total
    the sum. Where the criterion is the total, straight sets are met by their sum too.
    """
    done = tuple(_as_asked(each, asked[0]) for each in weaker_sides(sets))
    lead_asked, lead = lead_pair(asked, done, rule)
    met, of, surplus = _met(asked, done, rule, around)
    before = last_total(lead_asked.load_g, lead_asked.variation)
    speaking = (lead,) if rule.scheme.kind in _LED else done
    if met == of:
        outcome = Outcome.EXCEEDED if surplus else Outcome.MET
    elif len(done) < of and met == len(done):
        outcome = Outcome.PARTIAL
    else:
        improved = _improved(lead_asked, speaking, before, around)
        outcome = Outcome.IMPROVED if improved else Outcome.MISSED
    last_asked, last = _last_pair(asked, done, lead_asked, lead, rule)
    last_over = amount_over(last_asked, last, around)
    all_met = outcome in (Outcome.MET, Outcome.EXCEEDED)
    counted = speaking if rule.scheme.kind is SchemeKind.TOTAL else speaking[: len(asked)]
    hard = _too_hard(rule, counted, settings)
    return Judgement(
        outcome=outcome,
        met=met,
        asked=of,
        total=sum(each.amount for each in speaking),
        before=before,
        fulfils=all_met and _fulfils(rule, last, last_over),
        too_hard=hard is not None,
        lead=lead,
        last=last if hard is None else replace(last, rir=hard),
        last_over=last_over,
    )


def lead_pair(
    asked: Sequence[AskedSet], done: Sequence[SetDone], rule: ProgressionRule
) -> tuple[AskedSet, SetDone]:
    """The set that position and outcome speak of, as asked and as done.

    The first of straight sets; the heaviest of a top set with back-offs and of ascending ones.
    """
    if rule.scheme.kind is SchemeKind.ASCENDING:
        return asked[-1], max(reversed(done), key=lambda each: each.load_g)
    if rule.scheme.kind is SchemeKind.TOP_AND_BACK_OFF:
        return asked[0], max(done, key=lambda each: each.load_g)
    return asked[0], done[0]


def _last_pair(
    asked: Sequence[AskedSet],
    done: Sequence[SetDone],
    lead_asked: AskedSet,
    lead: SetDone,
    rule: ProgressionRule,
) -> tuple[AskedSet, SetDone]:
    """The set whose reserve and surplus count: the last asked, or the lead set of its scheme."""
    match rule.scheme.kind:
        case SchemeKind.STRAIGHT:
            return asked[-1], done[min(len(asked), len(done)) - 1]
        case SchemeKind.TOTAL:
            return asked[-1], done[-1]
        case _:
            return lead_asked, lead


def weaker_sides(sets: Sequence[SetDone]) -> tuple[SetDone, ...]:
    """Left and right sets paired in order, each pair as its weaker side; others as they are.

    Where only one side was trained its sets stand for themselves.
    """
    left = [each for each in sets if each.side == "left"]
    right = [each for each in sets if each.side == "right"]
    if not left or not right:
        return tuple(sets)
    both = [each for each in sets if not each.side]
    pairs = [
        replace(_weaker(a, b), side="") if a and b else _untrained(one)
        for a, b in zip_longest(left, right)
        if (one := a or b) is not None
    ]
    return (*both, *pairs)


def _untrained(other: SetDone) -> SetDone:
    """The side that was left out, where only the ``other`` one was trained."""
    if other.reps is None:
        return replace(other, seconds=0, side="")
    return replace(other, reps=0, side="")


def _weaker(a: SetDone, b: SetDone) -> SetDone:
    weaker = min(a, b, key=lambda each: (each.amount, each.load_g))
    return replace(weaker, load_g=min(a.load_g, b.load_g), pain=max(a.pain, b.pain))


def _as_asked(done: SetDone, asked: AskedSet) -> SetDone:
    """A set whose variation was not noted was done at the one asked."""
    if done.variation is not None or asked.variation is None:
        return done
    return replace(done, variation=asked.variation)


def _met(
    asked: Sequence[AskedSet], done: Sequence[SetDone], rule: ProgressionRule, around: Surroundings
) -> tuple[int, int, bool]:
    """How many sets were met, of how many, and whether more than asked was done, by the scheme."""
    if rule.scheme.kind is SchemeKind.TOTAL:
        return total_met(asked, done, around)
    if rule.scheme.kind in _LED:
        lead_asked, lead = lead_pair(asked, done, rule)
        if _stopped_below_the_top(asked, done, rule, around):
            return each_met(asked, done, around)
        return each_met([lead_asked], [lead], around)
    met, of, surplus = each_met(asked, done, around)
    if met < of and rule.criterion.kind is CriterionKind.TOTAL:
        reached, _, more = total_met(asked, done, around)
        return (of, of, more) if reached else (met, of, surplus)
    return met, of, surplus


def _stopped_below_the_top(
    asked: Sequence[AskedSet], done: Sequence[SetDone], rule: ProgressionRule, around: Surroundings
) -> bool:
    """Whether ascending sets ended before the top one was tried: it says nothing about that."""
    top, heaviest = lead_pair(asked, done, rule)
    fewer = rule.scheme.kind is SchemeKind.ASCENDING and len(done) < len(asked)
    return fewer and not place_at_least(top, heaviest, around)


def _improved(
    asked: AskedSet, done: Sequence[SetDone], before: int | None, around: Surroundings
) -> bool:
    """Whether every set lay at the asked place or above, with more in total than last time."""
    if before is None or sum(each.amount for each in done) <= before:
        return False
    return all(place_at_least(asked, each, around) for each in done)


def _fulfils(rule: ProgressionRule, last: SetDone, last_over: int) -> bool:
    match rule.criterion.kind:
        case CriterionKind.LAST_SET_OVER:
            return last_over >= rule.criterion.over
        case CriterionKind.RESERVE:
            wanted = (rule.target_rir or 0.0) + 1
            return last.rir is not None and last.rir >= wanted
        case _:
            return True


def _too_hard(
    rule: ProgressionRule, sets: Sequence[SetDone], settings: ProgressionSettings
) -> float | None:
    """The least reserve reported of ``sets`` where it lies well under its target; else None."""
    told = [each.rir for each in sets if each.rir is not None]
    if rule.target_rir is None or not told:
        return None
    return min(told) if min(told) <= rule.target_rir - settings.hard_rir_margin else None


def every_set_harder(
    asked: AskedSet, done: Sequence[SetDone], around: Surroundings, fewest: int
) -> SetDone | None:
    """The easiest set of a session in which every set lay above the asked load, with at least
    ``fewest`` repetitions; None where that was not so or cannot be compared.
    """
    wanted = effective_load_g(asked.load_g, asked.variation, around)
    if wanted is None:
        return None
    reached = [(effective_load_g(each.load_g, each.variation, around), each) for each in done]
    if any(load is None or load <= wanted + SAME_LOAD_G for load, _ in reached):
        return None
    if any(each.amount < fewest for each in done):
        return None
    return min(reached, key=lambda pair: (pair[0] or 0.0, pair[1].amount))[1]
