"""A small invented rowing club in a data file: seats of a boat, not people."""

from __future__ import annotations

import shutil
from collections.abc import Iterator
from contextlib import closing, contextmanager
from dataclasses import replace
from datetime import date, timedelta
from pathlib import Path

from db.database import Database
from db.repository import Repository
from desktop.catalogue import load_catalogue
from desktop.planning.assignments import assign
from desktop.planning.days import day_plan
from desktop.training.equipment import Bar, Discs, Equipment, Height, Place
from desktop.training.position import Position, ProgressionRule, Variable, VariableRange
from desktop.training.program import Phase, PhasePurpose, Program, Slot, TrainingDay
from desktop.training.quantities import Unit
from desktop.training.session import AskedSet, LineDone, Session, SetDone
from desktop.training.trainee import BodyMass, EquipmentFrom, Trainee

TODAY = date(2026, 11, 26)  # a Thursday
_START = date(2026, 10, 5)
_DAY = timedelta(days=1)

_REPS = VariableRange(Variable.REPS, 8, 12)
_DOUBLE = ProgressionRule((_REPS, VariableRange(Variable.LOAD, increment=2500)), target_rir=2)
_BODYWEIGHT = ProgressionRule((_REPS, VariableRange(Variable.VARIATION)))
_HOLD = ProgressionRule(
    (VariableRange(Variable.HOLD, 15, 30, 5), VariableRange(Variable.VARIATION))
)
_SLOTS = (
    Slot("back-squat", _DOUBLE, Position(60_000, reps=8, sets=3), rest_s=150),
    Slot("push-up", _BODYWEIGHT, Position(reps=8, sets=3, variation="hands-450"), rest_s=90),
    Slot("bench-press", _DOUBLE, Position(40_000, reps=8, sets=3), rest_s=120),
    Slot("l-sit", _HOLD, Position(hold_s=15, sets=4, variation="tuck"), rest_s=60),
)
PROGRAM = Program(
    "Winter strength",
    (
        Phase(
            "Base",
            5,
            (
                TrainingDay("squat and push", _SLOTS[:2], weekday=0),
                TrainingDay("press and trunk", _SLOTS[2:], weekday=3),
            ),
        ),
        Phase("Easy", 1, (TrainingDay("squat", _SLOTS[:1], weekday=0),), PhasePurpose.DELOAD),
        Phase(
            "Build",
            6,
            (
                TrainingDay("squat and push", _SLOTS[:2], weekday=0),
                TrainingDay("press and trunk", _SLOTS[2:], weekday=3),
            ),
        ),
    ),
    about="Invented for tests.",
)
_OWNED = Equipment(
    bars=(Bar("bar", 20_000),),
    discs=(Discs(20_000, 4), Discs(10_000, 2), Discs(5_000, 2), Discs(2_500, 2), Discs(1_250, 2)),
    boxes=(Height("chair", 450), Height("stair", 180)),
    places=(Place.PARALLEL_BARS, Place.BENCH),
)
_SEATS = (
    Trainee("Bow", 1996, stature_mm=1750, weekdays=(0, 3)),
    Trainee("Seat 2", 1999, stature_mm=1820, weekdays=(0, 3), unit=Unit.LB),
    Trainee("Seat 3", 1988, stature_mm=1690, weekdays=(1, 4)),
    Trainee("Stroke", 2001, stature_mm=1780, weekdays=(2, 5)),
    Trainee("Cox", 2010, stature_mm=1600),
)


def open_club(folder: Path, *, weeks: int = 7) -> Repository:
    """A new data file with five seats; four follow the program, trained for so many weeks."""
    repository = Repository(Database.open(folder / "club.db"))
    used = {slot.exercise for slot in _SLOTS}
    repository.sync_catalogue([each for each in load_catalogue() if each.key in used])
    (program,) = repository.save(PROGRAM).saved
    for place, seat in enumerate(_SEATS):
        screened = replace(seat, screened=_START - 7 * _DAY, screening_clear=True)
        (trainee,) = repository.save(screened).saved
        repository.save(
            BodyMass(trainee.id, _START - _DAY, 66_000 + 3_000 * place),
            EquipmentFrom(trainee.id, _START - _DAY, _OWNED),
        )
        if place < 4:
            given = assign(repository, trainee.id, program.id, _START, seat.weekdays)
            repository.save(*given.aggregates)
            _train(repository, trainee.id, weeks if place != 3 else 1, short=place == 1)
    return repository


def closed_club(folder: Path, *, weeks: int = 7) -> Path:
    """The club's file, closed, for tests that each take a copy."""
    open_club(folder, weeks=weeks).database.close()
    return folder / "club.db"


@contextmanager
def copy_of(club: Path, folder: Path) -> Iterator[Repository]:
    """A copy of a closed club, open in ``folder``."""
    with closing(Database.open(Path(shutil.copy(club, folder / "club.db")))) as database:
        yield Repository(database)


def _train(repository: Repository, trainee_id: int, weeks: int, *, short: bool) -> None:
    for ahead in range(7 * weeks):
        day = _START + ahead * _DAY
        plan = day_plan(repository, trainee_id, day)
        if not plan.slots:
            continue
        lines = tuple(
            LineDone(
                slot.line.id or 0,
                slot.exercise.key,
                slot.target.sets,
                tuple(_done(asked, short=short) for asked in slot.target.sets),
                deload=slot.target.deload,
            )
            for slot in plan.slots
        )
        repository.save(
            Session(trainee_id, day, lines, effort=7, minutes=55, week=plan.week,
                    program_id=plan.program.id if plan.program else None,
                    day_name=plan.training_day.name if plan.training_day else "")
        )  # fmt: skip


def _done(asked: AskedSet, *, short: bool) -> SetDone:
    done = SetDone(asked.load_g, asked.reps, asked.seconds, asked.variation, rir=2.0)
    if short and done.reps is not None:
        return replace(done, reps=max(1, done.reps - 1), rir=0.0, pain=2)
    return done
