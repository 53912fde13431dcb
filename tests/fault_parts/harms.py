"""Pieces of work that may be broken off at any moment, and what has to stand afterwards."""

from __future__ import annotations

import gzip
import sqlite3
from collections.abc import Callable
from contextlib import closing
from dataclasses import dataclass
from datetime import date
from pathlib import Path
from typing import ClassVar

from db.backup import back_up_on_closing
from db.copies import copies_of
from db.database import Database
from db.erasing import erase_trainee
from db.log_files import read_log
from db.log_import import plan_import
from db.log_saving import carry_out
from db.migrations import LADDER
from db.repository import Repository
from db.restoring import backups_in, restore
from tests.fault_parts.child import Ended, Tell
from tests.fault_parts.people import FIRST, NAME, data_file, numbers_in, session

_STORED = Path(__file__).parent.parent / "stored" / "version-1.db.gz"


@dataclass(frozen=True, slots=True)
class Harm:
    """Work to be broken off: ``work(folder, tell)`` on a fresh copy of what ``begin`` made;
    ``check(folder, ended)`` raises AssertionError where something was lost or torn.
    """

    name: str
    begin: Callable[[Path], None]
    work: Callable[[Path, Tell], None]
    check: Callable[[Path, Ended], None]


# Writing: sessions one by one, each told once it is saved


def _begin_writing(folder: Path) -> None:
    data_file(folder / "data.db", sessions=10)


def _write(folder: Path, tell: Tell) -> None:
    with closing(Database.open(folder / "data.db")) as database:
        repository = Repository(database)
        for number in range(10, 60):
            repository.save(session(number))
            tell(str(number))


def _check_written(folder: Path, ended: Ended) -> None:
    there = numbers_in(folder / "data.db")
    told = [int(line) for line in ended.told]
    assert there[:10] == list(range(10))
    assert there[10:] in (told, [*told, 10 + len(told)]), f"told {told}, there {there[10:]}"


# Importing: all of a log or nothing of it

_WITH_LOG = 603
"""Sessions in all: enough that the import needs more room than the file before it."""


def _begin_importing(folder: Path) -> None:
    data_file(folder / "data.db", sessions=3)
    lines = ["trainee,date,exercise,set,load,unit,reps"]
    for number in range(3, _WITH_LOG):
        day = session(number).day.isoformat()
        lines += [f"{NAME},{day},Back squat,{n},{100 + number},kg,5" for n in (1, 2, 3)]
    (folder / "log.csv").write_text("\n".join(lines), encoding="utf-8")


def _import(folder: Path, _tell: Tell) -> None:
    with closing(Database.open(folder / "data.db")) as database:
        _take_log(database, folder)


def _take_log(database: Database, folder: Path) -> int:
    repository = Repository(database)
    plan = plan_import(repository, read_log(folder / "log.csv"))
    assert not plan.problems, plan.problems
    return carry_out(repository, plan).new_sessions


def _check_imported(folder: Path, ended: Ended) -> None:
    with closing(Database.open(folder / "data.db")) as database:
        assert database.quick_check() == []
        there = len(Repository(database).sessions(1))
        assert there in ((3, _WITH_LOG) if not ended.whole else (_WITH_LOG,)), f"{there} sessions"
        assert _take_log(database, folder) == _WITH_LOG - there
        assert len(Repository(database).sessions(1)) == _WITH_LOG


# Migrating: the version before or the new one, every row in both


def _begin_migrating(folder: Path) -> None:
    path = folder / "data.db"
    path.write_bytes(gzip.decompress(_STORED.read_bytes()))
    with closing(sqlite3.connect(path)) as connection:
        rows = [(FIRST.toordinal() - 1 - n, 60_000 + n) for n in range(30_000)]
        connection.executemany(
            "INSERT INTO body_mass (revision, trainee_id, day, mass_g) VALUES (1, 1, ?, ?)", rows
        )
        connection.commit()


def _migrate(folder: Path, _tell: Tell) -> None:
    Database.open(folder / "data.db").close()


