"""Places: what stands around an item of a line, which says what a bare number is."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import Final

from desktop.notes.figures import Chain, Factor
from desktop.notes.items import Item, Kind
from desktop.notes.pieces import Piece, What
from desktop.notes.products import Reader
from desktop.notes.reading import Doubt
from desktop.notes.words import Word

HEAVY: Final = 30
"""A number beyond is rather a load than repetitions."""

_HEAVIER: Final = 1.5
"""So many times the repetitions beside it a number is rather their load."""


@dataclass(frozen=True, slots=True)
class Place:
    """One item among those beside it; ``text`` is all of the notes in small letters."""

    text: str
    items: Sequence[Item]
    at: int

    @property
    def item(self) -> Item:
        """The item itself."""
        return self.items[self.at]

    @property
    def before(self) -> Item | None:
        """The item before it."""
        return self.items[self.at - 1] if self.at else None

    @property
    def after(self) -> Item | None:
        """The item behind it."""
        return self.items[self.at + 1] if self.at + 1 < len(self.items) else None

    @property
    def gap(self) -> str:
        """The text between the item before and this one."""
        return self.text[self.before.span.end : self.item.span.start] if self.before else ""

    @property
    def lead(self) -> Item | None:
        """The item before where only a gap lies between."""
        return self.before if self.before and not self.gap.strip(" \t") else None

    @property
    def follower(self) -> Item | None:
        """The item behind where only a gap lies between."""
        after = self.after
        between = self.text[self.item.span.end : after.span.start] if after else "?"
        return None if between.strip(" \t") else after

    @property
    def in_prose(self) -> bool:
        """Whether words stand on both sides of it."""
        before, follower = self.before, self.follower
        return bool(
            before
            and before.kind is Kind.RUN
            and follower is not None
            and follower.kind is Kind.RUN
        )

    @property
    def load_follows(self) -> bool:
        """Whether one of the next two items is a load by itself."""
        following = self.items[self.at + 1 : self.at + 3]
        return any(each.is_word(Word.BODY) or _lone_unit(each) for each in following)

    @property
    def added_follows(self) -> bool:
        """Whether an added load stands right behind: "bw+5"."""
        chain = self.follower.chain if self.follower else None
        return chain is not None and chain.factors[0].figures[0].sign > 0

    def helped(self, chain: Chain, reader: Reader, by_name: bool) -> Chain:
        """The chain with its load as help, where words beside it or the name say so."""
        first = chain.factors[0]
        if reader.loaded or not first.single or first.figures[0].sign:
            return chain
        told = any(each and each.is_word(Word.HELP) for each in (self.lead, self.follower))
        with_unit = first.figures[0].unit is not None
        if not (told and len(chain.factors) == 1) and not (by_name and with_unit):
            return chain
        return Chain((Factor((replace(first.figures[0], sign=-1),)), *chain.factors[1:]))

    def heads(self, factor: Factor, reader: Reader) -> bool:
        """Whether the number stands before sets, so that it is their load."""
        after = self.after
        gap = self.text[factor.span.end : after.span.start] if after else ""
        if after is None or after.chain is None or gap.strip(" \t:-–—|="):
            return False
        following = after.chain.factors[0]
        if len(after.chain.factors) > 1:
            return not any(one.figures[0].unit for one in after.chain.factors)
        if not reader.loaded:
            return ":" in gap
        several = len(following.figures) > 1 or ":" in gap or after.chain.crossed
        without_unit = following.figures[0].unit is None
        return several and without_unit and _heavier(factor, following)

    def reps_for_load(self) -> bool:
        """Whether a load stands right behind a number: "5 @ 80 kg", "5 80 kg"."""
        after = self.after
        return after is not None and (after.is_word(Word.AT) or _lone_unit(after))

    @property
    def ends_sentence(self) -> bool:
        """Whether a new sentence of words begins behind it: no product is in there."""
        clause: list[Item] = []
        for item in self.items[self.at + 1 :]:
            if item.kind is Kind.STOP:
                break
            clause.append(item)
        products = any(item.chain and len(item.chain.factors) > 1 for item in clause)
        return bool(clause) and clause[0].kind is Kind.RUN and not products


def load_and_list(factor: Factor, reader: Reader) -> Piece | None:
    """ "60 8 8 7" is rather a load and three sets than four sets; asked."""
    if not reader.loaded or len(factor.figures) < 3:
        return None
    rest = Factor(factor.figures[1:], factor.joint)
    load_g = reader.load(factor.figures[0])
    work = reader.amounts(rest, factor.span)
    likely = factor.first > HEAVY and _heavier(factor, rest)
    if not likely or load_g is None or work.what is not What.WORK:
        return None
    sets = tuple(replace(one, load_g=load_g) for one in work.sets)
    plain = reader.amounts(factor, factor.span)
    others = (plain.sets,) if plain.sets else ()
    return replace(work, sets=sets, counted=True, doubt=Doubt.ORDER, others=others)


def _heavier(load: Factor, amounts: Factor) -> bool:
    return float(load.first) > _HEAVIER * float(max(amounts.values))


def _lone_unit(item: Item) -> bool:
    chain = item.chain
    return (
        chain is not None
        and len(chain.factors) == 1
        and chain.factors[0].figures[0].unit is not None
    )
