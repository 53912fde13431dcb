"""Whole aggregates go in and come out as they were; conflicts and broken records are said."""

from __future__ import annotations

import threading
from collections.abc import Callable, Iterator, Sequence
from contextlib import closing, contextmanager
from dataclasses import dataclass, replace
from datetime import UTC, date, datetime
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from db.changes import Kind
from db.database import MEMORY, Database
from db.errors import Conflict, DamagedFile, InvalidRecord, NotFound, StoreError
from db.repository import Repository
from desktop.training.coach import CoachSettings
from desktop.training.equipment import Equipment
from desktop.training.exercises import Exercise, LoadingKind, Muscle, Pattern, Variation
from desktop.training.position import Position, ProgressionRule
from desktop.training.program import Assignment, Line, LineStart, Phase, Program, Slot, TrainingDay
from desktop.training.session import (
    Activity,
    AskedSet,
    ChangeKind,
    LineDone,
    Session,
    SetDone,
    Wellness,
)
from desktop.training.trainee import (
    Absence,
    BodyMass,
    Clearance,
    DeloadWindow,
    DismissedCaution,
    EquipmentFrom,
    Goal,
    GoalKind,
    RememberedName,
    Trainee,
)
from tests import strategies

NOON = datetime(2026, 3, 2, 12, tzinfo=UTC)
MONDAY = date(2026, 3, 2)


@dataclass(frozen=True)
class World:
    """A repository in memory with one trainee, two exercises and a line of each."""

    repository: Repository
    trainee: Trainee
    lines: tuple[Line, ...]

    @property
    def trainee_id(self) -> int:
        return known(self.trainee.id)

    @property
    def line_exercises(self) -> list[tuple[int, str]]:
        return [(known(line.id), line.exercise) for line in self.lines]

    def session(self, day: date = MONDAY, **fields: Any) -> Session:
        """A session of one set in the first line."""
        line_id, exercise = self.line_exercises[0]
        done = LineDone(line_id, exercise, (AskedSet(60_000, 8),), (SetDone(60_000, 8, rir=2.0),))
        return replace(Session(self.trainee_id, day, (done,)), **fields)

    def saved(self, aggregate: Any) -> Any:
        return self.repository.save(aggregate).saved[0]


def known(identity: int | None) -> int:
    assert identity is not None
    return identity


def exercise(key: str, **fields: Any) -> Exercise:
    return Exercise(
        key, key.title(), Pattern.SQUAT, LoadingKind.BARBELL, (Muscle.GLUTES,), **fields
    )


@contextmanager
def a_world(path: Path | str = MEMORY) -> Iterator[World]:
    database = Database.open(path)
    try:
        repository = Repository(database, now=lambda: NOON)
        trainee = repository.save(Trainee("Ada")).saved[0]
        repository.save(exercise("squat"), exercise("press"))
        lines = repository.save(Line(trainee.id, "squat"), Line(trainee.id, "press")).saved
        yield World(repository, trainee, lines)
    finally:
        database.close()


@pytest.fixture
def world() -> Iterator[World]:
    with a_world() as made:
        yield made


def everything_of(repository: Repository, trainee_id: int) -> tuple[Any, ...]:
    reads: Sequence[Callable[[int], tuple[Any, ...]]] = (
        repository.body_masses,
        repository.equipment,
        repository.lines,
        repository.assignments,
        repository.sessions,
        repository.activities,
        repository.deloads,
        repository.absences,
        repository.goals,
        repository.dismissed,
        repository.remembered_names,
    )
    sessions = repository.sessions(trainee_id)
    changes = tuple(repository.session_changes(known(session.id)) for session in sessions)
    return tuple(read(trainee_id) for read in reads) + changes


