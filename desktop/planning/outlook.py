"""Outlook: where each slot of a program stands and what its next sessions ask, if all goes well.

For a trainee whom the program runs for, from their record; for anybody else, or nobody, from the
slot's own start with what they own (nobody: whatever the exercise lists).
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from datetime import date, timedelta
from typing import Final

from desktop.planning.history import History, Library
from desktop.planning.lines import PROGRAM_START
from desktop.planning.schedule import (
    DAY,
    PhaseSpan,
    assignment_on,
    deload_windows,
    line_days,
    phase_spans,
)
from desktop.planning.standing import line_for, standing_on
from desktop.planning.surroundings import equipment_on, surroundings_on
from desktop.training.asking import follow_target, starting_state
from desktop.training.equipment import Equipment
from desktop.training.exercises import Exercise
from desktop.training.position import Position, Surroundings, Variable
from desktop.training.preview import Ahead, unroll
from desktop.training.program import Assignment, LineStart, Phase, Program, Slot
from desktop.training.reasons import ReasonCode
from desktop.training.scale import ALL_FAMILIES, family_of, main_family
from desktop.training.state import Context, State
from desktop.training.strip import strip
from desktop.training.target import StripVariable, Target
from desktop.training.trainee import Trainee
from desktop.training.volume import exercise_of

SESSIONS: Final = 8

_NOBODY: Final = Trainee(name="")


@dataclass(frozen=True, slots=True)
class NextSession:
    """What one session to come asks; ``rolls_over``: a slower variable moved to get there;
    ``missed``: it is imagined as missed.
    """

    day: date
    position: Position
    rolls_over: bool = False
    deload: bool = False
    missed: bool = False


@dataclass(frozen=True, slots=True)
class SlotOutlook:
    """One slot: the strip of its counter and the sessions to come. ``position`` None: a start is
    needed. ``real``: it stands where a trainee stands, not at the slot's start.
    """

    exercise: Exercise
    position: Position | None
    around: Surroundings
    strip: tuple[StripVariable, ...] = ()
    sessions: tuple[NextSession, ...] = ()
    real: bool = False


@dataclass(frozen=True, slots=True)
class Onlooker:
    """For whom a program is looked at: everybody's library, and a trainee's record if one is
    chosen.
    """

    library: Library
    today: date
    history: History | None = None

    @property
    def trainee(self) -> Trainee:
        """The trainee, or a stand-in of whom nothing is known."""
        return self.history.trainee if self.history else _NOBODY

    @property
    def equipment(self) -> Equipment | None:
        """What the trainee has now; None where nothing is recorded."""
        return equipment_on(self.history.equipment, self.today) if self.history else None

    def assignment_of(self, program: Program) -> Assignment | None:
        """The trainee's assignment of ``program`` that runs today, or the next one to begin."""
        if self.history is None or program.id is None:
            return None
        running = assignment_on(self.history.assignments, self.today)
        if running is not None and running.program_id == program.id:
            return running
        coming = (
            one
            for one in self.history.assignments
            if one.program_id == program.id and one.start > self.today and one.ended is None
        )
        return next(coming, None)

    def with_program(self, program: Program) -> Onlooker:
        """The same with ``program`` as it stands in the editor in place of the stored one."""
        if program.id is None:
            return self
        programs = {**self.library.programs, program.id: program}
        library = replace(self.library, programs=programs)
        history = replace(self.history, library=library) if self.history else None
        return replace(self, library=library, history=history)


def week_now(program: Program, onlooker: Onlooker) -> int | None:
    """The week of the program that runs today (from 1); None where it does not run."""
    assignment = onlooker.assignment_of(program)
    if assignment is None or assignment.start > onlooker.today:
        return None
    week = assignment.week_of(onlooker.today)
    return week if 1 <= week <= program.weeks else None


def outlook(
    program: Program,
    phase_index: int,
    slot: Slot,
    onlooker: Onlooker,
    count: int = SESSIONS,
    *,
    miss_every: int | None = None,
) -> SlotOutlook:
    """Where ``slot`` of one phase stands and its next ``count`` sessions; with ``miss_every`` one
    in so many is imagined as missed. Raises UnknownExercise.
    """
    exercise = exercise_of(onlooker.library.exercises, slot.exercise)
    span = _span(program, phase_index, onlooker)
    if span is not None and onlooker.history is not None:
        return _real_outlook(
            exercise, slot, span, onlooker.history, onlooker.today, count, miss_every
        )
    around = _around(exercise, slot, onlooker)
    days = _days_in_turn(program.phases[phase_index], slot, onlooker.today, count)
    state = _start_state(slot, around, onlooker.today, onlooker.library.context)
    leader = _leader_slot(program.phases[phase_index], slot)
    context = onlooker.library.context
    if leader is not None:
        leading = _start_state(leader, around, onlooker.today, context)
        ahead = _followed(unroll(leading, days, context, miss_every=miss_every), state)
    else:
        ahead = list(unroll(state, days, context, miss_every=miss_every))
    return _outlook(exercise, state, ahead, context, real=False)


