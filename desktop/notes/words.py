"""Words of the trade as notes use them, in English, German and Spanish (common usage)."""

from __future__ import annotations

import re
from enum import StrEnum
from typing import Final


class Word(StrEnum):
    """What a word does to the numbers beside it."""

    WARM_UP = "warm-up"
    WORKING = "working"
    EACH = "each side"
    BODY = "bodyweight"
    HELP = "assistance"
    SAME = "same"
    SCHEME = "scheme"
    BAND = "band"
    AND = "and"
    AT = "at"
    FOR = "for"


def _any(*words: str) -> str:
    """A group of alternatives, longest first, with any gap where a word has one."""
    ordered = sorted(words, key=len, reverse=True)
    return "(?:" + "|".join(word.replace(" ", r"[ \t]+") for word in ordered) + ")"


_END: Final = r"(?![^\W_])"
"""No letter or digit goes on here."""

KG: Final = _any("kgs?", "kilos?", "kilograms?", "kilogramm", "kilogramos?")
LB: Final = _any("lbs?", "pounds?", "libras?", "#")
SECONDS: Final = _any(
    "s", "secs?", "seconds?", "sek", "sekunden?", "segs?", "segundos?", '"', "″", "''"
)
MINUTES: Final = _any("mins?", "minutes?", "minuten?", "minutos?", "'", "′")
REPS: Final = _any("reps?", "repetitions?", "wdh", "wdhl", "wiederholung(?:en)?", "repeticiones")
SETS: Final = _any("sets?", "satz", "sätze", "saetze", "series?")
FAR: Final = _any("m", "metres?", "meters?", "metros?", "km", "yards?", "yds?", "steps?", "%")


X: Final = re.compile(r"[ \t]*(?:[x×✕*](?![^\W\d_]))[ \t]*")
"""The sign between sets, repetitions and load."""

OF: Final = re.compile(r"[ \t]*(?:of|à|a|de|mit je|je|mit|x|×|@)[ \t]+(?=[0-9])")
"""What stands between a number of sets and the repetitions."""

_PAIN: Final = (
    r"(?:pain(?:ful)?|hurts?|aches?|aching|achy|sore|twinge|schmerz(?:en|t)?|weh|dolor|duele)"
)
_TIME: Final = (
    rf"[0-9]+(?::[0-5][0-9]|[ \t]*(?:{MINUTES}|{SECONDS})"
    rf"(?:[ \t]*[0-9]+[ \t]*(?:{SECONDS})?)?)?"
)
_REST: Final = r"(?:rests?|rested|resting|pausen?|descansos?|breaks?)"

PAIN: Final = re.compile(
    rf"{_PAIN}{_END}[^0-9\n.;]{{0,24}}?(?P<after>10|[0-9])(?![0-9]|[.,:x×][0-9])"
    rf"(?:[ \t]*/[ \t]*10(?![0-9]))?(?![ \t]*(?:[x×]|{KG}{_END}|{LB}{_END}|{SETS}{_END}))"
    rf"|(?P<before>10|[0-9])[ \t]*/[ \t]*10[ \t]+(?:[^\W\d_]+[ \t]+)?{_PAIN}{_END}"
    rf"|{_PAIN}{_END}"
)
REST: Final = re.compile(
    rf"(?:{_REST}{_END}[ \t]*:?[ \t]*(?:of[ \t]+|for[ \t]+)?{_TIME}{_END}"
    rf"|{_TIME}{_END}[ \t]*(?:of[ \t]+)?{_REST}{_END}|{_REST}{_END})"
)
TEMPO: Final = re.compile(
    rf"(?:tempo[ \t]*:?[ \t]*[0-9x](?:[-/:. ]?[0-9x]){{1,3}}{_END}"
    rf"|[0-9x](?:[-/:][0-9x]){{2,3}}[ \t]+tempo{_END}|tempo{_END})"
)

_DECIMAL: Final = r"[0-9]{1,2}(?:[.,][05](?![0-9]))?"
_OTHER: Final = rf"(?![0-9]|[.,:][0-9]|[ \t]*(?:[x×]|{KG}{_END}|{LB}{_END}|{REPS}{_END}))"
_RATINGS: Final = (
    rf"{_DECIMAL}(?![0-9]|[.:][0-9])(?:(?:[ \t]*[/–-][ \t]*|,|,[ \t]+){_DECIMAL}{_OTHER})*"
)
_BEHIND: Final = rf"{_END}(?![ \t]*[:=@]?[ \t]*[0-9])"
RPE: Final = re.compile(
    rf"(?:@|at[ \t]|bei[ \t]|con[ \t])?[ \t]*rpe[ \t]*[:=@]?[ \t]*(?P<after>{_RATINGS})"
    rf"|(?P<before>{_DECIMAL})[ \t]*rpe{_BEHIND}"
)
RIR: Final = re.compile(
    rf"(?:@|at[ \t]|with[ \t])?[ \t]*rir[ \t]*[:=@]?[ \t]*(?P<after>{_RATINGS})"
    rf"|(?P<before>{_DECIMAL}(?:[ \t]*[–-][ \t]*{_DECIMAL})?)[ \t]*"
    rf"(?:rir{_BEHIND}|(?:reps?[ \t]+)?in[ \t]+reserve{_END}"
    rf"|(?:reps?[ \t]+)?left[ \t]+in[ \t]+(?:the[ \t]+)?tank{_END}|in[ \t]+the[ \t]+tank{_END})"
)
RATING: Final = re.compile(_DECIMAL)

