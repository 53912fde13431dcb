"""The chart: what is drawn as arrays, what stands at its axes, what its cursor says."""

from __future__ import annotations

import subprocess
import sys
from collections.abc import Iterator
from datetime import date
from itertools import pairwise

import numpy as np
import pytest
from PySide6.QtCore import QLocale, Qt
from pytestqt.qtbot import QtBot

from db.database import Database
from desktop.planning.best_sets import BestSet
from desktop.planning.progress import LineProgress, progress
from desktop.training.quantities import Unit
from desktop.training.session import SetDone
from tests.chart_scenes import FIRST, TODAY, WEEK, Scene, open_scene
from views.axis_ticks import day_ticks, round_ticks, short_date
from views.chart_window import fitting, span_of
from views.line_plot import LinePlot
from views.measures import Shown, measures_of
from views.progress_series import Series, Shape, Spot, broken_line, series_of, shape_of, step_line
from views.series_cut import cut, flattened
from views.theme import Theme
from views.week_bars import WeekBars

pytestmark = pytest.mark.usefixtures("english")

MONDAY = date(2026, 11, 2)


@pytest.fixture(scope="module")
def scene() -> Iterator[Scene]:
    database = Database.open(":memory:")
    yield open_scene(database)
    database.close()


def progress_in(scene: Scene, exercise: str) -> LineProgress:
    return progress(scene.repository, scene.line_id(exercise), TODAY)


def series_in(scene: Scene, exercise: str, shown: Shown, unit: Unit = Unit.KG) -> Series:
    return series_of(progress_in(scene, exercise), shown, unit)


def drawn(qtbot: QtBot, series: Series, weeks: int | None = 16) -> LinePlot:
    plot = LinePlot(Theme("light", calm=True))
    qtbot.addWidget(plot)
    plot.resize(900, 400)
    with qtbot.waitExposed(plot):
        plot.show()
    plot.show_series(series, {}, weeks)
    return plot


# Axes


def test_weeks_are_marked_on_their_first_day_and_stay_there_when_moved() -> None:
    first = MONDAY.toordinal()
    ticks = day_ticks(first, first + 70, 20)
    assert [tick.text for tick in ticks][:3] == ["2 Nov", "9 Nov", "16 Nov"]
    few = day_ticks(first, first + 112, 5)
    moved = day_ticks(first + 10, first + 122, 5)
    assert {tick.day for tick in few[1:]} <= {tick.day for tick in moved}
    assert {(after.day - tick.day) for tick, after in pairwise(few)} == {28}


@pytest.mark.parametrize("starts", range(7))
def test_a_week_begins_where_the_locale_says(starts: int) -> None:
    first = MONDAY.toordinal() + 3
    for tick in day_ticks(first, first + 60, 20, starts):
        assert date.fromordinal(tick.day).weekday() == starts


@pytest.mark.parametrize(
    ("days", "words"),
    [(730, ["2026", "Mar", "May", "Jul", "Sept", "Nov", "2027"]), (5000, ["2026", "2027", "2028"])],
)
def test_long_spans_are_marked_by_months_and_years(days: int, words: list[str]) -> None:
    first = date(2025, 12, 20).toordinal()
    assert [tick.text for tick in day_ticks(first, first + days, 14)][: len(words)] == words


@pytest.mark.parametrize("days", [1, 20, 100, 300, 1000, 9000, 40000])
@pytest.mark.parametrize("most", [1, 4, 12])
def test_there_are_never_more_ticks_than_fit(days: int, most: int) -> None:
    first = MONDAY.toordinal()
    assert len(day_ticks(first, first + days, most)) <= most + 1


def test_days_read_as_the_locale_writes_them() -> None:
    names = {"en_US": "Nov 2", "de_DE": "2. Nov.", "fr_FR": "2 nov."}
    assert {name: short_date(MONDAY, QLocale(name)) for name in names} == names


