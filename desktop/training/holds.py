"""Static holds: the gravity moment of a joint-angle position against that of the full one.

A front lever or planche is held about the shoulders, an L-sit about the hips. The body is a chain
of rigid segments in one plane; every joint angle is flexion in degrees from the full position.

Two lengths are not in the segment table and are from memory. The ankle lies 0.039 of stature
above the sole (Drillis and Contini 1966), which places the head so that the segments of a standing
body add up to its stature. A relaxed foot has its centre of mass 0.0275 of stature beyond the
ankle. Neither moves a share by more than 0.01.

There is no published ratio to check against: the results are modelled. A tight tuck rounds the
back, which the chain leaves out and which may lower its share by up to 0.06.
"""

from __future__ import annotations

import math
from typing import Final

from desktop.training.exercises import Sex
from desktop.training.segments import SAMPLE_STATURE_MM, SEGMENTS, mass_of
from desktop.training.share import MODELLED, LeverageError, Share, order_only

ABOUT_SHOULDERS: Final = ("front lever", "planche")
L_SIT: Final = "l-sit"
HOLDS: Final = (*ABOUT_SHOULDERS, L_SIT)

SOURCE: Final = "statics with segment data of de Leva 1996, J Biomech 29(9):1223-1230"
PLUS_MINUS: Final = 0.03
TIGHT_TUCK_PLUS_MINUS: Final = 0.06
TIGHT_TUCK_HIP_DEG: Final = 100

_ANKLE_HEIGHT: Final = 0.039
_FOOT_CENTRE: Final = 0.0275
_MOST_HIP_DEG: Final = 150
_MOST_KNEE_DEG: Final = 160
_MOST_STRADDLE_DEG: Final = 80
_LOWEST_L_DEG: Final = -80


def hold_share(
    hold: str,
    sex: str,
    hip_deg: float,
    knee_deg: float,
    straddle_deg: float = 0,
    one_leg: bool = False,
) -> Share:
    """The moment of a hold as a fraction of its full position's.

    ``hold``: "front lever", "planche" or "l-sit"; ``sex``: "m" or "f". ``hip_deg``, ``knee_deg``:
    flexion from the straight body (hip 0-150, knee 0-160), for the L-sit from the full L with the
    legs level (legs below it: hip down to -80). ``straddle_deg``: 0-80 per side. ``one_leg``: one
    leg straight, the other at ``hip_deg`` and ``knee_deg``.

    L-sits in straddle or with the legs above level are known by order only: their moment falls
    while they get harder. Raises LeverageError for anything outside these ranges.
    """
    whose = _checked_sex(sex)
    _check_angles(hold, hip_deg, knee_deg, straddle_deg)
    if hold == L_SIT:
        if straddle_deg or hip_deg > 0:
            return order_only(
                "with raised or straddled legs the moment falls as the hold gets harder"
            )
        return Share(_l_sit_ratio(whose, hip_deg, knee_deg, one_leg), PLUS_MINUS, MODELLED, SOURCE)
    full = _moment(whose, 0, 0, 0, one_leg=False)
    ratio = _moment(whose, hip_deg, knee_deg, straddle_deg, one_leg) / full
    tight = hip_deg > TIGHT_TUCK_HIP_DEG and not one_leg
    return Share(ratio, TIGHT_TUCK_PLUS_MINUS if tight else PLUS_MINUS, MODELLED, SOURCE)


def full_moment(hold: str, sex: str) -> float:
    """The full position's moment as a fraction of body weight x stature."""
    whose = _checked_sex(sex)
    _check_angles(hold, 0, 0, 0)
    moment = _leg_moment(whose, 0, 0) if hold == L_SIT else _moment(whose, 0, 0, 0, one_leg=False)
    return moment / SAMPLE_STATURE_MM[whose]


def _l_sit_ratio(sex: Sex, hip_deg: float, knee_deg: float, one_leg: bool) -> float:
    ratio = _leg_moment(sex, hip_deg, knee_deg) / _leg_moment(sex, 0, 0)
    if ratio <= 0:
        raise LeverageError(
            f"l-sit: hip {hip_deg}° and knee {knee_deg}° put the legs behind the hips; "
            "there is nothing to hold up"
        )
    return (1 + ratio) / 2 if one_leg else ratio


def _moment(sex: Sex, hip_deg: float, knee_deg: float, straddle_deg: float, one_leg: bool) -> float:
    """Moment about the shoulders in mm x fraction of body mass, the feet's side positive."""
    trunk = SEGMENTS[sex]["trunk"]
    legs = _leg_moment(sex, hip_deg, knee_deg)
    if one_leg:
        legs = (legs + _leg_moment(sex, 0, 0)) / 2
    return (
        mass_of(sex, "trunk") * trunk.centre * trunk.length_mm
        + mass_of(sex, "thigh", "shank", "foot") * trunk.length_mm
        + legs * math.cos(math.radians(straddle_deg))
        - mass_of(sex, "head") * _head_mm(sex)
    )


def _leg_moment(sex: Sex, hip_deg: float, knee_deg: float) -> float:
    """Moment of both legs about the hips, in mm x fraction of body mass."""
    thigh, shank = SEGMENTS[sex]["thigh"], SEGMENTS[sex]["shank"]
    along_thigh = math.cos(math.radians(hip_deg))
    along_shank = math.cos(math.radians(hip_deg - knee_deg))
    knee = thigh.length_mm * along_thigh
    foot = shank.length_mm + _FOOT_CENTRE * SAMPLE_STATURE_MM[sex]
    return (
        mass_of(sex, "thigh") * thigh.centre * knee
        + mass_of(sex, "shank") * (knee + shank.centre * shank.length_mm * along_shank)
        + mass_of(sex, "foot") * (knee + foot * along_shank)
    )


def _head_mm(sex: Sex) -> float:
    """Distance of the head's centre of mass above the shoulders."""
    body, stature = SEGMENTS[sex], SAMPLE_STATURE_MM[sex]
    below = sum(body[name].length_mm for name in ("trunk", "thigh", "shank"))
    return stature * (1 - _ANKLE_HEIGHT) - below - body["head"].centre * body["head"].length_mm


def _checked_sex(sex: str) -> Sex:
    try:
        return Sex(sex)
    except ValueError:
        raise LeverageError(f'sex {sex!r}: allowed are "m" and "f", the segment tables') from None


def _check_angles(hold: str, hip_deg: float, knee_deg: float, straddle_deg: float) -> None:
    if hold not in HOLDS:
        raise LeverageError(f"hold {hold!r}: allowed are {', '.join(HOLDS)}")
    least_hip = _LOWEST_L_DEG if hold == L_SIT else 0
    for name, angle, least, most in (
        ("hip", hip_deg, least_hip, _MOST_HIP_DEG),
        ("knee", knee_deg, 0, _MOST_KNEE_DEG),
        ("straddle", straddle_deg, 0, _MOST_STRADDLE_DEG),
    ):
        if not least <= angle <= most:
            raise LeverageError(f"{hold}: {name} {angle}°; allowed is {least} to {most}°")
