"""Setting, changing and removing the passphrase of a data file and of all its copies.

Each file is written anew beside itself, compared with the old one row by row, and only then put in
its place. The copies come first: while the data file itself has the old passphrase, the change can
be repeated after any interruption.
"""

from __future__ import annotations

import sqlite3
from collections.abc import Iterable
from contextlib import closing
from itertools import zip_longest
from pathlib import Path

from db import cipher
from db.database import Database
from db.errors import DamagedFile, InvalidRecord, StoreError, WrongPassphrase
from db.rewriting import rewriting
from db.seals import is_broken, read_seal
from desktop.training.sentence import sentence

LEAST_LETTERS = 8


def change_passphrase(
    path: Path, copies: Iterable[Path], old: str, new: str
) -> tuple[tuple[Path, StoreError], ...]:
    """Give ``path`` and its ``copies`` the passphrase ``new`` in place of ``old`` ("" for none).

    Nobody may have the file open. Gives the copies that could not be rewritten, with the reason;
    they are left as they are. Raises StoreError where the file itself cannot be; then it stands as
    it was.
    """
    check_passphrase(new)
    cipher.library()
    Database.look_into(path, old).close()
    left = []
    for copy in copies:
        try:
            _rewrite_copy(copy, old, new)
        except StoreError as error:
            left.append((copy, error))
    rewrite(path, old, new)
    return tuple(left)


def check_passphrase(new: str) -> None:
    """Raise InvalidRecord where it is too short, or holds what cannot be typed; "" is none."""
    if new and (len(new) < LEAST_LETTERS or not new.isprintable() or new != new.strip()):
        raise InvalidRecord(
            sentence(
                "A passphrase has at least {least_letters} letters, signs or spaces between them.",
                least_letters=LEAST_LETTERS,
            ),
            sentence("Several words that you can remember are good."),
            field="passphrase",
        )


def rewrite(path: Path, old: str, new: str) -> None:
    """Write the file anew with another passphrase. Raises StoreError; then it stands as it was."""
    if is_broken(path, read_seal(path)):
        raise DamagedFile(
            sentence("{file} changed on the disk though nobody wrote to it.", file=path.name),
            sentence("Go back to a backup."),
        )
    with rewriting(path, old, by_cipher=True) as (source, fresh):
        _export(source, fresh, new)
        _compare(source, fresh, new)


def _rewrite_copy(path: Path, old: str, new: str) -> None:
    """As `rewrite`; one that has the new passphrase from an interrupted change is left alone."""
    try:
        rewrite(path, old, new)
    except WrongPassphrase:
        Database.look_into(path, new).close()


def _export(source: sqlite3.Connection, fresh: Path, new: str) -> None:
    version = int(source.execute("PRAGMA user_version").fetchone()[0])
    application = int(source.execute("PRAGMA application_id").fetchone()[0])
    source.execute("ATTACH ? AS fresh KEY ?", (str(fresh), new))
    # Nobody needs it before it is whole, and it is written through then.
    source.execute("PRAGMA fresh.synchronous = OFF")
    source.execute("PRAGMA fresh.journal_mode = MEMORY")
    source.execute("SELECT sqlcipher_export('fresh')")
    source.execute(f"PRAGMA fresh.user_version = {version}")
    source.execute(f"PRAGMA fresh.application_id = {application}")
    source.execute("DETACH fresh")


def _compare(source: sqlite3.Connection, fresh: Path, new: str) -> None:
    """Raise DamagedFile unless both hold the same schema and the same rows, and are sound."""
    schema = "SELECT type, name, tbl_name, sql FROM sqlite_master ORDER BY type, name"
    with closing(Database.look_into(fresh, new)) as written:
        problems = written.quick_check()
        entries = written.execute(schema)
        if entries != source.execute(schema).fetchall():
            problems.append("The schema differs.")
        tables = [name for kind, name, *_ in entries if kind == "table"]
        problems += [f"{name} differs." for name in tables if not _same(source, written, name)]
    if problems:
        raise DamagedFile(
            sentence(
                "What was written in place of the file is not the same: {listed}",
                listed=" ".join(problems),
            ),
            sentence("Nothing was changed. Check the disk."),
        )


def _same(source: sqlite3.Connection, written: Database, table: str) -> bool:
    sql = f'SELECT * FROM "{table}"'
    rows = zip_longest(source.execute(sql), written.stream(sql))
    return all(one == other for one, other in rows)
