"""Invariants of the progression model, whatever the rule and whatever happens."""

from __future__ import annotations

import random
from dataclasses import replace
from datetime import date, timedelta

from hypothesis import assume, given
from hypothesis import strategies as st

from desktop.training.adjusting import fitted
from desktop.training.asking import target_on
from desktop.training.demand import effective_load_g, rank
from desktop.training.loads import found
from desktop.training.position import (
    Criterion,
    CriterionKind,
    InvalidRule,
    MissPolicy,
    Position,
    ProgressionRule,
    ScaledVariation,
    SchemeKind,
    SetScheme,
    Surroundings,
    Variable,
    VariableRange,
    WhenSlower,
)
from desktop.training.preview import next_positions, unroll
from desktop.training.program import LineStart, RuleRevision
from desktop.training.progression import Mover, grow, step_over
from desktop.training.reasons import ReasonCode
from desktop.training.replay import (
    Cleared,
    Context,
    DeloadDays,
    Event,
    Overridden,
    SessionDone,
    State,
    Surrounded,
    replay,
    starting_state,
)
from desktop.training.session import AskedSet, Outcome, SetDone
from desktop.training.strip import strip
from desktop.training.track import tracked

DAY_0 = date(2026, 1, 5)
CONTEXT = Context()
SCALE = (
    ScaledVariation("a", "knees high", 0.41, 0.03),
    ScaledVariation("b", "chair", 0.55, 0.03),
    ScaledVariation("c", "step", 0.60, 0.03, available=False),
    ScaledVariation("d", "floor", 0.64, 0.03),
    ScaledVariation("e", "feet up", 0.70, 0.03),
)
ORDERED = tuple(replace(step, share=None, plus_minus=None) for step in SCALE)


@st.composite
def surroundings(draw: st.DrawFn, bodyweight: bool | None = None) -> Surroundings:
    body = draw(st.booleans()) if bodyweight is None else bodyweight
    if body:
        scale = draw(st.sampled_from([SCALE, ORDERED]))
        axes: list[tuple[int, ...] | None] = [(0,), (-10_000, 0, 2_500, 10_000), None]
        return Surroundings(
            draw(st.sampled_from(axes)), scale, draw(st.integers(40_000, 130_000)), bodyweight=True
        )
    loads = draw(
        st.one_of(
            st.none(),
            st.lists(st.integers(8, 80), min_size=1, max_size=12, unique=True).map(
                lambda each: tuple(sorted(load * 1_250 for load in each))
            ),
        )
    )
    return Surroundings(loads)


@st.composite
def rules(draw: st.DrawFn, bodyweight: bool) -> ProgressionRule:
    kinds = [Variable.REPS, Variable.SETS, Variable.TEMPO, Variable.LOAD]
    if bodyweight:
        kinds.append(Variable.VARIATION)
    if draw(st.booleans()):
        kinds[0] = Variable.HOLD
    chosen = draw(st.lists(st.sampled_from(kinds), min_size=1, max_size=4, unique=True))
    slowest = [v for v in chosen if v is Variable.LOAD]
    ordered = [v for v in chosen if v is not Variable.LOAD] + slowest
    ranges = []
    for variable in ordered:
        then = draw(st.sampled_from([None, *WhenSlower]))
        if variable is Variable.VARIATION:
            ranges.append(VariableRange(variable, when_slower=then))
        elif variable is Variable.LOAD:
            ranges.append(VariableRange(variable, increment=draw(st.sampled_from([1_250, 5_000]))))
        else:
            floor = draw(st.integers(2, 8))
            step = draw(st.integers(1, 3))
            ceiling = floor + step * draw(st.integers(0, 4))
            ranges.append(VariableRange(variable, floor, ceiling, step, when_slower=then))
    scheme = SetScheme(draw(st.sampled_from(SchemeKind)))
    criterion = Criterion(
        CriterionKind.TOTAL
        if scheme.kind is SchemeKind.TOTAL
        else draw(st.sampled_from(CriterionKind)),
        draw(st.integers(1, 3)),
    )
    return ProgressionRule(
        tuple(ranges),
        criterion,
        MissPolicy(draw(st.integers(1, 3))),
        scheme,
        target_rir=draw(st.sampled_from([None, 2.0])),
    )


