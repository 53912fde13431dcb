"""The sentence of each reason of the model, with places for its values.

QtCore only. `views.reason_texts` fills the places.
"""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from desktop.training.position import Variable
from desktop.training.reasons import RETEST_NOTE, Reason, ReasonCode
from views import words

translate = QCoreApplication.translate


def pattern_of(reason: Reason) -> str:
    """The sentence of a reason; its places are named as the values of the reason."""
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
    for group in (_judged, _moved, _asked):
        if text := group().get(reason.code):
            return text
    raise KeyError(f"no sentence for {reason.code}")


def share_pattern_of(reason: Reason) -> str:
    """What a reason says of shares of body mass; "" where it says nothing."""
    if reason.get("share_before") is None or reason.get("share_after") is None:
        return ""
    if reason.get("plus_minus") is None:
        return translate("Reasons", "({share_before} becomes {share_after} of body mass)")
    return translate(
        "Reasons", "(about {share_before} becomes {share_after} of body mass, ± {plus_minus})"
    )


def correctable_text(sessions: int) -> str:
    """Which sessions may still correct a start."""
    if sessions == 1:
        return translate("Reasons", "the first session may correct it")
    text = translate("Reasons", "the first {count} sessions may correct it")
    return text.format(count=words.number(sessions))


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


def _judged() -> dict[ReasonCode, str]:
    """What became of a session, where the position stays."""
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
        ReasonCode.EXCLUDED_DELOAD: translate("Reasons", "A deload is not counted"),
        ReasonCode.EXCLUDED_TEST: translate("Reasons", "A test is not counted"),
        ReasonCode.EXCLUDED_HELD: translate("Reasons", "Done while nothing was asked: not counted"),
        ReasonCode.IN_BETWEEN: translate(
            "Reasons", "{after} is {over} more, too large a jump: {reps_needed} reps here first"
        ),
        ReasonCode.COMPLETE: translate(
            "Reasons", "The rule is at its end: say what should grow next"
        ),
        ReasonCode.PLATEAU: translate(
            "Reasons", "Back to the same place twice in {weeks} weeks: a deload or another variable"
        ),
    }  # fmt: skip


def _moved() -> dict[ReasonCode, str]:
    """What moved the position."""
    return {
        ReasonCode.BACK_OFF: translate(
            "Reasons", "Missed {misses} in a row: {variable} back, {before} becomes {after}"
        ),
        ReasonCode.BACK_OFF_IMPOSSIBLE: translate(
            "Reasons", "Missed {misses} in a row, and nothing easier can be set up"
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
        ReasonCode.START_CORRECTED: translate(
            "Reasons", "The start corrected: {before_g} becomes {after_g}"
        ),
        ReasonCode.CLEARED: translate("Reasons", "Cleared by a licensed professional: goes on"),
    }  # fmt: skip


def _asked() -> dict[ReasonCode, str]:
    """What bears on a day, whatever the position."""
    return {
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
        ReasonCode.TEST: translate(
            "Reasons", "A test, no maximum: stop with {stop_rir} clean repetitions left"
        ),
        ReasonCode.START_NEEDED: translate("Reasons", "A start is needed: assess, or enter one"),
        ReasonCode.CLEARANCE_NEEDED: translate(
            "Reasons", "Nothing is asked until a licensed professional's clearance is recorded"
        ),
        ReasonCode.PROPOSE_DAY: translate("Reasons", "Ready for one more day: {weekday}"),
        ReasonCode.PROPOSE_DAY_IMPOSSIBLE: translate(
            "Reasons", "Ready for one more day, but {weekdays} leave no full day between"
        ),
    }  # fmt: skip
