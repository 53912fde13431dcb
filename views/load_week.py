"""The week: load by day, its figures, hard sets by muscle, other activities, and sixteen weeks."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import date
from itertools import pairwise

from PySide6.QtCore import QLocale, Qt, QTimer, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import (
    QBoxLayout,
    QCheckBox,
    QGridLayout,
    QHBoxLayout,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from desktop.planning.history import History
from desktop.planning.load import LoadHistory, TrainedWeek, load_history_of
from desktop.planning.load_export import day_table, week_table
from desktop.training.session import Activity
from views import words
from views.activity_rows import ActivityRows
from views.blocks import Block, Label, MainButton, Page, WordButton
from views.day_loads import DayLoads
from views.elided_label import ElidedLabel
from views.load_legend import LoadLegend
from views.load_part import LoadPart
from views.load_texts import (
    Figure,
    activity_act,
    figures_of,
    sources_text,
    week_sentence,
    wellness_text,
)
from views.load_weeks import LoadWeeks
from views.muscle_bars import MuscleBars, muscle_sets
from views.numbers_saving import Numbers, NumbersSaving
from views.record import MessageKind, Record
from views.theme import Theme
from views.work_areas import PROGRAM, SESSION

_BESIDE = 760


class LoadWeek(LoadPart):
    """One week of one trainee. ``week_changed`` when another week is looked at."""

    week_changed = Signal()

    def __init__(self, record: Record, today: date, theme: Theme) -> None:
        super().__init__()
        self._record, self._today, self._theme = record, today, theme
        self._history: History | None = None
        self.told: LoadHistory | None = None
        self.at = 0
        self.sentence = Label(size="answer", wrap=True)
        self.days = DayLoads(theme, today)
        self.figures = QGridLayout()
        self.wellness = Label(size="small", tone="muted", wrap=True)
        self.muscles = MuscleBars(theme)
        self.activities = ActivityRows(theme, today)
        self.all_recorded = QCheckBox()
        self.weeks = LoadWeeks(theme)
        self.numbers = WordButton(self.tr("Numbers…"), "Ctrl+S")
        self.saving = NumbersSaving(self, record, self.numbers_shown)
        self.why = WordButton(self.tr("Sources"))
        self.sources = Label(sources_text(), "small", "muted", wrap=True)
        self.sources.hide()
        self.beginning = Block(theme)
        self._beginning = Label(wrap=True)
        self.start = MainButton("")
        self._start_area = SESSION
        self._assemble()
        self._connect()

    # Showing

    @property
    def week(self) -> TrainedWeek | None:
        """The week looked at."""
        return self.told.weeks[self.at] if self.told else None

    def show_history(self, history: History) -> None:
        """Show a trainee; the week looked at stays where the same trainee is shown again."""
        same = self._history is not None and self._history.trainee_id == history.trainee_id
        self._history = history
        starts = QLocale().firstDayOfWeek().value - 1
        self.told = load_history_of(history, self._today, week_starts=starts)
        last = len(self.told.weeks) - 1
        self.at = min(self.at, last) if same else self._first_week(self.told)
        self._show()

    def step(self, by: int) -> None:
        """Look at a week earlier or later."""
        self.look_at(self.at + by)

    def look_at(self, index: int) -> None:
        """Look at another week; one that is not among them is left out."""
        if self.told is not None and 0 <= index < len(self.told.weeks) and index != self.at:
            self.at = index
            self._show()

    def ask_what_is_recorded(self) -> None:
        """Put the cursor on the word whether all activities are recorded."""
        self.all_recorded.setFocus(Qt.FocusReason.OtherFocusReason)

    def _first_week(self, told: LoadHistory) -> int:
        """The running week; on its first days, with nothing in it yet, the one before."""
        last = len(told.weeks) - 1
        week = told.weeks[last]
        begun = week.done or week.activities or week.load.unrated
        return last if begun or told.empty else last - 1

    def _show(self) -> None:
        told, history, week = self.told, self._history, self.week
        if told is None or history is None or week is None:
            return
        self._say_beginning(told, history)
        most = max(day.load for each in told.weeks for day in each.days)
        self.sentence.setText(week_sentence(told, self.at))
        self.days.show_days(week.days, most)
        sample = history.library.settings.monotony_sample
        averages = told.averages_on(week.last)
        self._show_figures(figures_of(week, sample=sample, averages=averages))
        self.wellness.setText(wellness_text(week.wellness))
        self.wellness.setVisible(bool(self.wellness.text()))
        self.muscles.show_sets(
            muscle_sets(week.sets_done, week.sets_planned, to_come=not week.load.whole)
        )
        names = dict.fromkeys(each.name for each in reversed(history.activities))
        self.activities.show_activities(
            history.trainee_id,
            [a for a in history.activities if week.first <= a.day <= week.last],
            list(names),
            self._today if week.first <= self._today <= week.last else week.first,
        )
        for first, second in pairwise(
            (self.why, *self.activities.widgets, self.all_recorded, self.numbers, self.weeks)
        ):
            QWidget.setTabOrder(first, second)
        self.all_recorded.setChecked(told.recorded)
        text = self.tr("All activities of {name} are recorded here")
        self.all_recorded.setText(text.format(name=history.trainee.name).replace("&", "&&"))
        self.weeks.show_load(told, self.at)
        self.week_changed.emit()

    def _say_beginning(self, told: LoadHistory, history: History) -> None:
        self.beginning.setVisible(told.empty)
        self.sentence.setVisible(not told.empty)
        self._top.setVisible(not told.empty)
        self._sixteen.setVisible(not told.empty)
        first = self.tr(
            "Effort (0-10) times minutes of each session and of every other activity makes the "
            "training load. A week of it shows whether days differ; four weeks show what is usual."
        )
        planned = bool(history.assignments)
        before = "" if planned else self.tr("{name} needs a program first.")
        self._beginning.setText(f"{before.format(name=history.trainee.name)} {first}".strip())
        self._start_area = SESSION if planned else PROGRAM
        words_ = self.tr("Type the first session") if planned else self.tr("Choose a program")
        self.start.setText(words_)
        self.start.setAccessibleName(words_)

    def _show_figures(self, figures: Sequence[Figure]) -> None:
        while (item := self.figures.takeAt(0)) is not None:
            if (widget := item.widget()) is not None:
                widget.hide()
                widget.deleteLater()
        for place, figure in enumerate(figures):
            name, value = Label(figure.name, tone="muted"), Label(figure.value)
            short = Label(figure.short, "small", "muted", wrap=True)
            name.setAccessibleDescription(figure.meaning)
            right = Qt.AlignmentFlag.AlignRight
            for column, label in enumerate((name, value, short)):
                label.setToolTip(figure.meaning)
                self.figures.addWidget(
                    label, place, column, right if column == 1 else Qt.AlignmentFlag(0)
                )

    # Doing

    def numbers_shown(self) -> Numbers | None:
        told = self.told
        if told is None or told.empty:
            return None
        days, weeks = day_table(told), week_table(told)
        title = self.tr("Load of {name}").format(name=told.trainee.name)
        return Numbers(
            f"{title} {told.today.isoformat()}",
            ((self.tr("Days"), days), (self.tr("Weeks and muscles"), weeks)),
            (days, weeks),
        )

    def _save(self, activity: Activity) -> None:
        if self._record.save(activity_act(activity), activity) is None:
            return
        self._look_at_day(activity.day)
        if activity.id is None:  # once the field that was typed in has let go of the cursor
            QTimer.singleShot(0, self.activities.begin)

    def _look_at_day(self, day: date) -> None:
        told = self.told
        if told is None:
            return
        for index, week in enumerate(told.weeks):
            if week.first <= day <= week.last:
                self.look_at(index)
                return
        said = self.tr("Recorded on {day}, which is not among these weeks")
        self._record.say(said.format(day=words.full_day(day)), MessageKind.NOTE)

    def _remove(self, activity: Activity) -> None:
        text = self.tr("Remove {activity}").format(activity=activity_act(activity))
        if self._record.remove(text, activity):
            self._record.say(text, MessageKind.DONE)
            self.activities.begin()

    def _say_recorded(self, on: bool) -> None:
        if self._history is None:
            return
        trainee = replace(self._history.trainee, activities_recorded=on)
        act = self.tr("What is recorded of {name}").format(name=trainee.name)
        self._record.save(act, trainee)

    # Putting together

    def _connect(self) -> None:
        self.weeks.chosen.connect(self.look_at)
        self.numbers.clicked.connect(lambda: self.saving.ask_how(self.numbers))
        self.activities.saved.connect(self._save)
        self.activities.removed.connect(self._remove)
        self.all_recorded.clicked.connect(self._say_recorded)
        self.why.clicked.connect(lambda: self.sources.setVisible(self.sources.isHidden()))
        self.start.clicked.connect(lambda: self.area_wanted.emit(self._start_area))

    def _assemble(self) -> None:
        theme = self._theme
        page = Page(theme)
        self.beginning.body.addWidget(self._beginning)
        self.beginning.body.addWidget(self.start)
        self._top = self._week_block()
        self._sixteen = self._weeks_block()
        for widget in (
            self.beginning, self.sentence, self._top, self._activities_block(), self._sixteen
        ):  # fmt: skip
            page.body.addWidget(widget)
        page.body.addStretch(1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(page)

    def _week_block(self) -> Block:
        theme = self._theme
        block = Block(theme)
        left = QVBoxLayout()
        left.setSpacing(theme.grid())
        first = self._heading(self.tr("Load by day"))
        first.setMinimumHeight(self.why.sizeHint().height())  # as high as the one beside it
        left.addWidget(first)
        legend = LoadLegend(
            theme,
            (("sessions", self.tr("sessions")), ("activities", self.tr("other activities"))),
        )
        left.addWidget(legend)
        left.addWidget(self.days)
        self.figures.setHorizontalSpacing(theme.grid(2))
        self.figures.setVerticalSpacing(theme.px(2))
        self.figures.setColumnStretch(2, 1)
        left.addLayout(self.figures)
        left.addWidget(self.wellness)
        left.addStretch(1)
        right = QVBoxLayout()
        right.setSpacing(theme.grid())
        heading = self._heading(
            self.tr("Hard sets by muscle"),
            self.tr("dotted: published marks"),
        )
        top = QHBoxLayout()
        top.addWidget(heading, 1)
        top.addWidget(self.why)
        right.addLayout(top)
        right.addWidget(self.muscles)
        right.addStretch(1)
        self._halves = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        self._halves.setSpacing(theme.grid(4))
        self._halves.addLayout(left, 1)
        self._halves.addLayout(right, 1)
        block.body.addLayout(self._halves)
        block.body.addWidget(self.sources)
        return block

    def _activities_block(self) -> Block:
        block = Block(self._theme)
        block.body.addWidget(
            self._heading(self.tr("Other activities"), self.tr("of this week; they count as load"))
        )
        block.body.addWidget(self.activities)
        block.body.addWidget(self.all_recorded)
        return block

    def _weeks_block(self) -> Block:
        block = Block(self._theme)
        heading = self._heading(
            self.tr("Sixteen weeks"), self.tr("load by day; hard sets by muscle")
        )
        top = QHBoxLayout()
        top.addWidget(heading, 1)
        top.addWidget(self.numbers)
        block.body.addLayout(top)
        block.body.addWidget(
            LoadLegend(
                self._theme,
                (
                    ("sessions", self.tr("sessions")),
                    ("activities", self.tr("other activities")),
                    ("short", self.tr("average over 7 days")),
                    ("long", self.tr("over 28 days")),
                ),
            )
        )
        block.body.addWidget(self.weeks)
        return block

    def _heading(self, title: str, detail: str = "") -> QWidget:
        made = QWidget()
        made.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)
        row = QHBoxLayout(made)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(self._theme.px(10))
        row.addWidget(Label(title, "heading"))
        aside = ElidedLabel(tone="muted")
        aside.say(detail)
        row.addWidget(aside, 1, Qt.AlignmentFlag.AlignBottom)
        return made

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        beside = self.width() >= self._theme.px(_BESIDE)
        ways = QBoxLayout.Direction
        self._halves.setDirection(ways.LeftToRight if beside else ways.TopToBottom)
