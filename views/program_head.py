"""The head of a program: its name, how long it is and for whom it runs; giving it to a trainee."""

from __future__ import annotations

from datetime import date
from typing import Final

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QFontMetrics, QKeyEvent
from PySide6.QtWidgets import (
    QCheckBox,
    QFrame,
    QHBoxLayout,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from desktop.planning.assessment_weeks import begins_with_tests
from desktop.training.program import Assignment, PhasePurpose, Program
from desktop.training.trainee import Trainee
from views import words
from views.blocks import MainButton, WordButton
from views.captioned import Captioned, keyed_word
from views.date_field import DateField
from views.elided_label import ElidedLabel
from views.flow_layout import FieldFlow
from views.key_word import KeyWord
from views.number_fields import FieldError
from views.program_shelf import days_words
from views.rows_editor import TextField
from views.theme import TextSize, Theme
from views.weeks_page import PRINT_KEY, WEEKS_KEY

REPLACE_KEY: Final = "Ctrl+H"
SHELF_KEY: Final = "F4"
TEST_KEY: Final = "F8"
GIVE_KEY: Final = "F9"


class TitleField(TextField):
    """A title that is renamed where it stands; as wide as what is written.

    ``done`` on Return, after what was typed has been taken; ``given_up`` on Escape.
    """

    done = Signal()
    given_up = Signal()

    def __init__(self, theme: Theme, name: str, parent: QWidget | None = None) -> None:
        super().__init__(name, parent)
        self._theme = theme
        self.setProperty("kind", "quiet")
        self.setProperty("scale", "title")
        self.setToolTip(self.tr("Type to rename"))
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        self.textChanged.connect(self._fit)
        theme.changed.connect(self._fit)

    def _fit(self) -> None:
        metrics = QFontMetrics(self._theme.font(TextSize.TITLE, bold=True))
        text = self.text() or self.placeholderText()
        wide = metrics.horizontalAdvance(text) + self._theme.px(24)
        self.setFixedWidth(max(self._theme.px(120), min(self._theme.px(520), wide)))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self.setText(self._last)
            self.given_up.emit()
        elif event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.editingFinished.emit()
            self.done.emit()
        else:
            super().keyPressEvent(event)


class ProgramHead(QWidget):
    """Name, length, whose program it is, and what can be done with all of it."""

    renamed = Signal(str)
    shelf_wanted = Signal()
    assign_wanted = Signal()
    end_wanted = Signal()
    replace_wanted = Signal()
    weeks_wanted = Signal()
    print_wanted = Signal()
    test_wanted = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.name = TitleField(theme, self.tr("Name of the program"))
        self.name.setPlaceholderText(self.tr("Name"))
        self._detail = ElidedLabel(tone="muted")
        self.assign = KeyWord("", GIVE_KEY)
        self.assign.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.end = WordButton(self.tr("End"), tone="muted")
        self.replace = keyed_word(self.tr("Replace"), REPLACE_KEY, tone="")
        self.shelf = keyed_word(self.tr("Programs"), SHELF_KEY, tone="")
        self.weeks = keyed_word(self.tr("Weeks ahead"), WEEKS_KEY, tone="")
        self.print = keyed_word(self.tr("Print"), PRINT_KEY, tone="")
        self.test = KeyWord("", TEST_KEY)
        self.test.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self._theme = theme
        self._column = QVBoxLayout(self)
        self._top = QHBoxLayout()
        self._top.addWidget(self.name)
        self._top.addWidget(self._detail, 1)
        self._column.addLayout(self._top)
        self._acts = QWidget()
        acts = FieldFlow(theme.px(2), 0, self._acts, centred=True)
        for button in (
            self.weeks, self.assign, self.end, self.replace, self.test, self.print, self.shelf,
        ):  # fmt: skip
            acts.addWidget(button)
        self._column.addWidget(self._acts)
        theme.changed.connect(self._space)
        self._space()
        self.name.committed.connect(lambda: self.renamed.emit(self.name.text().strip()))
        self.shelf.clicked.connect(self.shelf_wanted)
        self.assign.clicked.connect(self.assign_wanted)
        self.end.clicked.connect(self.end_wanted)
        self.replace.clicked.connect(self.replace_wanted)
        self.weeks.clicked.connect(self.weeks_wanted)
        self.print.clicked.connect(self.print_wanted)
        self.test.clicked.connect(self.test_wanted)

    def _space(self) -> None:
        """Words begin where the title does."""
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(self._theme.px(2))
        self._top.setSpacing(self._theme.grid(2))
        self._acts.setContentsMargins(0, 0, 0, 0)

    @property
    def detail(self) -> str:
        """What is said of the program."""
        return self._detail.whole

    def give(self) -> None:
        """Ask to give it to the trainee, where that can be."""
        if not self.assign.isHidden():
            self.assign_wanted.emit()

    def show_program(
        self,
        program: Program,
        days_a_week: int,
        trainee: Trainee | None,
        assignment: Assignment | None,
        today: date,
    ) -> None:
        """Show a program, and how it stands with the trainee chosen."""
        if not self.name.hasFocus() or self.name.text() == "":
            self.name.set_value(program.name)
        parts = [words.weeks(program.weeks), days_words(days_a_week)]
        if trainee is not None and assignment is not None:
            begun = assignment.start <= today
            text = (
                self.tr("{name} started on {day}") if begun else self.tr("{name} starts on {day}")
            )
            day = words.short_day(assignment.start, today)
            parts.append(text.format(name=trainee.name, day=day))
        self._detail.say(words.DOT.join(parts))
        first = tests_come_first(program, assignment, today)
        self.test.set_words(
            self.tr("Put a test week first") if first else self.tr("Test again at the end")
        )
        self.assign.setVisible(trainee is not None and assignment is None)
        if trainee is not None:
            self.assign.set_words(self.tr("Give to {name}").format(name=trainee.name))
            self.end.set_words(self.tr("End for {name}").format(name=trainee.name))
        self.end.setVisible(assignment is not None)


def tests_come_first(program: Program, assignment: Assignment | None, today: date) -> bool:
    """Whether a test week would be put first: not where one is, nor under a running program."""
    begun = assignment is not None and assignment.start <= today
    return not begun and not begins_with_tests(program)


class AssignPanel(QFrame):
    """When a trainee starts and on which days; ``assigned(date, weekdays)``."""

    assigned = Signal(object, tuple)
    closed = Signal()

    def __init__(self, theme: Theme, today: date, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("kind", "block")
        self._theme, self._today = theme, today
        self._own: tuple[int, ...] = ()
        self._count: int | None = None
        self.days: dict[int, QCheckBox] = {}
        self.start = DateField(self.tr("First day"), today)
        self.error = FieldError()
        self.start.bind_error(self.error)
        self.give = MainButton(self.tr("Give"))
        self._close = keyed_word(self.tr("Close"), "Esc", tone="")
        self._assemble()
        self.give.clicked.connect(self._assign)
        self._close.clicked.connect(self.closed)

    def ask(self, program: Program, trainee: Trainee) -> None:
        """Ask for the start of ``program`` for ``trainee``: today, on the program's weekdays."""
        self.give.setText(self.tr("Give it to {name}").format(name=trainee.name).replace("&", "&&"))
        self.start.set_day(self._today)
        self.error.setText("")
        trained = [phase for phase in program.phases if phase.purpose is not PhasePurpose.ASSESS]
        days = next((phase.days for phase in trained or program.phases if phase.days), ())
        fixed = tuple(day.weekday for day in days if day.weekday is not None)
        self._own = fixed
        self._count = len(days) if len(fixed) == len(days) else None
        chosen = fixed or trainee.weekdays
        for weekday, box in self.days.items():
            box.setChecked(weekday in chosen)
        self.show()
        self.start.setFocus(Qt.FocusReason.TabFocusReason)
        self.start.selectAll()

    def say(self, text: str) -> None:
        """Say why it cannot be given like this."""
        self.error.setText(text)

    def _assign(self) -> None:
        if not self.start.check():
            return
        day = self.start.day
        if day is None:
            self.say(self.tr("Say when it starts."))
            return
        chosen = tuple(sorted(weekday for weekday, box in self.days.items() if box.isChecked()))
        if self._count is not None and len(chosen) != self._count:
            text = self.tr("The program has {count} days a week: choose as many weekdays.")
            self.say(text.format(count=self._count))
            return
        self.assigned.emit(day, () if set(chosen) == set(self._own) else self._in_order(chosen))

    def _in_order(self, chosen: tuple[int, ...]) -> tuple[int, ...]:
        """The weekdays in the order of the program's days: the earliest for the earliest."""
        if self._count is None:
            return chosen
        places = sorted(range(len(self._own)), key=lambda place: self._own[place])
        ordered = list(self._own)
        for place, weekday in zip(places, chosen, strict=True):
            ordered[place] = weekday
        return tuple(ordered)

    def _assemble(self) -> None:
        line = QWidget()
        flow = FieldFlow(self._theme.px(14), self._theme.px(6), line)
        flow.addWidget(Captioned(self._theme, self.tr("First day"), self.start, 110))
        for weekday in words.weekdays_in_order():
            box = QCheckBox(words.short_weekday(weekday))
            box.setAccessibleName(words.weekday(weekday))
            self.days[weekday] = box
            flow.addWidget(box)
        flow.addWidget(self.give)
        flow.addWidget(self._close)
        column = QVBoxLayout(self)
        inside = self._theme.grid(2)
        column.setContentsMargins(inside, self._theme.px(8), inside, self._theme.px(8))
        column.setSpacing(self._theme.px(4))
        column.addWidget(line)
        column.addWidget(self.error)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self.closed.emit()
        elif event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self._assign()
        else:
            super().keyPressEvent(event)
