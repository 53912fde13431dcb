"""Going back to a backup: what would change is said before, and the present file is always kept."""

from __future__ import annotations

import os
from collections.abc import Iterator
from contextlib import closing
from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest

from db.backup import back_up_on_closing
from db.database import Database
from db.errors import CannotWrite, DamagedFile, FileBusy, NotOurFile
from db.repository import Repository
from db.restoring import (
    Contents,
    Difference,
    backups_in,
    contents_of,
    newest_good,
    preview,
    restore,
)
from db.seals import is_broken, put_seal, read_seal, seal_path
from desktop.training.program import Line
from desktop.training.session import Session
from desktop.training.trainee import Trainee

TODAY = date(2026, 3, 2)
DAYS = tuple(date(2026, 2, day) for day in (2, 4, 6))


@pytest.fixture
def path(tmp_path: Path) -> Path:
    """A closed data file: Zoë with three sessions, Ada with none; backed up as such."""
    with closing(Database.open(tmp_path / "club.db")) as database:
        repository = Repository(database)
        zoe, _ = repository.save(Trainee("Zoë"), Trainee("Ada")).saved
        repository.save(*(Session(zoe.id, day) for day in DAYS))
        back_up_on_closing(database, tmp_path / "backups", TODAY)
    return tmp_path / "club.db"


@pytest.fixture
def backup(path: Path) -> Path:
    return backups_in(path.parent / "backups")[0].path


@pytest.fixture
def repository(path: Path, backup: Path) -> Iterator[Repository]:
    """The same file, open; the backup is there."""
    with closing(Database.open(path)) as database:
        yield Repository(database)


def flip(path: Path, offset: int = -40) -> None:
    """Change a byte as a failing disk does, without a trace in the file's times."""
    times = path.stat()
    content = bytearray(path.read_bytes())
    content[offset] ^= 1
    path.write_bytes(content)
    os.utime(path, ns=(times.st_atime_ns, times.st_mtime_ns))


def test_backups_are_listed_with_the_newest_first(repository: Repository, backup: Path) -> None:
    back_up_on_closing(repository.database, backup.parent, date(2026, 3, 9))
    (backup.parent / "notes.txt").touch()
    listed = backups_in(backup.parent)
    assert [one.day for one in listed] == [date(2026, 3, 9), TODAY]
    assert listed[0].size > 10_000
    assert backups_in(backup.parent / "nowhere") == ()
    assert contents_of(backup) == Contents(2, 3, DAYS[-1])


def test_nothing_changed_is_nothing_to_restore(path: Path, backup: Path) -> None:
    seen = preview(path, backup)
    assert seen.now == seen.then == Contents(2, 3, DAYS[-1])
    assert seen.differences == ()
    assert not seen.programs


def test_the_preview_counts_what_each_trainee_would_lose_and_get_back(
    repository: Repository, path: Path, backup: Path
) -> None:
    zoe = repository.trainee_named("Zoë")
    assert zoe is not None
    assert zoe.id is not None
    first, second, _ = repository.sessions(zoe.id)
    repository.save(
        replace(first, note="corrected"), Session(zoe.id, TODAY), Session(zoe.id, TODAY)
    )
    repository.remove(second)
    repository.save(replace(zoe, name="Zoe"), Trainee("Eve"))
    before = path.read_bytes(), backup.read_bytes()
    seen = preview(path, backup)
    assert seen.differences == (
        Difference("Eve", others_lost=1),
        Difference("Zoe", 2, 1, 1, others_changed=1),
    )
    assert (path.read_bytes(), backup.read_bytes()) == before


def test_restoring_brings_everything_back_and_keeps_a_copy_of_what_was(
    repository: Repository, path: Path, backup: Path
) -> None:
    repository.save(Trainee("Eve"))
    kept = restore(path, backup, TODAY)
    assert kept.name == "club.before-restoring-2026-03-02.db"
    assert [one.name for one in repository.trainees()] == ["Ada", "Zoë"]
    assert repository.database.quick_check() == []
    assert repository.database.execute("PRAGMA journal_mode") == [("wal",)]
    with closing(Database.look_into(kept)) as copy:
        assert len(Repository(copy).trainees()) == 3
    # And there is a way back from the way back.
    restore(path, kept, TODAY)
    assert len(repository.trainees()) == 3


