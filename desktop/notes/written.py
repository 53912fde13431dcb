"""Written sets: those of one entry so far, and the load, count and set-up that hold for the next.

A load before sets holds for all that follow ("100 kg: 3x5, 2x3"), one behind them for these
("3x5 100 kg, 2x8 80").
"""

from __future__ import annotations

from dataclasses import replace
from typing import Final

from desktop.notes.figures import Factor
from desktop.notes.groups import Group, StandingLoad
from desktop.notes.items import Kind
from desktop.notes.pieces import Piece, What
from desktop.notes.places import HEAVY, Place, load_and_list
from desktop.notes.products import Reader
from desktop.notes.reading import Doubt, Span
from desktop.training.quantities import InvalidQuantity, Unit, grams

LIGHT: Final = 10
"""A number up to this beside @ or behind sets may be a rating or another set."""


class Written:
    """The groups of sets so far. ``heading``: the load that holds for what follows; ``warm``: what
    follows is a warm-up.
    """

    def __init__(self, reader: Reader) -> None:
        self.reader = reader
        self.groups: list[Group] = []
        self.heading: StandingLoad | None = None
        self.unit: Unit | None = None
        self.variation: str | None = None
        self.warm = False
        self._count = 0
        self._fresh = 0

    @property
    def last(self) -> Group | None:
        """The last group."""
        return self.groups[-1] if self.groups else None

    @property
    def fresh(self) -> list[Group]:
        """The groups of this line."""
        return self.groups[self._fresh :]

    def new_line(self) -> None:
        """A new line begins."""
        self.warm = False
        self._fresh = len(self.groups)

    def set_up(self, key: str) -> None:
        """The variation of what was noted so far and, where none has one, of what follows."""
        for group in self.groups:
            group.sets = [replace(one, variation=one.variation or key) for one in group.sets]
        self.variation = self.variation or key

    def add(self, piece: Piece) -> bool:
        """Sets, with the load, the count and the set-up that stand before them."""
        group = Group.of(piece)
        if self._count and group.multiply(self._count):
            self._count = 0
        if self.warm:
            group.sets = [replace(one, warm_up=True) for one in group.sets]
        if self.variation is not None:
            group.sets = [replace(one, variation=self.variation) for one in group.sets]
        if group.lacks_load and self.heading is not None:
            group.load([self.heading.load_g], group.span)
            self.heading.used = True
            if self.heading.unsure:
                group.ask(Doubt.LOAD, self.heading.span)
        self.unit = piece.unit or self.unit
        self.groups.append(group)
        return True

    def take_load(
        self, loads_g: tuple[int, ...], span: Span, *, sure: bool, count: int = 0
    ) -> bool:
        """A load: for the sets before it where they lack one, else for what follows."""
        last = self.last
        if last is not None and last.lacks_load:
            if not last.load(loads_g, span) or (count and not last.multiply(count)):
                return False
            if not sure:
                last.ask(Doubt.LOAD, span)
            return True
        if len(loads_g) != 1:
            return False
        self.heading = StandingLoad(loads_g[0], span, unsure=not sure, used=loads_g[0] == 0)
        self._count = count or self._count
        return True

    def take_count(self, count: int) -> bool:
        """A number of sets: of those before, else of those that follow."""
        if self.groups and self.groups[-1].multiply(count):
            return True
        self._count = count
        return not self.groups

    # --- numbers without a word ---------------------------------------------------------------

    def bare(self, factor: Factor, place: Place) -> bool:
        """A load or amounts, by what stands beside the numbers."""
        if self.groups and place.in_prose:
            return False
        last = self.groups[-1] if len(self.groups) > self._fresh else None
        if last is not None and last.lacks_load and self.heading is None:
            return self._behind_sets(factor, last, place)
        if factor.single and place.heads(factor, self.reader):
            load_g = self.reader.load(factor.figures[0])
            sure = factor.first > LIGHT and self.reader.loaded
            return load_g is not None and self._bare_load((load_g,), factor, sure)
        split = load_and_list(factor, self.reader) if self.heading is None else None
        return self.add(split) if split is not None else self._amounts(factor, place)

    def _behind_sets(self, factor: Factor, last: Group, place: Place) -> bool:
        """A number behind sets without a load: their load, or more sets."""
        loaded = self.reader.loaded
        if factor.either is not None and loaded:
            factor = Factor((factor.either,))
        loads = tuple(filter(None, (self.reader.load(each) for each in factor.figures)))
        fits = len(loads) == len(factor.figures) and len(loads) in (1, len(last.sets))
        if loaded and fits and (factor.single or min(factor.values) > HEAVY):
            sure = factor.first > LIGHT and ("," not in place.gap or factor.first > HEAVY)
            return self._bare_load(loads, factor, sure)
        if loaded or "," in place.gap or not factor.single:
            unclear = last.counted or loaded
            work = self.reader.amounts(factor, place.item.span)
            if work.what is What.WORK and self.add(work):
                if unclear:
                    self.groups[-1].ask(Doubt.AMOUNT, place.item.span)
                return True
            return False
        if not loads:
            return False
        last.ask(Doubt.LOAD, place.item.span, loads_g=(loads[0], 0))
        return last.load(loads, place.item.span)

    def _bare_load(self, loads_g: tuple[int, ...], factor: Factor, sure: bool) -> bool:
        """A load without unit: the trainee's; asked where the other unit went before."""
        before = self.groups[-1] if self.groups and self.groups[-1].lacks_load else None
        if not self.take_load(loads_g, factor.span, sure=sure):
            return False
        if self.unit is None or self.unit is self.reader.unit or not factor.single:
            return True
        if before is None:
            assert self.heading is not None, "what no sets took stands for those that follow"
            self.heading.unsure = True
            return True
        try:
            other = grams(factor.first, self.unit)
        except InvalidQuantity:
            other = loads_g[0]
        before.ask(Doubt.UNIT, factor.span, loads_g=(loads_g[0], other))
        return True

    def _amounts(self, factor: Factor, place: Place) -> bool:
        span = place.item.span
        if factor.single and self.reader.loaded and not self._amount_fits(place):
            return False
        work = self.reader.amounts(factor, span)
        if work.what is not What.WORK or not self.add(work):
            return False
        if factor.either is not None and self.reader.loaded and self.heading is None:
            self.groups[-1].ask(Doubt.DECIMAL, span)
        if factor.single and place.follower is not None and place.follower.kind is Kind.RUN:
            self.groups[-1].ask(Doubt.AMOUNT, span)
        return True

    def _amount_fits(self, place: Place) -> bool:
        """Whether a lone number beside a loaded exercise is repetitions."""
        if self.heading is not None:
            return True
        earlier = self.groups[-1] if self.groups else None
        if earlier is not None and earlier.load_g:
            return "," in place.gap
        return place.reps_for_load()
