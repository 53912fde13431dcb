"""What was read in notes, for the command line: as plain values for JSON, and as text."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import groupby
from typing import Any

from desktop.notes.reading import Question
from desktop.planning.noted import Noted, ProposedLine, ProposedSet
from desktop.training.quantities import format_load


def noted_values(noted: Noted) -> list[dict[str, Any]]:
    """One object for each set, in the order of the text. Masses in grams per implement; null: not
    known, or not said.

    ``asked`` says what is doubtful; ``text`` and ``text_line`` are what the set was read from and
    where. A set is ``certain`` when nothing is asked about it, its exercise or its day.
    """
    return [
        {
            "day": day.day.isoformat(),
            "line": line.name,
            "exercise": None if line.exercise is None else line.exercise.key,
            "variation": one.read.variation if one.done is None else one.done.variation,
            "load_g": one.read.load_g,
            "reps": one.read.reps,
            "seconds": one.read.seconds,
            "rir": one.read.rir,
            "certain": one.certain,
            "warm_up": one.read.warm_up,
            "side": one.read.side,
            "pain": 0 if one.done is None else one.done.pain,
            "asked": _asked(one, (*day.questions, *line.entry.questions)),
            "text": one.read.span.of(noted.reading.text),
            "text_line": noted.reading.line_number(one.read.span),
        }
        for day in noted.days
        for line in day.lines
        for one in line.sets
    ]


def _asked(one: ProposedSet, questions: tuple[Question, ...]) -> list[str]:
    """What is doubtful of a set that is not certain."""
    return [] if one.certain else list(dict.fromkeys(each.doubt.value for each in questions))


def noted_text(noted: Noted) -> Iterator[str]:
    """The same to read, with what is asked and what stayed unread."""
    reading = noted.reading
    for day in noted.days:
        yield day.day.isoformat()
        for line in day.lines:
            name = "unknown exercise" if line.exercise is None else line.exercise.name
            title = ", ".join(part for part in (name, line.name) if part)
            yield f"  {title}: {_sets_text(line, noted) or 'no set'}"
            for question in line.entry.questions:
                yield f"      {question.doubt.value}? {question.span.of(reading.text)!r}"
        for question in day.questions:
            yield f"  {question.doubt.value}? {question.span.of(reading.text)!r}"
    for span in reading.unread:
        yield f"unread, line {reading.line_number(span)}: {span.of(reading.text)!r}"


def _sets_text(line: ProposedLine, noted: Noted) -> str:
    texts = [_set_text(one, noted) for one in line.sets]
    alike = [(text, len(list(same))) for text, same in groupby(texts)]
    return ", ".join(f"{count} × {text}" if count > 1 else text for text, count in alike)


def _set_text(one: ProposedSet, noted: Noted) -> str:
    read = one.read
    text = f"{read.seconds} s" if read.reps is None and read.seconds is not None else f"{read.reps}"
    text = "?" if text == "None" else text
    if read.load_g is None:
        text += " at ?"
    elif read.load_g:
        text += f" at {format_load(read.load_g, noted.reading.unit)}"
    variation = read.variation if one.done is None else one.done.variation
    for said in (variation, read.side, "warm-up" if read.warm_up else ""):
        text += f" {said}" if said else ""
    text += "" if read.rir is None else f" ({read.rir:g} in reserve)"
    return text if one.certain else f"{text} ?"
