"""The sessions that a caution rests on, so that a screen can lead to them."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date, timedelta
from typing import Final

from desktop.planning.history import History
from desktop.planning.schedule import WEEK
from desktop.training.limits import LimitId
from desktop.training.recovery import Caution
from desktop.training.session import Session

MOST: Final = 7
"""No more than a week of days is led to: the last ones."""

_COURSE: Final = 3
"""So many sessions show what a line does lately."""


def sessions_behind(history: History, caution: Caution, today: date) -> tuple[Session, ...]:
    """What ``caution`` was read from up to ``today``, oldest first; empty where that is no session
    (a screening, a plan, an age).
    """
    done = [session for session in history.sessions if session.day <= today]
    if caution.sessions:
        return tuple(each for each in done if each.id in caution.sessions)[-MOST:]
    line_id = caution.line_id
    own = done if line_id is None else _of_line(history, line_id, today)
    match caution.limit:
        case LimitId.GAP | LimitId.RULE_COMPLETE | LimitId.EQUIPMENT_JUMP:
            return tuple(own[-1:])
        case LimitId.PLATEAU:
            return tuple(own[-_COURSE:])
        case LimitId.MONOTONY:
            return tuple(_week_to(done, caution["week_ends"]))
        case LimitId.REACTIVE_DELOAD:
            return tuple(each for each in done if today - each.day < WEEK)[-MOST:]
        case LimitId.NO_DELOAD:
            since = caution["since"]
            return tuple(each for each in done if isinstance(since, date) and each.day >= since)[:1]
        case LimitId.TOO_SELDOM if not caution["planned"]:
            return tuple(done[-_COURSE:])
    return ()


def _of_line(history: History, line_id: int, today: date) -> list[Session]:
    return [session for session, _ in history.done(line_id) if session.day <= today]


def _week_to(done: Iterable[Session], week_ends: object) -> list[Session]:
    if not isinstance(week_ends, date):
        return []
    begins = week_ends - timedelta(days=6)
    return [each for each in done if begins <= each.day <= week_ends]
