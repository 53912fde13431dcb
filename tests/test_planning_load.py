"""Load by day and week: what is counted, what is said to be missing, planned against done."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest

from desktop.planning.history import read_history
from desktop.planning.load import LoadHistory, load_history_of, wellness_means
from desktop.training.exercises import Muscle, Pattern
from desktop.training.program import Program, TrainingDay
from desktop.training.session import Activity, Session, Wellness
from desktop.training.trainee import Absence, DeloadWindow
from tests.strength_room import DAY, MONDAY, PROGRAM, WEEK, Room, open_room, two_short

SUNDAY = MONDAY + 6 * DAY
PUBLISHED = (600, 200, 400, 500, 100, 650, 0)


@pytest.fixture
def room(tmp_path: Path) -> Room:
    return open_room(tmp_path)


def load_on(room: Room, today: date, weeks: int = 16) -> LoadHistory:
    return load_history_of(read_history(room.repository, room.trainee_id), today, weeks)


def do_something(room: Room, day: date, load: float, name: str = "rowing outing") -> Activity:
    return room.save(Activity(room.trainee_id, day, name, round(load / 5), 5))


# Figures


def test_the_published_week_has_the_published_monotony_and_strain(room: Room) -> None:
    # Daily loads whose monotony and strain follow from Foster 1998, Med Sci Sports Exerc
    # 30(7):1164-1168, with the population's standard deviation: 1.4924 and 3656.4.
    for ahead, load in enumerate(PUBLISHED):
        if load:
            do_something(room, MONDAY + ahead * DAY, load)
    week = load_on(room, SUNDAY).weeks[-1]
    assert [day.load for day in week.days] == list(PUBLISHED)
    assert week.load.load == 2450
    assert week.load.monotony == pytest.approx(1.4924, abs=5e-5)
    assert week.load.strain == pytest.approx(3656.4, abs=0.05)


def test_the_coach_may_divide_by_one_less(room: Room) -> None:
    for ahead, load in enumerate(PUBLISHED):
        if load:
            do_something(room, MONDAY + ahead * DAY, load)
    settings = room.repository.coach_settings()
    room.repository.save(replace(settings, monotony_sample=True))
    week = load_on(room, SUNDAY).weeks[-1]
    assert week.load.strain == pytest.approx(3385.2, abs=0.05)  # from the same source, n - 1


def test_sessions_and_other_activities_are_told_apart(room: Room) -> None:
    room.train(MONDAY, effort=6, minutes=50)
    do_something(room, MONDAY, 200)
    do_something(room, MONDAY + DAY, 100)
    week = load_on(room, SUNDAY).weeks[-1]
    assert [(d.sessions, d.activities) for d in week.days[:3]] == [(300, 200), (0, 100), (0, 0)]
    assert week.load.load == 600
    assert [each.minutes for each in week.activities] == [40, 20]


def test_the_running_week_has_no_monotony_yet(room: Room) -> None:
    room.train(MONDAY, effort=6, minutes=50)
    running = load_on(room, MONDAY + DAY).weeks[-1]
    assert running.load.load == 300
    assert not running.load.whole
    assert running.load.monotony is None
    assert running.load.strain is None


def test_what_has_no_effort_or_minutes_makes_the_week_incomplete(room: Room) -> None:
    room.train(MONDAY, effort=6, minutes=50)
    room.train(MONDAY + 2 * DAY, effort=7)
    week = load_on(room, SUNDAY).weeks[-1]
    assert week.load.incomplete
    assert [day.unrated for day in week.days] == [0, 0, 1, 0, 0, 0, 0]
    assert week.load.load == 300


def test_a_coach_who_says_that_some_is_not_recorded_makes_every_week_incomplete(
    room: Room,
) -> None:
    room.train(MONDAY, effort=6, minutes=50)
    room.update_trainee(activities_recorded=False)
    told = load_on(room, SUNDAY)
    assert not told.recorded
    assert all(week.load.incomplete for week in told.weeks)


def test_the_moving_averages_begin_with_the_first_entry(room: Room) -> None:
    for ahead in range(10):
        do_something(room, MONDAY + ahead * DAY, 100 if ahead else 300)
    trend = load_on(room, MONDAY + 9 * DAY).trend
    assert trend is not None
    assert trend.days[0] == MONDAY.toordinal()
    # 300, then 100 a day: 100 + 200·(1 - λ)^n with λ = 2/8 and 2/29 (Williams 2017, Br J Sports
    # Med 51(3):209-210, DOI 10.1136/bjsports-2016-096589).
    assert trend.short[-1] == pytest.approx(100 + 200 * 0.75**9)
    assert trend.long[-1] == pytest.approx(100 + 200 * (1 - 2 / 29) ** 9)


def test_averages_shown_from_later_on_know_what_was_before(room: Room) -> None:
    for ahead in range(0, 56, 2):
        do_something(room, MONDAY + ahead * DAY, 100)
    long_ago = load_on(room, MONDAY + 55 * DAY)
    short = load_on(room, MONDAY + 55 * DAY, weeks=2)
    assert short.trend is not None
    assert long_ago.trend is not None
    assert len(short.trend.days) == 14
    assert list(short.trend.long) == list(long_ago.trend.long[-14:])


# Weeks


def test_nothing_on_record_is_empty_and_has_no_trend(room: Room) -> None:
    told = load_on(room, SUNDAY)
    assert told.empty
    assert told.trend is None
    assert len(told.weeks) == 16
    assert {week.load.monotony for week in told.weeks} == {None}


def test_weeks_start_where_the_locale_says(room: Room) -> None:
    room.train(MONDAY, effort=6, minutes=50)
    history = read_history(room.repository, room.trainee_id)
    told = load_history_of(history, MONDAY, week_starts=6)
    assert told.weeks[-1].first == MONDAY - DAY
    assert [day.load for day in told.weeks[-1].days[:2]] == [0, 300]


def test_a_week_is_held_against_those_before_it(room: Room) -> None:
    for week, load in enumerate((100, 200, 300, 400, 900)):
        do_something(room, MONDAY + week * WEEK, load)
    told = load_on(room, SUNDAY + 4 * WEEK)
    assert told.usual_load(15) == 250
    assert told.usual_load(13) == 150
    assert told.usual_load(12) is None  # one week before it is no mean


# Planned and done


def test_a_week_as_planned_has_as_many_sets_done_as_planned(room: Room) -> None:
    room.train_weeks(1)
    week = load_on(room, SUNDAY).weeks[-1]
    assert (week.done, week.planned) == (3, 3)
    assert week.sets_done == week.sets_planned
    assert week.sets_done.by_pattern[Pattern.SQUAT] == 5
    # Three squats and two light ones directly, three L-sits indirectly.
    assert week.sets_done.by_muscle[Muscle.QUADRICEPS] == 6.5


def test_sets_left_out_of_a_session_stay_planned(room: Room) -> None:
    session = room.train(MONDAY)
    squat = session.lines[0]
    room.save(replace(session, lines=(replace(squat, sets=squat.sets[:1]), *session.lines[1:])))
    week = load_on(room, MONDAY + DAY).weeks[-1]
    assert week.sets_done.by_pattern[Pattern.SQUAT] == 1
    assert week.sets_planned.by_pattern[Pattern.SQUAT] == 5  # 3 asked, 2 to come on Friday


def test_a_day_left_out_stays_planned(room: Room) -> None:
    room.train(MONDAY)
    week = load_on(room, SUNDAY).weeks[-1]
    assert (week.done, week.planned) == (1, 3)
    assert week.sets_done.by_pattern.get(Pattern.HORIZONTAL_PUSH) == 3
    assert week.sets_planned.by_pattern[Pattern.HORIZONTAL_PUSH] == 6


def test_a_day_done_on_another_weekday_is_not_planned_twice(room: Room) -> None:
    moved = room.train(MONDAY, doing=two_short)
    room.save(replace(moved, day=MONDAY + DAY))
    week = load_on(room, SUNDAY).weeks[-1]
    assert week.planned == 3
    assert week.sets_planned.by_pattern[Pattern.SQUAT] == 5


def test_an_easier_week_plans_fewer_sets(room: Room) -> None:
    room.save(DeloadWindow(room.trainee_id, MONDAY, SUNDAY, sets_factor=0.6))
    week = load_on(room, MONDAY).weeks[-1]
    assert week.eased
    assert week.sets_planned.by_pattern[Pattern.SQUAT] == 4  # of 3 and 2: 2 and 2


def test_days_away_are_not_planned(room: Room) -> None:
    room.save(Absence(room.trainee_id, MONDAY, SUNDAY))
    week = load_on(room, SUNDAY).weeks[-1]
    assert week.planned == 0
    assert all(day.away for day in week.days)


def test_open_weekdays_leave_the_number_of_planned_days_open(tmp_path: Path) -> None:
    phase = replace(
        PROGRAM.phases[0],
        days=tuple(TrainingDay(d.name, d.slots) for d in PROGRAM.phases[0].days),
    )
    room = open_room(tmp_path, Program("Open", (phase,)))
    room.update_trainee(weekdays=())
    assert load_on(room, SUNDAY).weeks[-1].planned is None


def test_an_unplanned_session_counts_as_done(room: Room) -> None:
    history = read_history(room.repository, room.trainee_id)
    free = Session(room.trainee_id, MONDAY + DAY, (), effort=5, minutes=30)
    told = load_history_of(history.with_sessions([free]), SUNDAY)
    assert told.weeks[-1].load.load == 150
    assert told.weeks[-1].done == 0  # nothing was done in it


# Wellness


def test_wellness_is_the_mean_of_the_answers_given() -> None:
    means = wellness_means([Wellness(4, None, 3), Wellness(), Wellness(2, None, 4, 5)])
    assert (means.answers, means.sleep, means.soreness) == (2, 3.0, None)
    assert (means.stress, means.motivation) == (3.5, 5.0)
    assert wellness_means([]).answers == 0
