"""Line indexes: the sessions of a trainee by line, and the next one made from the last.

An edit changes one session of thousands; for all lines but its own the parts stay the very same
objects, by which whatever was computed from them is known again.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Mapping
from itertools import chain

from desktop.training.program import Line
from desktop.training.session import LineDone, Session
from desktop.training.shared_ends import shared_ends

Part = tuple[Session, LineDone]
"""What one session holds of one line."""

_Trains = tuple[int, str]
"""A line and its exercise."""


class LineIndex:
    """The parts of ``sessions`` by line, oldest first."""

    def __init__(
        self, sessions: tuple[Session, ...], by_line: Mapping[int, tuple[Part, ...]]
    ) -> None:
        self.sessions = sessions
        self._by_line = by_line
        self._trained: dict[_Trains, tuple[Part, ...]] = {}

    @classmethod
    def of(cls, sessions: tuple[Session, ...]) -> LineIndex:
        """The index of sessions that are sorted by day and entry."""
        by_line = _by_line(sessions)
        return cls(sessions, {key: tuple(parts) for key, parts in by_line.items()})

    def parts(self, line_id: int) -> tuple[Part, ...]:
        """Every part of one line."""
        return self._by_line.get(line_id, ())

    def trained(self, line: Line) -> tuple[Part, ...]:
        """The parts in which the line's own exercise was done with working sets."""
        if line.id is None:
            return ()
        key = (line.id, line.exercise)
        if key not in self._trained:
            self._trained[key] = tuple(_training(line.exercise, self.parts(line.id)))
        return self._trained[key]

    def of_others(self, sessions: tuple[Session, ...]) -> LineIndex:
        """The index of other sessions; what they have in common at both ends is taken over."""
        old = self.sessions
        begin, end = shared_ends(old, sessions)
        gone, come = old[begin : len(old) - end], sessions[begin : len(sessions) - end]
        new, lost = _by_line(come), _counted(gone)
        behind = _counted(old[len(old) - end :]) if lost or new else Counter()
        by_line = dict(self._by_line)
        for key in {*lost, *new}:
            parts = self.parts(key)
            last = len(parts) - behind[key]
            by_line[key] = (*parts[: last - lost[key]], *new.get(key, ()), *parts[last:])
        index = LineIndex(sessions, by_line)
        for line, trained in self._trained.items():
            index._trained[line] = _moved(trained, line, self.parts(line[0]), index.parts(line[0]))
        return index


def _moved(
    trained: tuple[Part, ...], line: _Trains, old: tuple[Part, ...], new: tuple[Part, ...]
) -> tuple[Part, ...]:
    """Of the ``new`` parts those that train the line, where of the ``old`` ones ``trained`` did."""
    if old is new:
        return trained
    begin, end = shared_ends(old, new)
    before = {id(part) for part in old[begin:]}
    behind = {id(part) for part in old[len(old) - end :]}
    first = next((n for n, part in enumerate(trained) if id(part) in before), len(trained))
    last = next((n for n in range(len(trained), 0, -1) if id(trained[n - 1]) not in behind), 0)
    between = new[begin : len(new) - end]
    return (*trained[:first], *_training(line[1], between), *trained[max(first, last) :])


def _training(exercise: str, parts: Iterable[Part]) -> Iterator[Part]:
    return (each for each in parts if each[1].exercise == exercise and each[1].trained)


def _by_line(sessions: Iterable[Session]) -> dict[int, list[Part]]:
    by_line: dict[int, list[Part]] = {}
    for session in sessions:
        for part in session.lines:
            by_line.setdefault(part.line_id, []).append((session, part))
    return by_line


def _counted(sessions: Iterable[Session]) -> Counter[int]:
    return Counter(part.line_id for part in chain.from_iterable(one.lines for one in sessions))
