"""What a phase plans: times a week, hard sets, spacing, minutes."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop.training.exercises import Exercise, LoadingKind, Measure, Muscle, Pattern
from desktop.training.position import Position, ProgressionRule, SchemeKind, SetScheme
from desktop.training.program import Phase, Slot, TrainingDay
from desktop.training.schedule import (
    Timing,
    frequency_planned,
    least_days_between,
    session_minutes,
    tempo_seconds,
    times_a_week,
    volume_planned,
)
from desktop.training.volume import UnknownExercise

BENCH = Exercise(
    "bench",
    "Bench press",
    Pattern.HORIZONTAL_PUSH,
    LoadingKind.BARBELL,
    (Muscle.CHEST,),
    (Muscle.TRICEPS,),
)
SQUAT = Exercise("squat", "Squat", Pattern.SQUAT, LoadingKind.BARBELL, (Muscle.QUADRICEPS,))
LUNGE = replace(SQUAT, key="lunge", pattern=Pattern.LUNGE, unilateral=True)
PLANK = Exercise(
    "plank",
    "Plank",
    Pattern.TRUNK,
    LoadingKind.BODYWEIGHT,
    (Muscle.TRUNK,),
    measure=Measure.HOLD,
)
EXERCISES = {each.key: each for each in (BENCH, SQUAT, LUNGE, PLANK)}

BENCH_SLOT = Slot("bench", ProgressionRule(), Position(60_000, 8, 3), rest_s=120)
SQUAT_SLOT = Slot("squat", ProgressionRule(), Position(80_000, 5, 4), rest_s=180)
PLANK_SLOT = Slot("plank", ProgressionRule(), Position(hold_s=40, sets=3), rest_s=60)

NO_CHANGE_OVER = Timing(change_over_s=0)


def day(*slots: Slot, weekday: int | None = None) -> TrainingDay:
    return TrainingDay("day", slots, weekday)


def phase(*days: TrainingDay) -> Phase:
    return Phase("phase", 4, days)


def test_a_weekday_comes_once_and_the_others_take_turns() -> None:
    mixed = phase(day(weekday=0), day(), day())
    assert times_a_week(mixed) == (1, 1, 1)
    assert times_a_week(mixed, 4) == (1, 1.5, 1.5)
    assert times_a_week(mixed, 0.5) == (1, 0, 0)
    assert times_a_week(phase(day(weekday=0)), 3) == (1,)


def test_planned_volume_counts_days_and_sets() -> None:
    two = phase(day(BENCH_SLOT, SQUAT_SLOT, weekday=0), day(BENCH_SLOT, weekday=3))
    volume = volume_planned(two, EXERCISES)
    assert volume.by_pattern == {Pattern.HORIZONTAL_PUSH: 6, Pattern.SQUAT: 4}
    assert volume.by_muscle[Muscle.TRICEPS] == 3


def test_planned_volume_follows_the_line_where_it_stands() -> None:
    one = phase(day(BENCH_SLOT, weekday=0))
    volume = volume_planned(one, EXERCISES, position_of=lambda slot: replace(slot.start, sets=5))
    assert volume.by_pattern == {Pattern.HORIZONTAL_PUSH: 5}


def test_a_rotation_counts_in_fractions() -> None:
    turning = phase(day(BENCH_SLOT), day(SQUAT_SLOT))
    assert volume_planned(turning, EXERCISES, 3).by_pattern == {
        Pattern.HORIZONTAL_PUSH: 4.5,
        Pattern.SQUAT: 6,
    }
    frequency = frequency_planned(turning, EXERCISES, 3)
    assert frequency.by_pattern == {Pattern.HORIZONTAL_PUSH: 1.5, Pattern.SQUAT: 1.5}


def test_a_pattern_twice_on_one_day_is_one_session() -> None:
    heavy = phase(day(BENCH_SLOT, BENCH_SLOT, weekday=0), day(BENCH_SLOT, weekday=3))
    frequency = frequency_planned(heavy, EXERCISES)
    assert frequency.by_pattern == {Pattern.HORIZONTAL_PUSH: 2}
    assert frequency.by_muscle == {Muscle.CHEST: 2, Muscle.TRICEPS: 2}


def test_an_unknown_exercise_of_a_slot_is_named() -> None:
    with pytest.raises(UnknownExercise, match="juggling"):
        volume_planned(phase(day(replace(BENCH_SLOT, exercise="juggling"))), EXERCISES)


@pytest.mark.parametrize(
    ("weekdays", "least"),
    [((), None), ((2,), 7), ((0, 2, 4), 2), ((0, 3), 3), ((0, 6), 1), ((5, 1, 5), 3)],
)
def test_weekdays_come_round_again(weekdays: tuple[int, ...], least: int | None) -> None:
    assert least_days_between(weekdays) == least


@pytest.mark.parametrize(
    ("slot", "seconds"),
    [
        # 3 sets x (8 x 3 s + 120 s)
        (BENCH_SLOT, 432),
        (replace(BENCH_SLOT, tempo="3-1-1"), 3 * (8 * 5 + 120)),
        (replace(BENCH_SLOT, start=Position(60_000, 8, 3, tempo_s=6)), 3 * (8 * 6 + 120)),
        (PLANK_SLOT, 3 * (40 + 60)),
        (replace(BENCH_SLOT, exercise="lunge"), 3 * (2 * 8 * 3 + 120)),
        (
            replace(
                BENCH_SLOT,
                rule=ProgressionRule(scheme=SetScheme(SchemeKind.TOTAL)),
                start=Position(60_000, 24, 3),
            ),
            432,
        ),
    ],
)
def test_a_slot_takes_its_sets_of_work_and_rest(slot: Slot, seconds: int) -> None:
    assert session_minutes(day(slot), EXERCISES, timing=NO_CHANGE_OVER) == seconds / 60


def test_change_overs_and_the_warm_up_are_added() -> None:
    timing = Timing(change_over_s=60, warm_up_s=300)
    alone = session_minutes(day(BENCH_SLOT), EXERCISES, timing=NO_CHANGE_OVER)
    assert session_minutes(day(BENCH_SLOT), EXERCISES, timing=timing) == alone + 6
    assert session_minutes(day(), EXERCISES, timing=timing) == 0


def test_in_turn_one_rests_while_the_other_works() -> None:
    pair = day(replace(BENCH_SLOT, pair="a"), replace(PLANK_SLOT, pair="a"))
    # Three rounds; each the longest of 24 + 40 s of work, 24 + 120 and 40 + 60.
    assert session_minutes(pair, EXERCISES, timing=NO_CHANGE_OVER) == 3 * 144 / 60


def test_the_slot_with_more_sets_finishes_alone() -> None:
    pair = day(replace(BENCH_SLOT, pair="a"), replace(SQUAT_SLOT, pair="a"))
    # Three rounds of 15 + 180, then the fourth squat set alone.
    assert session_minutes(pair, EXERCISES, timing=NO_CHANGE_OVER) == 4 * 195 / 60


@given(
    sets=st.tuples(st.integers(1, 6), st.integers(1, 6)),
    rests=st.tuples(st.integers(0, 300), st.integers(0, 300)),
)
def test_pairing_never_costs_time(sets: tuple[int, int], rests: tuple[int, int]) -> None:
    slots = [
        Slot(key, ProgressionRule(), Position(0, 8, sets[n]), rest_s=rests[n])
        for n, key in enumerate(("bench", "squat"))
    ]
    alone = session_minutes(day(*slots), EXERCISES)
    paired = session_minutes(day(*(replace(slot, pair="a") for slot in slots)), EXERCISES)
    assert paired <= alone


@pytest.mark.parametrize(
    ("tempo", "seconds"),
    [
        ("3-1-1", 5),
        ("10 - 0 - 1", 11),
        ("4-0-x", 5),
        ("3011", 5),
        ("31X1", 6),
        ("4/1/1/0", 6),
        ("", None),
        ("0-0-0", None),
    ],
)
def test_a_tempo_is_read_as_seconds(tempo: str, seconds: int | None) -> None:
    assert tempo_seconds(tempo) == seconds
