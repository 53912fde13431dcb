"""Drafts opened: from a planned day, from a session on record, and for an exercise added."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace
from datetime import date
from typing import Final

from desktop.planning.days import DayPlan, SlotPlan
from desktop.planning.history import History
from desktop.planning.progress import best_of
from desktop.planning.session_draft import LineDraft, SessionDraft, SetDraft
from desktop.planning.standing import standing_on
from desktop.planning.typed_cells import (
    MOST_REPS,
    CellKind,
    load_text,
    number_text,
    sides_text,
)
from desktop.training.exercises import Exercise, LoadingKind, Measure
from desktop.training.position import Position, ProgressionRule
from desktop.training.program import Line, Slot
from desktop.training.quantities import Unit, same_load
from desktop.training.reasons import ReasonCode, reason
from desktop.training.session import AskedSet, LineDone, Session, SetDone
from desktop.training.state import State
from desktop.training.strip import strip
from desktop.training.target import Target
from desktop.training.trainee import Trainee

UNPLANNED_SETS: Final = 3
"""So many sets stand open for an exercise added that was never done before."""

_TYPED_LOADS: Final = frozenset(
    {LoadingKind.BARBELL, LoadingKind.DUMBBELL, LoadingKind.KETTLEBELL, LoadingKind.STACK}
)

Why = Callable[[SlotPlan], str]


def draft_of_plan(plan: DayPlan, why: Why, mark: str = ".") -> SessionDraft:
    """The planned day, ready to be typed; ``why`` gives the sentence kept with each exercise."""
    trainee = plan.trainee
    assert trainee.id is not None
    planned = plan.training_day is not None
    return SessionDraft(
        trainee_id=trainee.id,
        day=plan.day,
        unit=trainee.unit,
        mark=mark,
        lines=tuple(line_of_slot(slot, trainee.unit, why(slot)) for slot in plan.slots),
        program_id=plan.program.id if plan.program and planned else None,
        week=plan.week if planned else None,
        day_name=plan.training_day.name if plan.training_day else "",
    )


def unplanned_draft(trainee: Trainee, day: date, mark: str = ".") -> SessionDraft:
    """A session that no program asked for, still without exercises."""
    assert trainee.id is not None
    return SessionDraft(trainee.id, day, trainee.unit, mark)


def line_of_slot(slot: SlotPlan, unit: Unit, why: str, *, planned: bool = True) -> LineDraft:
    """One slot, ready to be typed: as many sets as asked; where nothing is, as last time."""
    asked = slot.target.sets
    last = slot.last_time.working_sets if slot.last_time else ()
    count = len(asked) or (len(last) or UNPLANNED_SETS if not planned else 0)
    return LineDraft(
        exercise=slot.exercise.key,
        line_id=slot.line.id,
        line_name=slot.line.name,
        kind=kind_of(slot.exercise, unit),
        asked=asked,
        sets=tuple(
            _fresh_set(asked[at]) if asked else _unasked_set(slot, last, at) for at in range(count)
        ),
        usual_g=_usual_g(slot.exercise, last),
        planned=planned,
        deload=slot.target.deload,
        test=slot.test,
        reason=why,
    )


def draft_of_session(
    session: Session,
    trainee: Trainee,
    exercises: Mapping[str, Exercise],
    line_names: Mapping[int, str],
    mass: str = "",
    mark: str = ".",
) -> SessionDraft:
    """A session on record, as texts; unchanged, it gives the same session again.

    ``line_names`` by the line's id; ``mass`` is the body mass of the day as text.
    """
    felt = session.wellness
    return SessionDraft(
        trainee_id=session.trainee_id,
        day=session.day,
        unit=trainee.unit,
        mark=mark,
        lines=tuple(
            _stored_line(part, exercises[part.exercise], line_names, trainee.unit, mark)
            for part in session.lines
        ),
        effort="" if session.effort is None else number_text(session.effort, mark),
        minutes=_whole(session.minutes),
        mass=mass,
        sleep=_whole(felt.sleep),
        soreness=_whole(felt.soreness),
        stress=_whole(felt.stress),
        motivation=_whole(felt.motivation),
        note=session.note,
        red_flag=session.red_flag,
        program_id=session.program_id,
        week=session.week,
        day_name=session.day_name,
        session_id=session.id,
        revision=session.revision,
        entry=session.entry,
    )


def slot_of_line(history: History, exercise: Exercise, name: str, day: date) -> SlotPlan:
    """An exercise that the day does not ask for: where its line stands, last time, best.

    Nothing is asked. A line that does not exist yet has no history either.
    """
    line = history.line_of(exercise.key, name)
    if line is None:
        fresh = Line(history.trainee_id, exercise.key, name)
        return SlotPlan(_no_slot(exercise, name), exercise, fresh, State(None), _no_target(None))
    standing = standing_on(history, day, line)
    before = [each for each in history.trained(line) if each[0].day < day]
    done = [each for _, part in before for each in part.working_sets]
    return SlotPlan(
        slot=_no_slot(exercise, name),
        exercise=exercise,
        line=line,
        state=standing.state,
        target=_no_target(standing.state.position),
        strip=strip(standing.state, history.context),
        last_time=before[-1][1] if before else None,
        last_day=before[-1][0].day if before else None,
        best=best_of(done, standing.state.surroundings) if done else None,
    )


def kind_of(exercise: Exercise, unit: Unit, hold: bool | None = None) -> CellKind:
    """What an exercise's cells may hold."""
    return CellKind(
        unit=unit,
        hold=exercise.measure is Measure.HOLD if hold is None else hold,
        sided=exercise.unilateral,
        signed=exercise.loading is LoadingKind.BODYWEIGHT,
    )


