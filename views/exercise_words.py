"""Words for exercises: patterns, what loads them, muscles, and variations in short."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import replace
from typing import Final

from PySide6.QtCore import QCoreApplication

from desktop.training.exercises import Exercise, LoadingKind, Muscle, Pattern
from desktop.training.position import Surroundings, Variable
from desktop.training.target import StripVariable
from views import words

translate = QCoreApplication.translate

_RAISED: Final = re.compile(r"(hands|feet|bar)-([0-9]+)")
_SHORT: Final = 12


def pattern_word(pattern: Pattern) -> str:
    """A movement pattern."""
    return {
        Pattern.SQUAT: translate("Exercises", "squat"),
        Pattern.HINGE: translate("Exercises", "hinge"),
        Pattern.LUNGE: translate("Exercises", "lunge"),
        Pattern.HORIZONTAL_PUSH: translate("Exercises", "horizontal push"),
        Pattern.VERTICAL_PUSH: translate("Exercises", "vertical push"),
        Pattern.HORIZONTAL_PULL: translate("Exercises", "horizontal pull"),
        Pattern.VERTICAL_PULL: translate("Exercises", "vertical pull"),
        Pattern.TRUNK: translate("Exercises", "trunk"),
        Pattern.CARRY: translate("Exercises", "carry"),
        Pattern.SINGLE_JOINT: translate("Exercises", "single joint"),
    }[pattern]


def loading_word(loading: LoadingKind) -> str:
    """What makes an exercise heavier."""
    return {
        LoadingKind.BARBELL: translate("Exercises", "barbell"),
        LoadingKind.DUMBBELL: translate("Exercises", "dumbbell"),
        LoadingKind.KETTLEBELL: translate("Exercises", "kettlebell"),
        LoadingKind.STACK: translate("Exercises", "machine"),
        LoadingKind.BAND: translate("Exercises", "band"),
        LoadingKind.BODYWEIGHT: translate("Exercises", "bodyweight"),
    }[loading]


def muscle_word(muscle: Muscle) -> str:
    """A muscle group."""
    return {
        Muscle.QUADRICEPS: translate("Exercises", "quadriceps"),
        Muscle.HAMSTRINGS: translate("Exercises", "hamstrings"),
        Muscle.GLUTES: translate("Exercises", "glutes"),
        Muscle.CALVES: translate("Exercises", "calves"),
        Muscle.CHEST: translate("Exercises", "chest"),
        Muscle.UPPER_BACK: translate("Exercises", "upper back"),
        Muscle.LATS: translate("Exercises", "lats"),
        Muscle.SHOULDERS: translate("Exercises", "shoulders"),
        Muscle.BICEPS: translate("Exercises", "biceps"),
        Muscle.TRICEPS: translate("Exercises", "triceps"),
        Muscle.FOREARMS: translate("Exercises", "forearms"),
        Muscle.TRUNK: translate("Exercises", "trunk"),
        Muscle.LOWER_BACK: translate("Exercises", "lower back"),
    }[muscle]


def avoided_value(text: str) -> str:
    """What was typed to be avoided: a pattern or muscle by its English value, as the model names
    it; else the text.
    """
    known = {pattern_word(each).casefold(): each.value for each in Pattern}
    known |= {muscle_word(each).casefold(): each.value for each in Muscle}
    return known.get(text.strip().casefold(), text)


def avoided_word(value: str, exercises: Mapping[str, Exercise]) -> str:
    """The other way round; an exercise by its name."""
    if value in set(Pattern):
        return pattern_word(Pattern(value))
    if value in set(Muscle):
        return muscle_word(Muscle(value))
    return exercises[value].name if value in exercises else value


def exercise_kind(exercise: Exercise) -> str:
    """What tells exercises of like names apart: "squat · barbell"."""
    return f"{pattern_word(exercise.pattern)}{words.DOT}{loading_word(exercise.loading)}"


def short_variation(key: str, name: str) -> str:
    """A variation in a small cell: its height, its name where that is short, else its key."""
    raised = _RAISED.fullmatch(key)
    if raised:
        height = words.length(int(raised[2]))
        feet = translate("Exercises", "feet")
        return f"{feet} {height}" if raised[1] == "feet" else height
    spoken = translate("VariationKeys", key.replace("-", " "))
    return name if len(name) <= _SHORT or len(name) <= len(spoken) else spoken


def short_strip(strip: Sequence[StripVariable]) -> tuple[StripVariable, ...]:
    """The strip with its variations in short."""
    return tuple(
        replace(
            part,
            cells=tuple(
                replace(cell, label=short_variation(str(cell.value), cell.label))
                for cell in part.cells
            ),
        )
        if part.variable == Variable.VARIATION.value
        else part
        for part in strip
    )


def variation_name(key: str | None, around: Surroundings, exercise: Exercise) -> str:
    """A variation as it is set up here; as the exercise lists it where it is not on the scale."""
    if key is None:
        return ""
    known = {each.key: each.name for each in exercise.variations}
    known |= {each.key: each.name for each in around.scale}
    return known.get(key, key)
