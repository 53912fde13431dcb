"""Programs: phases of weeks, training days, slots; and the lines that slots refer to."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, timedelta
from enum import StrEnum

from desktop.training.position import Position, ProgressionRule


@dataclass(frozen=True, slots=True)
class Slot:
    """One exercise of a training day. It refers to the trainee's line of ``line_name`` ("" is
    the exercise's only line). ``rule`` is how that line moves while the phase runs; ``start``
    where it begins if the trainee has no history. ``tempo`` is "3-1-1": seconds down, held, up.
    Slots of one day with the same ``pair`` letter are done in turn.
    """

    exercise: str
    rule: ProgressionRule
    start: Position
    line_name: str = ""
    rest_s: int = 120
    tempo: str = ""
    pair: str = ""
    note: str = ""


@dataclass(frozen=True, slots=True)
class TrainingDay:
    """A day's slots. ``weekday`` 0 = Monday, or None: the next day of the rotation."""

    name: str
    slots: tuple[Slot, ...] = ()
    weekday: int | None = None


class PhasePurpose(StrEnum):
    """What a phase is for; a deload phase asks less of every line and excludes it from steps."""

    BUILD = "build"
    ASSESS = "assess"
    DELOAD = "deload"


@dataclass(frozen=True, slots=True)
class Phase:
    """Some weeks with the same training days."""

    name: str
    weeks: int
    days: tuple[TrainingDay, ...] = ()
    purpose: PhasePurpose = PhasePurpose.BUILD


@dataclass(frozen=True, slots=True)
class Program:
    """A template: phases in order. ``deload_every`` weeks a deload is proposed (None: never)."""

    name: str
    phases: tuple[Phase, ...] = ()
    about: str = ""
    deload_every: int | None = 6
    id: int | None = None
    revision: int = 0

    @property
    def weeks(self) -> int:
        """Length in weeks."""
        return sum(phase.weeks for phase in self.phases)

    def phase_of_week(self, week: int) -> Phase | None:
        """The phase that holds ``week`` (from 1), None outside the program."""
        if week < 1:
            return None
        for phase in self.phases:
            if week <= phase.weeks:
                return phase
            week -= phase.weeks
        return None


@dataclass(frozen=True, slots=True)
class WeekdaysFrom:
    """From ``day`` on, the days of a program fall on these weekdays, in the order of the days."""

    day: date
    weekdays: tuple[int, ...]


@dataclass(frozen=True, slots=True)
class Assignment:
    """A program given to a trainee from a date on. ``weekdays`` replaces the days' own weekdays,
    in the order of the days (empty: as the program says); ``moves``, by day, say from when on
    others hold, so that what was planned until then stays. ``ended``: last day, None while open.
    """

    trainee_id: int
    program_id: int
    start: date
    weekdays: tuple[int, ...] = ()
    ended: date | None = None
    moves: tuple[WeekdaysFrom, ...] = ()
    id: int | None = None
    revision: int = 0

    def weekdays_on(self, day: date) -> tuple[int, ...]:
        """The weekdays that hold on ``day``."""
        begun = [move.weekdays for move in self.moves if move.day <= day]
        return begun[-1] if begun else self.weekdays

    def week_of(self, day: date) -> int:
        """Week of the program on ``day``, from 1; 0 or less before the start. Weeks run Monday to
        Sunday, so that week 1 is the calendar week of the start.
        """
        first_monday = self.start - timedelta(days=self.start.weekday())
        return (day - first_monday).days // 7 + 1


@dataclass(frozen=True, slots=True)
class RuleRevision:
    """From ``day`` on, the line moves by ``rule``."""

    day: date
    rule: ProgressionRule


@dataclass(frozen=True, slots=True)
class LineStart:
    """Where a line starts: position and day. ``plus_minus`` is the fraction that the start may be
    off (None: not known), ``kind`` how it was found: "coach", "assessment", "history", "program".
    """

    day: date
    position: Position
    kind: str = "coach"
    plus_minus: float | None = None


@dataclass(frozen=True, slots=True)
class Override:
    """The coach's word: from ``day`` on the line stands at ``position``."""

    day: date
    position: Position
    note: str = ""
    entry: int = 0


@dataclass(frozen=True, slots=True)
class Line:
    """What progresses: one trainee, one exercise, one name.

    ``revisions`` are the coach's own dated changes of the rule for this trainee; the rule of the
    running program's phase holds where there is none. ``starts`` and ``overrides`` are dated.
    """

    trainee_id: int
    exercise: str
    name: str = ""
    revisions: tuple[RuleRevision, ...] = ()
    starts: tuple[LineStart, ...] = ()
    overrides: tuple[Override, ...] = ()
    id: int | None = None
    revision: int = 0
