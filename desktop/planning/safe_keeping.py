"""Safe keeping: the backups of one data file, what each would change, and the way back to one."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from pathlib import Path

from db.errors import StoreError
from db.restoring import Backup as Backup
from db.restoring import Contents as Contents
from db.restoring import Difference as Difference
from db.restoring import Preview as Preview
from db.restoring import backups_in, newest_good, preview, restore


@dataclass(frozen=True, slots=True)
class SafeKeeping:
    """A data file, ``path``, with the ``folder`` of its backups. ``damaged``: as it is known to be
    from opening it, which a look at it alone may not show.
    """

    path: Path
    folder: Path
    damaged: bool = False

    def backups(self) -> tuple[Backup, ...]:
        """The backups, the newest first. Raises StoreError."""
        return backups_in(self.folder)

    def newest_good(self) -> Backup | None:
        """The newest backup that is sound; None where there is none."""
        try:
            found = newest_good(self.folder)
        except StoreError:
            return None
        return found[0] if found else None

    def preview(self, backup: Backup) -> Preview:
        """What going back to ``backup`` would change. Raises StoreError where it is not sound."""
        return preview(self.path, backup.path)

    def restore(self, backup: Backup, today: date) -> Path:
        """Go back to ``backup``; gives the copy of the present file that is kept beside it.

        Raises StoreError, and then nothing was changed.
        """
        return restore(self.path, backup.path, today, self.damaged)