def test_restoring_waits_for_nobody_longer_than_a_save_does(
    repository: Repository, path: Path, backup: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("db.database.BUSY_SECONDS", 0.1)
    with repository.transaction():
        repository.save(Trainee("Eve"))
        with pytest.raises(FileBusy):
            restore(path, backup, TODAY)
    assert len(repository.trainees()) == 3


def test_a_damaged_file_is_kept_with_its_log_and_replaced(path: Path, backup: Path) -> None:
    opened = Database.open(path)
    Repository(opened).save(Trainee("Eve"))
    content, log = path.read_bytes(), path.with_name("club.db-wal").read_bytes()
    opened.close()
    bad = b"SQLite format 3\0" + bytes(5_000) + content[5_016:]
    path.write_bytes(bad)
    path.with_name("club.db-wal").write_bytes(log)
    kept = restore(path, backup, TODAY)
    assert kept.name == "club.damaged-2026-03-02.db"
    assert kept.read_bytes() == bad
    assert kept.with_name(kept.name + "-wal").read_bytes() == log
    with closing(Database.open(path)) as database:
        assert [one.name for one in Repository(database).trainees()] == ["Ada", "Zoë"]
    if os.name == "posix":
        assert all(file.stat().st_mode & 0o77 == 0 for file in path.parent.glob("club*"))


def test_a_file_that_cannot_be_read_has_a_preview_of_the_backup_alone(
    path: Path, backup: Path
) -> None:
    path.write_bytes(bytes(9_000))
    seen = preview(path, backup)
    assert seen.now is None
    assert seen.then.sessions == 3


def test_a_bad_backup_is_never_taken(path: Path, backup: Path) -> None:
    before = path.read_bytes()
    flip(backup)
    for act in (lambda: preview(path, backup), lambda: restore(path, backup, TODAY)):
        with pytest.raises(DamagedFile, match="changed on the disk though nobody wrote"):
            act()
    backup.write_text("something else")
    with pytest.raises(NotOurFile):
        restore(path, backup, TODAY)
    assert newest_good(backup.parent) is None
    assert path.read_bytes() == before


def test_the_newest_good_backup_is_found_behind_bad_ones(
    repository: Repository, backup: Path
) -> None:
    newer = back_up_on_closing(repository.database, backup.parent, date(2026, 3, 9))
    flip(newer)
    found = newest_good(backup.parent)
    assert found is not None
    assert found[0].path == backup


def test_no_room_for_the_copy_of_the_present_file_stops_restoring(
    repository: Repository, path: Path, backup: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def no_space(_path: Path) -> None:
        raise OSError(28, "No space left on device")

    repository.save(Trainee("Eve"))
    monkeypatch.setattr("db.files.write_through", no_space)
    with pytest.raises(CannotWrite, match="No space left"):
        restore(path, backup, TODAY)
    assert len(repository.trainees()) == 3


# Seals


def test_a_closed_file_has_a_seal_in_a_common_format(path: Path) -> None:
    import hashlib

    digest = hashlib.sha256(path.read_bytes()).hexdigest()
    assert seal_path(path).read_text() == f"{digest}  club.db\n"
    with closing(Database.open(path)):
        assert not seal_path(path).exists()
        with closing(Database.open(path)):
            pass
        assert not seal_path(path).exists(), "still open here"
    assert seal_path(path).exists()


def test_a_byte_that_changed_by_itself_is_found_and_never_sealed_over(path: Path) -> None:
    flip(path)
    for _ in range(2):
        with closing(Database.open(path)) as database:
            assert database.quick_check() == [
                "The file changed on the disk though nobody wrote to it."
            ]
            with pytest.raises(DamagedFile, match="no copy was made"):
                database.copy_to(path.with_name("copy.db"))


def test_damage_is_found_before_the_file_is_brought_to_a_newer_version(path: Path) -> None:
    from db.migrations import LADDER, Rung

    flip(path)
    longer = (*LADDER, Rung(len(LADDER) + 1, ("CREATE TABLE more (x INTEGER)",)))
    before = path.read_bytes()
    with pytest.raises(DamagedFile):
        Database.open(path, ladder=longer)
    assert path.read_bytes() == before


def test_what_others_wrote_is_no_damage(path: Path) -> None:
    content = path.read_bytes()
    path.write_bytes(content)
    assert read_seal(path) is None
    assert not is_broken(path, None)
    with closing(Database.open(path)) as database:
        assert database.quick_check() == []


def test_a_seal_that_cannot_be_written_is_done_without(tmp_path: Path) -> None:
    put_seal(tmp_path / "not there.db")
    assert list(tmp_path.iterdir()) == []
    assert read_seal(tmp_path / "not there.db") is None


def test_a_line_of_a_trainee_counts_among_other_records(
    repository: Repository, path: Path, backup: Path
) -> None:
    from desktop.catalogue import load_catalogue

    repository.sync_catalogue(load_catalogue())
    ada = repository.trainee_named("Ada")
    assert ada is not None
    assert ada.id is not None
    repository.save(Line(ada.id, "back-squat"))
    assert preview(path, backup).differences == (Difference("Ada", others_lost=1),)
