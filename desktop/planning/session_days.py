"""Session days: the days before and after one on which training is planned or was recorded."""

from __future__ import annotations

from datetime import date

from desktop.planning.history import History
from desktop.planning.schedule import DAY, absence_on, training_day_on, training_days
from desktop.training.session import Session

FURTHEST_BACK = 120
"""So many days are looked through for an earlier training day."""


def training_day_after(history: History, day: date) -> date | None:
    """The first planned training day after ``day``; None where none comes within a year."""
    return next((each for each, _ in training_days(history, day)), None)


def training_day_before(history: History, day: date) -> date | None:
    """The last training day before ``day``, planned or done; None within 120 days of none."""
    done = {session.day for session in history.sessions}
    for back in range(1, FURTHEST_BACK + 1):
        earlier = day - back * DAY
        if earlier in done:
            return earlier
        if training_day_on(history, earlier) and not absence_on(history, earlier):
            return earlier
    return max((each for each in done if each < day), default=None)


def session_before(history: History, day: date, entry: int) -> Session | None:
    """The last session on record before the one of ``day`` and ``entry``."""
    earlier = [one for one in history.sessions if (one.day, one.entry) < (day, entry)]
    return earlier[-1] if earlier else None


def session_after(history: History, day: date, entry: int) -> Session | None:
    """The first session on record after the one of ``day`` and ``entry``."""
    later = (one for one in history.sessions if (one.day, one.entry) > (day, entry))
    return next(later, None)


def latest_day(history: History) -> date | None:
    """The day of the last session on record."""
    return history.sessions[-1].day if history.sessions else None
