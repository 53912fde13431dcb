"""A data file is opened safely or refused plainly; what was committed stays."""

from __future__ import annotations

import inspect
import os
import shutil
import sqlite3
import stat
import subprocess
import sys
from collections.abc import Iterator
from contextlib import closing
from pathlib import Path

import peewee
import pytest

from db import database as database_module
from db import schema
from db.database import MEMORY, Database
from db.errors import (
    CannotWrite,
    DamagedFile,
    FileBusy,
    InvalidRecord,
    NewerFile,
    NotFound,
    NotOurFile,
    StoreError,
)
from db.migrations import APPLICATION_ID, LADDER
from db.repository import Repository
from desktop.training.trainee import Trainee


@pytest.fixture
def path(tmp_path: Path) -> Path:
    return tmp_path / "data.db"


@pytest.fixture
def database(path: Path) -> Iterator[Database]:
    with closing(Database.open(path)) as opened:
        yield opened


def filled(path: Path, names: int = 1) -> Path:
    """A closed data file with trainees."""
    with closing(Database.open(path)) as opened:
        notes = "n" * 500
        Repository(opened).save(*(Trainee(f"Trainee {n}", notes=notes) for n in range(names)))
    return path


# Opening


def test_a_new_file_is_ours_current_and_only_its_owners(database: Database, path: Path) -> None:
    assert database.schema_version == len(LADDER)
    assert database.execute("PRAGMA application_id") == [(APPLICATION_ID,)]
    assert database.quick_check() == []
    if os.name == "posix":
        assert stat.S_IMODE(path.stat().st_mode) == 0o600


def test_each_connection_keeps_its_promises(database: Database) -> None:
    def promises() -> list[object]:
        names = ("journal_mode", "synchronous", "foreign_keys", "trusted_schema")
        return [database.execute(f"PRAGMA {name}")[0][0] for name in names]

    assert promises() == ["wal", 2, 1, 0]
    database.close()
    with database.connection_context():
        assert promises() == ["wal", 2, 1, 0]


@pytest.mark.parametrize("name", ["my data.db", "Übungen für Zoë.db", "💪 100%?#.db", "without"])
def test_a_path_may_hold_spaces_umlauts_and_pictures(tmp_path: Path, name: str) -> None:
    folder = tmp_path / "Ordner mit Ä"
    folder.mkdir()
    filled(folder / name)
    with closing(Database.open(folder / name, create=False)) as opened:
        assert len(Repository(opened).trainees()) == 1
    assert sorted(file.name for file in folder.iterdir()) == [name, f"{name}.sha256"]


def test_an_empty_file_becomes_a_data_file(path: Path) -> None:
    path.touch()
    filled(path)
    with closing(Database.open(path)) as opened:
        assert len(Repository(opened).trainees()) == 1


def test_a_file_whose_making_was_interrupted_is_made_again(path: Path) -> None:
    with closing(sqlite3.connect(path)) as connection:
        connection.execute("PRAGMA journal_mode = WAL")
    filled(path)
    with closing(Database.open(path)) as opened:
        assert opened.quick_check() == []


def test_closing_twice_does_nothing(database: Database) -> None:
    database.close()
    database.close()
    assert database.closed


# What is refused


def test_a_missing_file_is_said_where_none_may_be_made(path: Path) -> None:
    with pytest.raises(NotFound, match="There is no file"):
        Database.open(path, create=False)
    assert not path.exists()


def test_a_missing_folder_is_said(tmp_path: Path) -> None:
    with pytest.raises(CannotWrite, match="cannot be read or written") as caught:
        Database.open(tmp_path / "nowhere" / "data.db")
    assert "folder exists" in caught.value.remedy


def test_a_folder_is_no_data_file(tmp_path: Path) -> None:
    with pytest.raises(NotOurFile, match="is a folder"):
        Database.open(tmp_path)


@pytest.mark.parametrize("content", [b"date;exercise;load\n", b"x", b"SQLite format 2\0" * 9])
def test_a_file_of_another_kind_is_refused_and_left_alone(path: Path, content: bytes) -> None:
    path.write_bytes(content)
    with pytest.raises(NotOurFile, match=r"data\.db is not a data file of this program"):
        Database.open(path)
    assert path.read_bytes() == content


def test_an_empty_file_is_refused_where_none_may_be_made(path: Path) -> None:
    path.touch()
    with pytest.raises(NotOurFile):
        Database.open(path, create=False)


