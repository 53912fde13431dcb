"""Numbers, days and spans as a person reads them: what is said without the model.

QtCore only. Functions use the default QLocale (set once at the start) unless another is given.
`views.words` has all of this and the words of the trade.
"""

from __future__ import annotations

from datetime import date
from functools import lru_cache
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication, QDate, QLocale

if TYPE_CHECKING:
    from decimal import Decimal

translate = QCoreApplication.translate

MINUS = "\N{MINUS SIGN}"


def number(value: Decimal | float, most_decimals: int = 2, locale: QLocale | None = None) -> str:
    """A number with as many decimals as it needs, at most `most_decimals`; no groups."""
    if isinstance(value, int):
        return str(value).replace("-", MINUS)
    from decimal import Decimal  # not needed before the first paint

    place = Decimal(1).scaleb(-most_decimals)
    exact = Decimal(repr(value)) if isinstance(value, float) else Decimal(value)
    plain = f"{exact.quantize(place).normalize() + 0:f}"
    mark = (locale or QLocale()).decimalPoint()
    return plain.replace("-", MINUS).replace(".", mark)


def days(count: int) -> str:
    """A number of days: "1 day", "19 days"."""
    if count == 1:
        return translate("Words", "1 day")
    return translate("Words", "{count} days").format(count=number(count))


def weeks(count: int) -> str:
    """A number of weeks: "1 week", "8 weeks"."""
    if count == 1:
        return translate("Words", "1 week")
    return translate("Words", "{count} weeks").format(count=number(count))


def long_day(day: date, locale: QLocale | None = None) -> str:
    """A day with its weekday for a heading, without the year: "Thursday 26 November"."""
    chosen = locale or QLocale()
    text = chosen.toString(_day(day), f"dddd {day_and_month(chosen)}")
    return f"{text[:1].upper()}{text[1:]}"


def day_and_month(locale: QLocale, *, year: bool = False) -> str:
    """The pattern of a day with the whole name of its month, as the locale orders and joins them:
    "d MMMM", "MMMM d, yyyy", "d. MMMM", "d 'de' MMMM 'de' yyyy".
    """
    order = locale.dateFormat(QLocale.FormatType.ShortFormat)
    if order.upper().find("M") < order.upper().find("D"):
        return "MMMM d, yyyy" if year else "MMMM d"
    of = "'de' " if "'de' MMMM" in locale.dateFormat(QLocale.FormatType.LongFormat) else ""
    pattern = f"d{'.' if '.' in order else ''} {of}MMMM"
    return f"{pattern} {of}yyyy" if year else pattern


def short_day(day: date, today: date | None = None, locale: QLocale | None = None) -> str:
    """A day in a sentence: "Mon 23 Nov"; with the year where `today` lies in another one."""
    return _short(day, today, locale, "ddd ")


def short_date(day: date, today: date | None = None, locale: QLocale | None = None) -> str:
    """A day without its weekday: "23 Nov"; with the year where `today` lies in another one."""
    return _short(day, today, locale, "")


def full_day(day: date, locale: QLocale | None = None) -> str:
    """A day as the locale writes it in short, with all of its year: "26/11/2026"."""
    chosen = locale or QLocale()
    pattern = chosen.dateFormat(QLocale.FormatType.ShortFormat)
    if "yyyy" not in pattern:
        pattern = pattern.replace("yy", "yyyy")
    return chosen.toString(_day(day), pattern)


def weekday(index: int, locale: QLocale | None = None) -> str:
    """The name of a weekday, 0 = Monday."""
    return (locale or QLocale()).standaloneDayName(index + 1, QLocale.FormatType.LongFormat)


def short_weekday(index: int, locale: QLocale | None = None) -> str:
    """The short name of a weekday, 0 = Monday."""
    return (locale or QLocale()).standaloneDayName(index + 1, QLocale.FormatType.ShortFormat)


def weekdays_in_order(locale: QLocale | None = None) -> tuple[int, ...]:
    """All weekdays (0 = Monday) from the first day of the week of the locale."""
    first = (locale or QLocale()).firstDayOfWeek().value - 1
    return tuple((first + step) % 7 for step in range(7))


def _day(day: date) -> QDate:
    return QDate(day.year, day.month, day.day)


def _short(day: date, today: date | None, locale: QLocale | None, weekday_pattern: str) -> str:
    chosen = locale or QLocale()
    other_year = today is not None and today.year != day.year
    return _said(day, weekday_pattern, other_year, chosen.name())


@lru_cache(maxsize=1024)
def _said(day: date, weekday_pattern: str, with_year: bool, locale_name: str) -> str:
    """The same few days stand in hundreds of rows."""
    chosen = QLocale(locale_name)
    order = chosen.dateFormat(QLocale.FormatType.ShortFormat).upper()
    month_first = order.find("M") < order.find("D")
    dotted = "." if "." in order else ""
    pattern = weekday_pattern + ("MMM d" if month_first else f"d{dotted} MMM")
    if with_year:
        pattern += ", yyyy" if month_first else " yyyy"
    return chosen.toString(_day(day), pattern)
