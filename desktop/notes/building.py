"""Building one entry: items beside an exercise become groups of sets, in the order written.

A load before sets holds for all that follow ("100 kg: 3x5, 2x3"), one behind them for these
("3x5 100 kg, 2x8 80"). What fits nowhere is asked about or stays unread.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal
from typing import Final

from desktop.notes.figures import Chain, Factor
from desktop.notes.groups import Answers, Asked, Group
from desktop.notes.items import Item, Kind
from desktop.notes.known import Known, KnownExercise
from desktop.notes.products import Piece, Reader, What
from desktop.notes.reading import Alternative, Doubt, Entry, PartKind, Question, ReadSet, Span
from desktop.notes.variations import set_up_of
from desktop.notes.words import Word
from desktop.training.quantities import Unit, grams

HEAVY: Final = 30
"""A number beyond is rather a load than repetitions."""
LIGHT: Final = 10
"""A number up to this beside @ or behind sets may be a rating or another set."""


class Building:
    """One entry as it grows, item by item."""

    def __init__(
        self,
        exercise: KnownExercise | None,
        name: Span | None,
        known: Known,
        text: str,
        marks: dict[Span, PartKind],
        *,
        helped: bool = False,
    ) -> None:
        self.exercise = exercise
        self.name = name
        self.groups: list[Group] = []
        self.variation: str | None = None
        self.questions: list[Question] = []
        self._known = known
        self._text = text
        self._marks = marks
        self._helped = helped
        self._reader = Reader(exercise, known.unit)
        self._heading: tuple[int, Span] | None = None
        self._heading_used = True
        self._heading_unsure = False
        self._unit: Unit | None = None
        self._count = 0
        self._warm = False
        self._fresh = 0
        self._pain = 0
        self._notes: list[Span] = []
        self._doubts: list[tuple[Doubt, Span]] = []
        self._unloaded = False

    # --- items --------------------------------------------------------------------------------

    def take(self, items: Sequence[Item]) -> None:
        """Take the items of one line (or a part of it) that belong to this entry."""
        self._warm = False
        self._fresh = len(self.groups)
        prose = False
        for at, item in enumerate(items):
            if item.kind is Kind.STOP:
                prose = self._is_prose(items[at + 1 :])
            elif prose and item.kind not in (Kind.PAIN, Kind.NOTE):
                continue
            else:
                self._take(items, at)

    def _take(self, items: Sequence[Item], at: int) -> None:
        item = items[at]
        match item.kind:
            case Kind.CHAIN:
                self._chain(items, at)
            case Kind.SIDES:
                self._sides(item)
            case Kind.RPE | Kind.RIR:
                self._rating(item.numbers, item, rpe=item.kind is Kind.RPE)
            case Kind.PAIN:
                self._mark(item.span, PartKind.NOTE)
                self._pain = max(self._pain, *(int(one) for one in item.numbers), 0)
                self._notes.append(item.span)
            case Kind.NOTE:
                self._mark(item.span, PartKind.NOTE)
                self._notes.append(item.span)
            case Kind.RUN:
                self._run(item)
            case Kind.WORD:
                self._word(items, at)

    def _is_prose(self, items: Sequence[Item]) -> bool:
        """Whether a new sentence is words: it begins with some and holds no product."""
        clause: list[Item] = []
        for item in items:
            if item.kind is Kind.STOP:
                break
            clause.append(item)
        products = any(item.chain and len(item.chain.factors) > 1 for item in clause)
        return bool(clause) and clause[0].kind is Kind.RUN and not products

    def _word(self, items: Sequence[Item], at: int) -> None:
        item = items[at]
        self._mark(item.span, PartKind.WORK)
        match item.word:
            case Word.WARM_UP:
                self._warm_up(items, at)
            case Word.WORKING:
                self._warm = False
            case Word.BODY:
                self._take_load((0,), item.span, sure=True)
            case Word.EACH:
                if self.groups:
                    self.groups[-1].both_sides(item.span)
            case Word.SCHEME:
                self._doubts.append((Doubt.SCHEME, item.span))
            case Word.BAND:
                if self.exercise is not None and self.exercise.bodyweight:
                    self._unloaded = True
                    self._doubts.append((Doubt.LOAD, item.span))
            case Word.SAME:
                self._again(item.span)
            case _:
                pass

    def _warm_up(self, items: Sequence[Item], at: int) -> None:
        """What follows is a warm-up; in brackets, or at the end, what stands before."""
        before = self._text[: items[at].span.start].rstrip()
        last = not any(item.kind in (Kind.CHAIN, Kind.SIDES) for item in items[at + 1 :])
        if (before.endswith("(") or last) and len(self.groups) > self._fresh:
            begin = -1 if before.endswith("(") else self._fresh
            for group in self.groups[begin:]:
                group.sets = [replace(one, warm_up=True) for one in group.sets]
        else:
            self._warm = True

    def _run(self, item: Item) -> None:
        if self.exercise is None:
            return
        told = set_up_of(
            self.exercise, [word for word, _ in item.run], self._known, beside_name=False
        )
        if told.key is not None:
            for place in sorted(told.used):
                self._mark(item.run[place][1], PartKind.WORK)
            self.set_up(told.key)
        elif told.unclear:
            self._doubts.append((Doubt.VARIATION, item.span))

    def set_up(self, key: str) -> None:
        """The variation of what was noted so far and, where none has one, of what follows."""
        for group in self.groups:
            group.sets = [replace(one, variation=one.variation or key) for one in group.sets]
        self.variation = self.variation or key

    def _again(self, span: Span) -> None:
        """The last sets again: proposed, and asked about."""
        if not self.groups:
            self.questions.append(Question(Doubt.REPEAT, span))
            return
        again = Group(span, list(self.groups[-1].sets), counted=True, own_load=True)
        again.asked.append(Asked(Doubt.REPEAT, span))
        self.groups.append(again)

    # --- figures ------------------------------------------------------------------------------

    def _chain(self, items: Sequence[Item], at: int) -> None:
        item = items[at]
        chain = item.chain
        assert chain is not None, "a chain has one"
        lead = items[at - 1].word if at and self._beside(items[at - 1], item) else None
        stands = self._load_stands(items, at)
        piece = self._reader.piece(self._signed(chain, items, at), stands)
        if lead is Word.AT and self._at(piece, items, at):
            return
        taken = False
        match piece.what:
            case What.WORK:
                taken = self._work(piece)
            case What.LOAD:
                self._unit = piece.unit or self._unit
                taken = self._take_load(piece.loads, piece.span, sure=True, count=piece.count)
            case What.COUNT:
                taken = self._take_count(piece.count)
            case What.BARE:
                taken = self._bare(piece, items, at)
            case What.NOTHING:
                pass
        if taken:
            self._mark(item.span, PartKind.WORK)
        else:
            self._left_over(items, at)

    def _signed(self, chain: Chain, items: Sequence[Item], at: int) -> Chain:
        """The chain with its load as help where words say so."""
        first = chain.factors[0]
        if self._reader.loaded or not first.single or first.figures[0].sign:
            return chain
        beside = [
            items[near]
            for near in (at - 1, at + 1)
            if 0 <= near < len(items) and self._beside(items[near], items[at])
        ]
        told = any(item.is_word(Word.HELP) for item in beside)
        with_unit = first.figures[0].unit is not None
        if not (told and len(chain.factors) == 1) and not (self._helped and with_unit):
            return chain
        helped = replace(first.figures[0], sign=-1)
        return Chain((Factor((helped,)), *chain.factors[1:]), chain.crossed)

    def _load_stands(self, items: Sequence[Item], at: int) -> bool:
        if self._heading is not None:
            return True
        following = items[at + 1 : at + 3]
        return any(
            each.chain is not None
            and len(each.chain.factors) == 1
            and each.chain.factors[0].figures[0].unit is not None
            for each in following
        ) or any(each.is_word(Word.BODY) for each in following)

    def _at(self, piece: Piece, items: Sequence[Item], at: int) -> bool:
        """What stands behind @ (or "at"); whether it was dealt with."""
        if piece.bare is None or not piece.bare.single:
            return False
        item, value = items[at], piece.bare.first
        sign = self._text[items[at - 1].span.start] == "@"
        stands = self.groups and not self.groups[-1].lacks_load
        if sign and stands and value <= LIGHT:
            if self.groups[-1].rated and len(self.groups[-1].sets) > 1:
                return False
            return self._rating((value,), item, rpe=True)
        load_g = self._reader.load(piece.bare.figures[0])
        if load_g is None or (sign and stands):
            return False
        rating = value <= LIGHT and 2 * value == int(2 * value)
        sure = not sign and value > LIGHT
        if not self._take_load((load_g,), item.span, sure=True):
            return False
        self._mark(item.span, PartKind.WORK)
        if not sure and self.groups:
            self.groups[-1].ask(Doubt.AT, item.span, loads_g=(load_g, *((0,) if rating else ())))
        return True

    def _work(self, piece: Piece) -> bool:
        group = Group.of(piece)
        if self._count and group.multiply(self._count):
            self._count = 0
        if self._warm:
            group.sets = [replace(one, warm_up=True) for one in group.sets]
        if self.variation is not None:
            group.sets = [replace(one, variation=self.variation) for one in group.sets]
        if group.lacks_load and self._heading is not None:
            load_g, span = self._heading
            group.load([load_g], group.span)
            self._heading_used = True
            if self._heading_unsure:
                group.ask(Doubt.LOAD, span)
        self._unit = piece.unit or self._unit
        self.groups.append(group)
        return True

    def _take_load(
        self, loads_g: tuple[int, ...], span: Span, *, sure: bool, count: int = 0
    ) -> bool:
        """A load: for the sets before it where they lack one, else for what follows."""
        last = self.groups[-1] if self.groups else None
        if last is not None and last.lacks_load:
            if not last.load(loads_g, span):
                return False
            if count and not last.multiply(count):
                return False
            if not sure:
                last.ask(Doubt.LOAD, span)
            return True
        if len(loads_g) != 1:
            return False
        self._heading = (loads_g[0], span)
        self._heading_used = loads_g[0] == 0
        self._heading_unsure = not sure
        self._count = count or self._count
        return True

    def _take_count(self, count: int) -> bool:
        if self.groups and self.groups[-1].multiply(count):
            return True
        self._count = count
        return not self.groups

    def _bare(self, piece: Piece, items: Sequence[Item], at: int) -> bool:
        """Numbers without a word: a load or amounts, by what stands beside them."""
        factor = piece.bare
        assert factor is not None, "a bare piece has its numbers"
        if self._in_prose(items, at):
            return False
        before, after = self._gap_before(items, at), self._next(items, at)
        last = self.groups[-1] if len(self.groups) > self._fresh else None
        if last is not None and last.lacks_load and self._heading is None:
            return self._behind_sets(factor, last, before, items[at])
        if factor.single and after is not None and self._heads(factor, after):
            load_g = self._reader.load(factor.figures[0])
            sure = factor.first > LIGHT and self._reader.loaded
            return load_g is not None and self._bare_load((load_g,), factor, sure)
        split = self._load_and_list(factor)
        if split is not None:
            return self._work(split)
        return self._amounts(factor, items, at)

    def _behind_sets(self, factor: Factor, last: Group, gap: str, item: Item) -> bool:
        """A number behind sets without a load: their load, or more sets."""
        if factor.either is not None and self._reader.loaded:
            factor = Factor((factor.either,))
        loads = [self._reader.load(figure) for figure in factor.figures]
        fits = len(loads) in (1, len(last.sets)) and None not in loads
        many = min(factor.values) > HEAVY
        if self._reader.loaded and fits and (factor.single or many):
            sure = factor.first > LIGHT and ("," not in gap or factor.first > HEAVY)
            return self._bare_load(tuple(each or 0 for each in loads), factor, sure)
        if self._reader.loaded or "," in gap or ";" in gap or not factor.single:
            work = self._reader.amounts(factor, item.span)
            if work.what is not What.WORK:
                return False
            added = self._work(work)
            counted = last.counted or self._reader.loaded
            if counted:
                self.groups[-1].ask(Doubt.AMOUNT, item.span)
            return added
        if loads[0] is None:
            return False
        last.ask(Doubt.LOAD, item.span, loads_g=(loads[0], 0))
        return last.load([loads[0]], item.span)

    def _bare_load(self, loads_g: tuple[int, ...], factor: Factor, sure: bool) -> bool:
        """A load without unit: the trainee's; asked where the other unit went before."""
        span = factor.span
        if not self._take_load(loads_g, span, sure=sure):
            return False
        if self._unit is not None and self._unit is not self._known.unit and factor.single:
            other = grams(factor.first, self._unit)
            group = self.groups[-1] if self.groups and self.groups[-1].span.end >= span.end else None
            if group is not None:
                group.ask(Doubt.UNIT, span, loads_g=(loads_g[0], other))
            else:
                self._heading_unsure = True
        return True

    def _heads(self, factor: Factor, after: Item) -> bool:
        """Whether a number stands before sets, so that it is their load."""
        gap = self._text[factor.span.end : after.span.start]
        chain = after.chain
        if chain is None or gap.strip(" \t:-–—|=@") or "@" in gap:
            return False
        following = chain.factors[0]
        if len(chain.factors) > 1:
            return not any(one.figures[0].unit for one in chain.factors)
        if not self._reader.loaded:
            return ":" in gap
        largest = max(following.values)
        lists = len(following.figures) > 1 or ":" in gap or chain.crossed
        return following.figures[0].unit is None and lists and factor.first > 1.5 * float(largest)

    def _load_and_list(self, factor: Factor) -> Piece | None:
        """ "60 8 8 7" is rather a load and three sets than four sets; asked."""
        if not self._reader.loaded or self._heading is not None or len(factor.figures) < 3:
            return None
        rest = Factor(factor.figures[1:], factor.joint)
        if factor.first <= HEAVY or factor.first <= 1.5 * float(max(rest.values)):
            return None
        load_g = self._reader.load(factor.figures[0])
        work = self._reader.amounts(rest, factor.span)
        if load_g is None or work.what is not What.WORK:
            return None
        sets = tuple(replace(one, load_g=load_g) for one in work.sets)
        plain = self._reader.amounts(factor, factor.span)
        return replace(work, sets=sets, counted=True, doubt=Doubt.ORDER, others=(plain.sets,))

    def _amounts(self, factor: Factor, items: Sequence[Item], at: int) -> bool:
        item = items[at]
        if factor.single and self._reader.loaded and not self._amount_fits(items, at):
            return False
        work = self._reader.amounts(factor, item.span)
        if work.what is not What.WORK:
            return False
        added = self._work(work)
        if factor.either is not None and self._reader.loaded:
            stands = self._heading is not None
            if not stands:
                self.groups[-1].ask(Doubt.DECIMAL, item.span)
        follows = items[at + 1] if at + 1 < len(items) else None
        if factor.single and follows and follows.kind is Kind.RUN and self._beside(follows, item):
            self.groups[-1].ask(Doubt.AMOUNT, item.span)
        return added

    def _amount_fits(self, items: Sequence[Item], at: int) -> bool:
        """Whether a lone number beside a loaded exercise is repetitions."""
        if self._heading is not None:
            return True
        earlier = self.groups[-1] if self.groups else None
        if earlier is not None and not earlier.lacks_load and earlier.load_g:
            return items[at].chain is not None and "," in self._gap_before(items, at)
        after = self._next(items, at)
        lead = items[at + 1].is_word(Word.AT) if at + 1 < len(items) else False
        with_unit = after is not None and after.chain and after.chain.factors[0].figures[0].unit
        return bool(lead or with_unit)

    def _in_prose(self, items: Sequence[Item], at: int) -> bool:
        """Whether words stand on both sides of a number, or it counts what no set takes."""
        before = items[at - 1] if at else None
        after = items[at + 1] if at + 1 < len(items) else None
        worded = before is not None and before.kind is Kind.RUN
        follows = after is not None and after.kind is Kind.RUN and self._beside(items[at], after)
        return bool(self.groups and worded and follows)

    def _left_over(self, items: Sequence[Item], at: int) -> None:
        if self.groups and not self._in_prose(items, at):
            self.groups[-1].ask(Doubt.LEFT_OVER, items[at].span)

    def _sides(self, item: Item) -> None:
        left, right = (int(one) for one in item.numbers)
        if not (0 < left <= 200 and 0 < right <= 200):
            return
        sets = tuple(
            ReadSet(
                reps=None if self._reader.hold else amount,
                seconds=amount if self._reader.hold else None,
                side=side,
            )
            for side, amount in (("left", left), ("right", right))
        )
        self._mark(item.span, PartKind.WORK)
        self._work(Piece(What.WORK, item.span, sets, counted=True))

    def _rating(self, values: Sequence[Decimal], item: Item, *, rpe: bool) -> bool:
        if not values or not self.groups:
            return False
        if not self.groups[-1].rate(values, item.span, rpe=rpe, ranged=item.ranged):
            self.groups[-1].ask(Doubt.LEFT_OVER, item.span)
            return False
        self._mark(item.span, PartKind.WORK)
        return True

    # --- places -------------------------------------------------------------------------------

    def _beside(self, a: Item, b: Item) -> bool:
        first, second = sorted((a.span, b.span))
        return not self._text[first.end : second.start].strip(" \t")

    def _gap_before(self, items: Sequence[Item], at: int) -> str:
        return self._text[items[at - 1].span.end : items[at].span.start] if at else ""

    def _next(self, items: Sequence[Item], at: int) -> Item | None:
        return items[at + 1] if at + 1 < len(items) else None

    def _mark(self, span: Span, kind: PartKind) -> None:
        self._marks[span] = kind

    # --- the end ------------------------------------------------------------------------------

    def entry(self, answers: Answers, line: str, asked: Sequence[Question]) -> Entry:
        """The entry as it stands; ``asked`` are the questions of its name."""
        self._complete()
        questions = [*asked, *self.questions]
        sets: list[ReadSet] = []
        unsure = any(each.doubt in (Doubt.EXERCISE, Doubt.LINE) for each in asked)
        for group in self.groups:
            for doubt, span in self._doubts:
                group.ask(doubt, span)
            made, more = group.finished(answers)
            sets += [replace(one, certain=False) for one in made] if unsure else made
            questions += more
        return Entry(
            self.exercise.key if self.exercise else None,
            self.name,
            line,
            tuple(sets),
            tuple(dict.fromkeys(questions)),
            self._pain,
            tuple(self._notes),
        )

    def _complete(self) -> None:
        """Loads that were never given; a load that was never used."""
        if self._heading is not None and not self._heading_used:
            if self.groups:
                self.groups[-1].ask(Doubt.LEFT_OVER, self._heading[1])
            else:
                self.questions.append(
                    Question(Doubt.AMOUNT, self._heading[1], (Alternative(sets=()),))
                )
        before: int | None = None
        for group in self.groups:
            if group.lacks_load and not self._reader.loaded and not self._unloaded:
                group.load([0], group.span)
            elif group.lacks_load:
                if before:
                    group.load([before], group.span)
                group.ask(Doubt.LOAD, group.span)
            before = group.load_g
