"""The assessment day: tests that are never a maximum, and the starts that they give."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta
from pathlib import Path

import pytest

from desktop.catalogue import load_catalogue
from desktop.drafting.wishes import DraftWishes, EquipmentClass, equipment_of
from desktop.planning.assessments import (
    ASSESSMENT_START,
    AssessmentRead,
    effort_limits,
    read_test,
)
from desktop.planning.days import SlotPlan, day_plan
from desktop.planning.history import read_history
from desktop.planning.opened_draft import draft_of_plan
from desktop.training.assessment import AssessmentError, EffortLimits, limits_for
from desktop.training.assessment_day import (
    MOST_TESTS,
    TESTED,
    assessment_phase,
    line_test,
    program_tests,
    standard_tests,
    start_from_test,
    with_assessment,
)
from desktop.training.position import (
    Position,
    ProgressionRule,
    ScaledVariation,
    Surroundings,
    Variable,
    VariableRange,
)
from desktop.training.program import Line, Phase, PhasePurpose, Program, Slot, TrainingDay
from desktop.training.session import LineDone, Session, SetDone
from desktop.training.trainee import Experience, Trainee
from tests.strength_room import (
    BENCH,
    BODYWEIGHT,
    DAY,
    DOUBLE,
    HOLDING,
    L_SIT,
    LIGHT_SQUAT,
    MONDAY,
    PUSH_UP,
    SQUAT,
    WEEK,
    Room,
    open_room,
)

CATALOGUE = {each.key: each for each in load_catalogue()}
CAREFUL = EffortLimits(6, 10, 2.0)
USUAL = EffortLimits(3, 10, 1.0)
BARBELL = Surroundings(tuple(range(20_000, 200_001, 2_500)))
SCALE = tuple(
    ScaledVariation(key, key, share, 0.03)
    for key, share in (("bench", 0.55), ("floor", 0.66), ("feet", 0.7))
)
BODY = Surroundings((0,), SCALE, 70_000, bodyweight=True)
BASE = Phase(
    "Base",
    4,
    (
        TrainingDay("Squat and push", (SQUAT, PUSH_UP), weekday=0),
        TrainingDay("Bench and hold", (BENCH, L_SIT, LIGHT_SQUAT), weekday=2),
    ),
)
PROGRAM = Program("With tests first", (BASE, replace(BASE, name="Build")))


@pytest.fixture
def room(tmp_path: Path) -> Room:
    """The strength room, whose trainee has a program that begins with tests."""
    return open_room(tmp_path, with_assessment(PROGRAM, CATALOGUE))


def starts_from(room: Room, session: Session) -> list[Line]:
    """The lines with the starts that the tests of a session give."""
    return [each.line for each in read_tests(room, session) if each.start is not None]


def read_tests(room: Room, session: Session) -> list[AssessmentRead]:
    """What each test of a session gave, in the session's order."""
    history = read_history(room.repository, session.trainee_id)
    return [read_test(history, session, part) for part in session.lines if part.test]


def done_session(room: Room, sets: dict[str, tuple[SetDone, ...]], day: date = MONDAY) -> Session:
    """A session of tests as it is saved: as asked, with these sets done."""
    plan = day_plan(room.repository, room.trainee_id, day)
    parts = tuple(
        LineDone(_id(slot), slot.exercise.key, slot.target.sets, sets[slot.exercise.key], test=True)
        for slot in plan.slots
        if slot.exercise.key in sets
    )
    assert plan.program is not None
    return Session(room.trainee_id, day, parts, program_id=plan.program.id, day_name="Tests")


def _id(slot: SlotPlan) -> int:
    assert slot.line.id is not None
    return slot.line.id


# Which tests


@pytest.mark.parametrize("kind", EquipmentClass)
def test_the_standard_day_tests_each_pattern_that_the_equipment_allows(
    kind: EquipmentClass,
) -> None:
    wishes = DraftWishes(3, 60, equipment_of(kind), kind=kind)
    tests = standard_tests(CATALOGUE.values(), wishes.can_do)
    patterns = [CATALOGUE[slot.exercise].pattern for slot in tests]
    assert patterns == [pattern for pattern in TESTED if pattern in patterns]
    assert all(wishes.can_do(CATALOGUE[slot.exercise]) for slot in tests)
    pulls = {"horizontal pull", "vertical pull"} & set(patterns)
    assert bool(pulls) is (kind is not EquipmentClass.NONE)
    assert len(patterns) >= 6


def test_a_program_is_tested_by_its_own_lines() -> None:
    tests = program_tests(PROGRAM, CATALOGUE)
    assert [slot.exercise for slot in tests] == ["back-squat", "push-up", "l-sit", "bench-press"]
    assert all(slot.line_name != LIGHT_SQUAT.line_name for slot in tests)


def test_tests_stand_first_or_as_a_re_test_later() -> None:
    first = with_assessment(PROGRAM, CATALOGUE)
    later = with_assessment(first, CATALOGUE, at=3, name="Re-test")
    assert [phase.purpose for phase in later.phases] == [
        PhasePurpose.ASSESS,
        PhasePurpose.BUILD,
        PhasePurpose.BUILD,
        PhasePurpose.ASSESS,
    ]
    assert first.phases[0].days[0].weekday == 0
    assert later.phases[-1].name == "Re-test"
    assert later.phases[1:3] == PROGRAM.phases
    with pytest.raises(ValueError, match="before phase 0 to 2"):
        with_assessment(PROGRAM, CATALOGUE, at=3)


def test_many_tests_are_spread_over_days_with_a_rest_day_between() -> None:
    keys = ("back-squat", "front-squat", "bench-press", "deadlift", "pull-up", "bent-over-row",
            "overhead-press", "romanian-deadlift")  # fmt: skip
    slots = tuple(Slot(key, DOUBLE, Position(20_000, 8, 3)) for key in keys)
    days = tuple(TrainingDay(str(weekday), slots, weekday) for weekday in (0, 1, 3))
    program = with_assessment(Program("Much", (Phase("Base", 4, days),)), CATALOGUE)
    tests = program.phases[0].days
    assert [len(day.slots) for day in tests] == [MOST_TESTS, 2]
    assert [day.weekday for day in tests] == [0, 3]
    with pytest.raises(ValueError, match="at least one test"):
        assessment_phase(())


# What is asked


@pytest.mark.parametrize("experience", Experience)
@pytest.mark.parametrize("age", [None, 15, 40])
@pytest.mark.parametrize("cleared", [True, False])
@pytest.mark.parametrize("known", [True, False])
def test_nobody_is_asked_for_a_maximum(
    experience: Experience, age: int | None, cleared: bool, known: bool
) -> None:
    limits = limits_for(experience, age, cleared=cleared)
    careful = experience is Experience.NOVICE or age != 40 or not cleared
    test = line_test(
        CATALOGUE["back-squat"],
        DOUBLE,
        BARBELL,
        limits,
        position=Position(60_000, 8, 3),
        known_strength=known,
    )
    for asked in test.sets:
        assert asked.reps is not None
        assert asked.rir is not None
        assert asked.reps >= (6 if careful else 3)
        assert asked.rir >= (2 if careful else 1)


def test_without_a_known_strength_the_sets_rise_from_the_lightest() -> None:
    test = line_test(CATALOGUE["back-squat"], DOUBLE, BARBELL, CAREFUL)
    loads = [asked.load_g for asked in test.sets]
    assert loads == [20_000, 25_000, 30_000, 37_500]
    assert test.ramp == ()
    assert set(loads) <= set(BARBELL.loads_g or ())


def test_the_sets_rise_as_far_as_can_be_loaded_and_told() -> None:
    squat, row = CATALOGUE["back-squat"], CATALOGUE["dumbbell-row"]
    pair = line_test(row, DOUBLE, Surroundings((20_000, 25_000)), CAREFUL)
    assert [asked.load_g for asked in pair.sets] == [20_000, 25_000]
    # Without dumbbells on record any load can be made, so that none is the next one up.
    assert [asked.load_g for asked in line_test(squat, DOUBLE, Surroundings(), USUAL).sets] == [0]


def test_without_body_mass_a_known_position_promises_no_maximum() -> None:
    unweighed = Surroundings((0, 2_500, 5_000), bodyweight=True)
    test = line_test(
        CATALOGUE["pull-up"],
        DOUBLE,
        unweighed,
        USUAL,
        position=Position(5_000, 8, 3),
        known_strength=True,
    )
    assert (test.ramp, [asked.load_g for asked in test.sets]) == ((), [2_500])


def test_an_exercise_without_a_scale_is_tested_as_it_is() -> None:
    test = line_test(CATALOGUE["plank"], HOLDING, Surroundings((0,), bodyweight=True), CAREFUL)
    (asked,) = test.sets
    assert (asked.variation, asked.seconds, asked.stop_at) == (None, 10, 45)


def test_with_a_known_strength_a_ramp_leads_to_one_set() -> None:
    test = line_test(
        CATALOGUE["back-squat"],
        DOUBLE,
        BARBELL,
        USUAL,
        position=Position(60_000, 8, 3),
        known_strength=True,
    )
    assert len(test.sets) == 1
    assert [each.load_g for each in test.ramp] == sorted(each.load_g for each in test.ramp)
    assert test.ramp[-1].load_g < test.sets[0].load_g


