"""The variation scale: what one trainee can set up of a bodyweight exercise, easiest first.

An exercise lists its variations from easiest to hardest, in families that are not mixed. To the
listed ones come those that the trainee's own boxes and bars make ("hands-450": hands on 45 cm).
Where shares are known they decide the order; what is known by order alone keeps its place in the
list: before all, after all, or directly after the listed variation that it follows.

Lengths are millimetres, masses grams, shares fractions of body mass (of the full position's moment
for static holds).
"""

from __future__ import annotations

import math
import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import Final

from desktop.training.equipment import Equipment, Height, Place
from desktop.training.exercises import (
    Exercise,
    HeightUse,
    HeightWords,
    LoadingKind,
    PushUpGeometry,
    RowGeometry,
    Variation,
)
from desktop.training.leverage import variation_share
from desktop.training.position import ScaledVariation
from desktop.training.share import MODELLED, LeverageError, Share, order_only
from desktop.training.trainee import Trainee

ALL_FAMILIES: Final = "all families"
"""Given as ``family``: the coach mixes the families into one scale."""

BOX: Final = "box"
STEP: Final = "step"
NEEDS: Final = frozenset({*(place.value for place in Place), BOX, STEP})
"""What an exercise or a variation may need besides what makes its load."""

HEIGHT_KEY: Final = re.compile(r"(hands|feet|bar)-(0|[1-9][0-9]{0,4})")
"""How a variation at an owned height is keyed: what stands there, and its height in mm."""

# A place in the order: a share or infinity, then what goes first at one share, then a tie-break.
_Place = tuple[float, int, float]

_SHARE_DUST: Final = 1e-9


def missing_needs(needs: Iterable[str], equipment: Equipment) -> tuple[str, ...]:
    """Those of ``needs`` that this equipment does not meet.

    Rings serve as straps, a bench as a box, and any bar of known height as a low bar.
    """
    met = {place.value for place in equipment.places}
    if Place.RINGS in equipment.places:
        met.add(Place.STRAPS)
    if equipment.bar_heights:
        met.add(Place.LOW_BAR)
    if equipment.boxes:
        met |= {BOX, STEP}
    if Place.BENCH in equipment.places:
        met.add(BOX)
    return tuple(need for need in needs if need not in met)


def main_family(exercise: Exercise) -> str:
    """The family of the first variation listed, whose scale is meant where none is named."""
    return exercise.variations[0].family if exercise.variations else ""


def families(exercise: Exercise) -> tuple[str, ...]:
    """All families of the exercise, the main one first."""
    return tuple(dict.fromkeys(variation.family for variation in exercise.variations))


def family_of(exercise: Exercise, key: str) -> str:
    """The family of a variation; heights belong to the main one, as do unknown keys."""
    listed = _listed(exercise, key)
    return main_family(exercise) if listed is None else listed.family


def scale(
    exercise: Exercise,
    trainee: Trainee,
    equipment: Equipment | None,
    family: str | None = None,
    also: Iterable[str] = (),
) -> tuple[ScaledVariation, ...]:
    """The variations of ``exercise`` that this trainee can set up, easiest first.

    ``equipment`` None: not recorded, every listed variation counts. ``family`` None: that of the
    main scale; `ALL_FAMILIES` mixes them. ``also``: keys from the record, which stay on the scale
    (``available`` False) when they cannot be set up any more. Empty but for bodyweight exercises.
    """
    if exercise.loading is not LoadingKind.BODYWEIGHT:
        return ()
    wanted = main_family(exercise) if family is None else family
    kept = frozenset(also)
    raised: list[_Rung] = []
    if wanted in (main_family(exercise), ALL_FAMILIES):
        raised = _raised_rungs(exercise, trainee, equipment, kept)
    bar_found = any(rung.use is HeightUse.BAR and rung.available for rung in raised)
    rungs = [*raised, *_listed_rungs(exercise, trainee, wanted)]
    steps: list[ScaledVariation] = []
    for rung in sorted(rungs, key=lambda rung: rung.place):
        available = rung.available and _can_set_up(exercise, rung.variation, equipment)
        # A bar of known height can be set up again; a lean by eye can't: the bar stands for it.
        if bar_found and rung.use is None and _is_lean(rung.variation):
            available = False
        if available or rung.variation.key in kept:
            steps.append(_scaled(rung, available))
    return tuple(steps)


