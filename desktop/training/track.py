"""Tracks: a replay event by event, so that the next one goes on from what both share.

One set typed differently changes one event of thousands. What stands before it need not be judged
again; nor what comes after, once the line stands again as it stood.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date
from itertools import groupby
from operator import eq

from desktop.training.event_effects import after_event
from desktop.training.program import RuleRevision
from desktop.training.state import (
    Context,
    DeloadDays,
    Event,
    Overridden,
    Replay,
    SessionDone,
    State,
    Step,
    Surrounded,
)

AnyEvent = RuleRevision | Event


@dataclass(frozen=True, slots=True, eq=False)
class Track:
    """The ``events`` in the order they took effect, and for each the state after it and the step
    that it made (None: none).
    """

    start: State
    context: Context
    events: tuple[AnyEvent, ...]
    states: tuple[State, ...]
    steps: tuple[Step | None, ...]

    def replay(self, events: int) -> Replay:
        """Where the line stands after so many events."""
        state = self.states[events - 1] if events else self.start
        return Replay(state, tuple(step for step in self.steps[:events] if step is not None))


def tracked(
    rule_revisions: Sequence[RuleRevision],
    start: State,
    events: Iterable[Event],
    context: Context,
    earlier: Track | None = None,
) -> tuple[Replay, Track]:
    """The replay of `desktop.training.replay.replay`, and its track for the next time.

    ``earlier`` only saves work: whichever track of whichever line it is, the replay is the same.
    Where it goes on beyond these events, it is the track that comes back.
    """
    revisions = [r for r in rule_revisions if start.rule_day is None or r.day > start.rule_day]
    ordered = in_order([*revisions, *events])
    if earlier is None or earlier.start != start or earlier.context != context:
        earlier = Track(start, context, (), (), ())
    shared = _alike(ordered, earlier.events)
    if shared == len(ordered):
        return earlier.replay(shared), earlier
    track = _gone_on(earlier, shared, ordered)
    return track.replay(len(ordered)), track


def _gone_on(earlier: Track, shared: int, ordered: list[AnyEvent]) -> Track:
    """The track of the events ``ordered``, the first ``shared`` of which ``earlier`` has too."""
    states, steps = list(earlier.states[:shared]), list(earlier.steps[:shared])
    state = states[-1] if shared else earlier.start
    ahead = len(earlier.events) - len(ordered)
    rest = len(ordered) - _alike(ordered[:shared:-1], earlier.events[:shared:-1])
    for place in range(shared, len(ordered)):
        if place >= rest and state == _state_before(earlier, place + ahead):
            states += earlier.states[place + ahead :]
            steps += earlier.steps[place + ahead :]
            break
        state, step = after_event(state, ordered[place], earlier.context)
        states.append(state)
        steps.append(step)
    return Track(earlier.start, earlier.context, tuple(ordered), tuple(states), tuple(steps))


def _state_before(track: Track, place: int) -> State:
    return track.states[place - 1] if place else track.start


def _alike(some: Sequence[AnyEvent], others: Sequence[AnyEvent]) -> int:
    """With how many equal events both begin."""
    count = 0
    for one, other in zip(some, others, strict=False):
        if one is not other and one != other:
            break
        count += 1
    return count


def in_order(events: Iterable[AnyEvent]) -> list[AnyEvent]:
    """The events in the order they take effect; what is told alike is ordered by its contents,
    so that the order of arrival never matters. Revisions of one day stay as given.
    """
    arrived = list(events)
    keys = [_order(event) for event in arrived]
    places = sorted(range(len(arrived)), key=keys.__getitem__)
    ordered = [arrived[place] for place in places]
    keys = [keys[place] for place in places]
    if not any(map(eq, keys, keys[1:])):
        return ordered
    told: list[AnyEvent] = []
    for _, alike in groupby(range(len(ordered)), key=keys.__getitem__):
        group = [ordered[place] for place in alike]
        if len(group) > 1 and not isinstance(group[0], RuleRevision):
            group.sort(key=repr)
        told.extend(group)
    return told


def _order(event: AnyEvent) -> tuple[date, int, int, int, int]:
    """Date, rank on the day, entry, overrides before sessions, the session's id."""
    match event:
        case SessionDone():
            return (event.day, 3, event.entry, 1, event.session_id or 0)
        case Surrounded():
            return (event.day, 0, 0, 0, 0)
        case RuleRevision():
            return (event.day, 1, 0, 0, 0)
        case DeloadDays():
            return (event.first, 2, 0, 0, 0)
        case Overridden():
            return (event.day, 3, event.entry, 0, 0)
        case _:
            return (event.day, 4, 0, 0, 0)
