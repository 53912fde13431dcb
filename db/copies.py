"""The copies of a data file: rotated backups, and those kept beside it at turning points."""

from __future__ import annotations

from pathlib import Path

from db.refusals import cannot_write
from db.restoring import backups_in

_WORDS = ("version-", "before-restoring-", "damaged-")


def copies_of(path: Path, backups: Path) -> tuple[Path, ...]:
    """Every copy of ``path``: in the folder of its ``backups``, and beside it.

    Raises CannotWrite.
    """
    try:
        beside = [
            other
            for other in path.parent.iterdir()
            if other.suffix == path.suffix
            and any(other.name.startswith(f"{path.stem}.{word}") for word in _WORDS)
        ]
    except OSError as error:
        raise cannot_write(path.parent, error) from error
    return (*(backup.path for backup in backups_in(backups)), *sorted(beside))
