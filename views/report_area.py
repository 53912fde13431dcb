"""Reports: the trainee's progress over a span, their program, or everybody, as pages to save and to
print.
"""

from __future__ import annotations

from collections.abc import Generator, Sequence
from datetime import date, timedelta
from typing import Final

from PySide6.QtCore import QLocale, Qt
from PySide6.QtGui import QKeySequence
from PySide6.QtWidgets import (
    QHBoxLayout,
    QSizePolicy,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from db.changes import Changes
from db.errors import StoreError
from desktop.planning.coach_month import CoachMonth, coach_month
from desktop.planning.history import read_history
from desktop.planning.line_memory import LineMemory
from desktop.planning.outlook import Onlooker
from desktop.planning.program_weeks import ProgramWeeks
from desktop.planning.report import ReportError, TraineeReport, trainee_report
from desktop.planning.report_export import line_tables, month_table, session_table, sets_table
from desktop.planning.schedule import place_on
from desktop.planning.weeks_table import weeks_in_steps
from desktop.training.program import Program
from views import words
from views.blocks import Label, WordButton
from views.choice_row import Choice, ChoiceRow
from views.date_field import DateField
from views.elided_label import ElidedLabel
from views.flow_layout import FlowLayout, together
from views.number_fields import FieldError
from views.numbers_saving import Numbers, NumbersSaving
from views.paper import Paper
from views.paper_output import PaperOutput
from views.record import Record
from views.sentences import worded
from views.sheet_parts import Sheet
from views.sheet_preview import SheetPreview
from views.sheet_texts import SheetError
from views.steps_runner import StepsRunner
from views.theme import Theme
from views.work_area import WorkArea
from views.work_areas import PROGRESS

TRAINEE, PROGRAM, EVERYBODY = "trainee", "program", "everybody"
SPANS: Final = {"4": 4, "8": 8, "16": 16, "52": 52}
USUAL: Final = {TRAINEE: "16", PROGRAM: "16", EVERYBODY: "4"}
_DAY: Final = timedelta(days=1)


class ReportArea(WorkArea):
    """Pages of a report. Its span begins with the last sixteen weeks of a trainee, the last four of
    everybody.
    """

    def __init__(
        self, record: Record, today: date, theme: Theme, parent: QWidget | None = None
    ) -> None:
        super().__init__(record, today, theme, parent)
        self.week_starts = QLocale().firstDayOfWeek().value - 1
        self.last = today
        self.first = today - timedelta(weeks=SPANS[USUAL[TRAINEE]]) + _DAY
        self.sheet: Sheet | None = None
        self.report: TraineeReport | None = None
        self.month: CoachMonth | None = None
        self.saving = NumbersSaving(self, record, self.numbers_shown)
        self._runner = StepsRunner(self)
        self.output = PaperOutput(self, record, lambda: self.sheet)
        self._build()
        self._connect()
        self._space()

    # What is shown

    def refresh(self) -> None:
        """Make the report again."""
        self.report = self.month = None
        self._runner.give_up()
        of_program = self.kinds.code == PROGRAM
        for part in (self.spans, self._span):  # a program has its own weeks
            part.setVisible(not of_program)
        if of_program:
            self._start_program()
        elif self.kinds.code == EVERYBODY:
            self._start_everybody()
        else:
            self._show_trainee()

    def show_span(self, first: date, last: date) -> None:
        """Report on other days."""
        self.first, self.last = first, last
        self.from_field.set_day(first)
        self.to_field.set_day(last)
        self.refresh()

    def concerns(self, changes: Changes) -> bool:
        """A report of everybody is touched by any trainee's change."""
        everybody = self.kinds.code == EVERYBODY
        return bool(changes.kinds) and (everybody or super().concerns(changes))

    def keys(self) -> Sequence[tuple[str, str]]:
        """What keys do here."""
        return (
            (self.tr("One trainee, their program, everybody"), "T, P, E"),
            (self.tr("Span"), "1, 2, 3, 4"),
            (self.tr("Larger, smaller, whole page"), "+, −, 0"),
            (self.tr("Save as PDF…"), _native("Ctrl+Shift+P")),
            (self.tr("Print…"), _native("Ctrl+P")),
            (self.tr("Save the numbers…"), _native("Ctrl+S")),
            (self.tr("Progress"), _native("Ctrl+R")),
        )

    def leave(self) -> None:
        """Long work is not carried on behind another screen."""
        if self._runner.busy:
            self._runner.give_up()
            self.stale = True

    def _show_trainee(self) -> None:
        if self.trainee_id is None:
            self._show_nothing(self.tr("Choose a trainee in the roster, or everybody."))
            return
        from views.report_layout import lay_out_report

        try:
            self.report = trainee_report(
                self.record.repository, self.trainee_id, self.first, self.last, self.week_starts
            )
            if not self.report.sessions:
                text = self.tr("{name} did not train in this span: choose other days.")
                self._show_nothing(text.format(name=self.report.trainee.name))
                return
            sheet = lay_out_report(self.report, Paper(self.papers.code), self.week_starts)
        except StoreError as error:
            self.record.reported(error)
        except (ReportError, SheetError) as error:
            self._show_nothing(worded(error))
        else:
            self._show_sheet(sheet)

    def _start_program(self) -> None:
        if self.trainee_id is None:
            self._show_nothing(self.tr("Choose a trainee in the roster, or everybody."))
            return
        try:
            history = read_history(self.record.repository, self.trainee_id)
        except StoreError as error:
            self.record.reported(error)
            return
        place = place_on(history, self.today)
        if place is None:
            text = self.tr("{name} has no program now: give them one first.")
            self._show_nothing(text.format(name=history.trainee.name))
            return
        onlooker = Onlooker(history.library, self.today, history)
        self._runner.start(_weeks(place.program, onlooker), self._show_program, self._went_wrong)
        if self._runner.busy:
            self._show_nothing(self.tr("Reading the program…"))

    def _show_program(self, weeks: ProgramWeeks) -> None:
        from views.program_print import make_program_sheet

        self._show_sheet(make_program_sheet(weeks, Paper(self.papers.code)))

    def _start_everybody(self) -> None:
        work: Generator[float, None, CoachMonth] = coach_month(
            self.record.repository, self.first, self.last
        )
        self._runner.start(work, self._show_everybody, self._went_wrong)
        if self._runner.busy:
            self._show_nothing(self.tr("Reading everybody's record…"))
            self._give_up.show()

    def _show_everybody(self, month: CoachMonth) -> None:
        from views.month_report import lay_out_month

        self.month = month
        try:
            self._show_sheet(lay_out_month(month, Paper(self.papers.code)))
        except SheetError as error:
            self._show_nothing(worded(error))

    def _went_wrong(self, error: Exception) -> None:
        if isinstance(error, StoreError):
            self.record.reported(error)
        elif isinstance(error, ReportError):
            self._show_nothing(worded(error))
        else:
            raise error

    def _show_sheet(self, sheet: Sheet) -> None:
        self.sheet = sheet
        self.preview.show_sheet(sheet)
        self._middle.setCurrentWidget(self.preview)
        count = len(sheet.pages)
        text = self.tr("{count} pages") if count != 1 else self.tr("1 page")
        self._pages.setText(text.format(count=words.number(count)))
        self._detail.say(sheet.title)
        self._allow()

    def _show_nothing(self, why: str) -> None:
        self.sheet = None
        self.preview.show_sheet(None)
        self._why.setText(why)
        self._middle.setCurrentWidget(self._nothing)
        self._pages.setText("")
        self._detail.say("")
        self._allow()

    def _allow(self) -> None:
        self._give_up.setVisible(self._runner.busy)
        for button in (self.save, self.print):
            button.setEnabled(self.sheet is not None)
        self.numbers.setEnabled(self.sheet is not None and self.numbers_shown() is not None)

    # What can be done

    def numbers_shown(self) -> Numbers | None:
        """The figures of what is shown; None where they stand elsewhere, or there are none."""
        if self.report is not None:
            tables = ((self.tr("Sessions"), session_table(self.report)),)
            return Numbers(self._name(), tables, line_tables(self.report))
        if self.month is not None:
            people, weeks = month_table(self.month), sets_table(self.month)
            named = ((self.tr("Trainees"), people), (self.tr("Weeks"), weeks))
            return Numbers(self._name(), named, (people, weeks))
        return None

    def _name(self) -> str:
        if self.kinds.code == PROGRAM and self.sheet is not None:
            return self.sheet.title
        who = self.report.trainee.name if self.report is not None else self.tr("Everybody")
        return f"{who} {self.first.isoformat()} {self.last.isoformat()}"

    # Choosing

    def _take_kind(self, code: str) -> None:
        self.spans.choose(USUAL[code])
        self._take_span(USUAL[code])

    def _take_span(self, code: str) -> None:
        self.show_span(self.today - timedelta(weeks=SPANS[code]) + _DAY, self.today)

    def _take_days(self) -> None:
        first, last = self.from_field.day, self.to_field.day
        if first is not None and last is not None:
            self.spans.choose("")
            self.show_span(first, last)

    def _take_paper(self, code: str) -> None:
        self.theme.choose_paper(Paper(code))
        self.refresh()

    # How it is built

    def _build(self) -> None:
        self._title, self._detail = Label(self.tr("Reports"), "title"), ElidedLabel(tone="muted")
        self.kinds = ChoiceRow(self.theme, self.tr("Of whom"), self)
        self.kinds.offer(
            [
                Choice(TRAINEE, self.tr("The trainee"), "T"),
                Choice(PROGRAM, self.tr("The program"), "P"),
                Choice(EVERYBODY, self.tr("Everybody"), "E"),
            ],
            TRAINEE,
        )
        self.spans = ChoiceRow(self.theme, self.tr("Span"), self)
        choices = [
            Choice(code, words.weeks(weeks) if weeks < 52 else self.tr("1 year"), str(at))
            for at, (code, weeks) in enumerate(SPANS.items(), start=1)
        ]
        self.spans.offer(choices, USUAL[TRAINEE])
        self.from_field = DateField(self.tr("First day"), self.today)
        self.to_field = DateField(self.tr("Last day"), self.today)
        self._wrong = FieldError()
        for field, day in ((self.from_field, self.first), (self.to_field, self.last)):
            field.set_day(day)
            field.bind_error(self._wrong)
        self.papers = ChoiceRow(self.theme, self.tr("Paper"), self)
        self.papers.offer(
            [Choice(Paper.A4, self.tr("A4")), Choice(Paper.LETTER, self.tr("Letter"))],
            self.theme.paper,
        )
        self.preview = SheetPreview(self.theme)
        self.preview.setAccessibleName(self.tr("Preview of the report"))
        self._why = Label(wrap=True)
        self._give_up = WordButton(self.tr("Give up"))
        self._middle = QStackedWidget()
        self._pages = Label("", "small", "muted")
        self.numbers = WordButton(self.tr("Numbers…"), "Ctrl+S")
        self.save = WordButton(self.tr("Save as PDF…"), "Ctrl+Shift+P")
        self.print = WordButton(self.tr("Print…"), "Ctrl+P", strong=True)
        self.back = WordButton(self.tr("Progress"), "Ctrl+R")
        self._lay_out()

    def _lay_out(self) -> None:
        self._nothing = QWidget()
        column = QVBoxLayout(self._nothing)
        column.addWidget(self._why)
        column.addWidget(self._give_up, 0, Qt.AlignmentFlag.AlignLeft)
        column.addStretch(1)
        self._middle.addWidget(self.preview)
        self._middle.addWidget(self._nothing)
        self._days = days = QHBoxLayout()
        head, tools, foot = self._rows = [FlowLayout(), FlowLayout(), FlowLayout()]
        head.addWidget(self._title)
        head.addWidget(self._detail)
        head.addWidget(self.kinds)
        for widget in (self.from_field, Label("–", tone="muted"), self.to_field):
            days.addWidget(widget)
        days.addWidget(self._wrong, 1)
        self._span = together(days, growing=True)
        for part in (self.spans, self._span, self.papers):
            tools.addWidget(part)
        self._pages.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Preferred)
        foot.addWidget(self._pages)
        for button in (self.back, self.numbers, self.save, self.print):
            foot.addWidget(button)
        foot.setAlignment(self.print, Qt.AlignmentFlag.AlignRight)  # in a line of its own too
        ground = QWidget()
        ground.setProperty("kind", "page")
        self._column = QVBoxLayout(ground)
        self._column.addLayout(head)
        self._column.addLayout(tools)
        self._column.addWidget(self._middle, 1)
        self._column.addLayout(foot)
        self.outer.addWidget(ground)

    def _connect(self) -> None:
        self.kinds.chosen.connect(self._take_kind)
        self.spans.chosen.connect(self._take_span)
        self.papers.chosen.connect(self._take_paper)
        self.from_field.committed.connect(self._take_days)
        self.to_field.committed.connect(self._take_days)
        self._give_up.clicked.connect(self._stop)
        self.save.clicked.connect(lambda: self.output.ask_where(self._name()))
        self.print.clicked.connect(self.output.ask_printer)
        self.numbers.clicked.connect(lambda: self.saving.ask_how(self.numbers))
        self.back.clicked.connect(lambda: self.area_wanted.emit(PROGRESS))
        self._runner.progressed.connect(self._say_share)
        self.theme.changed.connect(self._space)

    def _stop(self) -> None:
        self._runner.give_up()
        self._show_nothing(self.tr("Given up. Choose a span to begin again."))

    def _say_share(self, share: float) -> None:
        text = self.tr("Reading everybody's record: {share}")
        self._why.setText(text.format(share=words.percent(share)))

    def _space(self) -> None:
        edge = self.theme.grid(3)
        self._column.setContentsMargins(edge, self.theme.grid(2), edge, self.theme.grid(1))
        self._column.setSpacing(self.theme.px(12))
        for row in self._rows:
            row.setContentsMargins(0, 0, 0, 0)
            row.setSpacing(self.theme.grid(1))
            row.line_gap = self.theme.px(4)
        self._rows[0].setSpacing(self.theme.grid(3))
        self._days.setSpacing(self.theme.grid(1))
        for field in (self.from_field, self.to_field):
            field.setFixedWidth(self.theme.grid(14))

    def showEvent(self, event: object) -> None:
        super().showEvent(event)
        self.preview.setFocus(Qt.FocusReason.OtherFocusReason)


def _weeks(program: Program, onlooker: Onlooker) -> Generator[float, None, ProgramWeeks]:
    """The weeks of a program, line by line; how much is done is not known before the end."""
    for whole in weeks_in_steps(program, onlooker, LineMemory()):
        if whole is not None:
            return whole
        yield 0.0
    raise AssertionError("the last step gives the weeks")


def _native(key: str) -> str:
    return QKeySequence(key).toString(QKeySequence.SequenceFormat.NativeText)
