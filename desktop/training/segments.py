"""Body segments: mass, centre of mass and length of each, for both sexes.

Source: P. de Leva (1996), Adjustments to Zatsiorsky-Seluyanov's segment inertia parameters,
J Biomech 29(9):1223-1230. Masses and centres of mass were read from a public transcription of the
table. Lengths are from memory; two definitions of one segment give the same point within 0.06 mm,
except for the upper arm (both sexes), the female thigh and the female foot, which have no such
check. The same table lies in resources/body-segments.csv, where a spreadsheet can open it.
"""

from __future__ import annotations

from dataclasses import dataclass
from types import MappingProxyType
from typing import Final

from desktop.training.exercises import Sex


@dataclass(frozen=True, slots=True)
class Segment:
    """One segment, one side for limbs.

    ``mass`` is a fraction of body mass, ``centre`` the distance of the centre of mass from the
    upper (first-named) end as a fraction of the length, ``length_mm`` that of the sample's mean.
    """

    mass: float
    centre: float
    length_mm: float


SAMPLE_STATURE_MM: Final = MappingProxyType({Sex.MALE: 1741.0, Sex.FEMALE: 1735.0})
"""Mean stature of the two samples, to which the lengths belong."""

SIDES: Final = MappingProxyType(
    {
        "head": 1,
        "trunk": 1,
        "upper_arm": 2,
        "forearm": 2,
        "hand": 2,
        "thigh": 2,
        "shank": 2,
        "foot": 2,
    }
)
"""How many of each a body has."""

SEGMENTS: Final = MappingProxyType(
    {
        Sex.MALE: MappingProxyType(
            {
                "head": Segment(0.0694, 0.5002, 242.9),
                "trunk": Segment(0.4346, 0.4310, 515.5),
                "upper_arm": Segment(0.0271, 0.5772, 281.7),
                "forearm": Segment(0.0162, 0.4574, 268.9),
                "hand": Segment(0.0061, 0.7900, 86.2),
                "thigh": Segment(0.1416, 0.4095, 422.2),
                "shank": Segment(0.0433, 0.4395, 434.0),
                "foot": Segment(0.0137, 0.4415, 258.1),
            }
        ),
        Sex.FEMALE: MappingProxyType(
            {
                "head": Segment(0.0668, 0.4841, 243.7),
                "trunk": Segment(0.4257, 0.3782, 497.9),
                "upper_arm": Segment(0.0255, 0.5754, 275.1),
                "forearm": Segment(0.0138, 0.4559, 264.3),
                "hand": Segment(0.0056, 0.7474, 78.0),
                "thigh": Segment(0.1478, 0.3612, 368.5),
                "shank": Segment(0.0481, 0.4352, 432.3),
                "foot": Segment(0.0129, 0.4014, 228.3),
            }
        ),
    }
)


def mass_of(sex: Sex, *names: str) -> float:
    """Mass of the named segments, both sides of limbs, as a fraction of body mass."""
    return sum(SEGMENTS[sex][name].mass * SIDES[name] for name in names)


def body_mass_sum(sex: Sex) -> float:
    """Mass of all segments as a fraction of body mass: 1.0000 (men), 0.9999 (women)."""
    return mass_of(sex, *SIDES)