def full_record(world: World) -> None:
    """One of everything that a trainee can have."""
    program = world.saved(a_program())
    trainee_id, line_id = world.trainee_id, known(world.lines[0].id)
    world.repository.save(
        BodyMass(trainee_id, MONDAY, 70_000),
        EquipmentFrom(trainee_id, MONDAY, Equipment(dumbbells_g=(10_000, 10_000))),
        Assignment(trainee_id, known(program.id), MONDAY, (0, 3)),
        world.session(),
        world.session(date(2026, 3, 5), note="left shoulder"),
        Activity(trainee_id, MONDAY, "rowing", 60, 5.0),
        DeloadWindow(trainee_id, MONDAY, date(2026, 3, 8)),
        Absence(trainee_id, MONDAY, None),
        Goal(trainee_id, line_id, GoalKind.ONE_REP_MAX, 100_000, by=date(2026, 12, 31)),
        DismissedCaution(trainee_id, "gap", "21", MONDAY, "was away"),
        RememberedName(trainee_id, "sq", "squat"),
    )


def a_program(name: str = "Winter") -> Program:
    slot = Slot("squat", ProgressionRule(), Position(60_000, 8, 3))
    return Program(name, (Phase("Base", 4, (TrainingDay("Monday", (slot,), 0),)),))


# What goes in comes out


def check_round_trip(world: World, aggregate: Any, read: Callable[[Any], Any]) -> None:
    saved = world.saved(aggregate)
    assert (saved.revision, replace(saved, id=None, revision=0)) == (1, aggregate)
    assert read(saved) == saved
    again = world.saved(saved)
    assert read(saved) == again == replace(saved, revision=2)
    removed = world.repository.remove(again)
    assert again in removed.saved
    world.repository.restore(*removed.saved)
    assert read(saved) == again
    world.repository.remove(again)


def test_a_trainee_comes_back_as_saved(world: World) -> None:
    @given(strategies.trainees.filter(lambda one: one.name != world.trainee.name))
    def check(trainee: Trainee) -> None:
        check_round_trip(world, trainee, lambda one: world.repository.trainee(one.id))

    check()


def test_an_exercise_comes_back_as_saved(world: World) -> None:
    @given(strategies.exercises())
    def check(one: Exercise) -> None:
        own = replace(one, key=f"own-{one.key}")
        check_round_trip(world, own, lambda saved: world.repository.exercise(saved.key))

    check()


def test_a_line_comes_back_as_saved(world: World) -> None:
    @given(strategies.lines(world.trainee_id, "squat"))
    def check(line: Line) -> None:
        named = replace(line, name=f"heavy {line.name}")
        check_round_trip(world, named, lambda saved: world.repository.line(saved.id))

    check()


def test_a_program_comes_back_as_saved(world: World) -> None:
    @given(strategies.programs(["squat", "press"]))
    def check(program: Program) -> None:
        check_round_trip(world, program, lambda saved: world.repository.program(saved.id))

    check()


def test_a_session_comes_back_as_saved(world: World) -> None:
    @given(strategies.sessions(world.trainee_id, world.line_exercises))
    def check(session: Session) -> None:
        check_round_trip(world, session, lambda saved: world.repository.session(saved.id))

    check()


DATED_FACTS = (
    "body masses",
    "equipment",
    "activities",
    "deloads",
    "absences",
    "goals",
    "dismissed",
    "remembered names",
    "assignments",
)


@pytest.mark.parametrize("kind", DATED_FACTS)
def test_every_dated_fact_comes_back_as_saved(world: World, kind: str) -> None:
    program_id = known(world.saved(a_program()).id)
    trainee_id, line_id = world.trainee_id, known(world.lines[0].id)
    values: st.SearchStrategy[Any] = {
        "body masses": strategies.body_masses(trainee_id),
        "equipment": strategies.equipment_from(trainee_id),
        "activities": strategies.activities(trainee_id),
        "deloads": strategies.deload_windows(trainee_id),
        "absences": strategies.absences(trainee_id),
        "goals": strategies.goals(trainee_id, line_id),
        "dismissed": strategies.dismissed_cautions(trainee_id),
        "remembered names": strategies.remembered_names(trainee_id, "squat"),
        "assignments": strategies.assignments(trainee_id, program_id),
    }[kind]
    read = getattr(world.repository, kind.replace(" ", "_"))

    @given(values)
    @settings(max_examples=25)
    def check(fact: Any) -> None:
        check_round_trip(world, fact, lambda saved: read(saved.trainee_id)[0])

    check()


