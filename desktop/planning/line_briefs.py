"""Line briefs: what there is to say of one line, whatever day it is."""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Mapping, Sequence
from datetime import date
from itertools import takewhile
from typing import Final

from desktop.planning.history import History
from desktop.planning.progress import plateau_probability, points_of, surroundings_by_day, trend_of
from desktop.planning.schedule import WEEK
from desktop.planning.standing import LineKey, Standing, key_of
from desktop.planning.surroundings import parts_of
from desktop.training import recovery
from desktop.training.brief import LineBrief, Told
from desktop.training.demand import effective_load_g, position_demand
from desktop.training.limits import LimitId
from desktop.training.reasons import ReasonCode
from desktop.training.recovery import Caution
from desktop.training.session import LineDone, Session
from desktop.training.state import Step

RECENT: Final = 4 * WEEK
"""Steps and sessions further back are no longer looked at."""

PLATEAU_SPAN: Final = 26 * WEEK
"""How far back from the last session a plateau is looked for; the present slope hardly depends on
what is older.
"""

Done = tuple[Session, LineDone]


def line_brief(
    history: History,
    day: date,
    standing: Standing,
    standings: Mapping[LineKey, Standing],
    in_phase: bool,
) -> LineBrief:
    """The line of ``standing`` in brief as of ``day``; ``standings`` are the lines around it."""
    line, state = standing.line, standing.state
    seen = _until(day, parts_of(history, line))
    done = _until(day, history.trained(line))
    step = _standing_step(standing)
    return LineBrief(
        exercise=line.exercise,
        name=line.name,
        line_id=line.id,
        in_phase=in_phase,
        follows=state.rule.follow.line_name if state.rule.follow else None,
        last_seen=seen[-1][0].day if seen else None,
        last_trained=state.last_trained,
        worked=done[-1][0].day if done else None,
        vouched=state.vouched,
        pain=_told(_pain(history, standing, done)),
        stepped=step.day if step else None,
        step=_step(history, day, standing, step),
        asks=() if _is_led(standing, standings) else _asks(history, standing),
        plateau=_plateau(history, day, standing, done),
    )


def _pain(history: History, standing: Standing, done: Sequence[Done]) -> Caution | None:
    state, line_id, limits = standing.state, standing.line.id, history.library.limits
    if not state.sore and state.held is None:
        return None
    sore = [(session, part) for session, part in done if part.worst_pain]
    ids = tuple(session.id for session, _ in sore[-1:] if session.id is not None)
    if state.held is not None:
        return recovery.pain_hold(
            limits[LimitId.PAIN_HOLD], state.held, line_id=line_id, sessions=ids
        )
    session, part = sore[-1]
    return recovery.pain(
        limits[LimitId.PAIN],
        part.worst_pain,
        session.day,
        state.sore,
        line_id=line_id,
        sessions=ids,
    )


def _standing_step(standing: Standing) -> Step | None:
    """The last step that moved the line, if it has stood there since."""
    steps = reversed(standing.replay.steps)
    moved = next((step for step in steps if step.before != step.after), None)
    return moved if moved and moved.after == standing.state.position else None


def _step(history: History, day: date, standing: Standing, step: Step | None) -> tuple[Told, ...]:
    """What there is to say of the step that the line stands on, where demand really rose too fast.

    A line that follows another has no steps of its own to be told of.
    """
    if standing.state.rule.follow is not None or step is None or day - step.day > RECENT:
        return ()
    if step.before is None or step.after is None:
        return ()
    line_id, limits = standing.line.id, history.library.limits
    ids = (step.session_id,) if step.session_id is not None else ()
    around, scheme = standing.state.surroundings, standing.state.rule.scheme
    found = [
        recovery.several_at_once(
            limits[LimitId.SEVERAL_AT_ONCE],
            step.before,
            step.after,
            step.day,
            scale=[each.key for each in around.scale],
            line_id=line_id,
            sessions=ids,
        )
    ]
    limit = limits[LimitId.LOAD_STEP]
    old, new = (position_demand(at, scheme, around) for at in (step.before, step.after))
    before, after = (
        effective_load_g(at.load_g, at.variation, around) for at in (step.before, step.after)
    )
    if old and new and new > old * (1 + limit.threshold) and before and after:
        found.append(
            recovery.load_step(limit, before, after, step.day, line_id=line_id, sessions=ids)
        )
    return tuple(Told.of(one) for one in found if one is not None)


def _is_led(standing: Standing, standings: Mapping[LineKey, Standing]) -> bool:
    """Whether the line's loads really come from another line."""
    follow, own = standing.state.rule.follow, key_of(standing.line)
    leader = (standing.line.exercise, follow.line_name) if follow else own
    return leader != own and leader in standings


def _asks(history: History, standing: Standing) -> tuple[Told, ...]:
    state, line_id, limits = standing.state, standing.line.id, history.library.limits
    if state.position is None or state.held is not None or state.reason is None:
        return ()
    if state.reason.code is ReasonCode.IN_BETWEEN:
        limit = limits[LimitId.EQUIPMENT_JUMP]
        return (Told.of(recovery.equipment_jump(limit, state.reason, line_id=line_id)),)
    if state.reason.code is ReasonCode.COMPLETE:
        limit = limits[LimitId.RULE_COMPLETE]
        return (Told.of(recovery.rule_complete(limit, state.position, line_id=line_id)),)
    return ()


def _plateau(history: History, day: date, standing: Standing, done: Sequence[Done]) -> float | None:
    """The probability of a plateau at the last session, where a trend can tell."""
    line, settings = standing.line, history.library.settings
    if line.id is None or not done or day - done[-1][0].day > RECENT:
        return None
    since = done[-1][0].day - PLATEAU_SPAN
    late = tuple(takewhile(lambda each: each[0].day > since, reversed(done)))[::-1]

    def probability() -> float | None:
        around = surroundings_by_day(history, line, [session.day for session, _ in late])
        trend = trend_of(points_of(history, line, late, around), settings)
        if trend is None or not trend.long_enough:
            return None
        return plateau_probability(trend, settings)

    about = (line, history.exercise_of(line), history.trainee, settings)
    points = tuple((session.day, part) for session, part in late)
    inputs = (points, history.equipment, history.body_masses, *about)
    return history.tracks.recall(line, inputs, probability)


def _until(day: date, parts: Sequence[Done]) -> Sequence[Done]:
    """Those of the ``parts``, which are in order, on days up to ``day``."""
    return parts[: bisect_right(parts, day, key=lambda each: each[0].day)]


def _told(caution: Caution | None) -> Told | None:
    return None if caution is None else Told.of(caution)
