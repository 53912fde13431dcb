"""Clearance: whether a licensed professional's word is needed before anything is asked."""

from __future__ import annotations

from datetime import date

from desktop.planning.history import History
from desktop.training.recovery import uncleared
from desktop.training.session import Session
from desktop.training.trainee import Clearance


def clearance_needed(history: History, day: date) -> date | None:
    """The day of the red flag or refused screening that still stands on ``day``; None: none."""
    asking = (uncleared_red_flag(history, day), uncleared_screening(history, day))
    return max((each for each in asking if each is not None), default=None)


def red_flags(history: History, day: date) -> tuple[Session, ...]:
    """The sessions up to ``day`` in which a red flag was noted."""
    return tuple(one for one in history.sessions if one.red_flag and one.day <= day)


def uncleared_red_flag(history: History, day: date) -> date | None:
    """The latest red flag up to ``day`` without a clearance since."""
    return uncleared((one.day for one in red_flags(history, day)), _given(history, day))


def uncleared_screening(history: History, day: date) -> date | None:
    """The day of a health screening that was not clear, without a clearance since."""
    trainee = history.trainee
    refused = trainee.screening_clear is False and trainee.screened is not None
    asking = [trainee.screened] if refused and trainee.screened is not None else []
    return uncleared((one for one in asking if one <= day), _given(history, day))


def _given(history: History, day: date) -> tuple[Clearance, ...]:
    return tuple(one for one in history.trainee.clearances if one.day <= day)
