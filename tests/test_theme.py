"""Colours by role can be read, and text and grid grow together."""

from __future__ import annotations

import math

import pytest
from pytestqt.qtbot import QtBot

from views.palettes import DARK, LIGHT, TEXT_PAIRS, Palette, contrast
from views.style_sheet import style_sheet
from views.theme import Scheme, TextSize, Theme, qt_palette


@pytest.mark.parametrize("palette", [LIGHT, DARK], ids=["light", "dark"])
@pytest.mark.parametrize(("text", "ground"), TEXT_PAIRS, ids=[" on ".join(p) for p in TEXT_PAIRS])
def test_every_text_can_be_read_on_its_ground(palette: Palette, text: str, ground: str) -> None:
    # At least 4.5:1 for text of ordinary size (WCAG 2.1, W3C 2018, success criterion 1.4.3).
    assert contrast(getattr(palette, text), getattr(palette, ground)) >= 4.5


# Colours as people see them who lack one kind of cone: linear RGB times these (Viénot, Brettel and
# Mollon 1999, Color Research and Application 24: 243-252, doi 10.1002/(SICI)1520-6378(199908)24:4<
# 243::AID-COL5>3.0.CO;2-3; the figures for screens with sRGB colours are from memory).
SEEN = {
    "by all cones": ((1.0, 0.0, 0.0), (0.0, 1.0, 0.0), (0.0, 0.0, 1.0)),
    "without red": ((0.11238, 0.88762, 0.0), (0.11238, 0.88762, 0.0), (0.00401, -0.00401, 1.0)),
    "without green": ((0.29275, 0.70725, 0.0), (0.29275, 0.70725, 0.0), (-0.02234, 0.02234, 1.0)),
}
# sRGB to CIE XYZ, D65 (IEC 61966-2-1:1999), and the white of it.
XYZ = ((0.4124, 0.3576, 0.1805), (0.2126, 0.7152, 0.0722), (0.0193, 0.1192, 0.9505))
WHITE = (0.9505, 1.0, 1.089)

Three = tuple[float, float, float]


def times(matrix: tuple[Three, ...], colour: Three) -> Three:
    red, green, blue = (sum(a * b for a, b in zip(row, colour, strict=True)) for row in matrix)
    return red, green, blue


def linear(colour: str) -> Three:
    parts = (int(colour[at : at + 2], 16) / 255 for at in (1, 3, 5))
    red, green, blue = (p / 12.92 if p <= 0.04045 else ((p + 0.055) / 1.055) ** 2.4 for p in parts)
    return red, green, blue


def lab(colour: Three) -> Three:
    """CIE 1976 L*a*b* of a linear colour (ISO/CIE 11664-4:2019)."""
    shares = (part / white for part, white in zip(times(XYZ, colour), WHITE, strict=True))
    x, y, z = (t ** (1 / 3) if t > 0.008856 else 7.787 * t + 16 / 116 for t in shares)
    return 116 * y - 16, 500 * (x - y), 200 * (y - z)


def apart(one: str, other: str, eyes: str) -> float:
    """How far two colours lie apart for such eyes: the difference in L*a*b*, 2 just seen."""
    colours = (
        lab(tuple(max(0.0, part) for part in times(SEEN[eyes], linear(each))))  # type: ignore[arg-type]
        for each in (one, other)
    )
    first, second = colours
    return math.dist(first, second)


@pytest.mark.parametrize("eyes", SEEN)
@pytest.mark.parametrize("palette", [LIGHT, DARK], ids=["light", "dark"])
@pytest.mark.parametrize(
    ("one", "other"), [("accent", "second"), ("accent", "text"), ("second", "text")]
)
def test_the_series_of_a_chart_are_told_apart_whatever_cones_an_eye_has(
    palette: Palette, one: str, other: str, eyes: str
) -> None:
    assert apart(getattr(palette, one), getattr(palette, other), eyes) >= 15


def test_black_on_white_has_the_largest_contrast() -> None:
    assert contrast("#000000", "#FFFFFF") == pytest.approx(21)  # WCAG 2.1: 1 to 21


def test_text_and_grid_grow_together(qtbot: QtBot) -> None:
    theme = Theme(Scheme.LIGHT, 100)
    with qtbot.waitSignal(theme.changed):
        theme.resize_text(150)
    assert theme.font(TextSize.TITLE).pointSizeF() == pytest.approx(24)
    assert theme.grid() == 12


@pytest.mark.parametrize(("asked", "used"), [(10, 80), (80, 80), (200, 200), (900, 200)])
def test_text_stays_between_80_and_200_percent(asked: int, used: int) -> None:
    assert Theme(Scheme.LIGHT, asked).text_percent == used


def test_choosing_a_scheme_changes_every_role(qtbot: QtBot) -> None:
    theme = Theme(Scheme.LIGHT)
    with qtbot.waitSignal(theme.changed):
        theme.choose(Scheme.DARK)
    assert theme.palette is DARK
    assert qt_palette(theme.palette).base().color().name().upper() == DARK.surface


def test_the_style_sheet_leaves_no_role_unfilled() -> None:
    sizes = {size.name.lower(): size.value for size in TextSize}
    assert "$" not in style_sheet(DARK, sizes, round)
