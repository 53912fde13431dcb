"""Passphrase and erasing from the command line; nothing of anybody in log and arguments."""

from __future__ import annotations

from pathlib import Path

import pytest

from db.database import Database
from db.errors import PassphraseNeeded
from desktop import paths
from desktop.passphrase_prompt import NEW_PASSPHRASE, PASSPHRASE, asked, asked_twice
from tests.test_command_line import Line, line  # noqa: F401

SECRET = "three wet oars"


@pytest.fixture
def club(line: Line, home: Path) -> Line:  # noqa: F811
    """The demo, at home, with a backup."""
    assert line("demo", "--date", "2026-11-30").code == 0
    paths.backups_of(line.database).mkdir()
    backup = paths.backups_of(line.database) / "rungwise-2026-11-30.db"
    assert line("backup", backup).code == 0
    return line


def test_a_passphrase_is_set_asked_for_and_removed(
    club: Line, monkeypatch: pytest.MonkeyPatch
) -> None:
    pytest.importorskip("sqlcipher3")
    answer = club("passphrase")
    assert "nothing was changed" in answer.err
    monkeypatch.setenv(NEW_PASSPHRASE, SECRET)
    assert "has a passphrase now" in club("passphrase").out
    for path in (club.database, *paths.backups_of(club.database).glob("*.db")):
        with pytest.raises(PassphraseNeeded):
            Database.open(path)
    assert "has a passphrase" in club("check").err
    monkeypatch.setenv(PASSPHRASE, "something else")
    assert "does not open" in club("check").err
    monkeypatch.setenv(PASSPHRASE, SECRET)
    assert "sound" in club("check").out
    assert "has no passphrase" in club("passphrase", "--remove").out
    monkeypatch.delenv(PASSPHRASE)
    assert "sound" in club("check").out


def test_a_passphrase_that_is_too_short_is_refused(
    club: Line, monkeypatch: pytest.MonkeyPatch
) -> None:
    pytest.importorskip("sqlcipher3")
    monkeypatch.setenv(NEW_PASSPHRASE, "short")
    assert "at least 8" in club("passphrase").err
    assert "sound" in club("check").out


def test_nobody_is_asked_where_nobody_types() -> None:
    assert asked("Passphrase", environ={}) == ""
    assert asked("Passphrase", environ={PASSPHRASE: "x y"}) == "x y"
    assert asked_twice("New", environ={NEW_PASSPHRASE: "x y"}) == "x y"


def test_a_trainee_is_erased_only_on_purpose(club: Line) -> None:
    before = club.database.read_bytes()
    answer = club("erase", "--trainee", "Bow")
    assert answer.code == 1
    assert "say --yes to do it" in answer.err
    assert b"Bow" in before
    erased = club("erase", "--trainee", "Bow", "--yes")
    assert "and 1 copies" in erased.out
    assert "no trainee called 'Bow'" in club("erase", "--trainee", "Bow", "--yes").err
    assert "sound" in club("check").out
