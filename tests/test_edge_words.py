"""Words at the edges of a chart stand beside their lines."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from views.edge_words import EdgeWord, Place, places_of

PHASE = EdgeWord(100, 80, "top")
TODAY = EdgeWord(140, 36, "top", gives_way=True)


@pytest.mark.parametrize(
    ("words", "places"),
    [
        ((PHASE,), (Place(100, "top", False),)),
        # Behind the line of today, and "today" before it: no line runs through either.
        ((PHASE, TODAY), (Place(140, "top", False), Place(104, "top", False))),
        # No room behind: its own place, with today's line stopped there and its word below.
        (
            (EdgeWord(310, 80, "top"), EdgeWord(360, 36, "top", gives_way=True)),
            (Place(310, "top", True), Place(360, "second", False)),
        ),
        ((EdgeWord(380, 80, "top"),), (Place(300, "top", False),)),  # before its line
        ((PHASE, EdgeWord(120, 80, "top")), (Place(100, "top", True), None)),
        ((EdgeWord(50, 40, "foot"),), (Place(30, "foot", False),)),  # in the middle of its strip
        # Wider than its strip, up to the line of the phase that follows it.
        ((EdgeWord(50, 40, "foot"), EdgeWord(62, 80, "top")),
         (Place(22, "foot", False), Place(62, "top", False))),
        ((EdgeWord(-5, 40, "top"), EdgeWord(405, 40, "top")), (None, None)),  # out of view
    ],
)  # fmt: skip
def test_words_stand_where_no_line_runs_through_them(
    words: tuple[EdgeWord, ...], places: tuple[Place | None, ...]
) -> None:
    assert places_of(words, 400) == places


@given(
    st.lists(
        st.builds(
            EdgeWord,
            st.floats(-50, 450),
            st.floats(10, 120),
            st.sampled_from(["top", "second", "foot"]),
            st.just(False),
        ),
        max_size=12,
    )
)
def test_words_of_a_row_never_meet_and_stay_inside(words: list[EdgeWord]) -> None:
    found = places_of(words, 400)
    shown = [(place, word.width) for place, word in zip(found, words, strict=True) if place]
    for place, width in shown:
        assert 0 <= place.start <= 400 - width + 1e-6
    for at, (place, width) in enumerate(shown):
        for other, wide in shown[at + 1 :]:
            apart = place.start + width <= other.start or other.start + wide <= place.start
            assert apart or place.edge != other.edge
