"""Days away, typed: why, from when to when; new ones, and those on record that are put right."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import date

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QWidget

from desktop.planning.absences import overlapping
from desktop.training.trainee import Absence, AbsenceKind
from views.absence_texts import absence_text
from views.blocks import WordButton
from views.captioned import CaptionedForm, ChoiceBox
from views.caution_texts import absence_word
from views.date_field import DateField
from views.number_fields import FieldError
from views.rows_editor import TextField
from views.theme import Theme


class AbsenceForm(QWidget):
    """``wanted(Absence)`` when one stands complete; ``given_up`` where one on record stays so."""

    wanted = Signal(object)
    given_up = Signal()

    def __init__(self, theme: Theme, today: date, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._today = today
        self._trainee_id = 0
        self._known: tuple[Absence, ...] = ()
        self.changed_one: Absence | None = None
        self.kind = ChoiceBox(self.tr("Why away"))
        self.first = DateField(self.tr("First day away"), today)
        self.last = DateField(self.tr("Last day away; empty: it goes on"), today)
        self.note = TextField(self.tr("Note on the days away"))
        self.error = FieldError()
        self.leave = WordButton(self.tr("Leave it"), tone="muted")
        self.save = WordButton(self.tr("Note these days"), strong=True)
        self._assemble(theme)
        for field in (self.first, self.last):
            field.bind_error(self.error)
        self.note.returnPressed.connect(self.take)
        self.save.clicked.connect(self.take)
        self.leave.clicked.connect(self.give_up)
        self.clear()

    def show_known(self, trainee_id: int, absences: Sequence[Absence]) -> None:
        """What is on record; what is being typed for the same trainee stays."""
        self._known = tuple(absences)
        if trainee_id != self._trainee_id:
            self._trainee_id = trainee_id
            self.clear()
        elif self.changed_one is not None and self.changed_one not in self._known:
            self.clear()

    def change(self, absence: Absence) -> None:
        """Put one on record right."""
        self.changed_one = absence
        self.kind.choose(absence.kind)
        self.first.set_day(absence.first)
        self.last.set_day(absence.last)
        self.note.set_value(absence.note)
        self._say()
        self.first.setFocus(Qt.FocusReason.OtherFocusReason)
        self.first.selectAll()

    def begin(self) -> None:
        """Put the cursor where typing begins."""
        self.kind.setFocus(Qt.FocusReason.OtherFocusReason)

    def clear(self) -> None:
        """Empty fields, for other days."""
        self.changed_one = None
        choices = [(kind, absence_word(kind.value)) for kind in AbsenceKind]
        self.kind.offer(choices, AbsenceKind.AWAY)
        for field in (self.first, self.last):
            field.set_day(None)
        self.note.set_value("")
        self._say()

    def give_up(self) -> None:
        """Leave what is on record as it is."""
        self.clear()
        self.given_up.emit()

    def take(self) -> None:
        """Hand over what was typed, or say beside the field what is allowed."""
        if not (self.first.check() and self.last.check()):
            self._stand_on(self.first if self.first.error else self.last)
            return
        first, last = self.first.day, self.last.day
        if first is None:
            example = self.first.placeholderText()
            text = self.tr("Needed: the first day, such as {example}.")
            self._refuse(self.first, text.format(example=example))
            return
        if last is not None and last < first:
            text = self.tr("The last day is {first} at the earliest; leave it empty if it goes on.")
            self._refuse(self.last, text.format(first=self.first.text()))
            return
        base = self.changed_one or Absence(self._trainee_id, first, last)
        kind, note = self.kind.choice, self.note.text().strip()
        absence = replace(base, first=first, last=last, kind=kind, note=note)
        other = overlapping(self._known, absence)
        if other is not None:
            text = self.tr("On record already: {absence}. Put that one right, or take other days.")
            self._refuse(self.first, text.format(absence=absence_text(other, self._today)))
            return
        if absence == self.changed_one:
            self.give_up()
            return
        self.error.setText("")
        self.wanted.emit(absence)

    def _refuse(self, field: DateField, why: str) -> None:
        self._stand_on(field)
        self.error.setText(why)

    def _stand_on(self, field: DateField) -> None:
        field.setFocus(Qt.FocusReason.OtherFocusReason)
        field.selectAll()

    def _say(self) -> None:
        self.error.setText("")
        changing = self.changed_one is not None
        text = self.tr("Change these days") if changing else self.tr("Note these days")
        self.save.set_words(text)
        self.leave.setVisible(changing)

    def _assemble(self, theme: Theme) -> None:
        form = CaptionedForm(theme, self, self.error, self.leave, self.save)
        form.put(self.tr("why"), self.kind, 116)
        form.put(self.tr("first day"), self.first, 112)
        form.put(self.tr("last day (empty: goes on)"), self.last, 150)
        form.put(self.tr("note"), self.note, 160, grow=True)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape and self.changed_one is not None:
            self.give_up()
            return
        super().keyPressEvent(event)
