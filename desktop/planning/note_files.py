"""Notes as a file: any text."""

from __future__ import annotations

from pathlib import Path
from typing import Final

from db.log_files import UnreadableLog, decode
from desktop.training.sentence import sentence

MOST_BYTES: Final = 1_000_000


class CannotRead(ValueError):
    """The file holds no notes; the sentence says why."""


def read_note_file(path: Path) -> str:
    """The text in ``path``. Raises CannotRead and OSError."""
    if path.stat().st_size > MOST_BYTES:
        raise CannotRead(sentence("{file} is too large for notes: at most 1 MB", file=path.name))
    try:
        text = decode(path.read_bytes())
    except UnreadableLog:
        raise CannotRead(sentence("{file} is no text", file=path.name)) from None
    return text.replace("\r\n", "\n").replace("\r", "\n")
