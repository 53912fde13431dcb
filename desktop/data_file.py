"""A data file opened in earnest: the store, the shipped exercises in it, its backups, the demo.

Imported after the first paint, since store and model take longer to import than a window to show.
"""

from __future__ import annotations

from datetime import date
from pathlib import Path

from db.backup import back_up_on_closing
from db.changes import Changes
from db.database import Database
from db.errors import StoreError
from db.repository import Repository
from desktop.planning.build import build_mark


def open_data_file(path: Path, create: bool = True, passphrase: str = "") -> Repository:
    """Open the file at ``path``; a new one gets the shipped exercises. Raises StoreError."""
    repository = Repository(Database.open(path, create, passphrase=passphrase))
    try:
        if repository.catalogue_source() is None:
            bring_catalogue(repository)
    except StoreError:
        repository.database.close()
        raise
    return repository


def bring_catalogue(repository: Repository) -> Changes:
    """Bring the shipped exercises up to date; they are read only where another build did last."""
    if repository.catalogue_source() == build_mark():
        return Changes()
    from desktop.catalogue import load_catalogue

    return repository.sync_catalogue(load_catalogue(), build_mark())


def problems_of(database: Database) -> list[str]:
    """What is wrong inside the file; for a thread of its own, since it reads all of it."""
    with database.connection_context():
        return database.quick_check()


def back_up(repository: Repository, folder: Path, today: date) -> Path:
    """Put a copy among the rotated backups; its path. Raises StoreError."""
    return back_up_on_closing(repository.database, folder, today)


def fill_demo(path: Path, today: date) -> None:
    """Make the demo's data file. Raises StoreError, and leaves no file then."""
    from desktop import demo  # reads logs: only when asked for
    from desktop.catalogue import load_catalogue

    database = Database.open(path)
    repository = Repository(database)
    try:
        with repository.transaction():
            repository.sync_catalogue(load_catalogue(), build_mark())
            demo.fill(repository, today)
    except BaseException:
        database.close()
        path.unlink(missing_ok=True)
        raise
    database.close()