@pytest.mark.parametrize("mark", ["CREATE TABLE t (x)", "PRAGMA application_id = 7"])
def test_the_data_of_another_program_are_refused_and_left_alone(path: Path, mark: str) -> None:
    with closing(sqlite3.connect(path)) as connection:
        connection.execute("PRAGMA user_version = 1")
        connection.execute(mark)
    before = path.read_bytes()
    with pytest.raises(NotOurFile):
        Database.open(path)
    assert path.read_bytes() == before
    assert [file.name for file in path.parent.iterdir()] == [path.name]


def test_a_newer_file_is_refused_and_left_alone(path: Path) -> None:
    filled(path)
    with closing(sqlite3.connect(path)) as connection:
        connection.execute("PRAGMA user_version = 99")
    before = path.read_bytes()
    with pytest.raises(
        NewerFile, match=f"version 99, this program knows up to {len(LADDER)}"
    ) as caught:
        Database.open(path)
    assert "Install the newer version" in caught.value.remedy
    assert path.read_bytes() == before


def test_a_too_old_sqlite_is_said() -> None:
    with pytest.raises(StoreError, match=r"SQLite 3\.34\.1 is too old: the data need 3\.37\.0"):
        database_module._require_sqlite((3, 34, 1))


# Damage, locks, a full disk


