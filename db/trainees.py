"""Trainees, and the dated facts about them that have no parts."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any, TypeVar

from db import schema
from db.changes import Kind
from db.shelf import Dependants, Reference, Shelf
from db.validity import (
    check_absence,
    check_activity,
    check_assignment,
    check_body_mass,
    check_deload,
    check_dismissed,
    check_goal,
    check_remembered_name,
    check_trainee,
)
from desktop.training.program import Assignment
from desktop.training.sentence import sentence
from desktop.training.session import Activity
from desktop.training.trainee import (
    Absence,
    BodyMass,
    DeloadWindow,
    DismissedCaution,
    EquipmentFrom,
    Goal,
    RememberedName,
    Trainee,
)

A = TypeVar("A")

OF_TRAINEE = Reference("trainee_id", schema.Trainee)


class TraineeShelf(Shelf[Trainee]):
    """The people trained. All that is theirs goes with them."""

    kind = Kind.TRAINEE
    record = Trainee
    table = schema.Trainee
    unique = ("name",)
    dependants = tuple(
        Dependants(kind, "trainee_id")
        for kind in (
            Kind.BODY_MASS,
            Kind.EQUIPMENT,
            Kind.LINE,
            Kind.ASSIGNMENT,
            Kind.SESSION,
            Kind.SESSION_CHANGE,
            Kind.ACTIVITY,
            Kind.DELOAD,
            Kind.ABSENCE,
            Kind.GOAL,
            Kind.DISMISSED,
            Kind.REMEMBERED_NAME,
        )
    )

    def called(self, aggregate: Trainee) -> str:
        return sentence("a trainee called {name}", name=aggregate.name)

    def check(self, aggregates: Sequence[Trainee]) -> None:
        for trainee in aggregates:
            check_trainee(trainee)


class FactShelf(Shelf[A]):
    """One kind of dated facts about trainees.

    ``check`` raises InvalidRecord where a fact cannot be; ``once`` names what there is once only,
    and ``called`` says what to call it; ``also`` are references beside that to the trainee.
    """

    def __init__(
        self,
        kind: Kind,
        record: type[A],
        table: type[schema.OfTrainee],
        check: Callable[[A], None] = lambda _fact: None,
        *,
        once: str = "",
        called: Callable[[A], str] = lambda _fact: "",
        also: tuple[Reference, ...] = (),
    ) -> None:
        self.kind = kind
        self.record = record
        self.table = table
        self.unique = ("trainee_id", once) if once else ()
        self.references = (OF_TRAINEE, *also)
        self._check = check
        self._called = called
        super().__init__()

    def called(self, aggregate: A) -> str:
        return self._called(aggregate)

    def check(self, aggregates: Sequence[A]) -> None:
        for fact in aggregates:
            self._check(fact)


def shelves_of_trainees() -> tuple[Shelf[Any], ...]:
    """One shelf for each kind of this file."""
    return (
        TraineeShelf(),
        FactShelf(
            Kind.BODY_MASS, BodyMass, schema.BodyMass, check_body_mass,
            once="day", called=lambda mass: sentence("a body mass for {day}", day=mass.day),
        ),
        FactShelf(
            Kind.EQUIPMENT, EquipmentFrom, schema.EquipmentFrom,
            once="day", called=lambda had: sentence("a list of equipment from {day}", day=had.day),
        ),
        FactShelf(
            Kind.ASSIGNMENT, Assignment, schema.Assignment, check_assignment,
            also=(Reference("program_id", schema.Program),),
        ),
        FactShelf(Kind.ACTIVITY, Activity, schema.Activity, check_activity),
        FactShelf(Kind.DELOAD, DeloadWindow, schema.DeloadWindow, check_deload),
        FactShelf(Kind.ABSENCE, Absence, schema.Absence, check_absence),
        FactShelf(
            Kind.GOAL, Goal, schema.Goal, check_goal, also=(Reference("line_id", schema.Line),)
        ),
        FactShelf(Kind.DISMISSED, DismissedCaution, schema.DismissedCaution, check_dismissed),
        FactShelf(
            Kind.REMEMBERED_NAME, RememberedName, schema.RememberedName, check_remembered_name,
            once="text", called=lambda name: sentence("a meaning of {text!r}", text=name.text),
            also=(Reference("exercise", schema.Exercise, "key"),),
        ),
    )  # fmt: skip
