"""Working sets added up by SQL into numpy arrays: for counts over years."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

import numpy as np
from numpy.typing import NDArray

from db.database import Database

WEEKS = np.dtype(
    [
        ("monday", np.int64),
        ("exercise", np.int64),
        ("sets", np.int64),
        ("reps", np.int64),
        ("seconds", np.int64),
        ("load_g_reps", np.int64),
    ]
)


# Day 1 is a Monday, so that whole weeks are whole sevens. The order is that of the groups, so that
# SQLite sorts once.
_SELECT_WEEKS = (
    "SELECT (d.day - 1) / 7, d.exercise, count(*), coalesce(sum(d.reps), 0),"
    " coalesce(sum(d.seconds), 0), coalesce(sum(d.load_g * d.reps), 0) FROM set_done d"
)
_WEEK_AND_EXERCISE = "(d.day - 1) / 7, d.exercise"
_BY_WEEK = f" AND d.warm_up = 0 GROUP BY {_WEEK_AND_EXERCISE} ORDER BY {_WEEK_AND_EXERCISE}"


@dataclass(frozen=True, slots=True)
class WeekSeries:
    """Working sets added up by week and exercise: an array of `WEEKS`, sorted by both; ``monday``
    is the ordinal of the week's first day, ``exercise`` the place in ``exercises``, ``load_g_reps``
    the sum of external load × repetitions.
    """

    weeks: NDArray[np.void]
    exercises: tuple[str, ...]


def weekly_volume_of_all(
    database: Database, first: date | None = None, last: date | None = None
) -> WeekSeries:
    """Everybody's working sets by week and exercise, archived trainees too."""
    sql = f"{_SELECT_WEEKS} WHERE d.day BETWEEN ? AND ?{_BY_WEEK}"
    return _weeks(database, sql, _days(first, last))


def weekly_volume_of_line(database: Database, line_id: int) -> WeekSeries:
    """One line's working sets by week (and by exercise, where another one stood in)."""
    return _weeks(database, f"{_SELECT_WEEKS} WHERE d.line_id = ?{_BY_WEEK}", (line_id,))


def _weeks(database: Database, sql: str, parameters: Sequence[object]) -> WeekSeries:
    rows = database.execute(sql, parameters)
    exercises = tuple(dict.fromkeys(row[1] for row in rows))
    places = {key: place for place, key in enumerate(exercises)}
    weeks = np.empty(len(rows), WEEKS)
    # Column by column: row by row would take half as long again as the query.
    for name, values in zip(WEEKS.names or (), zip(*rows, strict=True), strict=False):
        weeks[name] = [places[key] for key in values] if name == "exercise" else values
    weeks["monday"] = weeks["monday"] * 7 + 1
    return WeekSeries(weeks, exercises)


def _days(first: date | None, last: date | None) -> tuple[int, int]:
    return (first or date.min).toordinal(), (last or date.max).toordinal()
