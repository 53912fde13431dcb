"""The fields of the trainee form: the person, the body mass, health and consent."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import date
from typing import NamedTuple

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QGridLayout,
    QPlainTextEdit,
    QWidget,
)

from desktop.training.exercises import Sex
from desktop.training.quantities import Unit
from desktop.training.trainee import BodyMass, Clearance, Experience, Trainee
from views import words
from views.blocks import Label
from views.date_field import DateField
from views.flow_layout import FlowLayout
from views.number_fields import FieldError, LengthField, LoadField, WholeField
from views.rows_editor import Column, RowsEditor, TextField
from views.theme import Theme

_COLUMNS, _FEW_COLUMNS = 4, 2
_LINES = 3
"""Of the grid to one row of fields: the label, the field, what is wrong with it."""
_SHOWN_MASSES = 4


class _Placed(NamedTuple):
    """A field where it stands in rows of four, under its label and over what is wrong with it."""

    field: QWidget
    row: int
    column: int
    span: int = 1
    label: Label | None = None
    error: FieldError | None = None

    def where(self, across: int) -> tuple[int, int, int]:
        """Row, column and span in rows of ``across``: the right half goes under the left one."""
        rows = _COLUMNS // across
        row = self.row * rows + self.column // across
        return row, self.column % across, min(self.span, across)

    @property
    def least(self) -> int:
        """Pixels below which it is cut off."""
        parts = [part for part in (self.field, self.label) if part is not None]
        return max(max(part.minimumSizeHint().width(), part.minimumWidth()) for part in parts)


class Fields(QWidget):
    """Fields under their labels, four to a row or two where there is less room; ``edited`` when a
    value that counts changed.
    """

    edited = Signal()

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self.theme = theme
        self._placed: list[_Placed] = []
        self._across = _COLUMNS
        self.grid = QGridLayout(self)
        self.grid.setContentsMargins(0, 0, 0, 0)
        self.grid.setHorizontalSpacing(theme.grid(2))
        self.grid.setVerticalSpacing(theme.px(2))

    def place(self, label: str, field: QWidget, row: int, column: int, span: int = 1) -> FieldError:
        """Put a field under its label, with room for what is wrong under it."""
        caption = Label(label, "small", "muted")
        caption.setBuddy(field)
        error = FieldError()
        field.setAccessibleName(label)
        self.put(_Placed(field, row, column, span, caption, error))
        if hasattr(field, "bind_error"):
            field.bind_error(error)
        if hasattr(field, "committed"):
            field.committed.connect(self.edited)
        return error

    def put(self, placed: _Placed) -> None:
        """Put what stands in the rows."""
        self._placed.append(placed)
        self._add(placed)

    def _add(self, placed: _Placed) -> None:
        row, column, span = placed.where(self._across)
        alone = placed.label is None
        side = Qt.AlignmentFlag.AlignVCenter if alone else Qt.AlignmentFlag(0)
        for line, part in enumerate((placed.label, placed.field, placed.error)):
            if part is not None:
                wanted = side if part is placed.field else Qt.AlignmentFlag(0)
                self.grid.removeWidget(part)
                self.grid.addWidget(part, _LINES * row + line, column, 1, span, wanted)

    def _arrange(self) -> None:
        across = _COLUMNS if self._needed(_COLUMNS) <= self.width() else _FEW_COLUMNS
        for column in range(_COLUMNS):
            used = column < across
            self.grid.setColumnStretch(column, int(used))
            self.grid.setColumnMinimumWidth(column, self.theme.grid(10) if used else 0)
        if across != self._across:
            self._across = across
            for placed in self._placed:
                self._add(placed)

    def _needed(self, across: int) -> int:
        """Pixels that rows of ``across`` need."""
        columns = [self.theme.grid(10)] * across
        for placed in self._placed:
            _, column, span = placed.where(across)
            if span == 1:
                columns[column] = max(columns[column], placed.least)
        gaps = (across - 1) * self.grid.horizontalSpacing()
        whole = [placed.least for placed in self._placed if placed.where(across)[2] == across]
        return max(sum(columns) + gaps, *whole, 0)

    def minimumSizeHint(self) -> QSize:
        return QSize(self._needed(_FEW_COLUMNS), super().minimumSizeHint().height())

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._arrange()


class Note(QPlainTextEdit):
    """Some lines of plain text; saved when they are left. Tab goes on."""

    committed = Signal()

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self._last = ""
        self.setTabChangesFocus(True)
        self.setFixedHeight(theme.grid(7))

    def set_value(self, text: str) -> None:
        """Show a text; emits nothing."""
        if text != self.toPlainText():
            self.setPlainText(text)
        self._last = text

    def focusOutEvent(self, event: object) -> None:
        super().focusOutEvent(event)  # type: ignore[arg-type]
        if self.toPlainText() != self._last:
            self._last = self.toPlainText()
            self.committed.emit()


class PersonFields(Fields):
    """Who trains, when, how and for what."""

    def __init__(self, theme: Theme) -> None:
        super().__init__(theme)
        self.name = TextField("")
        self.birth_year = WholeField("", 1900, 2100)
        self.stature = LengthField("", 250, least_cm=80)
        self.sex = QComboBox()
        self.unit = QComboBox()
        self.experience = QComboBox()
        self.minutes = WholeField("", 10, 300)
        self.weekdays = {index: QCheckBox(words.short_weekday(index)) for index in range(7)}
        self.aims, self.avoid, self.notes = Note(theme), Note(theme), Note(theme)
        self._fill_choices()
        self.name_error = self.place(self.tr("Name"), self.name, 0, 0, 2)
        self.place(self.tr("Year of birth"), self.birth_year, 0, 2)
        self.place(self.tr("Stature cm"), self.stature, 0, 3)
        self.place(self.tr("Sex, for body segments only"), self.sex, 1, 0)
        self.place(self.tr("Unit of loads"), self.unit, 1, 1)
        self.place(self.tr("Experience"), self.experience, 1, 2)
        self.place(self.tr("Minutes a session"), self.minutes, 1, 3)
        self.place(self.tr("Days to train"), self._weekday_row(), 2, 0, 4)
        self.place(self.tr("What for"), self.aims, 3, 0, 2)
        self.place(self.tr("What to avoid"), self.avoid, 3, 2, 2)
        self.place(self.tr("Notes"), self.notes, 4, 0, 4)

    def _fill_choices(self) -> None:
        for value, text in ((Sex.MALE, self.tr("male")), (Sex.FEMALE, self.tr("female"))):
            self.sex.addItem(text, value.value)
        for unit in Unit:
            self.unit.addItem(unit.value, unit.value)
        texts = {
            Experience.NOVICE: self.tr("novice"),
            Experience.INTERMEDIATE: self.tr("intermediate"),
            Experience.ADVANCED: self.tr("advanced"),
        }
        for experience, text in texts.items():
            self.experience.addItem(text, experience.value)
        for box in (self.sex, self.unit, self.experience):
            box.activated.connect(lambda _index: self.edited.emit())

    def _weekday_row(self) -> QWidget:
        line = QWidget()
        row = FlowLayout(line)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(self.theme.grid())
        for index in words.weekdays_in_order():
            self.weekdays[index].setAccessibleName(words.weekday(index))
            self.weekdays[index].clicked.connect(lambda _on: self.edited.emit())
            row.addWidget(self.weekdays[index])
        return line

    def show_trainee(self, trainee: Trainee) -> None:
        """Show a trainee's values; emits nothing."""
        self.name.set_value(trainee.name)
        self.birth_year.set_value(trainee.birth_year)
        self.stature.set_mm(trainee.stature_mm)
        for box, value in (
            (self.sex, trainee.sex),
            (self.unit, trainee.unit),
            (self.experience, trainee.experience),
        ):
            box.setCurrentIndex(box.findData(value.value))
        self.minutes.set_value(trainee.minutes_per_session)
        for index, day in self.weekdays.items():
            day.setChecked(index in trainee.weekdays)
        self.aims.set_value(trainee.aims)
        self.avoid.set_value(trainee.avoid)
        self.notes.set_value(trainee.notes)
        self.name_error.setText("")

    def read_into(self, trainee: Trainee) -> Trainee:
        """``trainee`` with what stands in the fields; a value that is not allowed stays out."""
        return replace(
            trainee,
            name=self.name.text().strip(),
            birth_year=self.birth_year.whole if not self.birth_year.error else trainee.birth_year,
            stature_mm=self.stature.mm if not self.stature.error else trainee.stature_mm,
            sex=Sex(self.sex.currentData()),
            unit=Unit(self.unit.currentData()),
            experience=Experience(self.experience.currentData()),
            minutes_per_session=(
                self.minutes.whole if not self.minutes.error else trainee.minutes_per_session
            ),
            weekdays=tuple(index for index in range(7) if self.weekdays[index].isChecked()),
            aims=self.aims.toPlainText().strip(),
            avoid=self.avoid.toPlainText().strip(),
            notes=self.notes.toPlainText().strip(),
        )


