"""What two sequences have in common at their ends, and an index of lines made by it."""

from __future__ import annotations

from datetime import date, timedelta

from hypothesis import given
from hypothesis import strategies as st

from desktop.planning.line_index import LineIndex
from desktop.training.program import Line
from desktop.training.session import LineDone, Session, SetDone
from desktop.training.shared_ends import shared_ends

DAY = date(2026, 1, 5)
LINES = tuple(Line(1, exercise, id=place) for place, exercise in enumerate("abc", start=1))


@given(st.lists(st.integers(0, 3), max_size=9), st.lists(st.integers(0, 3), max_size=9))
def test_ends_are_the_same_and_do_not_overlap(some: list[int], others: list[int]) -> None:
    begin, end = shared_ends(some, others)
    assert some[:begin] == others[:begin]
    assert some[len(some) - end :] == others[len(others) - end :]
    assert begin + end <= min(len(some), len(others))
    middle, other = some[begin : len(some) - end], others[begin : len(others) - end]
    assert not middle or not other or (middle[0] != other[0] and middle[-1] != other[-1])


def session(place: int, told: list[tuple[int, str, bool]]) -> Session:
    parts = tuple(
        LineDone(line, exercise, sets=(SetDone(60_000, 5, warm_up=warm),))
        for line, exercise, warm in told
    )
    return Session(1, DAY + timedelta(days=place), parts, id=place)


TOLD = st.lists(st.tuples(st.integers(1, 3), st.sampled_from("abc"), st.booleans()), max_size=4)


@given(st.lists(TOLD, max_size=8), st.data())
def test_an_index_made_from_another_is_the_one_made_anew(
    told: list[list[tuple[int, str, bool]]], data: st.DataObject
) -> None:
    sessions = tuple(session(2 * place, each) for place, each in enumerate(told))
    index = LineIndex.of(sessions)
    for line in LINES:
        if data.draw(st.booleans()):
            index.trained(line)
    kept = [each for each in sessions if data.draw(st.integers(0, 3))]
    added = [
        session(2 * place + 1, each)
        for place, each in data.draw(st.dictionaries(st.integers(0, 8), TOLD, max_size=2)).items()
    ]
    others = tuple(sorted([*kept, *added], key=lambda one: one.day))
    made, anew = index.of_others(others), LineIndex.of(others)
    for line in LINES:
        assert made.parts(line.id or 0) == anew.parts(line.id or 0)
        assert made.trained(line) == anew.trained(line)
