"""The cautions of past weeks, and the sessions that a caution rests on."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest
from pytestqt.qtbot import QtBot

from desktop.planning.caution_history import SeenCaution, seen_cautions
from desktop.planning.caution_sessions import MOST, sessions_behind
from desktop.planning.cautions import cautions, dismissal
from desktop.planning.history import read_history
from desktop.training.limits import LimitId
from desktop.training.recovery import Caution, Evidence
from tests.strength_room import DAY, MONDAY, WEEK, Room, as_asked, open_room
from views.caution_seen import CautionsSeen
from views.record import Record
from views.theme import Theme

pytestmark = pytest.mark.usefixtures("english")


@pytest.fixture
def room(tmp_path: Path) -> Iterator[Room]:
    made = open_room(tmp_path)
    yield made
    made.repository.database.close()


def seen(room: Room, today: date) -> tuple[SeenCaution, ...]:
    work = seen_cautions(read_history(room.repository, room.trainee_id), today)
    shares = []
    while True:
        try:
            shares.append(next(work))
        except StopIteration as end:
            assert shares == sorted(shares)
            assert not shares or shares[-1] == 1
            found: tuple[SeenCaution, ...] = end.value
            return found


def one(limit: LimitId, room: Room, evidence: Evidence, line: str = "") -> Caution:
    found = read_history(room.repository, room.trainee_id).library.limits[limit]
    line_id = room.line_id(line) if line else None
    return Caution(limit, found.severity, evidence, found.source, found.proposal, line_id)


def test_pain_that_passed_is_still_told_with_its_days(room: Room) -> None:
    room.train(MONDAY, lambda each: replace(as_asked(each), pain=2))
    room.train(MONDAY + WEEK)
    today = MONDAY + WEEK + DAY
    pains = [each for each in seen(room, today) if each.caution.limit is LimitId.PAIN]
    assert {(each.first, each.last, each.now) for each in pains} == {(MONDAY, MONDAY, False)}
    assert not [c for c in cautions(room.repository, room.trainee_id, today) if c.limit == "pain"]


def test_what_is_seen_now_is_open_though_it_was_set_aside(room: Room) -> None:
    room.train(MONDAY)
    today = MONDAY + 2 * DAY
    seldom = next(
        c
        for c in cautions(room.repository, room.trainee_id, today)
        if c.limit is LimitId.TOO_SELDOM
    )
    room.save(dismissal(seldom, room.trainee_id, today, "in January"))
    told = [each for each in seen(room, today) if each.caution.limit is LimitId.TOO_SELDOM]
    assert [(each.first, each.now) for each in told] == [(MONDAY, True)]


def test_of_today_it_says_the_same_as_the_cautions_themselves(room: Room) -> None:
    room.train_weeks(6)
    today = MONDAY + 6 * WEEK
    now = {(each.caution.limit, each.caution.line_id) for each in seen(room, today) if each.now}
    assert now == {
        (each.limit, each.line_id) for each in cautions(room.repository, room.trainee_id, today)
    }


def test_a_deload_between_does_not_make_two_of_one(room: Room) -> None:
    room.train(MONDAY, lambda each: replace(as_asked(each), pain=2))
    room.train(MONDAY + WEEK)
    room.train(MONDAY + 2 * WEEK, lambda each: replace(as_asked(each), pain=2))
    pains = [each for each in seen(room, MONDAY + 3 * WEEK) if each.caution.limit is LimitId.PAIN]
    squat = [each for each in pains if each.caution.line_id == room.line_id("back-squat")]
    assert [(each.first, each.last) for each in squat] == [(MONDAY, MONDAY + 3 * WEEK)]


def test_sessions_behind_are_those_that_the_caution_was_read_from(room: Room) -> None:
    room.train_weeks(4)
    history = read_history(room.repository, room.trainee_id)
    today, days = MONDAY + 4 * WEEK, [session.day for session in history.sessions]
    squats = [session.day for session, _ in history.done(room.line_id("back-squat"))]

    def behind(caution: Caution) -> list[date]:
        return [session.day for session in sessions_behind(history, caution, today)]

    assert behind(one(LimitId.PLATEAU, room, (("probability", 0.7),), "back-squat")) == squats[-3:]
    assert behind(one(LimitId.GAP, room, (("days", 20), ("last", days[-1])))) == days[-1:]
    assert behind(one(LimitId.NO_DELOAD, room, (("weeks", 9), ("since", days[1])))) == [days[1]]
    week = (("monotony", 2.4), ("week_ends", MONDAY + 2 * WEEK - DAY))
    assert behind(one(LimitId.MONOTONY, room, week)) == [
        day for day in days if MONDAY + WEEK <= day < MONDAY + 2 * WEEK
    ]
    assert behind(one(LimitId.TOO_SELDOM, room, (("muscles", "calves"), ("planned", True)))) == []
    assert behind(one(LimitId.SCREENING, room, ())) == []
    first = history.sessions[0].id
    named = replace(one(LimitId.PAIN, room, ()), sessions=(first or 0,))
    assert behind(named) == days[:1]
    many = replace(named, sessions=tuple(each.id or 0 for each in history.sessions) * 3)
    assert len(behind(many)) <= MOST


def test_the_screen_tells_what_was_seen_and_since_when(qtbot: QtBot, room: Room) -> None:
    room.train(MONDAY, lambda each: replace(as_asked(each), pain=2))
    room.train(MONDAY + WEEK)
    today = MONDAY + WEEK + DAY
    record = Record(room.repository)
    shown = CautionsSeen(record, today, Theme("light", calm=True))
    qtbot.addWidget(shown)
    shown.show_history(read_history(room.repository, room.trainee_id))
    qtbot.waitUntil(lambda: bool(shown.rows), timeout=5000)
    said = [label.text() for row in shown.rows for label in row.findChildren(type(shown._said))]
    assert "Mon 7 Sept" in said
    assert any(text.startswith("Back squat: Pain of 2 out of 10") for text in said)
    assert any(text.startswith("since ") for text in said)
