"""Killed (kill -9) at any moment: while writing, importing, migrating, backing up, restoring,
erasing.

What was committed stays, nothing is half there, and the next start goes on as if nothing had been.
A killed process is not a power cut: what the system had taken over still reaches the disk.
"""

from __future__ import annotations

import shutil
from collections.abc import Iterator
from pathlib import Path
from random import Random

from tests.fault_parts import child
from tests.fault_parts.harms import HARMS, Harm

FULL = 600
SHARE = 12

_WHOLE = 3


def run(count: int, chance: Random, folder: Path) -> Iterator[str]:
    """Kill each kind of work ``count`` / kinds times, at moments spread over its whole length."""
    if not child.CAN_FORK:
        yield "not on this system"
        return
    for harm in HARMS:
        yield _killed(harm, count // len(HARMS), chance, folder / harm.name)


def _killed(harm: Harm, count: int, chance: Random, folder: Path) -> str:
    template = folder / "template"
    template.mkdir(parents=True)
    harm.begin(template)
    whole = [
        _round(harm, template, folder / f"whole-{n}", None).seconds
        for n in range(_WHOLE if count > _WHOLE else 1)
    ]
    seconds = min(whole)  # another process may have been busy just then
    midway = 0
    for number in range(count):
        ended = _round(harm, template, folder / str(number), chance.uniform(0, seconds))
        midway += ended.killed
    span = f"{seconds * 1000:.0f} ms"
    return f"{harm.name}: {count} times, {midway} of them within the {span} of work, all sound"


def _round(harm: Harm, template: Path, place: Path, kill_after: float | None) -> child.Ended:
    shutil.copytree(template, place)
    ended = child.run(lambda tell: harm.work(place, tell), kill_after)
    assert ended.killed or (ended.status == 0 and ended.whole), f"{harm.name}: {ended}"
    harm.check(place, ended)
    shutil.rmtree(place)
    return ended
