"""The disk is full: at any length of a file, and on a small disk of its own where one can be had.

It is said as a full or unwritable disk, nothing is half there, and with room again all goes on.
"""

from __future__ import annotations

import resource
import shutil
import subprocess
from collections.abc import Iterator
from functools import partial
from pathlib import Path
from random import Random

from tests.fault_parts import child
from tests.fault_parts.child import Tell
from tests.fault_parts.harms import HARMS, Harm

FULL = 250
SHARE = 12

_DISK = 48_000_000
_LEAST_ROOM = 4_096


def run(count: int, chance: Random, folder: Path) -> Iterator[str]:
    """Half of the times by a limit on the length of files, half on a full disk."""
    if not child.CAN_FORK:
        yield "not on this system"
        return
    each = count // len(HARMS) // 2
    for harm in HARMS:
        template = folder / harm.name
        template.mkdir()
        harm.begin(template)
        yield _limited(harm, each, chance, template)
    disk = folder / "disk"
    disk.mkdir()
    if not _mounted(disk):
        yield "no disk of its own could be mounted here"
        return
    try:
        for harm in HARMS:
            yield _on_full_disk(harm, each, chance, folder / harm.name, disk)
    finally:
        subprocess.run(["umount", str(disk)], check=True)


def _limited(harm: Harm, count: int, chance: Random, template: Path) -> str:
    place = template.with_name(f"{harm.name}-limited")
    longest = _length_needed(harm, template, place)
    refused = 0
    for _ in range(count):
        shutil.copytree(template, place)
        limit = chance.randrange(longest)
        ended = child.run(partial(_work_limited, harm, place, limit))
        refused += _check(harm, place, ended)
    return f"{harm.name}: {count} times with limited length of files, {refused} refused, all sound"


def _length_needed(harm: Harm, template: Path, place: Path) -> int:
    """The longest file that the work needs, while it is at it."""
    shutil.copytree(template, place)
    harm.work(place, lambda _text: None)
    longest = max(path.stat().st_size for path in place.rglob("*") if path.is_file())
    shutil.rmtree(place)
    return longest


def _work_limited(harm: Harm, place: Path, limit: int, tell: Tell) -> None:
    resource.setrlimit(resource.RLIMIT_FSIZE, (limit, limit))
    harm.work(place, tell)


def _on_full_disk(harm: Harm, count: int, chance: Random, template: Path, disk: Path) -> str:
    place, ballast = disk / harm.name, disk / "ballast"
    room = sum(path.stat().st_size for path in template.rglob("*") if path.is_file())
    refused = 0
    for _ in range(count):
        shutil.copytree(template, place)
        free = shutil.disk_usage(disk).free - chance.randrange(_LEAST_ROOM, min(room, _DISK // 4))
        _fill(ballast, free)
        ended = child.run(partial(harm.work, place))
        ballast.unlink()
        refused += _check(harm, place, ended)
    return f"{harm.name}: {count} times on a full disk, {refused} refused, all sound"


def _fill(ballast: Path, size: int) -> None:
    with ballast.open("wb") as file:
        while size > 0:
            file.write(bytes(min(size, 1_000_000)))
            size -= 1_000_000


def _check(harm: Harm, place: Path, ended: child.Ended) -> bool:
    assert ended.status == 0, f"{harm.name} fell over: {ended}"
    assert not ended.refused or ended.refused.startswith("CannotWrite: "), ended.refused
    harm.check(place, ended)
    shutil.rmtree(place)
    return bool(ended.refused)


def _mounted(disk: Path) -> bool:
    command = ["mount", "-t", "tmpfs", "-o", f"size={_DISK}", "tmpfs", str(disk)]
    if not shutil.which("mount"):
        return False
    return subprocess.run(command, capture_output=True, check=False).returncode == 0
