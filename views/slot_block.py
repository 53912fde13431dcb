"""The block of one slot: what is asked and why, the sheet, the step strip."""

from __future__ import annotations

from datetime import date
from enum import Enum, auto
from typing import Final

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QKeyEvent, QResizeEvent
from PySide6.QtWidgets import QFrame, QGridLayout, QHBoxLayout, QLineEdit, QVBoxLayout, QWidget

from desktop.planning.days import SlotPlan
from desktop.planning.session_draft import LineDraft, SessionDraft
from desktop.planning.typed_cells import Row
from desktop.training.exercises import LoadingKind
from desktop.training.quantities import Unit
from desktop.training.session import AskedSet
from views.assessment_words import tested_asked_text, tested_how_text
from views.blocks import Label, WordButton
from views.exercise_words import short_strip
from views.session_texts import asked_text, best_text, reserve_asked, slot_name, why_text
from views.set_cell import MayStep
from views.slot_sheet import SlotSheet
from views.step_strip import StepStrip
from views.theme import Theme

WORDS_WIDTH: Final = 244
STRIP_WIDTH: Final = 210


class _Shape(Enum):
    """How the parts lie: beside each other, the strip below, or all below each other."""

    WIDE = auto()
    STRIP_BELOW = auto()
    STACKED = auto()