@pytest.mark.parametrize(
    ("low", "high", "most", "ticks"),
    [
        (0, 10, 5, (0, 2, 4, 6, 8, 10)),
        (68.2, 94.1, 6, (70, 75, 80, 85, 90)),
        (0.1, 0.5, 4, (0.1, 0.2, 0.3, 0.4, 0.5)),
        (80, 80, 5, ()),
    ],
)
def test_values_are_marked_by_round_numbers(
    low: float, high: float, most: int, ticks: tuple[float, ...]
) -> None:
    found = round_ticks(low, high, most)
    assert found == pytest.approx(ticks)


# Series


def test_a_spot_is_shaped_by_its_repetitions_and_hollow_where_uncertain() -> None:
    shapes = [shape_of(reps, certain=reps <= 10) for reps in (1, 5, 6, 10, 11, 15)]
    assert shapes == [
        Shape.SQUARE,
        Shape.SQUARE,
        Shape.DISC,
        Shape.DISC,
        Shape.RING,
        Shape.RING,
    ]
    assert shape_of(5, certain=False) is Shape.HOLLOW_SQUARE


@pytest.mark.parametrize(
    ("exercise", "shown"),
    [
        ("back-squat", (Shown.ESTIMATE, Shown.LOAD, Shown.SET, Shown.AT_LOAD)),
        ("push-up", (Shown.ESTIMATE, Shown.LOAD, Shown.SET, Shown.VARIATION)),
        ("l-sit", (Shown.HOLD, Shown.MOMENT, Shown.VARIATION)),
    ],
)
def test_a_line_offers_what_its_kind_can_show(
    scene: Scene, exercise: str, shown: tuple[Shown, ...]
) -> None:
    assert measures_of(progress_in(scene, exercise)) == shown


def test_pounds_are_the_same_masses_in_another_unit(scene: Scene) -> None:
    kilograms = series_in(scene, "back-squat", Shown.ESTIMATE)
    pounds = series_in(scene, "back-squat", Shown.ESTIMATE, Unit.LB)
    assert pounds.heights * 0.45359237 == pytest.approx(kilograms.heights)
    assert pounds.trend is not None
    assert kilograms.trend is not None
    assert pounds.trend.high * 0.45359237 == pytest.approx(kilograms.trend.high)


def test_a_deload_and_an_ache_are_drawn_but_not_counted(scene: Scene) -> None:
    series = series_in(scene, "back-squat", Shown.ESTIMATE)
    left_out = {spot.best.day for spot in series.spots if not spot.counted}
    assert left_out == {FIRST + 7 * WEEK, FIRST + 9 * WEEK}
    assert [mark.value for mark in series.pains] == [3]


def test_bodyweight_climbs_by_its_variations(scene: Scene) -> None:
    loads = series_in(scene, "push-up", Shown.LOAD)
    assert (np.diff(loads.heights) > -0.5).all()
    begun = [moment.label for moment in loads.moments if moment.kind == "variation"]
    assert len(begun) == 4
    assert begun[0].startswith("hands on table")
    steps = series_in(scene, "push-up", Shown.VARIATION)
    assert sorted(set(steps.heights)) == [0, 1, 2, 3]
    assert steps.values[-1] == "one arm to the side"
    assert [value for value, _ in steps.goals] == [4]


def test_a_hold_is_seconds_and_its_line_breaks_at_another_variation(scene: Scene) -> None:
    series = series_in(scene, "l-sit", Shown.HOLD)
    assert series.heights[:3].tolist() == [10, 12, 14]
    _, values = broken_line(series)
    assert np.isnan(values).sum() == 1
    assert [value for value, _ in series.goals] == [30]


def test_steps_hold_each_value_until_the_next_day() -> None:
    days, values = step_line(np.array([1.0, 4.0, 6.0]), np.array([10.0, 20.0, 30.0]))
    assert days.tolist() == [1, 4, 4, 6, 6]
    assert values.tolist() == [10, 10, 20, 20, 30]


def test_a_drawing_keeps_to_its_frame(scene: Scene) -> None:
    whole = series_in(scene, "back-squat", Shown.ESTIMATE)
    first, last = TODAY.toordinal() - 56.0, TODAY.toordinal() + 20.0
    part = cut(whole, first, last)
    assert part.trend is not None
    assert part.forecast is not None
    assert part.trend.days[0] == first
    assert part.forecast.days[-1] == last
    assert (part.days >= first).all()
    assert 0 < len(part.weeks) < len(whole.weeks)
    assert all(mark.first.toordinal() >= first for mark in part.strips)
    flat = flattened(part, 80, 100)
    assert flat.forecast is not None
    assert flat.forecast.low.min() >= 80
    assert flat.goals == ()


