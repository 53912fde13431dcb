"""Colours by role, light and dark: the only place where a colour is written as a number."""

from __future__ import annotations

from typing import Final, NamedTuple

from PySide6.QtGui import QColor


class Palette(NamedTuple):
    """One colour for each role, as "#RRGGBB". Meaning is never carried by colour alone."""

    background: str
    surface: str
    line: str
    text: str
    muted: str
    accent: str
    accent_soft: str
    on_accent: str
    caution: str
    caution_soft: str
    stop: str
    stop_soft: str
    good: str
    second: str
    dark: bool

    def colour(self, role: str) -> QColor:
        """The colour of a role by its name, such as "accent"."""
        return QColor(str(getattr(self, role)))


LIGHT: Final = Palette(
    background="#F6F5F1",
    surface="#FFFFFF",
    line="#DEDBD3",
    text="#20251F",
    muted="#626962",
    accent="#17616B",
    accent_soft="#D8E8E9",
    on_accent="#FFFFFF",
    caution="#8A5300",
    caution_soft="#FBEFD9",
    stop="#A3241C",
    stop_soft="#F9E3E0",
    good="#2B6E46",
    second="#7436A8",
    dark=False,
)
DARK: Final = Palette(
    background="#141718",
    surface="#1B1F20",
    line="#33393A",
    text="#E6E8E3",
    muted="#9BA39D",
    accent="#63B9C3",
    accent_soft="#1F3E42",
    on_accent="#141718",
    caution="#F0B65A",
    caution_soft="#33290F",
    stop="#F28B82",
    stop_soft="#3A1A18",
    good="#7CC79A",
    second="#B794F4",
    dark=True,
)

# Which text may stand on which ground. Muted text never stands on the soft accent: it would be
# too faint there, so the chosen row of a list shows all of its text in the text colour.
TEXT_PAIRS: Final = (
    *((text, ground) for ground in ("background", "surface") for text in
      ("text", "muted", "accent", "caution", "stop", "good", "second")),
    *((text, "accent_soft") for text in ("text", "accent", "caution", "stop", "good")),
    *((text, "caution_soft") for text in ("text", "muted", "accent", "caution")),
    *((text, "stop_soft") for text in ("text", "muted", "accent", "stop")),
    ("on_accent", "accent"),
)  # fmt: skip


def contrast(one: str, other: str) -> float:
    """The contrast ratio of two colours "#RRGGBB", 1 to 21 (WCAG 2.1, W3C 2018, 1.4.3)."""
    darker, lighter = sorted((_luminance(one), _luminance(other)))
    return (lighter + 0.05) / (darker + 0.05)


def _luminance(colour: str) -> float:
    channels = [int(colour[place : place + 2], 16) / 255 for place in (1, 3, 5)]
    red, green, blue = (
        part / 12.92 if part <= 0.04045 else ((part + 0.055) / 1.055) ** 2.4 for part in channels
    )
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue
