"""Lines: rules and surroundings by date, where a line begins, and where it stands."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest

from db.repository import Repository
from desktop.planning.days import day_plan
from desktop.planning.history import read_history
from desktop.planning.lines import (
    line_facts,
    replay_of,
    rule_revisions,
    start_of,
    surrounded_events,
    surroundings_on,
)
from desktop.planning.standing import standing_on
from desktop.training.equipment import Equipment, Height
from desktop.training.position import Follow, Position, ProgressionRule, Variable, VariableRange
from desktop.training.program import Assignment, LineStart, Override, RuleRevision
from desktop.training.reasons import ReasonCode
from desktop.training.replay import Replay
from desktop.training.scale import ALL_FAMILIES
from desktop.training.session import LineDone, Outcome, Session, SetDone
from desktop.training.state import StepKind
from desktop.training.trainee import BodyMass, Clearance, DeloadWindow, EquipmentFrom
from tests.strength_room import (
    BENCH,
    DAY,
    DOUBLE,
    LINEAR,
    MONDAY,
    OWNED,
    WEEK,
    Room,
    as_asked,
    open_room,
    two_short,
)


@pytest.fixture
def room(tmp_path: Path) -> Room:
    return open_room(tmp_path)


def squat_session(room: Room, day: date, load_g: int, reps: int = 8, **more: object) -> Session:
    done = tuple(SetDone(load_g, reps, rir=2.0) for _ in range(3))
    part = LineDone(room.line_id("back-squat"), "back-squat", sets=done, **more)  # type: ignore[arg-type]
    return room.save(Session(room.trainee_id, day, (part,)))


# Surroundings


def replay_line(room: Room, line_id: int | None, until: date | None = None) -> Replay:
    """Sessions before ``until`` count, other facts up to that day."""
    assert line_id is not None
    history = read_history(room.repository, room.trainee_id)
    return replay_of(history, room.repository.line(line_id), until)


def replay_lines(room: Room) -> dict[int | None, Replay]:
    history = read_history(room.repository, room.trainee_id)
    return {line.id: replay_of(history, line) for line in history.lines}


def test_loads_come_from_the_equipment_and_body_mass_counts_for_the_body_alone(room: Room) -> None:
    history = read_history(room.repository, room.trainee_id)
    squat, push_up = (history.library.exercises[key] for key in ("back-squat", "push-up"))
    around = surroundings_on(squat, history.trainee, OWNED, 70_000)
    assert around.loads_g is not None
    assert around.loads_g[:3] == (20_000, 22_500, 25_000)
    assert around.body_mass_g is None
    body = surroundings_on(push_up, history.trainee, OWNED, 70_000)
    assert body.bodyweight
    assert body.body_mass_g == 70_000
    assert "hands-450" in [step.key for step in body.scale]


def test_without_recorded_equipment_any_load_is_possible(room: Room) -> None:
    history = read_history(room.repository, room.trainee_id)
    squat = history.library.exercises["back-squat"]
    assert surroundings_on(squat, history.trainee, None, None).loads_g is None
    boxes_only = Equipment(boxes=(Height("chair", 450),))
    assert surroundings_on(squat, history.trainee, boxes_only, None).loads_g is None


def test_equipment_and_body_mass_of_one_day_are_one_event(room: Room) -> None:
    history = read_history(room.repository, room.trainee_id)
    push_up, squat = (history.library.exercises[key] for key in ("push-up", "back-squat"))
    owned = [EquipmentFrom(1, MONDAY, OWNED), EquipmentFrom(1, MONDAY + WEEK, OWNED)]
    masses = [BodyMass(1, MONDAY, 70_000), BodyMass(1, MONDAY + 2 * WEEK, 71_000)]
    events = surrounded_events(push_up, history.trainee, owned, masses)
    assert [one.day for one in events] == [MONDAY, MONDAY + 2 * WEEK]
    assert [one.surroundings.body_mass_g for one in events] == [70_000, 71_000]
    assert len(surrounded_events(squat, history.trainee, owned, masses)) == 1


def test_before_the_first_entry_the_body_weighs_what_it_did_then(room: Room) -> None:
    history = read_history(room.repository, room.trainee_id)
    assert history.body_mass_on(MONDAY - 52 * WEEK) == 70_000
    assert replace(history, body_masses=()).body_mass_on(MONDAY) is None


def test_a_variation_that_can_no_longer_be_set_up_gives_way_to_an_easier_one(room: Room) -> None:
    room.train(MONDAY)
    without_stair = replace(OWNED, boxes=(Height("table", 750),))
    room.save(EquipmentFrom(room.trainee_id, MONDAY + DAY, without_stair))
    found = replay_line(room, room.line_id("push-up"))
    assert found.state.position is not None
    assert found.state.position.variation == "hands-750"
    assert found.steps[-1].kind is StepKind.SURROUNDINGS
    assert found.steps[-1].reason.code is ReasonCode.VARIATION_LOST


def test_the_scale_is_that_of_the_family_the_coach_names(room: Room) -> None:
    line = room.line("push-up")
    on_knees = Position(reps=8, sets=3, variation="knees")
    room.save(replace(line, overrides=(Override(MONDAY + WEEK, on_knees),)))

    def keys(day: date) -> list[str]:
        history = read_history(room.repository, room.trainee_id)
        state = standing_on(history, day, room.line("push-up")).state
        return [step.key for step in state.surroundings.scale]

    assert "floor" in keys(MONDAY)
    assert "floor" not in keys(MONDAY + WEEK)
    assert "knees" in keys(MONDAY + WEEK)


def test_a_rule_from_one_family_to_another_mixes_them(room: Room) -> None:
    mixed = ProgressionRule((VariableRange(Variable.VARIATION, easiest="knees", hardest="floor"),))
    room.save(replace(room.line("push-up"), revisions=(RuleRevision(MONDAY, mixed),)))
    facts = line_facts(read_history(room.repository, room.trainee_id), room.line("push-up"))
    keys = [step.key for step in facts.start.surroundings.scale]
    assert {"knees", "floor", "hands-450"} <= set(keys), ALL_FAMILIES


# Rules


def rules(room: Room, exercise: str = "back-squat") -> list[tuple[date, ProgressionRule]]:
    history = read_history(room.repository, room.trainee_id)
    return [(one.day, one.rule) for one in rule_revisions(history, room.line(exercise))]


HEAVY = MONDAY + 5 * WEEK


def test_each_phase_brings_its_rule_and_a_deload_phase_none(room: Room) -> None:
    assert rules(room) == [(MONDAY, DOUBLE), (HEAVY, LINEAR)]


def test_the_coachs_own_rule_holds_until_the_programs_really_changes(room: Room) -> None:
    own = ProgressionRule((VariableRange(Variable.REPS, 5, 8), *LINEAR.ranges))
    line = room.line("back-squat")
    room.save(replace(line, revisions=(RuleRevision(MONDAY + WEEK, own),)))
    assert rules(room) == [(MONDAY, DOUBLE), (MONDAY + WEEK, own), (HEAVY, LINEAR)]


def test_a_revision_that_repeats_the_rule_in_force_is_none(room: Room) -> None:
    line = room.line("back-squat")
    again = (RuleRevision(MONDAY + WEEK, DOUBLE), RuleRevision(HEAVY, LINEAR))
    room.save(replace(line, revisions=again))
    assert rules(room) == [(MONDAY, DOUBLE), (HEAVY, LINEAR)]


def test_the_same_program_again_changes_no_rule_until_it_differs(room: Room) -> None:
    (first,) = room.repository.assignments(room.trainee_id)
    end = MONDAY + 2 * WEEK
    room.repository.save(replace(first, ended=end - DAY))
    room.save(Assignment(room.trainee_id, room.program_id, end))
    assert rules(room) == [(MONDAY, DOUBLE), (end + 5 * WEEK, LINEAR)]


def test_when_a_later_program_ends_the_earlier_goes_on_with_its_rule(room: Room) -> None:
    other = room.repository.program(room.program_id)
    days = tuple(replace(day, slots=()) for day in other.phases[0].days)
    squat = replace(other.phases[0].days[0].slots[0], rule=LINEAR)
    days = (replace(days[0], slots=(squat,)), *days[1:])
    trial = replace(
        other, id=None, revision=0, name="Trial", phases=(replace(other.phases[0], days=days),)
    )
    trial_id = room.save(trial).id
    assert trial_id is not None
    room.save(Assignment(room.trainee_id, trial_id, MONDAY + WEEK, ended=MONDAY + 2 * WEEK - DAY))
    assert rules(room)[:3] == [
        (MONDAY, DOUBLE),
        (MONDAY + WEEK, LINEAR),
        (MONDAY + 2 * WEEK, DOUBLE),
    ]


# Where a line begins


def test_a_line_begins_at_the_slots_start_and_moves_by_its_sessions(room: Room) -> None:
    room.train(MONDAY)
    found = replay_line(room, room.line_id("back-squat"))
    assert found.state.position == Position(60_000, reps=9, sets=3)
    assert [step.outcome for step in found.steps] == [Outcome.MET]


def test_history_goes_before_the_start_that_a_program_gives(room: Room) -> None:
    squat_session(room, MONDAY - 10 * DAY, 80_000)
    history = read_history(room.repository, room.trainee_id)
    assert start_of(history, room.line("back-squat")) is None
    found = replay_line(room, room.line_id("back-squat"), MONDAY)
    assert found.state.position is not None
    assert found.state.position.load_g == 80_000


def test_a_later_start_of_the_coach_acts_as_an_override(room: Room) -> None:
    room.train(MONDAY)
    line = room.line("back-squat")
    tested = LineStart(MONDAY + DAY, Position(90_000, reps=5, sets=3), kind="assessment")
    room.save(replace(line, starts=(*line.starts, tested)))
    found = replay_line(room, room.line_id("back-squat"))
    assert found.steps[-1].kind is StepKind.OVERRIDE
    assert found.steps[-1].reason["note"] == "re-test"
    assert found.state.position == tested.position


def test_an_override_before_the_start_no_longer_holds(room: Room) -> None:
    line = room.line("back-squat")
    early = Override(MONDAY - DAY, Position(100_000, reps=8, sets=3))
    room.save(replace(line, overrides=(early,)))
    found = replay_line(room, room.line_id("back-squat"))
    assert found.state.position == line.starts[0].position


def test_a_line_without_start_and_sessions_needs_one(room: Room) -> None:
    line = room.save(replace(room.line("bench-press"), starts=()))
    assert line.id is not None
    assert replay_line(room, line.id).state.position is None


# Replay by date


def test_until_counts_sessions_before_the_day_and_other_facts_up_to_it(room: Room) -> None:
    room.train(MONDAY)
    line = room.line("back-squat")
    lighter = Position(50_000, reps=8, sets=3)
    room.save(replace(line, overrides=(Override(MONDAY, lighter),)))
    line_id = room.line_id("back-squat")
    before = replay_line(room, line_id, MONDAY)
    assert before.state.position == lighter
    assert replay_line(room, line_id, MONDAY - DAY).state.position != lighter
    assert replay_line(room, line_id).state.position == Position(60_000, reps=9, sets=3)


def test_sessions_of_a_substitute_or_skipped_ones_move_nothing(room: Room) -> None:
    squat_session(room, MONDAY, 60_000, skipped=True)
    done = (SetDone(40_000, 8),)
    substitute = LineDone(room.line_id("back-squat"), "bench-press", sets=done)
    room.save(Session(room.trainee_id, MONDAY + DAY, (substitute,)))
    found = replay_line(room, room.line_id("back-squat"))
    assert [step.outcome for step in found.steps] == [Outcome.SKIPPED, Outcome.SKIPPED]


def test_pain_on_another_exercise_done_instead_holds_the_line(room: Room) -> None:
    line_id = room.line_id("back-squat")
    hurt = (SetDone(40_000, 8), SetDone(40_000, 6, pain=6))
    part = LineDone(line_id, "bench-press", sets=hurt, skipped=True)
    saved = room.save(Session(room.trainee_id, MONDAY, (part,)))
    found = replay_line(room, line_id)
    assert [step.outcome for step in found.steps] == [Outcome.EXCLUDED]
    assert found.state.held is not None
    assert found.state.position == Position(60_000, reps=8, sets=3)
    assert found.state.last_trained is None  # the line itself rests, and a gap goes on
    # A slight pain only leaves it where it stands.
    mild = replace(part, sets=(SetDone(40_000, 8, pain=2),))
    room.save(replace(saved, lines=(mild,)))
    assert replay_line(room, line_id).state.held is None


def test_a_warm_up_that_hurt_holds_the_line_though_the_exercise_was_skipped(room: Room) -> None:
    hurt = (SetDone(20_000, 5, warm_up=True, pain=6),)
    line_id = room.line_id("back-squat")
    part = LineDone(line_id, "back-squat", sets=hurt, skipped=True)
    room.save(Session(room.trainee_id, MONDAY, (part,)))
    found = replay_line(room, line_id)
    assert [step.outcome for step in found.steps] == [Outcome.EXCLUDED]
    assert found.state.held is not None


def test_sessions_in_a_recorded_deload_are_excluded(room: Room) -> None:
    room.save(DeloadWindow(room.trainee_id, MONDAY, MONDAY + 6 * DAY))
    room.train(MONDAY)
    found = replay_line(room, room.line_id("back-squat"))
    assert found.steps[-1].outcome is Outcome.EXCLUDED
    assert found.state.position == Position(60_000, reps=8, sets=3)


def test_a_clearance_lets_a_line_held_for_pain_ask_again(room: Room) -> None:
    room.train(MONDAY, lambda asked: replace(as_asked(asked), pain=6))
    line_id = room.line_id("back-squat")
    assert replay_line(room, line_id).state.held is not None
    room.update_trainee(clearances=(Clearance(MONDAY + DAY, "a physician"),))
    assert replay_line(room, line_id).state.held is None


def test_a_rule_of_a_phase_to_come_does_not_hold_yet(room: Room) -> None:
    room.train(MONDAY)
    assert replay_line(room, room.line_id("back-squat")).state.rule == DOUBLE
    assert replay_line(room, room.line_id("back-squat"), HEAVY).state.rule == LINEAR


def test_all_lines_come_from_one_reading(room: Room) -> None:
    room.train_weeks(1)
    queries: list[object] = []
    room.repository.database.query_hooks.append(queries.append)
    found = replay_lines(room)
    one_trainee = len(queries)
    assert set(found) == {line.id for line in room.repository.lines(room.trainee_id)}
    room.train_weeks(2, MONDAY + WEEK)
    queries.clear()
    replay_lines(room)
    assert len(queries) == one_trainee


# Lines that follow


def light_target(room: Room, day: date) -> int:
    plan = day_plan(room.repository, room.trainee_id, day)
    (slot,) = plan.slots
    assert slot.target.position is not None
    assert slot.target.reason.code is ReasonCode.FOLLOWS
    return slot.target.position.load_g


def test_a_light_line_asks_its_share_of_the_heavy_one(room: Room) -> None:
    friday = MONDAY + 4 * DAY
    assert light_target(room, friday) == 47_500  # 80 % of 60 kg is 48 kg
    line = room.line("back-squat")
    heavier = Override(MONDAY, Position(100_000, reps=8, sets=3))
    room.save(replace(line, overrides=(heavier,)))
    assert light_target(room, friday) == 80_000


def test_lines_that_follow_each_other_fall_back_to_their_own_position(room: Room) -> None:
    circle = replace(DOUBLE, follow=Follow("light", 90))
    room.save(replace(room.line("back-squat"), revisions=(RuleRevision(MONDAY, circle),)))
    plan = day_plan(room.repository, room.trainee_id, MONDAY)
    position = plan.slots[0].target.position
    assert position is not None
    assert position.load_g <= 60_000


def test_two_misses_back_a_line_off(room: Room) -> None:
    wednesday = MONDAY + 2 * DAY
    for week in range(2):
        room.train(wednesday + week * WEEK, two_short)
    found = replay_line(room, room.line_id("bench-press"))
    assert found.state.position is not None
    assert found.state.position.load_g < BENCH.start.load_g


def test_another_trainees_line_is_not_in_the_history(room: Room) -> None:
    assert isinstance(room.repository, Repository)
    history = read_history(room.repository, room.trainee_id)
    with pytest.raises(KeyError, match="has no line 99"):
        history.line(99)
