"""Surroundings: what a line can be loaded with and set up, and what the body weighs, by date."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from datetime import date
from typing import Final

from desktop.planning.history import History, Part, body_mass_on
from desktop.training.equipment import Equipment
from desktop.training.exercises import Exercise, LoadingKind
from desktop.training.loading import reachable
from desktop.training.position import ProgressionRule, Surroundings, Variable
from desktop.training.program import Line
from desktop.training.scale import ALL_FAMILIES, family_of, scale
from desktop.training.state import Surrounded
from desktop.training.trainee import BodyMass, EquipmentFrom, Trainee


@dataclass(frozen=True, slots=True)
class Scope:
    """Which variations of an exercise concern a line: its ``families`` from their days on (empty:
    the main one), and the keys on record, which stay on the scale when they cannot be set up.
    """

    families: tuple[tuple[date, str], ...] = ()
    also: frozenset[str] = frozenset()

    def family_on(self, day: date) -> str | None:
        """The family of ``day``; before the first, that one. None: the main family."""
        begun = [family for since, family in self.families if since <= day]
        return begun[-1] if begun else self.families[0][1] if self.families else None


NO_SCOPE: Final = Scope()
"""The main family, and nothing on record."""


def surroundings_on(
    exercise: Exercise,
    trainee: Trainee,
    equipment: Equipment | None,
    body_mass_g: int | None,
    *,
    family: str | None = None,
    also: frozenset[str] = frozenset(),
) -> Surroundings:
    """What surrounds a line of ``exercise`` with this equipment (None: not recorded).

    Where nothing that loads the exercise is recorded, any load is possible. Body mass counts for
    bodyweight exercises only. ``family`` and ``also`` as in `scale`.
    """
    bodyweight = exercise.loading is LoadingKind.BODYWEIGHT
    loads = reachable(equipment, exercise) if equipment is not None else ()
    return Surroundings(
        loads_g=loads or None,
        scale=scale(exercise, trainee, equipment, family, also),
        body_mass_g=body_mass_g if bodyweight else None,
        bodyweight=bodyweight,
    )


def surrounded_events(
    exercise: Exercise,
    trainee: Trainee,
    equipment: Sequence[EquipmentFrom],
    body_masses: Sequence[BodyMass],
    scope: Scope = NO_SCOPE,
) -> tuple[Surrounded, ...]:
    """One event for each day on which equipment, body mass (both sorted by day) or the family of
    variations changes.

    Days on which several change give one event, days that change nothing for the exercise none.
    """
    days = {entry.day for entry in equipment}
    if exercise.loading is LoadingKind.BODYWEIGHT:
        days |= {entry.day for entry in body_masses} | {day for day, _ in scope.families}
    known: dict[tuple[Equipment | None, str | None], Surroundings] = {}
    events: list[Surrounded] = []
    for day in sorted(days):
        key = (equipment_on(equipment, day), scope.family_on(day))
        if key not in known:
            owned, family = key
            known[key] = surroundings_on(
                exercise, trainee, owned, None, family=family, also=scope.also
            )
        around = known[key]
        if around.bodyweight:
            around = replace(around, body_mass_g=body_mass_on(body_masses, day))
        if not events or events[-1].surroundings != around:
            events.append(Surrounded(day, around))
    return tuple(events)


def scope_of(history: History, line: Line, rules: Iterable[ProgressionRule]) -> Scope:
    """The variations that concern a line: by its starts, overrides and rules, and its record.

    The family follows what the coach or the first session named; a rule from one family to
    another mixes them all.
    """
    exercise = history.exercise_of(line)
    if exercise.loading is not LoadingKind.BODYWEIGHT:
        return NO_SCOPE
    named = [
        (session.day, part.working_sets[0].variation) for session, part in history.trained(line)[:1]
    ]
    named += [(one.day, one.position.variation) for one in line.starts]
    named += [(one.day, one.position.variation) for one in line.overrides]
    ends = [
        (ranged.easiest, ranged.hardest)
        for rule in rules
        if (ranged := rule.range_of(Variable.VARIATION)) is not None
    ]
    parts = [part for _, part in parts_of(history, line)]
    done = {each.variation for part in parts for each in part.sets}
    done |= {each.variation for part in parts for each in part.asked}
    keys = done | {key for _, key in named} | {key for pair in ends for key in pair}
    mixed = any(
        first and last and family_of(exercise, first) != family_of(exercise, last)
        for first, last in ends
    )
    days = [(day, ALL_FAMILIES if mixed else family_of(exercise, key)) for day, key in named if key]
    return Scope(tuple(sorted(days, key=lambda one: one[0])), frozenset(key for key in keys if key))


def equipment_on(entries: Iterable[EquipmentFrom], day: date) -> Equipment | None:
    """What could be used on ``day`` by the sorted ``entries``; None before the first."""
    owned: Equipment | None = None
    for entry in entries:
        if entry.day > day:
            break
        owned = entry.equipment
    return owned


def surroundings_at(
    history: History, line: Line, day: date, scope: Scope = NO_SCOPE
) -> Surroundings:
    """What surrounds ``line`` on ``day``."""
    return surroundings_on(
        history.exercise_of(line),
        history.trainee,
        equipment_on(history.equipment, day),
        history.body_mass_on(day),
        family=scope.family_on(day),
        also=scope.also,
    )


def surrounded_of(history: History, line: Line, scope: Scope = NO_SCOPE) -> tuple[Surrounded, ...]:
    """The changes of what surrounds ``line``, by day."""
    return surrounded_events(
        history.exercise_of(line), history.trainee, history.equipment, history.body_masses, scope
    )


def parts_of(history: History, line: Line) -> tuple[Part, ...]:
    """Every session part of a line, oldest first; a line not saved yet has none."""
    return () if line.id is None else history.done(line.id)
