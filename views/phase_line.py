"""Phases as a line of weeks: where the program is, which phase is looked at."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from PySide6.QtCore import QCoreApplication, QEvent, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QFontMetricsF, QKeyEvent, QMouseEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from desktop.training.program import Phase, PhasePurpose, Program
from views import words
from views.acting_row import RowAct
from views.theme import TextSize, Theme

translate = QCoreApplication.translate

_BAR: Final = 24
_GAP: Final = 3

_PLAIN: Final = {
    Qt.Key.Key_Left: RowAct.BEFORE,
    Qt.Key.Key_Right: RowAct.AFTER,
    Qt.Key.Key_Down: RowAct.LEAVE,
    Qt.Key.Key_Home: RowAct.FIRST,
    Qt.Key.Key_End: RowAct.LAST,
    Qt.Key.Key_Return: RowAct.EDIT,
    Qt.Key.Key_Enter: RowAct.EDIT,
    Qt.Key.Key_Delete: RowAct.REMOVE,
}
_ALT: Final = {Qt.Key.Key_Left: RowAct.MOVE_UP, Qt.Key.Key_Right: RowAct.MOVE_DOWN}
_CTRL: Final = {
    Qt.Key.Key_D: RowAct.DUPLICATE,
    Qt.Key.Key_A: RowAct.MARK_ALL,
    Qt.Key.Key_C: RowAct.COPY,
    Qt.Key.Key_V: RowAct.PASTE,
}


@dataclass(frozen=True, slots=True)
class PlacedPhase:
    """A phase's bar."""

    rect: QRectF
    phase: Phase
    first_week: int


