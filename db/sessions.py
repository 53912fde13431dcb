"""Sessions: what was asked and what was done, read in three queries however many there are."""

from __future__ import annotations

import json
from collections.abc import Callable, Sequence
from dataclasses import replace
from datetime import UTC, date, datetime
from typing import Any

from db import schema
from db.changes import Kind
from db.database import Database
from db.errors import InvalidRecord
from db.shelf import Dependants, Reference, Shelf, missing
from db.trainees import OF_TRAINEE
from db.validity import check_session
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
_SET_COLUMNS = "load_g, reps, seconds, variation, rir, tempo_s, warm_up, pain, side, note"


class SessionShelf(Shelf[Session]):
    """Sessions. Every write is noted in the change log, a correction with what stood before."""

    kind = Kind.SESSION
    record = Session
    table = schema.Session
    references = (OF_TRAINEE,)
    dependants = (Dependants(Kind.SESSION_CHANGE, "session_id"),)

    def __init__(self, changes: SessionChangeShelf, now: Callable[[], datetime]) -> None:
        super().__init__()
        self._changes = changes
        self._now = now

    def read(
        self, database: Database, *conditions: Any, order: Sequence[Any] = ()
    ) -> tuple[Session, ...]:
        """Sessions by conditions of the table; `sessions_where` is the quick way for many."""
        query = schema.Session.select(schema.Session.id).where(*conditions)
        identities = [int(row[0]) for row in database.rows(query)]
        return tuple(
            session
            for identity in identities
            for session in sessions_where(database, "s.id = ?", (identity,))
        )

    def insert(self, database: Database, aggregate: Session) -> Session:
        saved = super().insert(database, self._with_free_entry(database, aggregate))
        self._log(database, saved, ChangeKind.ENTERED, None)
        return saved

    def update(self, database: Database, aggregate: Session) -> Session:
        before = self.current(database, aggregate)
        saved = super().update(database, self._with_free_entry(database, aggregate))
        if saved != replace(before, revision=saved.revision):
            self._log(database, saved, ChangeKind.CORRECTED, before)
        return saved

    def columns(self, aggregate: Session) -> dict[str, Any]:
        own = {
            name: getattr(aggregate, name)
            for name in (
                "trainee_id",
                "day",
                "entry",
                "effort",
                "minutes",
                "note",
                "red_flag",
                "program_id",
                "week",
                "day_name",
            )
        }
        felt = aggregate.wellness
        return own | {
            "sleep": felt.sleep,
            "soreness": felt.soreness,
            "stress": felt.stress,
            "motivation": felt.motivation,
        }

    def check(self, aggregate: Session) -> None:
        check_session(aggregate)

    def check_references(self, database: Database, aggregate: Session) -> None:
        super().check_references(database, aggregate)
        owners = _known(database, "line", "id, trainee_id", [x.line_id for x in aggregate.lines])
        keys = _known(database, "exercise", "key, id", [x.exercise for x in aggregate.lines])
        for index, line in enumerate(aggregate.lines):
            if line.line_id not in owners:
                raise missing("line_id", line.line_id, f"lines[{index}].line_id")
            if owners[line.line_id] != aggregate.trainee_id:
                raise InvalidRecord(
                    f"The line of {line.exercise} belongs to another trainee.",
                    field=f"lines[{index}].line_id",
                )
            if line.exercise not in keys:
                raise missing("exercise", line.exercise, f"lines[{index}].exercise")

    def write_parts(self, database: Database, aggregate: Session) -> None:
        day = aggregate.day.toordinal()
        lines: list[tuple[object, ...]] = []
        sets: list[tuple[object, ...]] = []
        for place, line in enumerate(aggregate.lines):
            lines.append((aggregate.id, place, *_line_row(line)))
            head = (aggregate.id, place)
            tail = (line.line_id, line.exercise, day)
            sets += [(*head, n, *tail, *_set_row(done)) for n, done in enumerate(line.sets)]
        database.execute_many(
            f"INSERT INTO line_done (session_id, place, {_LINE_COLUMNS})"
            " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
            lines,
        )
        database.execute_many(
            "INSERT INTO set_done (session_id, line_place, place, line_id, exercise, day,"
            f" {_SET_COLUMNS}) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
            sets,
        )

    def delete_parts(self, database: Database, identity: int) -> None:
        database.execute("DELETE FROM line_done WHERE session_id = ?", (identity,))

    def _with_free_entry(self, database: Database, session: Session) -> Session:
        taken = database.execute(
            "SELECT id, entry FROM session WHERE trainee_id = ? AND day = ?",
            (session.trainee_id, session.day.toordinal()),
        )
        others = [entry for identity, entry in taken if identity != session.id]
        return replace(session, entry=max(others) + 1) if session.entry in others else session

    def _log(
        self, database: Database, session: Session, what: ChangeKind, before: Session | None
    ) -> None:
        if session.id is not None:
            change = SessionChange(session.trainee_id, session.id, self._now(), what, before)
            self._changes.insert(database, change)