def next_harder(
    steps: Sequence[ScaledVariation], key: str, least_step: float = 0.0
) -> ScaledVariation | None:
    """The smallest step up from ``key`` that is at least ``least_step`` (fraction) harder.

    A variation known by order alone counts as a step. Variations that cannot be set up are passed
    over. None at the top. Raises LeverageError where ``key`` is not on the scale.
    """
    index = next((i for i, step in enumerate(steps) if step.key == key), None)
    if index is None:
        keys = ", ".join(step.key for step in steps) or "which is empty"
        raise LeverageError(f"{key!r} is not on the scale: {keys}")
    here = steps[index].share
    for step in steps[index + 1 :]:
        if not step.available:
            continue
        if here is None or step.share is None or step.share - here >= least_step - _SHARE_DUST:
            return step
    return None


def share_of(exercise: Exercise, key: str | None, trainee: Trainee) -> Share | None:
    """The share of any variation of ``exercise`` for this trainee, its box owned or not.

    ``key`` None: the main family's only variation. None where there is no such variation. Where
    the geometry does not fit this body the order alone is known.
    """
    variation = _resolved(exercise, key)
    if variation is None:
        return None
    try:
        return variation_share(variation, trainee.sex, trainee.stature_mm)
    except LeverageError as error:
        return order_only(str(error))


def effective_load_g(
    exercise: Exercise,
    variation_key: str | None,
    load_g: int,
    body_mass_g: int | None,
    trainee: Trainee,
) -> float | None:
    """Effective load in grams: the external load (per implement); for bodyweight exercises the
    variation's share of body mass plus added load, minus assistance.

    None where the share or the body mass is not known, or assistance leaves nothing to lift. Never
    comparable across exercises.
    """
    if exercise.loading is not LoadingKind.BODYWEIGHT:
        return float(load_g)
    share = share_of(exercise, variation_key, trainee)
    if share is None or share.value is None or body_mass_g is None:
        return None
    effective = share.value * body_mass_g + load_g
    return effective if effective > 0 else None


def variation_name(exercise: Exercise, key: str, equipment: Equipment | None) -> str:
    """A variation in the trainee's words: "hands on chair, 45 cm"; the key where it is unknown."""
    listed = _listed(exercise, key)
    if listed is not None:
        return listed.name
    raised = _raised_by_key(exercise, key)
    if raised is None:
        return key
    use, height_mm = raised
    said, where = exercise.height_words, set_up(exercise, key, equipment)
    named = where != _centimetres(height_mm, said)
    match use:
        case HeightUse.BAR:
            pattern = said.under if named else said.bar
        case HeightUse.HANDS:
            pattern = said.hands
        case _:
            pattern = said.feet
    return pattern.format(where=where)


def set_up(exercise: Exercise, key: str, equipment: Equipment | None) -> str:
    """What to set up, in the trainee's words: "chair, 45 cm", "45 cm" where no box has that
    height; empty where the variation needs no height.
    """
    raised = None if _listed(exercise, key) else _raised_by_key(exercise, key)
    if raised is None:
        return ""
    use, height_mm = raised
    name = next((h.name for h in _heights(use, equipment) if h.height_mm == height_mm), "")
    height = _centimetres(height_mm, exercise.height_words)
    return f"{name}, {height}" if name else height


@dataclass(frozen=True, slots=True)
class _Rung:
    """A variation with its share (None: does not fit this body) and its place in the order.

    ``use``: it was made by an owned height. ``available``: the height is there and fits.
    """

    variation: Variation
    share: Share | None
    place: _Place
    use: HeightUse | None = None
    available: bool = True


def _raised_rungs(
    exercise: Exercise, trainee: Trainee, equipment: Equipment | None, kept: frozenset[str]
) -> list[_Rung]:
    """One rung for each owned height, and for each height kept from the record."""
    rungs: dict[str, _Rung] = {}
    owned = [
        f"{use.value}-{height.height_mm}"
        for use in exercise.heights
        for height in _heights(use, equipment)
    ]
    for key in (*owned, *sorted(kept)):
        raised = _raised_by_key(exercise, key)
        if raised is None or key in rungs or _listed(exercise, key) is not None:
            continue
        use, height_mm = raised
        variation = _at_height(use, height_mm, variation_name(exercise, key, equipment))
        share = _share_or_none(variation, trainee)
        place = _raised_place(use, height_mm, share)
        available = key in owned and share is not None
        rungs[key] = _Rung(variation, share, place, use, available)
    return list(rungs.values())


