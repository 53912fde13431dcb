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


@dataclass(slots=True)
class _Known:
    """What is kept of one line: its track, the replay last asked for, the parts of sessions last
    seen with their events, and what was last made of them.
    """

    track: Track | None = None
    replayed: tuple[_Asked, Replay] | None = None
    parts: tuple[Part, ...] = ()
    events: tuple[SessionDone, ...] = ()
    made: tuple[tuple[object, ...], object] | None = None


class Tracks:
    """The tracks of the lines last replayed. They only save work: a replay is the same with an
    empty one, whatever was edited in between.
    """

    def __init__(self) -> None:
        self._lines: dict[_Key, _Known] = {}
        self._indexes: dict[int, list[LineIndex]] = {}

    def replay(
        self,
        line: Line,
        revisions: Sequence[RuleRevision],
        start: State,
        events: Sequence[Event],
        context: Context,
    ) -> Replay:
        """As `desktop.training.replay.replay`, from where ``line`` last went another way."""
        known, asked = self._known(line), (tuple(revisions), start, tuple(events), context)
        if known.replayed is None or known.replayed[0] != asked:
            from desktop.training.track import tracked  # a chart replays nothing

            replay, known.track = tracked(*asked, known.track)
            known.replayed = (asked, replay)
        return known.replayed[1]

    def recall(self, line: Line, inputs: tuple[object, ...], make: Callable[[], T]) -> T:
        """What ``make`` made the last time of the same ``inputs``, else what it makes now. One
        thing is kept of each line.
        """
        known = self._known(line)
        if known.made is None or known.made[0] != inputs:
            known.made = (inputs, make())
        return cast(T, known.made[1])

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
        known = self._known(line)
        if parts is not known.parts:
            begin, end = shared_ends(known.parts, parts)
            between = parts[begin : len(parts) - end]
            known.events = (
                *known.events[:begin],
                *(_event(session, part, line) for session, part in between),
                *known.events[len(known.parts) - end :],
            )
            known.parts = parts
        return known.events

    def _known(self, line: Line) -> _Known:
        """What is kept of ``line``, which is the last one looked at now."""
        key = (line.trainee_id, line.exercise, line.name)
        known = self._lines.pop(key) if key in self._lines else _Known()
        self._lines[key] = known
        while len(self._lines) > MOST_LINES:
            del self._lines[next(iter(self._lines))]
        return known


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
