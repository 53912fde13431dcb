"""Strength: the one-repetition maximum from load, repetitions and repetitions in reserve.

Seven published equations and their inverses, the chart between repetitions and percentages, the
effort scale, and one default estimate with its uncertainty. Repetitions in reserve (RIR) are added
to the repetitions done: repetitions to failure = reps + RIR. One repetition with none in reserve
is the load itself, whatever the equation.

Loads are effective loads in grams, above zero. Standard library only.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from functools import lru_cache
from numbers import Real
from types import MappingProxyType
from typing import Final

from desktop.training.quantities import MAX_LOAD_G

MOST_REPS: Final = 20
"""Repetitions to failure no equation is asked beyond: at 20 the seven span 135-212 %."""

CERTAIN_REPS: Final = 10
"""Linear equations hold to here: Reynolds, Gordon, Robergs 2006, J Strength Cond Res
20(3):584-592, DOI 10.1519/R-15304.1."""

ESTIMATED_REPS: Final = 15
"""Beyond these repetitions to failure no default estimate is made."""

MEASURED_LOG_SD: Final = 0.042
"""Day-to-day variation of a measured maximum, median CV 4.2 %: Grgic 2020, Sports Med Open 6:31,
DOI 10.1186/s40798-020-00260-z."""

ASSUMED_RIR: Final = 2.0
ASSUMED_RIR_SD: Final = 2.0
"""What a blank RIR stands for in an estimate: unknown, most often between none and four in
reserve (common practice, no source)."""

TEXTBOOK_CHART: Final[Mapping[int, float]] = MappingProxyType(
    {1: 100, 2: 95, 3: 93, 4: 90, 5: 87, 6: 85, 7: 83, 8: 80, 9: 77, 10: 75, 11: 70, 12: 67, 15: 65}
)
"""Repetitions to % of the maximum as textbooks print it (NSCA, Essentials of Strength Training
and Conditioning). Most sources behind it are not data: Richens & Cleather 2014, Biol Sport
31(2):157-161, DOI 10.5604/20831862.1099047."""

_MOST_ONE_REP_MAX_G: Final = 3 * MAX_LOAD_G  # the largest load at the most repetitions fits in
_MOST_COUNT: Final = 10_000


class StrengthError(ValueError):
    """A set or maximum from which nothing can be estimated. The text says what is allowed."""


@dataclass(frozen=True, slots=True)
class Equation:
    """One published equation: maximum / load by repetitions to failure, and its inverse."""

    name: str
    source: str
    multiplier: Callable[[float], float]
    reps: Callable[[float], float]


EQUATIONS: Final[Mapping[str, Equation]] = MappingProxyType(
    {
        equation.name: equation
        for equation in (
            Equation(
                "epley",
                "Epley 1985",
                lambda reps: 1 + reps / 30,
                lambda times: 30 * (times - 1),
            ),
            Equation(
                "brzycki",
                "Brzycki 1993",
                lambda reps: 36 / (37 - reps),
                lambda times: 37 - 36 / times,
            ),
            Equation(
                "lander",
                "Lander 1985",
                lambda reps: 100 / (101.3 - 2.67123 * reps),
                lambda times: (101.3 - 100 / times) / 2.67123,
            ),
            Equation(
                "lombardi",
                "Lombardi 1989",
                lambda reps: reps**0.10,
                lambda times: times**10,
            ),
            Equation(
                "mayhew",
                "Mayhew 1992",
                lambda reps: 100 / (52.2 + 41.9 * math.exp(-0.055 * reps)),
                lambda times: -math.log((100 / times - 52.2) / 41.9) / 0.055,
            ),
            Equation(
                "oconner",
                "O'Conner 1989",
                lambda reps: 1 + 0.025 * reps,
                lambda times: (times - 1) / 0.025,
            ),
            Equation(
                "wathan",
                "Wathan 1994",
                lambda reps: 100 / (48.8 + 53.8 * math.exp(-0.075 * reps)),
                lambda times: -math.log((100 / times - 48.8) / 53.8) / 0.075,
            ),
        )
    }
)
"""The seven by name. Singular at 37 (Brzycki) and 37.92 repetitions (Lander), beyond
`MOST_REPS`."""


@dataclass(frozen=True, slots=True)
class Estimate:
    """An estimated maximum: grams, the standard deviation of its natural logarithm, and whether
    the repetitions lie where the equations are trusted and the RIR is known."""

    value_g: float
    log_sd: float
    certain: bool


def one_rep_max(load_g: float, reps: float, rir: float = 0.0, equation: str = "epley") -> float:
    """The maximum in grams from `reps` done at `load_g` grams with `rir` in reserve.

    Equation names are the keys of `EQUATIONS`. Raises StrengthError for a load that is not above
    zero (and at most `MAX_LOAD_G`), reps under 1, a negative RIR, more than `MOST_REPS` together,
    or an unknown equation.
    """
    _check_mass("load", load_g, MAX_LOAD_G)
    return float(load_g) * _multiplier(_to_failure(reps, rir), equation)


def load_for(one_rep_max_g: float, reps: float, rir: float = 0.0, equation: str = "epley") -> float:
    """The load in grams with which `reps` leave `rir` in reserve; inverse of `one_rep_max`.

    Raises StrengthError as `one_rep_max` does; the maximum may be up to three times `MAX_LOAD_G`.
    """
    _check_mass("one-repetition maximum", one_rep_max_g, _MOST_ONE_REP_MAX_G)
    return float(one_rep_max_g) / _multiplier(_to_failure(reps, rir), equation)


def percent_for(reps: float, rir: float = 0.0, equation: str = "epley") -> float:
    """The percentage of the maximum at which `reps` leave `rir` in reserve, by `equation`.

    Raises StrengthError as `one_rep_max` does.
    """
    return 100 / _multiplier(_to_failure(reps, rir), equation)


def reps_at(percent: float, equation: str = "epley") -> float:
    """Repetitions to failure at `percent` of the maximum, not rounded; inverse of `percent_for`.

    Above the equation's own value for one repetition (96.8 % for Epley) it is a single: 1.0.
    Raises StrengthError above 100 % or where more than `MOST_REPS` would be expected.
    """
    lowest = percent_for(MOST_REPS, equation=equation)
    if not _is_number(percent) or not lowest <= percent <= 100:
        raise StrengthError(
            f"{percent!r} % of the maximum: {equation} is used from {lowest:.1f} to 100 %"
        )
    return min(max(EQUATIONS[equation].reps(100 / float(percent)), 1.0), float(MOST_REPS))


def estimate(
    load_g: float, reps: float, rir: float | None, *, tested: bool = False
) -> Estimate | None:
    """The default estimate: the mean of Epley and Brzycki, with its uncertainty.

    Brzycki was the most accurate of six up to 10 repetitions, and averaging two may reduce the
    error: Mayhew 1995, J Sports Med Phys Fitness 35(2):108-113. Certain up to `CERTAIN_REPS`
    repetitions to failure, uncertain up to `ESTIMATED_REPS`, beyond that None. `rir` None is a
    blank: `ASSUMED_RIR` give or take `ASSUMED_RIR_SD`, never certain. `tested`: the set was a test
    that the coach watched for its reserve, so a called RIR adds no error (common practice).

    Raises StrengthError for an impossible load, reps or RIR, as `one_rep_max` does.
    """
    _check_mass("load", load_g, MAX_LOAD_G)
    to_failure = _to_failure(reps, ASSUMED_RIR if rir is None else rir, most=2 * _MOST_COUNT)
    if to_failure > ESTIMATED_REPS:
        return None
    return Estimate(
        float(load_g) * _default_multiplier(to_failure),
        _log_sd(to_failure, 0.0 if tested and rir is not None else rir),
        to_failure <= CERTAIN_REPS and rir is not None,
    )


def rir_from_rpe(rpe: float) -> tuple[float, float] | None:
    """The repetitions in reserve, lowest and highest, that a rating of effort stands for.

    Zourdos 2016, J Strength Cond Res 30(1):267-275, DOI 10.1519/JSC.0000000000001049: 10 and 9.5
    are both none in reserve (at 9.5 the load could rise), 9 is 1, 8.5 is 1-2 and so on to 7, 5-6
    is 4-6. None where the scale gives no number: below 5, and at 6.5. Raises StrengthError for
    anything but a half step from 0 to 10.
    """
    if not _is_number(rpe) or not 0 <= rpe <= 10 or 2 * rpe != int(2 * rpe):
        raise StrengthError(f"{rpe!r} is no rating of effort: allowed are half steps from 0 to 10")
    if rpe >= 9.5:
        return 0.0, 0.0
    if rpe >= 7:
        return float(math.floor(10 - rpe)), float(math.ceil(10 - rpe))
    return (4.0, 6.0) if 5 <= rpe <= 6 else None


def rpe_from_rir(rir: float) -> tuple[float, float] | None:
    """The ratings of effort, lowest and highest, that `rir` in reserve are called on the scale of
    `rir_from_rpe`. A value between two steps is called by both. None above 6: the scale gives no
    number there. Raises StrengthError for a negative or non-finite RIR.
    """
    _check_rir(rir)
    if rir > 6:
        return None
    if rir >= 4:
        return 5.0, 6.0
    if rir > 3:
        return 6.0, 7.0
    if 0 < rir < 1:
        return 9.0, 9.5
    return math.floor(2 * (10 - rir)) / 2, math.ceil(2 * (10 - rir)) / 2


def _log_sd(to_failure: float, rir: float | None) -> float:
    """Standard deviation of ln(estimate): four independent sources added as variances.

    1. The day-to-day variation of a measured maximum, `MEASURED_LOG_SD` (published).
    2. Repetitions at one load: standard error of measurement 0.7 at 90 % and 1.1 at 70 % of the
       maximum (Mitter 2022, PLoS ONE 17(5):e0268074), which the textbook chart puts at 4 and 11
       repetitions; a straight line between and beyond (arithmetic from published values).
    3. The error of a called RIR: standard deviation 1.73, 2.46, 2.92 repetitions at called 1, 3,
       5 (squat at 70 %; Zourdos 2021, J Strength Cond Res 35(2S):S158-S165); straight lines
       between, none at 0, where the set shows it (arithmetic from published values).
    4. The equations' disagreement: standard deviation of the seven logarithms (arithmetic).

    Errors in repetitions become errors of the logarithm through the slope of the default
    estimate. A measured maximum has the first source only.
    """
    if to_failure == 1:
        return MEASURED_LOG_SD
    slope = (1 / 30 + 36 / (37 - to_failure) ** 2) / 2 / _default_multiplier(to_failure)
    reps_sd = 0.7 + (1.1 - 0.7) * (to_failure - 4) / (11 - 4)
    rir_sd = ASSUMED_RIR_SD if rir is None else _called_rir_sd(rir)
    return math.sqrt(
        MEASURED_LOG_SD**2
        + (slope * reps_sd) ** 2
        + (slope * rir_sd) ** 2
        + _disagreement(to_failure) ** 2
    )


def _called_rir_sd(rir: float) -> float:
    if rir <= 1:
        return 1.73 * rir
    if rir <= 3:
        return 1.73 + (2.46 - 1.73) * (rir - 1) / 2
    return 2.46 + (2.92 - 2.46) * (rir - 3) / 2


@lru_cache(maxsize=256)  # half repetitions up to 20 come up again in every session of years
def _disagreement(to_failure: float) -> float:
    logs = [math.log(equation.multiplier(to_failure)) for equation in EQUATIONS.values()]
    mean = sum(logs) / len(logs)
    return math.sqrt(sum((value - mean) ** 2 for value in logs) / len(logs))


def _default_multiplier(to_failure: float) -> float:
    return (_multiplier(to_failure, "epley") + _multiplier(to_failure, "brzycki")) / 2


def _multiplier(to_failure: float, equation: str) -> float:
    if equation not in EQUATIONS:
        raise StrengthError(f"{equation!r} is no equation: allowed are {', '.join(EQUATIONS)}")
    return 1.0 if to_failure == 1 else EQUATIONS[equation].multiplier(to_failure)


def _to_failure(reps: float, rir: float, most: int = MOST_REPS) -> float:
    if not _is_number(reps) or not 1 <= reps <= _MOST_COUNT:
        raise StrengthError(f"{reps!r} is no number of repetitions: allowed is 1 to {_MOST_COUNT}")
    _check_rir(rir)
    if reps + rir > most:
        raise StrengthError(
            f"{reps!r} repetitions with {rir!r} in reserve: no estimate above {most} to failure"
        )
    return float(reps) + float(rir)


def _check_rir(rir: float) -> None:
    if not _is_number(rir) or not 0 <= rir <= _MOST_COUNT:
        raise StrengthError(f"{rir!r} is no number in reserve: allowed is 0 to {_MOST_COUNT}")


def _check_mass(what: str, mass_g: float, most_g: int) -> None:
    if not _is_number(mass_g) or not 0 < mass_g <= most_g:
        raise StrengthError(
            f"{mass_g!r} g is no {what} to estimate from: allowed is above 0, at most {most_g} g"
        )


def _is_number(value: object) -> bool:
    return isinstance(value, Real) and not isinstance(value, bool)
