"""Files damaged at random places, as a failing disk does it: without a trace in the file's times.

It is found at opening or by the check after it; the newest good backup comes back, and the damaged
file stays beside, byte by byte. What the structure of the file alone shows is counted as well,
because after a crash there is nothing else.
"""

from __future__ import annotations

import os
import shutil
from collections import Counter
from collections.abc import Iterator
from contextlib import closing
from datetime import timedelta
from pathlib import Path
from random import Random

from db.backup import back_up_on_closing
from db.database import Database
from db.errors import DamagedFile, NotOurFile
from db.repository import Repository
from db.restoring import newest_good, restore
from db.seals import put_seal, seal_path
from tests.fault_parts.people import FIRST, data_file, numbers_in

FULL = 200
SHARE = 12

_DAY = FIRST + timedelta(days=60)


def run(count: int, chance: Random, folder: Path) -> Iterator[str]:
    """Damage the data file ``count`` times, and its newest backup in every other of them."""
    template = folder / "template"
    template.mkdir()
    path = data_file(template / "data.db", sessions=60, others=60)
    with closing(Database.open(path)) as database:
        for day in (_DAY, _DAY + timedelta(days=1)):
            back_up_on_closing(database, template / "backups", day)
    found: Counter[str] = Counter()
    for number in range(count):
        place = folder / str(number)
        shutil.copytree(template, place)  # copies times as well
        found.update(_round(place, chance, bool(number % 2)))
    yield (
        f"{count} files: {found['opening']} refused at opening, {found['check']} found by the "
        f"check; by structure alone {found['structure']}; restored from {found['newest']} newest "
        f"and {found['older']} older backups"
    )


def _round(place: Path, chance: Random, backup_too: bool) -> Iterator[str]:
    path, backups = place / "data.db", place / "backups"
    _damage(path, chance)
    bad = path.read_bytes()
    if _structure_shows(path):
        yield "structure"
    yield _found(path)
    newest, older = sorted(backups.glob("*.db"), reverse=True)
    if backup_too:
        _damage(newest, chance)
    offered = newest_good(backups)
    assert offered, "no good backup was offered"
    assert offered[0].path == (older if backup_too else newest), offered
    yield "older" if backup_too else "newest"
    kept = restore(path, offered[0].path, _DAY, damaged=True)
    assert kept.read_bytes() == bad, "the damaged file was not kept as it was"
    assert len(numbers_in(path)) == 60
    shutil.rmtree(place)


def _found(path: Path) -> str:
    before = path.read_bytes()
    try:
        with closing(Database.open(path, create=False)) as database:
            assert database.quick_check(), f"not found; sealed: {seal_path(path).exists()}"
    except (DamagedFile, NotOurFile):
        assert path.read_bytes() == before
        return "opening"
    return "check"


def _structure_shows(path: Path) -> bool:
    """Whether a copy without a seal is found out: opened, checked and read through."""
    copy = path.with_name("unsealed.db")
    shutil.copyfile(path, copy)
    try:
        with closing(Database.open(copy, create=False)) as database:
            problems = database.quick_check()
            for trainee in Repository(database).trainees(archived=True):
                Repository(database).sessions(trainee.id or 0)
            return bool(problems)
    except (DamagedFile, NotOurFile):
        return True
    finally:
        copy.unlink()


def _damage(path: Path, chance: Random) -> None:
    times = path.stat()
    put_seal(path)
    content = bytearray(path.read_bytes())
    before = bytes(content)
    while bytes(content) == before:
        length = chance.choice((1, 16, 512, 4_096, 65_536))
        offset = chance.randrange(len(content))
        length = min(length, len(content) - offset)
        if chance.random() < 0.1:
            del content[offset:]
        else:
            zeros = chance.random() < 0.5
            content[offset : offset + length] = bytes(length) if zeros else chance.randbytes(length)
    path.write_bytes(content)
    os.utime(path, ns=(times.st_atime_ns, times.st_mtime_ns))
