"""Cells of other people's tables: what they are read as, what is doubtful, what is refused."""

from __future__ import annotations

import re
from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from db.tables import Figure
from desktop.planning.table_cells import (
    CellProblem,
    looks_like_day,
    read_counts,
    read_day,
    read_loads,
    unit_of,
)
from desktop.training.quantities import Unit
from desktop.training.table_mapping import DateOrder

ZERO = date(1899, 12, 30)
DAY = date(2026, 11, 3)


@pytest.mark.parametrize(
    ("text", "order", "day"),
    [
        ("2026-11-03", "", DAY),
        ("2026-11-03T18:30:00", "", DAY),
        ("2026/11/3", "", DAY),
        ("20261103", "", DAY),
        ("3.11.2026", "", DAY),
        ("03.11.26", "", DAY),
        ("3/11/2026", "day first", DAY),
        ("11/3/2026", "month first", DAY),
        ("11/3/26 6:30 PM", "month first", DAY),
        ("Tue 3 Nov 2026", "", DAY),
        ("Tuesday, November 3, 2026", "", DAY),
        ("3rd November 2026", "", DAY),
        ("Di, 3. November 2026", "", DAY),
        ("3 de noviembre de 2026", "", DAY),
        ("5/5/2026", "", date(2026, 5, 5)),
        ("46329", "", DAY),
        ("46329.75", "", DAY),
    ],
)
def test_a_day_is_read_however_it_is_written(text: str, order: DateOrder, day: date) -> None:
    assert looks_like_day(text) or text.startswith("46")
    assert read_day(text, order, ZERO) == day


@pytest.mark.parametrize(
    ("text", "order", "said"),
    [
        ("3/11/2026", "", "day or month first"),
        ("31.11.2026", "", "no day of the calendar"),
        ("13/13/2026", "day first", "no day"),
        ("yesterday", "", "no date"),
        ("3 Nov", "", "no date"),
        ("0000-00-00", "", "no day"),
        ("12", "", "no date"),
    ],
)
def test_what_is_no_day_is_refused(text: str, order: DateOrder, said: str) -> None:
    with pytest.raises(CellProblem, match=said):
        read_day(text, order, ZERO)


@pytest.mark.parametrize(
    ("text", "grams"),
    [
        ("60", (60_000,)),
        ("60kg", (60_000,)),
        ("60 KG", (60_000,)),
        ("62,5", (62_500,)),
        ("62.5 kg.", (62_500,)),
        ("135 lb", (61_235,)),
        ("135lbs", (61_235,)),
        ("135#", (61_235,)),
        ("@ 70kg", (70_000,)),
        ("BW", (0,)),
        ("bodyweight", (0,)),
        ("BW+10", (10_000,)),
        ("bw + 25 lb", (11_340,)),
        ("BW-20", (-20_000,)),
        ("BW −7.5kg", (-7_500,)),
        ("+10", (10_000,)),
        ("-20", (-20_000,)),
        ("60/62.5/65", (60_000, 62_500, 65_000)),
        ("60, 65, 70 kg", (60_000, 65_000, 70_000)),
        ("", ()),
        ("-", ()),
        ("n/a", ()),
    ],
)
def test_a_load_is_read_in_grams(text: str, grams: tuple[int, ...]) -> None:
    assert read_loads(text, Unit.KG, "").grams == grams


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("60-70", "range"),
        ("heavy", "no load"),
        ("blue band", "no load"),
        ("BW10", "BW\\+10"),
        ("1,250", "1250"),
        ("9999999", "not a load"),
        ("60 stone", "no load"),
        ("1 250", "no load"),
    ],
)
def test_a_load_that_is_none_is_refused_with_what_is_allowed(text: str, said: str) -> None:
    with pytest.raises(CellProblem, match=said):
        read_loads(text, Unit.KG, "")


def test_a_load_without_any_unit_is_asked_about() -> None:
    with pytest.raises(CellProblem, match="kg or lb"):
        read_loads("60", None, "")
    assert read_loads("0", None, "").grams == (0,)


def test_a_pair_is_doubtful() -> None:
    pair = read_loads("2x24kg", None, "")
    assert pair.grams == (24_000,)
    assert "pair" in pair.doubt


def test_the_numbers_of_a_workbook_have_a_point_whatever_the_table_uses() -> None:
    assert read_loads(Figure("62.5"), Unit.KG, ",").grams == (62_500,)
    assert read_loads("62,5", Unit.KG, ",").grams == (62_500,)
    with pytest.raises(CellProblem, match="decimal mark"):
        read_loads("62.5", Unit.KG, ",")


@pytest.mark.parametrize(
    ("text", "amounts", "held"),
    [
        ("5", (5,), False),
        ("5.0", (5,), False),
        ("8 reps", (8,), False),
        ("3x5", (5, 5, 5), False),
        ("3 × 5", (5, 5, 5), False),
        ("3x5/5/4", (5, 5, 4), False),
        ("5/5/4", (5, 5, 4), False),
        ("8, 8, 7", (8, 8, 7), False),
        ("8,8,7", (8, 8, 7), False),
        ("8 8 7", (8, 8, 7), False),
        ("5-5-4", (5, 5, 4), False),
        ("5+3+2", (5, 3, 2), False),
        ("20 s", (20,), True),
        ('20"', (20,), True),
        ("3x20s", (20, 20, 20), True),
        ("0:45", (45,), True),
        ("1:30", (90,), True),
        ("1 min", (60,), True),
        ("0", (0,), False),
        ("", (), False),
    ],
)
def test_counts_are_read_set_by_set(text: str, amounts: tuple[int, ...], held: bool) -> None:
    counts = read_counts(text)
    assert (counts.amounts, counts.held) == (amounts, held)


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("8-10", "range"),
        ("40x5x3", "three numbers"),
        ("30x5", "1 to 20 sets"),
        ("3x5/5", "3 sets, but 2"),
        ("as many as possible", "no count"),
        ("-5", "no count"),
        ("5.5", "no count"),
        ("2005-05-04", "is a day"),
    ],
)
def test_counts_that_are_none_are_refused(text: str, said: str) -> None:
    with pytest.raises(CellProblem, match=said):
        read_counts(text)


def test_two_numbers_with_a_stroke_may_be_two_sides() -> None:
    assert "left and right" in read_counts("8/8").doubt
    assert not read_counts("8/8/8").doubt


def test_a_unit_is_found_in_a_heading() -> None:
    assert unit_of("Weight (kg)") is Unit.KG
    assert unit_of("Load lbs") is Unit.LB
    assert unit_of("kg or lb") is None
    assert unit_of("Weight") is None


@given(st.text(alphabet="0123456789x/ ,.-+kglbBWs@:", max_size=14))
def test_no_cell_gives_a_number_that_is_not_in_it(text: str) -> None:
    written = {int(number) for number in re.findall(r"[0-9]+", text)}
    try:
        counts = read_counts(text)
    except CellProblem:
        return
    if ":" not in text:
        assert set(counts.amounts) <= written
