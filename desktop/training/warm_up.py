"""Warm-up: rising lighter sets before the first working set, of reachable loads only.

Percentages, repetitions and thresholds are common practice, without a published source.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

from desktop.training.loads import next_down, round_down
from desktop.training.quantities import at_least
from desktop.training.session import AskedSet


@dataclass(frozen=True, slots=True)
class RampStep:
    """One warm-up set: percent of the working set's effective load, and its repetitions."""

    percent: float
    reps: int


@dataclass(frozen=True, slots=True)
class Ramp:
    """How to warm up. All common practice.

    ``steps`` in rising order. Up to ``light_g`` (grams of effective load per implement) no ramp is
    needed. From ``many_reps`` on the working set is light in itself and the last step is left out.
    No step lies above ``closest_percent`` of the working set. Where the equipment is not known
    (any load), loads are rounded down to ``grid_g``.
    """

    steps: tuple[RampStep, ...] = (RampStep(40, 5), RampStep(60, 3), RampStep(80, 2))
    light_g: int = 10_000
    many_reps: int = 12
    closest_percent: float = 85.0
    grid_g: int = 500


RAMP: Final = Ramp()


def warm_up_ramp(
    work_load_g: int,
    reps: int | None,
    loads: Sequence[int] | None,
    *,
    bodyweight: bool = False,
    body_part_g: float | None = None,
    variation: str | None = None,
    ramp: Ramp = RAMP,
) -> tuple[AskedSet, ...]:
    """The warm-up sets before a working set of ``reps`` at ``work_load_g``, lightest first.

    ``loads``: reachable loads in grams, sorted (None: any). With ``bodyweight`` the loads lie on
    the signed axis and ``body_part_g`` is the part of body mass that is moved (None: unknown);
    percentages are then of effective load, and there is a ramp only where load is added to the
    body, which the body alone begins. Loads rise from set to set and stay below the working one;
    where the lightest load is too near to it, there is no ramp. Holds (``reps`` None) have none.
    """
    body_g = (body_part_g or 0.0) if bodyweight else 0.0
    work_g = body_g + work_load_g
    if reps is None or work_load_g <= 0 or work_g <= ramp.light_g:
        return ()
    able = None if loads is None else _lighter(work_load_g, loads, 0 if bodyweight else 1)
    most_g = work_g * ramp.closest_percent / 100 - body_g
    steps = ramp.steps[:-1] if reps >= ramp.many_reps else ramp.steps
    asked = [(0, step.reps) for step in steps[:1] if bodyweight]
    for step in steps:
        load_g = _reached(work_g * step.percent / 100 - body_g, able, ramp.grid_g)
        if load_g is not None and 0 < load_g <= most_g:
            asked.append((load_g, step.reps))
    return tuple(
        AskedSet(load_g=load_g, reps=times, variation=variation) for load_g, times in _rising(asked)
    )


def _lighter(work_load_g: int, loads: Sequence[int], least_g: int) -> tuple[int, ...]:
    """What can be made from ``least_g`` up to below the working load."""
    heaviest = next_down(loads, work_load_g)
    return tuple(g for g in loads if heaviest is not None and least_g <= g <= heaviest)


def _reached(wanted_g: float, loads: Sequence[int] | None, grid_g: int) -> int | None:
    """The load wanted, rounded down; the lightest where all are heavier; None where none is."""
    if loads is None:
        return int(wanted_g // grid_g) * grid_g
    lower = round_down(loads, int(wanted_g))
    return lower if lower is not None else next(iter(loads), None)


def _rising(asked: Sequence[tuple[int, int]]) -> list[tuple[int, int]]:
    """Without a set whose load the one before it has already reached."""
    kept: list[tuple[int, int]] = []
    for load_g, reps in asked:
        if not kept or not at_least(kept[-1][0], load_g):
            kept.append((load_g, reps))
    return kept
