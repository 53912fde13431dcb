"""A short list typed in rows: one empty row always waits at the end, an emptied row is gone."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import date
from typing import Any

from PySide6.QtCore import QObject, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QGridLayout, QLineEdit, QWidget

from desktop.training.quantities import Unit
from views.blocks import OneLine
from views.date_field import DateField
from views.number_fields import FieldError, LengthField, LoadField, WholeField
from views.theme import Theme


class TextField(QLineEdit):
    """One line of plain text; Return goes to the next field."""

    committed = Signal()

    def __init__(self, name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._last = ""
        self.setAccessibleName(name)
        self.editingFinished.connect(self._finish)

    def set_value(self, text: str) -> None:
        """Show a text; emits nothing."""
        self._last = text
        self.setText(text)

    def _finish(self) -> None:
        if self.text().strip() != self._last:
            self._last = self.text().strip()
            self.committed.emit()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        super().keyPressEvent(event)
        held = event.modifiers() & Qt.KeyboardModifier.ControlModifier
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and not held:
            if self.hasFocus():  # it may have ended what was typed
                self.focusNextChild()
            event.accept()


@dataclass(frozen=True, slots=True)
class Column:
    """One column: its heading, and what stands in it: "text", "load", "whole", "length" or
    "day".

    ``needed`` columns must be filled before the row counts; those that ``grows`` take the room
    that is left.
    """

    heading: str
    holds: str
    needed: bool = True
    preset: Any = None
    grows: bool = False


class RowsEditor(QWidget):
    """Rows of fields under headings. ``edited`` when the rows that count have changed.

    `rows` are tuples in the order of the columns: text, grams, whole numbers, millimetres,
    dates.
    """

    edited = Signal()

    def __init__(
        self,
        name: str,
        columns: Sequence[Column],
        theme: Theme,
        unit: Unit,
        today: date,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._today = today
        self._name, self._columns, self._theme, self._unit = name, tuple(columns), theme, unit
        self.fields: list[tuple[Any, ...]] = []
        self._known: tuple[tuple[Any, ...], ...] = ()
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setHorizontalSpacing(theme.grid())
        self._grid.setVerticalSpacing(theme.px(4))
        for place, column in enumerate(self._columns):
            heading = column.heading
            if column.holds == "load":
                heading = f"{heading} {unit.value}"
            if column.holds == "length":
                heading = f"{heading} cm"
            caption = OneLine(heading, "small", "muted")
            self._grid.addWidget(caption, 0, place, Qt.AlignmentFlag.AlignBottom)
            self._grid.setColumnStretch(place, 2 if column.grows else 0)
        self._error = FieldError()
        self._grid.addWidget(self._error, 0, len(self._columns))
        self._grid.setColumnStretch(len(self._columns), 1)
        self._add_row()

    @property
    def rows(self) -> tuple[tuple[Any, ...], ...]:
        """The rows in which everything needed stands."""
        read = [self._values(fields) for fields in self.fields]
        return tuple(
            row
            for row in read
            if all(
                value not in (None, "") or not column.needed
                for value, column in zip(row, self._columns, strict=True)
            )
        )

    def set_rows(self, rows: Sequence[tuple[Any, ...]]) -> None:
        """Show other rows; emits nothing. Fields stay where the same rows stand already."""
        wanted = tuple(tuple(row) for row in rows)
        if wanted == self._known and wanted == self.rows:
            return
        self._known = wanted
        while len(self.fields) <= len(wanted):
            self._add_row()
        for fields, row in zip(self.fields, wanted, strict=False):
            for field, value in zip(fields, row, strict=True):
                _show(field, value)
        for fields in self.fields[len(wanted) :]:
            for field, column in zip(fields, self._columns, strict=True):
                _show(field, column.preset if column.preset is not None else None)
        self._hide_spare(len(wanted) + 1)

    def _values(self, fields: tuple[Any, ...]) -> tuple[Any, ...]:
        return tuple(_read(field) for field in fields)

    def _add_row(self) -> None:
        row = len(self.fields) + 1
        fields = tuple(self._field(column, row) for column in self._columns)
        for place, field in enumerate(fields):
            field.setMinimumWidth(
                self._theme.grid(7 if self._columns[place].holds != "text" else 12)
            )
            self._grid.addWidget(field, row, place)
            if self._columns[place].preset is not None:
                _show(field, self._columns[place].preset)
            field.committed.connect(self._changed)
            field.textEdited.connect(self._grow)
            if not isinstance(field, TextField):
                field.bind_error(self._error)
        self.fields.append(fields)

    def _field(self, column: Column, row: int) -> Any:
        name = f"{self._name}, {column.heading}, {row}"
        makers: dict[str, Callable[[], QObject]] = {
            "text": lambda: TextField(name),
            "load": lambda: LoadField(name, self._unit),
            "whole": lambda: WholeField(name, 1, 999),
            "length": lambda: LengthField(name),
            "day": lambda: DateField(name, self._today),
        }
        return makers[column.holds]()

    def _grow(self) -> None:
        if any(field.text() for field in self._spare_fields(self.fields[-1])):
            self._add_row()
        self._hide_spare(self._filled() + 1)

    def _spare_fields(self, fields: tuple[Any, ...]) -> list[Any]:
        """The fields of a row that are empty unless somebody typed."""
        pairs = zip(fields, self._columns, strict=True)
        return [field for field, column in pairs if column.preset is None]

    def _filled(self) -> int:
        filled = [
            place
            for place, fields in enumerate(self.fields, start=1)
            if any(field.text() for field in self._spare_fields(fields))
        ]
        return max(filled, default=0)

    def _hide_spare(self, shown: int) -> None:
        for place, fields in enumerate(self.fields):
            for field in fields:
                field.setVisible(place < shown)

    def _changed(self) -> None:
        rows = self.rows
        if rows != self._known:
            self._known = rows
            self.edited.emit()


def _show(field: Any, value: Any) -> None:
    if isinstance(field, TextField):
        field.set_value(value or "")
    elif isinstance(field, LoadField):
        field.set_grams(value)
    elif isinstance(field, LengthField):
        field.set_mm(value)
    elif isinstance(field, DateField):
        field.set_day(value)
    else:
        field.set_value(value)


def _read(field: Any) -> Any:
    if isinstance(field, TextField):
        return field.text().strip()
    if isinstance(field, LoadField):
        return field.grams
    if isinstance(field, LengthField):
        return field.mm
    if isinstance(field, DateField):
        return field.day
    return field.whole
