"""All that is known of one trainee, read once: what every answer about them is computed from."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field, replace
from datetime import date
from functools import cache
from typing import Final

from db.repository import Repository
from desktop.limits import load_limits
from desktop.planning.line_index import Part as Part
from desktop.planning.tracks import MOST_TRAINEES, Tracks
from desktop.training.coach import CoachSettings
from desktop.training.exercises import Exercise
from desktop.training.limits import Limit, LimitId
from desktop.training.program import Assignment, Line, Program
from desktop.training.session import Activity, Session
from desktop.training.state import Context
from desktop.training.trainee import (
    Absence,
    BodyMass,
    DeloadWindow,
    DismissedCaution,
    EquipmentFrom,
    Goal,
    Trainee,
)


@dataclass(frozen=True, slots=True)
class Library:
    """What all trainees share: exercises by key (retired ones too), programs by id, the
    coach's settings and the limits that ship with the program.
    """

    exercises: Mapping[str, Exercise]
    programs: Mapping[int, Program]
    settings: CoachSettings
    limits: Mapping[LimitId, Limit]

    @property
    def context(self) -> Context:
        """The coach's settings as a replay takes them."""
        return Context(settings=self.settings.progression)


@dataclass(frozen=True, slots=True)
class History:
    """One trainee's dated facts, each sorted by day, and the library they refer to.

    ``tracks`` remember how its lines were replayed before; they change no answer.
    """

    trainee: Trainee
    library: Library
    lines: tuple[Line, ...] = ()
    assignments: tuple[Assignment, ...] = ()
    sessions: tuple[Session, ...] = ()
    body_masses: tuple[BodyMass, ...] = ()
    equipment: tuple[EquipmentFrom, ...] = ()
    deloads: tuple[DeloadWindow, ...] = ()
    absences: tuple[Absence, ...] = ()
    activities: tuple[Activity, ...] = ()
    goals: tuple[Goal, ...] = ()
    dismissed: tuple[DismissedCaution, ...] = ()
    tracks: Tracks = field(default_factory=Tracks, compare=False, repr=False)

    @property
    def trainee_id(self) -> int:
        """The trainee's id; every trainee read from the store has one."""
        return _id_of(self.trainee)

    @property
    def context(self) -> Context:
        """The coach's settings as a replay takes them."""
        return self.library.context

    def exercise_of(self, line: Line) -> Exercise:
        """The exercise of ``line``."""
        return self.library.exercises[line.exercise]

    def line(self, line_id: int) -> Line:
        """The line with this id; ``KeyError`` where the trainee has none."""
        for line in self.lines:
            if line.id == line_id:
                return line
        raise KeyError(f"{self.trainee.name} has no line {line_id}")

    def line_of(self, exercise: str, name: str) -> Line | None:
        """The line of one exercise and name, None where there is none yet."""
        return next(
            (one for one in self.lines if (one.exercise, one.name) == (exercise, name)), None
        )

    def done(self, line_id: int, before: date | None = None) -> tuple[Part, ...]:
        """Every session part of one line, oldest first, on days before ``before`` (None: all)."""
        parts = self.tracks.index(self.sessions).parts(line_id)
        return parts if before is None else tuple(each for each in parts if each[0].day < before)

    def trained(self, line: Line) -> tuple[Part, ...]:
        """The session parts in which the line's own exercise was done with working sets."""
        return self.tracks.index(self.sessions).trained(line)

    def body_mass_on(self, day: date) -> int | None:
        """Grams by the last entry on or before ``day``; before the first entry, by the first."""
        return body_mass_on(self.body_masses, day)

    def with_sessions(self, sessions: Iterable[Session]) -> History:
        """This history as it would be with these sessions instead."""
        return replace(self, sessions=tuple(sorted(sessions, key=lambda one: (one.day, one.entry))))


def body_mass_on(entries: Iterable[BodyMass], day: date) -> int | None:
    """Grams by the last of the sorted ``entries`` on or before ``day``; before the first entry,
    by the first: a body weighed later is a better guess than none. None without entries.
    """
    mass_g: int | None = None
    for entry in entries:
        if entry.day > day and mass_g is not None:
            break
        mass_g = entry.mass_g
    return mass_g


@dataclass(slots=True)
class _LibraryMemory:
    """The library last read, as of which version of what is shared, and in whose words."""

    version: int | None = None
    said: object = None
    library: Library | None = None


def read_library(repository: Repository) -> Library:
    """What all trainees share: the same object as the last time while none of it was written."""
    memory = repository.memory(_LibraryMemory)
    version = repository.shared_version()
    known = version is not None and (version, repository.said) == (memory.version, memory.said)
    if memory.library is None or not known:
        memory.version, memory.said = version, repository.said
        memory.library = Library(
            exercises={one.key: one for one in repository.exercises(retired=True)},
            programs={_id_of(program): program for program in repository.programs()},
            settings=repository.coach_settings(),
            limits=shipped_limits(),
        )
    return memory.library


_NO_LIBRARY: Final = Library({}, {}, CoachSettings(), {})


class _FactsMemory:
    """The facts last read of a few trainees, without sessions, and as of which version."""

    def __init__(self) -> None:
        self.known: dict[int, tuple[tuple[int, int], History]] = {}


def read_history(
    repository: Repository, trainee_id: int, library: Library | None = None
) -> History:
    """One trainee, each table read once, or not at all while nothing was written to it; hand over
    ``library`` to read that once for many.
    """
    facts = read_facts(repository, trainee_id)
    return replace(
        facts,
        library=library or read_library(repository),
        sessions=repository.sessions(trainee_id),
    )


def read_facts(repository: Repository, trainee_id: int) -> History:
    """All but the sessions and the library: the same as the last time while nothing was written."""
    version = repository.facts_version(trainee_id)
    known = repository.memory(_FactsMemory).known
    last = known.pop(trainee_id, None)
    if last is None or last[0] != version:
        history = History(
            trainee=repository.trainee(trainee_id),
            library=_NO_LIBRARY,
            lines=repository.lines(trainee_id),
            assignments=repository.assignments(trainee_id),
            body_masses=repository.body_masses(trainee_id),
            equipment=repository.equipment(trainee_id),
            deloads=repository.deloads(trainee_id),
            absences=repository.absences(trainee_id),
            activities=repository.activities(trainee_id),
            goals=repository.goals(trainee_id),
            dismissed=repository.dismissed(trainee_id),
            tracks=repository.memory(Tracks),
        )
        if version is None:
            return history
        last = (version, history)
    known[trainee_id] = last  # the last one looked at
    while len(known) > MOST_TRAINEES:
        del known[next(iter(known))]
    return last[1]


@cache
def shipped_limits() -> Mapping[LimitId, Limit]:
    """The limits that ship with the program, read once."""
    return load_limits()


def _id_of(aggregate: Trainee | Program) -> int:
    if aggregate.id is None:
        raise ValueError(f"{aggregate.name} is not saved yet")
    return aggregate.id
