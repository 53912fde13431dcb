"""Quantities: grams, kilograms, pounds, and the one reader of numbers."""

from __future__ import annotations

from contextlib import suppress
from decimal import Decimal
from typing import Literal

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop.training.quantities import (
    GRAMS_PER_LB,
    MAX_LOAD_G,
    InvalidQuantity,
    Unit,
    at_least,
    format_load,
    grams,
    in_unit,
    parse_decimal,
    same_load,
)

units = st.sampled_from(Unit)
typed_values = st.decimals(-4000, 4000, places=2).filter(lambda value: abs(value) < 4000)


def test_a_pound_is_the_international_one() -> None:
    # International yard and pound agreement 1959: 1 lb = 0.45359237 kg exactly.
    assert Decimal("453.59237") == GRAMS_PER_LB


@pytest.mark.parametrize(
    ("value", "unit", "expected"),
    [
        (Decimal("62.5"), Unit.KG, 62_500),
        (62.5, Unit.KG, 62_500),
        (60, Unit.KG, 60_000),
        (45, Unit.LB, 20_412),
        (-20, Unit.KG, -20_000),
        (Decimal("0.0005"), Unit.KG, 1),
        (0.0005, Unit.KG, 1),
        (Decimal("-0.0005"), Unit.KG, -1),
        (np.float64(1.25), Unit.KG, 1_250),
        (2000, Unit.KG, MAX_LOAD_G),
    ],
)
def test_a_value_becomes_the_nearest_gram(
    value: Decimal | float, unit: Unit, expected: int
) -> None:
    assert grams(value, unit) == expected


@pytest.mark.parametrize(
    "value",
    [
        Decimal("2000.001"),
        -2001,
        10**400,
        1e300,
        float("nan"),
        float("inf"),
        Decimal("nan"),
        Decimal("sNaN"),
        Decimal("-Infinity"),
        Decimal("1e999999"),
    ],
)
def test_a_load_out_of_range_is_refused_with_what_is_allowed(value: Decimal | float) -> None:
    with pytest.raises(InvalidQuantity, match="allowed is a number from -2000 kg to 2000 kg") as e:
        grams(value, Unit.KG)
    assert e.value.code == "load_out_of_range"
    assert e.value.values["most"] == 2000


@pytest.mark.parametrize("value", [True, "60", None])
def test_what_is_no_number_is_refused(value: object) -> None:
    with pytest.raises(InvalidQuantity, match="is not a number"):
        grams(value, Unit.KG)  # type: ignore[arg-type]


def test_grams_out_of_range_are_not_shown() -> None:
    with pytest.raises(InvalidQuantity, match="allowed is -2000000 to 2000000 g"):
        in_unit(MAX_LOAD_G + 1, Unit.LB)


@given(typed_values, units)
def test_what_was_typed_is_shown_for_ever(value: Decimal, unit: Unit) -> None:
    shown = in_unit(grams(value, unit), unit) if unit is Unit.LB or abs(value) <= 2000 else value
    assert shown == value


@given(st.integers(1 - MAX_LOAD_G, MAX_LOAD_G - 1), units)
def test_showing_and_typing_again_moves_a_load_by_less_than_half_a_shown_step(
    load_g: int, unit: Unit
) -> None:
    again = grams(in_unit(load_g, unit), unit)
    assert abs(again - load_g) <= unit.grams_each / 200 + Decimal("0.5")
    assert in_unit(again, unit) == in_unit(load_g, unit)


def test_there_is_no_negative_zero() -> None:
    assert str(in_unit(-1, Unit.KG)) == "0.00"


@pytest.mark.parametrize(
    ("load_g", "unit", "text"),
    [
        (62_500, Unit.KG, "62.5 kg"),
        (100_000, Unit.KG, "100 kg"),
        (20_412, Unit.LB, "45 lb"),
        (-20_000, Unit.KG, "-20 kg"),
        (1_250, Unit.KG, "1.25 kg"),
        (0, Unit.LB, "0 lb"),
    ],
)
def test_a_load_is_written_without_trailing_zeros(load_g: int, unit: Unit, text: str) -> None:
    assert format_load(load_g, unit) == text


