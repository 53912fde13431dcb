"""Deload plan: when an easier week is due and why, what it asks, and what it does to the weeks
after it.

Program weeks run Monday to Sunday, and so do the windows proposed here. No published value says by
how much a deload cuts: the factors are the coach's settings (see desktop.training.deload).
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date, timedelta
from enum import StrEnum
from typing import Final

from desktop.planning.briefs import brief_of
from desktop.planning.cautions import last_easier, lines_in_use
from desktop.planning.history import History
from desktop.planning.line_briefs import RECENT
from desktop.planning.schedule import DAY, WEEK, deload_windows, place_on
from desktop.planning.signals import deload_signals
from desktop.planning.weeks import weeks_of
from desktop.training.deload import Seen
from desktop.training.exercises import Exercise
from desktop.training.limits import LimitId
from desktop.training.program import PhasePurpose
from desktop.training.target import Target
from desktop.training.trainee import DeloadWindow
from desktop.training.weeks import LineKey, WeekAhead

WEEKS_AHEAD: Final = 10


class DeloadBasis(StrEnum):
    """What an easier week rests on; the comment says what it means for the coach."""

    RECORDED = "recorded"  # the coach planned it already: it can be moved
    PROGRAM = "program"  # the program has a phase for it: it is moved there
    SIGNALS = "signals"  # enough signals at once: the next week
    CYCLE = "cycle"  # so many weeks after the last one
    NONE = "none"  # nothing asks for one


@dataclass(frozen=True, slots=True)
class DeloadProposal:
    """The next easier week. ``every`` weeks one is due (None: the program says never), ``built``
    whole weeks have passed since ``since``; ``due`` is the Monday that the cycle names. ``signals``
    are those seen, of which ``needed`` make a deload due.
    """

    window: DeloadWindow
    basis: DeloadBasis
    every: int | None
    built: int
    since: date | None
    due: date | None
    signals: tuple[Seen, ...]
    needed: int


@dataclass(frozen=True, slots=True)
class SlotEased:
    """One slot of a day in the window: what it asks, and what it would ask otherwise."""

    exercise: Exercise
    line_name: str
    usual: Target
    eased: Target


@dataclass(frozen=True, slots=True)
class DayEased:
    """One training day in the window; minutes as the targets ask."""

    day: date
    name: str
    slots: tuple[SlotEased, ...]
    usual_minutes: float
    minutes: float


@dataclass(frozen=True, slots=True)
class WeekPlanned:
    """One week to come: sets asked and minutes with the window, and without."""

    first: date
    sets: int
    minutes: float
    usual_sets: int
    usual_minutes: float
    eased: bool


@dataclass(frozen=True, slots=True)
class LineLater:
    """Where one line stands in the last of the weeks, with the window and without."""

    exercise: Exercise
    line_name: str
    planned: Target
    usual: Target


@dataclass(frozen=True, slots=True)
class DeloadPlan:
    """What a window asks and does. ``days`` is empty where no training falls into it."""

    window: DeloadWindow
    days: tuple[DayEased, ...]
    weeks: tuple[WeekPlanned, ...]
    later: tuple[LineLater, ...]


def proposal_of(history: History, today: date) -> DeloadProposal:
    """The easier week that comes next, and what speaks for it ``today``."""
    needed = round(history.library.limits[LimitId.REACTIVE_DELOAD].threshold)
    signals = _signals(history, today)
    every = _every(history, today)
    since = last_easier(history, today)
    due = None if every is None or since is None else _due(since, every)
    next_monday = monday_from(today)
    window, basis = _chosen(history, today, due, enough=len(signals) >= needed)
    return DeloadProposal(
        window or _usual(history, max(due or next_monday, next_monday)),
        basis,
        every,
        0 if since is None else max(0, (today - since).days // 7),
        since,
        due,
        signals,
        needed,
    )


def monday_from(day: date) -> date:
    """``day`` where it is a Monday, else the next one."""
    return day + timedelta(days=-day.weekday() % 7)


def moved(window: DeloadWindow, weeks: int, today: date) -> DeloadWindow:
    """The window so many weeks later; never to begin before this week's Monday."""
    earliest = today - timedelta(days=today.weekday())
    by = weeks * WEEK
    if window.first + by < earliest:
        return window
    return replace(window, first=window.first + by, last=window.last + by)


def eased_as(history: History, window: DeloadWindow) -> DeloadWindow:
    """The window with the coach's present factors."""
    settings = history.library.settings
    return replace(
        window,
        sets_factor=settings.deload_sets_factor,
        load_percent=settings.deload_load_percent,
    )


