"""Weeks ahead: a whole program unrolled, as asked and as the trend expects it. Deterministic."""

from __future__ import annotations

from collections.abc import Callable, Container, Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date, timedelta
from math import exp, log
from statistics import NormalDist

from desktop.training.demand import effective_load_g
from desktop.training.exercises import Exercise
from desktop.training.limits import Limit, LimitId
from desktop.training.line_ahead import LineAhead, LineTimes, unroll_line
from desktop.training.position import Position, Surroundings
from desktop.training.program import RuleRevision, Slot, TrainingDay
from desktop.training.reasons import ReasonCode
from desktop.training.recovery import Caution, equipment_jump, no_deload, rule_complete
from desktop.training.schedule import session_minutes
from desktop.training.session import AskedSet
from desktop.training.state import Context, State
from desktop.training.strength import estimate
from desktop.training.target import Target
from desktop.training.trainee import DeloadWindow, Experience
from desktop.training.volume import Volume, hard_sets, week_start

BAND = 0.8  # the share of outcomes that the expected band holds
LineKey = tuple[str, str]  # exercise key and line name
Forecast = Callable[[date], tuple[float, float]]  # day -> mean and sd of ln(e1RM in grams)


@dataclass(frozen=True, slots=True)
class Expected:
    """Strength expected on a day: one-repetition maximum of the effective load in grams, the
    80 % band, and the chance (0-1) that the trainee can do what the target's lead set asks.
    """

    low_g: float
    likely_g: float
    high_g: float
    chance: float | None


@dataclass(frozen=True, slots=True)
class SlotAhead:
    """One slot on a day to come: its target, and what the trend expects (None: no trend)."""

    slot: Slot
    target: Target
    expected: Expected | None = None


@dataclass(frozen=True, slots=True)
class DayAhead:
    """A training day to come; ``minutes`` as the targets ask."""

    day: date
    name: str
    slots: tuple[SlotAhead, ...]
    minutes: float
    deload: bool = False


@dataclass(frozen=True, slots=True)
class WeekAhead:
    """One week: its first day, its training days, hard sets by muscle and pattern, cautions."""

    first: date
    days: tuple[DayAhead, ...]
    volume: Volume
    cautions: tuple[Caution, ...] = ()

    @property
    def minutes(self) -> float:
        """Minutes of training in the week."""
        return sum(day.minutes for day in self.days)

    @property
    def deload(self) -> bool:
        """Whether any day of the week is eased."""
        return any(day.deload for day in self.days)


@dataclass(frozen=True, slots=True)
class Outlook:
    """What the weeks ahead are computed from.

    ``states`` where each line stands now; ``rules`` dated revisions of lines still to come;
    ``deloads`` windows recorded or planned; ``forecasts`` by line. ``since``: the end of the last
    easier week, or the first session (None: no session yet).
    """

    states: Mapping[LineKey, State]
    exercises: Mapping[str, Exercise]
    context: Context
    deloads: Sequence[DeloadWindow] = ()
    rules: Mapping[LineKey, Sequence[RuleRevision]] | None = None
    forecasts: Mapping[LineKey, Forecast] | None = None
    since: date | None = None
    experience: Experience = Experience.NOVICE
    limits: Mapping[LimitId, Limit] | None = None


def weeks_ahead(
    days: Iterable[tuple[date, TrainingDay]], outlook: Outlook, *, first_weekday: int = 0
) -> tuple[WeekAhead, ...]:
    """The training ``days`` (ascending) week by week, each session done as asked before the next.

    Weeks without a training day are left out. A slot whose line has no state begins at its start.
    """
    planned = tuple(days)
    lines = lines_ahead(planned, outlook)
    weeks: dict[date, list[DayAhead]] = {}
    for day, training_day in planned:
        ahead = day_ahead(day, training_day, lines, outlook)
        weeks.setdefault(week_start(day, first_weekday), []).append(ahead)
    return tuple(_week(first, tuple(found), outlook) for first, found in weeks.items())


def lines_ahead(
    days: Iterable[tuple[date, TrainingDay]], outlook: Outlook
) -> dict[LineKey, LineAhead]:
    """Every line of the training ``days`` (ascending), unrolled."""
    slots: dict[LineKey, Slot] = {}
    found: dict[LineKey, list[date]] = {}
    for day, planned in days:
        for slot in planned.slots:
            key = (slot.exercise, slot.line_name)
            slots.setdefault(key, slot)
            on = found.setdefault(key, [])
            if not on or on[-1] != day:
                on.append(day)
    ahead: dict[LineKey, LineAhead] = {}
    for key in slots:
        _unroll(key, slots, found, ahead, outlook, frozenset())
    return ahead


def leader_of(key: LineKey, state: State, known: Container[LineKey]) -> LineKey | None:
    """The line that a line in ``state`` follows; None where it follows none of those known."""
    follow = state.rule.follow
    leader = (key[0], follow.line_name) if follow else key
    return leader if leader != key and leader in known else None


def planned_deloads(
    weeks: int,
    every: int | None,
    start: date,
    recorded: Sequence[DeloadWindow],
    eased: DeloadWindow,
) -> tuple[DeloadWindow, ...]:
    """One easier week after every ``every`` building weeks of ``weeks`` from ``start`` on, each as
    ``eased`` says. A window ``recorded`` resets the count; None plans none.
    """
    if every is None:
        return ()
    found: list[DeloadWindow] = []
    built = 0
    for number in range(weeks):
        first = start + timedelta(weeks=number)
        last = first + timedelta(days=6)
        if any(window.first <= last and window.last >= first for window in recorded):
            built = 0
        elif built == every:
            found.append(replace(eased, first=first, last=last))
            built = 0
        else:
            built += 1
    return tuple(found)


