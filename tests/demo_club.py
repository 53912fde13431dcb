"""The invented scenario of the demo: a village rowing club's winter strength room.

Nobody here exists. People are called by their seats in an eight; what each can really do is known,
since it was made up, and so the program's answers can be compared with it.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from datetime import date, timedelta
from typing import Final

from db.trainee_files import Away, GoalFile, LineFile, OwnedFrom
from desktop.training.equipment import Bar, Discs, Equipment, Height, Place
from desktop.training.exercises import Sex
from desktop.training.position import Position
from desktop.training.program import LineStart
from desktop.training.quantities import Unit, grams
from desktop.training.trainee import AbsenceKind, Clearance, Experience, GoalKind, Trainee
from tests.demo_programs import (
    BARBELL,
    BODYWEIGHT,
    DUMBBELLS,
    FIRST_WINTER,
    INVENTED,
    POUNDS,
    hold,
    reps,
)

MONDAY_AFTER: Final = date(2026, 11, 30)
"""The Monday after the last week of the scenario, which ends on the Sunday before."""

WEEKS: Final = 16
FIRST_MONDAY: Final = MONDAY_AFTER - timedelta(weeks=WEEKS)


def on(week: int, weekday: int) -> date:
    """The day of a week of the scenario (from 1), 0 = Monday."""
    return FIRST_MONDAY + timedelta(weeks=week - 1, days=weekday)


@dataclass(frozen=True, slots=True)
class Ability:
    """What somebody can really do, and how it grows over the winter.

    ``at_first``: for repetitions the effective load in kg moved once, for holds the seconds at the
    full difficulty (in a carry the kg held for a minute). It grows towards ``gain`` more, half
    of that in ``half_life`` weeks, and stands still from ``stalls_from`` on.
    """

    at_first: float
    gain: float = 0.12
    half_life: float = 10.0
    stalls_from: int | None = None

    def in_week(self, week: float) -> float:
        """The ability after so many weeks."""
        if self.stalls_from is not None:
            week = min(week, self.stalls_from)
        return self.at_first * (1 + self.gain * (1 - math.exp2(-week / self.half_life)))


@dataclass(frozen=True, slots=True)
class Member:
    """One person of the club: who, with what, by which program, and how it really is."""

    trainee: Trainee
    body_mass_kg: float
    program: str
    equipment: tuple[OwnedFrom, ...]
    abilities: Mapping[str, Ability]
    starts: Mapping[tuple[str, str], Position]
    goals: tuple[GoalFile, ...] = ()
    absences: tuple[Away, ...] = ()
    pains: Mapping[tuple[str, int], int] = field(default_factory=dict)
    """Pain 0-10 on an exercise in a week of the scenario."""
    joins: int = 1
    gives_rir: float = 0.8
    rows_out: bool = True
    mass_trend_kg: float = 0.0

    @property
    def lines(self) -> tuple[LineFile, ...]:
        """The lines with the starts that the coach gave."""
        day = on(self.joins, 0)
        return tuple(
            LineFile(exercise, name, starts=(LineStart(day, position, kind="assessment"),))
            for (exercise, name), position in self.starts.items()
        )


# --- rooms --------------------------------------------------------------------------------------


def _pairs(masses_g: Iterable[int]) -> tuple[int, ...]:
    return tuple(mass for mass in masses_g for _ in range(2))


ROOM: Final = Equipment(
    bars=(Bar("club bar", 20_000), Bar("light bar", 10_000)),
    discs=tuple(
        Discs(mass, count)
        for mass, count in (
            (20_000, 6), (15_000, 2), (10_000, 4), (5_000, 4), (2_500, 4), (1_250, 4),
        )
    ),
    dumbbells_g=_pairs(range(4_000, 32_000, 2_000)),
    vest_g=(2_500, 5_000, 7_500, 10_000, 12_500, 15_000),
    boxes=(Height("bench", 430), Height("oar box", 300), Height("step", 200)),
    bar_heights=(Height("pin 9", 1100), Height("pin 7", 950), Height("pin 5", 800)),
    places=(Place.BAR, Place.LOW_BAR, Place.PARALLEL_BARS, Place.BENCH, Place.WALL),
)  # fmt: skip
GARAGE: Final = Equipment(
    bars=(Bar("bar", grams(45, Unit.LB)),),
    discs=tuple(
        Discs(grams(lb, Unit.LB), count)
        for lb, count in ((45, 4), (35, 2), (25, 2), (10, 4), (5, 4), (2.5, 2))
    ),
    dumbbells_g=_pairs(grams(lb, Unit.LB) for lb in range(10, 75, 5)),
    vest_g=tuple(grams(lb, Unit.LB) for lb in range(5, 50, 5)),
    places=(Place.BAR, Place.PARALLEL_BARS, Place.BENCH, Place.WALL),
)
HOME: Final = Equipment(
    bars=(Bar("home bar", 10_000),),
    discs=(Discs(10_000, 4), Discs(5_000, 2), Discs(2_500, 4), Discs(1_250, 2)),
    dumbbells_g=_pairs(range(4_000, 22_000, 2_000)),
    boxes=(Height("chair", 450), Height("stair, third", 540), Height("stair, first", 180)),
    places=(Place.WALL, Place.BENCH),
)
BOAT_STORE: Final = Equipment(
    vest_g=(2_500, 5_000, 7_500, 10_000),
    boxes=(Height("bench", 430), Height("trestle", 600)),
    bar_heights=(
        Height("rack, high", 1150),
        Height("rack, middle", 1000),
        Height("rack, low", 850),
        Height("rack, lowest", 700),
    ),
    places=(Place.BAR, Place.LOW_BAR, Place.PARALLEL_BARS, Place.BENCH, Place.WALL),
)
BOAT_STORE_LATER: Final = Equipment(
    vest_g=BOAT_STORE.vest_g,
    boxes=(*BOAT_STORE.boxes, Height("oar box", 300)),
    bar_heights=BOAT_STORE.bar_heights,
    places=BOAT_STORE.places,
)


# --- people -------------------------------------------------------------------------------------


def _who(
    name: str, sex: Sex, born: int, stature_mm: int, experience: Experience, **more: object
) -> Trainee:
    told: dict[str, object] = {
        "screened": on(1, 0) - timedelta(days=9),
        "screening_clear": True,
        "consent": on(1, 0) - timedelta(days=9),
        "notes": INVENTED,
        "minutes_per_session": 60,
        **more,
    }
    return Trainee(name, born, sex, stature_mm, experience=experience, **told)  # type: ignore[arg-type]


def _barbell_starts(
    squat: float,
    bench: float,
    row: float,
    dead: float,
    press: float,
    hand: float,
    pull_ups: int = 4,
) -> dict[tuple[str, str], Position]:
    return {
        ("back-squat", "heavy"): reps(3, 5, squat),
        ("back-squat", "light"): reps(2, 6, squat * 0.85),
        ("bench-press", ""): reps(3, 6, bench),
        ("bent-over-row", ""): reps(3, 8, row),
        ("plank", ""): hold(3, 20, 0, "full"),
        ("deadlift", ""): reps(3, 4, dead),
        ("overhead-press", ""): reps(3, 6, press),
        ("pull-up", ""): reps(3, pull_ups, 0, "full"),
        ("l-sit", ""): hold(4, 5, 0, "tuck"),
        ("dumbbell-bench-press", ""): reps(3, 8, hand),
        ("dumbbell-row", ""): reps(3, 8, hand + 4),
        ("dumbbell-split-squat", ""): reps(3, 8, hand - 4),
        ("farmer-carry", ""): hold(3, 30, hand + 6),
    }


def _barbell_abilities(squat: float, bench: float, row: float, dead: float, press: float,
                       pull: float, hand: float, gain: float) -> dict[str, Ability]:  # fmt: skip
    return {
        "back-squat": Ability(squat, gain),
        "bench-press": Ability(bench, gain),
        "bent-over-row": Ability(row, gain),
        "plank": Ability(42, 0.6),
        "deadlift": Ability(dead, gain),
        "overhead-press": Ability(press, gain),
        "pull-up": Ability(pull, gain * 0.8),
        "l-sit": Ability(7, 1.0),
        "dumbbell-bench-press": Ability(hand * 1.62, gain * 1.3),
        "dumbbell-row": Ability(hand * 2.0, gain * 1.3),
        "dumbbell-split-squat": Ability(hand * 1.25, gain * 1.5),
        "farmer-carry": Ability(hand * 1.7, gain * 1.2),
    }


BOW: Final = Member(
    _who("Bow", Sex.FEMALE, 1997, 1680, Experience.INTERMEDIATE,
         aims="A quicker catch; a squat of 80 kg by the spring head race"),
    61.5,
    BARBELL.name,
    (OwnedFrom(on(1, 0), ROOM),),
    _barbell_abilities(72, 46, 52, 95, 33, 70, 15, 0.16),
    _barbell_starts(55, 35, 32.5, 75, 22.5, 12),
    goals=(GoalFile("back-squat", GoalKind.ONE_REP_MAX, "heavy", 85_000, by=date(2027, 3, 13)),),
    gives_rir=0.9,
)  # fmt: skip
SEAT_2: Final = Member(
    _who("Seat 2", Sex.MALE, 1989, 1820, Experience.INTERMEDIATE, unit=Unit.LB,
         aims="Strong enough to carry the boat without thinking about it"),
    80.0,
    POUNDS.name,
    (OwnedFrom(on(1, 0), GARAGE),),
    _barbell_abilities(118, 88, 84, 150, 58, 96, 28, 0.12),
    {
        key: Position(
            grams(5 * round(p.load_g / 2268), Unit.LB), p.reps, p.sets, p.hold_s, None, p.variation
        )
        for key, p in _barbell_starts(92, 68, 54, 118, 43, 22).items()
    },
    goals=(GoalFile("deadlift", GoalKind.ONE_REP_MAX, "", grams(385, Unit.LB)),),
    gives_rir=0.5,
)  # fmt: skip
SEAT_3: Final = Member(
    _who("Seat 3", Sex.MALE, 1992, 1910, Experience.INTERMEDIATE,
         aims="Bench press over 100 kg", avoid="deadlift from the floor when the back is stiff",
         clearances=(Clearance(on(13, 1), "a physiotherapist, invented", "may lift again"),)),
    93.0,
    BARBELL.name,
    (OwnedFrom(on(1, 0), ROOM),),
    {
        **_barbell_abilities(130, 104, 92, 165, 62, 104, 28, 0.10),
        "bench-press": Ability(104, 0.06, stalls_from=5),
    },
    _barbell_starts(97.5, 80, 57.5, 125, 45, 24),
    goals=(GoalFile("bench-press", GoalKind.ONE_REP_MAX, "", 115_000),),
    pains={("deadlift", 11): 5},
    gives_rir=0.7,
)  # fmt: skip
SEAT_4: Final = Member(
    _who("Seat 4", Sex.FEMALE, 1985, 1740, Experience.NOVICE, minutes_per_session=45,
         aims="Train at home twenty minutes from everything"),
    68.0,
    DUMBBELLS.name,
    (OwnedFrom(on(1, 0), HOME),),
    {
        "goblet-squat": Ability(22, 0.45),
        "dumbbell-overhead-press": Ability(12, 0.3),
        "push-up": Ability(47, 0.22),
        "plank": Ability(40, 0.6),
        "romanian-deadlift": Ability(58, 0.3),
        "dumbbell-row": Ability(19, 0.35),
        "split-squat": Ability(66, 0.25),
        "bridge": Ability(46, 0.5),
        "farmer-carry": Ability(20, 0.3),
    },
    {
        ("goblet-squat", ""): reps(3, 8, 14),
        ("dumbbell-overhead-press", ""): reps(3, 6, 8),
        ("push-up", ""): reps(3, 5, 0, "hands-540"),
        ("plank", ""): hold(3, 20, 0, "full"),
        ("romanian-deadlift", ""): reps(3, 8, 35),
        ("dumbbell-row", ""): reps(3, 8, 12),
        ("split-squat", ""): reps(3, 6, 0, "floor"),
        ("bridge", ""): reps(3, 8, 0, "floor"),
        ("farmer-carry", ""): hold(3, 30, 14),
    },
    goals=(GoalFile("push-up", GoalKind.VARIATION, variation="floor"),),
    absences=(Away(on(9, 0), on(11, 6), AbsenceKind.ILLNESS, "in bed, then tired"),),
    gives_rir=0.6,
    mass_trend_kg=-1.0,
)  # fmt: skip
SEAT_5: Final = Member(
    _who("Seat 5", Sex.MALE, 2000, 1860, Experience.INTERMEDIATE,
         aims="An L-sit with straight legs; no machines, no bars"),
    82.0,
    BODYWEIGHT.name,
    (OwnedFrom(on(1, 0), BOAT_STORE), OwnedFrom(on(9, 0), BOAT_STORE_LATER)),
    {
        "push-up": Ability(74, 0.16),
        "bar-row": Ability(86, 0.2),
        "squat-to-single-leg": Ability(72, 0.35),
        "l-sit": Ability(9, 1.6),
        "pull-up": Ability(96, 0.14),
        "dip": Ability(100, 0.16),
        "bridge": Ability(84, 0.2),
        "plank": Ability(58, 0.7),
        "split-squat": Ability(92, 0.2),
    },
    {
        ("push-up", ""): reps(3, 6, 0, "floor"),
        ("bar-row", ""): reps(3, 6, 0, "bar-1000"),
        ("squat-to-single-leg", ""): reps(3, 5, 0, "staggered"),
        ("l-sit", ""): hold(4, 5, 0, "tuck"),
        ("pull-up", ""): reps(4, 4, 0, "full"),
        ("dip", ""): reps(3, 5, 0, "full"),
        ("bridge", ""): reps(3, 8, 0, "single"),
        ("plank", ""): hold(3, 30, 0, "full"),
        ("split-squat", ""): reps(3, 8, 0, "floor"),
    },
    goals=(GoalFile("l-sit", GoalKind.HOLD, "", 20, "full"),),
)  # fmt: skip
STROKE: Final = Member(
    _who("Stroke", Sex.FEMALE, 1994, 1780, Experience.ADVANCED,
         aims="Twice body mass from the floor", weekdays=(0, 2, 5)),
    72.0,
    BARBELL.name,
    (OwnedFrom(on(1, 0), ROOM),),
    _barbell_abilities(104, 62, 70, 134, 45, 90, 20, 0.11),
    _barbell_starts(77.5, 47.5, 42.5, 102.5, 32.5, 16, pull_ups=5),
    goals=(GoalFile("deadlift", GoalKind.ONE_REP_MAX, "", 144_000, by=date(2027, 4, 3)),),
    pains={("overhead-press", 9): 2, ("overhead-press", 16): 3},
    gives_rir=1.0,
)  # fmt: skip
COX: Final = Member(
    _who("Cox", Sex.MALE, 2010, 1600, Experience.NOVICE, minutes_per_session=40,
         aims="From nothing: never trained before this winter"),
    49.0,
    FIRST_WINTER.name,
    (OwnedFrom(on(3, 0), ROOM),),
    {
        "goblet-squat": Ability(13, 0.8, 8),
        "push-up": Ability(26, 0.55, 9),
        "bar-row": Ability(43, 0.25, 9),
        "plank": Ability(14, 1.2, 8),
        "bridge": Ability(30, 0.6, 9),
        "farmer-carry": Ability(9, 0.6, 9),
    },
    {
        ("goblet-squat", ""): reps(2, 8, 6),
        ("push-up", ""): reps(2, 5, 0, "wall"),
        ("bar-row", ""): reps(2, 5, 0, "bar-1100"),
        ("plank", ""): hold(2, 10, 0, "knees"),
        ("bridge", ""): reps(2, 8, 0, "floor"),
        ("farmer-carry", ""): hold(2, 20, 6),
    },
    goals=(GoalFile("push-up", GoalKind.VARIATION, variation="floor"),),
    joins=3,
    gives_rir=0.4,
    rows_out=False,
    mass_trend_kg=1.2,
)  # fmt: skip
CLUB: Final = (BOW, SEAT_2, SEAT_3, SEAT_4, SEAT_5, STROKE, COX)

UNKNOWN_SHARES: Final = {
    ("push-up", "wall"): 0.22,
    ("push-up", "close"): 0.70,
    ("squat-to-single-leg", "box"): 0.36,
    ("squat-to-single-leg", "staggered"): 0.60,
    ("squat-to-single-leg", "assisted-single"): 0.74,
    ("squat-to-single-leg", "box-single"): 0.84,
    ("split-squat", "supported"): 0.60,
    ("bridge", "floor"): 0.40,
    ("bridge", "feet-raised"): 0.46,
    ("bridge", "shoulders-raised"): 0.50,
    ("bridge", "single"): 0.68,
    ("bridge", "single-raised"): 0.80,
    ("plank", "knees"): 0.60,
    ("plank", "full"): 1.00,
    ("plank", "feet-raised"): 1.10,
    ("plank", "one-leg"): 1.20,
    ("plank", "long"): 1.35,
    ("l-sit", "feet-down"): 0.30,
    ("bar-row", "feet-high"): 0.85,
}
"""The share that a variation really has where the program knows its order alone: invented."""
