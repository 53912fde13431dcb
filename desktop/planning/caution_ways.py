"""Ways out of a caution: what can be done about it, in one step or on another screen.

A way that changes something carries what is to be saved, so that the screen can do it as one act
that is undone as one. The others only say where to look. Nothing is written here.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from datetime import date
from enum import StrEnum
from typing import Final

from desktop.planning.cautions import cautions_of
from desktop.planning.clearance import clearance_needed
from desktop.planning.deload_plan import eased_as, monday_from
from desktop.planning.history import History
from desktop.planning.lines import replay_of
from desktop.planning.schedule import DAY, WEEK, deload_windows, place_on
from desktop.training.adjusting import back_off
from desktop.training.asking import mover_of
from desktop.training.limits import LimitId, Proposal
from desktop.training.position import Position, VariableRange
from desktop.training.program import Assignment, Line, Override, RuleRevision, WeekdaysFrom
from desktop.training.recovery import Caution, minor, older
from desktop.training.trainee import DeloadWindow
from desktop.training.varying import MOST_SETS, another_variable


class WayKind(StrEnum):
    """What can be done. Those above the line change the record in one step."""

    HOLD = "hold"  # back to the position before the step
    LIGHTER = "lighter"  # one step easier, as the line's rule backs off
    DELOAD = "deload"  # an easier week from a day on
    DAY_OFF = "day off"  # another weekday, so that a full day lies between
    GROW = "grow"  # another variable grows besides, by a rule of the trainee's own
    # ----
    CLEARANCE = "clearance"  # record who cleared the trainee, and when
    PLANNER = "planner"  # look at the easier week first
    RULE = "rule"  # look at the rule in the program
    SUBSTITUTE = "substitute"  # another exercise in the program
    VARIABLE = "variable"  # another variable grows: the rule in the program
    PROGRAM = "program"
    PROGRESS = "progress"
    SESSION = "session"
    TRAINEE = "trainee"
    WEEK = "week"  # the days of the week side by side
    ACTIVITIES = "activities"  # say what is recorded


Changed = Line | DeloadWindow | Assignment


@dataclass(frozen=True, slots=True)
class Way:
    """One way out. ``changed`` is to be saved (None: only a place to go). ``position`` is where the
    line stands then, ``day`` when it begins, ``weekday`` (0 = Monday) the new training day,
    ``grows`` the range that the rule gets. ``settles``: what was seen does not change with it at
    once, so the caution is set aside in the same act.
    """

    kind: WayKind
    changed: Changed | None = None
    position: Position | None = None
    day: date | None = None
    weekday: int | None = None
    grows: VariableRange | None = None
    settles: bool = False


_GUIDED_SETS: Final = 3
"""The most sets that the guidance for minors and for older adults names (see limits.toml)."""


def ways_of(history: History, caution: Caution, today: date) -> tuple[Way, ...]:
    """What can be done about ``caution``, the most likely first.

    While a licensed professional's clearance is needed nothing is proposed but that: the other
    ways only lead to where something is seen.
    """
    proposed = _BY_PROPOSAL.get(caution.proposal)
    ways = tuple(proposed(history, caution, today)) if proposed else (Way(WayKind.PROGRAM),)
    if clearance_needed(history, today) is None:
        return ways
    return tuple(way for way in ways if way.changed is None)


def _smaller_step(history: History, caution: Caution, _today: date) -> Iterator[Way]:
    held = _held_back(history, caution.line_id)
    if held is not None:
        yield held
    yield Way(WayKind.RULE)


def _move_a_day(history: History, _caution: Caution, today: date) -> Iterator[Way]:
    found = day_off(history, today)
    if found is not None:
        yield found
    yield Way(WayKind.PROGRAM)


def _plan_a_deload(history: History, _caution: Caution, today: date) -> Iterator[Way]:
    first = monday_from(today)
    window = eased_as(
        history, DeloadWindow(history.trainee_id, first, first + 6 * DAY, planned=False)
    )
    taken = any(one.first <= window.last and one.last >= first for one in deload_windows(history))
    if not taken:
        yield Way(WayKind.DELOAD, window, day=first)
    yield Way(WayKind.PLANNER)


def _vary_the_days(_history: History, _caution: Caution, _today: date) -> Iterator[Way]:
    yield Way(WayKind.WEEK)
    yield Way(WayKind.PROGRAM)


def _choose_for_pain(history: History, caution: Caution, _today: date) -> Iterator[Way]:
    eased = _lighter(history, caution.line_id)
    if eased is not None:
        yield eased
    yield Way(WayKind.SUBSTITUTE)
    if caution.limit is LimitId.PAIN_HOLD:
        yield Way(WayKind.CLEARANCE)


def _other_variable(history: History, caution: Caution, today: date) -> Iterator[Way]:
    grown = _grown(history, caution.line_id, today)
    yield Way(WayKind.VARIABLE) if grown is None else replace(grown, settles=True)
    for way in _plan_a_deload(history, caution, today):
        yield replace(way, settles=way.changed is not None)
    yield Way(WayKind.PROGRESS)
    if grown is not None:
        yield Way(WayKind.RULE)


def _extend_the_rule(history: History, caution: Caution, today: date) -> Iterator[Way]:
    grown = _grown(history, caution.line_id, today)
    if grown is not None:
        yield grown
    yield Way(WayKind.RULE)


def _goes_to(kind: WayKind) -> Callable[[History, Caution, date], Iterator[Way]]:
    def ways(_history: History, _caution: Caution, _today: date) -> Iterator[Way]:
        yield Way(kind)

    return ways


_BY_PROPOSAL = {
    Proposal.SMALLER_STEP: _smaller_step,
    Proposal.ONE_VARIABLE: _smaller_step,
    Proposal.MOVE_A_DAY: _move_a_day,
    Proposal.PLAN_A_DELOAD: _plan_a_deload,
    Proposal.VARY_THE_DAYS: _vary_the_days,
    Proposal.CHOOSE_FOR_PAIN: _choose_for_pain,
    Proposal.OTHER_VARIABLE: _other_variable,
    Proposal.RECORD_ACTIVITIES: _goes_to(WayKind.ACTIVITIES),
    Proposal.EASE_BACK_IN: _goes_to(WayKind.SESSION),
    Proposal.FOLLOW_GUIDANCE: _goes_to(WayKind.TRAINEE),
    Proposal.SCREEN: _goes_to(WayKind.TRAINEE),
    Proposal.IN_BETWEEN: _goes_to(WayKind.RULE),
    Proposal.EXTEND_THE_RULE: _extend_the_rule,
    Proposal.RECORD_CLEARANCE: _goes_to(WayKind.CLEARANCE),
    Proposal.ADD_A_SESSION: _goes_to(WayKind.PROGRAM),
}


def _held_back(history: History, line_id: int | None) -> Way | None:
    """The line at the position before the step that it stands on; None where there is none."""
    if line_id is None:
        return None
    line = history.line(line_id)
    told = replay_of(history, line)
    steps = [step for step in told.steps if step.before != step.after]
    if not steps or steps[-1].before is None or steps[-1].after != told.state.position:
        return None
    return Way(WayKind.HOLD, _set_to(history, line, steps[-1].before), steps[-1].before)


def _lighter(history: History, line_id: int | None) -> Way | None:
    """The line one step easier, as its rule backs off after misses; None where nothing can."""
    if line_id is None:
        return None
    line = history.line(line_id)
    state = replay_of(history, line).state
    if state.position is None:
        return None
    eased = back_off(state.position, mover_of(state, history.context))
    if eased is None:
        return None
    return Way(WayKind.LIGHTER, _set_to(history, line, eased[1]), eased[1])


def _grown(history: History, line_id: int | None, today: date) -> Way | None:
    """The line with one variable more in its rule from ``today`` on; None where none fits."""
    if line_id is None:
        return None
    line = history.line(line_id)
    state = replay_of(history, line).state
    if state.position is None:
        return None
    limits, born = history.library.limits, history.trainee.birth_year
    guided = minor(limits[LimitId.MINOR], born, today) or older(limits[LimitId.OLDER], born, today)
    found = another_variable(state.rule, state.position, _GUIDED_SETS if guided else MOST_SETS)
    if found is None:
        return None
    added, rule = found
    kept = tuple(one for one in line.revisions if one.day != today)
    changed = replace(line, revisions=(*kept, RuleRevision(today, rule)))
    return Way(WayKind.GROW, changed, day=today, grows=added)


def _set_to(history: History, line: Line, position: Position) -> Line:
    """The coach's word, holding from right after the line's last session."""
    assert line.id is not None
    done = [(session.day, session.entry) for session, _ in history.done(line.id)]
    said = [(each.day, each.entry) for each in line.overrides]
    last = max([*done, *said])
    word = Override(last[0], position, entry=last[1] + 1)
    return replace(line, overrides=(*line.overrides, word))


def day_off(history: History, today: date) -> Way | None:
    """One training day on another weekday, so that hard days of a pattern planned from ``today``
    on have a full day between them; days that the trainee named go first, then those nearest.

    None where the program leaves weekdays open, nothing is too close, or no weekday mends it.
    """
    place = place_on(history, today)
    if place is None or place.phase is None or not place.phase.days:
        return None
    named = place.weekdays
    weekdays = [
        named[index] if index < len(named) else day.weekday
        for index, day in enumerate(place.phase.days)
    ]
    fixed = [day for day in weekdays if day is not None]
    if len(fixed) < len(weekdays) or not _too_close(history, place.assignment, today):
        return None
    free = [day for day in range(7) if day not in fixed]
    wishes = history.trainee.weekdays
    tries = sorted(
        ((index, weekday) for index in range(len(fixed)) for weekday in free),
        key=lambda one: (one[1] not in wishes, abs(one[1] - fixed[one[0]]), -one[0]),
    )
    for index, weekday in tries:
        first = _from_when(fixed[index], today)
        moved = (*fixed[:index], weekday, *fixed[index + 1 :])
        changed = moved_from(place.assignment, first, moved)
        if not _too_close(history, changed, today):
            return Way(WayKind.DAY_OFF, changed, day=first, weekday=weekday)
    return None


def moved_from(assignment: Assignment, first: date, weekdays: tuple[int, ...]) -> Assignment:
    """The assignment with its days on other weekdays from ``first`` on; before, nothing changes."""
    if first <= assignment.start:
        return replace(assignment, weekdays=weekdays, moves=())
    kept = tuple(move for move in assignment.moves if move.day < first)
    return replace(assignment, moves=(*kept, WeekdaysFrom(first, weekdays)))


def _from_when(weekday: int, today: date) -> date:
    """Today, where the day that moves is still to come this week; else next Monday, so that it
    does not come twice in one week.
    """
    return today if weekday >= today.weekday() else today + (7 - today.weekday()) * DAY


def _too_close(history: History, assignment: Assignment, today: date) -> bool:
    """Whether hard days planned in the next weeks leave no full day between them."""
    others = tuple(one for one in history.assignments if one.id != assignment.id)
    tried = replace(history, assignments=(*others, assignment), sessions=(), dismissed=())
    monday = today + (7 - today.weekday()) * DAY
    return any(
        caution.limit is LimitId.TOO_CLOSE
        for day in (today, monday, monday + WEEK)
        for caution in cautions_of(tried, day, {})
    )
