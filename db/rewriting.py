"""Writing a closed data file anew beside itself: the old one stands until the new one does."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from contextlib import closing, contextmanager
from pathlib import Path

from db import cipher
from db.database import Database
from db.errors import FileBusy
from db.files import beside, replacing
from db.refusals import busy, told
from db.seals import put_seal, take_seal

_WAIT_MS = 500


@contextmanager
def rewriting(
    path: Path, passphrase: str, *, by_cipher: bool = False
) -> Iterator[tuple[sqlite3.Connection, Path]]:
    """A connection to the file that nobody has beside it, and an empty file to write it into.

    At the end of the block that file takes the place of ``path``; where the block raises, nothing
    changes. ``by_cipher``: a connection of SQLCipher even to a plain file. Raises StoreError,
    FileBusy where somebody else has the file open.
    """
    Database.look_into(path, passphrase).close()
    if by_cipher and not cipher.has_passphrase(path):
        # Two libraries in one process do not see each other's locks: each is asked.
        _alone(path, "", False).close()
    with closing(_alone(path, passphrase, by_cipher)) as source:
        take_seal(path)
        with replacing(path) as fresh:
            try:
                yield source, fresh
            except Exception as error:
                raise told(error, path) or error from error
            for other in beside(path):
                other.unlink(missing_ok=True)
    put_seal(path)


def _alone(path: Path, passphrase: str, by_cipher: bool) -> sqlite3.Connection:
    connection = cipher.connect(
        path, passphrase if cipher.has_passphrase(path) else "", by_cipher=by_cipher
    )
    try:
        connection.execute(f"PRAGMA busy_timeout = {_WAIT_MS}")
        connection.execute("PRAGMA locking_mode = EXCLUSIVE")
        # Which takes the log into the file, and is refused while others have it open.
        mode = connection.execute("PRAGMA journal_mode = DELETE").fetchone()[0]
        if mode != "delete":
            raise FileBusy(*busy(path))
        connection.execute("BEGIN EXCLUSIVE")
        connection.execute("COMMIT")  # the lock is kept until the connection is closed
    except Exception as error:
        connection.close()
        raise told(error, path) or error from error
    return connection
