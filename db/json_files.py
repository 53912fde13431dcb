"""JSON files of our own: a schema's name and version outside, frozen dataclasses inside.

A file says what it is, so that it can be refused with a clear sentence; a misspelt field is an
error with its path, never silently passed over; defaults are left out on writing.
"""

from __future__ import annotations

import json
import os
from dataclasses import fields, is_dataclass
from datetime import date
from enum import Enum
from pathlib import Path
from typing import Any, TypeVar

import msgspec

from desktop.training.sentence import sentence

Content = TypeVar("Content")

MOST_BYTES = 50_000_000


class InvalidFile(ValueError):
    """The file is not what it should be; the sentence says where (a path like $.phases[0].weeks)
    and what is wrong.
    """


def read_json(path: Path, schema: str, version: int, kind: type[Content]) -> Content:
    """What ``path`` holds, as ``kind`` (a dataclass), if it names ``schema`` and ``version``.

    The file is an object of "schema", "version" and the fields of ``kind``. Raises InvalidFile
    and OSError.
    """
    if path.stat().st_size > MOST_BYTES:
        raise InvalidFile(
            sentence("{file} is too large for a {schema} file", file=path.name, schema=schema)
        )
    try:
        return decode_json(path.read_bytes(), schema, version, kind)
    except InvalidFile as error:
        raise InvalidFile(sentence("{file}: {error}", file=path.name, error=error)) from error


def decode_json(data: bytes, schema: str, version: int, kind: type[Content]) -> Content:
    """As `read_json`, from bytes."""
    try:
        raw = msgspec.json.decode(data.removeprefix(b"\xef\xbb\xbf"))
    except (msgspec.DecodeError, UnicodeDecodeError, RecursionError) as error:
        raise InvalidFile(sentence("this is no JSON ({error})", error=error)) from error
    if not isinstance(raw, dict) or raw.get("schema") != schema:
        raise InvalidFile(
            sentence(
                'this is no {schema} file: it does not begin with "schema": "{schema}"',
                schema=schema,
            )
        )
    found = raw.get("version")
    if isinstance(found, bool) or not isinstance(found, int) or found < 1:
        raise InvalidFile(
            sentence('"version" is a whole number from 1, not {found!r}', found=found)
        )
    if found > version:
        raise InvalidFile(
            sentence(
                "this {schema} file has version {found}; this program reads up to "
                "{version}: update the program",
                schema=schema,
                found=found,
                version=version,
            )
        )
    content = {key: value for key, value in raw.items() if key not in ("schema", "version")}
    try:
        value = msgspec.convert(content, kind)
    except (msgspec.ValidationError, RecursionError) as error:
        raise InvalidFile(str(error)) from error
    _check_no_stranger(content, msgspec.to_builtins(value), "$")
    return value


def encode_json(content: object, schema: str, version: int) -> bytes:
    """The file's bytes: readable JSON in UTF-8, in the order of the fields, without defaults."""
    plain = {"schema": schema, "version": version, **sparse(content)}
    return (json.dumps(plain, ensure_ascii=False, indent=2) + "\n").encode()


def write_json(content: object, schema: str, version: int, path: Path) -> None:
    """Write the file whole or not at all. Raises OSError."""
    unfinished = path.with_name(path.name + ".part")
    try:
        unfinished.write_bytes(encode_json(content, schema, version))
        os.replace(unfinished, path)
    finally:
        unfinished.unlink(missing_ok=True)


def sparse(value: Any) -> Any:
    """A dataclass as plain values for JSON; fields that stand at their default are left out."""
    if is_dataclass(value):
        return {
            field.name: sparse(getattr(value, field.name))
            for field in fields(value)
            if getattr(value, field.name) != field.default
        }
    if isinstance(value, Enum):
        return value.value
    if isinstance(value, date):
        return value.isoformat()
    if isinstance(value, tuple | list | frozenset):
        return [sparse(item) for item in value]
    if isinstance(value, float) and value.is_integer():
        return int(value)
    return value


def _check_no_stranger(given: object, known: object, path: str) -> None:
    if isinstance(given, dict) and isinstance(known, dict):
        for key, value in given.items():
            if key not in known:
                allowed = ", ".join(sorted(known))
                raise InvalidFile(
                    sentence(
                        "unknown field `{key}` at `{path}`: allowed are {allowed}",
                        key=key,
                        path=path,
                        allowed=allowed,
                    )
                )
            _check_no_stranger(value, known[key], f"{path}.{key}")
    elif isinstance(given, list) and isinstance(known, list | tuple):
        for index, (value, other) in enumerate(zip(given, known, strict=False)):
            _check_no_stranger(value, other, f"{path}[{index}]")
