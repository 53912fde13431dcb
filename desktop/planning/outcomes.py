"""Outcomes: what a saved session meant for each line, and what a change of a session would do."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from datetime import date

from db.repository import Repository
from desktop.planning.history import History, read_history
from desktop.planning.schedule import DAY, line_days
from desktop.planning.standing import standing_on
from desktop.training.exercises import Exercise
from desktop.training.program import Line
from desktop.training.session import AskedSet, LineDone, Outcome, Session
from desktop.training.state import State, Step
from desktop.training.strip import strip
from desktop.training.target import StripVariable, Target


@dataclass(frozen=True, slots=True)
class LineOutcome:
    """One line after a session: how it went, the step that followed (None: none was taken), and
    what the next session asks.

    ``asked`` is what this session asked (empty: nothing was stored), ``target`` what is asked on
    ``next_day``; ``planned`` False: the program names no such day, the next is taken. ``state``
    and ``strip``: where the line stands then; ``strip_before``: where it stood in the session.
    """

    line: Line
    exercise: Exercise
    outcome: Outcome | None
    step: Step | None
    asked: tuple[AskedSet, ...]
    target: Target
    next_day: date
    planned: bool
    state: State
    strip: tuple[StripVariable, ...] = ()
    strip_before: tuple[StripVariable, ...] = ()


@dataclass(frozen=True, slots=True)
class Effect:
    """What a change of the record does to one line: its next target before and after."""

    line: Line
    exercise: Exercise
    day: date
    before: Target
    after: Target


def outcomes_of(history: History, session: Session) -> tuple[LineOutcome, ...]:
    """What a session meant for each of its lines, in the session's order; it is in the record.

    The next target is that after everything on record, also where an old session was saved.
    """
    return tuple(_outcome(history, session, part) for part in _first_of_each_line(session))


def effect_of(
    repository: Repository, before: Session | None, after: Session | None
) -> tuple[Effect, ...]:
    """The lines whose next target differs if session ``before`` became ``after``.

    ``before`` None: a session is added; ``after`` None: it is removed. Nothing is written.
    Raises ValueError without any session, or where the two are of different trainees.
    """
    given = [session for session in (before, after) if session is not None]
    if not given or len({session.trainee_id for session in given}) > 1:
        raise ValueError("give the session before, after, or both of one trainee")
    was = read_history(repository, given[0].trainee_id)
    kept = [one for one in was.sessions if before is None or one.id != before.id]
    will_be = was.with_sessions((*kept, after) if after is not None else kept)
    return effects_between(was, will_be, (part.line_id for one in given for part in one.lines))


def effects_between(was: History, will_be: History, line_ids: Iterable[int]) -> tuple[Effect, ...]:
    """Those of the lines whose next target differs between two records of one trainee."""
    effects = (_effect(was, will_be, line_id) for line_id in dict.fromkeys(line_ids))
    return tuple(one for one in effects if differs(one.before, one.after))


def differs(before: Target, after: Target) -> bool:
    """Whether two targets ask something different; the reasons may differ all the same."""
    return before.position != after.position or before.sets != after.sets


def _outcome(history: History, session: Session, part: LineDone) -> LineOutcome:
    line = history.line(part.line_id)
    day, planned = _next_day(history, line, session.day)
    standing = standing_on(history, day, line)
    steps = [one for one in standing.replay.steps if one.session_id == session.id]
    step = steps[-1] if steps else None
    stood = replace(standing.state, position=step.before if step else None)
    return LineOutcome(
        line=line,
        exercise=standing.exercise,
        outcome=step.outcome if step else None,
        step=step,
        asked=part.asked,
        target=standing.target,
        next_day=day,
        planned=planned,
        state=standing.state,
        strip=strip(standing.state, history.context),
        strip_before=strip(stood, history.context),
    )


def _effect(was: History, will_be: History, line_id: int) -> Effect:
    line = was.line(line_id)
    last = max((one.day for one in (*was.sessions, *will_be.sessions)), default=date.min)
    day, _ = _next_day(was, line, last)
    before, after = (standing_on(history, day, line) for history in (was, will_be))
    return Effect(line, before.exercise, day, before.target, after.target)


def _next_day(history: History, line: Line, after: date) -> tuple[date, bool]:
    """The line's next training day after everything on record, and whether it is planned."""
    recorded = [session.day for session, _ in history.done(line.id)] if line.id else []
    last = max((after, *recorded))
    days = line_days(history, line.exercise, line.name, last, 1)
    return (days[0], True) if days else (last + DAY, False)


def _first_of_each_line(session: Session) -> tuple[LineDone, ...]:
    by_line: dict[int, LineDone] = {}
    for part in session.lines:
        by_line.setdefault(part.line_id, part)
    return tuple(by_line.values())
