"""What SQLite and the system say when they refuse something, in the words of the store."""

from __future__ import annotations

import sqlite3
from pathlib import Path

from db.errors import (
    CannotWrite,
    DamagedFile,
    FileBusy,
    InvalidRecord,
    NotOurFile,
    StoreError,
)
from desktop.training.sentence import sentence

_BUSY = {sqlite3.SQLITE_BUSY, sqlite3.SQLITE_LOCKED}
_DAMAGED = {sqlite3.SQLITE_CORRUPT, sqlite3.SQLITE_NOTADB}
_NOT_WRITTEN = {
    sqlite3.SQLITE_READONLY,
    sqlite3.SQLITE_FULL,
    sqlite3.SQLITE_IOERR,
    sqlite3.SQLITE_CANTOPEN,
    sqlite3.SQLITE_PERM,
}


def told(error: Exception, path: Path | str) -> StoreError | None:
    """The error in the words of the store; None where it is a bug rather than the surroundings."""
    origin = getattr(error, "orig", error)
    code = code_of(error)
    if code is None:
        return unreadable(path) if str(origin).startswith("Could not decode") else None
    name = name_of(path)
    if code in _BUSY:
        return FileBusy(*busy(path))
    if code in _DAMAGED:
        return DamagedFile(
            sentence("{name} is damaged: {origin}.", name=name, origin=origin),
            sentence("Do not go on with it; open the latest backup."),
        )
    if code in _NOT_WRITTEN:
        return cannot_write(path, origin)
    if code == sqlite3.SQLITE_CONSTRAINT:
        return InvalidRecord(
            sentence("The record breaks a rule of the data: {origin}.", origin=origin)
        )
    return None


def code_of(error: Exception) -> int | None:
    """SQLite's code of what it refused; None where it was not SQLite."""
    extended = getattr(getattr(error, "orig", error), "sqlite_errorcode", None)
    return None if extended is None else int(extended) & 0xFF


def unreadable(path: Path | str) -> DamagedFile:
    """A value in the file is none that could have been written."""
    return DamagedFile(
        sentence("{file} is damaged: a value in it cannot be read.", file=name_of(path)),
        sentence("Do not go on with it; open the latest backup."),
    )


def busy(path: Path | str) -> tuple[str, str]:
    """What to say, and what to do, where another process writes to the file."""
    return (
        f"{name_of(path)} is being written by another process.",
        "Wait until it has finished, or close the other program, and try again.",
    )


def not_ours(path: Path | str) -> NotOurFile:
    """The file is not a data file of this program."""
    return NotOurFile(
        sentence("{file} is not a data file of this program.", file=name_of(path)),
        sentence("It was left as it is."),
    )


def cannot_write(path: Path | str, error: object) -> CannotWrite:
    """The system or SQLite refused to read or write the file."""
    why = getattr(error, "strerror", None) or error
    return CannotWrite(
        sentence("{file} cannot be read or written: {why}.", file=name_of(path), why=why),
        sentence(
            "Check that its folder exists, that you may write there and that the disk is not full."
        ),
    )


def name_of(path: Path | str) -> str:
    """What to call a data file in a sentence."""
    return path.name if isinstance(path, Path) else "The data"