class MassFields(Fields):
    """Body mass on a date, and the last ones entered."""

    def __init__(self, theme: Theme, today: date) -> None:
        super().__init__(theme)
        self.mass = LoadField("", Unit.KG, most_g=400_000)
        self.day = DateField("", today)
        self.day.set_day(today)
        self._known = Label(tone="muted", wrap=True)
        self._caption = self.tr("Body mass {unit}")
        self.place(self._caption.format(unit="kg"), self.mass, 0, 0)
        self.place(self.tr("On"), self.day, 0, 1)
        self.put(_Placed(self._known, 0, 2, 2))

    def set_unit(self, unit: Unit) -> None:
        """Type and show masses in another unit."""
        self.mass.set_unit(unit)
        text = self._caption.format(unit=unit.value)
        self.mass.setAccessibleName(text)
        if (label := self._placed[0].label) is not None:
            label.setText(text)

    def show_masses(self, masses: Sequence[BodyMass], unit: Unit) -> None:
        """Show what was entered before."""
        shown = [
            f"{words.load(entry.mass_g, unit)} ({words.short_day(entry.day)})"
            for entry in reversed(masses[-_SHOWN_MASSES:])
        ]
        self._known.setText(", ".join(shown) or self.tr("none entered yet"))
        if not self.mass.hasFocus():
            self.mass.set_value(None)


