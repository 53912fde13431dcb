"""The errors of the data store: one family, each with a sentence and what can be done."""

from __future__ import annotations


class StoreError(Exception):
    """The data cannot be read or written; ``str()`` is a sentence, ``remedy`` says what to do."""

    def __init__(self, sentence: str, remedy: str = "") -> None:
        super().__init__(sentence)
        self.remedy = remedy


class NewerFile(StoreError):
    """The file was written by a newer version of the program."""


class NotOurFile(StoreError):
    """The file is not a data file of this program."""


class DamagedFile(StoreError):
    """The file is damaged."""


class PassphraseNeeded(StoreError):
    """The file has a passphrase, and none was given."""


class WrongPassphrase(StoreError):
    """The passphrase does not open the file."""


class NoCipher(StoreError):
    """The library for files with a passphrase is not installed."""


class FileBusy(StoreError):
    """Another process holds the file."""


class CannotWrite(StoreError):
    """The file or its folder is read-only, or the disk is full."""


class Conflict(StoreError):
    """The record was changed or removed elsewhere since it was read."""


class NotFound(StoreError):
    """There is no such record."""


class InvalidRecord(StoreError):
    """The record breaks a rule of the data; the sentence says which and what is allowed.

    ``field`` is where: "name", "lines[0].sets[2].pain"; "" where it is no single field.
    """

    def __init__(self, sentence: str, remedy: str = "", field: str = "") -> None:
        super().__init__(sentence, remedy)
        self.field = field
