"""The chart of one line with its legend, read-out, table and the weeks under it.

Importing this file imports the chart library.
"""

from __future__ import annotations

from datetime import date

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QAction, QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from desktop.planning.progress import Week
from views.blocks import Block, Label
from views.key_word import KeyWord
from views.line_plot import LinePlot
from views.progress_series import Series
from views.progress_table import ProgressTable
from views.progress_texts import axis_unit, legend_text, spot_text, week_text
from views.theme import Theme
from views.week_bars import WeekBars

_WIDE = 96  # steps of the grid from which the read-out fits in one line


class ChartBlock(QWidget):
    """Shows a `Series`. ``session_wanted(id)``: the session under the cursor is to be opened."""

    session_wanted = Signal(int)

    def __init__(
        self, theme: Theme, today: date, week_starts: int, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._theme, self._today = theme, today
        self._series: Series | None = None
        self._names: dict[str, str] = {}
        self.chart = LinePlot(theme, week_starts)
        self.bars = WeekBars(theme, self.chart.plot)
        self.table = ProgressTable(theme)
        self.table.hide()
        self.legend = Label("", "small", "muted", wrap=True)
        self.read_out = Label("", wrap=True)
        self.open = KeyWord(self.tr("Open session"), "Return", strong=True)
        self._assemble()
        self._connect()
        self._space()

    def _assemble(self) -> None:
        foot = QHBoxLayout()
        foot.addWidget(self.read_out, 1, Qt.AlignmentFlag.AlignTop)
        foot.addWidget(self.open, 0, Qt.AlignmentFlag.AlignTop)
        middle = QHBoxLayout()
        middle.addWidget(self.chart, 3)
        middle.addWidget(self.table, 2)
        self._above = Block(self._theme)
        self._above.body.addWidget(self.legend)
        self._above.body.addLayout(middle, 1)
        self._above.body.addLayout(foot)
        heading = QHBoxLayout()
        heading.addWidget(Label(self.tr("Hard sets a week"), "heading"))
        heading.addWidget(Label(self.tr("done over planned"), tone="muted"))
        heading.addStretch(1)
        self._below = Block(self._theme)
        self._below.body.addLayout(heading)
        self._below.body.addWidget(self.bars)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self._above, 1)
        column.addWidget(self._below)

    def _connect(self) -> None:
        self.chart.chosen.connect(self._chose)
        self.chart.opened.connect(self._open)
        self.table.chosen.connect(self.chart.choose)
        self.table.opened.connect(self._open)
        self.open.clicked.connect(lambda: self._open(self.chart.index))
        self.bars.pointed.connect(self._say_week)
        self._theme.changed.connect(self._space)

    def show_series(self, series: Series, names: dict[str, str], weeks: int | None) -> None:
        """Show ``series`` over the last ``weeks`` (None: all); ``names``: variations by key."""
        self._series, self._names = series, names
        self.chart.show_series(series, names, weeks)
        self.bars.show_weeks(series.weeks)
        if not self.table.isHidden():
            self.table.show_series(series, names, self._today)
        unit, legend = axis_unit(series), legend_text(series)
        self.legend.setText("   ".join(text for text in (unit, legend) if text))
        self._chose(-1)

    def describe(self, name: str, sentence: str) -> None:
        """What the chart is called and says, for those who do not see it."""
        self.chart.setAccessibleName(name)
        self.chart.setAccessibleDescription(sentence)

    def show_table(self, shown: bool) -> None:
        """Show the sessions as a table beside the chart, or take it away."""
        self.table.setVisible(shown)
        if shown:
            if self._series is not None:
                self.table.show_series(self._series, self._names, self._today)
            if self.chart.index < 0 and self._series is not None:
                self.chart.choose(len(self._series.spots) - 1)
            self.table.choose(self.chart.index)
            self.table.setFocus()
        else:
            self.chart.setFocus()

    def show_weeks(self, shown: bool) -> None:
        """Show the weeks under the chart, or take them away while room is needed."""
        self._below.setVisible(shown)

    def offer(self, actions: list[QAction]) -> None:
        """What a click with the other button offers."""
        for plot in (self.chart, self.bars):
            plot.setContextMenuPolicy(Qt.ContextMenuPolicy.ActionsContextMenu)
            plot.addActions(actions)

    def choose_session(self, session_id: int) -> None:
        """Put the cursor on a session, where it is drawn."""
        spots = self._series.spots if self._series is not None else ()
        for index, spot in enumerate(spots):
            if spot.best.session_id == session_id:
                self.chart.choose(index)

    @property
    def session_id(self) -> int | None:
        """The session under the cursor."""
        spots = self._series.spots if self._series is not None else ()
        return spots[self.chart.index].best.session_id if self.chart.index >= 0 else None

    def _chose(self, index: int) -> None:
        if not self.table.isHidden():
            self.table.choose(index)
        self.open.setEnabled(index >= 0)
        if self._series is None or index < 0:
            self.read_out.setText(
                self.tr("Left and Right go from session to session, + and − show less and more.")
            )
            self.read_out.set_tone("muted")
            return
        spot = self._series.spots[index]
        self._say(spot_text(spot, self._series, self._today, self._names))

    def _say_week(self, index: int) -> None:
        if self._series is not None:
            week: Week = self._series.weeks[index]
            self._say(week_text(week, self._today, self._series.unit))

    def _say(self, text: str) -> None:
        self.read_out.set_tone("text")
        self.read_out.setText(text)
        self.chart.setAccessibleDescription(text)

    def _open(self, index: int) -> None:
        if self._series is None or not 0 <= index < len(self._series.spots):
            return
        session_id = self._series.spots[index].best.session_id
        if session_id is not None:
            self.session_wanted.emit(session_id)

    def _space(self) -> None:
        layout = self.layout()
        if layout is not None:
            layout.setSpacing(self._theme.px(12))
        self.chart.setMinimumHeight(self._theme.px(200))
        self.bars.setFixedHeight(self._theme.px(104))
        self.table.setMinimumWidth(self._theme.grid(46))
        self._keep_height()

    def _keep_height(self) -> None:
        """Room for the read-out at its longest, so that nothing jumps."""
        lines = 1 if self.width() >= self._theme.grid(_WIDE) else 2
        line = self.read_out.fontMetrics().lineSpacing()
        self.read_out.setFixedHeight(max(lines * line, self.open.sizeHint().height()))

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._keep_height()
