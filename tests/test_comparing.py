"""Records, other measures, and one line beside another: arrays and words."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

import numpy as np
import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from db.database import Database
from desktop.planning.line_history import read_about
from desktop.planning.progress import LineProgress, progress
from desktop.planning.rivals import Rival, RivalKind, rival_progress, rivals_of
from desktop.training.program import Line
from desktop.training.quantities import Unit
from desktop.training.session import LineDone, Session, SetDone
from desktop.training.trainee import BodyMass
from tests.chart_scenes import DAY, FIRST, TODAY, WEEK, Scene, open_scene
from views.chart_window import fitting
from views.comparison_texts import comparison_text, rival_word
from views.line_plot import LinePlot
from views.measures import Shown, at_load, loads_done, usual_load
from views.progress_area import ProgressArea
from views.progress_series import Series, records_of, series_of
from views.record import Record
from views.second_series import compared
from views.series_cut import cut
from views.theme import Theme

pytestmark = pytest.mark.usefixtures("english")


@pytest.fixture(scope="module")
def scene() -> Iterator[Scene]:
    database = Database.open(":memory:")
    made = open_scene(database)
    _let_the_newcomer_squat(made)
    yield made
    database.close()


def _let_the_newcomer_squat(scene: Scene) -> None:
    who = scene.newcomer_id
    line = scene.repository.save(BodyMass(who, FIRST, 61_000), Line(who, "back-squat")).saved[1]
    for week in range(14):
        sets = (SetDone(50_000 + 1_250 * week, 6, rir=2.0),) * 3
        done = LineDone(line.id or 0, "back-squat", sets=sets)
        scene.repository.save(Session(who, FIRST + week * WEEK + DAY, (done,)))


def progress_in(scene: Scene, exercise: str) -> LineProgress:
    return progress(scene.repository, scene.line_id(exercise), TODAY)


def series_in(scene: Scene, exercise: str, shown: Shown) -> Series:
    return series_of(progress_in(scene, exercise), shown, Unit.KG)


def rivals_in(scene: Scene, exercise: str, *spans: int) -> tuple[Rival, ...]:
    about = read_about(scene.repository, scene.trainee_id)
    return rivals_of(scene.repository, about, progress_in(scene, exercise), spans)


def rival_in(scene: Scene, exercise: str, kind: RivalKind, *spans: int) -> Rival:
    return next(one for one in rivals_in(scene, exercise, *spans) if one.kind is kind)


def beside(
    scene: Scene, exercise: str, shown: Shown, rival: Rival
) -> tuple[Series, LineProgress | None]:
    other = rival_progress(scene.repository, rival, TODAY)
    alone = series_in(scene, exercise, shown)
    return compared(alone, rival, rival.name or rival_word(rival), other, Unit.KG), other


# Records


def test_a_record_beats_all_before_it_and_the_first_session_is_none(scene: Scene) -> None:
    series = series_in(scene, "back-squat", Shown.ESTIMATE)
    assert not series.records[0]
    best = 0.0
    for spot, record in zip(series.spots, series.records, strict=True):
        if spot.counted and spot.point is not None and spot.point.certain:
            assert record == (0 < best < spot.value)
            best = max(best, spot.value)
        else:
            assert not record
    assert series.record is not None
    assert series.record.value == best


def test_seconds_are_compared_at_the_same_variation_only(scene: Scene) -> None:
    series = series_in(scene, "l-sit", Shown.HOLD)
    tuck = [s.best.done.variation == "tuck" for s in series.spots]
    first_of_one_leg = tuck.index(False)
    assert series.spots[first_of_one_leg].value < max(
        s.value for s, t in zip(series.spots, tuck, strict=True) if t
    )
    assert series.records == tuple(
        place not in (0, first_of_one_leg) for place in range(len(series.spots))
    )


def test_no_session_makes_no_record() -> None:
    assert records_of((), Shown.LOAD) == ()


def test_a_star_stands_above_each_best(qtbot: QtBot, scene: Scene) -> None:
    series = series_in(scene, "back-squat", Shown.ESTIMATE)
    plot = LinePlot(Theme("light", calm=True))
    qtbot.addWidget(plot)
    plot.resize(900, 400)
    with qtbot.waitExposed(plot):
        plot.show()
    plot.show_series(series, {}, 16)
    days, values = plot.plot.data_of("records")
    best = np.array(series.records)
    assert days.tolist() == series.days[best].tolist()
    assert (values > series.heights[best]).all()


# Repetitions at a load, and the moment of a hold


def test_repetitions_are_counted_at_the_load_of_most_sessions(scene: Scene) -> None:
    found = progress_in(scene, "back-squat")
    usual = usual_load(found)
    assert usual in loads_done(found)
    series = series_of(found, Shown.AT_LOAD, Unit.KG)
    assert series.load_g == usual
    assert {spot.best.done.load_g for spot in series.spots} == {usual}
    counts = {load: len(at_load(found, load)) for load in loads_done(found)}
    assert counts[usual or 0] == max(counts.values()) == len(series.spots)
    other = loads_done(found)[0]
    assert len(series_of(found, Shown.AT_LOAD, Unit.KG, other).spots) == counts[other]


def test_the_moment_is_a_share_of_the_full_position(scene: Scene) -> None:
    series = series_in(scene, "l-sit", Shown.MOMENT)
    shares = {step.key: step.share for step in progress_in(scene, "l-sit").scale}
    for spot in series.spots:
        share = shares[spot.best.done.variation or ""]
        assert share is not None
        assert spot.value == pytest.approx(100 * share)
    assert series.heights[-1] > series.heights[0]


# Comparing


def test_what_can_be_compared_with_is_on_record(scene: Scene) -> None:
    words = [rival_word(one) for one in rivals_in(scene, "back-squat", 56, 364)]
    assert words == ["The 8 weeks before", "Bench press", "Deadlift", "Push-up", "Trainee: Cox"]
    kinds = {one.kind for one in rivals_in(scene, "push-up")}
    assert RivalKind.VARIATION in kinds
    assert RivalKind.TRAINEE not in kinds


def test_another_line_stands_beside_it_in_the_same_unit(scene: Scene) -> None:
    rival = rival_in(scene, "back-squat", RivalKind.LINE)
    series, other = beside(scene, "back-squat", Shown.ESTIMATE, rival)
    assert series.second is not None
    assert other is not None
    assert len(series.second.spots) == sum(point.counted for point in other.points)
    assert (series.goals, series.forecast, series.relative) == ((), None, False)
    said = comparison_text("Back squat", series, progress_in(scene, "back-squat"), rival, other)
    assert said == (
        "Back squat up 0.7 %, Bench press up 0.4 % a week. "
        "Back squat perhaps gains faster (64 %). Now: Back squat 93 kg, Bench press 70 kg."
    )


def test_two_trainees_are_compared_relative_to_body_mass(scene: Scene) -> None:
    rival = rival_in(scene, "back-squat", RivalKind.TRAINEE)
    series, other = beside(scene, "back-squat", Shown.ESTIMATE, rival)
    alone = series_in(scene, "back-squat", Shown.ESTIMATE)
    assert series.relative
    assert series.heights[0] == pytest.approx(100 * alone.heights[0] / 74.0)
    assert series.second is not None
    assert other is not None
    assert series.second.spots[-1].value == pytest.approx(
        100 * other.points[-1].one_rep_max_g / 61_000
    )
    said = comparison_text("Stroke", series, progress_in(scene, "back-squat"), rival, other)
    assert "Cox gains faster" in said
    assert said.endswith("Of body mass: Stroke 124 %, Cox 136 %.")


def test_without_body_mass_two_trainees_are_compared_in_kilograms(scene: Scene) -> None:
    rival = rival_in(scene, "back-squat", RivalKind.TRAINEE)
    other = rival_progress(scene.repository, rival, TODAY)
    assert other is not None
    alone = replace(series_in(scene, "back-squat", Shown.ESTIMATE), body_mass=None)
    series = compared(alone, rival, "Cox", other, Unit.KG)
    assert not series.relative
    assert series.second is not None
    assert series.second.spots[0].value == pytest.approx(other.points[0].one_rep_max_g / 1000)


def test_an_earlier_span_is_moved_onto_this_one(scene: Scene) -> None:
    rival = rival_in(scene, "back-squat", RivalKind.EARLIER, 56)
    series, other = beside(scene, "back-squat", Shown.ESTIMATE, rival)
    assert other is None
    assert series.second is not None
    counted = [spot for spot in series.spots if spot.counted]
    assert [spot.day - 56 for spot in series.second.spots] == [
        spot.day for spot in counted if spot.day <= TODAY.toordinal() - 56
    ]
    said = comparison_text("Back squat", series, progress_in(scene, "back-squat"), rival, None)
    assert said.startswith("These 8 weeks: 88.4 → 92.5 kg (+4.7 %). The 8 weeks before: ")


def test_a_variation_is_set_apart_from_the_others(scene: Scene) -> None:
    rival = [o for o in rivals_in(scene, "push-up") if o.kind is RivalKind.VARIATION][-1]
    series, _ = beside(scene, "push-up", Shown.SET, rival)
    assert series.second is not None
    assert {spot.best.done.variation for spot in series.second.spots} == {rival.key}
    assert rival.key not in {spot.best.done.variation for spot in series.spots}
    assert len(series.records) == len(series.spots)
    said = comparison_text("Push-up", series, progress_in(scene, "push-up"), rival, None)
    assert said.startswith("All other variations: ")
    assert "3 sessions, first 6 reps, best 10 reps." in said


def test_a_line_that_has_nothing_of_the_measure_says_so(scene: Scene) -> None:
    rival = rival_in(scene, "push-up", RivalKind.LINE)
    series, other = beside(scene, "push-up", Shown.VARIATION, rival)
    assert series.second is not None
    assert series.second.spots == ()
    said = comparison_text("Push-up", series, progress_in(scene, "push-up"), rival, other)
    assert said.endswith(" has nothing of this to show.")


def test_both_series_are_brought_into_view_and_cut_together(scene: Scene) -> None:
    rival = rival_in(scene, "back-squat", RivalKind.LINE)
    series, _ = beside(scene, "back-squat", Shown.ESTIMATE, rival)
    assert series.second is not None
    last = float(TODAY.toordinal())
    low, high = fitting(series, last - 112, last)
    values = [spot.value for spot in (*series.spots, *series.second.spots)]
    assert low < min(values)
    assert high > max(values)
    shorter = cut(series, last - 30, last)
    assert shorter.second is not None
    assert shorter.second.trend is not None
    assert len(shorter.records) == len(shorter.spots)
    assert all(spot.day >= last - 30 for spot in shorter.second.spots)
    assert shorter.second.trend.days[0] == last - 30


# On the screen, by keys


def test_c_asks_letters_narrow_and_return_takes(qtbot: QtBot, scene: Scene) -> None:
    area = ProgressArea(Record(scene.repository), TODAY, Theme("light", calm=True))
    qtbot.addWidget(area)
    area.resize(1064, 760)
    area.show_trainee(scene.trainee_id)
    with qtbot.waitExposed(area):
        area.show()
    qtbot.waitUntil(lambda: area.block is not None)
    assert area.block is not None
    chart, chooser = area.block.chart, area.comparing.chooser
    area.lines.setCurrentIndex(area.lines.findData(scene.line_id("back-squat")))
    area.lines.chosen.emit(scene.line_id("back-squat"))
    chart.setFocus()
    qtbot.keyClick(chart, Qt.Key.Key_C)
    assert chooser.isVisible()
    qtbot.keyClicks(chooser.field, "cox")
    assert list(chooser.shown) == ["Trainee: Cox"]
    qtbot.keyClick(chooser.field, Qt.Key.Key_Return)
    assert "second" in chart.plot.parts()
    assert "second spots" in chart.plot.parts()
    assert area.statement.text().startswith("Stroke up 0.7 %, Cox up")
    assert "◇ – – Cox" in area.block.legend.text()
    assert chart.hasFocus()
    qtbot.keyClick(chart, Qt.Key.Key_C)
    assert chooser.shown[0] == "Nothing any more"
    qtbot.keyClick(chooser.field, Qt.Key.Key_Return)
    assert "second" not in chart.plot.parts()
    qtbot.keyClick(chart, Qt.Key.Key_R)
    before = area.load_steps.load_g
    qtbot.keyClick(chart, Qt.Key.Key_Down, Qt.KeyboardModifier.AltModifier)
    assert area.load_steps.load_g is not None
    assert before is not None
    assert area.load_steps.load_g < before
    assert chart.series is not None
    assert chart.series.load_g == area.load_steps.load_g