# What is drawn


def test_the_chart_library_is_loaded_without_building_all_of_qt() -> None:
    code = (
        "from views.chart_library import pg; "
        "mirrors = [vars(getattr(pg.Qt, name)) for name in ('QtCore', 'QtGui', 'QtWidgets')]; "
        "copied = sum(len(mirror) for mirror in mirrors); "
        "from PySide6 import QtWidgets; print(copied, 'QWizard' in dir(QtWidgets))"
    )
    told = subprocess.run([sys.executable, "-c", code], check=True, stdout=subprocess.PIPE)
    copied, whole = told.stdout.decode().split()
    assert int(copied) < 60
    assert whole == "True"


def test_a_part_is_drawn_again_and_not_made_anew(qtbot: QtBot, scene: Scene) -> None:
    squat = series_in(scene, "back-squat", Shown.ESTIMATE)
    chart = drawn(qtbot, squat)
    held = series_in(scene, "l-sit", Shown.HOLD)
    chart.show_series(held, {}, 16)
    assert "trend" not in chart.plot.parts()
    assert sorted(chart.plot.data_of("disc")[0]) == sorted(held.days)
    chart.show_series(squat, {}, 16)
    items = {name: id(chart.plot.item(name)) for name in chart.plot.parts()}
    chart.show_series(squat, {}, 16)
    assert {name: id(chart.plot.item(name)) for name in chart.plot.parts()} == items
    assert "goal 30 s" not in chart.plot.labels()


def test_the_curves_are_the_trend_and_the_forecast_as_computed(qtbot: QtBot, scene: Scene) -> None:
    series = series_in(scene, "back-squat", Shown.ESTIMATE)
    chart = drawn(qtbot, series)
    plot = chart.plot
    for name, band in (("trend", series.trend), ("forecast", series.forecast)):
        assert band is not None
        days, values = plot.data_of(name)
        assert set(days) <= set(band.days)
        assert values == pytest.approx(np.interp(days, band.days, band.middle))
    spots = sum(plot.data_of(name)[0].size for name in plot.parts() if name in DRAWN_SPOTS)
    assert spots == len(series.spots)


DRAWN_SPOTS = {f"{shape.value}{paler}" for shape in Shape for paler in ("", ", paler")}


def test_sessions_out_of_sight_are_drawn_when_they_are_scrolled_to(qtbot: QtBot) -> None:
    last = TODAY.toordinal()
    best = BestSet(TODAY, None, 60_000.0, 5, SetDone(60_000, 5))
    spots = tuple(Spot(last - 2000 + day, 80.0, Shape.DISC, best) for day in range(2000))
    chart = drawn(
        qtbot, Series(Shown.ESTIMATE, Unit.KG, last, False, spots, records=(False,) * 2000), 16
    )
    for first in (last - 112, last - 700, last - 1900, last - 300):
        chart.show_days(first, first + 100)
        days, _ = chart.plot.data_of("disc")
        seen = days[(days >= first) & (days <= first + 100)]
        assert seen.tolist() == list(range(first, min(first + 100, last - 1) + 1))
        assert days.size <= 301


def test_weeks_too_narrow_for_words_have_a_scale(qtbot: QtBot, scene: Scene) -> None:
    squat = series_in(scene, "back-squat", Shown.ESTIMATE)
    chart = drawn(qtbot, squat)
    bars = WeekBars(chart.plot.theme, chart.plot)
    qtbot.addWidget(bars)
    bars.resize(700, 120)
    with qtbot.waitExposed(bars):
        bars.show()
    bars.show_weeks(squat.weeks)
    assert bars.plot.value_words() == ()
    assert "4" in bars.plot.day_words()
    chart.resize(200, 400)
    bars.resize(200, 120)
    chart.show_days(TODAY.toordinal() - 360, TODAY.toordinal())
    assert bars.plot.value_words() == ("4",)
    assert bars.plot.day_words() == ()


