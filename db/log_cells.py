"""What stands in cells of a training log, group by group of those that belong together."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import fields, replace
from decimal import Decimal
from functools import lru_cache
from typing import Any, Final

from db.log_rows import FEELINGS, STATES, RowFormat, Said
from desktop.training.quantities import InvalidQuantity, Unit, grams, parse_decimal
from desktop.training.sentence import sentence, sentence_of
from desktop.training.session import AskedSet, SetDone, Wellness

NAMES: Final = ("exercise", "line", "variation", "asked_variation", "set")
SET: Final = (
    "side", "load", "unit", "reps", "seconds", "rir", "tempo", "warm_up", "pain", "note",
)  # fmt: skip
ASKED: Final = (
    "asked_load", "unit", "asked_reps", "asked_seconds", "asked_tempo", "asked_rir",
    "asked_stop_at",
)  # fmt: skip
SAID: Final = (
    "unit", "session", "program", "week", "day", "state", "reason", "exercise_note", "effort",
    "minutes", *FEELINGS, "red_flag", "session_note", "activity", "body_mass",
)  # fmt: skip

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
_TOLD: Final = ("effort", "minutes", "session_note", "program", "week", "day_name")


class CellReader:
    """Reads the cells of one line, those that are not blank, and gathers what is wrong with them:
    column and what is allowed.
    """

    def __init__(self, cells: Mapping[str, str], row_format: RowFormat) -> None:
        self.problems: list[tuple[str, str]] = []
        self._cells = cells
        self._format = row_format

    # --- groups of cells --------------------------------------------------------------------

    def unit(self) -> Unit | None:
        """The unit of loads."""
        return _UNITS.get(self.text("unit").casefold(), self._format.unit)

    def done(self) -> SetDone | None:
        """The set as done, without variation; None where neither repetitions nor seconds stand."""
        if not self._counted("reps", "seconds"):
            return None
        unit = self.unit()
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

    def asked(self) -> AskedSet | None:
        """The set as asked, without variation; None as for `done`."""
        if not self._counted("asked_reps", "asked_seconds"):
            return None
        unit = self.unit()
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

    def said(self) -> Said:
        """What stands there beside the set."""
        unit = self.unit()
        if self.has("unit") and self.text("unit").casefold() not in _UNITS:
            self.wrong(
                "unit",
                sentence("{value!r} is no unit: allowed are kg and lb", value=self.text("unit")),
            )
        said = Said(
            unit=unit,
            entry=(self.whole("session", 1, 1000) or 1) - 1,
            program=self.text("program"),
            week=self.whole("week", 1, 10_000),
            day_name=self.text("day"),
            states=self._states(),
            reason=self.text("reason"),
            exercise_note=self.text("exercise_note"),
            effort=self.number("effort", 0, 10),
            minutes=self.whole("minutes", 0, 1440),
            wellness=Wellness(*(self.whole(name, 1, 5) for name in FEELINGS)),
            red_flag=self.flag("red_flag") if self.has("red_flag") else None,
            session_note=self.text("session_note"),
            activity=self.text("activity"),
            body_mass_g=self._body_mass(unit),
        )
        if not said.activity:
            return replace(said, told=_told(said))
        for name, value in (("minutes", said.minutes), ("effort", said.effort)):
            if value is None and not self.has(name):
                self.wrong(name, sentence("an activity needs minutes and effort (0 to 10)"))
        return said

    def names(self) -> tuple[str, str, str, str, int | None]:
        """Exercise, line, variation and variation asked, as written; which set it is."""
        exercise, line, variation, asked = map(self.text, NAMES[:4])
        return exercise, line, variation, asked, self.whole("set", 1, 200)

    def _counted(self, reps: str, seconds: str) -> bool:
        """Whether an amount stands there; two cannot."""
        if self.has(reps) and self.has(seconds):
            self.wrong(seconds, sentence("repetitions or seconds, not both"))
        return self.has(reps) or self.has(seconds)

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

    # --- cells ------------------------------------------------------------------------------

    def has(self, name: str) -> bool:
        """Whether anything stands in the column."""
        return name in self._cells

    def text(self, name: str) -> str:
        """The text of the column, without what protects it from being taken for a formula."""
        return without_mark(self._cells.get(name, ""))

    def wrong(self, name: str, text: str) -> None:
        """Note a problem in a column."""
        self.problems.append((name, text))

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


def without_mark(text: str) -> str:
    """A text without what protects it from being taken for a formula."""
    return text[1:] if text.startswith("'") and _FORMULA.match(text) else text


def _told(said: Said) -> tuple[tuple[str, Any], ...]:
    """What is said of the whole session."""
    found = [(name, getattr(said, name)) for name in _TOLD]
    found += [(field.name, getattr(said.wellness, field.name)) for field in fields(Wellness)]
    return tuple((name, value) for name, value in found if value not in ("", None))


# A log holds the same few numbers thousands of times.
_number = lru_cache(maxsize=4096)(parse_decimal)
