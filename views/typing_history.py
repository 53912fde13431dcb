"""Steps back and on through what is typed: values that never change, one for each step."""

from __future__ import annotations

from typing import Generic, TypeVar

V = TypeVar("V")

MOST_STEPS = 500


class TypingHistory(Generic[V]):
    """Values before the one that stands now. Typing on in one place is one step."""

    def __init__(self) -> None:
        self._before: list[V] = []
        self._after: list[V] = []
        self._key: object = None

    @property
    def can_undo(self) -> bool:
        """Whether there is a step back."""
        return bool(self._before)

    @property
    def can_redo(self) -> bool:
        """Whether a step back can be done again."""
        return bool(self._after)

    def clear(self) -> None:
        """Begin anew."""
        self._before, self._after, self._key = [], [], None

    def note(self, value: V, key: object) -> bool:
        """``value`` is about to give way; changes with an equal ``key`` in a row are one step.

        Whether this one belongs to the step before.
        """
        going_on = bool(self._before) and key == self._key
        if not going_on:
            self._before.append(value)
            del self._before[:-MOST_STEPS]
        self._key = key
        self._after = []
        return going_on

    def undo(self, current: V) -> V:
        """The value one step back; ``current`` itself where there is none."""
        if not self._before:
            return current
        self._after.append(current)
        self._key = None
        return self._before.pop()

    def redo(self, current: V) -> V:
        """The value one step on; ``current`` itself where there is none."""
        if not self._after:
            return current
        self._before.append(current)
        self._key = None
        return self._after.pop()
