"""Leverage: what share of body mass a bodyweight exercise loads, from heights and angles.

Lengths are millimetres, angles degrees, shares fractions of body mass. Every share says its
uncertainty and whether it is published, modelled or known by order only. Static holds are in
`desktop.training.holds`; the scale of one trainee's variations in `desktop.training.scale`.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from functools import partial
from itertools import pairwise
from typing import Final

from desktop.training.exercises import (
    HoldGeometry,
    PushUpGeometry,
    RowGeometry,
    Sex,
    Variation,
)
from desktop.training.holds import hold_share
from desktop.training.segments import SAMPLE_STATURE_MM, mass_of
from desktop.training.share import (
    MODELLED,
    PUBLISHED,
    Grade,
    LeverageError,
    Share,
    distinguishable,
    known_within,
    order_only,
)

__all__ = [
    "LeverageError",
    "Share",
    "calf_raise_share",
    "dip_share",
    "distinguishable",
    "hold_share",
    "pistol_share",
    "pull_up_share",
    "push_up_share",
    "row_angle",
    "row_share",
    "split_squat_share",
    "squat_share",
    "variation_share",
]

EBBEN: Final = "model within 3.5 points of Ebben 2011, J Strength Cond Res 25(10):2891-2894"
MELROSE: Final = "Melrose and Dawes 2015, J Athl Enhancement (suspension-strap row)"
HELME: Final = "Helme, J Strength Cond Res, DOI 10.1519/JSC.0000000000003727"
DE_LEVA: Final = "segment masses of de Leva 1996, J Biomech 29(9):1223-1230"

STATURE_MM: Final = (1000, 2500)
"""Least and greatest stature that the model takes."""

PUSH_UP_PLUS_MINUS: Final = 0.03
KNEES_SHARE: Final = 0.52
ROW_PLUS_MINUS: Final = 0.06
STRAPS_PLUS_MINUS: Final = 0.035
SEGMENTS_PLUS_MINUS: Final = 0.02

# Push-up: share at the hands of a rigid body leaning by psi, feet to shoulders 0.762 H.
_FEET_TO_HANDS: Final = 0.762
_LEVEL: Final = 0.665
_LEAN: Final = 0.35
# Where tan(psi) = -0.35/0.665 the formula has its maximum; the share is kept there beyond.
_STEEPEST_SIN: Final = -_LEAN / math.hypot(_LEVEL, _LEAN)
# Heights within which the model may be used, at a stature of 1.75 m.
_HANDS_ABOVE: Final = 0.9 / 1.75
_FEET_ABOVE: Final = 0.65 / 1.75

_ROW_LEVEL: Final = 0.79
_ARM: Final = 0.35
_FEET_TO_SHOULDERS: Final = 0.78

# Suspension straps, arms straight, lean from the vertical: share (Melrose and Dawes 2015, n = 40).
_STRAPS: Final = ((30.0, 0.3744), (45.0, 0.5288), (60.0, 0.6808), (75.0, 0.7938))

_UNKNOWN_STATURES_MM: Final = (1590, 1890)


def push_up_share(
    hand_height_mm: float, foot_height_mm: float, stature_mm: float, knees: bool = False
) -> Share:
    """Share of body mass on the hands at the top of a push-up.

    ``knees``: on the knees, known for hands and knees on one level alone. By order only where the
    hands are more than 0.514 of stature above the feet, or the feet more than 0.371 of it above the
    hands. Raises LeverageError for negative heights, a stature outside 1000-2500 mm, or heights
    further apart than a body can span.
    """
    _check_stature(stature_mm)
    _check_heights("hands", hand_height_mm)
    _check_heights("feet", foot_height_mm)
    above = hand_height_mm - foot_height_mm
    lean = above / (_FEET_TO_HANDS * stature_mm)
    if abs(lean) > 1:
        raise LeverageError(
            f"hands at {hand_height_mm} mm and feet at {foot_height_mm} mm are further apart than "
            f"a body of {stature_mm} mm spans: at most {_FEET_TO_HANDS * stature_mm:.0f} mm"
        )
    if knees:
        if above:
            return order_only("on the knees only hands and knees on one level are known")
        return Share(KNEES_SHARE, PUSH_UP_PLUS_MINUS, MODELLED, EBBEN)
    if not -_FEET_ABOVE * stature_mm <= above <= _HANDS_ABOVE * stature_mm:
        return order_only("hands or feet are raised further than the model holds")
    lean = max(lean, _STEEPEST_SIN)
    value = _LEVEL * math.sqrt(1 - lean * lean) - _LEAN * lean
    return Share(value, PUSH_UP_PLUS_MINUS, MODELLED, EBBEN)


def row_angle(bar_mm: float, foot_mm: float, stature_mm: float) -> float:
    """Angle of the body from the vertical, in degrees, hanging from a bar with straight arms.

    ``bar_mm`` is the height of the bar (or of the handles), ``foot_mm`` that of the heels. Raises
    LeverageError where such a body does not reach from the heels to below the bar.
    """
    _check_stature(stature_mm)
    _check_heights("the bar", bar_mm)
    _check_heights("feet", foot_mm)
    rise = (bar_mm - _ARM * stature_mm - foot_mm) / (_FEET_TO_SHOULDERS * stature_mm)
    if abs(rise) > 1:
        least = max(0.0, foot_mm + (_ARM - _FEET_TO_SHOULDERS) * stature_mm)
        most = foot_mm + (_ARM + _FEET_TO_SHOULDERS) * stature_mm
        raise LeverageError(
            f"a bar at {bar_mm} mm cannot be held with straight arms by a body of {stature_mm} mm "
            f"with the feet at {foot_mm} mm: allowed is {least:.0f} to {most:.0f} mm"
        )
    return math.degrees(math.acos(rise))


def row_share(angle_from_vertical_deg: float, straps: bool = False) -> Share:
    """Share of body mass on the hands in a row with straight arms.

    ``angle_from_vertical_deg``: 0 (upright) to 180. Under a fixed bar known up to 90°, on straps
    from 30° to 75° (between the published angles by straight lines); beyond by order only. Raises
    LeverageError for other angles.
    """
    angle = angle_from_vertical_deg
    if not 0 <= angle <= 180:
        raise LeverageError(f"row: {angle}° from the vertical; allowed is 0 to 180°")
    if straps:
        return _strap_share(angle)
    if angle > 90:
        return order_only("the feet are higher than the shoulders")
    value = _ROW_LEVEL * math.sin(math.radians(angle))
    return Share(value, ROW_PLUS_MINUS, MODELLED, "lever model, ± 6 points; " + MELROSE)


def pull_up_share(sex: Sex) -> Share:
    """All but forearms and hands: 0.955 (men), 0.961 (women) of body mass."""
    return _all_but(sex, mass_of(sex, "forearm", "hand"))


def dip_share(sex: Sex) -> Share:
    """As in the pull-up, all but forearms and hands."""
    return pull_up_share(sex)


def squat_share(sex: Sex) -> Share:
    """All but shanks and feet, on both legs: 0.886 (men), 0.878 (women); half of it a leg."""
    return _all_but(sex, mass_of(sex, "shank", "foot"))


def pistol_share(sex: Sex) -> Share:
    """All but the standing leg's shank and foot, on one leg: 0.943 (men), 0.939 (women)."""
    return _all_but(sex, mass_of(sex, "shank", "foot") / 2)


