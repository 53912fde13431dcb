"""Whatever stands in the notes: a reading, nothing lost, no number invented."""

from __future__ import annotations

import re
from dataclasses import replace
from decimal import Decimal

from hypothesis import given
from hypothesis import strategies as st

from desktop.notes.reader import read_notes
from desktop.notes.reading import Reading, ReadSet
from desktop.training.quantities import MAX_LOAD_G, Unit, grams
from tests.notes.corpus import KNOWN, corpus
from tests.strategies import examples

WORDS = sorted({word for noted in corpus() for word in re.split(r"(\s+)", noted.text)})
ODD = [
    "12", "60", "2,5", "1:30", "28/11", "rpe 8", "same", "w/u", "Mon", "3 Dec", "bw+5", "band",
    "each", "٣", "²", "½", "İ", "ß", "\u2028", "\r\n", "\x0b", "\x1c", "99999999", "left 8 right 7",
    "@", "x", "×", "/", ",", "-", "+", ":", "(", ")", "#", "\n", "\t",
]  # fmt: skip

notes = st.text(max_size=40) | st.lists(
    st.sampled_from(WORDS + ODD) | st.sampled_from([" ", " ", ""]), max_size=20
).map("".join)
units = st.sampled_from(Unit)

_WHOLE = re.compile(r"[0-9]+")


def reading_of(text: str, unit: Unit) -> Reading:
    return read_notes(text, replace(KNOWN, unit=unit))


@examples(2)
@given(notes, units)
def test_any_text_gives_a_reading_that_covers_it(text: str, unit: Unit) -> None:
    reading = reading_of(text, unit)
    assert "".join(part.span.of(text) for part in reading.parts) == text
    assert all(part.span.start < part.span.end for part in reading.parts)
    for entry in reading.entries:
        for one in entry.sets:
            assert 0 <= one.span.start < one.span.end <= len(text)
            assert one.certain or entry.questions
    for question in reading.questions:
        assert 0 <= question.span.start <= question.span.end <= len(text)


@examples(2)
@given(notes, units)
def test_no_number_is_invented(text: str, unit: Unit) -> None:
    numbers = numbers_in(text)
    reading = reading_of(text, unit)
    proposed = [one for entry in reading.entries for one in entry.sets]
    for question in reading.questions:
        for meant in question.alternatives:
            proposed += meant.sets or ()
            proposed += [ReadSet(load_g=meant.load_g, rir=meant.rir)]
    loads = {abs(grams(n, each)) for n in numbers for each in Unit if in_range(n, each)} | {0, None}
    times = numbers | {60 * n for n in numbers} | {60 * a + b for a in numbers for b in numbers}
    ratings = numbers | {end for n in numbers if n <= 10 for end in (int(10 - n), -int(n - 10))}
    reserves = ratings | {Decimal(0), Decimal(1), Decimal(2), Decimal(3), Decimal(4), Decimal(6)}
    for one in proposed:
        assert one.reps is None or one.reps in numbers
        assert one.seconds is None or one.seconds in times
        assert (abs(one.load_g) if one.load_g else one.load_g) in loads
        assert one.rir is None or (one.rir in reserves and numbers)
    assert all(entry.pain in numbers | {0} for entry in reading.entries)


@given(notes, units)
def test_every_alternative_settles_its_question(text: str, unit: Unit) -> None:
    known = replace(KNOWN, unit=unit)
    for question in read_notes(text, known).questions[:3]:
        for meant in question.alternatives[:3]:
            again = read_notes(text, known, [question.answered(meant)])
            assert question not in again.questions


def numbers_in(text: str) -> set[Decimal]:
    """Every number that can be seen in a text, with point or comma, or without either."""
    found = {Decimal(each) for each in re.findall(r"[0-9]{1,9}", text)}
    found |= {Decimal(f"{a}.{b}") for a, b in re.findall(r"(?=([0-9]{1,9})[.,]([0-9]{1,3}))", text)}
    return found | {
        Decimal(f"{a}.{b}") for a, b in re.findall(r"(?<![0-9])([0-9]{1,9})[.,]([0-9]{1,3})", text)
    }


def in_range(number: Decimal, unit: Unit) -> bool:
    return number * unit.grams_each <= MAX_LOAD_G
