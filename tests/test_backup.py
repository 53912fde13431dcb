"""Copies are whole or not there, and the old ones go in the right order."""

from __future__ import annotations

import os
import stat
from collections.abc import Iterator
from contextlib import closing
from datetime import date, datetime, timedelta
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from db import backup, files
from db.backup import back_up, back_up_on_closing, kept, rotate
from db.database import Database
from db.errors import CannotWrite
from db.repository import Repository
from desktop.training.trainee import Trainee

TODAY = date(2026, 3, 2)


@pytest.fixture
def database(tmp_path: Path) -> Iterator[Database]:
    with closing(Database.open(tmp_path / "data.db")) as opened:
        Repository(opened).save(Trainee("Zoë"))
        yield opened


def names_in(path: Path) -> list[str]:
    with closing(Database.open(path, create=False)) as opened:
        return [one.name for one in Repository(opened).trainees()]


# One copy


def test_a_copy_holds_everything_in_one_file_of_its_owner(
    database: Database, tmp_path: Path
) -> None:
    folder = tmp_path / "Ä b"
    folder.mkdir()
    back_up(database, folder / "copy 💪.db")
    assert [file.name for file in folder.iterdir()] == ["copy 💪.db"]
    if os.name == "posix":
        assert stat.S_IMODE((folder / "copy 💪.db").stat().st_mode) == 0o600
    assert names_in(folder / "copy 💪.db") == ["Zoë"]


def test_a_copy_replaces_the_one_before(database: Database, tmp_path: Path) -> None:
    back_up(database, tmp_path / "copy.db")
    Repository(database).save(Trainee("Ada"))
    back_up(database, tmp_path / "copy.db")
    assert names_in(tmp_path / "copy.db") == ["Ada", "Zoë"]


def test_a_copy_inside_a_transaction_of_another_window_holds_what_was_committed(
    database: Database, tmp_path: Path
) -> None:
    with closing(Database.open(tmp_path / "data.db")) as other, other.transaction():
        Repository(other).save(Trainee("not yet"))
        back_up(database, tmp_path / "copy.db")
    assert names_in(tmp_path / "copy.db") == ["Zoë"]


def test_the_data_themselves_are_never_replaced_by_their_copy(
    database: Database, tmp_path: Path
) -> None:
    with pytest.raises(CannotWrite, match="would destroy it"):
        back_up(database, tmp_path / "data.db")
    with closing(Database.open(tmp_path / "other.db")), pytest.raises(CannotWrite):
        back_up(database, tmp_path / "other.db")
    assert len(Repository(database).trainees()) == 1


def test_a_copy_that_cannot_be_written_leaves_nothing(database: Database, tmp_path: Path) -> None:
    with pytest.raises(CannotWrite, match="cannot be read or written"):
        back_up(database, tmp_path / "nowhere" / "copy.db")
    (tmp_path / "folder.db").mkdir()
    with pytest.raises(CannotWrite):
        back_up(database, tmp_path / "folder.db")
    (tmp_path / "file").write_text("")
    with pytest.raises(CannotWrite):
        back_up(database, tmp_path / "file" / "copy.db")
    assert not list(tmp_path.glob("**/*.unfinished"))


