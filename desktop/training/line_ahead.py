"""One line unrolled over days to come, each session done as asked before the next.

Lines move by themselves, so that an edit of one leaves what was computed of the others as it is.
"""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace
from datetime import date

from desktop.training.asking import follow_target, target_on
from desktop.training.preview import as_asked
from desktop.training.program import RuleRevision
from desktop.training.replay import replay
from desktop.training.state import Context, State
from desktop.training.target import Target
from desktop.training.trainee import DeloadWindow


@dataclass(frozen=True, slots=True)
class LineTimes:
    """When a line is trained and what changes meanwhile: ascending ``days``, dated ``rules`` still
    to come, ``deloads``.
    """

    days: tuple[date, ...]
    rules: tuple[RuleRevision, ...] = ()
    deloads: tuple[DeloadWindow, ...] = ()

    def eased_on(self, day: date) -> DeloadWindow | None:
        """The easier span that ``day`` lies in."""
        return next((each for each in self.deloads if each.first <= day <= each.last), None)


@dataclass(frozen=True, slots=True)
class LineAhead:
    """What a line asks on each of its days. ``states`` are those before each day, ``last`` the one
    after all of them; ``leader``: the line that it follows.
    """

    times: LineTimes
    targets: Mapping[date, Target]
    states: tuple[State, ...] = field(repr=False)
    last: State = field(repr=False)
    leader: LineAhead | None = field(default=None, repr=False)

    def state_before(self, day: date, context: Context) -> State:
        """Where the line stands on ``day`` before any session of it."""
        at = bisect_left(self.times.days, day)
        state = self.states[at] if at < len(self.states) else self.last
        return _ruled(state, self.times.rules, day, context)

    def target_on(self, day: date, context: Context) -> Target:
        """What the line asks on ``day``, whether or not it is one of its own."""
        found = self.targets.get(day)
        if found is not None:
            return found
        return _target(self.state_before(day, context), day, self.times, context, self.leader)


def unroll_line(
    state: State, times: LineTimes, context: Context, leader: LineAhead | None = None
) -> LineAhead:
    """The targets of a line from ``state`` on. One that follows asks a share of what ``leader``
    asks on the day; one that nobody has trained yet begins on its first day, without a gap.
    """
    if state.last_trained is None and state.vouched is not None and times.days:
        state = replace(state, vouched=max(state.vouched, times.days[0]))
    targets: dict[date, Target] = {}
    states: list[State] = []
    for day in times.days:
        state = _ruled(state, times.rules, day, context)
        states.append(state)
        targets[day] = _target(state, day, times, context, leader)
        state = as_asked(state, targets[day], day, context)
    return LineAhead(times, targets, tuple(states), state, leader)


def _target(
    state: State, day: date, times: LineTimes, context: Context, leader: LineAhead | None
) -> Target:
    """What a line in ``state`` asks on ``day``, by itself or by the one that it follows."""
    if leader is None:
        return target_on(state, day, context, deload=times.eased_on(day))
    asked = leader.target_on(day, context)
    return follow_target(asked, state.rule, state.surroundings, state.position, state.held)


def _ruled(state: State, rules: Sequence[RuleRevision], day: date, context: Context) -> State:
    """The state with the rules that begin to hold until ``day``; those of before are in it."""
    since = state.rule_day
    due = [rule for rule in rules if rule.day <= day and (since is None or rule.day > since)]
    return replay(due, state, (), context).state if due else state
