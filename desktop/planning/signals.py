"""Signals: what in one trainee's last weeks points to a deload."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from datetime import date

from desktop.training.brief import SessionBrief
from desktop.training.deload import (
    COMPARED,
    Effort,
    Seen,
    aches,
    effort_rising,
    plateaus,
    wellness_down,
)


def deload_signals(
    sessions: Iterable[SessionBrief],
    today: date,
    plateau_of: Mapping[int, float],
    at_least: float,
) -> tuple[Seen, ...]:
    """The signals seen ``today``; ``plateau_of`` gives each line's probability of a plateau, of
    which ``at_least`` counts.
    """
    late = [one for one in sessions if today - COMPARED < one.day <= today]
    felt = [(one.day, one.wellness) for one in late if one.wellness is not None]
    efforts = [
        Effort(one.day, one.effort, one.volume_g)
        for one in late
        if one.effort is not None and not one.eased
    ]
    seen = (
        plateaus(plateau_of, at_least),
        wellness_down(felt, today),
        effort_rising((work for one in late for work in one.work), efforts, today),
        aches([one.day for one in late if one.sore], today),
    )
    return tuple(each for each in seen if each is not None)
