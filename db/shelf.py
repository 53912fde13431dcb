"""A shelf holds one kind of aggregate: it writes whole ones, and reads them back as dataclasses.

What belongs to an aggregate (the sets of a session) goes in and out with it. Each write of an
existing one names the revision that it was read at, so that two writers never overwrite each
other silently. Many are written, removed and restored by as many statements as one.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass
from typing import Any, Generic, NamedTuple, TypeVar

from db.changes import Kind
from db.database import Database
from db.errors import Conflict, InvalidRecord
from db.remade import remade
from db.schema import PLAIN, Aggregate
from desktop.training.sentence import sentence

A = TypeVar("A")
V = TypeVar("V")

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


class _Column(NamedTuple):
    """A field of an aggregate, its column, and how a value goes into the file (None: as it is)."""

    name: str
    column: str
    convert: Callable[[Any], Any] | None


class Shelf(Generic[A]):
    """One kind of aggregate without parts: each field of the dataclass is a column. Those ``fixed``
    never change.
    """

    kind: Kind
    record: type[A]
    table: type[Aggregate]
    unique: tuple[str, ...] = ()
    fixed: tuple[str, ...] = ()
    references: tuple[Reference, ...] = ()
    dependants: tuple[Dependants, ...] = ()

    def __init__(self) -> None:
        fields = self.table._meta.sorted_fields
        self._names = tuple(field.name for field in fields)
        self._own = tuple(
            # What peewee itself does to numbers and text changes nothing of what the model holds.
            _Column(field.name, field.column_name, None if type(field) in PLAIN else field.db_value)
            for field in fields
            if field.name not in NUMBERS
        )

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

    def owned(self, database: Database, column: str, owners: Iterable[int]) -> list[A]:
        """The aggregates whose ``column`` is one of ``owners``."""
        field = getattr(self.table, column)
        found = (self.read(database, field.in_(piece)) for piece in in_pieces(owners))
        return [aggregate for piece in found for aggregate in piece]

    def current(self, database: Database, aggregates: Sequence[A]) -> list[A]:
        """Aggregates as they are stored; Conflict where one is no longer as it was read."""
        stored = self.owned(database, "id", map(identity_of, aggregates))
        by_id = {identity_of(each): each for each in stored}
        found = [by_id.get(identity_of(each)) for each in aggregates]
        for wanted, there in zip(aggregates, found, strict=True):
            if there is None or revision_of(there) != revision_of(wanted):
                raise self._conflict(removed=there is None)
        return [there for there in found if there is not None]

    def insert(self, database: Database, aggregates: Sequence[A]) -> list[A]:
        """Write new aggregates, within a transaction; they come back with their identities and
        their first revision.
        """
        self._check_all(database, aggregates)
        first = self._last_identity(database) + 1
        saved = [self.renewed(each, first + n, 1) for n, each in enumerate(aggregates)]
        self._put(database, saved)
        return saved

    def update(self, database: Database, aggregates: Sequence[A]) -> list[A]:
        """Write changed aggregates, each of them once; Conflict where one is no longer as it was
        read.
        """
        self._check_all(database, aggregates)
        changing = [column for column in self._own if column.name not in self.fixed]
        columns = ", ".join(f"{column.column} = ?" for column in changing)
        written = database.execute_many(
            f"UPDATE {self._table_name} SET {columns}, revision = revision + 1"
            " WHERE id = ? AND revision = ?",
            [(*self._row(x, changing), identity_of(x), revision_of(x)) for x in aggregates],
        )
        if written != len(aggregates):
            there = known(database, self.table, "id", map(identity_of, aggregates))
            gone = any(identity_of(x) not in there for x in aggregates)
            raise self._conflict(removed=bool(gone))
        saved = [self.renewed(x, identity_of(x), revision_of(x) + 1) for x in aggregates]
        for piece in in_pieces(map(identity_of, saved)):
            self.delete_parts(database, piece)
        self.write_parts(database, saved)
        return saved

    def restore(self, database: Database, aggregates: Sequence[A]) -> None:
        """Write aggregates that were removed, as themselves."""
        identities = set(map(identity_of, aggregates))
        if len(identities) < len(aggregates) or known(database, self.table, "id", identities):
            raise Conflict(
                sentence("This {kind} is already there.", kind=self.kind),
                sentence("Nothing was changed."),
            )
        self._check_all(database, aggregates)
        self._put(database, aggregates)

    def remove(self, database: Database, aggregates: Sequence[A]) -> None:
        """Remove stored aggregates with their parts; InvalidRecord while something needs one."""
        for aggregate in aggregates:
            self.refuse_if_needed(database, aggregate)
        for piece in in_pieces(map(identity_of, aggregates)):
            self.delete_parts(database, piece)
            delete_of(database, self._table_name, "id", piece)

    # What a kind with parts of its own does otherwise

    def build(self, database: Database, rows: list[tuple[Any, ...]]) -> tuple[A, ...]:
        """Aggregates from the rows of this kind's own table."""
        return tuple(self.record(**dict(zip(self._names, row, strict=True))) for row in rows)

    def columns(self, aggregate: A) -> dict[str, Any]:
        """The values of the row, without identity and revision."""
        return {name: getattr(aggregate, name) for name in self._names if name not in NUMBERS}

    def write_parts(self, database: Database, aggregates: Sequence[A]) -> None:
        """Write the rows of other tables that belong to the aggregates."""

    def delete_parts(self, database: Database, identities: list[int]) -> None:
        """Remove the rows of other tables that belong to the aggregates of these identities."""

    def called(self, aggregate: A) -> str:
        """What to call the aggregate in a sentence: "a trainee called Ada". For each kind with
        ``unique`` fields.
        """
        raise NotImplementedError

    def check(self, aggregates: Sequence[A]) -> None:
        """Raise InvalidRecord where one of the aggregates in itself breaks a rule of the data."""

    def check_references(self, database: Database, aggregates: Sequence[A]) -> None:
        """Raise InvalidRecord where one of the aggregates names a record that is not there."""
        for reference in self.references:
            wanted = [getattr(aggregate, reference.field) for aggregate in aggregates]
            there = known(database, reference.table, reference.by, wanted)
            for value in wanted:
                if value not in there:
                    raise missing(reference.field, value)

    def refuse_if_needed(self, database: Database, aggregate: A) -> None:
        """Raise InvalidRecord where the aggregate cannot be removed."""

    def renewed(self, aggregate: A, identity: int, revision: int) -> A:
        """The aggregate with its identity and revision."""
        return remade(aggregate, id=identity, revision=revision)

    @property
    def _table_name(self) -> str:
        name: str = self.table._meta.table_name
        return name

    def _row(self, aggregate: A, columns: Iterable[_Column]) -> tuple[Any, ...]:
        """The columns as they stand in the file."""
        values = self.columns(aggregate)
        return tuple(
            [
                values[name] if convert is None else convert(values[name])
                for name, _, convert in columns
            ]
        )

    def _put(self, database: Database, aggregates: Sequence[A]) -> None:
        names = ", ".join(column.column for column in self._own)
        database.insert(
            f"{self._table_name} ({names}, id, revision)",
            [(*self._row(x, self._own), identity_of(x), revision_of(x)) for x in aggregates],
        )
        self.write_parts(database, aggregates)

    def _last_identity(self, database: Database) -> int:
        """The highest identity ever given."""
        sql = "SELECT seq FROM sqlite_sequence WHERE name = ?"
        rows = database.execute(sql, (self._table_name,))
        return int(rows[0][0]) if rows else 0

    def _check_all(self, database: Database, aggregates: Sequence[A]) -> None:
        self.check(aggregates)
        self.check_references(database, aggregates)
        if self.unique:
            self._refuse_doubles(database, aggregates)

    def _refuse_doubles(self, database: Database, aggregates: Sequence[A]) -> None:
        fields = [getattr(self.table, name) for name in self.unique]
        seen: set[tuple[Any, ...]] = set()
        for piece in in_pieces(aggregates):
            told = [tuple(getattr(each, name) for name in self.unique) for each in piece]
            alike = [
                field.in_(list(dict.fromkeys(values)))
                for field, values in zip(fields, zip(*told, strict=True), strict=True)
            ]
            rows = database.rows(self.table.select(self.table.id, *fields).where(*alike))
            owners = {tuple(values): identity for identity, *values in rows}
            for each, values in zip(piece, told, strict=True):
                identity = identity_of(each)
                if values in seen or owners.get(values, identity) != identity:
                    raise InvalidRecord(
                        sentence("There is already {record}.", record=self.called(each)),
                        sentence("Change the one that is there, or choose another."),
                        field=self.unique[-1],
                    )
                seen.add(values)

    def _conflict(self, removed: bool) -> Conflict:
        text = (
            sentence("This {kind} was removed elsewhere since it was read.", kind=self.kind)
            if removed
            else sentence("This {kind} was changed elsewhere since it was read.", kind=self.kind)
        )
        return Conflict(
            text,
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
    what = Kind(what) if what in set(Kind) else what
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


def known(
    database: Database, table: type[Aggregate], by: str, wanted: Iterable[Any]
) -> frozenset[Any]:
    """Which of the values stand in the column ``by`` of a table."""
    name = table._meta.table_name
    return frozenset(
        value
        for piece in in_pieces(dict.fromkeys(wanted))
        for (value,) in database.execute(
            f"SELECT {by} FROM {name} WHERE {by} IN ({marks_for(piece)})", piece
        )
    )


def marks_for(piece: Sequence[object]) -> str:
    """A question mark for each value of a piece: "?, ?, ?"."""
    return ", ".join("?" * len(piece))


def in_pieces(values: Iterable[V]) -> Iterator[list[V]]:
    """The values in lists that are short enough for one query."""
    listed = list(values)
    for start in range(0, len(listed), _MOST_PARAMETERS):
        yield listed[start : start + _MOST_PARAMETERS]


def delete_of(database: Database, table: str, column: str, owners: list[int]) -> None:
    """Delete the rows of a piece of ``owners``, named by ``column``."""
    database.execute(f"DELETE FROM {table} WHERE {column} IN ({marks_for(owners)})", owners)


def parts_by_owner(
    database: Database,
    table: Any,
    owner: str,
    identities: Iterable[int],
    columns: Sequence[str],
    places: Sequence[str] = ("place",),
) -> dict[int, list[tuple[Any, ...]]]:
    """The ``columns`` of the rows whose ``owner`` is one of ``identities``, by owner, in the order
    of their ``places``.
    """
    whose = getattr(table, owner)
    query = table.select(whose, *(getattr(table, name) for name in columns))
    query = query.order_by(whose, *(getattr(table, name) for name in places))
    found: dict[int, list[tuple[Any, ...]]] = {}
    for piece in in_pieces(identities):
        for one, *part in database.rows(query.where(whose.in_(piece))):
            found.setdefault(one, []).append(tuple(part))
    return found
