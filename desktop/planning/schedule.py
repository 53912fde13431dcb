"""Schedule: which training day falls on a date, and what stands in its way.

Weeks of a program run Monday to Sunday. A training day has a weekday (the assignment may name
others, in the order of the days) or none: then it is one of a rotation, done in turn on the days
that the assignment or the trainee names; where neither does, with a full day between sessions.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from datetime import date, timedelta
from itertools import groupby
from typing import Final

from desktop.planning.history import History
from desktop.training.program import (
    Assignment,
    Phase,
    PhasePurpose,
    Program,
    Slot,
    TrainingDay,
)
from desktop.training.trainee import Absence, DeloadWindow

DAY: Final = timedelta(days=1)
WEEK: Final = timedelta(days=7)
LOOK_AHEAD: Final = timedelta(days=366)
"""How far ahead a next training day is looked for."""


@dataclass(frozen=True, slots=True)
class Place:
    """Where a date lies in a program. ``phase`` None: after its last week; ``weekdays``: those that
    the assignment names for the days then (empty: none).
    """

    assignment: Assignment
    program: Program
    week: int
    phase: Phase | None
    weekdays: tuple[int, ...]


@dataclass(frozen=True, slots=True)
class PhaseSpan:
    """A phase of an assignment with its first and last day, both included."""

    phase: Phase
    first: date
    last: date


def assignment_on(assignments: Iterable[Assignment], day: date) -> Assignment | None:
    """The assignment that holds on ``day``: of those begun and not ended, the last begun."""
    begun = [one for one in assignments if one.start <= day and _open(one, day)]
    return max(begun, key=lambda one: (one.start, one.id or 0), default=None)


def place_on(history: History, day: date) -> Place | None:
    """Where ``day`` lies in the program assigned then; None where none is."""
    assignment = assignment_on(history.assignments, day)
    if assignment is None:
        return None
    program = history.library.programs[assignment.program_id]
    week = assignment.week_of(day)
    phase = program.phase_of_week(week)
    return Place(assignment, program, week, phase, assignment.weekdays_on(day))


def phase_spans(assignment: Assignment, program: Program) -> tuple[PhaseSpan, ...]:
    """Every phase with its days, cut to the assignment; phases that lie outside are left out."""
    monday = assignment.start - timedelta(days=assignment.start.weekday())
    spans: list[PhaseSpan] = []
    for phase in program.phases:
        next_monday = monday + phase.weeks * WEEK
        first, last = max(monday, assignment.start), next_monday - DAY
        if assignment.ended is not None:
            last = min(last, assignment.ended)
        if first <= last:
            spans.append(PhaseSpan(phase, first, last))
        monday = next_monday
    return tuple(spans)


def deload_windows(history: History) -> tuple[DeloadWindow, ...]:
    """The windows recorded, and one for each deload phase of a program, by first day."""
    settings = history.library.settings
    phases = [
        DeloadWindow(
            history.trainee_id,
            span.first,
            span.last,
            sets_factor=settings.deload_sets_factor,
            load_percent=settings.deload_load_percent,
        )
        for assignment in history.assignments
        for span in phase_spans(assignment, history.library.programs[assignment.program_id])
        if span.phase.purpose is PhasePurpose.DELOAD
        and assignment_on(history.assignments, span.first) == assignment
    ]
    return tuple(sorted((*history.deloads, *phases), key=lambda one: (one.first, one.last)))


def deload_on(history: History, day: date) -> DeloadWindow | None:
    """The easier span that ``day`` lies in; one that the coach recorded goes first."""
    holding = (one for one in deload_windows(history) if one.first <= day <= one.last)
    return min(holding, key=lambda one: one.id is None, default=None)


def absence_on(history: History, day: date) -> Absence | None:
    """The absence that ``day`` lies in."""
    for one in history.absences:
        if one.first <= day and (one.last is None or day <= one.last):
            return one
    return None


def training_day_on(history: History, day: date) -> TrainingDay | None:
    """The training day planned on ``day``, whether or not the trainee is away.

    In a rotation, the one after the last session done before ``day``; or the one done that day.
    """
    place = place_on(history, day)
    if place is None or place.phase is None:
        return None
    return _Rotation.at(history, place, day).on(day, place)


def training_days(
    history: History, after: date, within: timedelta = LOOK_AHEAD
) -> Iterator[tuple[date, TrainingDay]]:
    """The training days after ``after`` in order, for a year (or ``within`` another span), as if
    each were done; not those on which the trainee is away.
    """
    rotation: _Rotation | None = None
    for ahead in range(1, within.days + 1):
        day = after + ahead * DAY
        place = place_on(history, day)
        if place is None or place.phase is None or absence_on(history, day):
            continue
        if rotation is None or not rotation.holds(history, place):
            rotation = _Rotation.at(history, place, day)
        planned = rotation.on(day, place)
        if planned is not None:
            yield day, planned
            rotation = rotation.after(day, planned)


def line_days(
    history: History, exercise: str, line_name: str, after: date, count: int
) -> tuple[date, ...]:
    """The next ``count`` days after ``after`` on which a line is trained; fewer near the end."""
    found: list[date] = []
    for day, planned in training_days(history, after):
        if slot_of(planned, exercise, line_name) is not None:
            found.append(day)
        if len(found) == count:
            break
    return tuple(found)


def slot_of(day: TrainingDay, exercise: str, line_name: str) -> Slot | None:
    """The first slot of a day that refers to the line of this exercise and name."""
    for slot in day.slots:
        if slot.exercise == exercise and slot.line_name == line_name:
            return slot
    return None


def slot_in_phase(phase: Phase, exercise: str, line_name: str) -> Slot | None:
    """The first slot of a phase that refers to the line: its rule holds while the phase runs."""
    found = (slot_of(day, exercise, line_name) for day in phase.days)
    return next((slot for slot in found if slot is not None), None)


def weekdays_of(history: History, place: Place) -> tuple[int, ...]:
    """The weekdays on which the phase asks for training; empty: a rotation without fixed days."""
    if place.phase is None:
        return ()
    fixed = _fixed_days(place)
    if any(day.weekday is None for day in place.phase.days):
        return tuple(sorted({*fixed, *_rotation_weekdays(history, place)}))
    return tuple(sorted(fixed))


def days_planned(history: History, first: date, last: date) -> int:
    """How many days from ``first`` to ``last``, both included, the programs of those days asked
    for training, without those on which the trainee was away.

    Where a rotation names no weekdays, each of its days is planned once a week.
    """
    planned = 0.0
    alone = len(history.assignments) == 1
    for assignment in history.assignments:
        program = history.library.programs[assignment.program_id]
        for span in phase_spans(assignment, program):
            free = [
                day
                for day in _days_between(max(first, span.first), min(last, span.last))
                if (alone or assignment_on(history.assignments, day) == assignment)
                and not absence_on(history, day)
            ]
            if not free:
                continue
            week = assignment.week_of(free[0])
            for named, days in groupby(free, assignment.weekdays_on):
                place = Place(assignment, program, week, span.phase, named)
                planned += _planned_on(history, place, tuple(days))
    return round(planned)


def _planned_on(history: History, place: Place, days: tuple[date, ...]) -> float:
    """How many of ``days``, on all of which a phase runs with the same weekdays, are planned."""
    assert place.phase is not None
    weekdays = weekdays_of(history, place)
    if not weekdays:
        return len(place.phase.days) * len(days) / WEEK.days
    return sum(day.weekday() in weekdays for day in days)


def next_is_certain(history: History, day: date) -> bool:
    """Whether the training days ahead are the same whether or not those before them are done: not
    for a rotation that names no weekdays.
    """
    place = place_on(history, day)
    if place is None or place.phase is None or not place.phase.days:
        return True
    return bool(weekdays_of(history, place))


def _days_between(first: date, last: date) -> Iterator[date]:
    for ahead in range((last - first).days + 1):
        yield first + ahead * DAY


@dataclass(frozen=True, slots=True)
class _Rotation:
    """Which day of a phase's rotation comes next, and when the last session was."""

    phase: Phase
    weekdays: tuple[int, ...]
    next_index: int
    last: date | None

    @classmethod
    def at(cls, history: History, place: Place, day: date) -> _Rotation:
        assert place.phase is not None
        names = [each.name for each in place.phase.days if each.weekday is None]
        done = [
            session
            for session in history.sessions
            if session.day <= day
            and session.program_id == place.program.id
            and session.day_name in names
        ]
        last = max(done, key=lambda one: (one.day, one.entry), default=None)
        index = 0
        if last is not None:
            index = (names.index(last.day_name) + (last.day < day)) % len(names)
        before = max((s.day for s in history.sessions if s.day < day), default=None)
        return cls(place.phase, _rotation_weekdays(history, place), index, before)

    def holds(self, history: History, place: Place) -> bool:
        """Whether the same phase runs on the same weekdays."""
        return self.phase == place.phase and self.weekdays == _rotation_weekdays(history, place)

    def on(self, day: date, place: Place) -> TrainingDay | None:
        """The training day on ``day``: one fixed to its weekday goes before the rotation."""
        fixed = _fixed_days(place).get(day.weekday())
        if fixed is not None:
            return fixed
        turning = self._turning()
        if not turning or not self._free(day):
            return None
        return turning[self.next_index]

    def after(self, day: date, done: TrainingDay) -> _Rotation:
        """The rotation once ``done`` was trained on ``day``."""
        turning = self._turning()
        step = 1 if done in turning else 0
        index = (self.next_index + step) % len(turning) if turning else 0
        return _Rotation(self.phase, self.weekdays, index, day)

    def _turning(self) -> list[TrainingDay]:
        return [day for day in self.phase.days if day.weekday is None]

    def _free(self, day: date) -> bool:
        if self.weekdays:
            return day.weekday() in self.weekdays
        return self.last is None or (day - self.last).days > 1


def _fixed_days(place: Place) -> dict[int, TrainingDay]:
    """The phase's days by weekday; of two on one weekday the first."""
    assert place.phase is not None
    named = place.weekdays
    by_weekday: dict[int, TrainingDay] = {}
    for index, day in enumerate(place.phase.days):
        if day.weekday is None:
            continue
        weekday = named[index] if index < len(named) else day.weekday
        by_weekday.setdefault(weekday, day)
    return by_weekday


def _rotation_weekdays(history: History, place: Place) -> tuple[int, ...]:
    return place.weekdays or history.trainee.weekdays


def _open(assignment: Assignment, day: date) -> bool:
    return assignment.ended is None or day <= assignment.ended
