"""Words for rules: the ready-made ones with a sentence each, criteria, misses, sets."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from desktop.training.position import (
    BackOff,
    CriterionKind,
    SchemeKind,
    Variable,
    WhenSlower,
)
from desktop.training.rules import ReadyRule

translate = QCoreApplication.translate


def rule_name(kind: ReadyRule | None) -> str:
    """A ready-made rule by its plain name; None is a rule of the coach's own."""
    if kind is None:
        return translate("Rules", "a rule of your own")
    return {
        ReadyRule.LOAD: translate("Rules", "linear loading"),
        ReadyRule.REPS_LOAD: translate("Rules", "repetitions, then load"),
        ReadyRule.REPS_SETS_LOAD: translate("Rules", "repetitions, sets, then load"),
        ReadyRule.REPS_VARIATION: translate("Rules", "repetitions, then a harder variation"),
        ReadyRule.HOLD_VARIATION: translate("Rules", "hold, then a harder variation"),
        ReadyRule.HOLD_LOAD: translate("Rules", "hold, then load"),
        ReadyRule.TEMPO_REPS: translate("Rules", "slow tempo first"),
        ReadyRule.TOTAL_REPS: translate("Rules", "total repetitions"),
        ReadyRule.FIXED: translate("Rules", "fixed"),
    }[kind]


def rule_sentence(kind: ReadyRule | None) -> str:
    """What a ready-made rule does, in one sentence."""
    if kind is None:
        return translate("Rules", "What stands first grows first; the next one when it is full.")
    return {
        ReadyRule.LOAD: translate(
            "Rules", "The same sets and repetitions; the load grows each time all are done."
        ),
        ReadyRule.REPS_LOAD: translate(
            "Rules", "Repetitions grow to the top of the range, then the load takes a step."
        ),
        ReadyRule.REPS_SETS_LOAD: translate(
            "Rules", "Repetitions grow first, then a set is added, then the load takes a step."
        ),
        ReadyRule.REPS_VARIATION: translate(
            "Rules", "Repetitions grow to the top of the range, then the variation gets harder."
        ),
        ReadyRule.HOLD_VARIATION: translate(
            "Rules", "Seconds grow to the top of the range, then the variation gets harder."
        ),
        ReadyRule.HOLD_LOAD: translate(
            "Rules", "Seconds grow to the top of the range, then the load takes a step."
        ),
        ReadyRule.TEMPO_REPS: translate(
            "Rules", "Each repetition gets slower first, then there are more, then it gets harder."
        ),
        ReadyRule.TOTAL_REPS: translate(
            "Rules", "All sets together reach a total, however they fall; then it gets harder."
        ),
        ReadyRule.FIXED: translate(
            "Rules", "Nothing grows: sets, repetitions and load stay until you change them."
        ),
    }[kind]


def variable_name(variable: Variable, *, total: bool = False) -> str:
    """What grows, as a row's name."""
    if total and variable is Variable.REPS:
        return translate("Rules", "Total repetitions")
    return {
        Variable.LOAD: translate("Rules", "Load"),
        Variable.REPS: translate("Rules", "Repetitions"),
        Variable.SETS: translate("Rules", "Sets"),
        Variable.HOLD: translate("Rules", "Hold"),
        Variable.TEMPO: translate("Rules", "Tempo"),
        Variable.VARIATION: translate("Rules", "Variation"),
    }[variable]


def then_word(then: WhenSlower) -> str:
    """What becomes of a variable when a slower one moves."""
    return {
        WhenSlower.RESET: translate("Rules", "starts again"),
        WhenSlower.KEEP: translate("Rules", "stays"),
        WhenSlower.MATCH: translate("Rules", "matches the demand"),
    }[then]


def criterion_word(kind: CriterionKind) -> str:
    """When a step is earned."""
    return {
        CriterionKind.ALL_SETS: translate("Rules", "all sets are done as asked"),
        CriterionKind.LAST_SET_OVER: translate("Rules", "the last set goes over"),
        CriterionKind.RESERVE: translate("Rules", "one more is left in reserve than meant"),
        CriterionKind.TOTAL: translate("Rules", "the total is reached"),
    }[kind]


def back_off_word(back_off: BackOff) -> str:
    """What gets easier after misses."""
    return {
        BackOff.LOAD: translate("Rules", "load"),
        BackOff.REPS: translate("Rules", "repetitions"),
        BackOff.VARIATION: translate("Rules", "variation"),
    }[back_off]


def scheme_word(kind: SchemeKind) -> str:
    """How the sets relate to each other."""
    return {
        SchemeKind.STRAIGHT: translate("Rules", "all alike"),
        SchemeKind.TOP_AND_BACK_OFF: translate("Rules", "a top set, then lighter"),
        SchemeKind.ASCENDING: translate("Rules", "ascending to the last"),
        SchemeKind.TOTAL: translate("Rules", "a total, split freely"),
    }[kind]
