"""Drafts: a balanced program from wishes, with the reason for each choice; or which wish to relax.

Whatever comes out is an ordinary program to edit.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass, replace
from math import ceil
from typing import Final

from desktop.drafting.candidates import Candidate, candidates
from desktop.drafting.explanations import Explanation, Relaxation
from desktop.drafting.linear import NoSolution
from desktop.drafting.naming import about, day_names, program_name
from desktop.drafting.optimum import best_week
from desktop.drafting.prescription import Role
from desktop.drafting.reasoning import explained
from desktop.drafting.week import Taken, Wanted, WeekPlan, wanted_of
from desktop.drafting.wishes import (
    MOST_DAYS,
    MOST_MINUTES,
    DraftWishes,
    EquipmentClass,
    Wish,
    equipment_of,
)
from desktop.training.exercises import Exercise, Pattern
from desktop.training.program import Phase, PhasePurpose, Program, TrainingDay
from desktop.training.trainee import Experience

LEAST_GROUPS: Final = 3
"""With fewer groups of patterns left there is no program to speak of."""

NOVICE_WEEKS: Final = 8
BLOCK_WEEKS: Final = 5
"""Then comes an easier week: every 5.6 weeks in the survey of Rogerson 2024, Sports Med Open 10:26,
DOI 10.1186/s40798-024-00691-y."""

_SCARCE_MINUTES: Final = 70
_MINUTE_STEP: Final = 5
_SHORTEST_DAY: Final = 20
_DUST: Final = 0.01

_ORDER: Final = (
    Pattern.SQUAT,
    Pattern.HINGE,
    Pattern.HORIZONTAL_PUSH,
    Pattern.VERTICAL_PUSH,
    Pattern.VERTICAL_PULL,
    Pattern.HORIZONTAL_PULL,
    Pattern.LUNGE,
    Pattern.SINGLE_JOINT,
    Pattern.TRUNK,
    Pattern.CARRY,
)
_ROLES: Final = (Role.SKILL, Role.MAIN, Role.ASSISTANCE, Role.SMALL, Role.TRUNK)


@dataclass(frozen=True, slots=True)
class Draft:
    """A drafted program and why it is as it is.

    ``program`` None: the wishes cannot be met together; ``relaxations`` then names those that
    help if relaxed, the smallest change first, each tried. Empty: none alone helps.
    """

    program: Program | None
    explanations: tuple[Explanation, ...] = ()
    relaxations: tuple[Relaxation, ...] = ()


GoingOn = Callable[[Wish | None], None]
"""Told before each week that is looked for: the wish that is tried relaxed, None as wished. What
it raises ends the drafting.
"""


def draft(
    exercises: Iterable[Exercise],
    wishes: DraftWishes,
    going_on: GoingOn = lambda _relaxed: None,
) -> Draft:
    """Draft a program from the wishes and the exercises of the catalogue; the same wishes give
    the same program.
    """
    known = tuple(exercises)
    choice = candidates(known, wishes)
    going_on(None)
    plan, over = _plan(choice, wishes)
    if plan is None:
        return Draft(None, relaxations=_relaxations(_Trial(known, going_on), wishes, over))
    going_on(None)
    days = tuple(_in_order(day) for day in plan.days)
    program = _program(days, wishes)
    return Draft(program, explained(known, choice, days, program, wishes))


def _plan(
    choice: tuple[Candidate, ...], wishes: DraftWishes
) -> tuple[WeekPlan | None, float | None]:
    """The week; or None and the minutes that are short (None: more minutes do not help)."""
    wanted = wanted_of(choice, wishes)
    if len(wanted.groups) < LEAST_GROUPS:
        return None, None
    if wishes.days * wishes.minutes > _SCARCE_MINUTES:
        plan = best_week(choice, wishes, wanted)
        if not plan.missed:
            return plan, 0.0
    return _tight_plan(choice, wishes, wanted)


def _tight_plan(
    choice: tuple[Candidate, ...], wishes: DraftWishes, wanted: Wanted
) -> tuple[WeekPlan | None, float | None]:
    try:
        plan = best_week(choice, wishes, wanted, tight=True)
    except NoSolution:
        return None, None
    if plan.over_minutes > _DUST:
        return None, plan.over_minutes
    return plan, 0.0


# What to relax


@dataclass(frozen=True, slots=True)
class _Trial:
    """Tries relaxed wishes, and says which."""

    exercises: tuple[Exercise, ...]
    going_on: GoingOn

    def works(self, relaxed: Wish, wishes: DraftWishes) -> bool:
        """Whether a draft with these wishes comes out: where the tight week does, it does."""
        self.going_on(relaxed)
        choice = candidates(self.exercises, wishes)
        wanted = wanted_of(choice, wishes)
        if len(wanted.groups) < LEAST_GROUPS:
            return False
        return _tight_plan(choice, wishes, wanted)[0] is not None


def _relaxations(trial: _Trial, wishes: DraftWishes, over: float | None) -> tuple[Relaxation, ...]:
    """The wishes that help if relaxed, each tried by drafting with it."""
    return (
        *(_more_minutes(trial, wishes, over) if over is not None else ()),
        *_more_days(trial, wishes, over or 0.0),
        *_less_avoided(trial, wishes),
        *(_more_equipment(trial, wishes, wishes.kind) if over is None and wishes.kind else ()),
    )


def _more_minutes(trial: _Trial, wishes: DraftWishes, over: float) -> Iterator[Relaxation]:
    """More minutes: those that were short, in steps of five; a little more where that is close."""
    least = ceil((wishes.minutes + over - _DUST) / _MINUTE_STEP) * _MINUTE_STEP
    for minutes in range(least, min(least + 3 * _MINUTE_STEP, MOST_MINUTES) + 1, _MINUTE_STEP):
        if trial.works(Wish.MINUTES, replace(wishes, minutes=minutes)):
            yield Relaxation(Wish.MINUTES, minutes)
            return


def _more_days(trial: _Trial, wishes: DraftWishes, over: float) -> Iterator[Relaxation]:
    """More days; a week's work spread over them says where to begin to look. With very short
    sessions no number of days helps.
    """
    if wishes.minutes < _SHORTEST_DAY:
        return
    most = min(MOST_DAYS, len(set(wishes.weekdays)) or MOST_DAYS)
    needed = ceil((wishes.minutes + over) * wishes.days / wishes.minutes)
    first = max(wishes.days + 1, needed)
    for days in range(first, min(first + 1, most) + 1):
        if trial.works(Wish.DAYS, replace(wishes, days=days)):
            yield Relaxation(Wish.DAYS, days)
            return


def _less_avoided(trial: _Trial, wishes: DraftWishes) -> Iterator[Relaxation]:
    for item in wishes.avoid.items:
        if trial.works(Wish.AVOID, replace(wishes, avoid=wishes.avoid.without(item))):
            yield Relaxation(Wish.AVOID, item)
            return
    if len(wishes.avoid.items) > 1:
        nothing = replace(wishes, avoid=type(wishes.avoid)())
        if trial.works(Wish.AVOID, nothing):
            yield Relaxation(Wish.AVOID, ", ".join(wishes.avoid.items))


def _more_equipment(
    trial: _Trial, wishes: DraftWishes, kind: EquipmentClass
) -> Iterator[Relaxation]:
    kinds = list(EquipmentClass)
    for more in kinds[kinds.index(kind) + 1 :]:
        richer = replace(wishes, equipment=equipment_of(more), kind=more)
        if trial.works(Wish.EQUIPMENT, richer):
            yield Relaxation(Wish.EQUIPMENT, more.value)
            return


# The program


def _in_order(day: tuple[Taken, ...]) -> tuple[Taken, ...]:
    """Skills first, while somebody is fresh, then the large exercises, then the others; those
    done in turn stand together, and pairs are lettered in their order.
    """
    ordered = sorted(day, key=lambda one: (_ROLES.index(one.candidate.role), _place(one)))
    together: list[Taken] = []
    letters: dict[str, str] = {}
    for one in ordered:
        if one in together:
            continue
        partners = [each for each in ordered if each.pair and each.pair == one.pair] or [one]
        together += partners
        if one.pair:
            letters.setdefault(one.pair, chr(ord("A") + len(letters)))
    return tuple(replace(one, pair=letters.get(one.pair, "")) for one in together)


def _place(one: Taken) -> int:
    return _ORDER.index(one.candidate.pattern)


def _program(days: tuple[tuple[Taken, ...], ...], wishes: DraftWishes) -> Program:
    weekdays = wishes.training_weekdays
    names = day_names(days, weekdays)

    def block(number: int) -> tuple[TrainingDay, ...]:
        return tuple(
            TrainingDay(name, tuple(one.slots[number] for one in day), weekday)
            for name, day, weekday in zip(names, days, weekdays, strict=True)
        )

    if wishes.level is Experience.NOVICE:
        phases: tuple[Phase, ...] = (Phase("Base", NOVICE_WEEKS, block(0)),)
    else:
        phases = (
            Phase("Base", BLOCK_WEEKS, block(0)),
            Phase("Deload", 1, block(0), PhasePurpose.DELOAD),
            Phase("Build", BLOCK_WEEKS, block(1)),
            Phase("Deload", 1, block(1), PhasePurpose.DELOAD),
        )
    program = Program(program_name(wishes), phases, deload_every=None)
    return replace(program, about=about(wishes, program.weeks))
