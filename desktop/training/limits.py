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


@dataclass(frozen=True, slots=True)
class Limit:
    """One limit.

    ``watches`` says what is watched and ``threshold`` from where on (in ``unit``; 0 where there is
    nothing to count). ``text`` is one sentence with {placeholders} from ``values``, the names of a
    caution's evidence. ``proposal`` is the code of what to do. ``source`` cites where the limit
    comes from, or says "common practice".
    """

    id: LimitId
    watches: str
    severity: Severity
    text: str
    proposal: str
    source: str
    threshold: float = 0
    unit: str = ""
    values: tuple[str, ...] = ()

    @property
    def placeholders(self) -> tuple[str, ...]:
        """Names in braces in the text, in their order. Raises ValueError for unpaired braces."""
        return tuple(name for _, name, _, _ in Formatter().parse(self.text) if name is not None)
