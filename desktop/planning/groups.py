"""A group on one day: everybody with training planned, in the order in which they are typed."""

from __future__ import annotations

from datetime import date

from db.repository import Repository
from desktop.planning.days import DayPlan, day_plan_of
from desktop.planning.history import read_history, read_library
from desktop.planning.schedule import absence_on, training_day_on


def group_plans(repository: Repository, day: date) -> tuple[DayPlan, ...]:
    """The plans of ``day`` of all who train then, by name: the order of `due_next`, so that
    sheets are typed back as they lie.
    """
    library = read_library(repository)
    plans = []
    for trainee in repository.trainees():
        assert trainee.id is not None
        history = read_history(repository, trainee.id, library)
        if training_day_on(history, day) is not None and absence_on(history, day) is None:
            plans.append(day_plan_of(history, day))
    return tuple(plans)
