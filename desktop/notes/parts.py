"""Parts: the whole text, cut into what was taken for what."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping

from desktop.notes.reading import Part, PartKind, Span
from desktop.notes.words import NEUTRAL


def parts_of(text: str, marks: Mapping[Span, PartKind]) -> tuple[Part, ...]:
    """Parts that together are all of ``text``: the marked stretches, and between them what was not
    read. A stretch marked again keeps its later mark where both meet.
    """
    kinds: list[PartKind | None] = [None] * len(text)
    for span, kind in marks.items():
        kinds[span.start : span.end] = [kind] * (span.end - span.start)
    return tuple(_parts(text, kinds))


def _parts(text: str, kinds: list[PartKind | None]) -> Iterator[Part]:
    start = 0
    while start < len(text):
        end = start
        while end < len(text) and kinds[end] is kinds[start]:
            end += 1
        kind = kinds[start]
        if kind is not None:
            yield Part(kind, Span(start, end))
        else:
            yield from _unread(text, start, end)
        start = end


def _unread(text: str, start: int, end: int) -> Iterator[Part]:
    """Words that nothing came of, line by line and without the gaps around them."""
    at = start
    for line in text[start:end].splitlines(keepends=True):
        words = [place for place, each in enumerate(line) if each.isalnum()]
        if words and not NEUTRAL.issuperset(re.findall(r"\w+", line.casefold())):
            first, last = at + words[0], at + words[-1] + 1
            if first > at:
                yield Part(PartKind.PLAIN, Span(at, first))
            yield Part(PartKind.UNREAD, Span(first, last))
            if last < at + len(line):
                yield Part(PartKind.PLAIN, Span(last, at + len(line)))
        else:
            yield Part(PartKind.PLAIN, Span(at, at + len(line)))
        at += len(line)
