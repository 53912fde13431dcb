"""What the chart of one line shows."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest

from desktop.planning.history import read_history
from desktop.planning.marks import MarkKind
from desktop.planning.progress import (
    LineProgress,
    best_of,
    estimate_by,
    progress,
    progress_of,
    week_of,
)
from desktop.training.coach import CoachSettings
from desktop.training.position import Position, ScaledVariation, Surroundings
from desktop.training.program import Override
from desktop.training.session import AskedSet, SetDone
from desktop.training.strength import one_rep_max
from desktop.training.trainee import Absence, AbsenceKind, BodyMass, Goal, GoalKind
from tests.strength_room import DAY, MONDAY, WEEK, Room, as_asked, open_room


@pytest.fixture
def room(tmp_path: Path) -> Room:
    return open_room(tmp_path)


def chart(room: Room, today: date, exercise: str = "back-squat") -> LineProgress:
    return progress(room.repository, room.line_id(exercise), today)


def test_a_line_without_sessions_shows_nothing_but_its_marks(room: Room) -> None:
    shown = chart(room, MONDAY)
    assert (shown.points, shown.best_sets, shown.weeks) == ((), (), ())
    assert (shown.trend, shown.forecast, shown.statement) == (None, None, None)
    assert MarkKind.PROGRAM in [mark.kind for mark in shown.marks]


def test_each_session_gives_its_best_estimate(room: Room) -> None:
    session = room.train(MONDAY)
    (point,) = chart(room, MONDAY).points
    assert point.session_id == session.id
    assert (point.load_g, point.added_g, point.reps, point.rir) == (60_000, 60_000, 8, 2.0)
    assert point.one_rep_max_g == pytest.approx(80_000)  # at 10 to failure both equations agree
    assert point.certain
    assert point.counted


def test_the_coachs_equation_is_used(room: Room) -> None:
    room.repository.save(replace(CoachSettings(), equation="lombardi"))
    room.train(MONDAY)
    (point,) = chart(room, MONDAY).points
    assert point.one_rep_max_g == pytest.approx(one_rep_max(60_000, 8, 2, "lombardi"))


def test_no_estimate_is_made_of_many_repetitions_or_no_load() -> None:
    assert estimate_by(60_000, 16, None, "") is None
    assert estimate_by(0, 5, 2, "") is None
    assert estimate_by(60_000, 5, None, "wathan") is not None


def test_reading_one_line_alone_gives_the_same_chart(room: Room) -> None:
    room.train_weeks(5)
    room.train(MONDAY + 5 * WEEK, lambda asked: replace(as_asked(asked), pain=2))
    room.save(BodyMass(room.trainee_id, MONDAY + 2 * WEEK, 72_000))
    today = MONDAY + 6 * WEEK
    history = read_history(room.repository, room.trainee_id)
    for line in history.lines:
        assert line.id is not None
        alone = progress(room.repository, line.id, today)
        whole = progress_of(history, line, today)
        for part in ("points", "best_sets", "weeks", "marks", "goals", "statement", "scale"):
            assert getattr(alone, part) == getattr(whole, part), (line.exercise, part)


def test_few_points_make_no_trend_and_four_over_two_weeks_do(room: Room) -> None:
    room.train_weeks(3)
    assert chart(room, MONDAY + 3 * WEEK).trend is None
    room.train_weeks(1, MONDAY + 3 * WEEK)
    today = MONDAY + 4 * WEEK
    shown = chart(room, today)
    assert shown.trend is not None
    assert shown.forecast is not None
    assert shown.statement is not None
    assert len(shown.trend.days) == 4
    assert (shown.trend.low_g < shown.trend.level_g).all()
    assert (shown.forecast.level_g < shown.forecast.high_g).all()
    assert int(shown.forecast.days[-1]) == today.toordinal() + 84
    assert shown.statement.gain_low < shown.statement.gain_per_week < shown.statement.gain_high
    assert 0 < shown.statement.plateau < 0.5
    assert shown.statement.level_g == pytest.approx(float(shown.trend.level_g[-1]))


def test_easier_weeks_and_pain_are_shown_but_not_counted(room: Room) -> None:
    def sore(asked: AskedSet) -> SetDone:
        return replace(as_asked(asked), pain=1)

    room.train(MONDAY, sore)
    room.train_weeks(5, MONDAY + WEEK)
    counted = [point.counted for point in chart(room, MONDAY + 6 * WEEK).points]
    assert counted == [False, True, True, True, False, True]


def test_points_after_today_are_left_out(room: Room) -> None:
    room.train_weeks(2)
    assert len(chart(room, MONDAY).points) == 1


def test_bodyweight_counts_by_its_effective_load_on_the_day(room: Room) -> None:
    room.train(MONDAY)
    room.save(BodyMass(room.trainee_id, MONDAY + WEEK, 80_000))
    room.train(MONDAY + WEEK)
    first, second = chart(room, MONDAY + WEEK, "push-up").points
    assert first.load_g == pytest.approx(0.5079 * 70_000, rel=1e-3)
    assert second.load_g == pytest.approx(0.5079 * 80_000, rel=1e-3)
    assert first.added_g == 0
    assert first.variation == "hands-450"


def test_another_family_of_variations_stays_on_the_chart(room: Room) -> None:
    room.train(MONDAY)
    line = room.line("push-up")
    on_knees = Position(reps=8, sets=3, variation="knees")
    room.save(replace(line, overrides=(Override(MONDAY + DAY, on_knees),)))
    room.train(MONDAY + WEEK)
    loads = [point.load_g for point in chart(room, MONDAY + WEEK, "push-up").points]
    assert loads == pytest.approx([0.5079 * 70_000, 0.52 * 70_000], rel=1e-3)


def test_holds_have_best_sets_but_no_estimate(room: Room) -> None:
    room.train_weeks(1)
    shown = chart(room, MONDAY + WEEK, "l-sit")
    assert shown.points == ()
    (best,) = shown.best_sets
    assert best.amount == 10
    assert best.top_g is not None  # a share of the full position, times body mass


def test_weeks_tell_volume_hard_sets_and_what_was_planned(room: Room) -> None:
    room.train(MONDAY)
    this, following = chart(room, MONDAY + WEEK).weeks
    assert (this.first, following.first) == (MONDAY, MONDAY + WEEK)
    assert this.volume_g == 3 * 8 * 60_000
    assert (this.hard_sets, this.planned_sets) == (3, 3)
    assert (following.volume_g, following.hard_sets, following.planned_sets) == (0, 0, 3)
    late = chart(room, MONDAY + 9 * WEEK).weeks[-1]
    assert late.planned_sets == 0


def test_weeks_may_start_on_sunday(room: Room) -> None:
    assert week_of(MONDAY, 0) == MONDAY
    assert week_of(MONDAY, 6) == MONDAY - DAY


def test_marks_tell_what_happened_beside_the_training(room: Room) -> None:
    room.train(MONDAY, lambda asked: replace(as_asked(asked), pain=2))
    room.save(Absence(room.trainee_id, MONDAY + DAY, None, AbsenceKind.ILLNESS))
    today = MONDAY + 3 * DAY
    marks = {mark.kind: mark for mark in chart(room, today).marks}
    assert marks[MarkKind.PAIN].value == 2
    assert (marks[MarkKind.ABSENCE].label, marks[MarkKind.ABSENCE].last) == ("illness", today)
    assert marks[MarkKind.BODY_MASS].value == 70_000
    assert marks[MarkKind.PROGRAM].label == "Winter strength"
    assert marks[MarkKind.PHASE].label == "Heavy"
    assert marks[MarkKind.DELOAD].first == MONDAY + 4 * WEEK


def test_a_replaced_program_marks_only_what_it_ran(room: Room) -> None:
    (given,) = room.repository.assignments(room.trainee_id)
    room.save(replace(given, id=None, revision=0, start=MONDAY + WEEK))
    marks = chart(room, MONDAY + 2 * WEEK).marks
    assert [m.first for m in marks if m.kind is MarkKind.PROGRAM] == [MONDAY, MONDAY + WEEK]
    # the deload between the two phases is marked as what it is, once
    assert len([m for m in marks if m.kind is MarkKind.PHASE]) == 1
    assert len([m for m in marks if m.kind is MarkKind.DELOAD]) == 1


def test_a_goal_is_told_with_the_days_on_which_it_is_reached(room: Room) -> None:
    line_id = room.line_id("back-squat")
    room.train_weeks(4)
    wanted = Goal(room.trainee_id, line_id, GoalKind.ONE_REP_MAX, 90_000)
    room.repository.save(wanted, Goal(room.trainee_id, line_id, GoalKind.REPS, 15))
    maximum, reps = chart(room, MONDAY + 4 * WEEK).goals
    assert maximum.earliest is not None
    assert maximum.likely is not None
    assert MONDAY + 3 * WEEK <= maximum.earliest < maximum.likely
    assert (reps.earliest, reps.likely, reps.latest) == (None, None, None)


def test_the_best_set_is_the_one_that_asked_most() -> None:
    weights = Surroundings()
    assert best_of([SetDone(60_000, 8), SetDone(62_500, 8)], weights).load_g == 62_500
    assert best_of([SetDone(60_000, 12), SetDone(62_500, 8)], weights).load_g == 60_000
    by_order = Surroundings(
        scale=(ScaledVariation("tuck", "tuck"), ScaledVariation("full", "full")), bodyweight=True
    )
    holds = [SetDone(seconds=30, variation="tuck"), SetDone(seconds=5, variation="full")]
    assert best_of(holds, by_order).variation == "full"
    assert best_of([SetDone(seconds=5), SetDone(seconds=9)], by_order).seconds == 9
