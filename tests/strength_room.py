"""An invented strength room: one rower, one program of eight weeks, sessions done as asked.

Nobody in it exists. It stands on a real data file, so that planning is tested on what is stored.
"""

from __future__ import annotations

import shutil
from collections.abc import Callable, Iterator
from contextlib import closing, contextmanager
from dataclasses import dataclass, replace
from datetime import date, timedelta
from pathlib import Path
from typing import TypeVar

from db.database import Database
from db.repository import Repository
from desktop.catalogue import load_catalogue
from desktop.planning.assignments import assign
from desktop.planning.days import day_plan
from desktop.training.equipment import Bar, Discs, Equipment, Height, Place
from desktop.training.position import (
    Follow,
    Position,
    ProgressionRule,
    Variable,
    VariableRange,
)
from desktop.training.program import Line, Phase, PhasePurpose, Program, Slot, TrainingDay
from desktop.training.session import AskedSet, LineDone, Session, SetDone
from desktop.training.trainee import BodyMass, EquipmentFrom, Trainee

MONDAY = date(2026, 9, 7)
DAY = timedelta(days=1)
WEEK = timedelta(days=7)

REPS = VariableRange(Variable.REPS, 8, 12)
LOAD = VariableRange(Variable.LOAD, increment=2500)
DOUBLE = ProgressionRule((REPS, LOAD))
LINEAR = ProgressionRule((LOAD,))
BODYWEIGHT = ProgressionRule((REPS, VariableRange(Variable.VARIATION)))
HOLDING = ProgressionRule((VariableRange(Variable.HOLD, 10, 30, 5),))
LIGHT = replace(DOUBLE, follow=Follow("", 80))

SQUAT = Slot("back-squat", DOUBLE, Position(60_000, reps=8, sets=3))
LIGHT_SQUAT = Slot("back-squat", LIGHT, Position(40_000, reps=8, sets=2), line_name="light")
PUSH_UP = Slot("push-up", BODYWEIGHT, Position(reps=8, sets=3, variation="hands-450"))
BENCH = Slot("bench-press", LINEAR, Position(40_000, reps=5, sets=3))
L_SIT = Slot("l-sit", HOLDING, Position(hold_s=10, sets=3, variation="tuck"))

PROGRAM = Program(
    "Winter strength",
    (
        Phase(
            "Base",
            4,
            (
                TrainingDay("squat and push", (SQUAT, PUSH_UP), weekday=0),
                TrainingDay("bench", (BENCH, L_SIT), weekday=2),
                TrainingDay("light", (LIGHT_SQUAT,), weekday=4),
            ),
        ),
        Phase("Easy", 1, (TrainingDay("squat", (SQUAT,), weekday=0),), PhasePurpose.DELOAD),
        Phase(
            "Heavy",
            3,
            (TrainingDay("squat, heavy", (replace(SQUAT, rule=LINEAR),), weekday=0),),
        ),
    ),
)

OWNED = Equipment(
    bars=(Bar("bar", 20_000),),
    discs=(Discs(20_000, 4), Discs(10_000, 2), Discs(5_000, 2), Discs(2_500, 2), Discs(1_250, 2)),
    boxes=(Height("chair", 450), Height("stair", 180)),
    places=(Place.BENCH, Place.PARALLEL_BARS),
)

KEYS = ("back-squat", "push-up", "bench-press", "l-sit")

Doing = Callable[[AskedSet], SetDone]
Record = TypeVar("Record")


@dataclass(frozen=True)
class Room:
    """The data file and who trains in it."""

    repository: Repository
    trainee_id: int
    program_id: int

    def line(self, exercise: str, name: str = "") -> Line:
        line = self.repository.line_of(self.trainee_id, exercise, name)
        assert line is not None
        return line

    def line_id(self, exercise: str, name: str = "") -> int:
        line_id = self.line(exercise, name).id
        assert line_id is not None
        return line_id

    def save(self, record: Record) -> Record:
        saved: Record = self.repository.save(record).saved[0]
        return saved

    def update_trainee(self, **fields: object) -> Trainee:
        trainee = self.repository.trainee(self.trainee_id)
        return self.save(replace(trainee, **fields))  # type: ignore[arg-type]

    def train(self, day: date, doing: Doing | None = None, **fields: object) -> Session:
        """Save the session that is planned on ``day``, done as asked or as ``doing`` says."""
        plan = day_plan(self.repository, self.trainee_id, day)
        assert plan.slots, plan.why_empty
        lines = tuple(
            LineDone(
                slot.line.id or 0,
                slot.exercise.key,
                slot.target.sets,
                tuple(map(doing or as_asked, slot.target.sets)),
                deload=slot.target.deload,
            )
            for slot in plan.slots
        )
        session = Session(
            self.trainee_id,
            day,
            lines,
            program_id=self.program_id,
            week=plan.week,
            day_name=plan.training_day.name if plan.training_day else "",
        )
        return self.save(replace(session, **fields))  # type: ignore[arg-type]

    def train_weeks(self, weeks: int, first: date = MONDAY, doing: Doing | None = None) -> None:
        """Every planned day of so many weeks."""
        for ahead in range(7 * weeks):
            day = first + ahead * DAY
            if day_plan(self.repository, self.trainee_id, day).slots:
                self.train(day, doing)


def closed(room: Room, folder: Path) -> Path:
    """The room's file, closed, for tests that each take a copy."""
    room.repository.database.copy_to(folder / "copy.db")
    room.repository.database.close()
    return folder / "copy.db"


@contextmanager
def copy_of(trained: Path, folder: Path) -> Iterator[Room]:
    """A copy of a closed room, open in ``folder``."""
    with closing(Database.open(Path(shutil.copy(trained, folder / "trained.db")))) as database:
        yield Room(Repository(database), 1, 1)


def as_asked(asked: AskedSet) -> SetDone:
    """The set as it was asked, with two repetitions in reserve."""
    return SetDone(asked.load_g, asked.reps, asked.seconds, asked.variation, rir=2.0)


def two_short(asked: AskedSet) -> SetDone:
    """A miss: two repetitions or seconds fewer."""
    done = as_asked(asked)
    if done.reps is not None:
        return replace(done, reps=done.reps - 2, rir=0.0)
    return replace(done, seconds=(done.seconds or 0) - 2)


def open_room(folder: Path, program: Program = PROGRAM, weekdays: tuple[int, ...] = ()) -> Room:
    """A data file with the rower, what she owns and weighs, and the program from MONDAY on."""
    repository = Repository(Database.open(folder / "room.db"))
    repository.sync_catalogue([one for one in load_catalogue() if one.key in KEYS])
    rower = Trainee(
        "Seat 2",
        birth_year=1996,
        stature_mm=1750,
        weekdays=(0, 2, 4),
        screened=MONDAY - WEEK,
        screening_clear=True,
    )
    trainee_id = repository.save(rower).saved[0].id
    program_id = repository.save(program).saved[0].id
    repository.save(
        BodyMass(trainee_id, MONDAY - WEEK, 70_000), EquipmentFrom(trainee_id, MONDAY - WEEK, OWNED)
    )
    given = assign(repository, trainee_id, program_id, MONDAY, weekdays)
    repository.save(*given.aggregates)
    return Room(repository, trainee_id, program_id)
