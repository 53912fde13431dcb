"""Volume: hard sets by muscle and by movement pattern, planned and done, and tonnage.

A hard set is a working set: it counts 1 for a muscle trained directly and 0.5 for one trained
indirectly (Pelland 2024 preprint, 67 studies), and 1 for the exercise's pattern. The published
marks are information beside the numbers, not an order.
"""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, field
from datetime import date, timedelta
from typing import Final

from desktop.training.exercises import Exercise, LoadingKind, Muscle, Pattern
from desktop.training.session import LineDone, Session, SetDone

DIRECT: Final = 1.0
INDIRECT: Final = 0.5

PUSHES: Final = frozenset({Pattern.HORIZONTAL_PUSH, Pattern.VERTICAL_PUSH})
PULLS: Final = frozenset({Pattern.HORIZONTAL_PULL, Pattern.VERTICAL_PULL})
LEGS: Final = frozenset({Pattern.SQUAT, Pattern.HINGE, Pattern.LUNGE})
_LEG_MUSCLES: Final = frozenset(
    {Muscle.QUADRICEPS, Muscle.HAMSTRINGS, Muscle.GLUTES, Muscle.CALVES}
)
_ARM_MUSCLES: Final = frozenset(
    {
        Muscle.CHEST,
        Muscle.UPPER_BACK,
        Muscle.LATS,
        Muscle.SHOULDERS,
        Muscle.BICEPS,
        Muscle.TRICEPS,
        Muscle.FOREARMS,
    }
)


class UnknownExercise(KeyError):
    """A slot or a session names an exercise that is not among those given."""

    def __str__(self) -> str:
        return f"no exercise has the key {self.args[0]!r}; allowed are those of the catalogue"


@dataclass(frozen=True, slots=True)
class Mark:
    """A published number of weekly hard sets a muscle: what it is said of, and the source."""

    sets: int
    said_of: str
    source: str


MARKS: Final = (
    Mark(4, "strength and size, at least", "Iversen 2021, Sports Med 51(10):2079-2095"),
    Mark(
        10,
        "size, the highest band studied",
        "Schoenfeld 2017, J Sports Sci 35(11):1073-1082, DOI 10.1080/02640414.2016.1210197",
    ),
)
"""Ascending. The second source has the bands under 5, 5-9, and 10 or more."""


@dataclass(frozen=True, slots=True)
class Volume:
    """Hard sets of a week (or another span) by muscle and by pattern; what has none is absent.

    ``upper`` and ``lower``: sets of pushes and pulls, and of squats, hinges and lunges; a
    single-joint exercise counts by the muscles it trains directly, trunk and carries for neither.
    """

    by_muscle: Mapping[Muscle, float] = field(default_factory=dict)
    by_pattern: Mapping[Pattern, float] = field(default_factory=dict)
    upper: float = 0.0
    lower: float = 0.0

    @property
    def push(self) -> float:
        """Sets of horizontal and vertical pushes."""
        return sum(sets for pattern, sets in self.by_pattern.items() if pattern in PUSHES)

    @property
    def pull(self) -> float:
        """Sets of horizontal and vertical pulls."""
        return sum(sets for pattern, sets in self.by_pattern.items() if pattern in PULLS)

    @property
    def push_to_pull(self) -> float | None:
        """Sets pushed for each set pulled; None where nothing is pulled."""
        return self.push / self.pull if self.pull else None

    @property
    def upper_to_lower(self) -> float | None:
        """Upper-body sets for each lower-body set; None where there is none of these."""
        return self.upper / self.lower if self.lower else None


