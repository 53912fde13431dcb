"""Building one entry: items beside an exercise become sets, in the order written.

What fits nowhere is asked about or stays unread.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from desktop.notes.figures import Factor
from desktop.notes.groups import Answers, Asked, Group, finish
from desktop.notes.items import Item, Kind
from desktop.notes.known import Known, KnownExercise
from desktop.notes.pieces import Piece, What
from desktop.notes.places import Place
from desktop.notes.products import Reader, both_sides
from desktop.notes.reading import Doubt, Entry, PartKind, Question, Span
from desktop.notes.variations import set_up_of
from desktop.notes.words import Word
from desktop.notes.written import LIGHT, Written


class Building:
    """One entry as it grows, item by item; ``earlier`` is the last one of the same exercise."""

    def __init__(
        self,
        exercise: KnownExercise | None,
        name: Span | None,
        known: Known,
        text: str,
        marks: dict[Span, PartKind],
        *,
        helped: bool = False,
        earlier: Building | None = None,
    ) -> None:
        self.exercise = exercise
        self.name = name
        self._known = known
        self._text = text
        self._marks = marks
        self._helped = helped
        self.written = Written(Reader(exercise, known.unit))
        self._earlier = list(earlier.written.groups) if earlier else []
        self._questions: list[Question] = []
        self._doubts: list[tuple[Doubt, Span]] = []
        self._pain = 0
        self._notes: list[Span] = []

    def take(self, items: Sequence[Item]) -> None:
        """Take the items of one line (or a part of it) that belong to this entry."""
        self.written.new_line()
        prose = False
        for at, item in enumerate(items):
            place = Place(self._text, items, at)
            if item.kind is Kind.STOP:
                prose = place.ends_sentence
            elif not prose or item.kind in (Kind.PAIN, Kind.NOTE):
                self._take(place)

    @property
    def wants_numbers(self) -> bool:
        """Whether numbers alone in the next line would be its sets."""
        return (
            not self.written.reader.loaded
            or self.written.heading is not None
            or not self.written.groups
        )

    def entry(self, answers: Answers, line: str, asked: Sequence[Question]) -> Entry:
        """The entry as it stands; ``asked`` are the questions of its name."""
        if self.written.heading is not None and not self.written.heading.used:
            if self.written.groups:
                self.written.groups[-1].ask(Doubt.LEFT_OVER, self.written.heading.span)
            else:
                self._questions.append(Question(Doubt.AMOUNT, self.written.heading.span))
        for group in self.written.groups:
            for doubt, span in self._doubts:
                group.ask(doubt, span)
        unloaded = any(doubt is Doubt.LOAD for doubt, _ in self._doubts)
        bodyweight = not self.written.reader.loaded and not unloaded
        sets, questions = finish(self.written.groups, answers, bodyweight=bodyweight)
        named = [one for one in asked if (one.doubt, one.span) not in answers]
        if any(one.doubt in (Doubt.EXERCISE, Doubt.LINE) for one in named):
            sets = tuple(replace(one, certain=False) for one in sets)
        loose = [one for one in self._questions if (one.doubt, one.span) not in answers]
        return Entry(
            self.exercise.key if self.exercise else None,
            self.name,
            line,
            sets,
            tuple(dict.fromkeys((*named, *loose, *questions))),
            self._pain,
            tuple(self._notes),
        )

    # --- words --------------------------------------------------------------------------------

    def _take(self, place: Place) -> None:
        item = place.item
        match item.kind:
            case Kind.CHAIN:
                self._chain(place)
            case Kind.SIDES:
                sets = both_sides(item.numbers, self.written.reader)
                if sets:
                    self._mark(item.span)
                    self.written.add(Piece(What.WORK, item.span, sets, counted=True))
            case Kind.RPE | Kind.RIR:
                self._rating(item.numbers, item, rpe=item.kind is Kind.RPE)
            case Kind.PAIN | Kind.NOTE:
                self._mark(item.span, PartKind.NOTE)
                self._notes.append(item.span)
                if item.kind is Kind.PAIN:
                    self._pain = max(self._pain, *(int(one) for one in item.numbers), 0)
            case Kind.RUN:
                self._run(item)
            case Kind.WORD:
                self._word(place)

    def _word(self, place: Place) -> None:
        span = place.item.span
        if not place.item.is_word(Word.AND, Word.AT, Word.FOR):
            self._mark(span)
        match place.item.word:
            case Word.WARM_UP:
                self._warm_up(place)
            case Word.WORKING:
                self.written.warm = False
            case Word.BODY if not place.added_follows:
                self.written.take_load((0,), span, sure=True)
            case Word.EACH if self.written.groups:
                self.written.groups[-1].both_sides(span)
            case Word.SCHEME:
                self._doubts.append((Doubt.SCHEME, span))
            case Word.BAND if not self.written.reader.loaded:
                self._doubts.append((Doubt.LOAD, span))
            case Word.SAME:
                self._again(span)

    def _warm_up(self, place: Place) -> None:
        """What follows is a warm-up; in brackets, or at the end, what stands before."""
        bracketed = self._text[: place.item.span.start].rstrip().endswith("(")
        following = place.items[place.at + 1 :]
        last = not any(item.kind in (Kind.CHAIN, Kind.SIDES) for item in following)
        if (bracketed or last) and self.written.fresh:
            for group in self.written.fresh[-1 if bracketed else 0 :]:
                group.sets = [replace(one, warm_up=True) for one in group.sets]
        else:
            self.written.warm = True

    def _run(self, item: Item) -> None:
        if self.exercise is None:
            return
        run = [word for word, _ in item.run]
        told = set_up_of(self.exercise, run, self._known, beside_name=False)
        if told.key is not None:
            for at in sorted(told.used):
                self._mark(item.run[at][1])
            self.written.set_up(told.key)
        elif told.unclear:
            self._doubts.append((Doubt.VARIATION, item.span))

    def _again(self, span: Span) -> None:
        """The last sets again: proposed, and asked about."""
        before = self.written.groups[-1:] or self._earlier
        if not before:
            self._questions.append(Question(Doubt.REPEAT, span))
            return
        again = Group(span, [one for group in before for one in group.sets], counted=True)
        again.asked.append(Asked(Doubt.REPEAT, span))
        self.written.groups.append(again)

    # --- figures ------------------------------------------------------------------------------

    def _chain(self, place: Place) -> None:
        item = place.item
        assert item.chain is not None, "a chain has its figures"
        stands = self.written.heading is not None or place.load_follows
        chain = place.helped(item.chain, self.written.reader, self._helped)
        piece = self.written.reader.piece(chain, stands)
        lead = place.lead
        if lead is not None and lead.is_word(Word.AT) and piece.bare and piece.bare.single:
            taken = self._at(piece.bare, place, lead)
        elif piece.what is What.WORK:
            taken = self.written.add(piece)
        elif piece.what is What.LOAD:
            self.written.unit = piece.unit or self.written.unit
            taken = self.written.take_load(piece.loads, piece.span, sure=True, count=piece.count)
        elif piece.what is What.COUNT:
            taken = self.written.take_count(piece.count)
        else:
            taken = piece.bare is not None and self.written.bare(piece.bare, place)
        if taken:
            self._mark(item.span if lead is None or lead.word is None else lead.span.to(item.span))
        elif self.written.groups and not place.in_prose:
            self.written.groups[-1].ask(Doubt.LEFT_OVER, item.span)

    def _at(self, number: Factor, place: Place, lead: Item) -> bool:
        """What stands behind @ (or "at"); whether it was dealt with.

        A rating where a load stands already; else it is asked whether it is one or the load. A
        heavy number behind "at" is surely the load.
        """
        span, value = place.item.span, number.first
        sign = self._text[lead.span.start] == "@"
        last = self.written.last
        if last is not None and not last.lacks_load and sign:
            if last.ratings:
                return last.rate_next(value, span)
            return self._rating((value,), place.item, rpe=True)
        load_g = self.written.reader.load(number.figures[0])
        if load_g is None:
            return False
        if last is None:
            return self.written.take_load((load_g,), span, sure=not sign)
        if value <= LIGHT and last.rate((value,), span, rpe=True, ranged=False):
            last.ask(Doubt.AT, span, loads_g=(load_g,))
            return True
        if sign:
            last.ask(Doubt.AT, span)
        return self.written.take_load((load_g,), span, sure=True)

    def _rating(self, values: Sequence[Decimal], item: Item, *, rpe: bool) -> bool:
        if not values or not self.written.groups:
            return False
        if not self.written.groups[-1].rate(values, item.span, rpe=rpe, ranged=item.ranged):
            self.written.groups[-1].ask(Doubt.LEFT_OVER, item.span)
            return False
        self._mark(item.span)
        return True

    def _mark(self, span: Span, kind: PartKind = PartKind.WORK) -> None:
        self._marks[span] = kind
