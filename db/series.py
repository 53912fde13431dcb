"""Sets as numpy arrays, straight from SQL: for charts, trends and counts over years.

Arrays are structured. What was not noted is nan, in ``reps``, ``seconds``, ``tempo_s`` and
``rir`` alike; variations and exercises are numbers into the tuples beside the array, -1 for none.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from datetime import date
from typing import Any

import numpy as np
from numpy.typing import NDArray

from db.database import Database

SETS = np.dtype(
    [
        ("day", np.int64),
        ("session_id", np.int64),
        ("line_id", np.int64),
        ("exercise", np.int64),
        ("variation", np.int64),
        ("load_g", np.int64),
        ("reps", np.float64),
        ("seconds", np.float64),
        ("tempo_s", np.float64),
        ("rir", np.float64),
        ("warm_up", np.bool_),
        ("pain", np.int64),
    ]
)

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

_SELECT_SETS = (
    "SELECT d.day, d.session_id, d.line_id, d.exercise, d.variation, d.load_g, d.reps, d.seconds,"
    " d.tempo_s, d.rir, d.warm_up, d.pain FROM set_done d JOIN session s ON s.id = d.session_id"
)
_IN_ORDER = " ORDER BY d.day, s.entry, d.session_id, d.line_place, d.place"

# Day 1 is a Monday, so that whole weeks are whole sevens. The order is that of the groups, so that
# SQLite sorts once.
_SELECT_WEEKS = (
    "SELECT (d.day - 1) / 7, d.exercise, count(*), coalesce(sum(d.reps), 0),"
    " coalesce(sum(d.seconds), 0), coalesce(sum(d.load_g * d.reps), 0) FROM set_done d"
)
_WEEK_AND_EXERCISE = "(d.day - 1) / 7, d.exercise"
_BY_WEEK = f" AND d.warm_up = 0 GROUP BY {_WEEK_AND_EXERCISE} ORDER BY {_WEEK_AND_EXERCISE}"


@dataclass(frozen=True, slots=True)
class SetSeries:
    """Sets in the order in which they were done: an array of `SETS`, with the keys that its
    ``exercise`` and ``variation`` count into. Days are ordinals, loads grams.
    """

    sets: NDArray[np.void]
    exercises: tuple[str, ...]
    variations: tuple[str, ...]

    def working(self) -> NDArray[np.void]:
        """The sets without warm-ups."""
        working: NDArray[np.void] = self.sets[~self.sets["warm_up"]]
        return working


@dataclass(frozen=True, slots=True)
class WeekSeries:
    """Working sets added up by week and exercise: an array of `WEEKS`, sorted by both; ``monday``
    is the ordinal of the week's first day, ``load_g_reps`` the sum of external load × repetitions.
    """

    weeks: NDArray[np.void]
    exercises: tuple[str, ...]


def line_sets(database: Database, line_id: int) -> SetSeries:
    """All sets of one line."""
    return _series(database, f"{_SELECT_SETS} WHERE d.line_id = ?{_IN_ORDER}", (line_id,))


def trainee_sets(
    database: Database, trainee_id: int, first: date | None = None, last: date | None = None
) -> SetSeries:
    """All sets of one trainee from ``first`` to ``last``, both included."""
    where = " WHERE s.trainee_id = ? AND s.day BETWEEN ? AND ?"
    return _series(database, _SELECT_SETS + where + _IN_ORDER, (trainee_id, *_days(first, last)))


def weekly_volume(
    database: Database, trainee_id: int, first: date | None = None, last: date | None = None
) -> WeekSeries:
    """One trainee's working sets by week and exercise. Weeks without training are left out."""
    sql = (
        f"{_SELECT_WEEKS} JOIN session s ON s.id = d.session_id"
        f" WHERE s.trainee_id = ? AND s.day BETWEEN ? AND ?{_BY_WEEK}"
    )
    return _weeks(database, sql, (trainee_id, *_days(first, last)))


def weekly_volume_of_all(
    database: Database, first: date | None = None, last: date | None = None
) -> WeekSeries:
    """Everybody's working sets by week and exercise, archived trainees too."""
    sql = f"{_SELECT_WEEKS} WHERE d.day BETWEEN ? AND ?{_BY_WEEK}"
    return _weeks(database, sql, _days(first, last))


def weekly_volume_of_line(database: Database, line_id: int) -> WeekSeries:
    """One line's working sets by week (and by exercise, where another one stood in)."""
    return _weeks(database, f"{_SELECT_WEEKS} WHERE d.line_id = ?{_BY_WEEK}", (line_id,))


class _Numbered(dict[str | None, int]):
    """Keys in the order in which they were met; None is -1."""

    def __init__(self) -> None:
        super().__init__({None: -1})

    def __missing__(self, key: str) -> int:
        number = self[key] = len(self) - 1
        return number

    @property
    def keys_met(self) -> tuple[str, ...]:
        return tuple(key for key in self if key is not None)


def _series(database: Database, sql: str, parameters: Sequence[object]) -> SetSeries:
    exercises, variations = _Numbered(), _Numbered()

    def rows() -> Iterator[tuple[Any, ...]]:
        for row in database.stream(sql, parameters):
            yield (*row[:3], exercises[row[3]], variations[row[4]], *row[5:])

    sets = _array(rows(), SETS)
    return SetSeries(sets, exercises.keys_met, variations.keys_met)


def _weeks(database: Database, sql: str, parameters: Sequence[object]) -> WeekSeries:
    exercises = _Numbered()
    rows = database.execute(sql, parameters)
    weeks = np.empty(len(rows), WEEKS)
    # Column by column: row by row would take half as long again as the query.
    for name, values in zip(WEEKS.names or (), zip(*rows, strict=True), strict=False):
        weeks[name] = [exercises[key] for key in values] if name == "exercise" else values
    weeks["monday"] = weeks["monday"] * 7 + 1
    return WeekSeries(weeks, exercises.keys_met)


def _array(rows: Iterable[tuple[Any, ...]], dtype: np.dtype[np.void]) -> NDArray[np.void]:
    return np.fromiter(rows, dtype=dtype)


def _days(first: date | None, last: date | None) -> tuple[int, int]:
    return (first or date.min).toordinal(), (last or date.max).toordinal()
