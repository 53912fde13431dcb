"""Balance: what a program leaves out or piles up, as codes with values and one change proposed.

For movement patterns no published range exists: these are common practice and never an order.
Only building phases are looked at; an assessment or an easier week need not be balanced.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, replace
from enum import StrEnum
from functools import partial
from itertools import combinations
from typing import Final

from desktop.training.exercises import Exercise, Pattern
from desktop.training.position import Variable
from desktop.training.program import Phase, PhasePurpose, Program, Slot, TrainingDay
from desktop.training.reasons import ReasonValue
from desktop.training.schedule import (
    TIMING,
    WEEK,
    PositionOf,
    Timing,
    session_minutes,
    start_of,
    volume_planned,
)
from desktop.training.volume import PULLS, PUSHES, Volume, exercise_of, muscle_shares

FUNDAMENTAL: Final = tuple(each for each in Pattern if each is not Pattern.SINGLE_JOINT)
"""The patterns that a program covers; exercises of one joint have no pattern of their own."""


class FindingCode(StrEnum):
    """What was found. The comment behind a code names its values."""

    PATTERN_MISSING = "pattern missing"  # pattern
    PUSH_TO_PULL = "push to pull"  # push, pull
    FOLLOWING_DAYS = "following days"  # pattern, first, second (weekdays, 0 = Monday)
    OVER_TIME = "over time"  # day, minutes, allowed
    SEVERAL_GROW = "several grow"  # exercise, line, variables


@dataclass(frozen=True, slots=True)
class AddSlot:
    """Put the exercise on the phase's day of that index."""

    day: int
    exercise: str


@dataclass(frozen=True, slots=True)
class MoveDay:
    """Train the day on another weekday (0 = Monday)."""

    day: int
    weekday: int


@dataclass(frozen=True, slots=True)
class PairSlots:
    """Do two slots of the day in turn; ``saves`` minutes."""

    day: int
    first: int
    second: int
    saves: float


@dataclass(frozen=True, slots=True)
class RemoveSlot:
    """Take the slot off the day; ``saves`` minutes."""

    day: int
    slot: int
    saves: float


@dataclass(frozen=True, slots=True)
class KeepVariable:
    """Let the line's variable begin the phase where the phase before left it."""

    exercise: str
    line_name: str
    variable: str


ProposedChange = AddSlot | MoveDay | PairSlots | RemoveSlot | KeepVariable


@dataclass(frozen=True, slots=True)
class Finding:
    """Something to look at in the phase of index ``phase``: values by name, and what would change
    it (None where nothing that is known would).
    """

    code: FindingCode
    phase: int
    values: tuple[tuple[str, ReasonValue], ...] = ()
    proposal: ProposedChange | None = None

    def __getitem__(self, name: str) -> ReasonValue:
        for key, value in self.values:
            if key == name:
                return value
        raise KeyError(name)


@dataclass(frozen=True, slots=True)
class Wishes:
    """What the program is held against.

    ``patterns`` wanted in each building phase; ``most_ratio`` of pushes to pulls or of pulls to
    pushes (common practice); ``minutes`` that a session may take and ``weekdays`` that can be
    trained (None and empty: no limit); ``can_do`` says which exercises may be proposed.
    """

    patterns: tuple[Pattern, ...] = FUNDAMENTAL
    most_ratio: float = 1.5
    minutes: float | None = None
    weekdays: tuple[int, ...] = ()
    can_do: Callable[[Exercise], bool] = lambda exercise: not exercise.retired
    sessions_a_week: float | None = None
    timing: Timing = TIMING
    position_of: PositionOf = start_of


WISHES: Final = Wishes()


def findings(
    program: Program, exercises: Mapping[str, Exercise], wishes: Wishes = WISHES
) -> tuple[Finding, ...]:
    """Everything found in a program, phase by phase. Raises UnknownExercise."""
    found: list[Finding] = []
    before: Phase | None = None
    for index, phase in enumerate(program.phases):
        if phase.purpose is not PhasePurpose.BUILD:
            continue
        look = _Look(index, phase, exercises, wishes)
        found += look.patterns_missing()
        found += look.push_to_pull()
        found += look.following_days()
        found += look.over_time()
        if before is not None:
            found += several_grow(before, phase, index)
        before = phase
    return tuple(found)


