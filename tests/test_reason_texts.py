"""There is a sentence for every code, with its values by unit and locale."""

from __future__ import annotations

import re
import subprocess
import sys
from datetime import date, timedelta

import pytest
from hypothesis import given

from desktop.limits import load_limits
from desktop.planning.roster import Headline, HeadlineCode, RosterEntry
from desktop.training.asking import target_on
from desktop.training.limits import LimitId, Severity
from desktop.training.program import RuleRevision
from desktop.training.quantities import Unit
from desktop.training.reasons import ReasonCode, ReasonValue, reason
from desktop.training.recovery import Caution
from desktop.training.replay import replay
from desktop.training.session import Outcome
from desktop.training.state import Event, State
from desktop.training.trainee import Trainee
from tests.test_replay_properties import CONTEXT, DAY_0, histories
from views.caution_texts import (
    caution_text,
    headline_text,
    headline_tone,
    proposal_text,
    severity_word,
    short_caution,
)
from views.reason_texts import outcome_text, reason_text, reasons_text

TODAY = date(2026, 11, 26)
VALUES: dict[str, ReasonValue] = {
    "kind": "coach", "variable": "load", "before": 60_000, "after": 62_500, "amount": 12,
    "day": date(2026, 11, 23), "restart": 8, "over": 0.13, "streak": 1, "needed": 2, "rir": 1.0,
    "target_rir": 2.0, "done": 2, "asked": 3, "total": 30, "allowed": 2, "pain": 4, "misses": 2,
    "weeks": 6, "load_g": 60_000, "reps": 8, "reps_needed": 14, "before_g": 60_000,
    "after_g": 62_500, "done_g": 600_000, "limit_g": 66_000, "note": "<b>by feel</b>",
    "times": 2, "days": 19, "percent": 10.0, "sets_factor": 0.6, "load_percent": 10.0,
    "line": "heavy", "weekday": 3, "weekdays": "0,2",
}  # fmt: skip


@pytest.mark.parametrize("code", ReasonCode)
def test_every_reason_has_a_sentence(code: ReasonCode, english: None) -> None:
    text = reason_text(reason(code, **VALUES), Unit.KG, TODAY)
    assert not text[0].islower()
    assert "{" not in text


def test_weekdays_are_said_by_name(english: None) -> None:
    one = reason(ReasonCode.PROPOSE_DAY, weekday=4)
    assert reason_text(one, Unit.KG) == "Ready for one more day: Friday"
    none = reason(ReasonCode.PROPOSE_DAY_IMPOSSIBLE, weekdays="0,2")
    assert "Monday and Wednesday" in reason_text(none, Unit.KG)


@pytest.mark.parametrize("code", ReasonCode)
def test_a_reason_without_its_values_is_still_a_sentence(code: ReasonCode) -> None:
    assert "{" not in reason_text(reason(code), Unit.KG, TODAY)


@pytest.mark.parametrize(
    ("values", "text"),
    [
        (
            {"variable": "reps", "before": 9, "after": 10, "day": date(2026, 11, 23)},
            "Every set reached 9 reps on Mon 23 Nov: now 10 reps",
        ),
        (
            {"variable": "hold", "before": 15, "after": 20},
            "Held 15 s in every set: now 20 s",
        ),
        (
            {"variable": "load", "before": 60_000, "after": 62_500},
            "As asked: 60 kg becomes 62.5 kg",
        ),
    ],
)
def test_growth_is_told_by_variable(
    values: dict[str, ReasonValue], text: str, english: None
) -> None:
    assert reason_text(reason(ReasonCode.GROW, **values), Unit.KG, TODAY) == text


@given(histories())
def test_no_value_is_missing_in_a_sentence(
    history: tuple[State, list[RuleRevision], list[Event]],
) -> None:
    state, revisions, events = history
    told = replay(revisions, state, events, CONTEXT)
    target = target_on(told.state, DAY_0 + timedelta(days=210), CONTEXT)
    for why in (*(step.reason for step in told.steps), target.reason, *target.notes):
        text = reason_text(why, Unit.KG, TODAY)
        assert not re.search(r"  | [.,:;)]|^ |[ :]$", text), (why, text)


