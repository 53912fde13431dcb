"""The goal desk: offers a trainee's lines to a form for goals, and writes goals to the record.

It holds no widget.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import date

from PySide6.QtCore import QCoreApplication

from db.errors import StoreError
from desktop.planning.goals import variation_names
from desktop.planning.history import History
from desktop.planning.progress import GoalLine, LineProgress, progress
from desktop.planning.trained_lines import line_name
from desktop.training.program import Line
from desktop.training.trainee import Goal
from views.goal_form import AimedAt, GoalForm, Wish
from views.goal_texts import goal_text, how_far
from views.record import MessageKind, Record

translate = QCoreApplication.translate


class GoalDesk:
    """Reads and writes goals for the screens that show them."""

    def __init__(self, record: Record, today: date) -> None:
        self._record, self._today = record, today

    def offer(self, form: GoalForm, about: History) -> None:
        """Offer the trainee's lines, then all other exercises."""
        lines = [self._aimed(about, line) for line in about.lines if line.id is not None]
        named = sorted(
            ((aimed, line_name(about, aimed.line_id)) for aimed in lines), key=lambda one: one[1]
        )
        with_line = {aimed.exercise.key for aimed in lines if not aimed.name}
        others = [each for each in self._record.repository.exercises() if each.key not in with_line]
        form.show_lines(
            about.trainee_id,
            about.trainee.unit,
            named,
            others,
            lambda exercise: variation_names(about, exercise, self._today),
        )

    def aimed(self, about: History, line_id: int) -> AimedAt:
        """A line of the trainee as what a goal is set on."""
        return self._aimed(about, about.line(line_id))

    def save(self, about: History, wish: Wish) -> bool:
        """Write a goal, with the line that it needs, as one act; False where it failed."""
        goal, at = wish
        act = self.words_of(about, goal, at)
        if goal.line_id:
            saved = self._record.save(act, goal)
        else:
            saved = None
            with self._record.together(act):
                line = self._record.save(act, Line(about.trainee_id, at.exercise.key, at.name))
                if line is not None:
                    saved = self._record.save(act, goal_on(goal, line[0]))
        if saved is None:
            return False
        self._record.say(act, MessageKind.DONE)
        return True

    def remove(self, about: History, goal: Goal) -> bool:
        """Take a goal away; it can be undone."""
        words = self.words_of(about, goal, self.aimed(about, goal.line_id))
        text = translate("Goals", "Remove the goal {goal}").format(goal=words)
        if not self._record.remove(text, goal):
            return False
        self._record.say(text, MessageKind.DONE)
        return True

    def words_of(self, about: History, goal: Goal, at: AimedAt) -> str:
        """A goal with its exercise, in words."""
        name = ", ".join(part for part in (at.exercise.name, at.name) if part)
        names = variation_names(about, at.exercise, self._today)
        return goal_text(goal, name, about.trainee.unit, names, self._today)

    def how_far(self, about: History, goals: tuple[Goal, ...]) -> dict[int | None, str]:
        """By goal, how far it is; each line is read once."""
        told: dict[int, LineProgress] = {}
        found: dict[int | None, str] = {}
        for goal in goals:
            try:
                if goal.line_id not in told:
                    told[goal.line_id] = progress(
                        self._record.repository, goal.line_id, self._today
                    )
            except StoreError as error:
                self._record.reported(error)
                return found
            shown = told[goal.line_id]
            line = next((one for one in shown.goals if one.goal.id == goal.id), GoalLine(goal))
            found[goal.id] = how_far(line, shown, about.trainee.unit)
        return found

    def _aimed(self, about: History, line: Line) -> AimedAt:
        return AimedAt(line.id, about.exercise_of(line), line.name)


def goal_on(goal: Goal, line: Line) -> Goal:
    """The goal on a line that has just been made."""
    assert line.id is not None
    return replace(goal, line_id=line.id)
