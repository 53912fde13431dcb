"""The sheet of one slot, lying on its side: sets across, what was asked and done down."""

from __future__ import annotations

from itertools import pairwise
from typing import Final, Literal

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QGridLayout, QSizePolicy, QWidget

from desktop.planning.session_draft import LineDraft, SessionDraft
from desktop.planning.typed_cells import Row, load_text
from desktop.planning.typed_doubts import doubt_at
from desktop.planning.typed_session import (
    CellPlace,
    amount_difference,
    cell_problem,
    load_difference,
    load_when_blank,
)
from desktop.training.session import LineDone, SetDone
from views import words
from views.blocks import Label
from views.session_texts import (
    cell_name,
    doubt_text,
    problem_text,
    row_word,
    set_asked,
    set_before,
)
from views.set_cell import Difference, MayStep, SetCell
from views.theme import Theme

CELL: Final = 60
NARROWEST_CELL: Final = 34
GAP: Final = 4
WORDS: Final = 68


class SlotSheet(QWidget):
    """Cells of one line of a draft, which it shows and never changes.

    ``typed(set, Row, text)``, ``commanded(set, Row, Command)``, ``entered(set, Row)``.
    """

    typed = Signal(int, object, str)
    commanded = Signal(int, object, object)
    entered = Signal(int, object)
    left = Signal(int, object)

    def __init__(self, theme: Theme, may_step: MayStep, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._may_step = may_step
        self._name = ""
        self._line = LineDraft("")
        self._last: tuple[SetDone, ...] = ()
        self._rows: tuple[Row, ...] = ()
        self._width = CELL
        self.cells: dict[tuple[int, Row], SetCell] = {}
        self._before: list[Label] = []
        self._asked: list[Label] = []
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        theme.changed.connect(self._space)

    @property
    def rows(self) -> tuple[Row, ...]:
        """The rows that can be typed in."""
        return self._rows

    @property
    def count(self) -> int:
        """The number of sets."""
        return len(self._line.sets)

    def cell(self, index: int, row: Row) -> SetCell | None:
        """The cell of one set, None where there is none."""
        return self.cells.get((index, row))

    def begin(self, name: str, last: LineDone | None, rows: tuple[Row, ...]) -> None:
        """Another exercise, what was done of it last time, and which rows it has."""
        self._name, self._rows = name, rows
        self._last = last.working_sets if last else ()
        self._line = LineDraft("")

    def show_line(self, draft: SessionDraft, number: int) -> None:
        """Show the texts of one line, with what is wrong, doubtful, more and less."""
        line = draft.lines[number]
        if len(line.sets) != self.count or not self.cells:
            self._line = line
            self._build()
        self._line = line
        working = 0
        for index, each in enumerate(line.sets):
            before = None if each.warm_up else _at(self._last, working)
            working += not each.warm_up
            self._before[index].setText(
                "" if before is None else set_before(before, each.asked, line.kind.unit)
            )
            above = self.tr("warm-up") if each.warm_up else set_asked(each.asked)
            asked = self._asked[index]
            asked.setText(above)
            asked.setProperty("scale", "small" if each.warm_up else "body")
            asked.set_tone("muted" if each.warm_up else "accent")
            for row in self._rows:
                self._show_cell(draft, CellPlace(number, index, row))

    def message(self, draft: SessionDraft, place: CellPlace) -> tuple[str, bool]:
        """What is to be said of a cell, and whether it is only a doubt."""
        wrong = cell_problem(draft, place)
        if wrong is not None:
            return problem_text(wrong, converts=True), False
        doubt = doubt_at(draft, place)
        return ("", False) if doubt is None else (doubt_text(doubt, self._line.kind), True)

    def fit(self, width: int) -> None:
        """Make the cells narrower where ``width`` does not hold them."""
        count = max(1, self.count)
        room = (width - self._theme.px(WORDS + GAP)) // count - self._theme.px(GAP)
        self._width = max(self._theme.px(NARROWEST_CELL), min(self._theme.px(CELL), room))
        self._space()

    def wanted_width(self, least_columns: int = 1) -> int:
        """The width of all cells, or of ``least_columns``, at their full size."""
        px = self._theme.px
        return px(WORDS + GAP) + max(least_columns, self.count) * px(CELL + GAP)

    def least_width(self) -> int:
        """The width of all cells at their narrowest."""
        px = self._theme.px
        return px(WORDS + GAP) + self.count * px(NARROWEST_CELL + GAP)

    def _show_cell(self, draft: SessionDraft, place: CellPlace) -> None:
        each = draft.lines[place.line].sets[place.index]
        cell = self.cells[place.index, place.row]
        placeholder = ""
        if place.row is Row.LOAD and (load := load_when_blank(self._line, place.index)) is not None:
            shown = load_text(load, self._line.kind, draft.mark)
            placeholder = "" if self._line.kind.signed and load == 0 else shown
        cell.show_text(each.text(place.row), placeholder)
        message, doubt = self.message(draft, place)
        cell.show_state("" if doubt else message, message if doubt else "", self._difference(place))

    def _difference(self, place: CellPlace) -> Difference | None:
        """What is drawn beside a value: the signed difference from what was asked."""
        if place.row is Row.DONE:
            more = amount_difference(self._line, place.index)
            return Difference(more, words.number(more)) if more else None
        if place.row is Row.LOAD:
            grams = load_difference(self._line, place.index)
            unit = self._line.kind.unit
            return Difference(grams, words.load_number(grams, unit)) if grams else None
        return None

    def _build(self) -> None:
        for cell in self.cells.values():
            cell.blockSignals(True)  # the cursor leaves them, which is nobody's doing
        while (item := self._grid.takeAt(0)) is not None:
            if (widget := item.widget()) is not None:
                widget.hide()
                widget.deleteLater()
        self.cells, self._before, self._asked = {}, [], []
        heads = [self.tr("last time"), self.tr("asked"), *(row_word(row) for row in self._rows)]
        for row_at, word in enumerate(heads):
            self._grid.addWidget(_head(word), row_at, 0)
        for index in range(len(self._line.sets)):
            self._add_column(index)
        self._space()
        self._order_tabs()
        for cell in self.cells.values():
            cell.show()  # at once, so that the cursor can go there

    def _add_column(self, index: int) -> None:
        before, asked = _figure("muted"), _figure("accent")
        self._before.append(before)
        self._asked.append(asked)
        self._grid.addWidget(before, 0, index + 1)
        self._grid.addWidget(asked, 1, index + 1)
        for row_at, row in enumerate(self._rows):
            cell = SetCell(self._theme, row, self._may_step)
            cell.setAccessibleName(cell_name(self._name, index, row, self._line.kind))
            cell.typed.connect(lambda text, r=row: self.typed.emit(index, r, text))
            cell.commanded.connect(lambda what, r=row: self.commanded.emit(index, r, what))
            cell.entered.connect(lambda r=row: self.entered.emit(index, r))
            cell.left.connect(lambda r=row: self.left.emit(index, r))
            self.cells[index, row] = cell
            self._grid.addWidget(cell, row_at + 2, index + 1)

    def _order_tabs(self) -> None:
        """Tab goes along the rows, as the hand does."""
        in_order = [
            self.cells[index, row] for row in self._rows for index in range(len(self._line.sets))
        ]
        for one, following in pairwise(in_order):
            QWidget.setTabOrder(one, following)

    def _space(self) -> None:
        px = self._theme.px
        inset = px(6) + 3  # as far as a cell's border, padding and own margin
        self._grid.setHorizontalSpacing(px(GAP))
        self._grid.setVerticalSpacing(px(1))
        self._grid.setColumnMinimumWidth(0, px(WORDS))
        for row_at in range(2):
            self._grid.setRowMinimumHeight(row_at, px(18))
        for index in range(len(self._line.sets)):
            for label in (self._before[index], self._asked[index]):
                label.setFixedWidth(min(self._width, px(CELL)))
                label.setContentsMargins(0, 0, inset, 0)
            for row in self._rows:
                self.cells[index, row].setFixedWidth(self._width)


def _at(sets: tuple[SetDone, ...], place: int) -> SetDone | None:
    return sets[place] if place < len(sets) else None


def _head(word: str) -> Label:
    label = Label(word, "small", "muted")
    label.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
    return label


def _figure(tone: Literal["muted", "accent"]) -> Label:
    label = Label("", "small" if tone == "muted" else "body", tone)
    label.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
    return label
