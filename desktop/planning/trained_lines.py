"""Trained lines: which lines of a trainee there is something to see of."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from desktop.planning.history import History
from desktop.planning.surroundings import trained_parts
from desktop.training.program import Line


@dataclass(frozen=True, slots=True)
class TrainedLine:
    """A line, the day it was last trained on (None: never) and in how many sessions."""

    line: Line
    last: date | None
    sessions: int


def trained_lines(history: History, today: date) -> tuple[TrainedLine, ...]:
    """The lines of a trainee up to ``today``, most recently trained first, then by name; lines
    never trained last.
    """
    found = [_trained(history, line, today) for line in history.lines]
    by_name = sorted(found, key=lambda one: (history.exercise_of(one.line).name, one.line.name))
    return tuple(sorted(by_name, key=lambda one: one.last or date.min, reverse=True))


def _trained(history: History, line: Line, today: date) -> TrainedLine:
    days = [session.day for session, _ in trained_parts(history, line) if session.day <= today]
    return TrainedLine(line, max(days, default=None), len(days))
