"""Weeks ahead for one line: what it will ask if all goes as asked, or with misses in between."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from datetime import date

from desktop.training.asking import target_on
from desktop.training.position import CriterionKind, Position, SchemeKind
from desktop.training.replayed_session import after_session
from desktop.training.session import AskedSet, SetDone
from desktop.training.state import Context, SessionDone, State
from desktop.training.target import Target
from desktop.training.trainee import DeloadWindow

MISSED_BY = 2  # repetitions or seconds short in a session that is imagined as missed


@dataclass(frozen=True, slots=True)
class Ahead:
    """One session to come: its day, its target, and whether it is imagined as missed."""

    day: date
    target: Target
    missed: bool = False


def unroll(
    state: State,
    days: Iterable[date],
    context: Context,
    *,
    deloads: Sequence[DeloadWindow] = (),
    miss_every: int | None = None,
) -> Iterator[Ahead]:
    """The targets on ``days`` (ascending), each session done as asked before the next.

    With ``miss_every`` every so many sessions is missed by two repetitions. Deterministic.
    """
    for count, day in enumerate(days, start=1):
        window = next((w for w in deloads if w.first <= day <= w.last), None)
        target = target_on(state, day, context, deload=window)
        missed = miss_every is not None and count % miss_every == 0
        yield Ahead(day, target, missed)
        state = as_asked(state, target, day, context, missed=missed)


def as_asked(
    state: State, target: Target, day: date, context: Context, *, missed: bool = False
) -> State:
    """The state after a session on ``day`` in which ``target`` was done as asked (or missed)."""
    if not target.sets:
        return state
    top_first = state.rule.scheme.kind is SchemeKind.TOP_AND_BACK_OFF
    judged = target.sets[0 if top_first else -1]
    sets = tuple(
        _done(each, state, is_judged=each is judged, missed=missed) for each in target.sets
    )
    done = SessionDone(day, sets, target.sets, deload=target.deload)
    return after_session(state, done, context)[0]


def next_positions(state: State, days: Sequence[date], context: Context) -> tuple[Position, ...]:
    """Where the line stands on each of ``days`` if all goes as asked."""
    return tuple(
        ahead.target.position
        for ahead in unroll(state, days, context)
        if ahead.target.position is not None
    )


def _done(asked: AskedSet, state: State, *, is_judged: bool, missed: bool) -> SetDone:
    """The set as asked, with what the criterion needs on the one it looks at; or short."""
    criterion = state.rule.criterion
    amount = asked.reps if asked.reps is not None else asked.seconds or 0
    rir = asked.rir
    if missed:
        amount = max(amount - MISSED_BY, 0)
    elif criterion.kind is CriterionKind.LAST_SET_OVER and is_judged:
        amount += criterion.over
    elif criterion.kind is CriterionKind.RESERVE:
        rir = (state.rule.target_rir or 0.0) + 1
    done = SetDone(asked.load_g, variation=asked.variation, rir=rir, tempo_s=asked.tempo_s)
    if asked.reps is not None:
        return replace(done, reps=amount)
    return replace(done, seconds=amount)
