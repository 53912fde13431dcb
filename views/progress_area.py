"""Progress: is this trainee getting stronger, how sure is that, and when does the goal come.

The answer in a sentence first, the picture after it.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from functools import partial
from typing import TYPE_CHECKING, Final

from PySide6.QtCore import QLocale, Qt, QTimer, Signal
from PySide6.QtGui import QKeySequence, QResizeEvent, QShortcut
from PySide6.QtWidgets import QBoxLayout, QHBoxLayout, QVBoxLayout, QWidget

from db.errors import StoreError
from desktop.planning.history import History
from desktop.planning.line_history import read_about, with_line
from desktop.planning.progress import LineProgress, progress_of
from desktop.planning.progress_export import write_progress
from desktop.planning.trained_lines import TrainedLine, line_name, trained_lines
from desktop.training.exercises import LoadingKind
from views import words
from views.blocks import Block, Label, MainButton, Page, WordButton
from views.chart_saving import ChartSaving, Saved
from views.choice_row import Choice, ChoiceRow, ToggleWord
from views.elided_label import ElidedLabel
from views.line_choice import LineChoice
from views.progress_series import Series, Shown, measures_of, series_of
from views.progress_texts import measure_detail, measure_word, statement_text
from views.record import Record
from views.theme import Theme
from views.work_area import WorkArea
from views.work_areas import PROGRAM, SESSION

if TYPE_CHECKING:
    from views.chart_block import ChartBlock

SPANS: Final[dict[str, int | None]] = {"8": 8, "16": 16, "52": 52, "all": None}
USUAL_SPAN: Final = "16"
_NATIVE: Final = QKeySequence.SequenceFormat.NativeText
MEASURE_KEYS: Final = {"estimate": "E", "load": "L", "set": "S", "hold": "H", "variation": "V"}


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
        self.lines = LineChoice(theme)
        self.detail = ElidedLabel(tone="muted")
        self.statement = Label(size="answer", wrap=True)
        self.measures = ChoiceRow(theme, self.tr("What is shown"), self)
        self.spans = ChoiceRow(theme, self.tr("Span"), self)
        self.table = ToggleWord(self.tr("Table"), "T", self)
        self.body_mass = ToggleWord(self.tr("Body mass"), "B", self)
        self.saving = ChartSaving(self, record, self.what_to_save)
        self.save = WordButton(self.tr("Save as…"), "Ctrl+S")
        self._assemble()
        self._connect()

    # Putting together

    def _assemble(self) -> None:
        self._page = Page(self.theme)
        head = QHBoxLayout()
        head.setSpacing(self.theme.grid(2))
        head.addWidget(self.lines)
        head.addWidget(self.detail, 1)
        for action in (self.body_mass, self.table, self.save):
            head.addWidget(action)
        self._choices = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        self._choices.setSpacing(0)
        left, right = Qt.AlignmentFlag.AlignLeft, Qt.AlignmentFlag.AlignRight
        self._choices.addWidget(self.measures, 1, left)
        self._choices.addWidget(self.spans, 0, right)
        self._shown = QWidget()
        self._column = QVBoxLayout(self._shown)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(self.theme.grid())
        self._column.addLayout(head)
        self._column.addWidget(self.statement)
        self._column.addLayout(self._choices)
        self._chart_place = QWidget()  # keeps the words at the top until the chart is there
        self._column.addWidget(self._chart_place, 1)
        self.beginning = _NothingYet(self.theme)
        self._page.body.addWidget(self.beginning)
        self._page.body.addWidget(self._shown, 1)
        self.outer.addWidget(self._page)

    def _connect(self) -> None:
        self.lines.chosen.connect(self._take_line)
        self.measures.chosen.connect(self._take_measure)
        self.spans.chosen.connect(self._take_span)
        self.theme.changed.connect(lambda: QTimer.singleShot(0, self._arrange))
        self.table.toggled.connect(self._toggle_table)
        self.body_mass.toggled.connect(self._toggle_body_mass)
        self.save.clicked.connect(lambda: self.saving.ask_how(self.save))
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
        pages = [QKeySequence(key).toString(_NATIVE) for key in ("Ctrl+PgUp", "Ctrl+PgDown")]
        return (
            (self.tr("Previous and next line"), ", ".join(pages)),
            (self.tr("What is shown"), ", ".join(MEASURE_KEYS.values())),
            (self.tr("Span"), "1, 2, 3, 4"),
            (self.tr("From session to session"), self.tr("Left, Right")),
            (self.tr("First and last session"), self.tr("Home, End")),
            (self.tr("Less and more of the time"), "+, −"),
            (self.tr("Open the session"), self.tr("Enter")),
            (self.tr("Table, body mass"), "T, B"),
            (self.tr("Save as…"), QKeySequence("Ctrl+S").toString(_NATIVE)),
        )

    def draw(self) -> None:
        """Draw the line and measure chosen; the first time, fetch the chart library."""
        if self.progress is None or self._about is None:
            return
        block = self.block or self._build_block()
        before = block.session_id
        series = series_of(self.progress, self._shown_measure(), self._about.trainee.unit)
        block.show_series(series, self._names(), SPANS[self.spans.code])
        if before is not None:
            block.choose_session(before)
        self._say_detail(series)
        self.body_mass.setVisible(series.body_mass is not None)
        block.describe(f"{self.lines.currentText()}: {self._detail(series)}", self._sentence())

    def _build_block(self) -> ChartBlock:
        from views.chart_block import ChartBlock

        block = self.block = ChartBlock(self.theme, self.today, self.week_starts)
        block.session_wanted.connect(self.session_wanted)
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
                MEASURE_KEYS[shown.value],
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

    def _sentence(self) -> str:
        return self.statement.text()

    # Choosing

    def _take_line(self, line_id: int) -> None:
        self._wanted[self.trainee_id or 0] = line_id
        self._show_line()

    def _take_measure(self, code: str) -> None:
        self._measure[self.lines.line_id or 0] = code
        self.draw()

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
            sentence=self._sentence(),
            legend=block.legend.text(),
            bars_title=self.tr("Hard sets a week, done over planned"),
            series=series,
            names=self._names(),
            days=(first, last),
            week_starts=self.week_starts,
            body_mass=self.body_mass.on,
        )
        title = f"{history.trainee.name} - {name} - {self.today.isoformat()}"
        return Saved(title, picture, lambda target: write_progress(progress, unit, target))

    # Qt

    def _arrange(self) -> None:
        """Measures and spans beside each other where there is room, else under each other."""
        wanted = self.measures.sizeHint().width() + self.spans.sizeHint().width()
        room = self.width() - 2 * self.theme.grid(3)
        narrow = wanted > room
        ways = QBoxLayout.Direction
        self._choices.setDirection(ways.TopToBottom if narrow else ways.LeftToRight)
        sides = Qt.AlignmentFlag
        self._choices.setAlignment(self.spans, sides.AlignLeft if narrow else sides.AlignRight)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._arrange()


class _NothingYet(QWidget):
    """What to do first, where there is nothing to draw."""

    area_wanted = Signal(str)

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self._title = Label(size="title")
        self._text = Label(wrap=True)
        self.action = MainButton(self.tr("Type the first session"))
        self._area = SESSION
        self.action.clicked.connect(lambda: self.area_wanted.emit(self._area))
        block = Block(theme)
        block.body.addWidget(self._text)
        block.body.addWidget(self.action)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(theme.px(12))
        column.addWidget(self._title)
        column.addWidget(block)
        column.addStretch(1)

    def say(self, name: str, *, planned: bool) -> None:
        """Say it for the trainee of this name, who has a program or not."""
        self._title.setText(self.tr("Nothing to show of {name} yet").format(name=name))
        first = self.tr(
            "Every session typed becomes a point. Four of them, two weeks apart or more, make a "
            "trend: how much a week, how sure that is, and when a goal comes."
        )
        if planned:
            self._text.setText(first)
            self.action.setText(self.tr("Type the first session"))
            self._area = SESSION
        else:
            before = self.tr("{name} needs a program first.").format(name=name)
            self._text.setText(f"{before} {first}")
            self.action.setText(self.tr("Choose a program"))
            self._area = PROGRAM
        self.action.setAccessibleName(self.action.text())
