"""Standing: where the lines of a trainee stand on a day, and what each is asked then."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from datetime import date

from desktop.planning.history import History
from desktop.planning.lines import PROGRAM_START, replay_of
from desktop.planning.schedule import deload_on
from desktop.training.asking import follow_target, target_on
from desktop.training.exercises import Exercise
from desktop.training.program import Assignment, Line, LineStart, Slot
from desktop.training.state import Replay, State
from desktop.training.target import Target
from desktop.training.trainee import DeloadWindow

LineKey = tuple[str, str]


@dataclass(frozen=True, slots=True)
class Standing:
    """One line on a day: its replay up to the day and what it is asked on the day."""

    line: Line
    exercise: Exercise
    replay: Replay
    target: Target

    @property
    def state(self) -> State:
        """Where the line stands."""
        return self.replay.state


def key_of(line: Line | Slot) -> LineKey:
    """Exercise and name: what makes a line one line of a trainee."""
    return (line.exercise, line.name if isinstance(line, Line) else line.line_name)


def line_for(history: History, slot: Slot, start: date) -> Line:
    """The line that a slot refers to; where it has neither start nor history (or does not exist
    yet), with the slot's own start on ``start``. Nothing is written.
    """
    known = history.line_of(slot.exercise, slot.line_name)
    line = known or Line(history.trainee_id, slot.exercise, slot.line_name)
    if line.starts or (line.id is not None and history.done(line.id)):
        return line
    return replace(line, starts=(LineStart(start, slot.start, kind=PROGRAM_START),))


def lines_of_slots(history: History, slots: Iterable[Slot], assignment: Assignment) -> list[Line]:
    """The line of each slot, each line once, in the order of the slots."""
    by_key: dict[LineKey, Slot] = {}
    for slot in slots:
        by_key.setdefault(key_of(slot), slot)
    return [line_for(history, slot, assignment.start) for slot in by_key.values()]


def standings_on(
    history: History, day: date, lines: Iterable[Line], *, evening: bool = False
) -> dict[LineKey, Standing]:
    """Where each of ``lines`` stands on ``day``, and the lines that they follow, by key: before
    the day's session, or with it, in the ``evening``.

    A line that follows another is asked a share of what that one is asked; a circle of lines that
    follow each other falls back to the line's own position.
    """
    wanted = {key_of(line): line for line in lines}
    reached: dict[LineKey, tuple[Line, Replay]] = {}
    for line in wanted.values():
        _replay_with_leaders(history, line, wanted, day, reached, evening)
    deload = deload_on(history, day)
    return {
        key: Standing(
            line,
            history.exercise_of(line),
            replayed,
            _target(key, reached, day, history, deload, frozenset()),
        )
        for key, (line, replayed) in reached.items()
    }


def standing_on(history: History, day: date, line: Line) -> Standing:
    """Where one line stands on ``day``."""
    return standings_on(history, day, (line,))[key_of(line)]


def _replay_with_leaders(
    history: History,
    line: Line,
    wanted: dict[LineKey, Line],
    day: date,
    reached: dict[LineKey, tuple[Line, Replay]],
    evening: bool,
) -> None:
    if key_of(line) in reached:
        return
    replayed = replay_of(history, line, day, evening=evening)
    reached[key_of(line)] = (line, replayed)
    follow = replayed.state.rule.follow
    if follow is None:
        return
    leader_key = (line.exercise, follow.line_name)
    leader = wanted.get(leader_key) or history.line_of(*leader_key)
    if leader is not None:
        _replay_with_leaders(history, leader, wanted, day, reached, evening)


def _target(
    key: LineKey,
    reached: dict[LineKey, tuple[Line, Replay]],
    day: date,
    history: History,
    deload: DeloadWindow | None,
    behind: frozenset[LineKey],
) -> Target:
    line, replayed = reached[key]
    state = replayed.state
    follow = state.rule.follow
    leader_key = (line.exercise, follow.line_name) if follow else key
    if follow is None or leader_key not in reached or leader_key in behind | {key}:
        return target_on(state, day, history.context, deload=deload)
    leader = _target(leader_key, reached, day, history, deload, behind | {key})
    return follow_target(leader, state.rule, state.surroundings, state.position, state.held)
