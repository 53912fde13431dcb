"""Colours by role can be read, and text and grid grow together."""

from __future__ import annotations

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
