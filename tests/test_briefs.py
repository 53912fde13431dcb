"""Kept briefs: what is read from them is what the whole record says, whatever was written."""

from __future__ import annotations

import shutil
from collections.abc import Callable
from contextlib import closing, suppress
from dataclasses import replace
from datetime import date
from pathlib import Path
from sqlite3 import connect
from tempfile import TemporaryDirectory
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from db.briefs import KeptBrief
from db.database import Database
from db.errors import InvalidRecord
from db.repository import Repository
from desktop.planning.briefs import build_mark, next_change
from desktop.planning.cautions import dismissal
from desktop.planning.days import day_plan
from desktop.planning.desk import (
    DeskRow,
    desk_brief_of,
    draw_up,
    row_on,
)
from desktop.planning.history import read_history, read_library
from desktop.training.brief import Brief, Told
from desktop.training.limits import LimitId
from desktop.training.position import Position
from desktop.training.program import Override
from desktop.training.session import Activity, SetDone, Wellness
from desktop.training.trainee import (
    Absence,
    BodyMass,
    Clearance,
    DeloadWindow,
    EquipmentFrom,
    Goal,
    GoalKind,
)
from tests.strategies import examples
from tests.strength_room import DAY, MONDAY, OWNED, WEEK, Room, as_asked, open_room, two_short

Act = Callable[[Room, date, int], None]
MOST_WEEKS = 8


@pytest.fixture
def room(tmp_path: Path) -> Room:
    return open_room(tmp_path)


def kept(room: Room, day: date) -> Brief | None:
    return room.repository.briefs(build_mark(), day).get(room.trainee_id)


def drawn_up(room: Room, day: date) -> Brief:
    return draw_up(room.repository, read_library(room.repository), room.trainee_id, day)


def whole(room: Room, day: date) -> DeskRow:
    history = read_history(room.repository, room.trainee_id)
    return row_on(desk_brief_of(history, day), history.library, day)


def train(room: Room, day: date, number: int) -> None:
    doing = (as_asked, two_short, lambda asked: replace(as_asked(asked), pain=number % 6))[
        number % 3
    ]
    if day_plan(room.repository, room.trainee_id, day).slots:
        mood = Wellness(1 + number % 5, 3, None, 4) if number % 2 else Wellness()
        room.train(day, doing, wellness=mood, effort=float(number % 10), minutes=50)


def correct(room: Room, day: date, number: int) -> None:
    done = room.repository.sessions(room.trainee_id)
    if done:
        session = done[number % len(done)]
        parts = tuple(replace(part, sets=(SetDone(60_000, number % 12),)) for part in session.lines)
        room.save(replace(session, lines=parts))


def remove(room: Room, day: date, number: int) -> None:
    done = room.repository.sessions(room.trainee_id)
    if done:
        room.repository.remove(done[number % len(done)])


def override(room: Room, day: date, number: int) -> None:
    line = room.line("back-squat")
    said = Override(day + (number % 9) * DAY, Position(40_000 + number * 2_500, 8, 3), "lighter")
    room.save(replace(line, overrides=(*line.overrides, said)))


def clear(room: Room, day: date, number: int) -> None:
    room.update_trainee(clearances=(Clearance(day + (number % 5) * DAY, "a physician"),))


def flag(room: Room, day: date, number: int) -> None:
    done = room.repository.sessions(room.trainee_id)
    if done:
        room.save(replace(done[-1], red_flag=True))


def set_aside(room: Room, day: date, number: int) -> None:
    for caution in whole(room, day).entry.cautions[:1]:
        room.save(dismissal(caution, room.trainee_id, day, "seen"))


def edit_program(room: Room, day: date, number: int) -> None:
    program = room.repository.program(room.program_id)
    room.save(replace(program, deload_every=1 + number % 6))


def set_up(room: Room, day: date, number: int) -> None:
    saved = room.repository.coach_settings()
    room.save(replace(saved, plateau_slope_percent=number / 100))


def goal(room: Room, day: date, number: int) -> None:
    line_id = room.line_id("back-squat")
    room.save(Goal(room.trainee_id, line_id, GoalKind.ONE_REP_MAX, 80_000 + number * 1_000))


def dated(make: Callable[[int, date, int], Any]) -> Act:
    def act(room: Room, day: date, number: int) -> None:
        room.save(make(room.trainee_id, day + (number % 40) * DAY, number))

    return act


ACTS: tuple[Act, ...] = (
    train,
    train,
    train,
    correct,
    remove,
    override,
    clear,
    flag,
    set_aside,
    edit_program,
    set_up,
    goal,
    dated(lambda who, day, number: Absence(who, day, day + (number % 15) * DAY)),
    dated(lambda who, day, number: DeloadWindow(who, day, day + 6 * DAY)),
    dated(lambda who, day, number: Activity(who, day, "rowing", 60, 5.0)),
    dated(lambda who, day, number: BodyMass(who, day + number * DAY, 70_000 + number * 100)),
    dated(
        lambda who, day, number: EquipmentFrom(
            who, day + number * DAY, replace(OWNED, discs=OWNED.discs[: number % 5])
        )
    ),
)


