"""Lines with their dated rules, starts and overrides."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from db import schema
from db.changes import Kind
from db.codec import to_text
from db.database import Database
from db.errors import InvalidRecord
from db.shelf import Dependants, Reference, Shelf, delete_of, parts_by_owner
from db.trainees import OF_TRAINEE
from db.validity import check_line
from desktop.training.program import Line, LineStart, Override, RuleRevision
from desktop.training.sentence import sentence

_PARTS = ("rule_revision", "line_start", "line_override")


class LineShelf(Shelf[Line]):
    """What progresses. A line that was trained cannot be removed without its sessions."""

    kind = Kind.LINE
    record = Line
    table = schema.Line
    unique = ("trainee_id", "exercise", "name")
    references = (OF_TRAINEE, Reference("exercise", schema.Exercise, "key"))
    dependants = (Dependants(Kind.GOAL, "line_id"),)

    def called(self, aggregate: Line) -> str:
        return sentence(
            "a line of {exercise} called {name!r}", exercise=aggregate.exercise, name=aggregate.name
        )

    def check(self, aggregates: Sequence[Line]) -> None:
        for line in aggregates:
            check_line(line)

    def refuse_if_needed(self, database: Database, aggregate: Line) -> None:
        count = database.execute(
            "SELECT count(*) FROM line_done WHERE line_id = ?", (aggregate.id,)
        )[0][0]
        if count:
            raise InvalidRecord(
                sentence(
                    "The line of {exercise} was trained in sessions: {count}.",
                    exercise=aggregate.exercise,
                    count=count,
                ),
                sentence("Remove or correct those sessions first."),
            )

    def build(self, database: Database, rows: list[tuple[Any, ...]]) -> tuple[Line, ...]:
        identities = [row[0] for row in rows]
        rules = parts_by_owner(
            database, schema.RuleRevision, "line_id", identities, ("day", "rule")
        )
        starts = parts_by_owner(
            database,
            schema.LineStart,
            "line_id",
            identities,
            ("day", "position", "kind", "plus_minus"),
        )
        overrides = parts_by_owner(
            database,
            schema.LineOverride,
            "line_id",
            identities,
            ("day", "position", "note", "entry"),
        )
        return tuple(
            Line(
                **dict(zip(self._names, row, strict=True)),
                revisions=tuple(RuleRevision(*part) for part in rules.get(row[0], ())),
                starts=tuple(LineStart(*part) for part in starts.get(row[0], ())),
                overrides=tuple(Override(*part) for part in overrides.get(row[0], ())),
            )
            for row in rows
        )

    def write_parts(self, database: Database, aggregates: Sequence[Line]) -> None:
        database.insert(
            "rule_revision (line_id, place, day, rule)",
            [
                (line.id, place, r.day.toordinal(), to_text(r.rule))
                for line in aggregates
                for place, r in enumerate(line.revisions)
            ],
        )
        database.insert(
            "line_start (line_id, place, day, position, kind, plus_minus)",
            [
                (line.id, place, s.day.toordinal(), to_text(s.position), s.kind, s.plus_minus)
                for line in aggregates
                for place, s in enumerate(line.starts)
            ],
        )
        database.insert(
            "line_override (line_id, place, day, position, note, entry)",
            [
                (line.id, place, o.day.toordinal(), to_text(o.position), o.note, o.entry)
                for line in aggregates
                for place, o in enumerate(line.overrides)
            ],
        )

    def delete_parts(self, database: Database, identities: list[int]) -> None:
        for table in _PARTS:
            delete_of(database, table, "line_id", identities)
