"""A trainee in brief: dated facts, from which the desk tells of any day what there is to see.

Nothing here rests on what day it is. A brief is drawn up from the whole record as of one day
(`Brief.first`), and what it says stays true on every later day before `Brief.until`, as long as
nothing of the trainee is written: the latter is the first day on which something on record or in
the program will move a line. What depends on the day, such as a gap, is worked out when it is read.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date
from enum import StrEnum
from typing import Final

from desktop.training.deload import WorkDone
from desktop.training.exercises import Muscle, Pattern
from desktop.training.limits import Limit, LimitId
from desktop.training.program import Assignment
from desktop.training.recovery import Caution
from desktop.training.session import Session
from desktop.training.trainee import Absence, DeloadWindow, DismissedCaution, GoalKind, Trainee

Plain = int | float | str | bool | tuple[int] | None
"""A value of evidence as it is kept; a day is its ordinal in a tuple."""


@dataclass(frozen=True, slots=True)
class Told:
    """A caution as a fact: which limit on what evidence. How serious it is, its source and what it
    proposes are the limit's.
    """

    limit: LimitId
    evidence: tuple[tuple[str, Plain], ...]
    line_id: int | None = None
    sessions: tuple[int, ...] = ()

    @classmethod
    def of(cls, caution: Caution) -> Told:
        """The fact behind ``caution``."""
        evidence = tuple(
            (name, (value.toordinal(),) if isinstance(value, date) else value)
            for name, value in caution.evidence
        )
        return cls(caution.limit, evidence, caution.line_id, caution.sessions)

    def caution(self, limits: Mapping[LimitId, Limit]) -> Caution:
        """The caution, in the words of its limit."""
        limit = limits[self.limit]
        evidence = tuple(
            (name, date.fromordinal(value[0]) if isinstance(value, tuple) else value)
            for name, value in self.evidence
        )
        return Caution(
            limit.id,
            limit.severity,
            evidence,
            limit.source,
            limit.proposal,
            self.line_id,
            self.sessions,
        )


@dataclass(frozen=True, slots=True)
class LineBrief:
    """Where a line stands. ``in_phase``: the running phase asks for it; ``follows`` names the line
    of the same exercise whose loads it takes.

    ``last_seen`` is the last session with any part of it, ``last_trained`` the last with a set,
    ``worked`` the last with a working set; ``vouched`` the day of the coach's last word. ``step``
    holds of the step of ``stepped``, ``asks`` of what is asked while there is no gap and no easier
    week. ``plateau`` is its probability, None without a trend that can tell.
    """

    exercise: str
    name: str
    line_id: int | None
    in_phase: bool
    follows: str | None = None
    last_seen: date | None = None
    last_trained: date | None = None
    worked: date | None = None
    vouched: date | None = None
    pain: Told | None = None
    stepped: date | None = None
    step: tuple[Told, ...] = ()
    asks: tuple[Told, ...] = ()
    plateau: float | None = None


@dataclass(frozen=True, slots=True)
class SessionBrief:
    """A session of the last weeks without its sets. ``wellness`` is the mean of what was answered,
    ``volume_g`` grams times repetitions, ``hard`` the hard sets by pattern outside of easier
    weeks, ``muscles`` those that had a hard set at all, ``work`` the last set of each line.
    """

    day: date
    id: int | None
    effort: float | None
    minutes: int | None
    wellness: float | None
    sore: bool
    eased: bool
    volume_g: float
    hard: tuple[tuple[Pattern, int], ...]
    muscles: tuple[Muscle, ...]
    work: tuple[WorkDone, ...]


@dataclass(frozen=True, slots=True)
class ActivityBrief:
    """Another activity: its day, how hard it was (0-10) and how long (minutes)."""

    day: date
    effort: float | None
    minutes: int | None


@dataclass(frozen=True, slots=True)
class Turn:
    """The last session of one training day of a program, which says whose turn is next."""

    day: date
    entry: int
    program_id: int | None
    day_name: str

    def as_session(self, trainee_id: int) -> Session:
        """As a session without lines."""
        return Session(
            trainee_id,
            self.day,
            (),
            entry=self.entry,
            program_id=self.program_id,
            day_name=self.day_name,
        )


@dataclass(frozen=True, slots=True)
class GoalBrief:
    """A goal, and the days between which the trend reaches it; None: not in a year, or no trend."""

    line_id: int
    kind: GoalKind
    value: int
    variation: str | None = None
    by: date | None = None
    earliest: date | None = None
    likely: date | None = None
    latest: date | None = None


@dataclass(frozen=True, slots=True)
class LineName:
    """What a line is called: the key of its exercise and its own name."""

    line_id: int
    exercise: str
    name: str


class SparkKind(StrEnum):
    """What a spark line shows."""

    MAXIMUM = "maximum"  # estimated one-repetition maximum of one line, grams
    SETS = "sets"  # hard sets a week, all lines


@dataclass(frozen=True, slots=True)
class Spark:
    """The course of the last months: values by the ordinal of the day, one a week at most."""

    kind: SparkKind
    points: tuple[tuple[int, float], ...] = ()
    line_id: int | None = None


NO_SPARK: Final = Spark(SparkKind.SETS)


@dataclass(frozen=True, slots=True)
class Brief:
    """One trainee in brief; see the module. ``began`` is the first day trained, ``last`` the last,
    ``began_again`` the one on which training went on after a break. ``holds`` are cautions that
    hold until something is written. ``done`` are the days trained in the last weeks.
    """

    trainee: Trainee
    first: date
    until: date
    assignments: tuple[Assignment, ...] = ()
    deloads: tuple[DeloadWindow, ...] = ()
    absences: tuple[Absence, ...] = ()
    dismissed: tuple[DismissedCaution, ...] = ()
    activities: tuple[ActivityBrief, ...] = ()
    sessions: tuple[SessionBrief, ...] = ()
    turns: tuple[Turn, ...] = ()
    began: date | None = None
    last: date | None = None
    began_again: date | None = None
    holds: tuple[Told, ...] = ()
    lines: tuple[LineBrief, ...] = ()
    names: tuple[LineName, ...] = ()
    goals: tuple[GoalBrief, ...] = ()
    spark: Spark = NO_SPARK
