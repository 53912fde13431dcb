"""Data files of the benchmark: invented people with plain, regular training."""

from __future__ import annotations

from datetime import date, timedelta
from pathlib import Path

from db.database import Database
from db.repository import Repository
from desktop.catalogue import load_catalogue
from desktop.planning.assignments import assign
from desktop.planning.desk import draw_up
from desktop.planning.history import read_library
from desktop.training.equipment import Bar, Discs, Equipment
from desktop.training.position import Position, ProgressionRule, Variable, VariableRange
from desktop.training.program import Line, Phase, Program, Slot, TrainingDay
from desktop.training.session import AskedSet, LineDone, Session, SetDone
from desktop.training.trainee import BodyMass, EquipmentFrom, Trainee

TODAY = date.today()
RULE = ProgressionRule(
    (
        VariableRange(Variable.REPS, 6, 10),
        VariableRange(Variable.LOAD, increment=2_500),
    )
)
LIFTS = ("back-squat", "bench-press", "deadlift", "overhead-press", "bent-over-row", "front-squat")
GYM = Equipment(
    bars=(Bar("bar", 20_000),),
    discs=tuple(Discs(mass, 8) for mass in (20_000, 10_000, 5_000, 2_500, 1_250)),
)


def opened(path: Path) -> Repository:
    """A new data file with the catalogue."""
    repository = Repository(Database.open(path))
    repository.sync_catalogue(load_catalogue())
    return repository


def many_trainees(path: Path, trainees: int = 300, weeks: int = 52) -> Path:
    """``trainees`` people who trained twice a week for ``weeks`` weeks, and go on."""
    repository = opened(path)
    program = repository.save(_program(weeks + 12)).saved[0]
    for number in range(trainees):
        _add(repository, f"Seat {number + 1}", program, weeks, per_week=2)
    repository.database.close()
    return path


def draw_up_all(path: Path) -> None:
    """Draw up and keep everybody's brief, as the program does while its window stands idle."""
    repository = Repository(Database.open(path))
    library = read_library(repository)
    for trainee_id in repository.trainee_ids():
        draw_up(repository, library, trainee_id, TODAY)
    repository.database.close()


def one_for_years(path: Path, years: int, per_week: int = 3) -> Path:
    """One trainee with ``years`` of sessions of six lines with three sets each."""
    return one_for_weeks(path, 52 * years, per_week)


def one_for_weeks(path: Path, weeks: int, per_week: int = 3) -> Path:
    """One trainee with ``weeks`` of such sessions."""
    repository = opened(path)
    program = repository.save(_program(weeks + 12)).saved[0]
    _add(repository, "Seat 1", program, weeks, per_week=per_week)
    repository.database.close()
    return path


def _program(weeks: int) -> Program:
    slots = tuple(Slot(key, RULE, Position(60_000, 6, 3)) for key in LIFTS)
    days = tuple(TrainingDay(name, slots, at) for name, at in (("Monday", 0), ("Thursday", 3)))
    # A phase has 520 weeks at most.
    spans = [min(520, weeks - begun) for begun in range(0, weeks, 520)]
    return Program("Plain", tuple(Phase("All year", span, days) for span in spans))


def _add(repository: Repository, name: str, program: Program, weeks: int, per_week: int) -> None:
    first = TODAY - timedelta(weeks=weeks, days=TODAY.weekday())
    trainee = repository.save(
        Trainee(name, birth_year=1990, stature_mm=1_750, weekdays=(0, 3), screened=first)
    ).saved[0]
    repository.save(BodyMass(trainee.id, first, 75_000), EquipmentFrom(trainee.id, first, GYM))
    assert program.id is not None
    repository.save(*assign(repository, trainee.id, program.id, first).aggregates)
    lines = [line for line in repository.lines(trainee.id) if line.exercise in LIFTS]
    sessions = [
        session_of_week(trainee.id, first + timedelta(weeks=week, days=day), lines, week)
        for week in range(weeks)
        for day in (0, 2, 3, 5)[:per_week]
    ]
    repository.save(*sessions)


def session_of_week(trainee_id: int, day: date, lines: list[Line], week: int) -> Session:
    """Three sets of each line, as asked in a week (from 0) but now and then a repetition short."""
    load = 60_000 + 2_500 * (week // 5)
    reps = 6 + week % 5
    asked = tuple(AskedSet(load, reps) for _ in range(3))
    short = 1 if week % 7 == 3 else 0
    sets = tuple(SetDone(load, reps - (short if at == 2 else 0), rir=2.0) for at in range(3))
    done = tuple(LineDone(line.id or 0, line.exercise, asked, sets) for line in lines)
    return Session(trainee_id, day, done, effort=7, minutes=55)