def test_strips_and_lines_carry_their_words(qtbot: QtBot, scene: Scene) -> None:
    chart = drawn(qtbot, series_in(scene, "back-squat", Shown.ESTIMATE))
    plot = chart.plot
    assert {"deload", "away", "today", "Winter strength", "Build", "goal 112 kg"} <= set(
        plot.labels()
    )
    assert "17 Aug" in plot.day_words()
    assert "90" in plot.value_words()


def test_words_that_would_meet_give_way(qtbot: QtBot, scene: Scene) -> None:
    plot = drawn(qtbot, series_in(scene, "push-up", Shown.LOAD))
    plot.resize(300, 400)
    plot.show_days(TODAY.toordinal() - 360, TODAY.toordinal() + 7)
    hands = [text for text in plot.plot.labels() if text.startswith("hands")]
    assert 0 < len(hands) < 4


def test_variations_stand_beside_the_chart_by_name(qtbot: QtBot, scene: Scene) -> None:
    chart = drawn(qtbot, series_in(scene, "push-up", Shown.VARIATION))
    assert chart.plot.value_words()[-1] == "one arm to the side"


@pytest.mark.parametrize("weeks", [8, 16, 52, None])
def test_the_span_holds_its_weeks_and_some_way_ahead(scene: Scene, weeks: int | None) -> None:
    series = series_in(scene, "back-squat", Shown.ESTIMATE)
    first, last = span_of(series, weeks)
    past = 7 * weeks if weeks else TODAY.toordinal() - series.spots[0].day + 3
    assert TODAY.toordinal() - first == past
    assert 7 <= last - TODAY.toordinal() <= 84
    assert span_of(series_in(scene, "back-squat", Shown.LOAD), 16)[1] == TODAY.toordinal() + 7


def test_all_that_was_lifted_is_in_view(scene: Scene) -> None:
    for shown in measures_of(progress_in(scene, "back-squat")):
        series = series_in(scene, "back-squat", shown)
        low, high = fitting(series, *span_of(series, 16))
        assert low < series.heights.min()
        assert series.heights.max() < high


def test_nothing_in_view_is_no_reason_to_fail(qtbot: QtBot, scene: Scene) -> None:
    plot = drawn(qtbot, series_in(scene, "l-sit", Shown.HOLD))
    plot.show_days(TODAY.toordinal() - 360, TODAY.toordinal() - 340)
    low, high = plot.plot.values
    assert low < high


def test_the_chart_takes_the_colours_of_another_theme(qtbot: QtBot, scene: Scene) -> None:
    theme = Theme("light", calm=True)
    plot = LinePlot(theme)
    qtbot.addWidget(plot)
    plot.show_series(series_in(scene, "back-squat", Shown.ESTIMATE), {}, 16)
    plot.choose(3)
    before = plot.plot.parts(), plot.plot.days
    theme.choose("dark")
    assert set(plot.plot.parts()) == set(before[0])
    assert plot.plot.days == before[1]
    assert plot.index == 3


# The cursor


def test_the_keys_go_from_session_to_session(qtbot: QtBot, scene: Scene) -> None:
    plot = drawn(qtbot, series_in(scene, "back-squat", Shown.ESTIMATE), None)
    opened: list[int] = []
    plot.opened.connect(opened.append)
    last = len(series_in(scene, "back-squat", Shown.ESTIMATE).spots) - 1
    for key, index in (
        (Qt.Key.Key_Left, last),
        (Qt.Key.Key_Left, last - 1),
        (Qt.Key.Key_Home, 0),
        (Qt.Key.Key_Left, 0),
        (Qt.Key.Key_Right, 1),
        (Qt.Key.Key_End, last),
        (Qt.Key.Key_Right, last),
    ):
        qtbot.keyClick(plot, key)
        assert plot.index == index
    qtbot.keyClick(plot, Qt.Key.Key_Return)
    assert opened == [last]
    assert plot.plot.data_of("cursor ring")[0].tolist() == [plot.series.spots[last].day]  # type: ignore[union-attr]


