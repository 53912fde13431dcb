"""The demo: an invented winter of a rowing club, brought in through the ordinary imports.

The files speak of a fixed winter; here they are moved by whole weeks, so that the last session
lies in the week before today and weekdays stay what they are.
"""

from __future__ import annotations

from dataclasses import fields, is_dataclass, replace
from datetime import date, timedelta
from importlib.resources import as_file, files
from pathlib import Path
from typing import Any, Final, TypeVar

from db.log_files import read_log
from db.log_import import plan_import
from db.log_rows import LogRow
from db.log_saving import carry_out
from db.program_files import read_program
from db.repository import Repository
from db.trainee_files import read_trainees
from desktop.planning.arrivals import take_program, take_trainees

Content = TypeVar("Content")

DEMO: Final = files("resources") / "demo"
TRAINEES_FILE: Final = "trainees.json"
LOG_FILE: Final = "training-log.csv"
MONDAY_AFTER: Final = date(2026, 11, 30)
"""The Monday after the last week that the files speak of."""


def fill(repository: Repository, today: date) -> None:
    """Bring the demo into an empty data file (the exercises are there already)."""
    with as_file(DEMO) as folder:
        fill_from(folder, repository, today)


def fill_from(folder: Path, repository: Repository, today: date) -> None:
    """As `fill`, from the files in ``folder``."""
    later = shift_to(today)
    with repository.transaction():
        for path in sorted(folder.glob("program-*.json")):
            take_program(repository, read_program(path))
        take_trainees(repository, shifted(read_trainees(folder / TRAINEES_FILE), later))
        preview = shifted(read_log(folder / LOG_FILE), later)
        carry_out(repository, plan_import(repository, preview, new_trainees="never"))


def shift_to(today: date) -> timedelta:
    """Whole weeks that bring the last week of the files to the week before ``today``."""
    return today - timedelta(days=today.weekday()) - MONDAY_AFTER


def shifted(content: Content, later: timedelta) -> Content:
    """``content`` (dataclasses and tuples of them) with every date later by ``later``."""
    return _shifted(content, later)  # type: ignore[no-any-return]


def _shifted(value: Any, later: timedelta) -> Any:
    if isinstance(value, date):
        return value + later
    if isinstance(value, tuple):
        moved = tuple(_shifted(item, later) for item in value)
        return value if moved == value else moved
    if isinstance(value, LogRow):
        return value.but(day=value.day + later)
    if is_dataclass(value) and not isinstance(value, type):
        changes = {
            field.name: _shifted(getattr(value, field.name), later) for field in fields(value)
        }
        return replace(value, **changes)
    return value
