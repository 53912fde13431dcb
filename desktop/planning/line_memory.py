"""What was computed of each line of a trainee, kept while the facts behind it stay the same."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from datetime import date
from typing import TypeVar, cast

from desktop.planning.history import History
from desktop.planning.lines import replay_of
from desktop.planning.rules import rule_revisions
from desktop.planning.standing import LineKey
from desktop.planning.weeks import forecast_of
from desktop.training.line_ahead import LineAhead, LineTimes, unroll_line
from desktop.training.program import Line, RuleRevision
from desktop.training.state import State
from desktop.training.trainee import DeloadWindow
from desktop.training.weeks import Forecast, leader_of

T = TypeVar("T")
Days = Mapping[LineKey, tuple[date, ...]]


@dataclass(frozen=True, slots=True)
class LineWork:
    """All lines to be unrolled from ``first`` on, the days of each, and the easier spans."""

    history: History
    first: date
    lines: Mapping[LineKey, Line]
    days: Days
    deloads: tuple[DeloadWindow, ...]


@dataclass(frozen=True, slots=True)
class _Standing:
    """Where a line stands on a day, and what that was computed from."""

    line: Line
    day: date
    revisions: tuple[RuleRevision, ...]
    state: State


@dataclass(frozen=True, slots=True)
class _Unrolled:
    """A line ahead, and what it was computed from."""

    state: State
    times: LineTimes
    leader: LineAhead | None
    ahead: LineAhead


class LineMemory:
    """Remembers lines; what a trainee did or owns makes it forget, an edit of the program only
    what it touches.
    """

    def __init__(self) -> None:
        self._facts: tuple[object, ...] = ()
        self._standings: dict[LineKey, _Standing] = {}
        self._unrolled: dict[LineKey, _Unrolled] = {}
        self._forecasts: dict[LineKey, Forecast | None] = {}
        self._rows: dict[object, tuple[LineAhead | None, object, object]] = {}

    def meet(self, history: History) -> None:
        """Forget everything where the facts of ``history`` are not those met before."""
        facts = (
            history.trainee,
            history.sessions,
            history.body_masses,
            history.equipment,
            history.deloads,
            history.absences,
            history.library.settings,
            history.library.exercises,
        )
        alike = len(facts) == len(self._facts) and all(
            one is other or one == other for one, other in zip(facts, self._facts, strict=True)
        )
        if not alike:
            self._standings.clear()
            self._unrolled.clear()
            self._forecasts.clear()
            self._rows.clear()
        self._facts = facts

    def ahead(self, key: LineKey) -> LineAhead | None:
        """A line as it was last unrolled."""
        found = self._unrolled.get(key)
        return found.ahead if found is not None else None

    def forecast(self, history: History, line: Line) -> Forecast | None:
        """What the trend of a line expects."""
        key = (line.exercise, line.name)
        if key not in self._forecasts:
            self._forecasts[key] = forecast_of(history, line)
        return self._forecasts[key]

    def row(self, key: object, ahead: LineAhead | None, inputs: object, make: Callable[[], T]) -> T:
        """What ``make`` made of a line and ``inputs``; made anew where these have changed."""
        known = self._rows.get(key)
        if known is None or known[0] is not ahead or known[1] != inputs:
            known = self._rows[key] = (ahead, inputs, make())
        return cast(T, known[2])

    def unroll(self, key: LineKey, work: LineWork) -> bool:
        """Unroll a line, after the one that it follows; whether anything had to be computed."""
        _, fresh = self._unroll(key, work, frozenset())
        return fresh

    def _unroll(
        self, key: LineKey, work: LineWork, behind: frozenset[LineKey]
    ) -> tuple[LineAhead, bool]:
        standing, fresh = self._stand(key, work)
        leader, led = None, leader_of(key, standing.state, work.lines)
        if led is not None and led not in behind | {key}:
            leader, computed = self._unroll(led, work, behind | {key})
            fresh = fresh or computed
        coming = tuple(each for each in standing.revisions if each.day > work.first)
        times = LineTimes(work.days.get(key, ()), coming, work.deloads)
        known = self._unrolled.get(key)
        if (
            known is not None
            and known.leader is leader
            and known.state is standing.state
            and known.times == times
        ):
            return known.ahead, fresh
        ahead = unroll_line(standing.state, times, work.history.context, leader)
        self._unrolled[key] = _Unrolled(standing.state, times, leader, ahead)
        return ahead, True

    def _stand(self, key: LineKey, work: LineWork) -> tuple[_Standing, bool]:
        line = work.lines[key]
        revisions = rule_revisions(work.history, line)
        known = self._standings.get(key)
        if known is not None and (known.line, known.day, known.revisions) == (
            line,
            work.first,
            revisions,
        ):
            return known, False
        state = replay_of(work.history, line, work.first).state
        self._standings[key] = _Standing(line, work.first, revisions, state)
        return self._standings[key], True
