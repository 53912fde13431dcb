"""Prescription: how one exercise is asked for, by level and aim: ranges, rest, reserve, start.

Rests of heavy sets and the repetitions of each level lie in the ranges of ACSM 2009, Med Sci
Sports Exerc 41(3):687-708; all else here is common practice, and a starting point to edit.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from enum import StrEnum
from typing import Final

from desktop.drafting.wishes import Aim, DraftWishes
from desktop.training.exercises import Exercise, LoadingKind, Measure, Pattern
from desktop.training.loading import reachable
from desktop.training.position import (
    BackOff,
    MissPolicy,
    Position,
    ProgressionRule,
    ScaledVariation,
    SchemeKind,
    SetScheme,
    Variable,
    VariableRange,
)
from desktop.training.program import Slot, TrainingDay
from desktop.training.rules import ReadyRule, ready_rule, rules_for
from desktop.training.scale import scale
from desktop.training.schedule import TIMING, session_minutes
from desktop.training.trainee import Experience, Trainee
from desktop.training.volume import LEGS, PULLS, PUSHES


class Role(StrEnum):
    """What an exercise is to a day."""

    SKILL = "skill"
    MAIN = "main"
    ASSISTANCE = "assistance"
    TRUNK = "trunk"
    SMALL = "small"


@dataclass(frozen=True, slots=True)
class Prescription:
    """How an exercise is asked for in each block of weeks; sets are chosen by the optimisation.

    ``fewest`` to ``most`` sets, ``usual`` where nothing speaks against it.
    """

    role: Role
    blocks: tuple[Slot, ...]
    fewest: int
    usual: int
    most: int


NOVICE: Final = Experience.NOVICE
_MINUTE: Final = 60

_RESTS: Final = {
    (Aim.STRENGTH, Role.MAIN): (120, 150, 180),
    (Aim.STRENGTH, Role.ASSISTANCE): (90, 90, 90),
    (Aim.SIZE, Role.MAIN): (90, 120, 120),
    (Aim.SIZE, Role.ASSISTANCE): (60, 75, 75),
    (Aim.SKILL, Role.MAIN): (90, 120, 120),
    (Aim.SKILL, Role.ASSISTANCE): (75, 75, 75),
}
_REST_SKILL: Final = 90
_REST_SHORT: Final = 60

# Repetitions (fewest, most) of loaded exercises by level; a second pair is for the second block.
_LOADED_REPS: Final = {
    (Aim.STRENGTH, Role.MAIN): (((8, 12),), ((6, 10), (4, 6)), ((5, 8), (3, 5))),
    (Aim.STRENGTH, Role.ASSISTANCE): (((8, 12),), ((8, 12),), ((6, 10),)),
    (Aim.SIZE, Role.MAIN): (((8, 12),), ((8, 12),), ((6, 10),)),
    (Aim.SIZE, Role.ASSISTANCE): (((8, 12),), ((10, 15),), ((10, 15),)),
    (Aim.SKILL, Role.MAIN): (((8, 12),), ((6, 10),), ((5, 8),)),
    (Aim.SKILL, Role.ASSISTANCE): (((8, 12),), ((8, 12),), ((8, 12),)),
}
_SMALL_REPS: Final = (10, 15)
_BODY_REPS: Final = {Aim.STRENGTH: (5, 10), Aim.SIZE: (8, 15), Aim.SKILL: (5, 10)}
_HARD_BODY_REPS: Final = (3, 8)
_HARD_BODY: Final = (Pattern.VERTICAL_PULL, Pattern.VERTICAL_PUSH)
_RESERVE: Final = {
    Experience.NOVICE: 3.0,
    Experience.INTERMEDIATE: 2.0,
    Experience.ADVANCED: 2.0,
}
_SETS: Final = {  # fewest, usual, most
    Role.SKILL: (3, 4, 5),
    Role.MAIN: (2, 3, 4),
    Role.ASSISTANCE: (2, 3, 4),
    Role.TRUNK: (2, 3, 3),
    Role.SMALL: (2, 2, 4),
}
_SKILL_HOLD: Final = VariableRange(Variable.HOLD, 5, 20, 5)
_TRUNK_HOLD: Final = VariableRange(Variable.HOLD, 15, 45, 5)
_CARRY_HOLD: Final = VariableRange(Variable.HOLD, 20, 40, 5)

# A body's share that each level can be asked to begin with (hanging or supported on the hands it
# is nearly the whole body, or none); where only the order is known, how far up the scale.
_FIRST_SHARE: Final = (0.67, 0.80, 0.95)
_FIRST_HARD_SHARE: Final = (0.67, 0.97, 1.0)
_FIRST_PLACE: Final = (0.0, 0.25, 0.35)
_FIRST_LOAD_G: Final = {
    LoadingKind.BARBELL: (20_000, 20_000, 20_000),
    LoadingKind.DUMBBELL: (6_000, 8_000, 10_000),
    LoadingKind.KETTLEBELL: (8_000, 12_000, 16_000),
}


def place_of(level: Experience) -> int:
    """0, 1 or 2 from novice to advanced."""
    return list(Experience).index(level)


def is_skill(exercise: Exercise) -> bool:
    """A static hold on the hands or from a bar that is learned by harder and harder variations."""
    if exercise.measure is not Measure.HOLD or len(exercise.variations) < 3:
        return False
    computed = any(variation.hold for variation in exercise.variations)
    return computed or exercise.pattern in PUSHES


def role_of(exercise: Exercise, aim: Aim) -> Role:
    """What the exercise is to a day that is trained for ``aim``."""
    if is_skill(exercise) and aim is Aim.SKILL:
        return Role.SKILL
    if exercise.pattern in (Pattern.TRUNK, Pattern.CARRY):
        return Role.TRUNK
    if exercise.pattern is Pattern.SINGLE_JOINT or exercise.measure is Measure.HOLD:
        return Role.SMALL
    whole = exercise.pattern in LEGS | PUSHES | PULLS and exercise.pattern is not Pattern.LUNGE
    both = not exercise.unilateral and len(exercise.direct) > 1
    return Role.MAIN if whole and both else Role.ASSISTANCE


def prescription(exercise: Exercise, wishes: DraftWishes) -> Prescription:
    """How the exercise is asked for. Novices have one block of weeks, others two."""
    role = role_of(exercise, wishes.aim)
    fewest, usual, most = _SETS[role]
    count = 1 if wishes.level is NOVICE else 2
    blocks = tuple(_slot(exercise, wishes, role, block, usual) for block in range(count))
    return Prescription(role, blocks, fewest, usual, most)


def most_minutes_a_set(slots: tuple[Slot, ...], exercises: tuple[Exercise, ...]) -> float:
    """Minutes that one set of each slot takes at the most repetitions or seconds, in any block.

    ``slots``: one exercise's blocks. Change-overs are not counted.
    """
    known = {exercise.key: exercise for exercise in exercises}
    return max(day_minutes((replace(slot, start=_one_set(slot)),), known) for slot in slots)


def day_minutes(slots: tuple[Slot, ...], exercises: dict[str, Exercise]) -> float:
    """Minutes of slots at their most repetitions or seconds, change-overs left out."""
    whole = session_minutes(TrainingDay("", slots), exercises, most_of)
    return whole - len(slots) * TIMING.change_over_s / _MINUTE


def most_of(slot: Slot) -> Position:
    """The longest that a slot can get: its start with the most repetitions or seconds."""
    position = slot.start
    for variable in (Variable.REPS, Variable.HOLD):
        ranged = slot.rule.range_of(variable)
        if ranged is not None and ranged.ceiling is not None:
            position = position.at(variable, ranged.ceiling)
    return position


def _one_set(slot: Slot) -> Position:
    return replace(slot.start, sets=1)


def _slot(exercise: Exercise, wishes: DraftWishes, role: Role, block: int, sets: int) -> Slot:
    steps = usable_scale(exercise, wishes)
    rule = _rule(exercise, wishes, role, block, steps)
    counted = rule.ranges[0]
    floor = counted.floor or 1
    held = counted.variable is Variable.HOLD
    start = Position(
        load_g=_first_load(exercise, wishes),
        reps=None if held else floor,
        hold_s=floor if held else None,
        sets=sets,
        variation=_first_variation(exercise, wishes, steps),
    )
    return Slot(exercise.key, rule, start, rest_s=_rest(wishes, role))


def _rest(wishes: DraftWishes, role: Role) -> int:
    if role is Role.SKILL:
        return _REST_SKILL
    by_level = _RESTS.get((wishes.aim, role))
    return by_level[place_of(wishes.level)] if by_level else _REST_SHORT


def _rule(
    exercise: Exercise,
    wishes: DraftWishes,
    role: Role,
    block: int,
    steps: tuple[ScaledVariation, ...],
) -> ProgressionRule:
    kinds = rules_for(exercise)
    kind = ReadyRule.REPS_LOAD if kinds[0] is ReadyRule.REPS_LOAD else kinds[0]
    ready = ready_rule(kind, exercise)
    counted = _counted(exercise, wishes, role, block)
    hold = counted.variable is Variable.HOLD
    varies = any(ranged.variable is Variable.VARIATION for ranged in ready.ranges)
    back_off = BackOff.REPS if hold else BackOff.VARIATION if varies else BackOff.LOAD
    heavy = (wishes.aim, wishes.level) == (Aim.STRENGTH, Experience.ADVANCED)
    lead = heavy and role is Role.MAIN and exercise.loading is LoadingKind.BARBELL
    return replace(
        ready,
        ranges=(counted, *ready.ranges[1:]),
        miss=MissPolicy(back_off=back_off),
        scheme=SetScheme(SchemeKind.TOP_AND_BACK_OFF) if lead else ready.scheme,
        target_rir=None if hold else _RESERVE[wishes.level],
    )


def _counted(exercise: Exercise, wishes: DraftWishes, role: Role, block: int) -> VariableRange:
    """The range of repetitions or seconds, which grow first."""
    if exercise.measure is Measure.HOLD:
        if exercise.pattern is Pattern.CARRY:
            return _CARRY_HOLD
        return _SKILL_HOLD if is_skill(exercise) else _TRUNK_HOLD
    if exercise.loading is LoadingKind.BODYWEIGHT:
        hard = exercise.pattern in _HARD_BODY
        return VariableRange(Variable.REPS, *(_HARD_BODY_REPS if hard else _BODY_REPS[wishes.aim]))
    by_level = _LOADED_REPS.get((wishes.aim, role))
    if by_level is None:
        return VariableRange(Variable.REPS, *_SMALL_REPS)
    pairs = by_level[place_of(wishes.level)]
    return VariableRange(Variable.REPS, *pairs[min(block, len(pairs) - 1)])


def usable_scale(exercise: Exercise, wishes: DraftWishes) -> tuple[ScaledVariation, ...]:
    """The variations that can be set up, easiest first; for a class of equipment the listed ones,
    since heights are somebody's own.
    """
    steps = scale(exercise, Trainee(name=""), wishes.equipment)
    if wishes.kind is None:
        return steps
    listed = {variation.key for variation in exercise.variations}
    return tuple(step for step in steps if step.key in listed)


def _first_variation(
    exercise: Exercise, wishes: DraftWishes, steps: tuple[ScaledVariation, ...]
) -> str | None:
    """Where the level begins: the hardest share that it can be asked, or a place by order."""
    if not steps:
        return None
    level = place_of(wishes.level)
    if exercise.measure is Measure.REPS:
        hard = exercise.pattern in _HARD_BODY
        most = (_FIRST_HARD_SHARE if hard else _FIRST_SHARE)[level]
        able = [step for step in steps if step.share is not None and step.share <= most]
        if able:
            return able[-1].key
    at = int(_FIRST_PLACE[level] * (len(steps) - 1))
    return steps[at].key


def _first_load(exercise: Exercise, wishes: DraftWishes) -> int:
    """A light load to begin with; the first sessions, or a test, say where to go from there."""
    if exercise.loading is LoadingKind.BODYWEIGHT:
        return 0
    loads = [load_g for load_g in reachable(wishes.equipment, exercise) if load_g > 0]
    wanted = _FIRST_LOAD_G.get(exercise.loading, (0, 0, 0))[place_of(wishes.level)]
    light = [load_g for load_g in loads if load_g <= wanted]
    return light[-1] if light else loads[0]
