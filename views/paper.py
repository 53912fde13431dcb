"""Paper: the two sizes that sheets are printed on, and which one a country uses."""

from __future__ import annotations

from enum import StrEnum
from typing import Final

from PySide6.QtCore import QLocale

# Territories whose usual paper is Letter: Unicode CLDR, supplemental data, paperSize "US-Letter".
_LETTER_TERRITORIES: Final = frozenset(
    ("BZ", "CA", "CL", "CO", "CR", "GT", "MX", "NI", "PA", "PH", "PR", "SV", "US", "VE")
)
_SIZES_MM: Final = {"a4": (210.0, 297.0), "letter": (215.9, 279.4)}


class Paper(StrEnum):
    """A size of paper (ISO 216 A4, or 8.5 by 11 inches), always upright."""

    A4 = "a4"
    LETTER = "letter"

    @property
    def width_mm(self) -> float:
        """Width in millimetres."""
        return _SIZES_MM[self.value][0]

    @property
    def height_mm(self) -> float:
        """Height in millimetres."""
        return _SIZES_MM[self.value][1]


def usual_paper(locale: QLocale | None = None) -> Paper:
    """The paper that is usual in the locale's country."""
    code = QLocale.territoryToCode((locale or QLocale()).territory())
    return Paper.LETTER if code in _LETTER_TERRITORIES else Paper.A4
