"""A field for a date: as the locale writes it, or as year-month-day."""

from __future__ import annotations

from datetime import date

from PySide6.QtCore import QCoreApplication, QLocale, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QLineEdit, QWidget

from views import words
from views.blocks import restyle
from views.number_fields import FieldError

translate = QCoreApplication.translate


class DateField(QLineEdit):
    """One date, typed. Empty is None. ``committed`` as for `NumberField`."""

    committed = Signal()
    error_changed = Signal(str)

    def __init__(self, name: str, today: date, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._today = today
        self._last: date | None = None
        self._error = ""
        self.setAccessibleName(name)
        self.setPlaceholderText(words.full_day(today))
        self.editingFinished.connect(self._finish)
        self.textEdited.connect(lambda _text: self.check() if self._error else None)

    @property
    def day(self) -> date | None:
        """The date; None for empty or not readable."""
        return read_day(self.text(), self._today)

    @property
    def error(self) -> str:
        """What is wrong; "" when all is well."""
        return self._error

    def set_day(self, day: date | None) -> None:
        """Show a date; emits nothing."""
        self._last = day
        self.setText("" if day is None else words.full_day(day))
        self._show_error("")

    def bind_error(self, label: FieldError) -> None:
        """Show what is wrong in ``label``."""
        self.error_changed.connect(label.setText)

    def check(self) -> bool:
        """Whether a date or nothing stands; if not, says beside the field what is allowed."""
        wrong = bool(self.text().strip()) and self.day is None
        text = translate("Dates", "Not a date: write it like {example} or {iso}.")
        example = words.full_day(self._today)
        iso = self._today.isoformat()
        self._show_error(text.format(example=example, iso=iso) if wrong else "")
        return not wrong

    def _finish(self) -> None:
        if not self.check():
            return
        day = self.day
        self.setText("" if day is None else words.full_day(day))
        if day != self._last:
            self._last = day
            self.committed.emit()

    def _show_error(self, text: str) -> None:
        if text == self._error:
            return
        self._error = text
        self.setProperty("wrong", "true" if text else "false")
        self.setAccessibleDescription(text)
        restyle(self)
        self.error_changed.emit(text)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        super().keyPressEvent(event)
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and not event.modifiers() & (
            Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier
        ):
            if not self._error:
                self.focusNextChild()
            event.accept()


def read_day(text: str, today: date) -> date | None:
    """The date that ``text`` stands for: ISO, or in the locale's short order with the year in
    four digits, two (of this century) or left out (of this year).
    """
    plain = text.strip()
    if not plain:
        return None
    try:
        return date.fromisoformat(plain)
    except ValueError:
        pass
    order = [
        letter
        for letter in QLocale().dateFormat(QLocale.FormatType.ShortFormat).lower()
        if letter in "dmy"
    ]
    order = list(dict.fromkeys(order))
    parts = "".join(c if c.isdigit() else " " for c in plain).split()
    if any(not (c.isdigit() or c in "./- ") for c in plain):
        return None
    if len(parts) == 2:
        order.remove("y")
    if len(parts) != len(order):
        return None
    values = {"y": today.year, **dict(zip(order, map(int, parts), strict=True))}
    year = values["y"] + 2000 if values["y"] < 100 else values["y"]
    try:
        return date(year, values["m"], values["d"])
    except ValueError:
        return None
