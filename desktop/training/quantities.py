"""Quantities: masses in integer grams, shown and typed in kilograms or pounds.

A load is stored and passed as a whole number of grams, signed (assistance is negative). A gram is
fine enough that a value typed at 0.01 lb or 0.01 kg shows the same value for ever, and coarse
enough to compare exactly. Discs marked in pounds, summed in grams, drift by a few grams: loads
within `SAME_LOAD_G` are one load everywhere.

1 lb = 0.45359237 kg exactly (international yard and pound agreement, 1959).
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from decimal import ROUND_HALF_UP, Decimal
from enum import StrEnum
from types import MappingProxyType
from typing import Final, Literal

from desktop.training.sentence import sentence

GRAMS_PER_LB: Final = Decimal("453.59237")
GRAMS_PER_KG: Final = Decimal(1000)
MAX_LOAD_G: Final = 2_000_000
SAME_LOAD_G: Final = 10

_HUNDREDTH: Final = Decimal("0.01")
_NUMBER: Final = re.compile(r"([+-]?)([0-9]*)([.,]?)([0-9]*)")
_MOST_DIGITS: Final = 12
_GROUP: Final = 3


class InvalidQuantity(ValueError):
    """A quantity that cannot be taken. The text says what is allowed.

    `code` names the case (a screen may word or translate it), `values` what belongs to it.
    """

    def __init__(
        self, message: str, code: str = "invalid", values: Mapping[str, object] | None = None
    ) -> None:
        super().__init__(message)
        self.code = code
        self.values: Mapping[str, object] = MappingProxyType(dict(values or {}))


class Unit(StrEnum):
    """The unit in which a trainee's masses are typed and shown."""

    KG = "kg"
    LB = "lb"

    @property
    def grams_each(self) -> Decimal:
        """Grams in one of this unit, exact."""
        return GRAMS_PER_KG if self is Unit.KG else GRAMS_PER_LB


def grams(value: Decimal | float, unit: Unit) -> int:
    """The mass `value` (in `unit`) as the nearest whole gram; halves away from zero.

    A float counts as the decimal number it prints as, which is what was typed. Negative values
    are assistance. Raises InvalidQuantity for anything but a finite number of at most
    `MAX_LOAD_G` either way.
    """
    number = _decimal(value)
    limit = Decimal(MAX_LOAD_G) / unit.grams_each
    if not number.is_finite() or abs(number) > limit:
        most = f"{int(limit)} {unit.value}"
        raise InvalidQuantity(
            sentence(
                "{value} {value_2} is not a load: allowed is a number from -{most} to {most}",
                value=value,
                value_2=unit.value,
                most=most,
            ),
            "load_out_of_range",
            {"most": int(limit), "unit": unit.value},
        )
    return int((number * unit.grams_each).quantize(Decimal(1), ROUND_HALF_UP))


def in_unit(load_g: int, unit: Unit) -> Decimal:
    """`load_g` grams in `unit`, rounded to 0.01.

    The inverse of `grams` for every value of at most two decimals, in either unit. Raises
    InvalidQuantity beyond `MAX_LOAD_G`.
    """
    if abs(load_g) > MAX_LOAD_G:
        raise InvalidQuantity(
            sentence(
                "{load_g} g is not a load: allowed is -{max_load_g} to {max_load_g} g",
                load_g=load_g,
                max_load_g=MAX_LOAD_G,
            ),
            "load_out_of_range",
            {"most": MAX_LOAD_G, "unit": "g"},
        )
    shown = (Decimal(load_g) / unit.grams_each).quantize(_HUNDREDTH, ROUND_HALF_UP)
    return shown + Decimal(0)  # no negative zero


def same_load(a_g: int, b_g: int) -> bool:
    """Whether two loads in grams are one load: at most `SAME_LOAD_G` apart."""
    return abs(a_g - b_g) <= SAME_LOAD_G


def at_least(load_g: int, asked_g: int) -> bool:
    """Whether `load_g` reaches what was asked, both in grams, allowing `SAME_LOAD_G`."""
    return load_g >= asked_g - SAME_LOAD_G


def format_load(load_g: int, unit: Unit) -> str:
    """`load_g` grams as a plain number and unit, without locale: "62.5 kg", "-20 lb".

    For the command line and files; screens format by locale from `in_unit`.
    """
    return f"{in_unit(load_g, unit).normalize():f} {unit.value}"


def parse_decimal(text: str, decimal_mark: Literal[".", ","] | None = None) -> Decimal:
    """The number a person or a file wrote: sign, digits, one decimal mark, spaces around.

    The one reader for forms, pasted text and tables. Point and comma are both decimal marks,
    unless `decimal_mark` says which one the file uses. Groups of thousands are never guessed at:
    "1,250.5", "1.250,5", "1 250" are refused, and so is "1,250", which may be 1250 or 1.25
    (allowed when `decimal_mark` says so). A lone point is always a decimal mark.

    Raises InvalidQuantity, saying what is allowed.
    """
    plain = text.strip().replace("\N{MINUS SIGN}", "-")
    if len(re.findall(r"[.,]", plain)) > 1 or re.search(r"[0-9]['’\s_][0-9]", plain):
        raise InvalidQuantity(
            sentence(
                "{text}: write numbers without separators between thousands, with one "
                "decimal point or comma, like 1250.5",
                text=_shown(text),
            ),
            "grouped_number",
            {"text": text},
        )
    match = _NUMBER.fullmatch(plain)
    if match is None or not (match[2] or match[4]) or len(match[2] + match[4]) > _MOST_DIGITS:
        raise InvalidQuantity(
            sentence(
                "{text} is not a number: allowed are digits (at most {most_digits}), a sign "
                "and one decimal point or comma, like 62.5",
                text=_shown(text),
                most_digits=_MOST_DIGITS,
            ),
            "not_a_number",
            {"text": text},
        )
    sign, whole, mark, fraction = match.groups()
    if mark and decimal_mark not in (None, mark):
        raise InvalidQuantity(
            sentence(
                "{text}: the decimal mark here is {decimal_mark!r}",
                text=_shown(text),
                decimal_mark=decimal_mark,
            ),
            "other_decimal_mark",
            {"text": text, "decimal_mark": decimal_mark},
        )
    if mark == "," and decimal_mark is None and _reads_as_thousands(whole, fraction):
        raise InvalidQuantity(
            sentence(
                "{text} may be {whole}{fraction} or {whole}.{fraction}: write "
                "{whole}{fraction} or {whole}.{fraction}",
                text=_shown(text),
                whole=whole,
                fraction=fraction,
            ),
            "ambiguous_group",
            {"text": text},
        )
    return Decimal(f"{sign}{whole or 0}.{fraction or 0}") if mark else Decimal(f"{sign}{whole}")


def _decimal(value: Decimal | float) -> Decimal:
    if isinstance(value, bool) or not isinstance(value, Decimal | float | int):
        raise InvalidQuantity(
            sentence(
                "{value!r} is not a number: allowed is a decimal or whole number", value=value
            ),
            "not_a_number",
        )
    return Decimal(repr(float(value))) if isinstance(value, float) else Decimal(value)


def _reads_as_thousands(whole: str, fraction: str) -> bool:
    grouped = len(fraction) == _GROUP and 1 <= len(whole) <= _GROUP
    return grouped and not whole.startswith("0")


def _shown(text: str) -> str:
    return repr(text if len(text) <= 40 else text[:39] + "…")
