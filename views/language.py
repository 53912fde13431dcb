"""Language: what data bring to the screens, in the language that the coach has chosen.

Shipped exercises, ready-made programs and sources are English where they are kept; here they are
said in the language of the screens. What the coach named is left as it was typed. QtCore only.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from typing import Any

from PySide6.QtCore import QCoreApplication, QLocale

from desktop.training.exercises import Exercise, HeightWords, Variation
from desktop.training.program import Phase, Program
from desktop.training.sentence import Sentence
from desktop.training.volume import Mark
from views.sentences import worded

translate = QCoreApplication.translate


class ExerciseNames:
    """The exercises of one data file as they are called in the language that is loaded, each
    looked up once.

    The English names stay among the other names, so that they are found when they are typed.
    """

    def __init__(self) -> None:
        self._heights = _height_words()
        self._known: dict[tuple[str, int | None, int, bool], Exercise] = {}

    def __call__(self, exercise: Exercise) -> Exercise:
        place = (exercise.key, exercise.id, exercise.revision, exercise.retired)
        if place not in self._known:
            self._known[place] = self._said(exercise)
        return self._known[place]

    def _said(self, exercise: Exercise) -> Exercise:
        if exercise.own:
            return replace(exercise, height_words=self._heights)
        name = translate("ExerciseNames", exercise.name)
        others = (exercise.name, *exercise.other_names)
        return replace(
            exercise,
            name=name,
            other_names=tuple(other for other in others if other != name),
            cue=translate("ExerciseCues", exercise.cue) if exercise.cue else "",
            variations=tuple(map(_variation, exercise.variations)),
            height_words=self._heights,
        )


def program_said(program: Program) -> Program:
    """A program that ships or was drafted, with its own names and those of phases and days; for
    showing it and for taking it in.
    """
    return replace(
        program,
        name=_shipped(program.name),
        about=_shipped(program.about),
        phases=tuple(map(_phase, program.phases)),
    )


def source_said(source: str) -> str:
    """Where a limit or a figure comes from."""
    return translate("Sources", source)


def mark_said(mark: Mark) -> str:
    """What a published number of weekly sets is said of."""
    return translate("Marks", mark.said_of)


def marks_said(marks: Iterable[Mark]) -> str:
    """Published numbers of weekly sets with their sources, one a line."""
    return "\n".join(f"{one.sets}: {mark_said(one)}. {source_said(one.source)}" for one in marks)


def _variation(variation: Variation) -> Variation:
    name = translate("ExerciseVariations", variation.name)
    if name == variation.name:
        return variation
    return replace(variation, name=name, other_names=(variation.name,))


def _height_words() -> HeightWords:
    return HeightWords(
        hands=translate("Exercises", "hands on {where}"),
        feet=translate("Exercises", "feet on {where}"),
        bar=translate("Exercises", "bar at {where}"),
        under=translate("Exercises", "under {where}"),
        decimal_mark=QLocale().decimalPoint(),
    )


def _phase(phase: Phase) -> Phase:
    days = tuple(replace(day, name=_shipped(day.name)) for day in phase.days)
    return replace(phase, name=_shipped(phase.name), days=days)


def _shipped(text: Any) -> str:
    if isinstance(text, Sentence):
        return worded(text)
    return translate("Starters", text) if text else ""
