"""Cautions in plain words: for the trainee, who reads what it means rather than what to decide."""

from __future__ import annotations

from datetime import date

from PySide6.QtCore import QCoreApplication

from desktop.training.limits import LimitId
from desktop.training.quantities import Unit
from desktop.training.recovery import Caution
from views.caution_texts import filled

translate = QCoreApplication.translate


def plain_caution(caution: Caution, unit: Unit, today: date, line_name: str = "") -> str:
    """What is seen, as one sentence without terms of the trade; ``line_name`` says on which
    exercise.
    """
    return filled(_pattern(caution.limit), caution, unit, today, line_name)


def _pattern(limit: LimitId) -> str:
    return {
        LimitId.LOAD_STEP: translate("PlainCautions", "The load went up by {over} at once."),
        LimitId.SEVERAL_AT_ONCE: translate(
            "PlainCautions", "Several things got harder at once: {variables}."
        ),
        LimitId.TOO_CLOSE: translate(
            "PlainCautions",
            "No full day of rest lies between {first} and {second} for the same movement "
            "({pattern}).",
        ),
        LimitId.TOO_SELDOM: translate(
            "PlainCautions", "Some muscles are trained less than twice a week: {muscles}."
        ),
        LimitId.NO_DELOAD: translate(
            "PlainCautions", "There has been no easier week since {since}."
        ),
        LimitId.REACTIVE_DELOAD: translate(
            "PlainCautions", "Several signs speak for an easier week: {signals}."
        ),
        LimitId.MONOTONY: translate(
            "PlainCautions",
            "The days of the week to {week_ends} were nearly alike: hard and easy days should "
            "differ more.",
        ),
        LimitId.LOAD_INCOMPLETE: translate(
            "PlainCautions", "Other activities are not written down, so more was done than shown."
        ),
        LimitId.PAIN: translate(
            "PlainCautions",
            "Pain of {pain} out of 10 was noted on {day}: nothing gets harder until a session "
            "without it.",
        ),
        LimitId.PAIN_HOLD: translate(
            "PlainCautions",
            "Pain of {pain} out of 10 was noted on {day}: this exercise rests until it is decided "
            "how to go on.",
        ),
        LimitId.GAP: translate(
            "PlainCautions",
            "Not trained since {last}: it begins again with what was done last, or less.",
        ),
        LimitId.MINOR: translate(
            "PlainCautions",
            "For young people: good form before load, days of rest between, no tests of the "
            "maximum, and always supervised.",
        ),
        LimitId.OLDER: translate(
            "PlainCautions",
            "From 65 on: moderate loads, days of rest between, and exercises for balance on 3 "
            "days a week.",
        ),
        LimitId.PLATEAU: translate(
            "PlainCautions",
            "This has probably stopped getting better for now, so something will change.",
        ),
        LimitId.EQUIPMENT_JUMP: translate(
            "PlainCautions",
            "The next step that can be loaded is {over} harder, so more repetitions come first.",
        ),
        LimitId.RULE_COMPLETE: translate(
            "PlainCautions", "All steps planned for it are done: something new comes next."
        ),
        LimitId.RED_FLAG: translate(
            "PlainCautions",
            "A warning sign was noted on {day}: no training until a licensed professional allows "
            "it. In doubt seek medical help at once.",
        ),
        LimitId.CLEARANCE: translate(
            "PlainCautions",
            "The health questions of {day} call for advice: no training until a licensed "
            "professional allows it.",
        ),
        LimitId.SCREENING: translate(
            "PlainCautions", "The health questions have not been asked yet."
        ),
    }[limit]
