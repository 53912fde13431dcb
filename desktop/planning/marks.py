"""Marks: what happened beside the training that a chart of one line shows."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from enum import StrEnum

from desktop.planning.history import History
from desktop.planning.schedule import assignment_on, deload_windows, phase_spans
from desktop.training.program import Line, PhasePurpose


class MarkKind(StrEnum):
    """What a mark stands for."""

    DELOAD = "deload"
    ABSENCE = "absence"
    PROGRAM = "program"
    PHASE = "phase"
    BODY_MASS = "body mass"
    PAIN = "pain"


@dataclass(frozen=True, slots=True)
class Mark:
    """Something on a day or span (``last`` included). ``label`` is the coach's own word or a
    code (away, illness, injury); ``value`` grams of body mass, or pain 0-10.
    """

    kind: MarkKind
    first: date
    last: date
    label: str = ""
    value: int = 0


def marks_of(history: History, line: Line, today: date) -> tuple[Mark, ...]:
    """The marks of one line by first day; spans that are still going on end ``today``."""
    marks = [
        *(Mark(MarkKind.DELOAD, d.first, d.last, d.note) for d in deload_windows(history)),
        *(
            Mark(MarkKind.ABSENCE, a.first, a.last or max(today, a.first), a.kind.value)
            for a in history.absences
        ),
        *(Mark(MarkKind.BODY_MASS, m.day, m.day, value=m.mass_g) for m in history.body_masses),
        *_program_marks(history),
        *_pain_marks(history, line),
    ]
    return tuple(sorted(marks, key=lambda mark: (mark.first, mark.kind)))


def _program_marks(history: History) -> list[Mark]:
    marks: list[Mark] = []
    for assignment in history.assignments:
        program = history.library.programs[assignment.program_id]
        for index, span in enumerate(phase_spans(assignment, program)):
            if assignment_on(history.assignments, span.first) != assignment:
                continue
            if index and span.phase.purpose is PhasePurpose.DELOAD:
                continue  # its deload window says so already
            kind, label = (
                (MarkKind.PHASE, span.phase.name) if index else (MarkKind.PROGRAM, program.name)
            )
            marks.append(Mark(kind, span.first, span.first, label))
    return marks


def _pain_marks(history: History, line: Line) -> list[Mark]:
    done = history.done(line.id) if line.id is not None else ()
    alike = {id(part): part for _, part in done}  # a chart reads parts alike as one object
    hurt = {each: part.worst_pain for each, part in alike.items()}
    return [
        Mark(MarkKind.PAIN, session.day, session.day, value=hurt[id(part)])
        for session, part in done
        if hurt[id(part)]
    ]