def test_plus_shows_fewer_days_and_minus_shows_them_again(qtbot: QtBot, scene: Scene) -> None:
    plot = drawn(qtbot, series_in(scene, "back-squat", Shown.ESTIMATE))
    first, last = plot.plot.days
    qtbot.keyClick(plot, Qt.Key.Key_Plus)
    nearer = plot.plot.days
    assert nearer[1] - nearer[0] == pytest.approx(0.7 * (last - first))
    qtbot.keyClick(plot, Qt.Key.Key_Minus)
    assert plot.plot.days == pytest.approx((first, last))
    for _ in range(20):
        qtbot.keyClick(plot, Qt.Key.Key_Plus)
    assert plot.plot.days[1] - plot.plot.days[0] >= 14


def test_the_cursor_brings_its_session_into_view(qtbot: QtBot, scene: Scene) -> None:
    plot = drawn(qtbot, series_in(scene, "back-squat", Shown.ESTIMATE), 8)
    qtbot.keyClick(plot, Qt.Key.Key_Home)
    first, last = plot.plot.days
    assert first <= FIRST.toordinal() <= last


def test_the_pointer_takes_the_nearest_session(qtbot: QtBot, scene: Scene) -> None:
    plot = drawn(qtbot, series_in(scene, "back-squat", Shown.ESTIMATE))
    series = plot.series
    assert series is not None
    plot.plot.pointed.emit(series.spots[4].day + 1.0, 0.0)
    assert plot.index == 4
    plot.plot.pointed.emit(series.today + 50.0, 0.0)
    assert plot.index == 4


# Weeks


def test_weeks_stand_under_the_days_they_belong_to(qtbot: QtBot, scene: Scene) -> None:
    series = series_in(scene, "back-squat", Shown.ESTIMATE)
    plot = drawn(qtbot, series)
    bars = WeekBars(Theme("light", calm=True), plot.plot)
    qtbot.addWidget(bars)
    bars.resize(900, 120)
    with qtbot.waitExposed(bars):
        bars.show()
    bars.show_weeks(series.weeks)
    assert [week.hard_sets for week in series.weeks][6:12] == [4, 2, 4, 4, 0, 4]
    assert {week.planned_sets for week in series.weeks} == {4}
    assert bars.plot.days == pytest.approx(plot.plot.days, abs=1)
    pointed: list[int] = []
    bars.pointed.connect(pointed.append)
    bars.plot.pointed.emit((FIRST + 7 * WEEK).toordinal() + 6.2, 1.0)
    assert pointed == [7]


def test_the_numbers_under_the_bars_thin_out_before_they_meet(qtbot: QtBot, scene: Scene) -> None:
    series = series_in(scene, "back-squat", Shown.ESTIMATE)
    plot = drawn(qtbot, series)
    bars = WeekBars(Theme("light", calm=True), plot.plot)
    qtbot.addWidget(bars)
    bars.show_weeks(series.weeks)
    first, last = FIRST.toordinal() - 1.0, TODAY.toordinal() + 7.0
    assert len(bars.counts(first, last, 900)) == len(series.weeks)
    assert len(bars.counts(first, last, 150)) < len(series.weeks)


def test_a_star_stands_close_above_its_spot_however_high_the_chart_becomes(qtbot: QtBot) -> None:
    last = TODAY.toordinal()
    best = BestSet(TODAY, None, 60_000.0, 5, SetDone(60_000, 5))
    spots = tuple(Spot(last - 30 + day, 80.0 + day, Shape.DISC, best) for day in range(20))
    records = tuple(place % 5 == 4 for place in range(20))
    series = Series(Shown.ESTIMATE, Unit.KG, last, False, spots, records=records)
    chart = drawn(qtbot, series, 16)
    for height in (300, 900):
        with qtbot.waitSignal(chart.plot.resized):
            chart.resize(800, height)
        days, heights = chart.plot.data_of("records")
        assert list(days) == [last - 30 + place for place in range(4, 20, 5)]
        low, high = chart.plot.values
        above = heights - [84.0, 89.0, 94.0, 99.0]
        assert list(above) == pytest.approx([chart.plot.value_of_pixels(11, low, high)] * 4)
