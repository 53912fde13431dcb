"""Tracks of lines: what the last replay of each line went through, so that the next is short."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING, Final, TypeVar, cast

from desktop.planning.line_index import LineIndex, Part
from desktop.training.program import Line, RuleRevision
from desktop.training.session import LineDone, Session, SetDone
from desktop.training.shared_ends import shared_ends
from desktop.training.state import Context, Event, Replay, SessionDone, State

if TYPE_CHECKING:
    from desktop.training.track import Track

T = TypeVar("T")

MOST_LINES: Final = 64
"""Of so many lines the track is kept; one of ten years takes about 1 MB."""

MOST_TRAINEES: Final = 4
_MOST_INDEXES: Final = 3
"""Of one trainee: the record, as it would be with an edit, and as it was before the last one."""

_Key = tuple[int, str, str]
_Asked = tuple[tuple[RuleRevision, ...], State, tuple[Event, ...], Context]


@dataclass(frozen=True, slots=True)
class _Told:
    """The parts of sessions last seen, and their events."""

    parts: tuple[Part, ...] = ()
    events: tuple[SessionDone, ...] = ()


class Tracks:
    """The tracks of the lines last replayed. They only save work: a replay is the same with an
    empty one, whatever was edited in between.
    """

    def __init__(self) -> None:
        self._tracks: dict[_Key, Track] = {}
        self._replays: dict[_Key, tuple[_Asked, Replay]] = {}
        self._told: dict[_Key, _Told] = {}
        self._indexes: dict[int, list[LineIndex]] = {}
        self._made: dict[_Key, tuple[tuple[object, ...], object]] = {}

    def replay(
        self,
        line: Line,
        revisions: Sequence[RuleRevision],
        start: State,
        events: Sequence[Event],
        context: Context,
    ) -> Replay:
        """As `desktop.training.replay.replay`, from where ``line`` last went another way."""
        key, asked = _key(line), (tuple(revisions), start, tuple(events), context)
        last = self._replays.get(key)
        if last is not None and last[0] == asked:
            return last[1]
        from desktop.training.track import tracked  # a chart replays nothing

        replayed, self._tracks[key] = tracked(*asked, self._tracks.pop(key, None))
        self._replays[key] = (asked, replayed)
        while len(self._tracks) > MOST_LINES:
            oldest = next(iter(self._tracks))
            del self._tracks[oldest]
            del self._replays[oldest]
            self._told.pop(oldest, None)
            self._made.pop(oldest, None)
        return replayed

    def recall(self, line: Line, inputs: tuple[object, ...], make: Callable[[], T]) -> T:
        """What ``make`` made the last time of the same ``inputs``, else what it makes now. One
        thing is kept of each line.
        """
        key = _key(line)
        known = self._made.get(key)
        if known is None or known[0] != inputs:
            known = self._made[key] = (inputs, make())
        return cast(T, known[1])

    def index(self, sessions: tuple[Session, ...]) -> LineIndex:
        """The index of a trainee's sessions, made from the one last asked for."""
        if not sessions:
            return LineIndex.of(())
        known = self._indexes.setdefault(sessions[0].trainee_id, [])
        for place, index in enumerate(known):
            if index.sessions is sessions:
                if place != len(known) - 1:
                    known.append(known.pop(place))
                return index
        index = known[-1].of_others(sessions) if known else LineIndex.of(sessions)
        known.append(index)
        del known[:-_MOST_INDEXES]
        while len(self._indexes) > MOST_TRAINEES:
            del self._indexes[next(iter(self._indexes))]
        return index

    def events(self, line: Line, parts: tuple[Part, ...]) -> tuple[SessionDone, ...]:
        """What the ``parts`` of sessions tell the line: of those seen before the same events."""
        last = self._told.get(_key(line), _Told())
        if parts is last.parts:
            return last.events
        begin, end = shared_ends(last.parts, parts)
        between = parts[begin : len(parts) - end]
        events = (
            *last.events[:begin],
            *(_event(session, part, line) for session, part in between),
            *last.events[len(last.parts) - end :],
        )
        self._told[_key(line)] = _Told(parts, events)
        return events


def _key(line: Line) -> _Key:
    return (line.trainee_id, line.exercise, line.name)


def _event(session: Session, part: LineDone, line: Line) -> SessionDone:
    return SessionDone(
        day=session.day,
        sets=_sets_of(part, line),
        asked=part.asked,
        entry=session.entry,
        session_id=session.id,
        deload=part.deload,
        test=part.test,
    )


def _sets_of(part: LineDone, line: Line) -> tuple[SetDone, ...]:
    """The sets that concern the line; of a skipped one its warm-ups, which may have hurt.

    Of another exercise done in its place nothing counts, but what hurt is told all the same, as of
    a warm-up: the line is looked at before it goes on.
    """
    if part.exercise != line.exercise:
        return tuple(replace(done, warm_up=True) for done in part.sets if done.pain)
    return tuple(done for done in part.sets if done.warm_up or not part.skipped)
