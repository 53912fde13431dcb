"""One data file: opened, checked, brought to the current version, and spoken to.

What is SQLite's alone stands here and in the ladder: pragmas, locks, the online copy, error
codes. Every thread has its own connection; a worker uses ``connection_context()``.
"""

from __future__ import annotations

import sqlite3
import time
from collections.abc import Callable, Iterator, Sequence
from contextlib import closing, contextmanager
from itertools import chain
from pathlib import Path
from typing import Any

import peewee

from db import cipher
from db.doorstep import prepare_file
from db.errors import (
    CannotWrite,
    DamagedFile,
    FileBusy,
    InvalidRecord,
    NewerFile,
    StoreError,
    WrongPassphrase,
)
from db.files import clear_unfinished, free_name, replacing
from db.migrations import APPLICATION_ID, LADDER, Rung, climb, version_of
from db.refusals import busy, code_of, name_of, not_ours, told, unreadable
from db.seals import Seal, is_broken, put_seal, take_seal
from desktop.training.sentence import sentence

BUSY_SECONDS = 5.0
LEAST_SQLITE = (3, 37, 0)
MEMORY = ":memory:"
_MOST_PARAMETERS = 3_200

_PRAGMAS = {
    "foreign_keys": 1,
    "synchronous": "FULL",
    "temp_store": "MEMORY",
    "trusted_schema": 0,
    "cache_size": -16000,
}


