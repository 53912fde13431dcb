"""Starts by percentage: a slot's first load as a share of the maximum that the trend tells.

Reckoned once, on the day that a program is given: from then on the line moves by its rule.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import date
from math import exp
from typing import Final

from desktop.planning.history import History
from desktop.planning.surroundings import equipment_on, surroundings_on
from desktop.planning.weeks import forecast_of
from desktop.training.demand import load_at
from desktop.training.position import Position
from desktop.training.program import Line, LineStart, Slot

KIND: Final = "history"
"""A start that is found in the record: the first sessions may correct it."""


@dataclass(frozen=True, slots=True)
class PercentStart:
    """The load that ``percent`` of the estimated maximum is, in grams of effective load, rounded
    down to what can be loaded. ``plus_minus``: the fraction that the maximum may be off (80 %).
    """

    percent: float
    maximum_g: float
    plus_minus: float
    position: Position


def percent_start(history: History, slot: Slot, day: date) -> PercentStart | None:
    """Where ``slot`` starts on ``day``; None where it asks for no percentage, nothing tells the
    maximum yet, or no load that low can be made.
    """
    percent = slot.rule.start_percent
    if percent is None:
        return None
    told = _maximum(history, slot, day)
    if told is None:
        return None
    maximum_g, spread = told
    exercise = history.library.exercises[slot.exercise]
    around = surroundings_on(
        exercise,
        history.trainee,
        equipment_on(history.equipment, day),
        history.body_mass_on(day),
        also=frozenset(key for key in (slot.start.variation,) if key),
    )
    load_g = load_at(maximum_g * percent / 100, slot.start.variation, around)
    if load_g is None:
        return None
    if around.loads_g is None:
        step = max(1, exercise.increment_g)
        load_g = load_g // step * step
    return PercentStart(percent, maximum_g, spread, replace(slot.start, load_g=load_g))


def with_percent_start(history: History, line: Line, slot: Slot, day: date) -> Line | None:
    """The line with its start by percentage on ``day``, to be saved; None where there is none."""
    found = percent_start(history, slot, day)
    if found is None:
        return None
    start = LineStart(day, found.position, KIND, found.plus_minus)
    kept = tuple(one for one in line.starts if one.day != day)
    return replace(line, starts=(*kept, start))


def _maximum(history: History, slot: Slot, day: date) -> tuple[float, float] | None:
    """The maximum on ``day`` with its spread: of the slot's own line, else of the exercise's line
    that was trained last.
    """
    lines = [line for line in history.lines if line.exercise == slot.exercise and line.id]
    trained = {line.id: history.done(line.id or 0) for line in lines}
    lines.sort(
        key=lambda line: (
            line.name == slot.line_name,
            max((session.day for session, _ in trained[line.id]), default=date.min),
        ),
        reverse=True,
    )
    for line in lines:
        forecast = forecast_of(history, line)
        if forecast is not None:
            mean, sd = forecast(day)
            return exp(mean), exp(1.2816 * sd) - 1
    return None
