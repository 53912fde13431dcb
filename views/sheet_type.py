"""Type and measure on the printed sheet: one grid of a twentieth of a millimetre.

Text is measured in fonts sized on that grid, never on a device: lines break alike in the file, in
the preview and on every printer.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from enum import Enum
from typing import Final

from PySide6.QtCore import Qt
from PySide6.QtGui import (
    QFont,
    QFontDatabase,
    QFontMetricsF,
    QGuiApplication,
    QTextLayout,
    QTextOption,
)

from views.sheet_texts import SheetError, translate
from views.strip_layout import StripFonts

PER_MM: Final = 20
_MM_PER_POINT: Final = 25.4 / 72


def mm(millimetres: float) -> float:
    """Millimetres on the grid of the sheet."""
    return millimetres * PER_MM


class Role(Enum):
    """What a text on the sheet is: points, and whether it is bold."""

    TRAINEE = (16.0, True)
    DAY = (12.0, False)
    NAME = (11.5, True)
    ASKED = (17.5, True)
    HOW = (10.0, False)
    SET_UP = (9.0, True)
    BODY = (8.5, False)
    SET = (8.5, True)
    DISC = (6.5, True)
    CELL = (8.0, False)
    SMALL = (7.0, False)
    CAPTION = (5.8, False)


class Density(Enum):
    """How close a sheet is set: factor on type, space round a slot and height of a box (mm)."""

    LARGE = (1.15, 3.4, 10.0)
    EASY = (1.07, 2.8, 9.2)
    USUAL = (1.0, 2.2, 8.4)
    CLOSE = (0.9, 1.3, 8.0)

    @property
    def factor(self) -> float:
        """What type is multiplied by."""
        return self.value[0]

    @property
    def space(self) -> float:
        """Space above and below the parts of a slot, on the grid."""
        return mm(self.value[1])

    @property
    def box(self) -> float:
        """Height of a box to write in, on the grid: a pencil needs 8 mm."""
        return mm(self.value[2])


@dataclass(slots=True)
class SheetType:
    """The fonts of one sheet. Needs a QGuiApplication; raises SheetError without any font."""

    density: Density = Density.USUAL
    _fonts: dict[Role, QFont] = field(default_factory=dict)
    _metrics: dict[Role, QFontMetricsF] = field(default_factory=dict)

    def __post_init__(self) -> None:
        if not QFontDatabase.families():
            raise SheetError(
                translate("Sheet", "No font is installed on this computer: a sheet needs one.")
            )

    def font(self, role: Role) -> QFont:
        """The font of a role, with numbers of one width."""
        if role not in self._fonts:
            points, bold = role.value
            factor = 1.0 if role is Role.CAPTION else self.density.factor
            font = QFont(QGuiApplication.font())
            font.setPixelSize(round(mm(points * factor * _MM_PER_POINT)))
            font.setWeight(QFont.Weight.DemiBold if bold else QFont.Weight.Normal)
            font.setHintingPreference(QFont.HintingPreference.PreferNoHinting)
            font.setFeature(QFont.Tag("tnum"), 1)
            self._fonts[role] = font
        return self._fonts[role]

    def metrics(self, role: Role) -> QFontMetricsF:
        """Measures of the font of a role, on the grid."""
        if role not in self._metrics:
            self._metrics[role] = QFontMetricsF(self.font(role))
        return self._metrics[role]

    def line_height(self, role: Role) -> float:
        """From one line to the next."""
        return self.metrics(role).height() * 1.04

    def width(self, text: str, role: Role) -> float:
        """How wide one line is."""
        return self.metrics(role).horizontalAdvance(text)

    def elided(self, text: str, role: Role, width: float) -> str:
        """One line that fits, its end left out where it must be."""
        return self.metrics(role).elidedText(text, Qt.TextElideMode.ElideRight, width)

    def wrapped(self, text: str, role: Role, width: float, most: int) -> tuple[str, ...]:
        """``text`` on at most ``most`` lines; the last ends in an ellipsis where more was said.

        A word that is wider than a line is broken.
        """
        layout = QTextLayout(text, self.font(role))
        option = QTextOption()
        option.setWrapMode(QTextOption.WrapMode.WrapAtWordBoundaryOrAnywhere)
        layout.setTextOption(option)
        starts: list[int] = []
        layout.beginLayout()
        while (line := layout.createLine()).isValid():
            line.setLineWidth(width)
            starts.append(line.textStart())
        layout.endLayout()
        lines = [_cut(text, a, b) for a, b in zip(starts, [*starts[1:], None], strict=True)]
        if len(lines) <= most:
            return tuple(lines)
        rest = _cut(text, starts[most - 1], None)
        return (*lines[: most - 1], self.elided(rest, role, width))

    def strip_fonts(self) -> StripFonts:
        """The fonts of a step strip on paper."""
        return StripFonts(self.font(Role.CELL), self.font(Role.CAPTION))


def _cut(text: str, start: int, end: int | None) -> str:
    """A part of ``text`` by places as Qt counts them, in UTF-16 units."""
    units = text.encode("utf-16-le")
    return units[2 * start : None if end is None else 2 * end].decode("utf-16-le").strip()
