"""The roster: who trains next, who needs attention, and why."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date, timedelta
from enum import StrEnum
from typing import Final

from db.repository import Repository
from desktop.planning.briefs import brief_of
from desktop.planning.cautions import Desk, cautions_on
from desktop.planning.history import History, Library, read_history, read_library
from desktop.planning.schedule import (
    DAY,
    WEEK,
    absence_on,
    deload_on,
    deload_windows,
    place_on,
    training_days,
)
from desktop.training.limits import Severity
from desktop.training.name_order import NameKey, name_key
from desktop.training.program import Assignment
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


LONG_AGO: Final = timedelta(days=15)
"""Since so long ago the last session is what the roster says of somebody."""

SOON: Final = WEEK
"""A deload that begins within this time is told."""

_NEEDS: Final = {
    HeadlineCode.DUE_TODAY: 2,
    HeadlineCode.CAUTION: 3,
    HeadlineCode.FIRST_WEEK: 4,
    HeadlineCode.DELOAD: 4,
    HeadlineCode.NEXT: 5,
    HeadlineCode.LAST_SEEN: 6,
    HeadlineCode.AWAY: 7,
    HeadlineCode.NO_PROGRAM: 8,
}


def roster(repository: Repository, today: date) -> tuple[RosterEntry, ...]:
    """Everybody who is not archived, those who need attention first.

    Exercises, programs and settings are read once; each trainee's own record takes a constant
    number of queries. `roster_without_cautions` needs none of these and suits a first paint.
    """
    library = read_library(repository)
    entries = [
        entry_of(read_history(repository, trainee.id, library), today)
        for trainee in repository.trainees()
        if trainee.id is not None
    ]
    return by_need(entries)


def roster_without_cautions(
    repository: Repository, today: date, library: Library | None = None
) -> tuple[RosterEntry, ...]:
    """The roster from a constant number of queries for any number of trainees.

    Cautions, absences, deloads and the turn of a rotation are not looked at.
    """
    library = library or read_library(repository)
    last = repository.last_sessions()
    assignments: dict[int, list[Assignment]] = {}
    for one in repository.all_assignments():
        assignments.setdefault(one.trainee_id, []).append(one)
    entries = [
        _entry_by_dates(
            History(trainee, library, assignments=tuple(assignments.get(trainee.id, ()))),
            last.get(trainee.id),
            today,
        )
        for trainee in repository.trainees()
        if trainee.id is not None
    ]
    return by_need(entries)


def entry_of(history: History, today: date) -> RosterEntry:
    """One trainee's entry from what was read."""
    return entry_on(Desk.of(brief_of(history, today), history.library, today))


def entry_on(desk: Desk) -> RosterEntry:
    """One trainee's entry on the desk's day."""
    brief, today = desk.brief, desk.today
    cautions = cautions_on(desk)
    following = _next_day(desk)
    return RosterEntry(
        trainee=brief.trainee,
        headline=_headline(desk.history, today, brief.last, following, cautions),
        last=brief.last,
        next=following,
        due_today=following == today,
        cautions=cautions,
    )


def by_need(entries: Iterable[RosterEntry]) -> tuple[RosterEntry, ...]:
    """The entries sorted by need: stops, then who is due today, then cautions, then the next day;
    where that is alike cautions go first, and names decide the rest.
    """
    return tuple(sorted(entries, key=need))


def need(entry: RosterEntry) -> tuple[int, bool, date, NameKey]:
    """What the roster is sorted by."""
    stop = any(one.severity is Severity.STOP for one in entry.cautions)
    place = 1 if stop else _NEEDS[HeadlineCode.DUE_TODAY]
    if not stop and not entry.due_today:
        place = _NEEDS[entry.headline.code]
    calm = entry.headline.code is not HeadlineCode.CAUTION
    return (place, calm, entry.next or date.max, name_key(entry.trainee.name))


def _entry_by_dates(history: History, last: date | None, today: date) -> RosterEntry:
    following = _following(history, last, today)
    headline = _headline(history, today, last, following, ())
    return RosterEntry(history.trainee, headline, last, following, following == today)


def _next_day(desk: Desk) -> date | None:
    """As `_following`; mostly it is among the days that are known already."""
    if desk.coming and desk.brief.last != desk.today:
        return desk.coming[0][0]
    return _following(desk.history, desk.brief.last, desk.today)


def _following(history: History, last: date | None, today: date) -> date | None:
    """The next training day: today itself, as long as nothing was done today."""
    days = training_days(history, today if last == today else today - DAY)
    return next((day for day, _ in days), None)


def _headline(
    history: History,
    today: date,
    last: date | None,
    following: date | None,
    cautions: tuple[Caution, ...],
) -> Headline:
    """The one thing to know of somebody: a caution, else what comes or goes on."""
    urgent = next((one for one in cautions if one.severity is not Severity.NOTE), None)
    if urgent is not None:
        return Headline(HeadlineCode.CAUTION, (("limit", urgent.limit), *urgent.evidence))
    away = absence_on(history, today)
    if away is not None:
        return Headline(HeadlineCode.AWAY, (("kind", away.kind), ("last", away.last)))
    if following == today:
        return Headline(HeadlineCode.DUE_TODAY)
    return _quiet_headline(history, today, last, following)


def _quiet_headline(
    history: History, today: date, last: date | None, following: date | None
) -> Headline:
    """What to say of somebody who is not due and needs nothing."""
    deload = deload_on(history, today) or next(
        (one for one in deload_windows(history) if today < one.first <= today + SOON), None
    )
    if deload is not None:
        return Headline(HeadlineCode.DELOAD, (("first", deload.first), ("last", deload.last)))
    if last is not None and today - last >= LONG_AGO:
        return Headline(HeadlineCode.LAST_SEEN, (("days", (today - last).days),))
    place = place_on(history, today)
    if place is not None and place.week == 1:
        return Headline(HeadlineCode.FIRST_WEEK)
    if following is not None:
        return Headline(HeadlineCode.NEXT, (("day", following),))
    if last is not None and place is not None:
        return Headline(HeadlineCode.LAST_SEEN, (("days", (today - last).days),))
    return Headline(HeadlineCode.NO_PROGRAM)
