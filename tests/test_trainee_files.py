"""Trainee files: written and read the same, and taken in whole, with everything dated."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import closing
from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from db.database import MEMORY, Database
from db.errors import InvalidRecord
from db.repository import Repository
from db.trainee_files import (
    Away,
    EasyDays,
    GoalFile,
    LineFile,
    OwnedFrom,
    ProgramFrom,
    TraineeFile,
    TraineesFile,
    WeighedOn,
    read_trainees,
    trainees_bytes,
)
from desktop.catalogue import load_catalogue
from desktop.planning.arrivals import take_trainees
from desktop.planning.starters import starters
from desktop.training.equipment import Bar, Discs, Equipment
from desktop.training.position import Position
from desktop.training.program import LineStart, Override, WeekdaysFrom
from desktop.training.trainee import AbsenceKind, Clearance, GoalKind, Trainee
from tests import strategies

TWO_DAYS = next(one.program for one in starters() if len(one.program.phases[0].days) == 2)
START = date(2026, 8, 10)
MOVES = (WeekdaysFrom(date(2026, 10, 5), (1, 4)), WeekdaysFrom(date(2026, 11, 2), (2, 5)))
ZOE = TraineeFile(
    Trainee(
        "Zoë",
        birth_year=1991,
        clearances=(Clearance(date(2026, 8, 3), "her doctor", "no overhead work"),),
        notes="left knee",
    ),
    body_masses=(WeighedOn(START, 61_500), WeighedOn(date(2026, 9, 14), 62_000)),
    equipment=(OwnedFrom(START, Equipment(bars=(Bar("bar", 20_000),), discs=(Discs(5_000, 4),))),),
    programs=(ProgramFrom(TWO_DAYS.name, START, (0, 3), date(2026, 12, 20), MOVES),),
    lines=(
        LineFile(
            "back-squat",
            "heavy",
            starts=(LineStart(START, Position(55_000, 6, 3)),),
            overrides=(Override(date(2026, 9, 7), Position(57_500, 6, 3), "felt light"),),
        ),
    ),
    goals=(
        GoalFile("back-squat", GoalKind.ONE_REP_MAX, "heavy", 75_000, reps=5, note="for the race"),
        GoalFile("plank", GoalKind.HOLD, value=90, by=date(2027, 3, 13)),
    ),
    deloads=(EasyDays(date(2026, 9, 21), date(2026, 9, 27), note="a regatta"),),
    absences=(
        Away(date(2026, 10, 12), date(2026, 10, 18), AbsenceKind.ILLNESS, "a cold"),
        Away(date(2026, 12, 1)),
    ),
)


@pytest.fixture
def store() -> Iterator[Repository]:
    """The shipped exercises and a program of two days."""
    with closing(Database.open(MEMORY)) as database:
        repository = Repository(database)
        repository.sync_catalogue(load_catalogue())
        repository.save(TWO_DAYS)
        yield repository


def held(store: Repository, name: str) -> TraineeFile:
    """What is on record of somebody, as a file would say it; lines in the order of their names."""
    trainee = store.trainee_named(name)
    assert trainee is not None
    assert trainee.id is not None
    who = trainee.id
    programs = {one.id: one.name for one in store.programs()}
    lines = {one.id: one for one in store.lines(who)}
    return TraineeFile(
        replace(trainee, id=None, revision=0),
        tuple(WeighedOn(one.day, one.mass_g) for one in store.body_masses(who)),
        tuple(OwnedFrom(one.day, one.equipment) for one in store.equipment(who)),
        tuple(
            ProgramFrom(programs[one.program_id], one.start, one.weekdays, one.ended, one.moves)
            for one in store.assignments(who)
        ),
        tuple(
            LineFile(one.exercise, one.name, one.revisions, one.starts, one.overrides)
            for one in lines.values()
        ),
        tuple(
            GoalFile(
                lines[one.line_id].exercise,
                one.kind,
                lines[one.line_id].name,
                one.value,
                one.variation,
                one.by,
                one.note,
                one.reps,
            )
            for one in store.goals(who)
        ),
        tuple(
            EasyDays(one.first, one.last, one.sets_factor, one.load_percent, one.planned, one.note)
            for one in store.deloads(who)
        ),
        tuple(Away(one.first, one.last, one.kind, one.note) for one in store.absences(who)),
    )


def test_all_that_a_file_says_of_somebody_is_taken_in(store: Repository, tmp_path: Path) -> None:
    (tmp_path / "zoe.json").write_bytes(trainees_bytes(TraineesFile((ZOE,))))
    take_trainees(store, read_trainees(tmp_path / "zoe.json"))
    found = held(store, "Zoë")
    # The program brings its other lines, and the line of a goal that had none.
    named = [one for one in found.lines if (one.exercise, one.name) == ("back-squat", "heavy")]
    assert replace(found, lines=tuple(named)) == ZOE
    (given,) = store.assignments(1)
    assert given.weekdays_on(date(2026, 10, 4)) == (0, 3)
    assert given.weekdays_on(date(2026, 10, 5)) == (1, 4)
    assert given.weekdays_on(date(2026, 12, 1)) == (2, 5)


def test_moves_that_cannot_be_are_refused_whole(store: Repository) -> None:
    before_it_began = (WeekdaysFrom(date(2026, 8, 1), (1, 4)),)
    (program,) = ZOE.programs
    wrong = replace(ZOE, programs=(replace(program, moves=before_it_began),))
    with pytest.raises(InvalidRecord):
        take_trainees(store, TraineesFile((wrong,)))
    assert store.trainees() == ()


def test_a_file_without_moves_is_read_as_before(tmp_path: Path) -> None:
    (tmp_path / "old.json").write_text(
        '{"schema": "rungwise trainees", "version": 1, "trainees": [{"trainee": {"name": "Bow"},'
        ' "programs": [{"program": "Two days", "start": "2026-08-10"}]}]}',
        encoding="utf-8",
    )
    (bow,) = read_trainees(tmp_path / "old.json").trainees
    assert bow.programs == (ProgramFrom("Two days", START),)


given_programs = st.builds(
    lambda one: ProgramFrom("Two days", one.start, one.weekdays, one.ended, one.moves),
    strategies.assignments(1, 1),
)
goal_files = st.builds(
    lambda one: GoalFile(
        "back-squat", one.kind, "heavy", one.value, one.variation, one.by, one.note, one.reps
    ),
    strategies.goals(1, 1),
)


@given(
    st.builds(
        TraineeFile,
        strategies.trainees,
        programs=strategies.tuples_of(given_programs),
        goals=strategies.tuples_of(goal_files),
    )
)
def test_what_is_written_is_read_the_same(
    tmp_path_factory: pytest.TempPathFactory, one: TraineeFile
) -> None:
    path = tmp_path_factory.mktemp("trainees") / "trainees.json"
    path.write_bytes(trainees_bytes(TraineesFile((one,))))
    assert read_trainees(path).trainees == (one,)
