"""Where the parts of a step strip lie: measured in the fonts, so that paper and screen agree."""

from __future__ import annotations

from dataclasses import dataclass, replace

from PySide6.QtCore import QRectF, QSizeF, Qt
from PySide6.QtGui import QFont, QFontMetricsF, QPaintDevice

from desktop.training.quantities import Unit
from desktop.training.target import StripCell, StripVariable
from views import words

_LEFT = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter | Qt.TextFlag.TextDontClip
_SHORTER = (0.85, 0.7, 0.55, 0.4, 0.3)
_CENTRE = Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextDontClip


@dataclass(frozen=True, slots=True)
class StripFonts:
    """The fonts of the cells and of the captions above them."""

    cell: QFont
    caption: QFont


@dataclass(frozen=True, slots=True)
class PlacedText:
    """A caption or a count, and where it stands."""

    rect: QRectF
    text: str
    flags: int


@dataclass(frozen=True, slots=True)
class PlacedCell:
    """One cell, the variable and value it stands for, and its place. ``group``: which variable."""

    rect: QRectF
    text: str
    group: int
    variable: str
    value: int | str
    here: bool
    next: bool


@dataclass(frozen=True, slots=True)
class PlacedArrow:
    """The arrow after a variable; lit when the next step rolls over."""

    rect: QRectF
    lit: bool


@dataclass(frozen=True, slots=True)
class StripLayout:
    """All parts of a strip, from (0, 0); ``hairline`` and ``corner`` in the painter's pixels."""

    captions: tuple[PlacedText, ...]
    cells: tuple[PlacedCell, ...]
    counts: tuple[PlacedText, ...]
    arrows: tuple[PlacedArrow, ...]
    size: QSizeF
    hairline: float
    corner: float

    def place_of(self, group: int) -> QRectF | None:
        """Where the filled cell of a variable lies."""
        return next((each.rect for each in self.cells if each.group == group and each.here), None)


class _Measures:
    """Sizes of the strip's parts, all from the height of the cells' type."""

    def __init__(self, fonts: StripFonts, device: QPaintDevice | None, names: float) -> None:
        if device is None:
            self.cell = QFontMetricsF(fonts.cell)
            self.caption = QFontMetricsF(fonts.caption)
        else:
            self.cell = QFontMetricsF(fonts.cell, device)
            self.caption = QFontMetricsF(fonts.caption, device)
        em = self.cell.height() / 15  # one pixel of the sketch
        self.hairline = max(1.0, round(em)) if device is None or em < 3 else em
        self.corner = 3 * em
        self.padding = 5 * em
        self.gap = 2 * em
        self.arrow_gap = 4 * em
        self.arrow_width = 15 * em
        self.wing = 9 * em
        self.cell_height = 23 * em
        self.longest_name = 84 * em * names
        self.longest_place = 132 * em * names
        self.least_width = 21 * em
        self.caption_top = em  # the dots of a capital Ä reach above the type's ascent
        self.caption_height = self.caption.height() + 2 * em


def lay_out(
    strip: tuple[StripVariable, ...],
    fonts: StripFonts,
    unit: Unit,
    device: QPaintDevice | None = None,
    names: float = 1.0,
) -> StripLayout:
    """Place everything on one line, as wide as it needs; ``device``: what will be painted on.

    Long names are cut, those of the trainee's place and of what comes next later than others;
    with ``names`` below 1 at that share of their usual width.
    """
    size = _Measures(fonts, device, names)
    captions: list[PlacedText] = []
    cells: list[PlacedCell] = []
    counts: list[PlacedText] = []
    arrows: list[PlacedArrow] = []
    x = 0.0
    for group, part in enumerate(strip):
        if group:
            x += size.arrow_gap - size.gap
            middle = size.caption_height + size.cell_height / 2
            place = QRectF(x, middle - size.wing / 2, size.arrow_width, size.wing)
            arrows.append(PlacedArrow(place, strip[group - 1].rolls_next))
            x += size.arrow_width + size.arrow_gap
        left = x
        x = _count(counts, x, part.more_below, size)
        for each in part.cells:
            placed = _place(each, part.variable, group, x, unit, size)
            cells.append(placed)
            x = placed.rect.right() + size.gap
        x = _count(counts, x, part.more_above, size)
        caption = _caption(part.variable, unit)
        wide = size.caption.horizontalAdvance(caption)
        place = QRectF(left, size.caption_top, wide, size.caption.height())
        captions.append(PlacedText(place, caption, int(_LEFT)))
        x = max(x, left + wide + size.gap)
    whole = QSizeF(max(0.0, x - size.gap), size.caption_height + size.cell_height)
    return StripLayout(
        tuple(captions), tuple(cells), tuple(counts), tuple(arrows), whole, size.hairline,
        size.corner,
    )  # fmt: skip


