"""Everything as one file: written for a new computer, taken over there; and all about one trainee,
for that person.
"""

from __future__ import annotations

import os
from contextlib import closing
from dataclasses import dataclass
from datetime import date
from pathlib import Path
from typing import Final

from db.database import Database
from db.errors import DamagedFile, StoreError
from db.everything import (
    SCHEMA,
    filling,
    of_trainee,
    read_everything,
    read_file,
    reading_everything,
    write_file,
    writing_file,
)
from db.everything import Everything as Everything
from db.files import UNFINISHED, clear_unfinished
from db.json_files import InvalidFile
from db.log_export import write_log
from db.refusals import cannot_write
from db.repository import Repository
from db.restoring import restore
from db.seals import remove_file
from db.steps import Steps, T
from desktop.training.name_order import name_key
from desktop.training.sentence import sentence, sentence_of
from desktop.training.trainee import Trainee

TRAINEE_FILES: Final = ("everything.json", "training-log.csv")
_BEGINNING: Final = 4096


@dataclass(frozen=True, slots=True)
class Held:
    """How many sessions of a trainee a file holds, and the day of the last one."""

    sessions: int
    last: date | None


@dataclass(frozen=True, slots=True)
class Person:
    """A trainee by name: what our file holds of them ``now`` and what it would hold ``then``; None
    where they are not in it.
    """

    name: str
    now: Held | None
    then: Held | None


@dataclass(frozen=True, slots=True)
class TakingOver:
    """A file of everything, made a data file beside ours to be compared with it. Files of two
    computers number their records each in its own way, so ``people`` are compared by name. It is
    to be taken, or left; either takes it away.
    """

    file: Path
    people: tuple[Person, ...]


def holds_everything(path: Path) -> bool:
    """Whether a file says at its beginning that it holds everything. Raises OSError."""
    with path.open("rb") as stream:
        return SCHEMA.encode() in stream.read(_BEGINNING)


def writing_everything(path: Path, passphrase: str, target: Path) -> Steps[Everything]:
    """Write all of the data file at ``path`` into ``target``, step by step; gives what was
    written. The window may go on writing meanwhile: one moment is written. Raises StoreError.
    """
    with closing(Database.look_into(path, passphrase)) as database:
        content = yield from _halved(reading_everything(database), 0.0)
    yield from _halved(writing_file(content, target), 0.5)
    return content


def arriving(source: Path, path: Path, passphrase: str) -> Steps[TakingOver]:
    """Make a file of everything a data file beside ``path`` and compare the two; nothing of ours
    is changed. It gets our ``passphrase``. Raises StoreError.
    """
    try:
        content = read_file(source)
    except InvalidFile as error:
        raise DamagedFile(
            sentence_of(error), sentence("Choose a file that was written as everything.")
        ) from error
    except OSError as error:
        raise StoreError(
            sentence(
                "{name} cannot be read: {value}", name=source.name, value=error.strerror or error
            )
        ) from error
    beside = path.with_name(f"{path.name}.arriving.{os.getpid()}{UNFINISHED}")
    try:
        clear_unfinished(path.parent, f"{path.name}.")
        remove_file(beside)
        with closing(Database.open(beside, passphrase=passphrase)) as database:
            yield from filling(database, content)
        now, then = _held(path, passphrase), _held(beside, passphrase)
    except BaseException as error:
        remove_file(beside)
        if isinstance(error, OSError):
            raise cannot_write(beside, error) from error
        raise
    names = sorted({*now, *then}, key=name_key)
    return TakingOver(beside, tuple(Person(name, now.get(name), then.get(name)) for name in names))


def take_over(taking: TakingOver, path: Path, passphrase: str, today: date) -> Path:
    """Take it in place of our data file; gives the copy of what was there before, which is kept.
    Raises StoreError, and then nothing was changed.
    """
    kept = restore(path, taking.file, today, passphrase=passphrase)
    leave(taking)
    return kept


def leave(taking: TakingOver) -> None:
    """Take the data file away that was made to be compared."""
    remove_file(taking.file)


def give_to_trainee(repository: Repository, trainee: Trainee, folder: Path) -> Everything:
    """Write all about one trainee into ``folder``, for that person: in one file that a program
    reads, and as a table of the training. Gives what was written. Raises StoreError.
    """
    content = of_trainee(read_everything(repository.database), trainee.id or 0)
    everything, log = (folder / name for name in TRAINEE_FILES)
    try:
        folder.mkdir(mode=0o700, parents=True, exist_ok=True)
        write_file(content, everything)
        write_log(repository, log, [trainee])
    except OSError as error:
        raise cannot_write(folder, error) from error
    return content


def _held(path: Path, passphrase: str) -> dict[str, Held]:
    with closing(Database.look_into(path, passphrase)) as database:
        rows = database.execute(
            "SELECT t.name, count(s.id), max(s.day) FROM trainee t"
            " LEFT JOIN session s ON s.trainee_id = t.id GROUP BY t.id"
        )
    return {
        name: Held(count, date.fromordinal(last) if last is not None else None)
        for name, count, last in rows
    }


def _halved(work: Steps[T], begin: float) -> Steps[T]:
    """Half of a longer piece of work, from the share ``begin`` on."""
    try:
        while True:
            yield begin + next(work) / 2
    except StopIteration as end:
        result: T = end.value
        return result
    finally:
        work.close()
