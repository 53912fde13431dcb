"""Typed cells: what a hand writes for one set, read into numbers, and numbers written back.

A cell holds one value, or two with a stroke between them ("8/7": left, right) where a side is
trained at a time. A blank cell is no value at all. Every reader raises `InvalidQuantity`, whose
code and values say what is allowed.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass
from decimal import Decimal
from enum import StrEnum
from typing import Final, TypeVar

from desktop.training.quantities import InvalidQuantity, Unit, grams, in_unit, parse_decimal

MOST_REPS: Final = 100
MOST_SECONDS: Final = 3_600
MOST_LOAD_G: Final = 1_000_000
MOST_RESERVE: Final = 10
MOST_PAIN: Final = 10

_CLOCK: Final = re.compile(r"([0-9]{1,2}):([0-5][0-9])")
_WITH_UNIT: Final = re.compile(r"(.*?)\s*(kgs?|lbs?)\.?", re.IGNORECASE)
_WITH_WORD: Final = re.compile(r"([0-9]+)\s*(?:reps?|s|sec)\.?", re.IGNORECASE)

N = TypeVar("N", int, float)


class Row(StrEnum):
    """What is typed of one set, from top to bottom."""

    DONE = "done"
    LOAD = "load"
    RESERVE = "reserve"
    PAIN = "pain"


@dataclass(frozen=True, slots=True)
class CellKind:
    """What one exercise's cells may hold.

    ``unit``: the trainee's. ``hold``: seconds instead of repetitions. ``sided``: two values may be
    typed. ``signed``: the bodyweight axis, where help is negative. ``most``: of the amount.
    """

    unit: Unit = Unit.KG
    hold: bool = False
    sided: bool = False
    signed: bool = False
    most: int = MOST_REPS


def read_amount(text: str, kind: CellKind) -> tuple[int, ...]:
    """Clean repetitions, or seconds held ("75" or "1:15"); (): blank; two: left, right."""
    return _sides(text, kind, lambda part: _amount(part, kind))


def read_load(text: str, kind: CellKind) -> tuple[int, ...]:
    """Load in grams. With ``signed`` "10" and "+10" are added, "-20" is help."""
    return _sides(text, kind, lambda part: _load(part, kind))


def read_reserve(text: str, kind: CellKind) -> tuple[float, ...]:
    """Repetitions in reserve, 0 to 10, such as 1.5; blank is unknown."""
    return _sides(text, kind, lambda part: float(_short(part, 0, MOST_RESERVE)))


def read_pain(text: str, kind: CellKind) -> tuple[int, ...]:
    """Pain, 0 to 10."""
    return _sides(text, kind, lambda part: _whole(part, MOST_PAIN))


def read_cell(row: Row, text: str, kind: CellKind) -> tuple[int, ...] | tuple[float, ...]:
    """The values of a cell of any row."""
    match row:
        case Row.DONE:
            return read_amount(text, kind)
        case Row.LOAD:
            return read_load(text, kind)
        case Row.RESERVE:
            return read_reserve(text, kind)
        case Row.PAIN:
            return read_pain(text, kind)


def read_whole(text: str, least: int, most: int) -> int | None:
    """A whole number of a session's own fields; None: blank."""
    if not text.strip():
        return None
    number = _number(text, Decimal(least), Decimal(most))
    if number != int(number):
        raise InvalidQuantity("a whole number", "too_many_decimals", {"decimals": 0})
    return int(number)


def read_number(text: str, least: int, most: int) -> float | None:
    """A number of a session's own fields, such as the effort; None: blank."""
    return float(_short(text, least, most)) if text.strip() else None


def read_mass(text: str, unit: Unit) -> int | None:
    """A body mass in grams, 10 to 500 kg; None: blank."""
    if not text.strip():
        return None
    mass_g = _in_grams(text, unit)
    if not 10_000 <= mass_g <= 500_000:
        raise _out_of_range(_shown(10_000, unit), _shown(500_000, unit))
    return mass_g


