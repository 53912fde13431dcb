"""Sentences of store, model and use cases in the language of the screens: errors, doubts, names.

QtCore only, and nothing that a window does not need before its first paint.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from enum import StrEnum
from numbers import Number
from string import Formatter
from typing import Any, Final

from PySide6.QtCore import QCoreApplication, QLocale

from desktop.training.sentence import Case, Sentence, system_words
from views.calendar_words import full_day

translate = QCoreApplication.translate

_CAPITAL_NOUNS: Final = (QLocale.Language.German, QLocale.Language.Luxembourgish)


class _Spoken(Formatter):
    """Fills values in as they are said: sentences within, decimal marks, days."""

    def get_value(self, key: int | str, args: Sequence[Any], kwargs: Any) -> Any:
        value = super().get_value(key, args, kwargs)
        if isinstance(value, StrEnum):
            return translate("Sentences", value.value)
        return worded(value) if isinstance(value, (str, BaseException)) else value

    def format_field(self, value: Any, format_spec: str) -> Any:
        if isinstance(value, date):
            return full_day(value)
        text = format(value, format_spec)
        fraction = isinstance(value, Number) and not isinstance(value, int)
        return text.replace(".", QLocale().decimalPoint()) if fraction else text


def worded(text: object) -> str:
    """What the store or a use case says: an error, a sentence, a value in one."""
    if isinstance(text, BaseException):
        text = text.args[0] if text.args and isinstance(text.args[0], Sentence) else str(text)
    if not isinstance(text, Sentence):
        plain = str(text)
        return translate("Sentences", plain) if plain in system_words() else plain
    spoken = _Spoken().vformat(translate("Sentences", text.pattern), (), text.values)
    match text.case:
        case Case.CAPITAL:
            return spoken[:1].upper() + spoken[1:]
        case Case.SMALL:
            return small(spoken)
    return spoken


def small(text: str) -> str:
    """A name within a sentence: in small letters, where the language writes nouns so."""
    return text if QLocale().language() in _CAPITAL_NOUNS else text.lower()


def begun_small(text: str) -> str:
    """A name behind another word: begun small, where the language writes nouns so."""
    return f"{small(text[:1])}{text[1:]}"
