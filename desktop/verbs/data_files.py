"""The data file that a verb works on, and who and what is named in it."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from contextlib import contextmanager
from pathlib import Path

from db.database import Database
from db.errors import PassphraseNeeded
from db.everything import Everything
from db.log_names import nearest
from db.repository import Repository
from desktop import paths
from desktop.catalogue import load_catalogue
from desktop.passphrase_prompt import asked
from desktop.planning.arrivals import Arrival
from desktop.training.trainee import Trainee
from desktop.verbs.terminal import Options, Wrong


@contextmanager
def data(options: Options, create: bool = False) -> Iterator[Repository]:
    """The data file that the options name, else the usual one, open."""
    with opened(database_path(options), create) as repository:
        yield repository


def database_path(options: Options) -> Path:
    """Where the data file lies."""
    path: Path = options.database or paths.default_data_file()
    return path


@contextmanager
def opened(path: Path | str, create: bool) -> Iterator[Repository]:
    """A data file, open, with the exercises that ship; asks for its passphrase where it has one."""
    try:
        database = Database.open(path, create)
    except PassphraseNeeded:
        passphrase = asked("Passphrase")
        if not passphrase:
            raise
        database = Database.open(path, create, passphrase=passphrase)
    try:
        repository = Repository(database)
        repository.sync_catalogue(load_catalogue())
        yield repository
    finally:
        database.close()


def trainee_called(repository: Repository, name: str) -> Trainee:
    """The trainee of that name. Raises Wrong."""
    known = {trainee.name: trainee for trainee in repository.trainees(archived=True)}
    folded = [one for key, one in known.items() if key.casefold() == name.strip().casefold()]
    found = known.get(name) or (folded[0] if len(folded) == 1 else None)
    if found is None:
        raise Wrong(f"there is no trainee called {name!r}{near(name, known)}")
    return found


def program_called(repository: Repository, name: str) -> int:
    """The id of the program of that name. Raises Wrong."""
    program = repository.program_named(name)
    if program is None or program.id is None:
        known = [one.name for one in repository.programs()]
        raise Wrong(f"there is no program called {name!r}{near(name, known)}")
    return program.id


def identity(trainee: Trainee) -> int:
    """The id of a trainee that the store gave."""
    assert trainee.id is not None, "what the store gives has an id"
    return trainee.id


def counted(content: Everything) -> str:
    """How much is in it, in short."""
    return f"{len(content.trainees)} trainees, {len(content.sessions)} sessions"


def print_arrival(what: str, arrival: Arrival) -> None:
    """What came in and what was there."""
    for name in arrival.new:
        print(f"new {what}: {name}")
    for name in arrival.there:
        print(f"already there: {name}")


def near(name: str, known: Iterable[str]) -> str:
    found = nearest(name, known)
    return f"; near it are {', '.join(found)}" if found else ""
