"""Figures: numbers with what stands beside them, joined into lists and products.

"3x5 100kg" is two chains: a product of 3 and 5, and 100 kg. "8,8/7" and the like are lists within
one factor of a chain.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, replace
from decimal import Decimal
from enum import StrEnum
from typing import Final

from desktop.notes import words
from desktop.notes.reading import Span
from desktop.training.quantities import Unit


class Role(StrEnum):
    """What is said of a number by what stands beside it."""

    NONE = "none"
    LOAD = "load"
    SECONDS = "seconds"
    REPS = "reps"
    SETS = "sets"
    FAR = "far"
    """A distance or a percentage, which no set takes."""


@dataclass(frozen=True, slots=True)
class Figure:
    """One number: its value (seconds where it is a time), and what is said of it."""

    value: Decimal
    span: Span
    role: Role = Role.NONE
    unit: Unit | None = None
    sign: int = 0
    digits: str = ""


@dataclass(frozen=True, slots=True)
class Factor:
    """One or more numbers of one role. ``joint``: what stands between them ("/", ",", "-", "+",
    " "). ``either``: the one number that a comma may make of the two.
    """

    figures: tuple[Figure, ...]
    joint: str = ""
    either: Figure | None = None

    @property
    def role(self) -> Role:
        """The role that all of them have."""
        return self.figures[0].role

    @property
    def span(self) -> Span:
        """From the first to the last."""
        return self.figures[0].span.to(self.figures[-1].span)

    @property
    def values(self) -> tuple[Decimal, ...]:
        """The numbers."""
        return tuple(figure.value for figure in self.figures)

    @property
    def first(self) -> Decimal:
        """The first number."""
        return self.figures[0].value

    @property
    def single(self) -> bool:
        """Whether it is one number."""
        return len(self.figures) == 1


@dataclass(frozen=True, slots=True)
class Chain:
    """Factors with a multiplication sign between them; ``crossed``: one stands before the first."""

    factors: tuple[Factor, ...]
    crossed: bool = False

    @property
    def span(self) -> Span:
        """From the first factor to the last."""
        return self.factors[0].span.to(self.factors[-1].span)

    @property
    def roles(self) -> tuple[Role, ...]:
        """The role of each factor."""
        return tuple(factor.role for factor in self.factors)


_NUMBER: Final = re.compile(r"[0-9]{1,5}(?:\.[0-9]{1,3}(?![0-9.]))?(?![0-9])")
_SIGN: Final = re.compile(r"[+−-](?=[0-9])")
_CLOCK: Final = re.compile(r"([0-9]{1,2}):([0-5][0-9])(?![0-9:]|[ \t]*(?:am|pm|uhr|h)\b)")
_MINUTES: Final = re.compile(
    rf"([0-9]{{1,3}})[ \t]*{words.MINUTES}"
    rf"(?:(?:[ \t]*([0-5]?[0-9])[ \t]*{words.SECONDS})|([0-5][0-9]))(?![^\W_])"
)
_ROLES: Final = tuple(
    (role, unit, re.compile(rf"[ \t]*{pattern}(?![^\W_])"))
    for role, unit, pattern in (
        (Role.LOAD, Unit.KG, words.KG),
        (Role.LOAD, Unit.LB, words.LB),
        (Role.SECONDS, None, words.SECONDS),
        (Role.SECONDS, None, words.MINUTES),
        (Role.REPS, None, words.REPS),
        (Role.SETS, None, words.SETS),
        (Role.FAR, None, words.FAR),
    )
)
_MINUTE_ROLE: Final = 3
_JOINT: Final = re.compile(
    r"(?:[ \t]*[/,][ \t]*(?:[x×][ \t]?)?|[ \t]+(?:and|und|y|&)[ \t]+|[ \t]+\+[ \t]+|[-–+](?=[0-9])"
    r"|[ \t]+)(?=[0-9])"
)
_NEXT_X: Final = re.compile(r"[ \t]*[x×✕*][ \t]*[0-9]")
_HEAVY: Final = 10
_FRACTIONS: Final = ("5", "25", "50", "75", "0", "00")

_CLOSE: Final = ("/", ",", ", ", "and")

_Linked = tuple[Figure, str]


def figure_at(text: str, at: int) -> tuple[Figure, int] | None:
    """The figure that begins at ``at``, and where it ends; None where none does."""
    sign_found = _SIGN.match(text, at)
    start = sign_found.end() if sign_found else at
    sign = 0 if not sign_found else 1 if sign_found[0] == "+" else -1
    if timed := _MINUTES.match(text, start) or _CLOCK.match(text, start):
        seconds = 60 * int(timed[1]) + int(next(part for part in timed.groups()[1:] if part))
        span = Span(at, timed.end())
        return Figure(Decimal(seconds), span, Role.SECONDS, sign=sign), timed.end()
    found = _NUMBER.match(text, start)
    if found is None:
        return None
    value, end = Decimal(found[0]), found.end()
    for place, (role, unit, pattern) in enumerate(_ROLES):
        if beside := pattern.match(text, end):
            if place == _MINUTE_ROLE:
                value *= 60
            span = Span(at, beside.end())
            return Figure(value, span, role, unit, sign, found[0]), beside.end()
    if end < len(text) and text[end].isalpha() and not words.X.match(text, end):
        return None
    return Figure(value, Span(at, end), sign=sign, digits=found[0]), end


def chains_at(text: str, at: int) -> tuple[list[Chain], int]:
    """The chains that begin at ``at`` (several where a list breaks), and where the last ends."""
    crossed = words.X.match(text, at)
    factors, end = _factors_at(text, crossed.end() if crossed else at, inside=False, loaded=False)
    if not factors:
        return [], at
    alone = [Chain((factor,)) for factor in factors[:-1]]
    chain = [factors[-1]]
    while sign := _times(text, end, chain[-1]):
        loaded = chain[0].role is Role.LOAD
        more, after = _factors_at(text, sign.end(), inside=True, loaded=loaded)
        if not more:
            break
        chain += more
        end = after
    chain[0] = _before_cross(chain[0]) if len(chain) > 1 else chain[0]
    chains = [*alone, Chain(tuple(chain))]
    if crossed:
        chains[0] = replace(chains[0], crossed=True)
    return chains, end


def _times(text: str, end: int, before: Factor) -> re.Match[str] | None:
    if before.role is Role.SETS and (of := words.OF.match(text, end)):
        return of
    return words.X.match(text, end)


def _factors_at(text: str, at: int, *, inside: bool, loaded: bool) -> tuple[list[Factor], int]:
    """Figures joined to lists. ``inside`` a product only tight joints count, after a ``loaded``
    one commas too.
    """
    first = figure_at(text, at)
    if first is None:
        return [], at
    linked: list[_Linked] = [(first[0], "")]
    end = first[1]
    while joint := _JOINT.match(text, end):
        kind = _kind(joint[0])
        if inside and not (kind in ("/", ",", "-") or (loaded and kind in (", ", "and"))):
            break
        found = figure_at(text, joint.end())
        if found is None or found[0].sign:
            break
        decimal = kind == "," and not inside and _makes_decimal(linked[-1][0], found[0])
        by_stroke = kind == "/" and not inside and _NEXT_X.match(text, found[1]) is not None
        if not decimal and not by_stroke and _goes_elsewhere(text, joint.end(), found[1]):
            break
        if inside and found[0].role not in (Role.NONE, linked[-1][0].role) and kind != "/":
            break
        linked.append((found[0], kind))
        end = found[1]
    if not inside:
        return [factor for run in _runs(linked) for factor in _lists(run)], end
    kept = _runs(linked)[0]
    return [_one_list(kept)], kept[-1][0].span.end


def _makes_decimal(before: Figure, figure: Figure) -> bool:
    """Whether "62,5" is likelier one number than two, before a multiplication sign."""
    return before.value > _HEAVY and before.digits.isdigit() and figure.digits in _FRACTIONS


def _goes_elsewhere(text: str, start: int, end: int) -> bool:
    """Whether a figure begins a product, or is a rating or a side: no member of a list."""
    return bool(
        _NEXT_X.match(text, end)
        or words.RIR.match(text, start)
        or words.RPE.match(text, start)
        or words.PAIN.match(text, start)
        or words.REST.match(text, start)
        or words.TEMPO.match(text, start)
        or words.SIDES.match(text, start)
    )


def _kind(joint: str) -> str:
    bare = joint.strip(" \tx×")
    if bare == ",":
        return "," if joint == "," else ", "
    if bare in ("/", "-", "+"):
        return bare
    if bare == "–":
        return "-"
    return "and" if bare else " "


def _runs(linked: Sequence[_Linked]) -> list[list[_Linked]]:
    """Split where the role changes; a role at the end counts for those joined to it closely."""
    runs: list[list[_Linked]] = [[linked[0]]]
    for figure, kind in linked[1:]:
        before = runs[-1][-1][0]
        if figure.role is before.role:
            runs[-1].append((figure, kind))
        elif before.role is Role.NONE and _takes_role(figure, kind):
            run = runs[-1]
            loose = [at for at in range(1, len(run)) if run[at][1] not in _CLOSE]
            if loose:
                runs[-1:] = [run[: loose[-1]], [(run[loose[-1]][0], ""), *run[loose[-1] + 1 :]]]
            runs[-1] = [(_as(each, figure), joint) for each, joint in runs[-1]]
            runs[-1].append((figure, kind))
        else:
            runs.append([(figure, "")])
    return runs


def _takes_role(figure: Figure, kind: str) -> bool:
    if figure.role in (Role.SECONDS, Role.REPS):
        return kind in _CLOSE
    return figure.role is Role.LOAD and kind in ("/", ",")


def _as(figure: Figure, model: Figure) -> Figure:
    minutes = model.role is Role.SECONDS and model.value >= 60 and model.value % 60 == 0
    value = figure.value * 60 if minutes and figure.value < 10 else figure.value
    return replace(figure, role=model.role, unit=model.unit, value=value)


def _lists(run: Sequence[_Linked]) -> list[Factor]:
    """A run as lists: gaps part it where other joints are there too."""
    if {kind for _, kind in run[1:]} <= {" ", "and"}:
        return [_one_list(run)]
    pieces: list[list[_Linked]] = [[run[0]]]
    for figure, kind in run[1:]:
        if kind == " ":
            pieces.append([(figure, "")])
        else:
            pieces[-1].append((figure, kind))
    factors: list[Factor] = []
    for piece in pieces:
        made = _one_list(piece)
        before = factors[-1] if factors else None
        alike = before is not None and before.role is made.role and before.joint in ("", " ")
        if before is not None and alike and made.single:
            factors[-1] = Factor((*before.figures, *made.figures), " ")
        else:
            factors.append(made)
    return factors


def _one_list(run: Sequence[_Linked]) -> Factor:
    """One list; commas without a gap are decimal marks beside other joints, and before a unit."""
    kinds = {kind for _, kind in run[1:]} - {"and"}
    figures = [figure for figure, _ in run]
    if "," in kinds and (kinds != {","} or len(run) == 2):
        merged = _with_decimals(run)
        sure = kinds != {","} or figures[-1].role is Role.LOAD or figures[0].sign != 0
        if sure and len(merged) < len(figures):
            return Factor(tuple(merged), _joint(kinds - {","}))
        if len(merged) == 1:
            return Factor(tuple(figures), ",", merged[0])
    return Factor(tuple(figures), _joint(kinds))


def _joint(kinds: set[str]) -> str:
    return next((kind.strip() or " " for kind in sorted(kinds)), "")


def _with_decimals(run: Sequence[_Linked]) -> list[Figure]:
    """Two numbers with a bare comma between them as one, wherever that makes a number."""
    made: list[Figure] = []
    open_for_more = False
    for figure, kind in run:
        if (
            kind == ","
            and open_for_more
            and made[-1].digits.isdigit()
            and (figure.digits in _FRACTIONS)
        ):
            value = Decimal(f"{made[-1].digits}.{figure.digits}")
            unit = figure.unit or made[-1].unit
            made[-1] = replace(made[-1], value=value, span=made[-1].span.to(figure.span), unit=unit)
            open_for_more = False
        else:
            made.append(figure)
            open_for_more = True
    return made


def _before_cross(factor: Factor) -> Factor:
    """Before a multiplication sign two numbers with a bare comma are one: "62,5 x 5"."""
    return Factor((factor.either,)) if factor.either is not None else factor
