"""Everything of a data file as one file: JSON with the schema "rungwise everything".

Every record with its number and revision, so that reading it into an empty data file gives the
same records again. Described in resources/formats.md.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, fields, replace
from pathlib import Path
from typing import Any, Final

import msgspec

from db.aggregates import Aggregates
from db.codec import to_text
from db.database import Database
from db.errors import InvalidRecord
from db.files import replacing
from db.json_files import InvalidFile, decode_json, sparse
from db.session_drafts import StoredDraft, drafts
from db.sessions import sessions_where, utc_now
from db.steps import Steps, finished
from db.validity import check_settings
from desktop.training.coach import CoachSettings
from desktop.training.exercises import Exercise
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

SCHEMA: Final = "rungwise everything"
VERSION: Final = 1
MOST_BYTES: Final = 1_000_000_000

_MOST: Final = 2**53
_AT_ONCE: Final = 200  # records


@dataclass(frozen=True, slots=True)
class Everything:
    """All records of a data file, or all that concern one trainee."""

    settings: CoachSettings | None = None
    exercises: tuple[Exercise, ...] = ()
    programs: tuple[Program, ...] = ()
    trainees: tuple[Trainee, ...] = ()
    body_masses: tuple[BodyMass, ...] = ()
    equipment: tuple[EquipmentFrom, ...] = ()
    lines: tuple[Line, ...] = ()
    assignments: tuple[Assignment, ...] = ()
    sessions: tuple[Session, ...] = ()
    session_changes: tuple[SessionChange, ...] = ()
    activities: tuple[Activity, ...] = ()
    deloads: tuple[DeloadWindow, ...] = ()
    absences: tuple[Absence, ...] = ()
    goals: tuple[Goal, ...] = ()
    dismissed_cautions: tuple[DismissedCaution, ...] = ()
    remembered_names: tuple[RememberedName, ...] = ()
    drafts: tuple[StoredDraft, ...] = ()

    @property
    def records(self) -> Iterator[Any]:
        """The records that have a number, those that others refer to first."""
        for name in _RECORDS:
            yield from getattr(self, name)


_KINDS: Final[dict[str, type]] = {
    "exercises": Exercise,
    "programs": Program,
    "trainees": Trainee,
    "body_masses": BodyMass,
    "equipment": EquipmentFrom,
    "lines": Line,
    "assignments": Assignment,
    "sessions": Session,
    "session_changes": SessionChange,
    "activities": Activity,
    "deloads": DeloadWindow,
    "absences": Absence,
    "goals": Goal,
    "dismissed_cautions": DismissedCaution,
    "remembered_names": RememberedName,
}
_RECORDS: Final = tuple(_KINDS)


def read_everything(database: Database) -> Everything:
    """All records of a data file, at one moment."""
    return finished(reading_everything(database))


def reading_everything(database: Database) -> Steps[Everything]:
    """The same, step by step: each trainee's sessions are one."""
    shelves = Aggregates(database, utc_now)
    with database.snapshot():
        settings = shelves.settings()
        found: dict[str, tuple[Any, ...]] = {
            name: tuple(sorted(shelves.shelf(kind).read(database), key=_number))
            for name, kind in _KINDS.items()
            if kind is not Session
        }
        sessions: list[Session] = []
        whose = found["trainees"]
        for done, trainee in enumerate(whose):
            yield done / len(whose)
            sessions += sessions_where(database, "s.trainee_id = ?", (trainee.id,))
        found["sessions"] = tuple(sorted(sessions, key=_number))
        return Everything(
            settings=settings if settings.revision else None,
            drafts=tuple(drafts(database)),
            **found,
        )


def of_trainee(everything: Everything, trainee_id: int) -> Everything:
    """What concerns one trainee: the records of theirs, and the exercises and programs named."""
    own: dict[str, Any] = {
        name: tuple(one for one in getattr(everything, name) if one.trainee_id == trainee_id)
        for name in _RECORDS
        if name not in ("exercises", "programs", "trainees")
    }
    programs = {one.program_id for one in own["assignments"]}
    kept = tuple(one for one in everything.programs if one.id in programs)
    keys = {one.exercise for one in own["lines"]}
    keys |= {done.exercise for one in own["sessions"] for done in one.lines}
    keys |= {one.exercise for one in own["remembered_names"]}
    keys |= {
        slot.exercise
        for program in kept
        for phase in program.phases
        for day in phase.days
        for slot in day.slots
    }
    return replace(
        Everything(**own),
        programs=kept,
        exercises=tuple(one for one in everything.exercises if one.key in keys),
        trainees=tuple(one for one in everything.trainees if one.id == trainee_id),
        drafts=tuple(one for one in everything.drafts if one.key.trainee_id == trainee_id),
    )


