"""Another variable: what may grow besides, where a line stands still or its rule is complete.

The rule gets one range more, which begins where the line stands, so that nothing harder is asked at
once. That one adds sets or repetitions before load is common practice.
"""

from __future__ import annotations

from dataclasses import replace
from typing import Final

from desktop.training.position import (
    Position,
    ProgressionRule,
    SchemeKind,
    Variable,
    VariableRange,
)

MORE_REPS: Final = 4
MORE_SETS: Final = 1
MOST_SETS: Final = 6
"""More sets of one exercise are not proposed (common practice)."""

_COSTLY: Final = (Variable.LOAD, Variable.VARIATION)


def another_variable(
    rule: ProgressionRule, position: Position, most_sets: int = MOST_SETS
) -> tuple[VariableRange, ProgressionRule] | None:
    """The range that may grow besides, and ``rule`` with it: repetitions where only the load or the
    variation grows, else sets up to ``most_sets``.

    None where the line follows another, counts a total, or has both already.
    """
    if rule.follow is not None or rule.scheme.kind is SchemeKind.TOTAL:
        return None
    counted = {Variable.REPS, Variable.HOLD} & {each.variable for each in rule.ranges}
    if position.reps is not None and not counted:
        added = VariableRange(Variable.REPS, position.reps, position.reps + MORE_REPS)
    elif rule.range_of(Variable.SETS) is None and position.sets + MORE_SETS <= most_sets:
        added = VariableRange(Variable.SETS, position.sets, position.sets + MORE_SETS)
    else:
        return None
    place = _place(rule)
    if any(_is_open(each) for each in rule.ranges[:place]):
        return None
    ranges = (*rule.ranges[:place], added, *rule.ranges[place:])
    return added, replace(rule, ranges=ranges)


def _place(rule: ProgressionRule) -> int:
    """Before the first range that makes an exercise heavier or harder; else at the end."""
    costly = [place for place, each in enumerate(rule.ranges) if each.variable in _COSTLY]
    return costly[0] if costly else len(rule.ranges)


def _is_open(ranged: VariableRange) -> bool:
    return ranged.ceiling is None and ranged.variable is not Variable.VARIATION
