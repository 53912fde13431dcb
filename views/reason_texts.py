"""A sentence for every reason, outcome and proposal of the model.

QtCore only, so that the command line says the same as the screens. Sentences are plain text; they
begin with a capital and have no full stop at the end, so that they can stand alone or be joined.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from PySide6.QtCore import QCoreApplication

from desktop.training.position import Variable
from desktop.training.quantities import Unit
from desktop.training.reasons import Reason, ReasonValue
from desktop.training.session import Outcome
from views import words
from views.reason_sentences import pattern_of, share_pattern_of

translate = QCoreApplication.translate

_FRACTIONS = frozenset({"over", "probability", "share", "share_before", "share_after"})
_SPANS = frozenset({"days"})
_BY_VARIABLE = frozenset({"before", "after"})


def reason_text(reason: Reason, unit: Unit, today: date | None = None) -> str:
    """Why, in one sentence: masses in `unit`, numbers and dates by locale.

    ``today`` lets dates of another year show it.
    """
    spoken = {name: _spoken(reason, name, value, unit, today) for name, value in reason.values}
    spoken["on_day"] = ""
    if isinstance(day := reason.get("day"), date):
        text = translate("Reasons", " on {day}")
        spoken["on_day"] = text.format(day=words.short_day(day, today))
    parts = (pattern_of(reason), share_pattern_of(reason))
    return " ".join(_Filled(spoken).format(part) for part in parts if part)


def reasons_text(reasons: Sequence[Reason], unit: Unit, today: date | None = None) -> str:
    """Several reasons one after the other: "Deload: … . 19 days since the last time: …"."""
    return ". ".join(reason_text(each, unit, today) for each in reasons)


def outcome_text(outcome: Outcome) -> str:
    """What became of what was asked, in words."""
    return {
        Outcome.EXCEEDED: translate("Outcomes", "more than asked"),
        Outcome.MET: translate("Outcomes", "as asked"),
        Outcome.IMPROVED: translate("Outcomes", "less than asked, but more than last time"),
        Outcome.PARTIAL: translate("Outcomes", "fewer sets, each as asked"),
        Outcome.MISSED: translate("Outcomes", "less than asked"),
        Outcome.SKIPPED: translate("Outcomes", "not done"),
        Outcome.EXCLUDED: translate("Outcomes", "done, not counted"),
    }[outcome]


class _Filled:
    """Fills a sentence's places; a value that the reason does not carry is left out."""

    def __init__(self, values: dict[str, str]) -> None:
        self._values = values

    def __getitem__(self, name: str) -> str:
        return self._values.get(name, "")

    def format(self, sentence: str) -> str:
        return sentence.format_map(self)


def _spoken(reason: Reason, name: str, value: ReasonValue, unit: Unit, today: date | None) -> str:
    if value is None:
        return ""
    if name in _BY_VARIABLE and "variable" in dict(reason.values):
        return amount_text(str(reason["variable"]), value, unit)
    if isinstance(value, date):
        return words.short_day(value, today)
    if isinstance(value, bool | str):
        return _spoken_text(name, str(value))
    if name == "weekday":
        return words.weekday(int(value))
    if name.endswith("_g"):
        return words.load(round(value), unit)
    if name in _SPANS:
        return words.days(int(value))
    if name == "misses":
        return words.times(int(value))
    if name in _FRACTIONS:
        return words.percent(value)
    if name == "plus_minus":
        return words.number(value * 100, 0)
    return words.number(value, 1)


def _spoken_text(name: str, text: str) -> str:
    if name in ("variable", "variables", "reset", "instead_of"):
        return words.listed([words.variable(part.strip()) for part in text.split(",")])
    if name == "weekdays":
        return words.listed([words.weekday(int(part)) for part in text.split(",")])
    return text


def amount_text(variable: str, value: ReasonValue, unit: Unit) -> str:
    """One variable's value as it is read in a sentence: "62.5 kg", "9 reps", "20 s"."""
    if isinstance(value, bool) or not isinstance(value, int | float):
        return "" if value is None else str(value)
    match variable:
        case Variable.LOAD.value:
            return words.load(round(value), unit)
        case Variable.REPS.value:
            return words.reps(int(value))
        case Variable.HOLD.value | Variable.TEMPO.value:
            return words.hold(int(value))
        case Variable.SETS.value:
            return words.sets(int(value))
    return words.number(value)
