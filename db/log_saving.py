"""A planned import into the data: all of it, or nothing."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import Final

from db.changes import Changes, joined
from db.log_import import ImportPlan, PlannedSession
from db.remade import remade
from db.repository import Repository
from db.steps import Steps, finished
from desktop.training.program import Line
from desktop.training.session import Session
from desktop.training.trainee import Trainee

_SLICE: Final = 100


@dataclass(frozen=True, slots=True)
class ImportResult:
    """What an import did. ``sets`` counts sets of new parts; ``doubles`` lines already there."""

    changes: Changes
    new_trainees: int = 0
    new_sessions: int = 0
    extended_sessions: int = 0
    sets: int = 0
    body_masses: int = 0
    activities: int = 0
    doubles: int = 0


def carry_out(repository: Repository, plan: ImportPlan) -> ImportResult:
    """Save what was planned, all in one transaction. Raises StoreError (Conflict where a session
    was changed since the plan was made); then nothing is saved.
    """
    return finished(carrying_out(repository, plan))


def carrying_out(repository: Repository, plan: ImportPlan) -> Steps[ImportResult]:
    """Save what was planned step by step; yields the share written.

    One transaction: closed before its end, it leaves nothing. Nobody else may write meanwhile.
    """
    saved: list[Changes] = []
    with repository.transaction():
        added = [Trainee(name=name, unit=unit) for name, unit in plan.new_trainees]
        saved.append(repository.save(*plan.new_exercises, *added))
        ids = {trainee.name: _id(trainee.id) for trainee in repository.trainees(archived=True)}
        line_ids, new_lines = _lines(repository, plan, ids)
        saved.append(new_lines)
        sessions = [_with_ids(planned, ids, line_ids) for planned in plan.sessions]
        for done in range(0, len(sessions), _SLICE):
            saved.append(repository.save(*sessions[done : done + _SLICE]))
            yield min(done + _SLICE, len(sessions)) / len(sessions)
        masses = [replace(mass, trainee_id=ids[name]) for name, mass in plan.body_masses]
        activities = [replace(one, trainee_id=ids[name]) for name, one in plan.activities]
        saved.append(repository.save(*masses, *activities))
    new = sum(session.id is None for session in sessions)
    return ImportResult(
        changes=joined(saved),
        new_trainees=len(added),
        new_sessions=new,
        extended_sessions=len(sessions) - new,
        sets=sum(len(part.sets) for planned in plan.sessions for part in planned.parts),
        body_masses=len(masses),
        activities=len(activities),
        doubles=len(plan.doubles),
    )


def _lines(
    repository: Repository, plan: ImportPlan, ids: Mapping[str, int]
) -> tuple[dict[tuple[int, str, str], int], Changes]:
    """The id of every line that the plan writes to; lines that are missing are made."""
    wanted = dict.fromkeys(
        (ids[planned.trainee], part.exercise, part.line_name)
        for planned in plan.sessions
        for part in planned.parts
    )
    found = {
        (line.trainee_id, line.exercise, line.name): _id(line.id)
        for trainee_id in dict.fromkeys(trainee_id for trainee_id, _, _ in wanted)
        for line in repository.lines(trainee_id)
    }
    missing = [Line(*key) for key in wanted if key not in found]
    changes = repository.save(*missing)
    for line in changes.saved:
        found[(line.trainee_id, line.exercise, line.name)] = _id(line.id)
    return found, changes


def _with_ids(
    planned: PlannedSession, ids: Mapping[str, int], line_ids: Mapping[tuple[int, str, str], int]
) -> Session:
    trainee_id = ids[planned.trainee]
    new = [
        part.on_line(line_ids[trainee_id, part.exercise, part.line_name]) for part in planned.parts
    ]
    session = planned.session
    return remade(session, trainee_id=trainee_id, lines=(*session.lines, *new))


def _id(value: int | None) -> int:
    assert value is not None, "what the store gives has an id"
    return value
