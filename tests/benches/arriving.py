"""Files that come in: a log of 100,000 sets read, checked and written, by either way in, and taken
out again; beside Python's csv module reading the same file.
"""

from __future__ import annotations

import csv
import shutil
import tempfile
from collections.abc import Iterator
from contextlib import closing, contextmanager
from dataclasses import replace
from datetime import date, timedelta
from pathlib import Path

from PySide6.QtWidgets import QApplication

from db.changes import Changes
from db.database import Database
from db.log_export import write_log
from db.log_files import read_log
from db.log_import import plan_import
from db.log_saving import carry_out
from db.repository import Repository
from db.steps import finished
from desktop.planning.arriving_files import ArrivingTable, opening, reading
from desktop.planning.log_prospect import Decisions, foreseeing
from desktop.planning.taking_in import Before, taking_in
from desktop.training.program import Line, Program
from desktop.training.trainee import BodyMass, Trainee
from tests.benches.measure import Line as Figure
from tests.benches.measure import Taken, growth, taken, taken_afresh
from tests.benches.people import LIFTS, TODAY, opened, session_of_week
from views.record import Record

TIMES_CSV = 25.0
PEOPLE, SETS_A_WEEK = 20, 54
WEEKS = (1, 10, 93)
ROUNDS = 3


def lines() -> Iterator[Figure]:
    """Logs as this program writes them, of 1,000 to 100,000 sets."""
    application = QApplication.instance() or QApplication([])
    assert isinstance(application, QApplication)
    sizes = [PEOPLE * SETS_A_WEEK * weeks for weeks in WEEKS]
    typed: list[float] = []
    shown: list[float] = []
    with tempfile.TemporaryDirectory() as folder:
        room = _Room(Path(folder))
        for weeks in WEEKS:
            log = room.log(weeks)
            by_line, by_window, floor = _ways_in(room, log)
            typed.append(by_line.cpu)
            shown.append(by_window.cpu)
        name = f"import of {sizes[-1]:,} sets"
        csv_name = "csv module reads the same file"
        yield Figure(f"{name}, command line", by_line.cpu, floor.cpu, csv_name, goal=TIMES_CSV)
        yield Figure(f"{name}, window", by_window.cpu, floor.cpu, csv_name, goal=TIMES_CSV)
        yield growth("import by the command line, by sets", sizes, typed)
        yield growth("import by the window, by sets", sizes, shown)
        with room.fresh() as repository:
            yield from _again_and_back(repository, log, name)


def _ways_in(room: _Room, log: Path) -> list[Taken]:
    """What each way takes, and the csv module that only reads."""
    return taken_afresh(
        ROUNDS,
        room.fresh,
        lambda repository: _by_command_line(repository, log),
        lambda repository: _by_window(repository, log),
        lambda _repository: _by_csv(log),
    )


def _again_and_back(repository: Repository, log: Path, name: str) -> Iterator[Figure]:
    """The log comes a second time, and is undone and done again."""
    record = Record(repository)
    changes, before = _by_window(repository, log)
    record.took("The log", changes, before)
    (again,) = taken(1, lambda: plan_import(repository, read_log(log)))
    yield Figure(f"{name} a second time: all found to be there", again.cpu)

    def back_and_forth() -> None:
        record.undo_stack.undo()
        assert not repository.trainees(), "not everything was undone"
        record.undo_stack.redo()
        assert len(repository.trainees()) == PEOPLE

    (undone,) = taken(2, back_and_forth)
    yield Figure(f"{name} undone and done again", undone.cpu)


def _by_command_line(repository: Repository, log: Path) -> None:
    plan = plan_import(repository, read_log(log, latest=date.max))
    result = carry_out(repository, plan)
    assert not plan.problems
    assert result.sets >= 1_000


def _by_window(repository: Repository, log: Path) -> tuple[Changes, Before]:
    arriving = finished(opening(log, repository))
    assert isinstance(arriving, ArrivingTable)
    mapped = finished(reading(arriving, TODAY))
    prospect = finished(foreseeing(repository, mapped, Decisions()))
    assert not prospect.plan.problems
    return finished(taking_in(repository, prospect.plan))


def _by_csv(log: Path) -> None:
    with log.open(encoding="utf-8-sig", newline="") as stream:
        for _cells in csv.reader(stream):
            pass


class _Room:
    """A folder with empty data files that have the catalogue, and logs."""

    def __init__(self, folder: Path) -> None:
        self._folder = folder
        self._empty = folder / "empty.db"
        repository = opened(self._empty)
        self._program = repository.save(Program("Plain")).saved[0].id
        repository.database.close()
        self._made = 0

    @contextmanager
    def fresh(self) -> Iterator[Repository]:
        """An empty data file, open."""
        self._made += 1
        path = self._folder / f"{self._made}.db"
        shutil.copy(self._empty, path)
        with closing(Database.open(path)) as database:
            yield Repository(database)

    def log(self, weeks: int) -> Path:
        """A log of so many weeks, written by this program."""
        path = self._folder / f"{weeks}.csv"
        first = TODAY - timedelta(weeks=weeks, days=TODAY.weekday())
        with self.fresh() as repository:
            for number in range(PEOPLE):
                who = repository.save(Trainee(f"Seat {number + 1}")).saved[0].id
                days = [first + timedelta(weeks=week) for week in range(weeks)]
                repository.save(*(BodyMass(who, day, 70_000 + 100 * number) for day in days))
                lines = list(repository.save(*(Line(who, key) for key in LIFTS)).saved)
                repository.save(
                    *(
                        replace(
                            session_of_week(who, day + timedelta(days=after), lines, week + number),
                            program_id=self._program,
                            week=week + 1,
                            day_name=name,
                        )
                        for week, day in enumerate(days)
                        for after, name in ((0, "Monday"), (2, "Wednesday"), (4, "Friday"))
                    )
                )
            write_log(repository, path, repository.trainees())
        return path
