"""Exercise names: what a run of words most likely names, exactly, by a slip, or perhaps."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import Final

from desktop.notes.known import Known, KnownExercise
from desktop.notes.reading import Span
from desktop.notes.words import ALIKE, NEUTRAL

LEAST_LIKE: Final = 62
"""Names less alike than this, out of 100, are not even asked about."""

MOST_CANDIDATES: Final = 4
_LONG: Final = 8
_SHORT: Final = 4
_TRAILING_S: Final = re.compile(r"(?<=[^s])s$")

Words = tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Named:
    """What a run of words names: ``exercise`` (None: unknown), whether surely, and the nearest
    ``candidates`` (keys) where not. ``span`` covers the words; ``rest`` those that name nothing.
    """

    exercise: str | None
    sure: bool
    span: Span
    candidates: tuple[str, ...] = ()
    rest: tuple[tuple[str, Span], ...] = ()
    helped: bool = False


def folded(word: str) -> str:
    """A word without case, accents and apostrophes."""
    small = word.casefold().replace("ß", "ss").replace("'", "").replace("’", "")
    small = small.replace("ae", "a").replace("ue", "u").replace("oe", "o")
    return "".join(c for c in unicodedata.normalize("NFD", small) if not unicodedata.combining(c))


def plain(word: str) -> str:
    """A word for comparison: folded, and without its plural."""
    bare = folded(word)
    return _TRAILING_S.sub("", bare) if len(bare) > 2 else bare


def plain_words(text: str) -> Words:
    """The words of a text for comparison; hyphens stand between words."""
    return tuple(plain(word) for word in re.findall(r"[^\W_]+(?:['’][^\W_]+)*", text))


class Names:
    """All names that notes may use, made once for a text."""

    def __init__(self, known: Known) -> None:
        self.exercises = {one.key: one for one in known.exercises}
        self._keys: dict[Words, str] = {}
        self._remembered = {plain_words(text): key for text, key in known.remembered}
        for words, key in self._remembered.items():
            if words and key in self.exercises:
                self._keys[words] = key
        for first in (True, False):  # a name goes before another's other name
            for one in known.exercises:
                for name in one.names[:1] if first else one.names[1:]:
                    self._keys.setdefault(plain_words(name), one.key)
        for words, key in list(self._keys.items()):
            self._keys.setdefault(_long(words), key)
        self._keys.pop((), None)
        self._joined = {"".join(words): key for words, key in reversed(self._keys.items())}
        self._texts = {" ".join(words): key for words, key in self._keys.items()}
        self._sets = {frozenset(words): key for words, key in reversed(self._keys.items())}
        self._longest = max((len(words) for words in self._keys), default=0)

    def exact(self, words: Sequence[str], at: int) -> tuple[int, str] | None:
        """How many of the plain ``words`` from ``at`` on are a known name, and whose; the most."""
        for length in range(min(self._longest, len(words) - at), 0, -1):
            part = tuple(words[at : at + length])
            key = self._keys.get(part) or self._keys.get(_long(part))
            if key is None and length > 1:
                key = self._joined.get("".join(words[at : at + length]))
            elif key is None:
                key = self._joined.get(words[at])
            if key is not None:
                return length, key
        return None

    def by_slip(self, words: Sequence[str]) -> str | None:
        """The exercise whose name these (folded) words are but for their order or for typing
        slips; None unless only one.
        """
        told = frozenset(_long(tuple(map(plain, words))))
        if told in self._sets and len(told) == len(words):
            return self._sets[told]
        found = {key for name, key in self._keys.items() if _slipped(words, name)}
        return found.pop() if len(found) == 1 else None

    def candidates(self, words: Sequence[str]) -> tuple[str, ...]:
        """The exercises with names like these words, the likeliest first."""
        from rapidfuzz import fuzz, process  # late: only where a name is doubtful

        found = process.extract(
            " ".join(words),
            list(self._texts),
            scorer=fuzz.WRatio,
            limit=3 * MOST_CANDIDATES,
            score_cutoff=LEAST_LIKE,
        )
        keys = dict.fromkeys(self._texts[text] for text, _, _ in found)
        return tuple(keys)[:MOST_CANDIDATES]

    def named(self, run: Sequence[tuple[str, Span]]) -> Named:
        """What a run of words (each with its place) names."""
        words = [plain(word) for word, _ in run]
        whole = run[0][1].to(run[-1][1])
        best = self._best_exact(words)
        left = _without(words, best) if best else list(range(len(words)))
        left = [at for at in left if words[at] not in NEUTRAL]
        if best is None or left:
            raw = [folded(word) for word, _ in run]
            slip = self.by_slip([word for word in raw if word not in NEUTRAL] or raw)
            if slip is not None:
                return Named(slip, True, whole, helped=_helped(words))
        if best is None:
            found = self.candidates(words)
            return Named(found[0] if found else None, False, whole, found)
        at, length, key = best
        rest = tuple(run[each] for each in left)
        span = run[at][1].to(run[at + length - 1][1])
        candidates = () if not rest else tuple(dict.fromkeys((key, *self.candidates(words))))
        return Named(key, not rest, span, candidates, rest, _helped(words))

    def _best_exact(self, words: Sequence[str]) -> tuple[int, int, str] | None:
        """Where in the words the longest known name stands, its length and exercise; of names as
        long the last, which is what the words before it describe.
        """
        best: tuple[int, int, str] | None = None
        for at in range(len(words)):
            found = self.exact(words, at)
            if found is not None and (best is None or found[0] >= best[1]):
                best = (at, *found)
        return best

    def remembers(self, text: str) -> bool:
        """Whether this text is a name that was settled for the trainee before."""
        return plain_words(text) in self._remembered

    def get(self, key: str | None) -> KnownExercise | None:
        """The exercise of a key."""
        return None if key is None else self.exercises.get(key)


def _long(words: Words) -> Words:
    """The words with short forms written out."""
    return tuple(ALIKE.get(word, word) for word in words)


def _helped(words: Iterable[str]) -> bool:
    return any(word.startswith("assist") for word in words)


def _without(words: Sequence[str], best: tuple[int, int, str]) -> list[int]:
    at, length, _ = best
    return [each for each in range(len(words)) if not at <= each < at + length]


def _slipped(words: Sequence[str], name: Words) -> bool:
    if len(words) != len(name):
        joined, told = "".join(name), "".join(words)
        return len(joined) >= _LONG and abs(len(joined) - len(told)) <= 1 and _near(told, joined, 1)
    alone = len(name) == 1
    return all(
        plain(word) == known
        or _one_slip(word, known, alone)
        or _one_slip(plain(word), known, alone)
        for word, known in zip(words, name, strict=True)
    )


def _one_slip(word: str, known: str, alone: bool) -> bool:
    """Whether one typing slip (two in a long word) makes one word of the other; a short word that
    stands alone must have the same letters.
    """
    shorter = min(len(word), len(known))
    if abs(len(word) - len(known)) > 2:
        return False
    if shorter < _SHORT or word[0] != known[0]:
        return False
    if sorted(word) == sorted(known):
        return _near(word, known, 1)
    if alone and shorter <= _SHORT:
        return False
    return _near(word, known, 2 if shorter >= _LONG else 1)


def _near(word: str, known: str, most: int) -> bool:
    from rapidfuzz.distance import OSA

    return OSA.distance(word, known, score_cutoff=most) <= most
