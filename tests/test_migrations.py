"""The ladder is climbed rung by rung, with a copy first, or not at all."""

from __future__ import annotations

import gzip
import sqlite3
from contextlib import closing
from datetime import date
from pathlib import Path

import pytest

from db.database import MEMORY, Database
from db.errors import DamagedFile, NewerFile
from db.migrations import LADDER, Rung, climb, version_of
from db.repository import Repository
from desktop.training.session import SetDone

STORED = Path(__file__).parent / "stored"

# A table that gains a column in the simple way, and one that is rebuilt.
NEXT = Rung(
    len(LADDER) + 1,
    (
        "ALTER TABLE trainee ADD COLUMN phone TEXT NOT NULL DEFAULT ''",
        "CREATE TABLE activity_2 (id {identity}, revision INTEGER NOT NULL, trainee_id INTEGER"
        " NOT NULL REFERENCES trainee (id) ON DELETE CASCADE, day INTEGER NOT NULL, name TEXT"
        " NOT NULL, seconds INTEGER NOT NULL, effort {real} NOT NULL){strict}",
        "INSERT INTO activity_2 (id, revision, trainee_id, day, name, seconds, effort)"
        " SELECT id, revision, trainee_id, day, name, minutes * 60, effort FROM activity",
        "DROP TABLE activity",
        "ALTER TABLE activity_2 RENAME TO activity",
    ),
)
LONGER = (*LADDER, NEXT)


def stored_file(version: int, folder: Path) -> Path:
    """The data file of a version as the program of that version wrote it, unpacked."""
    path = folder / "data.db"
    path.write_bytes(gzip.decompress((STORED / f"version-{version}.db.gz").read_bytes()))
    return path


def schema_of(database: Database) -> list[tuple[str, ...]]:
    sql = "SELECT type, name, sql FROM sqlite_master WHERE sql IS NOT NULL ORDER BY type, name"
    return database.execute(sql)


@pytest.mark.parametrize("version", range(1, len(LADDER) + 1))
def test_a_stored_file_of_every_version_is_brought_up_to_date(version: int, tmp_path: Path) -> None:
    path = stored_file(version, tmp_path)
    with closing(Database.open(path)) as opened, closing(Database.open(MEMORY)) as fresh:
        assert opened.schema_version == len(LADDER)
        assert schema_of(opened) == schema_of(fresh)
        assert opened.quick_check() == []


def test_the_stored_file_of_version_1_reads_as_it_was_written(tmp_path: Path) -> None:
    with closing(Database.open(stored_file(1, tmp_path))) as opened:
        repository = Repository(opened)
        (ada,) = repository.trainees()
        assert ada.id is not None
        assert (ada.name, ada.weekdays, ada.screened) == ("Ada Example", (0, 3), date(2026, 1, 2))
        (session,) = repository.sessions(ada.id)
        assert session.lines[0].sets[1] == SetDone(62_500, 7, rir=1.5, pain=2, note="left knee")
        assert session.lines[0].asked[0].reps == 8
        (line,) = repository.lines(ada.id)
        assert line.starts[0].position.load_g == 60_000
        assert repository.exercise("push-up").variations[0].push_up is not None
        (program,) = repository.programs()
        assert program.phases[0].days[0].slots[0].rule.range_of is not None
        facts = (
            repository.body_masses,
            repository.equipment,
            repository.assignments,
            repository.activities,
            repository.deloads,
            repository.absences,
            repository.goals,
            repository.dismissed,
            repository.remembered_names,
        )
        assert all(len(read(ada.id)) == 1 for read in facts)
        assert repository.coach_settings().equation == "epley"


