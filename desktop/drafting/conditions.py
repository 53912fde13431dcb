"""Conditions: what a good week has, each with the price of missing it."""

from __future__ import annotations

from collections.abc import Hashable, Mapping
from itertools import combinations
from typing import Final

from desktop.drafting import prices
from desktop.drafting.candidates import nearly_equal
from desktop.drafting.choices import Choices
from desktop.drafting.prescription import Role
from desktop.drafting.week import GROUPS, LEAST_SETS, MOST_RATIO, Wanted
from desktop.drafting.wishes import Aim
from desktop.training.exercises import Muscle, Pattern
from desktop.training.schedule import TIMING
from desktop.training.volume import LEGS, PULLS, PUSHES

_LARGE: Final = LEGS | PUSHES | PULLS


def set_conditions(week: Choices, wanted: Wanted) -> None:
    """Ask of the week all that there is to ask."""
    _days(week)
    _groups(week, wanted)
    _muscles(week, wanted)
    _spacing(week)
    _variety(week)
    _balance(week)


def _days(week: Choices) -> None:
    change_over = TIMING.change_over_s / 60
    over = week.problem.add("over", cost=prices.OVER) if week.tight else None
    for day in week.days:
        spent: dict[Hashable, float] = {}
        for one in week.choice:
            spent[("sets", one.key, day)] = one.minutes
            spent[("on", one.key, day)] = change_over
        for one, other, saves in week.pairs:
            spent[("rounds", one.key, other.key, day)] = -saves
        if over is not None:
            spent[over] = -1.0
        week.problem.require(spent, most=week.wishes.minutes)
        worth = min(prices.WORTH_COMING * week.wishes.minutes, prices.ENOUGH_MINUTES)
        week.missed("idle", spent, worth, prices.IDLE_MINUTE, day)
        slots = week.on(day, week.choice)
        most = prices.MOST_SLOTS[week.level] + (prices.MORE_IN_TURN if week.tight else 0)
        week.problem.require(slots, most=most)
        week.missed("slots", slots, prices.LEAST_SLOTS, prices.SHORT_DAY, day)
        large = week.on(day, [one for one in week.choice if one.pattern in _LARGE])
        week.missed("large", large, 2, prices.SHORT_DAY, day)
        week.missed("nothing", slots, 1, prices.MISSED, day)
        small = week.on(day, week.of_pattern(Pattern.SINGLE_JOINT))
        week.problem.require(small, most=prices.MOST_SMALL[week.wishes.aim])
        if week.wishes.aim is Aim.SKILL:
            skills = week.on(day, [one for one in week.choice if one.role is Role.SKILL])
            week.problem.require(skills, most=2)
            week.missed("skill", skills, 1, prices.NO_SKILL, day)


def _groups(week: Choices, wanted: Wanted) -> None:
    for group in wanted.groups:
        trained = {
            ("pattern", pattern, day): 1.0
            for pattern in week.patterns()
            if pattern in group
            for day in week.days
        }
        name = ", ".join(sorted(group))
        # Two patterns of one group on one day are one session of the group.
        counted: dict[Hashable, float] = {}
        for day in week.days:
            here: dict[Hashable, float] = {key: 1.0 for key in trained if key[2] == day}
            any_of = week.problem.add(("group", name, day), 1.0)
            week.problem.require({**here, any_of: -1}, least=0)
            for each in here:
                week.problem.require({each: 1, any_of: -1}, most=0)
            counted[any_of] = 1.0
        week.missed("group", counted, wanted.times, prices.MISSED, name)
    for pattern in week.patterns():
        if pattern is Pattern.SINGLE_JOINT:
            continue
        on_days: dict[Hashable, float] = {("pattern", pattern, day): 1.0 for day in week.days}
        week.missed("pattern", on_days, 1, prices.PATTERN, pattern)
        if pattern not in (Pattern.CARRY, Pattern.LUNGE):
            week.missed("twice", on_days, wanted.times, prices.SECOND_DAY, pattern)


def _muscles(week: Choices, wanted: Wanted) -> None:
    wanted_sets = prices.WANTED_SETS[week.wishes.aim][week.level]
    for muscle in Muscle:
        sets = week.sets_of_muscle(muscle)
        if not sets:
            continue
        week.problem.require(sets, most=prices.MOST_SETS[week.wishes.aim][week.level])
        if muscle not in wanted.muscles:
            continue
        week.missed("sets", sets, LEAST_SETS, prices.MISSED, muscle)
        week.missed("wanted", sets, wanted_sets, prices.SET_SHORT, muscle)
        sessions: dict[Hashable, float] = {}
        for day in week.days:
            trains = week.on(day, [one for one in week.choice if muscle in one.shares])
            any_of = week.problem.add(("muscle", muscle, day), 1.0)
            week.problem.require({**trains, any_of: -1}, least=0)
            sessions[any_of] = 1.0
        week.missed("sessions", sessions, wanted.times, prices.MISSED, muscle)


def _spacing(week: Choices) -> None:
    """A full day between days of one pattern; the muscles of legs, and of push and pull, too
    where that costs nothing else.
    """
    for one, other in week.following():
        for pattern in week.patterns():
            if pattern is Pattern.SINGLE_JOINT:
                continue
            close: dict[Hashable, float] = {("pattern", pattern, day): -1.0 for day in (one, other)}
            week.missed("close", close, -1, prices.CLOSE, pattern, one, other)
        for group in GROUPS[:4]:
            if len(group) > 1:
                name = ", ".join(sorted(group))
                both: dict[Hashable, float] = {("group", name, day): -1.0 for day in (one, other)}
                if all(key in week.problem for key in both):
                    week.missed("tired", both, -1, prices.TOGETHER, name, one, other)


def _variety(week: Choices) -> None:
    """No two nearly equal exercises on a day, and of one pattern two at most."""
    for day in week.days:
        for one, other in combinations(week.choice, 2):
            if nearly_equal(one.exercise, other.exercise):
                pair: dict[Hashable, float] = {("on", each.key, day): 1.0 for each in (one, other)}
                week.problem.require(pair, most=1)
        for pattern in week.patterns():
            if pattern is not Pattern.SINGLE_JOINT:
                on = week.on(day, week.of_pattern(pattern))
                week.problem.require(on, most=2)


def _balance(week: Choices) -> None:
    """Pushes to pulls within the ratio either way; legs and upper body not far apart."""
    pushes, pulls = week.sets_of(PUSHES), week.sets_of(PULLS)
    legs = week.sets_of(LEGS)
    if pushes and pulls:
        for many, few, name in ((pushes, pulls, "push"), (pulls, pushes, "pull")):
            held = {**_scaled(few, MOST_RATIO), **_scaled(many, -1.0)}
            week.missed("ratio", held, 0, prices.MISSED, name)
            even = {**_scaled(few, 1.15), **_scaled(many, -1.0)}
            week.missed("even", even, 0, prices.LOPSIDED, name)
    if legs and (pushes or pulls):
        upper = {**pushes, **pulls}
        for many, few, ratio, name in ((upper, legs, 1.8, "upper"), (legs, upper, 1.2, "legs")):
            even = {**_scaled(few, ratio), **_scaled(many, -1.0)}
            week.missed("even", even, 0, prices.LOPSIDED, name)


def _scaled(terms: Mapping[Hashable, float], by: float) -> dict[Hashable, float]:
    return {name: weight * by for name, weight in terms.items()}