_LEFT: Final = r"(?:left|links|l|izquierda|izq)"
_RIGHT: Final = r"(?:right|rechts|r|derecha|der)"
_COUNT: Final = rf"(?:[ \t]*(?:{REPS}))?"
SIDES: Final = re.compile(
    rf"{_LEFT}[ \t]*[:=]?[ \t]*(?P<l1>[0-9]{{1,3}}){_COUNT}[ \t,;/+]*(?:(?:and|und|y)[ \t]+)?"
    rf"{_RIGHT}[ \t]*[:=]?[ \t]*(?P<r1>[0-9]{{1,3}})(?![0-9x×.,]){_COUNT}{_END}"
    rf"|(?P<l2>[0-9]{{1,3}})[ \t]*{_LEFT}{_END}[ \t,;/+]*(?P<r2>[0-9]{{1,3}})[ \t]*{_RIGHT}{_END}"
)

_WORDS: Final = {
    Word.WARM_UP: _any(
        "w/u", "wu", "warm-?ups?", "warm ups?", "warming up", "warm-?up sets?", "warm up sets?",
        "aufwärmen", "aufwärmsätze", "aufwärmsatz", "calentamiento",
    ),
    Word.WORKING: _any(
        "then", "working(?: sets?| weight)?", "work(?: sets?)?", "worksets?", "main(?: sets?)?",
        "top sets?", "dann", "danach", "luego", "después", "arbeitssätze",
    ),
    Word.EACH: _any(
        r"/\s?(?:side|leg|arm|seite|lado)", "e/s", "(?:on )?each(?: (?:side|leg|arm|hand))?",
        "(?:per|a) (?:side|leg|arm)", "both sides", "pro (?:seite|bein|arm)",
        "je (?:seite|bein|arm)", "por (?:lado|pierna|brazo)", "(?:en )?cada (?:lado|pierna|brazo)",
    ),
    Word.BODY: _any(
        "bw", "body-?weight", "body weight", "körpergewicht", "peso corporal", "no weight",
    ),
    Word.HELP: _any(
        "assisted", "assist", "assistance", "(?:of )?help", "unterstützt", "unterstützung",
        "hilfe", "asistidas?", "ayuda",
    ),
    Word.SAME: _any(
        "same(?: again| as (?:last time|before|above))?", "again", "ditto", "〃", "nochmal",
        "wie letztes mal", "dasselbe", "igual", "lo mismo", "otra vez",
    ),
    Word.SCHEME: _any(
        "emom", "tabata", "amrap", "(?:in )?total", "drop-?sets?", "drop sets?", "clusters?",
        "rounds?", "runden?", "rondas?", "circuits?", "zirkel", "rest-pause",
        "insgesamt", "gesamt", "en total", "ladder", "pyramid", "max", "to failure", "failed",
    ),
    Word.BAND: _any(r"(?:[^\W\d_]+ )?(?:bands?|gummiband|banda|goma)"),
    Word.AND: _any("and", "und", "y", "plus"),
    Word.AT: _any("at", "with", "mit", "con", "bei", "using"),
    Word.FOR: _any("for", "für"),
}  # fmt: skip
WORDS: Final = (
    *((word, re.compile(text + _END)) for word, text in _WORDS.items()),
    (Word.AT, re.compile("@")),
)

NEUTRAL: Final = frozenset(
    {
        "the", "a", "an", "my", "some", "did", "do", "done", "of", "with", "and", "then", "today",
        "first", "next", "also", "just", "now", "barbell", "bb", "exercise", "ex", "on", "in",
        "for", "ich", "habe", "heute", "und", "mit", "hoy", "hice", "y", "con", "de",
    }
)  # fmt: skip
"""Words beside a name that change nothing about it."""

SMALL: Final = frozenset(
    {
        "on", "the", "a", "an", "my", "off", "to", "from", "with", "at", "against", "in", "auf",
        "am", "dem", "der", "die", "das", "einem", "einer", "meinem", "meiner", "en", "la", "el",
        "una", "un", "mi", "contra", "sobre",
    }
)  # fmt: skip
"""Words that only lead to what something stands on."""

FEET: Final = frozenset(
    {
        "feet", "foot", "füße", "füsse", "fuss", "fuß", "pies", "pie",
    }
)  # fmt: skip
HANDS: Final = frozenset(
    {
        "hands", "hand", "hände", "manos", "mano",
    }
)  # fmt: skip
RAISED: Final = frozenset(
    {
        "elevated", "raised", "up", "high", "erhöht", "elevados", "incline", "decline", "deficit",
    }
)  # fmt: skip

ALIKE: Final = {
    "db": "dumbbell", "dbs": "dumbbell", "dumbell": "dumbbell", "dumbel": "dumbbell",
    "kb": "kettlebell", "kbs": "kettlebell", "bb": "barbell",
}  # fmt: skip
"""Short forms of words in names."""

CALLED: Final = {
    "tuck": ("tucked",),
    "open-tuck": ("advanced tuck", "adv tuck", "open tuck"),
    "knees": ("knee", "kneeling"),
    "rings": ("ring",),
    "one-leg": ("single leg",),
    "one-arm": ("single arm",),
    "lowering": ("negative", "eccentric"),
}
"""What else variations are called, by key."""

LOOSE: Final = frozenset(
    {
        "full", "free", "both", "level", "back", "forward", "high", "slow", "long", "leg",
        "single", "low", "feet", "floor", "wall", "bench", "bar", "box", "active", "legs",
        "chest", "toe", "upright", "half", "way",
    }
)  # fmt: skip
"""Variation keys that are everyday words: taken beside the name only."""