def fill(database: Database, everything: Everything) -> None:
    """Write all of it into a data file without records, in one transaction.

    The exercises of the file, if it has only shipped ones, give way. Raises InvalidRecord where
    there are records, or where some of these do not go together; then nothing is changed.
    """
    finished(filling(database, everything))


def filling(database: Database, everything: Everything) -> Steps[None]:
    """The same, step by step; given up, nothing is changed."""
    _check_numbers(everything)
    shelves = Aggregates(database, utc_now)
    records = tuple(everything.records)
    with database.transaction():
        _make_room(database)
        for start in range(0, len(records), _AT_ONCE):
            yield start / len(records)
            shelves.restore(records[start : start + _AT_ONCE])
        if everything.settings is not None:
            check_settings(everything.settings)
            database.execute(
                "INSERT INTO coach_settings (id, revision, value) VALUES (1, ?, ?)",
                (everything.settings.revision, to_text(everything.settings)),
            )
        database.execute_many(
            "INSERT INTO session_draft (trainee_id, day, session_id, at_work, value)"
            " VALUES (?, ?, ?, ?, ?)",
            [(*one.key.row, int(one.at_work), one.text) for one in everything.drafts],
        )


def write_file(everything: Everything, path: Path) -> None:
    """Write the file, whole or not at all, for its owner's eyes only. Raises CannotWrite."""
    finished(writing_file(everything, path))


def writing_file(everything: Everything, path: Path) -> Steps[None]:
    """The same, step by step; given up, nothing is left of it."""
    most = max(1, sum(1 for _ in everything.records))
    with replacing(path) as unfinished, unfinished.open("wb") as file:
        for written, piece in enumerate(_pieces(everything)):
            file.write(piece)
            if written % _AT_ONCE == 0:
                yield min(1.0, written / 2 / most)  # a piece for the record, one before it


def read_file(path: Path) -> Everything:
    """What a file holds. Raises InvalidFile and OSError."""
    if path.stat().st_size > MOST_BYTES:
        raise InvalidFile(
            sentence("{file} is too large for a {schema} file", file=path.name, schema=SCHEMA)
        )
    try:
        return decode_json(path.read_bytes(), SCHEMA, VERSION, Everything)
    except InvalidFile as error:
        raise InvalidFile(sentence("{file}: {error}", file=path.name, error=error)) from error


def _pieces(everything: Everything) -> Iterator[bytes]:
    """Readable JSON: one record a line."""
    yield b'{\n"schema": %b,\n"version": %d' % (msgspec.json.encode(SCHEMA), VERSION)
    for field in fields(everything):
        value = getattr(everything, field.name)
        if value == field.default:
            continue
        yield b",\n%b: " % msgspec.json.encode(field.name)
        yield from _list(value) if isinstance(value, tuple) else _one(value)
    yield b"\n}\n"


def _list(records: Iterable[object]) -> Iterator[bytes]:
    before = b"[\n"
    for record in records:
        yield before
        yield from _one(record)
        before = b",\n"
    yield b"\n]"


def _one(record: object) -> Iterator[bytes]:
    yield msgspec.json.encode(sparse(record))


def _number(record: Any) -> int:
    number: int = record.id
    return number


def _check_numbers(everything: Everything) -> None:
    for name in _RECORDS:
        for place, record in enumerate(getattr(everything, name)):
            if record.id is None or not 0 < record.id < _MOST or not 0 < record.revision < _MOST:
                raise InvalidRecord(
                    sentence(
                        "Each record needs an id and a revision from 1 on; see {name}[{place}].",
                        name=name,
                        place=place,
                    ),
                    field=f"{name}[{place}]",
                )


def _make_room(database: Database) -> None:
    tables = ("trainee", "program", "coach_settings", "exercise WHERE own = 1")
    for table in tables:
        if database.execute(f"SELECT 1 FROM {table} LIMIT 1"):
            raise InvalidRecord(
                sentence("There are records in the data file already."),
                sentence("Name a new data file; everything of the file goes in there."),
            )
    database.execute("DELETE FROM exercise")
    database.execute("DELETE FROM file_fact")
