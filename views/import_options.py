"""How a table is written: sheet, mapping, whose lines, unit, decimal mark, order of dates."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import Any

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QLineEdit, QWidget

from desktop.planning.arriving_files import ArrivingTable
from desktop.training.quantities import Unit
from desktop.training.table_mapping import DateOrder, DecimalMark, Role, TableMapping
from views.captioned import Captioned, ChoiceBox
from views.flow_layout import FlowLayout
from views.theme import Theme


class ImportOptions(QWidget):
    """``changed(TableMapping)`` when the table is to be read otherwise; ``sheet_wanted(name)``;
    ``person_wanted`` where somebody who is not on the roster yet did all of it.
    """

    changed = Signal(object)
    sheet_wanted = Signal(str)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._mapping = TableMapping()
        self._kept: dict[str, TableMapping] = {}
        self._flow = FlowLayout(self)
        self._flow.setContentsMargins(0, 0, 0, 0)
        self.sheet = self._box(self.tr("Sheet"), 130)
        self.kept = self._box(self.tr("Mapping"), 150)
        self.trainee = self._box(self.tr("All lines are of"), 150)
        self.unit = self._box(self.tr("Loads without a unit"), 110)
        self.mark = self._box(self.tr("Decimal mark"), 110)
        self.order = self._box(self.tr("Dates"), 140)
        self.down = self._box(self.tr("Blank date or exercise"), 150)
        self.name = QLineEdit()
        self.name.setAccessibleName(self.tr("Keep this mapping as"))
        self.name.setPlaceholderText(self.tr("not kept"))
        self.name.setMaxLength(60)
        self._name = Captioned(theme, self.tr("Keep this mapping as"), self.name, 170)
        self._flow.addWidget(self._name)
        self._connect()
        theme.changed.connect(self._space)
        self._space()

    def _box(self, caption: str, width: int) -> ChoiceBox:
        box = ChoiceBox(caption)
        box.setSizeAdjustPolicy(ChoiceBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self._flow.addWidget(Captioned(self._theme, caption, box, width))
        return box

    def _connect(self) -> None:
        self.sheet.picked.connect(lambda: self.sheet_wanted.emit(str(self.sheet.choice)))
        self.kept.picked.connect(self._kept_picked)
        self.trainee.picked.connect(lambda: self._say(trainee=self.trainee.choice))
        self.unit.picked.connect(lambda: self._say(unit=self.unit.choice))
        self.mark.picked.connect(lambda: self._say(decimal_mark=self.mark.choice))
        self.order.picked.connect(lambda: self._say(date_order=self.order.choice))
        self.down.picked.connect(lambda: self._say(fill_down=self.down.choice))

    def _say(self, **said: Any) -> None:
        self._mapping = replace(self._mapping, **said)
        self.changed.emit(self._mapping)

    def _kept_picked(self) -> None:
        chosen = self._kept.get(str(self.kept.choice))
        if chosen is not None:
            self.name.setText(chosen.name)
            self.changed.emit(chosen)

    def show_options(
        self, arriving: ArrivingTable, guess: TableMapping, people: Sequence[str]
    ) -> None:
        """Show how a table is read; ``guess`` is what was guessed at first, ``people`` the names
        on the roster.
        """
        mapping = self._mapping = arriving.mapping
        table, own = arriving.table, arriving.own
        self._offer(self.sheet, [(name, name) for name in table.sheets], table.sheet)
        self._kept = {each.name: each for each in arriving.kept}
        kept: list[tuple[Any, str]] = [(each.name, each.name) for each in arriving.kept]
        self._kept[""] = guess
        if kept:
            kept.append(("", self.tr("as guessed")))
        self._offer(self.kept, kept, mapping.name)
        somebody = own or Role.TRAINEE in mapping.roles
        whose: list[tuple[Any, str]] = [("", self.tr("who?"))]
        whose += [(name, name) for name in people]
        if mapping.trainee and mapping.trainee not in people:
            whose.append((mapping.trainee, mapping.trainee))
        self._offer(self.trainee, [] if somebody else whose, mapping.trainee)
        units: list[tuple[Any, str]] = [(Unit.KG, "kg"), (Unit.LB, "lb")]
        if own:
            units.insert(0, (None, self.tr("refused")))
        elif mapping.unit is None:
            units.insert(0, (None, self.tr("kg or lb?")))
        loads = own or Role.LOAD in mapping.roles or Role.BODY_MASS in mapping.roles
        self._offer(self.unit, units if loads else [], mapping.unit)
        marks: list[tuple[DecimalMark, str]] = [
            ("", self.tr("either")), (".", self.tr("point")), (",", self.tr("comma")),
        ]  # fmt: skip
        self._offer(self.mark, [] if own else list(marks), mapping.decimal_mark)
        orders: list[tuple[DateOrder, str]] = [
            ("", self.tr("as written")),
            ("day first", self.tr("day first")),
            ("month first", self.tr("month first")),
        ]
        self._offer(self.order, list(orders), mapping.date_order)
        downs = [(False, self.tr("is missing")), (True, self.tr("as the line above"))]
        self._offer(self.down, [] if own else list(downs), mapping.fill_down)
        self._name.setVisible(not own)

    def _offer(self, box: ChoiceBox, choices: Sequence[tuple[Any, str]], chosen: Any) -> None:
        """Offer choices; a box with fewer than two is not shown."""
        captioned = box.parentWidget()
        if captioned is not None:
            captioned.setVisible(len(choices) > 1)
        box.offer(choices, chosen)

    def _space(self) -> None:
        self._flow.setSpacing(self._theme.grid(2))
        self._flow.line_gap = self._theme.grid()
        self._flow.invalidate()
