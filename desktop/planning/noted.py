"""Noted training: what a trainee's free-text notes propose for the record. Nothing is saved here.

A correction ("what she calls rows is the one-armed kind") is remembered as a name of that trainee:
`remembered` makes it, the caller saves it with the session.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from datetime import date

from db.repository import Repository
from desktop.notes.known import Known, KnownHeight, known_exercise
from desktop.notes.names import plain_words
from desktop.notes.reader import read_notes
from desktop.notes.reading import Alternative as Alternative
from desktop.notes.reading import Answer as Answer
from desktop.notes.reading import Doubt as Doubt
from desktop.notes.reading import Entry as Entry
from desktop.notes.reading import NotedDay
from desktop.notes.reading import Part as Part
from desktop.notes.reading import PartKind as PartKind
from desktop.notes.reading import Question as Question
from desktop.notes.reading import Reading as Reading
from desktop.notes.reading import ReadSet as ReadSet
from desktop.notes.reading import Span as Span
from desktop.planning.days import day_plan
from desktop.planning.history import History, read_history
from desktop.planning.surroundings import equipment_on
from desktop.training.exercises import Exercise, HeightUse
from desktop.training.program import Line
from desktop.training.session import LineDone, SetDone
from desktop.training.trainee import RememberedName


@dataclass(frozen=True, slots=True)
class ProposedSet:
    """One set as read and as it would be recorded; ``done`` None while something is missing.

    ``certain``: nothing is asked about the set, its exercise or its day.
    """

    read: ReadSet
    done: SetDone | None
    certain: bool


@dataclass(frozen=True, slots=True)
class ProposedLine:
    """What the notes say of one exercise on one day.

    ``line`` None: the trainee has none of ``exercise`` and ``name`` yet, so that it has to be made
    before saving. ``exercise`` None: the name is not known.
    """

    entry: Entry
    exercise: Exercise | None
    name: str
    line: Line | None
    sets: tuple[ProposedSet, ...]
    note: str = ""

    @property
    def ready(self) -> bool:
        """Whether it can be recorded: the exercise and every number of every set are known."""
        return self.exercise is not None and bool(self.sets) and all(one.done for one in self.sets)

    @property
    def certain(self) -> bool:
        """Whether nothing is asked about it."""
        return self.ready and all(one.certain for one in self.sets) and not self.entry.questions

    def line_done(self, line_id: int) -> LineDone:
        """The part of a session, for the line with this id. ``ValueError`` unless `ready`."""
        if self.exercise is None or not self.ready:
            raise ValueError("only what is known in full can be recorded")
        done = tuple(one.done for one in self.sets if one.done is not None)
        return LineDone(line_id, self.exercise.key, sets=done, note=self.note)


@dataclass(frozen=True, slots=True)
class ProposedDay:
    """What the notes say of one day, and what is asked about the day itself."""

    day: date
    lines: tuple[ProposedLine, ...]
    questions: tuple[Question, ...] = ()


@dataclass(frozen=True, slots=True)
class Noted:
    """Notes of one trainee: the reading beside the text, and what it proposes by day."""

    trainee_id: int
    reading: Reading
    days: tuple[ProposedDay, ...]


def read_noted(
    repository: Repository,
    trainee_id: int,
    text: str,
    day: date,
    answers: Sequence[Answer] = (),
    *,
    day_first: bool | None = True,
) -> Noted:
    """What ``text`` proposes for a trainee; ``day`` is that of what stands under no date.

    Settle a question by calling again with its answer: see `desktop.notes.reader.read_notes`.
    """
    history = read_history(repository, trainee_id)
    known = known_of(history, repository.remembered_names(trainee_id), day, day_first)
    reading = read_notes(text, known, answers)
    planned = tuple(_planned_lines(repository, trainee_id, reading))
    if planned:
        reading = read_notes(text, known, (*planned, *answers))
    days = tuple(
        ProposedDay(
            noted.day,
            tuple(_proposed(reading, noted, entry, history) for entry in noted.entries),
            noted.questions,
        )
        for noted in reading.days
    )
    return Noted(trainee_id, reading, days)


def known_of(
    history: History,
    remembered: Iterable[RememberedName],
    day: date,
    day_first: bool | None = True,
) -> Known:
    """What reading takes of a trainee: names of exercises and lines, boxes and bars, the unit."""
    exercises = [one for one in history.library.exercises.values() if not one.retired]
    lines: dict[str, list[str]] = {}
    for line in history.lines:
        lines.setdefault(line.exercise, []).append(line.name)
    owned = equipment_on(history.equipment, day)
    heights = () if owned is None else (
        *(KnownHeight(one.name, one.height_mm) for one in owned.boxes),
        *(KnownHeight(one.name, one.height_mm, (HeightUse.BAR,)) for one in owned.bar_heights),
    )  # fmt: skip
    return Known(
        exercises=tuple(known_exercise(one, lines.get(one.key, ())) for one in exercises),
        unit=history.trainee.unit,
        day=day,
        day_first=day_first,
        remembered=tuple((one.text, one.exercise) for one in remembered),
        heights=heights,
    )


def remembered(
    repository: Repository, trainee_id: int, written: str, exercise: str
) -> RememberedName:
    """That this trainee means ``exercise`` by ``written``, to be saved; what was remembered for
    these words before is replaced. ``ValueError`` where nothing is written.
    """
    words = plain_words(written)
    if not words:
        raise ValueError("a name has letters or digits")
    repository.exercise(exercise)
    for known in repository.remembered_names(trainee_id):
        if plain_words(known.text) == words:
            return replace(known, exercise=exercise)
    return RememberedName(trainee_id, written.strip(), exercise)


def corrections(noted: Noted, answers: Iterable[Answer]) -> tuple[tuple[str, str], ...]:
    """Names as written and the exercise that the coach said they mean, each to be remembered."""
    text = noted.reading.text
    said = {
        answer.span.of(text): answer.meant.exercise
        for answer in answers
        if answer.doubt is Doubt.EXERCISE and answer.meant.exercise is not None
    }
    named = {entry.name.of(text) for entry in noted.reading.entries if entry.name is not None}
    return tuple((written, key) for written, key in said.items() if written in named)


def _planned_lines(repository: Repository, trainee_id: int, reading: Reading) -> Iterator[Answer]:
    """Which of several lines is meant, where only one of them is planned on the day."""
    for noted in reading.days:
        asked = [(entry, question) for entry in noted.entries for question in entry.questions]
        lines = [(entry, one) for entry, one in asked if one.doubt is Doubt.LINE]
        if not lines or noted.questions:
            continue
        slots = day_plan(repository, trainee_id, noted.day).slots
        for entry, question in lines:
            names = {slot.line.name for slot in slots if slot.line.exercise == entry.exercise}
            if len(names) == 1:
                yield question.answered(Alternative(line=names.pop()))


def _proposed(reading: Reading, day: NotedDay, entry: Entry, history: History) -> ProposedLine:
    exercise = history.library.exercises.get(entry.exercise or "")
    line = None if exercise is None else history.line_of(exercise.key, entry.line)
    usual = None if line is None else _usual_variation(history, line, day.day)
    sure = not day.questions
    sets = [
        ProposedSet(read, _done(read, usual), read.certain and sure and exercise is not None)
        for read in entry.sets
    ]
    if entry.pain and sets:
        at = max((at for at, one in enumerate(sets) if not one.read.warm_up), default=-1)
        done = sets[at].done
        if done is not None:
            sets[at] = replace(sets[at], done=replace(done, pain=entry.pain))
    note = "; ".join(span.of(reading.text).strip() for span in entry.notes)
    return ProposedLine(entry, exercise, entry.line, line, tuple(sets), note)


def _done(read: ReadSet, usual: str | None) -> SetDone | None:
    if read.load_g is None or (read.reps is None and read.seconds is None):
        return None
    return SetDone(
        load_g=read.load_g,
        reps=read.reps,
        seconds=read.seconds,
        variation=read.variation or usual,
        rir=read.rir,
        warm_up=read.warm_up,
        side=read.side,
    )


def _usual_variation(history: History, line: Line, day: date) -> str | None:
    """The variation last trained before ``day``, or that of the last start or override: what is
    meant where notes name none.
    """
    if line.id is not None:
        for _, part in reversed(history.done(line.id, before=day)):
            if part.working_sets:
                return part.working_sets[-1].variation
    placed = [(one.day, one.position.variation) for one in line.starts]
    placed += [(one.day, one.position.variation) for one in line.overrides]
    return max(placed, key=lambda one: one[0])[1] if placed else None