def unique(act: Act, room: Room, day: date, number: int) -> None:
    """Do it; a day on which such a thing is on record already is let pass."""
    with suppress(InvalidRecord):
        act(room, day, number)


@pytest.fixture(scope="module")
def trained(tmp_path_factory: pytest.TempPathFactory) -> tuple[Room, tuple[Path, ...]]:
    """A room, and its file after no week of training, after one, and so on, to begin from."""
    folder = tmp_path_factory.mktemp("trained")
    room = open_room(folder)
    files = []
    for weeks in range(MOST_WEEKS + 1):
        files.append(folder / f"{weeks}.db")
        with closing(connect(folder / "room.db")) as now, closing(connect(files[-1])) as copy:
            now.backup(copy)
        room.train_weeks(1, MONDAY + weeks * WEEK)
    return room, tuple(files)


@examples(0.4)
@given(
    st.integers(0, MOST_WEEKS),
    st.lists(
        st.tuples(
            st.sampled_from(ACTS), st.integers(0, 12), st.integers(0, 40), st.integers(0, 30)
        ),
        min_size=2,
        max_size=6,
    ),
)
def test_what_a_kept_brief_tells_is_what_the_whole_record_says(
    trained: tuple[Room, tuple[Path, ...]], weeks: int, acts: list[tuple[Act, int, int, int]]
) -> None:
    room, files = trained
    with (
        TemporaryDirectory() as folder,
        closing(Database.open(Path(shutil.copy(files[weeks], folder)))) as database,
    ):
        room = replace(room, repository=Repository(database))
        today = MONDAY + weeks * WEEK
        for act, pause, ahead, number in acts:
            today += pause * DAY
            unique(act, room, today, number)
            before = kept(room, today)
            brief = before or drawn_up(room, today)
            assert kept(room, today) == brief
            later = min(today + ahead * DAY, brief.until - DAY)
            for day in {today, later}:
                assert row_on(brief, read_library(room.repository), day) == whole(room, day)


@pytest.mark.parametrize("act", [*ACTS[:1], *ACTS[3:]])
def test_every_write_that_concerns_a_trainee_takes_the_brief_away(room: Room, act: Act) -> None:
    room.train_weeks(1)
    today = MONDAY + WEEK
    drawn_up(room, today)
    act(room, today, 3)
    assert kept(room, today) is None


def test_what_is_undone_takes_the_brief_away_too(room: Room) -> None:
    saved = room.save(DeloadWindow(room.trainee_id, MONDAY, MONDAY + 6 * DAY))
    drawn_up(room, MONDAY)
    removed = room.repository.remove(saved).saved
    assert kept(room, MONDAY) is None
    drawn_up(room, MONDAY)
    room.repository.restore(*removed)
    assert kept(room, MONDAY) is None


def test_a_renamed_exercise_takes_everybodys_brief_away(room: Room) -> None:
    drawn_up(room, MONDAY)
    squat = room.repository.exercise("back-squat")
    room.save(replace(squat, name="Squat"))
    assert kept(room, MONDAY) is None


def test_the_program_of_somebody_else_leaves_the_brief(room: Room) -> None:
    drawn_up(room, MONDAY)
    program = room.repository.program(room.program_id)
    room.save(replace(program, id=None, name="Another"))
    assert kept(room, MONDAY) is not None


def test_a_brief_of_another_build_is_not_read(room: Room) -> None:
    brief = drawn_up(room, MONDAY)
    with room.repository.transaction():
        room.repository.keep_briefs("another build", [KeptBrief(brief)])
    assert kept(room, MONDAY) is None


def test_a_brief_holds_until_the_next_thing_on_record_or_in_the_program(room: Room) -> None:
    history = read_history(room.repository, room.trainee_id)
    assert next_change(history, MONDAY) == MONDAY + 4 * WEEK  # the easier week begins
    room.save(BodyMass(room.trainee_id, MONDAY + 9 * DAY, 71_000))
    history = read_history(room.repository, room.trainee_id)
    assert next_change(history, MONDAY) == MONDAY + 9 * DAY
    brief = drawn_up(room, MONDAY)
    assert kept(room, brief.until - DAY) == brief
    assert kept(room, brief.until) is None
    assert kept(room, MONDAY - DAY) is None


def test_days_of_evidence_come_back_as_days(room: Room) -> None:
    room.train(MONDAY, red_flag=True)
    brief = drawn_up(room, MONDAY)
    (told,) = (one for one in brief.holds if one.limit is LimitId.RED_FLAG)
    caution = told.caution(read_library(room.repository).limits)
    assert caution["day"] == MONDAY
    assert Told.of(caution) == told
