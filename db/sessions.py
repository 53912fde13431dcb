"""Sessions: what was asked and what was done, read in three queries however many there are."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import replace
from datetime import UTC, date, datetime
from typing import Any

from db import schema
from db.changes import Kind
from db.codec import from_text, to_text
from db.database import Database
from db.errors import InvalidRecord
from db.session_days import DaysTaken
from db.shelf import (
    NUMBERS,
    Dependants,
    Shelf,
    delete_of,
    in_pieces,
    known,
    marks_for,
    missing,
)
from db.trainees import OF_TRAINEE
from db.validity import check_sessions
from desktop.training.sentence import sentence
from desktop.training.session import (
    AskedSet,
    ChangeKind,
    LineDone,
    Session,
    SessionChange,
    SetDone,
    Wellness,
)

_SESSION_COLUMNS = (
    "id, trainee_id, day, entry, effort, minutes, sleep, soreness, stress, motivation,"
    " note, red_flag, program_id, week, day_name, revision"
)
_LINE_COLUMNS = "line_id, exercise, asked, deload, test, skipped, reason, note"
_FELT = frozenset({"sleep", "soreness", "stress", "motivation"})
_ASKED = tuple[
    tuple[int, int | None, int | None, str | None, int | None, float | None, bool, int | None], ...
]
SET_COLUMNS = "load_g, reps, seconds, variation, rir, tempo_s, warm_up, pain, side, note"


class SessionShelf(Shelf[Session]):
    """Sessions. Every write is noted in the change log, a correction with what stood before."""

    kind = Kind.SESSION
    record = Session
    table = schema.Session
    references = (OF_TRAINEE,)
    dependants = (Dependants(Kind.SESSION_CHANGE, "session_id"),)

    def __init__(self, now: Callable[[], datetime]) -> None:
        super().__init__()
        self._now = now

    def read(
        self, database: Database, *conditions: Any, order: Sequence[Any] = ()
    ) -> tuple[Session, ...]:
        """Sessions by conditions of the table, by day and entry."""
        query = schema.Session.select(schema.Session.id)
        query = query.where(*conditions) if conditions else query
        found: list[Session] = []
        with database.snapshot():
            for piece in in_pieces(row[0] for row in database.rows(query)):
                found += sessions_where(database, f"s.id IN ({marks_for(piece)})", piece)
        return tuple(sorted(found, key=lambda session: (session.day, session.entry)))

    def owned(self, database: Database, column: str, owners: Iterable[int]) -> list[Session]:
        return [
            session
            for piece in in_pieces(owners)
            for session in sessions_where(database, f"s.{column} IN ({marks_for(piece)})", piece)
        ]

    def insert(self, database: Database, aggregates: Sequence[Session]) -> list[Session]:
        days = DaysTaken(database, aggregates)
        saved = super().insert(database, [days.behind_others(each) for each in aggregates])
        self._log(database, ChangeKind.ENTERED, [(session, None) for session in saved])
        return saved

    def update(self, database: Database, aggregates: Sequence[Session]) -> list[Session]:
        before = self.current(database, aggregates)
        days = DaysTaken(database, (*before, *aggregates))
        placed = [
            # On its own day it stands where the coach puts it.
            days.stays(now) if now.day == was.day else days.behind_others(now, was)
            for now, was in zip(aggregates, before, strict=True)
        ]
        saved = super().update(database, placed)
        corrected = [
            (now, was)
            for now, was in zip(saved, before, strict=True)
            if now != replace(was, revision=now.revision)
        ]
        self._log(database, ChangeKind.CORRECTED, corrected)
        return saved

    def columns(self, aggregate: Session) -> dict[str, Any]:
        return {
            name: getattr(aggregate.wellness if name in _FELT else aggregate, name)
            for name in self._names
            if name not in NUMBERS
        }

    def check_references(self, database: Database, aggregates: Sequence[Session]) -> None:
        super().check_references(database, aggregates)
        named = {(x.trainee_id, y.line_id, y.exercise) for x in aggregates for y in x.lines}
        owners = dict(_owners(database, {line_id for _, line_id, _ in named}))
        keys = known(database, schema.Exercise, "key", (exercise for _, _, exercise in named))
        if all(owners.get(line) == whose and exercise in keys for whose, line, exercise in named):
            return
        for session in aggregates:
            for index, line in enumerate(session.lines):
                if line.line_id not in owners:
                    raise missing("line_id", line.line_id, f"lines[{index}].line_id")
                if owners[line.line_id] != session.trainee_id:
                    raise InvalidRecord(
                        sentence(
                            "The line of {exercise} belongs to another trainee.",
                            exercise=line.exercise,
                        ),
                        field=f"lines[{index}].line_id",
                    )
                if line.exercise not in keys:
                    raise missing("exercise", line.exercise, f"lines[{index}].exercise")

    def check(self, aggregates: Sequence[Session]) -> None:
        check_sessions(aggregates)

    def write_parts(self, database: Database, aggregates: Sequence[Session]) -> None:
        rows = _Rows()
        for session in aggregates:
            rows.take(session)
        database.insert(f"line_done (session_id, place, {_LINE_COLUMNS})", rows.lines)
        database.insert(
            f"set_done (session_id, line_place, place, line_id, exercise, day, {SET_COLUMNS})",
            rows.sets,
        )

    def delete_parts(self, database: Database, identities: list[int]) -> None:
        delete_of(database, "line_done", "session_id", identities)

    def _log(
        self,
        database: Database,
        what: ChangeKind,
        written: Sequence[tuple[Session, Session | None]],
    ) -> None:
        """Note sessions that were written, each with what stood before."""
        at = schema.SessionChange.at.db_value(self._now())
        database.insert(
            "session_change (trainee_id, session_id, at, what, before, revision)",
            [
                (now.trainee_id, now.id, at, what.value, None if was is None else to_text(was), 1)
                for now, was in written
            ],
        )


class SessionChangeShelf(Shelf[SessionChange]):
    """The change log of sessions."""

    kind = Kind.SESSION_CHANGE
    record = SessionChange
    table = schema.SessionChange


def sessions_where(
    database: Database, condition: str, parameters: Sequence[object]
) -> tuple[Session, ...]:
    """The sessions ``s`` that meet an SQL ``condition``, by day and entry: three queries."""
    with database.snapshot():
        lines = _lines_where(database, condition, parameters)
        rows = database.stream(
            f"SELECT {_of('s', _SESSION_COLUMNS)} FROM session s WHERE {condition}"
            " ORDER BY s.day, s.entry, s.id",
            parameters,
        )
        return tuple(_session(row, tuple(lines.get(row[0], ()))) for row in rows)


def _lines_where(
    database: Database, condition: str, parameters: Sequence[object]
) -> dict[int, list[LineDone]]:
    sets = _sets_where(database, condition, parameters)
    asked = AskedSets()
    lines: dict[int, list[LineDone]] = {}
    for row in database.stream(
        f"SELECT l.session_id, l.place, {_of('l', _LINE_COLUMNS)} FROM session s"
        f" JOIN line_done l ON l.session_id = s.id WHERE {condition}"
        " ORDER BY s.day, s.entry, s.id, l.place",
        parameters,
    ):
        session_id, place, line_id, exercise, text, deload, test, skipped, reason, note = row
        done = tuple(sets.get((session_id, place), ()))
        flags = bool(deload), bool(test), bool(skipped)
        line = LineDone(line_id, exercise, asked[text], done, *flags, reason, note)
        lines.setdefault(session_id, []).append(line)
    return lines


def _sets_where(
    database: Database, condition: str, parameters: Sequence[object]
) -> dict[tuple[int, int], list[SetDone]]:
    return gathered(
        database.stream(
            f"SELECT d.session_id, d.line_place, {_of('d', SET_COLUMNS)} FROM session s"
            f" JOIN set_done d ON d.session_id = s.id WHERE {condition}"
            " ORDER BY s.day, s.entry, s.id, d.line_place, d.place",
            parameters,
        )
    )


def gathered(rows: Iterable[tuple[Any, ...]]) -> dict[tuple[int, int], list[SetDone]]:
    """Sets by session and place of the line, from rows of both and `SET_COLUMNS`."""
    known = _Sets()
    sets: defaultdict[tuple[int, int], list[SetDone]] = defaultdict(list)
    for row in rows:
        sets[row[:2]].append(known[row[2:]])
    return sets


class _Sets(dict[tuple[Any, ...], SetDone]):
    """Sets by the values of `SET_COLUMNS`. The same one comes again and again in a training record:
    it is made once and shared.
    """

    def __missing__(self, values: tuple[Any, ...]) -> SetDone:
        done = self[values] = _set(values)
        return done


class AskedSets(dict[str, tuple[AskedSet, ...]]):
    """What was asked, by its text: the same text is read once."""

    def __missing__(self, text: str) -> tuple[AskedSet, ...]:
        asked = tuple(AskedSet(*row) for row in from_text(text, _ASKED))
        self[text] = asked
        return asked


class _Rows:
    """Rows of the parts of sessions. What several share, by identity, is put together once."""

    def __init__(self) -> None:
        self.lines: list[tuple[object, ...]] = []
        self.sets: list[tuple[object, ...]] = []
        self._asked: dict[tuple[int, ...], str] = {}
        self._done: dict[int, tuple[object, ...]] = {}

    def take(self, session: Session) -> None:
        """Add the rows of a session that has its identity. It is kept by whoever called."""
        identity, day = session.id, session.day.toordinal()
        for place, line in enumerate(session.lines):
            line_id, exercise = line.line_id, line.exercise
            self.lines.append(
                (
                    identity, place, line_id, exercise, self._asked_text(line.asked),
                    line.deload, line.test, line.skipped, line.reason, line.note,
                )
            )  # fmt: skip
            for number, done in enumerate(line.sets):
                row = self._done.get(id(done))
                if row is None:
                    row = self._done[id(done)] = _set_row(done)
                self.sets.append((identity, place, number, line_id, exercise, day, *row))

    def _asked_text(self, asked: tuple[AskedSet, ...]) -> str:
        key = tuple(map(id, asked))
        text = self._asked.get(key)
        if text is None:
            # Rows instead of objects: what is asked is the bulk of a file otherwise.
            text = self._asked[key] = to_text(
                [
                    (a.load_g, a.reps, a.seconds, a.variation, a.tempo_s, a.rir, a.open_ended,
                     a.stop_at)
                    for a in asked
                ]
            )  # fmt: skip
        return text


def _set_row(done: SetDone) -> tuple[object, ...]:
    return (
        done.load_g, done.reps, done.seconds, done.variation, done.rir, done.tempo_s,
        done.warm_up, done.pain, done.side, done.note,
    )  # fmt: skip


def _set(row: tuple[Any, ...]) -> SetDone:
    load_g, reps, seconds, variation, rir, tempo_s, warm_up, *rest = row
    return SetDone(load_g, reps, seconds, variation, rir, tempo_s, bool(warm_up), *rest)


def _session(row: tuple[Any, ...], lines: tuple[LineDone, ...]) -> Session:
    (identity, trainee_id, day, entry, effort, minutes, *felt) = row[:10]
    note, red_flag, program_id, week, day_name, revision = row[10:]
    return Session(
        trainee_id=trainee_id,
        day=date.fromordinal(day),
        lines=lines,
        entry=entry,
        effort=effort,
        minutes=minutes,
        wellness=Wellness(*felt),
        note=note,
        red_flag=bool(red_flag),
        program_id=program_id,
        week=week,
        day_name=day_name,
        id=identity,
        revision=revision,
    )


def _of(alias: str, columns: str) -> str:
    return ", ".join(f"{alias}.{column.strip()}" for column in columns.split(","))


def _owners(database: Database, line_ids: Iterable[int]) -> Iterator[tuple[int, int]]:
    """Whose each line is, where there is one."""
    table = schema.Line
    for piece in in_pieces(line_ids):
        query = table.select(table.id, table.trainee_id).where(table.id.in_(piece))
        yield from database.rows(query)


def utc_now() -> datetime:
    """The moment, for the change log."""
    return datetime.now(UTC)
