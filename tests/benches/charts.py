"""Charts: ten years on the screen, moving about in them, and counting over a million sets.

Floors are the same rows read and added up by SQLite alone; where pandas is installed it is a peer.
"""

from __future__ import annotations

import itertools
import sqlite3
import tempfile
from collections.abc import Callable, Iterator
from contextlib import closing
from dataclasses import replace
from datetime import date, timedelta
from importlib import import_module
from importlib.util import find_spec
from pathlib import Path
from typing import Any

import numpy as np
from PySide6.QtWidgets import QApplication

from db.database import Database
from db.repository import Repository
from db.series import weekly_volume_of_all, weekly_volume_of_line
from desktop.planning.best_sets import BestSet
from desktop.training.program import Line
from desktop.training.quantities import Unit
from desktop.training.session import SetDone
from desktop.training.trainee import Trainee
from tests.benches.measure import Line as Figure
from tests.benches.measure import growth, medians, taken, twice
from tests.benches.people import LIFTS, TODAY, one_for_years, opened
from views.line_plot import LinePlot
from views.measures import Shown
from views.progress_area import ProgressArea
from views.progress_series import Series, Shape, Spot
from views.record import Record
from views.theme import Scheme, Theme

FIRST_PAINT, MOVE, EDITED = 50, 16, 150
EXERCISE, WHOLE_BASE = 1.5, 1.2
SETS = (10_000, 100_000, 1_000_000)
POINTS = 5_000


def lines() -> Iterator[Figure]:
    """Opening ten years, panning and zooming, statistics of a large file."""
    application = QApplication.instance() or QApplication([])
    assert isinstance(application, QApplication)
    with tempfile.TemporaryDirectory() as folder:
        yield from _ten_years(one_for_years(Path(folder) / "ten.db", 10), application)
        yield from _moving(application)
        yield from _million(Path(folder))


def _ten_years(path: Path, application: QApplication) -> Iterator[Figure]:
    with closing(Database.open(path)) as database, closing(sqlite3.connect(path)) as raw:
        repository = Repository(database)
        trainee = repository.trainees()[0]
        line_id = repository.lines(trainee.id or 0)[0].id
        theme = Theme(Scheme.LIGHT, calm=True)
        theme.apply(application)
        area = ProgressArea(Record(repository), TODAY, theme)
        area.resize(1200, 800)
        area.show_trainee(trainee.id)
        area.show()
        _settle(application)  # the chart library is loaded from here on

        def open_chart() -> None:
            area.refresh()
            _settle(application)

        first_set = itertools.count()

        def edit_a_set() -> None:
            session = repository.sessions(trainee.id or 0, TODAY - timedelta(days=7))[-1]
            part = session.lines[0]
            more = replace(part.sets[0], reps=5 + next(first_set) % 3)
            changed = replace(part, sets=(more, *part.sets[1:]))
            area.record.save("A set", replace(session, lines=(changed, *session.lines[1:])))
            _settle(application)

        def read_and_add() -> object:
            rows = raw.execute(
                "SELECT d.session_id, d.line_place, d.place, d.day, d.load_g, d.reps, d.rir,"
                " d.variation, d.warm_up, d.pain, l.deload, l.test FROM set_done d"
                " JOIN line_done l ON l.session_id = d.session_id AND l.place = d.line_place"
                " WHERE d.line_id = ? ORDER BY d.day",
                (line_id,),
            ).fetchall()
            weeks = raw.execute(
                "SELECT day / 7, count(*), sum(load_g * reps), max(load_g) FROM set_done"
                " WHERE line_id = ? AND NOT warm_up GROUP BY day / 7",
                (line_id,),
            ).fetchall()
            return rows, weeks

        shown, floor = taken(15, open_chart, read_and_add)
        yield from twice(
            "chart of 10 years (28,080 sets): read, trend, paint", shown, floor,
            "raw rows of the line read and added", FIRST_PAINT,
        )  # fmt: skip
        shown, floor = taken(7, edit_a_set, read_and_add)
        yield from twice(
            "a set of 10 years edited, until its trend is painted", shown, floor,
            "raw rows of the line read and added", EDITED,
        )  # fmt: skip
        area.hide()  # as behind the form in which sets are typed
        behind, _ = taken(7, edit_a_set, read_and_add)
        yield from twice("the same while the chart is not shown: what typing waits", behind)
        area.close()


def _moving(application: QApplication) -> Iterator[Figure]:
    plot = LinePlot(Theme(Scheme.LIGHT, calm=True))
    plot.resize(1100, 500)
    plot.show()
    plot.show_series(_long_series(), {}, 52)
    _settle(application)
    last = float(TODAY.toordinal())
    place = [0.0]

    def pan() -> None:
        place[0] += 9.0
        plot.show_days(last - 700 - place[0], last - 330 - place[0])
        _settle(application)

    def zoom() -> None:
        plot.zoom(0.98)
        _settle(application)

    def stand() -> None:
        plot.plot.item("disc").update()
        _settle(application)

    for name, move in (("pan by nine days", pan), ("zoom in", zoom)):
        moved, floor = taken(40, move, stand)
        title = f"{name}, {POINTS:,} points"
        yield from twice(title, moved, floor, "the same points painted where they stand", MOVE)
    plot.close()