@st.composite
def states(draw: st.DrawFn, with_scale_known: bool = False) -> State:
    around = draw(surroundings())
    rule = draw(rules(around.bodyweight))
    holds = rule.range_of(Variable.HOLD) is not None
    loads = around.loads_g
    position = Position(
        load_g=draw(st.sampled_from(loads)) if loads else (0 if around.bodyweight else 40_000),
        reps=None if holds else draw(st.integers(2, 20)),
        sets=draw(st.integers(1, 5)),
        hold_s=draw(st.integers(2, 30)) if holds else None,
        tempo_s=draw(st.integers(2, 6)) if rule.range_of(Variable.TEMPO) else None,
        variation=draw(st.sampled_from("abde")) if around.bodyweight else None,
    )
    kind = draw(st.sampled_from(["coach", "assessment"]))
    return starting_state(LineStart(DAY_0, position, kind), rule, around, CONTEXT)


@st.composite
def sessions(draw: st.DrawFn, state: State) -> SessionDone:
    assert state.position is not None
    number = draw(st.integers(0, 200))
    holds = state.position.reps is None
    loads = state.surroundings.loads_g or (state.position.load_g,)
    sets = []
    for _ in range(draw(st.integers(0, 5))):
        amount = draw(st.integers(0, 20))
        sets.append(
            SetDone(
                draw(st.sampled_from([*loads, state.position.load_g])),
                reps=None if holds else amount,
                seconds=amount if holds else None,
                variation=state.position.variation,
                rir=draw(st.sampled_from([None, 0.0, 2.0, 4.0])),
                pain=draw(st.sampled_from([0] * 8 + [2, 6])),
                warm_up=draw(st.sampled_from([False] * 5 + [True])),
            )
        )
    asked: tuple[AskedSet, ...] = ()
    if draw(st.booleans()):
        asked = target_on(state, DAY_0, CONTEXT).sets
    return SessionDone(
        DAY_0 + timedelta(days=number),
        tuple(sets),
        asked,
        entry=draw(st.integers(0, 2)),
        session_id=number,
        deload=draw(st.sampled_from([False] * 8 + [True])),
        test=draw(st.sampled_from([False] * 8 + [True])),
    )


@st.composite
def histories(draw: st.DrawFn) -> tuple[State, list[RuleRevision], list[Event]]:
    state = draw(states())
    assert state.position is not None
    events: list[Event] = list(draw(st.lists(sessions(state), max_size=12)))
    if draw(st.booleans()):
        first = DAY_0 + timedelta(days=draw(st.integers(0, 150)))
        events.append(DeloadDays(first, first + timedelta(days=6)))
    if draw(st.booleans()):
        events.append(
            Overridden(
                DAY_0 + timedelta(days=draw(st.integers(0, 200))),
                state.position,
                entry=draw(st.integers(0, 2)),
            )
        )
    if draw(st.booleans()):
        events.append(Cleared(DAY_0 + timedelta(days=draw(st.integers(0, 200)))))
    if draw(st.booleans()):
        around = draw(surroundings(state.surroundings.bodyweight))
        events.append(Surrounded(DAY_0 + timedelta(days=draw(st.integers(0, 200))), around))
    revisions = []
    if draw(st.booleans()):
        revisions.append(
            RuleRevision(
                DAY_0 + timedelta(days=draw(st.integers(0, 200))),
                draw(rules(state.surroundings.bodyweight)),
            )
        )
    return state, revisions, events


@given(histories(), st.randoms(use_true_random=False))
def test_the_order_of_arrival_does_not_matter(
    history: tuple[State, list[RuleRevision], list[Event]], shuffling: random.Random
) -> None:
    state, revisions, events = history
    mixed = list(events)
    shuffling.shuffle(mixed)
    assert replay(revisions, state, events, CONTEXT) == replay(revisions, state, mixed, CONTEXT)


@given(histories(), st.integers(0, 200))
def test_a_prefix_and_then_the_rest_is_the_whole(
    history: tuple[State, list[RuleRevision], list[Event]], cut: int
) -> None:
    state, revisions, events = history
    until = DAY_0 + timedelta(days=cut)

    def day_of(event: Event) -> date:
        return event.first if isinstance(event, DeloadDays) else event.day

    early = [event for event in events if day_of(event) <= until]
    late = [event for event in events if day_of(event) > until]
    first = replay([r for r in revisions if r.day <= until], state, early, CONTEXT)
    second = replay(revisions, first.state, late, CONTEXT)
    whole = replay(revisions, state, events, CONTEXT)
    assert second.state == whole.state
    assert (*first.steps, *second.steps) == whole.steps


