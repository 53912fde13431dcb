"""What changes: before a session of the past is saved, its effect on today's targets."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QVBoxLayout, QWidget

from desktop.planning.outcomes import Effect
from desktop.training.quantities import Unit
from views import words
from views.blocks import Label, WordButton
from views.next_time import effect_text, line_name, unchanged_text
from views.theme import Theme


class EffectPanel(QFrame):
    """``agreed`` to save, ``given_up`` to go on typing; both hide it."""

    agreed = Signal()
    given_up = Signal()

    def __init__(self, theme: Theme, today: date, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._today = today
        self.setProperty("kind", "banner")
        self.setProperty("tone", "note")
        self.title = Label("", "heading")
        self.text = Label("", wrap=True)
        self.save = WordButton(self.tr("Save the correction"), strong=True)
        self.back = WordButton(self.tr("Go on typing"), tone="muted")
        foot = QHBoxLayout()
        foot.addWidget(self.title, 1)
        foot.addWidget(self.back)
        foot.addWidget(self.save)
        column = QVBoxLayout(self)
        column.setContentsMargins(theme.px(16), theme.px(8), theme.px(10), theme.px(10))
        column.setSpacing(theme.px(4))
        column.addLayout(foot)
        column.addWidget(self.text)
        self.save.clicked.connect(self.agree)
        self.back.clicked.connect(self.give_up)
        self.hide()

    def ask(self, effects: Sequence[Effect], unit: Unit, *, correction: bool) -> None:
        """Say what changes, and ask whether to save; ``correction`` of a stored session."""
        self.save.set_words(self.tr("Save the correction") if correction else self.tr("Save"))
        changes = [
            self.tr("{line}, {day}: {change}").format(
                line=line_name(effect.exercise.name, effect.line.name),
                day=words.short_day(effect.day, self._today),
                change=effect_text(effect, unit),
            )
            for effect in effects
        ]
        self.title.setText(self.tr("This session lies in the past"))
        self.text.setText("\n".join(changes) if changes else unchanged_text())
        self.show()
        self.save.setFocus(Qt.FocusReason.OtherFocusReason)

    def give_up(self) -> None:
        """Hide without saving."""
        self.hide()
        self.given_up.emit()

    def agree(self) -> None:
        """Hide and save."""
        self.hide()
        self.agreed.emit()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self.give_up()
        elif event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.agree()
        else:
            super().keyPressEvent(event)
