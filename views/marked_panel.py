"""Several slots at once: sets, rest and reserve of all that are marked."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QFrame, QVBoxLayout, QWidget

from desktop.training.program import Slot
from desktop.training.several_slots import SharedEdit, shared_value
from views import words
from views.acting_row import RowAct
from views.blocks import Label
from views.captioned import Captioned, keyed_word
from views.clock_field import ClockField
from views.flow_layout import FieldFlow
from views.number_fields import FieldError, NumberField, WholeField
from views.theme import Theme


class MarkedPanel(QFrame):
    """``edited(SharedEdit, str)`` with the name of the edit; ``acted(RowAct)`` for copying and
    removing; ``closed`` when nothing is to be marked any more.
    """

    edited = Signal(object, str)
    acted = Signal(object)
    closed = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("kind", "block")
        self._theme = theme
        self.count = Label(size="heading")
        self.sets = WholeField(self.tr("Sets of all marked"), 1, 20)
        self.rest = ClockField(self.tr("Rest of all marked"))
        self.reserve = NumberField(self.tr("Reserve of all marked"), 0, 10, decimals=1)
        self.error = FieldError()
        self._fields = (self.sets, self.rest, self.reserve)
        self._assemble()
        names = (self.tr("sets"), self.tr("rest"), self.tr("reserve"))
        for field, name in zip(self._fields, names, strict=True):
            field.bind_error(self.error)
            field.committed.connect(lambda f=field, n=name: self._emit(f, n))
        self.hide()

    def show_slots(self, slots: Sequence[Slot]) -> None:
        """Show what the marked slots share; where they differ a field is empty."""
        self.setVisible(bool(slots))
        if not slots:
            return
        text = self.tr("1 slot marked")
        if len(slots) > 1:
            text = self.tr("{count} slots marked").format(count=words.number(len(slots)))
        self.count.setText(text)
        shared = (
            shared_value(slot.start.sets for slot in slots),
            shared_value(slot.rest_s for slot in slots),
            shared_value(slot.rule.target_rir for slot in slots if slot.start.hold_s is None),
        )
        for field, value in zip(self._fields, shared, strict=True):
            if field.error:
                continue
            field.setPlaceholderText("" if value is not None else self.tr("…"))
            if isinstance(value, float):
                field.set_value(Decimal(repr(value)))
            else:
                field.set_value(value if isinstance(value, int) else None)

    def take_focus(self) -> None:
        """Put the cursor into the first field."""
        self.sets.setFocus(Qt.FocusReason.TabFocusReason)
        self.sets.selectAll()

    def _emit(self, field: NumberField, name: str) -> None:
        if not field.check():
            return
        value = field.value
        number = value if isinstance(value, Decimal) else None
        if field is self.reserve:
            rir = None if number is None else float(number)
            self.edited.emit(SharedEdit(target_rir=rir, no_rir=rir is None), name)
        elif number is not None and field is self.sets:
            self.edited.emit(SharedEdit(sets=int(number)), name)
        elif number is not None:
            self.edited.emit(SharedEdit(rest_s=int(number)), name)

    def _assemble(self) -> None:
        line = QWidget()
        flow = FieldFlow(self._theme.px(12), self._theme.px(6), line)
        flow.addWidget(self.count)
        for caption, field, width in (
            (self.tr("Sets"), self.sets, 56),
            (self.tr("Rest"), self.rest, 56),
            (self.tr("In reserve"), self.reserve, 64),
        ):
            flow.addWidget(Captioned(self._theme, caption, field, width))
        for text, key, act in (
            (self.tr("Copy"), "Ctrl+C", RowAct.COPY),
            (self.tr("Remove"), "Delete", RowAct.REMOVE),
        ):
            button = keyed_word(text, key)
            button.clicked.connect(lambda _on=False, act=act: self.acted.emit(act))
            flow.addWidget(button)
        close = keyed_word(self.tr("Unmark"), "Esc", tone="")
        close.clicked.connect(self.closed)
        flow.addWidget(close)
        column = QVBoxLayout(self)
        inside = self._theme.grid(2)
        column.setContentsMargins(inside, self._theme.px(8), inside, self._theme.px(4))
        column.setSpacing(self._theme.px(2))
        column.addWidget(line)
        column.addWidget(self.error)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self.closed.emit()
        else:
            super().keyPressEvent(event)
