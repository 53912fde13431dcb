"""How a load is made from what a trainee owns, and which loads can be made at all.

Loads are grams per implement. On the bodyweight axis assistance is negative, the body alone 0,
added load positive.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from enum import StrEnum
from functools import lru_cache, partial
from typing import Final

from desktop.training.bands import band_pull
from desktop.training.discs import discs_per_side, reachable_loads
from desktop.training.equipment import AdjustableDumbbell, Band, Bar, Discs, Equipment, Stack
from desktop.training.exercises import Exercise, LoadingKind
from desktop.training.loads import distinct, enclosing, found
from desktop.training.quantities import GRAMS_PER_LB, Unit, grams, same_load

_QUARTER_LB_G: Final = float(GRAMS_PER_LB) / 4
_METRIC_GRID_G: Final = 50


class MadeWith(StrEnum):
    """What makes a load."""

    BAR = "bar"
    DUMBBELL = "dumbbell"
    HANDLE = "handle"
    KETTLEBELL = "kettlebell"
    STACK = "stack"
    BAND = "band"
    VEST = "vest"
    ASSISTANCE = "assistance"
    BODY_ALONE = "body alone"


@dataclass(frozen=True, slots=True)
class Loading:
    """How one load is set up.

    ``load_g`` is per implement, ``implements`` how many are made alike. ``bar`` with
    ``collars_g`` (0: none on) or ``handle_g`` carries ``discs_per_side`` (grams, largest first;
    for a handle each end). ``half_step``: the stack's small extra plate is on. ``at_bottom_g``: a
    band's pull at its long point, while ``load_g`` holds the mean.
    """

    load_g: int
    made_with: MadeWith
    implements: int = 1
    bar: Bar | None = None
    collars_g: int = 0
    handle_g: int | None = None
    discs_per_side: tuple[int, ...] = ()
    stack: Stack | None = None
    half_step: bool = False
    band: Band | None = None
    at_bottom_g: int | None = None


@dataclass(frozen=True, slots=True)
class CannotLoad:
    """A load that cannot be made, and the two that enclose it (None: there is none)."""

    load_g: int
    below_g: int | None
    above_g: int | None


def reachable(equipment: Equipment, exercise: Exercise) -> tuple[int, ...]:
    """The loads in grams per implement that the equipment makes for the exercise, sorted.

    Empty where nothing owned can load it. Loads within 10 g stand once. Where bar and discs, or
    a stack's steps, are marked in pounds, a load is what the marks add up to (to a quarter pound)
    rather than the sum of their masses, each rounded to the gram.
    Discs are used in pairs (a pair of handles needs four alike): one without its like stays off.
    Raises InvalidEquipment where more than `discs.MOST_PAIRS` pairs of discs are owned.
    """
    return _distinct_of(_sources(equipment, exercise))


def loading(equipment: Equipment, exercise: Exercise, load_g: int) -> Loading | CannotLoad:
    """How to set up ``load_g`` for the exercise: the first bar, dumbbell or other that makes it.

    Otherwise the two loads that enclose it. Raises as `reachable`.
    """
    sources = tuple(_sources(equipment, exercise))
    for source in sources:
        made_g = found(source.loads, load_g)
        if made_g is not None:
            return source.make(made_g)
    return CannotLoad(load_g, *enclosing(_distinct_of(sources), load_g))


@dataclass(frozen=True, slots=True)
class _Source:
    loads: tuple[int, ...]
    make: Callable[[int], Loading]


def _distinct_of(sources: Iterable[_Source]) -> tuple[int, ...]:
    return distinct(load_g for source in sources for load_g in source.loads)


def _sources(equipment: Equipment, exercise: Exercise) -> Iterator[_Source]:
    """The ways to load the exercise, the one to be taken first standing first."""
    match exercise.loading:
        case LoadingKind.BARBELL:
            return _bars(equipment)
        case LoadingKind.DUMBBELL:
            return _dumbbells(equipment, exercise.implements)
        case LoadingKind.KETTLEBELL:
            return _single(equipment.kettlebells_g, MadeWith.KETTLEBELL, exercise.implements)
        case LoadingKind.STACK:
            return _stacks(_stacks_for(equipment, exercise))
        case LoadingKind.BAND:
            return _bands(equipment.bands, sign=1)
    return _bodyweight(equipment)


def _bars(equipment: Equipment) -> Iterator[_Source]:
    pairs = _pairs(equipment.discs, 2)
    for bar in equipment.bars:
        collars_g = equipment.collars_g if bar.collars_g is None else bar.collars_g
        yield _Source((bar.mass_g,), partial(Loading, made_with=MadeWith.BAR, bar=bar))
        yield _Source(
            _disc_loads(bar.mass_g + collars_g, pairs),
            partial(_on_bar, bar=bar, collars_g=collars_g, pairs=pairs),
        )


def _on_bar(load_g: int, bar: Bar, collars_g: int, pairs: tuple[tuple[int, int], ...]) -> Loading:
    discs = discs_per_side(load_g, bar.mass_g + collars_g, dict(pairs))
    return Loading(load_g, MadeWith.BAR, bar=bar, collars_g=collars_g, discs_per_side=discs or ())


def _dumbbells(equipment: Equipment, implements: int) -> Iterator[_Source]:
    yield from _single(equipment.dumbbells_g, MadeWith.DUMBBELL, implements)
    for handle in equipment.adjustable:
        if handle.handles >= implements:
            pairs = _pairs(handle.discs, 2 * implements)
            yield _Source(
                _disc_loads(handle.handle_g, pairs),
                partial(_on_handle, handle=handle, implements=implements, pairs=pairs),
            )


def _on_handle(
    load_g: int, handle: AdjustableDumbbell, implements: int, pairs: tuple[tuple[int, int], ...]
) -> Loading:
    discs = discs_per_side(load_g, handle.handle_g, dict(pairs))
    return Loading(
        load_g,
        MadeWith.HANDLE,
        implements,
        handle_g=handle.handle_g,
        discs_per_side=discs or (),
    )


def _single(masses_g: tuple[int, ...], made_with: MadeWith, implements: int) -> Iterator[_Source]:
    """Implements of one piece; ``implements`` alike are needed."""
    ordered = sorted(masses_g)
    alike = (
        lightest
        for lightest, last in zip(ordered, ordered[implements - 1 :], strict=False)
        if same_load(lightest, last)
    )
    yield _Source(distinct(alike), partial(Loading, made_with=made_with, implements=implements))


def _stacks_for(equipment: Equipment, exercise: Exercise) -> tuple[Stack, ...]:
    """The stacks named like the exercise or something it needs; where none is, every stack."""
    names = {
        name.casefold()
        for name in (exercise.key, exercise.name, *exercise.other_names, *exercise.needs)
    }
    named = tuple(stack for stack in equipment.stacks if stack.name.casefold() in names)
    return named or equipment.stacks


def _stacks(stacks: tuple[Stack, ...]) -> Iterator[_Source]:
    for stack in stacks:
        plates = range(stack.first_g, stack.last_g + 1, stack.step_g)
        make = partial(Loading, made_with=MadeWith.STACK, stack=stack)
        shown = _as_marked if _marked_in_pounds(stack.step_g) else distinct
        yield _Source(shown(tuple(plates)), make)
        if stack.half_step_g:
            halves = tuple(plate_g + stack.half_step_g for plate_g in plates)
            yield _Source(shown(halves), partial(make, half_step=True))


def _bands(bands: tuple[Band, ...], sign: int) -> Iterator[_Source]:
    """Against a band (``sign`` 1) or helped by one (-1); an unmeasured band has no load."""
    made_with = MadeWith.BAND if sign > 0 else MadeWith.ASSISTANCE
    for band in bands:
        if band.measured:
            pull = band_pull(band)
            make = partial(
                Loading, made_with=made_with, band=band, at_bottom_g=sign * pull.at_long_g
            )
            yield _Source((sign * pull.mean_g,), make)


def _bodyweight(equipment: Equipment) -> Iterator[_Source]:
    yield _Source((0,), partial(Loading, made_with=MadeWith.BODY_ALONE))
    yield _Source(distinct(equipment.vest_g), partial(Loading, made_with=MadeWith.VEST))
    assistance = distinct(-mass_g for mass_g in equipment.assistance_g)
    yield _Source(assistance, partial(Loading, made_with=MadeWith.ASSISTANCE))
    yield from _bands(equipment.bands, sign=-1)


def _pairs(discs: tuple[Discs, ...], alike: int) -> tuple[tuple[int, int], ...]:
    """(mass, how many can go on each side) where ``alike`` of one mass are needed at a time."""
    owned: dict[int, int] = {}
    for each in discs:
        owned[each.mass_g] = owned.get(each.mass_g, 0) + each.count
    return tuple((mass_g, count // alike) for mass_g, count in sorted(owned.items()))


@lru_cache(maxsize=128)
def _disc_loads(bar_g: int, pairs: tuple[tuple[int, int], ...]) -> tuple[int, ...]:
    kinds = dict(pairs)
    loads = reachable_loads(bar_g, kinds)
    if not _marked_in_pounds(bar_g):
        return loads
    pounds = {mass_g: number for mass_g, number in pairs if _marked_in_pounds(mass_g)}
    marked = _as_marked(reachable_loads(bar_g, pounds))
    return tuple(sorted((*marked, *(each for each in loads if found(marked, each) is None))))


def _as_marked(loads: tuple[int, ...]) -> tuple[int, ...]:
    """Sums of pound parts as their marks add up: every part is rounded to the gram, and their
    sums drift by a few grams off the pounds that stand on them.
    """
    return distinct(
        marked_g if same_load(marked_g := _quarter_pound(load_g), load_g) else load_g
        for load_g in loads
    )


def _marked_in_pounds(mass_g: int) -> bool:
    """Whether a part's mass is a quarter pound or a multiple, and no round metric mass."""
    return mass_g % _METRIC_GRID_G != 0 and mass_g == _quarter_pound(mass_g)


def _quarter_pound(mass_g: int) -> int:
    """The nearest multiple of a quarter pound, in grams."""
    return grams(round(mass_g / _QUARTER_LB_G) / 4, Unit.LB)
