"""Days: what a trainee is asked on a date, slot by slot, or why nothing is asked."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from datetime import date
from enum import StrEnum
from typing import Final

from db.repository import Repository
from desktop.planning.assessments import is_test_day, line_test_on, target_of
from desktop.planning.cautions import cautions_of, standings_in_use
from desktop.planning.clearance import clearance_needed
from desktop.planning.history import History, read_history
from desktop.planning.progress import best_of
from desktop.planning.schedule import (
    absence_on,
    deload_on,
    deload_windows,
    line_days,
    place_on,
    training_day_on,
    training_days,
)
from desktop.planning.standing import LineKey, Standing, key_of
from desktop.planning.surroundings import equipment_on
from desktop.training.demand import body_part_g
from desktop.training.equipment import Bar
from desktop.training.exercises import Exercise, LoadingKind
from desktop.training.loading import Loading, loading
from desktop.training.position import Position, Surroundings
from desktop.training.preview import unroll
from desktop.training.program import Line, Phase, Program, Slot, TrainingDay
from desktop.training.recovery import Caution
from desktop.training.scale import set_up, share_of
from desktop.training.schedule import session_minutes
from desktop.training.session import AskedSet, LineDone, SetDone
from desktop.training.share import Share
from desktop.training.state import State
from desktop.training.strip import strip
from desktop.training.target import StripVariable, Target
from desktop.training.trainee import Trainee
from desktop.training.warm_up import warm_up_ramp

NEXT_SESSIONS: Final = 8


class WhyEmpty(StrEnum):
    """Why nothing is asked on a day."""

    NOT_EMPTY = ""
    NO_PROGRAM = "no program"
    NOT_STARTED = "not started"
    ENDED = "ended"
    REST_DAY = "rest day"
    AWAY = "away"
    CLEARANCE_NEEDED = "clearance needed"


@dataclass(frozen=True, slots=True)
class SlotPlan:
    """One slot on a day: where its line stands, what is asked, and all that helps to do it.

    ``last_time`` on ``last_day`` and ``best`` are from before the day. ``discs`` per side (grams,
    largest first) on ``bar``; None where nothing is loaded so. ``set_up`` is in the trainee's
    words. ``next_positions``: the sessions after this one, if all goes as asked. ``test``: a test
    is asked, and saved as one; `desktop.planning.assessments` reads the start from its session.
    """

    slot: Slot
    exercise: Exercise
    line: Line
    state: State
    target: Target
    strip: tuple[StripVariable, ...] = ()
    last_time: LineDone | None = None
    last_day: date | None = None
    best: SetDone | None = None
    discs: tuple[int, ...] | None = None
    bar: Bar | None = None
    loading: Loading | None = None
    warm_up: tuple[AskedSet, ...] = ()
    set_up: str = ""
    next_positions: tuple[Position, ...] = ()
    share: Share | None = None
    test: bool = False


@dataclass(frozen=True, slots=True)
class DayPlan:
    """What a trainee is asked on a day. Without ``slots``, ``why_empty`` says why; the training
    day is told all the same where one falls on the day. ``minutes`` as planned.
    """

    trainee: Trainee
    day: date
    program: Program | None = None
    week: int | None = None
    phase: Phase | None = None
    training_day: TrainingDay | None = None
    slots: tuple[SlotPlan, ...] = ()
    deload: bool = False
    cautions: tuple[Caution, ...] = ()
    why_empty: WhyEmpty = WhyEmpty.NOT_EMPTY
    minutes: int = 0


def day_plan(repository: Repository, trainee_id: int, day: date) -> DayPlan:
    """What the trainee is asked on ``day``: from sessions before it, and all else up to it.

    A constant number of queries, whatever there is on record. Raises NotFound.
    """
    return day_plan_of(read_history(repository, trainee_id), day)


def day_plan_of(history: History, day: date) -> DayPlan:
    """What the trainee is asked on ``day``, from what was read."""
    standings = standings_in_use(history, day)
    place = place_on(history, day)
    planned = training_day_on(history, day)
    why = why_empty(history, day)
    slots: tuple[SlotPlan, ...] = ()
    if why is WhyEmpty.NOT_EMPTY and planned is not None:
        slots = tuple(_slot_plan(history, slot, standings, day) for slot in planned.slots)
    return DayPlan(
        trainee=history.trainee,
        day=day,
        program=place.program if place else None,
        week=place.week if place and place.phase else None,
        phase=place.phase if place else None,
        training_day=planned,
        slots=slots,
        deload=deload_on(history, day) is not None,
        cautions=cautions_of(history, day, standings),
        why_empty=why,
        minutes=_minutes(history, planned, slots),
    )


def why_empty(history: History, day: date) -> WhyEmpty:
    """Why nothing is asked on ``day``; `WhyEmpty.NOT_EMPTY` where something is."""
    if clearance_needed(history, day) is not None:
        return WhyEmpty.CLEARANCE_NEEDED
    place = place_on(history, day)
    if place is None:
        if any(one.start > day for one in history.assignments):
            return WhyEmpty.NOT_STARTED
        return WhyEmpty.ENDED if history.assignments else WhyEmpty.NO_PROGRAM
    if place.phase is None:
        return WhyEmpty.ENDED
    if absence_on(history, day) is not None:
        return WhyEmpty.AWAY
    if training_day_on(history, day) is None:
        return WhyEmpty.REST_DAY
    return WhyEmpty.NOT_EMPTY


def next_day_of(history: History, after: date) -> date | None:
    """The first day after ``after`` on which training is planned and the trainee is not away;
    None where none comes within a year.
    """
    return next((day for day, _ in training_days(history, after)), None)


def _slot_plan(
    history: History, slot: Slot, standings: Mapping[LineKey, Standing], day: date
) -> SlotPlan:
    standing = standings[key_of(slot)]
    state, target = standing.state, standing.target
    test = line_test_on(history, standing, day) if is_test_day(history, day) else None
    if test is not None:
        target = target_of(standing, test)
    around = state.surroundings
    before = [
        (session, part) for session, part in history.trained(standing.line) if session.day < day
    ]
    last = before[-1] if before else None
    heaviest = max(target.sets, key=lambda asked: asked.load_g, default=None)
    loaded = _loaded(history, standing.exercise, heaviest, day)
    variation = target.position.variation if target.position else None
    if test is not None:
        variation = test.sets[0].variation
    equipment = equipment_on(history.equipment, day)
    return SlotPlan(
        slot=slot,
        exercise=standing.exercise,
        line=standing.line,
        state=state,
        target=target,
        strip=strip(state, history.context),
        last_time=last[1] if last else None,
        last_day=last[0].day if last else None,
        best=_best([done for _, part in before for done in part.working_sets], around),
        discs=loaded.discs_per_side if loaded and _has_discs(loaded) else None,
        bar=loaded.bar if loaded else None,
        loading=loaded,
        warm_up=test.ramp if test else _warm_up(heaviest, around),
        set_up=set_up(standing.exercise, variation, equipment) if variation else "",
        next_positions=() if test else _next_positions(history, standing, day),
        share=_share(history, standing.exercise, variation),
        test=test is not None,
    )


def _loaded(
    history: History, exercise: Exercise, heaviest: AskedSet | None, day: date
) -> Loading | None:
    """How the heaviest set is loaded; None without recorded equipment or where it cannot be."""
    equipment = equipment_on(history.equipment, day)
    if equipment is None or heaviest is None:
        return None
    made = loading(equipment, exercise, heaviest.load_g)
    return made if isinstance(made, Loading) else None


def _has_discs(made: Loading) -> bool:
    return made.bar is not None or made.handle_g is not None


def _best(sets: list[SetDone], around: Surroundings) -> SetDone | None:
    return best_of(sets, around) if sets else None


def _warm_up(heaviest: AskedSet | None, around: Surroundings) -> tuple[AskedSet, ...]:
    if heaviest is None:
        return ()
    return warm_up_ramp(
        heaviest.load_g,
        heaviest.reps,
        around.loads_g,
        bodyweight=around.bodyweight,
        body_part_g=body_part_g(heaviest.variation, around),
        variation=heaviest.variation,
    )


def _next_positions(history: History, standing: Standing, day: date) -> tuple[Position, ...]:
    """What the next eight sessions after ``day`` ask if all goes as asked.

    A line that follows another has none of its own.
    """
    if standing.state.rule.follow is not None:
        return ()
    line = standing.line
    later = line_days(history, line.exercise, line.name, day, NEXT_SESSIONS)
    ahead = unroll(standing.state, (day, *later), history.context, deloads=deload_windows(history))
    return tuple(one.target.position for one in ahead if one.day > day and one.target.position)


def _share(history: History, exercise: Exercise, variation: str | None) -> Share | None:
    if exercise.loading is not LoadingKind.BODYWEIGHT:
        return None
    return share_of(exercise, variation, history.trainee)


def _minutes(history: History, planned: TrainingDay | None, slots: tuple[SlotPlan, ...]) -> int:
    """Minutes of the training day by what its slots ask; 0 on a day without any."""
    if planned is None:
        return 0
    asked = {
        key_of(one.slot): replace(one.slot.start, sets=len(one.target.sets))
        if one.test
        else one.target.position
        for one in slots
    }

    def position_of(slot: Slot) -> Position:
        return asked.get(key_of(slot)) or slot.start

    return round(session_minutes(planned, history.library.exercises, position_of))