def several_grow(before: Phase, after: Phase, index: int) -> tuple[Finding, ...]:
    """Lines for which the phase ``after`` (of ``index``) begins with more than one variable higher
    than the phase ``before`` ended, days a week counting as one.

    Where another variable falls (fewer repetitions for more sets) it is a trade, no growth.
    """
    found: list[Finding] = []
    old_lines, new_lines = _lines(before), _lines(after)
    for line, new in new_lines.items():
        old = old_lines.get(line)
        if old is None:
            continue
        grown = [each.value for each in Variable if _rises(old[0], new[0], each)]
        if len(new) > len(old):
            grown.append("days")
        falls = any(_rises(new[0], old[0], each) for each in Variable)
        if len(grown) > 1 and not falls and len(new) >= len(old):
            values = (("exercise", line[0]), ("line", line[1]), ("variables", ", ".join(grown)))
            keep = KeepVariable(*line, grown[-1])
            found.append(Finding(FindingCode.SEVERAL_GROW, index, values, keep))
    return tuple(found)


@dataclass(frozen=True, slots=True)
class _Look:
    """One phase looked at."""

    index: int
    phase: Phase
    exercises: Mapping[str, Exercise]
    wishes: Wishes

    def patterns_missing(self) -> Iterator[Finding]:
        """Patterns without a hard set in the week."""
        trained = self._volume().by_pattern
        for pattern in self.wishes.patterns:
            if pattern not in trained:
                yield self._finding(
                    FindingCode.PATTERN_MISSING, self._add_slot(pattern), pattern=pattern.value
                )

    def push_to_pull(self) -> Iterator[Finding]:
        """Far more pushes than pulls, or the other way round."""
        volume = self._volume()
        few, many = sorted((volume.push, volume.pull))
        if many > few * self.wishes.most_ratio:
            side = PULLS if volume.pull == few else PUSHES
            lesser = [pattern for pattern in Pattern if pattern in side]
            lesser.sort(key=lambda pattern: volume.by_pattern.get(pattern, 0.0))
            proposed = (self._add_slot(pattern) for pattern in lesser)
            yield self._finding(
                FindingCode.PUSH_TO_PULL,
                next((each for each in proposed if each is not None), None),
                push=volume.push,
                pull=volume.pull,
            )

    def following_days(self) -> Iterator[Finding]:
        """One pattern on two weekdays without a full day between; Sunday comes before Monday."""
        for first, second in self._following(self.phase.days):
            moved = self._move(second)
            days = self.phase.days
            for pattern in self._shared(days[first], days[second]):
                yield self._finding(
                    FindingCode.FOLLOWING_DAYS,
                    moved,
                    pattern=pattern.value,
                    first=days[first].weekday,
                    second=days[second].weekday,
                )

    def over_time(self) -> Iterator[Finding]:
        """Days that take longer than the trainee has."""
        allowed = self.wishes.minutes
        for number, day in enumerate(self.phase.days):
            minutes = self._minutes(day)
            if allowed is not None and minutes > allowed:
                yield self._finding(
                    FindingCode.OVER_TIME,
                    self._shorten(number),
                    day=day.name,
                    minutes=minutes,
                    allowed=allowed,
                )

    def _finding(
        self, code: FindingCode, proposal: ProposedChange | None, **values: ReasonValue
    ) -> Finding:
        return Finding(code, self.index, tuple(values.items()), proposal)

    def _volume(self) -> Volume:
        return volume_planned(
            self.phase, self.exercises, self.wishes.sessions_a_week, self.wishes.position_of
        )

    def _minutes(self, day: TrainingDay) -> float:
        return session_minutes(day, self.exercises, self.wishes.position_of, self.wishes.timing)

    def _patterns(self, day: TrainingDay) -> set[Pattern]:
        patterns = {exercise_of(self.exercises, slot.exercise).pattern for slot in day.slots}
        return patterns - {Pattern.SINGLE_JOINT}

    def _shared(self, first: TrainingDay, second: TrainingDay) -> list[Pattern]:
        both = self._patterns(first) & self._patterns(second)
        return [pattern for pattern in Pattern if pattern in both]

    def _following(self, days: tuple[TrainingDay, ...]) -> list[tuple[int, int]]:
        """Index pairs of days that follow each other, or share a weekday, and share a pattern."""
        close: list[tuple[int, int]] = []
        for (a, one), (b, other) in combinations(enumerate(days), 2):
            if one.weekday is None or other.weekday is None or not self._shared(one, other):
                continue
            apart = (other.weekday - one.weekday) % WEEK
            if apart <= 1:
                close.append((a, b))
            elif apart == WEEK - 1:
                close.append((b, a))
        return close

    def _move(self, number: int) -> MoveDay | None:
        """Another weekday for the day, free and with fewer such neighbours; the nearest."""
        days = self.phase.days
        taken = {day.weekday for day in days}
        now = len(self._following(days))
        able = self.wishes.weekdays or range(WEEK)
        free = [weekday for weekday in able if weekday not in taken]
        here = days[number].weekday or 0
        for weekday in sorted(free, key=lambda each: (each - here) % WEEK):
            moved = (*days[:number], replace(days[number], weekday=weekday), *days[number + 1 :])
            if len(self._following(moved)) < now:
                return MoveDay(number, weekday)
        return None

    def _add_slot(self, pattern: Pattern) -> AddSlot | None:
        """The first exercise of the pattern, on the shortest day that does not follow or come
        before another day of it.
        """
        able = (e for e in self.exercises.values() if e.pattern is pattern)
        exercise = next(filter(self.wishes.can_do, able), None)
        if exercise is None:
            return None
        fitting = [n for n in range(len(self.phase.days)) if self._fits(n, pattern)]
        shortest = min(fitting, key=lambda n: self._minutes(self.phase.days[n]), default=None)
        return None if shortest is None else AddSlot(shortest, exercise.key)

    def _fits(self, number: int, pattern: Pattern) -> bool:
        day = self.phase.days[number]
        others = (*self.phase.days[:number], *self.phase.days[number + 1 :])
        training = [each for each in others if pattern in self._patterns(each)]
        return not any(_near(day, each) for each in training)

    def _shorten(self, number: int) -> PairSlots | RemoveSlot | None:
        """The two slots whose pairing saves most, of different muscles; where none saves enough,
        the last single-joint exercise off, or else the last slot.
        """
        day = self.phase.days[number]
        excess = self._minutes(day) - (self.wishes.minutes or 0.0)
        pairs = [
            PairSlots(number, a, b, self._saved(day, partial(_paired, first=a, second=b)))
            for (a, one), (b, other) in combinations(enumerate(day.slots), 2)
            if not one.pair and not other.pair and self._apart(one, other)
        ]
        best = max(pairs, key=lambda pair: pair.saves, default=None)
        if best is not None and best.saves >= excess:
            return best
        if len(day.slots) < 2:
            return None
        single = [n for n, slot in enumerate(day.slots) if self._is_single_joint(slot)]
        off = single[-1] if single else len(day.slots) - 1
        return RemoveSlot(number, off, self._saved(day, partial(_without, slot=off)))

    def _is_single_joint(self, slot: Slot) -> bool:
        return exercise_of(self.exercises, slot.exercise).pattern is Pattern.SINGLE_JOINT

    def _saved(self, day: TrainingDay, change: Callable[[TrainingDay], TrainingDay]) -> float:
        return self._minutes(day) - self._minutes(change(day))

    def _apart(self, one: Slot, other: Slot) -> bool:
        first = muscle_shares(exercise_of(self.exercises, one.exercise))
        return first.keys().isdisjoint(muscle_shares(exercise_of(self.exercises, other.exercise)))


