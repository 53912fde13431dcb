"""The step strip: a line's counter as cells, one group for each training variable.

Filled is where the trainee stands, outlined is what comes next, and the arrow between two
variables is lit when the next step rolls over to the slower one. `paint_strip` draws it on any
painter: the widget here, item delegates, and paper.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Final

from PySide6.QtCore import QPointF, QRect, QRectF, QSize, Qt, QVariantAnimation, Signal
from PySide6.QtGui import (
    QColor,
    QFont,
    QKeyEvent,
    QMouseEvent,
    QPaintDevice,
    QPainter,
    QPaintEvent,
    QPen,
)
from PySide6.QtWidgets import QSizePolicy, QWidget

from desktop.training.quantities import Unit
from desktop.training.target import StripVariable
from views import words
from views.palettes import Palette
from views.strip_layout import PlacedCell, StripFonts, StripLayout, fitted, lay_out
from views.theme import TextSize, Theme
from views.tips import plain_tip

_USUAL_WIDTH = 420
_LEAST = (0.0, None)

Strip = tuple[StripVariable, ...]


@dataclass(frozen=True, slots=True)
class StripColours:
    """The colours of a strip's parts."""

    here: QColor
    on_here: QColor
    next: QColor
    on_next: QColor
    cell: QColor
    edge: QColor
    text: QColor
    caption: QColor
    ground: QColor


def strip_colours(palette: Palette, *, chosen_row: bool = False) -> StripColours:
    """A strip's colours on the surface; on a chosen row all words stand in the text colour."""
    quiet = "text" if chosen_row else "muted"
    return StripColours(
        here=palette.colour("accent"),
        on_here=palette.colour("on_accent"),
        next=palette.colour("accent"),
        on_next=palette.colour("text"),
        cell=palette.colour("background"),
        edge=palette.colour("line"),
        text=palette.colour(quiet),
        caption=palette.colour(quiet),
        ground=palette.colour("surface"),
    )


_BLACK: Final = QColor("#000000")
_WHITE: Final = QColor("#FFFFFF")
PAPER: Final = StripColours(
    here=_BLACK,
    on_here=_WHITE,
    next=_BLACK,
    on_next=_BLACK,
    cell=_WHITE,
    edge=QColor("#8C8C8C"),
    text=QColor("#404040"),
    caption=QColor("#404040"),
    ground=_WHITE,
)


def strip_fonts(theme: Theme) -> StripFonts:
    """The fonts of a strip on the screen."""
    caption = theme.font(TextSize.SMALL)
    caption.setPointSizeF(caption.pointSizeF() * 0.92)
    caption.setLetterSpacing(QFont.SpacingType.PercentageSpacing, 106)
    return StripFonts(theme.font(TextSize.BODY), caption)


def paint_strip(
    painter: QPainter,
    rect: QRectF | QRect,
    strip: Strip,
    colours: StripColours,
    fonts: StripFonts,
    unit: Unit,
) -> None:
    """Draw ``strip`` at the upper left of ``rect``, in whatever resolution the painter has.

    Where the width does not hold all of it, the cells furthest from the trainee's place give way
    to counts.
    """
    room = QRectF(rect)
    device = painter.device()
    layout = fitted(strip, fonts, unit, room.width(), device)
    painter.save()
    painter.translate(room.topLeft())
    paint_layout(painter, layout, colours, fonts)
    painter.restore()


def paint_layout(
    painter: QPainter,
    layout: StripLayout,
    colours: StripColours,
    fonts: StripFonts,
    slide: Mapping[int, QRectF] | None = None,
) -> None:
    """Draw a strip that was laid out; ``slide`` gives places of filled cells on their way."""
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setFont(fonts.caption)
    painter.setPen(colours.caption)
    for caption in layout.captions:
        painter.drawText(caption.rect, caption.flags, caption.text)
    painter.setFont(fonts.cell)
    for placed in layout.cells:
        _draw_cell(painter, placed, layout, colours, moving=placed.group in (slide or {}))
    for filled in (slide or {}).values():
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(colours.here)
        painter.drawRoundedRect(filled, layout.corner, layout.corner)
    painter.setPen(colours.text)
    for count in layout.counts:
        painter.drawText(count.rect, count.flags, count.text)
    for arrow in layout.arrows:
        _draw_arrow(painter, arrow.rect, layout, colours.next if arrow.lit else colours.edge)
    painter.restore()