def _raised_place(use: HeightUse, height_mm: int, share: Share | None) -> _Place:
    """Higher hands or a higher bar are easier, higher feet harder; beyond the model as well."""
    harder = height_mm if use is HeightUse.FEET else -height_mm
    if share is not None and share.value is not None:
        return share.value, 0, harder
    # Bars that are too low, hands that are too high: those are the ends where no number is known.
    easiest = use is HeightUse.HANDS or (use is HeightUse.BAR and share is None)
    return (-math.inf, 1, harder) if easiest else (math.inf, 0, harder)


def _listed_rungs(exercise: Exercise, trainee: Trainee, wanted: str) -> list[_Rung]:
    rungs: list[_Rung] = []
    for family in families(exercise):
        if wanted not in (family, ALL_FAMILIES):
            continue
        listed = [v for v in exercise.variations if v.family == family]
        shares = [_share_or_none(v, trainee) for v in listed]
        known = [s.value if s is not None else None for s in shares]
        for index, (variation, share) in enumerate(zip(listed, shares, strict=True)):
            place = _listed_place(index, known)
            rungs.append(_Rung(variation, share, place, available=share is not None))
    return rungs


def _listed_place(index: int, known: Sequence[float | None]) -> _Place:
    """Where a listed variation stands: by its share, or by its neighbours that have one."""
    value = known[index]
    if value is not None:
        return value, 0, index
    before = [each for each in known[:index] if each is not None]
    after = [each for each in known[index + 1 :] if each is not None]
    if not before:
        return -math.inf, 0, index
    return (max(before), 1, index) if after else (math.inf, 1, index)


def _can_set_up(exercise: Exercise, variation: Variation, equipment: Equipment | None) -> bool:
    if equipment is None:
        return True
    return not missing_needs((*exercise.needs, *variation.needs), equipment)


def _is_lean(variation: Variation) -> bool:
    row = variation.row
    return row is not None and row.lean_deg is not None and not row.straps


def _scaled(rung: _Rung, available: bool) -> ScaledVariation:
    share = rung.share or order_only("does not fit this body")
    return ScaledVariation(
        key=rung.variation.key,
        name=rung.variation.name,
        share=share.value,
        plus_minus=share.plus_minus,
        modelled=share.grade == MODELLED,
        available=available,
    )


def _share_or_none(variation: Variation, trainee: Trainee) -> Share | None:
    try:
        return variation_share(variation, trainee.sex, trainee.stature_mm)
    except LeverageError:
        return None


def _resolved(exercise: Exercise, key: str | None) -> Variation | None:
    if key is None:
        main = [v for v in exercise.variations if v.family == main_family(exercise)]
        return main[0] if len(main) == 1 else None
    listed = _listed(exercise, key)
    if listed is not None:
        return listed
    raised = _raised_by_key(exercise, key)
    return None if raised is None else _at_height(*raised, key)


def _listed(exercise: Exercise, key: str) -> Variation | None:
    return next((v for v in exercise.variations if v.key == key), None)


def _raised_by_key(exercise: Exercise, key: str) -> tuple[HeightUse, int] | None:
    """What a height's key says, where the exercise uses such heights."""
    found = HEIGHT_KEY.fullmatch(key)
    if found is None or HeightUse(found[1]) not in exercise.heights:
        return None
    return HeightUse(found[1]), int(found[2])


def _at_height(use: HeightUse, height_mm: int, name: str) -> Variation:
    key = f"{use.value}-{height_mm}"
    match use:
        case HeightUse.HANDS:
            return Variation(key, name, push_up=PushUpGeometry(hands_mm=height_mm))
        case HeightUse.FEET:
            return Variation(key, name, push_up=PushUpGeometry(feet_mm=height_mm))
        case _:
            return Variation(key, name, row=RowGeometry(bar_mm=height_mm))


def _heights(use: HeightUse, equipment: Equipment | None) -> tuple[Height, ...]:
    if equipment is None:
        return ()
    return equipment.bar_heights if use is HeightUse.BAR else equipment.boxes


def _centimetres(height_mm: int, said: HeightWords) -> str:
    return f"{height_mm / 10:g} cm".replace(".", said.decimal_mark)
