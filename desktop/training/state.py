"""The state of a line, the events that move it, and the steps that a replay tells."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import date
from enum import StrEnum

from desktop.training.position import (
    Position,
    ProgressionRule,
    ProgressionSettings,
    Surroundings,
)
from desktop.training.reasons import Reason
from desktop.training.session import AskedSet, Outcome, SetDone


@dataclass(frozen=True, slots=True)
class SessionDone:
    """One line's part of a session, as an event. No ``sets`` and ``skipped``: planned, not done."""

    day: date
    sets: tuple[SetDone, ...] = ()
    asked: tuple[AskedSet, ...] = ()
    entry: int = 0
    session_id: int | None = None
    deload: bool = False
    test: bool = False


@dataclass(frozen=True, slots=True)
class Overridden:
    """The coach set the position; on one day ordered with sessions by ``entry``, before them."""

    day: date
    position: Position
    note: str = ""
    entry: int = 0


@dataclass(frozen=True, slots=True)
class Surrounded:
    """From ``day`` on other equipment, variations or body mass hold."""

    day: date
    surroundings: Surroundings


@dataclass(frozen=True, slots=True)
class DeloadDays:
    """An easier span: sessions in it are excluded, its days do not count as a gap."""

    first: date
    last: date


@dataclass(frozen=True, slots=True)
class Cleared:
    """A licensed professional's clearance: a line held for pain asks again, from where it stood."""

    day: date


Event = SessionDone | Overridden | Surrounded | DeloadDays | Cleared


@dataclass(frozen=True, slots=True)
class Context:
    """What does not change during a replay: the coach's settings."""

    settings: ProgressionSettings = field(default_factory=ProgressionSettings)


@dataclass(frozen=True, slots=True)
class BackOffMark:
    """A back-off: when, and from which position."""

    day: date
    position: Position


@dataclass(frozen=True, slots=True)
class LastTotal:
    """Clean amount over all working sets the last time at one load and variation."""

    load_g: int
    variation: str | None
    total: int


@dataclass(frozen=True, slots=True)
class State:
    """Where a line stands: enough to go on from. ``position`` None: a start is needed.

    ``successes`` and ``misses`` are the streaks; ``last_day`` the last counted session;
    ``last_trained`` the last with any set; ``sore`` counts painful sessions in a row and ``held``
    says that nothing is asked; ``steps`` since ``counting_from`` serve the frequency condition.
    ``before_growth``: what was asked before the last session's step, where that was a growth.
    ``fixed_reps``: the repetitions that a rule without a range of them returns to after an
    in-between. ``vouched``: the day of the coach's last word, from which a gap counts anew.
    ``correctable``: how many sessions may still correct the starting point.
    """

    position: Position | None
    rule: ProgressionRule = field(default_factory=ProgressionRule)
    surroundings: Surroundings = field(default_factory=Surroundings)
    rule_day: date | None = None
    successes: int = 0
    misses: int = 0
    last_day: date | None = None
    last_trained: date | None = None
    totals: tuple[LastTotal, ...] = ()
    back_offs: tuple[BackOffMark, ...] = ()
    deloads: tuple[DeloadDays, ...] = ()
    sore: int = 0
    held: Reason | None = None
    last_rir: float | None = None
    steps: int = 0
    counting_from: date | None = None
    correctable: int = 0
    before_growth: Position | None = None
    fixed_reps: int | None = None
    vouched: date | None = None
    reason: Reason | None = None


class StepKind(StrEnum):
    """What a step came from."""

    SESSION = "session"
    OVERRIDE = "override"
    RULE = "rule"
    SURROUNDINGS = "surroundings"
    CLEARANCE = "clearance"


@dataclass(frozen=True, slots=True)
class Step:
    """One event's effect: position before and after (equal when it repeats), outcome where a
    session was judged, and why.
    """

    day: date
    kind: StepKind
    before: Position | None
    after: Position | None
    reason: Reason
    outcome: Outcome | None = None
    session_id: int | None = None


@dataclass(frozen=True, slots=True)
class Replay:
    """The final state and every step, in order."""

    state: State
    steps: tuple[Step, ...]
