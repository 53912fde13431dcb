"""A file or folder that may not be written or read: said plainly, nothing lost, nothing half.

Whoever is root may do everything, so the work is then done as nobody.
"""

from __future__ import annotations

import os
import shutil
from collections.abc import Iterator
from contextlib import closing
from functools import partial
from pathlib import Path
from random import Random

from db.backup import back_up_on_closing
from db.database import Database
from db.repository import Repository
from tests.fault_parts import child
from tests.fault_parts.child import Tell, tried
from tests.fault_parts.people import FIRST, data_file, numbers_in, session

FULL = 60
SHARE = 12

_NOBODY = 65_534
# Modes of the folder, the file and the folder of backups; whether the data can still be read.
_CASES = (
    (0o700, 0o400, 0o700, True),
    (0o500, 0o600, 0o700, False),
    (0o500, 0o400, 0o700, False),
    (0o700, 0o000, 0o700, False),
    (0o700, 0o600, 0o500, True),
    (0o700, 0o600, 0o000, True),
)


def run(count: int, chance: Random, folder: Path) -> Iterator[str]:
    """Each case in turn: open, read, write, back up; then everything has to be there."""
    if not child.CAN_FORK:
        yield "not on this system"
        return
    os.chmod(folder, 0o755)
    template = folder / "template"
    template.mkdir()
    data_file(template / "data.db", sessions=5)
    refused = 0
    for number in range(count):
        refused += _round(folder / str(number), template, _CASES[number % len(_CASES)])
    yield f"{count} times read-only or closed, {refused} refusals, all sound"


def _round(place: Path, template: Path, case: tuple[int, int, int, bool]) -> int:
    folder_mode, file_mode, backups_mode, readable = case
    shutil.copytree(template, place)
    (place / "backups").mkdir()
    modes = (
        (place / "data.db", file_mode),
        (place / "backups", backups_mode),
        (place, folder_mode),
    )
    for path, mode in modes:
        if os.geteuid() == 0:
            os.chown(path, _NOBODY, _NOBODY)
        path.chmod(mode)
    ended = child.run(partial(_work, place))
    for path, _ in reversed(modes):
        path.chmod(0o700)
    assert ended.status == 0, f"fell over with {case}: {ended}"
    said = dict(line.split(" ", 1) for line in ended.told)
    refusals = [why for why in (*said.values(), ended.refused) if ":" in why]
    assert refusals, f"nothing was refused with {case}: {said}"
    assert all(why.startswith("CannotWrite: ") for why in refusals), refusals
    assert not readable or said.get("read") == "5", f"not read with {case}: {ended}"
    there = len(numbers_in(place / "data.db"))
    assert there == (6 if said.get("written") == "yes" else 5), f"{there} with {case}: {said}"
    assert not list(place.rglob("*.unfinished*"))
    shutil.rmtree(place)
    return len(refusals)


def _work(place: Path, tell: Tell) -> None:
    if os.geteuid() == 0:
        os.setgid(_NOBODY)
        os.setuid(_NOBODY)
    with closing(Database.open(place / "data.db", create=False)) as database:
        repository = Repository(database)
        tell(f"read {len(repository.sessions(1))}")
        tell(f"written {tried(lambda: repository.save(session(5)))}")
        copying = tried(lambda: back_up_on_closing(database, place / "backups", FIRST))
        tell(f"copied {copying}")
