"""A position as the coach wants it: sets, repetitions or seconds, load, variation, and why."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QComboBox, QHBoxLayout, QLineEdit, QVBoxLayout, QWidget

from desktop.training.exercises import Exercise, LoadingKind, Measure
from desktop.training.position import Position, Surroundings
from desktop.training.quantities import Unit
from views import words
from views.blocks import Label, MainButton, WordButton
from views.number_fields import FieldError, LoadField, WholeField
from views.sentences import small
from views.theme import Theme


class PositionEditor(QWidget):
    """A row of fields. ``position_set(Position, note)`` or ``given_up``."""

    position_set = Signal(object, str)
    given_up = Signal()

    def __init__(
        self,
        theme: Theme,
        exercise: Exercise,
        around: Surroundings,
        position: Position | None,
        unit: Unit,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._hold = exercise.measure is Measure.HOLD
        self._position = position or Position()
        self.sets = WholeField(self.tr("Sets"), 1, 30, optional=False)
        amount = self.tr("Seconds") if self._hold else self.tr("Repetitions")
        self.amount = WholeField(amount, 1, 3_600 if self._hold else 100, optional=False)
        signed = exercise.loading is LoadingKind.BODYWEIGHT
        self.load = LoadField(self.tr("Load"), unit, signed=signed, optional=signed)
        self.variation = QComboBox()
        self.variation.setAccessibleName(self.tr("Variation"))
        for step in around.scale:
            if step.available or step.key == self._position.variation:
                self.variation.addItem(step.name, step.key)
        self.note = QLineEdit()
        self.note.setPlaceholderText(self.tr("Why? It is kept with the line"))
        self.note.setAccessibleName(self.tr("Why the position is set"))
        self.apply = MainButton(self.tr("Set it so"))
        self._leave = WordButton(self.tr("Leave"), tone="muted")
        self._error = FieldError()
        self._assemble(theme, small(amount), unit)
        self._show(around)
        for field in (self.sets, self.amount, self.load):
            field.bind_error(self._error)
        self.note.returnPressed.connect(self._take)
        self.apply.clicked.connect(self._take)
        self._leave.clicked.connect(self.given_up)

    def begin(self) -> None:
        """Put the cursor into the first field."""
        self.sets.setFocus(Qt.FocusReason.OtherFocusReason)

    def _assemble(self, theme: Theme, amount: str, unit: Unit) -> None:
        row = QHBoxLayout()
        row.setSpacing(theme.grid())
        for field, wide in ((self.sets, 44), (self.amount, 52), (self.load, 72)):
            field.setFixedWidth(theme.px(wide))
        row.addWidget(self.sets)
        row.addWidget(Label(words.TIMES, tone="muted"))
        row.addWidget(self.amount)
        row.addWidget(Label(amount, tone="muted"))
        row.addWidget(self.load)
        row.addWidget(Label(unit.value, tone="muted"))
        row.addWidget(self.variation)
        row.addWidget(self.note, 1)
        row.addWidget(self._leave)
        row.addWidget(self.apply)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, theme.px(4), 0, 0)
        column.setSpacing(theme.px(2))
        column.addLayout(row)
        column.addWidget(self._error)

    def _show(self, around: Surroundings) -> None:
        position = self._position
        self.sets.set_value(position.sets)
        self.amount.set_value(position.amount or None)
        self.load.set_grams(position.load_g or (None if around.bodyweight else 0))
        self.variation.setVisible(bool(self.variation.count()))
        index = self.variation.findData(position.variation)
        self.variation.setCurrentIndex(max(0, index))

    def _take(self) -> None:
        for field in (self.sets, self.amount, self.load):
            if not field.check():
                field.setFocus(Qt.FocusReason.OtherFocusReason)
                return
        amount = self.amount.whole
        wanted = replace(
            self._position,
            sets=self.sets.whole or 1,
            reps=None if self._hold else amount,
            hold_s=amount if self._hold else None,
            load_g=self.load.grams or 0,
            variation=self.variation.currentData() or self._position.variation,
        )
        self.position_set.emit(wanted, self.note.text().strip())

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self.given_up.emit()
            return
        super().keyPressEvent(event)
