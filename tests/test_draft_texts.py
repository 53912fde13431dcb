"""Every explanation and relaxation of a draft has its sentence."""

from __future__ import annotations

import pytest

from desktop.catalogue import load_catalogue
from desktop.drafting.drafts import draft
from desktop.drafting.wishes import (
    Aim,
    Avoid,
    DraftWishes,
    EquipmentClass,
    Wish,
    avoid_of,
    equipment_of,
)
from desktop.planning.drafts import Relaxation, Why
from desktop.training.trainee import Experience
from views.draft_texts import equipment_word, explanation_text, relaxation_text

CATALOGUE = load_catalogue()
KNOWN = {each.key: each for each in CATALOGUE}


def told(days: int, minutes: int, kind: EquipmentClass, **more: object) -> dict[Why, list[str]]:
    """The sentences of a draft, by what they explain."""
    wishes = DraftWishes(days, minutes, equipment_of(kind), kind=kind, **more)  # type: ignore[arg-type]
    drafted = draft(CATALOGUE, wishes)
    assert drafted.program is not None
    said: dict[Why, list[str]] = {}
    for each in drafted.explanations:
        said.setdefault(each.code, []).append(explanation_text(each, KNOWN))
    return said


@pytest.mark.slow
def test_every_explanation_is_a_sentence(english: None) -> None:
    drafts = [
        told(1, 75, EquipmentClass.NONE),
        told(2, 30, EquipmentClass.DUMBBELL),
        told(2, 60, EquipmentClass.BARBELL, weekdays=(5, 6), level=Experience.ADVANCED),
        told(3, 45, EquipmentClass.MIXED, aim=Aim.SIZE, avoid=avoid_of(["squat", "lunge"], KNOWN)),
    ]
    assert {code for each in drafts for code in each} == set(Why)
    for text in (text for each in drafts for texts in each.values() for text in texts):
        assert not text[0].islower()
        assert "{" not in text
    none = drafts[0]
    assert "No vertical pull: the equipment has nothing for it" in none[Why.PATTERN_LEFT_OUT]
    assert drafts[2][Why.DAYS] == ["Trained on Saturday and Sunday, as far apart as they can be"]
    assert "No squat: it is to be avoided" in drafts[3][Why.PATTERN_LEFT_OUT]


def test_every_relaxation_is_a_sentence(english: None) -> None:
    said = [
        relaxation_text(Relaxation(Wish.MINUTES, 45), {}),
        relaxation_text(Relaxation(Wish.DAYS, 3), {}),
        relaxation_text(Relaxation(Wish.EQUIPMENT, "dumbbell"), {}),
        relaxation_text(Relaxation(Wish.AVOID, "squat"), {}),
    ]
    assert said == [
        "Give it 45 min a session",
        "Train on 3 days a week",
        "Have more equipment: dumbbells and a bench",
        "Allow again: squat",
    ]
    assert all(equipment_word(kind) for kind in EquipmentClass)
    assert Avoid().items == ()
