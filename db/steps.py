"""Long work in steps: a generator that yields how far it is and returns what it made.

Closed before its end, it leaves things as they were. Whoever drives it decides how much is done at
a time; `finished` does all of it at once.
"""

from __future__ import annotations

from collections.abc import Generator
from typing import Any, TypeVar

T = TypeVar("T")

Steps = Generator[float, None, T]
"""Yields the share done, 0 to 1."""


def finished(work: Generator[Any, None, T]) -> T:
    """What a piece of work in steps gives in the end."""
    while True:
        try:
            next(work)
        except StopIteration as end:
            return end.value  # type: ignore[no-any-return]
