"""The person trained, and dated facts about them."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from enum import StrEnum

from desktop.training.equipment import Equipment
from desktop.training.exercises import Sex
from desktop.training.quantities import Unit


class Experience(StrEnum):
    """How long somebody has trained regularly."""

    NOVICE = "novice"
    INTERMEDIATE = "intermediate"
    ADVANCED = "advanced"


@dataclass(frozen=True, slots=True)
class Clearance:
    """A licensed professional's clearance: who gave it, when, and what was said."""

    day: date
    by: str
    note: str = ""


@dataclass(frozen=True, slots=True)
class Trainee:
    """Who trains. ``stature_mm`` and ``sex`` serve the leverage model; ``weekdays`` are the days
    they can train (0 = Monday); dates of screening and consent are None until recorded.
    """

    name: str
    birth_year: int | None = None
    sex: Sex = Sex.MALE
    stature_mm: int | None = None
    unit: Unit = Unit.KG
    weekdays: tuple[int, ...] = ()
    minutes_per_session: int | None = None
    experience: Experience = Experience.NOVICE
    aims: str = ""
    avoid: str = ""
    screened: date | None = None
    screening_clear: bool | None = None
    consent: date | None = None
    clearances: tuple[Clearance, ...] = ()
    activities_recorded: bool = True
    notes: str = ""
    archived: bool = False
    id: int | None = None
    revision: int = 0


@dataclass(frozen=True, slots=True)
class BodyMass:
    """Body mass in grams on a date."""

    trainee_id: int
    day: date
    mass_g: int
    id: int | None = None
    revision: int = 0


@dataclass(frozen=True, slots=True)
class EquipmentFrom:
    """What the trainee can use from a date on, until the next such entry."""

    trainee_id: int
    day: date
    equipment: Equipment
    id: int | None = None
    revision: int = 0


class AbsenceKind(StrEnum):
    """Why somebody did not train; all of them count as time untrained."""

    AWAY = "away"
    ILLNESS = "illness"
    INJURY = "injury"


@dataclass(frozen=True, slots=True)
class Absence:
    """Days without training, first and last included; ``last`` None while it goes on."""

    trainee_id: int
    first: date
    last: date | None
    kind: AbsenceKind = AbsenceKind.AWAY
    note: str = ""
    id: int | None = None
    revision: int = 0


@dataclass(frozen=True, slots=True)
class DeloadWindow:
    """An easier week (or other span): first and last day, factor on sets, percent off the load."""

    trainee_id: int
    first: date
    last: date
    sets_factor: float = 0.6
    load_percent: float = 10.0
    planned: bool = True
    note: str = ""
    id: int | None = None
    revision: int = 0


class GoalKind(StrEnum):
    """What a goal is measured in."""

    ONE_REP_MAX = "one-repetition maximum"
    REPS = "reps"
    HOLD = "hold"
    VARIATION = "variation"


@dataclass(frozen=True, slots=True)
class Goal:
    """A goal on one line: grams, repetitions, seconds (``value``) or a variation, by a date.

    ``reps`` of a load: ``value`` is what is loaded (with body mass: added) for so many
    repetitions; None: it is the maximum itself.
    """

    trainee_id: int
    line_id: int
    kind: GoalKind
    value: int = 0
    variation: str | None = None
    by: date | None = None
    note: str = ""
    reps: int | None = None
    id: int | None = None
    revision: int = 0


@dataclass(frozen=True, slots=True)
class DismissedCaution:
    """A caution set aside by the coach: its limit, the evidence it rested on, why and when."""

    trainee_id: int
    limit: str
    evidence: str
    day: date
    why: str
    id: int | None = None
    revision: int = 0


@dataclass(frozen=True, slots=True)
class RememberedName:
    """What a trainee calls an exercise in their notes, as the coach once settled it: ``text`` as
    it was written means the exercise with the key ``exercise``.
    """

    trainee_id: int
    text: str
    exercise: str
    id: int | None = None
    revision: int = 0
