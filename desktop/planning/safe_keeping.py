"""Safe keeping of one data file: its backups and the way back to one, its passphrase, erasing."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import date
from pathlib import Path

from db.copies import copies_of
from db.erasing import Erased as Erased
from db.erasing import erase_trainee
from db.errors import StoreError
from db.passphrases import change_passphrase
from db.restoring import Backup as Backup
from db.restoring import Contents as Contents
from db.restoring import Difference as Difference
from db.restoring import Preview as Preview
from db.restoring import backups_in, newest_good, preview, restore


@dataclass(frozen=True, slots=True)
class SafeKeeping:
    """A data file, ``path``, with the ``folder`` of its backups. ``damaged``: as it is known to be
    from opening it, which a look at it alone may not show. ``passphrase``: that of the file.
    """

    path: Path
    folder: Path
    damaged: bool = False
    passphrase: str = field(default="", repr=False)

    def backups(self) -> tuple[Backup, ...]:
        """The backups, the newest first. Raises StoreError."""
        return backups_in(self.folder)

    def newest_good(self) -> Backup | None:
        """The newest backup that is sound; None where there is none."""
        try:
            found = newest_good(self.folder, self.passphrase)
        except StoreError:
            return None
        return found[0] if found else None

    def preview(self, backup: Backup) -> Preview:
        """What going back to ``backup`` would change. Raises StoreError where it is not sound."""
        return preview(self.path, backup.path, self.passphrase)

    def restore(self, backup: Backup, today: date) -> Path:
        """Go back to ``backup``; gives the copy of the present file that is kept beside it.

        Raises StoreError, and then nothing was changed.
        """
        return restore(self.path, backup.path, today, self.damaged, self.passphrase)

    def change_passphrase(self, new: str) -> tuple[Path, ...]:
        """Give file and copies another passphrase ("" for none); the copies left as they were.

        Nobody may have the file open. Raises StoreError, and then the file has the old one.
        """
        copies = copies_of(self.path, self.folder)
        left = change_passphrase(self.path, copies, self.passphrase, new)
        return tuple(path for path, _ in left)

    def erase(self, trainee_id: int, name: str) -> Erased:
        """Erase a trainee from file and copies. Nobody may have the file open.

        Raises StoreError, and then the trainee is still in the file.
        """
        copies = copies_of(self.path, self.folder)
        return erase_trainee(self.path, copies, trainee_id, name, self.passphrase)