def test_bodyweight_and_holds_are_tested_in_one_open_set() -> None:
    climb = line_test(
        CATALOGUE["push-up"], BODYWEIGHT, BODY, CAREFUL, position=Position(0, 8, 3, variation="x")
    )
    (asked,) = climb.sets
    assert (asked.variation, asked.reps, asked.open_ended, asked.stop_at) == ("bench", 8, True, 12)
    assert not climb.by_load
    hold = line_test(CATALOGUE["l-sit"], HOLDING, BODY, USUAL)
    (asked,) = hold.sets
    assert (asked.seconds, asked.reps, asked.stop_at, asked.rir) == (10, None, 60, None)


# What it gives


def test_the_set_that_shows_most_is_read_and_rounded_down() -> None:
    done = (
        SetDone(40_000, 10, rir=5),
        SetDone(50_000, 10, rir=3),
        SetDone(60_000, 8, rir=2),
        SetDone(20_000, 10, warm_up=True),
    )
    position, plus_minus = start_from_test(CATALOGUE["back-squat"], done, 3, DOUBLE, BARBELL)
    # 60 kg for 8 with 2 left is 80 kg (Epley and Brzycki agree at 10); 8 with 2 left of it is 60.
    assert position == Position(60_000, 8, 3)
    assert plus_minus is not None
    assert 0 < plus_minus < 0.15


def test_of_sets_on_a_scale_the_longest_of_the_hardest_is_read() -> None:
    done = (
        SetDone(0, 15, variation="bench", rir=0),
        SetDone(0, 12, variation="floor", rir=0),
        SetDone(0, 9, variation="floor", rir=0),
        SetDone(0, 30, variation="against the wall", rir=0),
    )
    position, plus_minus = start_from_test(CATALOGUE["push-up"], done, 3, BODYWEIGHT, BODY)
    # 12 at 66 % are a demand of 0.924; with 2 in reserve that is 10 there, and 7 at 70 %.
    assert position == Position(0, 10, 3, variation="floor")
    assert plus_minus == pytest.approx(0.03 / 0.66)


def test_a_set_that_tells_no_strength_is_not_the_one_read() -> None:
    done = (SetDone(80_000, seconds=30), SetDone(60_000, 8, rir=2))
    position, _ = start_from_test(CATALOGUE["back-squat"], done, 3, DOUBLE, BARBELL)
    assert position == Position(60_000, 8, 3)


def test_a_test_with_pain_or_without_a_set_gives_no_start() -> None:
    squat = CATALOGUE["back-squat"]
    with pytest.raises(AssessmentError, match="pain"):
        start_from_test(squat, (SetDone(60_000, 8, pain=1),), 3, DOUBLE, BARBELL)
    with pytest.raises(AssessmentError, match="no set"):
        start_from_test(squat, (SetDone(60_000, 8, warm_up=True),), 3, DOUBLE, BARBELL)
    with pytest.raises(AssessmentError, match="1 to 15"):
        start_from_test(squat, (SetDone(20_000, 14, rir=6),), 3, DOUBLE, BARBELL)


def test_of_two_sides_the_weaker_is_read() -> None:
    done = (SetDone(20_000, 10, rir=0, side="left"), SetDone(20_000, 8, rir=0, side="right"))
    rule = ProgressionRule((VariableRange(Variable.REPS, 8, 12),
                            VariableRange(Variable.LOAD, increment=2_000)))  # fmt: skip
    around = Surroundings(tuple(range(2_000, 30_001, 2_000)))
    both, _ = start_from_test(CATALOGUE["dumbbell-row"], done, 3, rule, around)
    weaker, _ = start_from_test(CATALOGUE["dumbbell-row"], done[1:], 3, rule, around)
    assert both == weaker


# On a data file


def test_the_day_asks_the_tests_and_the_session_is_marked_as_one(room: Room) -> None:
    plan = day_plan(room.repository, room.trainee_id, MONDAY)
    assert plan.phase is not None
    assert plan.phase.purpose is PhasePurpose.ASSESS
    assert all(slot.test for slot in plan.slots)
    squat = plan.slots[0]
    assert [asked.load_g for asked in squat.target.sets] == [20_000, 25_000, 30_000, 37_500]
    assert squat.target.reason.code.value == "test"
    assert squat.next_positions == ()
    draft = draft_of_plan(plan, lambda slot: "")
    assert all(line.test for line in draft.lines)
    # The lines begin where the training phases begin them, not with the one set of a test.
    history = read_history(room.repository, room.trainee_id)
    line = history.line_of("back-squat", "")
    assert line is not None
    assert line.starts[0].position == SQUAT.start
    # After the week of tests the program goes on as it would.
    assert not any(
        slot.test for slot in day_plan(room.repository, room.trainee_id, MONDAY + WEEK).slots
    )


