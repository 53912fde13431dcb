"""The data behind a chart of progress as a table for spreadsheets."""

from __future__ import annotations

import csv
from collections.abc import Iterator
from decimal import Decimal
from pathlib import Path
from typing import Final

from db.log_files import neutral
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

_TEXTS: Final = frozenset({"exercise", "line", "variation"})


def write_progress(progress: LineProgress, unit: Unit, target: Path) -> int:
    """Write one line a session to ``target``; returns their number.

    UTF-8 with a mark at the beginning, commas, decimal points and ISO dates, whatever the locale;
    text that a spreadsheet could take for a formula is neutralised. Raises OSError.
    """
    lines = list(_lines(progress, unit))
    with target.open("w", encoding="utf-8-sig", newline="") as stream:
        table = csv.writer(stream, lineterminator="\n")
        table.writerow(COLUMNS)
        for cells in lines:
            table.writerow(
                [
                    neutral(cells.get(name, "")) if name in _TEXTS else cells.get(name, "")
                    for name in COLUMNS
                ]
            )
    return len(lines)


def _lines(progress: LineProgress, unit: Unit) -> Iterator[dict[str, str]]:
    points = {(point.day, point.session_id): point for point in progress.points}
    names = {step.key: step.name for step in progress.scale}
    for best in progress.best_sets:
        point = points.get((best.day, best.session_id))
        yield {
            "exercise": progress.exercise.name,
            "line": progress.line.name,
            "unit": unit.value,
            **_of_best(best, names, unit),
            **(_of_point(point, unit) if point is not None else {}),
        }


def _of_best(best: BestSet, names: dict[str, str], unit: Unit) -> dict[str, str]:
    done = best.done
    key = done.variation or ""
    return {
        "date": best.day.isoformat(),
        "variation": names.get(key, key),
        "load": _mass(done.load_g, unit),
        "reps": _plain(done.reps),
        "seconds": _plain(done.seconds),
        "rir": _plain(done.rir),
        "pain": _plain(done.pain or None),
        "effective_load": _mass(best.top_g, unit),
        "load_times_reps": _mass(best.work_g, unit),
        "counted": _yes(best.counted),
    }


def _of_point(point: Point, unit: Unit) -> dict[str, str]:
    return {
        "estimated_maximum": _mass(point.one_rep_max_g, unit),
        "estimate_set_load": _mass(point.added_g, unit),
        "estimate_set_reps": str(point.reps),
        "estimate_certain": _yes(point.certain),
    }


def _mass(mass_g: float | None, unit: Unit) -> str:
    if mass_g is None:
        return ""
    return f"{round(Decimal(mass_g) / unit.grams_each, 2).normalize():f}"


def _plain(value: float | None) -> str:
    return "" if value is None else f"{value:g}"


def _yes(value: bool) -> str:
    return "yes" if value else "no"
