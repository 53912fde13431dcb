"""A training day in words."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from desktop.training.exercises import Exercise, Pattern
from desktop.training.program import TrainingDay
from views import words
from views.exercise_words import pattern_word
from views.sentences import begun_small

_MOST_HELD: Final = 3


def day_name(day: TrainingDay, held: str = "") -> str:
    """A day by its weekday and what it holds: "Monday · squat, push, pull"; as a heading begins.

    ``held``: what it holds, where it has no name of its own.
    """
    name = day.name or held
    if day.weekday is None:
        return name
    weekday = words.weekday(day.weekday)
    heading = weekday[:1].upper() + weekday[1:]  # small in some languages
    if name.casefold().startswith(f"{weekday}: ".casefold()):  # "Monday: squat" among others
        name = name[len(weekday) + 2 :]
    if not name or name.casefold() == weekday.casefold():
        return heading
    return f"{heading}{words.DOT}{begun_small(name)}"


def held_words(day: TrainingDay, exercises: Mapping[str, Exercise]) -> str:
    """What a day holds, by its patterns: "squat, horizontal push, horizontal pull"."""
    patterns = dict.fromkeys(
        exercises[slot.exercise].pattern for slot in day.slots if slot.exercise in exercises
    )
    held = [pattern_word(each) for each in patterns if each is not Pattern.SINGLE_JOINT]
    return ", ".join(held[:_MOST_HELD])
