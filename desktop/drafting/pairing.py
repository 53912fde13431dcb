"""Pairing: which exercises may be done in turn, and the minutes that it saves."""

from __future__ import annotations

from dataclasses import replace

from desktop.drafting.candidates import Candidate
from desktop.drafting.prescription import Role, day_minutes
from desktop.training.exercises import Exercise, Pattern
from desktop.training.volume import LEGS, PULLS, PUSHES


def may_pair(one: Candidate, other: Candidate) -> bool:
    """Whether two exercises may be done in turn: a push and a pull, or one of the trunk or of one
    joint with something else; of different muscles, and never a heavy lift of the legs.
    """
    if any(each.pattern in LEGS and each.role is Role.MAIN for each in (one, other)):
        return False
    if not one.shares.keys().isdisjoint(other.shares):
        return False
    patterns = {one.pattern, other.pattern}
    if patterns & PUSHES and patterns & PULLS:
        return True
    legs = patterns & {Pattern.HINGE, Pattern.LUNGE}
    if patterns & {Pattern.TRUNK}:
        return bool(legs or patterns & PULLS)
    return bool(legs and patterns & PUSHES) or patterns == {Pattern.SINGLE_JOINT}


def saved_a_round(one: Candidate, other: Candidate) -> float:
    """Minutes that each round of the two in turn saves, in the block where it saves least."""
    known: dict[str, Exercise] = {each.key: each.exercise for each in (one, other)}

    def minutes(pair: str, block: int) -> float:
        slots = tuple(replace(each.prescribed.blocks[block], pair=pair) for each in (one, other))
        slots = tuple(replace(slot, start=replace(slot.start, sets=1)) for slot in slots)
        return day_minutes(slots, known)

    blocks = range(len(one.prescribed.blocks))
    return min(minutes("", block) - minutes("A", block) for block in blocks)
