"""Goals of a trainee: those that are set, how far each is, and a form for further ones."""

from __future__ import annotations

from datetime import date
from functools import partial

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QPushButton, QVBoxLayout, QWidget

from db.errors import StoreError
from desktop.planning.history import History
from desktop.planning.line_history import read_about
from desktop.training.trainee import Goal
from views.blocks import Block, Label
from views.goal_desk import GoalDesk
from views.goal_form import GoalForm, Wish
from views.listed_row import Act, ListedRow
from views.record import Record
from views.tab_order import put_before
from views.theme import Theme


class GoalBlock(Block):
    """Each change is one act that can be undone; how far a goal is stands under it at once."""

    def __init__(self, record: Record, today: date, theme: Theme) -> None:
        super().__init__(theme)
        self._record, self._look = record, theme
        self._desk = GoalDesk(record, today)
        self._about: History | None = None
        self.rows: list[QWidget] = []
        self._told: dict[int | None, Label] = {}
        self.form = GoalForm(theme, today)
        self._none = Label(
            self.tr(
                "None set. A goal is drawn into the chart of its exercise, and the trend says "
                "when it comes."
            ),
            tone="muted",
            wrap=True,
        )
        self._list = QVBoxLayout()
        self._list.setSpacing(theme.px(6))
        self.body.addWidget(Label(self.tr("Goals"), "heading"))
        self.body.addLayout(self._list)
        self.body.addWidget(self._none)
        self.body.addWidget(self.form)
        self._later = QTimer(self)
        self._later.setSingleShot(True)
        self._later.timeout.connect(self._say_how_far)
        self.form.wanted.connect(self._save)

    def show_trainee(self, trainee_id: int | None) -> None:
        """Show a trainee's goals; None: nobody yet."""
        self._about = None
        self.form.setVisible(trainee_id is not None)
        goals: tuple[Goal, ...] = ()
        if trainee_id is not None:
            try:
                self._about = read_about(self._record.repository, trainee_id)
            except StoreError as error:
                self._record.reported(error)
                return
            goals = self._about.goals
            self._desk.offer(self.form, self._about)
            if self.form.changed_one is not None and self.form.changed_one not in goals:
                self.form.clear()
        self._show_rows(goals)

    def _show_rows(self, goals: tuple[Goal, ...]) -> None:
        for row in self.rows:
            row.hide()
            row.deleteLater()
        self._told = {}
        self.rows = [self._row(self._about, goal) for goal in goals if self._about is not None]
        for row in self.rows:
            self._list.addWidget(row)
        put_before(self.form.line, [b for row in self.rows for b in row.findChildren(QPushButton)])
        self._none.setVisible(not goals)
        if goals:  # the trend takes a while: not before the rest is seen
            self._later.start(0)

    def _row(self, about: History, goal: Goal) -> QWidget:
        acts: tuple[Act, ...] = (
            (self.tr("Change"), "", partial(self.form.change, goal)),
            (self.tr("Remove"), "muted", partial(self._remove, goal)),
        )
        text = self._desk.words_of(about, goal, self._desk.aimed(about, goal.line_id))
        row = ListedRow(self._look, text, goal.note, acts)
        told = self._told[goal.id] = Label(" ", "small", "muted", wrap=True)
        row.column.addWidget(told)
        return row

    def _say_how_far(self) -> None:
        if self._about is None:
            return
        for goal_id, text in self._desk.how_far(self._about, self._about.goals).items():
            self._told[goal_id].setText(text)

    def _save(self, wish: Wish) -> None:
        if self._about is not None and self._desk.save(self._about, wish):
            self.form.clear()
            self.form.begin()

    def _remove(self, goal: Goal) -> None:
        if self._about is not None and self._desk.remove(self._about, goal):
            self.form.begin()
