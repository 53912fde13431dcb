"""The optimum: the best week of the candidates, as a mixed-integer problem.

Every condition may be missed at a price, so that there always is a best week; the price says in
which order conditions give way. Only the minutes never give way.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Hashable, Iterable, Mapping
from enum import Enum
from itertools import combinations
from typing import Final

from desktop.drafting import prices
from desktop.drafting.candidates import Candidate, nearly_equal
from desktop.drafting.linear import Problem
from desktop.drafting.pairing import may_pair, saved_a_round
from desktop.drafting.prescription import Role, place_of
from desktop.drafting.week import GROUPS, LEAST_SETS, MOST_RATIO, Taken, Wanted, WeekPlan
from desktop.drafting.wishes import Aim, DraftWishes
from desktop.training.exercises import Muscle, Pattern
from desktop.training.schedule import TIMING, WEEK
from desktop.training.volume import LEGS, PULLS, PUSHES

_LARGE: Final = LEGS | PUSHES | PULLS
_MANY: Final = 24
_DUST: Final = 1e-6


def best_week(
    choice: tuple[Candidate, ...],
    wishes: DraftWishes,
    wanted: Wanted,
    *,
    tight: bool = False,
) -> WeekPlan:
    """The best week of these candidates.

    First what stands on which day, with as many sets as usual, or else as few as will do; then
    the sets. ``tight``: for wishes that are hard to meet, both at once. Slots may be done in turn,
    which saves time; what must be met is met, or NoSolution raised; but the minutes may give way,
    by as little as can be, so that the plan says how many it takes. What would merely be nice is
    left aside.
    """
    if tight:
        return _Week(_fewer(choice), wishes, wanted, _Sets.TIGHT).solved()
    plan = _Week(choice, wishes, wanted, _Sets.USUAL).with_sets()
    return plan if not plan.missed else _Week(choice, wishes, wanted, _Sets.FEWEST).with_sets()


class _Sets(Enum):
    """How the numbers of sets are found: as usual, as few as will do, or with all the rest."""

    USUAL = "usual"
    FEWEST = "fewest"
    FREE = "free"
    TIGHT = "tight"


class _Week:
    """The problem of one week. Variables: ("on", e, d), ("sets", e, d), ("sets", e), ("used", e),
    ("pattern", p, d); what is missed: ("missed", what).
    """

    def __init__(
        self,
        choice: tuple[Candidate, ...],
        wishes: DraftWishes,
        wanted: Wanted,
        numbers: _Sets,
        fixed: frozenset[tuple[str, int]] | None = None,
    ) -> None:
        self._choice = choice
        self._wishes = wishes
        self._wanted = wanted
        self._numbers = numbers
        self._tight = numbers is _Sets.TIGHT
        self._fixed = fixed
        self._level = place_of(wishes.level)
        self._weekdays = wishes.training_weekdays
        self._days = range(wishes.days)
        self._problem = Problem()
        self._pairs: list[tuple[Candidate, Candidate, float]] = []
        self._add_choices()
        if self._tight:
            self._add_pairs()
        self._add_patterns()
        self._require_days()
        self._require_groups()
        self._require_muscles()
        self._require_spacing()
        self._require_variety()
        self._require_balance()

    def with_sets(self) -> WeekPlan:
        """The week, with the sets that suit what stands on its days."""
        found = self.solved()
        standing = frozenset(
            (one.candidate.key, number) for number, day in enumerate(found.days) for one in day
        )
        return _Week(self._choice, self._wishes, self._wanted, _Sets.FREE, standing).solved()

    def solved(self) -> WeekPlan:
        """The week."""
        values = self._problem.solve()
        letters = self._letters(values)
        days = tuple(
            tuple(
                Taken(one, round(values[("sets", one.key, day)]), letters.get((one.key, day), ""))
                for one in self._choice
                if values[("on", one.key, day)] > 0.5
            )
            for day in self._days
        )
        missed = tuple(
            (str(name[1]), values[name])
            for name in values
            if isinstance(name, tuple) and name[0] == "missed" and values[name] > _DUST
        )
        return WeekPlan(days, missed, values.get("over", 0.0))

    # What can be chosen

    def _add_choices(self) -> None:
        problem = self._problem
        for one in self._choice:
            key, asked = one.key, one.prescribed
            problem.add(("used", key), 1.0, cost=self._soft(prices.VARIETY_PRICE[self._level]))
            for day in self._days:
                on = self._on_choice(one, day)
                problem.require({on: 1, ("used", key): -1}, most=0)
                problem.add(("sets", key, day), asked.most)
            self._add_sets(one)
            problem.require({("on", key, day): 1 for day in self._days}, most=3)

    def _on_choice(self, one: Candidate, day: int) -> Hashable:
        """Whether the exercise stands on the day; open, or settled already."""
        name = ("on", one.key, day)
        price = prices.A_SLOT + one.price + self._day_price(one, day)
        if self._fixed is None:
            return self._problem.choice(name, cost=price)
        there = float((one.key, day) in self._fixed)
        return self._problem.add(name, there, lower=there, cost=price)

    def _add_sets(self, one: Candidate) -> None:
        """The sets: a number known before, or one to be found; one for a line, whatever the day."""
        problem, key, asked = self._problem, one.key, one.prescribed
        known = {_Sets.USUAL: asked.usual, _Sets.FEWEST: asked.fewest}.get(self._numbers)
        if known is None:
            problem.add(("sets", key), asked.most, lower=asked.fewest, whole=True)
            apart = problem.add(("unusual", key), asked.most, cost=self._soft(prices.UNUSUAL_SET))
            problem.require({("sets", key): 1, apart: 1}, least=asked.usual)
            problem.require({("sets", key): 1, apart: -1}, most=asked.usual)
        for day in self._days:
            on, sets = ("on", key, day), ("sets", key, day)
            if known is not None:
                problem.require({sets: 1, on: -known}, 0, 0)
                continue
            problem.require({sets: 1, on: -asked.most}, most=0)
            problem.require({sets: 1, ("sets", key): -1}, most=0)
            problem.require({sets: 1, ("sets", key): -1, on: -asked.most}, least=-asked.most)

    def _day_price(self, one: Candidate, day: int) -> float:
        """Next to nothing: it tells days apart that else are alike."""
        return prices.LATE_SQUAT * day if one.pattern is Pattern.SQUAT else 0.0

    def _add_pairs(self) -> None:
        """Slots done in turn: different muscles, none of them a heavy lift of the legs."""
        for one, other in combinations(self._choice, 2):
            if not may_pair(one, other) or (saves := saved_a_round(one, other)) <= 0:
                continue
            self._pairs.append((one, other, saves))
            most = min(one.prescribed.most, other.prescribed.most)
            for day in self._days:
                pair = (one.key, other.key, day)
                both = self._problem.choice(("pair", *pair), cost=prices.PAIRING)
                rounds = self._problem.add(("rounds", *pair), most)
                self._problem.require({rounds: 1, both: -most}, most=0)
                for each in (one, other):
                    self._problem.require({both: 1, ("on", each.key, day): -1}, most=0)
                    self._problem.require({rounds: 1, ("sets", each.key, day): -1}, most=0)
        for one in self._choice:
            for day in self._days:
                pairs: dict[Hashable, float] = {
                    ("pair", a.key, b.key, day): 1.0
                    for a, b, _ in self._pairs
                    if one.key in (a.key, b.key)
                }
                if pairs:
                    self._problem.require(pairs, most=1)

    def _add_patterns(self) -> None:
        """Whether a day trains a pattern."""
        for pattern in self._patterns():
            for day in self._days:
                trained = self._problem.add(("pattern", pattern, day), 1.0)
                on = self._on(day, self._of_pattern(pattern))
                for name in on:
                    self._problem.require({name: 1, trained: -1}, most=0)
                self._problem.require({**on, trained: -1}, least=0)

    # What is required

    def _require_days(self) -> None:
        change_over = TIMING.change_over_s / 60
        over = self._problem.add("over", cost=prices.OVER) if self._tight else None
        for day in self._days:
            spent: dict[Hashable, float] = {}
            for one in self._choice:
                spent[("sets", one.key, day)] = one.minutes
                spent[("on", one.key, day)] = change_over
            for one, other, saves in self._pairs:
                spent[("rounds", one.key, other.key, day)] = -saves
            if over is not None:
                spent[over] = -1.0
            self._problem.require(spent, most=self._wishes.minutes)
            worth = min(prices.WORTH_COMING * self._wishes.minutes, prices.ENOUGH_MINUTES)
            self._missed("idle", spent, worth, prices.IDLE_MINUTE, day)
            slots = self._on(day, self._choice)
            most = prices.MOST_SLOTS[self._level] + (prices.MORE_IN_TURN if self._tight else 0)
            self._problem.require(slots, most=most)
            self._missed("slots", slots, prices.LEAST_SLOTS, prices.SHORT_DAY, day)
            large = self._on(day, [one for one in self._choice if one.pattern in _LARGE])
            self._missed("large", large, 2, prices.SHORT_DAY, day)
            self._missed("nothing", slots, 1, prices.MISSED, day)
            small = self._on(day, self._of_pattern(Pattern.SINGLE_JOINT))
            self._problem.require(small, most=prices.MOST_SMALL[self._wishes.aim])
            if self._wishes.aim is Aim.SKILL:
                skills = self._on(day, [one for one in self._choice if one.role is Role.SKILL])
                self._problem.require(skills, most=2)
                self._missed("skill", skills, 1, prices.NO_SKILL, day)

    def _require_groups(self) -> None:
        for group in self._wanted.groups:
            trained = {
                ("pattern", pattern, day): 1.0
                for pattern in self._patterns()
                if pattern in group
                for day in self._days
            }
            name = ", ".join(sorted(group))
            # Two patterns of one group on one day are one session of the group.
            counted: dict[Hashable, float] = {}
            for day in self._days:
                here: dict[Hashable, float] = {key: 1.0 for key in trained if key[2] == day}
                any_of = self._problem.add(("group", name, day), 1.0)
                self._problem.require({**here, any_of: -1}, least=0)
                for each in here:
                    self._problem.require({each: 1, any_of: -1}, most=0)
                counted[any_of] = 1.0
            self._missed("group", counted, self._wanted.times, prices.MISSED, name)
        for pattern in self._patterns():
            if pattern is Pattern.SINGLE_JOINT:
                continue
            on_days: dict[Hashable, float] = {("pattern", pattern, day): 1.0 for day in self._days}
            self._missed("pattern", on_days, 1, prices.PATTERN, pattern)
            if pattern not in (Pattern.CARRY, Pattern.LUNGE):
                self._missed("twice", on_days, self._wanted.times, prices.SECOND_DAY, pattern)

    def _require_muscles(self) -> None:
        wanted_sets = prices.WANTED_SETS[self._wishes.aim][self._level]
        for muscle in Muscle:
            sets = self._sets(muscle)
            if not sets:
                continue
            self._problem.require(sets, most=prices.MOST_SETS[self._wishes.aim][self._level])
            if muscle not in self._wanted.muscles:
                continue
            self._missed("sets", sets, LEAST_SETS, prices.MISSED, muscle)
            self._missed("wanted", sets, wanted_sets, prices.SET_SHORT, muscle)
            sessions: dict[Hashable, float] = {}
            for day in self._days:
                trains = self._on(day, [one for one in self._choice if muscle in one.shares])
                any_of = self._problem.add(("muscle", muscle, day), 1.0)
                self._problem.require({**trains, any_of: -1}, least=0)
                sessions[any_of] = 1.0
            self._missed("sessions", sessions, self._wanted.times, prices.MISSED, muscle)

    def _require_spacing(self) -> None:
        """A full day between days of one pattern; the muscles of legs, and of push and pull, too
        where that costs nothing else.
        """
        for one, other in self._following():
            for pattern in self._patterns():
                if pattern is Pattern.SINGLE_JOINT:
                    continue
                close: dict[Hashable, float] = {
                    ("pattern", pattern, day): -1.0 for day in (one, other)
                }
                self._missed("close", close, -1, prices.CLOSE, pattern, one, other)
            for group in GROUPS[:4]:
                if len(group) > 1:
                    name = ", ".join(sorted(group))
                    both: dict[Hashable, float] = {
                        ("group", name, day): -1.0 for day in (one, other)
                    }
                    if all(key in self._problem for key in both):
                        self._missed("tired", both, -1, prices.TOGETHER, name, one, other)

    def _require_variety(self) -> None:
        """No two nearly equal exercises on a day, and of one pattern two at most."""
        for day in self._days:
            for one, other in combinations(self._choice, 2):
                if nearly_equal(one.exercise, other.exercise):
                    pair: dict[Hashable, float] = {
                        ("on", each.key, day): 1.0 for each in (one, other)
                    }
                    self._problem.require(pair, most=1)
            for pattern in self._patterns():
                if pattern is not Pattern.SINGLE_JOINT:
                    on = self._on(day, self._of_pattern(pattern))
                    self._problem.require(on, most=2)

    def _require_balance(self) -> None:
        """Pushes to pulls within the ratio either way; legs and upper body not far apart."""
        pushes, pulls = self._of(PUSHES), self._of(PULLS)
        legs = self._of(LEGS)
        if pushes and pulls:
            for many, few, name in ((pushes, pulls, "push"), (pulls, pushes, "pull")):
                held = {**_scaled(few, MOST_RATIO), **_scaled(many, -1.0)}
                self._missed("ratio", held, 0, prices.MISSED, name)
                even = {**_scaled(few, 1.15), **_scaled(many, -1.0)}
                self._missed("even", even, 0, prices.LOPSIDED, name)
        if legs and (pushes or pulls):
            upper = {**pushes, **pulls}
            for many, few, ratio, name in ((upper, legs, 1.8, "upper"), (legs, upper, 1.2, "legs")):
                even = {**_scaled(few, ratio), **_scaled(many, -1.0)}
                self._missed("even", even, 0, prices.LOPSIDED, name)

    # Shorthand

    def _missed(
        self, what: str, terms: Mapping[Hashable, float], least: float, price: float, *of: Hashable
    ) -> None:
        """The sum should reach ``least``; each unit short of it costs ``price``."""
        must = price >= prices.MISSED
        if self._tight and (must or price < prices.PATTERN):
            if must:
                self._problem.require(terms, least=least)
            return
        name = ("missed" if must else "short", " ".join((what, *map(str, of))))
        short = self._problem.add(name, cost=price)
        self._problem.require({**terms, short: 1.0}, least=least)

    def _soft(self, price: float) -> float:
        """A price that does not count where wishes are hard to meet."""
        return 0.0 if self._tight else price

    def _patterns(self) -> tuple[Pattern, ...]:
        there = {one.pattern for one in self._choice}
        return tuple(pattern for pattern in Pattern if pattern in there)

    def _on(self, day: int, which: Iterable[Candidate]) -> dict[Hashable, float]:
        return {("on", one.key, day): 1.0 for one in which}

    def _of_pattern(self, pattern: Pattern) -> list[Candidate]:
        return [one for one in self._choice if one.pattern is pattern]

    def _sets(self, muscle: Muscle) -> dict[Hashable, float]:
        return {
            ("sets", one.key, day): one.shares[muscle]
            for one in self._choice
            if muscle in one.shares
            for day in self._days
        }

    def _of(self, patterns: frozenset[Pattern]) -> dict[Hashable, float]:
        return {
            ("sets", one.key, day): 1.0
            for one in self._choice
            if one.pattern in patterns
            for day in self._days
        }

    def _following(self) -> list[tuple[int, int]]:
        return [
            (one, other)
            for one, other in combinations(self._days, 2)
            if (self._weekdays[other] - self._weekdays[one]) % WEEK in (1, WEEK - 1)
        ]

    def _letters(self, values: Mapping[Hashable, float]) -> dict[tuple[str, int], str]:
        """The letter of each pair, by exercise and day."""
        letters: dict[tuple[str, int], str] = {}
        for day in self._days:
            found = 0
            for one, other, _ in self._pairs:
                if values[("pair", one.key, other.key, day)] > 0.5:
                    letter = chr(ord("A") + found)
                    found += 1
                    letters[(one.key, day)] = letters[(other.key, day)] = letter
        return letters


def _fewer(choice: tuple[Candidate, ...]) -> tuple[Candidate, ...]:
    """The first few of each pattern, since pairs make many more ways to put them together; three
    of each, or two where that would still be many.
    """
    threes = _first_of_each(choice, 3)
    return threes if len(threes) <= _MANY else _first_of_each(choice, 2)


def _first_of_each(choice: tuple[Candidate, ...], count: int) -> tuple[Candidate, ...]:
    found: Counter[Pattern] = Counter()
    kept: list[Candidate] = []
    for one in choice:
        found[one.pattern] += 1
        if found[one.pattern] <= count:
            kept.append(one)
    return tuple(kept)


def _scaled(terms: Mapping[Hashable, float], by: float) -> dict[Hashable, float]:
    return {name: weight * by for name, weight in terms.items()}
