"""Sessions kept in memory are at any time those of the file, whoever wrote them."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import closing, suppress
from dataclasses import replace
from datetime import date, timedelta
from pathlib import Path
from threading import Thread

import pytest

from db.database import Database
from db.kept_sessions import MOST_TRAINEES
from db.repository import Repository
from desktop.catalogue import load_catalogue
from desktop.planning.history import History, read_history, read_library
from desktop.training.equipment import Equipment
from desktop.training.limits import LimitId
from desktop.training.position import Position
from desktop.training.program import Assignment, Line, Override
from desktop.training.session import Activity, LineDone, Session, SetDone
from desktop.training.trainee import (
    Absence,
    BodyMass,
    DeloadWindow,
    DismissedCaution,
    EquipmentFrom,
    Goal,
    GoalKind,
    Trainee,
)
from tests.scenario import PROGRAM

DAY = date(2026, 3, 2)


@pytest.fixture
def path(tmp_path: Path) -> Path:
    return tmp_path / "club.db"


@pytest.fixture
def repository(path: Path) -> Iterator[Repository]:
    with closing(Database.open(path)) as database:
        repository = Repository(database)
        repository.sync_catalogue(load_catalogue())
        yield repository


def trained(repository: Repository, name: str = "Bow", days: int = 3) -> tuple[Session, ...]:
    (trainee,) = repository.save(Trainee(name)).saved
    (line,) = repository.save(Line(trainee.id, "back-squat")).saved
    return repository.save(
        *(session_on(line, DAY + timedelta(days=2 * place)) for place in range(days))
    ).saved


def session_on(line: Line, day: date, load_g: int = 60_000) -> Session:
    done = LineDone(line.id or 0, line.exercise, sets=(SetDone(load_g, 5),) * 3)
    return Session(line.trainee_id, day, lines=(done,))


def fresh(repository: Repository, trainee_id: int) -> tuple[Session, ...]:
    return repository.sessions(trainee_id, date.min, date.max)


def heavier(session: Session) -> Session:
    (part,) = session.lines
    return replace(session, lines=(replace(part, sets=(SetDone(70_000, 4),)),))


def test_what_nobody_wrote_is_the_same_object_the_next_time(repository: Repository) -> None:
    owner = trained(repository)[0].trainee_id
    first = repository.sessions(owner)
    assert repository.sessions(owner) is first
    assert first == fresh(repository, owner)


def test_only_what_was_written_is_read_again(repository: Repository) -> None:
    owner = trained(repository)[0].trainee_id
    before = repository.sessions(owner)
    repository.save(heavier(before[1]))
    after = repository.sessions(owner)
    assert after == fresh(repository, owner)
    assert [one is other for one, other in zip(after, before, strict=True)] == [True, False, True]
    assert after[1].lines[0].sets == (SetDone(70_000, 4),)


def test_a_session_added_moved_removed_or_restored_is_seen(repository: Repository) -> None:
    done = trained(repository)
    owner = done[0].trainee_id
    repository.sessions(owner)
    added = repository.save(replace(done[0], id=None, revision=0, day=DAY + timedelta(9))).saved
    assert repository.sessions(owner) == fresh(repository, owner)
    repository.save(replace(done[2], day=DAY - timedelta(1)))
    assert repository.sessions(owner) == fresh(repository, owner)
    removed = repository.remove(*added).saved
    assert repository.sessions(owner) == fresh(repository, owner)
    repository.restore(*removed)
    assert repository.sessions(owner) == fresh(repository, owner)
    assert len(repository.sessions(owner)) == 4


def test_what_comes_back_under_its_number_need_not_be_what_went(repository: Repository) -> None:
    done = trained(repository)
    owner = done[0].trainee_id
    repository.sessions(owner)
    removed = repository.remove(done[2]).saved
    repository.restore(*(heavier(one) if isinstance(one, Session) else one for one in removed))
    assert repository.sessions(owner) == fresh(repository, owner)
    assert repository.sessions(owner)[2].lines[0].sets == (SetDone(70_000, 4),)


def test_what_a_transaction_undid_is_forgotten_with_it(repository: Repository) -> None:
    owner = trained(repository)[0].trainee_id
    before = repository.sessions(owner)
    with suppress(RuntimeError), repository.transaction():
        repository.save(heavier(before[0]))
        assert repository.sessions(owner)[0].lines[0].sets == (SetDone(70_000, 4),)
        raise RuntimeError("no")
    assert repository.sessions(owner) == before == fresh(repository, owner)


def test_a_transaction_that_wrote_none_takes_and_leaves_what_is_kept(
    repository: Repository,
) -> None:
    owner = trained(repository)[0].trainee_id
    with suppress(RuntimeError), repository.transaction():
        read = repository.sessions(owner)
        raise RuntimeError("no")
    assert repository.sessions(owner) is read
    with repository.transaction():
        assert repository.sessions(owner) is read
        repository.save(heavier(read[0]))
    assert repository.sessions(owner) == fresh(repository, owner) != read


def test_another_connection_and_another_thread_are_heard(
    repository: Repository, path: Path
) -> None:
    owner = trained(repository)[0].trainee_id
    before = repository.sessions(owner)
    seen: list[tuple[Session, ...]] = []

    def write_elsewhere() -> None:
        with repository.database.connection_context():
            repository.save(heavier(before[1]))
            seen.append(repository.sessions(owner))

    elsewhere = Thread(target=write_elsewhere)
    elsewhere.start()
    elsewhere.join()
    assert repository.sessions(owner) == fresh(repository, owner) == seen[0]
    with closing(Database.open(path)) as other:
        Repository(other).remove(repository.session(before[0].id or 0))
    assert repository.sessions(owner) == fresh(repository, owner)
    assert len(repository.sessions(owner)) == 2


def test_with_a_trainee_their_sessions_go(repository: Repository) -> None:
    owner = trained(repository)[0].trainee_id
    repository.sessions(owner)
    removed = repository.remove(repository.trainee(owner)).saved
    assert repository.sessions(owner) == ()
    repository.restore(*removed)
    assert repository.sessions(owner) == fresh(repository, owner) != ()


def test_few_trainees_are_kept_and_all_are_right(repository: Repository) -> None:
    owners = [
        trained(repository, f"Seat {place}", days=1)[0].trainee_id
        for place in range(MOST_TRAINEES + 2)
    ]
    kept = {owner: repository.sessions(owner) for owner in owners}
    assert repository.sessions(owners[-1]) is kept[owners[-1]]
    assert repository.sessions(owners[0]) is not kept[owners[0]]
    assert all(repository.sessions(owner) == fresh(repository, owner) for owner in owners)


def test_the_library_is_read_again_once_anything_in_it_was_written(
    repository: Repository, path: Path
) -> None:
    first = read_library(repository)
    trained(repository)
    assert read_library(repository) is first
    repository.save(replace(repository.coach_settings(), monotony_sample=True))
    second = read_library(repository)
    assert second.settings.monotony_sample
    (squat,) = (one for one in repository.exercises() if one.key == "back-squat")
    with suppress(RuntimeError), repository.transaction():
        repository.save(replace(squat, retired=True))
        assert read_library(repository).exercises["back-squat"].retired
        raise RuntimeError("no")
    assert not read_library(repository).exercises["back-squat"].retired
    with closing(Database.open(path)) as other:
        Repository(other).save(replace(squat, retired=True))
    assert read_library(repository).exercises["back-squat"].retired


def test_a_second_store_over_the_same_file_is_never_behind(repository: Repository) -> None:
    before = trained(repository)
    owner = before[0].trainee_id
    second = Repository(repository.database)
    assert second.sessions(owner) == repository.sessions(owner)
    repository.save(heavier(before[0]))
    assert second.sessions(owner) == repository.sessions(owner) == fresh(repository, owner)
    second.save(heavier(second.sessions(owner)[1]))
    assert second.sessions(owner) == repository.sessions(owner) == fresh(repository, owner)


def test_facts_of_a_trainee_are_read_again_once_any_of_them_was_written(
    repository: Repository,
) -> None:
    owner = trained(repository)[0].trainee_id
    other = trained(repository, "Stroke")[0].trainee_id
    (line,) = repository.lines(owner)
    (program,) = repository.save(PROGRAM).saved
    written = (
        replace(repository.trainee(owner), notes="rows at seven"),
        replace(line, overrides=(Override(DAY, Position(50_000, reps=5, sets=3), "easier"),)),
        Assignment(owner, program.id or 0, DAY),
        BodyMass(owner, DAY, 70_000),
        EquipmentFrom(owner, DAY, Equipment()),
        DeloadWindow(owner, DAY, DAY),
        Absence(owner, DAY, None),
        Activity(owner, DAY, "rowing", 60, 5.0),
        Goal(owner, line.id or 0, GoalKind.ONE_REP_MAX, 100_000),
        DismissedCaution(owner, LimitId.GAP, "", DAY, "seen"),
    )
    untouched = read_history(repository, other)
    for aggregate in written:
        before = read_history(repository, owner)
        (saved,) = repository.save(aggregate).saved
        after = read_history(repository, owner)
        assert before != after == unkept(repository, owner)
        if aggregate.id is None:
            repository.remove(saved)
            assert after != read_history(repository, owner) == unkept(repository, owner)
        assert read_history(repository, other).lines is untouched.lines


def unkept(repository: Repository, trainee_id: int) -> History:
    return read_history(Repository(repository.database), trainee_id)
