"""Trainees, and the dated facts about them that have no parts."""

from __future__ import annotations

from typing import Any

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

    def check(self, aggregate: Trainee) -> None:
        check_trainee(aggregate)


class BodyMassShelf(Shelf[BodyMass]):
    """Body mass, once a day at most."""

    kind = Kind.BODY_MASS
    record = BodyMass
    table = schema.BodyMass
    unique = ("trainee_id", "day")
    references = (OF_TRAINEE,)

    def called(self, aggregate: BodyMass) -> str:
        return sentence("a body mass for {day}", day=aggregate.day)

    def check(self, aggregate: BodyMass) -> None:
        check_body_mass(aggregate)


class EquipmentShelf(Shelf[EquipmentFrom]):
    """What a trainee can use, from a day on."""

    kind = Kind.EQUIPMENT
    record = EquipmentFrom
    table = schema.EquipmentFrom
    unique = ("trainee_id", "day")
    references = (OF_TRAINEE,)

    def called(self, aggregate: EquipmentFrom) -> str:
        return sentence("a list of equipment from {day}", day=aggregate.day)


class AssignmentShelf(Shelf[Assignment]):
    """Which program a trainee follows, from when to when."""

    kind = Kind.ASSIGNMENT
    record = Assignment
    table = schema.Assignment
    references = (OF_TRAINEE, Reference("program_id", schema.Program))

    def check(self, aggregate: Assignment) -> None:
        check_assignment(aggregate)


class ActivityShelf(Shelf[Activity]):
    """Other activities."""

    kind = Kind.ACTIVITY
    record = Activity
    table = schema.Activity
    references = (OF_TRAINEE,)

    def check(self, aggregate: Activity) -> None:
        check_activity(aggregate)


class DeloadShelf(Shelf[DeloadWindow]):
    """Easier weeks."""

    kind = Kind.DELOAD
    record = DeloadWindow
    table = schema.DeloadWindow
    references = (OF_TRAINEE,)

    def check(self, aggregate: DeloadWindow) -> None:
        check_deload(aggregate)


class AbsenceShelf(Shelf[Absence]):
    """Spans without training."""

    kind = Kind.ABSENCE
    record = Absence
    table = schema.Absence
    references = (OF_TRAINEE,)

    def check(self, aggregate: Absence) -> None:
        check_absence(aggregate)


class GoalShelf(Shelf[Goal]):
    """Goals on a line."""

    kind = Kind.GOAL
    record = Goal
    table = schema.Goal
    references = (OF_TRAINEE, Reference("line_id", schema.Line))

    def check(self, aggregate: Goal) -> None:
        check_goal(aggregate)


class DismissedShelf(Shelf[DismissedCaution]):
    """Cautions set aside."""

    kind = Kind.DISMISSED
    record = DismissedCaution
    table = schema.DismissedCaution
    references = (OF_TRAINEE,)

    def check(self, aggregate: DismissedCaution) -> None:
        check_dismissed(aggregate)


class RememberedNameShelf(Shelf[RememberedName]):
    """What trainees call exercises in their notes."""

    kind = Kind.REMEMBERED_NAME
    record = RememberedName
    table = schema.RememberedName
    unique = ("trainee_id", "text")
    references = (OF_TRAINEE, Reference("exercise", schema.Exercise, "key"))

    def called(self, aggregate: RememberedName) -> str:
        return sentence("a meaning of {text!r}", text=aggregate.text)

    def check(self, aggregate: RememberedName) -> None:
        check_remembered_name(aggregate)


def shelves_of_trainees() -> tuple[Shelf[Any], ...]:
    """One shelf for each kind of this file."""
    return (
        TraineeShelf(),
        BodyMassShelf(),
        EquipmentShelf(),
        AssignmentShelf(),
        ActivityShelf(),
        DeloadShelf(),
        AbsenceShelf(),
        GoalShelf(),
        DismissedShelf(),
        RememberedNameShelf(),
    )
