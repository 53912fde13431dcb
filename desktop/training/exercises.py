"""Exercises, their variations and what they load: the vocabulary of the catalogue."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum


class Pattern(StrEnum):
    """The fundamental movement patterns that a balanced program covers."""

    SQUAT = "squat"
    HINGE = "hinge"
    LUNGE = "lunge"
    HORIZONTAL_PUSH = "horizontal push"
    VERTICAL_PUSH = "vertical push"
    HORIZONTAL_PULL = "horizontal pull"
    VERTICAL_PULL = "vertical pull"
    TRUNK = "trunk"
    CARRY = "carry"
    SINGLE_JOINT = "single joint"


class Muscle(StrEnum):
    """Muscle groups that hard sets are counted for."""

    QUADRICEPS = "quadriceps"
    HAMSTRINGS = "hamstrings"
    GLUTES = "glutes"
    CALVES = "calves"
    CHEST = "chest"
    UPPER_BACK = "upper back"
    LATS = "lats"
    SHOULDERS = "shoulders"
    BICEPS = "biceps"
    TRICEPS = "triceps"
    FOREARMS = "forearms"
    TRUNK = "trunk"
    LOWER_BACK = "lower back"


class LoadingKind(StrEnum):
    """What makes the exercise heavier, and so which equipment its loads come from.

    ``BODYWEIGHT`` loads lie on one signed axis: assistance is negative, added load positive.
    """

    BARBELL = "barbell"
    DUMBBELL = "dumbbell"
    KETTLEBELL = "kettlebell"
    STACK = "stack"
    BAND = "band"
    BODYWEIGHT = "bodyweight"


class Measure(StrEnum):
    """What is counted in one set: clean repetitions or seconds held."""

    REPS = "reps"
    HOLD = "hold"


class HeightUse(StrEnum):
    """What can be set up at the heights the trainee owns; each height makes one more variation."""

    HANDS = "hands"
    FEET = "feet"
    BAR = "bar"


class Sex(StrEnum):
    """Which column of the body segment tables applies; nothing else depends on it."""

    MALE = "m"
    FEMALE = "f"


@dataclass(frozen=True, slots=True)
class PushUpGeometry:
    """Heights of the hands and of the feet (or knees) above the ground, in millimetres."""

    hands_mm: int = 0
    feet_mm: int = 0
    knees: bool = False


@dataclass(frozen=True, slots=True)
class RowGeometry:
    """Bar (or strap handle) and foot height in millimetres; ``straps`` hang from an anchor.

    With straps the lean is given instead, in degrees from the vertical.
    """

    bar_mm: int = 0
    feet_mm: int = 0
    straps: bool = False
    lean_deg: float | None = None


@dataclass(frozen=True, slots=True)
class HoldGeometry:
    """Joint angles of a static hold, flexion in degrees from the straight body.

    ``hold`` is "front lever", "planche" or "l-sit" (there: from the full L). ``straddle_deg`` is
    per side; ``one_leg``: one leg straight, the other at ``hip_deg`` and ``knee_deg``.
    """

    hold: str
    hip_deg: float = 0.0
    knee_deg: float = 0.0
    straddle_deg: float = 0.0
    one_leg: bool = False


@dataclass(frozen=True, slots=True)
class BodyShare:
    """A fixed share of body mass, as a fraction, by sex, with its uncertainty and source.

    ``published``: measured and published; else modelled.
    """

    male: float
    female: float
    plus_minus: float
    source: str
    published: bool = False


@dataclass(frozen=True, slots=True)
class HeightWords:
    """How a variation at an owned height is called: ``{where}`` is a box or bar by name, or its
    height in centimetres (with ``decimal_mark``). A bar that has a name is said by ``under``.
    """

    hands: str = "hands on {where}"
    feet: str = "feet on {where}"
    bar: str = "bar at {where}"
    under: str = "under {where}"
    decimal_mark: str = "."


@dataclass(frozen=True, slots=True)
class Variation:
    """One difficulty of a bodyweight exercise; at most one of the four geometries is given.

    Without geometry the variation is known by its order in the exercise alone. ``family``
    separates scales that must not be mixed (knees and feet). ``needs`` names what must be owned
    ("bar", "rings", "box", "straps", "parallel bars", "step"); heights are checked separately.
    ``other_names`` stand in no file: they are what else it is called in the coach's language.
    """

    key: str
    name: str
    family: str = ""
    push_up: PushUpGeometry | None = None
    row: RowGeometry | None = None
    hold: HoldGeometry | None = None
    share: BodyShare | None = None
    needs: tuple[str, ...] = ()
    other_names: tuple[str, ...] = ()

    def __post_init__(self) -> None:
        given = [g for g in (self.push_up, self.row, self.hold, self.share) if g is not None]
        if len(given) > 1:
            raise ValueError(f"variation {self.key!r} gives {len(given)} geometries; at most one")

    @property
    def order_only(self) -> bool:
        """Whether nothing but its place among the others is known of its difficulty."""
        return not (self.push_up or self.row or self.hold or self.share)


@dataclass(frozen=True, slots=True)
class Exercise:
    """A movement trained.

    ``key`` is stable and unique; ``increment_g`` is the usual smallest load step per implement;
    ``implements`` is 2 where a pair is held (loads are per implement). ``variations`` run from
    easiest to hardest; ``heights`` adds one per box or bar owned. ``own`` marks the coach's own
    exercises, ``retired`` those kept only for the record. ``other_names`` help to find it when it
    is typed. ``height_words`` stand in no file: they are the coach's language.
    """

    key: str
    name: str
    pattern: Pattern
    loading: LoadingKind
    direct: tuple[Muscle, ...]
    indirect: tuple[Muscle, ...] = ()
    measure: Measure = Measure.REPS
    implements: int = 1
    unilateral: bool = False
    increment_g: int = 2500
    variations: tuple[Variation, ...] = ()
    heights: tuple[HeightUse, ...] = ()
    cue: str = ""
    other_names: tuple[str, ...] = ()
    needs: tuple[str, ...] = ()
    own: bool = False
    retired: bool = False
    id: int | None = None
    revision: int = 0
    height_words: HeightWords = HeightWords()

    def variation(self, key: str) -> Variation:
        """The variation called ``key``; ``KeyError`` when the exercise has none of that name."""
        for variation in self.variations:
            if variation.key == key:
                return variation
        raise KeyError(f"{self.name} has no variation {key!r}")
