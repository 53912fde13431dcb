"""The demo: what the simulation makes, brought in by the ordinary imports, and always current."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, timedelta
from importlib.resources import as_file
from pathlib import Path

import pytest

from db.database import MEMORY, Database
from db.log_files import read_log
from db.log_import import plan_import
from db.repository import Repository
from desktop.catalogue import load_catalogue
from desktop.demo import DEMO, LOG_FILE, MONDAY_AFTER, fill, shift_to, shifted
from desktop.planning.history import read_history
from desktop.planning.lines import replay_of
from desktop.training.quantities import Unit
from desktop.training.reasons import ReasonCode
from desktop.training.session import Outcome
from tests import demo_club
from tests.simulator import make_demo

TODAY = date(2027, 1, 14)


@pytest.fixture(scope="module")
def demo() -> Iterator[Repository]:
    database = Database.open(MEMORY)
    repository = Repository(database)
    repository.sync_catalogue(load_catalogue())
    fill(repository, TODAY)
    yield repository
    database.close()


@pytest.mark.slow
def test_the_files_are_what_the_simulation_makes() -> None:
    made = make_demo().files
    with as_file(DEMO) as folder:
        shipped = {
            path.name: path.read_bytes()
            for path in Path(folder).iterdir()
            if path.suffix in (".csv", ".json")
        }
    assert sorted(made) == sorted(shipped)
    stale = [name for name in made if made[name] != shipped[name]]
    assert not stale, f"{stale} differ; make them anew with python -m tests.simulator"


def test_the_last_session_lies_in_the_week_before_today(demo: Repository) -> None:
    last = max(demo.last_sessions().values())
    monday = TODAY - timedelta(days=TODAY.weekday())
    assert monday - timedelta(days=7) <= last < monday


@pytest.mark.parametrize("days", range(-9, 9))
def test_the_demo_moves_by_whole_weeks(days: int) -> None:
    today = MONDAY_AFTER + timedelta(days=days)
    later = shift_to(today)
    assert later.days % 7 == 0
    assert 0 <= (today - (MONDAY_AFTER + later)).days <= 6


def test_shifting_moves_every_date_and_nothing_else(demo: Repository) -> None:
    content = demo_club.SEAT_3
    moved = shifted(content, timedelta(days=7))
    assert moved.trainee.clearances[0].day - content.trainee.clearances[0].day == timedelta(days=7)
    assert shifted(moved, timedelta(days=-7)) == content


def test_the_demo_holds_what_a_coach_meets(demo: Repository) -> None:
    trainees = demo.trainees()
    assert len(trainees) >= 6
    assert {trainee.unit for trainee in trainees} == set(Unit)
    outcomes: set[Outcome | None] = set()
    reasons: set[ReasonCode] = set()
    for trainee in trainees:
        assert trainee.id is not None
        assert "Invented" in trainee.notes
        sessions = demo.sessions(trainee.id)
        assert len(sessions) > 20
        history = read_history(demo, trainee.id)
        for line in history.lines:
            steps = replay_of(history, line).steps
            outcomes |= {step.outcome for step in steps}
            reasons |= {step.reason.code for step in steps}
    span = max(demo.last_sessions().values()) - min(
        demo.sessions(trainee.id)[0].day for trainee in trainees if trainee.id is not None
    )
    assert span >= timedelta(weeks=15)
    assert {Outcome.MET, Outcome.MISSED, Outcome.IMPROVED, Outcome.EXCLUDED} <= outcomes
    assert {ReasonCode.GROW, ReasonCode.ROLL_OVER, ReasonCode.PAIN_NO_INCREASE} <= reasons
    assert all("Invented" in program.about for program in demo.programs())


def test_the_log_adds_nothing_twice(demo: Repository) -> None:
    with as_file(DEMO) as folder:
        preview = shifted(read_log(folder / LOG_FILE), shift_to(TODAY))
    plan = plan_import(demo, preview, new_trainees="never")
    assert plan.problems == ()
    assert plan.taken == ()
    assert len(plan.doubles) == len(preview.rows)
