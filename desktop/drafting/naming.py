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
from desktop.training.sentence import Sentence, enumerated, sentence
from desktop.training.trainee import Experience

CAUTION: Final = sentence(
    "For healthy people: whoever has a condition, pain, a recent injury or a doubtful health "
    "screening needs clearance from a licensed professional first."
)

_WEEKDAYS: Final = (
    sentence("Monday"),
    sentence("Tuesday"),
    sentence("Wednesday"),
    sentence("Thursday"),
    sentence("Friday"),
    sentence("Saturday"),
    sentence("Sunday"),
)
_DAYS: Final = (
    sentence("No days"),
    sentence("One day"),
    sentence("Two days"),
    sentence("Three days"),
    sentence("Four days"),
    sentence("Five days"),
    sentence("Six days"),
)
_AIM: Final = {
    Aim.STRENGTH: sentence("strength"),
    Aim.SIZE: sentence("size"),
    Aim.SKILL: sentence("skill"),
}
_WITH: Final = {
    EquipmentClass.NONE: sentence("no equipment"),
    EquipmentClass.DUMBBELL: sentence("dumbbells and a bench"),
    EquipmentClass.BARBELL: sentence("barbell, bench and bar"),
    EquipmentClass.MIXED: sentence("a well-equipped room"),
    None: sentence("own equipment"),
}
_SHORT: Final = {
    Pattern.SQUAT: sentence("squat"),
    Pattern.HINGE: sentence("hinge"),
    Pattern.LUNGE: sentence("lunge"),
    Pattern.HORIZONTAL_PUSH: sentence("push"),
    Pattern.VERTICAL_PUSH: sentence("press"),
    Pattern.HORIZONTAL_PULL: sentence("row"),
    Pattern.VERTICAL_PULL: sentence("pull-up"),
    Pattern.TRUNK: sentence("trunk"),
    Pattern.CARRY: sentence("carry"),
    Pattern.SINGLE_JOINT: sentence("arms and calves"),
}
_MOST_WORDS: Final = 3


def weekday_name(weekday: int) -> str:
    """The weekday (0 = Monday) in words."""
    return _WEEKDAYS[weekday]


def program_name(wishes: DraftWishes) -> str:
    """ "Three days, dumbbells and a bench: size"."""
    return sentence(
        "{days}, {equipment}: {aim}",
        days=_DAYS[wishes.days],
        equipment=_WITH[wishes.kind],
        aim=_AIM[wishes.aim],
    )


def about(wishes: DraftWishes, weeks: int) -> str:
    """What the program is and what has to be done before it starts."""
    easier = (
        sentence("No deload is planned: for novices it is the coach's call.")
        if wishes.level is Experience.NOVICE
        else sentence("Every sixth week is a deload.")
    )
    first = (
        sentence("Holds and harder variations come first")
        if wishes.aim is Aim.SKILL
        else sentence("The large exercises come first")
    )
    return sentence(
        "Drafted for {level}, {weeks} weeks, {minutes} minutes a session at most. {first}; "
        "repetitions or seconds grow before load or variation. Starts are light on purpose: set "
        "each trainee's own, or put an assessment first. {easier} The ranges are common practice. "
        "{caution}",
        level=_level(wishes.level),
        weeks=weeks,
        minutes=wishes.minutes,
        first=first,
        easier=easier,
        caution=CAUTION,
    )


def _level(level: Experience) -> str:
    return {
        Experience.NOVICE: sentence("a novice"),
        Experience.INTERMEDIATE: sentence("an intermediate trainee"),
        Experience.ADVANCED: sentence("an advanced trainee"),
    }[level]


def day_names(days: Sequence[Sequence[Taken]], weekdays: Sequence[int]) -> tuple[str, ...]:
    """A name for each day by the first things it holds, no two alike."""
    held = [_held(day) for day in days]
    counts = Counter(held)
    return tuple(
        name.begun()
        if counts[name] == 1
        else sentence("{weekday}: {day}", weekday=weekday_name(weekday), day=name)
        for name, weekday in zip(held, weekdays, strict=True)
    )


def _held(day: Sequence[Taken]) -> Sentence:
    words: dict[Sentence, None] = {}
    for one in day:
        holds = one.candidate.role is Role.SKILL and one.candidate.exercise.measure is Measure.HOLD
        name = sentence("{exercise}", exercise=one.candidate.exercise.name).small()
        words.setdefault(name if holds else _SHORT[one.candidate.pattern])
    return enumerated(list(words)[:_MOST_WORDS])
