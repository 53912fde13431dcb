"""Shared ends: what two sequences that differ in one place have in common before and behind it."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from operator import is_


def shared_ends(some: Sequence[object], others: Sequence[object]) -> tuple[int, int]:
    """With how many of the very same objects both begin and, of the rest, end."""
    begin = _alike(some, others)
    rest = min(len(some), len(others)) - begin
    return begin, min(_alike(reversed(some), reversed(others)), rest)


def _alike(some: Iterable[object], others: Iterable[object]) -> int:
    count = 0
    for same in map(is_, some, others):
        if not same:
            break
        count += 1
    return count