@given(strategies.coach_settings)
@settings(max_examples=10)
def test_the_coachs_settings_come_back_as_saved(wanted: CoachSettings) -> None:
    with a_world() as world:
        assert world.repository.coach_settings() == CoachSettings()
        changes = world.repository.save(wanted)
        assert changes.kinds == {Kind.SETTINGS}
        assert changes.saved == (replace(wanted, revision=1),)
        assert world.repository.coach_settings() == replace(wanted, revision=1)


def test_an_edit_replaces_the_parts(world: World) -> None:
    program = world.saved(a_program())
    rest = replace(program.phases[0], days=())
    edited = world.saved(replace(program, phases=(rest, program.phases[0])))
    assert world.repository.programs() == (edited,)
    start = LineStart(MONDAY, Position(60_000, 8, 3))
    line = world.saved(replace(world.lines[0], starts=(start,)))
    bare = world.saved(replace(line, starts=()))
    assert world.repository.line(line.id) == bare
    session = world.saved(world.session())
    emptied = world.saved(replace(session, lines=()))
    assert world.repository.sessions(world.trainee_id) == (emptied,)


# Removing and putting back


def test_a_removed_trainee_comes_back_with_everything(world: World) -> None:
    full_record(world)
    other = world.saved(Trainee("Bo"))
    before = everything_of(world.repository, world.trainee_id)
    assert all(before)
    changes = world.repository.remove(world.trainee)
    assert changes.kinds == frozenset(Kind) - {Kind.EXERCISE, Kind.PROGRAM, Kind.SETTINGS}
    assert changes.trainees == {world.trainee_id}
    assert world.repository.trainees() == (other,)
    assert not any(everything_of(world.repository, world.trainee_id))
    assert world.repository.programs() != ()
    world.repository.restore(*changes.saved)
    assert world.repository.trainee(world.trainee_id) == world.trainee
    assert everything_of(world.repository, world.trainee_id) == before
    assert world.repository.database.quick_check() == []


def test_what_was_removed_comes_back_in_any_order(world: World) -> None:
    full_record(world)
    before = everything_of(world.repository, world.trainee_id)
    removed = world.repository.remove(world.trainee).saved
    given_back = tuple(reversed(removed))
    assert world.repository.restore(*given_back).saved == given_back
    assert everything_of(world.repository, world.trainee_id) == before


STEPS = st.lists(st.sampled_from(["enter", "correct", "remove", "undo"]), max_size=12)


@given(STEPS)
@settings(max_examples=30)
def test_undoing_every_edit_of_sessions_leads_back_to_each_earlier_record(steps: list[str]) -> None:
    with a_world() as world:
        repository = world.repository
        undo: list[tuple[str, Any, Any]] = []
        pictures: list[list[Session]] = []

        def picture() -> list[Session]:
            return [replace(one, revision=0) for one in repository.sessions(world.trainee_id)]

        def step_back() -> None:
            how, before, after = undo.pop()
            if how == "enter":
                repository.remove(repository.session(after.id))
            elif how == "correct":
                now = repository.session(after.id)
                repository.save(replace(before, revision=now.revision))
            else:
                repository.restore(*after)
            assert picture() == pictures.pop()

        for number, step in enumerate(steps):
            sessions = repository.sessions(world.trainee_id)
            if step == "undo":
                if undo:
                    step_back()
                continue
            if step != "enter" and not sessions:
                continue
            pictures.append(picture())
            if step == "enter":
                undo.append((step, None, world.saved(world.session(note=f"{number}"))))
            elif step == "correct":
                changed = replace(sessions[0], note=f"corrected {number}")
                undo.append((step, sessions[0], world.saved(changed)))
            else:
                undo.append((step, None, repository.remove(sessions[-1]).saved))
        while undo:
            step_back()
        assert repository.sessions(world.trainee_id) == ()


def test_a_number_is_never_given_twice(world: World) -> None:
    first = world.saved(world.session())
    removed = world.repository.remove(first)
    second = world.saved(world.session(date(2026, 3, 4)))
    assert second.id != first.id
    world.repository.restore(*removed.saved)
    assert world.repository.sessions(world.trainee_id) == (first, second)


