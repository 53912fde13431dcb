"""The passphrase on a data file: SQLCipher, which encrypts every page of it and of its log.

The library is an extra (``pip install "rungwise[passphrase]"``), imported only where a passphrase
is used. Without it nobody can read the file, and nobody can help.
"""

from __future__ import annotations

import sqlite3
from contextlib import closing
from pathlib import Path
from types import ModuleType
from typing import Any, Final

import peewee

from db.errors import NoCipher
from desktop.training.sentence import sentence

MAGIC: Final = b"SQLite format 3\0"
_PAGE: Final = 4096


def library() -> ModuleType:
    """The sqlite3 module of SQLCipher, kept quiet on standard error. Raises NoCipher."""
    try:
        from sqlcipher3 import dbapi2
    except ImportError as error:
        raise NoCipher(
            sentence("The library for files with a passphrase (sqlcipher3) is not installed."),
            sentence('Install it: pip install "rungwise[passphrase]"'),
        ) from error
    module: ModuleType = dbapi2
    with closing(module.connect(":memory:")) as connection:
        connection.execute("PRAGMA cipher_log_level = NONE")
    return module


def database_of(path: str, passphrase: str, **options: Any) -> peewee.SqliteDatabase:
    """peewee's database of the file, with or without a passphrase."""
    if not passphrase:
        return peewee.SqliteDatabase(path, **options)
    library()
    from playhouse.sqlcipher_ext import SqlCipherDatabase

    database: peewee.SqliteDatabase = SqlCipherDatabase(path, passphrase=passphrase, **options)
    return database


def connect(path: Path, passphrase: str, *, by_cipher: bool = False) -> sqlite3.Connection:
    """A bare connection to a file, with or without a passphrase; ``by_cipher``: by the library in
    either case.
    """
    if not passphrase and not by_cipher:
        return sqlite3.connect(path, isolation_level=None)
    connection: sqlite3.Connection = library().connect(str(path), isolation_level=None)
    if passphrase:
        connection.execute(f"PRAGMA key = {quoted(passphrase)}")
    return connection


def errors(passphrase: str) -> tuple[type[Exception], ...]:
    """What the library raises when the file or the system refuses something."""
    known: tuple[type[Exception], ...] = (peewee.DatabaseError, sqlite3.DatabaseError)
    return (*known, library().DatabaseError) if passphrase else known


def has_passphrase(path: Path) -> bool:
    """Whether a file looks as one with a passphrase does: whole pages without a beginning that
    anybody could know. One that is damaged in its first bytes looks the same.
    """
    with path.open("rb") as file:
        start = file.read(len(MAGIC))
    size = path.stat().st_size
    return size > 0 and size % _PAGE == 0 and start != MAGIC and not start.isascii()


def has_schema(path: Path) -> bool:
    """Whether the plain text of a schema stands in the first million bytes."""
    with path.open("rb") as file:
        return b"CREATE TABLE " in file.read(256 * _PAGE)


def quoted(text: str) -> str:
    """A text for SQL that takes no parameters."""
    doubled = text.replace("'", "''")
    return f"'{doubled}'"
