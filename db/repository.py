"""The store as everybody else sees it: frozen dataclasses in, frozen dataclasses out."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from contextlib import contextmanager
from dataclasses import replace
from datetime import date, datetime
from typing import Any, TypeVar

from db import schema
from db.changes import Changes, Kind
from db.codec import from_text, to_text
from db.database import Database
from db.errors import Conflict, InvalidRecord, NotFound
from db.exercises import ExerciseShelf, sync_catalogue
from db.lines import LineShelf
from db.programs import ProgramShelf
from db.sessions import SessionChangeShelf, SessionShelf, sessions_where, utc_now
from db.shelf import Shelf
from db.trainees import shelves_of_trainees
from desktop.training.coach import CoachSettings
from desktop.training.exercises import Exercise
from desktop.training.program import Assignment, Line, Program
from desktop.training.session import Activity, Session, SessionChange
from desktop.training.trainee import (
    Absence,
    BodyMass,
    DeloadWindow,
    DismissedCaution,
    EquipmentFrom,
    Goal,
    RememberedName,
    Trainee,
)

A = TypeVar("A")

# What another kind refers to comes back before it.
_ORDER = (
    Kind.EXERCISE,
    Kind.TRAINEE,
    Kind.PROGRAM,
    Kind.BODY_MASS,
    Kind.EQUIPMENT,
    Kind.LINE,
    Kind.ASSIGNMENT,
    Kind.SESSION,
    Kind.SESSION_CHANGE,
    Kind.ACTIVITY,
    Kind.DELOAD,
    Kind.ABSENCE,
    Kind.GOAL,
    Kind.DISMISSED,
    Kind.REMEMBERED_NAME,
)


class Repository:
    """Reads and whole-aggregate writes over one `Database`."""

    def __init__(self, database: Database, now: Callable[[], datetime] = utc_now) -> None:
        self.database = database
        self._exercises = ExerciseShelf()
        changes = SessionChangeShelf()
        shelves: tuple[Shelf[Any], ...] = (
            *shelves_of_trainees(),
            self._exercises,
            LineShelf(),
            ProgramShelf(),
            SessionShelf(changes, now),
            changes,
        )
        self._by_record: dict[type, Shelf[Any]] = {shelf.record: shelf for shelf in shelves}
        self._by_kind = {shelf.kind: shelf for shelf in shelves}

    # Trainees and what is known of them

    def trainees(self, archived: bool = False) -> tuple[Trainee, ...]:
        """The trainees by name; ``archived`` ones too where asked for."""
        conditions = () if archived else (schema.Trainee.archived == False,)  # noqa: E712
        found = self._read(Trainee, *conditions)
        return tuple(sorted(found, key=lambda trainee: trainee.name.casefold()))

    def trainee(self, trainee_id: int) -> Trainee:
        """The trainee; NotFound where there is none."""
        return self._found(Trainee, trainee_id)

    def trainee_named(self, name: str) -> Trainee | None:
        """The trainee of exactly this name."""
        return self._one(Trainee, schema.Trainee.name == name)

    def body_masses(self, trainee_id: int) -> tuple[BodyMass, ...]:
        """Body masses by day."""
        return self._of(BodyMass, trainee_id, schema.BodyMass.day)

    def equipment(self, trainee_id: int) -> tuple[EquipmentFrom, ...]:
        """What the trainee could use, by the day from which on."""
        return self._of(EquipmentFrom, trainee_id, schema.EquipmentFrom.day)

    def activities(self, trainee_id: int) -> tuple[Activity, ...]:
        """Other activities by day."""
        return self._of(Activity, trainee_id, schema.Activity.day)

    def deloads(self, trainee_id: int) -> tuple[DeloadWindow, ...]:
        """Easier spans by their first day."""
        return self._of(DeloadWindow, trainee_id, schema.DeloadWindow.first)

    def absences(self, trainee_id: int) -> tuple[Absence, ...]:
        """Spans without training by their first day."""
        return self._of(Absence, trainee_id, schema.Absence.first)

    def goals(self, trainee_id: int) -> tuple[Goal, ...]:
        """Goals in the order in which they were set."""
        return self._of(Goal, trainee_id)

    def dismissed(self, trainee_id: int) -> tuple[DismissedCaution, ...]:
        """Cautions set aside, by day."""
        return self._of(DismissedCaution, trainee_id, schema.DismissedCaution.day)

    def remembered_names(self, trainee_id: int) -> tuple[RememberedName, ...]:
        """What the trainee calls exercises."""
        return self._of(RememberedName, trainee_id, schema.RememberedName.text)

    # Exercises, lines, programs

    def exercises(self, retired: bool = False) -> tuple[Exercise, ...]:
        """The exercises by name; ``retired`` ones too where asked for."""
        conditions = () if retired else (schema.Exercise.retired == False,)  # noqa: E712
        found = self._read(Exercise, *conditions)
        return tuple(sorted(found, key=lambda exercise: exercise.name.casefold()))

    def exercise(self, key: str) -> Exercise:
        """The exercise called ``key``; NotFound where there is none."""
        exercise = self._one(Exercise, schema.Exercise.key == key)
        if exercise is None:
            raise NotFound(f"There is no exercise called {key!r}.")
        return exercise

    def lines(self, trainee_id: int) -> tuple[Line, ...]:
        """The trainee's lines by exercise and name."""
        return self._of(Line, trainee_id, schema.Line.exercise, schema.Line.name)

    def line(self, line_id: int) -> Line:
        """The line; NotFound where there is none."""
        return self._found(Line, line_id)

    def line_of(self, trainee_id: int, exercise_key: str, name: str = "") -> Line | None:
        """The trainee's line of this exercise and name."""
        table = schema.Line
        return self._one(
            Line,
            table.trainee_id == trainee_id,
            table.exercise == exercise_key,
            table.name == name,
        )

    def programs(self) -> tuple[Program, ...]:
        """All programs by name."""
        return tuple(sorted(self._read(Program), key=lambda program: program.name.casefold()))

    def program(self, program_id: int) -> Program:
        """The program; NotFound where there is none."""
        return self._found(Program, program_id)

    def program_named(self, name: str) -> Program | None:
        """The program of exactly this name."""
        return self._one(Program, schema.Program.name == name)

    def assignments(self, trainee_id: int) -> tuple[Assignment, ...]:
        """The trainee's programs by their start."""
        return self._of(Assignment, trainee_id, schema.Assignment.start)

    def all_assignments(self) -> tuple[Assignment, ...]:
        """Everybody's programs by their start."""
        return self._read(Assignment, order=(schema.Assignment.start,))

    # Sessions

    def sessions(
        self, trainee_id: int, first: date | None = None, last: date | None = None
    ) -> tuple[Session, ...]:
        """The trainee's sessions from ``first`` to ``last``, both included, by day and entry."""
        days = ((first or date.min).toordinal(), (last or date.max).toordinal())
        return sessions_where(
            self.database, "s.trainee_id = ? AND s.day BETWEEN ? AND ?", (trainee_id, *days)
        )

    def session(self, session_id: int) -> Session:
        """The session; NotFound where there is none."""
        return self._found(Session, session_id)

    def session_on(self, trainee_id: int, day: date) -> tuple[Session, ...]:
        """The trainee's sessions of one day, in order."""
        return self.sessions(trainee_id, day, day)

    def sessions_with_line(self, line_id: int) -> tuple[Session, ...]:
        """Whole sessions in which the line stands, by day and entry."""
        condition = "s.id IN (SELECT session_id FROM line_done WHERE line_id = ?)"
        return sessions_where(self.database, condition, (line_id,))

    def last_sessions(self) -> dict[int, date]:
        """The day of each trainee's latest session; those without one are left out."""
        rows = self.database.execute("SELECT trainee_id, max(day) FROM session GROUP BY trainee_id")
        return {trainee_id: date.fromordinal(day) for trainee_id, day in rows}

    def session_changes(self, session_id: int) -> tuple[SessionChange, ...]:
        """What was done to a session's record, oldest first."""
        return self._read(SessionChange, schema.SessionChange.session_id == session_id)

    # The coach's settings and the catalogue

    def coach_settings(self) -> CoachSettings:
        """The coach's settings; the defaults where none were saved."""
        rows = self.database.execute("SELECT value, revision FROM coach_settings")
        if not rows:
            return CoachSettings()
        text, revision = rows[0]
        settings: CoachSettings = from_text(text, CoachSettings)
        return replace(settings, revision=revision)

    def sync_catalogue(self, exercises: Iterable[Exercise]) -> Changes:
        """Bring the shipped exercises up to date; the coach's own are left as they are."""
        written = sync_catalogue(self.database, self._exercises, exercises)
        return self._changes(written)

    def changes_token(self) -> int:
        """A number that differs once another connection or process has written."""
        return self.database.data_version

    # Writing

    @contextmanager
    def transaction(self) -> Iterator[None]:
        """Several writes as one: all of them, or none where one of them fails."""
        with self.database.transaction():
            yield

    def save(self, *aggregates: Any) -> Changes:
        """Write aggregates, in order and all or none: new ones where ``id`` is None.

        Raises Conflict where one was changed or removed since it was read, InvalidRecord where
        one breaks a rule of the data. A session whose place on its day is taken goes behind the
        last one of that day.
        """
        with self.transaction():
            return self._changes([self._save(aggregate) for aggregate in aggregates])

    def remove(self, *aggregates: Any) -> Changes:
        """Remove aggregates and all that cannot be without them.

        ``saved`` holds everything that was removed, as it was, for `restore`. Raises Conflict
        where one was changed since it was read, InvalidRecord while something else needs it.
        """
        with self.transaction():
            doomed: dict[tuple[Kind, int], Any] = {}
            for aggregate in aggregates:
                shelf = self._shelf(aggregate)
                self._gather(shelf, shelf.current(self.database, aggregate), doomed)
            removed = sorted(doomed.values(), key=self._rank)
            for aggregate in reversed(removed):
                self._shelf(aggregate).remove(self.database, aggregate)
        return self._changes(removed)

    def restore(self, *aggregates: Any) -> Changes:
        """Write removed aggregates back as themselves, in whichever order they come."""
        with self.transaction():
            for aggregate in sorted(aggregates, key=self._rank):
                self._shelf(aggregate).restore(self.database, aggregate)
        return self._changes(aggregates)

    def _save(self, aggregate: Any) -> Any:
        if isinstance(aggregate, CoachSettings):
            return self._save_settings(aggregate)
        shelf = self._shelf(aggregate)
        write = shelf.insert if aggregate.id is None else shelf.update
        return write(self.database, aggregate)

    def _save_settings(self, settings: CoachSettings) -> CoachSettings:
        if self.coach_settings().revision != settings.revision:
            raise Conflict(
                "The coach's settings were changed elsewhere since they were read.",
                "Read them again and repeat the change. Nothing was overwritten.",
            )
        saved = replace(settings, revision=settings.revision + 1)
        self.database.execute(
            "INSERT INTO coach_settings (id, revision, value) VALUES (1, ?, ?) ON CONFLICT (id)"
            " DO UPDATE SET revision = excluded.revision, value = excluded.value",
            (saved.revision, to_text(saved)),
        )
        return saved

    def _gather(
        self, shelf: Shelf[Any], aggregate: Any, doomed: dict[tuple[Kind, int], Any]
    ) -> None:
        if (shelf.kind, aggregate.id) in doomed:
            return
        doomed[shelf.kind, aggregate.id] = aggregate
        for dependants in shelf.dependants:
            other = self._by_kind[dependants.kind]
            owner = getattr(other.table, dependants.column) == aggregate.id
            for dependant in other.read(self.database, owner):
                self._gather(other, dependant, doomed)

    def _rank(self, aggregate: Any) -> tuple[int, int]:
        return _ORDER.index(self._shelf(aggregate).kind), aggregate.id

    def _changes(self, aggregates: Iterable[Any]) -> Changes:
        saved = tuple(aggregates)
        kinds = frozenset(
            Kind.SETTINGS if isinstance(a, CoachSettings) else self._shelf(a).kind for a in saved
        )
        trainees = {a.id if isinstance(a, Trainee) else _trainee_of(a) for a in saved}
        everybody = None in trainees
        return Changes(kinds, frozenset() if everybody else frozenset(trainees), saved)

    # Reading

    def _shelf(self, aggregate: Any) -> Shelf[Any]:
        shelf = self._by_record.get(type(aggregate))
        if shelf is None:
            raise InvalidRecord(f"A {type(aggregate).__name__} is not kept by itself.")
        return shelf

    def _read(self, record: type[A], *conditions: Any, order: tuple[Any, ...] = ()) -> tuple[A, ...]:
        return self._by_record[record].read(self.database, *conditions, order=order)

    def _of(self, record: type[A], trainee_id: int, *order: Any) -> tuple[A, ...]:
        table: Any = self._by_record[record].table
        return self._read(record, table.trainee_id == trainee_id, order=order)

    def _one(self, record: type[A], *conditions: Any) -> A | None:
        return next(iter(self._read(record, *conditions)), None)

    def _found(self, record: type[A], identity: int) -> A:
        shelf = self._by_record[record]
        found: A | None = shelf.one(self.database, shelf.table.id == identity)
        if found is None:
            raise NotFound(f"There is no {shelf.kind} with the number {identity}.")
        return found


def _trainee_of(aggregate: Any) -> int | None:
    trainee_id: int | None = getattr(aggregate, "trainee_id", None)
    return trainee_id