def test_a_roll_over_tells_the_share_of_body_mass_with_its_uncertainty(english: None) -> None:
    rolled = reason(
        ReasonCode.ROLL_OVER,
        variable="variation",
        before="hands on 30 cm",
        after="hands on 18 cm",
        amount=12,
        restart=8,
        share_before=0.57,
        share_after=0.61,
        plus_minus=0.03,
    )
    assert reason_text(rolled, Unit.KG, TODAY) == (
        "Top of the range at 12: hands on 30 cm becomes hands on 18 cm, from 8 "
        "(about 57 % becomes 61 % of body mass, ± 3)"
    )


def test_masses_follow_unit_and_locale(german: None) -> None:
    lifted = reason(ReasonCode.LIFTED, before_g=60_000, after_g=62_500)
    assert "62,5 kg" in reason_text(lifted, Unit.KG, TODAY)
    assert "137,79 lb" in reason_text(lifted, Unit.LB, TODAY)


def test_markup_in_a_note_stays_text(english: None) -> None:
    text = reason_text(reason(ReasonCode.OVERRIDE, note="<b>by feel</b> {0}"), Unit.KG, TODAY)
    assert text == "Set by the coach: <b>by feel</b> {0}"


def test_several_reasons_stand_one_after_the_other(english: None) -> None:
    both = [reason(ReasonCode.DELOAD, sets_factor=0.6, load_percent=10.0),
            reason(ReasonCode.GAP_REPEAT, days=19)]  # fmt: skip
    assert reasons_text(both, Unit.KG) == (
        "Deload: sets times 0.6, 10 % lighter. 19 days since the last time: the last again"
    )


@pytest.mark.parametrize("outcome", Outcome)
def test_every_outcome_has_words(outcome: Outcome) -> None:
    assert outcome_text(outcome)


EVIDENCE: dict[str, ReasonValue] = {
    "before_g": 60_000, "after_g": 70_000, "over": 0.17, "day": date(2026, 11, 23),
    "variables": "load, reps", "pattern": "squat", "first": date(2026, 11, 23),
    "second": date(2026, 11, 24), "planned": True, "muscles": "calves, chest", "weeks": 9,
    "since": date(2025, 12, 30), "signals": "plateaus, effort", "lines": 2, "rir_before": 2.3,
    "rir_now": 1.1, "monotony": 2.4, "week_ends": date(2026, 11, 22), "pain": 3, "times": 2,
    "days": 19, "last": date(2026, 11, 7), "birth_year": 2010, "probability": 0.9,
    "next_load_g": 25_000, "reps_needed": 14,
}  # fmt: skip


def caution(limit: LimitId) -> Caution:
    known = load_limits()[limit]
    return Caution(
        limit, known.severity, tuple(EVIDENCE.items()), known.source, known.proposal, None
    )


@pytest.mark.parametrize("limit", LimitId)
def test_every_caution_has_a_sentence_a_short_form_and_an_action(
    limit: LimitId, english: None
) -> None:
    said = caution(limit)
    text = caution_text(said, load_limits(), Unit.KG, TODAY, "Back squat")
    assert text.startswith("Back squat: ")
    assert "{" not in text
    assert short_caution(said, "back squat").endswith(": back squat")
    assert proposal_text(said.proposal)


def test_a_caution_names_its_signals_in_words(english: None) -> None:
    text = caution_text(caution(LimitId.REACTIVE_DELOAD), load_limits(), Unit.KG, TODAY)
    assert "2 exercises stand still and reps in reserve fall at the same work (2.3 to 1.1)" in text


@pytest.mark.parametrize("severity", Severity)
def test_every_severity_has_a_word(severity: Severity) -> None:
    assert severity_word(severity.value)


@pytest.mark.parametrize("code", HeadlineCode)
def test_every_headline_of_the_roster_has_words_and_a_tone(code: HeadlineCode) -> None:
    values = (("first", TODAY), ("last", TODAY), ("days", 19), ("kind", "away"), ("day", TODAY))
    cautions = (caution(LimitId.GAP),) if code is HeadlineCode.CAUTION else ()
    entry = RosterEntry(Trainee("Bow"), Headline(code, values), cautions=cautions)
    assert headline_text(entry)
    assert headline_tone(entry) in ("text", "muted", "caution", "stop")


def test_the_words_need_no_window() -> None:
    code = (
        "import sys, views.reason_texts, views.caution_texts; "
        "print(*{'PySide6.QtWidgets', 'PySide6.QtGui'} & set(sys.modules))"
    )
    started = subprocess.run([sys.executable, "-c", code], check=True, stdout=subprocess.PIPE)
    assert started.stdout.split() == []
