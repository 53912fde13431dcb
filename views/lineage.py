"""Which revisions of an aggregate hold the same state, so that a chain of undos knows itself.

The store counts every write, an undo too. A command that is undone after others expects the state
that it left, at whatever revision that state has now. A write of another process breaks the chain:
then the old revision is asked for, and the store answers with a conflict.
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

_Key = tuple[type, int | None]


class Lineage:
    """Remembers what this window wrote."""

    def __init__(self) -> None:
        self._current: dict[_Key, int] = {}
        self._same_as: dict[tuple[_Key, int], int] = {}

    def wrote(self, aggregates: Iterable[Any]) -> None:
        """These were written as they are."""
        for aggregate in aggregates:
            self._current[_key(aggregate)] = aggregate.revision

    def wrote_again(self, written: Any, state: Any) -> None:
        """``written`` holds the same state as ``state``, at a later revision."""
        self.wrote([written])
        self._same_as[_key(written), written.revision] = self._state(state)

    def at(self, wanted: Any, expected: Any) -> Any:
        """``wanted``, ready to be written over the state ``expected``."""
        from dataclasses import replace  # not needed before the first edit

        current = self._current.get(_key(expected), expected.revision)
        now = replace(expected, revision=current)
        unbroken = self._state(now) == self._state(expected)
        return replace(wanted, revision=current if unbroken else expected.revision)

    def _state(self, aggregate: Any) -> int:
        revision: int = aggregate.revision
        return self._same_as.get((_key(aggregate), revision), revision)


def _key(aggregate: Any) -> _Key:
    return type(aggregate), getattr(aggregate, "id", None)
