"""A phase and a day edited in place: name, weeks and purpose; name and weekday; and what becomes
of the whole of it.
"""

from __future__ import annotations

from dataclasses import replace
from typing import Final

from PySide6.QtCore import QEvent, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QVBoxLayout, QWidget

from desktop.training.program import Phase, PhasePurpose, TrainingDay
from desktop.training.program_edits import MOST_WEEKS
from views import words
from views.acting_row import RowAct
from views.blocks import WordButton
from views.captioned import Captioned, ChoiceBox, keyed_word
from views.flow_layout import FieldFlow
from views.number_fields import FieldError, WholeField
from views.phase_line import purpose_word
from views.rows_editor import TextField
from views.theme import Theme

_MOVES: Final = {
    Qt.Key.Key_Up: RowAct.MOVE_UP,
    Qt.Key.Key_Left: RowAct.MOVE_UP,
    Qt.Key.Key_Down: RowAct.MOVE_DOWN,
    Qt.Key.Key_Right: RowAct.MOVE_DOWN,
}


class PlacePanel(QFrame):
    """Fields in a line and words that act; ``acted(RowAct)``, and ``closed`` on Escape."""

    acted = Signal(object)
    closed = Signal()

    def __init__(self, theme: Theme, keys: tuple[str, str], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("kind", "inset")
        self._theme = theme
        self.error = FieldError()
        line = QWidget()
        self.flow = FieldFlow(theme.px(10), theme.px(6), line)
        words_line = QWidget()
        self._words = FieldFlow(theme.px(12), theme.px(2), words_line)
        self.buttons: dict[RowAct, WordButton] = {}
        self._column = QVBoxLayout(self)
        top = QHBoxLayout()
        top.setSpacing(theme.px(12))
        top.addWidget(line, 3)
        top.addWidget(self.error, 2)
        self._column.addLayout(top)
        self._column.addWidget(words_line)
        for text, key, act in (
            (self.tr("Earlier"), keys[0], RowAct.MOVE_UP),
            (self.tr("Later"), keys[1], RowAct.MOVE_DOWN),
            (self.tr("Duplicate"), "Ctrl+D", RowAct.DUPLICATE),
            (self.tr("Remove"), "Delete", RowAct.REMOVE),
        ):
            button = keyed_word(text, key, flush=True)
            button.clicked.connect(lambda _on=False, act=act: self.acted.emit(act))
            self.buttons[act] = button
            self._words.addWidget(button)
        self._close = keyed_word(self.tr("Close"), "Esc", tone="", flush=True)
        self._close.clicked.connect(self.closed)
        self._words.addWidget(self._close)
        theme.changed.connect(self._space)
        self._space()

    def add_word(self, button: WordButton) -> None:
        """One more word, before the one that closes."""
        self._words.removeWidget(self._close)
        self._words.addWidget(button)
        self._words.addWidget(self._close)

    def _space(self) -> None:
        inside = self._theme.grid(2)
        edge = self._theme.px(3) if self.property("kind") == "inset" else 0
        self._column.setContentsMargins(inside - edge, self._theme.px(6), inside, self._theme.px(8))
        self._column.setSpacing(self._theme.px(4))

    def event(self, event: QEvent) -> bool:
        """Alt with arrows would choose another trainee while a field here is typed in."""
        wanted = event.type() is QEvent.Type.ShortcutOverride
        if wanted and isinstance(event, QKeyEvent) and _moves(event):
            event.accept()
            return True
        return super().event(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self.closed.emit()
        elif moved := _moves(event):
            self.acted.emit(moved)
        else:
            super().keyPressEvent(event)


def _moves(event: QKeyEvent) -> RowAct | None:
    held = event.modifiers() & Qt.KeyboardModifier.AltModifier
    return _MOVES.get(Qt.Key(event.key())) if held else None


class PhasePanel(PlacePanel):
    """One phase. ``edited(Phase, str)``; ``added(PhasePurpose)`` for another one behind it."""

    edited = Signal(object, str)
    added = Signal(object)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(theme, ("Alt+Left", "Alt+Right"), parent)
        self.setProperty("kind", "block")
        self._space()
        for text, purpose in (
            (self.tr("Add a phase after it"), PhasePurpose.BUILD),
            (self.tr("Add a deload week after it"), PhasePurpose.DELOAD),
            (self.tr("Add a test week after it"), PhasePurpose.ASSESS),
        ):
            button = WordButton(text, flush=True)
            button.clicked.connect(lambda _on=False, p=purpose: self.added.emit(p))
            self.add_word(button)
        self._phase: Phase | None = None
        self.name = TextField(self.tr("Name of the phase"))
        self.weeks = WholeField(self.tr("Weeks"), 1, MOST_WEEKS, optional=False)
        self.purpose = ChoiceBox(self.tr("What the phase is for"))
        self.weeks.bind_error(self.error)
        for caption, field, width in (
            (self.tr("Phase"), self.name, 220),
            (self.tr("Weeks"), self.weeks, 60),
            (self.tr("For"), self.purpose, 110),
        ):
            self.flow.addWidget(Captioned(theme, caption, field, width))
        self.name.committed.connect(lambda: self._emit(self.tr("Rename the phase")))
        self.weeks.committed.connect(lambda: self._emit(self.tr("Weeks of the phase")))
        self.purpose.picked.connect(lambda: self._emit(self.tr("What the phase is for")))

    def show_phase(self, phase: Phase, *, only: bool) -> None:
        """Show a phase; the ``only`` one cannot be removed."""
        self._phase = phase
        if not self.name.hasFocus() or self.name.text().strip() == phase.name:
            self.name.set_value(phase.name)
        if not self.weeks.error:
            self.weeks.set_value(phase.weeks)
        self.purpose.offer([(each, purpose_word(each)) for each in PhasePurpose], phase.purpose)
        self.buttons[RowAct.REMOVE].setEnabled(not only)

    def _emit(self, text: str) -> None:
        if self._phase is None or not self.weeks.check():
            return
        phase = replace(
            self._phase,
            name=self.name.text().strip(),
            weeks=self.weeks.whole or self._phase.weeks,
            purpose=self.purpose.choice or self._phase.purpose,
        )
        if phase != self._phase:
            self.edited.emit(phase, text)


class DayPanel(PlacePanel):
    """One day. ``edited(TrainingDay, str)``."""

    edited = Signal(object, str)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(theme, ("Alt+Up", "Alt+Down"), parent)
        self._day: TrainingDay | None = None
        self.name = TextField(self.tr("What the day holds"))
        self.weekday = ChoiceBox(self.tr("Weekday"))
        for caption, field, width in (
            (self.tr("Holds"), self.name, 260),
            (self.tr("On"), self.weekday, 190),
        ):
            self.flow.addWidget(Captioned(theme, caption, field, width))
        self.name.committed.connect(lambda: self._emit(self.tr("Rename the day")))
        self.weekday.picked.connect(lambda: self._emit(self.tr("Weekday")))

    def show_day(self, day: TrainingDay) -> None:
        """Show a day."""
        self._day = day
        if not self.name.hasFocus() or self.name.text().strip() == day.name:
            self.name.set_value(day.name)
        choices: list[tuple[int | None, str]] = [
            (each, words.weekday(each)) for each in words.weekdays_in_order()
        ]
        choices.append((None, self.tr("in turn, any training day")))
        self.weekday.offer(choices, day.weekday)

    def _emit(self, text: str) -> None:
        if self._day is None:
            return
        day = replace(self._day, name=self.name.text().strip(), weekday=self.weekday.choice)
        if day != self._day:
            self.edited.emit(day, text)
