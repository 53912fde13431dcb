"""A goal of the line that is shown, set where its chart is seen."""

from __future__ import annotations

from datetime import date

from PySide6.QtCore import QObject, Qt, Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QHBoxLayout, QWidget

from desktop.planning.history import History
from desktop.training.trainee import Goal
from views.blocks import Block, Label, WordButton
from views.goal_desk import GoalDesk
from views.goal_form import GoalForm, Wish
from views.record import Record
from views.theme import Theme


class GoalHere(QObject):
    """``button`` and ``panel`` are to be put on the screen; G is the key in ``keys_in``. ``asked``:
    the coach wants a goal, which `ask` answers; ``closed`` when that is over.
    """

    asked = Signal()
    closed = Signal()

    def __init__(self, record: Record, today: date, theme: Theme, keys_in: QWidget) -> None:
        super().__init__(keys_in)
        self._desk = GoalDesk(record, today)
        self._about: History | None = None
        self._line_id: int | None = None
        self._goal: Goal | None = None
        self.button = WordButton(self.tr("Goal…"))
        self.button.setText(self.tr("Goal…") + "  G")  # a bare letter must not act elsewhere
        self.title = Label(size="heading")
        self.further = WordButton(self.tr("A further goal"))
        self.remove = WordButton(self.tr("Remove the goal"), tone="stop")
        self.form = GoalForm(theme, today)
        self.panel = Block(theme)
        head = QHBoxLayout()
        head.addWidget(self.title, 1)
        head.addWidget(self.further)
        head.addWidget(self.remove)
        self.panel.body.addLayout(head)
        self.panel.body.addWidget(self.form)
        self.panel.hide()
        self.button.clicked.connect(lambda _on=False: self.asked.emit())
        shortcut = QShortcut(QKeySequence("G"), keys_in)
        shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        shortcut.activated.connect(self.asked)
        self.further.clicked.connect(self._begin_further)
        self.remove.clicked.connect(self._remove)
        self.form.wanted.connect(self._save)
        self.form.given_up.connect(self._close)

    def ask(self, about: History, line_id: int, name: str) -> None:
        """Ask for the goal of a line: the one that was set last, or a new one."""
        self._about, self._line_id = about, line_id
        self._desk.offer(self.form, about)
        self.form.fix(self._desk.aimed(about, line_id))
        self.title.setText(self.tr("Goal of {line}").format(line=name))
        goals = [goal for goal in about.goals if goal.line_id == line_id]
        self._show(goals[-1] if goals else None)

    def hide(self) -> None:
        """Another line is shown: what was typed is not meant for it."""
        self._about = None
        self.panel.hide()

    def _show(self, goal: Goal | None) -> None:
        self._goal = goal
        self.further.setVisible(goal is not None)
        self.remove.setVisible(goal is not None)
        self.panel.show()
        if goal is not None:
            self.form.change(goal)
        else:
            self.form.clear()
            self.form.begin()

    def _begin_further(self) -> None:
        self._show(None)

    def _save(self, wish: Wish) -> None:
        if self._about is not None and self._desk.save(self._about, wish):
            self._close()

    def _remove(self) -> None:
        about, goal = self._about, self._goal
        if about is not None and goal is not None and self._desk.remove(about, goal):
            self._close()

    def _close(self) -> None:
        self.hide()
        self.closed.emit()
