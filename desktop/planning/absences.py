"""Absences: what days away change. They count as days untrained, and no session is expected."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from datetime import date

from desktop.planning.days import day_plan_of, next_day_of
from desktop.planning.history import History
from desktop.planning.schedule import DAY
from desktop.training.exercises import Exercise
from desktop.training.program import Line
from desktop.training.reasons import Reason, ReasonCode
from desktop.training.trainee import Absence

GAPS = frozenset(
    {
        ReasonCode.GAP_REPEAT,
        ReasonCode.GAP_LIGHTER,
        ReasonCode.GAP_TO_FLOOR,
        ReasonCode.GAP_EASIER,
        ReasonCode.GAP_RESTART,
    }
)


@dataclass(frozen=True, slots=True)
class AfterGap:
    """A line whose next target is another one because of the days without it."""

    line: Line
    exercise: Exercise
    reason: Reason


@dataclass(frozen=True, slots=True)
class NextSession:
    """The next day of training that is not on record (None: none within a year), and the lines
    of it that a gap changes. ``if_back``: the trainee is away until further notice; it is told
    what a return today would mean.
    """

    day: date | None
    gaps: tuple[AfterGap, ...] = ()
    if_back: bool = False


def next_session(history: History, today: date) -> NextSession:
    """The next session from ``today`` on, with what the days untrained until then change."""
    away = tuple(one for one in history.absences if one.last is None and one.first <= today)
    if away:
        ended = tuple(
            replace(one, last=today - DAY) if one in away else one for one in history.absences
        )
        back = next_session(replace(history, absences=ended), today)
        return replace(back, if_back=True)
    done_today = any(one.day == today for one in history.sessions)
    day = next_day_of(history, today if done_today else today - DAY)
    if day is None:
        return NextSession(None)
    gaps = []
    for slot in day_plan_of(history, day).slots:
        reasons = (slot.target.reason, *slot.target.notes)
        why = next((one for one in reasons if one.code in GAPS), None)
        if why is not None:
            gaps.append(AfterGap(slot.line, slot.exercise, why))
    return NextSession(day, tuple(gaps))


def overlapping(known: Iterable[Absence], wanted: Absence) -> Absence | None:
    """An absence on record, another than ``wanted``, that shares a day with it."""
    last = wanted.last or date.max
    for one in known:
        if one.id != wanted.id and one.first <= last and wanted.first <= (one.last or date.max):
            return one
    return None
