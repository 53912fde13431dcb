"""The week: what it has to train, and the exercises with their sets that stand on its days."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from typing import Final

from desktop.drafting.candidates import Candidate
from desktop.drafting.wishes import DraftWishes
from desktop.training.exercises import Muscle, Pattern
from desktop.training.program import Slot
from desktop.training.volume import MARKS, PULLS, PUSHES

MAJOR: Final = (
    Muscle.QUADRICEPS,
    Muscle.HAMSTRINGS,
    Muscle.GLUTES,
    Muscle.CHEST,
    Muscle.UPPER_BACK,
    Muscle.LATS,
    Muscle.SHOULDERS,
    Muscle.BICEPS,
    Muscle.TRICEPS,
    Muscle.TRUNK,
)
"""The muscles that the marks are held against; the small ones work along."""

GROUPS: Final = (
    frozenset({Pattern.SQUAT, Pattern.LUNGE}),
    frozenset({Pattern.HINGE}),
    PUSHES,
    PULLS,
    frozenset({Pattern.TRUNK}),
)
"""What every week trains: one pattern of each group at least."""

LEAST_SETS: Final = MARKS[0].sets
TIMES_A_WEEK: Final = 2
MOST_RATIO: Final = 1.5


@dataclass(frozen=True, slots=True)
class Wanted:
    """What the week is held to: groups and muscles that can be trained at all, and how often."""

    groups: tuple[frozenset[Pattern], ...]
    muscles: tuple[Muscle, ...]
    times: int


@dataclass(frozen=True, slots=True)
class Taken:
    """A candidate on a day: sets, and the letter of its pair ("" alone)."""

    candidate: Candidate
    sets: int
    pair: str = ""

    @property
    def slots(self) -> tuple[Slot, ...]:
        """Its slot in each block of weeks."""
        return tuple(
            replace(slot, start=replace(slot.start, sets=self.sets), pair=self.pair)
            for slot in self.candidate.prescribed.blocks
        )


@dataclass(frozen=True, slots=True)
class WeekPlan:
    """The week found: what stands on each day, and which conditions are missed by how much."""

    days: tuple[tuple[Taken, ...], ...]
    missed: tuple[tuple[str, float], ...]
    over_minutes: float = 0.0


def wanted_of(choice: Iterable[Candidate], wishes: DraftWishes) -> Wanted:
    """What these candidates can train: groups of patterns, and muscles trained directly."""
    patterns = {one.pattern for one in choice}
    direct = {muscle for one in choice for muscle in one.exercise.direct}
    return Wanted(
        groups=tuple(group for group in GROUPS if group & patterns),
        muscles=tuple(muscle for muscle in MAJOR if muscle in direct),
        times=min(TIMES_A_WEEK, wishes.days),
    )
