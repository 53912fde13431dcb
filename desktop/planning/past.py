"""The past put right: sessions joined, moved to another day, or given to another exercise; and what
the change log says of them. Pure: sessions in, sessions out, nothing is written.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date, datetime
from enum import StrEnum
from typing import Final

from desktop.training.exercises import Exercise, LoadingKind
from desktop.training.program import Line
from desktop.training.session import (
    AskedSet,
    ChangeKind,
    LineDone,
    Session,
    SessionChange,
    SetDone,
    Wellness,
)

NEAR_DAYS: Final = 3
"""Sessions this many days apart may be one that was typed in two parts."""


# Joining


def near(session: Session, sessions: Sequence[Session]) -> tuple[Session, ...]:
    """The other sessions of the same and of near days, the nearest first."""
    others = [
        one
        for one in sessions
        if one.id != session.id and abs((one.day - session.day).days) <= NEAR_DAYS
    ]
    return tuple(sorted(others, key=lambda one: abs((one.day - session.day).days)))


def joined(kept: Session, gone: Session) -> Session:
    """One session of two, on the day of ``kept``. Every set of both is kept, the earlier first.

    Minutes add up; the effort is the mean by minutes, so that the training load is the sum.
    """
    early, late = sorted((kept, gone), key=lambda one: (one.day, one.entry))
    lines = list(early.lines)
    for part in late.lines:
        same = [at for at, one in enumerate(lines) if _same_line(one, part)]
        if same:
            lines[same[-1]] = _joined_parts(lines[same[-1]], part, first_kept=early is kept)
        else:
            lines.append(part)
    effort, minutes = _together(kept, gone)
    return replace(
        kept,
        lines=tuple(lines),
        effort=effort,
        minutes=minutes,
        wellness=_felt(kept.wellness, gone.wellness),
        note=_both(early.note, late.note),
        red_flag=kept.red_flag or gone.red_flag,
        program_id=kept.program_id if kept.program_id is not None else gone.program_id,
        week=kept.week if kept.program_id is not None else gone.week,
        day_name=kept.day_name or gone.day_name,
    )


def _same_line(one: LineDone, other: LineDone) -> bool:
    return (one.line_id, one.exercise) == (other.line_id, other.exercise)


def _joined_parts(early: LineDone, late: LineDone, *, first_kept: bool) -> LineDone:
    kept, gone = (early, late) if first_kept else (late, early)
    sets = (*early.sets, *late.sets)
    return replace(
        kept,
        asked=kept.asked or gone.asked,
        sets=sets,
        test=kept.test or gone.test,
        skipped=not any(not done.warm_up for done in sets),
        reason=kept.reason or gone.reason,
        note=_both(early.note, late.note),
    )


def _together(one: Session, other: Session) -> tuple[float | None, int | None]:
    minutes = [each.minutes for each in (one, other) if each.minutes is not None]
    total = sum(minutes) if minutes else None
    efforts = [each for each in (one, other) if each.effort is not None]
    if len(efforts) < 2:
        return (efforts[0].effort if efforts else None), total
    weights = [each.minutes or 0 for each in efforts]
    if not all(weights):
        return max(each.effort or 0.0 for each in efforts), total
    load = sum((each.effort or 0.0) * weight for each, weight in zip(efforts, weights, strict=True))
    return round(load / sum(weights), 2), total


def _felt(one: Wellness, other: Wellness) -> Wellness:
    return Wellness(
        one.sleep if one.sleep is not None else other.sleep,
        one.soreness if one.soreness is not None else other.soreness,
        one.stress if one.stress is not None else other.stress,
        one.motivation if one.motivation is not None else other.motivation,
    )


def _both(one: str, other: str) -> str:
    return "; ".join(dict.fromkeys(part for part in (one.strip(), other.strip()) if part))


# Moving


def moved(session: Session, day: date) -> Session:
    """The same session on another day."""
    return replace(session, day=day)


# Another exercise


class NoRepair(StrEnum):
    """Why one exercise's sessions cannot be given to another."""

    POSSIBLE = ""
    SAME = "same"
    MEASURE = "measure"
    HELP = "help"


@dataclass(frozen=True, slots=True)
class Repair:
    """What becomes of the sessions of one line when they are another line's.

    ``sessions`` changed, oldest first; ``joined``: days on which both lines stood, whose sets are
    now together; ``variations``: sets whose variation the other exercise does not know.
    """

    sessions: tuple[Session, ...]
    joined: tuple[date, ...] = ()
    variations: int = 0


def why_not(
    sessions: Sequence[Session], source: Line, target: Line, exercises: tuple[Exercise, Exercise]
) -> NoRepair:
    """Whether the sessions of ``source`` may be those of ``target``; the exercises of both."""
    was, will_be = exercises
    if (source.exercise, source.name) == (target.exercise, target.name):
        return NoRepair.SAME
    if was.measure is not will_be.measure:
        return NoRepair.MEASURE
    helped = any(
        done.load_g < 0
        for session in sessions
        for part in session.lines
        if part.line_id == source.id
        for done in part.sets
    )
    if helped and will_be.loading is not LoadingKind.BODYWEIGHT:
        return NoRepair.HELP
    return NoRepair.POSSIBLE


