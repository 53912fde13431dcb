"""Exercise search: the exercises that somebody may mean by a few letters, best first."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Final

from desktop.training.exercises import Exercise

LEAST_LIKE: Final = 60
"""Names less alike than this, out of 100, are no answer."""


def find_exercises(text: str, exercises: Iterable[Exercise], most: int = 6) -> tuple[Exercise, ...]:
    """At most ``most`` exercises whose name or other name is like ``text``; typing slips are
    forgiven, and beginnings of words go first. A blank text finds none.
    """
    from rapidfuzz import fuzz  # late: needed only once somebody searches

    wanted = " ".join(text.casefold().replace("-", " ").split())
    if not wanted:
        return ()
    found: list[tuple[float, int, Exercise]] = []
    for exercise in exercises:
        names = [_plain(name) for name in (exercise.name, *exercise.other_names)]
        likeness = max(
            fuzz.WRatio(wanted, name) + _bonus(wanted, name, own=not place)
            for place, name in enumerate(names)
        )
        if likeness >= LEAST_LIKE:
            found.append((-likeness, len(exercise.name), exercise))
    found.sort(key=lambda each: each[:2])
    return tuple(exercise for _, _, exercise in found[:most])


def _plain(name: str) -> str:
    return name.casefold().replace("-", " ")


def _bonus(wanted: str, name: str, *, own: bool) -> float:
    """What begins as typed goes before what is merely like it, and the own name before others."""
    parts = name.split()
    begun = all(any(part.startswith(each) for part in parts) for each in wanted.split())
    same = 40.0 if wanted == name else 0.0
    return same + (30.0 if begun else 0.0) + (5.0 if name.startswith(wanted) else 0.0) + own
