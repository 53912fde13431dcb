"""A training day as a block: its name and minutes, its slots as rows, a field to add another."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QSizePolicy, QVBoxLayout, QWidget

from desktop.training.exercises import Exercise
from desktop.training.program import TrainingDay
from desktop.training.quantities import Unit
from views import words
from views.acting_row import ActingRow
from views.blocks import Label
from views.day_words import day_name
from views.elided_label import ElidedLabel
from views.exercise_finder import ExerciseFinder
from views.slot_face import SlotFace
from views.slot_row import SlotRow, row_columns
from views.theme import Theme


@dataclass(frozen=True, slots=True)
class DayFace:
    """What a day's block shows: the day, the patterns it holds, minutes, a face for each slot."""

    day: TrainingDay
    held: str
    minutes: int
    slots: tuple[SlotFace, ...]
    unit: Unit


class DayHead(ActingRow):
    """The heading of a day; takes the focus, so that keys act on the whole day."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        self._name = ElidedLabel("heading")
        self._name.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Preferred)
        self._detail = ElidedLabel(tone="muted")
        self._ahead = Label(size="small", tone="muted")
        self._row = QHBoxLayout(self)
        self._row.addWidget(self._name)
        self._row.addWidget(self._detail, 1)
        self._row.addWidget(self._ahead)
        theme.changed.connect(self._space)
        self._space()

    def show_day(self, face: DayFace) -> None:
        """Show another day's words."""
        name, count = day_name(face.day, face.held), len(face.slots)
        self._name.say(name)
        slots = self.tr("1 slot") if count == 1 else self.tr("{count} slots").format(count=count)
        text = self.tr("{slots} · about {time}")
        time = words.minutes(face.minutes)
        detail = text.format(slots=slots, time=time) if count else self.tr("nothing planned yet")
        if face.day.weekday is None:
            detail = self.tr("{detail} · in turn").format(detail=detail)
        self._detail.say(detail)
        self.setAccessibleName(f"{name}, {detail}")
        self.setAccessibleDescription(
            self.tr("Return edits the day, Alt with the arrows moves it, Delete removes it.")
        )
        self.say_ahead(any(slot.cells for slot in face.slots))

    def say_ahead(self, there_are_cells: bool) -> None:
        """Say what the small cells are, for as many as there is room."""
        count = row_columns(self.width(), self._theme).count
        narrow = self.width() < self._theme.px(500)
        number = {
            2: self.tr("two"),
            3: self.tr("three"),
            4: self.tr("four"),
            6: self.tr("six"),
            8: self.tr("eight"),
        }
        if count >= 6:
            text = self.tr("the next {count} sessions, if all goes as asked")
        else:
            text = self.tr("the next {count}, if all goes well")
        said = there_are_cells and not narrow
        self._ahead.setText(text.format(count=number[count]) if said else "")

    def _space(self) -> None:
        inside = self._theme.grid(2)
        self._row.setContentsMargins(inside, self._theme.px(10), inside, self._theme.px(4))
        self._row.setSpacing(self._theme.px(10))

    def paintEvent(self, event: QPaintEvent) -> None:
        if self.hasFocus():
            painter = QPainter(self)
            bar = self.rect()
            bar.setWidth(self._theme.px(3))
            painter.fillRect(self.rect(), self._theme.colour("background"))
            painter.fillRect(bar, self._theme.colour("accent"))
            painter.end()


class DayBlock(QFrame):
    """One training day. Rows are kept and filled anew, so that the focus stays where it is.

    ``row_acted(slot, RowAct)``, ``head_acted(RowAct)``; ``added(Exercise, Shorthand)`` from the
    field at the foot; ``finder_left(step)`` when an arrow leaves that field.
    """

    row_acted = Signal(int, object)
    head_acted = Signal(object)
    added = Signal(object, object)
    finder_left = Signal(int)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("kind", "block")
        self._theme = theme
        self._face: DayFace | None = None
        self._panel: QWidget | None = None
        self.rows: list[SlotRow] = []
        self.head = DayHead(theme)
        # Its words stand above the figures of the rows, which are never mirrored.
        self.head.setLayoutDirection(Qt.LayoutDirection.LeftToRight)
        self.head.acted.connect(self.head_acted)
        self.finder = ExerciseFinder(
            theme,
            self.tr("Add an exercise: part of its name, and 3 × 8-12 60 if you like"),
            self.tr("Add an exercise to this day"),
        )
        self.finder.setProperty("kind", "quiet")
        self.finder.taken.connect(self.added)
        self.finder.left.connect(self.finder_left)
        self.finder.given_up.connect(lambda: self.finder_left.emit(-1))
        self._column = QVBoxLayout(self)
        self._column.setSpacing(0)
        self._column.addWidget(self.head)
        self._foot = QWidget()
        self._foot_row = QHBoxLayout(self._foot)
        self._foot_row.addWidget(self.finder, 3)
        self._foot_row.addStretch(2)
        self._column.addWidget(self._foot)
        theme.changed.connect(self._space)
        self._space()

    def show_day(self, face: DayFace, exercises: Sequence[Exercise]) -> None:
        """Show a day; ``exercises`` may be added."""
        self._face = face
        self.finder.offer(exercises, face.unit)
        self.finder.setPlaceholderText(
            self.tr("Add an exercise: part of its name, and 3 × 8-12 60 if you like")
            if face.slots
            else self.tr("Type part of an exercise's name, like squ 3 × 8-12 60: Return adds it")
        )
        self.head.show_day(face)
        while len(self.rows) > len(face.slots):
            row = self.rows.pop()
            self._column.removeWidget(row)
            row.hide()
            row.deleteLater()
        while len(self.rows) < len(face.slots):
            self._add_row()
        for row, slot in zip(self.rows, face.slots, strict=True):
            row.show_face(slot)

    def show_panel(self, panel: QWidget | None, slot: int | None) -> None:
        """Put ``panel`` beneath a slot's row, or beneath the heading (None)."""
        for place, row in enumerate(self.rows):
            row.set_open(panel is not None and place == slot)
        if self._panel is not None and self._panel is not panel:
            self._column.removeWidget(self._panel)
        self._panel = panel
        if panel is not None:
            anchor = self.head if slot is None else self.rows[slot]
            wanted = self._column.indexOf(anchor) + 1
            if self._column.indexOf(panel) != wanted:
                self._column.removeWidget(panel)
                self._column.insertWidget(self._column.indexOf(anchor) + 1, panel)
            panel.show()

    def _add_row(self) -> None:
        row = SlotRow(self._theme)
        place = len(self.rows)
        row.acted.connect(lambda act: self.row_acted.emit(place, act))
        before = self.rows[-1] if self.rows else self.head
        at = self._column.indexOf(before) + 1
        self._column.insertWidget(at, row)
        row.show()  # at once, so that it can take the focus
        self.rows.append(row)

    def _space(self) -> None:
        inside = self._theme.grid(2)
        self._column.setContentsMargins(1, 0, 1, 0)
        self._foot_row.setContentsMargins(inside, self._theme.px(4), inside, self._theme.px(6))

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if self._face is not None:
            self.head.say_ahead(any(slot.cells for slot in self._face.slots))