def _long_series() -> Series:
    last = TODAY.toordinal()
    best = BestSet(TODAY, None, 60_000.0, 5, SetDone(60_000, 5))
    shapes = tuple(Shape)
    spots = tuple(
        Spot(last - POINTS + each, 80 + each / 200 + each * 7919 % 13, shapes[each % 4], best)
        for each in range(POINTS)
    )
    records = tuple(each % 50 == 0 for each in range(POINTS))
    return Series(Shown.ESTIMATE, Unit.KG, last, False, spots, records=records)


def _million(folder: Path) -> Iterator[Figure]:
    """Counting by week in files of 10,000 sets to a million."""
    lines: list[float] = []
    wholes: list[float] = []
    for sets in SETS:
        path = folder / f"{sets}.db"
        _fill(path, sets)
        with closing(Database.open(path)) as database, closing(sqlite3.connect(path)) as raw:
            line, bare = medians(25, *_counting_a_line(database, raw))
            whole, floor, *others = medians(3, *_counting_all(database, raw))
        lines.append(line)
        wholes.append(whole)
    yield Figure(
        f"weeks of one exercise, {SETS[-1]:,} sets", line, bare, "bare SQL, covering index",
        goal=EXERCISE,
    )  # fmt: skip
    yield Figure(
        f"weekly volume of all, {SETS[-1]:,} sets", whole, floor, "numpy load of the columns",
        goal=WHOLE_BASE,
    )  # fmt: skip
    for peer in others:
        yield Figure("the same against pandas", whole, peer, "pandas read and grouped")
    yield growth("weeks of one exercise, by sets in the file", SETS, lines)
    yield growth("weekly volume of all, by sets in the file", SETS, wholes)


_WEEKS_OF_LINE = (
    "SELECT (day - 1) / 7, exercise, count(*), sum(reps), sum(seconds), sum(load_g * reps)"
    " FROM set_done INDEXED BY set_of_line WHERE line_id = ? AND warm_up = 0"
    " GROUP BY (day - 1) / 7, exercise"
)


def _counting_a_line(database: Database, raw: sqlite3.Connection) -> Iterator[Callable[[], object]]:
    """One line's weeks, and the bare query by the very index that the program counts by."""
    yield lambda: weekly_volume_of_line(database, 7)
    yield lambda: raw.execute(_WEEKS_OF_LINE, (7,)).fetchall()


def _counting_all(database: Database, raw: sqlite3.Connection) -> Iterator[Callable[[], object]]:
    """Weekly volume of everybody, its floor, and the peer where there is one."""
    columns = "SELECT day, load_g, coalesce(reps, 0), warm_up FROM set_done"
    yield lambda: weekly_volume_of_all(database)
    yield lambda: np.fromiter(raw.execute(columns), dtype="i8,i8,i8,?", count=-1)
    if find_spec("pandas") is not None:
        pandas: Any = import_module("pandas")
        yield lambda: _by_week(pandas, raw, columns)


def _by_week(pandas: Any, raw: sqlite3.Connection, sql: str) -> object:
    frame = pandas.read_sql(sql, raw)
    frame = frame[frame["warm_up"] == 0]
    return (frame["load_g"] * frame.iloc[:, 2]).groupby((frame["day"] - 1) // 7).sum()


def _fill(path: Path, sets: int) -> None:
    """A hundred people, ten years each, a million sets: by SQL alone, which takes seconds."""
    repository = opened(path)
    people = repository.save(*(Trainee(f"Seat {who + 1}") for who in range(100))).saved
    keys = LIFTS[:5]
    repository.save(*(Line(one.id or 0, key) for one in people for key in keys))
    repository.database.close()
    first = (date.today() - timedelta(weeks=520)).toordinal()
    with closing(sqlite3.connect(path)) as raw:
        raw.execute(
            "WITH RECURSIVE n (i) AS (SELECT 0 UNION ALL SELECT i + 1 FROM n WHERE i < 66666)"
            " INSERT INTO session (id, revision, trainee_id, day, entry, note, red_flag, day_name)"
            f" SELECT i + 1, 1, i % 100 + 1, {first} + i / 100 * 5, 0, '', 0, '' FROM n"
        )
        raw.execute(
            "WITH RECURSIVE p (i) AS (SELECT 0 UNION ALL SELECT i + 1 FROM p WHERE i < 4)"
            " INSERT INTO line_done (session_id, place, line_id, exercise, asked, deload, test,"
            " skipped, reason, note) SELECT s.id, p.i, l.id, l.exercise, '[]', 0, 0, 0, '', ''"
            " FROM session s, p JOIN line l ON l.id = (s.trainee_id - 1) * 5 + p.i + 1"
        )
        raw.execute(
            "WITH RECURSIVE p (i) AS (SELECT 0 UNION ALL SELECT i + 1 FROM p WHERE i < 2)"
            " INSERT INTO set_done (session_id, line_place, place, line_id, exercise, day, load_g,"
            " reps, rir, warm_up, pain, side, note) SELECT l.session_id, l.place, p.i, l.line_id,"
            " l.exercise, s.day, 60000 + s.id % 40 * 500, 5 + s.id % 6, 2.0, p.i = 0, 0, '', ''"
            f" FROM line_done l JOIN session s ON s.id = l.session_id, p LIMIT {sets}"
        )
        raw.commit()


def _settle(application: QApplication) -> None:
    for _ in range(3):
        application.processEvents()
