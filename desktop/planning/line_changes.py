"""Line changes: what the coach changed for one trainee beside the program, and taking it back."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import date
from enum import StrEnum

from desktop.planning.history import History
from desktop.planning.lines import PROGRAM_START
from desktop.planning.outlook import Onlooker
from desktop.planning.standing import line_for, standing_on
from desktop.training.position import Position, ProgressionRule
from desktop.training.program import (
    Assignment,
    Line,
    LineStart,
    Override,
    Program,
    RuleRevision,
    Slot,
)


class ChangeKind(StrEnum):
    """What was changed."""

    START = "start"
    RULE = "rule"
    POSITION = "position"


@dataclass(frozen=True, slots=True)
class LineChange:
    """One change of a line for its trainee, from ``day`` on; ``part`` is what the line holds."""

    kind: ChangeKind
    day: date
    part: LineStart | RuleRevision | Override

    @property
    def position(self) -> Position | None:
        """Where the line stands by this change; None for a rule."""
        return None if isinstance(self.part, RuleRevision) else self.part.position

    @property
    def note(self) -> str:
        """Why: the coach's note, or how a start was found."""
        if isinstance(self.part, Override):
            return self.part.note
        return self.part.kind if isinstance(self.part, LineStart) else ""


def line_changes(history: History, slot: Slot, assignment: Assignment) -> tuple[LineChange, ...]:
    """The changes that concern an assigned program, newest first: starts that the program did not
    give, and rules and positions of the coach's since the program began.
    """
    line = history.line_of(slot.exercise, slot.line_name)
    if line is None:
        return ()
    since = assignment.start
    found = [
        *(
            LineChange(ChangeKind.START, one.day, one)
            for one in line.starts
            if one.kind != PROGRAM_START and one.day >= since
        ),
        *(LineChange(ChangeKind.RULE, one.day, one) for one in line.revisions if one.day >= since),
        *(
            LineChange(ChangeKind.POSITION, one.day, one)
            for one in line.overrides
            if one.day >= since
        ),
    ]
    return tuple(sorted(found, key=lambda one: one.day, reverse=True))


def without(line: Line, change: LineChange) -> Line:
    """The line as if the change had not been made."""
    match change.part:
        case LineStart():
            return replace(line, starts=tuple(one for one in line.starts if one != change.part))
        case RuleRevision():
            kept = tuple(one for one in line.revisions if one != change.part)
            return replace(line, revisions=kept)
        case Override():
            kept_words = tuple(one for one in line.overrides if one != change.part)
            return replace(line, overrides=kept_words)


def rule_now(history: History, slot: Slot, assignment: Assignment, today: date) -> ProgressionRule:
    """The rule by which the trainee's line moves today: the coach's for them, or the program's."""
    day = max(today, assignment.start)
    return standing_on(history, day, line_for(history, slot, assignment.start)).state.rule


def with_own_rule(
    history: History, slot: Slot, assignment: Assignment, rule: ProgressionRule, today: date
) -> Line:
    """The trainee's line moving by ``rule`` from today on (or from the start of the program), to
    be saved; the program stays as it is for everybody else.
    """
    day = max(today, assignment.start)
    line = line_for(history, slot, assignment.start)
    kept = tuple(one for one in line.revisions if one.day != day)
    return replace(line, revisions=(*kept, RuleRevision(day, rule)))


def onlooker_with_own_rule(onlooker: Onlooker, program: Program, slot: Slot) -> Onlooker:
    """The trainee as if their line moved by the rule of ``slot`` from today on; nothing is saved.

    Unchanged where the program does not run for them.
    """
    history, assignment = onlooker.history, onlooker.assignment_of(program)
    if history is None or assignment is None:
        return onlooker
    line = with_own_rule(history, slot, assignment, slot.rule, onlooker.today)
    others = tuple(
        each for each in history.lines if (each.exercise, each.name) != (line.exercise, line.name)
    )
    return replace(onlooker, history=replace(history, lines=(*others, line)))
