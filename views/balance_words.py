"""Balance in words: what a program leaves out or piles up, and what would mend it."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import QCoreApplication

from desktop.training.balance import (
    AddSlot,
    Finding,
    FindingCode,
    KeepVariable,
    MoveDay,
    PairSlots,
    RemoveSlot,
)
from desktop.training.exercises import Exercise, Pattern
from desktop.training.program import Program
from desktop.training.program_edits import DayPlace, day_at
from desktop.training.reasons import ReasonValue
from desktop.training.volume import Volume
from views import words
from views.day_words import day_name
from views.exercise_words import pattern_word
from views.sentences import small

translate = QCoreApplication.translate


def finding_text(finding: Finding, exercises: Mapping[str, Exercise]) -> str:
    """What was found, in one sentence without a full stop."""
    values = dict(finding.values)
    if "pattern" in values:
        values["pattern"] = pattern_word(Pattern(str(values["pattern"])))
    match finding.code:
        case FindingCode.PATTERN_MISSING:
            text = translate("Balance", "No {pattern} in the week")
        case FindingCode.PUSH_TO_PULL:
            for name in ("push", "pull"):
                values[name] = words.number(_amount(finding[name]), 1)
            text = translate("Balance", "{push} sets pushed against {pull} pulled")
        case FindingCode.FOLLOWING_DAYS:
            for name in ("first", "second"):
                values[name] = words.weekday(int(_amount(finding[name])))
            text = translate("Balance", "{pattern} on {first} and {second}, no full day between")
            if values["first"] == values["second"]:
                text = translate("Balance", "{pattern} twice on {first}")
        case FindingCode.OVER_TIME:
            for name in ("minutes", "allowed"):
                values[name] = words.number(round(_amount(finding[name])))
            text = translate("Balance", "{day} takes {minutes} min, {allowed} are there")
        case FindingCode.SEVERAL_GROW:
            names = [part.strip() for part in str(values["variables"]).split(",")]
            values["variables"] = words.listed([_grown_word(name) for name in names])
            values["exercise"] = _exercise_name(str(values["exercise"]), exercises)
            text = translate("Balance", "{exercise}: {variables} grow at once in this phase")
    shown = text.format(**values)
    return f"{shown[:1].upper()}{shown[1:]}"


def proposal_text(program: Program, finding: Finding, exercises: Mapping[str, Exercise]) -> str:
    """What would mend it, as an action; "" where nothing that is known would."""
    match finding.proposal:
        case AddSlot(day, key):
            text = translate("Balance", "Add {exercise} on {day}")
            return text.format(
                exercise=small(_exercise_name(key, exercises)),
                day=_day(program, finding.phase, day),
            )
        case MoveDay(day, weekday):
            text = translate("Balance", "Move {day} to {weekday}")
            return text.format(
                day=_day(program, finding.phase, day), weekday=words.weekday(weekday)
            )
        case PairSlots(day, first, second, saves):
            slots = day_at(program, DayPlace(finding.phase, day)).slots
            text = translate("Balance", "Do {first} and {second} in turn: {saves} min less")
            return text.format(
                first=small(_exercise_name(slots[first].exercise, exercises)),
                second=small(_exercise_name(slots[second].exercise, exercises)),
                saves=words.number(round(saves)),
            )
        case RemoveSlot(day, slot, saves):
            slots = day_at(program, DayPlace(finding.phase, day)).slots
            text = translate("Balance", "Take {exercise} off: {saves} min less")
            return text.format(
                exercise=small(_exercise_name(slots[slot].exercise, exercises)),
                saves=words.number(round(saves)),
            )
        case KeepVariable(variable=variable):
            text = translate("Balance", "Leave the {variable} as they were")
            return text.format(variable=_grown_word(variable))
        case None:
            return ""


def patterns_text(volume: Volume) -> str:
    """Hard sets a week by pattern, the most first, and those without any."""
    trained = sorted(volume.by_pattern.items(), key=lambda each: -each[1])
    parts = [
        f"{pattern_word(pattern)} {words.number(sets, 1)}"
        for pattern, sets in trained
        if pattern is not Pattern.SINGLE_JOINT
    ]
    text = ", ".join(parts)
    return f"{text[:1].upper()}{text[1:]}"


def ratio_text(volume: Volume) -> str:
    """Push against pull and upper against lower body, in words."""
    text = words.DOT.join(
        (
            _against(translate("Balance", "push"), volume.push,
                     translate("Balance", "pull"), volume.pull),
            _against(translate("Balance", "upper body"), volume.upper,
                     translate("Balance", "lower body"), volume.lower),
        )
    )  # fmt: skip
    return f"{text[:1].upper()}{text[1:]}"


def _against(one: str, first: float, other: str, second: float) -> str:
    if first == second:
        text = translate("Balance", "{one} and {other} even, {count} sets each")
        return text.format(one=one, other=other, count=words.number(first, 1))
    text = translate("Balance", "{one} {first} against {other} {second}")
    return text.format(
        one=one, first=words.number(first, 1), other=other, second=words.number(second, 1)
    )


def _amount(value: ReasonValue) -> float:
    return float(value) if isinstance(value, int | float) else 0.0


def _grown_word(name: str) -> str:
    return translate("Balance", "days a week") if name == "days" else words.variable(name)


def _exercise_name(key: str, exercises: Mapping[str, Exercise]) -> str:
    return exercises[key].name if key in exercises else key


def _day(program: Program, phase: int, day: int) -> str:
    found = day_at(program, DayPlace(phase, day))
    return day_name(found) if found.weekday is None else words.weekday(found.weekday)
