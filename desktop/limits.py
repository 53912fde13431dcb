"""The limits that ship with the program, read from a data file and checked."""

from __future__ import annotations

from collections.abc import Mapping
from importlib.resources import files
from pathlib import Path
from types import MappingProxyType
from typing import Final

from desktop.entries import Entry, EntryError, as_type, read_entries
from desktop.training.limits import Limit, LimitId

SHIPPED: Final = "limits.toml"

_WORDS: Final = ("watches", "text", "source")


class LimitsError(EntryError):
    """A limit of the data file that cannot be taken; names the entry and the line."""


def load_limits(path: Path | None = None) -> Mapping[LimitId, Limit]:
    """Every limit by its id, from the file at ``path`` (None: the one shipped).

    Raises LimitsError, naming file, line and entry, for the first thing that is wrong, and OSError
    where the file cannot be read.
    """
    source = files("resources") / SHIPPED if path is None else path
    return read_limits(source.read_text(encoding="utf-8"), source.name)


def read_limits(text: str, file: str = SHIPPED) -> Mapping[LimitId, Limit]:
    """Every limit of a file's text by its id. Raises LimitsError."""
    limits: dict[LimitId, Limit] = {}
    try:
        for entry in read_entries(text, "limit", file):
            limit = as_type(entry, Limit)
            if limit.id in limits:
                raise entry.error("this id stands twice; each limit has one entry", "id")
            _check(entry, limit)
            limits[limit.id] = limit
        if missing := [known.value for known in LimitId if known not in limits]:
            last = text.count("\n") + 1
            raise EntryError(file, last, f"no entry for {', '.join(missing)}")
    except EntryError as error:
        raise LimitsError(error.file, error.line, error.why, error.entry) from None
    return MappingProxyType(limits)


def _check(entry: Entry, limit: Limit) -> None:
    for name in _WORDS:
        if not getattr(limit, name).strip():
            raise entry.error(f"{name} must not be empty", name)
    if limit.threshold < 0:
        raise entry.error(f"the threshold is at least 0, not {limit.threshold}", "threshold")
    if limit.threshold and not limit.unit:
        raise entry.error("a threshold has a unit", "threshold")
    try:
        placeholders = limit.placeholders
    except ValueError as error:
        raise entry.error(f"the text has unpaired braces: {error}", "text") from None
    for name in placeholders:
        if name not in limit.values:
            allowed = ", ".join(limit.values) or "none"
            raise entry.error(f"{{{name}}} is not a value; allowed are {allowed}", "text")