def test_a_torn_file_is_said_to_be_damaged(path: Path) -> None:
    filled(path, names=300)
    content = bytearray(path.read_bytes())
    content[4096 * 2 :] = os.urandom(8) * ((len(content) - 4096 * 2) // 8)
    path.write_bytes(bytes(content))
    with (
        pytest.raises(DamagedFile, match=r"data\.db is damaged") as caught,
        closing(Database.open(path)) as opened,
    ):
        Repository(opened).trainees()
    assert "backup" in caught.value.remedy


def test_a_shortened_file_is_said_to_be_damaged(path: Path) -> None:
    filled(path, names=300)
    os.truncate(path, path.stat().st_size // 2)
    with pytest.raises(DamagedFile, match="is damaged"):
        Database.open(path)


def test_damage_inside_is_found_by_the_check_and_never_copied(path: Path, tmp_path: Path) -> None:
    filled(path, names=300)
    good = tmp_path / "good.db"
    good.write_text("the copy of yesterday")
    with path.open("r+b") as file:
        file.seek(-4096, os.SEEK_END)
        file.write(bytes(4096))
    with closing(Database.open(path)) as opened:
        assert opened.quick_check() != []
        with pytest.raises(DamagedFile, match="no copy was made of it"):
            opened.copy_to(good)
    assert good.read_text() == "the copy of yesterday"


def test_rows_that_refer_to_nothing_are_found_by_the_check(database: Database) -> None:
    database.execute("PRAGMA foreign_keys = OFF")
    database.execute(
        "INSERT INTO body_mass (revision, trainee_id, day, mass_g) VALUES (1, 99, 1, 70000)"
    )
    assert database.quick_check() == ["Rows of body_mass refer to missing ones."]


def test_a_file_that_another_process_writes_is_busy(
    path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    filled(path)
    monkeypatch.setattr(database_module, "BUSY_SECONDS", 0.05)
    with closing(Database.open(path)) as opened, closing(sqlite3.connect(path)) as other:
        other.execute("BEGIN IMMEDIATE")
        with pytest.raises(FileBusy, match="written by another process"):
            Repository(opened).save(Trainee("Zoë"))
        other.rollback()
        Repository(opened).save(Trainee("Zoë"))


def test_a_full_disk_is_said_and_nothing_is_half_written(database: Database) -> None:
    repository = Repository(database)
    pages = database.execute("PRAGMA page_count")[0][0]
    database.execute(f"PRAGMA max_page_count = {pages}")
    with pytest.raises(CannotWrite, match="is full") as caught:
        repository.save(*(Trainee(f"T{n}", notes="n" * 9_000) for n in range(50)))
    assert "disk is not full" in caught.value.remedy
    assert repository.trainees() == ()
    database.execute("PRAGMA max_page_count = 100000")
    repository.save(Trainee("Zoë"))


def test_a_file_that_may_only_be_read_is_read_but_not_written(database: Database) -> None:
    database.execute("PRAGMA query_only = 1")
    assert Repository(database).trainees() == ()
    with pytest.raises(CannotWrite, match="readonly"):
        Repository(database).save(Trainee("Zoë"))


def test_a_bug_stays_a_bug(database: Database) -> None:
    with pytest.raises(peewee.OperationalError, match="no such table"):
        database.execute("SELECT * FROM not_there")
    with pytest.raises(peewee.ProgrammingError, match="number of bindings"):
        database.execute("SELECT ?")
    database.close()
    with pytest.raises(peewee.InterfaceError):
        database.execute("SELECT 1")


def test_a_broken_rule_of_the_schema_is_an_invalid_record(database: Database) -> None:
    with pytest.raises(InvalidRecord, match="CHECK constraint failed"):
        database.execute("INSERT INTO coach_settings (id, revision, value) VALUES (2, 1, '')")


# What was committed stays


def test_a_committed_save_outlives_a_killed_process(path: Path) -> None:
    script = (
        "import os, sys; from pathlib import Path; from db.database import Database;"
        "from db.repository import Repository; from desktop.training.trainee import Trainee;"
        "database = Database.open(Path(sys.argv[1])); repository = Repository(database);"
        "repository.save(Trainee('kept'));"
        "transaction = database.transaction(); transaction.__enter__();"
        "repository.save(Trainee('half'));"
        "os._exit(9)"
    )
    root = Path(__file__).parent.parent
    ended = subprocess.run([sys.executable, "-c", script, str(path)], cwd=root, check=False)
    assert ended.returncode == 9
    with closing(Database.open(path)) as opened:
        assert [one.name for one in Repository(opened).trainees()] == ["kept"]
        assert opened.quick_check() == []


def test_an_open_file_copied_with_its_log_holds_all_that_was_committed(
    database: Database, path: Path, tmp_path: Path
) -> None:
    Repository(database).save(Trainee("kept"))
    crashed = tmp_path / "crashed"
    crashed.mkdir()
    for file in tmp_path.glob("data.db*"):
        if not file.name.endswith("-shm"):
            shutil.copy(file, crashed)
    with closing(Database.open(crashed / path.name)) as opened:
        assert [one.name for one in Repository(opened).trainees()] == ["kept"]


def test_an_error_undoes_its_own_transaction_only(database: Database) -> None:
    repository = Repository(database)
    with database.transaction():
        repository.save(Trainee("first"))
        with pytest.raises(InvalidRecord):
            repository.save(Trainee("second"), Trainee("first"))
        repository.save(Trainee("third"))
    assert [one.name for one in repository.trainees()] == ["first", "third"]


# The models


def test_the_models_say_what_the_schema_says() -> None:
    with closing(Database.open(MEMORY)) as opened:
        tables = {
            row[0]
            for row in opened.execute(
                "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%'"
            )
        }
        described: set[str] = set()
        for _, model in inspect.getmembers(schema, inspect.isclass):
            if issubclass(model, peewee.Model) and model._meta.sorted_fields[1:]:
                columns = opened.execute(f"PRAGMA table_info({model._meta.table_name})")
                if not columns:
                    continue
                described.add(model._meta.table_name)
                fields = [
                    (field.column_name, not field.null) for field in model._meta.sorted_fields
                ]
                wanted = [
                    (name, bool(required) or name == "id") for _, name, _, required, *_ in columns
                ]
                assert fields == wanted, model
        assert tables - described == {"coach_settings", "brief", "session_draft"}


def test_the_store_starts_without_numpy_and_qt() -> None:
    script = (
        "import sys; import db.repository, db.backup;"
        "sys.exit(str({'numpy', 'PySide6', 'scipy'} & set(sys.modules) or ''))"
    )
    root = Path(__file__).parent.parent
    ended = subprocess.run(
        [sys.executable, "-c", script], cwd=root, check=False, capture_output=True, text=True
    )
    assert ended.stderr.strip() == ""


# Who may read it


@pytest.mark.skipif(os.name != "posix", reason="modes are a matter of POSIX")
def test_file_log_and_index_are_their_owners_alone(path: Path) -> None:
    before = os.umask(0)
    try:
        filled(path)
        path.chmod(0o664)  # copied here by other means
        with closing(Database.open(path)) as opened:
            Repository(opened).save(Trainee("Zoë"))
            modes = {file.name: stat.S_IMODE(file.stat().st_mode) for file in path.parent.iterdir()}
        assert modes == {"data.db": 0o600, "data.db-wal": 0o600, "data.db-shm": 0o600}
        modes = {file.name: stat.S_IMODE(file.stat().st_mode) for file in path.parent.iterdir()}
        assert modes == {"data.db": 0o600, "data.db.sha256": 0o600}
    finally:
        os.umask(before)
