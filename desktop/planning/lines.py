"""Lines: from the dated facts of a trainee to where each line stands."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from typing import Final

from desktop.planning.history import History
from desktop.planning.rules import rule_revisions as rule_revisions
from desktop.planning.schedule import DAY, deload_windows
from desktop.planning.surroundings import (
    parts_of,
    scope_of,
    surrounded_of,
    surroundings_at,
)
from desktop.planning.surroundings import surrounded_events as surrounded_events
from desktop.planning.surroundings import surroundings_on as surroundings_on
from desktop.training.asking import starting_state
from desktop.training.position import ProgressionRule
from desktop.training.program import Line, LineStart, RuleRevision
from desktop.training.reasons import RETEST_NOTE
from desktop.training.state import (
    Cleared,
    DeloadDays,
    Event,
    Overridden,
    Replay,
    SessionDone,
    State,
)

START_NOTE: Final = "start"
"""The note of the override that a later starting point acts as."""

ASSESSMENT_START: Final = "assessment"
"""The kind of a start that a test gave."""

PROGRAM_START: Final = "program"
"""The kind of a start that a program's slot gave: history goes before it."""


def start_of(history: History, line: Line) -> LineStart | None:
    """Where the replay of ``line`` begins: its first start, if no training goes before it.

    Else None: the first session trained is where the line begins, and later starts act as
    overrides. A start that a program's slot gave is for somebody without history and gives way.
    """
    trained = next((session.day for session, _ in history.trained(line)), None)
    first = min(line.starts, key=lambda one: one.day, default=None)
    if first is None or (trained is not None and trained < first.day):
        return None
    return first


@dataclass(frozen=True, slots=True)
class LineFacts:
    """All that the replay of one line takes: its rules, its start and its events."""

    revisions: tuple[RuleRevision, ...]
    start: State
    events: tuple[Event, ...]


def line_facts(
    history: History, line: Line, until: date | None = None, *, evening: bool = False
) -> LineFacts:
    """The facts of ``line`` for a replay up to ``until``: sessions before that day (``evening``:
    and on it), and whatever else (rules, starts, overrides, equipment, body mass, clearances)
    holds on that day.

    ``until`` None: everything on record, but no rule that a later phase will bring.
    """
    last = _last_recorded(history, line) if until is None else until
    revisions = rule_revisions(history, line)
    start = start_of(history, line)
    sessions = _session_events(history, line, until + DAY if until and evening else until)
    days = [one.day for one in (start, *sessions[:1]) if one is not None]
    first = min(days, default=last)
    scope = scope_of(history, line, (one.rule for one in revisions))
    events: list[Event] = [
        *(one for one in surrounded_of(history, line, scope) if one.day > first),
        *_later_starts(line, start),
        *_overrides(line, start),
        *(Cleared(one.day) for one in history.trainee.clearances),
        *(DeloadDays(one.first, one.last) for one in deload_windows(history)),
    ]
    begun = [one.rule for one in revisions if one.day <= first]
    rule = begun[-1] if begun else revisions[0].rule if revisions else ProgressionRule()
    around = surroundings_at(history, line, first, scope)
    return LineFacts(
        revisions=tuple(one for one in revisions if first < one.day <= last),
        start=starting_state(start, rule, around, history.context)
        if start
        else State(position=None, rule=rule, surroundings=around),
        events=(*sessions, *(one for one in events if _day_of(one) <= last)),
    )


def replay_of(
    history: History, line: Line, until: date | None = None, *, evening: bool = False
) -> Replay:
    """Where ``line`` stands by its facts up to ``until`` (see `line_facts`), and every step."""
    facts = line_facts(history, line, until, evening=evening)
    tracks = history.tracks
    return tracks.replay(line, facts.revisions, facts.start, facts.events, history.context)


def _session_events(history: History, line: Line, until: date | None) -> tuple[SessionDone, ...]:
    told = history.tracks.events(line, parts_of(history, line))
    if until is None or not told or told[-1].day < until:
        return told
    return tuple(event for event in told if event.day < until)


def _later_starts(line: Line, start: LineStart | None) -> list[Overridden]:
    """Starts besides the one that the replay begins with; a program's gives way to history."""
    return [
        Overridden(
            one.day, one.position, RETEST_NOTE if one.kind == ASSESSMENT_START else START_NOTE
        )
        for one in line.starts
        if one is not start and one.kind != PROGRAM_START
    ]


def _overrides(line: Line, start: LineStart | None) -> list[Overridden]:
    """The coach's word; what was said before the line's start no longer holds."""
    return [
        Overridden(one.day, one.position, one.note, one.entry)
        for one in line.overrides
        if start is None or one.day >= start.day
    ]


def _last_recorded(history: History, line: Line) -> date:
    """The last day of anything on record that concerns the line; `date.min` without any."""
    days = [session.day for session, _ in parts_of(history, line)]
    days += [one.day for one in line.starts]
    days += [one.day for one in line.overrides]
    days += [one.day for one in line.revisions]
    days += [one.day for one in history.trainee.clearances]
    days += [one.day for one in history.equipment]
    days += [one.day for one in history.body_masses]
    return max(days, default=date.min)


def _day_of(event: Event) -> date:
    return event.first if isinstance(event, DeloadDays) else event.day
