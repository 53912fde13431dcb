"""Progress: is this trainee getting stronger, how sure is that, and when does the goal come.

The answer in a sentence first, the picture after it.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from functools import partial
from typing import TYPE_CHECKING, Final

from PySide6.QtCore import QLocale, Qt, QTimer
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QVBoxLayout, QWidget

from db.errors import StoreError
from desktop.planning.history import History
from desktop.planning.line_history import read_about, with_line
from desktop.planning.progress import LineProgress, progress_of
from desktop.planning.trained_lines import TrainedLine, line_name, trained_lines
from desktop.training.exercises import LoadingKind
from views import words
from views.blocks import Label, Page, WordButton
from views.chart_saving import ChartSaving, Saved
from views.choice_row import Choice, ChoiceRow, ToggleWord
from views.comparing import Comparing
from views.elided_label import ElidedLabel
from views.goal_here import GoalHere
from views.line_choice import LineChoice
from views.load_steps import LoadSteps
from views.measures import Shown, loads_done, measures_of
from views.no_progress import NoProgress
from views.progress_head import ChoicesAbove, ProgressHead
from views.progress_keys import MEASURE_KEYS, progress_keys
from views.progress_series import Series, series_of
from views.progress_texts import measure_detail, measure_word
from views.record import Record
from views.statement_texts import statement_text
from views.theme import Theme
from views.work_area import WorkArea
from views.work_areas import REPORT

if TYPE_CHECKING:
    from views.chart_block import ChartBlock

SPANS: Final[dict[str, int | None]] = {"8": 8, "16": 16, "52": 52, "all": None}
USUAL_SPAN: Final = "16"


class ProgressArea(WorkArea):
    """One line of the trainee: the statement, its chart, the weeks under it, a table beside it."""

    def __init__(
        self, record: Record, today: date, theme: Theme, parent: QWidget | None = None
    ) -> None:
        super().__init__(record, today, theme, parent)
        self.week_starts = QLocale().firstDayOfWeek().value - 1
        self.block: ChartBlock | None = None
        self.progress: LineProgress | None = None
        self._about: History | None = None
        self._lines: tuple[TrainedLine, ...] = ()
        self._wanted: dict[int, int] = {}
        self._measure: dict[int, str] = {}
        self._load_g: dict[int, int] = {}
        self.lines = LineChoice(theme)
        self.detail = ElidedLabel(tone="muted")
        self.statement = Label(size="answer", wrap=True)
        self.measures = ChoiceRow(theme, self.tr("What is shown"), self)
        self.spans = ChoiceRow(theme, self.tr("Span"), self)
        self.table = ToggleWord(self.tr("Table"), "T", self)
        self.body_mass = ToggleWord(self.tr("Body mass"), "B", self)
        self.load_steps = LoadSteps(theme, self)
        self.comparing = Comparing(record, today, theme, self.week_starts, self)
        self.goal_here = GoalHere(record, today, theme, self)
        self.saving = ChartSaving(self, record, self.what_to_save)
        self.save = WordButton(self.tr("Save as…"), "Ctrl+S")
        self.report = WordButton(self.tr("Report"), "Ctrl+R")
        self._assemble()
        self._connect()

    # Putting together

    def _assemble(self) -> None:
        self._page = Page(self.theme)
        actions = (
            self.body_mass,
            self.table,
            self.comparing.button,
            self.goal_here.button,
            self.save,
            self.report,
        )
        self._head = ProgressHead(self.theme, self.lines, self.detail, actions)
        self._choices = ChoicesAbove(self.theme, self.measures, self.load_steps, self.spans)
        self._shown = QWidget()
        self._column = QVBoxLayout(self._shown)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(self.theme.grid())
        self._column.addWidget(self._head)
        self._column.addWidget(self.statement)
        self._column.addWidget(self.comparing.chooser)
        self._column.addWidget(self.goal_here.panel)
        self._column.addWidget(self._choices)
        self._chart_place = QWidget()  # keeps the words at the top until the chart is there
        self._column.addWidget(self._chart_place, 1)
        self.beginning = NoProgress(self.theme)
        self._page.body.addWidget(self.beginning)
        self._page.body.addWidget(self._shown, 1)
        self.outer.addWidget(self._page)

    def _connect(self) -> None:
        self.lines.chosen.connect(self._take_line)
        self.measures.chosen.connect(self._take_measure)
        self.spans.chosen.connect(self._take_span)
        self.load_steps.chosen.connect(self._take_load)
        self.comparing.asked.connect(self._ask_rival)
        self.comparing.changed.connect(self._take_rival)
        self.comparing.chooser.given_up.connect(self._focus_chart)
        self.goal_here.asked.connect(self._ask_goal)
        self.goal_here.closed.connect(self._focus_chart)
        self.table.toggled.connect(self._toggle_table)
        self.body_mass.toggled.connect(self._toggle_body_mass)
        self.save.clicked.connect(lambda: self.saving.ask_how(self.save))
        self.report.clicked.connect(lambda: self.area_wanted.emit(REPORT))
        self.beginning.area_wanted.connect(self.area_wanted)
        for key, by in (("Ctrl+PgDown", 1), ("Ctrl+PgUp", -1)):
            shortcut = QShortcut(QKeySequence(key), self)
            shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            shortcut.activated.connect(lambda by=by: self.lines.step(by))
        self.spans.offer(
            (
                Choice("8", words.weeks(8), "1"),
                Choice("16", words.weeks(16), "2"),
                Choice("52", self.tr("1 year"), "3"),
                Choice("all", self.tr("all"), "4"),
            ),
            USUAL_SPAN,
        )

    # Showing

    def refresh(self) -> None:
        """Read the trainee again and show the line chosen."""
        if self.trainee_id is None:
            return
        try:
            if self._about is None or self._about.trainee_id != self.trainee_id:
                self.comparing.rival = None
                self.goal_here.hide()
            self._about = read_about(self.record.repository, self.trainee_id)
            self._lines = trained_lines(self.record.repository, self._about, self.today)
        except StoreError as error:
            self.record.reported(error)
            return
        trained = any(one.last for one in self._lines)
        self.beginning.setVisible(not trained)
        self._shown.setVisible(trained)
        if not trained:
            self.progress = None
            self.beginning.say(self._about.trainee.name, planned=bool(self._lines))
            QTimer.singleShot(0, self.drawn.emit)
            return
        self.lines.show_lines(
            [one for one in self._lines if one.last],
            self._line_wanted(),
            partial(line_name, self._about),
            self.today,
        )
        self._show_line()

    def _line_wanted(self) -> int | None:
        """The line looked at before, else the one trained last."""
        ids = [one.line.id for one in self._lines if one.last]
        wanted = self._wanted.get(self.trainee_id or 0)
        return wanted if wanted in ids else ids[0]

    def _show_line(self) -> None:
        about, line_id = self._about, self.lines.line_id
        if about is None or line_id is None:
            return
        line = about.line(line_id)
        try:
            history = with_line(self.record.repository, about, line, self.today)
        except StoreError as error:
            self.record.reported(error)
            return
        self.progress = progress_of(history, line, self.today, self.week_starts)
        self.comparing.read()
        self.statement.setText(statement_text(self.progress, history.trainee.unit))
        self._offer_measures()
        # The first chart waits until the words stand on the screen: its library takes a while.
        if self.block is None:
            QTimer.singleShot(0, self.draw)
        else:
            self.draw()
        QTimer.singleShot(0, self._arrange)

    def keys(self) -> Sequence[tuple[str, str]]:
        """What keys do here."""
        return progress_keys()

    def draw(self) -> None:
        """Draw the line and measure chosen; the first time, fetch the chart library."""
        if self.progress is None or self._about is None:
            return
        block = self.block or self._build_block()
        before = block.session_id
        series = self._series(self.progress, self._about)
        block.show_series(series, self._names(), SPANS[self.spans.code])
        if before is not None:
            block.choose_session(before)
        self._say_detail(series)
        self.body_mass.setVisible(series.body_mass is not None)
        block.describe(f"{self.lines.currentText()}: {self._detail(series)}", self.statement.text())

    def _series(self, progress: LineProgress, about: History) -> Series:
        """The measure chosen, with what it is compared with; the answer in words follows."""
        load_g = self._load_g.get(progress.line.id or 0)
        alone = series_of(progress, self._shown_measure(), about.trainee.unit, load_g)
        self.load_steps.setVisible(alone.load_g is not None)
        if alone.load_g is not None:
            self.load_steps.offer(loads_done(progress), alone.load_g, alone.unit)
        series = self.comparing.beside(alone)
        said = self.comparing.sentence(about, series, progress)
        self.statement.setText(said or statement_text(progress, alone.unit))
        return series

    def _build_block(self) -> ChartBlock:
        from views.chart_block import ChartBlock

        block = self.block = ChartBlock(self.theme, self.today, self.week_starts)
        block.session_wanted.connect(self.session_wanted)
        block.chart.painted.connect(self.drawn)
        block.offer(self.saving.actions)
        block.show_table(self.table.on)
        block.chart.body_mass_shown = self.body_mass.on
        self._column.replaceWidget(self._chart_place, block)
        self._column.setStretchFactor(block, 1)
        self._chart_place.deleteLater()
        return block

    def _offer_measures(self) -> None:
        assert self.progress is not None
        bodyweight = self._bodyweight()
        choices = [
            Choice(
                shown.value,
                measure_word(shown, bodyweight=bodyweight),
                MEASURE_KEYS[shown],
            )
            for shown in measures_of(self.progress)
        ]
        codes = [choice.code for choice in choices]
        wanted = self._measure.get(self.lines.line_id or 0, "")
        self.measures.offer(choices, wanted if wanted in codes else codes[0])

    def _shown_measure(self) -> Shown:
        return Shown(self.measures.code)

    def _bodyweight(self) -> bool:
        return (
            self.progress is not None and self.progress.exercise.loading is LoadingKind.BODYWEIGHT
        )

    def _names(self) -> dict[str, str]:
        return {step.key: step.name for step in self.progress.scale} if self.progress else {}

    def _detail(self, series: Series) -> str:
        return measure_detail(series.shown, bodyweight=series.bodyweight)

    def _say_detail(self, series: Series) -> None:
        assert self._about is not None
        parts = [self._about.trainee.name, self._detail(series)]
        self.detail.say(words.DOT.join(parts))

    # Choosing

    def _take_line(self, line_id: int) -> None:
        self._wanted[self.trainee_id or 0] = line_id
        self.comparing.rival = None
        self.goal_here.hide()
        self._show_line()

    def _take_measure(self, code: str) -> None:
        self._measure[self.lines.line_id or 0] = code
        self.draw()

    def _take_load(self, load_g: int) -> None:
        self._load_g[self.lines.line_id or 0] = load_g
        self.draw()

    def _ask_rival(self) -> None:
        if self._about is not None and self.progress is not None:
            self.goal_here.hide()
            self.comparing.ask(self._about, self.progress, SPANS[self.spans.code])
            if self.block is not None:
                self.block.show_weeks(self.comparing.chooser.isHidden())

    def _ask_goal(self) -> None:
        if self._about is not None and self.lines.line_id is not None:
            self.comparing.chooser.hide()
            self.goal_here.ask(self._about, self.lines.line_id, self.lines.currentText())
            if self.block is not None:
                self.block.show_weeks(False)

    def _take_rival(self) -> None:
        self.draw()
        self._focus_chart()

    def _focus_chart(self) -> None:
        if self.block is not None:
            self.block.show_weeks(True)
            self.block.chart.setFocus()

    def _take_span(self, code: str) -> None:
        if self.block is not None:
            self.block.chart.show_weeks(SPANS[code])

    def _toggle_table(self, shown: bool) -> None:
        if self.block is not None:
            self.block.show_table(shown)

    def _toggle_body_mass(self, shown: bool) -> None:
        if self.block is not None:
            self.block.chart.show_body_mass(shown)

    def what_to_save(self) -> Saved:
        from desktop.planning.progress_export import write_progress, write_progress_book
        from views.progress_picture import Picture

        progress, history, block = self.progress, self._about, self.block
        series = block.chart.series if block is not None else None
        if progress is None or history is None or block is None or series is None:
            raise RuntimeError("there is no chart to save yet")
        first, last = block.chart.plot.days
        name = self.lines.currentText()
        unit = history.trainee.unit
        picture = Picture(
            title=name,
            detail=self.detail.whole,
            sentence=self.statement.text(),
            legend=block.legend.text(),
            bars_title=self.tr("Hard sets a week, done over planned"),
            series=series,
            names=self._names(),
            days=(first, last),
            week_starts=self.week_starts,
            body_mass=self.body_mass.on,
        )
        title = f"{history.trainee.name} - {name} - {self.today.isoformat()}"
        several = [(name, progress)]
        rival, other = self.comparing.rival, self.comparing.other
        if rival is not None and other is not None:
            several.append((rival.name, other))
        return Saved(
            title,
            picture,
            lambda target: write_progress(progress, unit, target),
            lambda target: write_progress_book(several, unit, target),
        )

    def _arrange(self) -> None:
        """Words and choices have changed, and with them the room that they need."""
        self._head.arrange()