def repaired(sessions: Sequence[Session], source: Line, target: Line, exercise: Exercise) -> Repair:
    """The sessions of line ``source`` as those of ``target``, which trains ``exercise``.

    Where both stand in one session, the sets come together. Variations that the exercise does not
    know are dropped. ``target`` has an id.
    """
    known = {each.key for each in exercise.variations}
    changed: list[Session] = []
    together: list[date] = []
    dropped = 0
    for session in sessions:
        if not any(part.line_id == source.id for part in session.lines):
            continue
        lines: list[LineDone] = []
        for part in session.lines:
            if part.line_id == source.id:
                dropped += sum(done.variation not in {None, *known} for done in part.sets)
                part = _given_to(part, target, known)
            same = [at for at, one in enumerate(lines) if _same_line(one, part)]
            if same:
                lines[same[0]] = _joined_parts(lines[same[0]], part, first_kept=True)
                together.append(session.day)
            else:
                lines.append(part)
        changed.append(replace(session, lines=tuple(lines)))
    return Repair(tuple(changed), tuple(dict.fromkeys(together)), dropped)


def _given_to(part: LineDone, target: Line, known: set[str]) -> LineDone:
    def asked(one: AskedSet) -> AskedSet:
        return one if one.variation in known else replace(one, variation=None)

    def done(one: SetDone) -> SetDone:
        return one if one.variation in known else replace(one, variation=None)

    assert target.id is not None
    return replace(
        part,
        line_id=target.id,
        exercise=target.exercise,
        asked=tuple(map(asked, part.asked)),
        sets=tuple(map(done, part.sets)),
    )


# The change log


class What(StrEnum):
    """What differs between two states of a session."""

    DAY = "day"
    SET = "set"
    SETS = "sets"
    EXERCISE_ADDED = "exercise added"
    EXERCISE_GONE = "exercise gone"
    EFFORT = "effort"
    MINUTES = "minutes"
    NOTE = "note"
    LINE_NOTE = "line note"
    WELLNESS = "wellness"
    RED_FLAG = "red flag"


@dataclass(frozen=True, slots=True)
class Difference:
    """One difference: of which exercise (key; "" of the session), which set (from 1; 0: none),
    and the values before and after, as the dataclasses hold them.
    """

    what: What
    exercise: str = ""
    number: int = 0
    before: object = None
    after: object = None


@dataclass(frozen=True, slots=True)
class LoggedChange:
    """One entry of the change log: when (UTC), what was done, and what it changed."""

    at: datetime
    what: ChangeKind
    differences: tuple[Difference, ...] = ()


def change_log(changes: Sequence[SessionChange], now: Session) -> tuple[LoggedChange, ...]:
    """The log of a session that stands as ``now``, the latest first."""
    states = [each.before for each in changes if each.before is not None]
    after_each = iter([*states[1:], now])
    told = [
        LoggedChange(
            each.at,
            each.what,
            differences(each.before, next(after_each)) if each.before is not None else (),
        )
        for each in changes
    ]
    return tuple(reversed(told))


def differences(before: Session, after: Session) -> tuple[Difference, ...]:
    """What differs between two states, in the order of the form."""
    found: list[Difference] = []
    if before.day != after.day:
        found.append(Difference(What.DAY, before=before.day, after=after.day))
    was = {(part.line_id, part.exercise): part for part in before.lines}
    will_be = {(part.line_id, part.exercise): part for part in after.lines}
    for key, part in will_be.items():
        if key in was:
            found += _of_line(was[key], part)
        else:
            found.append(Difference(What.EXERCISE_ADDED, part.exercise, after=len(part.sets)))
    for key, part in was.items():
        if key not in will_be:
            found.append(Difference(What.EXERCISE_GONE, part.exercise, before=len(part.sets)))
    for what, one, other in (
        (What.EFFORT, before.effort, after.effort),
        (What.MINUTES, before.minutes, after.minutes),
        (What.WELLNESS, before.wellness, after.wellness),
        (What.NOTE, before.note, after.note),
        (What.RED_FLAG, before.red_flag, after.red_flag),
    ):
        if one != other:
            found.append(Difference(what, before=one, after=other))
    return tuple(found)


def _of_line(was: LineDone, now: LineDone) -> list[Difference]:
    found = [
        Difference(What.SET, now.exercise, number, one, other)
        for number, (one, other) in enumerate(zip(was.sets, now.sets, strict=False), start=1)
        if one != other
    ]
    if len(was.sets) != len(now.sets):
        found.append(Difference(What.SETS, now.exercise, before=len(was.sets), after=len(now.sets)))
    if was.note != now.note:
        found.append(Difference(What.LINE_NOTE, now.exercise, before=was.note, after=now.note))
    return found
