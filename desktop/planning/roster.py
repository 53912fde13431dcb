"""The roster: who trains next, who needs attention, and why."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from enum import StrEnum

from desktop.training.reasons import ReasonValue
from desktop.training.recovery import Caution
from desktop.training.trainee import Trainee


class HeadlineCode(StrEnum):
    """What the roster says of a trainee; the comment behind a code names its values."""

    CAUTION = "caution"  # the first of the entry's cautions
    DUE_TODAY = "due today"
    DELOAD = "deload"  # first, last
    AWAY = "away"  # kind, last
    FIRST_WEEK = "first week"
    LAST_SEEN = "last seen"  # days
    NEXT = "next"  # day
    NO_PROGRAM = "no program"


@dataclass(frozen=True, slots=True)
class Headline:
    """A code and its values, which the screens turn into words."""

    code: HeadlineCode
    values: tuple[tuple[str, ReasonValue], ...] = ()


@dataclass(frozen=True, slots=True)
class RosterEntry:
    """One trainee's line in the roster: last and next training day, and what to look at."""

    trainee: Trainee
    headline: Headline
    last: date | None = None
    next: date | None = None
    due_today: bool = False
    cautions: tuple[Caution, ...] = ()
