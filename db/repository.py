"""The store as everybody else sees it: frozen dataclasses in, frozen dataclasses out."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterable, Iterator
from contextlib import contextmanager
from datetime import date, datetime
from typing import TYPE_CHECKING, Any, TypeVar

from db import schema
from db.aggregates import Aggregates
from db.changes import Changes
from db.database import Database
from db.errors import NotFound
from db.exercises import catalogue_source, sync_catalogue
from db.kept_sessions import KeptSessions, all_sessions
from db.sessions import sessions_where, utc_now
from db.watch import Watch
from desktop.training.coach import CoachSettings
from desktop.training.exercises import Exercise
from desktop.training.name_order import name_key
from desktop.training.program import Assignment, Line, Program
from desktop.training.sentence import sentence
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

if TYPE_CHECKING:
    from db.briefs import KeptBrief
    from desktop.training.brief import Brief

A = TypeVar("A")
M = TypeVar("M")


class Repository:
    """Reads and whole-aggregate writes over one `Database`.

    ``said``: exercises as they are called in the coach's language. It changes no key, and what is
    stored stays as it is.
    """

    def __init__(
        self,
        database: Database,
        now: Callable[[], datetime] = utc_now,
        said: Callable[[Exercise], Exercise] | None = None,
    ) -> None:
        self.database = database
        self._said = said
        self._aggregates = Aggregates(database, now)
        self._watch = Watch(database)
        self._sessions = KeptSessions(database)
        self._shared_version = 0
        self._all_versions = 0
        self._fact_versions: Counter[int] = Counter()
        self._memories: dict[type[Any], Any] = {}

    @property
    def said(self) -> Callable[[Exercise], Exercise] | None:
        """How exercises are called in the coach's language; None: as they are stored."""
        return self._said

    @said.setter
    def said(self, said: Callable[[Exercise], Exercise] | None) -> None:
        self._said = said
        self._shared_version += 1
        self._memories.clear()

    def memory(self, kind: type[M]) -> M:
        """The one ``kind`` of memory of what was computed from this file: made at first asking,
        it lasts as long as the repository. It has to know itself when it no longer holds.
        """
        if kind not in self._memories:
            self._memories[kind] = kind()
        known: M = self._memories[kind]
        return known

    # Trainees and what is known of them

    def trainees(self, archived: bool = False) -> tuple[Trainee, ...]:
        """The trainees by name; ``archived`` ones too where asked for."""
        conditions = () if archived else (schema.Trainee.archived == False,)  # noqa: E712
        found = self._read(Trainee, *conditions)
        return tuple(sorted(found, key=lambda trainee: name_key(trainee.name)))

    def trainee_ids(self) -> tuple[int, ...]:
        """The ids of the trainees who are not archived."""
        return tuple(
            i for (i,) in self.database.execute("SELECT id FROM trainee WHERE NOT archived")
        )

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
        stored = self.stored_exercises(retired)
        found = stored if self._said is None else map(self._said, stored)
        return tuple(sorted(found, key=lambda exercise: name_key(exercise.name)))

    def stored_exercises(self, retired: bool = False) -> tuple[Exercise, ...]:
        """As `exercises`, but called as in the file, whatever the coach's language; unordered."""
        conditions = () if retired else (schema.Exercise.retired == False,)  # noqa: E712
        return self._read(Exercise, *conditions)

    def exercise(self, key: str) -> Exercise:
        """The exercise called ``key``; NotFound where there is none."""
        exercise = self._one(Exercise, schema.Exercise.key == key)
        if exercise is None:
            raise NotFound(sentence("There is no exercise called {key!r}.", key=key))
        return exercise if self._said is None else self._said(exercise)

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
        return tuple(sorted(self._read(Program), key=lambda program: name_key(program.name)))

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
        """The trainee's sessions from ``first`` to ``last``, both included, by day and entry.

        All of them are kept in memory for a few trainees; what was not written since the last
        time is the same object then.
        """
        if first is None and last is None:
            if not self._looked():
                return all_sessions(self.database, trainee_id)
            return self._sessions.of(trainee_id)
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

    # Briefs

    def briefs(self, made_by: str, day: date) -> dict[int, Brief]:
        """By trainee, the briefs kept by the build ``made_by`` that hold on ``day``."""
        from db.briefs import briefs_on  # a chart does without

        return briefs_on(self.database, made_by, day)

    def keep_briefs(self, made_by: str, kept: Iterable[KeptBrief]) -> None:
        """Keep briefs until something of the trainee is written; call it in the `transaction` in
        which they were drawn up.
        """
        from db.briefs import keep_briefs

        keep_briefs(self.database, made_by, kept)

    # The coach's settings and the catalogue

    def coach_settings(self) -> CoachSettings:
        """The coach's settings; the defaults where none were saved."""
        return self._aggregates.settings()

    def catalogue_source(self) -> str | None:
        """What the shipped exercises were last read from; None where that was not noted."""
        return catalogue_source(self.database)

    def sync_catalogue(self, exercises: Iterable[Exercise], source: str | None = None) -> Changes:
        """Bring the shipped exercises up to date; the coach's own are left as they are. ``source``
        is noted for `catalogue_source`.
        """
        written = sync_catalogue(self.database, self._aggregates.exercises, exercises, source)
        return self._aggregates.changes(written)

    def shared_version(self) -> int | None:
        """A number that differs once exercises, programs or the coach's settings were written, by
        anybody; None where nobody can tell, and nothing that is read now may be kept.
        """
        return self._shared_version if self._looked() else None

    def facts_version(self, trainee_id: int) -> tuple[int, int] | None:
        """What differs once anything of a trainee but the sessions was written, by anybody; None
        where nobody can tell.
        """
        looked = self._looked()
        return (self._all_versions, self._fact_versions[trainee_id]) if looked else None

    def changes_token(self) -> int:
        """A number that differs once another connection or process has written."""
        return self.database.data_version

    # Writing

    @contextmanager
    def transaction(self) -> Iterator[None]:
        """Several writes as one: all of them, or none where one of them fails."""
        self._looked()  # what is in memory can then be read within it too
        with self.database.transaction():
            yield

    def save(self, *aggregates: Any) -> Changes:
        """Write aggregates, in order and all or none: new ones where ``id`` is None.

        Raises Conflict where one was changed or removed since it was read, InvalidRecord where
        one breaks a rule of the data. A session that comes to a day where its place is taken goes
        behind the last one of that day.
        """
        return self._aggregates.save(aggregates)

    def remove(self, *aggregates: Any) -> Changes:
        """Remove aggregates and all that cannot be without them.

        ``saved`` holds everything that was removed, as it was, for `restore`. Raises Conflict
        where one was changed since it was read, InvalidRecord while something else needs it.
        """
        return self._aggregates.remove(aggregates)

    def restore(self, *aggregates: Any) -> Changes:
        """Write removed aggregates back as themselves, in whichever order they come."""
        return self._aggregates.restore(aggregates)

    def _looked(self) -> bool:
        """Take in what was written since the last look; whether what is read now may be kept."""
        seen = self._watch.look()
        if seen is None:
            return False
        if seen.everything:
            self._sessions.forget()
        self._sessions.doubt(seen.sessions)
        self._all_versions += seen.everything
        self._shared_version += seen.everything or seen.shared
        self._fact_versions.update(seen.trainees)
        return True

    def _read(
        self, record: type[A], *conditions: Any, order: tuple[Any, ...] = ()
    ) -> tuple[A, ...]:
        return self._aggregates.shelf(record).read(self.database, *conditions, order=order)

    def _of(self, record: type[A], trainee_id: int, *order: Any) -> tuple[A, ...]:
        table: Any = self._aggregates.shelf(record).table
        return self._read(record, table.trainee_id == trainee_id, order=order)

    def _one(self, record: type[A], *conditions: Any) -> A | None:
        return self._aggregates.shelf(record).one(self.database, *conditions)

    def _found(self, record: type[A], identity: int) -> A:
        shelf = self._aggregates.shelf(record)
        found = shelf.one(self.database, shelf.table.id == identity)
        if found is None:
            raise NotFound(
                sentence(
                    "There is no {kind} with the number {identity}.",
                    kind=shelf.kind,
                    identity=identity,
                )
            )
        return found
