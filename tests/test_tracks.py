"""A replay goes on from an earlier one: same answer, and only what an edit touched is judged."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

import pytest

from desktop.training import event_effects, track
from desktop.training.position import (
    Position,
    ProgressionRule,
    Surroundings,
    Variable,
    VariableRange,
)
from desktop.training.replay import Context, SessionDone, State, replay
from desktop.training.session import AskedSet, SetDone
from desktop.training.track import tracked

CONTEXT = Context()
RULE = ProgressionRule(
    (
        VariableRange(Variable.REPS, 8, 12, 1),
        VariableRange(Variable.LOAD, 20_000, None, 2_500),
    )
)
START = State(Position(load_g=60_000, reps=8, sets=3), RULE, Surroundings())


def session(place: int, reps: int = 8) -> SessionDone:
    """One that stores what it asked, as every saved one does."""
    asked = (AskedSet(60_000, 8),) * 3
    day = date(2026, 1, 5) + timedelta(days=2 * place)
    return SessionDone(day, (SetDone(60_000, reps),) * 3, asked, session_id=place)


@pytest.fixture
def judged(monkeypatch: pytest.MonkeyPatch) -> list[object]:
    """The events that were judged, in order."""
    seen: list[object] = []

    def noted(state: State, event: object, context: Context) -> object:
        seen.append(event)
        return event_effects.after_event(state, event, context)  # type: ignore[arg-type]

    monkeypatch.setattr(track, "after_event", noted)
    return seen


def test_nothing_new_is_judged_for_what_is_known(judged: list[object]) -> None:
    events = [session(place) for place in range(20)]
    _, earlier = tracked((), START, events, CONTEXT)
    judged.clear()
    again, kept = tracked((), START, events, CONTEXT, earlier)
    shorter, still_kept = tracked((), START, events[:7], CONTEXT, earlier)
    assert judged == []
    assert kept is still_kept is earlier
    assert again == replay((), START, events, CONTEXT)
    judged.clear()
    assert shorter == replay((), START, events[:7], CONTEXT)


def test_a_new_session_is_the_only_one_judged(judged: list[object]) -> None:
    events = [session(place) for place in range(20)]
    _, earlier = tracked((), START, events, CONTEXT)
    judged.clear()
    tracked((), START, [*events, session(20)], CONTEXT, earlier)
    assert judged == [session(20)]


def test_after_an_edit_long_ago_judging_ends_where_the_line_stands_as_before(
    judged: list[object],
) -> None:
    events: list[SessionDone] = [session(place) for place in range(200)]
    _, earlier = tracked((), START, events, CONTEXT)
    edited = [*events[:50], session(50, reps=9), *events[51:]]
    judged.clear()
    went_on, _ = tracked((), START, edited, CONTEXT, earlier)
    assert 1 <= len(judged) <= 3
    assert went_on == replay((), START, edited, CONTEXT)
    assert went_on != earlier.replay(200)


def test_an_event_put_in_or_taken_out_is_found(judged: list[object]) -> None:
    events = [session(place) for place in range(100)]
    told = replace(session(40, reps=7), day=date(2026, 2, 2), session_id=None)  # a miss, no step
    _, earlier = tracked((), START, events, CONTEXT)
    judged.clear()
    longer, later = tracked((), START, [*events, told], CONTEXT, earlier)
    assert len(judged) < 10
    judged.clear()
    shorter, _ = tracked((), START, events, CONTEXT, later)
    assert len(judged) < 10
    assert longer == replay((), START, [*events, told], CONTEXT)
    assert shorter == replay((), START, events, CONTEXT)


def test_another_start_or_other_settings_begin_anew(judged: list[object]) -> None:
    events = [session(place) for place in range(5)]
    _, earlier = tracked((), START, events, CONTEXT)
    judged.clear()
    tracked((), replace(START, misses=1), events, CONTEXT, earlier)
    strict = Context(replace(CONTEXT.settings, jump_limit=0.05))
    tracked((), START, events, strict, earlier)
    assert len(judged) >= 6
