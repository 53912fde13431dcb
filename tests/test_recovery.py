"""What speaks against asking for more: each check, and what sets a caution aside."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

import pytest

from desktop.limits import load_limits
from desktop.training import recovery
from desktop.training.exercises import Muscle, Pattern
from desktop.training.limits import Limit, LimitId, Severity
from desktop.training.position import Position, Variable
from desktop.training.reasons import ReasonCode, reason
from desktop.training.recovery import Caution, HardDay, evidence_key, is_dismissed
from desktop.training.trainee import Clearance, DismissedCaution, Experience

LIMITS = load_limits()
TODAY = date(2026, 11, 25)
DAY = timedelta(days=1)


def limit(limit_id: LimitId) -> Limit:
    return LIMITS[limit_id]


def at(load_g: int = 60_000, reps: int | None = 8, sets: int = 3, **more: object) -> Position:
    return Position(load_g, reps, sets, **more)  # type: ignore[arg-type]


# What a step asks


@pytest.mark.parametrize(
    ("before_g", "after_g", "said"),
    [
        (60_000, 66_000, False),
        (60_000, 66_001, True),
        (60_000, 54_000, False),
        (0, 10_000, False),
    ],
)
def test_a_step_of_more_than_a_tenth_is_told(before_g: int, after_g: int, said: bool) -> None:
    caution = recovery.load_step(
        limit(LimitId.LOAD_STEP), before_g, after_g, TODAY, line_id=3, sessions=(7,)
    )
    assert (caution is not None) is said
    if caution is not None:
        assert caution["over"] == pytest.approx(0.1, abs=1e-4)
        assert (caution.line_id, caution.sessions) == (3, (7,))
        assert caution.source.startswith("ACSM 2009")
        assert caution.proposal == limit(LimitId.LOAD_STEP).proposal


SCALE = ("easy", "middle", "hard")


@pytest.mark.parametrize(
    ("before", "after", "more"),
    [
        (at(), at(), ()),
        (at(), at(reps=9), (Variable.REPS,)),
        (at(reps=12), at(62_500, reps=8), (Variable.LOAD,)),
        (at(), at(60_008), ()),
        (at(), at(62_500, reps=9, sets=4), (Variable.REPS, Variable.SETS, Variable.LOAD)),
        (at(), at(50_000, reps=12, sets=4), ()),
        (
            at(reps=None, hold_s=10, tempo_s=3),
            at(reps=None, hold_s=15, tempo_s=4),
            (Variable.HOLD, Variable.TEMPO),
        ),
        (at(variation="easy"), at(variation="hard"), (Variable.VARIATION,)),
        (at(variation="hard"), at(reps=12, variation="easy"), ()),
        (at(variation="unknown"), at(reps=9, variation="unknown"), (Variable.REPS,)),
    ],
)
def test_what_grows_in_a_step(
    before: Position, after: Position, more: tuple[Variable, ...]
) -> None:
    assert recovery.grown(before, after, SCALE) == more


def test_more_than_one_variable_at_once_is_told() -> None:
    several = limit(LimitId.SEVERAL_AT_ONCE)
    assert recovery.several_at_once(several, at(), at(reps=9), TODAY) is None
    caution = recovery.several_at_once(several, at(), at(reps=9, sets=4), TODAY, line_id=3)
    assert caution is not None
    assert caution["variables"] == "reps, sets"


# How sessions lie


def hard_days(*ago: int) -> list[HardDay]:
    return [HardDay(TODAY - n * DAY, session_id=n) for n in ago]


def test_hard_sessions_of_a_pattern_want_a_full_day_between() -> None:
    days = {
        Pattern.SQUAT: hard_days(1, 3, 4, 8, 9),
        Pattern.HINGE: hard_days(1, 3, 5),
        Pattern.LUNGE: hard_days(2, 2),
    }
    (caution,) = recovery.too_close(limit(LimitId.TOO_CLOSE), days)
    assert caution["pattern"] == "squat"
    assert (caution["first"], caution["second"]) == (TODAY - 4 * DAY, TODAY - 3 * DAY)
    assert caution.sessions == (4, 3)
    assert caution["planned"] is False


def test_planned_days_are_told_as_planned_and_by_weekday() -> None:
    def planned(weeks: int) -> Caution:
        first = TODAY + weeks * 7 * DAY
        days = {Pattern.SQUAT: [HardDay(first), HardDay(first + DAY)]}
        (caution,) = recovery.too_close(limit(LimitId.TOO_CLOSE), days)
        return caution

    assert planned(0)["planned"] is True
    assert planned(0).sessions == ()
    assert evidence_key(planned(0)) == evidence_key(planned(1))


def test_muscles_trained_too_seldom_are_named() -> None:
    seldom = limit(LimitId.TOO_SELDOM)
    assert recovery.too_seldom(seldom, {Muscle.CHEST: 2.0}, planned=True) is None
    caution = recovery.too_seldom(
        seldom, {Muscle.LATS: 1.0, Muscle.CHEST: 2.0, Muscle.GLUTES: 0.0}, planned=False
    )
    assert caution is not None
    assert caution["muscles"] == "glutes, lats"


@pytest.mark.parametrize(
    ("weeks", "experience", "said"),
    [
        (7, Experience.ADVANCED, False),
        (8, Experience.ADVANCED, True),
        (8, Experience.INTERMEDIATE, True),
        (30, Experience.NOVICE, False),
    ],
)
def test_eight_weeks_without_a_deload_are_told_but_not_of_novices(
    weeks: int, experience: Experience, said: bool
) -> None:
    since = TODAY - weeks * 7 * DAY
    caution = recovery.no_deload(limit(LimitId.NO_DELOAD), since, TODAY, experience)
    assert (caution is not None) is said


def test_without_any_session_no_deload_is_missed() -> None:
    no_deload = limit(LimitId.NO_DELOAD)
    assert recovery.no_deload(no_deload, None, TODAY, Experience.ADVANCED) is None


@pytest.mark.parametrize(("value", "said"), [(None, False), (2.0, False), (2.01, True)])
def test_monotony_above_two_is_told(value: float | None, said: bool) -> None:
    caution = recovery.monotonous(limit(LimitId.MONOTONY), value, TODAY)
    assert (caution is not None) is said


@pytest.mark.parametrize(("days", "said"), [(14, False), (15, True)])
def test_a_gap_is_told_from_its_first_day(days: int, said: bool) -> None:
    caution = recovery.gap(limit(LimitId.GAP), TODAY - days * DAY, TODAY, line_id=3)
    assert (caution is not None) is said


def test_somebody_who_never_trained_has_no_gap() -> None:
    assert recovery.gap(limit(LimitId.GAP), None, TODAY) is None


# Who trains


@pytest.mark.parametrize(
    ("birth_year", "young", "old"),
    [
        (None, False, False),
        (2009, True, False),
        (2008, True, False),  # 17 or 18
        (2007, False, False),
        (1962, False, False),
        (1961, False, True),
    ],
)
def test_the_young_and_the_old_get_their_guidance(
    birth_year: int | None, young: bool, old: bool
) -> None:
    assert (recovery.minor(limit(LimitId.MINOR), birth_year, TODAY) is not None) is young
    assert (recovery.older(limit(LimitId.OLDER), birth_year, TODAY) is not None) is old


def test_missing_facts_are_told() -> None:
    assert recovery.screening(limit(LimitId.SCREENING), TODAY) is None
    assert recovery.screening(limit(LimitId.SCREENING), None) is not None
    assert recovery.load_incomplete(limit(LimitId.LOAD_INCOMPLETE), True) is None
    assert recovery.load_incomplete(limit(LimitId.LOAD_INCOMPLETE), False) is not None


@pytest.mark.parametrize(
    ("asking", "cleared", "stands"),
    [
        ((), (), None),
        ((TODAY - DAY, TODAY - 3 * DAY), (), TODAY - DAY),
        ((TODAY - DAY,), (TODAY - 2 * DAY,), TODAY - DAY),
        ((TODAY - DAY,), (TODAY - DAY,), None),
        ((TODAY - DAY,), (TODAY - 9 * DAY, TODAY), None),
    ],
)
def test_a_red_flag_stands_until_a_clearance_of_its_day_or_later(
    asking: tuple[date, ...], cleared: tuple[date, ...], stands: date | None
) -> None:
    given = [Clearance(day, "a physician") for day in cleared]
    assert recovery.uncleared(asking, given) == stands


def test_a_red_flag_and_a_refused_screening_stop_everything() -> None:
    flagged = recovery.red_flag(limit(LimitId.RED_FLAG), TODAY, (4,))
    refused = recovery.clearance(limit(LimitId.CLEARANCE), TODAY)
    assert {flagged.severity, refused.severity} == {Severity.STOP}
    assert flagged.sessions == (4,)


# How a line goes


def test_pain_is_told_from_the_first_point_on() -> None:
    assert recovery.pain(limit(LimitId.PAIN), 0, TODAY, 0) is None
    caution = recovery.pain(limit(LimitId.PAIN), 2, TODAY, 1, line_id=3)
    assert caution is not None
    assert caution.evidence == (("pain", 2), ("day", TODAY), ("times", 1))


def test_a_line_held_for_pain_says_what_the_model_said() -> None:
    why = reason(ReasonCode.PAIN_HOLD, pain=5, times=1, day=TODAY)
    caution = recovery.pain_hold(limit(LimitId.PAIN_HOLD), why, line_id=3, sessions=(9,))
    assert caution.severity is Severity.STOP
    assert caution.evidence == (("pain", 5), ("day", TODAY), ("times", 1))


@pytest.mark.parametrize(("probability", "said"), [(0.54, False), (0.55, True)])
def test_a_plateau_is_told_when_it_is_probable(probability: float, said: bool) -> None:
    caution = recovery.plateau(limit(LimitId.PLATEAU), probability, line_id=3)
    assert (caution is not None) is said


@pytest.mark.parametrize(
    ("variable", "after", "name"),
    [("load", 25_000, "next_load_g"), ("variation", "floor", "next_variation")],
)
def test_an_equipment_jump_names_what_comes_next(
    variable: str, after: int | str, name: str
) -> None:
    why = reason(
        ReasonCode.IN_BETWEEN, variable=variable, after=after, reps_needed=14, over=0.13, amount=12
    )
    caution = recovery.equipment_jump(limit(LimitId.EQUIPMENT_JUMP), why)
    assert caution.evidence == ((name, after), ("reps_needed", 14), ("over", 0.13))


def test_a_complete_rule_tells_where_it_stands() -> None:
    complete = limit(LimitId.RULE_COMPLETE)
    caution = recovery.rule_complete(complete, at(variation="hard"), line_id=3)
    assert dict(caution.evidence) == {"load": 60_000, "reps": 8, "sets": 3, "variation": "hard"}


# Setting aside


def set_aside(caution: Caution, ago: int = 0) -> DismissedCaution:
    return DismissedCaution(1, caution.limit, evidence_key(caution), TODAY - ago * DAY, "known")


def test_a_caution_set_aside_comes_back_when_its_evidence_changes() -> None:
    sore = limit(LimitId.PAIN)
    first = recovery.pain(sore, 2, TODAY - DAY, 1, line_id=3)
    again = recovery.pain(sore, 3, TODAY, 2, line_id=3)
    other_line = recovery.pain(sore, 2, TODAY - DAY, 1, line_id=4)
    assert first is not None
    assert again is not None
    assert other_line is not None
    aside = [set_aside(first, ago=300)]
    assert is_dismissed(first, aside, TODAY)
    assert not is_dismissed(again, aside, TODAY)
    assert not is_dismissed(other_line, aside, TODAY)


def test_days_that_pass_bring_a_gap_back_after_four_weeks_only() -> None:
    last = TODAY - 30 * DAY
    then = recovery.gap(limit(LimitId.GAP), last, TODAY - 10 * DAY)
    now = recovery.gap(limit(LimitId.GAP), last, TODAY)
    assert then is not None
    assert now is not None
    assert is_dismissed(now, [set_aside(then, ago=27)], TODAY)
    assert not is_dismissed(now, [set_aside(then, ago=28)], TODAY)


def test_fractions_count_to_one_decimal() -> None:
    week = limit(LimitId.MONOTONY)
    keys = {
        evidence_key(caution)
        for value in (2.31, 2.34)
        if (caution := recovery.monotonous(week, value, TODAY)) is not None
    }
    assert len(keys) == 1


def test_a_stop_cannot_be_set_aside() -> None:
    flagged = recovery.red_flag(limit(LimitId.RED_FLAG), TODAY)
    assert not is_dismissed(flagged, [set_aside(flagged)], TODAY)
    as_a_note = replace(flagged, severity=Severity.NOTE)
    assert is_dismissed(as_a_note, [set_aside(flagged)], TODAY)


def test_evidence_is_read_by_its_name() -> None:
    caution = recovery.red_flag(limit(LimitId.RED_FLAG), TODAY)
    assert caution["day"] == TODAY
    with pytest.raises(KeyError):
        caution["pain"]
