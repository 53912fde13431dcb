"""Elastic bands: pull over stretch, and what a band takes off a bodyweight exercise.

The pull of a loop over its stretch follows a second-order polynomial (McMaster 2010, J Strength
Cond Res, DOI 10.1519/jsc.0b013e3181dc4200), here through zero and the two measured points. Bands
of one colour differ by 8 to 19 % (same source), so pulls are given to 100 g and no closer.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from desktop.training.equipment import Band, InvalidEquipment

GIVEN_TO_G: Final = 100


@dataclass(frozen=True, slots=True)
class BandPull:
    """A band's pull in grams: the mean from its short to its long point, and at the long one
    (the bottom of an assisted repetition, the end of a pull against the band).
    """

    mean_g: int
    at_long_g: int


def pull_g(band: Band, stretch_mm: float) -> float:
    """The pull in grams at a stretch from 0 to the band's long point.

    Raises InvalidEquipment beyond it, where nothing was measured, and for an unmeasured band.
    """
    bend, slope = _curve(band)
    if not 0 <= stretch_mm <= band.long_mm:
        raise InvalidEquipment(
            f"band {band.name!r} is measured from 0 to {band.long_mm} mm, not at {stretch_mm} mm"
        )
    return (bend * stretch_mm + slope) * stretch_mm


def band_pull(band: Band) -> BandPull:
    """What a band pulls on average over its stroke, and most; both to 100 g.

    The mean is over the way from the short to the long point. Raises InvalidEquipment for an
    unmeasured band.
    """
    bend, slope = _curve(band)
    short, long = band.short_mm, band.long_mm
    # The integral of the curve between the points over their distance, divided out.
    mean = bend * (short**2 + short * long + long**2) / 3 + slope * (short + long) / 2
    return BandPull(_given(mean), _given(band.long_g))


def _curve(band: Band) -> tuple[float, float]:
    if not band.measured:
        raise InvalidEquipment(f"band {band.name!r} was not measured: give two stretches and pulls")
    stiffness = band.short_g / band.short_mm
    bend = (band.long_g / band.long_mm - stiffness) / (band.long_mm - band.short_mm)
    return bend, stiffness - bend * band.short_mm


def _given(pull: float) -> int:
    return max(round(pull / GIVEN_TO_G), 1) * GIVEN_TO_G
