"""Ready-made rules: what coaches usually let grow, as progression rules for one exercise.

The ranges are common practice; each is a starting point that a coach edits.
"""

from __future__ import annotations

from dataclasses import replace
from enum import StrEnum
from typing import Final

from desktop.training.exercises import Exercise, LoadingKind, Measure
from desktop.training.position import (
    Criterion,
    CriterionKind,
    Position,
    ProgressionRule,
    SchemeKind,
    SetScheme,
    Variable,
    VariableRange,
)
from desktop.training.program import Slot


class ReadyRule(StrEnum):
    """The ready-made rules by the variables that grow, fastest first."""

    LOAD = "load"
    REPS_LOAD = "reps, load"
    REPS_SETS_LOAD = "reps, sets, load"
    REPS_VARIATION = "reps, variation"
    HOLD_VARIATION = "hold, variation"
    HOLD_LOAD = "hold, load"
    TEMPO_REPS = "tempo, reps"
    TOTAL_REPS = "total reps"
    FIXED = ""


_FEW: Final = VariableRange(Variable.REPS, 5, 12)
_SOME: Final = VariableRange(Variable.REPS, 8, 12)
_SETS: Final = VariableRange(Variable.SETS, 3, 4)
_HOLD: Final = VariableRange(Variable.HOLD, 10, 30, 5)
_TEMPO: Final = VariableRange(Variable.TEMPO, 3, 5)
_TOTAL: Final = VariableRange(Variable.REPS, 20, 40, 2)
_VARIATION: Final = VariableRange(Variable.VARIATION)

_USUAL_LOAD_G: Final = {LoadingKind.BARBELL: 20_000}
_USUAL_SETS: Final = 3
_TOTAL_SETS: Final = 4


def rules_for(exercise: Exercise) -> tuple[ReadyRule, ...]:
    """The ready-made rules that fit an exercise; the usual one first."""
    scaled = exercise.loading is LoadingKind.BODYWEIGHT and len(exercise.variations) > 1
    if exercise.measure is Measure.HOLD:
        usual = ReadyRule.HOLD_VARIATION if scaled else ReadyRule.HOLD_LOAD
        return (usual, ReadyRule.FIXED)
    if scaled:
        return (
            ReadyRule.REPS_VARIATION,
            ReadyRule.REPS_LOAD,
            ReadyRule.REPS_SETS_LOAD,
            ReadyRule.TEMPO_REPS,
            ReadyRule.TOTAL_REPS,
            ReadyRule.FIXED,
        )
    return (
        ReadyRule.REPS_LOAD,
        ReadyRule.REPS_SETS_LOAD,
        ReadyRule.LOAD,
        ReadyRule.TEMPO_REPS,
        ReadyRule.TOTAL_REPS,
        ReadyRule.FIXED,
    )


def ready_rule(kind: ReadyRule, exercise: Exercise) -> ProgressionRule:
    """The rule ``kind`` with the exercise's own increment."""
    load = VariableRange(Variable.LOAD, increment=exercise.increment_g)
    last = _VARIATION if ReadyRule.REPS_VARIATION in rules_for(exercise) else load
    match kind:
        case ReadyRule.FIXED:
            return ProgressionRule()
        case ReadyRule.LOAD:
            return ProgressionRule((load,))
        case ReadyRule.REPS_LOAD:
            return ProgressionRule((_SOME, load))
        case ReadyRule.REPS_SETS_LOAD:
            return ProgressionRule((_SOME, _SETS, load))
        case ReadyRule.REPS_VARIATION:
            return ProgressionRule((_FEW, _VARIATION))
        case ReadyRule.HOLD_VARIATION:
            return ProgressionRule((_HOLD, _VARIATION))
        case ReadyRule.HOLD_LOAD:
            return ProgressionRule((_HOLD, load))
        case ReadyRule.TEMPO_REPS:
            return ProgressionRule((_TEMPO, _SOME, last))
        case _:  # a total
            return ProgressionRule(
                (_TOTAL, last),
                criterion=Criterion(CriterionKind.TOTAL),
                scheme=SetScheme(SchemeKind.TOTAL),
            )


def ready_rule_of(rule: ProgressionRule) -> ReadyRule | None:
    """Which ready-made rule lets the same variables grow in the same order; None for another."""
    variables = tuple(ranged.variable for ranged in rule.ranges)
    if rule.scheme.kind is SchemeKind.TOTAL:
        total = variables[:1] == (Variable.REPS,) and len(variables) == 2
        return ReadyRule.TOTAL_REPS if total else None
    named = ", ".join(variable.value for variable in variables)
    if variables[:2] == (Variable.TEMPO, Variable.REPS) and len(variables) == 3:
        return ReadyRule.TEMPO_REPS
    plain = [each for each in ReadyRule if each not in (ReadyRule.TEMPO_REPS, ReadyRule.TOTAL_REPS)]
    return next((each for each in plain if each.value == named), None)


