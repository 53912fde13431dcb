"""Arrays of sets hold what the sessions hold."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import closing
from datetime import date, timedelta

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from db.database import MEMORY, Database
from db.repository import Repository
from db.series import (
    SETS,
    WEEKS,
    line_sets,
    trainee_sets,
    weekly_volume,
    weekly_volume_of_all,
    weekly_volume_of_line,
)
from desktop.training.exercises import Exercise, LoadingKind, Muscle, Pattern
from desktop.training.program import Line
from desktop.training.session import LineDone, Session, SetDone
from desktop.training.trainee import Trainee
from tests import strategies

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


def test_a_lines_sets_come_in_order_with_nan_for_what_is_unknown(repository: Repository) -> None:
    warm = SetDone(20_000, 5, warm_up=True)
    first = SetDone(60_000, 8, rir=2.0, variation="deep")
    second = SetDone(60_000, 7, variation="half", pain=3, tempo_s=4)
    held = SetDone(0, seconds=30)
    repository.save(session(MONDAY + timedelta(2), LineDone(1, "squat", (), (held,))))
    repository.save(session(MONDAY, LineDone(1, "squat", (), (warm, first, second))))
    series = line_sets(repository.database, 1)
    sets = series.sets
    assert sets.dtype == SETS
    assert sets["day"].tolist() == [MONDAY.toordinal()] * 3 + [MONDAY.toordinal() + 2]
    assert sets["session_id"].tolist() == [2, 2, 2, 1]
    assert sets["load_g"].tolist() == [20_000, 60_000, 60_000, 0]
    np.testing.assert_array_equal(sets["reps"], [5, 8, 7, np.nan])
    np.testing.assert_array_equal(sets["seconds"], [np.nan, np.nan, np.nan, 30])
    np.testing.assert_array_equal(sets["rir"], [np.nan, 2, np.nan, np.nan])
    np.testing.assert_array_equal(sets["tempo_s"], [np.nan, np.nan, 4, np.nan])
    assert sets["pain"].tolist() == [0, 0, 3, 0]
    assert sets["warm_up"].tolist() == [True, False, False, False]
    assert sets["variation"].tolist() == [-1, 0, 1, -1]
    assert series.variations == ("deep", "half")
    assert series.exercises == ("squat",)
    assert series.working()["load_g"].tolist() == [60_000, 60_000, 0]


def test_a_line_without_sets_has_an_empty_array(repository: Repository) -> None:
    series = line_sets(repository.database, 1)
    assert (len(series.sets), series.sets.dtype, series.variations) == (0, SETS, ())
    volume = weekly_volume(repository.database, 1)
    assert (len(volume.weeks), volume.weeks.dtype, volume.exercises) == (0, WEEKS, ())


def test_weeks_run_from_monday_to_sunday(repository: Repository) -> None:
    done = LineDone(1, "squat", (), (SetDone(60_000, 5), SetDone(20_000, 5, warm_up=True)))
    held = LineDone(2, "press", (), (SetDone(10_000, seconds=20),))
    for days in (-1, 0, 6, 7):
        repository.save(session(MONDAY + timedelta(days), done, held))
    repository.save(session(MONDAY, LineDone(3, "squat", (), (SetDone(1, 1),)), trainee_id=2))
    volume = weekly_volume(repository.database, 1, first=MONDAY)
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
    assert len(trainee_sets(repository.database, 1, MONDAY, MONDAY).sets) == 3


@given(st.data())
@settings(max_examples=25)
def test_arrays_hold_what_the_sessions_hold(data: st.DataObject) -> None:
    with closing(Database.open(MEMORY)) as database:
        repository = filled(Repository(database))
        made = strategies.sessions(1, [(1, "squat"), (2, "press")])
        repository.save(*data.draw(st.lists(made, max_size=4)))
        series = trainee_sets(database, 1)
        rows = [
            (one.day.toordinal(), one.id, line.line_id, line.exercise, done)
            for one in repository.sessions(1)
            for line in one.lines
            for done in line.sets
        ]
        assert len(rows) == len(series.sets)
        for (day, session_id, line_id, exercise, done), row in zip(rows, series.sets, strict=True):
            assert (row["day"], row["session_id"], row["line_id"]) == (day, session_id, line_id)
            assert series.exercises[row["exercise"]] == exercise
            number = row["variation"]
            assert (series.variations[number] if number >= 0 else None) == done.variation
            assert (row["load_g"], row["pain"]) == (done.load_g, done.pain)
            assert row["warm_up"] == done.warm_up
            for name in ("reps", "seconds", "tempo_s", "rir"):
                noted = getattr(done, name)
                assert np.isnan(row[name]) if noted is None else row[name] == noted


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
