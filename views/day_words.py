"""A training day in words."""

from __future__ import annotations

from desktop.training.program import TrainingDay
from views import words


def day_name(day: TrainingDay, held: str = "") -> str:
    """A day by its weekday and what it holds: "Monday · squat, push, pull".

    ``held``: what it holds, where it has no name of its own.
    """
    name = day.name or held
    if day.weekday is None:
        return name
    weekday = words.weekday(day.weekday)
    if name.casefold().startswith(f"{weekday}: ".casefold()):  # "Monday: squat" among others
        name = name[len(weekday) + 2 :]
    if not name or name.casefold() == weekday.casefold():
        return weekday
    return f"{weekday}{words.DOT}{name[:1].lower()}{name[1:]}"