def test_a_saved_test_gives_the_starts_of_its_lines(room: Room) -> None:
    session = done_session(
        room,
        {
            "back-squat": (SetDone(60_000, 8, rir=2),),
            "bench-press": (SetDone(60_000, 14, rir=5),),
            "l-sit": (SetDone(0, seconds=30, variation="tuck"),),
        },
    )
    saved = room.save(session)
    room.repository.save(*starts_from(room, saved))
    read = {one.line.exercise: one for one in read_tests(room, saved)}
    assert "1 to 15" in read["bench-press"].why

    later = day_plan(room.repository, room.trainee_id, MONDAY + WEEK)
    squat = later.slots[0]
    assert squat.target.position == Position(60_000, 8, 3)
    start = squat.line.starts[0]
    assert (len(squat.line.starts), start.kind, start.day) == (1, ASSESSMENT_START, MONDAY)
    assert start.plus_minus
    # 60 % of the longest hold, down to the grid of the rule.
    hold = day_plan(room.repository, room.trainee_id, MONDAY + WEEK + 2 * DAY).slots[1]
    assert (hold.exercise.key, hold.target.position) == (
        "l-sit",
        Position(hold_s=15, sets=3, variation="tuck"),
    )


def test_reading_a_test_again_replaces_its_start(room: Room) -> None:
    saved = room.save(done_session(room, {"back-squat": (SetDone(60_000, 8, rir=2),)}))
    room.repository.save(*starts_from(room, saved))
    part = replace(saved.lines[0], sets=(SetDone(70_000, 8, rir=2),))
    corrected = room.save(replace(saved, lines=(part,)))
    room.repository.save(*starts_from(room, corrected))
    line = room.repository.line(part.line_id)
    assert [one.position.load_g for one in line.starts] == [70_000]


def test_a_re_test_moves_the_line_and_leaves_the_past_alone(tmp_path: Path) -> None:
    room = open_room(tmp_path)
    room.train(MONDAY)
    day = MONDAY + 3 * WEEK
    line = room.repository.line_of(room.trainee_id, "back-squat")
    assert line is not None
    assert line.id is not None
    part = LineDone(line.id, "back-squat", (), (SetDone(80_000, 8, rir=2),), test=True)
    saved = room.save(Session(room.trainee_id, day, (part,)))
    before = day_plan(room.repository, room.trainee_id, day).slots[0].target.position
    room.repository.save(*starts_from(room, saved))
    assert day_plan(room.repository, room.trainee_id, MONDAY).slots[0].target.position == (
        SQUAT.start
    )
    after = day_plan(room.repository, room.trainee_id, day + WEEK).slots
    assert before is not None
    assert before.load_g == 60_000
    assert all(one.target.position and one.target.position.load_g >= 70_000 for one in after[:1])


def test_only_a_clear_screening_or_a_clearance_allows_the_harder_test(room: Room) -> None:
    def limits(trainee: Trainee) -> EffortLimits:
        history = read_history(room.repository, room.trainee_id)
        return effort_limits(replace(history, trainee=trainee), MONDAY)

    trainee = room.repository.trainee(room.trainee_id)
    grown = replace(trainee, experience=Experience.ADVANCED, birth_year=1990)
    assert limits(replace(grown, screening_clear=True)) == USUAL
    assert limits(replace(grown, screening_clear=None)) == CAREFUL
    refused = replace(grown, screening_clear=False, screened=MONDAY - timedelta(days=1))
    assert limits(refused) == CAREFUL
    assert limits(replace(grown, screening_clear=True, birth_year=2008)) == CAREFUL


def test_a_line_that_stands_nowhere_is_tested_all_the_same(room: Room) -> None:
    line = room.line("back-squat")
    room.save(replace(line, starts=()))
    early = room.save(
        Session(room.trainee_id, MONDAY - 400 * DAY, (LineDone(line.id or 0, "back-squat", (),
                (SetDone(50_000, 8),)),))
    )  # fmt: skip
    assert early.id is not None
    squat = day_plan(room.repository, room.trainee_id, MONDAY).slots[0]
    assert squat.test
    assert squat.target.sets
    assert squat.target.position is not None
    # It was trained once, so that a ramp can lead to where it stood.
    assert len(squat.target.sets) == 1
    assert squat.warm_up


def test_a_line_held_for_pain_is_not_tested(room: Room) -> None:
    part = LineDone(room.line_id("back-squat"), "back-squat", (), (SetDone(50_000, 8, pain=6),))
    room.save(Session(room.trainee_id, MONDAY - DAY, (part,)))
    squat = day_plan(room.repository, room.trainee_id, MONDAY).slots[0]
    assert not squat.test
    assert squat.target.sets == ()
