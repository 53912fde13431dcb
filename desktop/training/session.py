"""A session as asked and as done."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime
from enum import StrEnum


class Outcome(StrEnum):
    """A session's result for one line against what was asked of it."""

    EXCEEDED = "exceeded"
    MET = "met"
    IMPROVED = "improved"
    PARTIAL = "partial"
    MISSED = "missed"
    SKIPPED = "skipped"
    EXCLUDED = "excluded"


@dataclass(frozen=True, slots=True)
class AskedSet:
    """What one set asks: load in grams per implement (signed for bodyweight), clean repetitions
    or seconds, repetitions in reserve. ``open_ended``: as many clean ones as possible, stopping
    at ``stop_at``.
    """

    load_g: int = 0
    reps: int | None = None
    seconds: int | None = None
    variation: str | None = None
    tempo_s: int | None = None
    rir: float | None = None
    open_ended: bool = False
    stop_at: int | None = None


@dataclass(frozen=True, slots=True)
class SetDone:
    """One set as done. ``reps`` are the clean ones; ``seconds`` for holds; a blank ``rir`` is
    unknown, never 0; ``pain`` 0-10. ``side`` is "left" or "right" where sides differ.
    """

    load_g: int = 0
    reps: int | None = None
    seconds: int | None = None
    variation: str | None = None
    rir: float | None = None
    tempo_s: int | None = None
    warm_up: bool = False
    pain: int = 0
    side: str = ""
    note: str = ""

    @property
    def amount(self) -> int:
        """Clean repetitions, or seconds where the set is a hold; 0 when neither is given."""
        if self.reps is not None:
            return self.reps
        return self.seconds or 0


@dataclass(frozen=True, slots=True)
class LineDone:
    """One line within a session: what was asked (empty: nothing stored) and what was done.

    ``deload`` and ``skipped`` were true on the day; ``exercise`` is the key of the exercise done.
    """

    line_id: int
    exercise: str
    asked: tuple[AskedSet, ...] = ()
    sets: tuple[SetDone, ...] = ()
    deload: bool = False
    test: bool = False
    skipped: bool = False
    reason: str = ""
    note: str = ""

    @property
    def working_sets(self) -> tuple[SetDone, ...]:
        """The sets that count, without warm-ups."""
        return tuple(done for done in self.sets if not done.warm_up)

    @property
    def trained(self) -> bool:
        """Whether any set counts: not only warm-ups, nor skipped after them."""
        return not self.skipped and any(not done.warm_up for done in self.sets)

    @property
    def worst_pain(self) -> int:
        """The highest pain noted on any set, 0-10."""
        return max((done.pain for done in self.sets), default=0)


@dataclass(frozen=True, slots=True)
class Wellness:
    """How the trainee feels, each 1 (bad) to 5 (good), or None where it was not asked."""

    sleep: int | None = None
    soreness: int | None = None
    stress: int | None = None
    motivation: int | None = None


@dataclass(frozen=True, slots=True)
class Session:
    """One trainee's training on one date, planned or not.

    ``entry`` orders sessions of one day; ``effort`` is the session RPE 0-10, ``minutes`` its
    length; ``program_id``, ``week`` (from 1) and ``day_name`` say what it was planned as.
    """

    trainee_id: int
    day: date
    lines: tuple[LineDone, ...] = ()
    entry: int = 0
    effort: float | None = None
    minutes: int | None = None
    wellness: Wellness = Wellness()
    note: str = ""
    red_flag: bool = False
    program_id: int | None = None
    week: int | None = None
    day_name: str = ""
    id: int | None = None
    revision: int = 0


@dataclass(frozen=True, slots=True)
class Activity:
    """Another activity of a trainee: what, how long (minutes) and how hard (0-10)."""

    trainee_id: int
    day: date
    name: str
    minutes: int
    effort: float
    id: int | None = None
    revision: int = 0


class ChangeKind(StrEnum):
    """What was done to a session's record."""

    ENTERED = "entered"
    CORRECTED = "corrected"


@dataclass(frozen=True, slots=True)
class SessionChange:
    """One entry of a session's change log: when (UTC), what, and the session as it stood
    ``before`` a correction.
    """

    trainee_id: int
    session_id: int
    at: datetime
    what: ChangeKind
    before: Session | None = None
    id: int | None = None
    revision: int = 0