def test_an_exercise_in_use_cannot_be_removed_but_retired(world: World) -> None:
    squat = world.repository.exercise("squat")
    with pytest.raises(InvalidRecord, match="Squat is needed: uses as line: 1"):
        world.repository.remove(squat)
    retired = world.saved(replace(squat, retired=True))
    assert [one.key for one in world.repository.exercises()] == ["press"]
    assert world.repository.exercises(retired=True)[1] == retired


def test_a_line_that_was_trained_is_removed_only_with_its_sessions(world: World) -> None:
    session = world.saved(world.session())
    line = world.lines[0]
    with pytest.raises(InvalidRecord, match="trained in sessions: 1"):
        world.repository.remove(line)
    removed = world.repository.remove(line, session).saved
    assert world.repository.sessions(world.trainee_id) == ()
    world.repository.restore(*removed)
    assert world.repository.session(session.id) == session


def test_a_session_remembers_a_removed_program(world: World) -> None:
    program = world.saved(a_program())
    world.saved(Assignment(world.trainee_id, program.id, MONDAY))
    session = world.saved(world.session(program_id=program.id, week=1, day_name="Monday"))
    changes = world.repository.remove(program)
    assert changes.kinds == {Kind.PROGRAM, Kind.ASSIGNMENT}
    assert changes.trainees == frozenset()  # everybody may be shown a program
    assert world.repository.session(session.id) == session
    world.repository.restore(*changes.saved)
    assert world.repository.program(program.id) == program
    assert len(world.repository.all_assignments()) == 1


# Two writers


def test_a_stale_save_is_a_conflict_and_overwrites_nothing(world: World) -> None:
    newer = world.saved(replace(world.trainee, notes="new"))
    with pytest.raises(Conflict, match="This trainee was changed elsewhere"):
        world.repository.save(replace(world.trainee, notes="old"))
    assert world.repository.trainee(world.trainee_id) == newer


def test_stale_and_vanished_records_are_conflicts(world: World) -> None:
    repository = world.repository
    session = world.saved(world.session())
    newer = world.saved(replace(session, note="new"))
    with pytest.raises(Conflict, match="changed"):
        repository.save(session)
    with pytest.raises(Conflict, match="changed"):
        repository.remove(session)
    removed = repository.remove(newer)
    with pytest.raises(Conflict, match="removed"):
        repository.save(newer)
    with pytest.raises(Conflict, match="removed"):
        repository.remove(newer)
    repository.restore(*removed.saved)
    with pytest.raises(Conflict, match="already there"):
        repository.restore(newer)
    settings_read = repository.coach_settings()
    repository.save(replace(settings_read, equation="epley"))
    with pytest.raises(Conflict, match="settings"):
        repository.save(settings_read)


def test_a_removed_trainee_cannot_be_saved(world: World) -> None:
    world.repository.remove(world.trainee)
    with pytest.raises(Conflict, match="removed"):
        world.repository.save(world.trainee)
    with pytest.raises(NotFound):
        world.repository.trainee(world.trainee_id)


def test_a_save_is_all_or_nothing(world: World) -> None:
    with pytest.raises(InvalidRecord):
        world.repository.save(
            BodyMass(world.trainee_id, MONDAY, 70_000), BodyMass(world.trainee_id, MONDAY, 71_000)
        )
    assert world.repository.body_masses(world.trainee_id) == ()
    good, bad = BodyMass(world.trainee_id, MONDAY, 70_000), BodyMass(99, MONDAY, 70_000)

    def two_saves() -> None:
        with world.repository.transaction():
            world.repository.save(good)
            world.repository.save(bad)

    with pytest.raises(InvalidRecord):
        two_saves()
    assert world.repository.body_masses(world.trainee_id) == ()


def test_what_another_window_wrote_is_noticed(tmp_path: Path) -> None:
    path = tmp_path / "shared.db"
    with a_world(path) as world:
        other = Database.open(path)
        try:
            token = world.repository.changes_token()
            world.repository.save(BodyMass(world.trainee_id, MONDAY, 70_000))
            assert world.repository.changes_token() == token
            Repository(other).save(replace(world.trainee, notes="from elsewhere"))
            assert world.repository.changes_token() != token
            with pytest.raises(Conflict):
                world.repository.save(replace(world.trainee, notes="from here"))
        finally:
            other.close()


