"""Groups: sets that were written together, while their loads, ratings and doubts come in."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace
from decimal import Decimal
from typing import Final

from desktop.notes.pieces import Piece, Sets
from desktop.notes.products import sides
from desktop.notes.reading import Alternative, Answer, Doubt, Question, ReadSet, Span
from desktop.training.strength import StrengthError, rir_from_rpe

MOST_RIR: Final = 10

Answers = Mapping[tuple[Doubt, Span], Alternative]


def by_place(answers: Sequence[Answer]) -> Answers:
    """Answers by what they settle; of several the last."""
    return {(answer.doubt, answer.span): answer.meant for answer in answers}


@dataclass(frozen=True, slots=True)
class Asked:
    """A doubt of a group: what else its sets, their load or their reserve may be."""

    doubt: Doubt
    span: Span
    sets: tuple[Sets, ...] = ()
    loads_g: tuple[int, ...] = ()
    reserves: tuple[float, ...] = ()


@dataclass(slots=True)
class StandingLoad:
    """A load written before sets, which holds for all that follow."""

    load_g: int
    span: Span
    unsure: bool = False
    used: bool = False


@dataclass(slots=True)
class Group:
    """Sets of one stretch of the text. ``counted``: how many sets is said, so that a later count
    does not multiply them.
    """

    span: Span
    sets: list[ReadSet]
    counted: bool = False
    joint: str = ""
    asked: list[Asked] = field(default_factory=list)
    ratings: list[Decimal] = field(default_factory=list)

    @classmethod
    def of(cls, piece: Piece) -> Group:
        """The group that a piece makes."""
        made = cls(piece.span, list(piece.sets), piece.counted, piece.joint)
        if piece.doubt is not None:
            made.asked.append(Asked(piece.doubt, piece.span, piece.others))
        return made

    @property
    def load_g(self) -> int | None:
        """The load of the last set."""
        return self.sets[-1].load_g

    @property
    def lacks_load(self) -> bool:
        """Whether no load is known yet."""
        return any(one.load_g is None for one in self.sets)

    def load(self, loads_g: Sequence[int], span: Span) -> bool:
        """Give all sets one load, or each its own; whether that fits."""
        if len(loads_g) == 1:
            loads_g = [loads_g[0]] * len(self.sets)
        if len(loads_g) != len(self.sets):
            return False
        self.sets = [
            replace(one, load_g=load_g) for one, load_g in zip(self.sets, loads_g, strict=True)
        ]
        self.span = self.span.to(span)
        return True

    def multiply(self, count: int) -> bool:
        """So many times the one set; whether it was one that nothing had counted yet."""
        if self.counted or len(self.sets) != 1:
            return False
        self.sets = self.sets * count
        self.counted = True
        return True

    def ask(self, doubt: Doubt, span: Span, **others: tuple[float, ...]) -> None:
        """Doubt this group, once for each doubt and place."""
        if not any((one.doubt, one.span) == (doubt, span) for one in self.asked):
            loads = tuple(int(each) for each in others.get("loads_g", ()))
            self.asked.append(Asked(doubt, span, (), loads, others.get("reserves", ())))

    def rate(self, values: Sequence[Decimal], span: Span, *, rpe: bool, ranged: bool) -> bool:
        """Repetitions in reserve from ratings: one for all, or each its own; whether they fit."""
        if len(values) not in (1, len(self.sets)) and not ranged:
            return False
        read = [_reserve(value, rpe=rpe) for value in values]
        if any(one is None for one in read):
            return False
        self.ratings = list(values)
        if ranged or any(one and one[0] != one[-1] for one in read):
            ends = sorted({end for one in read for end in one or ()})
            self.ask(Doubt.EFFORT, span, reserves=tuple(ends))
            return True
        each = [one[0] if one else None for one in read]
        each = each * len(self.sets) if len(each) == 1 else each
        self.sets = [replace(one, rir=rir) for one, rir in zip(self.sets, each, strict=True)]
        return True

    def rate_next(self, value: Decimal, span: Span) -> bool:
        """One more rating of a row ("@7 @8 @9"), each for its set; asked while they do not fit."""
        ratings = [*self.ratings, value]
        if len(ratings) > len(self.sets) or _reserve(value, rpe=True) is None:
            return False
        self.asked = [one for one in self.asked if one.doubt is not Doubt.EFFORT]
        if len(ratings) == len(self.sets):
            return self.rate(ratings, span, rpe=True, ranged=False)
        self.ratings = ratings
        self.sets = [replace(one, rir=None) for one in self.sets]
        self.ask(Doubt.EFFORT, span)
        return True

    def both_sides(self, span: Span) -> None:
        """ "8/7 each": two sets of either side, or left and right of one."""
        if self.joint == "/" and len(self.sets) == 2:
            self.asked = [one for one in self.asked if one.doubt is not Doubt.SIDES]
            self.asked.append(Asked(Doubt.SIDES, span, (sides(tuple(self.sets)),)))

    def finished(self, answers: Answers) -> tuple[Sets, tuple[Question, ...]]:
        """The sets with what was answered, and what is still asked."""
        sets = tuple(replace(one, span=self.span) for one in self.sets)
        open_questions = [one for one in self.asked if (one.doubt, one.span) not in answers]
        settled = [answers[one.doubt, one.span] for one in self.asked if one not in open_questions]
        for meant in settled:
            sets = sets if meant.sets is None else meant.sets
        for meant in settled:
            if meant.load_g is not None:
                sets = tuple(replace(one, load_g=meant.load_g) for one in sets)
            if meant.rir is not None:
                sets = tuple(replace(one, rir=meant.rir) for one in sets)
        sure = not open_questions
        asked = tuple(self._question(one, sets) for one in open_questions)
        return tuple(replace(one, certain=sure) for one in sets), asked

    def _question(self, asked: Asked, sets: Sets) -> Question:
        if asked.doubt is Doubt.AT:
            as_loads = [
                tuple(replace(one, load_g=load_g, rir=None) for one in sets)
                for load_g in asked.loads_g
            ]
            return self._asking(asked, [Alternative(sets=each) for each in (sets, *as_loads)])
        alternatives = [Alternative(load_g=load_g) for load_g in asked.loads_g]
        alternatives += [Alternative(rir=rir) for rir in asked.reserves]
        if not alternatives and sets and not (asked.doubt is Doubt.LOAD and self.lacks_load):
            settled = [self._like(each) for each in asked.sets]
            alternatives = [Alternative(sets=each) for each in (sets, *settled)]
        return self._asking(asked, alternatives)

    def _asking(self, asked: Asked, alternatives: Sequence[Alternative]) -> Question:
        return Question(asked.doubt, asked.span, tuple(dict.fromkeys(alternatives)))

    def _like(self, sets: Sets) -> Sets:
        """Other sets with what has come in since: load, rating, set-up."""
        model = self.sets[0]
        return tuple(
            replace(
                one,
                load_g=model.load_g if one.load_g is None else one.load_g,
                rir=model.rir,
                variation=model.variation,
                warm_up=model.warm_up,
                span=self.span,
            )
            for one in sets
        )


def finish(
    groups: Sequence[Group], answers: Answers, *, bodyweight: bool
) -> tuple[Sets, list[Question]]:
    """The sets of all groups and what is asked about them. A load that was never given is none
    for ``bodyweight``, else perhaps that of the sets before.
    """
    sets: list[ReadSet] = []
    questions: list[Question] = []
    before: int | None = None
    for group in groups:
        if group.lacks_load and bodyweight:
            group.load([0], group.span)
        elif group.lacks_load:
            if before:
                group.load([before], group.span)
            group.ask(Doubt.LOAD, group.span)
        before = group.load_g
        made, asked = group.finished(answers)
        sets += made
        questions += asked
    return tuple(sets), questions


def _reserve(value: Decimal, *, rpe: bool) -> tuple[float, ...] | None:
    """The lowest and highest reserve of a rating, () where it stands for no number; None where
    it is no rating.
    """
    if not rpe:
        return (float(value),) * 2 if 0 <= value <= MOST_RIR else None
    try:
        return rir_from_rpe(float(value)) or ()
    except StrengthError:
        return None
