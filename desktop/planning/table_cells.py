"""What stands in one cell of somebody else's table: days, loads, counts of sets and repetitions.

Each reader gives what it read, or raises `CellProblem` with what is allowed. What could be read in
more than one way comes with a ``doubt``; nothing is taken that is not in the cell.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from datetime import date, timedelta
from decimal import Decimal
from functools import lru_cache
from typing import Final

from db.tables import Figure
from desktop.training.quantities import InvalidQuantity, Unit, grams, parse_decimal
from desktop.training.sentence import sentence, sentence_of
from desktop.training.table_mapping import DateOrder, DecimalMark


class CellProblem(ValueError):
    """The cell cannot be read; the sentence says what is allowed."""


@dataclass(frozen=True, slots=True)
class Loads:
    """Loads in grams, one for all sets or one for each; ``body``: said to be bodyweight."""

    grams: tuple[int, ...] = ()
    body: bool = False
    doubt: str = ""


@dataclass(frozen=True, slots=True)
class Counts:
    """What was counted in each set: repetitions, or ``held`` seconds."""

    amounts: tuple[int, ...] = ()
    held: bool = False
    doubt: str = ""


# --- days ---------------------------------------------------------------------------------------

MONTHS: Final = (
    ("jan", "ene"),
    ("feb",),
    ("mar", "mär", "mrz"),
    ("apr", "abr"),
    ("may", "mai"),
    ("jun",),
    ("jul",),
    ("aug", "ago"),
    ("sep", "set"),
    ("oct", "okt"),
    ("nov",),
    ("dec", "dez", "dic"),
)
_ISO: Final = re.compile(r"([0-9]{4})[-/.]([0-9]{1,2})[-/.]([0-9]{1,2})")
_COMPACT: Final = re.compile(r"(20[0-9]{2})([01][0-9])([0-3][0-9])")
_NUMERIC: Final = re.compile(r"([0-9]{1,2})([-/.])\s?([0-9]{1,2})\2\s?([0-9]{4}|[0-9]{2})")
_DAY_NAMED: Final = re.compile(
    r"([0-9]{1,2})(?:st|nd|rd|th)?\.?[\s-]*(?:de\s+)?([^\W\d_]{3,})\.?[\s,-]*(?:de\s+)?([0-9]{4})"
)
_NAMED_DAY: Final = re.compile(r"([^\W\d_]{3,})\.?\s+([0-9]{1,2})(?:st|nd|rd|th)?,?\s+([0-9]{4})")
# Only where a whole date follows: "mar 3, 2026" is a month.
_WEEKDAY: Final = re.compile(
    r"^(?:mo|tu|we|th|fr|sa|su|di|mi|do|so|lu|ma|ju|vi|sá)[^\W\d_]*\.?,?\s+"
    r"(?=[0-9]+[./-]|[0-9]+\S*\s+[^\W\d_]{3}|[^\W\d_]{3,}\.?\s+[0-9])",
    re.IGNORECASE,
)
_TIME: Final = re.compile(r"[T\s]+[0-9]{1,2}:[0-9]{2}.*$")
_SERIAL: Final = re.compile(r"[0-9]{5}(?:\.[0-9]+)?")
_FIRST_SERIAL, _LAST_SERIAL = 20_000, 80_000


def date_order_shown(text: str) -> str:
    """Which order a date shows beyond doubt: "day first", "month first", or "" for either."""
    match = _NUMERIC.fullmatch(_bare_day(text))
    if match is None or match[2] == ".":
        return ""
    if int(match[1]) > 12:
        return "day first"
    return "month first" if int(match[3]) > 12 else ""


def looks_like_day(text: str) -> bool:
    """Whether the text is written as a day, in any order."""
    bare = _bare_day(text)
    if _ISO.fullmatch(bare) or _NUMERIC.fullmatch(bare) or _COMPACT.fullmatch(bare):
        return True
    named = _DAY_NAMED.fullmatch(bare) or _NAMED_DAY.fullmatch(bare)
    return named is not None and any(_month(part) for part in named.groups() if part.isalpha())


def looks_like_serial(text: str) -> bool:
    """Whether the text may be a workbook's number of a day."""
    return bool(_SERIAL.fullmatch(text)) and _FIRST_SERIAL <= float(text) <= _LAST_SERIAL


