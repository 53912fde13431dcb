"""Floors of their own for single variations, beneath the range that they belong to."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from desktop.training.position import VariableRange
from views import words
from views.blocks import Label, WordButton
from views.flow_layout import FieldFlow
from views.number_fields import FieldError, WholeField
from views.range_row import RuleScene
from views.theme import Theme


class FloorsRow(QWidget):
    """One field a variation; empty ones take the floor of the range. ``edited`` and ``typed``.

    The fields are shown on demand, or where one of them is filled.
    """

    edited = Signal()
    typed = Signal()

    def __init__(
        self, theme: Theme, ranged: VariableRange, scene: RuleScene, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._theme = theme
        self.error = FieldError()
        self.fields: dict[str, WholeField] = {}
        self.open = WordButton(self.tr("Another floor for single variations"), tone="muted")
        self._all = QWidget()
        self._assemble(scene)
        self.open.clicked.connect(self._show_all)
        theme.changed.connect(self._space)
        self._space()
        self.show_range(ranged)

    def show_range(self, ranged: VariableRange) -> None:
        """Show a range's floors."""
        floors = dict(ranged.floors)
        for key, field in self.fields.items():
            if not field.error:
                field.set_value(floors.get(key))
            field.setPlaceholderText(words.number(ranged.floor or 1))
        known = any(key in floors for key in self.fields)
        if known:
            self._show_all()

    def read(self, before: VariableRange) -> tuple[tuple[str, int], ...] | None:
        """The floors as they stand; None where one is wrong. Floors of variations that cannot be
        set up here stay.
        """
        if not all(field.check() for field in self.fields.values()):
            return None
        kept = [(key, floor) for key, floor in before.floors if key not in self.fields]
        typed = [
            (key, field.whole) for key, field in self.fields.items() if field.whole is not None
        ]
        return (*typed, *kept)

    def _assemble(self, scene: RuleScene) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(self._theme.px(2))
        column.addWidget(self.open)
        column.addWidget(self._all)
        column.addWidget(self.error)
        flow = FieldFlow(self._theme.px(14), self._theme.px(4), self._all, centred=True)
        flow.addWidget(Label(self.tr("Begins at"), "small", "muted"))
        for key, name in scene.variations:
            field = WholeField(self.tr("Floor at {name}").format(name=name), 1, 999)
            field.bind_error(self.error)
            field.committed.connect(self.edited)
            field.textEdited.connect(lambda _text: self.typed.emit())
            self.fields[key] = field
            part = QWidget()
            row = QHBoxLayout(part)
            row.setContentsMargins(0, 0, 0, 0)
            row.setSpacing(self._theme.px(6))
            row.addWidget(field)
            row.addWidget(Label(name, "small", "muted"))
            flow.addWidget(part)
        self._all.hide()

    def _show_all(self) -> None:
        self.open.hide()
        self._all.show()

    def _space(self) -> None:
        for field in self.fields.values():
            field.setFixedWidth(self._theme.px(44))
