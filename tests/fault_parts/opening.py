"""Opened under odd circumstances: two processes at once, newer files, odd paths, wrong clocks,
days on which the clocks change.
"""

from __future__ import annotations

import os
import shutil
import sqlite3
import subprocess
import sys
import time
from collections.abc import Iterator
from contextlib import closing
from dataclasses import replace
from datetime import date, timedelta
from functools import partial
from pathlib import Path
from random import Random

from db.backup import back_up_on_closing
from db.database import Database
from db.errors import NewerFile
from db.repository import Repository
from db.restoring import backups_in
from desktop.training.session import Session
from tests.fault_parts import child
from tests.fault_parts.child import Tell, tried
from tests.fault_parts.people import FIRST, data_file, numbers_in, session

FULL = 60
SHARE = 2

_ROOT = Path(__file__).parent.parent.parent
_PATHS = ("my data.db", "Übungen für Zoë.db", "💪 100%?#.db", "a'b;c & d.db", "ohne")
# Zones, and the days on which clocks there go forward or back; Samoa left out a whole day.
_SWITCHES = (
    ("Europe/Berlin", date(2026, 3, 29), date(2026, 10, 25)),
    ("America/Sao_Paulo", date(2018, 11, 4), date(2018, 2, 17)),
    ("Australia/Lord_Howe", date(2026, 10, 4), date(2026, 4, 5)),
    ("Pacific/Apia", date(2011, 12, 30), date(2011, 9, 24)),
)


def run(count: int, chance: Random, folder: Path) -> Iterator[str]:
    """Each circumstance; two processes write at once ``count`` times."""
    template = data_file(folder / "template.db", sessions=2)
    yield _newer(template, chance)
    yield _odd_paths(template, folder, _PATHS[:count])
    if not child.CAN_FORK:
        return
    yield _clock_set_back(template, folder)
    yield _switch_days(template, folder)
    conflicts = sum(_two_at_once(template, folder / str(number)) for number in range(count))
    yield f"two processes at once {count} times: nothing lost, {conflicts} conflicts said"


def _newer(template: Path, chance: Random) -> str:
    path = template.with_name("newer.db")
    shutil.copyfile(template, path)
    with closing(sqlite3.connect(path)) as connection:
        connection.execute(f"PRAGMA user_version = {chance.randrange(50, 2**31)}")
    before = path.read_bytes()
    said = tried(lambda: Database.open(path))
    assert said.startswith(NewerFile.__name__), said
    assert path.read_bytes() == before
    return "a file of a newer version is refused and left alone"


def _odd_paths(template: Path, folder: Path, names: tuple[str, ...]) -> str:
    for number, name in enumerate(names):
        place = folder / f"Ordner {number} mit Ä 🏋"
        place.mkdir()
        shutil.copyfile(template, place / name)
        ended = subprocess.run(
            [sys.executable, "-m", "desktop", "--database", place / name, "backup", place / "b.db"],
            cwd=_ROOT,
            env={**os.environ, "RUNGWISE_HOME": str(folder / "home")},
            capture_output=True,
            text=True,
            check=False,
        )
        assert ended.returncode == 0, ended.stderr
        assert len(numbers_in(place / "b.db")) == len(numbers_in(place / name)) == 2
    return f"{len(names)} paths with spaces, umlauts, signs and pictures, by the command line"


def _clock_set_back(template: Path, folder: Path) -> str:
    """A backup dated in the future, then the clock is right again: no backup is lost by it."""
    place = folder / "clock"
    shutil.copytree(template.parent, place, ignore=shutil.ignore_patterns("[!t]*"))
    with closing(Database.open(place / template.name)) as database:
        for later in (0, 400, 1, 2, -3):
            back_up_on_closing(database, place / "backups", FIRST + timedelta(days=later))
    days = [(backup.day - FIRST).days for backup in backups_in(place / "backups")]
    assert days == [400, 2, 1, 0, -3], days
    return "clock 400 days ahead and set back: every backup is kept"


def _switch_days(template: Path, folder: Path) -> str:
    for zone, *days in _SWITCHES:
        place = folder / zone.replace("/", "-")
        place.mkdir()
        shutil.copyfile(template, place / "data.db")
        ended = child.run(partial(_live_through, place, zone, days))
        assert ended.status == 0, zone
        assert ended.whole, ended
        assert len(ended.told) == len(set(ended.told)) == 10, ended.told
    return f"clocks forward and back in {len(_SWITCHES)} zones: each day is one day"


def _live_through(place: Path, zone: str, days: list[date], tell: Tell) -> None:
    os.environ["TZ"] = zone
    time.tzset()
    for middle in days:
        for number in range(-2, 3):
            day = middle + timedelta(days=number)
            with closing(Database.open(place / "data.db")) as database:
                repository = Repository(database)
                saved: Session = repository.save(replace(session(0), day=day)).saved[0]
                again = repository.session(saved.id or 0)
                assert again.day == day, (again.day, day)
                assert len(repository.session_on(1, day)) == 1
                copy = back_up_on_closing(database, place / "backups", day)
                assert copy.name == f"rungwise-{day.isoformat()}.db"
            tell(day.isoformat())


def _two_at_once(template: Path, place: Path) -> int:
    """Two processes save sessions of their own, and both correct the same one; the conflicts."""
    place.mkdir()
    path = place / "data.db"
    shutil.copyfile(template, path)
    other = os.fork()
    if other == 0:
        try:
            _write_beside(path, 2)
        finally:
            os._exit(0)
    ended = child.run(lambda tell: tell(str(_write_beside(path, 3))))
    os.waitpid(other, 0)
    assert ended.status == 0, ended
    assert ended.whole, ended
    with closing(Database.open(path)) as database:
        sessions = Repository(database).sessions(1)
        ((noted, changes),) = database.execute(
            "SELECT (SELECT note FROM session WHERE id = 1),"
            " (SELECT count(*) FROM session_change WHERE session_id = 1)"
        )
    assert len(sessions) == 2 + 2 * 12, len(sessions)
    assert len(noted) == changes - 1, f"{changes} changes, but the note is {noted!r}"
    shutil.rmtree(place)
    return int(ended.told[0])


def _write_beside(path: Path, first: int) -> int:
    conflicts = 0
    with closing(Database.open(path)) as database:
        repository = Repository(database)
        for number in range(12):
            repository.save(session(first + 2 * number))
            shared = repository.session(1)
            time.sleep(0.001)
            longer = replace(shared, note=f"{shared.note}x")
            conflicts += tried(lambda mine=longer: repository.save(mine)) != "yes"  # type: ignore[misc]
    return conflicts
