"""What the program editor shows of one phase, computed before any widget is touched."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from datetime import date

from desktop.planning.line_changes import ChangeKind, line_changes, rule_now
from desktop.planning.more_days import MoreDay, more_days
from desktop.planning.outlook import Onlooker, SlotOutlook, week_now
from desktop.planning.outlook_memory import OutlookMemory
from desktop.planning.percent_starts import percent_start
from desktop.planning.wishes import likely_first, wishes_of
from desktop.training.balance import Finding, findings
from desktop.training.equipment import Equipment
from desktop.training.exercises import Exercise
from desktop.training.position import Position, ProgressionRule, SchemeKind
from desktop.training.program import Assignment, Phase, PhasePurpose, Program, Slot, TrainingDay
from desktop.training.program_edits import SlotPlace, slot_at
from desktop.training.quantities import Unit
from desktop.training.schedule import session_minutes, volume_planned
from desktop.training.trainee import Trainee
from desktop.training.volume import Volume
from views.assessment_words import tested_row_text
from views.changes_list import ChangesScene, start_text
from views.day_block import DayFace
from views.day_words import held_words
from views.range_row import RuleScene
from views.slot_face import slot_face
from views.slot_panel import PanelScene


@dataclass(frozen=True, slots=True)
class ProgramScene:
    """One phase of a program as somebody looks at it."""

    program: Program
    at: int
    week: int | None
    trainee: Trainee | None
    assignment: Assignment | None
    unit: Unit
    today: date
    outlooks: tuple[tuple[SlotOutlook, ...], ...]
    days: tuple[DayFace, ...]
    volume: Volume
    found: tuple[Finding, ...]
    exercises: Mapping[str, Exercise]
    offered: tuple[Exercise, ...]
    owned: Equipment | None = None
    more_days: tuple[MoreDay, ...] = ()
    others: tuple[str, ...] = ()
    onlooker: Onlooker | None = None

    @property
    def phase(self) -> Phase:
        """The phase looked at."""
        return self.program.phases[self.at]

    def panel_scene(self, place: SlotPlace) -> PanelScene:
        """What the slot at ``place`` is edited against."""
        slot = slot_at(self.program, place)
        seen = self.outlooks[place.day][place.slot]
        lines = {
            each.line_name
            for phase in self.program.phases
            for day in phase.days
            for each in day.slots
            if each.exercise == slot.exercise
        }
        total = slot.rule.scheme.kind is SchemeKind.TOTAL
        return PanelScene(
            RuleScene(seen.exercise, seen.around, self.unit, total),
            tuple(sorted(lines)),
            self.offered,
            changes_scene(slot, seen.exercise, self.program, self.onlooker),
            self._own_rule(slot),
        )

    def _own_rule(self, slot: Slot) -> ProgressionRule | None:
        """The rule that holds for the trainee of this program today."""
        history = self.onlooker.history if self.onlooker else None
        if history is None or self.assignment is None:
            return None
        return rule_now(history, slot, self.assignment, self.today)


def program_scene(
    program: Program, at: int, onlooker: Onlooker, memory: OutlookMemory | None = None
) -> ProgramScene:
    """Compute what is shown of the phase at ``at``; what ``memory`` knows is not computed again.

    Raises UnknownExercise.
    """
    exercises = onlooker.library.exercises
    known = memory or OutlookMemory()
    phase = program.phases[at]
    outlooks = tuple(
        tuple(
            known.outlook(program, SlotPlace(at, number, place), onlooker)
            for place in range(len(day.slots))
        )
        for number, day in enumerate(phase.days)
    )
    positions = _positions(phase, outlooks)
    unit = onlooker.trainee.unit
    offered = tuple(each for each in exercises.values() if not each.retired)
    wishes = wishes_of(onlooker, positions)
    likely = likely_first(exercises, program, phase)
    return ProgramScene(
        program=program,
        at=at,
        week=week_now(program, onlooker),
        trainee=onlooker.history.trainee if onlooker.history else None,
        assignment=onlooker.assignment_of(program),
        unit=unit,
        today=onlooker.today,
        outlooks=outlooks,
        days=tuple(
            _of_tests(_day_face(day, program, seen, onlooker, positions), phase, exercises)
            for day, seen in zip(phase.days, outlooks, strict=True)
        ),
        volume=volume_planned(phase, exercises, wishes.sessions_a_week, wishes.position_of),
        found=tuple(f for f in findings(program, likely, wishes) if f.phase == at),
        exercises=exercises,
        offered=offered,
        owned=onlooker.equipment,
        more_days=_more_days(program, at, onlooker),
        onlooker=onlooker.with_program(program),
    )


def running_phase(program: Program, onlooker: Onlooker) -> int:
    """The phase that runs today for the trainee chosen; the first where none does."""
    assignment = onlooker.assignment_of(program)
    week = assignment.week_of(onlooker.today) if assignment is not None else 0
    for place, phase in enumerate(program.phases):
        if week <= phase.weeks:
            return place
        week -= phase.weeks
    return 0


def changes_scene(
    slot: Slot, exercise: Exercise, program: Program, onlooker: Onlooker | None
) -> ChangesScene | None:
    """What is changed of a slot for the trainee chosen; None for nobody."""
    history = onlooker.history if onlooker is not None else None
    if onlooker is None or history is None:
        return None
    assignment = onlooker.assignment_of(program)
    if assignment is None and slot.rule.start_percent is None:
        return None
    changes = line_changes(history, slot, assignment) if assignment is not None else ()
    start = ""
    if slot.rule.start_percent is not None and assignment is None:
        start = start_text(percent_start(history, slot, onlooker.today), onlooker.trainee)
    return ChangesScene(
        onlooker.trainee.name,
        exercise,
        onlooker.trainee.unit,
        onlooker.today,
        changes,
        running=assignment is not None,
        start=start,
    )


def _more_days(program: Program, at: int, onlooker: Onlooker) -> tuple[MoreDay, ...]:
    here = onlooker.with_program(program).history
    return () if here is None else tuple(more_days(program, at, here, onlooker.today))


def _of_tests(face: DayFace, phase: Phase, exercises: Mapping[str, Exercise]) -> DayFace:
    """A day of tests asks no sets of its rules, and does not repeat."""
    if phase.purpose is not PhasePurpose.ASSESS:
        return face
    slots = zip(face.day.slots, face.slots, strict=True)
    return replace(
        face,
        slots=tuple(
            replace(
                each, asks=tested_row_text(exercises[slot.exercise].measure, slot.rest_s), cells=()
            )
            for slot, each in slots
        ),
    )


def _positions(phase: Phase, outlooks: tuple[tuple[SlotOutlook, ...], ...]) -> dict[Slot, Position]:
    """Where the slots stand; a deload asks less, but its days are measured like the others."""
    if phase.purpose is PhasePurpose.DELOAD:
        return {}
    return {
        slot: seen.position
        for day, row in zip(phase.days, outlooks, strict=True)
        for slot, seen in zip(day.slots, row, strict=True)
        if seen.position is not None
    }


def _changed_for(slot: Slot, program: Program, onlooker: Onlooker) -> str:
    """The trainee's name where the coach changed the slot's line for them; a start is no change."""
    assignment = onlooker.assignment_of(program)
    if onlooker.history is None or assignment is None:
        return ""
    changes = line_changes(onlooker.history, slot, assignment)
    changed = any(change.kind is not ChangeKind.START for change in changes)
    return onlooker.trainee.name if changed else ""


def _day_face(
    day: TrainingDay,
    program: Program,
    outlooks: tuple[SlotOutlook, ...],
    onlooker: Onlooker,
    positions: Mapping[Slot, Position],
) -> DayFace:
    unit = onlooker.trainee.unit
    minutes = session_minutes(
        day, onlooker.library.exercises, lambda slot: positions.get(slot, slot.start)
    )
    return DayFace(
        day=day,
        held=held_words(day, onlooker.library.exercises),
        minutes=round(minutes),
        slots=tuple(
            slot_face(slot, seen, unit, onlooker.today, _changed_for(slot, program, onlooker))
            for slot, seen in zip(day.slots, outlooks, strict=True)
        ),
        unit=unit,
    )
