"""How demanding a position is, so that two of them can be compared on one axis.

Demand = effective load x (1 + repetitions / 30): Epley's equation used for comparison only, at any
number of repetitions. Body mass is that of the day on both sides, so that a change of body mass
never causes a step.
"""

from __future__ import annotations

from dataclasses import replace
from math import ceil, floor

from desktop.training.loads import next_down, next_up, round_down
from desktop.training.position import Position, ScaledVariation, SchemeKind, SetScheme, Surroundings

ROUNDING_G = 1e-6  # floating-point dust, in grams, that must not cost a whole gram


def scaled(surroundings: Surroundings, key: str | None) -> ScaledVariation | None:
    """The variation called ``key`` on the scale, None where it is not there."""
    return next((step for step in surroundings.scale if step.key == key), None)


def rank(surroundings: Surroundings, key: str | None) -> int | None:
    """Place of a variation on the scale, 0 the easiest; None where it is unknown."""
    for place, step in enumerate(surroundings.scale):
        if step.key == key:
            return place
    return None


def body_part_g(variation: str | None, surroundings: Surroundings) -> float | None:
    """Grams of body mass that the variation moves; 0 with external load, None when unknown."""
    if not surroundings.bodyweight:
        return 0.0
    step = scaled(surroundings, variation)
    if step is None or step.share is None or surroundings.body_mass_g is None:
        return None
    return step.share * surroundings.body_mass_g


def effective_load_g(
    load_g: int, variation: str | None, surroundings: Surroundings
) -> float | None:
    """Effective load in grams; None where the share is not known or nothing is left to lift."""
    body = body_part_g(variation, surroundings)
    if body is None or body + load_g <= 0:
        return None
    return body + load_g


def demand(load_g: int, reps: float, variation: str | None, around: Surroundings) -> float | None:
    """Demand of one set in grams; None where the effective load is not known."""
    effective = effective_load_g(load_g, variation, around)
    return None if effective is None else effective * (1 + reps / 30)


def reps_per_set(position: Position, scheme: SetScheme) -> float | None:
    """Repetitions of one set, also where the position counts the total; None for holds."""
    if position.reps is None:
        return None
    if scheme.kind is SchemeKind.TOTAL:
        return position.reps / position.sets
    return position.reps


def position_demand(
    position: Position, scheme: SetScheme, surroundings: Surroundings
) -> float | None:
    """Demand of the lead set; for holds the effective load alone; None where unknown."""
    reps = reps_per_set(position, scheme)
    return demand(position.load_g, reps or 0.0, position.variation, surroundings)


def load_at(effective_g: float, variation: str | None, surroundings: Surroundings) -> int | None:
    """The greatest reachable load that asks no more than ``effective_g``; None when there is none.

    Where any load can be made (``loads_g`` None), whole grams.
    """
    body = body_part_g(variation, surroundings)
    if body is None:
        return None
    wanted = floor(effective_g - body + ROUNDING_G)
    if surroundings.loads_g is None:
        return wanted if surroundings.bodyweight or wanted > 0 else None
    return round_down(surroundings.loads_g, wanted)


def load_up(surroundings: Surroundings, load_g: int) -> int | None:
    """The smallest reachable load of at least ``load_g``."""
    return load_g if surroundings.loads_g is None else next_up(surroundings.loads_g, load_g)


def eased_to(effective_g: float, load_g: int, variation: str | None, around: Surroundings) -> int:
    """The load that asks no more than ``effective_g``, never above ``load_g``; the lightest there
    is where none is that light.
    """
    load = load_at(effective_g, variation, around)
    if load is None:
        load = load_up(around, -(10**9) if around.bodyweight else 1)
    return load_g if load is None else min(load, load_g)


def load_down(surroundings: Surroundings, load_g: int, step_g: int) -> int | None:
    """The greatest reachable load below ``load_g``; without equipment, one step lower."""
    if surroundings.loads_g is not None:
        return next_down(surroundings.loads_g, load_g)
    lower = load_g - step_g
    return lower if surroundings.bodyweight or lower > 0 else None


def lighter(
    position: Position, percent: float, step_g: int, surroundings: Surroundings
) -> Position | None:
    """The position with its effective load ``percent`` lower, at least one step of ``step_g``,
    rounded down to a reachable load (the lowest there is where none is that low); None where no
    lower load can be made.
    """
    least = load_down(surroundings, position.load_g, step_g)
    if least is None:
        return None
    effective = effective_load_g(position.load_g, position.variation, surroundings)
    if effective is None:
        return replace(position, load_g=least)
    eased = effective * (1 - percent / 100)
    at_least_one = effective_load_g(position.load_g - step_g, position.variation, surroundings)
    if at_least_one is not None:
        eased = min(eased, at_least_one)
    if surroundings.loads_g is None:
        steps = ceil((effective - eased - ROUNDING_G) / step_g)
        return replace(position, load_g=position.load_g - steps * step_g)
    reached = load_at(eased, position.variation, surroundings)
    return replace(position, load_g=surroundings.loads_g[0] if reached is None else reached)
