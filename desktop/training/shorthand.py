"""Shorthand: a slot typed in one line, as coaches write it: "back squat 3 x 8-12 60 kg"."""

from __future__ import annotations

import re
from dataclasses import dataclass, replace
from typing import Final

from desktop.training.exercises import Exercise, Measure
from desktop.training.position import ProgressionRule, Variable, VariableRange
from desktop.training.program import Slot
from desktop.training.quantities import InvalidQuantity, Unit, grams, parse_decimal
from desktop.training.rules import new_slot, start_within

_WORK: Final = re.compile(
    r"(?:^|\s)(?P<sets>[0-9]{1,2})\s*[x×*]\s*(?P<low>[0-9]{1,4})"
    r"(?:\s*(?:-|–|to)\s*(?P<high>[0-9]{1,4}))?(?P<seconds>\s*s(?:ec)?\b)?",
    re.IGNORECASE,
)
_LOAD: Final = re.compile(
    r"^\s*(?:at|@|with)?\s*(?P<load>[+-]?[0-9][0-9.,]*)\s*(?P<unit>kg|lb)?", re.IGNORECASE
)
_MOST_SETS: Final = 20
_MOST: Final = 999


@dataclass(frozen=True, slots=True)
class Shorthand:
    """What a line says: the part that names the exercise, and the work where it is given.

    ``low`` and ``high``: repetitions or seconds, the same where no range was typed.
    """

    name: str
    sets: int | None = None
    low: int | None = None
    high: int | None = None
    seconds: bool = False
    load_g: int | None = None


def read_shorthand(text: str, unit: Unit) -> Shorthand:
    """Read a line; numbers without a unit are loads in ``unit``. What cannot be read as work
    belongs to the name.
    """
    found = _WORK.search(text)
    if found is None:
        return Shorthand(text.strip())
    sets, low = int(found["sets"]), int(found["low"])
    high = int(found["high"] or low)
    if not (1 <= sets <= _MOST_SETS and 1 <= low <= high <= _MOST):
        return Shorthand(text.strip())
    load_g = _load(text[found.end() :], unit)
    return Shorthand(text[: found.start()].strip(), sets, low, high, bool(found["seconds"]), load_g)


def slot_from(said: Shorthand, exercise: Exercise) -> Slot:
    """A slot for ``exercise`` by its usual rule, with the sets, range and load that were said."""
    slot = new_slot(exercise)
    start, rule = slot.start, slot.rule
    if said.sets is not None and said.low is not None and said.high is not None:
        variable = Variable.HOLD if exercise.measure is Measure.HOLD else Variable.REPS
        rule = _with_range(rule, variable, said.low, said.high)
        start = replace(start.at(variable, said.low), sets=said.sets)
    if said.load_g is not None:
        start = replace(start, load_g=said.load_g)
    return replace(slot, rule=rule, start=start_within(start, rule, exercise))


def _with_range(rule: ProgressionRule, variable: Variable, low: int, high: int) -> ProgressionRule:
    """The rule with this range; without the variable where no range is left to grow in."""
    ranges: list[VariableRange] = []
    for each in rule.ranges:
        if each.variable is not variable:
            ranges.append(each)
        elif high > low:
            step = each.increment if (high - low) % each.increment == 0 else 1
            ranges.append(replace(each, floor=low, ceiling=high, increment=step, floors=()))
    return replace(rule, ranges=tuple(ranges))


def _load(rest: str, unit: Unit) -> int | None:
    found = _LOAD.match(rest)
    if found is None:
        return None
    try:
        number = parse_decimal(found["load"].rstrip(".,"))
        return grams(number, Unit(found["unit"].lower()) if found["unit"] else unit)
    except InvalidQuantity:
        return None