def hard_sets(counted: Iterable[tuple[Exercise, float]]) -> Volume:
    """The volume of exercises with their numbers of hard sets (fractions for a rotation)."""
    muscles: defaultdict[Muscle, float] = defaultdict(float)
    patterns: defaultdict[Pattern, float] = defaultdict(float)
    upper = lower = 0.0
    for exercise, sets in counted:
        if not sets:
            continue
        for muscle, share in muscle_shares(exercise).items():
            muscles[muscle] += sets * share
        patterns[exercise.pattern] += sets
        upper += sets if _is_upper(exercise) else 0.0
        lower += sets if _is_lower(exercise) else 0.0
    return Volume(dict(muscles), dict(patterns), upper, lower)


def muscle_shares(exercise: Exercise) -> dict[Muscle, float]:
    """What one hard set counts for each muscle; a muscle named twice counts as direct."""
    return dict.fromkeys(exercise.indirect, INDIRECT) | dict.fromkeys(exercise.direct, DIRECT)


def sets_done(line: LineDone) -> int:
    """Hard sets done of one line: warm-ups and sets without a repetition or second left out.

    A left and a right set are one.
    """
    done = [each for each in line.working_sets if each.amount]
    sides = Counter(each.side for each in done if each.side)
    return sum(not each.side for each in done) + max(sides.values(), default=0)


def volume_done(sessions: Iterable[Session], exercises: Mapping[str, Exercise]) -> Volume:
    """The hard sets of all sessions together. Raises UnknownExercise."""
    return hard_sets(
        (exercise_of(exercises, line.exercise), sets_done(line))
        for session in sessions
        for line in session.lines
    )


def week_start(day: date, first_weekday: int = 0) -> date:
    """The first day of the week that holds ``day``; ``first_weekday`` 0 = Monday."""
    return day - timedelta(days=(day.weekday() - first_weekday) % 7)


@dataclass(frozen=True, slots=True)
class Tonnage:
    """Load times repetitions in grams, the repetitions behind it, and how many sets are left out
    because their effective load is not known (or they are held, not repeated).
    """

    load_g: float = 0.0
    reps: int = 0
    left_out: int = 0

    @property
    def mean_load_g(self) -> float | None:
        """Grams moved a repetition; None without any."""
        return self.load_g / self.reps if self.reps else None


def tonnage(
    sets: Iterable[SetDone],
    exercise: Exercise,
    effective_load_g: Callable[[SetDone], float | None] | None = None,
) -> Tonnage:
    """Load x repetitions x implements over the working sets, in grams.

    ``effective_load_g`` gives the load of a set where it is not its external load alone: for
    bodyweight exercises it is needed, and without it their sets are left out. A unilateral set
    without a side stands for both, so its repetitions count twice.
    """
    moved_g, repetitions, left_out = 0.0, 0, 0
    for done in sets:
        if done.warm_up:
            continue
        load_g = _load_of(done, exercise, effective_load_g)
        if load_g is None or done.reps is None:
            left_out += 1
            continue
        reps = done.reps * (2 if exercise.unilateral and not done.side else 1)
        moved_g += load_g * reps * exercise.implements
        repetitions += reps
    return Tonnage(moved_g, repetitions, left_out)


def exercise_of(exercises: Mapping[str, Exercise], key: str) -> Exercise:
    """The exercise called ``key``; raises UnknownExercise."""
    try:
        return exercises[key]
    except KeyError:
        raise UnknownExercise(key) from None


def _load_of(
    done: SetDone, exercise: Exercise, effective_load_g: Callable[[SetDone], float | None] | None
) -> float | None:
    if effective_load_g is not None:
        return effective_load_g(done)
    return None if exercise.loading is LoadingKind.BODYWEIGHT else done.load_g


def _is_upper(exercise: Exercise) -> bool:
    if exercise.pattern is Pattern.SINGLE_JOINT:
        return bool(_ARM_MUSCLES.intersection(exercise.direct))
    return exercise.pattern in PUSHES | PULLS


def _is_lower(exercise: Exercise) -> bool:
    if exercise.pattern is Pattern.SINGLE_JOINT:
        return bool(_LEG_MUSCLES.intersection(exercise.direct))
    return exercise.pattern in LEGS
