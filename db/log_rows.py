"""One line of a training log: its columns, what stands in them, and what is wrong with it."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date
from decimal import Decimal
from functools import lru_cache
from typing import Final, Literal

from desktop.training.quantities import InvalidQuantity, Unit, grams, parse_decimal
from desktop.training.sentence import sentence, sentence_of
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
_FEELINGS: Final = ("sleep", "soreness", "stress", "motivation")
STATES: Final = ("deload", "test", "skipped")

_UNITS: Final = {
    "kg": Unit.KG,
    "kgs": Unit.KG,
    "kilogram": Unit.KG,
    "kilograms": Unit.KG,
    "lb": Unit.LB,
    "lbs": Unit.LB,
    "pound": Unit.LB,
    "pounds": Unit.LB,
}
_YES: Final = ("yes", "y", "true", "1", "x")
_NO: Final = ("no", "n", "false", "0", "")
_MASS: Final = re.compile(r"(.*?)\s*([a-zA-Z]*)", re.DOTALL)
_TEMPO: Final = re.compile(r"[0-9]{1,2}(?:-[0-9]{1,2}){1,3}")
_THOUSANDS: Final = re.compile(r"[+-]?[1-9][0-9]{0,2}\.[0-9]{3}")
_LIGHTEST_G: Final = 10_000
_HEAVIEST_G: Final = 500_000
_FORMULA: Final = re.compile(r"'+[=+\-@\t\r]")


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
class LogRow:
    """One good line. Names are as written; masses are grams; ``entry`` is from 0.

    ``done`` and ``asked`` are the set as done and as asked (without variation, which is kept by
    name), None where the line holds none. ``activity`` with ``minutes`` and ``effort`` is
    something else than a session; ``session`` says whether the line belongs to one at all.
    """

    line: int
    trainee: str
    day: date
    unit: Unit | None = None
    session: bool = False
    entry: int = 0
    program: str = ""
    week: int | None = None
    day_name: str = ""
    exercise: str = ""
    line_name: str = ""
    variation: str = ""
    set_number: int | None = None
    done: SetDone | None = None
    asked: AskedSet | None = None
    asked_variation: str = ""
    states: tuple[str, ...] = ()
    reason: str = ""
    exercise_note: str = ""
    effort: float | None = None
    minutes: int | None = None
    wellness: Wellness = field(default_factory=Wellness)
    red_flag: bool | None = None
    session_note: str = ""
    activity: str = ""
    body_mass_g: int | None = None


@dataclass(frozen=True, slots=True)
class RowFormat:
    """How the file writes: decimal mark (None: either), and the unit where a line names none.

    ``mixed`` marks: both marks stand in the file, so that "1.250" is not clear either.
    """

    decimal_mark: Literal[".", ","] | None = None
    mixed: bool = False
    unit: Unit | None = None


class RowReader:
    """Reads the cells of one line and gathers what is wrong with them."""

    def __init__(self, line: int, cells: Mapping[str, str], row_format: RowFormat) -> None:
        self.line = line
        self.problems: list[Problem] = []
        self._cells = cells
        self._format = row_format

    def read(self, trainee: str, day: date) -> LogRow:
        """The whole line; worthless where ``problems`` is not empty afterwards."""
        unit = self._unit()
        done, asked = self._done(unit), self._asked(unit)
        activity = self.text("activity")
        row = LogRow(
            line=self.line,
            trainee=trainee,
            day=day,
            unit=unit,
            session=not activity and any(self.has(name) for name in _SESSION_COLUMNS),
            entry=(self.whole("session", 1, 1000) or 1) - 1,
            program=self.text("program"),
            week=self.whole("week", 1, 10_000),
            day_name=self.text("day"),
            exercise=self.text("exercise"),
            line_name=self.text("line"),
            variation=self.text("variation"),
            set_number=self.whole("set", 1, 200),
            done=done,
            asked=asked,
            asked_variation=self.text("asked_variation"),
            states=self._states(),
            reason=self.text("reason"),
            exercise_note=self.text("exercise_note"),
            effort=self.number("effort", 0, 10),
            minutes=self.whole("minutes", 0, 1440),
            wellness=Wellness(*(self.whole(name, 1, 5) for name in _FEELINGS)),
            red_flag=self.flag("red_flag") if self.has("red_flag") else None,
            session_note=self.text("session_note"),
            activity=activity,
            body_mass_g=self._body_mass(unit),
        )
        self._check(row)
        return row

    # --- cells ------------------------------------------------------------------------------

    def has(self, name: str) -> bool:
        """Whether anything stands in the column."""
        return name in self._cells

    def text(self, name: str) -> str:
        """The text of the column, without what protects it from being taken for a formula."""
        text = self._cells.get(name)
        if text is None:
            return ""
        return text[1:] if text[0] == "'" and _FORMULA.match(text) else text

    def wrong(self, name: str, text: str) -> None:
        """Note a problem."""
        self.problems.append(Problem(self.line, name, text))

    def number(self, name: str, least: float, most: float) -> float | None:
        """A number from ``least`` to ``most``, None where the cell is blank or wrong."""
        if name not in self._cells:
            return None
        value = self._decimal(name, self.text(name))
        if value is None:
            return None
        if not least <= value <= most:
            self.wrong(
                name,
                sentence(
                    "{value} is not possible: allowed is {least:g} to {most:g}",
                    value=value,
                    least=least,
                    most=most,
                ),
            )
            return None
        return float(value)

    def whole(self, name: str, least: int, most: int) -> int | None:
        """A whole number from ``least`` to ``most``, None where the cell is blank or wrong."""
        if name not in self._cells:
            return None
        value = self.number(name, least, most)
        if value is None:
            return None
        if value != int(value):
            self.wrong(name, sentence("{value:g} is not a whole number", value=value))
            return None
        return int(value)

    def flag(self, name: str) -> bool:
        """Yes or no; blank is no."""
        if name not in self._cells:
            return False
        text = self.text(name).casefold()
        if text not in _YES and text not in _NO:
            self.wrong(name, sentence("{text!r} is neither yes nor no", text=text))
        return text in _YES

    def mass(self, name: str, unit: Unit | None) -> int | None:
        """A mass in grams; a unit in the cell itself ("60 kg") goes before the column's."""
        if name not in self._cells:
            return None
        match = _MASS.fullmatch(self.text(name))
        assert match is not None  # the pattern takes any text
        figure, own = match[1], match[2].casefold()
        if own and own not in _UNITS:
            self.wrong(
                name, sentence("{match!r} is no unit: allowed are kg and lb", match=match[2])
            )
            return None
        value = self._decimal(name, figure)
        if value is None:
            return None
        unit = _UNITS[own] if own else unit
        if unit is None and value != 0:
            self.wrong(name, sentence("no unit: write kg or lb into the column 'unit'"))
            return None
        try:
            return grams(value, unit or Unit.KG)
        except InvalidQuantity as error:
            self.wrong(name, sentence_of(error))
            return None

    def _decimal(self, name: str, text: str) -> Decimal | None:
        if not text:
            return None
        if self._format.mixed and _THOUSANDS.fullmatch(text):
            self.wrong(
                name,
                sentence(
                    "{text} may be {value} or {text}: this file uses both decimal marks; write "
                    "it without a mark or with other than three places",
                    text=text,
                    value=text.replace(".", ""),
                ),
            )
            return None
        try:
            return _number(text, self._format.decimal_mark)
        except InvalidQuantity as error:
            self.wrong(name, sentence_of(error))
            return None

    # --- groups of cells --------------------------------------------------------------------

    def _unit(self) -> Unit | None:
        text = self.text("unit").casefold()
        if text and text not in _UNITS:
            self.wrong(
                "unit",
                sentence("{value!r} is no unit: allowed are kg and lb", value=self.text("unit")),
            )
        return _UNITS.get(text, self._format.unit)

    def _done(self, unit: Unit | None) -> SetDone | None:
        if not (self.has("reps") or self.has("seconds")):
            return None
        side = self.text("side").casefold()
        if side not in ("", "left", "right"):
            self.wrong("side", sentence("{side!r}: allowed are left, right or nothing", side=side))
        return SetDone(
            load_g=self.mass("load", unit) or 0,
            reps=self.whole("reps", 0, 1000),
            seconds=self.whole("seconds", 0, 36_000),
            rir=self.number("rir", 0, 20),
            tempo_s=self._tempo("tempo"),
            warm_up=self.flag("warm_up"),
            pain=self.whole("pain", 0, 10) or 0,
            side=side,
            note=self.text("note"),
        )

    def _asked(self, unit: Unit | None) -> AskedSet | None:
        if not (self.has("asked_reps") or self.has("asked_seconds")):
            return None
        stop_at = self.text("asked_stop_at")
        open_only = stop_at.casefold() == "open"
        return AskedSet(
            load_g=self.mass("asked_load", unit) or 0,
            reps=self.whole("asked_reps", 0, 1000),
            seconds=self.whole("asked_seconds", 0, 36_000),
            tempo_s=self._tempo("asked_tempo"),
            rir=self.number("asked_rir", 0, 20),
            open_ended=bool(stop_at),
            stop_at=None if open_only else self.whole("asked_stop_at", 1, 36_000),
        )

    def _tempo(self, name: str) -> int | None:
        if name not in self._cells:
            return None
        text = self.text(name)
        if _TEMPO.fullmatch(text):
            seconds = sum(int(part) for part in text.split("-"))
            if seconds:
                return seconds
        return self.whole(name, 0, 600)

    def _states(self) -> tuple[str, ...]:
        found = tuple(
            re.split(r"[\s,+]+", self.text("state").casefold()) if self.has("state") else ()
        )
        for state in found:
            if state not in STATES:
                self.wrong(
                    "state",
                    sentence(
                        "{state!r}: allowed are {listed}", state=state, listed=", ".join(STATES)
                    ),
                )
        return found

    def _body_mass(self, unit: Unit | None) -> int | None:
        mass_g = self.mass("body_mass", unit)
        if mass_g is not None and not _LIGHTEST_G <= mass_g <= _HEAVIEST_G:
            self.wrong("body_mass", sentence("a body mass is 10 to 500 kg (22 to 1102 lb)"))
        return mass_g

    def _check(self, row: LogRow) -> None:
        for first, second in (("reps", "seconds"), ("asked_reps", "asked_seconds")):
            if self.has(first) and self.has(second):
                self.wrong(second, sentence("repetitions or seconds, not both"))
        if row.activity:
            self._check_activity(row)
        elif row.exercise:
            if row.done is None and row.asked is None and not row.states:
                self.wrong("reps", sentence("no repetitions and no seconds: what was done?"))
            elif row.done is None and self.has("load"):
                self.wrong("reps", sentence("a load, but neither repetitions nor seconds"))
        elif row.done or row.asked or row.states:
            self.wrong("exercise", sentence("which exercise?"))
        elif not row.session and row.body_mass_g is None and not self.problems:
            self.wrong("", sentence("nothing to record in this line"))

    def _check_activity(self, row: LogRow) -> None:
        if row.exercise or row.done or row.asked:
            self.wrong("activity", sentence("another activity and an exercise cannot share a line"))
        for name, value in (("minutes", row.minutes), ("effort", row.effort)):
            if value is None and not self.has(name):
                self.wrong(name, sentence("an activity needs minutes and effort (0 to 10)"))


# A log holds the same few numbers thousands of times.
_number = lru_cache(maxsize=4096)(parse_decimal)

_SESSION_COLUMNS: Final = tuple(
    name
    for name in COLUMNS
    if name not in ("trainee", "date", "unit", "activity", "body_mass", PROBLEM_COLUMN)
)