_NEW_PAIR: Final = "\0"
"""A pair letter that no coach has typed, for trying a pairing out."""


def _paired(day: TrainingDay, first: int, second: int) -> TrainingDay:
    slots = (
        replace(slot, pair=_NEW_PAIR) if number in (first, second) else slot
        for number, slot in enumerate(day.slots)
    )
    return replace(day, slots=tuple(slots))


def _without(day: TrainingDay, slot: int) -> TrainingDay:
    return replace(day, slots=(*day.slots[:slot], *day.slots[slot + 1 :]))


def _near(one: TrainingDay, other: TrainingDay) -> bool:
    if one.weekday is None or other.weekday is None:
        return False
    return (one.weekday - other.weekday) % WEEK in (0, 1, WEEK - 1)


def _lines(phase: Phase) -> dict[tuple[str, str], list[Slot]]:
    """The slots of each line (exercise, name), a day counted once."""
    lines: dict[tuple[str, str], list[Slot]] = {}
    for day in phase.days:
        of_day = {(slot.exercise, slot.line_name): slot for slot in day.slots}
        for line, slot in of_day.items():
            lines.setdefault(line, []).append(slot)
    return lines


def _rises(old: Slot, new: Slot, variable: Variable) -> bool:
    """Whether the least that ``new`` asks of the variable is above the most that ``old`` did."""
    most, least = _bounds(old, variable)[1], _bounds(new, variable)[0]
    return most is not None and least is not None and least > most


def _bounds(slot: Slot, variable: Variable) -> tuple[int | None, int | None]:
    """Least and most of a variable: its range, or where it starts if it does not grow."""
    start = slot.start.value(variable)
    ranged = slot.rule.range_of(variable)
    if ranged is None:
        return start, start
    return ranged.floor if ranged.floor is not None else start, ranged.ceiling
