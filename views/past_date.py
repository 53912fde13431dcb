"""A panel that asks for a day on which something was done: today at the latest."""

from __future__ import annotations

from datetime import date

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QWidget

from views.blocks import OneLine, WordButton
from views.date_field import DateField
from views.number_fields import FieldError
from views.theme import Theme


class PastDate(QFrame):
    """``chosen(date)`` or ``given_up`` ends it, both hide it."""

    chosen = Signal(object)
    given_up = Signal()

    def __init__(self, theme: Theme, today: date, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme, self._today = theme, today
        self.setProperty("kind", "block")
        self.field = _DayEntry(self.tr("The day on which it was done"), today)
        self.wrong = FieldError()
        self.field.bind_error(self.wrong)
        leave = WordButton(self.tr("Leave"), tone="muted")
        self._row = QHBoxLayout(self)
        self._row.addWidget(OneLine(self.tr("On which day was it done?"), "heading"))
        self._row.addWidget(self.field)
        self._row.addWidget(self.wrong, 1)
        self._row.addWidget(leave)
        self.field.entered.connect(self._take)
        self.field.left.connect(self.give_up)
        leave.clicked.connect(self.give_up)
        theme.changed.connect(self._space)
        self._space()
        self.hide()

    def ask(self, day: date) -> None:
        """Ask, beginning with ``day``."""
        self.field.set_day(day)
        self.wrong.setText("")
        self.show()
        self.field.setFocus(Qt.FocusReason.ShortcutFocusReason)
        self.field.selectAll()

    def give_up(self) -> None:
        """Leave without a day."""
        self.hide()
        self.given_up.emit()

    def _take(self) -> None:
        day = self.field.day
        if not self.field.check() or day is None:
            return
        if day > self._today:
            self.wrong.setText(self.tr("This day has not come yet: today at the latest."))
            return
        self.hide()
        self.chosen.emit(day)

    def _space(self) -> None:
        px = self._theme.px
        self._row.setContentsMargins(px(16), px(10), px(10), px(10))
        self._row.setSpacing(px(12))
        self.field.setFixedWidth(self._theme.grid(16))


class _DayEntry(DateField):
    """The field, which says when Return or Escape ends it."""

    entered = Signal()
    left = Signal()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.entered.emit()
        elif event.key() == Qt.Key.Key_Escape:
            self.left.emit()
        else:
            super().keyPressEvent(event)
