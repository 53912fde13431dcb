"""Drafts: programs drafted from wishes, for a class of equipment or for what a trainee owns."""

from __future__ import annotations

from datetime import date

from db.repository import Repository
from desktop.drafting.drafts import Draft as Draft
from desktop.drafting.drafts import draft
from desktop.drafting.explanations import Explanation as Explanation
from desktop.drafting.explanations import Relaxation as Relaxation
from desktop.drafting.explanations import Why as Why
from desktop.drafting.wishes import Aim as Aim
from desktop.drafting.wishes import Avoid as Avoid
from desktop.drafting.wishes import DraftWishes as DraftWishes
from desktop.drafting.wishes import EquipmentClass as EquipmentClass
from desktop.drafting.wishes import InvalidWish as InvalidWish
from desktop.drafting.wishes import Wish as Wish
from desktop.drafting.wishes import avoid_of, equipment_of
from desktop.planning.surroundings import equipment_on
from desktop.training.trainee import Experience

USUAL_MINUTES = 60


def draft_program(repository: Repository, wishes: DraftWishes) -> Draft:
    """A draft from the exercises of the data, the coach's own among them."""
    return draft(repository.exercises(), wishes)


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


def _usual_days(level: Experience) -> int:
    """The most days a week of each level in ACSM 2009, Med Sci Sports Exerc 41(3):687-708."""
    return {Experience.NOVICE: 3, Experience.INTERMEDIATE: 4, Experience.ADVANCED: 5}[level]


def _avoided(repository: Repository, texts: tuple[str, ...]) -> Avoid:
    return avoid_of(texts, {each.key: each for each in repository.exercises()})
