"""Wishes: what a program is drafted from, and what of it a trainee must not do."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from enum import StrEnum
from itertools import combinations
from typing import Final

from desktop.training.equipment import Bar, Discs, Equipment, Height, Place
from desktop.training.exercises import Exercise, LoadingKind, Pattern
from desktop.training.loading import reachable
from desktop.training.scale import missing_needs
from desktop.training.schedule import WEEK, least_days_between
from desktop.training.sentence import sentence
from desktop.training.trainee import Experience

MOST_DAYS: Final = 6
LEAST_MINUTES: Final = 10
MOST_MINUTES: Final = 180


class InvalidWish(ValueError):
    """A wish that nobody could meet; the message says what is allowed."""


class Aim(StrEnum):
    """What the training is for."""

    STRENGTH = "strength"
    SIZE = "size"
    SKILL = "skill"


class EquipmentClass(StrEnum):
    """Equipment where nobody's own is known; each has all that those before it have."""

    NONE = "none"
    DUMBBELL = "dumbbell"
    BARBELL = "barbell"
    MIXED = "mixed"


class Wish(StrEnum):
    """A wish that can be relaxed."""

    MINUTES = "minutes"
    DAYS = "days"
    EQUIPMENT = "equipment"
    AVOID = "avoid"


_SPREAD: Final = {
    1: (0,),
    2: (0, 3),
    3: (0, 2, 4),
    4: (0, 1, 3, 4),
    5: (0, 1, 2, 4, 5),
    6: (0, 1, 2, 3, 4, 5),
}
"""Weekdays as far apart as a week allows, with the weekend free as long as it can be."""

_NAMED_BAR: Final = {"hex-bar-deadlift": "hex", "hex-bar-carry": "hex"}
"""Exercises that a straight bar does not serve: what must stand in the name of a bar owned."""

_PAIR_OF_DUMBBELLS: Final = tuple(kilos * 1000 for kilos in range(2, 31, 2) for _ in range(2))
_DISCS: Final = tuple(Discs(grams, 4) for grams in (20_000, 10_000, 5_000, 2_500, 1_250))


def equipment_of(kind: EquipmentClass) -> Equipment:
    """What is counted on where only the class is known.

    None: the floor and a wall. Dumbbell: pairs of 2 to 30 kg and a bench. Barbell: bar, discs,
    bench, a bar to hang from. Mixed: both, kettlebells, rings, parallel bars, a low bar, a box.
    """
    match kind:
        case EquipmentClass.NONE:
            return Equipment(places=(Place.WALL,))
        case EquipmentClass.DUMBBELL:
            return Equipment(
                dumbbells_g=_PAIR_OF_DUMBBELLS,
                boxes=(Height("step", 200),),
                places=(Place.WALL, Place.BENCH),
            )
        case EquipmentClass.BARBELL:
            return Equipment(
                bars=(Bar("barbell", 20_000),),
                discs=_DISCS,
                boxes=(Height("step", 200),),
                places=(Place.WALL, Place.BENCH, Place.BAR),
            )
        case EquipmentClass.MIXED:
            return Equipment(
                bars=(Bar("barbell", 20_000),),
                discs=_DISCS,
                dumbbells_g=_PAIR_OF_DUMBBELLS,
                kettlebells_g=tuple(kg * 1000 for kg in (8, 12, 16, 20, 24) for _ in range(2)),
                boxes=(Height("step", 200), Height("box", 500)),
                places=tuple(Place),
            )


@dataclass(frozen=True, slots=True)
class Avoid:
    """What must not be asked: movement patterns, exercises by key, and words that stand in an
    exercise's name, in its other names, or among the muscles it trains directly.
    """

    patterns: tuple[Pattern, ...] = ()
    exercises: tuple[str, ...] = ()
    words: tuple[str, ...] = ()

    @property
    def items(self) -> tuple[str, ...]:
        """Everything named, as text."""
        return (*(each.value for each in self.patterns), *self.exercises, *self.words)

    def without(self, item: str) -> Avoid:
        """The same with one item allowed."""
        return Avoid(
            tuple(each for each in self.patterns if each.value != item),
            tuple(each for each in self.exercises if each != item),
            tuple(each for each in self.words if each != item),
        )

    def forbids(self, exercise: Exercise) -> bool:
        """Whether the exercise must not be asked."""
        if exercise.pattern in self.patterns or exercise.key in self.exercises:
            return True
        named = (exercise.name, *exercise.other_names, *exercise.direct)
        said = " ".join(named).casefold()
        return any(word.casefold() in said for word in self.words)


