"""Words of the notes screen: what is asked, what each answer means, what was read."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from itertools import groupby

from PySide6.QtCore import QCoreApplication

from desktop.planning.noted import (
    Alternative,
    Doubt,
    PartKind,
    ProposedLine,
    Question,
    ReadSet,
)
from desktop.planning.noted_sessions import Takeable
from desktop.training.quantities import Unit
from views import words

translate = QCoreApplication.translate

Name = Callable[[str], str]


def question_text(question: Question, text: str) -> str:
    """What is asked about a stretch of the notes."""
    ask = {
        Doubt.EXERCISE: translate("Notes", "Which exercise is “{said}”?"),
        Doubt.LINE: translate("Notes", "Which line of it is meant by “{said}”?"),
        Doubt.VARIATION: translate("Notes", "How was it set up: “{said}”?"),
        Doubt.ORDER: translate("Notes", "Which number is which in “{said}”?"),
        Doubt.AT: translate("Notes", "Is “{said}” a load or an effort?"),
        Doubt.LOAD: translate("Notes", "With which load: “{said}”?"),
        Doubt.UNIT: translate("Notes", "In which unit is “{said}”?"),
        Doubt.DECIMAL: translate("Notes", "Is the comma in “{said}” a decimal mark?"),
        Doubt.RANGE: translate("Notes", "Which number of “{said}” was done?"),
        Doubt.SIDES: translate("Notes", "Two sets, or left and right: “{said}”?"),
        Doubt.EFFORT: translate("Notes", "How many were left in reserve: “{said}”?"),
        Doubt.REPEAT: translate("Notes", "What is meant again by “{said}”?"),
        Doubt.AMOUNT: translate("Notes", "How many, or how long: “{said}”?"),
        Doubt.SCHEME: translate("Notes", "What do the numbers mean in “{said}”?"),
        Doubt.LEFT_OVER: translate("Notes", "What does “{said}” belong to?"),
        Doubt.PAIN: translate("Notes", "Where was the pain: “{said}”?"),
        Doubt.DATE: translate("Notes", "Which day is “{said}”?"),
    }[question.doubt]
    return ask.format(said=" ".join(question.span.of(text).split()))


def no_answer_text(question: Question) -> str:
    """What to do where no answer is proposed."""
    if question.doubt is Doubt.LOAD:
        return translate("Notes", "Write the load into the text, or leave it out.")
    return translate("Notes", "Say it in the text at the left, or leave it out.")


def alternative_text(
    meant: Alternative, unit: Unit, exercise: Name, variation: Name = lambda key: key
) -> str:
    """What an answer means, in words."""
    parts: list[str] = []
    if meant.exercise is not None:
        parts.append(exercise(meant.exercise))
    if meant.line is not None:
        parts.append(meant.line or translate("Notes", "the line without a name"))
    if meant.day is not None:
        parts.append(words.short_day(meant.day))
    if meant.sets is not None:
        parts.append(sets_text(meant.sets, unit, variation))
    if meant.load_g is not None:
        parts.append(words.load(meant.load_g, unit))
    if meant.rir is not None:
        parts.append(_reserve(meant.rir))
    return ", ".join(parts) or translate("Notes", "as it was read")


Offered = list[tuple[str, Alternative | None]]
_LEFT_OUT = (Doubt.EXERCISE, Doubt.LINE, Doubt.DATE)
"""What is doubtful here belongs to several sets: they wait, or the text is changed."""


def offered_answers(question: Question, unit: Unit, exercise: Name) -> Offered:
    """Answers to choose from, in words; None: another exercise is to be chosen."""
    offered: Offered = [
        (alternative_text(each, unit, exercise), each) for each in question.alternatives
    ]
    if question.doubt is Doubt.EXERCISE:
        offered.append((translate("Notes", "another exercise…"), None))
    there = any(each.sets == () for each in question.alternatives)
    if not there and question.doubt not in _LEFT_OUT:
        text = translate("Notes", "leave it out")
        if question.doubt is Doubt.PAIN:
            text = translate("Notes", "none of them")
        offered.append((text, Alternative(sets=())))
    return offered


def set_up_name(line: ProposedLine, key: str) -> str:
    """The name of a variation; one made by a height says the height."""
    listed = {each.key: each.name for each in line.exercise.variations} if line.exercise else {}
    use, _, height = key.partition("-")
    if key in listed or not height.isdigit():
        return listed.get(key, key)
    on = {
        "hands": translate("Notes", "hands on {height}"),
        "feet": translate("Notes", "feet on {height}"),
        "bar": translate("Notes", "bar at {height}"),
    }
    return on.get(use, key).format(height=words.length(int(height)))


def sets_text(sets: Sequence[ReadSet], unit: Unit, variation: Name = lambda key: key) -> str:
    """Sets in short: "3 × 5 at 60 kg", "8, 8, 7 at 45 kg, 2 in reserve"; none are left out."""
    if not sets:
        return translate("Notes", "leave it out")
    runs = []
    for (load_g, warm_up), group in groupby(sets, key=lambda each: (each.load_g, each.warm_up)):
        alike = list(group)
        amounts = [_amount(each) for each in alike]
        text = ", ".join(amounts)
        if len(alike) > 1 and len(set(amounts)) == 1:
            text = f"{len(alike)} {words.TIMES} {amounts[0]}"
        if load_g is None:
            text = translate("Notes", "{work} at ?").format(work=text)
        elif load_g:
            at = translate("Notes", "{work} at {load}")
            text = at.format(work=text, load=words.load(load_g, unit))
        if warm_up:
            text = translate("Notes", "warm-up {work}").format(work=text)
        runs.append(text)
    parts = ["; ".join(runs)]
    reserve = {each.rir for each in sets}
    if len(reserve) == 1 and (rir := reserve.pop()) is not None:
        parts.append(_reserve(rir))
    kinds = {each.variation for each in sets}
    if len(kinds) == 1 and (kind := kinds.pop()) is not None:
        parts.append(variation(kind))
    return ", ".join(parts)


def _amount(read: ReadSet) -> str:
    if read.seconds is not None:
        text = words.hold(read.seconds)
    else:
        text = "?" if read.reps is None else f"{read.reps}"
    side = {
        "left": translate("Notes", "{count} left"),
        "right": translate("Notes", "{count} right"),
    }.get(read.side)
    return side.format(count=text) if side else text


def _reserve(rir: float) -> str:
    return translate("Notes", "{count} in reserve").format(count=words.number(rir))


def part_word(kind: PartKind, *, doubtful: bool) -> str:
    """What a stretch of the text was taken for."""
    if doubtful:
        return translate("Notes", "doubtful")
    return {
        PartKind.DATE: translate("Notes", "read as the day"),
        PartKind.NAME: translate("Notes", "read as an exercise"),
        PartKind.WORK: translate("Notes", "read as what was done"),
        PartKind.NOTE: translate("Notes", "kept as a note"),
        PartKind.MARK: translate("Notes", "read as a mark"),
        PartKind.UNREAD: translate("Notes", "not read"),
        PartKind.PLAIN: "",
    }[kind]


def line_title(line: ProposedLine, text: str) -> str:
    """The exercise of an entry, with the name of its line; or the word that names it."""
    if line.exercise is None:
        said = line.entry.name.of(text) if line.entry.name is not None else ""
        return said or translate("Notes", "Which exercise?")
    return ", ".join(part for part in (line.exercise.name, line.name) if part)


def take_word(found: Takeable) -> str:
    """The main action."""
    if len(found.days) > 1:
        text = translate("Notes", "Save {count} sessions")
        return text.format(count=words.number(len(found.days)))
    return translate("Notes", "Take over")


def summary(found: Takeable, questions: int, unread: int) -> str:
    """What can be taken over, and what waits."""
    parts = []
    if found.sets:
        days = [words.short_day(day.day) for day in found.days[:4]]
        text = translate("Notes", "{sets} on {days}.")
        parts.append(text.format(sets=words.sets(found.sets), days=words.listed(days)))
    if questions:
        one = questions == 1
        text = translate("Notes", "1 question is open.") if one else translate(
            "Notes", "{count} questions are open."
        )  # fmt: skip
        parts.append(text.format(count=words.number(questions)))
    if found.waiting:
        text = translate("Notes", "Exercises that wait for an answer are left out: {count}.")
        parts.append(text.format(count=words.number(found.waiting)))
    if found.there:
        text = translate("Notes", "On record already: {count}.")
        parts.append(text.format(count=words.number(found.there)))
    if unread:
        text = translate("Notes", "Parts not read: {count}.")
        parts.append(text.format(count=words.number(unread)))
    return " ".join(parts)
