"""Erasing a trainee for good: from the data file, its log and every copy of it.

Each file is first written anew without the trainee beside itself, checked, and then put in its
place, so that no page keeps what was there. A copy is known to hold the trainee by number or name.
What the disk itself keeps in freed blocks is out of reach of a program.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from contextlib import closing
from dataclasses import dataclass
from pathlib import Path
from sqlite3 import Connection

import msgspec

from db import cipher
from db.database import Database
from db.errors import CannotWrite, DamagedFile, StoreError
from db.files import clear_unfinished
from db.rewriting import rewriting
from db.seals import remove_file
from desktop.training.sentence import sentence


@dataclass(frozen=True, slots=True)
class Mention:
    """A text of somebody else's record in which the name stands: where it is, by table, column and
    number. It is left as it is.
    """

    table: str
    column: str
    number: int


@dataclass(frozen=True, slots=True)
class Erased:
    """What was done: copies written anew, damaged ones ``removed`` because they cannot be, copies
    that were ``left`` with the reason, and other texts with the name.
    """

    rewritten: tuple[Path, ...] = ()
    removed: tuple[Path, ...] = ()
    left: tuple[tuple[Path, StoreError], ...] = ()
    mentions: tuple[Mention, ...] = ()


def erase_trainee(
    path: Path, copies: Iterable[Path], trainee_id: int, name: str, passphrase: str = ""
) -> Erased:
    """Erase a trainee from ``path`` and its ``copies``. Nobody may have the file open.

    The copies come first, so that it can be repeated after an interruption. Raises StoreError
    where the file itself cannot be rewritten; then it stands as it was.
    """
    rewritten, removed, left = [], [], []
    for copy in (listed := tuple(copies)):
        try:
            if _rewrite_without(copy, trainee_id, name, passphrase):
                rewritten.append(copy)
        except DamagedFile:
            remove_file(copy)
            removed.append(copy)
        except StoreError as error:
            left.append((copy, error))
    _rewrite_without(path, trainee_id, name, passphrase)
    for one in (path, *listed):
        clear_unfinished(one.parent, one.stem.split(".")[0].split("-")[0])
    with closing(Database.look_into(path, passphrase)) as database:
        mentions = tuple(_mentions(database, name))
    return Erased(tuple(rewritten), tuple(removed), tuple(left), mentions)


def _rewrite_without(path: Path, trainee_id: int, name: str, passphrase: str) -> bool:
    """Whether the trainee was in the file, which is now without; its pages are new ones."""
    who = "SELECT id, name FROM trainee WHERE id = ? OR name = ?"
    with closing(Database.look_into(path, passphrase)) as present:
        problems = present.quick_check()
        if problems:
            raise DamagedFile(
                sentence("{file} is damaged: {problems}", file=path.name, problems=problems[0])
            )
        found = dict(present.execute(who, (trainee_id, name)))
    if not found:
        return False
    with rewriting(path, passphrase) as (source, fresh):
        held_back = passphrase if cipher.has_passphrase(path) else ""
        with closing(cipher.connect(fresh, held_back)) as written:
            source.backup(written)
            written.execute("PRAGMA synchronous = OFF")  # it is written through when it is whole
            written.execute("PRAGMA journal_mode = MEMORY")
            written.execute("PRAGMA secure_delete = ON")
            written.execute("PRAGMA foreign_keys = ON")
            written.executemany("DELETE FROM trainee WHERE id = ?", [(one,) for one in found])
            _forget_in_mappings(written, {name, *found.values()})
            written.execute("VACUUM")
        _check(fresh, held_back, found)
    return True


def _forget_in_mappings(written: Connection, names: set[str]) -> None:
    """Take the names out of how tables are read: whose a table was, and who is called what there.
    It is done on the text itself, which in a copy may be that of an earlier build.
    """
    for number, text in list(written.execute("SELECT id, value FROM coach_settings")):
        settings = msgspec.json.decode(text)
        for mapping in settings.get("tables", ()):
            if mapping.get("trainee") in names:
                mapping["trainee"] = ""
            called = mapping.get("names", ())
            mapping["names"] = [pair for pair in called if names.isdisjoint(pair)]
        without = msgspec.json.encode(settings).decode()
        if settings.get("tables"):
            written.execute("UPDATE coach_settings SET value = ? WHERE id = ?", (without, number))


def _check(fresh: Path, passphrase: str, erased: Iterable[int]) -> None:
    with closing(Database.look_into(fresh, passphrase)) as written:
        problems = written.quick_check()
        for trainee_id in erased:
            if written.execute("SELECT 1 FROM trainee WHERE id = ?", (trainee_id,)):
                problems.append("The trainee is still there.")
    if problems:
        raise CannotWrite(
            sentence("It cannot be written without the trainee: {problems}", problems=problems[0]),
            sentence("Check the disk."),
        )


def _mentions(database: Database, name: str) -> Iterator[Mention]:
    """Texts with the name in them. Names of one or two letters are not looked for."""
    if len(name.strip()) < 3:
        return
    word = re.compile(rf"(?<!\w){re.escape(name)}(?!\w)", re.IGNORECASE)
    tables = database.execute("SELECT name FROM sqlite_master WHERE type = 'table'")
    for (table,) in tables:
        columns = database.execute(f'PRAGMA table_info("{table}")')
        key = "rowid" if all(column[1] != "id" for column in columns) else "id"
        for _, column, kind, *_ in columns:
            if kind == "TEXT":
                sql = f'SELECT {key}, "{column}" FROM "{table}" WHERE "{column}" LIKE ?'
                for number, text in database.execute(sql, (f"%{name}%",)):
                    if word.search(text):
                        yield Mention(table, column, number)
