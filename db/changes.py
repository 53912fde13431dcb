"""What a write touched, so that screens can decide whether to redraw."""

from __future__ import annotations

from collections.abc import Iterable
from enum import StrEnum
from typing import Any, NamedTuple


class Kind(StrEnum):
    """The aggregates of the store: each is saved, restored and removed as a whole."""

    TRAINEE = "trainee"
    BODY_MASS = "body mass"
    EQUIPMENT = "equipment"
    EXERCISE = "exercise"
    LINE = "line"
    PROGRAM = "program"
    ASSIGNMENT = "assignment"
    SESSION = "session"
    SESSION_CHANGE = "session change"
    ACTIVITY = "activity"
    DELOAD = "deload"
    ABSENCE = "absence"
    GOAL = "goal"
    DISMISSED = "dismissed caution"
    REMEMBERED_NAME = "remembered name"
    SETTINGS = "settings"


class Changes(NamedTuple):
    """Kinds and trainees touched by one write (trainees empty: all), and what was saved, with
    ids and revisions filled in, in the order given.
    """

    kinds: frozenset[Kind] = frozenset()
    trainees: frozenset[int] = frozenset()
    saved: tuple[Any, ...] = ()


def joined(parts: Iterable[Changes]) -> Changes:
    """Several writes as one: all kinds and all trainees (where one touched all of them: none is
    named).
    """
    seen = tuple(part for part in parts if part.kinds)
    everybody = any(not part.trainees for part in seen)
    trainees: frozenset[int] = frozenset().union(*(part.trainees for part in seen))
    return Changes(
        kinds=frozenset().union(*(part.kinds for part in seen)),
        trainees=frozenset() if everybody else trainees,
        saved=tuple(each for part in seen for each in part.saved),
    )
