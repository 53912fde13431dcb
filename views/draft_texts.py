"""Words for drafts: why a drafted program is as it is, and which wish to relax.

QtCore only. Plain sentences without a full stop.
"""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import QCoreApplication

from desktop.planning.drafts import EquipmentClass, Explanation, Relaxation, Why, Wish
from desktop.training.exercises import Exercise, Muscle, Pattern
from desktop.training.reasons import ReasonValue
from views import words
from views.exercise_words import avoided_word, muscle_word, pattern_word

translate = QCoreApplication.translate


def explanation_text(said: Explanation, exercises: Mapping[str, Exercise]) -> str:
    """Why one choice of a draft was made, in one sentence."""
    values = {name: _spoken(name, value, exercises) for name, value in said.values}
    text = _sentence(said).format(**values)
    return f"{text[:1].upper()}{text[1:]}"


def relaxation_text(relaxation: Relaxation, exercises: Mapping[str, Exercise]) -> str:
    """Which wish to relax, and to what."""
    match relaxation.wish:
        case Wish.MINUTES:
            text = translate("Drafts", "Give it {to} a session")
            return text.format(to=words.minutes(int(relaxation.to)))
        case Wish.DAYS:
            text = translate("Drafts", "Train on {to} days a week")
            return text.format(to=words.number(int(relaxation.to)))
        case Wish.EQUIPMENT:
            text = translate("Drafts", "Have more equipment: {to}")
            return text.format(to=equipment_word(EquipmentClass(str(relaxation.to))))
        case Wish.AVOID:
            allowed = [avoided_word(each, exercises) for each in str(relaxation.to).split(", ")]
            return translate("Drafts", "Allow again: {to}").format(to=words.listed(allowed))


def equipment_word(kind: EquipmentClass) -> str:
    """What a class of equipment counts on."""
    return {
        EquipmentClass.NONE: translate("Drafts", "floor and wall"),
        EquipmentClass.DUMBBELL: translate("Drafts", "dumbbells and a bench"),
        EquipmentClass.BARBELL: translate("Drafts", "barbell, bench, a bar to hang from"),
        EquipmentClass.MIXED: translate(
            "Drafts", "barbell, dumbbells, kettlebells, bench, bars, rings, box"
        ),
    }[kind]


def _sentence(said: Explanation) -> str:
    match said.code:
        case Why.CHOSEN if said["days"] == 1:
            return translate("Drafts", "{exercise}: {sets} sets, for the {pattern}")
        case Why.MUSCLE_SHORT if said["cause"] == Wish.EQUIPMENT.value:
            return translate("Drafts", "{muscle}: {sets} of {mark} sets; nothing there trains it")
        case Why.MUSCLE_SHORT if said["cause"] == Wish.AVOID.value:
            return translate("Drafts", "{muscle}: {sets} of {mark} sets; the rest is avoided")
        case Why.PATTERN_LEFT_OUT if said["cause"] == Wish.EQUIPMENT.value:
            return translate("Drafts", "no {pattern}: the equipment has nothing for it")
        case Why.PATTERN_LEFT_OUT if said["cause"] == Wish.AVOID.value:
            return translate("Drafts", "no {pattern}: it is to be avoided")
        case Why.RULE if said["reserve"] is not None:
            return translate(
                "Drafts",
                "{exercise}: {fewest} to {most}, {reserve} in reserve, rest {rest_s}; "
                "grows by {variables}",
            )
        case Why.STARTS if not said["loaded"]:
            return translate("Drafts", "Variations start easy: a test says where to begin")
    return _fixed(said.code)


def _fixed(code: Why) -> str:
    return {
        Why.DAYS: translate("Drafts", "Trained on {weekdays}, as far apart as they can be"),
        Why.CHOSEN: translate(
            "Drafts", "{exercise}: {sets} sets on {days} days, for the {pattern}"
        ),
        Why.RULE: translate(
            "Drafts", "{exercise}: {fewest} to {most}, rest {rest_s}; grows by {variables}"
        ),
        Why.MUSCLE: translate("Drafts", "{muscle}: {sets} sets on {days} days; the mark is {mark}"),
        Why.MUSCLE_SHORT: translate(
            "Drafts", "{muscle}: {sets} of {mark} sets; there is no time for more"
        ),
        Why.BALANCE: translate(
            "Drafts",
            "{push} sets pushed and {pull} pulled; {upper} of the upper body, {lower} lower",
        ),
        Why.PATTERN_LEFT_OUT: translate("Drafts", "no {pattern}: there is no time for it"),
        Why.PATTERN_CLOSE: translate(
            "Drafts", "{pattern} on {first} and {second}: no other weekdays are free"
        ),
        Why.ONE_DAY: translate("Drafts", "One day a week; {advised} are advised for adults"),
        Why.PAIRED: translate("Drafts", "{day}: {first} and {second} in turn, to save time"),
        Why.MINUTES: translate(
            "Drafts", "{day}: {minutes} at first, {most} at the most; {allowed} are there"
        ),
        Why.EASIER_WEEKS: translate("Drafts", "Every {every}th week is a deload"),
        Why.NO_EASIER_WEEKS: translate("Drafts", "No deload planned: your call for novices"),
        Why.STARTS: translate("Drafts", "Loads start light: set each trainee's own, or test first"),
    }[code]


def _spoken(name: str, value: ReasonValue, exercises: Mapping[str, Exercise]) -> str:
    match name:
        case "exercise":
            return _exercise(value, exercises)
        case "first" | "second" if isinstance(value, str):
            return _exercise(value, exercises)
        case "first" | "second" | "day" if isinstance(value, int):
            return words.weekday(value)
        case "weekdays":
            return words.listed([words.weekday(int(one)) for one in str(value).split(", ")])
        case "pattern":
            return pattern_word(Pattern(str(value)))
        case "muscle":
            return muscle_word(Muscle(str(value)))
        case "minutes" | "most" | "allowed" if isinstance(value, float):
            return words.minutes(round(value))
        case "rest_s" if isinstance(value, int):
            return words.clock(value)
        case "variables":
            return words.listed([words.variable(one) for one in str(value).split(", ")])
    return words.number(value, 1) if isinstance(value, (int, float)) else str(value)


def _exercise(key: ReasonValue, exercises: Mapping[str, Exercise]) -> str:
    exercise = exercises.get(str(key))
    return exercise.name if exercise else str(key)
