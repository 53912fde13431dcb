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
from desktop.training.reasons import RETEST_NOTE, Reason, ReasonCode, ReasonValue
from desktop.training.session import Outcome
from views import words

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
    sentence = _sentence(reason)
    return " ".join(_Filled(spoken).format(part) for part in (sentence, _share(reason)) if part)


def reasons_text(reasons: Sequence[Reason], unit: Unit, today: date | None = None) -> str:
    """Several reasons one after the other: "Deload: … . 19 days since the last time: …"."""
    return ". ".join(reason_text(each, unit, today) for each in reasons)


def correctable_text(sessions: int) -> str:
    """Which sessions may still correct a start."""
    if sessions == 1:
        return translate("Reasons", "the first session may correct it")
    text = translate("Reasons", "the first {count} sessions may correct it")
    return text.format(count=words.number(sessions))


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


def _sentence(reason: Reason) -> str:
    match reason.code:
        case ReasonCode.GROW:
            return _grow(reason)
        case ReasonCode.ROLL_OVER:
            return _roll_over(reason)
        case ReasonCode.START:
            return _start(reason)
        case ReasonCode.IN_BETWEEN if reason.get("reps_needed") is None:
            return translate("Reasons", "{after} is {over} more, too large a jump for now")
        case ReasonCode.REPEAT_RESERVE if reason.get("rir") is None:
            return translate(
                "Reasons", "Again, and note the reps in reserve: {needed} are needed to go on"
            )
        case ReasonCode.OVERRIDE if reason.get("note") == RETEST_NOTE:
            return translate("Reasons", "From the re-test{on_day}")
        case ReasonCode.OVERRIDE if reason.get("note"):
            return translate("Reasons", "Set by the coach{on_day}: {note}")
        case ReasonCode.TEST if reason.get("hold"):
            return translate(
                "Reasons", "A test, no maximum: stop while the position is still clean"
            )
        case ReasonCode.TEST if reason.get("rising"):
            return translate(
                "Reasons",
                "A test, no maximum: loads rise; stop after the first set with {stop_rir} or fewer "
                "clean repetitions left",
            )
        case ReasonCode.BACK_OFF if reason.get("instead_of"):
            return translate(
                "Reasons",
                "Missed {misses} in a row, and {instead_of} cannot go back: {variable} does, "
                "{before} becomes {after}",
            )
        case ReasonCode.LIFT_ASKED if reason.get("done_g") is None:
            return translate(
                "Reasons",
                "{done} was done where {asked} was asked, too far above to follow. Is it right?",
            )
        case ReasonCode.RANGE_CHANGED if reason.get("after") is None:
            return translate("Reasons", "A new range, in which the line stays")
        case ReasonCode.RANGE_CHANGED if reason.get("before") is None:
            return translate("Reasons", "New range: {after}")
        case ReasonCode.FOLLOWS if not reason.get("line"):
            return translate("Reasons", "{percent} % of the main line")
    return _fixed(reason.code)


def _grow(reason: Reason) -> str:
    if reason.get("before") is None:
        return translate("Reasons", "All sets as asked{on_day}: now {after}")
    match reason.get("variable"):
        case Variable.REPS.value:
            return translate("Reasons", "Every set reached {before}{on_day}: now {after}")
        case Variable.HOLD.value:
            return translate("Reasons", "Held {before} in every set{on_day}: now {after}")
        case Variable.SETS.value:
            return translate("Reasons", "All sets as asked{on_day}: now {after}")
        case Variable.TEMPO.value:
            return translate("Reasons", "As asked{on_day}: slower, {after} a repetition")
    return translate("Reasons", "As asked{on_day}: {before} becomes {after}")


def _roll_over(reason: Reason) -> str:
    if reason.get("restart") is None:
        return translate("Reasons", "Top of the range{on_day}: {before} becomes {after}")
    return translate(
        "Reasons", "Top of the range at {amount}{on_day}: {before} becomes {after}, from {restart}"
    )


def _share(reason: Reason) -> str:
    if reason.get("share_before") is None or reason.get("share_after") is None:
        return ""
    if reason.get("plus_minus") is None:
        return translate("Reasons", "({share_before} becomes {share_after} of body mass)")
    return translate(
        "Reasons", "(about {share_before} becomes {share_after} of body mass, ± {plus_minus})"
    )


def _start(reason: Reason) -> str:
    """Where a line starts, how sure that is, and which sessions may correct it."""
    kind, sessions = str(reason.get("kind", "")), reason.get("sessions")
    text = _start_by(kind)
    if reason.get("plus_minus") is not None:
        text = f"{text}, ± {{plus_minus}} %"
    if isinstance(sessions, int) and sessions:
        text = f"{text}; {correctable_text(sessions)}"
    return text


def _start_by(kind: str) -> str:
    return {
        "coach": translate("Reasons", "The start that the coach set"),
        "assessment": translate("Reasons", "Start from a test"),
        "history": translate("Reasons", "The start by what was done before"),
        "program": translate("Reasons", "The start that the program gives"),
    }.get(kind, translate("Reasons", "The start"))


