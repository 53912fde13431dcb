"""The ranges of a rule as rows: what grows, in which order."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QWidget

from desktop.training.position import InvalidRule, Variable, VariableRange
from views import words
from views.blocks import Label
from views.floors_row import FloorsRow
from views.range_row import NAME_WIDTH, NUMBER_WIDTH, THEN_WIDTH, RangeRow, RuleScene, between
from views.theme import Theme


class RangeRows(QWidget):
    """All ranges of a rule, fastest first, under their headings. ``edited`` and ``typed``."""

    edited = Signal()
    typed = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._scene: RuleScene | None = None
        self.rows: list[RangeRow] = []
        self.floors: dict[Variable, FloorsRow] = {}
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setVerticalSpacing(theme.px(3))

    def show_ranges(self, ranges: Sequence[VariableRange], scene: RuleScene) -> None:
        """Show ranges; rows of the same variables in the same order stay as they are."""
        same = [row.variable for row in self.rows] == [each.variable for each in ranges]
        if not same or scene != self._scene:
            self._build(ranges, scene)
        else:
            for row, ranged in zip(self.rows, ranges, strict=True):
                row.show_range(ranged)
                if (floors := self.floors.get(row.variable)) is not None:
                    floors.show_range(ranged)

    def read(self) -> tuple[VariableRange, ...] | None:
        """The ranges as they stand; None where one of them is wrong."""
        last = len(self.rows) - 1
        read = [self._read(row, slowest=place == last) for place, row in enumerate(self.rows)]
        made = tuple(each for each in read if each is not None)
        return made if len(made) == len(read) else None

    def _read(self, row: RangeRow, *, slowest: bool) -> VariableRange | None:
        """A range with the floors that stand beneath it."""
        ranged, below = row.read(slowest=slowest), self.floors.get(row.variable)
        if ranged is None or below is None:
            return ranged
        floors = below.read(ranged)
        if floors is None:
            return None
        try:
            return replace(ranged, floors=floors)
        except InvalidRule:
            below.error.setText(
                self.tr("A floor lies above to {ceiling}: allowed is up to that.").format(
                    ceiling=words.number(ranged.ceiling or 0)
                )
            )
            return None

    def add(self, ranged: VariableRange) -> None:
        """Let one more variable grow: before the load or the variation, which are slowest."""
        ranges = [row.range for row in self.rows]
        slow = (Variable.LOAD, Variable.VARIATION)
        at = len(ranges)
        if ranged.variable not in slow:
            at = next((n for n, each in enumerate(ranges) if each.variable in slow), at)
        ranges.insert(at, ranged)
        self._rebuild(ranges)
        self.rows[at].take_focus()

    def _move(self, place: int, by: int) -> None:
        to = place + by
        if not 0 <= to < len(self.rows):
            return
        ranges = [row.read(slowest=True) or row.range for row in self.rows]
        ranges[place], ranges[to] = ranges[to], ranges[place]
        self._rebuild(ranges)
        self.rows[to].take_focus()

    def _remove(self, place: int) -> None:
        ranges = [row.range for row in self.rows]
        del ranges[place]
        self._rebuild(ranges)
        if self.rows:
            self.rows[min(place, len(self.rows) - 1)].take_focus()

    def _rebuild(self, ranges: Sequence[VariableRange]) -> None:
        if self._scene is not None:
            self._build(ranges, self._scene)
            self.edited.emit()

    def _build(self, ranges: Sequence[VariableRange], scene: RuleScene) -> None:
        self._scene = scene
        while (item := self._grid.takeAt(0)) is not None:
            if (widget := item.widget()) is not None:
                widget.hide()
                widget.setParent(None)
                widget.deleteLater()
        self.rows, self.floors = [], {}
        varied = any(each.variable is Variable.VARIATION for each in ranges)
        if ranges:
            self._grid.addWidget(_Headings(self._theme), 0, 0)
        for place, ranged in enumerate(ranges):
            row = RangeRow(self._theme, ranged, scene)
            row.set_place(place, len(ranges))
            row.edited.connect(self.edited)
            row.typed.connect(self.typed)
            row.moved.connect(lambda by, place=place: self._move(place, by))
            row.removed.connect(lambda place=place: self._remove(place))
            self._grid.addWidget(row, 2 * place + 1, 0)
            self.rows.append(row)
            if varied and ranged.variable in (Variable.REPS, Variable.HOLD) and scene.variations:
                self._add_floors(ranged, scene, 2 * place + 2)

    def _add_floors(self, ranged: VariableRange, scene: RuleScene, at: int) -> None:
        floors = FloorsRow(self._theme, ranged, scene)
        floors.edited.connect(self.edited)
        floors.typed.connect(self.typed)
        self.floors[ranged.variable] = floors
        self._grid.addWidget(floors, at, 0)


class _Headings(QWidget):
    """The words above the columns."""

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self._theme = theme
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(theme.grid())
        self._labels: list[tuple[Label, int]] = []
        for text, width in (
            (self.tr("Fastest first"), NAME_WIDTH),
            (self.tr("from"), NUMBER_WIDTH),
            (self.tr("to"), NUMBER_WIDTH),
            (self.tr("by"), NUMBER_WIDTH),
            (self.tr("when a slower one moves"), THEN_WIDTH),
        ):
            label = Label(text, "small", "muted")
            self._labels.append((label, width))
            row.addWidget(label)
        row.addStretch(1)
        theme.changed.connect(self._space)
        self._space()

    def _space(self) -> None:
        for label, width in self._labels:
            between(label, self._theme.px(40), self._theme.px(width))