def test_a_read_of_several_queries_sees_one_moment(tmp_path: Path) -> None:
    path = tmp_path / "shared.db"
    with a_world(path) as world, closing(Database.open(path)) as other:
        session = world.saved(world.session(note="before"))
        asked: list[Any] = []

        def write_in_between(event: Any) -> None:
            if "FROM session s" in event.sql:
                asked.append(event)
            if len(asked) == 1:
                changed = replace(session, note="after", lines=())
                Repository(other).save(changed)

        world.repository.database.query_hooks.append(write_in_between)
        assert world.repository.sessions(world.trainee_id) == (session,)
        (after,) = world.repository.sessions(world.trainee_id)
        assert (after.note, after.lines) == ("after", ())


def test_a_worker_reads_by_a_connection_of_its_own(tmp_path: Path) -> None:
    with a_world(tmp_path / "shared.db") as world:
        world.saved(world.session())
        found: list[int] = []

        def work() -> None:
            with world.repository.database.connection_context():
                found.append(len(world.repository.sessions(world.trainee_id)))

        worker = threading.Thread(target=work)
        worker.start()
        worker.join()
        assert found == [1]
        with world.repository.database.connection_context():
            pass
        assert len(world.repository.sessions(world.trainee_id)) == 1


def test_data_in_memory_belong_to_their_thread(world: World) -> None:
    said: list[str] = []

    def work() -> None:
        try:
            with world.repository.database.connection_context():
                pass
        except StoreError as error:
            said.append(str(error))

    worker = threading.Thread(target=work)
    worker.start()
    worker.join()
    assert said == ["Data in memory belong to the thread that made them."]


# Sessions


def test_a_taken_place_on_a_day_goes_behind_the_last_one(world: World) -> None:
    first, second, third = (world.saved(world.session()) for _ in range(3))
    assert [one.entry for one in (first, second, third)] == [0, 1, 2]
    moved = world.saved(replace(first, day=date(2026, 3, 9)))
    back = world.saved(replace(moved, day=MONDAY, entry=1))
    assert back.entry == 3
    assert world.repository.session_on(world.trainee_id, MONDAY) == (second, third, back)


def test_two_sessions_of_a_day_can_change_places_and_back(world: World) -> None:
    first, second = (world.saved(world.session()) for _ in range(2))
    swapped = world.repository.save(replace(first, entry=1), replace(second, entry=0)).saved
    assert world.repository.sessions(world.trainee_id) == (swapped[1], swapped[0])
    back = (replace(one, entry=entry) for entry, one in enumerate(swapped))
    undone = world.repository.save(*back).saved
    assert world.repository.sessions(world.trainee_id) == undone


def test_each_write_of_a_session_is_noted_with_what_stood_before(world: World) -> None:
    session = world.saved(world.session())
    same = world.saved(session)
    corrected = world.saved(replace(same, note="form broke down in the last set"))
    entered, correction = world.repository.session_changes(session.id)
    assert (entered.what, entered.at, entered.before) == (ChangeKind.ENTERED, NOON, None)
    assert (correction.what, correction.before) == (ChangeKind.CORRECTED, same)
    removed = world.repository.remove(corrected)
    world.repository.restore(*removed.saved)
    assert world.repository.session_changes(session.id) == (entered, correction)


def test_sessions_are_found_by_days_by_line_and_by_trainee(world: World) -> None:
    late = world.saved(world.session(date(2026, 3, 6)))
    early = world.saved(world.session())
    press = LineDone(known(world.lines[1].id), "press", (), (SetDone(30_000, 5),))
    middle = world.saved(world.session(date(2026, 3, 4), lines=(press,)))
    read = world.repository
    assert read.sessions(world.trainee_id) == (early, middle, late)
    assert read.sessions(world.trainee_id, date(2026, 3, 3), date(2026, 3, 4)) == (middle,)
    assert read.sessions(world.trainee_id, first=date(2026, 3, 4)) == (middle, late)
    assert read.sessions(world.trainee_id, last=date(2026, 3, 4)) == (early, middle)
    assert read.sessions_with_line(known(world.lines[1].id)) == (middle,)
    assert read.sessions_with_line(known(world.lines[0].id)) == (early, late)
    world.saved(Trainee("Bo"))
    assert read.last_sessions() == {world.trainee_id: date(2026, 3, 6)}


