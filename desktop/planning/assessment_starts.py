"""What becomes of starts as test sessions are saved, corrected, moved and removed, and what each
test changed.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from datetime import date

from db.repository import Repository
from desktop.planning.assessments import ASSESSMENT_START, read_test
from desktop.planning.history import History, read_history
from desktop.planning.lines import replay_of
from desktop.planning.schedule import place_on, slot_in_phase
from desktop.training.exercises import Exercise
from desktop.training.position import Position
from desktop.training.program import Line, PhasePurpose
from desktop.training.session import LineDone, Session


@dataclass(frozen=True, slots=True)
class StartRead:
    """What one test changed: where its line stood, and where it starts now (None: nothing could
    be read, and ``why``). ``plus_minus``: by which fraction the start may be off (None: not known).
    """

    line: Line
    exercise: Exercise
    before: Position | None
    after: Position | None
    plus_minus: float | None = None
    why: str = ""


def starts_read(history: History, session: Session) -> dict[int, StartRead]:
    """What each test of a session on record changed, by line."""
    return {part.line_id: _start_read(history, session, part) for part in _tests((session,))}


def lines_to_save(
    repository: Repository, before: Sequence[Session], after: Sequence[Session]
) -> tuple[Line, ...]:
    """The lines with other starts once the sessions ``before`` (of one trainee) are those
    ``after``: to be saved with them. Their lines must exist; nothing is written here.
    """
    if not _tests((*before, *after)):
        return ()
    history = read_history(repository, (*before, *after)[0].trainee_id)
    gone = {one.id for one in before}
    kept = [one for one in history.sessions if one.id not in gone]
    will_be = with_starts(history.with_sessions((*kept, *after)), before, after)
    was = {line.id: line for line in history.lines}
    return tuple(line for line in will_be.lines if line != was[line.id])


def with_starts(will_be: History, before: Sequence[Session], after: Sequence[Session]) -> History:
    """A record in which ``before`` have become ``after``, with the starts that their tests give
    in place of those that they gave.
    """
    lines = {line.id: line for line in will_be.lines}
    for session in before:
        for part in _tests((session,)):
            lines[part.line_id] = _without(lines[part.line_id], session.day)
    will_be = replace(will_be, lines=tuple(lines.values()))
    for session in after:
        for part in _tests((session,)):
            if part.line_id in lines:
                lines[part.line_id] = read_test(will_be, session, part).line
    return replace(will_be, lines=tuple(lines.values()))


def _tests(sessions: Iterable[Session]) -> tuple[LineDone, ...]:
    return tuple(part for session in sessions for part in session.lines if part.test)


def _start_read(history: History, session: Session, part: LineDone) -> StartRead:
    read = read_test(history, session, part)
    line = _without(history.line(part.line_id), session.day)
    return StartRead(
        line=read.line,
        exercise=history.exercise_of(line),
        before=_stood(history, line, session.day),
        after=read.start.position if read.start else None,
        plus_minus=read.start.plus_minus if read.start else None,
        why=read.why,
    )


def _stood(history: History, line: Line, day: date) -> Position | None:
    """Where a line stood before the sessions of ``day``; never trained: where it was to begin."""
    begun = bool(line.starts) or (line.id is not None and bool(history.done(line.id, day)))
    if begun:
        return replay_of(history, line, day).state.position
    place = place_on(history, day)
    if place is None:
        return None
    for phase in place.program.phases:
        slot = slot_in_phase(phase, line.exercise, line.name)
        if slot is not None and phase.purpose is PhasePurpose.BUILD:
            return slot.start
    return None


def _without(line: Line, day: date) -> Line:
    """The line without the start that a test of ``day`` gave."""
    kept = [one for one in line.starts if (one.kind, one.day) != (ASSESSMENT_START, day)]
    return replace(line, starts=tuple(kept))
