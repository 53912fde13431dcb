"""Session days: the days before and after one on which training is planned or was recorded."""

from __future__ import annotations

from datetime import date

from db.repository import Repository
from desktop.planning.history import History, read_history, read_library
from desktop.planning.schedule import DAY, absence_on, training_day_on, training_days
from desktop.training.session import Session
from desktop.training.trainee import Trainee

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


def due_next(repository: Repository, day: date, trainee_id: int | None) -> Trainee | None:
    """Who is typed next: after the trainee named, by name and round from the last to the first,
    the first with training planned on ``day`` and no session on record then.
    """
    everybody = repository.trainees()
    ids = [each.id for each in everybody]
    start = ids.index(trainee_id) + 1 if trainee_id in ids else 0
    library = read_library(repository)
    for trainee in (*everybody[start:], *everybody[:start]):
        if trainee.id is None or trainee.id == trainee_id:
            continue
        if repository.session_on(trainee.id, day):
            continue
        history = read_history(repository, trainee.id, library)
        if training_day_on(history, day) is not None and absence_on(history, day) is None:
            return trainee
    return None