def test_years_of_sessions_take_as_many_queries_as_one(world: World) -> None:
    asked: list[Any] = []
    world.repository.save(*(world.session(note=str(n)) for n in range(120)))
    repository = world.repository
    repository.database.query_hooks.append(asked.append)
    assert len(repository.sessions(world.trainee_id, date.min, date.max)) == 120
    assert len(asked) == 3
    asked.clear()
    assert len(world.repository.lines(world.trainee_id)) == 2
    assert len(asked) == 4
    asked.clear()
    assert len(world.repository.exercises()) == 2
    assert len(asked) == 3


# Finding by name


def test_people_programs_and_lines_are_found_by_name(world: World) -> None:
    zoe, bo = world.repository.save(Trainee("zoë"), Trainee("Bo", archived=True)).saved
    program = world.saved(a_program())
    read = world.repository
    assert read.trainees() == (world.trainee, zoe)
    assert read.trainees(archived=True) == (world.trainee, bo, zoe)
    assert read.trainee_named("Bo") == bo
    assert read.trainee_named("bo") is None
    assert read.program_named("Winter") == program
    assert read.program_named("Summer") is None
    assert read.line_of(world.trainee_id, "squat") == world.lines[0]
    assert read.line_of(world.trainee_id, "squat", "light") is None


@pytest.mark.parametrize(
    "read",
    [
        lambda repository: repository.trainee(99),
        lambda repository: repository.line(99),
        lambda repository: repository.program(99),
        lambda repository: repository.session(99),
        lambda repository: repository.exercise("99"),
    ],
)
def test_what_is_not_there_is_said(world: World, read: Callable[[Repository], Any]) -> None:
    with pytest.raises(NotFound, match="99"):
        read(world.repository)


# The catalogue


def test_exercises_are_called_alike_however_they_are_asked_for(world: World) -> None:
    repository = world.repository
    repository.said = lambda each: replace(each, name=f"{each.name}!")
    name = repository.exercise("squat").name
    assert name.endswith("!")
    assert name in {each.name for each in repository.exercises()}
    assert name not in {each.name for each in repository.stored_exercises()}


def test_the_catalogue_is_written_once_and_leaves_own_exercises_alone(world: World) -> None:
    repository = world.repository
    mine = world.saved(exercise("sled", own=True, cue="mine"))
    world.saved(replace(repository.exercise("press"), retired=True))
    catalogue = (
        exercise("squat", cue="knees out"),
        exercise("press"),
        exercise("sled"),
        exercise("row"),
        exercise("gone"),
    )
    changes = repository.sync_catalogue(catalogue)
    assert {one.key for one in changes.saved} == {"squat", "row", "gone"}
    assert repository.exercise("squat").cue == "knees out"
    assert repository.exercise("press").retired
    assert repository.exercise("sled") == mine
    asked: list[Any] = []
    repository.database.query_hooks.append(asked.append)
    assert repository.sync_catalogue(catalogue).saved == ()
    assert len(asked) == 1
    changes = repository.sync_catalogue(catalogue[:-1])
    assert [(one.key, one.retired) for one in changes.saved] == [("gone", True)]
    assert changes.kinds == {Kind.EXERCISE}


# What is refused


def sets_of(**fields: Any) -> Callable[[World], Any]:
    def made(world: World) -> Session:
        session = world.session()
        done = replace(session.lines[0], sets=(replace(session.lines[0].sets[0], **fields),))
        return replace(session, lines=(done,))

    return made


def line_done(**fields: Any) -> Callable[[World], Any]:
    def made(world: World) -> Session:
        session = world.session()
        return replace(session, lines=(replace(session.lines[0], **fields),))

    return made


def of_trainee(record: Any, *values: Any, **fields: Any) -> Callable[[World], Any]:
    return lambda world: record(world.trainee_id, *values, **fields)


