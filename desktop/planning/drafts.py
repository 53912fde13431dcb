"""Drafts: programs drafted from wishes, for a class of equipment or for what a trainee owns."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from datetime import date

from db.repository import Repository
from desktop.drafting.drafts import Draft as Draft
from desktop.drafting.drafts import GoingOn as GoingOn
from desktop.drafting.drafts import draft
from desktop.drafting.explanations import Explanation as Explanation
from desktop.drafting.explanations import Relaxation as Relaxation
from desktop.drafting.explanations import Why as Why
from desktop.drafting.wishes import LEAST_MINUTES as LEAST_MINUTES
from desktop.drafting.wishes import MOST_DAYS as MOST_DAYS
from desktop.drafting.wishes import MOST_MINUTES as MOST_MINUTES
from desktop.drafting.wishes import Aim as Aim
from desktop.drafting.wishes import Avoid as Avoid
from desktop.drafting.wishes import DraftWishes as DraftWishes
from desktop.drafting.wishes import EquipmentClass as EquipmentClass
from desktop.drafting.wishes import InvalidWish as InvalidWish
from desktop.drafting.wishes import Wish as Wish
from desktop.drafting.wishes import avoid_of, equipment_of
from desktop.planning.surroundings import equipment_on
from desktop.training.exercises import Exercise
from desktop.training.name_order import name_key
from desktop.training.trainee import Experience

USUAL_MINUTES = 60


def draft_program(repository: Repository, wishes: DraftWishes) -> Draft:
    """A draft from the exercises of the data, the coach's own among them."""
    return draft(_exercises(repository), wishes)


def draft_work(repository: Repository, wishes: DraftWishes) -> Callable[[GoingOn], Draft]:
    """The work of `draft_program` with all that it reads read already, so that it may be done
    where the data file is not at hand.
    """
    exercises = _exercises(repository)
    return lambda going_on: draft(exercises, wishes, going_on)


@dataclass(frozen=True, slots=True)
class WishesSaid:
    """Wishes as the coach says them. ``kind`` None: what the trainee owns; ``avoid``: patterns,
    exercises or words.
    """

    days: int
    minutes: int
    kind: EquipmentClass | None = EquipmentClass.NONE
    level: Experience = Experience.NOVICE
    aim: Aim = Aim.STRENGTH
    avoid: tuple[str, ...] = ()


def wishes_first(repository: Repository, trainee_id: int | None, day: date) -> WishesSaid:
    """What is wished for before the coach says anything: what fits the trainee."""
    if trainee_id is None:
        return WishesSaid(3, USUAL_MINUTES, EquipmentClass.BARBELL)
    fit = wishes_for_trainee(repository, trainee_id, day, Aim.STRENGTH)
    return WishesSaid(fit.days, fit.minutes, fit.kind, fit.level)


def wishes_of(
    repository: Repository, said: WishesSaid, trainee_id: int | None, day: date
) -> DraftWishes:
    """What a draft is made from, with the trainee's weekdays where there are enough of them.

    Raises InvalidWish, and NotFound.
    """
    if trainee_id is None:
        kind = said.kind or EquipmentClass.NONE
        return wishes_for_class(
            repository, kind, said.days, said.minutes, said.level, said.aim, said.avoid
        )
    found = wishes_for_trainee(
        repository,
        trainee_id,
        day,
        said.aim,
        days=said.days,
        minutes=said.minutes,
        avoid=said.avoid,
    )
    if said.kind is not None:
        found = replace(found, equipment=equipment_of(said.kind), kind=said.kind)
    return replace(found, level=said.level)


def relaxed(repository: Repository, said: WishesSaid, way: Relaxation) -> WishesSaid:
    """The wishes with one of them relaxed."""
    match way.wish:
        case Wish.MINUTES:
            return replace(said, minutes=int(way.to))
        case Wish.DAYS:
            return replace(said, days=int(way.to))
        case Wish.EQUIPMENT:
            return replace(said, kind=EquipmentClass(str(way.to)))
        case Wish.AVOID:
            kept = [one for one in said.avoid if _avoided(repository, (one,)).items != (way.to,)]
            return replace(said, avoid=tuple(kept) if len(kept) < len(said.avoid) else ())


def wishes_for_class(
    repository: Repository,
    kind: EquipmentClass,
    days: int,
    minutes: int,
    level: Experience,
    aim: Aim,
    avoid: tuple[str, ...] = (),
) -> DraftWishes:
    """Wishes for nobody yet. ``avoid``: patterns, exercises or words. Raises InvalidWish."""
    return DraftWishes(
        days=days,
        minutes=minutes,
        equipment=equipment_of(kind),
        level=level,
        aim=aim,
        avoid=_avoided(repository, avoid),
        kind=kind,
    )


def wishes_for_trainee(
    repository: Repository,
    trainee_id: int,
    day: date,
    aim: Aim,
    *,
    days: int | None = None,
    minutes: int | None = None,
    avoid: tuple[str, ...] = (),
    kind: EquipmentClass = EquipmentClass.NONE,
) -> DraftWishes:
    """Wishes for one trainee: what they own on ``day`` (nothing recorded: ``kind``), the weekdays
    and minutes they have, their level. What they avoid is said by the coach, in ``avoid``, since
    the record has it as a sentence. Raises InvalidWish and NotFound.
    """
    trainee = repository.trainee(trainee_id)
    owned = equipment_on(repository.equipment(trainee_id), day)
    count = days or min(len(trainee.weekdays), _usual_days(trainee.experience)) or 2
    return DraftWishes(
        days=count,
        minutes=minutes or trainee.minutes_per_session or USUAL_MINUTES,
        equipment=equipment_of(kind) if owned is None else owned,
        level=trainee.experience,
        aim=aim,
        avoid=_avoided(repository, avoid),
        weekdays=trainee.weekdays if len(set(trainee.weekdays)) >= count else (),
        kind=kind if owned is None else None,
    )


def _exercises(repository: Repository) -> tuple[Exercise, ...]:
    """All exercises in an order that does not hang on the language: what is equally good is taken
    as it comes.
    """
    said = {one.key: one for one in repository.exercises()}
    stored = sorted(repository.stored_exercises(), key=lambda one: name_key(one.name))
    return tuple(said[one.key] for one in stored)


def _usual_days(level: Experience) -> int:
    """The most days a week of each level in ACSM 2009, Med Sci Sports Exerc 41(3):687-708."""
    return {Experience.NOVICE: 3, Experience.INTERMEDIATE: 4, Experience.ADVANCED: 5}[level]


def _avoided(repository: Repository, texts: tuple[str, ...]) -> Avoid:
    return avoid_of(texts, {each.key: each for each in repository.exercises()})
