"""What the names in a log stand for: trainees, exercises, variations; and what is recorded."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date
from functools import lru_cache
from typing import Any, Final, Literal, TypeVar

from msgspec.structs import replace as changed
from rapidfuzz import fuzz, process

from db.log_rows import LogRow, Problem
from db.repository import Repository
from desktop.training.equipment import Equipment
from desktop.training.exercises import Exercise, Measure
from desktop.training.quantities import Unit
from desktop.training.scale import ALL_FAMILIES, scale
from desktop.training.sentence import sentence
from desktop.training.session import Activity, AskedSet, LineDone, Session, SetDone
from desktop.training.trainee import EquipmentFrom, Trainee

NewTrainees = Literal["never", "unlike", "always"]
Part = tuple[str, date, int, str, str]
C = TypeVar("C", SetDone | None, AskedSet | None)

_LIKE: Final = 60
_CLOSE: Final = 50
_HEIGHT: Final = re.compile(r"(hands|feet|bar) ([0-9]{1,5})")


@dataclass(frozen=True, slots=True)
class UnknownName:
    """A name of the log that is not known; ``closest`` known ones, the likeliest first."""

    kind: str
    name: str
    lines: tuple[int, ...]
    closest: tuple[str, ...] = ()


class KnownNames:
    """The names and records of a data file, read when first asked for."""

    def __init__(
        self,
        repository: Repository,
        names: Mapping[str, str],
        new_trainees: NewTrainees,
        new_exercises: Sequence[Exercise] = (),
    ) -> None:
        self._repository = repository
        self._told = {folded(name): known for name, known in names.items()}
        self._new = new_trainees
        self._trainees = {folded(one.name): one for one in repository.trainees(archived=True)}
        self._exercises = _by_name((*repository.exercises(retired=True), *new_exercises))
        self._added: dict[str, tuple[str, Unit]] = {}
        self._unknown: dict[tuple[str, str], list[int]] = {}
        self._sessions: dict[str, dict[tuple[date, int], Session]] = {}
        self._masses: dict[str, dict[date, int]] = {}
        self._line_names: dict[str, dict[int, tuple[str, str]]] = {}
        self._equipment: dict[str, tuple[EquipmentFrom, ...]] = {}
        self._scales: dict[tuple[str, str, date | None], dict[str, str]] = {}
        # By names as written: trainee, exercise, and what its sets are not counted by.
        self._sure: dict[tuple[str, str], tuple[str, str, str]] = {}
        self._made: dict[tuple[int, str], tuple[Any, Any]] = {}
        self._programs: dict[str, int | None] = {}
        self._near: dict[tuple[str, str], tuple[str, ...]] = {}

    # --- names ------------------------------------------------------------------------------

    @property
    def new_trainees(self) -> tuple[tuple[str, Unit], ...]:
        """Trainees to be added, with their units, in order of appearance."""
        return tuple(self._added.values())

    @property
    def unknown(self) -> tuple[UnknownName, ...]:
        """The names that have to be told."""
        return tuple(
            UnknownName(kind, name, tuple(lines), self._closest(kind, name))
            for (kind, name), lines in self._unknown.items()
        )

    def resolve(self, row: LogRow) -> tuple[LogRow, Sequence[Problem]]:
        """The line with names as they are known here, and what is wrong with its names."""
        sure = self._sure.get((row.trainee, row.exercise))
        if sure is None or row.variation or row.asked_variation:
            return self._looked_up(row)
        trainee, exercise, other = sure
        counted = row.done or row.asked
        if counted is not None and getattr(counted, other) is not None:
            return self._looked_up(row)
        return changed(row, trainee=trainee, exercise=exercise), ()

    def _looked_up(self, row: LogRow) -> tuple[LogRow, list[Problem]]:
        problems: list[Problem] = []
        trainee = self._trainee(row, problems)
        if not row.exercise:
            return (row if trainee == row.trainee else row.but(trainee=trainee)), problems
        exercise = self._exercise(row.exercise)
        if exercise is None:
            problems.append(self._strange("exercise", row.exercise, row.line))
            return row, problems
        if not problems:
            other = "reps" if exercise.measure is Measure.HOLD else "seconds"
            self._sure[row.trainee, row.exercise] = trainee, exercise.key, other
        variation = self._variation(exercise, trainee, row, row.variation, problems)
        asked = self._variation(exercise, trainee, row, row.asked_variation, problems, "asked_")
        self._check_measure(exercise, row, problems)
        return row.but(
            trainee=trainee,
            exercise=exercise.key,
            done=self._varied(row.done, variation),
            asked=self._varied(row.asked, asked),
        ), problems

    def _varied(self, counted: C, variation: str | None) -> C:
        """A set in a variation; lines that share one share the other too."""
        if counted is None or variation is None:
            return counted
        place = id(counted), variation
        if place not in self._made:
            self._made[place] = counted, replace(counted, variation=variation)
        made: C = self._made[place][1]
        return made

    def part_of(self, row: LogRow) -> Part:
        """Which exercise of which session a line belongs to, by the names known here."""
        trainee = folded(self._told.get(folded(row.trainee), row.trainee))
        exercise = self._exercise(row.exercise)
        key = exercise.key if exercise else folded(row.exercise)
        return (trainee, row.day, row.said.entry, key, row.line_name)

    def _exercise(self, name: str) -> Exercise | None:
        return self._exercises.get(folded(self._told.get(folded(name), name)))

    def _trainee(self, row: LogRow, problems: list[Problem]) -> str:
        name = self._told.get(folded(row.trainee), row.trainee)
        known = self._trainees.get(folded(name))
        if known is not None:
            return known.name
        if folded(name) in self._added:
            return self._added[folded(name)][0]
        like = any(fuzz.ratio(folded(name), other) >= _LIKE for other in self._trainees)
        told = folded(row.trainee) in self._told
        if told or self._new == "always" or (self._new == "unlike" and not like):
            self._added[folded(name)] = (name, row.unit or Unit.KG)
            return name
        problems.append(self._strange("trainee", name, row.line))
        return name

    def _strange(self, kind: str, name: str, line: int) -> Problem:
        self._unknown.setdefault((kind, name), []).append(line)
        closest = self._closest(kind, name)
        hint = sentence("; near it are {names}", names=", ".join(closest)) if closest else ""
        text = (
            sentence("there is no trainee called {name!r}{hint}", name=name, hint=hint)
            if kind == "trainee"
            else sentence("there is no exercise called {name!r}{hint}", name=name, hint=hint)
        )
        return Problem(line, kind, text)

    def _closest(self, kind: str, name: str) -> tuple[str, ...]:
        if (kind, name) not in self._near:
            self._near[kind, name] = self._search(kind, name)
        return self._near[kind, name]

    def _search(self, kind: str, name: str) -> tuple[str, ...]:
        if kind == "trainee":
            choices = {key: one.name for key, one in self._trainees.items()}
        else:
            choices = {key: one.name for key, one in self._exercises.items() if not one.retired}
        found = process.extract(folded(name), list(choices), limit=6, score_cutoff=_CLOSE)
        return tuple(dict.fromkeys(choices[key] for key, _, _ in found))[:3]

    def _variation(
        self,
        exercise: Exercise,
        trainee: str,
        row: LogRow,
        text: str,
        problems: list[Problem],
        prefix: str = "",
    ) -> str | None:
        if not text:
            return None
        keys = self._variations(exercise, trainee, row.day)
        if folded(text) in keys:
            return keys[folded(text)]
        raised = _HEIGHT.fullmatch(folded(text))
        if raised and raised[1] in exercise.heights:
            return f"{raised[1]}-{int(raised[2])}"
        near = process.extract(folded(text), list(keys), limit=3)
        names = ", ".join(found for found, _, _ in near)
        hint = sentence("; near it are {names}", names=names) if near else ""
        problems.append(
            Problem(
                row.line,
                f"{prefix}variation",
                sentence(
                    "{name} has no variation {text!r}{hint}",
                    name=exercise.name,
                    text=text,
                    hint=hint,
                ),
            )
        )
        return None

    def _variations(self, exercise: Exercise, name: str, day: date) -> dict[str, str]:
        """Keys by folded key or name: the exercise's variations and those of the heights owned."""
        trainee = self._trainees.get(folded(name))
        since, equipment = self._equipment_on(trainee, day)
        place = (name, exercise.key, since)
        if place not in self._scales:
            keys: dict[str, str] = {}
            for listed in exercise.variations:
                keys.setdefault(folded(listed.key), listed.key)
                for called in (listed.name, *listed.other_names):
                    keys.setdefault(folded(called), listed.key)
            if trainee is not None:
                for made in scale(exercise, trainee, equipment, ALL_FAMILIES):
                    keys.setdefault(folded(made.name), made.key)
            self._scales[place] = keys
        return self._scales[place]

    def _equipment_on(
        self, trainee: Trainee | None, day: date
    ) -> tuple[date | None, Equipment | None]:
        if trainee is None or trainee.id is None:
            return None, None
        if trainee.name not in self._equipment:
            self._equipment[trainee.name] = self._repository.equipment(trainee.id)
        held = [entry for entry in self._equipment[trainee.name] if entry.day <= day]
        return (held[-1].day, held[-1].equipment) if held else (None, None)

    def _check_measure(self, exercise: Exercise, row: LogRow, problems: list[Problem]) -> None:
        counted = row.done or row.asked
        if counted is None:
            return
        if exercise.measure is Measure.HOLD and counted.reps is not None:
            text = sentence(
                "{exercise} is held: give seconds, not repetitions", exercise=exercise.name
            )
            problems.append(Problem(row.line, "reps", text))
        elif exercise.measure is Measure.REPS and counted.seconds is not None:
            text = sentence(
                "{exercise} is counted: give repetitions, not seconds", exercise=exercise.name
            )
            problems.append(Problem(row.line, "seconds", text))

    # --- records ----------------------------------------------------------------------------

    def session(self, trainee: str, day: date, entry: int) -> Session | None:
        """The recorded session of a day, None where there is none."""
        if trainee not in self._sessions:
            trainee_id = self._id(trainee)
            read = () if trainee_id is None else self._repository.sessions(trainee_id)
            self._sessions[trainee] = {(one.day, one.entry): one for one in read}
        return self._sessions[trainee].get((day, entry))

    def part(
        self, trainee: str, exercise: str, name: str, session: Session | None
    ) -> LineDone | None:
        """What is recorded of one line in a session."""
        if session is None:
            return None
        if trainee not in self._line_names:
            read = self._repository.lines(session.trainee_id)
            self._line_names[trainee] = {
                one.id: (one.exercise, one.name) for one in read if one.id is not None
            }
        names = self._line_names[trainee]
        return next((p for p in session.lines if names.get(p.line_id) == (exercise, name)), None)

    def body_mass(self, trainee: str, day: date) -> int | None:
        """The body mass recorded on a day, in grams."""
        if trainee not in self._masses:
            trainee_id = self._id(trainee)
            read = () if trainee_id is None else self._repository.body_masses(trainee_id)
            self._masses[trainee] = {one.day: one.mass_g for one in read}
        return self._masses[trainee].get(day)

    def activities(self, trainee: str) -> tuple[Activity, ...]:
        """The recorded other activities, as they would be read from a log."""
        trainee_id = self._id(trainee)
        read = () if trainee_id is None else self._repository.activities(trainee_id)
        return tuple(replace(one, trainee_id=0, id=None, revision=0) for one in read)

    def program_id(self, name: str) -> int | None:
        """The id of a program, None where there is none of that name."""
        if name not in self._programs:
            program = self._repository.program_named(name)
            self._programs[name] = None if program is None else program.id
        return self._programs[name]

    def _id(self, trainee: str) -> int | None:
        known = self._trainees.get(folded(trainee))
        return None if known is None else known.id


@lru_cache(maxsize=4096)
def folded(name: str) -> str:
    """A name for comparison: without case, and with one kind of gap."""
    return re.sub(r"[\s_-]+", " ", name).strip().casefold()


def nearest(name: str, known: Iterable[str]) -> tuple[str, ...]:
    """Up to three known names that are close to ``name``, the likeliest first."""
    found = process.extract(name, list(known), processor=folded, limit=3, score_cutoff=_CLOSE)
    return tuple(text for text, _, _ in found)


def _by_name(exercises: Iterable[Exercise]) -> dict[str, Exercise]:
    """Exercises by key, name and other names; a key or name goes before another's other name."""
    known: dict[str, Exercise] = {}
    ordered = sorted(exercises, key=lambda one: one.retired)
    for exercise in ordered:
        for name in (exercise.key, exercise.name):
            known.setdefault(folded(name), exercise)
    for exercise in ordered:
        for name in exercise.other_names:
            known.setdefault(folded(name), exercise)
    return known
