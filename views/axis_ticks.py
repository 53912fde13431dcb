"""Ticks of a chart: whole days in the words of the locale, and round numbers."""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Final

from PySide6.QtCore import QDate, QLocale

_WEEK: Final = 7
_WEEKS: Final = (1, 2, 4, 8)
_MONTHS: Final = (1, 2, 3, 6)
_YEARS: Final = (1, 2, 5, 10, 20, 50)
_WEEKS_UP_TO: Final = 40
"""Weeks shown beyond which months are easier to read than weeks."""


@dataclass(frozen=True, slots=True)
class DayTick:
    """A day (its ordinal) and what stands under it."""

    day: int
    text: str


def day_ticks(
    first: float, last: float, most: int, week_starts: int = 0, locale: QLocale | None = None
) -> tuple[DayTick, ...]:
    """At most ``most`` ticks between two ordinals: first days of weeks, months or years.

    ``week_starts``: 0 = Monday.
    """
    chosen = locale or QLocale()
    low, high = math.ceil(max(first, 1)), math.floor(min(last, date.max.toordinal()))
    if high < low:
        return ()
    most = max(most, 1)
    if high - low <= _WEEKS_UP_TO * _WEEK:
        for weeks in _WEEKS:
            if (high - low) / (weeks * _WEEK) <= most:
                return _weekly(low, high, weeks, week_starts, chosen)
    for months in _MONTHS:
        if (high - low) / (months * 30.4) <= most:
            return _monthly(low, high, months, chosen)
    for years in _YEARS:
        if (high - low) / (years * 365.25) <= most:
            return _yearly(low, high, years, chosen)
    return _yearly(low, high, _YEARS[-1] * 2, chosen)


def short_date(day: date, locale: QLocale | None = None) -> str:
    """A day without its year, as short as the locale allows: "10 Aug", "Aug 10"."""
    chosen = locale or QLocale()
    order = chosen.dateFormat(QLocale.FormatType.ShortFormat)
    month_first = order.upper().find("M") < order.upper().find("D")
    pattern = "MMM d" if month_first else f"d{'.' if '.' in order else ''} MMM"
    return chosen.toString(QDate(day.year, day.month, day.day), pattern)


def round_ticks(low: float, high: float, most: int) -> tuple[float, ...]:
    """At most ``most`` round numbers (steps of 1, 2, 5 and their tens) from low to high."""
    if not high > low:
        return ()
    step = 10.0 ** math.floor(math.log10((high - low) / max(most, 1)))
    while (high - low) / step > most:
        step = _next_step(step)
    first, last = math.ceil(low / step - 1e-9), math.floor(high / step + 1e-9)
    return tuple(round(count * step, 10) for count in range(first, last + 1))


def _next_step(step: float) -> float:
    lead = round(step / 10.0 ** math.floor(math.log10(step) + 1e-9))
    return step * (2.5 if lead == 2 else 2)


def _weekly(
    low: int, high: int, weeks: int, week_starts: int, locale: QLocale
) -> tuple[DayTick, ...]:
    # Day 1 is a Monday. The count of weeks decides, so that ticks stay on their days when moved.
    start = low + (week_starts - (low - 1)) % _WEEK
    days = (day for day in range(start, high + 1, _WEEK) if (day // _WEEK) % weeks == 0)
    return tuple(DayTick(day, short_date(date.fromordinal(day), locale)) for day in days)


def _monthly(low: int, high: int, months: int, locale: QLocale) -> tuple[DayTick, ...]:
    found = (day for day in _months(low, high) if (day.month - 1) % months == 0)
    return tuple(DayTick(day.toordinal(), _month_text(day, locale)) for day in found)


def _month_text(day: date, locale: QLocale) -> str:
    """The month's short name; January says the year, as it turns."""
    if day.month == 1:
        return str(day.year)
    return locale.standaloneMonthName(day.month, QLocale.FormatType.ShortFormat)


def _yearly(low: int, high: int, years: int, locale: QLocale) -> tuple[DayTick, ...]:
    found = (day for day in _months(low, high) if day.month == 1 and day.year % years == 0)
    return tuple(DayTick(day.toordinal(), str(day.year)) for day in found)


def _months(low: int, high: int) -> Iterable[date]:
    day = date.fromordinal(low).replace(day=1)
    while day.toordinal() <= high:
        if day.toordinal() >= low:
            yield day
        if day.year == date.max.year and day.month == 12:
            return
        day = (day + timedelta(days=31)).replace(day=1)
