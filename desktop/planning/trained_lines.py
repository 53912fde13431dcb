"""Trained lines: which lines of a trainee there is something to see of."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from db.line_parts import last_trained
from db.repository import Repository
from desktop.planning.history import History
from desktop.training.name_order import NameKey, name_key
from desktop.training.program import Line


@dataclass(frozen=True, slots=True)
class TrainedLine:
    """A line, and the day it was last trained on (None: never)."""

    line: Line
    last: date | None


def trained_lines(repository: Repository, about: History, today: date) -> tuple[TrainedLine, ...]:
    """The lines of a trainee up to ``today``, most recently trained first, then by name; lines
    never trained last. Looks up one day for each, however long the record is.
    """
    exercises = {line.id: line.exercise for line in about.lines if line.id is not None}
    days = last_trained(repository.database, exercises, today)
    found = [TrainedLine(line, days.get(line.id or 0)) for line in about.lines]
    by_name = sorted(found, key=lambda one: _named(about, one.line))
    return tuple(sorted(by_name, key=lambda one: one.last or date.min, reverse=True))


def line_name(about: History, line_id: int | None) -> str:
    """A line in words: "Back squat", "Back squat, heavy"; "" for None."""
    if line_id is None:
        return ""
    line = about.line(line_id)
    return ", ".join(part for part in (about.exercise_of(line).name, line.name) if part)


def _named(about: History, line: Line) -> tuple[NameKey, NameKey]:
    return name_key(about.exercise_of(line).name), name_key(line.name)
