"""The roster: who trains next, who needs attention, and why."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest

from db.repository import Repository
from desktop.planning.assignments import assign
from desktop.planning.history import read_history
from desktop.planning.roster import (
    HeadlineCode,
    RosterEntry,
    entry_of,
    roster,
    roster_without_cautions,
)
from desktop.training.trainee import Absence, AbsenceKind, DeloadWindow, Trainee
from tests.strength_room import DAY, MONDAY, WEEK, Room, as_asked, open_room


@pytest.fixture
def room(tmp_path: Path) -> Room:
    return open_room(tmp_path)


def entry(room: Room, today: date) -> RosterEntry:
    return entry_of(read_history(room.repository, room.trainee_id), today)


def code(room: Room, today: date) -> HeadlineCode:
    return entry(room, today).headline.code


def newcomer(room: Room, name: str, **fields: object) -> int:
    trainee = Trainee(name, screened=MONDAY, screening_clear=True, **fields)  # type: ignore[arg-type]
    trainee_id: int = room.repository.save(trainee).saved[0].id
    return trainee_id


def test_an_entry_tells_the_last_and_the_next_training_day(room: Room) -> None:
    before = entry(room, MONDAY)
    assert (before.last, before.next, before.due_today) == (None, MONDAY, True)
    room.train(MONDAY)
    after = entry(room, MONDAY)
    assert (after.last, after.next, after.due_today) == (MONDAY, MONDAY + 2 * DAY, False)


def test_the_headline_is_the_one_thing_to_know(room: Room) -> None:
    assert code(room, MONDAY) is HeadlineCode.DUE_TODAY
    assert code(room, MONDAY + DAY) is HeadlineCode.FIRST_WEEK
    room.train_weeks(2)
    assert entry(room, MONDAY + 8 * DAY).headline.values == (("day", MONDAY + 9 * DAY),)
    assert code(room, MONDAY + 26 * DAY) is HeadlineCode.DELOAD  # it begins on Monday
    away = Absence(room.trainee_id, MONDAY + 2 * WEEK, MONDAY + 3 * WEEK, AbsenceKind.ILLNESS)
    room.save(away)
    headline = entry(room, MONDAY + 2 * WEEK).headline
    assert headline.code is HeadlineCode.AWAY
    assert headline.values == (("kind", "illness"), ("last", MONDAY + 3 * WEEK))


def test_a_caution_is_the_headline_before_all_else(room: Room) -> None:
    room.train(MONDAY, lambda asked: replace(as_asked(asked), pain=2))
    headline = entry(room, MONDAY + 2 * DAY).headline
    assert headline.code is HeadlineCode.CAUTION
    assert dict(headline.values)["pain"] == 2


def test_somebody_long_gone_or_without_a_program_is_told_so(room: Room) -> None:
    room.train_weeks(1)
    gone = entry(room, MONDAY + 20 * DAY)
    assert gone.headline.code is HeadlineCode.LAST_SEEN
    assert gone.headline.values == (("days", 16),)
    room.train_weeks(7, MONDAY + WEEK)
    assert code(room, MONDAY + 8 * WEEK) is HeadlineCode.LAST_SEEN
    trainee_id = newcomer(room, "Cox")
    lone = entry_of(read_history(room.repository, trainee_id), MONDAY)
    assert lone.headline.code is HeadlineCode.NO_PROGRAM
    assert lone.next is None


def test_those_who_need_attention_stand_first(room: Room) -> None:
    flagged = newcomer(room, "Stroke")
    for trainee_id in (newcomer(room, "Bow"), flagged, newcomer(room, "Cox", weekdays=(0,))):
        given = assign(room.repository, trainee_id, room.program_id, MONDAY + WEEK)
        room.repository.save(*given.aggregates)
    room.repository.save(replace(room.repository.trainee(flagged), screening_clear=False))
    names = [one.trainee.name for one in roster(room.repository, MONDAY)]
    assert names == ["Stroke", "Seat 2", "Bow", "Cox"]


def test_the_archived_are_not_on_the_roster(room: Room) -> None:
    newcomer(room, "Bow", archived=True)
    assert [one.trainee.name for one in roster(room.repository, MONDAY)] == ["Seat 2"]


def test_the_quick_roster_takes_as_many_queries_for_one_as_for_many(room: Room) -> None:
    queries: list[object] = []
    roster_without_cautions(room.repository, MONDAY)  # what all share is read once
    room.repository.database.query_hooks.append(queries.append)
    (alone,) = roster_without_cautions(room.repository, MONDAY)
    assert (alone.due_today, alone.cautions) == (True, ())
    for_one = len(queries)
    for seat in range(3, 8):
        newcomer(room, f"Seat {seat}")
    queries.clear()
    assert len(roster_without_cautions(room.repository, MONDAY)) == 6
    assert len(queries) <= for_one + 1  # that writes were seen is noted


def test_the_quick_roster_agrees_with_the_whole_one_on_dates(room: Room) -> None:
    room.train_weeks(1)
    for ahead in range(7, 14):
        today = MONDAY + ahead * DAY
        quick, whole = roster_without_cautions(room.repository, today)[0], entry(room, today)
        assert (quick.last, quick.next, quick.due_today) == (
            whole.last,
            whole.next,
            whole.due_today,
        )


def test_each_trainee_costs_the_same_number_of_queries(room: Room) -> None:
    queries: list[object] = []
    room.repository.database.query_hooks.append(queries.append)

    def counted() -> int:
        queries.clear()
        roster(Repository(room.repository.database), MONDAY + WEEK)  # it has nothing in memory
        return len(queries)

    room.repository.shared_version()  # begins to watch what is written, once
    newcomer(room, "Bow")
    two = counted()
    newcomer(room, "Cox")
    three = counted()
    room.train_weeks(1)
    newcomer(room, "Stroke")
    assert counted() - three <= three - two + 5


def test_a_deload_that_runs_is_told(room: Room) -> None:
    room.train_weeks(1)
    today = MONDAY + WEEK + DAY
    room.save(DeloadWindow(room.trainee_id, today, today + 6 * DAY))
    assert entry(room, today).headline.values == (("first", today), ("last", today + 6 * DAY))