@given(histories(), st.data())
def test_going_on_from_an_earlier_track_is_the_same_as_beginning_anew(
    history: tuple[State, list[RuleRevision], list[Event]], data: st.DataObject
) -> None:
    """Whatever was edited since: events gone, changed or added, in the middle too."""
    start, revisions, events = history
    kept = [event for event in events if data.draw(st.booleans())]
    added = data.draw(st.lists(sessions(start), max_size=2))
    _, earlier = tracked(revisions, start, [*kept, *added], CONTEXT)
    for told in (events, [*events, *added], events[:-1]):
        went_on, earlier = tracked(revisions, start, told, CONTEXT, earlier)
        assert went_on == replay(revisions, start, told, CONTEXT)
    elsewhere = replace(start, misses=start.misses + 1)
    assert tracked(revisions, elsewhere, events, CONTEXT, earlier)[0] == replay(
        revisions, elsewhere, events, CONTEXT
    )


@given(states())
def test_a_step_of_the_rule_is_reachable_and_below_every_ceiling(state: State) -> None:
    assert state.position is not None
    moving = Mover(state.rule, state.surroundings, fixed_reps=state.fixed_reps)
    grown = grow(state.position, moving)
    if state.surroundings.loads_g is not None:
        assert found(state.surroundings.loads_g, grown.position.load_g) is not None
    if grown.reason.code is ReasonCode.IN_BETWEEN:
        return
    for ranged in state.rule.ranges:
        value, before = grown.position.value(ranged.variable), state.position.value(ranged.variable)
        if ranged.ceiling is None or value is None or before is None:
            continue
        assert value <= max(ranged.ceiling, before)


@given(states())
def test_a_matched_step_keeps_the_demand_and_stays_within_the_jump_limit(state: State) -> None:
    assert state.position is not None
    moving = Mover(state.rule, state.surroundings, fixed_reps=state.fixed_reps)
    grown = grow(state.position, moving)
    if not grown.grew or grown.reason.code is ReasonCode.IN_BETWEEN:
        return
    moved = Variable(str(grown.reason["variable"]))
    over = step_over(state.position, grown.position, moved, moving)
    if over is None:
        return
    place = [r.variable for r in state.rule.ranges].index(moved)
    faster = state.rule.ranges[:place]
    reps = next((r for r in faster if r.variable is Variable.REPS), None)
    if moved is not Variable.SETS or any(r.then is WhenSlower.MATCH for r in faster):
        assert over <= CONTEXT.settings.jump_limit + 1e-9
    if reps is None or reps.then is not WhenSlower.MATCH:
        return
    assert grown.position.reps is not None
    at_top = grown.position.reps == reps.ceiling
    assert at_top or 1 + over >= CONTEXT.settings.match_demand - 1e-9


@given(states(), st.integers(1, 200), st.sampled_from("abde"), st.integers(1, 20))
def test_new_ranges_never_lift_by_more_than_the_jump_limit(
    state: State, floor: int, easiest: str, fewest: int
) -> None:
    assert state.position is not None
    around = state.surroundings
    ranges = (
        VariableRange(Variable.REPS, fewest, fewest + 4),
        VariableRange(Variable.VARIATION, easiest=easiest),
        VariableRange(Variable.LOAD, floor * 1_000, increment=2_500),
    )
    after = fitted(state.position, Mover(ProgressionRule(ranges), around))
    was = effective_load_g(state.position.load_g, state.position.variation, around)
    now = effective_load_g(after.load_g, after.variation, around)
    if was is not None and now is not None:
        assert now <= was * (1 + CONTEXT.settings.jump_limit) + 1e-6
    assert after.reps is not None
    assert fewest <= after.reps <= fewest + 4


