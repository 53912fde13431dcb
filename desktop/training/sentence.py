"""Sentences: English text that remembers how it was made, so that a screen can say it otherwise.

Store, model and use cases speak English: in errors, in doubts about a line of a table, in the names
of drafted days. `sentence` keeps pattern and values beside the text; views.language translates the
pattern and fills the values in again. To everybody else it is a plain string.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from enum import StrEnum
from functools import cache
from typing import Final

_PLACES: Final = ("first", "second", "third", "fourth", "fifth", "sixth")


class Case(StrEnum):
    """How a text is written where it stands: as it is, begun with a capital, or all small (in
    languages that write names of things small).
    """

    AS_IT_IS = ""
    CAPITAL = "capital"
    SMALL = "small"


class Sentence(str):
    """A text with its ``pattern``, the ``values`` of its placeholders, and how it is written."""

    __slots__ = ("case", "pattern", "values")

    pattern: str
    values: Mapping[str, object]
    case: Case

    def begun(self) -> Sentence:
        """The same with a capital letter at its beginning."""
        return _made(self.pattern, self.values, Case.CAPITAL)

    def small(self) -> Sentence:
        """The same in small letters."""
        return _made(self.pattern, self.values, Case.SMALL)


def sentence(pattern: str, /, **values: object) -> Sentence:
    """The text of ``pattern`` (a literal, so that it is found for translation) with ``values`` in
    its {placeholders}; a value may be a sentence itself.
    """
    return _made(pattern, values, Case.AS_IT_IS)


def enumerated(parts: Iterable[object]) -> Sentence:
    """Parts one after the other, at most six: "squat, push, pull-up"."""
    values = dict(zip(_PLACES, parts, strict=False))
    return _made(", ".join(f"{{{name}}}" for name in values), values, Case.AS_IT_IS)


@cache
def system_words() -> frozenset[Sentence]:
    """What the system says most often when it refuses a file, in its own words."""
    return frozenset(
        (
            sentence("No space left on device"),
            sentence("No such file or directory"),
            sentence("Permission denied"),
            sentence("Operation not permitted"),
            sentence("Read-only file system"),
            sentence("Input/output error"),
            sentence("Is a directory"),
            sentence("File exists"),
            sentence("File too large"),
        )
    )


def sentence_of(error: BaseException) -> str:
    """What an error says, as a `Sentence` where it was raised with one."""
    said = error.args[0] if error.args else ""
    return said if isinstance(said, Sentence) else str(error)


def _made(pattern: str, values: Mapping[str, object], case: Case) -> Sentence:
    text = pattern.format(**values)
    if case is Case.CAPITAL:
        text = text[:1].upper() + text[1:]
    elif case is Case.SMALL:
        text = text.lower()
    made = Sentence(text)
    made.pattern, made.values, made.case = pattern, values, case
    return made
