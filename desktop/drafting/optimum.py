"""The optimum: the best week of the candidates, as a mixed-integer problem.

Every condition may be missed at a price, so that there always is a best week; the price says in
which order conditions give way. Only the minutes never give way.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Hashable, Mapping
from typing import Final

from desktop.drafting.candidates import Candidate
from desktop.drafting.choices import Choices, Numbers
from desktop.drafting.conditions import set_conditions
from desktop.drafting.week import Taken, Wanted, WeekPlan
from desktop.drafting.wishes import DraftWishes
from desktop.training.exercises import Pattern

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
        return _solved(Choices(_fewer(choice), wishes, Numbers.TIGHT), wanted)
    plan = _in_two_steps(choice, wishes, wanted, Numbers.USUAL)
    return plan if not plan.missed else _in_two_steps(choice, wishes, wanted, Numbers.FEWEST)


def _in_two_steps(
    choice: tuple[Candidate, ...], wishes: DraftWishes, wanted: Wanted, numbers: Numbers
) -> WeekPlan:
    """What stands on which day with these numbers of sets, and then the sets that suit it."""
    found = _solved(Choices(choice, wishes, numbers), wanted)
    standing = frozenset(
        (one.candidate.key, number) for number, day in enumerate(found.days) for one in day
    )
    return _solved(Choices(choice, wishes, Numbers.FREE, standing), wanted)


def _solved(week: Choices, wanted: Wanted) -> WeekPlan:
    """The best week of these choices."""
    set_conditions(week, wanted)
    values = week.problem.solve()
    letters = _letters(week, values)
    days = tuple(
        tuple(
            Taken(one, round(values[("sets", one.key, day)]), letters.get((one.key, day), ""))
            for one in week.choice
            if values[("on", one.key, day)] > 0.5
        )
        for day in week.days
    )
    missed = tuple(
        (str(name[1]), values[name])
        for name in values
        if isinstance(name, tuple) and name[0] == "missed" and values[name] > _DUST
    )
    return WeekPlan(days, missed, values.get("over", 0.0))


def _letters(week: Choices, values: Mapping[Hashable, float]) -> dict[tuple[str, int], str]:
    """The letter of each pair, by exercise and day."""
    letters: dict[tuple[str, int], str] = {}
    for day in week.days:
        found = 0
        for one, other, _ in week.pairs:
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