def avoid_of(texts: Iterable[str], exercises: Mapping[str, Exercise]) -> Avoid:
    """What texts such as "vertical push", "deadlift" or "chest" forbid.

    A text that names a pattern or an exercise means that; any other is a word to look for. Raises
    InvalidWish where it says nothing that any exercise has.
    """
    patterns: list[Pattern] = []
    keys: list[str] = []
    words: list[str] = []
    by_name = {exercise.name.casefold(): key for key, exercise in exercises.items()}
    for text in dict.fromkeys(each.strip().casefold() for each in texts if each.strip()):
        if text in {pattern.value for pattern in Pattern}:
            patterns.append(Pattern(text))
        elif text in exercises or text in by_name:
            keys.append(by_name.get(text, text))
        elif any(Avoid(words=(text,)).forbids(each) for each in exercises.values()):
            words.append(text)
        else:
            allowed = ", ".join(pattern.value for pattern in Pattern)
            raise InvalidWish(
                sentence(
                    "avoid {text!r}: no exercise has that; name an exercise, a muscle, or a "
                    "pattern ({allowed})",
                    text=text,
                    allowed=allowed,
                )
            )
    return Avoid(tuple(patterns), tuple(keys), tuple(words))


@dataclass(frozen=True, slots=True)
class DraftWishes:
    """What a program is drafted from.

    ``minutes`` a session may take; ``weekdays`` that can be trained (empty: any); ``kind`` the
    class that ``equipment`` stands for, None where it is somebody's own.
    """

    days: int
    minutes: int
    equipment: Equipment
    level: Experience = Experience.NOVICE
    aim: Aim = Aim.STRENGTH
    avoid: Avoid = Avoid()
    weekdays: tuple[int, ...] = ()
    kind: EquipmentClass | None = None

    def __post_init__(self) -> None:
        if not 1 <= self.days <= MOST_DAYS:
            raise InvalidWish(
                sentence(
                    "1 to {most_days} days a week, not {days}", most_days=MOST_DAYS, days=self.days
                )
            )
        if not LEAST_MINUTES <= self.minutes <= MOST_MINUTES:
            raise InvalidWish(
                sentence(
                    "{least_minutes} to {most_minutes} minutes a session, not {minutes}",
                    least_minutes=LEAST_MINUTES,
                    most_minutes=MOST_MINUTES,
                    minutes=self.minutes,
                )
            )
        if any(not 0 <= weekday < WEEK for weekday in self.weekdays):
            raise InvalidWish(sentence("weekdays are 0 (Monday) to 6 (Sunday)"))
        if self.weekdays and len(set(self.weekdays)) < self.days:
            raise InvalidWish(
                sentence(
                    "{days} days a week need as many weekdays, not {value}",
                    days=self.days,
                    value=len(set(self.weekdays)),
                )
            )

    @property
    def training_weekdays(self) -> tuple[int, ...]:
        """The weekdays trained on, as far apart as the wishes allow (0 = Monday)."""
        if not self.weekdays:
            return _SPREAD[self.days]
        choices = list(combinations(sorted(set(self.weekdays)), self.days))
        return min(choices, key=lambda days: (-(least_days_between(days) or 0), _closeness(days)))

    def can_do(self, exercise: Exercise) -> bool:
        """Whether the equipment allows the exercise, avoided or not."""
        if exercise.retired or missing_needs(exercise.needs, self.equipment):
            return False
        named = _NAMED_BAR.get(exercise.key)
        if named and not any(named in bar.name.casefold() for bar in self.equipment.bars):
            return False
        if exercise.loading is LoadingKind.BODYWEIGHT:
            return any(
                not missing_needs(variation.needs, self.equipment)
                for variation in exercise.variations
            )
        return any(load_g > 0 for load_g in reachable(self.equipment, exercise))


def _closeness(days: tuple[int, ...]) -> int:
    """How many of the days follow one another directly, week after week."""
    return sum((day + 1) % WEEK in days for day in days)