def fitted(
    strip: tuple[StripVariable, ...],
    fonts: StripFonts,
    unit: Unit,
    width: float,
    device: QPaintDevice | None = None,
) -> StripLayout:
    """Place a strip in ``width``: cells furthest from the trainee's place give way to counts; where
    that is not enough, names are cut shorter.
    """
    layout = lay_out(strip, fonts, unit, device)
    while layout.size.width() > width:
        spare = [_spare_width(part, group, layout) for group, part in enumerate(strip)]
        if not any(spare):
            return _with_short_names(strip, fonts, unit, width, device)
        widest = spare.index(max(spare))
        strip = tuple(
            shortened(part) if group == widest else part for group, part in enumerate(strip)
        )
        layout = lay_out(strip, fonts, unit, device)
    return layout


def _with_short_names(
    strip: tuple[StripVariable, ...],
    fonts: StripFonts,
    unit: Unit,
    width: float,
    device: QPaintDevice | None,
) -> StripLayout:
    """The strip with its names cut so far that it fits, or as far as they can still be told."""
    for names in _SHORTER:
        layout = lay_out(strip, fonts, unit, device, names)
        if layout.size.width() <= width:
            break
    return layout


def shortened(part: StripVariable) -> StripVariable:
    """A variable with one cell less, at the end that lies further from the trainee's place."""
    below, above = _around(part)
    if below >= above:
        return replace(part, cells=part.cells[1:], more_below=part.more_below + 1)
    return replace(part, cells=part.cells[:-1], more_above=part.more_above + 1)


def _spare_width(part: StripVariable, group: int, layout: StripLayout) -> float:
    """How wide the cells are that could give way without hiding the place or what comes next."""
    below, above = _around(part)
    cells = [cell for cell in layout.cells if cell.group == group]
    return sum(cell.rect.width() for cell in (*cells[:below], *cells[len(cells) - above :]))


def _around(part: StripVariable) -> tuple[int, int]:
    """Cells before the first and after the last that must stay."""
    kept = [index for index, cell in enumerate(part.cells) if cell.here or cell.next] or [0]
    return kept[0], max(0, len(part.cells) - 1 - kept[-1])


def _place(
    cell: StripCell, variable: str, group: int, x: float, unit: Unit, size: _Measures
) -> PlacedCell:
    kept = cell.here or cell.next
    limit = size.longest_place if kept else size.longest_name
    text = _cut(words.cell(variable, cell, unit), limit, size.cell)
    wide = max(size.least_width, size.cell.horizontalAdvance(text) + 2 * size.padding)
    rect = QRectF(x, size.caption_height, wide, size.cell_height)
    outlined = cell.next and not cell.here
    return PlacedCell(rect, text, group, variable, cell.value, cell.here, outlined)


def _cut(text: str, limit: float, metrics: QFontMetricsF) -> str:
    """A name cut to a width; a height at its end ("…, 45 cm") tells most, so it stays."""
    if metrics.horizontalAdvance(text) <= limit:
        return text
    head, comma, tail = text.rpartition(", ")
    room = limit - metrics.horizontalAdvance(comma + tail)
    if not comma or room < limit / 4:
        return metrics.elidedText(text, Qt.TextElideMode.ElideRight, limit)
    return metrics.elidedText(head, Qt.TextElideMode.ElideRight, room) + comma + tail


def _count(counts: list[PlacedText], x: float, count: int, size: _Measures) -> float:
    if not count:
        return x
    text = f"+{words.number(count)}"
    wide = size.cell.horizontalAdvance(text) + size.padding
    counts.append(
        PlacedText(QRectF(x, size.caption_height, wide, size.cell_height), text, int(_CENTRE))
    )
    return x + wide + size.gap


def _caption(variable: str, unit: Unit) -> str:
    counted = words.variable_unit(variable, unit)
    return f"{words.variable(variable).upper()} {counted}".strip()
