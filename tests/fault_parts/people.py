"""Data files to be harmed, and what must stand in them afterwards."""

from __future__ import annotations

from contextlib import closing
from datetime import date, timedelta
from pathlib import Path

from db.database import Database
from db.repository import Repository
from desktop.catalogue import load_catalogue
from desktop.training.program import Line
from desktop.training.session import LineDone, Session, SetDone
from desktop.training.trainee import BodyMass, Trainee

FIRST = date(2024, 1, 1)
NAME = "Zoë Müller-Ångström"
EXERCISE = "back-squat"


def data_file(path: Path, sessions: int = 0, others: int = 0) -> Path:
    """A closed data file: the catalogue, one trainee with a line, ``sessions``, ``others``."""
    with closing(Database.open(path)) as database:
        repository = Repository(database)
        with repository.transaction():
            repository.sync_catalogue(load_catalogue())
            trainee = repository.save(Trainee(NAME, notes="knee, left; " * 20)).saved[0]
            repository.save(Line(trainee.id, EXERCISE))
            repository.save(BodyMass(trainee.id, FIRST, 70_000))
            for number in range(sessions):
                repository.save(session(number))
            repository.save(*(Trainee(f"Other {n}", notes="n" * 400) for n in range(others)))
    return path


def session(number: int) -> Session:
    """The session of a number: three sets whose load says which it is."""
    sets = tuple(SetDone(20_000 + number, 8, rir=2.0, note=f"set {n}") for n in range(3))
    day = FIRST + timedelta(days=number)
    return Session(1, day, (LineDone(1, EXERCISE, sets=sets),), effort=7.0, minutes=50)


def numbers_in(path: Path) -> list[int]:
    """The numbers of the sessions in a file that has to be sound, each of them whole."""
    with closing(Database.open(path, create=False)) as database:
        problems = database.quick_check()
        assert not problems, f"{path.name} is damaged: {problems}"
        found = Repository(database).sessions(1)
    for one in found:
        number = (one.day - FIRST).days
        assert one.lines == session(number).lines, f"session {number} is not whole: {one}"
    return [(one.day - FIRST).days for one in found]
