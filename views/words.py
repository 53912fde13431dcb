"""Numbers, masses, dates and spans as a person reads them: by locale, in one place.

QtCore only, so that the command line speaks the same words. Functions use the default QLocale
(set once at the start) unless another is given.
"""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal

from PySide6.QtCore import QCoreApplication, QLocale

from desktop.training.position import Position, Variable
from desktop.training.quantities import Unit, in_unit
from desktop.training.session import AskedSet, SetDone
from desktop.training.target import StripCell, StripVariable
from views.calendar_words import MINUS as MINUS
from views.calendar_words import days as days
from views.calendar_words import full_day as full_day
from views.calendar_words import long_day as long_day
from views.calendar_words import number as number
from views.calendar_words import short_date as short_date
from views.calendar_words import short_day as short_day
from views.calendar_words import short_weekday as short_weekday
from views.calendar_words import weekday as weekday
from views.calendar_words import weekdays_in_order as weekdays_in_order
from views.calendar_words import weeks as weeks

translate = QCoreApplication.translate

TIMES = "\N{MULTIPLICATION SIGN}"
DOT = " \N{MIDDLE DOT} "
ARROW = "\N{RIGHTWARDS ARROW}"


def load_number(load_g: int, unit: Unit, locale: QLocale | None = None) -> str:
    """Grams as a number in `unit`, without the unit: "62.5"."""
    return number(in_unit(load_g, unit), locale=locale)


def load(load_g: int, unit: Unit, locale: QLocale | None = None) -> str:
    """Grams with the unit: "62.5 kg"."""
    return f"{load_number(load_g, unit, locale)} {unit.value}"


def added_load(load_g: int, unit: Unit) -> str:
    """A load on the bodyweight axis: "with 5 kg", "with 20 kg of help", or "" for none."""
    if load_g == 0:
        return ""
    text = (
        translate("Words", "with {load}")
        if load_g > 0
        else translate("Words", "with {load} of help")
    )
    return text.format(load=load(abs(load_g), unit))


def length(mm: int, locale: QLocale | None = None) -> str:
    """Millimetres as centimetres: "45 cm"."""
    return f"{number(Decimal(mm) / 10, 1, locale)} cm"


def percent(fraction: float, decimals: int = 0, locale: QLocale | None = None) -> str:
    """A fraction as percent: 0.57 is "57 %"."""
    return f"{number(round(fraction * 100, 6), decimals, locale)} %"


def clock(seconds: int) -> str:
    """Seconds as minutes and seconds: "2:30"."""
    return f"{seconds // 60}:{seconds % 60:02d}"


def hold(seconds: int) -> str:
    """A hold: "20 s"."""
    return f"{seconds} s"


def minutes(count: int) -> str:
    """Minutes: "48 min"."""
    return translate("Words", "{count} min").format(count=count)


def reps(count: int) -> str:
    """A number of repetitions: "1 rep", "8 reps"."""
    if count == 1:
        return translate("Words", "1 rep")
    return translate("Words", "{count} reps").format(count=number(count))


def sets(count: int) -> str:
    """A number of sets: "1 set", "3 sets"."""
    if count == 1:
        return translate("Words", "1 set")
    return translate("Words", "{count} sets").format(count=number(count))


def times(count: int) -> str:
    """How often: "once", "twice", "3 times"."""
    if count in (1, 2):
        return translate("Words", "once") if count == 1 else translate("Words", "twice")
    return translate("Words", "{count} times").format(count=number(count))


def listed(words: Sequence[str]) -> str:
    """Words one after the other: "squat, hinge and lunge"."""
    if len(words) < 2:
        return "".join(words)
    text = translate("Words", "{first} and {last}")
    return text.format(first=", ".join(words[:-1]), last=words[-1])


def variable(name: str) -> str:
    """The word for a training variable; a name that is none of them is its own word."""
    return {
        Variable.LOAD.value: translate("Words", "load"),
        Variable.REPS.value: translate("Words", "reps"),
        Variable.SETS.value: translate("Words", "sets"),
        Variable.HOLD.value: translate("Words", "hold"),
        Variable.TEMPO.value: translate("Words", "tempo"),
        Variable.VARIATION.value: translate("Words", "variation"),
    }.get(name, name)


def variable_unit(name: str, unit: Unit) -> str:
    """The unit that stands in a variable's heading; "" for counts and names."""
    units = {Variable.LOAD.value: unit.value, Variable.HOLD.value: "s", Variable.TEMPO.value: "s"}
    return units.get(name, "")


def cell(variable_name: str, shown: StripCell, unit: Unit) -> str:
    """What stands in one cell of a step strip."""
    if shown.label:
        return shown.label
    if isinstance(shown.value, str):
        return shown.value
    if variable_name == Variable.LOAD.value:
        return load_number(shown.value, unit)
    return number(shown.value)


def strip_sentence(strip: Sequence[StripVariable], unit: Unit) -> str:
    """A step strip read aloud: "Reps 10 of 9 to 12, next 11; sets 3 of 3 to 4.\""""
    parts = [_variable_aloud(part, unit) for part in strip]
    for index, part in enumerate(strip):
        if part.rolls_next and index + 1 < len(strip):
            text = translate("Words", "then {variable} moves")
            parts[index] += ", " + text.format(variable=variable(strip[index + 1].variable))
    text = "; ".join(parts)
    return f"{text[:1].upper()}{text[1:]}." if text else ""


def _variable_aloud(part: StripVariable, unit: Unit) -> str:
    shown = [cell(part.variable, each, unit) for each in part.cells]
    here = next((text for text, each in zip(shown, part.cells, strict=True) if each.here), "")
    after = next(
        (t for t, each in zip(shown, part.cells, strict=True) if each.next and not each.here), ""
    )
    words = " ".join(
        w for w in (variable(part.variable), here or translate("Words", "not set")) if w
    )
    if len(shown) > 1:
        span = translate("Words", "of {first} to {last}").format(first=shown[0], last=shown[-1])
        words = f"{words} {span}"
    counted = variable_unit(part.variable, unit)
    if counted:
        words = f"{words} {counted}"
    if after:
        words = f"{words}, " + translate("Words", "next {value}").format(value=after)
    return words


def prescription(position: Position, unit: Unit, *, bodyweight: bool = False) -> str:
    """A position in the trade's shorthand: "3 × 10 at 62.5 kg", "4 × 20 s", "3 × 8 with 5 kg"."""
    amount = hold(position.hold_s) if position.hold_s is not None else f"{position.reps or 0}"
    text = f"{position.sets} {TIMES} {amount}"
    if bodyweight:
        return " ".join(part for part in (text, added_load(position.load_g, unit)) if part)
    if position.load_g == 0:
        return text
    return translate("Words", "{work} at {load}").format(
        work=text, load=load(position.load_g, unit)
    )


def set_words(done: SetDone | AskedSet, unit: Unit) -> str:
    """One set in short: "10 × 62.5 kg", "20 s"."""
    amount = hold(done.seconds) if done.seconds is not None else f"{done.reps or 0}"
    return f"{amount} {TIMES} {load(done.load_g, unit)}" if done.load_g else amount
