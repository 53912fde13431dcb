"""Segments: which items of a line belong to which name."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from desktop.notes.figures import Role
from desktop.notes.items import Item, Kind
from desktop.notes.words import Word


@dataclass(frozen=True, slots=True)
class Segment:
    """A name (None: none was found) and the items that belong to it, in order."""

    name: Item | None
    items: tuple[Item, ...]


def segments_of(text: str, items: Sequence[Item]) -> list[Segment]:
    """Part the items of one line by the names among them.

    Names go before their work ("squat 3x5"), unless the line begins with work and a name stands
    right behind it ("3x5 squat"): then each part between commas has its name.
    """
    at_names = [at for at, item in enumerate(items) if item.named]
    if not at_names:
        return [Segment(None, tuple(items))]
    scheme = tuple(item for item in items[: at_names[0]] if item.is_word(Word.SCHEME))
    if scheme:  # "2 rounds: ..." says something of all that follows
        rest = segments_of(text, [item for item in items[at_names[0] - 1 :] if item not in scheme])
        return [Segment(one.name, (*scheme, *one.items)) for one in rest]
    if _work_first(text, items, at_names[0]):
        return [_with_name(part) for part in _parts_with_names(text, items)]
    before = tuple(items[: at_names[0]])
    if any(item.kind is Kind.CHAIN for item in before):
        head = [Segment(None, before)]
        before = ()
    else:
        head = []
    segments = head
    for number, at in enumerate(at_names):
        end = at_names[number + 1] if number + 1 < len(at_names) else len(items)
        own = _without_and(items[at + 1 : end]) if end < len(items) else tuple(items[at + 1 : end])
        segments.append(Segment(items[at], (*before, *own)))
        before = ()
    return segments


def is_strong(item: Item, *, weak: bool = False) -> bool:
    """Whether an item is surely work: a product, a load, a list, sides. ``weak``: any number."""
    if item.kind is Kind.SIDES:
        return True
    if item.chain is None:
        return item.is_word(Word.WARM_UP, Word.BODY, Word.SAME) and weak
    factors = item.chain.factors
    if any(factor.role is Role.FAR for factor in factors):
        return False
    if weak or len(factors) > 1:
        return True
    return factors[0].role in (Role.REPS, Role.SETS) or len(factors[0].figures) > 2


def _work_first(text: str, items: Sequence[Item], name_at: int) -> bool:
    first = next((item for item in items if not _small(item)), None)
    if first is None or first.kind is not Kind.CHAIN or not name_at:
        return False
    before = items[name_at - 1]
    gap = text[before.span.end : items[name_at].span.start]
    return before.kind is Kind.CHAIN and not gap.strip()


def _small(item: Item) -> bool:
    """Words that lead up to work: "did 3x12 push ups"."""
    return item.kind is Kind.RUN and not item.named and len(item.run) == 1


def _parts_with_names(text: str, items: Sequence[Item]) -> list[list[Item]]:
    """The items parted at separators so that each part has one name; the rest joins the part
    before.
    """
    parts: list[list[Item]] = [[]]
    for item in items:
        before = parts[-1][-1] if parts[-1] else None
        gap = text[before.span.end : item.span.start] if before else ""
        parting = "," in gap or item.kind is Kind.STOP or item.is_word(Word.AND, Word.WORKING)
        if parting and any(one.named for one in parts[-1]):
            parts.append([])
        if not item.is_word(Word.AND):
            parts[-1].append(item)
    whole: list[list[Item]] = []
    for part in parts:
        if whole and not any(one.named for one in part):
            whole[-1] += part
        elif part:
            whole.append(part)
    return whole


def _with_name(part: Sequence[Item]) -> Segment:
    name = next((item for item in part if item.named), None)
    rest = tuple(item for item in part if item is not name and not (item.named or _small(item)))
    return Segment(name, rest)


def _without_and(items: Sequence[Item]) -> tuple[Item, ...]:
    """The items without what leads over to the next name."""
    kept = list(items)
    while kept and kept[-1].is_word(Word.AND, Word.WORKING):
        kept.pop()
    return tuple(kept)