class PhaseLine(QWidget):
    """The line. ``chosen(place)`` when another phase is looked at; ``acted(RowAct)`` for keys."""

    chosen = Signal(int)
    acted = Signal(object)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setLayoutDirection(Qt.LayoutDirection.LeftToRight)  # a figure is never mirrored
        self._theme = theme
        self._program = Program("")
        self._at = 0
        self._week: int | None = None
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        theme.changed.connect(self.updateGeometry)

    def show_program(self, program: Program, at: int, week: int | None) -> None:
        """Show a program's phases, the one at ``at`` chosen, ``week`` (from 1) running."""
        self._program, self._at, self._week = program, at, week
        phase = program.phases[at]
        text = self.tr("Phase {place} of {count}: {name}, {weeks}").format(
            place=at + 1,
            count=len(program.phases),
            name=phase_name(phase),
            weeks=words.weeks(phase.weeks),
        )
        self.setAccessibleName(text)
        self.setAccessibleDescription(
            self.tr("Left and right choose a phase, Return edits it, Alt with them moves it.")
        )
        self.update()

    def placed(self) -> list[PlacedPhase]:
        """The bars as they lie now; phases of few weeks stay wide enough to be hit."""
        gap = self._theme.px(_GAP)
        phases = self._program.phases
        whole = self.width() - gap * (len(phases) - 1)
        least = min(self._theme.px(50), whole / max(1, len(phases)))
        weeks = max(1, self._program.weeks)
        wide = [max(least, whole * phase.weeks / weeks) for phase in phases]
        over = sum(wide) - whole
        spare = sum(each - least for each in wide) or 1.0
        wide = [each - over * (each - least) / spare for each in wide]
        placed: list[PlacedPhase] = []
        x, week = 0.0, 1
        for phase, width in zip(phases, wide, strict=True):
            placed.append(PlacedPhase(QRectF(x, 0, width, self._theme.px(_BAR)), phase, week))
            x += width + gap
            week += phase.weeks
        return placed

    def _draw_bar(self, painter: QPainter, bar: PlacedPhase, *, chosen: bool) -> None:
        focused = chosen and self.hasFocus()
        colour = self._theme.colour
        width = 2.0 if focused else 1.0
        painter.setPen(QPen(colour("accent" if chosen else "line"), width))
        painter.setBrush(colour("accent_soft" if focused else "surface"))
        edge = width / 2
        corner = self._theme.px(3)
        painter.drawRoundedRect(bar.rect.adjusted(edge, edge, -edge, -edge), corner, corner)
        font = self._theme.font(TextSize.SMALL, bold=chosen)
        painter.setFont(font)
        deload = bar.phase.purpose is PhasePurpose.DELOAD
        painter.setPen(colour("muted" if deload and not chosen else "text"))
        metrics = QFontMetricsF(font)
        room = bar.rect.width() - self._theme.px(6)
        name = phase_name(bar.phase)
        if deload and metrics.horizontalAdvance(name) > room:
            name = purpose_word(PhasePurpose.DELOAD)
        shown = metrics.elidedText(name, Qt.TextElideMode.ElideRight, room)
        painter.drawText(bar.rect, Qt.AlignmentFlag.AlignCenter, shown)

    def _draw_weeks(self, painter: QPainter, bar: PlacedPhase) -> None:
        font = self._theme.font(TextSize.SMALL)
        painter.setFont(font)
        metrics = QFontMetricsF(font)
        each = bar.rect.width() / max(1, bar.phase.weeks)
        step = 1
        while each * step < metrics.horizontalAdvance("00") + self._theme.px(6):
            step += 1
        top = bar.rect.bottom() + self._theme.px(2)
        for number in range(bar.phase.weeks):
            week = bar.first_week + number
            now = week == self._week
            if number % step and not now:
                continue
            text = words.number(week)
            long = self.tr("week {number}").format(number=text)
            if now and each * step > metrics.horizontalAdvance(f"{long}0"):
                text = long
            painter.setPen(self._theme.colour("accent" if now else "muted"))
            place = QRectF(bar.rect.left() + number * each, top, each, metrics.height())
            flags = Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextDontClip
            painter.drawText(place, int(flags), text)
            if now:
                half = metrics.horizontalAdvance(text) / 2
                line = QRectF(
                    place.center().x() - half,
                    place.bottom() + 1,
                    2 * half,
                    max(1.0, self._theme.px(2)),
                )
                painter.fillRect(line, self._theme.colour("accent"))

    def sizeHint(self) -> QSize:
        metrics = QFontMetricsF(self._theme.font(TextSize.SMALL))
        tall = self._theme.px(_BAR) + metrics.height() + self._theme.px(7)
        return QSize(self._theme.px(300), round(tall))

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setLayoutDirection(self.layoutDirection())
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        for place, bar in enumerate(self.placed()):
            self._draw_bar(painter, bar, chosen=place == self._at)
            self._draw_weeks(painter, bar)
        painter.end()

    def event(self, event: QEvent) -> bool:
        wanted = event.type() is QEvent.Type.ShortcutOverride
        if wanted and isinstance(event, QKeyEvent) and _act_of(event) is not None:
            event.accept()
            return True
        if event.type() in (QEvent.Type.FocusIn, QEvent.Type.FocusOut):
            self.update()
        return super().event(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        act = _act_of(event)
        count = len(self._program.phases)
        steps = {
            RowAct.BEFORE: self._at - 1,
            RowAct.AFTER: self._at + 1,
            RowAct.FIRST: 0,
            RowAct.LAST: count - 1,
        }
        if act is None:
            super().keyPressEvent(event)
        elif act in steps:
            self.chosen.emit(max(0, min(count - 1, steps[act])))
        else:
            self.acted.emit(act)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        self.setFocus(Qt.FocusReason.MouseFocusReason)
        for place, bar in enumerate(self.placed()):
            if bar.rect.left() <= event.position().x() <= bar.rect.right():
                self.chosen.emit(place)

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        self.acted.emit(RowAct.EDIT)


def phase_name(phase: Phase) -> str:
    """A phase's name, else what it is for."""
    return phase.name or purpose_word(phase.purpose)


def purpose_word(purpose: PhasePurpose) -> str:
    """What a phase is for."""
    return {
        PhasePurpose.BUILD: translate("Phases", "build"),
        PhasePurpose.ASSESS: translate("Phases", "assess"),
        PhasePurpose.DELOAD: translate("Phases", "deload"),
    }[purpose]


def _act_of(event: QKeyEvent) -> RowAct | None:
    held = event.modifiers() & ~Qt.KeyboardModifier.KeypadModifier
    keys = {
        Qt.KeyboardModifier.NoModifier: _PLAIN,
        Qt.KeyboardModifier.AltModifier: _ALT,
        Qt.KeyboardModifier.ControlModifier: _CTRL,
    }.get(held, {})
    return keys.get(Qt.Key(event.key()))
