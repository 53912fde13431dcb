"""Find and replace: one exercise of the program for another, wherever it stands."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QWidget

from desktop.training.exercises import Exercise
from desktop.training.program import Program
from desktop.training.program_edits import slots_with
from desktop.training.quantities import Unit
from views import words
from views.blocks import Label
from views.captioned import ChoiceBox, keyed_word
from views.exercise_finder import ExerciseFinder
from views.theme import Theme


class ReplaceBar(QFrame):
    """``replaced(key, Exercise)`` when another exercise is chosen for one of the program."""

    replaced = Signal(str, object)
    closed = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("kind", "block")
        self.old = ChoiceBox(self.tr("The exercise to replace"))
        self.new = ExerciseFinder(
            theme, self.tr("with: part of its name"), self.tr("The exercise to put in its place")
        )
        self._close = keyed_word(self.tr("Close"), "Esc", tone="")
        row = QHBoxLayout(self)
        inside = theme.grid(2)
        row.setContentsMargins(inside, theme.px(8), inside, theme.px(8))
        row.setSpacing(theme.px(10))
        row.addWidget(Label(self.tr("Replace everywhere")))
        row.addWidget(self.old)
        row.addWidget(self.new, 1)
        row.addWidget(self._close)
        self.new.taken.connect(self._take)
        self.new.given_up.connect(self.closed)
        self._close.clicked.connect(self.closed)

    def offer(self, program: Program, exercises: Sequence[Exercise], known: str | None) -> None:
        """Offer the exercises of ``program``, ``known`` chosen, and those to put in place."""
        by_key = {each.key: each for each in exercises}
        used = dict.fromkeys(
            slot.exercise for phase in program.phases for day in phase.days for slot in day.slots
        )
        choices = [
            (key, f"{by_key[key].name}{words.DOT}{words.times(len(slots_with(program, key)))}")
            for key in used
            if key in by_key
        ]
        keys = [key for key, _ in choices]
        chosen = known if known in keys else self.old.choice
        self.old.offer(choices, chosen if chosen in keys else (keys[0] if keys else None))
        self.new.offer([each for each in exercises if not each.retired], Unit.KG)

    def take_focus(self) -> None:
        """Put the cursor where the other exercise is typed."""
        self.new.setFocus(Qt.FocusReason.ShortcutFocusReason)

    def _take(self, exercise: Exercise, _said: object) -> None:
        if self.old.choice is not None and self.old.choice != exercise.key:
            self.replaced.emit(self.old.choice, exercise)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self.closed.emit()
        else:
            super().keyPressEvent(event)
