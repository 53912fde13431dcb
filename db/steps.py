"""Long work in steps: a generator that yields how far it is and returns what it made.

Closed before its end, it leaves things as they were. Whoever drives it decides how much is done at
a time; `finished` does all of it at once.
"""

from __future__ import annotations

import gc
from collections.abc import Generator, Iterator
from contextlib import contextmanager
from typing import Any, TypeVar

T = TypeVar("T")

Steps = Generator[float, None, T]
"""Yields the share done, 0 to 1."""


def finished(work: Generator[Any, None, T]) -> T:
    """What a piece of work in steps gives in the end."""
    with uncollected():
        while True:
            try:
                next(work)
            except StopIteration as end:
                return end.value  # type: ignore[no-any-return]


@contextmanager
def uncollected() -> Iterator[None]:
    """Python's search for cycles stands still. While a hundred thousand records are made, none of
    which is garbage, it would look through all of them again and again: a quarter of the time.
    """
    searching = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if searching:
            gc.enable()
