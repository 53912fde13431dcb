"""How well the corpus is read: what is taken as certain is right, and most of it is taken."""

from __future__ import annotations

import pytest

from tests.benches.notes import LEAST_PRECISION, LEAST_RECALL, told
from tests.notes.corpus import Noted, corpus, held_out, misread, score, tuned


def test_the_corpus_is_large_and_every_line_stands_once() -> None:
    texts = [(noted.text, noted.unit) for noted in corpus()]
    assert len(texts) >= 180
    assert len(set(texts)) == len(texts)
    assert len(tuned()) + len(held_out()) == len(texts)


@pytest.mark.parametrize("half", [tuned(), held_out()], ids=["tuned", "held-out"])
def test_what_is_taken_as_certain_is_right_and_most_is_taken(half: tuple[Noted, ...]) -> None:
    found = score(half)
    assert found.precision >= LEAST_PRECISION, told(found)
    assert found.recall >= LEAST_RECALL, told(found)


@pytest.mark.parametrize("noted", tuned(), ids=lambda noted: noted.text)
def test_every_line_of_the_tuned_half_is_read_as_a_coach_reads_it(noted: Noted) -> None:
    assert not misread(noted)
