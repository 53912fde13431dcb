"""Products: reading a chain of figures as sets, a load, or a bare number."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from decimal import Decimal

from desktop.notes.figures import Chain, Factor, Figure, Role
from desktop.notes.known import KnownExercise
from desktop.notes.pieces import (
    LOADED_REPS,
    MOST_LOAD_G,
    MOST_REPS,
    MOST_SECONDS,
    MOST_SETS,
    SURE_REPS,
    SURE_SETS,
    Piece,
    Sets,
    What,
)
from desktop.notes.reading import Doubt, ReadSet, Span
from desktop.training.quantities import InvalidQuantity, Unit, grams


@dataclass(frozen=True, slots=True)
class Reader:
    """Reads chains for one exercise (None: not known), numbers without unit in ``unit``."""

    exercise: KnownExercise | None
    unit: Unit

    @property
    def hold(self) -> bool:
        """Whether seconds are counted."""
        return self.exercise is not None and self.exercise.hold

    @property
    def loaded(self) -> bool:
        """Whether a load must be given."""
        return self.exercise is None or not self.exercise.bodyweight

    def piece(self, chain: Chain, load_stands: bool) -> Piece:
        """What ``chain`` says; ``load_stands``: a load is given beside it."""
        factors = chain.factors
        if any(factor.role is Role.FAR for factor in factors):
            return Piece(What.NOTHING, chain.span)
        if len(factors) == 1:
            return self._single(factors[0], chain)
        if len(factors) == 2:
            return self._two(factors[0], factors[1], chain.span, load_stands)
        if len(factors) == 3:
            return self._three(factors, chain.span)
        return Piece(What.NOTHING, chain.span)

    # --- one factor ---------------------------------------------------------------------------

    def _single(self, factor: Factor, chain: Chain) -> Piece:
        span = chain.span
        if is_load(factor):
            return self._loads(factor, span)
        if factor.role is Role.SETS:
            count = _whole(factor.first, MOST_SETS)
            what = What.COUNT if count and factor.single else What.NOTHING
            return Piece(what, span, count=count)
        if factor.role is Role.NONE and not chain.crossed:
            return Piece(What.BARE, span, bare=factor, joint=factor.joint)
        return self.amounts(factor, span)

    def amounts(self, factor: Factor, span: Span) -> Piece:
        """The numbers of a factor as one set each."""
        sets = self._sets(1, factor, span)
        if not sets:
            return Piece(What.NOTHING, span)
        piece = Piece(What.WORK, span, sets, joint=factor.joint, counted=not factor.single)
        return self._checked(piece, factor)

    def _checked(self, piece: Piece, factor: Factor) -> Piece:
        """The piece with the doubts that its amounts raise."""
        if factor.joint == "-" and len(factor.figures) == 2:
            both = tuple(self._sets(1, Factor((one,)), piece.span) for one in factor.figures[::-1])
            return self._doubtful(piece, Doubt.RANGE, *_alike(piece, both))
        if factor.joint == "+":
            return self._doubtful(piece, Doubt.AMOUNT)
        sided = self.exercise is not None and self.exercise.one_sided
        if sided and factor.joint == "/" and len(factor.figures) == 2:
            return self._doubtful(piece, Doubt.SIDES, sides(piece.sets))
        for one in piece.sets:
            if self.hold is (one.seconds is None):
                return self._doubtful(piece, Doubt.AMOUNT)
            if (one.reps or 0) > SURE_REPS and self.loaded:
                return self._doubtful(piece, Doubt.AMOUNT)
            if factor.role is Role.NONE and one.seconds is not None and one.seconds < 5:
                return self._doubtful(piece, Doubt.AMOUNT)
        return piece

    def _loads(self, factor: Factor, span: Span) -> Piece:
        loads = tuple(filter(None, (self.load(figure, factor) for figure in factor.figures)))
        if len(loads) < len(factor.figures):
            return Piece(What.NOTHING, span)
        return Piece(What.LOAD, span, loads=loads, unit=factor.figures[-1].unit)

    def load(self, figure: Figure, factor: Factor | None = None) -> int | None:
        """Grams of a figure; None where it can be no load, 0 too."""
        unit = figure.unit or (factor.figures[-1].unit if factor else None) or self.unit
        if figure.sign and self.loaded:
            return None
        try:
            load_g = grams(figure.value * (figure.sign or 1), unit)
        except InvalidQuantity:
            return None
        return load_g if 0 < abs(load_g) <= MOST_LOAD_G else None

    # --- products -----------------------------------------------------------------------------

    def _two(self, a: Factor, b: Factor, span: Span, load_stands: bool) -> Piece:
        if is_load(a) and is_load(b):
            return Piece(What.NOTHING, span)
        if is_load(a):
            return self._load_first(a, b, span)
        if is_load(b):
            return self._load_last(a, b, span)
        if a.role in (Role.REPS, Role.SECONDS) or b.role is Role.SETS:
            return self._counted(b, a, span)
        if a.role is Role.SETS or b.role in (Role.REPS, Role.SECONDS):
            return self._counted(a, b, span)
        return self._two_bare(a, b, span, load_stands)

    def _two_bare(self, a: Factor, b: Factor, span: Span, load_stands: bool) -> Piece:
        """Both without a word: sets x repetitions, or load x repetitions."""
        straight = self._counted(a, b, span)
        swapped = self._counted(b, a, span)
        lifted = self._with_load(a, b, span)
        if a.single and straight.what is What.WORK and a.first <= SURE_SETS:
            if self.loaded and not load_stands and b.single and b.first > LOADED_REPS:
                turned = self._with_load(b, a, span)
                first = turned if turned.what is What.WORK else straight
                return self._doubtful(first, Doubt.ORDER, straight.sets)
            if self.loaded and not load_stands and a.first > 5 and lifted.sets:
                return self._doubtful(straight, Doubt.ORDER, lifted.sets, swapped.sets)
            return straight
        if straight.what is What.WORK:
            likelier = swapped if b.single and b.first <= 5 < a.first else straight
            if self.loaded and not load_stands and lifted.sets:
                likelier = lifted
            others = (straight.sets, swapped.sets, lifted.sets if self.loaded else ())
            return self._doubtful(likelier, Doubt.ORDER, *others)
        if self.loaded and not self.hold:
            if load_stands and swapped.sets:
                return self._doubtful(swapped, Doubt.ORDER, lifted.sets)
            return lifted
        return self._doubtful(swapped if swapped.sets else lifted, Doubt.ORDER, lifted.sets)

    def _load_first(self, load: Factor, amount: Factor, span: Span) -> Piece:
        """60 kg x 8: one set for each number."""
        piece = self._with_load(load, amount, span)
        if amount.role is Role.SETS:
            count = _whole(amount.first, MOST_SETS)
            loads = self._loads(load, span)
            return replace(loads, count=count) if count else Piece(What.NOTHING, span)
        if self.exercise and self.exercise.pair and amount.first == 2 and amount.role is Role.NONE:
            return self._doubtful(piece, Doubt.ORDER)
        return piece

    def _load_last(self, number: Factor, load: Factor, span: Span) -> Piece:
        """2 x 24 kg is a pair; 8/8/7 x 60 kg, and perhaps 5 x 100 kg, are repetitions."""
        loads = self._loads(load, span)
        two = number.single and number.first == 2 and number.role is Role.NONE
        if two and self.exercise is not None and self.exercise.pair and load.single:
            return loads
        piece = self._with_load(load, number, span)
        if number.role is Role.SETS and number.single:
            count = _whole(number.first, MOST_SETS)
            return replace(loads, count=count) if count else Piece(What.NOTHING, span)
        if not number.single or number.role is Role.REPS or piece.what is not What.WORK:
            return piece
        count = _whole(number.first, MOST_SETS)
        unknown = tuple(replace(piece.sets[0], reps=None, seconds=None) for _ in range(count))
        return self._doubtful(piece, Doubt.ORDER, unknown)

    def _three(self, factors: tuple[Factor, ...], span: Span) -> Piece:
        loads = [factor for factor in factors if is_load(factor)]
        if len(loads) > 1 or not all(factor.single for factor in factors[:2]):
            return Piece(What.NOTHING, span)
        if not loads:
            return self._three_bare(factors, span)
        at = factors.index(loads[0])
        first, second = (factor for factor in factors if factor is not loads[0])
        if at == 2 or at == 1:
            pair = at == 1 and self.exercise is not None and self.exercise.pair
            if pair and first.first == 2 and first.role is Role.NONE:
                return self._with_load(loads[0], second, span)
            piece = self._all(first, second, loads[0], span)
            return piece if at == 2 else self._doubtful(piece, Doubt.ORDER)
        if second.role in (Role.REPS, Role.SECONDS) or first.role is Role.SETS:
            return self._all(first, second, loads[0], span)
        piece = self._all(second, first, loads[0], span)
        others = self._all(first, second, loads[0], span)
        if piece.what is not What.WORK:
            return self._doubtful(others, Doubt.ORDER)
        return piece

    def _three_bare(self, factors: tuple[Factor, ...], span: Span) -> Piece:
        """40x5x3 is load, repetitions, sets where 40 is no number of sets; else it is asked."""
        a, b, c = factors
        if a.role is not Role.NONE or not c.single:
            return Piece(What.NOTHING, span)
        by_load = self._all(c, b, a, span)
        by_sets = self._all(a, b, c, span)
        likelier, other = (
            (by_sets, by_load) if by_sets.sets and c.first > b.first else (by_load, by_sets)
        )
        no_sets = not _whole(a.first, MOST_SETS)
        if no_sets and by_load.what is What.WORK and self.loaded and not self.hold:
            return by_load
        if likelier.what is not What.WORK:
            likelier, other = other, likelier
        return self._doubtful(likelier, Doubt.ORDER, other.sets)

    # --- sets ---------------------------------------------------------------------------------

    def _counted(self, count: Factor, amount: Factor, span: Span) -> Piece:
        """So many sets of an amount, or of a list with one number for each."""
        number = _whole(count.first, MOST_SETS) if count.single else 0
        sets = self._sets(number, amount, span)
        if not number or not sets:
            return Piece(What.NOTHING, span)
        if not amount.single and len(amount.figures) == number:
            sets = self._sets(1, amount, span)
            return self._checked(
                Piece(What.WORK, span, sets, counted=True, joint=amount.joint), amount
            )
        piece = Piece(What.WORK, span, sets, counted=True, joint=amount.joint)
        if not amount.single and amount.joint == "-" and len(amount.figures) == 2:
            each = tuple(self._sets(number, Factor((one,)), span) for one in amount.figures[::-1])
            return self._doubtful(replace(piece, sets=each[0]), Doubt.RANGE, each[1])
        if not amount.single:
            once = self._sets(1, amount, span)
            return self._doubtful(replace(piece, sets=once), Doubt.AMOUNT, sets)
        if number > SURE_SETS and count.role is not Role.SETS:
            return self._doubtful(piece, Doubt.AMOUNT)
        return self._checked(piece, amount)

    def _with_load(self, load: Factor, amount: Factor, span: Span) -> Piece:
        """One set for each amount with the load (or each with its own)."""
        loads = self._loads(load, span)
        work = self.amounts(amount, span)
        if loads.what is not What.LOAD or work.what is not What.WORK:
            return Piece(What.NOTHING, span)
        if load.single:
            return _put(work, loads.loads[0], loads.unit)
        if not amount.single or work.doubt is not None:
            return Piece(What.NOTHING, span)
        sets = tuple(replace(work.sets[0], load_g=load_g) for load_g in loads.loads)
        return Piece(What.WORK, span, sets, unit=loads.unit, counted=True)

    def _all(self, count: Factor, amount: Factor, load: Factor, span: Span) -> Piece:
        work = self._counted(count, amount, span)
        loads = self._loads(load, span)
        if loads.what is not What.LOAD or work.what is not What.WORK or not load.single:
            return Piece(What.NOTHING, span)
        return _put(work, loads.loads[0], loads.unit)

    def _sets(self, number: int, amount: Factor, span: Span) -> Sets:
        """``number`` times each amount; () where one can be none."""
        if (
            number < 1
            or amount.role in (Role.LOAD, Role.SETS)
            or any(f.sign for f in amount.figures)
        ):
            return ()
        seconds = amount.role is Role.SECONDS or (self.hold and amount.role is Role.NONE)
        made: list[ReadSet] = []
        for value in amount.values:
            whole = _whole(value, MOST_SECONDS if seconds else MOST_REPS)
            if not whole:
                return ()
            made.append(
                ReadSet(seconds=whole, span=span) if seconds else ReadSet(reps=whole, span=span)
            )
        return tuple(one for one in made for _ in range(number))

    def _doubtful(self, piece: Piece, doubt: Doubt, *others: Sets) -> Piece:
        kept = tuple(dict.fromkeys(other for other in others if other and other != piece.sets))
        return replace(piece, doubt=doubt, others=kept)


def is_load(factor: Factor) -> bool:
    """Whether a unit or a sign makes it a load."""
    return factor.role is Role.LOAD or (
        factor.role is Role.NONE and factor.single and factor.figures[0].sign != 0
    )


def both_sides(numbers: Sequence[Decimal], reader: Reader) -> Sets:
    """Left and right, as counted for the exercise; () where a number can be none."""
    most = MOST_SECONDS if reader.hold else MOST_REPS
    left, right = (_whole(number, most) for number in numbers)
    if not (left and right):
        return ()
    made = [ReadSet(seconds=n) if reader.hold else ReadSet(reps=n) for n in (left, right)]
    return sides(tuple(made))


def sides(sets: Sets) -> Sets:
    """Two sets as the two sides of one."""
    return tuple(replace(one, side=side) for one, side in zip(sets, ("left", "right"), strict=True))


def _alike(piece: Piece, ends: tuple[Sets, ...]) -> tuple[Sets, ...]:
    return ends if piece.sets else ()


def _put(piece: Piece, load_g: int, unit: Unit | None) -> Piece:
    def put(sets: Sets) -> Sets:
        return tuple(replace(one, load_g=load_g) for one in sets)

    return replace(piece, sets=put(piece.sets), others=tuple(map(put, piece.others)), unit=unit)


def _whole(value: Decimal, most: int) -> int:
    """A whole number from 1 to ``most``; else 0."""
    return int(value) if value == value.to_integral_value() and 1 <= value <= most else 0
