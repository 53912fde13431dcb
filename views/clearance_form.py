"""A licensed professional's clearance, typed where it is needed: who, when, what was said."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QWidget

from desktop.training.trainee import Clearance, Trainee
from views.blocks import Label, MainButton, WordButton
from views.captioned import CaptionedForm
from views.date_field import DateField
from views.number_fields import FieldError
from views.rows_editor import TextField
from views.theme import Theme


class ClearanceForm(QWidget):
    """``recorded(Clearance)`` when who and when stand; ``given_up`` on Escape."""

    recorded = Signal(object)
    given_up = Signal()

    def __init__(self, theme: Theme, today: date, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._today = today
        self.by = TextField(self.tr("Licensed professional who cleared the trainee"))
        self.day = DateField(self.tr("Day of the clearance"), today)
        self.note = TextField(self.tr("What was said"))
        self.error = FieldError()
        self.save = MainButton(self.tr("Record the clearance"))
        self.leave = WordButton(self.tr("Leave"), tone="muted")
        self.day.set_day(today)
        self.day.bind_error(self.error)
        self.note.returnPressed.connect(self.take)
        self.save.clicked.connect(self.take)
        self.leave.clicked.connect(self.given_up)
        self._assemble(theme)

    def begin(self) -> None:
        """Put the cursor on who."""
        self.by.setFocus(Qt.FocusReason.OtherFocusReason)

    def take(self) -> None:
        """Hand over what was typed, or say what is missing."""
        by, day = " ".join(self.by.text().split()), self.day.day
        if not by:
            self.error.setText(self.tr("Needed: the name of the licensed professional."))
            self.begin()
        elif day is None or day > self._today:
            self.error.setText(self.tr("Needed: the day, today or before."))
            self.day.setFocus(Qt.FocusReason.OtherFocusReason)
        else:
            self.error.setText("")
            self.recorded.emit(Clearance(day, by, self.note.text().strip()))

    def _assemble(self, theme: Theme) -> None:
        column = CaptionedForm(theme, self, self.error, self.leave, self.save)
        column.setContentsMargins(0, theme.px(4), 0, 0)
        column.put(self.tr("licensed professional"), self.by, 200)
        column.put(self.tr("day"), self.day, 104)
        column.put(self.tr("what was said"), self.note, 200, grow=True)
        column.addWidget(
            Label(
                self.tr("Record only what a licensed professional said; local rules come first."),
                "small",
                "muted",
                wrap=True,
            )
        )

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self.given_up.emit()
            return
        super().keyPressEvent(event)


def cleared(trainee: Trainee, clearance: Clearance) -> Trainee:
    """The trainee with one more clearance."""
    return replace(trainee, clearances=(*trainee.clearances, clearance))
