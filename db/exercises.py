"""Exercises with their muscles and variations, and the shipped catalogue in the file."""

from __future__ import annotations

import hashlib
from collections.abc import Iterable
from dataclasses import replace
from typing import Any

from db import schema
from db.changes import Kind
from db.codec import from_text, to_text
from db.database import Database
from db.errors import InvalidRecord
from db.shelf import Shelf, parts_by_owner
from db.validity import check_exercise
from desktop.training.exercises import (
    BodyShare,
    Exercise,
    HoldGeometry,
    PushUpGeometry,
    RowGeometry,
    Variation,
)
from desktop.training.sentence import sentence

_GEOMETRIES: dict[str, Any] = {
    "push_up": PushUpGeometry,
    "row": RowGeometry,
    "hold": HoldGeometry,
    "share": BodyShare,
}
_USERS = (
    ("line", "line"),
    ("slot", "slot of a program"),
    ("line_done", "session"),
    ("remembered_name", "remembered name"),
)
_DIGEST = "catalogue digest"
_SOURCE = "catalogue source"


class ExerciseShelf(Shelf[Exercise]):
    """Exercises; their keys never change, since lines, programs and sessions hold them."""

    kind = Kind.EXERCISE
    record = Exercise
    table = schema.Exercise
    unique = ("key",)

    def called(self, aggregate: Exercise) -> str:
        return sentence("an exercise with the key {key!r}", key=aggregate.key)

    def check(self, aggregate: Exercise) -> None:
        check_exercise(aggregate)

    def update(self, database: Database, aggregate: Exercise) -> Exercise:
        stored = self.one(database, schema.Exercise.id == aggregate.id)
        if stored is not None and stored.key != aggregate.key:
            raise InvalidRecord(
                sentence("The key of an exercise stays as it is: {key!r}.", key=stored.key),
                field="key",
            )
        return super().update(database, aggregate)

    def refuse_if_needed(self, database: Database, aggregate: Exercise) -> None:
        for table, what in _USERS:
            count = database.execute(
                f"SELECT count(*) FROM {table} WHERE exercise = ?", (aggregate.key,)
            )[0][0]
            if count:
                raise InvalidRecord(
                    sentence(
                        "{name} is needed: uses as {what}: {count}.",
                        name=aggregate.name,
                        what=what,
                        count=count,
                    ),
                    sentence("Retire the exercise instead; its record stays."),
                )

    def build(self, database: Database, rows: list[tuple[Any, ...]]) -> tuple[Exercise, ...]:
        identities = [row[0] for row in rows]
        muscles = parts_by_owner(database, _muscles, identities)
        variations = parts_by_owner(database, _variations, identities)
        return tuple(
            Exercise(
                **dict(zip(self._names, row, strict=True)),
                direct=tuple(m for m, direct in muscles.get(row[0], ()) if direct),
                indirect=tuple(m for m, direct in muscles.get(row[0], ()) if not direct),
                variations=tuple(_variation(part) for part in variations.get(row[0], ())),
            )
            for row in rows
        )

    def write_parts(self, database: Database, aggregate: Exercise) -> None:
        identity = aggregate.id
        database.execute_many(
            "INSERT INTO muscle_share (exercise_id, place, muscle, direct) VALUES (?, ?, ?, ?)",
            [
                (identity, place, muscle.value, direct)
                for direct, muscles in ((1, aggregate.direct), (0, aggregate.indirect))
                for place, muscle in enumerate(muscles)
            ],
        )
        database.execute_many(
            "INSERT INTO variation (exercise_id, place, key, name, family, geometry_kind,"
            " geometry, needs) VALUES (?, ?, ?, ?, ?, ?, ?, ?)",
            [
                (identity, place, v.key, v.name, v.family, *_geometry(v), to_text(v.needs))
                for place, v in enumerate(aggregate.variations)
            ],
        )

    def delete_parts(self, database: Database, identity: int) -> None:
        for table in ("muscle_share", "variation"):
            database.execute(f"DELETE FROM {table} WHERE exercise_id = ?", (identity,))


def catalogue_source(database: Database) -> str | None:
    """What the shipped exercises of this file were last read from; None where that is not noted."""
    return _fact(database, _SOURCE)


def sync_catalogue(
    database: Database, shelf: ExerciseShelf, shipped: Iterable[Exercise], source: str | None = None
) -> tuple[Exercise, ...]:
    """Bring the shipped exercises into the file; gives those that were written.

    The coach's own are left as they are, and a retired one stays retired. One that is no longer
    shipped is retired. A stored digest makes a second call a single query. ``source`` is noted
    for `catalogue_source`.
    """
    catalogue = tuple(shipped)
    digest = hashlib.sha256(to_text(catalogue).encode()).hexdigest()
    with database.transaction():
        if source is not None:
            _note(database, _SOURCE, source)
        if _fact(database, _DIGEST) == digest:
            return ()
        stored = {exercise.key: exercise for exercise in shelf.read(database)}
        written = [
            _written(database, shelf, exercise, stored.get(exercise.key)) for exercise in catalogue
        ]
        keys = {exercise.key for exercise in catalogue}
        for key, exercise in stored.items():
            if key not in keys and not exercise.own and not exercise.retired:
                written.append(shelf.update(database, replace(exercise, retired=True)))
        _note(database, _DIGEST, digest)
    return tuple(exercise for exercise in written if exercise is not None)


def _fact(database: Database, name: str) -> str | None:
    rows = database.execute("SELECT value FROM file_fact WHERE name = ?", (name,))
    return str(rows[0][0]) if rows else None


def _note(database: Database, name: str, value: str) -> None:
    database.execute(
        "INSERT INTO file_fact (name, value) VALUES (?, ?)"
        " ON CONFLICT (name) DO UPDATE SET value = excluded.value",
        (name, value),
    )


def _written(
    database: Database, shelf: ExerciseShelf, shipped: Exercise, stored: Exercise | None
) -> Exercise | None:
    if stored is None:
        return shelf.insert(database, shipped)
    if stored.own:
        return None
    wanted = replace(
        shipped,
        id=stored.id,
        revision=stored.revision,
        retired=stored.retired or shipped.retired,
    )
    return None if wanted == stored else shelf.update(database, wanted)


def _muscles(identities: list[int]) -> Any:
    table = schema.MuscleShare
    return (
        table.select(table.exercise_id, table.muscle, table.direct)
        .where(table.exercise_id.in_(identities))
        .order_by(table.exercise_id, table.place)
    )


def _variations(identities: list[int]) -> Any:
    table = schema.Variation
    return (
        table.select(
            table.exercise_id,
            table.key,
            table.name,
            table.family,
            table.geometry_kind,
            table.geometry,
            table.needs,
        )
        .where(table.exercise_id.in_(identities))
        .order_by(table.exercise_id, table.place)
    )


def _geometry(variation: Variation) -> tuple[str | None, str | None]:
    for kind in _GEOMETRIES:
        geometry = getattr(variation, kind)
        if geometry is not None:
            return kind, to_text(geometry)
    return None, None


def _variation(part: tuple[Any, ...]) -> Variation:
    key, name, family, kind, text, needs = part
    geometry = {kind: from_text(text, _GEOMETRIES[kind])} if kind else {}
    return Variation(key=key, name=name, family=family, needs=needs, **geometry)
