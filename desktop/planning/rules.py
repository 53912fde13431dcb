"""Rules: which rule a line moves by from which day on, by its programs and the coach."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date

from desktop.planning.history import History
from desktop.planning.schedule import DAY, phase_spans, place_on, slot_in_phase
from desktop.training.position import ProgressionRule
from desktop.training.program import Line, PhasePurpose, Program, RuleRevision


def rule_revisions(history: History, line: Line) -> tuple[RuleRevision, ...]:
    """The rules that hold for ``line`` one after another, each from its day on.

    The running program's rule for the line holds from the first day of each phase; the coach's
    own revision for this trainee holds from its day until the program's rule really changes. On
    one day the coach's goes last. Deload phases and tests leave the rule as it is.
    """
    program = [(revision, False) for revision in _program_rules(history, line)]
    own = [(revision, True) for revision in line.revisions]
    in_force: ProgressionRule | None = None
    asked_by_program: ProgressionRule | None = None
    revisions: list[RuleRevision] = []
    for revision, is_own in sorted((*program, *own), key=lambda one: (one[0].day, one[1])):
        if not is_own:
            if revision.rule == asked_by_program:
                continue
            asked_by_program = revision.rule
        if revision.rule != in_force:
            in_force = revision.rule
            revisions.append(revision)
    return tuple(_last_of_each_day(revisions))


def _program_rules(history: History, line: Line) -> list[RuleRevision]:
    """The program's rule for the line on every day on which another phase begins to hold."""
    days: set[date] = set()
    for assignment in history.assignments:
        program = history.library.programs[assignment.program_id]
        days |= {span.first for span in phase_spans(assignment, program)}
        if assignment.ended is not None:
            days.add(assignment.ended + DAY)
    rules: list[RuleRevision] = []
    for day in sorted(days):
        place = place_on(history, day)
        if place is None or place.phase is None:
            continue
        slot = slot_in_phase(place.phase, line.exercise, line.name)
        if slot is None or (rules and place.phase.purpose is PhasePurpose.DELOAD):
            continue
        if place.phase.purpose is PhasePurpose.ASSESS and _is_built(place.program, line):
            continue
        rules.append(RuleRevision(day, slot.rule))
    return rules


def _is_built(program: Program, line: Line) -> bool:
    """Whether the program trains the line besides testing it."""
    building = (phase for phase in program.phases if phase.purpose is PhasePurpose.BUILD)
    return any(slot_in_phase(phase, line.exercise, line.name) for phase in building)


def _last_of_each_day(revisions: Iterable[RuleRevision]) -> list[RuleRevision]:
    by_day: dict[date, RuleRevision] = {one.day: one for one in revisions}
    return list(by_day.values())
