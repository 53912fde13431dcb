"""Weeks ahead: a whole program unrolled, as asked and as the trend expects it. Deterministic."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date, timedelta
from math import exp, log
from statistics import NormalDist

from desktop.training.asking import follow_target, target_on
from desktop.training.demand import effective_load_g
from desktop.training.exercises import Exercise
from desktop.training.limits import Limit, LimitId
from desktop.training.position import Position
from desktop.training.preview import as_asked
from desktop.training.program import RuleRevision, Slot, TrainingDay
from desktop.training.reasons import ReasonCode
from desktop.training.recovery import Caution, equipment_jump, no_deload, rule_complete
from desktop.training.replay import replay
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
    states = dict(outlook.states)
    weeks: dict[date, list[DayAhead]] = {}
    for day, planned in days:
        ahead = _day(day, planned, states, outlook)
        weeks.setdefault(week_start(day, first_weekday), []).append(ahead)
    return tuple(_week(first, tuple(found), outlook) for first, found in weeks.items())


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


def _day(
    day: date, planned: TrainingDay, states: dict[LineKey, State], outlook: Outlook
) -> DayAhead:
    window = next((w for w in outlook.deloads if w.first <= day <= w.last), None)
    targets: dict[LineKey, Target] = {}
    ahead: list[SlotAhead] = []
    for slot in planned.slots:
        key = (slot.exercise, slot.line_name)
        states[key] = _state(slot, key, day, states, outlook)
        targets[key] = _target(key, day, states, outlook.context, window)
        expected = _expected(targets[key], states[key], key, day, outlook)
        ahead.append(SlotAhead(slot, targets[key], expected))
    for key, target in targets.items():
        states[key] = as_asked(states[key], target, day, outlook.context)
    positions = {slot.slot: slot.target.position or slot.slot.start for slot in ahead}
    minutes = session_minutes(planned, outlook.exercises, lambda slot: positions[slot])
    return DayAhead(day, planned.name, tuple(ahead), minutes, deload=window is not None)


def _state(
    slot: Slot, key: LineKey, day: date, states: dict[LineKey, State], outlook: Outlook
) -> State:
    """The line's state on the day, with the rules that begin to hold until then."""
    state = states.get(key)
    if state is None:
        state = State(slot.start, slot.rule, fixed_reps=slot.start.reps)
    due = [rule for rule in (outlook.rules or {}).get(key, ()) if rule.day <= day]
    return replay(due, state, (), outlook.context).state


def _target(
    key: LineKey,
    day: date,
    states: Mapping[LineKey, State],
    context: Context,
    window: DeloadWindow | None,
) -> Target:
    state = states[key]
    follow = state.rule.follow
    leader = states.get((key[0], follow.line_name)) if follow else None
    if leader is None or leader is state:
        return target_on(state, day, context, deload=window)
    asked = target_on(leader, day, context, deload=window)
    return follow_target(asked, state.rule, state.surroundings, state.position)


def _expected(
    target: Target, state: State, key: LineKey, day: date, outlook: Outlook
) -> Expected | None:
    forecast = (outlook.forecasts or {}).get(key)
    if forecast is None:
        return None
    mean, sd = forecast(day)
    expected = NormalDist(mean, max(sd, 1e-9))
    needed = _needed_g(target.sets, state)
    return Expected(
        exp(expected.inv_cdf((1 - BAND) / 2)),
        exp(mean),
        exp(expected.inv_cdf((1 + BAND) / 2)),
        None if needed is None else 1 - expected.cdf(log(needed)),
    )


def _needed_g(sets: Sequence[AskedSet], state: State) -> float | None:
    """The one-repetition maximum that the hardest set asks for; None where it has none."""
    needs: list[float] = []
    for each in sets:
        effective = effective_load_g(each.load_g, each.variation, state.surroundings)
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
    found: list[Caution] = []
    for slot in (slot for day in days for slot in day.slots):
        target = slot.target
        if target.reason.code is ReasonCode.IN_BETWEEN:
            found.append(equipment_jump(outlook.limits[LimitId.EQUIPMENT_JUMP], target.reason))
        if target.reason.code is ReasonCode.COMPLETE:
            at = target.position or Position()
            found.append(rule_complete(outlook.limits[LimitId.RULE_COMPLETE], at))
    if not any(day.deload for day in days):
        found.extend(_no_deload(first, outlook))
    return tuple(dict.fromkeys(found))


def _no_deload(first: date, outlook: Outlook) -> tuple[Caution, ...]:
    assert outlook.limits is not None
    ended = [window.last for window in outlook.deloads if window.last < first]
    since = max([*ended, *([outlook.since] if outlook.since else [])], default=None)
    caution = no_deload(outlook.limits[LimitId.NO_DELOAD], since, first, outlook.experience)
    return () if caution is None else (caution,)