@given(histories())
def test_a_miss_never_makes_anything_harder(
    history: tuple[State, list[RuleRevision], list[Event]],
) -> None:
    state, _, events = history
    plain = [event for event in events if isinstance(event, SessionDone)]
    for event in sorted(plain, key=lambda each: (each.day, each.entry)):
        asked = event.asked or target_on(state, event.day, CONTEXT).sets
        result = replay((), state, [event], CONTEXT)
        if result.steps and result.steps[0].outcome is Outcome.MISSED and asked:
            after, lead = result.state.position, asked[0]
            if state.rule.scheme.kind is SchemeKind.ASCENDING:
                lead = asked[-1]
            assert after is not None
            assert after.load_g <= lead.load_g
            assert (after.amount <= lead_amount(asked, lead, state)) or after.load_g < lead.load_g
            assert (rank(state.surroundings, after.variation) or 0) <= (
                rank(state.surroundings, lead.variation) or 0
            )
        state = result.state


def lead_amount(asked: tuple[AskedSet, ...], lead: AskedSet, state: State) -> int:
    if state.rule.scheme.kind is SchemeKind.TOTAL:
        return sum((each.reps or each.seconds or 0) for each in asked)
    return lead.reps or lead.seconds or 0


@given(histories())
def test_one_session_makes_one_step(
    history: tuple[State, list[RuleRevision], list[Event]],
) -> None:
    state, revisions, events = history
    steps = replay(revisions, state, events, CONTEXT).steps
    told = [step.session_id for step in steps if step.session_id is not None]
    done = [event.session_id for event in events if isinstance(event, SessionDone)]
    assert sorted(told, key=str) == sorted(done, key=str)


@given(histories())
def test_what_is_asked_can_be_loaded_and_set_up(
    history: tuple[State, list[RuleRevision], list[Event]],
) -> None:
    state, revisions, events = history
    result = replay(revisions, state, events, CONTEXT)
    loads = result.state.surroundings.loads_g
    target = target_on(result.state, DAY_0 + timedelta(days=210), CONTEXT)
    assert target.reason is not None
    if loads is None or not target.sets or target.position is None:
        return
    lowest = min(loads)
    for asked in target.sets:
        assert found(loads, asked.load_g) is not None or asked.load_g < lowest


@given(states(), st.integers(0, 60))
def test_a_longer_gap_never_asks_more(state: State, days: int) -> None:
    trained = replace(state, last_trained=DAY_0, vouched=None)
    sooner = target_on(trained, DAY_0 + timedelta(days=days), CONTEXT)
    later = target_on(trained, DAY_0 + timedelta(days=days + 30), CONTEXT)
    assume(sooner.position is not None and later.position is not None)
    assert sooner.position is not None
    assert later.position is not None
    first = effective_load_g(sooner.position.load_g, sooner.position.variation, state.surroundings)
    second = effective_load_g(later.position.load_g, later.position.variation, state.surroundings)
    if first is not None and second is not None:
        assert second <= first + 1e-6
    assert later.position.sets <= sooner.position.sets


@given(states())
def test_the_strip_shows_where_the_line_stands(state: State) -> None:
    assert state.position is not None
    for variable in strip(state, CONTEXT):
        assert len(variable.cells) <= 7
        if variable.variable != Variable.VARIATION:
            assert sum(cell.here for cell in variable.cells) == 1
        assert sum(cell.next for cell in variable.cells) <= 1


@given(states())
def test_weeks_ahead_are_the_same_each_time(state: State) -> None:
    days = [DAY_0 + timedelta(days=2 * number) for number in range(8)]
    assert next_positions(state, days, CONTEXT) == next_positions(state, days, CONTEXT)
    ahead = list(unroll(state, days, CONTEXT, miss_every=4))
    assert [each.missed for each in ahead] == [False, False, False, True] * 2


def refusal(variable: Variable, floor: int, ceiling: int, increment: int) -> str:
    """Why there is no such range, "" where there is."""
    try:
        VariableRange(variable, floor, ceiling, increment)
    except InvalidRule as refused:
        return str(refused)
    return ""


@given(st.integers(-5, 5), st.integers(-5, 5), st.integers(-2, 3))
def test_no_range_raises_anything_but_the_documented_error(
    floor: int, ceiling: int, increment: int
) -> None:
    for variable in Variable:
        why = refusal(variable, floor, ceiling, increment)
        assert variable.value in why if why else floor <= ceiling
