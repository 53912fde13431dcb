"""How a table of somebody else's is read: what its columns hold, kept by name for the next one.

A mapping is data of the coach: it travels with the data file.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from typing import Final, Literal

from desktop.training.quantities import Unit

DateOrder = Literal["", "day first", "month first"]
DecimalMark = Literal["", ".", ","]
LEAVE_OUT: Final = "\N{EMPTY SET}"
"""What a name stands for whose lines are left out."""


class Role(StrEnum):
    """What a column holds. Loads, counts, times and notes may stand in several columns."""

    NOTHING = ""
    TRAINEE = "trainee"
    DATE = "date"
    EXERCISE = "exercise"
    VARIATION = "variation"
    LINE = "line"
    SET = "set"
    SETS = "sets"
    REPS = "reps"
    LOAD = "load"
    UNIT = "unit"
    SECONDS = "seconds"
    RIR = "rir"
    RPE = "rpe"
    TEMPO = "tempo"
    SIDE = "side"
    WARM_UP = "warm_up"
    PAIN = "pain"
    NOTE = "note"
    EFFORT = "effort"
    MINUTES = "minutes"
    SESSION_NOTE = "session_note"
    BODY_MASS = "body_mass"


SEVERAL: Final = frozenset(
    {Role.NOTHING, Role.REPS, Role.LOAD, Role.SECONDS, Role.RIR, Role.RPE, Role.NOTE}
)


@dataclass(frozen=True, slots=True)
class TableMapping:
    """How to read a table whose heading is ``headers``; one role for each of them.

    ``unit``: of loads that name none (None: such loads are refused). ``decimal_mark`` and
    ``date_order``: "" where the table itself tells. ``trainee``: whose all lines are, where no
    column says. ``fill_down``: a blank trainee, date or exercise is that of the line above.
    ``names``: what trainees and exercises are called there, each with the name or key here, or
    `LEAVE_OUT`.
    """

    name: str = ""
    headers: tuple[str, ...] = ()
    roles: tuple[Role, ...] = ()
    unit: Unit | None = None
    decimal_mark: DecimalMark = ""
    date_order: DateOrder = ""
    trainee: str = ""
    fill_down: bool = False
    names: tuple[tuple[str, str], ...] = ()

    def columns(self, role: Role) -> tuple[int, ...]:
        """The places of the columns that hold ``role``, from the left."""
        return tuple(place for place, each in enumerate(self.roles) if each is role)