def test_a_climb_keeps_every_row_and_a_copy_of_the_file(tmp_path: Path) -> None:
    path = stored_file(1, tmp_path)
    with closing(Database.open(path, ladder=LONGER)) as opened:
        assert opened.schema_version == len(LONGER)
        assert opened.execute("SELECT name, phone FROM trainee") == [("Ada Example", "")]
        assert opened.execute("SELECT seconds FROM activity") == [(2_700,)]
        assert len(opened.execute("SELECT * FROM set_done")) == 2
        assert opened.execute("PRAGMA foreign_keys") == [(1,)]
        assert opened.quick_check() == []
    with closing(Database.open(tmp_path / "data.version-1.db", ladder=LADDER[:1])) as copy:
        assert copy.schema_version == 1
        assert len(Repository(copy).trainees()) == 1
    with pytest.raises(NewerFile):
        Database.open(path)


def test_the_same_schema_comes_from_climbing_and_from_making(tmp_path: Path) -> None:
    climbed = Database.open(stored_file(1, tmp_path), ladder=LONGER)
    made = Database.open(tmp_path / "made.db", ladder=LONGER)
    with closing(climbed), closing(made):
        assert schema_of(climbed) == schema_of(made)
    assert not (tmp_path / "made.version-1.db").exists()


def test_an_earlier_copy_is_never_overwritten(tmp_path: Path) -> None:
    path = stored_file(1, tmp_path)
    for name in ("data.version-1.db", "data.version-1-2.db"):
        (tmp_path / name).write_text("earlier")
    Database.open(path, ladder=LONGER).close()
    assert (tmp_path / "data.version-1.db").read_text() == "earlier"
    assert (tmp_path / "data.version-1-3.db").exists()


def test_a_rung_that_fails_leaves_the_version_before(tmp_path: Path) -> None:
    path = stored_file(1, tmp_path)
    broken = Rung(
        len(LONGER) + 1,
        ("ALTER TABLE trainee ADD COLUMN email TEXT", "DROP TABLE not_there"),
    )
    with pytest.raises(sqlite3.OperationalError, match="no such table"):
        Database.open(path, ladder=(*LONGER, broken))
    with closing(Database.open(path, ladder=LONGER)) as opened:
        assert opened.schema_version == len(LONGER)
        columns = [row[1] for row in opened.execute("PRAGMA table_info(trainee)")]
        assert "phone" in columns
        assert "email" not in columns


def test_a_full_disk_while_climbing_leaves_the_version_before(tmp_path: Path) -> None:
    path = stored_file(1, tmp_path)
    big = Rung(len(LADDER) + 1, ("UPDATE trainee SET notes = hex(zeroblob(1000000))",))
    with closing(sqlite3.connect(path, isolation_level=None)) as connection:
        pages = connection.execute("PRAGMA page_count").fetchone()[0]
        connection.execute(f"PRAGMA max_page_count = {pages}")
        with pytest.raises(sqlite3.OperationalError, match="full"):
            climb(connection, (*LADDER, big))
        assert version_of(connection) == 1
        assert not connection.in_transaction
        assert connection.execute("PRAGMA foreign_keys").fetchone() == (1,)


def test_a_rung_that_would_lose_references_is_undone(tmp_path: Path) -> None:
    path = stored_file(1, tmp_path)
    careless = Rung(len(LADDER) + 1, ("DELETE FROM trainee",))
    with pytest.raises(DamagedFile, match=r"Version \d+ cannot be reached: rows of .*line.* refer"):
        Database.open(path, ladder=(*LADDER, careless))
    with closing(Database.open(path)) as opened:
        assert len(Repository(opened).trainees()) == 1


def test_a_faster_process_may_have_climbed_already(tmp_path: Path) -> None:
    path = stored_file(1, tmp_path)
    with closing(sqlite3.connect(path, isolation_level=None)) as connection:

        def climb_elsewhere(version: int) -> None:
            assert version == 1
            Database.open(path, ladder=LONGER).close()

        climb(connection, LONGER, climb_elsewhere)
        assert version_of(connection) == len(LONGER)


def test_data_in_memory_are_not_copied() -> None:
    with closing(Database.open(MEMORY)) as opened:
        opened._take_in(LONGER)
        assert opened.schema_version == len(LONGER)


def test_the_rungs_are_numbered_without_a_gap() -> None:
    assert [rung.version for rung in LADDER] == list(range(1, len(LADDER) + 1))
