"""Backups: whole copies of the data file, kept for days, weeks and months."""

from __future__ import annotations

from collections.abc import Callable, Hashable, Iterable
from contextlib import suppress
from datetime import date
from pathlib import Path

from db.database import Database
from db.errors import CannotWrite
from db.files import UNFINISHED
from db.seals import put_seal, seal_path
from desktop.training.sentence import sentence

DAYS, WEEKS, MONTHS = 7, 4, 12

_STEM = "rungwise-"
_SUFFIX = ".db"


def back_up(database: Database, target: Path) -> None:
    """Copy the data to ``target``, which is at any time the old copy or a good new one.

    The data may be in use meanwhile. Raises CannotWrite or DamagedFile, and then leaves what
    was there.
    """
    database.copy_to(target)


def back_up_on_closing(database: Database, folder: Path, today: date) -> Path:
    """Put today's copy into ``folder``, then `rotate`; gives the path of the copy.

    A missing folder is made.
    """
    try:
        folder.mkdir(mode=0o700, parents=True, exist_ok=True)
    except OSError as error:
        raise CannotWrite(
            sentence(
                "The folder {folder} cannot be made: {strerror}.",
                folder=folder,
                strerror=error.strerror,
            ),
            sentence("Choose another folder for backups."),
        ) from error
    target = folder / f"{_STEM}{today.isoformat()}{_SUFFIX}"
    back_up(database, target)
    put_seal(target)
    rotate(folder, today)
    return target


def rotate(folder: Path, today: date) -> tuple[Path, ...]:
    """Remove the backups in ``folder`` that `kept` does not name; gives those removed.

    Only files named as `back_up_on_closing` names them are looked at, and what an interrupted
    copy left behind. A backup that cannot be removed stays for the next time.
    """
    dated = {day: path for path in folder.iterdir() if (day := day_of(path)) is not None}
    keep = kept(dated, today)
    old = [path for day, path in sorted(dated.items()) if day not in keep]
    left = [path for path in folder.glob(f"{_STEM}*{UNFINISHED}") if _is_older(path, today)]
    return tuple(path for path in (*old, *left) if _removed(path))


def kept(days: Iterable[date], today: date) -> frozenset[date]:
    """Which of the days with a backup to keep: the last 7, and the last of each of the last 4
    weeks and 12 months.

    Days, weeks and months count only where there is a backup, so that a long pause costs none.
    Those dated after ``today`` (a clock that went wrong) are kept and count for nothing.
    """
    past = sorted((day for day in set(days) if day <= today), reverse=True)
    future = {day for day in days if day > today}
    return frozenset(
        future
        | set(past[:DAYS])
        | _last_of_each(past, lambda day: day.isocalendar()[:2], WEEKS)
        | _last_of_each(past, lambda day: (day.year, day.month), MONTHS)
    )


def day_of(path: Path) -> date | None:
    """The day of a backup, by its name; None where it is no backup."""
    name = path.name
    if not (name.startswith(_STEM) and name.endswith(_SUFFIX)):
        return None
    try:
        return date.fromisoformat(name[len(_STEM) : -len(_SUFFIX)])
    except ValueError:
        return None


def _last_of_each(
    newest_first: list[date], span: Callable[[date], Hashable], count: int
) -> set[date]:
    last: dict[Hashable, date] = {}
    for day in newest_first:
        last.setdefault(span(day), day)
    return set(list(last.values())[:count])


def _is_older(path: Path, today: date) -> bool:
    # One of today may be a copy that another window is making.
    return date.fromtimestamp(path.stat().st_mtime) < today


def _removed(path: Path) -> bool:
    try:
        path.unlink()
    except OSError:
        return False
    with suppress(OSError):
        seal_path(path).unlink(missing_ok=True)
    return True