def load_text(load_g: int, kind: CellKind, mark: str = ".") -> str:
    """A load as it is typed, with the decimal mark in use: "62.5", "+10", "-20"."""
    text = f"{in_unit(load_g, kind.unit).normalize() + 0:f}".replace(".", mark)
    return f"+{text}" if kind.signed and load_g > 0 else text


def number_text(value: float, mark: str = ".") -> str:
    """A number as it is typed: "2", "1.5"."""
    return f"{round(value, 2):g}".replace(".", mark)


def sides_text(parts: tuple[str, ...]) -> str:
    """One text for one or two sides; two that are the same are one."""
    return "/".join(parts) if len(set(parts)) > 1 else "".join(parts[:1])


def _sides(text: str, kind: CellKind, read: Callable[[str], N]) -> tuple[N, ...]:
    if not text.strip():
        return ()
    parts = text.split("/")
    if len(parts) == 1:
        return (read(text),)
    if not kind.sided:
        raise InvalidQuantity("one number: both sides are trained at once here", "one_side")
    if len(parts) != 2 or not all(part.strip() for part in parts):
        raise InvalidQuantity("left and right, like 8/7", "two_sides")
    return (read(parts[0]), read(parts[1]))


def _amount(text: str, kind: CellKind) -> int:
    plain = text.strip()
    if kind.hold and (clock := _CLOCK.fullmatch(plain)):
        plain = str(60 * int(clock[1]) + int(clock[2]))
    if worded := _WITH_WORD.fullmatch(plain):
        plain = worded[1]
    return _whole(plain, MOST_SECONDS if kind.hold else kind.most)


def _whole(text: str, most: int) -> int:
    number = _number(text, Decimal(0), Decimal(most))
    if number != int(number):
        raise InvalidQuantity("a whole number", "too_many_decimals", {"decimals": 0})
    return int(number)


def _short(text: str, least: int, most: int) -> Decimal:
    number = _number(text, Decimal(least), Decimal(most))
    return _at_most_two_decimals(number)


def _load(text: str, kind: CellKind) -> int:
    load_g = _in_grams(text, kind.unit)
    least = -MOST_LOAD_G if kind.signed else 0
    if load_g < 0 and not kind.signed:
        raise InvalidQuantity("a load is not below 0 here", "no_help")
    if not least <= load_g <= MOST_LOAD_G:
        raise _out_of_range(_shown(least, kind.unit), _shown(MOST_LOAD_G, kind.unit))
    return load_g


def _in_grams(text: str, unit: Unit) -> int:
    """Grams of a number in ``unit``; one written with the other unit is refused with its value."""
    plain = text.strip()
    if found := _WITH_UNIT.fullmatch(plain):
        plain = found[1]
        other = Unit(found[2].lower().rstrip("s"))
        if other is not unit:
            meant = in_unit(grams(parse_decimal(plain), other), unit)
            values = {"unit": unit.value, "value": f"{meant.normalize() + 0:f}"}
            raise InvalidQuantity(f"loads are in {unit.value} here", "other_unit", values)
    number = _at_most_two_decimals(parse_decimal(plain))
    most = in_unit(MOST_LOAD_G, unit)
    if abs(number) > most:
        raise _out_of_range("0", f"{most.normalize():f}")
    return grams(number, unit)


def _at_most_two_decimals(number: Decimal) -> Decimal:
    if round(number, 2) != number:
        raise InvalidQuantity("at most two decimals", "too_many_decimals", {"decimals": 2})
    return number


def _number(text: str, least: Decimal, most: Decimal) -> Decimal:
    number = parse_decimal(text)
    if not least <= number <= most:
        raise _out_of_range(f"{least}", f"{most}")
    return number


def _out_of_range(least: str, most: str) -> InvalidQuantity:
    values = {"least": least, "most": most}
    return InvalidQuantity(f"allowed: {least} to {most}", "out_of_range", values)


def _shown(load_g: int, unit: Unit) -> str:
    return f"{int(in_unit(load_g, unit))}"