def _no_slot(exercise: Exercise, name: str) -> Slot:
    return Slot(exercise.key, ProgressionRule(), Position(), name)


def _no_target(position: Position | None) -> Target:
    return Target(position, (), reason(ReasonCode.START_NEEDED))


def _fresh_set(asked: AskedSet) -> SetDraft:
    return SetDraft(asked=asked, variation=asked.variation, tempo_s=asked.tempo_s)


def _unasked_set(slot: SlotPlan, last: Sequence[SetDone], at: int) -> SetDraft:
    variation = last[min(at, len(last) - 1)].variation if last else None
    position = slot.state.position
    return SetDraft(variation=variation or (position.variation if position else None))


def _usual_g(exercise: Exercise, last: Sequence[SetDone]) -> int | None:
    """The load of last time's first set; without one, nothing is added to the body or the band,
    and anything else must be typed.
    """
    if last:
        return last[0].load_g
    return None if exercise.loading in _TYPED_LOADS else 0


def _stored_line(
    part: LineDone, exercise: Exercise, names: Mapping[int, str], unit: Unit, mark: str
) -> LineDraft:
    held = [each.reps is None and each.seconds is not None for each in part.sets]
    kind = kind_of(exercise, unit, all(held) if held else None)
    sided = kind.sided or any(each.side for each in part.sets)
    most = max((each.reps or 0 for each in part.sets), default=0)
    kind = CellKind(unit, kind.hold, sided, kind.signed, max(MOST_REPS, most))
    return LineDraft(
        exercise=part.exercise,
        line_id=part.line_id,
        line_name=names.get(part.line_id, ""),
        kind=kind,
        asked=part.asked,
        sets=_stored_sets(part, kind, mark),
        usual_g=_usual_g(exercise, part.working_sets),
        planned=bool(part.asked),
        deload=part.deload,
        test=part.test,
        reason=part.reason,
        note=part.note,
    )


def _stored_sets(part: LineDone, kind: CellKind, mark: str) -> tuple[SetDraft, ...]:
    """Stored sets as columns, each working set under what was asked of it; asked ones that were
    not done stand blank behind them.
    """
    asked = iter(part.asked)
    columns = [
        _stored_set(was, None if was[0].warm_up else next(asked, None), kind, mark)
        for was in _columns(part.sets)
    ]
    return (*columns, *(_fresh_set(each) for each in asked)) or (SetDraft(),)


def typed_sets(line: LineDraft, done: Sequence[SetDone], mark: str) -> tuple[SetDraft, ...]:
    """Sets that were told otherwise than by typing, as if they had been typed into ``line``."""
    part = LineDone(line.line_id or 0, line.exercise, line.asked, tuple(done))
    columns = _stored_sets(part, line.kind, mark)
    return tuple(replace(each, was=(), was_texts=()) for each in columns)


def _columns(sets: Sequence[SetDone]) -> list[tuple[SetDone, ...]]:
    """Sets one by one, but a left one and the right one behind it together."""
    columns: list[tuple[SetDone, ...]] = []
    for each in sets:
        before = columns[-1] if columns else ()
        if len(before) == 1 and _is_other_side(before[0], each):
            columns[-1] = (before[0], each)
        else:
            columns.append((each,))
    return columns


def _is_other_side(left: SetDone, right: SetDone) -> bool:
    alike = (left.variation, left.tempo_s, left.warm_up) == (
        right.variation,
        right.tempo_s,
        right.warm_up,
    )
    counted = (left.reps is None) == (right.reps is None)
    return alike and counted and (left.side, right.side) == ("left", "right")


def _stored_set(
    was: tuple[SetDone, ...], asked: AskedSet | None, kind: CellKind, mark: str
) -> SetDraft:
    as_asked = asked is not None and all(same_load(each.load_g, asked.load_g) for each in was)
    reserves = tuple("" if each.rir is None else number_text(each.rir, mark) for each in was)
    texts = (
        sides_text(tuple(str(each.amount) for each in was)),
        "" if as_asked else sides_text(tuple(load_text(w.load_g, kind, mark) for w in was)),
        sides_text(reserves) if all(reserves) else "",
        sides_text(tuple(str(each.pain) for each in was)) if any(w.pain for w in was) else "",
    )
    return SetDraft(
        *texts,
        asked=asked,
        was=was,
        was_texts=texts,
        variation=was[0].variation,
        tempo_s=was[0].tempo_s,
        warm_up=was[0].warm_up,
    )


def _whole(value: int | None) -> str:
    return "" if value is None else str(value)
