"""From noted training to the record: a draft of one day for the form, or the sessions of several.

Only what is certain is taken. A day that has a session already gets the exercises that it has not.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date
from typing import Any, Final

from db.changes import Changes, Kind
from db.repository import Repository
from desktop.planning.days import DayPlan, SlotPlan, day_plan, day_plan_of
from desktop.planning.history import History, read_history
from desktop.planning.noted import Noted, ProposedDay, ProposedLine, remembered
from desktop.planning.opened_draft import (
    draft_of_plan,
    kind_of,
    line_of_slot,
    slot_of_line,
    typed_sets,
)
from desktop.planning.session_draft import LineDraft, SessionDraft
from desktop.training.exercises import Exercise
from desktop.training.program import Line
from desktop.training.session import LineDone, Session, SetDone

_KINDS: Final = frozenset({Kind.SESSION, Kind.LINE, Kind.REMEMBERED_NAME})


@dataclass(frozen=True, slots=True)
class Takeable:
    """What of noted training can be taken: ``days`` with their certain exercises; ``waiting``
    exercises that a question hangs on; ``there``: on a day that has them already.
    """

    days: tuple[ProposedDay, ...]
    waiting: int = 0
    there: int = 0

    @property
    def sets(self) -> int:
        """The number of sets."""
        return sum(len(line.sets) for day in self.days for line in day.lines)


def takeable(repository: Repository, noted: Noted, latest: date) -> Takeable:
    """What can be taken, in the order of the days; nothing after ``latest``. Reads only."""
    days: list[ProposedDay] = []
    waiting = there = 0
    for day in _joined(noted.days):
        sure = [line for line in day.lines if line.certain and day.day <= latest]
        if day.questions:
            sure = []
        waiting += sum(1 for line in day.lines if line not in sure and not _left_out(line))
        known = _recorded(repository, noted.trainee_id, day.day)
        new = tuple(line for line in sure if _key(line) not in known)
        there += len(sure) - len(new)
        if new:
            days.append(replace(day, lines=_merged(new)))
    return Takeable(tuple(sorted(days, key=lambda day: day.day)), waiting, there)


def _left_out(line: ProposedLine) -> bool:
    """Whether the coach left out all that was read of it."""
    return not line.sets and not line.entry.questions


def is_recorded(
    repository: Repository, trainee_id: int, day: ProposedDay, line: ProposedLine
) -> bool:
    """Whether a day has an exercise of the notes already."""
    return _key(line) in _recorded(repository, trainee_id, day.day)


def draft_of_noted(
    repository: Repository,
    trainee_id: int,
    noted: ProposedDay,
    why: Callable[[SlotPlan], str],
    mark: str = ".",
) -> SessionDraft | None:
    """One day for the session form: what was planned, filled with what was noted. None where the
    day has a session already: the form would open that one.
    """
    if repository.session_on(trainee_id, noted.day):
        return None
    history = read_history(repository, trainee_id)
    draft = draft_of_plan(day_plan_of(history, noted.day), why, mark)
    lines = list(draft.lines)
    for line in noted.lines:
        done = _done(line)
        at = next((n for n, each in enumerate(lines) if _draft_key(each) == _key(line)), None)
        if at is None:
            lines.append(_added(history, line, noted.day, draft))
            at = len(lines) - 1
        kind = kind_of(_exercise(line), draft.unit, _held(done))
        filled = replace(lines[at], kind=kind)
        lines[at] = replace(filled, sets=typed_sets(filled, done, mark), note=line.note)
    return replace(draft, lines=tuple(lines))


def _added(history: History, line: ProposedLine, day: date, draft: SessionDraft) -> LineDraft:
    slot = slot_of_line(history, _exercise(line), line.name, day)
    return line_of_slot(slot, draft.unit, "", planned=False)


def take_noted(
    repository: Repository,
    trainee_id: int,
    days: Sequence[ProposedDay],
    names: Iterable[tuple[str, str]] = (),
) -> tuple[Changes, Mapping[tuple[type, Any], Any]]:
    """Save the sessions of all days, the lines that are new, and what the trainee calls exercises
    (``names``: as written, key), in one transaction. Returns what was saved, and by type and id
    what stood there before. Raises StoreError.
    """
    saved: list[Any] = []
    before: dict[tuple[type, Any], Any] = {}
    with repository.transaction():
        saved += _remember(repository, trainee_id, names, before)
        for day in days:
            made, sessions = _session(repository, trainee_id, day)
            saved += made
            for session in sessions:
                if session.id is not None:
                    before[Session, session.id] = repository.session(session.id)
                saved += repository.save(session).saved
    return Changes(_KINDS, frozenset({trainee_id}), tuple(saved)), before


def remember(
    repository: Repository, trainee_id: int, names: Iterable[tuple[str, str]]
) -> tuple[Changes, Mapping[tuple[type, Any], Any]]:
    """Only what the trainee calls exercises; as `take_noted`."""
    return take_noted(repository, trainee_id, (), names)


def _remember(
    repository: Repository,
    trainee_id: int,
    names: Iterable[tuple[str, str]],
    before: dict[tuple[type, Any], Any],
) -> list[Any]:
    saved: list[Any] = []
    for written, key in names:
        name = remembered(repository, trainee_id, written, key)
        if name.id is not None:
            known = repository.remembered_names(trainee_id)
            before[type(name), name.id] = next(each for each in known if each.id == name.id)
        saved += repository.save(name).saved
    return saved


def _session(
    repository: Repository, trainee_id: int, day: ProposedDay
) -> tuple[list[Any], list[Session]]:
    """The lines made for a day, and its session: the first of the day with more in it, or new."""
    made: list[Any] = []
    plan = day_plan(repository, trainee_id, day.day)
    asked = {(slot.line.exercise, slot.line.name): slot for slot in plan.slots}
    parts: list[LineDone] = []
    for line in day.lines:
        exercise, name = _key(line)
        known = repository.line_of(trainee_id, exercise, name)
        if known is None:
            saved = repository.save(Line(trainee_id, exercise, name)).saved
            made += saved
            known = saved[0]
        assert known is not None
        assert known.id is not None
        parts.append(_with_asked(line.line_done(known.id), asked.get((exercise, name))))
    there = repository.session_on(trainee_id, day.day)
    if there:
        return made, [replace(there[0], lines=(*there[0].lines, *parts))]
    return made, [_new_session(trainee_id, plan, day.day, parts)]


def _new_session(trainee_id: int, plan: DayPlan, day: date, parts: Sequence[LineDone]) -> Session:
    planned = plan.training_day is not None
    return Session(
        trainee_id,
        day,
        lines=tuple(parts),
        program_id=plan.program.id if plan.program and planned else None,
        week=plan.week if planned else None,
        day_name=plan.training_day.name if plan.training_day else "",
    )


def _with_asked(part: LineDone, slot: SlotPlan | None) -> LineDone:
    """A part with what was asked of its line that day, so that it is judged against it."""
    if slot is None:
        return part
    return replace(part, asked=slot.target.sets, deload=slot.target.deload, test=slot.test)


def _joined(days: Iterable[ProposedDay]) -> Iterator[ProposedDay]:
    """The days, each once; what stands under one date twice belongs together."""
    by_day: dict[date, ProposedDay] = {}
    for day in days:
        before = by_day.get(day.day)
        by_day[day.day] = day if before is None else replace(
            before,
            lines=(*before.lines, *day.lines),
            questions=(*before.questions, *day.questions),
        )  # fmt: skip
    yield from by_day.values()


def _merged(lines: Iterable[ProposedLine]) -> tuple[ProposedLine, ...]:
    """One part for each exercise and line, with all its sets."""
    parts: dict[tuple[str, str], ProposedLine] = {}
    for line in lines:
        before = parts.get(_key(line))
        if before is None:
            parts[_key(line)] = line
        else:
            note = "; ".join(text for text in (before.note, line.note) if text)
            parts[_key(line)] = replace(before, sets=(*before.sets, *line.sets), note=note)
    return tuple(parts.values())


def _recorded(repository: Repository, trainee_id: int, day: date) -> set[tuple[str, str]]:
    sessions = repository.session_on(trainee_id, day)
    if not sessions:
        return set()
    names = {line.id: line.name for line in repository.lines(trainee_id)}
    return {(p.exercise, names.get(p.line_id, "")) for each in sessions for p in each.lines}


def _exercise(line: ProposedLine) -> Exercise:
    assert line.exercise is not None, "only what is known can be taken"
    return line.exercise


def _key(line: ProposedLine) -> tuple[str, str]:
    return (line.exercise.key if line.exercise else "", line.name)


def _draft_key(line: LineDraft) -> tuple[str, str]:
    return (line.exercise, line.line_name)


def _done(line: ProposedLine) -> tuple[SetDone, ...]:
    return tuple(one.done for one in line.sets if one.done is not None)


def _held(done: Sequence[SetDone]) -> bool | None:
    return all(each.reps is None for each in done) if done else None
