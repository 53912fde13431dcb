"""Exercises with their muscles and variations, and the shipped catalogue in the file."""

from __future__ import annotations

import hashlib
from collections.abc import Iterable, Sequence
from dataclasses import replace
from typing import Any

from db import schema
from db.changes import Kind
from db.codec import from_text, to_text
from db.database import Database
from db.errors import InvalidRecord
from db.shelf import Shelf, delete_of, identity_of, parts_by_owner
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
    fixed = ("key",)  # SQLite would look for whatever names it at each write

    def called(self, aggregate: Exercise) -> str:
        return sentence("an exercise with the key {key!r}", key=aggregate.key)

    def check(self, aggregates: Sequence[Exercise]) -> None:
        for exercise in aggregates:
            check_exercise(exercise)

    def update(self, database: Database, aggregates: Sequence[Exercise]) -> list[Exercise]:
        stored = self.owned(database, "id", map(identity_of, aggregates))
        keys = {exercise.id: exercise.key for exercise in stored}
        for exercise in aggregates:
            key = keys.get(exercise.id, exercise.key)
            if key != exercise.key:
                raise InvalidRecord(
                    sentence("The key of an exercise stays as it is: {key!r}.", key=key),
                    field="key",
                )
        return super().update(database, aggregates)

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
        muscles = parts_by_owner(
            database, schema.MuscleShare, "exercise_id", identities, ("muscle", "direct")
        )
        variations = parts_by_owner(
            database,
            schema.Variation,
            "exercise_id",
            identities,
            ("key", "name", "family", "geometry_kind", "geometry", "needs"),
        )
        return tuple(
            Exercise(
                **dict(zip(self._names, row, strict=True)),
                direct=tuple(m for m, direct in muscles.get(row[0], ()) if direct),
                indirect=tuple(m for m, direct in muscles.get(row[0], ()) if not direct),
                variations=tuple(_variation(part) for part in variations.get(row[0], ())),
            )
            for row in rows
        )

    def write_parts(self, database: Database, aggregates: Sequence[Exercise]) -> None:
        database.insert(
            "muscle_share (exercise_id, place, muscle, direct)",
            [
                (exercise.id, place, muscle.value, direct)
                for exercise in aggregates
                for direct, muscles in ((1, exercise.direct), (0, exercise.indirect))
                for place, muscle in enumerate(muscles)
            ],
        )
        database.insert(
            "variation (exercise_id, place, key, name, family, geometry_kind, geometry, needs)",
            [
                (exercise.id, place, v.key, v.name, v.family, *_geometry(v), to_text(v.needs))
                for exercise in aggregates
                for place, v in enumerate(exercise.variations)
            ],
        )

    def delete_parts(self, database: Database, identities: list[int]) -> None:
        for table in ("muscle_share", "variation"):
            delete_of(database, table, "exercise_id", identities)


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
        new = [exercise for exercise in catalogue if exercise.key not in stored]
        keys = {exercise.key for exercise in catalogue}
        wanted = [_renewed(each, stored[each.key]) for each in catalogue if each.key in stored]
        wanted += [
            replace(exercise, retired=True)
            for key, exercise in stored.items()
            if key not in keys and not exercise.own
        ]
        changed = [exercise for exercise in wanted if exercise != stored[exercise.key]]
        written = (*shelf.insert(database, new), *shelf.update(database, changed))
        _note(database, _DIGEST, digest)
    return written


def _fact(database: Database, name: str) -> str | None:
    rows = database.execute("SELECT value FROM file_fact WHERE name = ?", (name,))
    return str(rows[0][0]) if rows else None


def _note(database: Database, name: str, value: str) -> None:
    database.execute(
        "INSERT INTO file_fact (name, value) VALUES (?, ?)"
        " ON CONFLICT (name) DO UPDATE SET value = excluded.value",
        (name, value),
    )


def _renewed(shipped: Exercise, stored: Exercise) -> Exercise:
    """What is to stand in place of a stored exercise; one of the coach's own is left as it is."""
    if stored.own:
        return stored
    return replace(
        shipped,
        id=stored.id,
        revision=stored.revision,
        retired=stored.retired or shipped.retired,
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
