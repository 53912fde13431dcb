"""Records with other values in some fields."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import fields
from functools import cache
from operator import attrgetter
from typing import Any, TypeVar

A = TypeVar("A")


def remade(record: A, **changes: Any) -> A:
    """The dataclass ``record`` with other values: `dataclasses.replace` for where there are many,
    in half the time.
    """
    kind: Any = type(record)
    names, values_of = _reader(kind)
    return kind(**dict(zip(names, values_of(record), strict=True)) | changes)  # type: ignore[no-any-return]


@cache
def _reader(kind: type[Any]) -> tuple[tuple[str, ...], Callable[[Any], tuple[Any, ...]]]:
    names = tuple(field.name for field in fields(kind))
    return names, attrgetter(*names)
