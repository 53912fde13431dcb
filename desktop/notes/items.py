"""Items: one line of notes cut into names, figures, ratings and words that matter."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from decimal import Decimal
from enum import StrEnum
from typing import Final

from desktop.notes import words
from desktop.notes.figures import Chain, chains_at
from desktop.notes.names import Names, plain
from desktop.notes.reading import Span
from desktop.notes.words import Word


class Kind(StrEnum):
    """What an item is."""

    RUN = "run"
    """Words beside each other, among them perhaps a name."""
    CHAIN = "chain"
    SIDES = "sides"
    RPE = "rpe"
    RIR = "rir"
    PAIN = "pain"
    NOTE = "note"
    WORD = "word"
    STOP = "stop"


@dataclass(frozen=True, slots=True)
class Item:
    """One item. ``run`` and ``named`` (whether a known name is among the words) belong to RUN,
    ``numbers`` to sides, ratings and pain.
    """

    kind: Kind
    span: Span
    chain: Chain | None = None
    word: Word | None = None
    numbers: tuple[Decimal, ...] = ()
    ranged: bool = False
    run: tuple[tuple[str, Span], ...] = ()
    named: bool = False

    def is_word(self, *wanted: Word) -> bool:
        """Whether it is one of these words."""
        return self.word in wanted


_LETTERS: Final = re.compile(r"[^\W\d_][\w'’]*")
_WORD_GAP: Final = re.compile(r"[ \t]*[-’'/]?[ \t]*|[ \t]*")
_STANDS_ON: Final = re.compile(
    r"(?:on|off|from|auf|en|sobre)(?:[ \t]+(?:the|a|an|my|dem|der|einem|la|el|una?))?[ \t]*$"
)
_STOPS: Final = ".;!?\n"
_MOST_IN_NAME: Final = 8


def lowered(text: str) -> str:
    """The text in small letters, every character in its place."""
    return "".join(low if len(low := each.lower()) == 1 else each for each in text)


def items_of(text: str, start: int, end: int, names: Names) -> list[Item]:
    """The items of ``text`` (in small letters) between ``start`` and ``end``, in order."""
    line = text[:end]
    return _with_runs(line, list(_pieces(line, start, names)))


def _pieces(line: str, at: int, names: Names) -> Iterator[Item]:
    while at < len(line):
        if line[at].isspace():
            at += 1
            continue
        item, after = _piece_at(line, at, names)
        if isinstance(item, list):
            yield from item
        elif item is not None:
            yield item
        at = max(after, at + 1)


def _piece_at(line: str, at: int, names: Names) -> tuple[Item | list[Item] | None, int]:
    begins = at == 0 or not line[at - 1].isalnum()
    letters = _LETTERS.match(line, at) if begins else None
    if letters and not _STANDS_ON.search(line, max(0, at - 16), at):
        found = _name_at(line, at, names)
        if found is not None:
            return found, found.span.end
    if begins and (told := _told_at(line, at)):
        return told, told.span.end
    if begins or line[at] in "+-−x×@":
        chains, end = chains_at(line, at)
        if chains:
            return [Item(Kind.CHAIN, chain.span, chain=chain) for chain in chains], end
    if letters:
        span = Span(at, letters.end())
        return Item(Kind.RUN, span, run=((letters[0], span),)), letters.end()
    if line[at] in _STOPS:
        return Item(Kind.STOP, Span(at, at + 1)), at + 1
    digits = re.compile(r"[0-9][\w.,]*").match(line, at)
    return None, digits.end() if digits else at + 1


def _name_at(line: str, at: int, names: Names) -> Item | None:
    run: list[tuple[str, Span]] = []
    place = at
    while len(run) < _MOST_IN_NAME and (found := _LETTERS.match(line, place)):
        run.append((found[0], Span(found.start(), found.end())))
        gap = _WORD_GAP.match(line, found.end())
        place = gap.end() if gap else found.end()
        if place >= len(line) or place == found.end():
            break
    known = names.exact([plain(word) for word, _ in run], 0)
    if known is None:
        return None
    taken = tuple(run[: known[0]])
    return Item(Kind.RUN, taken[0][1].to(taken[-1][1]), run=taken, named=True)


def _told_at(line: str, at: int) -> Item | None:
    for kind, pattern in (
        (Kind.PAIN, words.PAIN),
        (Kind.NOTE, words.REST),
        (Kind.NOTE, words.TEMPO),
        (Kind.SIDES, words.SIDES),
        (Kind.RPE, words.RPE),
        (Kind.RIR, words.RIR),
    ):
        found = pattern.match(line, at)
        if found is not None and found.end() > at:
            return _told(kind, found)
    for word, pattern in words.WORDS:
        found = pattern.match(line, at)
        if found is not None:
            return Item(Kind.WORD, Span(at, found.end()), word=word)
    return None


def _told(kind: Kind, found: re.Match[str]) -> Item:
    span = Span(found.start(), found.end())
    parts = {name: part for name, part in found.groupdict().items() if part is not None}
    if kind is Kind.SIDES:
        left, right = (parts[name] for name in sorted(parts))
        return Item(kind, span, numbers=(Decimal(left), Decimal(right)))
    text = next(iter(parts.values()), "")
    numbers = tuple(Decimal(one.replace(",", ".")) for one in words.RATING.findall(text))
    ranged = len(numbers) == 2 and any(mark in text for mark in "-–")
    return Item(kind, span, numbers=numbers, ranged=ranged)


def _with_runs(line: str, pieces: Sequence[Item]) -> list[Item]:
    """Words beside each other as one run."""
    items: list[Item] = []
    for piece in pieces:
        before = items[-1] if items else None
        if (
            piece.kind is Kind.RUN
            and before is not None
            and before.kind is Kind.RUN
            and (gap := _WORD_GAP.match(line, before.span.end))
            and gap.end() == piece.span.start
        ):
            items[-1] = Item(
                Kind.RUN,
                before.span.to(piece.span),
                run=(*before.run, *piece.run),
                named=before.named or piece.named,
            )
        else:
            items.append(piece)
    return items
