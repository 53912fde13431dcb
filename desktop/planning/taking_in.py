"""Taking files into the data: a planned log, a program, trainees; with what stood there before, so
that it can be undone.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Any

from db.changes import Changes
from db.errors import InvalidRecord
from db.log_import import ImportPlan
from db.log_saving import carrying_out
from db.repository import Repository
from db.steps import Steps
from db.trainee_files import TraineeFile as TraineeFile
from db.trainee_files import TraineesFile
from desktop.planning.arrivals import (
    CannotTake,
    check_program,
    check_trainees,
    take_program,
    take_trainees,
)
from desktop.planning.assignments import CannotAssign
from desktop.training.program import Program
from desktop.training.sentence import sentence, sentence_of
from desktop.training.session import Session
from desktop.training.table_mapping import TableMapping

Before = Mapping[tuple[type, Any], Any]
"""What stood there, by type and id, before something was written over it."""


@dataclass(frozen=True, slots=True)
class Parcel:
    """A program or trainees that came in; ``wrong`` says why they cannot be taken, "" if they can.
    ``there``: names that are there already and stay as they are.
    """

    content: Program | TraineesFile
    things: tuple[Program | TraineeFile, ...]
    wrong: str = ""
    there: tuple[str, ...] = ()


def taking_in(
    repository: Repository, plan: ImportPlan, tables: Sequence[TableMapping] | None = None
) -> Steps[tuple[Changes, Before]]:
    """Save a planned log step by step, and the coach's mappings where they are given; all of it in
    one transaction. Raises StoreError.
    """
    before: dict[tuple[type, Any], Any] = {
        (Session, each.session.id): repository.session(each.session.id)
        for each in plan.sessions
        if each.session.id is not None
    }
    with repository.transaction():
        result = yield from carrying_out(repository, plan)
        changes = result.changes
        if tables is not None:
            settings = repository.coach_settings()
            saved = repository.save(replace(settings, tables=tuple(tables)))
            changes = changes._replace(kinds=changes.kinds | saved.kinds)
    return changes, before


def parcel_of(repository: Repository, content: Program | TraineesFile) -> Parcel:
    """What is in a file of ours, and whether it can be taken; reads only."""
    wrong = ""
    try:
        if isinstance(content, Program):
            if check_program(repository, content):
                wrong = sentence("{name} is there already, exactly like this.", name=content.name)
        elif not check_trainees(repository, content):
            wrong = sentence("Everybody in this file is on the roster already.")
    except CannotTake as error:
        wrong = sentence_of(error)
    if isinstance(content, Program):
        return Parcel(content, (content,), wrong)
    known = {each.name for each in repository.trainees(archived=True)}
    there = tuple(o.trainee.name for o in content.trainees if o.trainee.name in known)
    return Parcel(content, content.trainees, wrong, there)


def take_parcel(repository: Repository, parcel: Parcel) -> Steps[tuple[Changes, Before]]:
    """Save a program or trainees. Raises StoreError."""
    yield 0.0
    try:
        if isinstance(parcel.content, Program):
            arrival = take_program(repository, parcel.content)
        else:
            arrival = take_trainees(repository, parcel.content)
    except (CannotTake, CannotAssign) as error:
        raise InvalidRecord(sentence_of(error)) from error
    return arrival.changes, {}