class Database:
    """An open data file. Made by `Database.open`; rows go in and out as plain tuples."""

    def __init__(self, path: Path | str, passphrase: str = "", *, read_only: bool = False) -> None:
        self.path = path
        self._passphrase = passphrase
        self._refusals = cipher.errors(passphrase)
        self._seal: Seal | None = None
        self._seals = False
        self._database = cipher.database_of(
            f"{Path(path).absolute().as_uri()}?mode=ro" if read_only else str(path),
            passphrase,
            uri=read_only,
            pragmas=_PRAGMAS,
            timeout=BUSY_SECONDS,
            lock_type="IMMEDIATE",
            autoconnect=False,
        )

    @classmethod
    def open(
        cls,
        path: Path | str,
        create: bool = True,
        ladder: Sequence[Rung] = LADDER,
        passphrase: str = "",
    ) -> Database:
        """Open the data file at ``path`` (":memory:" for one that is never kept).

        A missing or empty file is made, for its owner's eyes only, unless ``create`` is False. An
        older file is copied beside itself and brought to the current version. Raises NotFound,
        NotOurFile, NewerFile, DamagedFile, FileBusy or CannotWrite; a file that is refused is
        left as it was.

        A new file gets the ``passphrase``; one that has a passphrase needs it (PassphraseNeeded,
        WrongPassphrase, NoCipher), and one that has none is opened without.
        """
        _require_sqlite(sqlite3.sqlite_version_info)
        if path != MEMORY:
            path = Path(path)
            passphrase = prepare_file(path, create, passphrase)
        database = cls(path, passphrase)
        database._seals = isinstance(path, Path)
        if isinstance(path, Path):
            database._seal = take_seal(path)
        try:
            with database._errors():
                database._unlock()
                database._take_in(ladder)
        except BaseException:
            database._seals = database._seal is not None  # as it was found
            database.close()
            raise
        return database

    @classmethod
    def look_into(cls, path: Path, passphrase: str = "") -> Database:
        """A data file that is there, to be read only: nothing about it is changed, not even an
        older version. Raises as `open` does.
        """
        passphrase = prepare_file(path, False, passphrase)
        database = cls(path, passphrase, read_only=True)
        try:
            with database._errors():
                database._unlock()
                database._refuse_foreign(database._database.connection(), len(LADDER))
        except BaseException:
            database.close()
            raise
        return database

    @classmethod
    def refill(cls, path: Path, source: Database) -> None:
        """Take the whole content of ``source`` in place of that of the file: all or nothing.

        Others may have the file open; they see it as one change. Raises FileBusy, CannotWrite.
        """
        take_seal(path)
        database = cls(path, source._passphrase)
        database._seals = True
        patience = time.monotonic() + BUSY_SECONDS

        def no_longer(status: int, _remaining: int, _total: int) -> None:
            if status != sqlite3.SQLITE_DONE and time.monotonic() > patience:
                raise FileBusy(*busy(path))

        try:
            with database._errors():
                there = database._database.connection()
                source._database.connection().backup(there, progress=no_longer, sleep=0.05)
        finally:
            database.close()

    def close(self) -> None:
        """Close this thread's connection; closing twice does nothing.

        The last one leaves the file with a seal.
        """
        with self._errors():
            closed = self._database.close()
        if closed and self._seals and isinstance(self.path, Path):
            put_seal(self.path, self._seal)

    @property
    def closed(self) -> bool:
        """Whether this thread has no connection any more."""
        return bool(self._database.is_closed())

    @contextmanager
    def connection_context(self) -> Iterator[None]:
        """This thread's connection: a worker's own one, closed at the end of the block."""
        if not self._database.is_closed():
            yield
            return
        if self.path == MEMORY:
            raise StoreError(sentence("Data in memory belong to the thread that made them."))
        with self._errors():
            self._database.connect()
        try:
            yield
        finally:
            self.close()

    @contextmanager
    def transaction(self) -> Iterator[None]:
        """All or nothing: everything in the block is one transaction. Blocks may be nested."""
        with self._errors():
            broken: BaseException | None = None
            try:
                with self._database.atomic():
                    try:
                        yield
                    except BaseException as error:
                        broken = error
                        raise
            except peewee.OperationalError as error:
                # On a full disk SQLite undoes all by itself, and then refuses to undo it again.
                if self._database.connection().in_transaction:
                    raise
                raise (broken or _cause(error, self.path)) from None

    @contextmanager
    def snapshot(self) -> Iterator[None]:
        """Several reads of one moment, whatever others write meanwhile; nobody is kept waiting."""
        if self._database.in_transaction():
            yield
            return
        with self._errors(), self._database.transaction("DEFERRED"):
            yield

    @contextmanager
    def without_waiting(self) -> Iterator[None]:
        """Writes in the block wait neither for the disk nor for another process that writes.

        They outlive the end of this process, but not a power cut; for what is no record. Not
        within a transaction: it is committed as it began.
        """
        self.execute("PRAGMA synchronous = NORMAL")
        self.execute("PRAGMA busy_timeout = 0")
        try:
            yield
        finally:
            self.execute(f"PRAGMA busy_timeout = {round(BUSY_SECONDS * 1000)}")
            self.execute("PRAGMA synchronous = FULL")

    def execute(self, sql: str, parameters: Sequence[object] = ()) -> list[tuple[Any, ...]]:
        """Run one statement with ``?`` for each parameter, and give all its rows."""
        with self._errors():
            return list(self._database.execute_sql(sql, tuple(parameters)).fetchall())

    def stream(self, sql: str, parameters: Sequence[object] = ()) -> Iterator[tuple[Any, ...]]:
        """The rows of one query, one by one, so that a long answer is never held twice."""
        with self._errors():
            yield from self._database.execute_sql(sql, tuple(parameters))

    def execute_many(self, sql: str, rows: Sequence[Sequence[object]]) -> int:
        """Run one statement for every row of parameters; the number of rows it changed."""
        with self._errors():
            return int(self._database.connection().executemany(sql, rows).rowcount)

    def insert(self, into: str, rows: Sequence[Sequence[object]]) -> None:
        """Insert rows; ``into`` names table and columns: "phase (program_id, place)".

        Many go in by statements of several rows each: SQLite then gets ready for the checks of a
        table once a statement, which otherwise takes half of the time.
        """
        if not rows:
            return
        at_once = max(1, _MOST_PARAMETERS // len(rows[0]))
        whole = len(rows) // at_once * at_once
        one = f"({', '.join('?' * len(rows[0]))})"
        several = ", ".join([one] * at_once)
        starts = range(0, whole, at_once)
        with self._errors():
            connection = self._database.connection()
            connection.executemany(
                f"INSERT INTO {into} VALUES {several}",
                (tuple(chain.from_iterable(rows[n : n + at_once])) for n in starts),
            )
            connection.executemany(f"INSERT INTO {into} VALUES {one}", rows[whole:])

    def rows(self, query: Any) -> list[tuple[Any, ...]]:
        """The rows of a select of `db.schema`, with values converted by its fields."""
        with self._errors():
            try:
                return list(query.tuples().bind(self._database).execute())
            except UnicodeEncodeError:  # of what is asked for, not of what is there
                raise
            except ValueError as error:
                raise unreadable(self.path) from error

    def change(self, query: Any) -> int:
        """Run an insert (gives the new id), update or delete (gives the number of rows)."""
        with self._errors():
            return int(query.bind(self._database).execute())

    @property
    def schema_version(self) -> int:
        """The version of the file's schema."""
        return int(self.execute("PRAGMA user_version")[0][0])

    @property
    def passphrase(self) -> str:
        """The passphrase that it was opened with; "" where it has none."""
        return self._passphrase

    @property
    def data_version(self) -> int:
        """A number that differs when another connection has written since it was last read."""
        return int(self.execute("PRAGMA data_version")[0][0])

    @property
    def in_transaction(self) -> bool:
        """Whether what was written last may yet be undone."""
        return bool(self._database.in_transaction())

    @property
    def connection(self) -> object:
        """What tells this thread's connection from every other one."""
        connection: object = self._database.connection()
        return connection

    @property
    def query_hooks(self) -> list[Callable[[Any], None]]:
        """Functions called after each query; for counting and timing."""
        hooks: list[Callable[[Any], None]] = self._database.query_hooks
        return hooks

    def quick_check(self) -> list[str]:
        """What is wrong inside the file, one sentence each; empty when it is sound."""
        try:
            problems = [str(row[0]) for row in self.execute("PRAGMA quick_check")]
            lost = sorted({str(row[0]) for row in self.execute("PRAGMA foreign_key_check")})
        except DamagedFile as error:  # too far gone to be checked to the end
            return [str(error)]
        found = [] if problems == ["ok"] else problems
        if isinstance(self.path, Path) and is_broken(self.path, self._seal):
            found.append("The file changed on the disk though nobody wrote to it.")
        return found + [f"Rows of {table} refer to missing ones." for table in lost]

    def copy_to(self, target: Path) -> None:
        """Copy the whole data, as it stands now, to ``target``, while it may be in use.

        The copy is made beside the target, checked, written through to the disk and only then put
        in its place, so that ``target`` is at any time the old copy or a good new one.
        """
        with replacing(target) as unfinished, self._errors(target):
            self._refuse_in_use(target)
            self._refuse_broken()
            self.copy_content_to(unfinished)

    def _refuse_in_use(self, target: Path) -> None:
        own = isinstance(self.path, Path) and target.exists() and target.samefile(self.path)
        if own or target.with_name(target.name + "-wal").exists():
            raise CannotWrite(
                sentence(
                    "{file} is a data file in use: a copy in its place would destroy it.",
                    file=target.name,
                ),
                sentence("Choose another name for the copy."),
            )

    def _refuse_broken(self) -> None:
        if isinstance(self.path, Path) and is_broken(self.path, self._seal):
            raise DamagedFile(
                sentence(
                    "{file} is damaged (it changed on the disk though nobody wrote to it); no "
                    "copy was made of it.",
                    file=name_of(self.path),
                ),
                sentence("Open the latest backup."),
            )

    def copy_content_to(self, unfinished: Path) -> None:
        """Write a copy into an empty file and check it. Raises DamagedFile, CannotWrite."""
        with closing(cipher.connect(unfinished, self._passphrase)) as copy:
            copy.execute("PRAGMA synchronous = OFF")  # it is written through when it is whole
            self._database.connection().backup(copy)
            copy.execute("PRAGMA journal_mode = DELETE")  # one file, nothing beside it
        checked = Database(unfinished, self._passphrase)
        with checked.connection_context():
            problems = checked.quick_check()
        if problems:
            raise DamagedFile(
                sentence(
                    "{file} is damaged ({problems}); no copy was made of it.",
                    file=name_of(self.path),
                    problems=problems[0],
                ),
                sentence("Open the latest backup."),
            )

    def _unlock(self) -> None:
        """The first look at the content, which only the right passphrase allows."""
        try:
            self._database.connection().execute("SELECT count(*) FROM sqlite_master")
        except self._refusals as error:
            if self._passphrase and code_of(error) == sqlite3.SQLITE_NOTADB:
                raise WrongPassphrase(
                    sentence("The passphrase does not open {file}.", file=name_of(self.path)),
                    sentence(
                        "Try it again. If it is right, the file is damaged: go back to a backup."
                    ),
                ) from error
            raise

    def _take_in(self, ladder: Sequence[Rung]) -> None:
        connection = self._database.connection()
        self._refuse_foreign(connection, len(ladder))
        connection.execute("PRAGMA journal_mode = WAL")
        climb(connection, ladder, self._keep_copy)

    def _refuse_foreign(self, connection: sqlite3.Connection, newest: int) -> None:
        application = int(connection.execute("PRAGMA application_id").fetchone()[0])
        version = version_of(connection)
        tables = int(connection.execute("SELECT count(*) FROM sqlite_master").fetchone()[0])
        empty = application == 0 and version == 0 and tables == 0
        if not empty and application != APPLICATION_ID:
            raise not_ours(self.path)
        if version > newest:
            raise NewerFile(
                sentence(
                    "{file} was written by a newer version of this program (its data have "
                    "version {version}, this program knows up to {newest}).",
                    file=name_of(self.path),
                    version=version,
                    newest=newest,
                ),
                sentence("Install the newer version of the program, or open a backup."),
            )

    def _keep_copy(self, version: int) -> None:
        if not isinstance(self.path, Path):
            return
        clear_unfinished(self.path.parent, f"{self.path.stem}.version-{version}")
        self.copy_to(free_name(self.path, f"version-{version}"))

    @contextmanager
    def _errors(self, path: Path | str | None = None) -> Iterator[None]:
        try:
            yield
        except self._refusals as error:
            refusal = told(error, path or self.path)
            if refusal is None:
                raise
            raise refusal from error
        except UnicodeDecodeError as error:  # SQLite tells of damage in the damaged letters
            raise unreadable(self.path) from error
        except (UnicodeEncodeError, OverflowError) as error:
            raise InvalidRecord(
                sentence("The record holds what cannot be kept: {error}.", error=error)
            ) from error


def _cause(error: BaseException, path: Path | str) -> BaseException:
    """What came first and led to ``error``: that which SQLite or the system refused."""
    earlier: BaseException | None = error
    while earlier is not None:
        if isinstance(earlier, peewee.DatabaseError) and told(earlier, path) is not None:
            return earlier
        earlier = earlier.__context__
    return error


def _require_sqlite(version: tuple[int, ...]) -> None:
    if version < LEAST_SQLITE:
        raise StoreError(
            sentence(
                "SQLite {there} is too old: the data need {least} or newer.",
                there=".".join(map(str, version)),
                least=".".join(map(str, LEAST_SQLITE)),
            ),
            sentence("Use a Python that brings a newer SQLite."),
        )
