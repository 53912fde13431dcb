"""A shelf holds one kind of aggregate: it writes whole ones, and reads them back as dataclasses.

What belongs to an aggregate (the sets of a session) goes in and out with it. Each write of an
existing one names the revision that it was read at, so that two writers never overwrite each
other silently.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from typing import Any, Generic, TypeVar

from db.changes import Kind
from db.database import Database
from db.errors import Conflict, InvalidRecord
from db.schema import Aggregate
from desktop.training.sentence import sentence

A = TypeVar("A")

NUMBERS = frozenset({"id", "revision"})

_MOST_PARAMETERS = 500


@dataclass(frozen=True, slots=True)
class Dependants:
    """What is removed with an aggregate: the records of ``kind`` whose ``column`` names it."""

    kind: Kind
    column: str


@dataclass(frozen=True, slots=True)
class Reference:
    """A field that names a record of another table by one of its fields."""

    field: str
    table: type[Aggregate]
    by: str = "id"


class Shelf(Generic[A]):
    """One kind of aggregate without parts: each field of the dataclass is a column."""

    kind: Kind
    record: type[A]
    table: type[Aggregate]
    unique: tuple[str, ...] = ()
    references: tuple[Reference, ...] = ()
    dependants: tuple[Dependants, ...] = ()

    def __init__(self) -> None:
        table = self.table
        self._names = tuple(field.name for field in table._meta.sorted_fields)

    def read(
        self, database: Database, *conditions: Any, order: Sequence[Any] = ()
    ) -> tuple[A, ...]:
        """The aggregates that meet all ``conditions``, in ``order``, then in that of their ids."""
        fields = [getattr(self.table, name) for name in self._names]
        query = self.table.select(*fields).order_by(*order, self.table.id)
        with database.snapshot():
            rows = database.rows(query.where(*conditions) if conditions else query)
            return self.build(database, rows)

    def one(self, database: Database, *conditions: Any) -> A | None:
        """The first aggregate that meets all ``conditions``, or None."""
        return next(iter(self.read(database, *conditions)), None)

    def insert(self, database: Database, aggregate: A) -> A:
        """Write a new aggregate; it comes back with its identity and its first revision."""
        columns = self._columns_checked(database, aggregate)
        identity = database.change(self.table.insert(**columns, revision=1))
        saved = self.renewed(aggregate, identity, 1)
        self.write_parts(database, saved)
        return saved

    def update(self, database: Database, aggregate: A) -> A:
        """Write a changed aggregate; Conflict where it is no longer as it was read."""
        columns = self._columns_checked(database, aggregate)
        identity, revision = identity_of(aggregate), revision_of(aggregate)
        query = self.table.update(**columns, revision=revision + 1).where(
            self.table.id == identity, self.table.revision == revision
        )
        if not database.change(query):
            raise self._conflict(database, aggregate)
        saved = self.renewed(aggregate, identity, revision + 1)
        self.delete_parts(database, identity)
        self.write_parts(database, saved)
        return saved

    def restore(self, database: Database, aggregate: A) -> A:
        """Write an aggregate that was removed, as itself."""
        identity = identity_of(aggregate)
        if database.rows(self.table.select(self.table.id).where(self.table.id == identity)):
            raise Conflict(
                sentence("This {kind} is already there.", kind=self.kind),
                sentence("Nothing was changed."),
            )
        columns = self._columns_checked(database, aggregate)
        revision = revision_of(aggregate)
        database.change(self.table.insert(**columns, id=identity, revision=revision))
        self.write_parts(database, aggregate)
        return aggregate

    def current(self, database: Database, aggregate: A) -> A:
        """The aggregate as it is stored; Conflict where it is no longer as it was read."""
        stored = self.one(database, self.table.id == identity_of(aggregate))
        if stored is None or revision_of(stored) != revision_of(aggregate):
            raise self._conflict(database, aggregate)
        return stored

    def remove(self, database: Database, aggregate: A) -> None:
        """Remove a stored aggregate with its parts; InvalidRecord while something needs it."""
        self.refuse_if_needed(database, aggregate)
        database.change(self.table.delete().where(self.table.id == identity_of(aggregate)))

    # What a kind with parts of its own does otherwise

    def build(self, database: Database, rows: list[tuple[Any, ...]]) -> tuple[A, ...]:
        """Aggregates from the rows of this kind's own table."""
        return tuple(self.record(**dict(zip(self._names, row, strict=True))) for row in rows)

    def columns(self, aggregate: A) -> dict[str, Any]:
        """The values of the row, without identity and revision."""
        return {name: getattr(aggregate, name) for name in self._names if name not in NUMBERS}

    def write_parts(self, database: Database, aggregate: A) -> None:
        """Write the rows of other tables that belong to the aggregate."""

    def delete_parts(self, database: Database, identity: int) -> None:
        """Remove the rows of other tables that belong to the aggregate."""

    def called(self, aggregate: A) -> str:
        """What to call the aggregate in a sentence: "a trainee called Ada". For each kind with
        ``unique`` fields.
        """
        raise NotImplementedError

    def check(self, aggregate: A) -> None:
        """Raise InvalidRecord where the aggregate in itself breaks a rule of the data."""

    def check_references(self, database: Database, aggregate: A) -> None:
        """Raise InvalidRecord where the aggregate names a record that is not there."""
        for reference in self.references:
            value = getattr(aggregate, reference.field)
            same = getattr(reference.table, reference.by) == value
            if not database.rows(reference.table.select(reference.table.id).where(same)):
                raise missing(reference.field, value)

    def refuse_if_needed(self, database: Database, aggregate: A) -> None:
        """Raise InvalidRecord where the aggregate cannot be removed."""

    def renewed(self, aggregate: A, identity: int, revision: int) -> A:
        """The aggregate with its identity and revision."""
        renewed: A = replace(aggregate, id=identity, revision=revision)  # type: ignore[type-var]
        return renewed

    def _columns_checked(self, database: Database, aggregate: A) -> dict[str, Any]:
        self.check(aggregate)
        self.check_references(database, aggregate)
        self._refuse_double(database, aggregate)
        return self.columns(aggregate)

    def _refuse_double(self, database: Database, aggregate: A) -> None:
        if not self.unique:
            return
        same = [getattr(self.table, name) == getattr(aggregate, name) for name in self.unique]
        query = self.table.select(self.table.id).where(*same)
        if any(row[0] != identity_of(aggregate) for row in database.rows(query)):
            raise InvalidRecord(
                sentence("There is already {record}.", record=self.called(aggregate)),
                sentence("Change the one that is there, or choose another."),
                field=self.unique[-1],
            )

    def _conflict(self, database: Database, aggregate: A) -> Conflict:
        stored = self.one(database, self.table.id == identity_of(aggregate))
        what = "removed" if stored is None else "changed"
        return Conflict(
            sentence(
                "This {kind} was {what} elsewhere since it was read.", kind=self.kind, what=what
            ),
            sentence("Read it again and repeat the change. Nothing was overwritten."),
        )


