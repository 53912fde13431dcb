"""What changes: before the past is changed, what that does to targets, bests and cautions today."""

from __future__ import annotations

from datetime import date

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QVBoxLayout, QWidget

from desktop.planning.past_effects import PastEffect
from desktop.training.trainee import Trainee
from views.blocks import Label, OneLine, WordButton
from views.past_texts import effect_lines
from views.record import Record
from views.theme import Theme


class EffectPanel(QFrame):
    """``agreed`` to save, ``given_up`` to go on typing; both hide it."""

    agreed = Signal()
    given_up = Signal()

    def __init__(
        self, record: Record, theme: Theme, today: date, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._record, self._today = record, today
        self.setProperty("kind", "banner")
        self.setProperty("tone", "note")
        self.title = OneLine("", "heading")
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

    def ask(
        self, effect: PastEffect, trainee: Trainee, act: str, title: str = "", more: str = ""
    ) -> None:
        """Say what changes, and ask whether to do it: ``act`` is the word for that. ``title``
        says what it is (a session being typed, where there is none), ``more`` is said first.
        """
        names = self._record.line_names(trainee.id)
        said = effect_lines(effect, trainee.unit, self._record.limits, self._today, names)
        self.save.set_words(act)
        self.back.set_words(self.tr("Leave it") if title else self.tr("Go on typing"))
        self.title.setText(title or self.tr("This session lies in the past"))
        self.text.setText("\n".join(line for line in (more, *said) if line))
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