def _draw_cell(
    painter: QPainter,
    placed: PlacedCell,
    layout: StripLayout,
    colours: StripColours,
    *,
    moving: bool,
) -> None:
    line = layout.hairline
    if placed.here and not moving:
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(colours.here)
        painter.drawRoundedRect(placed.rect, layout.corner, layout.corner)
        painter.setPen(colours.on_here)
    elif placed.next:
        painter.setPen(QPen(colours.next, 2 * line))
        painter.setBrush(colours.ground)
        inner = placed.rect.adjusted(line, line, -line, -line)
        painter.drawRoundedRect(inner, layout.corner, layout.corner)
        painter.setPen(colours.on_next)
    else:
        painter.setPen(QPen(colours.edge, line))
        painter.setBrush(colours.cell)
        inner = placed.rect.adjusted(line / 2, line / 2, -line / 2, -line / 2)
        painter.drawRoundedRect(inner, layout.corner, layout.corner)
        painter.setPen(colours.text)
    painter.drawText(placed.rect, Qt.AlignmentFlag.AlignCenter, placed.text)


def _draw_arrow(painter: QPainter, rect: QRectF, layout: StripLayout, colour: QColor) -> None:
    pen = QPen(colour, 1.6 * layout.hairline)
    pen.setCapStyle(Qt.PenCapStyle.RoundCap)
    painter.setPen(pen)
    middle = rect.center().y()
    tip = QPointF(rect.right(), middle)
    wing = rect.height() / 2
    painter.drawLine(QPointF(rect.left(), middle), tip)
    painter.drawLine(QPointF(rect.right() - wing, middle - wing), tip)
    painter.drawLine(QPointF(rect.right() - wing, middle + wing), tip)


