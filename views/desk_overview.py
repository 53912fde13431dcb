"""The desk: everybody in one table, by need or by a column, or what to do first."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from datetime import date
from functools import cached_property

from PySide6.QtCore import QEvent, QObject, Qt
from PySide6.QtGui import QKeyEvent, QKeySequence, QResizeEvent, QShortcut
from PySide6.QtWidgets import QHBoxLayout, QLineEdit, QSizePolicy, QVBoxLayout, QWidget

from db.changes import Changes
from views import calendar_words
from views.blocks import Block, Heading, Label, MainButton, WordButton
from views.choice_row import Choice, ChoiceRow
from views.desk_columns import Column
from views.desk_model import Shown
from views.desk_order import order_of, order_text
from views.desk_table import DeskTable
from views.desk_words import counted, desk_cells
from views.flow_layout import FlowLayout, together
from views.general_caution import general_caution
from views.record import Record
from views.theme import Theme
from views.work_area import WorkArea
from views.work_areas import CAUTION, SHEET, place_word

_NOTE_FROM = 52  # grid units of height


class DeskOverview(WorkArea):
    """Everybody at a glance: who needs the coach today, and why. Every cell leads on."""

    def __init__(
        self, record: Record, today: date, theme: Theme, parent: QWidget | None = None
    ) -> None:
        super().__init__(record, today, theme, parent)
        self.filter = QLineEdit()
        self.filter.setPlaceholderText(self.tr("Filter by any word"))
        self.filter.setAccessibleName(self.tr("Show only rows with these words"))
        self.filter.installEventFilter(self)
        self.table = DeskTable(theme, today)
        self.who = ChoiceRow(theme, self.tr("Who is shown"), self.table)
        self.heading = Heading(theme)
        self.heading.detail.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        self.sorted = WordButton("", tone="muted")
        self.sorted.setToolTip(self.tr("Sort by the column stood on, or the other way round"))
        self.said = Label(tone="muted", wrap=True)
        self.go = WordButton("", strong=True)
        self.sheet = WordButton("")
        self.setFocusProxy(self.table)
        self._place()
        self._connect()
        self._space()

    @cached_property
    def first_steps(self) -> _FirstSteps:
        """What to do while there is nobody."""
        made = _FirstSteps(self.theme, self.record, self.area_wanted.emit)
        self._column.insertWidget(1, made)
        return made

    def concerns(self, changes: Changes) -> bool:
        """Every trainee is shown here."""
        return True

    def keys(self) -> Sequence[tuple[str, str]]:
        """What keys do here."""
        return (
            (self.tr("Open the screen that the cell speaks of"), self.tr("Return")),
            (self.tr("Print the sheet of the row"), self.tr("Shift+Return")),
            (self.tr("Filter"), _native("Ctrl+F")),
            (self.tr("Sort by the column stood on, or the other way round"), "S"),
            (self.tr("All, who trains today, who needs attention"), "A, T, N"),
        )

    @property
    def stood_on(self) -> int | None:
        """The trainee of the row, while rows are walked or nobody is chosen."""
        walked = self.table.hasFocus() or self.trainee_id is None
        return self.table.cells.trainee_id if walked and self.table.cells is not None else None

    def show_trainee(self, trainee_id: int | None) -> None:
        """Stand on the row of whoever was chosen elsewhere."""
        another = trainee_id is not None and trainee_id != self.trainee_id
        super().show_trainee(trainee_id)
        if another and trainee_id is not None and self.table.rows.row_of(trainee_id) >= 0:
            self.table.stand_on(trainee_id)

    def refresh(self) -> None:
        """Show the record's rows; who was stood on stays so."""
        place = self.table.place
        found = desk_cells(self.record, self.today)
        rows = found.rows
        self.table.rows.set_rows(*found)
        if not rows or "first_steps" in self.__dict__:
            self.first_steps.setVisible(not rows)
            if not rows and self.record.attached:
                self.first_steps.show_unit()
        self.board.setVisible(bool(rows))
        if rows:
            self.heading.say(calendar_words.long_day(self.today), self._counted())
        else:
            self.heading.say(self.tr("Nobody is on the roster yet"))
        self.table.stand_on(place)
        self._say()

    def recall(self, kept: str) -> None:
        """Sort as the coach left it."""
        self.table.set_order(order_of(kept))

    def to_recall(self) -> str:
        """How rows are sorted."""
        return self.table.rows.order.code

    def _place(self) -> None:
        choices = (
            Choice(Shown.ALL, self.tr("All"), "A"),
            Choice(Shown.TODAY, self.tr("Today"), "T"),
            Choice(Shown.ATTENTION, self.tr("Needs attention"), "N"),
        )
        self.who.offer(choices, Shown.ALL)
        self.board = Block(self.theme)
        self._above, self._search = FlowLayout(), QHBoxLayout()
        self._search.addStretch(1)
        self._search.addWidget(self.sorted)
        self._search.addWidget(self.filter)
        self._above.addWidget(self.who)
        self._above.addWidget(together(self._search, growing=True))
        self.board.body.addLayout(self._above)
        self.board.body.addWidget(self.table, 1)
        self._foot = FlowLayout()
        self.said.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        ways = QHBoxLayout()
        ways.addWidget(self.sheet)
        ways.addWidget(self.go)
        both = together(ways)
        self._foot.addWidget(self.said)
        self._foot.addWidget(both)
        self._foot.setAlignment(both, Qt.AlignmentFlag.AlignRight)
        self.board.body.addLayout(self._foot)
        self.note = Label(general_caution(), "small", "muted", wrap=True)
        self._column = QVBoxLayout()
        self._column.addWidget(self.heading)
        self._column.addWidget(self.board, 1)
        self._column.addStretch(0)
        self._column.addWidget(self.note)
        self.outer.addLayout(self._column)

    def _connect(self) -> None:
        self.filter.textChanged.connect(self._filter)
        self.who.chosen.connect(self._filter)
        self.table.moved.connect(self._say)
        self.table.opened.connect(self._open)
        self.table.order_changed.connect(self._say_order)
        self.sorted.clicked.connect(self.table.sort_on)
        self._say_order()
        self.go.clicked.connect(lambda: self._go(self.table.area))
        self.sheet.clicked.connect(lambda: self._go(SHEET))
        self.table.installEventFilter(self)
        find = QShortcut(QKeySequence.StandardKey.Find, self)
        find.activated.connect(lambda: self.filter.setFocus(Qt.FocusReason.ShortcutFocusReason))
        self.theme.changed.connect(self._space)

    def _filter(self) -> None:
        self.filter.setClearButtonEnabled(True)  # its icon is slow to find: not before it helps
        place = self.table.place
        self.table.rows.set_filter(self.filter.text(), self.who.code)
        self.table.stand_on(place)
        self._say()

    def _counted(self) -> str:
        due, need = counted(self.record, self.today)
        parts = [
            self.tr("nobody trains today")
            if not due
            else self.tr("1 trains today")
            if due == 1
            else self.tr("{count} train today").format(count=calendar_words.number(due))
        ]
        known, everybody = self.record.roster_progress
        if known < everybody:
            parts.append(
                self.tr("reading records, {known} of {everybody}").format(
                    known=calendar_words.number(known), everybody=calendar_words.number(everybody)
                )
            )
        else:
            if need:
                count = calendar_words.number(need)
                parts.append(
                    self.tr("1 needs attention")
                    if need == 1
                    else self.tr("{count} need attention").format(count=count)
                )
        return ", ".join(parts)

    def _say(self) -> None:
        """The row stood on in a sentence, and where Return leads."""
        cells = self.table.cells
        self.said.setText(self.table.sentence or self.tr("Nobody is like that."))
        self.go.setVisible(cells is not None)
        self.sheet.setVisible(cells is not None)
        if cells is None:
            return
        name = cells.texts[Column.NAME]
        area = cells.proposal if self.table.area == CAUTION else place_word(self.table.area)
        self.go.set_words(f"{area}  {_native('Return')}")
        self.go.setAccessibleName(self.tr("{screen} of {name}").format(screen=area, name=name))
        sheet = self.tr("Sheet")
        self.sheet.set_words(f"{sheet}  {_native('Shift+Return')}")
        self.sheet.setAccessibleName(self.tr("Sheet of {name}").format(name=name))

    def _say_order(self) -> None:
        text = order_text(self.table.rows.order)
        self.sorted.set_words(f"{text}  S")
        self.sorted.setAccessibleName(text)

    def _go(self, area: str) -> None:
        cells = self.table.cells
        if cells is not None:
            self._open(cells.trainee_id, area)

    def _open(self, trainee_id: int, area: str) -> None:
        self.trainee_wanted.emit(trainee_id)
        self.area_wanted.emit(area)

    def _space(self) -> None:
        edge = self.theme.grid(3)
        self._column.setContentsMargins(edge, self.theme.grid(2), edge, self.theme.grid(2))
        self._column.setSpacing(self.theme.px(12))
        inside, small = self.theme.px(8), self.theme.px(2)
        self.board.body.setContentsMargins(1, inside, 1, inside)
        self.board.body.setSpacing(0)
        self._above.setContentsMargins(small, 0, inside, self.theme.px(4))
        self._above.setSpacing(self.theme.px(6))
        self._search.setSpacing(self.theme.px(6))
        self.said.setMinimumWidth(self.theme.px(320))
        self._foot.setContentsMargins(inside, inside, small, 0)
        self._foot.setSpacing(self.theme.grid())
        lines = (
            2 if self.theme.px(100) < 130 else 3
        )  # large text leaves fewer columns, so more is said
        self.said.setFixedHeight(lines * self.said.fontMetrics().lineSpacing())
        self.filter.setFixedWidth(self.theme.grid(22))

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Where there is little room the general caution gives way to the table; sheets and the
        screens that prescribe say it too.
        """
        super().resizeEvent(event)
        self.note.setVisible(event.size().height() >= self.theme.grid(_NOTE_FROM))

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if isinstance(event, QKeyEvent) and event.type() == QEvent.Type.KeyPress:
            key = event.key()
            if watched is self.filter and key in (Qt.Key.Key_Down, Qt.Key.Key_Return):
                self.table.setFocus(Qt.FocusReason.OtherFocusReason)
                return True
            shift = event.modifiers() & Qt.KeyboardModifier.ShiftModifier
            if watched is self.table and shift and key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
                self._go(SHEET)
                return True
        return super().eventFilter(watched, event)


class _FirstSteps(Block):
    """What to do while there is nobody."""

    def __init__(self, theme: Theme, record: Record, wanted: Callable[[str], None]) -> None:
        super().__init__(theme)
        self._record = record
        self.body.addWidget(
            Label(
                self.tr(
                    "Start with one person: their name, what they can train with, and when. "
                    "Then give them a program, print the first sheet, and type what was done."
                ),
                wrap=True,
            )
        )
        add = MainButton(self.tr("Add a trainee"))
        add.clicked.connect(lambda: wanted("add trainee"))
        demo = WordButton(self.tr("Open the demo scenario"))
        demo.clicked.connect(lambda: wanted("open demo"))
        row = QHBoxLayout()
        row.setSpacing(theme.grid(2))
        row.addWidget(add)
        row.addWidget(demo)
        row.addStretch(1)
        self.body.addLayout(row)
        units = QHBoxLayout()
        units.setSpacing(theme.grid())
        self.unit = ChoiceRow(theme, self.tr("Unit of loads"), self)
        units.addWidget(Label(self.tr("Loads in"), tone="muted"))
        units.addWidget(self.unit)
        units.addWidget(Label(self.tr("each trainee can have their own"), tone="muted"))
        units.addStretch(1)
        self.body.addLayout(units)
        self.unit.chosen.connect(self._use_unit)
        self.body.addWidget(
            Label(
                self.tr("The demo is an invented rowing club in a data file of its own."),
                "small",
                "muted",
                wrap=True,
            )
        )

    def show_unit(self) -> None:
        """Show the unit that holds for trainees who come."""
        from desktop.training.quantities import Unit

        choices = [Choice(unit.value, unit.value) for unit in Unit]
        self.unit.offer(choices, self._record.repository.coach_settings().unit.value)

    def _use_unit(self, code: str) -> None:
        from desktop.training.quantities import Unit

        settings = self._record.repository.coach_settings()
        self._record.save(self.tr("Unit of loads"), replace(settings, unit=Unit(code)))


def _native(key: str) -> str:
    return QKeySequence(key).toString(QKeySequence.SequenceFormat.NativeText)
