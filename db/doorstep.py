"""What is looked at before a data file is opened: its place, its kind, its passphrase."""

from __future__ import annotations

from contextlib import suppress
from pathlib import Path

from db import cipher
from db.errors import DamagedFile, NotFound, NotOurFile, PassphraseNeeded
from db.files import keep_private, make_private
from db.refusals import cannot_write, not_ours
from desktop.training.sentence import sentence


def prepare_file(path: Path, create: bool, passphrase: str) -> str:
    """Make the file, private to its owner, or look at its beginning: the passphrase that it takes,
    "" where it takes none.

    Raises NotFound, NotOurFile, DamagedFile, PassphraseNeeded and CannotWrite.
    """
    try:
        if path.is_dir():
            raise NotOurFile(
                sentence("{path} is a folder.", path=path), sentence("Name a data file.")
            )
        if path.exists():
            return _passphrase_for(path, create, passphrase)
        if not create:
            raise NotFound(
                sentence("There is no file {path}.", path=path),
                sentence("Check the name, or make a new data file."),
            )
        with suppress(FileExistsError):  # another process may be making it just now
            make_private(path)
    except OSError as error:
        raise cannot_write(path, error) from error
    return passphrase


def _passphrase_for(path: Path, create: bool, passphrase: str) -> str:
    with path.open("rb") as file:
        start = file.read(len(cipher.MAGIC))
    keep_private(path)
    if start == cipher.MAGIC:
        return ""
    if not start and create:
        return passphrase
    if cipher.has_schema(path):
        raise DamagedFile(
            sentence("{file} is damaged: its beginning is missing.", file=path.name),
            sentence("Go back to the latest backup."),
        )
    if not cipher.has_passphrase(path):
        raise not_ours(path)
    if not passphrase:
        raise PassphraseNeeded(
            sentence(
                "{file} has a passphrase (or it is no data file of this program).", file=path.name
            ),
            sentence("Give the passphrase."),
        )
    return passphrase