class StepStrip(QWidget):
    """The strip as a widget that reads itself aloud.

    With ``choosable`` it takes the focus: left and right walk through the cells, Return or a
    click emits ``cell_chosen(variable, value)``. A roll-over slides the filled cell.
    """

    cell_chosen = Signal(str, object)

    def __init__(
        self,
        theme: Theme,
        strip: Strip = (),
        unit: Unit = Unit.KG,
        *,
        choosable: bool = False,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self.setLayoutDirection(Qt.LayoutDirection.LeftToRight)  # a figure is never mirrored
        self._theme = theme
        self._fonts = strip_fonts(theme)  # fonts made anew are looked up anew: 1 ms each
        self._strip = strip
        self._unit = unit
        self._laid: dict[tuple[float, int | None], StripLayout] = {}
        self._choosable = choosable
        self._cursor = 0
        self._slide: dict[int, tuple[QRectF, QRectF]] = {}
        self._animation = QVariantAnimation(self)
        self._animation.setStartValue(0.0)
        self._animation.setEndValue(1.0)
        self._animation.valueChanged.connect(lambda _value: self.update())
        self._animation.finished.connect(self._slide_over)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)
        if choosable:
            self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        theme.changed.connect(self._redraw)
        self._speak()

    @property
    def strip(self) -> Strip:
        """What is shown."""
        return self._strip

    @property
    def sliding(self) -> bool:
        """Whether a filled cell is on its way."""
        return bool(self._slide)

    def set_strip(self, strip: Strip, unit: Unit | None = None) -> None:
        """Show another strip; where a slower variable moved on, its cell slides."""
        before = self._layout()
        moved = _rolled_groups(self._strip, strip)
        self._strip = strip
        self._unit = unit or self._unit
        self._laid.clear()
        self._cursor = min(self._cursor, max(0, len(self._layout().cells) - 1))
        self._begin_slide(before, moved)
        self._speak()
        self.updateGeometry()
        self.update()

    def _layout(self) -> StripLayout:
        return self._in_width(self.width(), self)

    def _in_width(self, width: float, device: QPaintDevice | None = None) -> StripLayout:
        """The strip in a width; layouts ask for the same ones many times over."""
        dots = None if device is None else device.logicalDpiX()
        if (width, dots) not in self._laid:
            laid = fitted(self._strip, self._fonts, self._unit, width, device)
            self._laid[width, dots] = laid
        return self._laid[width, dots]

    def _speak(self) -> None:
        sentence = words.strip_sentence(self._strip, self._unit)
        self.setAccessibleName(sentence or self.tr("Step strip, empty"))
        self.setToolTip(plain_tip(sentence))
        self.setAccessibleDescription(
            self.tr("Filled: where the trainee stands. Outlined: what comes next.")
        )

    def _redraw(self) -> None:
        self._fonts = strip_fonts(self._theme)
        self._laid.clear()
        self.updateGeometry()
        self.update()

    def _begin_slide(self, before: StripLayout, moved: set[int]) -> None:
        self._animation.stop()
        duration = self._theme.slide_ms
        self._slide = {}
        if not (moved and duration and self.isVisible()):
            return
        after = self._layout()
        for group in moved:
            start, end = before.place_of(group), after.place_of(group)
            if start is not None and end is not None and start != end:
                self._slide[group] = (start, end)
        if self._slide:
            self._animation.setDuration(duration)
            self._animation.start()

    def _slide_over(self) -> None:
        self._slide = {}
        self.update()

    def _places_on_the_way(self) -> dict[int, QRectF]:
        share = float(self._animation.currentValue() or 0.0)
        share = 1 - (1 - share) ** 2
        return {group: _between(a, b, share) for group, (a, b) in self._slide.items()}

    def _choose(self, placed: PlacedCell) -> None:
        self.cell_chosen.emit(placed.variable, placed.value)

    def sizeHint(self) -> QSize:
        """Room for the whole strip; a very long one asks for less, and uses more if it gets it."""
        wide = self._theme.px(_USUAL_WIDTH)
        size = self._in_width(wide).size
        return QSize(int(size.width()) + 1, int(size.height()) + 1)

    def minimumSizeHint(self) -> QSize:
        """Room for the place and its neighbours; the rest gives way to counts."""
        whole = self.sizeHint()
        if _LEAST not in self._laid:
            least = tuple(_least(part) for part in self._strip)
            self._laid[_LEAST] = lay_out(least, self._fonts, self._unit)
        width = int(self._laid[_LEAST].size.width()) + 1
        return QSize(min(whole.width(), width), whole.height())

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setLayoutDirection(self.layoutDirection())
        layout = self._layout()
        colours = strip_colours(self._theme.palette)
        paint_layout(painter, layout, colours, self._fonts, self._places_on_the_way())
        if self._choosable and self.hasFocus() and layout.cells:
            ring = layout.cells[min(self._cursor, len(layout.cells) - 1)].rect
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            painter.setPen(QPen(colours.on_next, 1, Qt.PenStyle.DotLine))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRoundedRect(
                ring.adjusted(-1.5, -1.5, 1.5, 1.5), layout.corner, layout.corner
            )
        painter.end()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        cells = self._layout().cells
        step = {Qt.Key.Key_Left: -1, Qt.Key.Key_Right: 1}.get(Qt.Key(event.key()), 0)
        if self._choosable and cells and step:
            self._cursor = max(0, min(len(cells) - 1, self._cursor + step))
            self.update()
        elif self._choosable and cells and event.key() in (
            Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Space,
        ):  # fmt: skip
            self._choose(cells[min(self._cursor, len(cells) - 1)])
        else:
            super().keyPressEvent(event)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if self._choosable and event.button() is Qt.MouseButton.LeftButton:
            for index, placed in enumerate(self._layout().cells):
                if placed.rect.contains(event.position()):
                    self._cursor = index
                    self._choose(placed)
                    self.update()
                    return
        super().mousePressEvent(event)


def _rolled_groups(before: Sequence[StripVariable], after: Sequence[StripVariable]) -> set[int]:
    """Groups whose place moved, where one slower than the first is among them."""
    if [part.variable for part in before] != [part.variable for part in after]:
        return set()
    moved = {
        index
        for index, (old, new) in enumerate(zip(before, after, strict=True))
        if _here(old) != _here(new)
    }
    return moved if any(index > 0 for index in moved) else set()


def _here(part: StripVariable) -> int | str | None:
    return next((cell.value for cell in part.cells if cell.here), None)


def _least(part: StripVariable) -> StripVariable:
    kept = tuple(cell for cell in part.cells if cell.here or cell.next) or part.cells[:1]
    first = part.cells.index(kept[0]) if kept else 0
    hidden = len(part.cells) - len(kept)
    return StripVariable(
        part.variable,
        kept,
        part.rolls_next,
        part.more_below + min(first, hidden),
        part.more_above + max(0, hidden - first),
    )


def _between(a: QRectF, b: QRectF, share: float) -> QRectF:
    def mix(x: float, y: float) -> float:
        return x + (y - x) * share

    return QRectF(
        mix(a.x(), b.x()), mix(a.y(), b.y()), mix(a.width(), b.width()), mix(a.height(), b.height())
    )