def _fixed(code: ReasonCode) -> str:
    return {
        ReasonCode.REPEAT_MET: translate(
            "Reasons", "As asked {streak} of {needed} times in a row: once more"
        ),
        ReasonCode.REPEAT_RESERVE: translate(
            "Reasons", "{rir} reps in reserve, {needed} needed to go on: the same again"
        ),
        ReasonCode.REPEAT_LAST_SET: translate(
            "Reasons", "{done} in the last set, {needed} needed to go on: the same again"
        ),
        ReasonCode.REPEAT_HARD: translate(
            "Reasons", "Done, but hard: {rir} reps in reserve where {target_rir} were meant"
        ),
        ReasonCode.IMPROVED: translate(
            "Reasons", "{total} in all, {before} the last time: the same again"
        ),
        ReasonCode.PARTIAL: translate("Reasons", "{done} of {asked} sets done: the same again"),
        ReasonCode.MISSED: translate(
            "Reasons", "Less than asked ({streak} of {allowed} in a row): the same again"
        ),
        ReasonCode.SKIPPED: translate("Reasons", "Not done the last time: the same again"),
        ReasonCode.CLEARED: translate("Reasons", "Cleared by a licensed professional: goes on"),
        ReasonCode.EXCLUDED_DELOAD: translate("Reasons", "A deload is not counted"),
        ReasonCode.EXCLUDED_TEST: translate("Reasons", "A test is not counted"),
        ReasonCode.EXCLUDED_HELD: translate("Reasons", "Done while nothing was asked: not counted"),
        ReasonCode.BACK_OFF: translate(
            "Reasons", "Missed {misses} in a row: {variable} back, {before} becomes {after}"
        ),
        ReasonCode.BACK_OFF_IMPOSSIBLE: translate(
            "Reasons", "Missed {misses} in a row, and nothing easier can be set up"
        ),
        ReasonCode.PLATEAU: translate(
            "Reasons", "Back to the same place twice in {weeks} weeks: a deload or another variable"
        ),
        ReasonCode.IN_BETWEEN: translate(
            "Reasons", "{after} is {over} more, too large a jump: {reps_needed} reps here first"
        ),
        ReasonCode.COMPLETE: translate(
            "Reasons", "The rule is at its end: say what should grow next"
        ),
        ReasonCode.LIFTED: translate(
            "Reasons", "Done above what was asked: {before_g} becomes {after_g}"
        ),
        ReasonCode.LIFT_ASKED: translate(
            "Reasons", "{done_g} was done where {asked_g} was asked, too far above to follow. "
            "Is it right?"
        ),
        ReasonCode.RANGE_CHANGED: translate(
            "Reasons", "New range: {before} becomes {after}"
        ),
        ReasonCode.EQUIPMENT_LOST: translate(
            "Reasons", "{before_g} cannot be made with the equipment: {after_g}"
        ),
        ReasonCode.VARIATION_LOST: translate(
            "Reasons", "{before} cannot be set up with the equipment: {after}"
        ),
        ReasonCode.OVERRIDE: translate("Reasons", "Set by the coach{on_day}"),
        ReasonCode.PAIN_NO_INCREASE: translate("Reasons", "Pain {pain} of 10: no increase"),
        ReasonCode.PAIN_HOLD: translate(
            "Reasons", "Pain {pain} of 10: nothing is asked until you choose lighter, a "
            "substitute or a clearance"
        ),
        ReasonCode.GAP_REPEAT: translate(
            "Reasons", "{days} since the last time: the last again"
        ),
        ReasonCode.GAP_LIGHTER: translate(
            "Reasons", "{days} since the last time: {percent} % lighter"
        ),
        ReasonCode.GAP_TO_FLOOR: translate(
            "Reasons", "{days} since the last time: from the bottom of the range"
        ),
        ReasonCode.GAP_EASIER: translate(
            "Reasons", "{days} since the last time: one variation easier"
        ),
        ReasonCode.GAP_RESTART: translate(
            "Reasons", "{days} since the last time: a new start is needed"
        ),
        ReasonCode.DELOAD: translate(
            "Reasons", "Deload: sets times {sets_factor}, {load_percent} % lighter"
        ),
        ReasonCode.FOLLOWS: translate("Reasons", "{percent} % of {line}"),
        ReasonCode.PROPOSE_DAY: translate("Reasons", "Ready for one more day: {weekday}"),
        ReasonCode.PROPOSE_DAY_IMPOSSIBLE: translate(
            "Reasons", "Ready for one more day, but {weekdays} leave no full day between"
        ),
        ReasonCode.START_NEEDED: translate("Reasons", "A start is needed: assess, or enter one"),
        ReasonCode.CLEARANCE_NEEDED: translate(
            "Reasons", "Nothing is asked until a licensed professional's clearance is recorded"
        ),
        ReasonCode.TEST: translate(
            "Reasons", "A test, no maximum: stop with {stop_rir} clean repetitions left"
        ),
        ReasonCode.START_CORRECTED: translate(
            "Reasons", "The start corrected: {before_g} becomes {after_g}"
        ),
    }[code]  # fmt: skip
