"""What a trainee can use, typed in rows: bars, discs, dumbbells, boxes and the rest."""

from __future__ import annotations

from collections import Counter
from datetime import date
from typing import Any

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QCheckBox, QGridLayout, QVBoxLayout, QWidget

from desktop.training.equipment import (
    AdjustableDumbbell,
    Band,
    Bar,
    Discs,
    Equipment,
    Height,
    Place,
    Stack,
)
from desktop.training.quantities import Unit
from views.blocks import OneLine
from views.flow_layout import FlowLayout
from views.number_fields import LoadField
from views.rows_editor import Column, RowsEditor
from views.theme import Theme

_ACROSS = 2
_NARROW = 2


class EquipmentEditor(QWidget):
    """Shows and takes an `Equipment`; ``edited`` after each change that counts."""

    edited = Signal()

    def __init__(
        self, theme: Theme, unit: Unit, today: date, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._theme, self._unit, self._today = theme, unit, today
        self._next = 0
        self._more_adjustable: tuple[AdjustableDumbbell, ...] = ()
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setHorizontalSpacing(theme.grid(3))
        self._grid.setVerticalSpacing(theme.grid(2))
        for column in range(_ACROSS):
            self._grid.setColumnStretch(column, 1)
        self.lists = {key: self._list(title, columns) for key, title, columns in self._kinds()}
        self.collars = LoadField(self.tr("Collars of a bar, both"), unit)
        self.collars.setMaximumWidth(theme.grid(9))
        self.collars.committed.connect(self.edited)
        self._put(self.tr("Collars of a bar, both, {unit}").format(unit=unit.value), self.collars)
        self.places = self._places()

    def set_equipment(self, equipment: Equipment) -> None:
        """Show other equipment; emits nothing."""
        adjustable = equipment.adjustable[0] if equipment.adjustable else None
        self._more_adjustable = equipment.adjustable[1:]
        rows: dict[str, list[tuple[Any, ...]]] = {
            "bars": [(bar.name, bar.mass_g) for bar in equipment.bars],
            "discs": [(each.mass_g, each.count) for each in equipment.discs],
            "dumbbells": _counted(equipment.dumbbells_g),
            "handles": [(adjustable.handle_g, adjustable.handles)] if adjustable else [],
            "handle discs": [(d.mass_g, d.count) for d in adjustable.discs] if adjustable else [],
            "kettlebells": _counted(equipment.kettlebells_g),
            "stacks": [
                (each.name, each.first_g, each.step_g, each.last_g, each.half_step_g or None)
                for each in equipment.stacks
            ],
            "vest": [(mass,) for mass in equipment.vest_g],
            "assistance": [(mass,) for mass in equipment.assistance_g],
            "bands": [
                (b.name, b.short_mm, b.short_g, b.long_mm, b.long_g) for b in equipment.bands
            ],
            "boxes": [(each.name, each.height_mm) for each in equipment.boxes],
            "bar heights": [(each.name, each.height_mm) for each in equipment.bar_heights],
        }
        for key, editor in self.lists.items():
            editor.set_rows(rows[key])
        self.collars.set_grams(equipment.collars_g or None)
        for place, box in self.places.items():
            box.blockSignals(True)
            box.setChecked(place in equipment.places)
            box.blockSignals(False)

    def equipment(self) -> Equipment:
        """What stands in the rows."""
        rows = {key: editor.rows for key, editor in self.lists.items()}
        handle_discs = tuple(Discs(mass, count) for mass, count in rows["handle discs"])
        return Equipment(
            bars=tuple(Bar(name, mass) for name, mass in rows["bars"]),
            discs=tuple(Discs(mass, count) for mass, count in rows["discs"]),
            collars_g=self.collars.grams or 0,
            dumbbells_g=_each(rows["dumbbells"]),
            adjustable=(
                *(AdjustableDumbbell(mass, count, handle_discs) for mass, count in rows["handles"]),
                *self._more_adjustable,
            ),
            kettlebells_g=_each(rows["kettlebells"]),
            stacks=tuple(
                Stack(name, first, step, last, half or 0)
                for name, first, step, last, half in rows["stacks"]
            ),
            vest_g=tuple(sorted(mass for (mass,) in rows["vest"])),
            assistance_g=tuple(sorted(mass for (mass,) in rows["assistance"])),
            bands=tuple(Band(*row) for row in rows["bands"]),
            boxes=tuple(Height(name, height) for name, height in rows["boxes"]),
            bar_heights=tuple(Height(name, height) for name, height in rows["bar heights"]),
            places=tuple(place for place, box in self.places.items() if box.isChecked()),
        )

    def _kinds(self) -> list[tuple[str, str, tuple[Column, ...]]]:
        each = (Column(self.tr("each"), "load"), Column(self.tr("how many"), "whole"))
        named = (Column(self.tr("name"), "text"), Column(self.tr("height"), "length"))
        mass = (Column(self.tr("mass"), "load"),)
        return [
            ("bars", self.tr("Bars"), (Column(self.tr("name"), "text"), *mass)),
            ("discs", self.tr("Discs (not pairs)"), each),
            ("dumbbells", self.tr("Dumbbells"), each),
            ("handles", self.tr("Dumbbell handles to load"), each),
            ("handle discs", self.tr("Discs for the handles"), each),
            ("kettlebells", self.tr("Kettlebells"), each),
            (
                "stacks",
                self.tr("Machines with a stack"),
                (
                    Column(self.tr("name"), "text"),
                    Column(self.tr("first"), "load"),
                    Column(self.tr("step"), "load"),
                    Column(self.tr("last"), "load"),
                    Column(self.tr("half step"), "load", needed=False),
                ),
            ),
            ("vest", self.tr("Vest or belt, loads"), mass),
            ("assistance", self.tr("Help of a machine"), mass),
            (
                "bands",
                self.tr("Bands, measured twice"),
                (
                    Column(self.tr("name"), "text"),
                    Column(self.tr("short"), "length"),
                    Column(self.tr("pull"), "load"),
                    Column(self.tr("long"), "length"),
                    Column(self.tr("pull"), "load"),
                ),
            ),
            ("boxes", self.tr("Boxes, chairs, stairs"), named),
            ("bar heights", self.tr("Bars to row under"), named),
        ]

    def _list(self, title: str, columns: tuple[Column, ...]) -> RowsEditor:
        editor = RowsEditor(title, columns, self._theme, self._unit, self._today)
        editor.edited.connect(self.edited)
        self._put(title, editor, across=_ACROSS if len(columns) > _NARROW else 1)
        return editor

    def _put(self, title: str, editor: QWidget, *, across: int = 1) -> None:
        """Under its title in the next free place, two beside each other where they are narrow."""
        if self._next % _ACROSS and across > 1:
            self._next += 1
        group = QWidget()
        column = QVBoxLayout(group)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(self._theme.px(2))
        column.addWidget(OneLine(title))
        column.addWidget(editor)
        column.addStretch(1)
        row, place = divmod(self._next, _ACROSS)
        self._grid.addWidget(group, row, place, 1, across)
        self._next += across

    def _places(self) -> dict[Place, QCheckBox]:
        texts = {
            Place.BAR: self.tr("bar to hang on"),
            Place.LOW_BAR: self.tr("low bar"),
            Place.RINGS: self.tr("rings"),
            Place.STRAPS: self.tr("straps"),
            Place.PARALLEL_BARS: self.tr("parallel bars"),
            Place.BENCH: self.tr("bench"),
            Place.WALL: self.tr("wall"),
        }
        group = QWidget()
        flow = FlowLayout(group)
        flow.setContentsMargins(0, 0, 0, 0)
        flow.setSpacing(self._theme.grid())
        flow.line_gap = self._theme.px(4)
        boxes: dict[Place, QCheckBox] = {}
        for place, text in texts.items():
            boxes[place] = QCheckBox(text)
            boxes[place].toggled.connect(lambda _on: self.edited.emit())
            flow.addWidget(boxes[place])
        self._put(self.tr("There is also"), group, across=_ACROSS)
        return boxes


def _counted(masses: tuple[int, ...]) -> list[tuple[Any, ...]]:
    return sorted(Counter(masses).items())


def _each(rows: tuple[tuple[Any, ...], ...]) -> tuple[int, ...]:
    return tuple(sorted(mass for mass, count in rows for _ in range(count)))
