"""Program weeks: a whole program on one page, weeks across and slots down.

For a trainee whom the program runs for, from where they stand, with the weeks that are over as
they were asked; for anybody else from the starts of its slots.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date

from desktop.planning.history import History
from desktop.planning.line_memory import LineMemory
from desktop.planning.standing import key_of
from desktop.training.exercises import Exercise
from desktop.training.position import Position, Surroundings
from desktop.training.program import Program, Slot, TrainingDay
from desktop.training.program_edits import DayPlace, SlotPlace
from desktop.training.recovery import Caution
from desktop.training.schedule import session_minutes
from desktop.training.session import LineDone
from desktop.training.target import Target
from desktop.training.trainee import Trainee
from desktop.training.volume import Volume
from desktop.training.weeks import Expected, expected_on


@dataclass(frozen=True, slots=True)
class SlotSession:
    """One slot on one day: what it will ask, or what was asked (and ``done``) on a day that is
    over. ``place`` is None where the program has it no more.
    """

    day: date
    slot: Slot
    position: Position | None
    place: SlotPlace | None = None
    target: Target | None = None
    done: LineDone | None = None
    deload: bool = False
    rolls_over: bool = False
    cautions: tuple[Caution, ...] = ()


@dataclass(frozen=True, slots=True)
class DaySession:
    """One training day on a date, with the position that each of its slots asks."""

    day: date
    place: DayPlace
    planned: TrainingDay
    positions: tuple[Position, ...]

    def minutes(self, exercises: Mapping[str, Exercise]) -> float:
        """How long it takes as asked. Raises UnknownExercise."""
        at = dict(zip(self.planned.slots, self.positions, strict=True))
        return session_minutes(self.planned, exercises, at.__getitem__)


@dataclass(frozen=True, slots=True)
class SlotWeeks:
    """One row: a slot's line on one of the days, week by week; a day in turn may come twice in
    one. ``shades`` 0 to 1: how hard each week's last session is among the row's; None without.
    """

    exercise: Exercise
    slot: Slot
    around: Surroundings
    cells: tuple[tuple[SlotSession, ...], ...]
    shades: tuple[float | None, ...]


@dataclass(frozen=True, slots=True)
class DayWeeks:
    """One training day with its rows; without a weekday it is done in turn."""

    day: TrainingDay
    cells: tuple[tuple[DaySession, ...], ...]
    rows: tuple[SlotWeeks, ...]


@dataclass(frozen=True, slots=True)
class WeekColumn:
    """One week: ``easier`` by a phase or a recorded span, or only ``proposed`` to be so; ``now``:
    today lies in it. ``volume``: hard sets done and to come.
    """

    number: int
    first: date
    phase: int
    easier: bool = False
    proposed: bool = False
    now: bool = False
    volume: Volume = field(default_factory=Volume)
    cautions: tuple[Caution, ...] = ()


@dataclass(frozen=True, slots=True)
class ProgramWeeks:
    """The whole program; ``dated``: the days are real ones, of a trainee's assignment."""

    program: Program
    history: History
    dated: bool
    columns: tuple[WeekColumn, ...]
    days: tuple[DayWeeks, ...]
    memory: LineMemory = field(compare=False, repr=False)

    @property
    def trainee(self) -> Trainee:
        """The trainee, or the stand-in for nobody."""
        return self.history.trainee

    def expected(self, session: SlotSession) -> Expected | None:
        """What the trend expects on the session's day; None without a trend."""
        key = key_of(session.slot)
        line, ahead = self.history.line_of(*key), self.memory.ahead(key)
        if session.target is None or line is None or ahead is None:
            return None
        forecast = self.memory.forecast(self.history, line)
        return expected_on(session.day, session.target, ahead.last.surroundings, forecast)