class SlotBlock(QFrame):
    """One line of the draft with what its plan says. Cells are in ``sheet``.

    ``noted(text)`` when the note is typed; ``note_done`` when Return is pressed in it;
    ``remove_wanted`` where it can be removed.
    """

    noted = Signal(str)
    note_done = Signal()
    remove_wanted = Signal()

    def __init__(
        self,
        theme: Theme,
        slot: SlotPlan,
        line: LineDraft,
        unit: Unit,
        today: date,
        may_step: MayStep,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self.setProperty("kind", "block")
        self._theme, self._slot, self._unit = theme, slot, unit
        self._load_row = False
        self._columns = 0
        self._shape: _Shape | None = None
        self.sheet = SlotSheet(theme, may_step)
        self.strip = StepStrip(theme, short_strip(slot.strip), unit)
        self.note = _NoteField(theme)
        self.name = Label("", "heading", wrap=True)
        self.asked = Label("", "asked", wrap=True)
        why = line.reason or (why_text(slot, unit, today) if line.planned else "")
        if line.test:
            why = ""
        self.why = Label(why, "small", "muted", wrap=True)
        how = tested_how_text(line.asked) if line.test else reserve_asked(line.asked)
        self.reserve = Label(how, "small", "accent", wrap=line.test)
        self.best = Label(best_text(slot, unit), "small", "muted")
        self.remove = WordButton(self.tr("Remove"), tone="muted")
        self._say(line)
        self._assemble()
        self.note.textEdited.connect(self.noted)
        self.note.returnPressed.connect(self.note_done)
        self.remove.clicked.connect(self.remove_wanted)
        theme.changed.connect(self._space)
        self._space()

    @property
    def slot(self) -> SlotPlan:
        """The plan that the block shows."""
        return self._slot

    def set_columns(self, count: int) -> None:
        """Leave room for so many sets, so that the strips of all blocks stand in one line."""
        if count != self._columns:
            self._columns = count
            self._shape = None
            self._fit()

    def show_load_row(self) -> None:
        """Let a load be typed where none is asked."""
        self._load_row = True

    def show_line(self, draft: SessionDraft, number: int) -> None:
        """Show the texts of the draft's line of this number."""
        line = draft.lines[number]
        rows = self._rows_of(line)
        if rows != self.sheet.rows or self._slot_name(line) != self.name.text():
            self.name.setText(self._slot_name(line))
            self.sheet.begin(self.name.text(), self._slot.last_time, rows)
            self._shape = None
        before = self.sheet.count
        self.sheet.show_line(draft, number)
        if self.note.text() != line.note:
            self.note.setText(line.note)
        self.remove.setVisible(not line.planned)
        if self.sheet.count != before or self._shape is None:
            self._fit()

    def _say(self, line: LineDraft) -> None:
        bodyweight = self._slot.exercise.loading is LoadingKind.BODYWEIGHT
        text = asked_text(line.asked, self._unit, bodyweight=bodyweight)
        if line.test:
            text = tested_asked_text(line.asked, self._unit, self._slot.exercise)
        self.name.setText(self._slot_name(line))
        self.asked.setText(text or (self.tr("Not planned") if not line.planned else ""))
        self.asked.setProperty("tone", "accent" if text else "muted")
        self.note.setAccessibleName(
            self.tr("{exercise}, note").format(exercise=self._slot.exercise.name)
        )

    def _slot_name(self, line: LineDraft) -> str:
        done = next((each.variation for each in reversed(line.sets) if each.variation), None)
        return slot_name(self._slot, done)

    def _rows_of(self, line: LineDraft) -> tuple[Row, ...]:
        # A row that stood there once stays, so that nothing jumps while it is typed in.
        self._load_row = self._load_row or not line.kind.signed or _load_stands(line)
        return (Row.DONE, *((Row.LOAD,) if self._load_row else ()), Row.RESERVE, Row.PAIN)

    def _assemble(self) -> None:
        self._words = QWidget()
        column = QVBoxLayout(self._words)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(self._theme.px(2))
        for label in (self.name, self.asked, self.reserve, self.why):
            column.addWidget(label)
            label.setVisible(bool(label.text()))
        column.addStretch(1)
        self._beside = QWidget()
        self._side = QVBoxLayout(self._beside)
        self._side.setContentsMargins(0, 0, 0, 0)
        self._side.addWidget(self.strip)
        self._side.addStretch(1)
        self._side.addWidget(self.best)
        foot = QHBoxLayout()
        foot.addWidget(self.note, 1)
        foot.addWidget(self.remove)
        self._side.addLayout(foot)
        self._grid = QGridLayout(self)

    def _space(self) -> None:
        px = self._theme.px
        self._grid.setContentsMargins(px(16), px(10), px(16), px(10))
        self._grid.setHorizontalSpacing(px(16))
        self._grid.setVerticalSpacing(px(8))
        self._side.setSpacing(px(4))
        self._shape = None
        self._fit()

    def _fit(self) -> None:
        """Lay the parts out for the width there is."""
        px = self._theme.px
        room = self.width() - px(32)
        sheet = self.sheet.wanted_width(self._columns)
        if room >= px(WORDS_WIDTH + STRIP_WIDTH + 40) + sheet:
            shape = _Shape.WIDE
        elif room >= px(WORDS_WIDTH + 16) + self.sheet.wanted_width():
            shape = _Shape.STRIP_BELOW
        else:
            shape = _Shape.STACKED
        self.sheet.fit(room)
        if shape is self._shape:
            return
        self._shape = shape
        for part in (self._words, self.sheet, self._beside):
            self._grid.removeWidget(part)
        top = Qt.AlignmentFlag.AlignTop
        stacked = shape is _Shape.STACKED
        self._words.setFixedWidth(px(WORDS_WIDTH)) if not stacked else _free(self._words)
        self._grid.addWidget(self._words, 0, 0, 1, 2 if stacked else 1)
        self._grid.addWidget(self.sheet, 1 if stacked else 0, 0 if stacked else 1, top)
        if shape is _Shape.WIDE:
            self._grid.addWidget(self._beside, 0, 2)
        else:
            self._grid.addWidget(self._beside, 2, 0, 1, 3)
        self._grid.setColumnMinimumWidth(1, sheet if shape is _Shape.WIDE else 0)
        self._grid.setColumnStretch(0, 0)
        self._grid.setColumnStretch(2, 1)

    def minimumSizeHint(self) -> QSize:
        """The parts can always lie below each other: no page keeps them side by side."""
        least = super().minimumSizeHint()
        stacked = self.sheet.least_width() + 2 * self._theme.px(16)
        return QSize(min(least.width(), stacked), least.height())

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()


class _NoteField(QLineEdit):
    """A quiet line for a note; Escape goes back to the sheet."""

    left_up = Signal()

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self._theme = theme
        self.setProperty("kind", "note")
        self.setPlaceholderText(self.tr("Note"))
        self.setMaxLength(2_000)
        theme.changed.connect(self._space)
        self._space()

    def _space(self) -> None:
        self.setFixedHeight(self._theme.px(22))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Escape, Qt.Key.Key_Up):
            self.left_up.emit()
            return
        super().keyPressEvent(event)


def _load_stands(line: LineDraft) -> bool:
    asked: tuple[AskedSet, ...] = line.asked
    return (
        bool(line.usual_g)
        or any(each.load_g for each in asked)
        or any(each.load.strip() for each in line.sets)
    )


def _free(widget: QWidget) -> None:
    widget.setMinimumWidth(0)
    widget.setMaximumWidth(16_777_215)
