"""What the program editor shows of one phase, computed before any widget is touched."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date

from desktop.planning.outlook import Onlooker, SlotOutlook, week_now
from desktop.planning.outlook_memory import OutlookMemory
from desktop.planning.wishes import likely_first, wishes_of
from desktop.training.balance import Finding, findings
from desktop.training.exercises import Exercise, Pattern
from desktop.training.position import Position, SchemeKind
from desktop.training.program import Assignment, Phase, PhasePurpose, Program, Slot, TrainingDay
from desktop.training.program_edits import SlotPlace, slot_at
from desktop.training.quantities import Unit
from desktop.training.schedule import session_minutes, volume_planned
from desktop.training.trainee import Trainee
from desktop.training.volume import Volume
from views.day_block import DayFace
from views.exercise_words import pattern_word
from views.range_row import RuleScene
from views.slot_face import slot_face
from views.slot_panel import PanelScene

_MOST_HELD = 3


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
        )


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
            _day_face(day, seen, onlooker, positions)
            for day, seen in zip(phase.days, outlooks, strict=True)
        ),
        volume=volume_planned(phase, exercises, wishes.sessions_a_week, wishes.position_of),
        found=tuple(f for f in findings(program, likely, wishes) if f.phase == at),
        exercises=exercises,
        offered=offered,
    )


def held_words(day: TrainingDay, exercises: Mapping[str, Exercise]) -> str:
    """What a day holds, by its patterns: "squat, horizontal push, horizontal pull"."""
    patterns = dict.fromkeys(
        exercises[slot.exercise].pattern for slot in day.slots if slot.exercise in exercises
    )
    held = [pattern_word(each) for each in patterns if each is not Pattern.SINGLE_JOINT]
    return ", ".join(held[:_MOST_HELD])


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


def _day_face(
    day: TrainingDay,
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
            slot_face(slot, seen, unit, onlooker.today)
            for slot, seen in zip(day.slots, outlooks, strict=True)
        ),
        unit=unit,
    )