def day_ahead(
    day: date, planned: TrainingDay, lines: Mapping[LineKey, LineAhead], outlook: Outlook
) -> DayAhead:
    """A training day by its lines as they were unrolled."""
    ahead: list[SlotAhead] = []
    for slot in planned.slots:
        key = (slot.exercise, slot.line_name)
        target = lines[key].targets[day]
        forecast = (outlook.forecasts or {}).get(key)
        around = lines[key].last.surroundings
        ahead.append(SlotAhead(slot, target, expected_on(day, target, around, forecast)))
    eased = any(window.first <= day <= window.last for window in outlook.deloads)
    return DayAhead(
        day, planned.name, tuple(ahead), minutes_asked(planned, ahead, outlook.exercises), eased
    )


def minutes_asked(
    planned: TrainingDay, ahead: Sequence[SlotAhead], exercises: Mapping[str, Exercise]
) -> float:
    """Minutes of a training day as its targets ask."""
    positions = {each.slot: each.target.position or each.slot.start for each in ahead}
    return session_minutes(planned, exercises, lambda slot: positions[slot])


def _unroll(
    key: LineKey,
    slots: Mapping[LineKey, Slot],
    days: Mapping[LineKey, Sequence[date]],
    ahead: dict[LineKey, LineAhead],
    outlook: Outlook,
    behind: frozenset[LineKey],
) -> LineAhead:
    """Unroll a line after the one that it follows; a circle of lines moves by itself."""
    if key in ahead:
        return ahead[key]
    state = outlook.states.get(key)
    if state is None:
        slot = slots[key]
        state = State(slot.start, slot.rule, fixed_reps=slot.start.reps)
    known = {*slots, *outlook.states}
    leader_key = leader_of(key, state, known)
    leader = None
    if leader_key is not None and leader_key not in behind | {key}:
        leader = _unroll(leader_key, slots, days, ahead, outlook, behind | {key})
    rules = tuple((outlook.rules or {}).get(key, ()))
    times = LineTimes(tuple(days.get(key, ())), rules, tuple(outlook.deloads))
    ahead[key] = unroll_line(state, times, outlook.context, leader)
    return ahead[key]


def expected_on(
    day: date, target: Target, around: Surroundings, forecast: Forecast | None
) -> Expected | None:
    """What the trend expects on ``day``, and the chance to do ``target``; None without a trend."""
    if forecast is None:
        return None
    mean, sd = forecast(day)
    expected = NormalDist(mean, max(sd, 1e-9))
    needed = _needed_g(target.sets, around)
    return Expected(
        exp(expected.inv_cdf((1 - BAND) / 2)),
        exp(mean),
        exp(expected.inv_cdf((1 + BAND) / 2)),
        None if needed is None else 1 - expected.cdf(log(needed)),
    )


def _needed_g(sets: Sequence[AskedSet], around: Surroundings) -> float | None:
    """The one-repetition maximum that the hardest set asks for; None where it has none."""
    needs: list[float] = []
    for each in sets:
        effective = effective_load_g(each.load_g, each.variation, around)
        if effective is None or not each.reps:
            return None
        found = estimate(effective, each.reps, each.rir or 0.0)
        if found is None:
            return None
        needs.append(found.value_g)
    return max(needs, default=None)


def _week(first: date, days: tuple[DayAhead, ...], outlook: Outlook) -> WeekAhead:
    volume = hard_sets(
        (outlook.exercises[slot.slot.exercise], len(slot.target.sets))
        for day in days
        for slot in day.slots
    )
    return WeekAhead(first, days, volume, _cautions(first, days, outlook))


def _cautions(first: date, days: tuple[DayAhead, ...], outlook: Outlook) -> tuple[Caution, ...]:
    if outlook.limits is None:
        return ()
    limits = outlook.limits
    found = [c for day in days for slot in day.slots for c in target_cautions(slot.target, limits)]
    if not any(day.deload for day in days):
        caution = no_deload_before(first, outlook)
        found += [] if caution is None else [caution]
    return tuple(dict.fromkeys(found))


def target_cautions(target: Target, limits: Mapping[LimitId, Limit]) -> tuple[Caution, ...]:
    """What has to be said of one target: equipment that jumps too far, a rule that is complete."""
    if target.reason.code is ReasonCode.IN_BETWEEN:
        return (equipment_jump(limits[LimitId.EQUIPMENT_JUMP], target.reason),)
    if target.reason.code is ReasonCode.COMPLETE:
        return (rule_complete(limits[LimitId.RULE_COMPLETE], target.position or Position()),)
    return ()


def no_deload_before(first: date, outlook: Outlook) -> Caution | None:
    """Whether the week that begins on ``first`` comes too long after the last easier one."""
    if outlook.limits is None:
        return None
    ended = [window.last for window in outlook.deloads if window.last < first]
    since = max([*ended, *([outlook.since] if outlook.since else [])], default=None)
    return no_deload(outlook.limits[LimitId.NO_DELOAD], since, first, outlook.experience)
