"""The print work area: a day's sheet as it will come out, saved as a PDF or printed."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, timedelta
from pathlib import Path
from typing import TYPE_CHECKING, Final

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import (
    QHBoxLayout,
    QSizePolicy,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from db.errors import StoreError
from desktop.planning.days import DayPlan, WhyEmpty, day_plan_of, why_empty
from desktop.planning.groups import group_plans
from desktop.planning.history import History, read_history
from desktop.planning.session_days import training_day_after, training_day_before
from views import words
from views.blocks import Label, WordButton
from views.choice_row import Choice, ChoiceRow
from views.date_field import DateField
from views.elided_label import ElidedLabel
from views.file_dialogs import ask_target, file_name
from views.flow_layout import FlowLayout, together
from views.no_sheet import NoSheet
from views.number_fields import FieldError
from views.paper import Paper
from views.printer_dialog import ask_printer, name_of, print_chosen
from views.record import MessageKind, Record
from views.sentences import worded
from views.sheet_parts import Sheet
from views.sheet_preview import SheetPreview
from views.sheet_texts import SheetError, belongs_to
from views.sheets import make_group_sheet, make_sheet, write_sheet
from views.theme import Theme
from views.work_area import WorkArea
from views.work_areas import PROGRAM

if TYPE_CHECKING:
    from PySide6.QtPrintSupport import QPrinter

_DAY: Final = timedelta(days=1)
_LONGEST_NAME: Final = 60
_ONE: Final = "one"
_GROUP: Final = "group"


class SheetArea(WorkArea):
    """The sheet of one trainee and day, or of all who train that day. Another trainee begins at
    the next day of training.
    """

    def __init__(
        self, record: Record, today: date, theme: Theme, parent: QWidget | None = None
    ) -> None:
        super().__init__(record, today, theme, parent)
        self.day = today
        self.sheet: Sheet | None = None
        self._history: History | None = None
        self._plan: DayPlan | None = None
        self._build()
        self._connect()
        self._add_keys()
        self._space()

    # What is shown

    def show_day(self, day: date) -> None:
        """Show the sheet of another day."""
        self.day = day
        self._show()

    def show_group(self, group: bool) -> None:
        """Show the sheet of all who train on the day, or of the trainee alone."""
        self.whose.choose(_GROUP if group else _ONE)
        self._show()

    def keys(self) -> Sequence[tuple[str, str]]:
        """What keys do here."""
        keys = (
            (self.tr("The group, or this trainee"), "Ctrl+G"),
            (self.tr("Next day of training"), "Ctrl+PgDown"),
            (self.tr("Next day"), "Alt+PgDown"),
            (self.tr("Go to a date"), "Ctrl+D"),
            (self.tr("Save as PDF"), "Ctrl+Shift+P"),
            (self.tr("Print"), "Ctrl+P"),
        )
        native = QKeySequence.SequenceFormat.NativeText
        return tuple((does, QKeySequence(key).toString(native)) for does, key in keys)

    def refresh(self) -> None:
        """Read again; a trainee shown for the first time begins at the next day of training."""
        if self.trainee_id is None:
            return
        before = self._history.trainee_id if self._history is not None else None
        try:
            self._history = read_history(self.record.repository, self.trainee_id)
        except StoreError as error:
            self.record.reported(error)
            return
        if before != self.trainee_id:
            self.day = _next_day(self._history, self.today)
        self._show()

    def _show(self) -> None:
        if self._history is None:
            return
        plan = self._plan = day_plan_of(self._history, self.day)
        self.field.set_day(self.day)
        self._title.setText(words.long_day(self.day))
        why = ""
        try:
            self.sheet = self._group_sheet() if self.grouped else self._own_sheet(plan)
        except (SheetError, StoreError) as error:
            self.sheet, why = None, worded(error)
        self.preview.show_sheet(self.sheet)
        self._show_empty(why)
        for button in (self.save, self.print):
            button.setEnabled(self.sheet is not None)
        self._pages.setText(self._pages_text())

    @property
    def grouped(self) -> bool:
        """Whether the sheet of all who train on the day is shown."""
        return self.whose.code == _GROUP

    def _own_sheet(self, plan: DayPlan) -> Sheet:
        said = (plan.trainee.name, belongs_to(plan))
        self._detail.say(words.DOT.join(part for part in said if part))
        return make_sheet(plan, Paper(self.papers.code))

    def _group_sheet(self) -> Sheet:
        plans = group_plans(self.record.repository, self.day)
        text = self.tr("{count} train on this day; save and next follows the sheet")
        self._detail.say(text.format(count=words.number(len(plans))))
        return make_group_sheet(plans, self.day, Paper(self.papers.code))

    def _show_empty(self, why: str) -> None:
        self._middle.setCurrentWidget(self.empty if why else self.preview)
        if why and self._history is not None and self._plan is not None:
            program = self._plan.why_empty in (WhyEmpty.NO_PROGRAM, WhyEmpty.ENDED)
            self.empty.say(why, training_day_after(self._history, self.day), program=program)

    def _pages_text(self) -> str:
        if self.sheet is None:
            return ""
        count = len(self.sheet.pages)
        if count == 1:
            return self.tr("1 page. Boxes are left blank for the pencil.")
        text = self.tr("{count} pages. Boxes are left blank for the pencil.")
        return text.format(count=words.number(count))

    # What can be done

    def ask_where(self) -> None:
        """Ask for a file, and save the sheet there."""
        if self.sheet is None or self._plan is None:
            return
        name = self.tr("Group") if self.grouped else self._plan.trainee.name
        proposed = file_name(f"{name[:_LONGEST_NAME]} {self.day.isoformat()}")
        ask_target(self, self.tr("Save the sheet"), proposed, "pdf", self.save_pdf)

    def save_pdf(self, path: Path) -> None:
        """Save the sheet that is shown as a PDF, and say so."""
        if self.sheet is None:
            return
        try:
            write_sheet(self.sheet, path)
        except SheetError as error:
            self.record.say(worded(error), MessageKind.ERROR)
        else:
            text = self.tr("Sheet saved to {path}")
            self.record.say(text.format(path=path), MessageKind.DONE)

    def ask_printer(self) -> None:
        """Ask for a printer, and print the sheet that is shown."""
        if self.sheet is not None:
            ask_printer(self, self.sheet, self.print_on)

    def print_on(self, printer: QPrinter) -> None:
        """Print the sheet that is shown, or the pages chosen, and say how it went."""
        if self.sheet is None:
            return
        if print_chosen(self.sheet, printer):
            text = self.tr("Sheet sent to {printer}")
            self.record.say(text.format(printer=name_of(printer)), MessageKind.DONE)
        else:
            self.record.say(self.tr("The printer did not take the sheet."), MessageKind.ERROR)

    def _step(self, *, after: bool) -> None:
        if self._history is None:
            return
        step = training_day_after if after else training_day_before
        day = step(self._history, self.day)
        if day is not None:
            self.show_day(day)

    def _field_committed(self) -> None:
        if self.field.day is not None:
            self.show_day(self.field.day)
        else:
            self.field.set_day(self.day)

    # How it is built

    def _build(self) -> None:
        self._title, self._detail = Label("", "title"), ElidedLabel(tone="muted")
        self.field = DateField(self.tr("Day of the sheet"), self.today)
        self._wrong = FieldError()
        self.field.bind_error(self._wrong)
        self._earlier = WordButton("\N{SINGLE LEFT-POINTING ANGLE QUOTATION MARK}")
        self._later = WordButton("\N{SINGLE RIGHT-POINTING ANGLE QUOTATION MARK}")
        self._earlier.setAccessibleName(self.tr("Previous day of training"))
        self._earlier.setToolTip(self.tr("Previous day of training: Ctrl+Page Up"))
        self._later.setAccessibleName(self.tr("Next day of training"))
        self._later.setToolTip(self.tr("Next day of training: Ctrl+Page Down"))
        self.papers = ChoiceRow(self.theme, self.tr("Paper"), self)
        self.papers.offer(
            [Choice(Paper.A4, self.tr("A4")), Choice(Paper.LETTER, self.tr("Letter"))],
            self.theme.paper,
        )
        self.whose = ChoiceRow(self.theme, self.tr("Whose sheet"), self)
        self.whose.offer(
            [Choice(_ONE, self.tr("This trainee")), Choice(_GROUP, self.tr("The group"))], _ONE
        )
        self.preview = SheetPreview(self.theme)
        self.empty = NoSheet(self.theme, self.today)
        self._middle = QStackedWidget()
        self._middle.addWidget(self.preview)
        self._middle.addWidget(self.empty)
        self._pages = Label("", "small", "muted")
        self.save = WordButton(self.tr("Save as PDF…"), "Ctrl+Shift+P")
        self.print = WordButton(self.tr("Print…"), "Ctrl+P", strong=True)
        self._lay_out()

    def _lay_out(self) -> None:
        self._days = days = QHBoxLayout()
        head, tools, foot = self._rows = [FlowLayout(), FlowLayout(), FlowLayout()]
        head.addWidget(self._title)
        head.addWidget(self._detail)
        head.addWidget(self.whose)
        for widget in (self._earlier, self.field, self._later):
            days.addWidget(widget)
        days.addWidget(self._wrong, 1)
        tools.addWidget(together(days, growing=True))
        tools.addWidget(self.papers)
        for button in self._zoom_buttons():
            tools.addWidget(button)
        self._pages.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Preferred)
        foot.addWidget(self._pages)
        foot.addWidget(self.save)
        foot.addWidget(self.print)
        ground = QWidget()
        ground.setProperty("kind", "page")
        self._column = QVBoxLayout(ground)
        self._column.addLayout(head)
        self._column.addLayout(tools)
        self._column.addWidget(self._middle, 1)
        self._column.addLayout(foot)
        self.outer.addWidget(ground)

    def _zoom_buttons(self) -> list[WordButton]:
        made = []
        for text, act in (
            (self.tr("Smaller  −"), self.preview.smaller),
            (self.tr("Larger  +"), self.preview.larger),
            (self.tr("Whole page  0"), self.preview.fit_page),
        ):
            button = WordButton(text, tone="muted")
            button.setFocusPolicy(Qt.FocusPolicy.NoFocus)
            button.clicked.connect(act)
            made.append(button)
        return made

    def _connect(self) -> None:
        self.field.committed.connect(self._field_committed)
        self._earlier.clicked.connect(lambda: self._step(after=False))
        self._later.clicked.connect(lambda: self._step(after=True))
        self.empty.day_wanted.connect(self.show_day)
        self.empty.program_wanted.connect(lambda: self.area_wanted.emit(PROGRAM))
        self.papers.chosen.connect(self._paper_chosen)
        self.whose.chosen.connect(lambda _code: self._show())
        self.save.clicked.connect(self.ask_where)
        self.print.clicked.connect(self.ask_printer)
        self.theme.changed.connect(self._space)

    def _paper_chosen(self, code: str) -> None:
        self.theme.choose_paper(Paper(code))
        self._show()

    def _add_keys(self) -> None:
        for key, act in {
            "Ctrl+PgUp": lambda: self._step(after=False),
            "Ctrl+PgDown": lambda: self._step(after=True),
            "Alt+PgUp": lambda: self.show_day(self.day - _DAY),
            "Alt+PgDown": lambda: self.show_day(self.day + _DAY),
            "Alt+Home": lambda: self.show_day(self.today),
            "Ctrl+G": lambda: self.show_group(not self.grouped),
            "Ctrl+D": lambda: self.field.setFocus(Qt.FocusReason.ShortcutFocusReason),
        }.items():
            shortcut = QShortcut(QKeySequence(key), self)
            shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            shortcut.activated.connect(act)

    def _space(self) -> None:
        edge = self.theme.grid(3)
        self._column.setContentsMargins(edge, self.theme.grid(2), edge, self.theme.grid(1))
        self._column.setSpacing(self.theme.px(12))
        for row in self._rows:
            row.setContentsMargins(0, 0, 0, 0)
            row.setSpacing(self.theme.grid(1))
            row.line_gap = self.theme.px(4)
        self._days.setSpacing(self.theme.grid(1))
        self._rows[0].setSpacing(self.theme.grid(3))
        self.field.setFixedWidth(self.theme.grid(14))

    def showEvent(self, event: object) -> None:
        super().showEvent(event)
        self.preview.setFocus(Qt.FocusReason.OtherFocusReason)


def _next_day(history: History, today: date) -> date:
    """Today where something is asked, else the next day of training; today where none comes."""
    if why_empty(history, today) is WhyEmpty.NOT_EMPTY:
        return today
    return training_day_after(history, today) or today
