"""Trainees as files: JSON with the schema "rungwise trainees", described in resources/formats.md.

Everything dated about a trainee except what was trained, which is the training log's.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from pathlib import Path
from typing import Final

from db.json_files import InvalidFile, encode_json, read_json
from desktop.training.equipment import Equipment
from desktop.training.program import LineStart, Override, RuleRevision, WeekdaysFrom
from desktop.training.sentence import sentence
from desktop.training.trainee import AbsenceKind, GoalKind, Trainee

SCHEMA: Final = "rungwise trainees"
VERSION: Final = 1


@dataclass(frozen=True, slots=True)
class WeighedOn:
    """Body mass in grams on a day."""

    day: date
    mass_g: int


@dataclass(frozen=True, slots=True)
class OwnedFrom:
    """What can be used from a day on."""

    day: date
    equipment: Equipment


@dataclass(frozen=True, slots=True)
class ProgramFrom:
    """A program, by name, from a day on; ``ended`` is its last day, ``moves`` say from when on it
    falls on other weekdays.
    """

    program: str
    start: date
    weekdays: tuple[int, ...] = ()
    ended: date | None = None
    moves: tuple[WeekdaysFrom, ...] = ()


@dataclass(frozen=True, slots=True)
class EasyDays:
    """A deload: first and last day."""

    first: date
    last: date
    sets_factor: float = 0.6
    load_percent: float = 10.0
    planned: bool = True
    note: str = ""


@dataclass(frozen=True, slots=True)
class Away:
    """Days without training; ``last`` null while it goes on."""

    first: date
    last: date | None = None
    kind: AbsenceKind = AbsenceKind.AWAY
    note: str = ""


@dataclass(frozen=True, slots=True)
class LineFile:
    """A line: exercise key, name, and what the coach set for it."""

    exercise: str
    name: str = ""
    revisions: tuple[RuleRevision, ...] = ()
    starts: tuple[LineStart, ...] = ()
    overrides: tuple[Override, ...] = ()


@dataclass(frozen=True, slots=True)
class GoalFile:
    """A goal on a line: grams, repetitions, seconds (``value``) or a variation; ``reps``: of a
    load, for so many repetitions.
    """

    exercise: str
    kind: GoalKind
    line: str = ""
    value: int = 0
    variation: str | None = None
    by: date | None = None
    note: str = ""
    reps: int | None = None


@dataclass(frozen=True, slots=True)
class TraineeFile:
    """One trainee and the dated facts about them."""

    trainee: Trainee
    body_masses: tuple[WeighedOn, ...] = ()
    equipment: tuple[OwnedFrom, ...] = ()
    programs: tuple[ProgramFrom, ...] = ()
    lines: tuple[LineFile, ...] = ()
    goals: tuple[GoalFile, ...] = ()
    deloads: tuple[EasyDays, ...] = ()
    absences: tuple[Away, ...] = ()


@dataclass(frozen=True, slots=True)
class TraineesFile:
    """What a trainee file holds beside its schema."""

    trainees: tuple[TraineeFile, ...]
    about: str = ""


def read_trainees(path: Path) -> TraineesFile:
    """The trainees in ``path``. Raises InvalidFile and OSError."""
    content = read_json(path, SCHEMA, VERSION, TraineesFile)
    names = [one.trainee.name.strip() for one in content.trainees]
    for number, name in enumerate(names):
        if not name or name in names[:number]:
            raise InvalidFile(
                sentence(
                    "{file}: each trainee needs a name of their own - at "
                    "`$.trainees[{number}].trainee.name`",
                    file=path.name,
                    number=number,
                )
            )
    return content


def trainees_bytes(content: TraineesFile) -> bytes:
    """The bytes of the file that `read_trainees` reads."""
    return encode_json(content, SCHEMA, VERSION)
