"""Variations: words that say how a bodyweight exercise was set up."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Final

from desktop.notes.known import Known, KnownExercise, KnownHeight
from desktop.notes.names import Words, plain, plain_words
from desktop.notes.words import CALLED, FEET, HANDS, LOOSE, RAISED, SMALL
from desktop.training.exercises import HeightUse

_FEET: Final = frozenset(map(plain, FEET))
_HANDS: Final = frozenset(map(plain, HANDS))
_SMALL: Final = frozenset(map(plain, SMALL)) | SMALL
_ON: Final = frozenset({"on", "auf", "sobre", "en", "under", "unter"})
_RAISED: Final = frozenset(map(plain, RAISED))


@dataclass(frozen=True, slots=True)
class SetUp:
    """What words say of the set-up: a variation's key, or that they say one but not which; how
    many of the words were used.
    """

    key: str | None = None
    unclear: bool = False
    used: frozenset[int] = frozenset()


def set_up_of(
    exercise: KnownExercise, run: Sequence[str], known: Known, *, beside_name: bool
) -> SetUp:
    """What the words of ``run`` say of how ``exercise`` was set up.

    Everyday words ("free", "low") count only ``beside_name``. A box or bar of the trainee's is
    what hands stand on, unless feet are named.
    """
    words = [plain(word) for word in run]
    if not exercise.bodyweight:
        return SetUp()
    raised = _on_height(exercise, words, known)
    if raised is not None:
        return raised
    told_at = [at for at, word in enumerate(words) if word not in _SMALL]
    told = [words[at] for at in told_at]
    for key, phrase in _phrases(exercise):
        if not beside_name and key in LOOSE:
            continue
        for at in range(len(told) - len(phrase) + 1):
            if tuple(told[at : at + len(phrase)]) == phrase:
                used = set(told_at[at : at + len(phrase)])
                used |= set(range(len(words))) - set(told_at)
                return SetUp(key, used=frozenset(used))
    unclear = (_FEET | _HANDS | _RAISED).intersection(words)
    stands_on = bool(exercise.heights) and bool(words) and words[0] in _ON
    return SetUp(unclear=bool(unclear) or stands_on)


def _on_height(exercise: KnownExercise, words: Sequence[str], known: Known) -> SetUp | None:
    for height, name in _height_names(known):
        for at in range(len(words) - len(name) + 1):
            if not name or tuple(words[at : at + len(name)]) != name:
                continue
            use = _use(words, height.uses, exercise)
            if use is None:
                return None
            used = {
                each
                for each, word in enumerate(words)
                if at <= each < at + len(name) or word in _SMALL | _FEET | _HANDS | _RAISED
            }
            return SetUp(f"{use.value}-{height.height_mm}", used=frozenset(used))
    return None


def _height_names(known: Known) -> Iterator[tuple[KnownHeight, Words]]:
    """Each height with what it may be called: its whole name, or the last word of it where no
    other ends so ("kitchen chair": "chair"); longest first.
    """
    names = [(height, plain_words(height.name)) for height in known.heights]
    ends = Counter(name[-1:] for _, name in names)
    called = [*names, *((height, name[-1:]) for height, name in names if ends[name[-1:]] == 1)]
    yield from sorted(called, key=lambda pair: -len(pair[1]))


def _use(
    words: Sequence[str], uses: Sequence[HeightUse], exercise: KnownExercise
) -> HeightUse | None:
    """What stands on the height, by the words and by what the exercise can be set up with."""
    able = [use for use in uses if use in exercise.heights]
    if _FEET.intersection(words):
        return HeightUse.FEET if HeightUse.FEET in able else None
    if HeightUse.HANDS in able:
        return HeightUse.HANDS
    return able[0] if able else None


def _phrases(exercise: KnownExercise) -> Iterator[tuple[str, Words]]:
    """What each variation may be called, longest first."""
    phrases = [
        (key, words)
        for key, names in exercise.variations
        for name in (*names, key, *CALLED.get(key, ()))
        if (words := tuple(word for word in plain_words(name) if word not in _SMALL))
    ]
    yield from sorted(phrases, key=lambda pair: -len(pair[1]))