@lru_cache(maxsize=4096, typed=True)  # a table says the same few things often
def read_day(text: str, order: DateOrder, day_zero: date) -> date:
    """The day that a cell names. Raises CellProblem."""
    bare = _bare_day(text)
    if looks_like_serial(bare):
        return day_zero + timedelta(days=int(float(bare)))
    parts = _day_parts(bare, text, order)
    try:
        found = date(*parts)
    except ValueError:
        raise CellProblem(sentence("{text} is no day of the calendar", text=text)) from None
    if not 1900 < found.year < 2200:
        raise CellProblem(sentence("{text}: the year must lie after 1900", text=text))
    return found


def _day_parts(bare: str, text: str, order: DateOrder) -> tuple[int, int, int]:
    if match := _ISO.fullmatch(bare) or _COMPACT.fullmatch(bare):
        return int(match[1]), int(match[2]), int(match[3])
    if (match := _DAY_NAMED.fullmatch(bare)) and (month := _month(match[2])):
        return int(match[3]), month, int(match[1])
    if (match := _NAMED_DAY.fullmatch(bare)) and (month := _month(match[1])):
        return int(match[3]), month, int(match[2])
    match = _NUMERIC.fullmatch(bare)
    if match is None:
        raise CellProblem(sentence("{text!r} is no date: write it as 2026-11-30", text=text))
    first, second, year = int(match[1]), int(match[3]), int(match[4])
    year += 2000 if year < 100 else 0
    if match[2] == "." or order == "day first" or first == second:
        return year, second, first
    if order == "month first":
        return year, first, second
    raise CellProblem(
        sentence("{text} may be day or month first: say which under Dates", text=text)
    )


def _bare_day(text: str) -> str:
    return _WEEKDAY.sub("", _TIME.sub("", text.strip()), count=1).strip(" ,")


def _month(name: str) -> int:
    start = name.casefold()[:3]
    return next((n for n, names in enumerate(MONTHS, 1) if start in names), 0)


# --- numbers ------------------------------------------------------------------------------------


@lru_cache(maxsize=4096, typed=True)
def read_number(text: str, mark: DecimalMark) -> Decimal:
    """A number; a workbook's own numbers have a point, wherever. Raises CellProblem."""
    try:
        return parse_decimal(text, None if isinstance(text, Figure) else (mark or None))
    except InvalidQuantity as error:
        raise CellProblem(sentence_of(error)) from None


# --- loads --------------------------------------------------------------------------------------

_COUNT_WORDS: Final = frozenset(
    {"reps", "rep", "repetitions", "wdh", "wiederholungen", "repeticiones"}
)
_SET_WORDS: Final = frozenset({"sets", "set", "sätze", "saetze", "series"})
_PLAIN_TIMES: Final = re.compile(r"([0-9]+)\s*[x×*]\s*([0-9]+)", re.IGNORECASE)
_UNIT_WORDS: Final = {
    "kg": Unit.KG,
    "kgs": Unit.KG,
    "kilo": Unit.KG,
    "kilos": Unit.KG,
    "lb": Unit.LB,
    "lbs": Unit.LB,
    "pound": Unit.LB,
    "pounds": Unit.LB,
    "#": Unit.LB,
}
_UNIT: Final = r"(kgs?|kilos?|lbs?|pounds?|#)"
_FIGURE: Final = r"([+\-−]?\s?[0-9]*[.,]?[0-9]+)"
_ONE_LOAD: Final = re.compile(rf"@?\s*{_FIGURE}\s*{_UNIT}?\.?", re.IGNORECASE)
_BODY: Final = re.compile(
    rf"(?:bw|b\.w\.|body\s*-?\s*weight|körpergewicht|peso corporal)\s*(?:{_FIGURE}\s*{_UNIT}?)?",
    re.IGNORECASE,
)
_PAIR: Final = re.compile(rf"2\s*[x×*]\s*([0-9.,]+)\s*{_UNIT}?", re.IGNORECASE)
_SPAN: Final = re.compile(r"[0-9.,]+\s*[-–]\s*[0-9.,]+.*")
_NO_LOAD: Final = ("-", "–", "—", "/", "none", "n/a", "na")