def _real_outlook(
    exercise: Exercise,
    slot: Slot,
    span: PhaseSpan,
    history: History,
    today: date,
    count: int,
    miss_every: int | None,
) -> SlotOutlook:
    """From the trainee's record: today within the running phase, else the phase's first day."""
    first = today if span.first <= today <= span.last else span.first
    line = line_for(history, slot, span.first)
    standing = standing_on(history, first, line)
    state, context = standing.state, history.context
    if first > today:
        state = replace(state, vouched=first - DAY)
    days = line_days(history, slot.exercise, slot.line_name, first - DAY, count)
    if not days:
        return _outlook(exercise, state, [], context, real=True)
    deloads = deload_windows(history)
    follow = state.rule.follow
    leader = history.line_of(slot.exercise, follow.line_name) if follow else None
    if follow is not None and leader is not None and follow.line_name != slot.line_name:
        leading = standing_on(history, first, leader).state
        ahead = _followed(
            unroll(leading, days, context, deloads=deloads, miss_every=miss_every), state
        )
    else:
        ahead = list(unroll(state, days, context, deloads=deloads, miss_every=miss_every))
    return _outlook(exercise, state, ahead, context, real=True)


def _outlook(
    exercise: Exercise, state: State, ahead: Sequence[Ahead], context: Context, *, real: bool
) -> SlotOutlook:
    return SlotOutlook(
        exercise=exercise,
        position=state.position,
        around=state.surroundings,
        strip=strip(state, context),
        sessions=_sessions(state, ahead),
        real=real,
    )


def _sessions(state: State, ahead: Sequence[Ahead]) -> tuple[NextSession, ...]:
    """The targets as sessions; a deload is shown, and what follows is held against what was."""
    sessions: list[NextSession] = []
    slower = [ranged.variable for ranged in state.rule.ranges[1:]]
    before: Position | None = None
    for place, each in enumerate(ahead):
        target = each.target
        if target.position is None or not target.sets:
            continue
        rolled = _moved(before, target.position, slower) if before else _rolled_today(target)
        sessions.append(
            NextSession(
                each.day, target.position, rolled and not target.deload, target.deload, each.missed
            )
        )
        if not target.deload or place == 0:
            before = target.position
    return tuple(sessions)


def _moved(before: Position, after: Position, slower: Sequence[Variable]) -> bool:
    return any(
        before.variation != after.variation
        if variable is Variable.VARIATION
        else before.value(variable) != after.value(variable)
        for variable in slower
    )


def _rolled_today(target: Target) -> bool:
    return target.reason.code is ReasonCode.ROLL_OVER


def _followed(leading: Iterable[Ahead], own: State) -> list[Ahead]:
    """The sessions of a line that asks a share of what the leading one is asked."""
    return [
        replace(
            each,
            target=follow_target(each.target, own.rule, own.surroundings, own.position, own.held),
        )
        for each in leading
    ]


def _span(program: Program, phase_index: int, onlooker: Onlooker) -> PhaseSpan | None:
    """The phase's days for the trainee, where the program runs and the phase is not over."""
    assignment = onlooker.assignment_of(program)
    if assignment is None:
        return None
    phase = program.phases[phase_index]
    monday = assignment.start - timedelta(days=assignment.start.weekday())
    monday += sum(each.weeks for each in program.phases[:phase_index]) * timedelta(days=7)
    first = max(monday, assignment.start)
    last = monday + phase.weeks * timedelta(days=7) - DAY
    spans = [each for each in phase_spans(assignment, program) if each.first == first]
    return PhaseSpan(phase, first, last) if spans and last >= onlooker.today else None


def _around(exercise: Exercise, slot: Slot, onlooker: Onlooker) -> Surroundings:
    return surroundings_on(
        exercise,
        onlooker.trainee,
        onlooker.equipment,
        onlooker.history.body_mass_on(onlooker.today) if onlooker.history else None,
        family=_family(exercise, slot),
        also=frozenset(_named(slot)),
    )


def _named(slot: Slot) -> set[str]:
    ranged = slot.rule.range_of(Variable.VARIATION)
    ends = (ranged.easiest, ranged.hardest) if ranged else ()
    return {key for key in (slot.start.variation, *ends) if key}


def _family(exercise: Exercise, slot: Slot) -> str:
    """The family of the variations that the slot names; all of them where it names several."""
    families = {family_of(exercise, key) for key in _named(slot)}
    return (
        families.pop()
        if len(families) == 1
        else ALL_FAMILIES
        if families
        else main_family(exercise)
    )


def _start_state(slot: Slot, around: Surroundings, today: date, context: Context) -> State:
    start = LineStart(today, slot.start, kind=PROGRAM_START)
    return starting_state(start, slot.rule, around, context)


def _leader_slot(phase: Phase, slot: Slot) -> Slot | None:
    follow = slot.rule.follow
    if follow is None or follow.line_name == slot.line_name:
        return None
    every = (each for day in phase.days for each in day.slots)
    wanted = (slot.exercise, follow.line_name)
    return next((each for each in every if (each.exercise, each.line_name) == wanted), None)


def _days_in_turn(phase: Phase, slot: Slot, today: date, count: int) -> list[date]:
    """Days as far apart as the week allows, so that no gap comes into what is imagined."""
    times = sum(
        any(
            (each.exercise, each.line_name) == (slot.exercise, slot.line_name) for each in day.slots
        )
        for day in phase.days
    )
    apart = max(1, 7 // max(times, 1))
    return [today + timedelta(days=apart * number) for number in range(count)]
