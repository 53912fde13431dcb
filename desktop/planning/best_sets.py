"""Best sets: what of each session of a line is worth being remembered."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from desktop.planning.estimates import Worked, is_counted
from desktop.training.demand import effective_load_g
from desktop.training.position import Surroundings
from desktop.training.session import SetDone


@dataclass(frozen=True, slots=True)
class BestSet:
    """A session's best working set and its highest load. ``top_g`` is the highest effective load
    (None where it is not known), ``work_g`` the most of effective load x repetitions in one set,
    ``amount`` clean repetitions or seconds. ``counted`` False: an easier week, or pain.
    ``working``: all its working sets; ``volume_g``: effective load x repetitions of all.
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
    return tuple(map(_best_set, worked))


def _best_set(worked: Worked) -> BestSet:
    session, part, around, working, loads = worked
    first = working[0]
    alike = all(one is first for one in working)
    best = first if alike else best_of(working, around)
    top_g, work_g, volume_g = None, None, 0.0
    for load_g, one in zip(loads, working, strict=True):
        if load_g is not None:
            work = load_g * (one.reps or 0)
            volume_g += work
            if work_g is None or work > work_g:
                work_g = work
            if top_g is None or load_g > top_g:
                top_g = load_g
    return BestSet(
        session.day, session.id, top_g, best.amount, best, work_g, is_counted(part), working,
        volume_g,
    )  # fmt: skip


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
