"""Answers from what is kept in memory are those of a fresh reading, whatever was edited before."""

from __future__ import annotations

import random
from collections.abc import Iterator
from contextlib import suppress
from dataclasses import replace
from datetime import timedelta
from pathlib import Path

import pytest

from db.errors import InvalidRecord
from db.repository import Repository
from desktop.planning.briefs import brief_of
from desktop.planning.days import day_plan_of
from desktop.planning.history import History, read_history
from desktop.planning.outcomes import outcomes_of
from desktop.planning.tracks import Tracks
from desktop.training.equipment import Height
from desktop.training.program import Override
from desktop.training.session import Session
from desktop.training.trainee import BodyMass, DeloadWindow, EquipmentFrom
from tests.scenario import TODAY, open_club

EDITS = 60


@pytest.fixture
def club(tmp_path: Path) -> Iterator[Repository]:
    repository = open_club(tmp_path)
    yield repository
    repository.database.close()


def an_edit(repository: Repository, trainee_id: int, chance: random.Random) -> None:
    """Something a coach does on an evening, seldom to the last session only."""
    sessions = repository.sessions(trainee_id)
    session = chance.choice(sessions)
    match chance.randrange(8):
        case 0:
            repository.remove(session)
        case 1:
            repository.save(replace(session, day=session.day + timedelta(days=1)))
        case 2:
            repository.restore(*repository.remove(session).saved)
        case 3:
            line = chance.choice(repository.lines(trainee_id))
            position = chance.choice(line.starts).position
            word = Override(session.day, position, "easier")
            repository.save(replace(line, overrides=(*line.overrides, word)))
        case 4:
            repository.save(BodyMass(trainee_id, session.day, chance.randrange(60_000, 90_000)))
        case 5:
            owned = repository.equipment(trainee_id)[-1].equipment
            more = replace(owned, boxes=(*owned.boxes, Height("bench", chance.randrange(200, 600))))
            repository.save(EquipmentFrom(trainee_id, session.day, more))
        case 6:
            repository.save(DeloadWindow(trainee_id, session.day, session.day + timedelta(days=6)))
        case _:
            repository.save(with_other_sets(session, chance))


def with_other_sets(session: Session, chance: random.Random) -> Session:
    place = chance.randrange(len(session.lines))
    part = session.lines[place]
    sets = tuple(
        replace(done, reps=max(0, done.reps + chance.choice((-3, 0, 2)))) if done.reps else done
        for done in part.sets
    )
    pained = tuple(replace(done, pain=chance.choice((0, 0, 2, 5))) for done in sets[-1:])
    changed = replace(part, sets=(*sets[:-1], *pained))
    return replace(session, lines=(*session.lines[:place], changed, *session.lines[place + 1 :]))


def answers(history: History) -> tuple[object, ...]:
    return (
        brief_of(history, TODAY),
        day_plan_of(history, TODAY),
        [outcomes_of(history, one) for one in history.sessions[-2:]],
    )


def test_after_any_edits_what_is_kept_gives_the_answers_of_a_fresh_reading(
    club: Repository,
) -> None:
    chance, written = random.Random(7), 0
    for _ in range(EDITS):
        trainee_id = chance.choice(club.trainee_ids()[:3])
        with suppress(InvalidRecord):  # a second list of one day is refused
            an_edit(club, trainee_id, chance)
            written += 1
        kept = read_history(club, trainee_id)
        fresh = replace(read_history(Repository(club.database), trainee_id), tracks=Tracks())
        assert kept == fresh
        assert answers(kept) == answers(fresh)
    assert written > EDITS / 2