@pytest.mark.parametrize(
    ("a_g", "b_g", "same"), [(100, 110, True), (110, 100, True), (100, 111, False), (-5, 5, True)]
)
def test_loads_within_ten_grams_are_one_load(a_g: int, b_g: int, same: bool) -> None:
    assert same_load(a_g, b_g) is same


@pytest.mark.parametrize(
    ("load_g", "asked_g", "reached"),
    [
        (60_000, 60_000, True),
        (59_990, 60_000, True),
        (59_989, 60_000, False),
        (70_000, 60_000, True),
    ],
)
def test_a_load_ten_grams_short_still_reaches_what_was_asked(
    load_g: int, asked_g: int, reached: bool
) -> None:
    assert at_least(load_g, asked_g) is reached


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("62.5", "62.5"),
        ("62,5", "62.5"),
        (" 62,50\n", "62.50"),
        ("+5", "5"),
        ("-20", "-20"),
        ("−20", "-20"),
        (".5", "0.5"),
        (",5", "0.5"),
        ("5.", "5"),
        ("20.412", "20.412"),
        ("0,125", "0.125"),
        ("1250,125", "1250.125"),
        ("1250", "1250"),
    ],
)
def test_point_and_comma_are_both_decimal_marks(text: str, expected: str) -> None:
    assert parse_decimal(text) == Decimal(expected)


@pytest.mark.parametrize(
    ("text", "code"),
    [
        ("1,250.5", "grouped_number"),
        ("1.250,5", "grouped_number"),
        ("1.250.000", "grouped_number"),
        ("1 250", "grouped_number"),
        ("1\N{NO-BREAK SPACE}250", "grouped_number"),
        ("1'250", "grouped_number"),
        ("1_250", "grouped_number"),
        ("1,250", "ambiguous_group"),
        ("-120,500", "ambiguous_group"),
        ("", "not_a_number"),
        ("-", "not_a_number"),
        (".", "not_a_number"),
        ("1e3", "not_a_number"),
        ("nan", "not_a_number"),
        ("60kg", "not_a_number"),
        ("--5", "not_a_number"),
        ("٣", "not_a_number"),
        ("1" * 50, "not_a_number"),
    ],
)
def test_what_could_mean_two_things_or_nothing_is_refused(text: str, code: str) -> None:
    with pytest.raises(InvalidQuantity) as e:
        parse_decimal(text)
    assert e.value.code == code
    assert e.value.values["text"] == text
    assert len(str(e.value)) < 200


def test_a_file_that_says_its_decimal_mark_is_taken_at_its_word() -> None:
    assert parse_decimal("1,250", decimal_mark=",") == Decimal("1.25")
    assert parse_decimal("7", decimal_mark=",") == 7
    with pytest.raises(InvalidQuantity, match="the decimal mark here is ','") as e:
        parse_decimal("1.250", decimal_mark=",")
    assert e.value.code == "other_decimal_mark"


@given(typed_values, st.sampled_from([".", ","]))
def test_a_written_number_is_read_back(value: Decimal, mark: Literal[".", ","]) -> None:
    assert parse_decimal(str(value).replace(".", mark)) == value


@given(st.text(max_size=20))
def test_any_text_is_a_number_or_a_clear_refusal(text: str) -> None:
    with suppress(InvalidQuantity):
        assert parse_decimal(text).is_finite()


@given(st.floats() | st.decimals() | st.integers(), units)
def test_any_number_is_a_load_or_a_clear_refusal(value: Decimal | float, unit: Unit) -> None:
    with suppress(InvalidQuantity):
        assert abs(grams(value, unit)) <= MAX_LOAD_G