SUNDAY = date(2026, 3, 1)
REFUSED: list[tuple[Callable[[World], Any], str, str]] = [
    (lambda w: Trainee(" "), "name", "Give a name"),
    (lambda w: Trainee("Ada"), "name", "already a trainee called Ada"),
    (lambda w: Trainee("a\0"), "name", "no text"),
    (lambda w: Trainee("x", notes="n" * 20_001), "notes", "at most 20000 characters"),
    (lambda w: Trainee("x", birth_year=85), "birth_year", "1900 to 2100, not 85"),
    (lambda w: Trainee("x", stature_mm=180), "stature_mm", "500 to 2500, not 180"),
    (lambda w: Trainee("x", weekdays=(7,)), "weekdays", "0 to 6, not 7"),
    (lambda w: Trainee("x", weekdays=(1, 1)), "weekdays", "stands twice"),
    (lambda w: Trainee("x", clearances=(Clearance(MONDAY, ""),)), "clearances[0].by", "who gave"),
    (of_trainee(BodyMass, MONDAY, 70), "mass_g", "10000 to 500000, not 70"),
    (lambda w: BodyMass(99, MONDAY, 70_000), "trainee_id", "no trainee with the number 99"),
    (lambda w: exercise("squat"), "key", "already an exercise with the key 'squat'"),
    (lambda w: replace(w.repository.exercise("squat"), key="s"), "key", "stays as it is: 'squat'"),
    (lambda w: replace(exercise("x"), direct=()), "direct", "at least one direct muscle"),
    (
        lambda w: replace(exercise("x"), indirect=(Muscle.GLUTES,)),
        "indirect",
        "glutes stands twice",
    ),
    (
        lambda w: exercise("x", variations=(Variation("a", "A"), Variation("a", "B"))),
        "variations",
        "a stands twice",
    ),
    (of_trainee(Line, "squat"), "name", "already a line of squat called ''"),
    (of_trainee(Line, "hop"), "exercise", "There is no exercise called 'hop'"),
    (
        of_trainee(Line, "squat", "b", starts=(LineStart(MONDAY, Position()),) * 2),
        "starts",
        "2026-03-02 stands twice",
    ),
    (
        of_trainee(Line, "squat", "b", starts=(LineStart(MONDAY, Position(), plus_minus=5),)),
        "starts[0].plus_minus",
        "from 0 to 1, not 5",
    ),
    (lambda w: Program(""), "name", "Give a name"),
    (
        lambda w: Program("P", (Phase("Base", 0),)),
        "phases[0].weeks",
        "weeks: 1 to 520, not 0",
    ),
    (
        lambda w: Program(
            "P",
            (Phase("B", 1, (TrainingDay("M", (Slot("hop", ProgressionRule(), Position()),)),)),),
        ),
        "phases[0].days[0].slots[0].exercise",
        "no exercise called 'hop'",
    ),
    (lambda w: replace(w.saved(a_program()), id=None), "name", "already a program called Winter"),
    (
        lambda w: replace(w.saved(EquipmentFrom(1, MONDAY, Equipment())), id=None),
        "day",
        "already a list of equipment from 2026-03-02",
    ),
    (
        lambda w: replace(w.saved(RememberedName(1, "sq", "squat")), id=None),
        "text",
        "already a meaning of 'sq'",
    ),
    (of_trainee(Assignment, 99, MONDAY), "program_id", "no program with the number 99"),
    (of_trainee(Assignment, 1, MONDAY, ended=SUNDAY), "ended", "before the first"),
    (of_trainee(Activity, MONDAY, "", 30, 5), "name", "Give a name"),
    (of_trainee(Activity, MONDAY, "row", 30, 11), "effort", "0 to 10, not 11"),
    (of_trainee(DeloadWindow, MONDAY, SUNDAY), "last", "2026-03-01, is before the first"),
    (of_trainee(DeloadWindow, MONDAY, MONDAY, 0.0), "sets_factor", "above 0 and at most 1"),
    (of_trainee(Absence, MONDAY, SUNDAY), "last", "before the first"),
    (of_trainee(Goal, 99, GoalKind.REPS, 5), "line_id", "no line with the number 99"),
    (of_trainee(Goal, 1, GoalKind.REPS, -5), "value", "0 to 2000000, not -5"),
    (of_trainee(Goal, 1, GoalKind.ONE_REP_MAX, 5, reps=0), "reps", "1 to 1000, not 0"),
    (of_trainee(DismissedCaution, "", "", MONDAY, ""), "limit", "Give a limit"),
    (of_trainee(RememberedName, " ", "squat"), "text", "Give a text"),
    (lambda w: CoachSettings(deload_sets_factor=0), "deload_sets_factor", "above 0 and at most 1"),
    (lambda w: CoachSettings(equation="guess"), "equation", "epley"),
    (lambda w: w.session(effort=float("nan")), "effort", "0 to 10, not nan"),
    (lambda w: w.session(entry=-1), "entry", "counts from 0"),
    (lambda w: w.session(wellness=Wellness(sleep=6)), "wellness.sleep", "Sleep: 1 to 5, not 6"),
    (lambda w: w.session(trainee_id=99), "trainee_id", "no trainee with the number 99"),
    (line_done(line_id=99), "lines[0].line_id", "no line with the number 99"),
    (line_done(exercise="hop"), "lines[0].exercise", "no exercise called 'hop'"),
    (line_done(sets=(SetDone(0, 1),) * 101), "lines[0]", "Squat: sets: at most 100, not 101"),
    (line_done(asked=(AskedSet(0, -1),)), "lines[0].asked[0].reps", "asked: 0 to 1000, not -1"),
    (sets_of(pain=11), "lines[0].sets[0].pain", "Squat, set 1: pain: 0 to 10, not 11"),
    (sets_of(reps=None), "lines[0].sets[0].reps", "give clean repetitions or seconds"),
    (sets_of(reps=-1), "lines[0].sets[0].reps", "clean repetitions: 0 to 1000, not -1"),
    (sets_of(load_g=3_000_000), "lines[0].sets[0].load_g", "-2000000 to 2000000"),
    (sets_of(side="both"), "lines[0].sets[0].side", "left, right or empty, not 'both'"),
    (sets_of(rir=-1.0), "lines[0].sets[0].rir", "repetitions in reserve: 0 to 20"),
]


