"""What can be chosen of a week: which exercise on which day, how many sets, and what in turn."""

from __future__ import annotations

from collections.abc import Hashable, Iterable, Mapping
from enum import Enum
from itertools import combinations

from desktop.drafting import prices
from desktop.drafting.candidates import Candidate
from desktop.drafting.linear import Problem
from desktop.drafting.pairing import may_pair, saved_a_round
from desktop.drafting.prescription import place_of
from desktop.drafting.wishes import DraftWishes
from desktop.training.exercises import Muscle, Pattern
from desktop.training.schedule import WEEK


class Numbers(Enum):
    """How the numbers of sets are found: as usual, as few as will do, or with all the rest."""

    USUAL = "usual"
    FEWEST = "fewest"
    FREE = "free"
    TIGHT = "tight"


class Choices:
    """The variables of one week's problem, and sums of them for conditions to speak of.

    Variables: ("on", e, d), ("sets", e, d), ("sets", e), ("used", e), ("pattern", p, d); what is
    missed: ("missed", what). ``fixed``: exercise and day of what stands already.
    """

    def __init__(
        self,
        choice: tuple[Candidate, ...],
        wishes: DraftWishes,
        numbers: Numbers,
        fixed: frozenset[tuple[str, int]] | None = None,
    ) -> None:
        self.choice = choice
        self.wishes = wishes
        self.tight = numbers is Numbers.TIGHT
        self.level = place_of(wishes.level)
        self.days = range(wishes.days)
        self.problem = Problem()
        self.pairs: list[tuple[Candidate, Candidate, float]] = []
        self._numbers = numbers
        self._fixed = fixed
        self._weekdays = wishes.training_weekdays
        self._add_choices()
        if self.tight:
            self._add_pairs()
        self._add_patterns()

    # Sums, and what it costs to miss them

    def missed(
        self, what: str, terms: Mapping[Hashable, float], least: float, price: float, *of: Hashable
    ) -> None:
        """The sum should reach ``least``; each unit short of it costs ``price``."""
        must = price >= prices.MISSED
        if self.tight and (must or price < prices.PATTERN):
            if must:
                self.problem.require(terms, least=least)
            return
        name = ("missed" if must else "short", " ".join((what, *map(str, of))))
        short = self.problem.add(name, cost=price)
        self.problem.require({**terms, short: 1.0}, least=least)

    def patterns(self) -> tuple[Pattern, ...]:
        """The patterns of the candidates."""
        there = {one.pattern for one in self.choice}
        return tuple(pattern for pattern in Pattern if pattern in there)

    def on(self, day: int, which: Iterable[Candidate]) -> dict[Hashable, float]:
        """The exercises that stand on the day."""
        return {("on", one.key, day): 1.0 for one in which}

    def of_pattern(self, pattern: Pattern) -> list[Candidate]:
        """The candidates of a pattern."""
        return [one for one in self.choice if one.pattern is pattern]

    def sets_of_muscle(self, muscle: Muscle) -> dict[Hashable, float]:
        """Hard sets of a muscle in the week."""
        return {
            ("sets", one.key, day): one.shares[muscle]
            for one in self.choice
            if muscle in one.shares
            for day in self.days
        }

    def sets_of(self, patterns: frozenset[Pattern]) -> dict[Hashable, float]:
        """Sets of these patterns in the week."""
        return {
            ("sets", one.key, day): 1.0
            for one in self.choice
            if one.pattern in patterns
            for day in self.days
        }

    def following(self) -> list[tuple[int, int]]:
        """The pairs of days that follow one another directly."""
        return [
            (one, other)
            for one, other in combinations(self.days, 2)
            if (self._weekdays[other] - self._weekdays[one]) % WEEK in (1, WEEK - 1)
        ]

    # The variables

    def _add_choices(self) -> None:
        problem = self.problem
        for one in self.choice:
            key, asked = one.key, one.prescribed
            problem.add(("used", key), 1.0, cost=self._soft(prices.VARIETY_PRICE[self.level]))
            for day in self.days:
                on = self._on_choice(one, day)
                problem.require({on: 1, ("used", key): -1}, most=0)
                problem.add(("sets", key, day), asked.most)
            self._add_sets(one)
            problem.require({("on", key, day): 1 for day in self.days}, most=3)

    def _on_choice(self, one: Candidate, day: int) -> Hashable:
        """Whether the exercise stands on the day; open, or settled already."""
        name = ("on", one.key, day)
        price = prices.A_SLOT + one.price + self._day_price(one, day)
        if self._fixed is None:
            return self.problem.choice(name, cost=price)
        there = float((one.key, day) in self._fixed)
        return self.problem.add(name, there, lower=there, cost=price)

    def _add_sets(self, one: Candidate) -> None:
        """The sets: a number known before, or one to be found; one for a line, whatever the day."""
        problem, key, asked = self.problem, one.key, one.prescribed
        known = {Numbers.USUAL: asked.usual, Numbers.FEWEST: asked.fewest}.get(self._numbers)
        if known is None:
            problem.add(("sets", key), asked.most, lower=asked.fewest, whole=True)
            apart = problem.add(("unusual", key), asked.most, cost=self._soft(prices.UNUSUAL_SET))
            problem.require({("sets", key): 1, apart: 1}, least=asked.usual)
            problem.require({("sets", key): 1, apart: -1}, most=asked.usual)
        for day in self.days:
            on, sets = ("on", key, day), ("sets", key, day)
            if known is not None:
                problem.require({sets: 1, on: -known}, 0, 0)
                continue
            problem.require({sets: 1, on: -asked.most}, most=0)
            problem.require({sets: 1, ("sets", key): -1}, most=0)
            problem.require({sets: 1, ("sets", key): -1, on: -asked.most}, least=-asked.most)

    def _soft(self, price: float) -> float:
        """A price that does not count where wishes are hard to meet."""
        return 0.0 if self.tight else price

    def _day_price(self, one: Candidate, day: int) -> float:
        """Next to nothing: it tells days apart that else are alike."""
        return prices.LATE_SQUAT * day if one.pattern is Pattern.SQUAT else 0.0

    def _add_pairs(self) -> None:
        """Slots done in turn: different muscles, none of them a heavy lift of the legs."""
        for one, other in combinations(self.choice, 2):
            if not may_pair(one, other) or (saves := saved_a_round(one, other)) <= 0:
                continue
            self.pairs.append((one, other, saves))
            most = min(one.prescribed.most, other.prescribed.most)
            for day in self.days:
                pair = (one.key, other.key, day)
                both = self.problem.choice(("pair", *pair), cost=prices.PAIRING)
                rounds = self.problem.add(("rounds", *pair), most)
                self.problem.require({rounds: 1, both: -most}, most=0)
                for each in (one, other):
                    self.problem.require({both: 1, ("on", each.key, day): -1}, most=0)
                    self.problem.require({rounds: 1, ("sets", each.key, day): -1}, most=0)
        for one in self.choice:
            for day in self.days:
                pairs: dict[Hashable, float] = {
                    ("pair", a.key, b.key, day): 1.0
                    for a, b, _ in self.pairs
                    if one.key in (a.key, b.key)
                }
                if pairs:
                    self.problem.require(pairs, most=1)

    def _add_patterns(self) -> None:
        """Whether a day trains a pattern."""
        for pattern in self.patterns():
            for day in self.days:
                trained = self.problem.add(("pattern", pattern, day), 1.0)
                on = self.on(day, self.of_pattern(pattern))
                for name in on:
                    self.problem.require({name: 1, trained: -1}, most=0)
                self.problem.require({**on, trained: -1}, least=0)
