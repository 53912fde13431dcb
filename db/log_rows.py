"""One line of a training log: its columns, what stands in them, and what is wrong with it."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from typing import Any, Final, Literal

import msgspec

from desktop.training.quantities import Unit
from desktop.training.session import AskedSet, SetDone, Wellness

COLUMNS: Final = (
    "trainee",
    "date",
    "session",
    "program",
    "week",
    "day",
    "exercise",
    "line",
    "variation",
    "set",
    "side",
    "load",
    "unit",
    "reps",
    "seconds",
    "rir",
    "tempo",
    "warm_up",
    "pain",
    "note",
    "asked_variation",
    "asked_load",
    "asked_reps",
    "asked_seconds",
    "asked_tempo",
    "asked_rir",
    "asked_stop_at",
    "state",
    "reason",
    "exercise_note",
    "effort",
    "minutes",
    "sleep",
    "soreness",
    "stress",
    "motivation",
    "red_flag",
    "session_note",
    "activity",
    "body_mass",
)
PROBLEM_COLUMN: Final = "problem"
FEELINGS: Final = ("sleep", "soreness", "stress", "motivation")
STATES: Final = ("deload", "test", "skipped")


@dataclass(frozen=True, slots=True)
class Problem:
    """What is wrong in which line (from 1, the heading) and column, and what is allowed."""

    line: int
    column: str
    text: str

    def __str__(self) -> str:
        where = f"line {self.line}"
        return f"{where}, {self.column}: {self.text}" if self.column else f"{where}: {self.text}"


@dataclass(frozen=True, slots=True)
class Said:
    """What a line says beside its set: of the whole session, of one exercise in it, of the day.

    ``entry`` is from 0; ``activity`` with ``minutes`` and ``effort`` is something else than a
    session. ``told``: what is said of the whole session, by name.
    """

    unit: Unit | None = None
    entry: int = 0
    program: str = ""
    week: int | None = None
    day_name: str = ""
    states: tuple[str, ...] = ()
    reason: str = ""
    exercise_note: str = ""
    effort: float | None = None
    minutes: int | None = None
    wellness: Wellness = Wellness()
    red_flag: bool | None = None
    session_note: str = ""
    activity: str = ""
    body_mass_g: int | None = None
    told: tuple[tuple[str, Any], ...] = ()


class LogRow(msgspec.Struct, frozen=True, gc=False):
    """One good line. Names are as written; masses are grams.

    ``done`` and ``asked`` are the set as done and as asked (without variation, which is kept by
    name), None where the line holds none. ``session`` says whether the line belongs to a session
    at all. ``done``, ``asked`` and ``said`` are shared by lines that say the same.

    A struct, since there are many: a dataclass takes five times as long to be made.
    """

    line: int
    trainee: str
    day: date
    unit: Unit | None = None
    session: bool = False
    exercise: str = ""
    line_name: str = ""
    variation: str = ""
    set_number: int | None = None
    done: SetDone | None = None
    asked: AskedSet | None = None
    asked_variation: str = ""
    said: Said = Said()

    def but(self, **changes: object) -> LogRow:
        """The same line with other values."""
        return msgspec.structs.replace(self, **changes)


@dataclass(frozen=True, slots=True)
class RowFormat:
    """How the file writes: decimal mark (None: either), and the unit where a line names none.

    ``mixed`` marks: both marks stand in the file, so that "1.250" is not clear either.
    """

    decimal_mark: Literal[".", ","] | None = None
    mixed: bool = False
    unit: Unit | None = None
