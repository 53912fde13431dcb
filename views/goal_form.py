"""A goal, typed: of which exercise, what is wanted, by when; new ones and those on record."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from datetime import date
from typing import NamedTuple

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QWidget

from desktop.planning.goals import kinds_of
from desktop.training.exercises import Exercise, LoadingKind
from desktop.training.quantities import Unit
from desktop.training.trainee import Goal, GoalKind
from views.blocks import WordButton
from views.captioned import CaptionedForm, ChoiceBox
from views.date_field import DateField
from views.exercise_finder import ExerciseFinder
from views.goal_texts import kind_word
from views.number_fields import FieldError, LoadField, NumberField, WholeField
from views.rows_editor import TextField
from views.theme import Theme

MOST_REPS = 100
MOST_SECONDS = 3_600


class AimedAt(NamedTuple):
    """What a goal can be set on: a line (``line_id`` None: it is still to be made)."""

    line_id: int | None
    exercise: Exercise
    name: str = ""


class Wish(NamedTuple):
    """A goal as typed, and what it is set on."""

    goal: Goal
    at: AimedAt


Names = Callable[[Exercise], dict[str, str]]
"""The variations of an exercise for this trainee, by key, easiest first."""


class GoalForm(QWidget):
    """``wanted(Wish)`` when a goal stands complete; ``given_up`` by Escape or the word."""

    wanted = Signal(object)
    given_up = Signal()

    def __init__(self, theme: Theme, today: date, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._today = today
        self._trainee_id = 0
        self._names: Names = lambda _exercise: {}
        self._lines: tuple[AimedAt, ...] = ()
        self._found: AimedAt | None = None
        self._fixed = False
        self.changed_one: Goal | None = None
        self.line = ChoiceBox(self.tr("Exercise of the goal"))
        self.finder = ExerciseFinder(
            theme, self.tr("a few letters"), self.tr("Another exercise, a few letters of its name")
        )
        self.kind = ChoiceBox(self.tr("What the goal is measured in"))
        self.load = LoadField(self.tr("Load of the goal"))
        self.reps = WholeField(self.tr("Repetitions of the goal"), 1, MOST_REPS)
        self.seconds = WholeField(self.tr("Seconds of the goal"), 1, MOST_SECONDS)
        self.variation = ChoiceBox(self.tr("Variation of the goal"))
        self.by = DateField(self.tr("Day of the goal; empty: open"), today)
        self.note = TextField(self.tr("Note on the goal"))
        self.error = FieldError()
        self.leave = WordButton(self.tr("Leave it"), tone="muted")
        self.save = WordButton(self.tr("Set the goal"), strong=True)
        self._assemble(theme)
        self._connect()

    # Showing

    def show_lines(
        self,
        trainee_id: int,
        unit: Unit,
        lines: Sequence[tuple[AimedAt, str]],
        others: Sequence[Exercise],
        names: Names,
    ) -> None:
        """Offer a trainee's lines, each with its words, and all other exercises; what is being
        typed for the same trainee stays.
        """
        same = trainee_id == self._trainee_id
        self._trainee_id, self._names = trainee_id, names
        before = self.aimed_at
        self._lines = tuple(aimed for aimed, _ in lines)
        choices: list[tuple[AimedAt | None, str]] = list(lines)
        choices.append((None, self.tr("another exercise…")))
        kept = before if same and before in self._lines else None
        first = self._lines[0] if self._lines else None
        self.line.offer(choices, kept or (None if same and self._found else first))
        self.finder.offer(others, unit)
        self.load.set_unit(unit)
        self._load_caption.caption.setText(self.tr("load {unit}").format(unit=unit.value))
        if not same:
            self.clear()
        else:
            self._arrange()

    def fix(self, aimed: AimedAt) -> None:
        """Set goals on this line only; it is not asked for."""
        self._fixed = True
        self.line.choose(aimed)
        self._line_caption.hide()
        self._finder_caption.hide()
        self._take_line()

    @property
    def aimed_at(self) -> AimedAt | None:
        """What the goal is set on."""
        chosen: AimedAt | None = self.line.choice
        return chosen or self._found

    def change(self, goal: Goal) -> None:
        """Put one on record right."""
        aimed = next((one for one in self._lines if one.line_id == goal.line_id), None)
        if aimed is None:
            return
        self.changed_one = goal
        self._found = None
        self.line.choose(aimed)
        self._offer_kinds(goal.kind)
        self._show_values(goal)
        self._say()
        self.begin()

    def begin(self) -> None:
        """Put the cursor where typing begins: on the exercise, or on what is wanted of it."""
        first = self.line if not self._fixed and self.changed_one is None else self._amount()
        first.setFocus(Qt.FocusReason.OtherFocusReason)
        if isinstance(first, NumberField):
            first.selectAll()

    def clear(self) -> None:
        """Empty fields, for a further goal."""
        self.changed_one = None
        self._found = None
        if not self._fixed:
            self.line.choose(self._lines[0] if self._lines else None)
        self._show_values(None)
        self._take_line()
        self._say()

    def give_up(self) -> None:
        """Leave what is on record as it is."""
        self.clear()
        self.given_up.emit()

    def _show_values(self, goal: Goal | None) -> None:
        kind = goal.kind if goal is not None else None
        value = goal.value if goal is not None else None
        self.load.set_grams(value if kind is GoalKind.ONE_REP_MAX else None)
        reps = value if kind is GoalKind.REPS else goal.reps if goal is not None else None
        self.reps.set_value(reps)
        self.seconds.set_value(value if kind is GoalKind.HOLD else None)
        self.by.set_day(goal.by if goal is not None else None)
        self.note.set_value(goal.note if goal is not None else "")
        if goal is not None:
            self._offer_variations(goal.variation)

    def _say(self) -> None:
        self.error.setText("")
        changing = self.changed_one is not None
        text = self.tr("Change the goal") if changing else self.tr("Set the goal")
        self.save.set_words(text)
        self.leave.setVisible(changing or self._fixed)
        self._arrange()

    # What is asked depends on the exercise

    def _take_line(self) -> None:
        if self.line.choice is not None:
            self._found = None
        self._offer_kinds(self.kind.choice)

    def _take_exercise(self, exercise: Exercise, _said: object) -> None:
        known = next((one for one in self._lines if one.exercise.key == exercise.key), None)
        if known is not None:
            self.line.choose(known)
            self._found = None
        else:
            self._found = AimedAt(None, exercise)
            self.finder.setText(exercise.name)
        self._offer_kinds(self.kind.choice)
        self.error.setText("")
        self.kind.setFocus(Qt.FocusReason.TabFocusReason)

    def _offer_kinds(self, kind: GoalKind | None) -> None:
        aimed = self.aimed_at
        kinds = kinds_of(aimed.exercise) if aimed is not None else ()
        if kind is not None and self.changed_one is not None and kind not in kinds:
            kinds = (*kinds, kind)  # one that was imported so
        added = self._bodyweight
        choices = [(each, kind_word(each, added=added)) for each in kinds]
        self.kind.offer(choices, kind if kind in kinds else kinds[0] if kinds else None)
        self._offer_variations(self.variation.choice)
        self._arrange()

    def _offer_variations(self, chosen: str | None) -> None:
        aimed = self.aimed_at
        names = self._names(aimed.exercise) if aimed is not None else {}
        if chosen is not None and self.changed_one is not None:
            names.setdefault(chosen, chosen)
        choices: list[tuple[str | None, str]] = list(names.items())
        if self.kind.choice is not GoalKind.VARIATION:
            choices.insert(0, (None, self.tr("any")))
            self.variation.offer(choices, chosen if chosen in names else None)
        else:
            hardest = next(reversed(names), None)
            self.variation.offer(choices, chosen if chosen in names else hardest)

    @property
    def _bodyweight(self) -> bool:
        aimed = self.aimed_at
        return aimed is not None and aimed.exercise.loading is LoadingKind.BODYWEIGHT

    def _arrange(self) -> None:
        """Show the fields that the kind of goal needs."""
        kind, aimed = self.kind.choice, self.aimed_at
        load, varied = kind is GoalKind.ONE_REP_MAX, self.variation.count() > 1
        self._finder_caption.setVisible(not self._fixed and self.line.choice is None)
        self._kind_caption.setVisible(self.kind.count() > 1)
        self._load_caption.setVisible(load)
        self._reps_caption.setVisible(load or kind is GoalKind.REPS)
        self._reps_caption.caption.setText(
            self.tr("for reps (empty: 1)") if load else self.tr("reps")
        )
        self._seconds_caption.setVisible(kind is GoalKind.HOLD)
        self._variation_caption.setVisible(
            aimed is not None and (kind is GoalKind.VARIATION or varied)
        )

    def _amount(self) -> QWidget:
        """The field in which what is wanted is typed."""
        return {
            GoalKind.ONE_REP_MAX: self.load,
            GoalKind.REPS: self.reps,
            GoalKind.HOLD: self.seconds,
            GoalKind.VARIATION: self.variation,
        }.get(self.kind.choice, self.line)

    # Taking

    def take(self) -> None:
        """Hand over what was typed, or say beside the field what is allowed."""
        aimed, kind = self.aimed_at, self.kind.choice
        if aimed is None or kind is None:
            where = self.finder if self._finder_caption.isVisibleTo(self) else self.line
            self._refuse(where, self.tr("Needed: the exercise. Type a few letters, Return takes."))
            return
        for field in (self.load, self.reps, self.seconds, self.by):
            if field.isVisibleTo(self) and not field.check():
                self._refuse(field, field.error)
                return
        goal = self._goal(aimed, kind)
        if goal is None:
            return
        if goal == self.changed_one:
            self.give_up()
            return
        self.error.setText("")
        self.wanted.emit(Wish(goal, aimed))

    def _goal(self, aimed: AimedAt, kind: GoalKind) -> Goal | None:
        """The goal as typed; None where something is missing, which is said."""
        value, reps = 0, None
        if kind is GoalKind.ONE_REP_MAX:
            value, reps = self.load.grams or 0, self.reps.whole
            if reps is None and self._bodyweight:
                reps = 1
            elif reps == 1 and not self._bodyweight:
                reps = None
            missing = self.tr("Needed: a load above 0.") if value <= 0 else ""
        elif kind is GoalKind.REPS:
            value = self.reps.whole or 0
            text = self.tr("Needed: 1 to {most} repetitions.")
            missing = "" if value else text.format(most=MOST_REPS)
        elif kind is GoalKind.HOLD:
            value = self.seconds.whole or 0
            text = self.tr("Needed: 1 to {most} seconds.")
            missing = "" if value else text.format(most=MOST_SECONDS)
        else:
            missing = "" if self.variation.choice else self.tr("Needed: a variation.")
        if missing:
            self._refuse(self._amount(), missing)
            return None
        by = self.by.day
        was = self.changed_one.by if self.changed_one is not None else None
        if by is not None and by < self._today and by != was:
            text = self.tr("This day is over: from {today} on, or leave it empty.")
            self._refuse(self.by, text.format(today=self.by.placeholderText()))
            return None
        base = self.changed_one or Goal(self._trainee_id, aimed.line_id or 0, kind)
        return replace(
            base,
            line_id=aimed.line_id or 0,
            kind=kind,
            value=value,
            reps=reps,
            variation=self.variation.choice,
            by=by,
            note=self.note.text().strip(),
        )

    def _refuse(self, field: QWidget, why: str) -> None:
        field.setFocus(Qt.FocusReason.OtherFocusReason)
        if isinstance(field, (NumberField, DateField)):
            field.selectAll()
        self.error.setText(why)

    # Putting together

    def _connect(self) -> None:
        for field in (self.load, self.reps, self.seconds, self.by):
            field.bind_error(self.error)
        self.line.picked.connect(self._take_line)
        self.finder.taken.connect(self._take_exercise)
        self.finder.textEdited.connect(self._forget_found)
        self.kind.picked.connect(lambda: self._offer_kinds(self.kind.choice))
        self.note.returnPressed.connect(self.take)
        self.save.clicked.connect(self.take)
        self.leave.clicked.connect(self.give_up)

    def _forget_found(self) -> None:
        if self._found is not None:
            self._found = None
            self._offer_kinds(None)

    def _assemble(self, theme: Theme) -> None:
        form = CaptionedForm(theme, self, self.error, self.leave, self.save)
        put, self.foot = form.put, form.foot
        self._line_caption = put(self.tr("exercise"), self.line, 200)
        self._finder_caption = put(self.tr("which one"), self.finder, 180)
        self._kind_caption = put(self.tr("measured in"), self.kind, 120)
        self._load_caption = put("", self.load, 80)
        self._reps_caption = put("", self.reps, 120)
        self._seconds_caption = put(self.tr("seconds"), self.seconds, 72)
        self._variation_caption = put(self.tr("variation"), self.variation, 170)
        put(self.tr("by (empty: open)"), self.by, 112)
        put(self.tr("note"), self.note, 140, grow=True)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape and (self.changed_one is not None or self._fixed):
            self.give_up()
            return
        super().keyPressEvent(event)