class HealthFields(Fields):
    """Screening, consent and a licensed professional's clearances."""

    def __init__(self, theme: Theme, today: date) -> None:
        super().__init__(theme)
        self.screened = DateField("", today)
        self.clear = QComboBox()
        for text, value in (
            (self.tr("not asked yet"), None),
            (self.tr("no to every question"), True),
            (self.tr("a yes: needs clearance"), False),
        ):
            self.clear.addItem(text, value)
        self.clear.activated.connect(lambda _index: self.edited.emit())
        self.consent = DateField("", today)
        self.activities = QCheckBox(self.tr("all recorded here"))
        self.activities.clicked.connect(lambda _on: self.edited.emit())
        self.clearances = RowsEditor(
            self.tr("Clearance"),
            (
                Column(self.tr("licensed professional"), "text", grows=True),
                Column(self.tr("day"), "day"),
                Column(self.tr("what was said"), "text", needed=False, grows=True),
            ),
            theme,
            Unit.KG,
            today,
        )
        self.clearances.edited.connect(self.edited)
        self.place(self.tr("Health screening on"), self.screened, 0, 0)
        self.place(self.tr("Answers"), self.clear, 0, 1)
        self.place(self.tr("Consent on"), self.consent, 0, 2)
        self.place(self.tr("Other activities"), self.activities, 0, 3)
        self.place(self.tr("Clearance by"), self.clearances, 1, 0, 4)

    def show_trainee(self, trainee: Trainee) -> None:
        """Show a trainee's values; emits nothing."""
        self.screened.set_day(trainee.screened)
        answers = (None, True, False)
        self.clear.setCurrentIndex(answers.index(trainee.screening_clear))
        self.consent.set_day(trainee.consent)
        self.activities.setChecked(trainee.activities_recorded)
        self.clearances.set_rows([(each.by, each.day, each.note) for each in trainee.clearances])

    def read_into(self, trainee: Trainee) -> Trainee:
        """``trainee`` with what stands in the fields; a date that cannot be read stays out."""
        return replace(
            trainee,
            screened=trainee.screened if self.screened.error else self.screened.day,
            screening_clear=self.clear.currentData(),
            consent=trainee.consent if self.consent.error else self.consent.day,
            activities_recorded=self.activities.isChecked(),
            clearances=tuple(Clearance(day, by, note) for by, day, note in self.clearances.rows),
        )
