"""Names stand in the order in which people look for them."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop.training.name_order import name_key


@pytest.mark.parametrize(
    "ordered",
    [
        ("Seat 2", "Seat 3", "Seat 10", "Seat 10b", "Seat 11"),
        ("bow", "Bow 2", "cox", "Stroke"),
        ("Oda", "Örn", "Otto", "Zoe"),
        ("2 days", "10 days", "a"),
        ("Week 02", "Week 3", "Week 10"),
        ("", "Bow"),
    ],
)
def test_numbers_count_by_value_and_letters_whatever_their_case_and_accents(
    ordered: tuple[str, ...],
) -> None:
    backwards = ordered[::-1]
    assert tuple(sorted(backwards, key=name_key)) == ordered


@given(st.lists(st.text(st.characters(codec="utf-8"), max_size=8), max_size=6))
def test_any_names_can_be_sorted_and_the_order_does_not_depend_on_how_they_come(
    names: list[str],
) -> None:
    ordered, backwards = sorted(names, key=name_key), names[::-1]
    assert sorted(backwards, key=name_key) == ordered
    assert sorted(names) == sorted(ordered)


def test_a_number_of_any_length_is_taken() -> None:
    assert name_key("1" * 5000) < name_key("1" * 5001)