@pytest.mark.parametrize(("made", "field", "sentence"), REFUSED)
def test_a_broken_record_is_refused_with_its_field(
    world: World, made: Callable[[World], Any], field: str, sentence: str
) -> None:
    with pytest.raises(InvalidRecord) as caught:
        world.repository.save(made(world))
    assert caught.value.field == field
    assert sentence in str(caught.value)


def test_a_line_of_somebody_else_is_refused(world: World) -> None:
    other = world.saved(Trainee("Bo"))
    with pytest.raises(InvalidRecord, match="belongs to another trainee") as caught:
        world.repository.save(world.session(trainee_id=other.id))
    assert caught.value.field == "lines[0].line_id"


@pytest.mark.parametrize("broken", ["\ud800", "half \udfff of a pair"])
def test_half_a_character_is_refused_wherever_it_stands(world: World, broken: str) -> None:
    for record in (
        Trainee(broken),
        Trainee("x", clearances=(Clearance(MONDAY, broken),)),
        world.session(note=broken),
    ):
        with pytest.raises(InvalidRecord):
            world.repository.save(record)


def test_a_number_beyond_all_measure_is_refused(world: World) -> None:
    with pytest.raises(InvalidRecord, match="cannot be kept"):
        world.repository.save(world.session(program_id=2**70))


def test_parts_and_settings_cannot_be_removed_by_themselves(world: World) -> None:
    for record in (Position(), CoachSettings()):
        with pytest.raises(InvalidRecord, match="cannot be kept or removed by itself"):
            world.repository.remove(record)


def test_a_value_that_cannot_be_read_is_said_to_be_damaged(world: World) -> None:
    world.repository.database.execute("UPDATE trainee SET weekdays = '[1, \"x\"]'")
    with pytest.raises(DamagedFile, match="cannot be read"):
        world.repository.trainees()