def start_within(start: Position, rule: ProgressionRule, exercise: Exercise) -> Position:
    """``start`` brought into the rule's ranges, counting what the exercise counts.

    What is inside stays as it is. Repetitions of a total scheme are taken for all sets together.
    """
    fitted = _counting(start, exercise)
    for ranged in rule.ranges:
        if ranged.variable is Variable.VARIATION:
            fitted = _on_scale(fitted, ranged, exercise)
        elif ranged.variable is not Variable.LOAD:
            fitted = fitted.at(ranged.variable, _clipped(fitted, ranged))
    if rule.range_of(Variable.TEMPO) is None:
        fitted = replace(fitted, tempo_s=None)
    if rule.scheme.kind is SchemeKind.TOTAL:
        fitted = replace(fitted, sets=max(fitted.sets, _TOTAL_SETS))
    return fitted


def new_slot(exercise: Exercise, kind: ReadyRule | None = None) -> Slot:
    """A slot for ``exercise`` by the ready-made rule ``kind`` (None: the usual one)."""
    rule = ready_rule(kind or rules_for(exercise)[0], exercise)
    start = Position(load_g=_USUAL_LOAD_G.get(exercise.loading, 0), reps=5, sets=_USUAL_SETS)
    return Slot(exercise.key, rule, start_within(start, rule, exercise))


def with_ready_rule(slot: Slot, kind: ReadyRule, exercise: Exercise) -> Slot:
    """The slot by another ready-made rule. What a coach set besides the ranges stays: target RIR,
    misses, the line followed; repetitions become a total, or a total repetitions of one set.
    """
    ready = ready_rule(kind, exercise)
    rule = replace(
        slot.rule, ranges=ready.ranges, criterion=slot.rule.criterion, scheme=slot.rule.scheme
    )
    was_total = slot.rule.scheme.kind is SchemeKind.TOTAL
    is_total = ready.scheme.kind is SchemeKind.TOTAL
    start = slot.start
    if was_total != is_total:
        rule = replace(rule, criterion=ready.criterion, scheme=ready.scheme)
        if start.reps is not None:
            sets = max(start.sets, 1)
            start = replace(
                start, reps=start.reps * sets if is_total else max(1, start.reps // sets)
            )
    return replace(slot, rule=rule, start=start_within(start, rule, exercise))


def exchanged(slot: Slot, exercise: Exercise, before: Exercise) -> Slot:
    """The slot with another exercise in place of ``before``.

    Sets, rest and note stay. The rule stays where both exercises load and count alike, with the
    new increment; else the usual rule is taken. The load stays only where both load alike: it was
    chosen for the other exercise, and a coach looks at it.
    """
    alike = (exercise.loading, exercise.measure) == (before.loading, before.measure)
    rule = slot.rule if alike else ready_rule(rules_for(exercise)[0], exercise)
    if alike:
        rule = replace(rule, ranges=tuple(_moved(one, exercise, before) for one in rule.ranges))
    start = replace(slot.start, variation=None)
    if not alike:
        start = replace(start, load_g=_USUAL_LOAD_G.get(exercise.loading, 0))
    return replace(
        slot, exercise=exercise.key, rule=rule, start=start_within(start, rule, exercise)
    )


def _moved(ranged: VariableRange, exercise: Exercise, before: Exercise) -> VariableRange:
    """A range for another exercise: its increment, and no variation of the one before."""
    if ranged.variable is Variable.VARIATION:
        return replace(ranged, easiest=None, hardest=None)
    if ranged.variable is Variable.LOAD and ranged.increment == before.increment_g:
        return replace(ranged, increment=exercise.increment_g)
    return replace(ranged, floors=())


def _counting(start: Position, exercise: Exercise) -> Position:
    """Repetitions or seconds, as the exercise counts; a variation where it has a scale."""
    if exercise.measure is Measure.HOLD:
        start = replace(start, reps=None, hold_s=start.hold_s or _HOLD.floor)
    else:
        start = replace(start, hold_s=None, reps=start.reps or _SOME.floor)
    keys = [variation.key for variation in exercise.variations]
    if start.variation is None and keys:
        start = replace(start, variation=keys[0])
    return start


def _on_scale(start: Position, ranged: VariableRange, exercise: Exercise) -> Position:
    keys = [variation.key for variation in exercise.variations]
    if start.variation not in keys or ranged.easiest not in (None, *keys):
        return start
    first = keys.index(ranged.easiest) if ranged.easiest else 0
    last = keys.index(ranged.hardest) if ranged.hardest in keys else len(keys) - 1
    place = min(max(keys.index(start.variation), first), max(first, last))
    return replace(start, variation=keys[place])


def _clipped(start: Position, ranged: VariableRange) -> int:
    floor = ranged.floor_at(start.variation)
    value = start.value(ranged.variable)
    if value is None:
        return floor
    top = value if ranged.ceiling is None else ranged.ceiling
    return max(floor, min(value, top))
