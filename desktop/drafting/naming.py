"""Naming: what a drafted program and its days are called, and what it says of itself.

Days are called by what they hold; where two hold alike, by weekday as well.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from typing import Final

from desktop.drafting.prescription import Role
from desktop.drafting.week import Taken
from desktop.drafting.wishes import Aim, DraftWishes, EquipmentClass
from desktop.training.exercises import Measure, Pattern
from desktop.training.trainee import Experience

CAUTION: Final = (
    "For healthy people: whoever has a condition, pain, a recent injury or a doubtful health "
    "screening needs clearance from a licensed professional first."
)

_WEEKDAYS: Final = (
    "Monday",
    "Tuesday",
    "Wednesday",
    "Thursday",
    "Friday",
    "Saturday",
    "Sunday",
)
_NUMBERS: Final = ("No", "One", "Two", "Three", "Four", "Five", "Six")
_WITH: Final = {
    EquipmentClass.NONE: "no equipment",
    EquipmentClass.DUMBBELL: "dumbbells and a bench",
    EquipmentClass.BARBELL: "barbell, bench and bar",
    EquipmentClass.MIXED: "a well-equipped room",
    None: "own equipment",
}
_SHORT: Final = {
    Pattern.SQUAT: "squat",
    Pattern.HINGE: "hinge",
    Pattern.LUNGE: "lunge",
    Pattern.HORIZONTAL_PUSH: "push",
    Pattern.VERTICAL_PUSH: "press",
    Pattern.HORIZONTAL_PULL: "row",
    Pattern.VERTICAL_PULL: "pull-up",
    Pattern.TRUNK: "trunk",
    Pattern.CARRY: "carry",
    Pattern.SINGLE_JOINT: "arms and calves",
}
_MOST_WORDS: Final = 3


def weekday_name(weekday: int) -> str:
    """The weekday (0 = Monday) in words."""
    return _WEEKDAYS[weekday]


def program_name(wishes: DraftWishes) -> str:
    """ "Three days, dumbbells and a bench: size"."""
    days = f"{_NUMBERS[wishes.days]} day{'s' if wishes.days > 1 else ''}"
    return f"{days}, {_WITH[wishes.kind]}: {wishes.aim.value}"


def about(wishes: DraftWishes, weeks: int) -> str:
    """What the program is and what has to be done before it starts."""
    easier = (
        "No deload is planned: for novices it is the coach's call."
        if wishes.level is Experience.NOVICE
        else "Every sixth week is a deload."
    )
    first = (
        "Holds and harder variations come first"
        if wishes.aim is Aim.SKILL
        else ("The large exercises come first")
    )
    return (
        f"Drafted for {_level(wishes.level)}, {weeks} weeks, {wishes.minutes} minutes a session "
        f"at most. {first}; repetitions or seconds grow before load or variation. Starts are light "
        f"on purpose: set each trainee's own, or put an assessment first. {easier} The ranges are "
        f"common practice. {CAUTION}"
    )


def _level(level: Experience) -> str:
    return {
        Experience.NOVICE: "a novice",
        Experience.INTERMEDIATE: "an intermediate trainee",
        Experience.ADVANCED: "an advanced trainee",
    }[level]


def day_names(days: Sequence[Sequence[Taken]], weekdays: Sequence[int]) -> tuple[str, ...]:
    """A name for each day by the first things it holds, no two alike."""
    held = [_held(day) for day in days]
    counts = Counter(held)
    return tuple(
        name if counts[name] == 1 else f"{weekday_name(weekday)}: {name[0].lower()}{name[1:]}"
        for name, weekday in zip(held, weekdays, strict=True)
    )


def _held(day: Sequence[Taken]) -> str:
    words: dict[str, None] = {}
    for one in day:
        holds = one.candidate.role is Role.SKILL and one.candidate.exercise.measure is Measure.HOLD
        word = one.candidate.exercise.name.lower() if holds else _SHORT[one.candidate.pattern]
        words.setdefault(word)
    name = ", ".join(list(words)[:_MOST_WORDS])
    return name[:1].upper() + name[1:]