def split_squat_share(rear_foot_raised: bool = False) -> Share:
    """Share of body mass on the front leg: 0.75, with the rear foot raised 0.85."""
    if rear_foot_raised:
        return Share(0.85, 0.036, PUBLISHED, HELME)
    return Share(0.75, 0.05, PUBLISHED, "published measurements of the front leg, about 75 %")


def calf_raise_share(sex: Sex) -> Share:
    """All but the feet, on both legs: 0.973 (men), 0.974 (women)."""
    return _all_but(sex, mass_of(sex, "foot"))


def variation_share(variation: Variation, sex: Sex, stature_mm: float | None) -> Share:
    """The share of one variation for a body of that sex and stature, from whatever it gives.

    Without a stature that of the segment table's sample is taken, and the uncertainty widened by
    what bodies of 1.59 and 1.89 m would differ. Raises LeverageError for impossible geometry.
    """
    if variation.push_up is not None:
        return _for_stature(partial(_push_up, variation.push_up), sex, stature_mm)
    if variation.row is not None:
        return _for_stature(partial(_row, variation.row), sex, stature_mm)
    if variation.hold is not None:
        return _hold(variation.hold, sex)
    if variation.share is not None:
        given = variation.share
        value = given.male if sex is Sex.MALE else given.female
        return Share(
            value, given.plus_minus, PUBLISHED if given.published else MODELLED, given.source
        )
    return order_only("the order of the variations is all that is known")


def _for_stature(share_at: Callable[[float], Share], sex: Sex, stature_mm: float | None) -> Share:
    if stature_mm is not None:
        return share_at(stature_mm)
    share = share_at(SAMPLE_STATURE_MM[sex])
    if share.value is None:
        return share
    others = (share_at(stature).value for stature in _UNKNOWN_STATURES_MM)
    apart = [abs(other - share.value) for other in others if other is not None]
    return known_within(share, max(apart, default=0.0))


def _push_up(geometry: PushUpGeometry, stature_mm: float) -> Share:
    return push_up_share(geometry.hands_mm, geometry.feet_mm, stature_mm, geometry.knees)


def _row(geometry: RowGeometry, stature_mm: float) -> Share:
    lean = geometry.lean_deg
    if lean is None:
        lean = row_angle(geometry.bar_mm, geometry.feet_mm, stature_mm)
    return row_share(lean, geometry.straps)


def _hold(geometry: HoldGeometry, sex: Sex) -> Share:
    return hold_share(
        geometry.hold,
        sex,
        geometry.hip_deg,
        geometry.knee_deg,
        geometry.straddle_deg,
        geometry.one_leg,
    )


def _strap_share(angle: float) -> Share:
    for (low, share_low), (high, share_high) in pairwise(_STRAPS):
        if low <= angle <= high:
            value = share_low + (share_high - share_low) * (angle - low) / (high - low)
            grade: Grade = PUBLISHED if angle in (low, high) else MODELLED
            return Share(value, STRAPS_PLUS_MINUS, grade, MELROSE)
    return order_only("on straps nothing is published below 30° and above 75°")


def _all_but(sex: Sex, mass: float) -> Share:
    return Share(1 - mass, SEGMENTS_PLUS_MINUS, MODELLED, DE_LEVA)


def _check_stature(stature_mm: float) -> None:
    least, most = STATURE_MM
    if not least <= stature_mm <= most:
        raise LeverageError(f"stature {stature_mm} mm; allowed is {least} to {most} mm")


def _check_heights(what: str, height_mm: float) -> None:
    if not 0 <= height_mm < math.inf:
        raise LeverageError(f"height of {what} {height_mm} mm; allowed is 0 mm or more")
