"""A passphrase on the whole file: nobody reads it without, and no plain text stands on the disk."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
from collections.abc import Iterator
from contextlib import closing
from datetime import date
from pathlib import Path

import pytest

from db import cipher
from db.backup import back_up_on_closing
from db.copies import copies_of
from db.database import Database
from db.errors import (
    DamagedFile,
    FileBusy,
    InvalidRecord,
    NoCipher,
    NotOurFile,
    PassphraseNeeded,
    WrongPassphrase,
)
from db.first_look import first_look
from db.passphrases import change_passphrase, rewrite
from db.repository import Repository
from db.restoring import contents_of, newest_good, preview, restore
from desktop.training.trainee import Trainee

pytest.importorskip("sqlcipher3")

TODAY = date(2026, 3, 2)
SECRET = "three wet oars' ends"
OTHER = "four dry blades"
PLAIN = ("Zoë Müller".encode(), b"left knee, since 2019")


@pytest.fixture(autouse=True)
def _quick() -> Iterator[None]:
    """Fewer rounds from passphrase to key: a hundred openings would take half a minute."""
    _set_rounds(1_000)
    yield
    _set_rounds(256_000)


def _set_rounds(count: int) -> None:
    with closing(cipher.library().connect(":memory:")) as connection:
        connection.execute(f"PRAGMA cipher_default_kdf_iter = {count}")


@pytest.fixture
def path(tmp_path: Path) -> Path:
    """A plain data file that is closed, with a backup."""
    with closing(Database.open(tmp_path / "club.db")) as database:
        Repository(database).save(Trainee("Zoë Müller", notes="left knee, since 2019 " * 40))
        back_up_on_closing(database, tmp_path / "backups", TODAY)
    return tmp_path / "club.db"


@pytest.fixture
def locked(path: Path) -> Path:
    """The same with a passphrase."""
    assert change_passphrase(path, copies_of(path, path.parent / "backups"), "", SECRET) == ()
    return path


def names_in(path: Path, passphrase: str = "") -> list[str]:
    with closing(Database.open(path, create=False, passphrase=passphrase)) as opened:
        assert opened.quick_check() == []
        return [one.name for one in Repository(opened).trainees()]


def plain_places(folder: Path) -> list[str]:
    """The files in which a name or a note can be read."""
    files = [file for file in folder.rglob("*") if file.is_file()]
    return sorted(file.name for file in files if any(text in file.read_bytes() for text in PLAIN))


def test_the_search_for_plain_text_finds_it_where_there_is_no_passphrase(path: Path) -> None:
    with closing(Database.open(path)) as database:
        Repository(database).save(Trainee("Zoë Müller II"))
        assert plain_places(path.parent) == ["club.db", "club.db-wal", "rungwise-2026-03-02.db"]


def test_with_a_passphrase_no_plain_text_stands_on_the_disk(locked: Path) -> None:
    assert plain_places(locked.parent) == []
    with closing(Database.open(locked, passphrase=SECRET)) as database:
        repository = Repository(database)
        repository.save(Trainee("Zoë Müller II", notes="left knee, since 2019"))
        assert locked.with_name("club.db-wal").stat().st_size > 4096
        assert plain_places(locked.parent) == []
        copy = back_up_on_closing(database, locked.parent / "backups", date(2026, 3, 3))
        database.copy_to(locked.with_name("copy.db"))
        assert len(repository.trainees()) == 2
    assert plain_places(locked.parent) == []
    assert names_in(copy, SECRET) == ["Zoë Müller", "Zoë Müller II"]
    if os.name == "posix":
        assert all(f.stat().st_mode & 0o77 == 0 for f in locked.parent.rglob("*.db*"))


def test_without_the_passphrase_nothing_opens(locked: Path) -> None:
    before = locked.read_bytes()
    with pytest.raises(PassphraseNeeded, match=r"club\.db has a passphrase"):
        Database.open(locked)
    for wrong in ("three wet oars", SECRET.upper(), "' OR 1=1 --"):
        with pytest.raises(WrongPassphrase, match="does not open"):
            Database.open(locked, passphrase=wrong)
    assert first_look(locked, TODAY) is None
    assert locked.read_bytes() == before
    assert names_in(locked, SECRET) == ["Zoë Müller"]


def test_a_wrong_passphrase_says_nothing_on_standard_error(locked: Path) -> None:
    script = (
        "import sys; from pathlib import Path; from db.database import Database\n"
        "try: Database.open(Path(sys.argv[1]), passphrase='wrong one')\n"
        "except Exception as error: print(type(error).__name__)"
    )
    root = Path(__file__).parent.parent
    ended = subprocess.run(
        [sys.executable, "-c", script, str(locked)],
        cwd=root,
        capture_output=True,
        text=True,
        check=True,
    )
    assert (ended.stdout, ended.stderr) == ("WrongPassphrase\n", "")


def test_the_passphrase_changes_in_the_file_and_its_backups(locked: Path) -> None:
    copies = copies_of(locked, locked.parent / "backups")
    assert change_passphrase(locked, copies, SECRET, OTHER) == ()
    for file in (locked, *copies):
        assert names_in(file, OTHER) == ["Zoë Müller"]
        with pytest.raises(WrongPassphrase):
            Database.open(file, passphrase=SECRET)


def test_without_a_passphrase_again_it_is_a_plain_file(locked: Path) -> None:
    copies = copies_of(locked, locked.parent / "backups")
    assert change_passphrase(locked, copies, SECRET, "") == ()
    assert names_in(locked) == names_in(copies[0]) == ["Zoë Müller"]
    assert locked.read_bytes().startswith(cipher.MAGIC)


def test_a_wrong_old_passphrase_changes_nothing(locked: Path) -> None:
    before = {file: file.read_bytes() for file in locked.parent.rglob("*.db")}
    with pytest.raises(WrongPassphrase):
        change_passphrase(locked, copies_of(locked, locked.parent / "backups"), OTHER, "x" * 9)
    assert {file: file.read_bytes() for file in locked.parent.rglob("*.db")} == before


@pytest.mark.parametrize("short", ["seven77", " begins with a space", "line\nbreak and more"])
def test_a_passphrase_that_is_too_short_or_cannot_be_typed_is_refused(
    path: Path, short: str
) -> None:
    with pytest.raises(InvalidRecord, match="at least 8"):
        change_passphrase(path, (), "", short)
    assert names_in(path) == ["Zoë Müller"]


def test_an_interrupted_change_is_repeated(locked: Path) -> None:
    (copy,) = copies_of(locked, locked.parent / "backups")
    rewrite(copy, SECRET, OTHER)  # and then it was interrupted
    assert change_passphrase(locked, (copy,), SECRET, OTHER) == ()
    assert names_in(copy, OTHER) == names_in(locked, OTHER)


def test_copies_that_cannot_be_rewritten_are_named(path: Path) -> None:
    damaged = path.with_name("club.damaged-2026-03-02.db")
    shutil.copyfile(path, damaged)
    os.truncate(damaged, 9_000)
    left = change_passphrase(path, copies_of(path, path.parent / "backups"), "", SECRET)
    assert [(file, type(error)) for file, error in left] == [(damaged, DamagedFile)]
    assert names_in(path, SECRET) == ["Zoë Müller"]


def test_while_somebody_has_it_open_nothing_changes(path: Path) -> None:
    with closing(Database.open(path)) as database:
        with pytest.raises(FileBusy):
            change_passphrase(path, (), "", SECRET)
        Repository(database).save(Trainee("Ada"))
    assert names_in(path) == ["Ada", "Zoë Müller"]


def test_what_the_log_held_after_a_crash_is_taken_along(path: Path, tmp_path: Path) -> None:
    crashed = tmp_path / "crashed"
    crashed.mkdir()
    with closing(Database.open(path)) as database:
        Repository(database).save(Trainee("Ada"))
        for name in ("club.db", "club.db-wal"):
            shutil.copy(path.with_name(name), crashed)
    change_passphrase(crashed / "club.db", (), "", SECRET)
    assert names_in(crashed / "club.db", SECRET) == ["Ada", "Zoë Müller"]
    assert plain_places(crashed) == []


def test_backups_with_a_passphrase_are_compared_and_restored(locked: Path) -> None:
    backups = locked.parent / "backups"
    with closing(Database.open(locked, passphrase=SECRET)) as database:
        Repository(database).save(Trainee("Ada"))
    found = newest_good(backups, SECRET)
    assert found is not None
    backup = found[0].path
    assert contents_of(backup, SECRET).trainees == 1
    assert [one.trainee for one in preview(locked, backup, SECRET).differences] == ["Ada"]
    kept = restore(locked, backup, TODAY, passphrase=SECRET)
    assert names_in(locked, SECRET) == ["Zoë Müller"]
    assert names_in(kept, SECRET) == ["Ada", "Zoë Müller"]
    assert plain_places(locked.parent) == []
    locked.write_bytes(os.urandom(8192))
    restore(locked, backup, TODAY, damaged=True, passphrase=SECRET)
    assert names_in(locked, SECRET) == ["Zoë Müller"]


def test_a_new_file_can_have_a_passphrase_from_the_start(tmp_path: Path) -> None:
    path = tmp_path / "new.db"
    with closing(Database.open(path, passphrase=SECRET)) as database:
        Repository(database).save(Trainee("Zoë Müller"))
        assert plain_places(tmp_path) == []
    assert names_in(path, SECRET) == ["Zoë Müller"]


def test_a_plain_file_opens_whatever_passphrase_is_given(path: Path) -> None:
    assert names_in(path, SECRET) == ["Zoë Müller"]


def test_other_files_are_not_taken_for_locked_ones(tmp_path: Path) -> None:
    for content in (b"\0" * 8192, b"text " * 4096, os.urandom(5000), os.urandom(100)):
        (tmp_path / "stranger.db").write_bytes(content)
        with pytest.raises(NotOurFile):
            Database.open(tmp_path / "stranger.db")


def test_a_plain_file_that_lost_its_beginning_is_damaged_not_locked(path: Path) -> None:
    content = bytearray(path.read_bytes())
    content[:100] = os.urandom(100)
    path.write_bytes(content)
    with pytest.raises(DamagedFile, match="its beginning is missing"):
        Database.open(path)


def test_without_the_library_it_says_what_to_install(
    locked: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setitem(sys.modules, "sqlcipher3", None)
    with pytest.raises(NoCipher, match="not installed") as caught:
        Database.open(locked, passphrase=SECRET)
    assert "pip install" in caught.value.remedy
    with pytest.raises(NoCipher):
        change_passphrase(locked, (), "", SECRET)