def _check_migrated(folder: Path, ended: Ended) -> None:
    for path in [*folder.glob("*.version-1*.db"), folder / "data.db"]:
        with closing(Database.open(path)) as database:
            assert database.schema_version == len(LADDER)
            assert database.quick_check() == []
            count = database.execute("SELECT count(*) FROM body_mass")[0][0]
            assert count == 30_001, f"{path.name}: {count} rows"
    assert not ended.whole or (folder / "data.version-1.db").exists()
    _refuse_leftovers(folder)


# Backing up: the copy of yesterday or a good one of today


class _BackingUp:
    """Twelve copies one after another over the same one, so that most kills meet a copy."""

    TODAY: ClassVar = date(2026, 3, 2)

    @staticmethod
    def begin(folder: Path) -> None:
        path = data_file(folder / "data.db", sessions=100, others=500)
        with closing(Database.open(path)) as database:
            back_up_on_closing(database, folder / "backups", _BackingUp.TODAY)
            Repository(database).save(session(100))

    @staticmethod
    def work(folder: Path, _tell: Tell) -> None:
        with closing(Database.open(folder / "data.db")) as database:
            for _ in range(12):
                back_up_on_closing(database, folder / "backups", _BackingUp.TODAY)

    @staticmethod
    def check(folder: Path, ended: Ended) -> None:
        allowed = (100, 101) if not ended.whole else (101,)
        (copy,) = (folder / "backups").glob("*.db")
        assert len(numbers_in(copy)) in allowed
        assert len(numbers_in(folder / "data.db")) == 101
        _BackingUp.work(folder, print)
        assert len(numbers_in(copy)) == 101
        _refuse_leftovers(folder / "backups")


# Restoring: the present file or the backup, and a copy of the present one once it is gone


def _begin_restoring(folder: Path) -> None:
    path = data_file(folder / "data.db", sessions=60, others=600)
    with closing(Database.open(path)) as database:
        back_up_on_closing(database, folder / "backups", FIRST)
        Repository(database).save(session(60))


def _restore(folder: Path, _tell: Tell) -> None:
    restore(folder / "data.db", backups_in(folder / "backups")[0].path, FIRST)


def _check_restored(folder: Path, ended: Ended) -> None:
    there = len(numbers_in(folder / "data.db"))
    assert there in ((60, 61) if not ended.whole else (60,)), f"{there} sessions"
    copies = [len(numbers_in(path)) for path in folder.glob("data.before-restoring-*.db")]
    assert copies in ([], [61])
    assert there == 61 or copies, "the present file is gone"
    _restore(folder, print)
    _refuse_leftovers(folder)


# Erasing: each file with the trainee or without, and once repeated nothing is left


def _begin_erasing(folder: Path) -> None:
    path = data_file(folder / "data.db", sessions=60, others=300)
    with closing(Database.open(path)) as database:
        back_up_on_closing(database, folder / "backups", FIRST)


def _erase(folder: Path, _tell: Tell) -> None:
    path = folder / "data.db"
    erase_trainee(path, copies_of(path, folder / "backups"), 1, NAME)


def _check_erased(folder: Path, ended: Ended) -> None:
    files = [folder / "data.db", *(folder / "backups").glob("*.db")]
    for path in files:
        with closing(Database.open(path)) as database:
            assert database.quick_check() == []
            there = len(Repository(database).trainees())
            assert there in ((300, 301) if not ended.whole else (300,)), f"{there} trainees"
    _erase(folder, print)
    assert not [path for path in folder.rglob("*.*") if NAME.encode() in path.read_bytes()]


def _refuse_leftovers(folder: Path) -> None:
    left = [path.name for path in folder.glob("*.unfinished*")]
    assert not left, f"left behind: {left}"


HARMS = (
    Harm("writing", _begin_writing, _write, _check_written),
    Harm("importing", _begin_importing, _import, _check_imported),
    Harm("migrating", _begin_migrating, _migrate, _check_migrated),
    Harm("backing-up", _BackingUp.begin, _BackingUp.work, _BackingUp.check),
    Harm("restoring", _begin_restoring, _restore, _check_restored),
    Harm("erasing", _begin_erasing, _erase, _check_erased),
)
