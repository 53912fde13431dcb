"""Choosing an exercise or a variation by a few letters."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Final

from desktop.planning.days import SlotPlan
from desktop.planning.exercise_search import find_exercises
from desktop.training.exercises import Exercise
from views import words
from views.chooser import Chooser, Options
from views.exercise_words import exercise_kind
from views.theme import Theme

_MOST_VARIATIONS: Final = 12


class ExerciseChoice(Chooser):
    """A chooser that knows exercises and their variations."""

    def __init__(self, theme: Theme) -> None:
        super().__init__(theme)
        self._then: Callable[[object], None] = lambda _value: None
        self.chosen.connect(lambda value: self._then(value))

    def ask_exercise(
        self, exercises: Sequence[Exercise], then: Callable[[Exercise], None], instead: bool
    ) -> None:
        """Ask for an exercise; ``instead``: of another one."""

        def find(text: str) -> Options:
            return [
                (f"{each.name}{words.DOT}{exercise_kind(each)}", each)
                for each in find_exercises(text, exercises)
            ]

        def take(value: object) -> None:
            if isinstance(value, Exercise):
                then(value)

        self._then = take
        add, other = self.tr("Add an exercise"), self.tr("Which exercise was done instead?")
        title = other if instead else add
        self.ask(title, self.tr("A few letters of its name"), find)

    def ask_variation(self, slot: SlotPlan, index: int, then: Callable[[str], None]) -> bool:
        """Ask for a variation, from set ``index`` on; False where there are none."""
        names = {each.key: each.name for each in slot.exercise.variations}
        names |= {each.key: each.name for each in slot.state.surroundings.scale}
        if not names:
            return False

        def find(text: str) -> Options:
            parts = text.casefold().split()
            fitting = [
                (name, key)
                for key, name in names.items()
                if all(part in name.casefold() for part in parts)
            ]
            return fitting[:_MOST_VARIATIONS]

        self._then = lambda value: then(str(value))
        title = self.tr("Which variation, from set {number} on?")
        self.ask(
            title.format(number=words.number(index + 1)), self.tr("A few letters of its name"), find
        )
        return True
