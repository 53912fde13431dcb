"""Limits: what is watched for a trainee's recovery, as data with severity, words and source."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from string import Formatter


class Severity(StrEnum):
    """How serious a caution is: to know, to decide, or to stop for."""

    NOTE = "note"
    CAUTION = "caution"
    STOP = "stop"


class LimitId(StrEnum):
    """Every limit that the model watches; the data file holds exactly one entry for each."""

    LOAD_STEP = "load-step"
    SEVERAL_AT_ONCE = "several-at-once"
    TOO_CLOSE = "too-close"
    TOO_SELDOM = "too-seldom"
    NO_DELOAD = "no-deload"
    REACTIVE_DELOAD = "reactive-deload"
    MONOTONY = "monotony"
    LOAD_INCOMPLETE = "load-incomplete"
    PAIN = "pain"
    PAIN_HOLD = "pain-hold"
    GAP = "gap"
    MINOR = "minor"
    OLDER = "older"
    PLATEAU = "plateau"
    EQUIPMENT_JUMP = "equipment-jump"
    RULE_COMPLETE = "rule-complete"
    RED_FLAG = "red-flag"
    CLEARANCE = "clearance"
    SCREENING = "screening"


class Proposal(StrEnum):
    """What a caution proposes to do; the screens turn it into an action."""

    SMALLER_STEP = "smaller step"
    ONE_VARIABLE = "one variable"
    MOVE_A_DAY = "move a day"
    ADD_A_SESSION = "add a session"
    PLAN_A_DELOAD = "plan a deload"
    VARY_THE_DAYS = "vary the days"
    RECORD_ACTIVITIES = "record activities"
    CHOOSE_FOR_PAIN = "choose for pain"
    EASE_BACK_IN = "ease back in"
    FOLLOW_GUIDANCE = "follow guidance"
    OTHER_VARIABLE = "other variable"
    IN_BETWEEN = "in-between"
    EXTEND_THE_RULE = "extend the rule"
    RECORD_CLEARANCE = "record clearance"
    SCREEN = "screen"


@dataclass(frozen=True, slots=True)
class Limit:
    """One limit.

    ``watches`` says what is watched and ``threshold`` from where on (in ``unit``; 0 where there is
    nothing to count). ``text`` is one sentence with {placeholders} from ``values``, the names of a
    caution's evidence. ``proposal`` is what to do. ``source`` cites where the limit
    comes from, or says "common practice".
    """

    id: LimitId
    watches: str
    severity: Severity
    text: str
    proposal: Proposal
    source: str
    threshold: float = 0
    unit: str = ""
    values: tuple[str, ...] = ()

    @property
    def placeholders(self) -> tuple[str, ...]:
        """Names in braces in the text, in their order. Raises ValueError for unpaired braces."""
        return tuple(name for _, name, _, _ in Formatter().parse(self.text) if name is not None)
