"""The data behind charts of progress as tables for spreadsheets."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from pathlib import Path
from typing import Final

from db.books import BookTable, Cell, write_book, write_table
from desktop.planning.progress import BestSet, LineProgress, Point
from desktop.training.quantities import Unit

COLUMNS: Final = (
    "date",
    "exercise",
    "line",
    "variation",
    "load",
    "reps",
    "seconds",
    "rir",
    "pain",
    "effective_load",
    "load_times_reps",
    "estimated_maximum",
    "estimate_set_load",
    "estimate_set_reps",
    "estimate_certain",
    "counted",
    "unit",
)
"""One line a session: its best set, its highest effective load, and its estimate with the set that
gave it. ``counted`` "no": left out of the trend."""


def write_progress(progress: LineProgress, unit: Unit, target: Path) -> int:
    """Write one line a session to ``target``; returns their number.

    See `write_table` for how. Raises CannotWrite.
    """
    rows = progress_rows(progress, unit)
    write_table(BookTable(progress.exercise.name, COLUMNS, rows), target)
    return len(rows)


def write_progress_book(
    several: Sequence[tuple[str, LineProgress]], unit: Unit, target: Path
) -> None:
    """Write the same as a workbook, a sheet for each named line. Raises CannotWrite."""
    tables = [BookTable(name, COLUMNS, progress_rows(each, unit)) for name, each in several]
    write_book(tables, target)


def progress_rows(progress: LineProgress, unit: Unit) -> tuple[tuple[Cell, ...], ...]:
    """One row of `COLUMNS` for each session, masses in ``unit``; None where there is nothing."""
    points = {(point.day, point.session_id): point for point in progress.points}
    names = {step.key: step.name for step in progress.scale}
    return tuple(
        (
            *_of_best(best, progress, names, unit),
            *_of_point(points.get((best.day, best.session_id)), unit),
            _yes(best.counted),
            unit.value,
        )
        for best in progress.best_sets
    )


def _of_best(
    best: BestSet, progress: LineProgress, names: dict[str, str], unit: Unit
) -> tuple[Cell, ...]:
    done = best.done
    key = done.variation or ""
    return (
        best.day,
        progress.exercise.name,
        progress.line.name,
        names.get(key, key),
        _mass(done.load_g, unit),
        done.reps,
        done.seconds,
        done.rir,
        done.pain or None,
        _mass(best.top_g, unit),
        _mass(best.work_g, unit),
    )


def _of_point(point: Point | None, unit: Unit) -> tuple[Cell, ...]:
    if point is None:
        return (None, None, None, None)
    return (
        _mass(point.one_rep_max_g, unit),
        _mass(point.added_g, unit),
        point.reps,
        _yes(point.certain),
    )


def _mass(mass_g: float | None, unit: Unit) -> float | None:
    return None if mass_g is None else float(round(Decimal(mass_g) / unit.grams_each, 2))


def _yes(value: bool) -> str:
    return "yes" if value else "no"