def identity_of(aggregate: Any) -> Any:
    """The identity of an aggregate; None where it was never saved."""
    return aggregate.id


def revision_of(aggregate: Any) -> int:
    """The revision that an aggregate was read or saved at."""
    revision: int = aggregate.revision
    return revision


def missing(field: str, value: object, where: str = "") -> InvalidRecord:
    """The error for a ``field`` that names a record which is not there."""
    what = field.removesuffix("_id").replace("_", " ")
    text = (
        sentence("There is no {what} with the number {value}.", what=what, value=value)
        if field.endswith("_id")
        else sentence("There is no {what} called {value!r}.", what=what, value=value)
    )
    return InvalidRecord(
        text,
        sentence("Save the {what} first.", what=what),
        field=where or field,
    )


def in_pieces(identities: Iterable[int]) -> Iterable[list[int]]:
    """The identities in lists that are short enough for one query."""
    listed = list(identities)
    for start in range(0, len(listed), _MOST_PARAMETERS):
        yield listed[start : start + _MOST_PARAMETERS]


def parts_by_owner(
    database: Database, query_of: Any, identities: Iterable[int]
) -> dict[int, list[tuple[Any, ...]]]:
    """The rows of ``query_of(identities)`` without their first column, by that column."""
    found: dict[int, list[tuple[Any, ...]]] = {}
    for piece in in_pieces(identities):
        for owner, *part in database.rows(query_of(piece)):
            found.setdefault(owner, []).append(tuple(part))
    return found
