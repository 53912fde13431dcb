"""Value objects as JSON text and back, by their types."""

from __future__ import annotations

from functools import cache
from typing import Any

import msgspec

from db.errors import DamagedFile, InvalidRecord


def to_text(value: object) -> str:
    """``value`` (a dataclass of the model, or a tuple) as JSON text.

    InvalidRecord where it holds a character that is no text, as a broken paste may.
    """
    try:
        return msgspec.json.encode(value).decode()
    except UnicodeEncodeError as error:
        raise InvalidRecord(f"The record holds what is no text: {error}.") from error


def from_text(text: str, kind: Any) -> Any:
    """The value of type ``kind`` that ``text`` holds; DamagedFile where it holds something else.

    Fields that the text lacks take their defaults, so that a value object may grow.
    """
    try:
        return _decoder(kind).decode(text)
    except msgspec.MsgspecError as error:
        raise DamagedFile(
            f"A record cannot be read: {error}.", "Open the latest backup, or report this."
        ) from error


@cache
def _decoder(kind: Any) -> msgspec.json.Decoder[Any]:
    return msgspec.json.Decoder(kind)
