"""Line indexes: the sessions of a trainee by line, and the next one made from the last.

An edit changes one session of thousands; for all lines but its own the parts stay the very same
objects, by which whatever was computed from them is known again.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Mapping
from itertools import chain
from operator import is_

from desktop.training.program import Line
from desktop.training.session import LineDone, Session

Part = tuple[Session, LineDone]
"""What one session holds of one line."""


class LineIndex:
    """The parts of ``sessions`` by line, oldest first."""

    def __init__(
        self, sessions: tuple[Session, ...], by_line: Mapping[int, tuple[Part, ...]]
    ) -> None:
        self.sessions = sessions
        self._by_line = by_line
        self._trained: dict[tuple[int, str], tuple[Part, ...]] = {}

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
            self._trained[key] = tuple(
                each
                for each in self.parts(line.id)
                if each[1].exercise == line.exercise and each[1].trained
            )
        return self._trained[key]

    def of_others(self, sessions: tuple[Session, ...]) -> LineIndex:
        """The index of other sessions; what they have in common at both ends is taken over."""
        old = self.sessions
        begin = alike(old, sessions)
        end = alike(old[:begin:-1], sessions[:begin:-1])
        gone, come = old[begin : len(old) - end], sessions[begin : len(sessions) - end]
        new, lost = _by_line(come), _counted(gone)
        behind = _counted(old[len(old) - end :]) if lost or new else Counter()
        by_line = dict(self._by_line)
        for key in {*lost, *new}:
            parts = self.parts(key)
            last = len(parts) - behind[key]
            by_line[key] = (*parts[: last - lost[key]], *new.get(key, ()), *parts[last:])
        index = LineIndex(sessions, by_line)
        index._trained.update(
            (key, parts) for key, parts in self._trained.items() if key[0] not in {*lost, *new}
        )
        return index


def alike(some: Iterable[object], others: Iterable[object]) -> int:
    """With how many of the very same objects both begin."""
    count = 0
    for same in map(is_, some, others):
        if not same:
            break
        count += 1
    return count


def _by_line(sessions: Iterable[Session]) -> dict[int, list[Part]]:
    by_line: dict[int, list[Part]] = {}
    for session in sessions:
        for part in session.lines:
            by_line.setdefault(part.line_id, []).append((session, part))
    return by_line


def _counted(sessions: Iterable[Session]) -> Counter[int]:
    return Counter(part.line_id for part in chain.from_iterable(one.lines for one in sessions))
