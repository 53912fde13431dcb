"""Weeks plan: the training days of a whole program with their dates, and the lines they train.

For a trainee whom the program runs for, from today on their own days; for anybody else as if
somebody with their equipment began it this week.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from datetime import date, timedelta
from typing import Final

from desktop.planning.history import History
from desktop.planning.line_memory import LineMemory, LineWork
from desktop.planning.outlook import Onlooker
from desktop.planning.schedule import DAY, WEEK, deload_windows, training_days
from desktop.planning.standing import LineKey, key_of, line_for
from desktop.planning.weeks import usual_deload
from desktop.training.program import Assignment, Line, Program, TrainingDay
from desktop.training.program_edits import DayPlace
from desktop.training.trainee import DeloadWindow
from desktop.training.weeks import planned_deloads

NOBODY: Final = 0
"""The id of the stand-in for whom a program is imagined."""


@dataclass(frozen=True, slots=True)
class PlannedDay:
    """A training day to come and its place in the program."""

    day: date
    planned: TrainingDay
    place: DayPlace


@dataclass(frozen=True, slots=True)
class WeeksPlan:
    """What the weeks of a program are computed from: the trainee's history, or a stand-in's
    (``dated`` False). ``first``: the first day to come; ``monday`` of week 1; ``deloads`` recorded
    or planned by a phase, ``proposed`` by the program's count of weeks.
    """

    program: Program
    history: History
    assignment: Assignment
    first: date
    dated: bool
    days: tuple[PlannedDay, ...]
    deloads: tuple[DeloadWindow, ...]
    proposed: tuple[DeloadWindow, ...]
    lines: dict[LineKey, Line]

    @property
    def monday(self) -> date:
        """The Monday of week 1."""
        return self.assignment.start - timedelta(days=self.assignment.start.weekday())


def weeks_plan(program: Program, onlooker: Onlooker) -> WeeksPlan:
    """The days to come of ``program`` as ``onlooker`` sees it."""
    history, assignment, dated = _whose(program, onlooker)
    first = max(onlooker.today, assignment.start)
    if not dated:
        first = assignment.start
    monday = assignment.start - timedelta(days=assignment.start.weekday())
    within = max(monday + program.weeks * WEEK - first, timedelta(0))
    days = tuple(
        PlannedDay(day, planned, _place_of(program, assignment, day, planned))
        for day, planned in training_days(history, first - DAY, within)
    )
    eased = deload_windows(history)
    proposed = planned_deloads(
        program.weeks, program.deload_every, monday, eased, usual_deload(history)
    )
    lines: dict[LineKey, Line] = {}
    for each in days:
        for slot in each.planned.slots:
            if key_of(slot) not in lines:
                lines[key_of(slot)] = line_for(history, slot, assignment.start)
    coming = tuple(window for window in proposed if window.last >= first)
    return WeeksPlan(program, history, assignment, first, dated, days, eased, coming, lines)


def unrolled(plan: WeeksPlan, memory: LineMemory) -> Iterator[None]:
    """Unroll every line of the plan; a pause after each that was not remembered."""
    memory.meet(plan.history)
    days: dict[LineKey, list[date]] = {key: [] for key in plan.lines}
    for each in plan.days:
        for key in dict.fromkeys(key_of(slot) for slot in each.planned.slots):
            days[key].append(each.day)
    work = LineWork(
        plan.history,
        plan.first,
        plan.lines,
        {key: tuple(found) for key, found in days.items()},
        (*plan.deloads, *plan.proposed),
    )
    for key in plan.lines:
        if memory.unroll(key, work):
            yield


def phase_of_week(program: Program, week: int) -> int:
    """The place of the phase that holds ``week`` (from 1); the last one after the end."""
    for place, phase in enumerate(program.phases):
        if week <= phase.weeks:
            return place
        week -= phase.weeks
    return len(program.phases) - 1


def _whose(program: Program, onlooker: Onlooker) -> tuple[History, Assignment, bool]:
    here = onlooker.with_program(program)
    given = here.assignment_of(program)
    if given is not None and here.history is not None:
        return here.history, given, True
    monday = onlooker.today - timedelta(days=onlooker.today.weekday())
    key = program.id or 0
    library = replace(onlooker.library, programs={**onlooker.library.programs, key: program})
    own, assignment = onlooker.history, Assignment(NOBODY, key, monday)
    history = History(
        replace(onlooker.trainee, id=NOBODY),
        library,
        assignments=(assignment,),
        body_masses=own.body_masses if own else (),
        equipment=own.equipment if own else (),
    )
    return history, assignment, False


def _place_of(program: Program, given: Assignment, day: date, planned: TrainingDay) -> DayPlace:
    phase = phase_of_week(program, given.week_of(day))
    days = program.phases[phase].days
    same = next((at for at, each in enumerate(days) if each is planned), None)
    return DayPlace(phase, days.index(planned) if same is None else same)
