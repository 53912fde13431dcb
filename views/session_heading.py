"""The head of the session form: which day, what it belongs to, and the way to other days."""

from __future__ import annotations

from datetime import date

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QFocusEvent
from PySide6.QtWidgets import QHBoxLayout, QSizePolicy, QWidget

from views import words
from views.blocks import Label, WordButton
from views.callout import Callout
from views.date_field import DateField
from views.elided_label import ElidedLabel
from views.flow_layout import FlowLayout
from views.key_word import KeyWord
from views.theme import Theme

_QUIET = Qt.FocusPolicy.NoFocus


class SessionHeading(QWidget):
    """``day_wanted(date)`` from the field; ``stepped(days)`` from the arrows; ``all_as_asked``."""

    day_wanted = Signal(object)
    stepped = Signal(int)
    all_as_asked = Signal()

    def __init__(self, theme: Theme, today: date, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme, self._today = theme, today
        self.title = Label("", "title")
        self.detail = ElidedLabel(tone="muted")
        self.field = _DayField(self.tr("Day of the session"), today)
        self.today = WordButton(self.tr("Today"), tone="muted")
        self.today.setToolTip(self.tr("Today: Alt+Home"))
        self.all = KeyWord(self.tr("All as asked"), "F9")
        earlier = WordButton("\N{SINGLE LEFT-POINTING ANGLE QUOTATION MARK}")
        later = WordButton("\N{SINGLE RIGHT-POINTING ANGLE QUOTATION MARK}")
        for button, days, name in (
            (earlier, -1, self.tr("Previous day")),
            (later, 1, self.tr("Next day")),
        ):
            button.setAccessibleName(name)
            button.setFocusPolicy(_QUIET)
            button.clicked.connect(lambda _checked=False, step=days: self.stepped.emit(step))
        earlier.setToolTip(self.tr("Previous day: Alt+Page Up. Training day: Ctrl+Page Up"))
        later.setToolTip(self.tr("Next day: Alt+Page Down. Training day: Ctrl+Page Down"))
        said, way = QWidget(), QWidget()
        self._said_row, self._way_row = QHBoxLayout(said), QHBoxLayout(way)
        self._said_row.addWidget(self.title)
        self._said_row.addWidget(self.detail, 1)
        for widget in (earlier, self.field, later, self.today, self.all):
            self._way_row.addWidget(widget)
        for row in (self._said_row, self._way_row):
            row.setContentsMargins(0, 0, 0, 0)
        said.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Preferred)
        way.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        self._row = FlowLayout(self)
        self._row.setContentsMargins(0, 0, 0, 0)
        self._row.addWidget(said)
        self._row.addWidget(way)
        self.today.setFocusPolicy(_QUIET)
        self.all.setFocusPolicy(_QUIET)
        self.today.clicked.connect(lambda: self.day_wanted.emit(self._today))
        self.all.clicked.connect(self.all_as_asked)
        self.field.committed.connect(self._committed)
        self.field.error_changed.connect(lambda _text: self._say())
        self.field.focused.connect(self._say)
        theme.changed.connect(self._space)
        self._callout: Callout | None = None
        self._space()

    def show_day(self, day: date, detail: str, *, can_fill: bool) -> None:
        """Show a day and what it belongs to."""
        title = words.long_day(day)
        if day.year != self._today.year:
            title = f"{title} {day.year}"
        self.title.setText(title)
        self.detail.say(detail)
        self.field.set_day(day)
        self.today.setEnabled(day != self._today)
        self.all.setEnabled(can_fill)

    def go_to_field(self) -> None:
        """Put the cursor into the field for the day."""
        self.field.setFocus(Qt.FocusReason.ShortcutFocusReason)

    def refuse(self, why: str) -> None:
        """Say beside the field why the day cannot be taken."""
        self.go_to_field()
        self._said().say(self.field, why)

    def _committed(self) -> None:
        day = self.field.day
        if day is not None:
            self.day_wanted.emit(day)

    def _say(self) -> None:
        self._said().say(self.field, self.field.error if self.field.hasFocus() else "")

    def _said(self) -> Callout:
        if self._callout is None:
            self._callout = Callout(self._theme, self.window())
        return self._callout

    def _space(self) -> None:
        self._row.setSpacing(self._theme.grid())
        self._row.line_gap = self._theme.px(4)
        self._said_row.setSpacing(self._theme.grid(3))
        self._way_row.setSpacing(self._theme.px(4))
        wide = self.field.fontMetrics().horizontalAdvance(words.full_day(self._today))
        self.field.setFixedWidth(wide + self._theme.px(26))


class _DayField(DateField):
    """The field for the day, which tells when the focus comes and goes."""

    focused = Signal()

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        self.selectAll()
        self.focused.emit()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        self.focused.emit()
