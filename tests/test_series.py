"""Sets added up by week are those that the sessions hold."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import closing
from datetime import date, timedelta

import pytest

from db.database import MEMORY, Database
from db.repository import Repository
from db.series import WEEKS, weekly_volume_of_all, weekly_volume_of_line
from desktop.training.exercises import Exercise, LoadingKind, Muscle, Pattern
from desktop.training.program import Line
from desktop.training.session import LineDone, Session, SetDone
from desktop.training.trainee import Trainee

MONDAY = date(2026, 3, 2)


@pytest.fixture
def repository() -> Iterator[Repository]:
    with closing(Database.open(MEMORY)) as database:
        yield filled(Repository(database))


def filled(repository: Repository) -> Repository:
    repository.save(Trainee("Ada"), Trainee("Bo"))
    for key in ("squat", "press"):
        repository.save(Exercise(key, key, Pattern.SQUAT, LoadingKind.BARBELL, (Muscle.GLUTES,)))
    repository.save(Line(1, "squat"), Line(1, "press"), Line(2, "squat"))
    return repository


def session(day: date, *lines: LineDone, trainee_id: int = 1) -> Session:
    return Session(trainee_id, day, lines)


def test_without_sets_the_array_is_empty(repository: Repository) -> None:
    volume = weekly_volume_of_line(repository.database, 1)
    assert (len(volume.weeks), volume.weeks.dtype, volume.exercises) == (0, WEEKS, ())


def test_weeks_run_from_monday_to_sunday(repository: Repository) -> None:
    done = LineDone(1, "squat", (), (SetDone(60_000, 5), SetDone(20_000, 5, warm_up=True)))
    held = LineDone(2, "press", (), (SetDone(10_000, seconds=20),))
    for days in (-1, 0, 6, 7):
        repository.save(session(MONDAY + timedelta(days), done, held))
    volume = weekly_volume_of_all(repository.database, first=MONDAY)
    monday = MONDAY.toordinal()
    assert volume.exercises == ("press", "squat")
    assert volume.weeks.tolist() == [
        (monday, 0, 2, 0, 40, 0),
        (monday, 1, 2, 10, 0, 600_000),
        (monday + 7, 0, 1, 0, 20, 0),
        (monday + 7, 1, 1, 5, 0, 300_000),
    ]
    assert weekly_volume_of_line(repository.database, 1).weeks.tolist() == [
        (monday - 7, 0, 1, 5, 0, 300_000),
        (monday, 0, 2, 10, 0, 600_000),
        (monday + 7, 0, 1, 5, 0, 300_000),
    ]


def test_the_weeks_of_a_line_are_read_from_one_index_and_sorted_once(
    repository: Repository,
) -> None:
    asked: list[str] = []
    repository.database.query_hooks.append(lambda query: asked.append(query.sql))
    weekly_volume_of_line(repository.database, 1)
    plan = repository.database.execute(f"EXPLAIN QUERY PLAN {asked[0]}", (1,))
    assert [row[3] for row in plan] == [
        "SEARCH d USING COVERING INDEX set_of_line (line_id=? AND warm_up=?)",
        "USE TEMP B-TREE FOR GROUP BY",
    ]


def test_the_weeks_of_everybody_are_those_of_each_added_up(repository: Repository) -> None:
    done = (SetDone(60_000, 8), SetDone(20_000, 5, warm_up=True))
    repository.save(session(MONDAY, LineDone(1, "squat", (), done)))
    repository.save(session(MONDAY + timedelta(1), LineDone(3, "squat", (), done), trainee_id=2))
    repository.save(session(MONDAY + timedelta(9), LineDone(2, "press", (), done)))
    whole = weekly_volume_of_all(repository.database)
    assert whole.weeks["sets"].tolist() == [2, 1]
    assert whole.weeks["load_g_reps"].tolist() == [2 * 480_000, 480_000]
    assert [whole.exercises[place] for place in whole.weeks["exercise"]] == ["squat", "press"]
    early = weekly_volume_of_all(repository.database, MONDAY, MONDAY + timedelta(6))
    assert early.weeks["sets"].tolist() == [2]
