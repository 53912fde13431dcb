"""Dates as people head their notes: "28/11", "Mon 3 Dec", "2026-11-28", "yesterday"."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Final

_MONTHS: Final = (
    "jan|ene", "feb", "mar|mär|mrz", "apr|abr", "may|mai", "jun", "jul", "aug|ago", "sep",
    "oct|okt", "nov", "dec|dez|dic",
)  # fmt: skip
_WEEKDAYS: Final = (
    "mon|monday|montag|lunes|lun|mo", "tue|tues|tuesday|dienstag|martes|mar|di",
    "wed|wednesday|mittwoch|miércoles|miercoles|mié|mie|mi",
    "thu|thur|thurs|thursday|donnerstag|jueves|jue|do", "fri|friday|freitag|viernes|vie|fr",
    "sat|saturday|samstag|sonnabend|sábado|sabado|sáb|sab|sa", "sun|sunday|sonntag|domingo|dom|so",
)  # fmt: skip
_NEAR_DAYS: Final = {"today": 0, "heute": 0, "hoy": 0, "yesterday": 1, "gestern": 1, "ayer": 1}

_MONTH: Final = rf"(?P<month>{'|'.join(_MONTHS)})[a-zäéû]*\.?"
_SHORT: Final = r"(?:mo|di|mi|do|fr|sa|so)"
_LONG: Final = "|".join(name for one in _WEEKDAYS for name in one.split("|") if len(name) > 2)
_DAY_FOLLOWS: Final = (
    r"[.,][ \t]*[0-9]|[ \t]+[0-3]?[0-9]\.(?:"
    rf"[ \t]*(?:{'|'.join(_MONTHS)})"
    r"|[01]?[0-9]\.(?:(?:20)?[0-9]{2})?(?![0-9])"
    r"|[01][0-9](?![0-9.]))"
)
"""What must follow a weekday of two letters, since "do" and "so" are words: ". 23", " 23.11."."""
_WEEKDAY: Final = rf"(?P<weekday>{_LONG}|{_SHORT}(?={_DAY_FOLLOWS}))"
_YEAR: Final = r"(?P<year>20[0-9]{2}|[0-9]{2})"
_END: Final = r"(?=$|[ \t]*[:,;()\[\]#*_–—-]|[ \t])(?![ \t]*[x×*][ \t]*[0-9])"
_FORMS: Final = (
    r"(?P<iso>20[0-9]{2}-[01][0-9]-[0-3][0-9])(?![0-9-])",
    rf"(?P<a>[0-9]{{1,2}})(?P<mark>[./-])(?P<b>[0-9]{{1,2}})(?:(?P=mark)(?:{_YEAR})?)?(?![0-9/x×.,-])",
    rf"(?P<day>[0-9]{{1,2}})(?:\.|st|nd|rd|th)?[ \t]*(?:de[ \t]+)?{_MONTH}"
    rf"(?:[ \t]*,?[ \t]*(?:de[ \t]+)?(?P<year>20[0-9]{{2}}))?(?![^\W_])",
    rf"{_MONTH}[ \t]+(?P<day>[0-9]{{1,2}})(?:st|nd|rd|th)?(?:[ \t]*,?[ \t]*(?P<year>20[0-9]{{2}}))?"
    r"(?![0-9x×]|[ \t]*[x×])",
)
_HEADINGS: Final = tuple(
    re.compile(rf"(?:{_WEEKDAY}(?![^\W_])[.,:]?[ \t]*(?:the[ \t]+)?)?{form}{_END}")
    for form in _FORMS
)
_DAY_NAME: Final = re.compile(rf"(?:{_WEEKDAY}|(?P<near>{'|'.join(_NEAR_DAYS)}))(?![^\W_]){_END}")
_AFTER: Final = re.compile(r"[ \t]*(?:[:,;)\]–—#*_-]+(?=[ \t]|$)|[:)\]*_]+)?[ \t]*")
_WEEK: Final = timedelta(days=7)
_SOON: Final = timedelta(days=60)
"""So far ahead a date without year may be meant all the same; it is asked."""
_LONG_AGO: Final = timedelta(days=366)


@dataclass(frozen=True, slots=True)
class Heading:
    """A date at the head of notes: where it ends, the likeliest day, and others it may be."""

    end: int
    text_end: int
    day: date
    others: tuple[date, ...] = ()


def heading_at(
    text: str, at: int, end: int, today: date, day_first: bool | None, *, numbers_open: bool = False
) -> Heading | None:
    """The date that stands at ``at``, None where none does. Without a year it is the last such
    day up to ``today``. ``numbers_open``: an exercise is open, so that "12/10" may be its
    repetitions; then only a date with a year or a weekday counts.
    """
    for pattern in _HEADINGS:
        found = pattern.match(text, at, end)
        if found is None:
            continue
        parts = found.groupdict()
        bare = parts.get("a") and not parts["weekday"] and not parts.get("year")
        if bare and not _is_date(text[found.end() : end].strip(), parts["mark"], numbers_open):
            continue
        days = list(dict.fromkeys(_days(parts, today, day_first)))
        if days:
            return _heading(text, found.end(), end, days)
    found = _DAY_NAME.match(text, at, end)
    if found is None:
        return None
    if found["near"]:
        return _heading(text, found.end(), end, [today - timedelta(_NEAR_DAYS[found["near"]])])
    last = _last_weekday(found["weekday"], today)
    near = [last] if last == today else [last, last - _WEEK]
    return _heading(text, found.end(), end, near)


def _heading(text: str, text_end: int, end: int, days: list[date]) -> Heading:
    after = _AFTER.match(text, text_end, end)
    return Heading(after.end() if after else text_end, text_end, days[0], tuple(days[1:]))


def _is_date(rest: str, mark: str | None, numbers_open: bool) -> bool:
    """Whether a bare "28/11" is a date by the ``rest`` of its line: alone or before a colon where
    no exercise is open, or before words and more numbers.
    """
    words = rest.strip(" \t:;,#*_–—-()[]")
    if not words:
        return not numbers_open
    return words[0].isalpha() and mark != "-" and any(each.isdigit() for each in words)


def _days(parts: dict[str, str | None], today: date, day_first: bool | None) -> Iterator[date]:
    """The days that a date may mean, the likeliest first."""
    year = None if not parts.get("year") else int(parts["year"] or 0) % 100 + 2000
    if parts.get("iso"):
        yield from _made(*(int(part) for part in (parts["iso"] or "").split("-")))
    elif parts.get("month"):
        month = next(
            number for number, names in enumerate(_MONTHS, 1) if parts["month"] in names.split("|")
        )
        yield from _dated(int(parts["day"] or 0), month, year, today)
    else:
        a, b = int(parts["a"] or 0), int(parts["b"] or 0)
        first = day_first is not False or parts["mark"] == "."
        yield from _dated(*((a, b) if first else (b, a)), year, today)
        if day_first is None and parts["mark"] != ".":
            yield from _dated(b, a, year, today)
        elif not list(_dated(*((a, b) if first else (b, a)), year, today)):
            swapped = list(_dated(*((b, a) if first else (a, b)), year, today))
            yield from (*swapped, today) if swapped else ()


def _dated(day: int, month: int, year: int | None, today: date) -> Iterator[date]:
    if year is not None:
        found = list(_made(year, month, day))
        yield from found if found and abs(found[0] - today) < 20 * _LONG_AGO else ()
        return
    ahead = [made for made in _made(today.year, month, day) if today < made <= today + _SOON]
    for guess in range(today.year, today.year - 5, -1):
        for made in _made(guess, month, day):
            if made <= today:
                yield from (made, *ahead)
                return


def _made(year: int, month: int, day: int) -> Iterator[date]:
    try:
        yield date(year, month, day)
    except ValueError:
        return


def _last_weekday(name: str, today: date) -> date:
    number = next(at for at, names in enumerate(_WEEKDAYS) if name in names.split("|"))
    return today - timedelta(days=(today.weekday() - number) % 7)
