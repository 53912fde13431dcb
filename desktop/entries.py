"""Entries of a data file that ships with the program, and the lines they stand on.

The reader of tables (``tomllib``) keeps no line numbers; whoever edits a data file needs them. So
the text is looked through once more for the lines on which entries, their fields and the items of
their lists begin.
"""

from __future__ import annotations

import dataclasses
import re
import tomllib
from dataclasses import dataclass, field
from enum import Enum
from typing import Any, Final, TypeVar, get_args, get_type_hints

import msgspec

T = TypeVar("T")

_PARSE_LINE: Final = re.compile(r"\(at line (\d+)")
_FIELD: Final = re.compile(r"\s*([A-Za-z_][A-Za-z0-9_]*)\s*=")
_ITEM: Final = re.compile(r"\s*\{")
_PATH: Final = re.compile(r" - at `\$\.?([A-Za-z_]*)(?:\[(\d+)\])?(.*)`$")


class EntryError(ValueError):
    """Something in a data file that cannot be taken: which file, line and entry, and why."""

    def __init__(self, file: str, line: int, why: str, entry: str = "") -> None:
        named = f"{entry}: " if entry else ""
        super().__init__(f"{file}, line {line}: {named}{why}")
        self.file = file
        self.line = line
        self.why = why
        self.entry = entry


@dataclass(slots=True)
class Entry:
    """One ``[[name]]`` of a file: its values as read, and the lines of its parts (from 1).

    ``fields`` holds the line of each field, ``items`` those of the list items written one a line.
    """

    file: str
    line: int
    values: dict[str, Any] = field(default_factory=dict)
    fields: dict[str, int] = field(default_factory=dict)
    items: dict[str, list[int]] = field(default_factory=dict)

    @property
    def name(self) -> str:
        """What the entry calls itself: its key or id."""
        return str(self.values.get("key") or self.values.get("id") or "")

    def line_of(self, name: str, item: int | None = None) -> int:
        """The line of a field, or of one item of its list; the entry's own where not found."""
        lines = self.items.get(name, [])
        if item is not None and len(lines) == len(self.values[name]):
            return lines[item]
        return self.fields.get(name, self.line)

    def error(self, why: str, name: str = "", item: int | None = None) -> EntryError:
        """An error at a field (or at the entry itself)."""
        return EntryError(self.file, self.line_of(name, item), why, self.name)


def read_entries(text: str, table: str, file: str) -> tuple[Entry, ...]:
    """All ``[[table]]`` entries of a file's text, in order. Raises EntryError."""
    try:
        values = tomllib.loads(text)
    except tomllib.TOMLDecodeError as error:
        found = _PARSE_LINE.search(str(error))
        line = int(found[1]) if found else text.count("\n") + 1
        raise EntryError(file, line, str(error)) from None
    read = values.pop(table, [])
    entries = _located(text, table, file)
    if values or not isinstance(read, list) or len(read) != len(entries):
        raise EntryError(file, 1, f"every entry stands under a line [[{table}]] of its own")
    for entry, each in zip(entries, read, strict=True):
        entry.values = each
    return tuple(entries)


def as_type(entry: Entry, kind: type[T]) -> T:
    """The entry as the dataclass ``kind``. Raises EntryError, naming the line of what is wrong."""
    try:
        value = msgspec.convert(entry.values, kind)
    except msgspec.ValidationError as error:
        why, name, item = _explained(str(error))
        raise entry.error(why + _allowed(kind, name, why), name, item) from None
    _check_names(entry, value)
    return value


def _located(text: str, table: str, file: str) -> list[Entry]:
    header = re.compile(rf"\s*\[\[\s*{re.escape(table)}\s*\]\]")
    entries: list[Entry] = []
    name = ""
    for number, line in enumerate(text.splitlines(), start=1):
        if header.match(line):
            entries.append(Entry(file, number))
        elif entries and (found := _FIELD.match(line)):
            name = found[1]
            entries[-1].fields[name] = number
        elif entries and _ITEM.match(line):
            entries[-1].items.setdefault(name, []).append(number)
    return entries


def _check_names(entry: Entry, value: Any) -> None:
    """Refuse names that the converter passed over: a slip of the pen must not go unseen."""
    for name, given in entry.values.items():
        if name not in _field_names(value):
            raise entry.error(_unknown(name, value), name)
        parts = given if isinstance(given, list) else [given]
        taken = getattr(value, name)
        for item, (raw, made) in enumerate(zip(parts, _listed(taken), strict=False)):
            if unknown := _unknown_within(raw, made):
                raise entry.error(f"{name}: {unknown}", name, item)


def _unknown_within(raw: object, made: object) -> str:
    if not isinstance(raw, dict):
        return ""
    for name, given in raw.items():
        if name not in _field_names(made):
            return _unknown(name, made)
        if unknown := _unknown_within(given, getattr(made, name)):
            return unknown
    return ""


def _listed(value: object) -> tuple[object, ...]:
    return value if isinstance(value, tuple) else (value,)


def _field_names(value: Any) -> list[str]:
    return [each.name for each in dataclasses.fields(value)]


def _unknown(name: str, value: object) -> str:
    return f"{name!r} is not a field; allowed are {', '.join(_field_names(value))}"


def _explained(message: str) -> tuple[str, str, int | None]:
    """What is wrong, in which field and which item of it, from the converter's message."""
    found = _PATH.search(message)
    if found is None:
        return message, "", None
    name, item, rest = found.groups()
    where = f"{name}{f'[{int(item) + 1}]' if item else ''}{rest}"
    return f"{where}: {message[: found.start()]}", name, int(item) if item else None


def _allowed(kind: type, name: str, why: str) -> str:
    """The values an enumeration would have allowed, for the message."""
    if "Invalid enum value" not in why:
        return ""
    hint = get_type_hints(kind)[name]
    listed = (each for each in (hint, *get_args(hint)) if isinstance(each, type))
    return "".join(
        f"; allowed are {', '.join(str(member.value) for member in each)}"
        for each in listed
        if issubclass(each, Enum)
    )