def unit_of(text: str) -> Unit | None:
    """The unit that a cell or a heading names; None where it names none, or both."""
    words = {word.casefold() for word in re.findall(r"[^\W\d_]+|#", text)}
    found = {_UNIT_WORDS[word] for word in words if word in _UNIT_WORDS}
    return found.pop() if len(found) == 1 else None


@lru_cache(maxsize=4096, typed=True)
def read_loads(text: str, unit: Unit | None, mark: DecimalMark) -> Loads:
    """The load or loads of a cell: "60", "60kg", "135 lb", "BW+10", "2x24kg", "60/62.5/65".

    Grams per implement. ``unit``: of numbers that name none. Raises CellProblem.
    """
    plain = text.strip()
    if not plain or plain.casefold() in _NO_LOAD:
        return Loads()
    if match := _BODY.fullmatch(plain):
        if match[1] is None:
            return Loads((0,), body=True)
        added = _mass(match[1], match[2], unit, mark, text)
        if match[1].lstrip()[0] not in "+-−":
            raise CellProblem(
                sentence("{text!r}: write BW+10 for added load, BW-10 for help", text=text)
            )
        return Loads((added,), body=True)
    if match := _PAIR.fullmatch(plain):
        each = _mass(match[1], match[2], unit, mark, text)
        return Loads(
            (each,), doubt=sentence("{text}: read as a pair, each of that load", text=text)
        )
    if match := _ONE_LOAD.fullmatch(plain):
        return Loads((_mass(match[1], match[2], unit, mark, text, isinstance(text, Figure)),))
    if _SPAN.fullmatch(plain):
        raise CellProblem(sentence("{text!r} is a range: one load is needed", text=text))
    parts = _several(plain)
    named = next((unit_of(part) for part in reversed(parts) if unit_of(part)), unit)
    if len(parts) > 1 and all(_ONE_LOAD.fullmatch(part) for part in parts):
        return Loads(tuple(g for part in parts for g in read_loads(part, named, mark).grams))
    raise CellProblem(
        sentence("{text!r} is no load: allowed are 62.5, 62.5 kg, 135 lb, BW, BW+10", text=text)
    )


def _several(text: str) -> list[str]:
    """The parts of "60/62.5/65", "60, 62.5, 65" (comma and gap), "60; 65"."""
    for pattern in (r"\s*/\s*", r"\s*;\s*", r",\s+"):
        parts = re.split(pattern, text)
        if len(parts) > 1:
            return [part for part in parts if part]
    return [text]


def _mass(
    figure: str,
    named: str | None,
    unit: Unit | None,
    mark: DecimalMark,
    text: str,
    held: bool = False,
) -> int:
    plain = figure.replace(" ", "").replace("−", "-")
    value = read_number(Figure(plain) if held else plain, mark)
    own = _UNIT_WORDS[named.casefold()] if named else unit
    if own is None and value != 0:
        raise CellProblem(
            sentence("{text}: kg or lb? Say which under Loads without a unit", text=text)
        )
    try:
        return grams(value, own or Unit.KG)
    except InvalidQuantity as error:
        raise CellProblem(sentence_of(error)) from None


# --- repetitions and seconds --------------------------------------------------------------------

_WHOLE: Final = re.compile(r"([0-9]{1,5})(?:\.0+)?\s*(?:reps?|wdh\.?|r)?\.?", re.IGNORECASE)
_SECONDS: Final = re.compile(
    r"([0-9]{1,5})(?:\.0+)?\s*(?:s|secs?|seconds?|sek\.?|sekunden|segundos|\"|″)\.?", re.IGNORECASE
)
_CLOCK: Final = re.compile(r"([0-9]{1,2}):([0-5][0-9])(?::00)?(?:\s*min)?")
_MINUTES: Final = re.compile(
    r"([0-9]{1,2})\s*(?:min|mins|minutes?|minuten|minutos|')", re.IGNORECASE
)
_TIMES: Final = re.compile(r"([0-9]{1,2})\s*[x×*]\s*(.+)", re.IGNORECASE)
_DASHED: Final = re.compile(r"[0-9]{1,3}(?:\s*[-–]\s*[0-9]{1,3}){2,}")
_GAPPED: Final = re.compile(r"[0-9]{1,3}(?:\s+[0-9]{1,3})+")
_MOST_SETS: Final = 20


