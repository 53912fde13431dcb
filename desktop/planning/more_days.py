"""More days: which lines of a running program are ready for one more day a week, and taking it."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import date

from desktop.planning.history import History
from desktop.planning.schedule import assignment_on
from desktop.planning.standing import LineKey, key_of, line_for, standing_on
from desktop.training.exercises import Exercise
from desktop.training.frequency import propose_day
from desktop.training.program import Assignment, Phase, Program, Slot, TrainingDay
from desktop.training.program_edits import DayPlace, SlotPlace, add_day, add_slot
from desktop.training.reasons import Reason


@dataclass(frozen=True, slots=True)
class MoreDay:
    """A line of one phase that is ready for one more day; ``weekday`` (0 = Monday) on which it
    fits, None where none does: ``why`` says which days forbid it.
    """

    phase: int
    slot: Slot
    exercise: Exercise
    why: Reason
    weekday: int | None = None


def more_days(program: Program, phase_at: int, history: History, today: date) -> list[MoreDay]:
    """The proposals for a phase of the program that runs for the trainee today; empty where
    another one runs, or where days are done in turn: these have no weekdays to choose from.
    """
    assignment = assignment_on(history.assignments, today)
    if assignment is None or program.id is None or assignment.program_id != program.id:
        return []
    phase = program.phases[phase_at]
    if program.phase_of_week(assignment.week_of(today)) != phase:
        return []
    if any(day.weekday is None for day in phase.days):
        return []
    found: dict[LineKey, MoreDay] = {}
    for slot in (slot for day in phase.days for slot in day.slots):
        if slot.rule.frequency is None or key_of(slot) in found:
            continue
        proposed = _proposed(slot, phase, assignment, history, today)
        if proposed is not None:
            found[key_of(slot)] = replace(proposed, phase=phase_at)
    return list(found.values())


def taken(program: Program, more: MoreDay, assignment: Assignment) -> Program:
    """The program with the line on one more day: on the day that is trained then already, else on
    a new one. Nothing else changes, and nothing starts anew.
    """
    if more.weekday is None:
        return program
    days = program.phases[more.phase].days
    for at, day in enumerate(days):
        if _weekday(days, at, assignment) == more.weekday:
            place = SlotPlace(more.phase, at, len(day.slots))
            return add_slot(program, place, more.slot)
    day = TrainingDay("", (more.slot,), more.weekday)
    return add_day(program, DayPlace(more.phase, len(days)), day)


def _proposed(
    slot: Slot, phase: Phase, assignment: Assignment, history: History, today: date
) -> MoreDay | None:
    assert slot.rule.frequency is not None
    exercises = history.library.exercises
    exercise = exercises[slot.exercise]
    line = line_for(history, slot, assignment.start)
    state = standing_on(history, today, line).state
    trained = {
        _weekday(phase.days, at, assignment)
        for at, day in enumerate(phase.days)
        if any(exercises[each.exercise].pattern is exercise.pattern for each in day.slots)
    }
    on = {
        _weekday(phase.days, at, assignment)
        for at, day in enumerate(phase.days)
        if any(key_of(each) == key_of(slot) for each in day.slots)
    }
    possible = history.trainee.weekdays or tuple(range(7))
    condition = slot.rule.frequency
    if len(on) >= condition.most:
        return None
    why = propose_day(state, condition, sorted(trained), possible, today)
    if why is None:
        return None
    weekday = why.get("weekday")
    return MoreDay(0, slot, exercise, why, weekday if isinstance(weekday, int) else None)


def _weekday(days: tuple[TrainingDay, ...], at: int, assignment: Assignment) -> int:
    """The weekday of a day as it is assigned in the end."""
    named, own = assignment.weekdays_on(date.max), days[at].weekday
    assert own is not None
    return named[at] if at < len(named) else own
