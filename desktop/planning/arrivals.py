"""Arrivals: what files bring into the data, trainees and programs."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace

from db.changes import Changes, joined
from db.program_files import exercises_of
from db.repository import Repository
from db.trainee_files import TraineeFile, TraineesFile
from desktop.planning.assignments import assign
from desktop.training.program import Line, Program
from desktop.training.sentence import sentence
from desktop.training.trainee import Absence, BodyMass, DeloadWindow, EquipmentFrom, Goal


class CannotTake(ValueError):
    """What a file brings does not fit the data; the sentence says why."""


@dataclass(frozen=True, slots=True)
class Arrival:
    """What was saved; ``there`` names what was left as it is, since it is there already."""

    changes: Changes
    new: tuple[str, ...] = ()
    there: tuple[str, ...] = ()


def take_program(repository: Repository, program: Program) -> Arrival:
    """Add a program read from a file. One of the same name and content is left as it is; of the
    same name and other content, or with exercises that are not there, it raises CannotTake.
    """
    if check_program(repository, program):
        return Arrival(Changes(), there=(program.name,))
    return Arrival(repository.save(program), new=(program.name,))


def check_program(repository: Repository, program: Program) -> bool:
    """Whether a program read from a file is there already. Raises CannotTake where it cannot be
    taken.
    """
    known = {exercise.key for exercise in repository.exercises(retired=True)}
    strange = [key for key in exercises_of(program) if key not in known]
    if strange:
        raise CannotTake(
            sentence(
                "{name}: there is no exercise {listed}",
                name=program.name,
                listed=", ".join(map(repr, strange)),
            )
        )
    there = repository.program_named(program.name)
    if there is None:
        return False
    if replace(there, id=None, revision=0) == replace(program, id=None, revision=0):
        return True
    raise CannotTake(
        sentence(
            "there is another program called {name!r} already; rename one of the two",
            name=program.name,
        )
    )


def take_trainees(repository: Repository, content: TraineesFile) -> Arrival:
    """Add the trainees of a file with all that it says of them, in one transaction. Those whose
    name is there already are left as they are. Raises CannotTake, CannotAssign and StoreError.
    """
    new = check_trainees(repository, content)
    programs = {one.name: one.id for one in repository.programs() if one.id is not None}
    saved: list[Changes] = []
    with repository.transaction():
        for one in new:
            saved += _take(repository, one, programs)
    return Arrival(
        joined(saved),
        new=tuple(one.trainee.name for one in new),
        there=tuple(one.trainee.name for one in content.trainees if one not in new),
    )


def check_trainees(repository: Repository, content: TraineesFile) -> tuple[TraineeFile, ...]:
    """Those of a file who are not there yet. Raises CannotTake where one of them refers to an
    exercise or a program that is not there.
    """
    known = {trainee.name for trainee in repository.trainees(archived=True)}
    new = tuple(one for one in content.trainees if one.trainee.name not in known)
    exercises = {exercise.key for exercise in repository.exercises(retired=True)}
    programs = {program.name for program in repository.programs()}
    for one in new:
        _check(one, exercises, programs)
    return new


def _check(one: TraineeFile, exercises: set[str], programs: set[str]) -> None:
    wanted = [line.exercise for line in one.lines] + [goal.exercise for goal in one.goals]
    for exercise in wanted:
        if exercise not in exercises:
            raise CannotTake(
                sentence(
                    "{name}: there is no exercise {exercise!r}",
                    name=one.trainee.name,
                    exercise=exercise,
                )
            )
    for given in one.programs:
        if given.program not in programs:
            raise CannotTake(
                sentence(
                    "{name}: there is no program {program!r}; import it first",
                    name=one.trainee.name,
                    program=given.program,
                )
            )


def _take(repository: Repository, one: TraineeFile, programs: Mapping[str, int]) -> list[Changes]:
    saved = [repository.save(replace(one.trainee, id=None, revision=0))]
    trainee_id: int = saved[0].saved[0].id
    saved.append(
        repository.save(
            *(BodyMass(trainee_id, mass.day, mass.mass_g) for mass in one.body_masses),
            *(EquipmentFrom(trainee_id, owned.day, owned.equipment) for owned in one.equipment),
            *_easier_and_away(trainee_id, one),
            *_lines(trainee_id, one),
        )
    )
    for given in sorted(one.programs, key=lambda given: given.start):
        planned = assign(
            repository, trainee_id, programs[given.program], given.start, given.weekdays
        )
        assignment = replace(planned.assignment, ended=given.ended, moves=given.moves)
        planned = replace(planned, assignment=assignment)
        saved.append(repository.save(*planned.aggregates))
    saved.append(repository.save(*_goals(repository, trainee_id, one)))
    return saved


def _easier_and_away(trainee_id: int, one: TraineeFile) -> Iterable[DeloadWindow | Absence]:
    for easy in one.deloads:
        yield DeloadWindow(
            trainee_id,
            easy.first,
            easy.last,
            easy.sets_factor,
            easy.load_percent,
            easy.planned,
            easy.note,
        )
    for away in one.absences:
        yield Absence(trainee_id, away.first, away.last, away.kind, away.note)


def _lines(trainee_id: int, one: TraineeFile) -> Iterable[Line]:
    for line in one.lines:
        yield Line(
            trainee_id, line.exercise, line.name, line.revisions, line.starts, line.overrides
        )


def _goals(repository: Repository, trainee_id: int, one: TraineeFile) -> list[Goal]:
    goals = []
    for goal in one.goals:
        line = repository.line_of(trainee_id, goal.exercise, goal.line)
        if line is None:
            line = repository.save(Line(trainee_id, goal.exercise, goal.line)).saved[0]
        assert line is not None
        assert line.id is not None
        goals.append(
            Goal(
                trainee_id,
                line.id,
                goal.kind,
                goal.value,
                goal.variation,
                goal.by,
                goal.note,
                goal.reps,
            )
        )
    return goals
