"""What is changed for one trainee beside the program: own rules, starts, one more day."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta
from pathlib import Path

import pytest

from db.database import Database
from db.repository import Repository
from desktop.catalogue import load_catalogue
from desktop.planning.assignments import assign
from desktop.planning.history import History, read_history, read_library
from desktop.planning.line_changes import (
    ChangeKind,
    line_changes,
    onlooker_with_own_rule,
    rule_now,
    with_own_rule,
    without,
)
from desktop.planning.more_days import more_days, taken
from desktop.planning.outlook import Onlooker, outlook
from desktop.planning.percent_starts import percent_start
from desktop.training.equipment import Bar, Discs, Equipment
from desktop.training.position import (
    FrequencyCondition,
    Position,
    ProgressionRule,
    Variable,
    VariableRange,
)
from desktop.training.program import (
    Assignment,
    LineStart,
    Override,
    Phase,
    Program,
    Slot,
    TrainingDay,
)
from desktop.training.reasons import ReasonCode
from desktop.training.rules import ReadyRule, ready_rule
from desktop.training.session import AskedSet, LineDone, Session, SetDone
from desktop.training.trainee import EquipmentFrom, Trainee

START = date(2026, 9, 7)  # a Monday
TODAY = date(2026, 11, 23)
RULE = ProgressionRule(
    (VariableRange(Variable.REPS, 6, 8), VariableRange(Variable.LOAD, increment=2_500))
)
FASTER = ProgressionRule((VariableRange(Variable.LOAD, increment=2_500),))
SQUAT = Slot("back-squat", RULE, Position(60_000, 6, 3))
BENCH = Slot("bench-press", RULE, Position(40_000, 6, 3))
PROGRAM = Program(
    "Plain", (Phase("All", 20, (TrainingDay("", (SQUAT,), 0), TrainingDay("", (BENCH,), 3))),)
)
GYM = Equipment(
    bars=(Bar("bar", 20_000),),
    discs=tuple(Discs(mass, 8) for mass in (20_000, 10_000, 5_000, 2_500, 1_250)),
)


@pytest.fixture
def repository(tmp_path: Path) -> Repository:
    repository = Repository(Database.open(tmp_path / "data.db"))
    repository.sync_catalogue(load_catalogue())
    return repository


def running(repository: Repository, program: Program = PROGRAM) -> tuple[History, Assignment]:
    """Somebody who trains by the program since September, with a session each Monday."""
    (trainee,) = repository.save(Trainee("Bow", weekdays=(0, 2, 3, 4))).saved
    (saved,) = repository.save(program).saved
    repository.save(EquipmentFrom(trainee.id, START, GYM))
    repository.save(*assign(repository, trainee.id, saved.id, START).aggregates)
    squat = repository.line_of(trainee.id, "back-squat")
    assert squat is not None
    assert squat.id is not None
    for week in range(11):
        load = 60_000 + 2_500 * (week // 3)
        reps = 6 + week % 3
        asked = (AskedSet(load, reps),) * 3
        done = (SetDone(load, reps, rir=2.0),) * 3
        part = LineDone(squat.id, "back-squat", asked, done)
        repository.save(Session(trainee.id, START + timedelta(weeks=week), (part,)))
    history = read_history(repository, trainee.id)
    return history, history.assignments[0]


def test_a_rule_for_one_trainee_leaves_the_program_as_it_is(repository: Repository) -> None:
    history, assignment = running(repository)
    assert line_changes(history, SQUAT, assignment) == ()
    assert rule_now(history, SQUAT, assignment, TODAY) == RULE
    repository.save(with_own_rule(history, SQUAT, assignment, FASTER, TODAY))
    history = read_history(repository, history.trainee_id)
    assert rule_now(history, SQUAT, assignment, TODAY) == FASTER
    (change,) = line_changes(history, SQUAT, assignment)
    assert (change.kind, change.day) == (ChangeKind.RULE, TODAY)
    line = history.line_of("back-squat", "")
    assert line is not None
    repository.save(without(line, change))
    history = read_history(repository, history.trainee_id)
    assert rule_now(history, SQUAT, assignment, TODAY) == RULE


def test_a_rule_is_seen_before_it_is_saved(repository: Repository) -> None:
    history, _ = running(repository)
    onlooker = Onlooker(history.library, TODAY, history)
    program = history.library.programs[history.assignments[0].program_id]
    fixed = replace(
        SQUAT, rule=ready_rule(ReadyRule.FIXED, history.library.exercises["back-squat"])
    )
    seen = outlook(program, 0, SQUAT, onlooker_with_own_rule(onlooker, program, fixed))
    assert len({session.position for session in seen.sessions}) == 1
    assert len({each.position for each in outlook(program, 0, SQUAT, onlooker).sessions}) > 1


def test_words_and_starts_of_the_coach_are_listed_and_taken_back(repository: Repository) -> None:
    history, assignment = running(repository)
    line = history.line_of("back-squat", "")
    assert line is not None
    changed = replace(
        line,
        overrides=(
            Override(START - timedelta(days=9), Position(50_000, 6, 3)),
            Override(TODAY, Position(55_000, 6, 3), "slow week"),
        ),
        starts=(
            *line.starts,
            LineStart(START + timedelta(days=1), Position(60_000, 6, 3), "assessment"),
        ),
    )
    repository.save(changed)
    history = read_history(repository, history.trainee_id)
    changes = line_changes(history, SQUAT, assignment)
    assert [change.kind for change in changes] == [ChangeKind.POSITION, ChangeKind.START]
    assert changes[0].note == "slow week"
    line = history.line_of("back-squat", "")
    assert line is not None
    assert len(without(line, changes[0]).overrides) == 1
    assert [one.kind for one in without(line, changes[1]).starts] == ["program"]


def test_a_fixed_rule_asks_the_same_and_is_not_complete(repository: Repository) -> None:
    exercise = {each.key: each for each in load_catalogue()}["back-squat"]
    slot = replace(SQUAT, rule=ready_rule(ReadyRule.FIXED, exercise))
    program = replace(PROGRAM, phases=(Phase("All", 20, (TrainingDay("", (slot,), 0),)),))
    seen = outlook(program, 0, slot, Onlooker(read_library(repository), TODAY), 6)
    assert {session.position for session in seen.sessions} == {slot.start}


def test_a_start_by_percentage_is_reckoned_from_the_trend(repository: Repository) -> None:
    history, _ = running(repository)
    slot = replace(SQUAT, line_name="light", rule=replace(RULE, start_percent=70.0))
    found = percent_start(history, slot, TODAY)
    assert found is not None
    # ten sessions of about 67.5 kg for 8 with 2 in reserve: a maximum of about 90 kg
    assert 82_000 < found.maximum_g < 100_000
    assert found.position.load_g == 2_500 * (round(0.7 * found.maximum_g) // 2_500)
    assert percent_start(history, replace(slot, exercise="deadlift"), TODAY) is None
    assert percent_start(history, replace(slot, rule=RULE), TODAY) is None


def test_giving_a_program_sets_the_starts_by_percentage(repository: Repository) -> None:
    history, assignment = running(repository)
    repository.save(replace(assignment, ended=TODAY - timedelta(days=1)))
    rule = replace(RULE, start_percent=70.0)
    days = (TrainingDay("", (replace(SQUAT, rule=rule), replace(BENCH, rule=rule)), 0),)
    (other,) = repository.save(Program("Next", (Phase("All", 8, days),))).saved
    given = assign(repository, history.trainee_id, other.id, TODAY)
    by_exercise = {line.exercise: line for line in given.lines}
    assert list(by_exercise) == ["back-squat"]  # the bench has a line, and no trend yet
    start = by_exercise["back-squat"].starts[-1]
    assert (start.kind, start.day) == ("history", TODAY)
    assert 55_000 <= start.position.load_g <= 70_000


def test_one_more_day_is_proposed_and_taken_undoing_nothing(repository: Repository) -> None:
    eager = replace(SQUAT, rule=replace(RULE, frequency=FrequencyCondition(weeks=4, most=2)))
    days = (TrainingDay("", (eager,), 0), TrainingDay("", (BENCH,), 3))
    history, assignment = running(repository, replace(PROGRAM, phases=(Phase("All", 20, days),)))
    program = history.library.programs[assignment.program_id]
    (more,) = more_days(program, 0, history, TODAY)
    assert more.why.code is ReasonCode.PROPOSE_DAY
    assert more.weekday == 2
    wider = taken(program, more, assignment)
    assert [day.weekday for day in wider.phases[0].days] == [0, 3, 2]
    assert wider.phases[0].days[2].slots == (eager,)
    on_thursday = taken(program, replace(more, weekday=3), assignment)
    assert on_thursday.phases[0].days[1].slots == (BENCH, eager)
    library = replace(history.library, programs={assignment.program_id: wider})
    assert more_days(wider, 0, replace(history, library=library), TODAY) == []


def test_days_that_forbid_one_more_are_told(repository: Repository) -> None:
    eager = replace(SQUAT, rule=replace(RULE, frequency=FrequencyCondition(weeks=4, most=4)))
    days = tuple(TrainingDay("", (eager,), weekday) for weekday in (0, 2, 4))
    history, assignment = running(repository, replace(PROGRAM, phases=(Phase("All", 20, days),)))
    program = history.library.programs[assignment.program_id]
    (more,) = more_days(program, 0, history, TODAY)
    assert more.weekday is None
    assert more.why.code is ReasonCode.PROPOSE_DAY_IMPOSSIBLE
    assert taken(program, more, assignment) == program


def test_nothing_is_proposed_of_a_program_that_does_not_run(repository: Repository) -> None:
    eager = replace(SQUAT, rule=replace(RULE, frequency=FrequencyCondition(weeks=1)))
    history, _ = running(repository)
    other = replace(PROGRAM, phases=(Phase("All", 20, (TrainingDay("", (eager,), 0),)),), id=99)
    assert more_days(other, 0, history, TODAY) == []


def test_every_fourth_session_missed_makes_the_way_longer(repository: Repository) -> None:
    onlooker = Onlooker(read_library(repository), TODAY)
    well = outlook(PROGRAM, 0, SQUAT, onlooker, 12)
    missed = outlook(PROGRAM, 0, SQUAT, onlooker, 12, miss_every=4)
    assert [each.missed for each in missed.sessions] == [False, False, False, True] * 3
    last, best = missed.sessions[-1].position, well.sessions[-1].position
    assert (last.load_g, last.reps or 0) < (best.load_g, best.reps or 0)
