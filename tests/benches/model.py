"""The pure model against plain loops over the same events."""

from __future__ import annotations

import random
from collections.abc import Iterator
from datetime import date, timedelta

from desktop.training.discs import reachable_loads
from desktop.training.equipment import discs_per_side
from desktop.training.exercises import Exercise, LoadingKind, Muscle, Pattern
from desktop.training.position import (
    Position,
    ProgressionRule,
    Surroundings,
    Variable,
    VariableRange,
)
from desktop.training.preview import unroll
from desktop.training.program import LineStart, Slot, TrainingDay
from desktop.training.replay import Context, SessionDone, State, replay, starting_state
from desktop.training.session import SetDone
from desktop.training.weeks import Outlook, weeks_ahead
from tests.benches.measure import Line, medians
from tests.simulated_trainees import band_coverage, plateau_rates

FIRST = date(2016, 1, 4)
CONTEXT = Context()
RULE = ProgressionRule(
    (
        VariableRange(Variable.REPS, 8, 12),
        VariableRange(Variable.SETS, 3, 4),
        VariableRange(Variable.LOAD, increment=2_500),
    )
)
BARBELL = Surroundings(loads_g=tuple(range(20_000, 300_001, 2_500)))


def lines() -> Iterator[Line]:
    """All figures of the model."""
    yield from _replay()
    yield from _weeks()
    yield _trend()
    yield from _discs()


def tables() -> Iterator[str]:
    """How well the trend's bands and the plateau call hold on simulated people of known truth."""
    yield "80 % band, share of the truth held:"
    yield _row("people", "all days", "last day", "4 weeks on", "12 weeks on")
    for held in band_coverage(200, seed=11):
        shares = (held.all_days, held.last_day, held.four_weeks, held.twelve_weeks)
        yield _row(held.kind, *(f"{share:.0%}" for share in shares))
    yield "plateau called, share of people:"
    yield _row("gain a week", "weeks stalled", "called", "which is")
    for rate in plateau_rates(200, seed=11):
        right = "right" if rate.stalled_weeks else "a false alarm"
        yield _row(
            f"{rate.gain_per_week:.2%}", f"{rate.stalled_weeks}", f"{rate.called:.0%}", right
        )


def _row(name: str, *cells: str) -> str:
    return f"  {name:<16}" + "".join(f"{cell:>15}" for cell in cells)


def _start() -> State:
    return starting_state(LineStart(FIRST, Position(60_000, 8, 3)), RULE, BARBELL, CONTEXT)


def ten_years(stored: bool) -> list[SessionDone]:
    """1,500 sessions of one line, one in four missed, with or without stored targets."""
    state = _start()
    days = [FIRST + timedelta(days=number * 5 // 2) for number in range(1_500)]
    events = []
    for number, ahead in enumerate(unroll(state, days, CONTEXT, miss_every=4)):
        short = 2 if ahead.missed else 0
        sets = tuple(SetDone(each.load_g, (each.reps or 0) - short) for each in ahead.target.sets)
        asked = ahead.target.sets if stored else ()
        events.append(SessionDone(ahead.day, sets, asked, session_id=number))
    return events


def _replay() -> Iterator[Line]:
    start = _start()
    for stored in (True, False):
        events = ten_years(stored)

        def plain(events: list[SessionDone] = events) -> int:
            """Six lines: read every set of every session, and compare it with a number."""
            met = 0
            for _ in range(6):
                for event in events:
                    for done in event.sets:
                        met += (done.reps or 0) >= 8
            return met

        def all_lines(events: list[SessionDone] = events) -> None:
            for _ in range(6):
                replay((), start, events, CONTEXT)

        ours, floor = medians(5, all_lines, plain)
        kept = "targets stored" if stored else "no targets stored"
        yield Line(f"replay, 10 years: 1,500 sessions x 6 lines, {kept}", ours, floor, "plain loop")


def _weeks() -> Iterator[Line]:
    names = [f"lift {number}" for number in range(24)]
    exercises = {
        name: Exercise(name, name, Pattern.SQUAT, LoadingKind.BARBELL, (Muscle.QUADRICEPS,))
        for name in names
    }
    days = []
    for week in range(52):
        for number, weekday in enumerate((0, 1, 3, 4)):
            slots = tuple(
                Slot(name, RULE, Position(60_000, 8, 3))
                for name in names[number * 6 : number * 6 + 6]
            )
            day = FIRST + timedelta(weeks=week, days=weekday)
            days.append((day, TrainingDay(str(weekday), slots, weekday)))
    states = {(name, ""): _start() for name in names}
    outlook = Outlook(states, exercises, CONTEXT)

    def plain() -> int:
        return sum(slot.start.sets for _, day in days for slot in day.slots)

    ours, floor = medians(5, lambda: weeks_ahead(days, outlook), plain)
    yield Line("weeks ahead: 52 weeks x 4 days x 6 slots", ours, floor, "plain loop")


def _trend() -> Line:
    from desktop.training.trend import smooth

    chance = random.Random(7)
    days = [number * 2.4 for number in range(1_500)]
    logs = [4.6 + day / 4_000 + chance.gauss(0, 0.05) for day in days]
    noise = [0.05**2] * len(days)

    def plain() -> float:
        mean = logs[0]
        for each in logs:
            mean += 0.1 * (each - mean)
        return mean

    ours, floor = medians(9, lambda: smooth(days, logs, noise), plain)
    return Line("trend through 1,500 points", ours, floor, "running mean")


def _discs() -> Iterator[Line]:
    pairs = {25_000: 3, 20_000: 4, 15_000: 2, 10_000: 4, 5_000: 3, 2_500: 2, 1_250: 1, 500: 1}
    loads = reachable_loads(20_000, pairs)

    def search() -> None:
        for load in loads[:: max(len(loads) // 50, 1)]:
            discs_per_side(load, 20_000, pairs)

    def plain() -> list[int]:
        found = {0}
        for mass, count in pairs.items():
            found |= {total + mass * number for total in found for number in range(1, count + 1)}
        return sorted(found)

    ours, floor = medians(9, search, plain)
    yield Line("discs for 50 loads, 40 discs", ours, floor, "all subset sums")
    ours, floor = medians(9, lambda: reachable_loads(20_000, pairs), plain)
    yield Line("all reachable loads, 40 discs", ours, floor, "all subset sums")