def test_an_interrupted_copy_leaves_the_one_before(
    database: Database, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    back_up(database, tmp_path / "copy.db")
    Repository(database).save(Trainee("Ada"))

    def no_space(path: Path) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(files, "write_through", no_space)
    with pytest.raises(CannotWrite, match="No space left on device"):
        back_up(database, tmp_path / "copy.db")
    assert names_in(tmp_path / "copy.db") == ["Zoë"]
    assert not list(tmp_path.glob("*.unfinished"))


# On closing


def test_closing_leaves_one_copy_a_day_and_rotates(database: Database, tmp_path: Path) -> None:
    folder = tmp_path / "backups"
    for number in range(10):
        day = TODAY + timedelta(days=number)
        assert back_up_on_closing(database, folder, day) == folder / f"rungwise-{day}.db"
        back_up_on_closing(database, folder, day)
    left = sorted(file.name for file in folder.glob("*.db"))
    assert len(list(folder.iterdir())) == 2 * len(left), "each with its seal"
    # The last seven days; the Sunday that closed the week before is one of them.
    assert left == [f"rungwise-2026-03-{day:02}.db" for day in range(5, 12)]


def test_a_folder_that_cannot_be_made_is_said(database: Database, tmp_path: Path) -> None:
    (tmp_path / "file").write_text("")
    with pytest.raises(CannotWrite, match="cannot be made"):
        back_up_on_closing(database, tmp_path / "file" / "backups", TODAY)


def test_only_our_old_files_are_removed(tmp_path: Path) -> None:
    for number in range(40):
        (tmp_path / f"rungwise-{TODAY - timedelta(days=number)}.db").touch()
    others = ["notes.txt", "rungwise-.db", "rungwise-2020-99-01.db", "rungwise.db", "2020-01-01.db"]
    for name in others:
        (tmp_path / name).touch()
    fresh = tmp_path / f"rungwise-{TODAY}.db.77.unfinished"
    stale = tmp_path / "rungwise-2026-02-27.db.12.unfinished"
    for path, day in ((fresh, TODAY), (stale, TODAY - timedelta(days=3))):
        path.touch()
        noon = datetime(day.year, day.month, day.day, 12).timestamp()
        os.utime(path, (noon, noon))
    removed = rotate(tmp_path, TODAY)
    assert stale in removed
    assert fresh.exists()
    assert all((tmp_path / name).exists() for name in others)
    left = {path.name for path in tmp_path.iterdir()} - {fresh.name, *others}
    # 24 February to 2 March; the Sundays 22 and 15 February; the last of January.
    assert left == {
        *(f"rungwise-2026-02-{day}.db" for day in (15, 22, 24, 25, 26, 27, 28)),
        "rungwise-2026-01-31.db",
        "rungwise-2026-03-01.db",
        "rungwise-2026-03-02.db",
    }


def test_a_backup_that_cannot_be_removed_stays_for_the_next_time(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    for number in range(20):
        (tmp_path / f"rungwise-{TODAY - timedelta(days=number)}.db").touch()

    def locked(path: Path) -> None:
        raise PermissionError

    monkeypatch.setattr(Path, "unlink", locked)
    assert rotate(tmp_path, TODAY) == ()


# Which days are kept

some_days = st.sets(st.integers(0, 900).map(lambda n: TODAY - timedelta(days=n)), max_size=200)


@given(some_days)
def test_never_more_than_days_weeks_and_months_are_kept(days: set[date]) -> None:
    keep = kept(days, TODAY)
    assert keep <= days
    assert len(keep) <= backup.DAYS + backup.WEEKS + backup.MONTHS
    assert set(sorted(days)[-backup.DAYS :]) <= keep
    assert kept(keep, TODAY) == keep


@given(some_days)
def test_each_of_the_last_months_with_a_backup_keeps_its_last_one(days: set[date]) -> None:
    keep = kept(days, TODAY)
    months = sorted({(day.year, day.month) for day in days})[-backup.MONTHS :]
    for month in months:
        assert max(day for day in days if (day.year, day.month) == month) in keep


@given(some_days, st.sets(st.dates(TODAY + timedelta(days=1), date(2030, 1, 1)), max_size=9))
def test_a_clock_that_went_wrong_costs_no_backup(past: set[date], future: set[date]) -> None:
    assert kept(past | future, TODAY) == kept(past, TODAY) | future


@given(st.lists(st.integers(1, 40), max_size=120))
@settings(max_examples=20)
def test_rotating_at_every_closing_keeps_what_rotating_once_would(pauses: list[int]) -> None:
    present: frozenset[date] = frozenset()
    every: set[date] = set()
    day = date(2023, 1, 1)
    for pause in pauses:
        day += timedelta(days=pause)
        every.add(day)
        present = kept(present | {day}, day)
    assert present == kept(every, day)
