"""From the data file to an answer: targets and charts of years of sessions, against bare SQLite."""

from __future__ import annotations

import sqlite3
import tempfile
from collections.abc import Callable, Iterator
from contextlib import closing
from datetime import timedelta
from pathlib import Path

from db.database import Database
from db.repository import Repository
from desktop.planning.days import day_plan
from desktop.planning.desk import by_need, draw_up, kept_rows
from desktop.planning.history import read_library
from desktop.planning.progress import progress
from desktop.planning.roster import roster
from tests.benches.measure import Line, growth, medians, taken, twice
from tests.benches.people import TODAY, draw_up_all, many_trainees, one_for_years
from views.caution_texts import roster_line
from views.desk_cells import cells_of

GOAL_DESK_MS = 150.0
SHOWN = 40
PEOPLE = (3, 30, 300)


def lines() -> Iterator[Line]:
    """Targets and chart of one trainee with three years, and the desk of 300 people."""
    with tempfile.TemporaryDirectory() as folder:
        path = one_for_years(Path(folder) / "years.db", 3)
        database = Database.open(path)
        repository = Repository(database)
        raw = sqlite3.connect(path)
        trainee = repository.trainees()[0]
        assert trainee.id is not None
        line_id = repository.lines(trainee.id)[0].id
        assert line_id is not None
        monday = TODAY + timedelta(days=7 - TODAY.weekday())

        def all_sets() -> int:
            return len(raw.execute("SELECT * FROM set_done").fetchall())

        targets, floor = medians(5, lambda: day_plan(repository, trainee.id or 0, monday), all_sets)
        yield Line("targets of one trainee, 3 years", targets, floor, "raw SELECT of all sets")
        chart, floor = medians(5, lambda: progress(repository, line_id, TODAY), all_sets)
        yield Line("data of a chart, 3 years", chart, floor, "raw SELECT of all sets")
        raw.close()
        database.close()

        few: list[float] = []
        for trainees in PEOPLE[:-1]:
            path = many_trainees(Path(folder) / f"{trainees}.db", trainees)
            draw_up_all(path)
            with closing(Database.open(path)) as database:
                few += [each.cpu for each in taken(7, _opened(Repository(database)))]
        path = many_trainees(Path(folder) / "many.db", PEOPLE[-1])
        yield from _desk(path, few)


def _opened(repository: Repository) -> Callable[[], int]:
    """Opens the desk: everybody's row, sorted; the words of the roster, and of the rows that a
    screen shows.
    """

    def opened() -> int:
        library = read_library(repository)
        rows, missing = kept_rows(repository, library, TODAY)
        assert not missing
        ordered = by_need(rows.values())
        lines = [roster_line(row.entry) for row in ordered]
        cells = [cells_of(row, TODAY, library.limits) for row in ordered[:SHOWN]]
        return len(lines) + len(cells)

    return opened


def _desk(path: Path, few: list[float]) -> Iterator[Line]:
    """The desk of 300 people: from kept briefs, as it opens, and from every set on record. What
    ``few`` of them take tells how it grows.
    """
    database = Database.open(path)
    repository = Repository(database)
    raw = sqlite3.connect(path)

    def all_sets() -> int:
        return len(raw.execute("SELECT * FROM set_done").fetchall())

    def sets_added_up() -> int:
        query = "SELECT line_id, day, max(load_g), sum(reps) FROM set_done GROUP BY line_id, day"
        return len(raw.execute(query).fetchall())

    library = read_library(repository)
    people = iter(repository.trainee_ids())
    one_ms, _ = medians(9, lambda: draw_up(repository, library, next(people), TODAY), lambda: None)
    yield Line("brief of one of 300 trainees drawn up after a write", one_ms)
    whole, selected = medians(1, lambda: roster(repository, TODAY), all_sets)
    yield Line("desk of 300 trainees x 1 year, from every set", whole, selected, "raw SELECT")
    draw_up_all(path)
    desk, floor, added_up = taken(7, _opened(repository), all_sets, sets_added_up)
    yield from twice(
        "desk of 300 trainees x 1 year, opened", desk, added_up, "raw GROUP BY by line and day",
        GOAL_DESK_MS,
    )  # fmt: skip
    yield Line("the same against reading all sets: processor", desk.cpu, floor.cpu, "raw SELECT")
    yield growth("desk opened, by trainees", PEOPLE, [*few, desk.cpu])
    raw.close()
    database.close()
