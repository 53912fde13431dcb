"""Where words stand at the edges of a chart: beside their line, never across one where that can be.

Pure: pixels along the edge in, places out.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Literal, NamedTuple

Edge = Literal["top", "second", "foot"]

_TOUCH = 3.0
"""Pixels by which words may reach over a line: so much of them is empty at either end."""


class EdgeWord(NamedTuple):
    """Words of ``width`` pixels that belong to a line at ``pixel``, or at the foot to the middle of
    a strip. Those that give way are placed after all others, in the second row where the first is
    full.
    """

    pixel: float
    width: float
    edge: Edge
    gives_way: bool = False


class Place(NamedTuple):
    """Where words begin, in which row, and whether a line runs through them."""

    start: float
    edge: Edge
    crossed: bool


def places_of(words: Sequence[EdgeWord], room: float) -> tuple[Place | None, ...]:
    """The place of each on an edge ``room`` pixels long; None where it would meet another."""
    lines = [word for word in words if word.edge != "foot" and 0 <= word.pixel <= room]
    found: dict[int, Place] = {}
    order = sorted(range(len(words)), key=lambda at: (words[at].gives_way, words[at].pixel))
    for at in order:
        taken = [(words[other].width, place) for other, place in found.items()]
        place = _place(words[at], lines, taken, room)
        if place is not None:
            found[at] = place
    return tuple(found.get(at) for at in range(len(words)))


def _place(
    word: EdgeWord, lines: Sequence[EdgeWord], taken: Sequence[tuple[float, Place]], room: float
) -> Place | None:
    if not 0 <= word.pixel <= room:
        return None
    edges: tuple[Edge, ...] = ("top", "second") if word.gives_way else (word.edge,)
    for crossed in (False, True):
        for edge in edges:
            for start in _starts(word, lines, room):
                meets = any(
                    place.edge == edge
                    and start < place.start + width
                    and place.start < start + word.width
                    for width, place in taken
                )
                if not meets and (crossed or not _crossing(word, start, lines)):
                    return Place(start, edge, _crossing(word, start, lines))
    return None


def _starts(word: EdgeWord, lines: Sequence[EdgeWord], room: float) -> list[float]:
    """Where it could begin, the best first."""
    beside, before = word.pixel, word.pixel - word.width
    wanted = [beside]
    if word.edge == "foot":
        middle = word.pixel - word.width / 2
        wanted = [middle]
        for line in lines:
            if middle < line.pixel < middle + word.width:
                after = line.pixel < word.pixel
                wanted.append(line.pixel if after else line.pixel - word.width)
    else:
        # What holds from a line on may be named behind the line of today as well.
        passed = [each.pixel for each in lines if each.gives_way and each.pixel > beside]
        wanted = [beside, *(at for at in passed if at < beside + word.width)]
        if word.gives_way or beside + word.width > room:
            wanted.append(before)
    return list(
        dict.fromkeys(min(max(start, 0.0), max(room - word.width, 0.0)) for start in wanted)
    )


def _crossing(word: EdgeWord, start: float, lines: Sequence[EdgeWord]) -> bool:
    ends = start + _TOUCH, start + word.width - _TOUCH
    return any(ends[0] < line.pixel < ends[1] for line in lines)
