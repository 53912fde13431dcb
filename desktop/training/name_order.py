"""The order of names: as people sort them, so that "Seat 2" comes before "Seat 10"."""

from __future__ import annotations

import re
import unicodedata
from typing import Final

NameKey = tuple[list[str | tuple[int, str]], str]

_NUMBERS: Final = re.compile("([0-9]+)")


def name_key(name: str) -> NameKey:
    """What names are sorted by: letters whatever their case and accents ("Ö" beside "O"), numbers
    by their value. Names that differ in no more than that are told apart by how they are written.
    """
    parts: list[str | tuple[int, str]] = list(_NUMBERS.split(_bare(name.casefold())))
    for at in range(1, len(parts), 2):  # every other part is a number
        digits = str(parts[at]).lstrip("0")
        parts[at] = (len(digits), digits)
    return parts, name


def _bare(text: str) -> str:
    if text.isascii():
        return text
    apart = unicodedata.normalize("NFKD", text)
    return "".join(letter for letter in apart if not unicodedata.combining(letter))
