"""The ladder of schema versions: one numbered rung each, written by hand, climbed one by one.

A rung is shipped once and never edited. Nothing is rebuilt by a tool: a table that must change
its shape is copied, dropped and renamed in the rung's own SQL. Foreign keys are off while a rung
is climbed (switching them inside a transaction does nothing), and checked before it is committed.
"""

from __future__ import annotations

import sqlite3
from collections.abc import Callable, Sequence
from typing import NamedTuple

from db import version_1, version_2, version_3, version_4, version_5, version_6, version_7
from db.errors import DamagedFile

APPLICATION_ID = int.from_bytes(b"Rung", "big")

_DIALECT = {
    "{identity}": "INTEGER PRIMARY KEY AUTOINCREMENT",
    "{real}": "REAL",
    "{strict}": " STRICT",
}


class Rung(NamedTuple):
    """One step of the schema: ``statements`` lead from ``version`` - 1 to ``version``."""

    version: int
    statements: tuple[str, ...]


LADDER = (
    Rung(1, version_1.STATEMENTS),
    Rung(2, version_2.STATEMENTS),
    Rung(3, version_3.STATEMENTS),
    Rung(4, version_4.STATEMENTS),
    Rung(5, version_5.STATEMENTS),
    Rung(6, version_6.STATEMENTS),
    Rung(7, version_7.STATEMENTS),
)


def version_of(connection: sqlite3.Connection) -> int:
    """The schema version that the file says it has; 0 for an empty one."""
    return int(connection.execute("PRAGMA user_version").fetchone()[0])


def climb(
    connection: sqlite3.Connection,
    ladder: Sequence[Rung] = LADDER,
    keep_copy: Callable[[int], object] = lambda version: None,
) -> None:
    """Bring the file to the top of ``ladder``, one transaction a rung.

    ``keep_copy`` is called with the version found before an existing file is changed. Raises
    DamagedFile, and leaves the file at the last good version, where a rung would leave rows that
    refer to nothing; whatever SQLite raises passes through, after the rung was undone.
    """
    found = version_of(connection)
    if found >= len(ladder):
        return
    if found > 0:
        keep_copy(found)
    connection.execute("PRAGMA foreign_keys = OFF")
    try:
        for rung in ladder[found:]:
            _take(connection, rung)
    finally:
        connection.execute("PRAGMA foreign_keys = ON")


def _take(connection: sqlite3.Connection, rung: Rung) -> None:
    connection.execute("BEGIN IMMEDIATE")
    try:
        if version_of(connection) < rung.version:  # another process may have been faster
            for statement in rung.statements:
                connection.execute(_in_dialect(statement))
            _check(connection, rung)
            connection.execute(f"PRAGMA application_id = {APPLICATION_ID}")
            connection.execute(f"PRAGMA user_version = {rung.version}")
        connection.execute("COMMIT")
    except BaseException:
        if connection.in_transaction:
            connection.execute("ROLLBACK")
        raise


def _check(connection: sqlite3.Connection, rung: Rung) -> None:
    lost = connection.execute("PRAGMA foreign_key_check").fetchall()
    if lost:
        from desktop.training.sentence import sentence  # a first look imports this file

        tables = ", ".join(sorted({str(row[0]) for row in lost}))
        raise DamagedFile(
            sentence(
                "Version {version} cannot be reached: rows of {tables} refer to missing ones.",
                version=rung.version,
                tables=tables,
            ),
            sentence("Nothing was changed. Open a backup instead."),
        )


def _in_dialect(statement: str) -> str:
    for word, meaning in _DIALECT.items():
        statement = statement.replace(word, meaning)
    return statement
