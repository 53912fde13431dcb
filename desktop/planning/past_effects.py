"""What a change of the past does today, before it is saved: targets, bests and cautions."""

from __future__ import annotations

from collections.abc import Iterable, Sequence, Set
from dataclasses import dataclass, replace
from datetime import date

from db.repository import Repository
from desktop.planning.assessment_starts import with_starts
from desktop.planning.cautions import cautions_in
from desktop.planning.history import History, read_history
from desktop.planning.outcomes import Effect, effects_between
from desktop.planning.progress import best_of
from desktop.planning.schedule import DAY
from desktop.planning.standing import standing_on
from desktop.training.exercises import Exercise
from desktop.training.program import Line
from desktop.training.recovery import Caution
from desktop.training.replay import StepChange, what_changed
from desktop.training.session import LineDone, Session, SetDone


@dataclass(frozen=True, slots=True)
class BestChange:
    """The best set of one line before and after; None: there is none."""

    line: Line
    exercise: Exercise
    before: SetDone | None
    after: SetDone | None


@dataclass(frozen=True, slots=True)
class StepsChange:
    """Other sessions of one line that count differently, or lead elsewhere; oldest first."""

    line: Line
    exercise: Exercise
    steps: tuple[StepChange, ...]


@dataclass(frozen=True, slots=True)
class PastEffect:
    """Everything of today that a change of the past changes. ``later``: whether sessions of the
    same lines follow, which went on as they were asked.
    """

    targets: tuple[Effect, ...] = ()
    steps: tuple[StepsChange, ...] = ()
    bests: tuple[BestChange, ...] = ()
    raised: tuple[Caution, ...] = ()
    settled: tuple[Caution, ...] = ()
    later: bool = False

    @property
    def none(self) -> bool:
        """Whether nothing changes."""
        return not (self.targets or self.steps or self.bests or self.raised or self.settled)


def past_effect(
    repository: Repository,
    before: Sequence[Session],
    after: Sequence[Session],
    today: date,
    new_lines: Sequence[Line] = (),
) -> PastEffect:
    """What it does if the sessions ``before`` (of one trainee) become those ``after``. Nothing is
    written. ``new_lines``: lines that do not exist yet, with ids below 0 that ``after`` refers to.

    Raises ValueError without any session, or where they are of different trainees.
    """
    trainees = {one.trainee_id for one in (*before, *after)}
    if len(trainees) != 1:
        raise ValueError("give sessions of one trainee")
    read = read_history(repository, trainees.pop())
    was = replace(read, lines=(*read.lines, *new_lines))
    gone = {one.id for one in before}
    kept = [one for one in was.sessions if one.id not in gone]
    will_be = with_starts(was.with_sessions((*kept, *after)), before, after)
    concerned = {part.line_id for one in (*before, *after) for part in one.lines}
    line_ids = _changed_lines(was, will_be, before, after)
    raised, settled = _cautions(was, will_be, today)
    return PastEffect(
        effects_between(was, will_be, line_ids),
        tuple(_steps_changes(was, will_be, line_ids, gone | {one.id for one in after})),
        tuple(_best_changes(was, will_be, line_ids)),
        raised,
        settled,
        later=_later(kept, (*before, *after), concerned),
    )


def _changed_lines(
    was: History, will_be: History, before: Sequence[Session], after: Sequence[Session]
) -> tuple[int, ...]:
    """The lines of these sessions that are told something else, and those that may follow one."""
    told, new = _told(before), _told(after)
    line_ids = dict.fromkeys((*told, *new))
    exercises = {
        was.line(key).exercise
        for key in line_ids
        if told.get(key) != new.get(key) or was.line(key) != will_be.line(key)
    }
    return tuple(key for key in line_ids if was.line(key).exercise in exercises)


def _told(sessions: Iterable[Session]) -> dict[int, list[tuple[date, int, int | None, LineDone]]]:
    """What sessions tell each line."""
    by_line: dict[int, list[tuple[date, int, int | None, LineDone]]] = {}
    for one in sessions:
        for part in one.lines:
            told = (one.day, one.entry, one.id, part)
            by_line.setdefault(part.line_id, []).append(told)
    return by_line


def _later(kept: Iterable[Session], touched: Sequence[Session], line_ids: set[int]) -> bool:
    last = max(one.day for one in touched)
    return any(one.day > last and any(p.line_id in line_ids for p in one.lines) for one in kept)


def _steps_changes(
    was: History, will_be: History, line_ids: Sequence[int], touched: Set[int | None]
) -> Iterable[StepsChange]:
    day = _last_day(was, will_be) + DAY
    for line_id in line_ids:
        line = was.line(line_id)
        before, after = (standing_on(history, day, line).replay for history in (was, will_be))
        steps = tuple(
            change
            for change in what_changed(before, after)
            if change.session_id is not None and change.session_id not in touched
        )
        if steps:
            yield StepsChange(line, was.exercise_of(line), steps)


def _last_day(was: History, will_be: History) -> date:
    return max((one.day for one in (*was.sessions, *will_be.sessions)), default=date.min)


def _best_changes(was: History, will_be: History, line_ids: Sequence[int]) -> Iterable[BestChange]:
    last = _last_day(was, will_be)
    for line_id in line_ids:
        line = was.line(line_id)
        around = standing_on(will_be, last + DAY, line).state.surroundings
        before, after = (
            best_of(done, around) if done else None
            for done in (
                [each for _, part in history.trained(line) for each in part.working_sets]
                for history in (was, will_be)
            )
        )
        if _work(before) != _work(after):
            yield BestChange(line, was.exercise_of(line), before, after)


def _work(done: SetDone | None) -> tuple[object, ...] | None:
    return None if done is None else (done.load_g, done.reps, done.seconds, done.variation)


def _cautions(
    was: History, will_be: History, today: date
) -> tuple[tuple[Caution, ...], tuple[Caution, ...]]:
    before, after = (cautions_in(history, today) for history in (was, will_be))
    known, stay = ({(c.limit, c.line_id) for c in each} for each in (before, after))
    raised = tuple(c for c in after if (c.limit, c.line_id) not in known)
    return raised, tuple(c for c in before if (c.limit, c.line_id) not in stay)