def plan_of(
    history: History, window: DeloadWindow, today: date, weeks: int = WEEKS_AHEAD
) -> DeloadPlan:
    """What ``window`` asks, day by day, and what it does to the next ``weeks`` weeks.

    Each session is taken as done as asked. Other windows hold on both sides; deloads that are only
    proposed count on neither.
    """
    without = replace(_uneased(history), deloads=_others(history, window))
    planned = replace(without, deloads=(*without.deloads, window))
    usual_weeks = weeks_of(without, today, weeks, expected=False)
    eased_weeks = weeks_of(planned, today, weeks, expected=False)
    exercises = history.library.exercises
    return DeloadPlan(
        window,
        _days_eased(window, usual_weeks, eased_weeks, exercises),
        tuple(
            WeekPlanned(
                one.first,
                _sets(one),
                one.minutes,
                _sets(usual),
                usual.minutes,
                eased=one.deload,
            )
            for one, usual in zip(eased_weeks, usual_weeks, strict=True)
        ),
        _later(eased_weeks, usual_weeks, exercises),
    )


def _chosen(
    history: History, today: date, due: date | None, *, enough: bool
) -> tuple[DeloadWindow | None, DeloadBasis]:
    """The window that is there already, or None, and what the next one rests on."""
    coming = [one for one in deload_windows(history) if one.last >= today]
    recorded = next((one for one in coming if one.id is not None), None)
    if recorded is not None:
        return recorded, DeloadBasis.RECORDED
    if enough:
        return _usual(history, monday_from(today), planned=False), DeloadBasis.SIGNALS
    phase = coming[0] if coming else None
    if phase is not None and (due is None or phase.first <= due + WEEK):
        return phase, DeloadBasis.PROGRAM
    return None, DeloadBasis.NONE if due is None else DeloadBasis.CYCLE


def _usual(history: History, first: date, *, planned: bool = True) -> DeloadWindow:
    window = DeloadWindow(history.trainee_id, first, first + 6 * DAY, planned=planned)
    return eased_as(history, window)


def _due(since: date, every: int) -> date:
    """The Monday after ``every`` building weeks; a week begun before its middle counts."""
    begun = since - timedelta(days=since.weekday())
    if since.weekday() > 3:
        begun += WEEK
    return begun + every * WEEK


def _every(history: History, today: date) -> int | None:
    place = place_on(history, today)
    if place is None:
        return history.library.settings.deload_every_weeks
    return place.program.deload_every


def _signals(history: History, today: date) -> tuple[Seen, ...]:
    brief = brief_of(history, today)
    plateaus = {
        line.line_id: line.plateau
        for line in lines_in_use(brief, today)
        if line.line_id is not None and line.plateau is not None
        if line.worked is not None and today - line.worked <= RECENT
    }
    at_least = history.library.limits[LimitId.PLATEAU].threshold
    return deload_signals(brief.sessions, today, plateaus, at_least)


def _others(history: History, window: DeloadWindow) -> tuple[DeloadWindow, ...]:
    """The other easier spans, phases of a program too, that do not lie over ``window``."""
    return tuple(
        one
        for one in deload_windows(history)
        if (window.id is None or one.id != window.id)
        and (one.id is not None or one.last < window.first or one.first > window.last)
    )


def _uneased(history: History) -> History:
    """The same with programs that neither ease a phase nor propose to every so many weeks."""
    programs = {
        key: replace(
            program,
            deload_every=None,
            phases=tuple(
                replace(phase, purpose=PhasePurpose.BUILD)
                if phase.purpose is PhasePurpose.DELOAD
                else phase
                for phase in program.phases
            ),
        )
        for key, program in history.library.programs.items()
    }
    return replace(history, library=replace(history.library, programs=programs))


def _days_eased(
    window: DeloadWindow,
    usual: Sequence[WeekAhead],
    eased: Sequence[WeekAhead],
    exercises: Mapping[str, Exercise],
) -> tuple[DayEased, ...]:
    pairs = [
        (before, after)
        for one, other in zip(usual, eased, strict=True)
        for before, after in zip(one.days, other.days, strict=True)
        if window.first <= after.day <= window.last
    ]
    return tuple(
        DayEased(
            after.day,
            after.name,
            tuple(
                SlotEased(exercises[b.slot.exercise], b.slot.line_name, a.target, b.target)
                for a, b in zip(before.slots, after.slots, strict=True)
            ),
            before.minutes,
            after.minutes,
        )
        for before, after in pairs
    )


def _later(
    planned: Iterable[WeekAhead], usual: Iterable[WeekAhead], exercises: Mapping[str, Exercise]
) -> tuple[LineLater, ...]:
    without = _last_targets(usual)
    return tuple(
        LineLater(exercises[key[0]], key[1], target, without[key])
        for key, target in _last_targets(planned).items()
        if key in without
    )


def _last_targets(weeks: Iterable[WeekAhead]) -> dict[LineKey, Target]:
    """What each line is asked last; easier weeks tell nothing of where it stands."""
    return {
        (slot.slot.exercise, slot.slot.line_name): slot.target
        for week in weeks
        for day in week.days
        for slot in day.slots
        if not slot.target.deload
    }


def _sets(week: WeekAhead) -> int:
    return sum(len(slot.target.sets) for day in week.days for slot in day.slots)
