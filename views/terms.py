"""The terms of the trade that not everybody knows, each in one sentence."""

from __future__ import annotations

from enum import StrEnum

from PySide6.QtCore import QCoreApplication
from PySide6.QtWidgets import QWidget

translate = QCoreApplication.translate


class Term(StrEnum):
    """A term that a screen can explain."""

    E1RM = "e1RM"
    RIR = "RIR"
    HARD_SET = "hard set"
    EFFECTIVE_LOAD = "effective load"
    TRAINING_LOAD = "training load"
    MONOTONY = "monotony"
    STRAIN = "strain"
    DELOAD = "deload"


def meaning(term: Term) -> str:
    """What a term means, in one sentence of plain text."""
    return {
        Term.E1RM: translate(
            "Terms",
            "e1RM, the estimated one-repetition maximum: the load that would go once, reckoned "
            "from a set with more repetitions.",
        ),
        Term.RIR: translate(
            "Terms",
            "RIR, repetitions in reserve: how many more clean ones would have been possible at "
            "the end of the set; blank is unknown, not none.",
        ),
        Term.HARD_SET: translate(
            "Terms",
            "Hard set: a working set, no warm-up; it counts 1 for a muscle trained directly and "
            "0.5 for one that helps.",
        ),
        Term.EFFECTIVE_LOAD: translate(
            "Terms",
            "Effective load: what the muscles really move; in bodyweight exercises a share of "
            "body mass, plus what is added, minus help.",
        ),
        Term.TRAINING_LOAD: translate(
            "Terms",
            "Training load: how hard the session was (0 to 10) times its minutes; other "
            "activities count too.",
        ),
        Term.MONOTONY: translate(
            "Terms",
            "Monotony: how alike the days of a week are, as the mean of the seven daily loads "
            "over their standard deviation.",
        ),
        Term.STRAIN: translate("Terms", "Strain: the week's training load times its monotony."),
        Term.DELOAD: translate(
            "Terms",
            "Deload: a planned easier week with fewer sets and lighter loads; afterwards all goes "
            "on where it stood.",
        ),
    }[term]


def explain(widget: QWidget, *terms: Term) -> None:
    """Let a widget explain terms that stand in it: as tooltip, and to a screen reader."""
    said = "\n".join(meaning(term) for term in terms)
    widget.setToolTip(said)
    widget.setAccessibleDescription(said)
