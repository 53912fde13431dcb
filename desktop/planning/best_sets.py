"""Best sets: what of each session of a line is worth being remembered."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from typing import NamedTuple

from desktop.planning.estimates import Worked
from desktop.training.demand import effective_load_g
from desktop.training.position import Surroundings
from desktop.training.session import SetDone


class BestSet(NamedTuple):
    """A session's best working set and its highest load. ``top_g`` is the highest effective load
    (None where it is not known), ``work_g`` the most of effective load x repetitions in one set,
    ``amount`` clean repetitions or seconds. ``counted`` False: an easier week, or pain.
    ``working``: all its working sets; ``volume_g``: effective load x repetitions of all. A tuple,
    since ten years of them are made while somebody waits for a chart.
    """

    day: date
    session_id: int | None
    top_g: float | None
    amount: int
    done: SetDone
    work_g: float | None = None
    counted: bool = True
    working: tuple[SetDone, ...] = ()
    volume_g: float = 0.0


def best_sets_of(worked: Sequence[Worked]) -> tuple[BestSet, ...]:
    """The best set of each session."""
    alike: dict[tuple[int, int], _Told] = {}
    found: list[BestSet] = []
    for each in worked:
        key = (id(each.part), id(each.around))
        told = alike.get(key)
        if told is None:
            told = alike[key] = _told(each)
        best, top_g, work_g, volume_g = told
        found.append(
            BestSet(
                each.session.day, each.session.id, top_g, best.amount, best, work_g, each.counted,
                each.working, volume_g,
            )
        )  # fmt: skip
    return tuple(found)


_Told = tuple[SetDone, float | None, float | None, float]
"""A session's best set, its highest load, its most work in one set, and its volume."""


def _told(worked: Worked) -> _Told:
    working, around = worked.working, worked.around
    first = working[0]
    best = first if all(one is first for one in working) else best_of(working, around)
    top_g: float | None = None
    work_g: float | None = None
    volume_g = 0.0
    for load_g, one in zip(worked.loads, working, strict=True):
        if load_g is not None:
            work = load_g * (one.reps or 0)
            volume_g += work
            if work_g is None or work > work_g:
                work_g = work
            if top_g is None or load_g > top_g:
                top_g = load_g
    return best, top_g, work_g, volume_g


def best_of(sets: Sequence[SetDone], around: Surroundings) -> SetDone:
    """The set that asked most: by demand, else by variation, load and clean amount in turn.

    There must be at least one.
    """
    places = {step.key: place for place, step in enumerate(around.scale)}

    def worth(done: SetDone) -> tuple[float, int, int, int]:
        load_g = effective_load_g(done.load_g, done.variation, around) or 0.0
        demand = load_g * (1 + (done.reps or 0) / 30)
        return (demand, places.get(done.variation or "", -1), done.load_g, done.amount)

    return max(sets, key=worth)
