"""What a program leaves out or piles up, and the change proposed for it."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop.training.balance import (
    FUNDAMENTAL,
    AddSlot,
    Finding,
    FindingCode,
    KeepVariable,
    MoveDay,
    PairSlots,
    RemoveSlot,
    Wishes,
    findings,
)
from desktop.training.exercises import Exercise, LoadingKind, Muscle, Pattern
from desktop.training.position import Position, ProgressionRule, Variable, VariableRange
from desktop.training.program import Phase, PhasePurpose, Program, Slot, TrainingDay
from desktop.training.schedule import session_minutes
from desktop.training.volume import UnknownExercise

MUSCLE = {
    Pattern.SQUAT: Muscle.QUADRICEPS,
    Pattern.HINGE: Muscle.HAMSTRINGS,
    Pattern.LUNGE: Muscle.GLUTES,
    Pattern.HORIZONTAL_PUSH: Muscle.CHEST,
    Pattern.VERTICAL_PUSH: Muscle.SHOULDERS,
    Pattern.HORIZONTAL_PULL: Muscle.UPPER_BACK,
    Pattern.VERTICAL_PULL: Muscle.LATS,
    Pattern.TRUNK: Muscle.TRUNK,
    Pattern.CARRY: Muscle.FOREARMS,
    Pattern.SINGLE_JOINT: Muscle.BICEPS,
}
EXERCISES = {
    pattern.value: Exercise(
        pattern.value, pattern.value, pattern, LoadingKind.BARBELL, (MUSCLE[pattern],)
    )
    for pattern in Pattern
}
EXERCISES["bench"] = replace(EXERCISES["horizontal push"], key="bench")

WHOLE = tuple(pattern.value for pattern in FUNDAMENTAL)
PUSH_PULL = (Pattern.HORIZONTAL_PUSH, Pattern.HORIZONTAL_PULL)


def slot(key: str, sets: int = 3, **changes: object) -> Slot:
    return replace(
        Slot(key, ProgressionRule(), Position(40_000, 8, sets)),
        **changes,  # type: ignore[arg-type]
    )


def day(*keys: str, weekday: int | None = None) -> TrainingDay:
    return TrainingDay("day", tuple(slot(key) for key in keys), weekday)


def program(*days: TrainingDay) -> Program:
    return Program("program", (Phase("phase", 4, days),))


def only(wanted: FindingCode, *found: Finding) -> list[Finding]:
    return [each for each in found if each.code is wanted]


def test_a_program_of_all_patterns_has_nothing_to_look_at() -> None:
    assert findings(program(day(*WHOLE, weekday=0), day(*WHOLE, weekday=3)), EXERCISES) == ()


def test_a_missing_pattern_goes_on_the_shortest_day() -> None:
    rest = [key for key in WHOLE if key != "hinge"]
    two = program(day(*rest, weekday=0), day(*rest[:-1], weekday=3))
    (found,) = findings(two, EXERCISES)
    assert found == Finding(
        FindingCode.PATTERN_MISSING, 0, (("pattern", "hinge"),), AddSlot(1, "hinge")
    )
    assert found["pattern"] == "hinge"
    with pytest.raises(KeyError):
        found["colour"]


def test_an_exercise_that_cannot_be_done_is_not_proposed() -> None:
    rest = [key for key in WHOLE if key != "horizontal push"]
    wishes = Wishes(can_do=lambda exercise: exercise.key == "bench", most_ratio=9)
    (found,) = findings(program(day(*rest, weekday=0)), EXERCISES, wishes)
    assert found.proposal == AddSlot(0, "bench")
    nothing = Wishes(can_do=lambda exercise: False, most_ratio=9)
    (found,) = findings(program(day(*rest, weekday=0)), EXERCISES, nothing)
    assert found.proposal is None


def test_a_phase_without_days_has_no_day_to_add_to() -> None:
    found = findings(program(), EXERCISES)
    assert len(found) == len(FUNDAMENTAL)
    assert {each.proposal for each in found} == {None}


def test_retired_exercises_are_not_proposed() -> None:
    retired = {key: replace(each, retired=True) for key, each in EXERCISES.items()}
    assert findings(program(day()), retired)[0].proposal is None


@pytest.mark.parametrize(
    ("keys", "sides", "proposed"),
    [
        (("horizontal push", "vertical push", "horizontal pull"), (6, 3), "vertical pull"),
        (("horizontal push", "vertical pull", "vertical pull"), (3, 6), "vertical push"),
        (("horizontal push",), (3, 0), "horizontal pull"),
    ],
)
def test_the_lesser_of_push_and_pull_is_proposed(
    keys: tuple[str, ...], sides: tuple[int, int], proposed: str
) -> None:
    found = findings(program(day(*keys, weekday=0)), EXERCISES, Wishes(patterns=PUSH_PULL))
    (ratio,) = only(FindingCode.PUSH_TO_PULL, *found)
    assert (ratio["push"], ratio["pull"]) == sides
    assert ratio.proposal == AddSlot(0, proposed)


def test_no_more_is_proposed_beside_a_day_of_the_same_pattern() -> None:
    days = (
        day("horizontal push", "horizontal push", "vertical pull", weekday=0),
        day("horizontal push", "vertical push", "horizontal pull", weekday=1),
    )
    found = findings(program(*days), EXERCISES, Wishes(patterns=PUSH_PULL))
    (ratio,) = only(FindingCode.PUSH_TO_PULL, *found)
    # Either pull would follow or come before its like, except on its own day.
    assert ratio.proposal == AddSlot(1, "horizontal pull")


def test_nothing_is_proposed_where_every_day_is_too_near() -> None:
    days = (
        day("horizontal push", "horizontal push", "horizontal push", "vertical pull", weekday=0),
        day("horizontal push", "horizontal push", "horizontal pull", weekday=1),
        day("vertical pull", weekday=1),
        day("horizontal pull", weekday=0),
        day("horizontal push", "horizontal push", weekday=4),
        day("vertical push", "vertical push", weekday=4),
    )
    away = Wishes(patterns=PUSH_PULL, can_do=lambda exercise: False)
    (ratio,) = only(FindingCode.PUSH_TO_PULL, *findings(program(*days), EXERCISES, away))
    assert ratio.proposal is None
    crowded = (days[0], days[1], days[2], days[3])
    (ratio,) = only(
        FindingCode.PUSH_TO_PULL,
        *findings(program(*crowded), EXERCISES, Wishes(patterns=PUSH_PULL, most_ratio=1.2)),
    )
    assert ratio.proposal is None


def followed(*weekdays: int | None, allowed: tuple[int, ...] = ()) -> list[Finding]:
    days = [day("squat", weekday=weekday) for weekday in weekdays]
    wishes = Wishes(patterns=(), weekdays=allowed)
    return only(FindingCode.FOLLOWING_DAYS, *findings(program(*days), EXERCISES, wishes))


def test_one_pattern_on_following_days_moves_the_second() -> None:
    (found,) = followed(0, 1)
    assert found.values == (("pattern", "squat"), ("first", 0), ("second", 1))
    assert found.proposal == MoveDay(1, 2)


def test_sunday_comes_before_monday() -> None:
    (found,) = followed(0, 6)
    assert (found["first"], found["second"]) == (6, 0)
    assert found.proposal == MoveDay(0, 1)


def test_a_day_moves_only_where_the_trainee_can_come() -> None:
    (found,) = followed(0, 1, allowed=(0, 1, 4))
    assert found.proposal == MoveDay(1, 4)
    (found,) = followed(0, 1, allowed=(0, 1))
    assert found.proposal is None
    (found,) = followed(0, 1, allowed=(6,))
    assert found.proposal is None


def test_days_of_a_rotation_have_no_neighbours() -> None:
    assert followed(0, None) == []
    assert followed(0, 2, 4) == []
    assert len(followed(0, 0)) == 1


def test_exercises_of_one_joint_may_follow_each_other() -> None:
    days = (day("single joint", weekday=0), day("single joint", weekday=1))
    assert findings(program(*days), EXERCISES, Wishes(patterns=())) == ()


def over_time(long: TrainingDay, minutes: float) -> list[Finding]:
    wishes = Wishes(patterns=(), minutes=minutes, most_ratio=99)
    return only(FindingCode.OVER_TIME, *findings(program(long), EXERCISES, wishes))


def test_a_long_day_is_shortened_by_the_best_pair() -> None:
    long = TrainingDay(
        "Monday",
        (slot("squat", 2), slot("squat", 2), slot("trunk", 5, rest_s=60), slot("carry", 5)),
    )
    allowed = session_minutes(long, EXERCISES) - 5
    (found,) = over_time(long, allowed)
    assert found["day"] == "Monday"
    assert found["allowed"] == allowed
    # Trunk (5 x 24 + 60 s) fits into the rest of the carry (5 x 24 + 120 s).
    assert isinstance(found.proposal, PairSlots)
    assert (found.proposal.first, found.proposal.second) == (2, 3)
    assert found.proposal.saves == pytest.approx(5 * 84 / 60)


def test_where_no_pair_saves_enough_a_slot_goes() -> None:
    arms = TrainingDay("arms", (slot("squat"), slot("single joint"), slot("squat")))
    (found,) = over_time(arms, 1)
    assert isinstance(found.proposal, RemoveSlot)
    assert found.proposal.slot == 1
    assert found.proposal.saves == pytest.approx((3 * 144 + 120) / 60)
    (found,) = over_time(day("squat", "squat"), 1)
    assert isinstance(found.proposal, RemoveSlot)
    assert found.proposal.slot == 1


def test_slots_in_a_pair_are_not_paired_again() -> None:
    paired = TrainingDay("paired", (slot("squat", pair="a"), slot("trunk", pair="a")))
    (found,) = over_time(paired, session_minutes(paired, EXERCISES) - 0.5)
    assert isinstance(found.proposal, RemoveSlot)


def test_a_single_slot_that_is_too_long_stays() -> None:
    (found,) = over_time(day("squat"), 1)
    assert found.proposal is None
    assert over_time(day("squat"), 60) == []


def two_phases(*slots: tuple[Slot, ...], between: Phase | None = None) -> list[Finding]:
    first, second = (
        Phase(name, 4, tuple(TrainingDay(f"{n}", (each,)) for n, each in enumerate(days)))
        for name, days in zip(("first", "second"), slots, strict=True)
    )
    phases = (first, second) if between is None else (first, between, second)
    found = findings(Program("program", phases), EXERCISES, Wishes(patterns=(), most_ratio=99))
    return only(FindingCode.SEVERAL_GROW, *found)


def reps(floor: int, ceiling: int | None, sets: int, load_g: int = 40_000) -> Slot:
    rule = ProgressionRule((VariableRange(Variable.REPS, floor, ceiling),))
    return replace(slot("squat"), rule=rule, start=Position(load_g, floor, sets))


@pytest.mark.parametrize(
    ("before", "after", "variables"),
    [
        ((reps(5, 6, 3),), (reps(8, 10, 4),), "reps, sets"),
        ((reps(5, 6, 3),), (reps(5, 6, 3, 50_000),) * 2, "load, days"),
        ((reps(5, 8, 3),), (reps(8, 10, 4),), None),
        ((reps(5, None, 3),), (reps(8, 10, 4),), None),
        # Fewer repetitions for more sets and load are a trade.
        ((reps(8, 10, 3),), (reps(3, 5, 5, 50_000),), None),
        ((reps(5, 6, 3),) * 2, (reps(8, 10, 4),), None),
        ((slot("trunk"),), (reps(8, 10, 4),), None),
    ],
)
def test_a_phase_raises_one_variable_of_a_line_at_a_time(
    before: tuple[Slot, ...], after: tuple[Slot, ...], variables: str | None
) -> None:
    found = two_phases(before, after)
    assert [each["variables"] for each in found] == ([] if variables is None else [variables])
    for each in found:
        assert each.phase == 1
        assert each.proposal == KeepVariable("squat", "", str(variables).split(", ")[-1])


def test_a_variable_without_a_floor_counts_from_where_it_starts() -> None:
    rule = ProgressionRule((VariableRange(Variable.LOAD, ceiling=45_000, increment=2_500),))
    before = replace(slot("squat"), rule=rule)
    after = replace(before, rule=ProgressionRule((VariableRange(Variable.LOAD),)))
    heavier = replace(after, start=Position(50_000, 8, 4))
    assert [each["variables"] for each in two_phases((before,), (heavier,))] == ["load, sets"]


def test_an_easier_phase_in_between_changes_nothing() -> None:
    easy = Phase("easy", 1, (), PhasePurpose.DELOAD)
    (found,) = two_phases((reps(5, 6, 3),), (reps(8, 10, 4),), between=easy)
    assert found.phase == 2


def test_an_unknown_exercise_is_named() -> None:
    with pytest.raises(UnknownExercise, match="juggling"):
        findings(program(day("juggling")), EXERCISES)


weekday = st.none() | st.integers(0, 6)
some_days = st.lists(
    st.builds(
        day,
        st.sampled_from(sorted(EXERCISES)),
        st.sampled_from(sorted(EXERCISES)),
        weekday=weekday,
    ),
    max_size=5,
)


@given(days=some_days, minutes=st.none() | st.integers(5, 90))
def test_an_accepted_change_never_adds_what_it_was_to_cure(
    days: list[TrainingDay], minutes: int | None
) -> None:
    wishes = Wishes(minutes=minutes)
    found = findings(program(*days), EXERCISES, wishes)
    assert found == findings(program(*days), EXERCISES, wishes)
    for each in found:
        changed = list(days)
        match each.proposal:
            case AddSlot(number, key):
                changed[number] = replace(days[number], slots=(*days[number].slots, slot(key)))
            case MoveDay(number, to):
                changed[number] = replace(days[number], weekday=to)
            case _:
                continue
        after = findings(program(*changed), EXERCISES, replace(wishes, minutes=None))
        before = findings(program(*days), EXERCISES, replace(wishes, minutes=None))
        if each.code is FindingCode.PATTERN_MISSING:
            assert each not in after
        following = FindingCode.FOLLOWING_DAYS
        assert len(only(following, *after)) <= len(only(following, *before))
