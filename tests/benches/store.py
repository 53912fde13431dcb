"""From the data file to an answer: targets and charts of years of sessions, against bare SQLite."""

from __future__ import annotations

import sqlite3
import tempfile
from collections.abc import Iterator
from datetime import timedelta
from pathlib import Path

from db.database import Database
from db.repository import Repository
from desktop.planning.days import day_plan
from desktop.planning.progress import progress
from desktop.planning.roster import roster
from tests.benches.measure import Line, medians
from tests.benches.people import TODAY, many_trainees, one_for_years


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

        path = many_trainees(Path(folder) / "many.db")
        database = Database.open(path)
        repository = Repository(database)
        raw = sqlite3.connect(path)
        desk, floor = medians(1, lambda: roster(repository, TODAY), all_sets)
        yield Line("desk of 300 trainees x 1 year, all cautions", desk, floor, "raw SELECT")
        raw.close()
        database.close()
