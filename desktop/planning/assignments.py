"""Assignments: what has to be saved so that a trainee trains by a program."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import date

from db.repository import Repository
from desktop.planning.history import History, read_history
from desktop.planning.lines import PROGRAM_START
from desktop.planning.percent_starts import with_percent_start
from desktop.planning.schedule import DAY
from desktop.training.program import Assignment, Line, LineStart, PhasePurpose, Program, Slot
from desktop.training.sentence import sentence


class CannotAssign(ValueError):
    """The program cannot be given to the trainee like this; the message says what is allowed."""


@dataclass(frozen=True, slots=True)
class NewAssignment:
    """What to save, in this order and at once: the assignment before it as ended, lines that do
    not exist yet, and the assignment itself.
    """

    assignment: Assignment
    ended: tuple[Assignment, ...] = ()
    lines: tuple[Line, ...] = ()

    @property
    def aggregates(self) -> tuple[Assignment | Line, ...]:
        """Everything to save."""
        return (*self.ended, *self.lines, self.assignment)


def assign(
    repository: Repository,
    trainee_id: int,
    program_id: int,
    start: date,
    weekdays: tuple[int, ...] = (),
) -> NewAssignment:
    """Give a program to a trainee from ``start`` on; nothing is saved here.

    What the trainee did until then ends the day before; an assignment that would begin later, or
    on the same day, has to be removed first. ``weekdays`` replace the days' own, in their order.
    Raises CannotAssign.
    """
    program = repository.program(program_id)
    if not any(phase.days for phase in program.phases):
        raise CannotAssign(
            sentence("{name} has no training day yet; it needs at least one", name=program.name)
        )
    if any(not 0 <= weekday <= 6 for weekday in weekdays):
        raise CannotAssign(sentence("weekdays are 0 (Monday) to 6 (Sunday)"))
    if len(set(weekdays)) != len(weekdays):
        raise CannotAssign(sentence("each weekday may be named once"))
    given = repository.assignments(trainee_id)
    later = [one for one in given if one.start >= start]
    if later:
        raise CannotAssign(
            sentence(
                "a program is assigned from {start} on already; remove that or start later",
                start=later[0].start,
            )
        )
    running = [one for one in given if one.ended is None or one.ended >= start]
    assignment = Assignment(trainee_id, program_id, start, weekdays)
    return NewAssignment(
        assignment,
        ended=tuple(replace(one, ended=start - DAY) for one in running),
        lines=lines_needed(repository, assignment),
    )


def lines_needed(repository: Repository, assignment: Assignment) -> tuple[Line, ...]:
    """The lines that the program's slots refer to and the trainee does not have yet, each with
    the start of the first slot that trains it (or else tests it); and those that the slot starts
    at a percentage of the maximum, with that start; to be saved.
    """
    program = repository.program(assignment.program_id)
    known = {(line.exercise, line.name): line for line in repository.lines(assignment.trainee_id)}
    history: History | None = None
    needed: dict[tuple[str, str], Line] = {}
    seen: set[tuple[str, str]] = set()
    for slot in _training_first(program):
        key = (slot.exercise, slot.line_name)
        if key in seen:
            continue
        seen.add(key)
        start = LineStart(assignment.start, slot.start, kind=PROGRAM_START)
        line = known.get(key) or Line(assignment.trainee_id, *key, starts=(start,))
        if slot.rule.start_percent is not None:
            history = history or read_history(repository, assignment.trainee_id)
            reckoned = with_percent_start(history, line, slot, assignment.start)
            if reckoned is not None:
                needed[key] = reckoned
                continue
        if key not in known:
            needed[key] = line
    return tuple(needed.values())


def _training_first(program: Program) -> tuple[Slot, ...]:
    tests = tuple(phase for phase in program.phases if phase.purpose is PhasePurpose.ASSESS)
    others = tuple(phase for phase in program.phases if phase.purpose is not PhasePurpose.ASSESS)
    return slots_of(replace(program, phases=(*others, *tests)))


def slots_of(program: Program) -> tuple[Slot, ...]:
    """Every slot of a program, phase by phase and day by day."""
    return tuple(slot for phase in program.phases for day in phase.days for slot in day.slots)