class SessionChangeShelf(Shelf[SessionChange]):
    """The change log of sessions."""

    kind = Kind.SESSION_CHANGE
    record = SessionChange
    table = schema.SessionChange


def sessions_where(
    database: Database, condition: str, parameters: Sequence[object]
) -> tuple[Session, ...]:
    """The sessions ``s`` that meet an SQL ``condition``, by day and entry: three queries."""
    asked_of = _AskedSets()
    done_of: dict[tuple[Any, ...], SetDone] = {}
    sets: dict[tuple[int, int], list[SetDone]] = {}
    for session_id, place, *row in database.execute(
        f"SELECT d.session_id, d.line_place, {_of('d', _SET_COLUMNS)} FROM session s"
        f" JOIN set_done d ON d.session_id = s.id WHERE {condition}"
        " ORDER BY d.session_id, d.line_place, d.place",
        parameters,
    ):
        key = tuple(row)
        done = done_of.get(key)
        if done is None:
            done = done_of[key] = _set(key)
        sets.setdefault((session_id, place), []).append(done)
    lines: dict[int, list[LineDone]] = {}
    for session_id, place, line_id, exercise, asked, deload, test, skipped, *words in (
        database.execute(
            f"SELECT l.session_id, l.place, {_of('l', _LINE_COLUMNS)} FROM session s"
            f" JOIN line_done l ON l.session_id = s.id WHERE {condition}"
            " ORDER BY l.session_id, l.place",
            parameters,
        )
    ):
        lines.setdefault(session_id, []).append(
            LineDone(
                line_id,
                exercise,
                asked_of[asked],
                tuple(sets.get((session_id, place), ())),
                bool(deload),
                bool(test),
                bool(skipped),
                *words,
            )
        )
    rows = database.execute(
        f"SELECT {_of('s', _SESSION_COLUMNS)} FROM session s WHERE {condition}"
        " ORDER BY s.day, s.entry, s.id",
        parameters,
    )
    return tuple(_session(row, tuple(lines.get(row[0], ()))) for row in rows)


class _AskedSets(dict[str, tuple[AskedSet, ...]]):
    """What was asked, by its text: the same text is read once."""

    def __missing__(self, text: str) -> tuple[AskedSet, ...]:
        asked = tuple(AskedSet(*row) for row in json.loads(text))
        self[text] = asked
        return asked


def _line_row(line: LineDone) -> tuple[object, ...]:
    # Rows instead of objects: what is asked is the bulk of a file otherwise.
    asked = [
        (a.load_g, a.reps, a.seconds, a.variation, a.tempo_s, a.rir, a.open_ended, a.stop_at)
        for a in line.asked
    ]
    return (
        line.line_id,
        line.exercise,
        json.dumps(asked, separators=(",", ":")),
        line.deload,
        line.test,
        line.skipped,
        line.reason,
        line.note,
    )


def _set_row(done: SetDone) -> tuple[object, ...]:
    return (
        done.load_g,
        done.reps,
        done.seconds,
        done.variation,
        done.rir,
        done.tempo_s,
        done.warm_up,
        done.pain,
        done.side,
        done.note,
    )


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


def _known(
    database: Database, table: str, columns: str, wanted: Sequence[object]
) -> dict[Any, Any]:
    distinct = sorted(set(wanted), key=str)
    marks = ", ".join("?" * len(distinct))
    first = columns.split(",")[0]
    sql = f"SELECT {columns} FROM {table} WHERE {first} IN ({marks})"
    return dict(database.execute(sql, distinct)) if distinct else {}  # type: ignore[arg-type]


def utc_now() -> datetime:
    """The moment, for the change log."""
    return datetime.now(UTC)