def counts_before_sets(heading: str) -> bool:
    """Whether a heading says that cells such as 12x3 name repetitions first: "Reps x Sets"."""
    plain = "".join(heading.casefold().replace("×", "x").split())
    first, _, second = plain.partition("x")
    return first in _COUNT_WORDS and second in _SET_WORDS


def sets_first(text: str) -> str:
    """ "12x3" of a column that names repetitions first as "3x12"; other cells as they are."""
    match = _PLAIN_TIMES.fullmatch(text.strip())
    return f"{match[2]}x{match[1]}" if match else text


@lru_cache(maxsize=4096, typed=True)
def read_counts(text: str, held: bool = False) -> Counts:
    """What a cell counts: "5", "3x5", "5/5/4", "8, 8, 7", "10 s", "0:30", "3 x 20s".

    ``held``: numbers without a unit are seconds. Raises CellProblem.
    """
    plain = text.strip()
    if not plain or plain.casefold() in _NO_LOAD:
        return Counts()
    if looks_like_day(plain) and not _NUMERIC.fullmatch(plain):
        raise CellProblem(
            sentence(
                "{text} is a day: a spreadsheet makes one of 5-5-4 and the like; type it as 5/5/4",
                text=text,
            )
        )
    if match := _TIMES.fullmatch(plain):
        return _repeated(int(match[1]), match[2], text, held)
    parts = _listed(plain)
    if len(parts) > _MOST_SETS:
        raise CellProblem(
            sentence(
                "{text!r}: more than {most_sets} sets in one cell", text=text, most_sets=_MOST_SETS
            )
        )
    read = [_one_count(part, text, held) for part in parts]
    # "3 x 20, 15 s": the unit behind the last one is that of all
    seconds = any(is_time for _, is_time in read)
    doubt = ""
    if len(parts) == 2 and "/" in plain:
        doubt = sentence("{text}: read as two sets; it may be left and right", text=text)
    return Counts(tuple(amount for amount, _ in read), seconds, doubt)


def _repeated(sets: int, rest: str, text: str, held: bool) -> Counts:
    if re.search(r"[x×*]", rest, re.IGNORECASE):
        raise CellProblem(sentence("{text!r} has three numbers: which one is the load?", text=text))
    if not 1 <= sets <= _MOST_SETS:
        raise CellProblem(
            sentence(
                "{text!r}: allowed are 1 to {most_sets} sets, as in 3x5",
                text=text,
                most_sets=_MOST_SETS,
            )
        )
    parts = _listed(rest)
    read = [_one_count(part, text, held) for part in parts]
    seconds = any(is_time for _, is_time in read)
    if len(read) == 1:
        return Counts((read[0][0],) * sets, seconds)
    if len(read) == sets:
        return Counts(tuple(amount for amount, _ in read), seconds)
    raise CellProblem(
        sentence("{text!r}: {sets} sets, but {read} counts", text=text, sets=sets, read=len(read))
    )


def _one_count(part: str, text: str, held: bool) -> tuple[int, bool]:
    if match := _SECONDS.fullmatch(part):
        return int(match[1]), True
    if match := _CLOCK.fullmatch(part):
        return int(match[1]) * 60 + int(match[2]), True
    if match := _MINUTES.fullmatch(part):
        return int(match[1]) * 60, True
    if match := _WHOLE.fullmatch(part):
        return int(match[1]), held
    if _SPAN.fullmatch(part):
        raise CellProblem(sentence("{text!r} is a range: what was done?", text=text))
    raise CellProblem(
        sentence("{text!r} is no count: allowed are 5, 3x5, 5/5/4, 20 s, 0:30", text=text)
    )


def _listed(text: str) -> list[str]:
    for pattern in (r"\s*/\s*", r"\s*[,;]\s*", r"\s*\+\s*"):
        parts = [part for part in re.split(pattern, text) if part]
        if len(parts) > 1:
            return parts
    if _DASHED.fullmatch(text):
        return [part.strip() for part in re.split("[-–]", text)]
    return text.split() if _GAPPED.fullmatch(text) else [text]
