"""Wishes: what a program is held against, for the trainee chosen or for nobody yet."""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping

from desktop.planning.outlook import Onlooker
from desktop.training.balance import Wishes
from desktop.training.exercises import Exercise, LoadingKind
from desktop.training.loading import reachable
from desktop.training.name_order import name_key
from desktop.training.position import Position
from desktop.training.program import Phase, Program, Slot
from desktop.training.scale import missing_needs


def wishes_of(onlooker: Onlooker, positions: Mapping[Slot, Position]) -> Wishes:
    """The trainee's minutes and weekdays; exercises that their equipment allows. ``positions``:
    where slots really stand (others count from their start).
    """
    trainee, equipment = onlooker.trainee, onlooker.equipment

    def can_do(exercise: Exercise) -> bool:
        if exercise.retired:
            return False
        if equipment is None:
            return True
        if missing_needs(exercise.needs, equipment):
            return False
        return exercise.loading is LoadingKind.BODYWEIGHT or bool(reachable(equipment, exercise))

    return Wishes(
        minutes=trainee.minutes_per_session,
        weekdays=trainee.weekdays,
        can_do=can_do,
        sessions_a_week=len(trainee.weekdays) or None,
        position_of=lambda slot: positions.get(slot, slot.start),
    )


def likely_first(
    exercises: Mapping[str, Exercise], program: Program, phase: Phase
) -> dict[str, Exercise]:
    """The exercises with those first that are likeliest to be proposed: loaded like what the
    program already asks for, not in the phase yet, then by the fewest variations to learn.
    """
    slots = [slot for each in program.phases for day in each.days for slot in day.slots]
    kinds = Counter(
        exercises[slot.exercise].loading for slot in slots if slot.exercise in exercises
    )
    used = {slot.exercise for day in phase.days for slot in day.slots}
    order = sorted(
        exercises.values(),
        key=lambda one: (one.key in used, -kinds[one.loading], one.unilateral, name_key(one.name)),
    )
    return {one.key: one for one in order}
