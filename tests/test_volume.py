"""Hard sets done and tonnage."""

from __future__ import annotations

from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop.training.exercises import Exercise, LoadingKind, Measure, Muscle, Pattern
from desktop.training.session import LineDone, Session, SetDone
from desktop.training.volume import (
    MARKS,
    Tonnage,
    UnknownExercise,
    Volume,
    exercise_of,
    hard_sets,
    sets_done,
    tonnage,
    volume_done,
    week_start,
)


def exercise(
    key: str,
    pattern: Pattern,
    direct: tuple[Muscle, ...],
    indirect: tuple[Muscle, ...] = (),
    loading: LoadingKind = LoadingKind.BARBELL,
    *,
    implements: int = 1,
    unilateral: bool = False,
    measure: Measure = Measure.REPS,
) -> Exercise:
    return Exercise(
        key,
        key,
        pattern,
        loading,
        direct,
        indirect,
        measure=measure,
        implements=implements,
        unilateral=unilateral,
    )


BENCH = exercise("bench", Pattern.HORIZONTAL_PUSH, (Muscle.CHEST,), (Muscle.TRICEPS,))
ROW = exercise("row", Pattern.HORIZONTAL_PULL, (Muscle.UPPER_BACK, Muscle.LATS), (Muscle.BICEPS,))
SQUAT = exercise("squat", Pattern.SQUAT, (Muscle.QUADRICEPS,), (Muscle.GLUTES,))
CURL = exercise("curl", Pattern.SINGLE_JOINT, (Muscle.BICEPS,))
CALF = exercise("calf", Pattern.SINGLE_JOINT, (Muscle.CALVES,))
PLANK = exercise(
    "plank", Pattern.TRUNK, (Muscle.TRUNK,), loading=LoadingKind.BODYWEIGHT, measure=Measure.HOLD
)
PAIR = exercise("pair", Pattern.LUNGE, (Muscle.GLUTES,), implements=2, unilateral=True)
EXERCISES = {each.key: each for each in (BENCH, ROW, SQUAT, CURL, CALF, PLANK, PAIR)}

SET = SetDone(60_000, 8)


def line(key: str, *sets: SetDone) -> LineDone:
    return LineDone(1, key, sets=sets)


def test_a_hard_set_counts_one_for_direct_and_half_for_indirect_muscles() -> None:
    volume = hard_sets([(BENCH, 3), (ROW, 2), (SQUAT, 0)])
    assert volume.by_muscle == {
        Muscle.CHEST: 3,
        Muscle.TRICEPS: 1.5,
        Muscle.UPPER_BACK: 2,
        Muscle.LATS: 2,
        Muscle.BICEPS: 1,
    }
    assert volume.by_pattern == {Pattern.HORIZONTAL_PUSH: 3, Pattern.HORIZONTAL_PULL: 2}


def test_a_muscle_named_twice_counts_as_direct() -> None:
    both = exercise("both", Pattern.SQUAT, (Muscle.GLUTES,), (Muscle.GLUTES,))
    assert hard_sets([(both, 2)]).by_muscle == {Muscle.GLUTES: 2}


def test_push_to_pull_and_upper_to_lower() -> None:
    volume = hard_sets([(BENCH, 6), (ROW, 4), (SQUAT, 3), (CURL, 2), (CALF, 1), (PLANK, 5)])
    assert volume.push_to_pull == 1.5
    assert (volume.upper, volume.lower) == (12, 4)
    assert volume.upper_to_lower == 3


def test_without_pulls_or_legs_there_is_no_ratio() -> None:
    assert Volume().push_to_pull is None
    assert hard_sets([(BENCH, 6)]).upper_to_lower is None


@pytest.mark.parametrize(
    ("sets", "count"),
    [
        ((SET, SET, SET), 3),
        ((SetDone(40_000, 5, warm_up=True), SET), 1),
        ((SetDone(60_000, 0), SetDone(60_000)), 0),
        ((SetDone(seconds=30),), 1),
        ((SetDone(8, 8, side="left"), SetDone(8, 8, side="right")), 1),
        ((SetDone(8, 8, side="left"), SetDone(8, 8, side="left"), SetDone(8, 8, side="right")), 2),
        ((SetDone(8, 8, side="left"), SET), 2),
        ((), 0),
    ],
)
def test_sets_done_leave_out_warm_ups_and_count_two_sides_once(
    sets: tuple[SetDone, ...], count: int
) -> None:
    assert sets_done(line("bench", *sets)) == count


def test_weeks_start_where_the_coach_says() -> None:
    wednesday, sunday = date(2026, 3, 4), date(2026, 3, 8)
    assert week_start(wednesday) == date(2026, 3, 2)
    assert week_start(sunday) == date(2026, 3, 2)
    assert week_start(sunday, first_weekday=6) == sunday
    assert week_start(wednesday, first_weekday=6) == date(2026, 3, 1)


def test_an_unknown_exercise_is_named() -> None:
    session = Session(1, date(2026, 3, 2), (line("juggling", SET),))
    with pytest.raises(UnknownExercise, match="no exercise has the key 'juggling'"):
        volume_done([session], EXERCISES)
    assert exercise_of(EXERCISES, "bench") is BENCH


def test_tonnage_leaves_out_warm_ups() -> None:
    sets = [SetDone(20_000, 10, warm_up=True), SET, SET]
    assert tonnage(sets, BENCH) == Tonnage(960_000, 16)


def test_tonnage_counts_both_implements_and_both_sides() -> None:
    assert tonnage([SetDone(16_000, 8)], PAIR).load_g == 16_000 * 8 * 2 * 2
    sides = [SetDone(16_000, 8, side="left"), SetDone(16_000, 6, side="right")]
    assert tonnage(sides, PAIR).load_g == 16_000 * 14 * 2


def test_bodyweight_sets_are_left_out_until_their_effective_load_is_known() -> None:
    push_up = exercise(
        "push-up", Pattern.HORIZONTAL_PUSH, (Muscle.CHEST,), loading=LoadingKind.BODYWEIGHT
    )
    sets = [SetDone(0, 10), SetDone(0, 8)]
    assert tonnage(sets, push_up) == Tonnage(left_out=2)
    assert tonnage(sets, push_up, lambda done: 48_000.0) == Tonnage(864_000, 18)
    assert tonnage(sets, push_up, lambda done: None).mean_load_g is None
    assert tonnage([SetDone(seconds=30)], PLANK, lambda done: 1.0).left_out == 1


def test_marks_ascend_and_name_their_source() -> None:
    assert [mark.sets for mark in MARKS] == sorted(mark.sets for mark in MARKS)
    assert all(mark.source for mark in MARKS)


@given(
    st.lists(
        st.tuples(st.sampled_from(sorted(EXERCISES)).map(EXERCISES.__getitem__), st.integers(0, 6)),
        max_size=12,
    )
)
def test_volume_adds_up_in_any_order(counted: list[tuple[Exercise, float]]) -> None:
    volume = hard_sets(counted)
    assert hard_sets(reversed(counted)) == volume
    assert sum(volume.by_pattern.values()) == sum(sets for _, sets in counted)
    assert volume.upper + volume.lower <= sum(sets for _, sets in counted)
    for muscle, sets in volume.by_muscle.items():
        direct = sum(n for each, n in counted if muscle in each.direct)
        indirect = sum(n for each, n in counted if muscle in each.indirect)
        assert sets == direct + indirect / 2
