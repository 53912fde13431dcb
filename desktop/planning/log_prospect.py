"""What would become of each line of a log that came in, before anything is taken."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Container, Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from enum import StrEnum
from pathlib import Path
from typing import Final

from db.log_import import ImportPlan, planning_import
from db.log_names import folded, nearest
from db.log_rows import LogRow, Problem
from db.repository import Repository
from db.steps import Steps
from db.tables import hand_back
from desktop.planning.exercise_search import find_exercises
from desktop.planning.table_import import MappedTable
from desktop.planning.table_lines import BODY, NO_LOAD
from desktop.training.exercises import Exercise, LoadingKind
from desktop.training.table_mapping import LEAVE_OUT as LEAVE_OUT

_UNLOADED: Final = (LoadingKind.BODYWEIGHT, LoadingKind.BAND)
_MOST_NEAR: Final = 3


class Fate(StrEnum):
    """What becomes of a line."""

    TAKEN = "taken"
    DOUBTFUL = "doubtful"
    REFUSED = "refused"
    HELD = "held back"
    THERE = "there already"
    LEFT_OUT = "left out"


@dataclass(frozen=True, slots=True)
class LineFate:
    """One line of the file: its number, what it was read as (one row a set), and why it is not
    taken or is doubtful. ``at`` names the columns of the log that this concerns.
    """

    number: int
    fate: Fate
    rows: tuple[LogRow, ...] = ()
    reasons: tuple[str, ...] = ()
    at: frozenset[str] = frozenset()


@dataclass(frozen=True, slots=True)
class NameQuestion:
    """A name of the file that is not known here, on how many lines; ``nearest`` are known ones:
    (what it would stand for, its name). ``answer``: what it stands for, "" while nobody said.
    """

    kind: str
    name: str
    lines: int
    nearest: tuple[tuple[str, str], ...] = ()
    answer: str = ""


@dataclass(frozen=True, slots=True)
class Decisions:
    """What the coach said: what names stand for, which exercises are new, and whether doubtful
    lines are taken.
    """

    names: tuple[tuple[str, str], ...] = ()
    new_exercises: tuple[Exercise, ...] = ()
    take_doubtful: bool = False


@dataclass(frozen=True, slots=True)
class Prospect:
    """What taking the file would do. ``exercises``: known ones by folded name, to show them."""

    plan: ImportPlan
    lines: tuple[LineFate, ...]
    names: tuple[NameQuestion, ...]
    exercises: Mapping[str, str]

    def count(self, *fates: Fate) -> int:
        """How many lines have one of these fates."""
        return sum(1 for line in self.lines if line.fate in fates)

    @property
    def sets(self) -> int:
        """How many sets would be added."""
        return sum(len(part.sets) for each in self.plan.sessions for part in each.parts)

    @property
    def empty(self) -> bool:
        """Whether nothing would be added."""
        plan = self.plan
        return not (plan.sessions or plan.body_masses or plan.activities)


def foreseeing(
    repository: Repository, mapped: MappedTable, decisions: Decisions
) -> Steps[Prospect]:
    """What taking a log into the data would do, line by line, step by step; reads only."""
    known = _Names(repository, decisions)
    left_out = known.left_out(_all_rows(mapped))
    doubts = _doubts(mapped, known, left_out)
    preview = mapped.preview
    refused = set() if decisions.take_doubtful else {doubt.line for doubt in doubts}
    not_taken = left_out | refused
    if not_taken:
        preview = replace(
            preview,
            rows=tuple(r for r in preview.rows if r.line not in not_taken),
            spoiled=(
                *(r for r in preview.spoiled if r.line not in left_out),
                *(r for r in preview.rows if r.line in refused),
            ),
            problems=(
                *(p for p in preview.problems if p.line not in left_out),
                *(d for d in doubts if d.line in refused),
            ),
        )
    plan = yield from planning_import(
        repository, preview, known.answers, new_exercises=decisions.new_exercises
    )
    lines = _fates(mapped, plan, doubts, left_out)
    added = {name for name, _ in plan.new_trainees}
    return Prospect(plan, lines, known.questions(_all_rows(mapped), added), known.shown)


def hand_back_lines(prospect: Prospect, target: Path) -> int:
    """Write the lines that are not taken as a file to be mended, each with its reason; returns how
    many. Raises OSError.
    """
    preview = prospect.plan.preview
    lines = (
        (preview.cells[line.number], "; ".join(line.reasons))
        for line in prospect.lines
        if line.fate in NOT_TAKEN and line.number in preview.cells
    )
    return hand_back(preview.heading, lines, target, preview.separator)


NOT_TAKEN: Final = (Fate.REFUSED, Fate.HELD, Fate.DOUBTFUL)


def like(exercise: Exercise, name: str, taken: Sequence[str]) -> Exercise:
    """A new exercise of the coach's own called ``name`` that is loaded and counted as
    ``exercise`` is; its key is none of ``taken``.
    """
    stem = "-".join("".join(c if c.isalnum() else " " for c in name.casefold()).split()) or "own"
    key, number = stem, 1
    while key in taken:
        number += 1
        key = f"{stem}-{number}"
    return replace(
        exercise, key=key, name=name, other_names=(), variations=(), heights=(), cue="",
        own=True, retired=False, id=None, revision=0,
    )  # fmt: skip


def _all_rows(mapped: MappedTable) -> tuple[LogRow, ...]:
    return (*mapped.preview.rows, *mapped.preview.spoiled)


def _doubts(mapped: MappedTable, known: _Names, left_out: set[int]) -> list[Problem]:
    """The doubts that stand: no load is none where the body or a band is the load."""
    exercise = {row.line: row.exercise for row in mapped.preview.rows}
    return [
        doubt
        for doubt in mapped.doubts
        if doubt.line not in left_out
        and (doubt.text not in (NO_LOAD, BODY) or known.weighted(exercise.get(doubt.line, "")))
    ]


def _fates(
    mapped: MappedTable, plan: ImportPlan, doubts: Sequence[Problem], left_out: set[int]
) -> tuple[LineFate, ...]:
    rows: dict[int, list[LogRow]] = defaultdict(list)
    for row in _all_rows(mapped):
        rows[row.line].append(row)
    said: dict[int, list[Problem]] = defaultdict(list)
    for problem in (*plan.problems, *plan.held_back):
        said[problem.line].append(problem)
    unsure: dict[int, list[Problem]] = defaultdict(list)
    for doubt in doubts:
        unsure[doubt.line].append(doubt)
    held, there = {p.line for p in plan.held_back}, set(plan.doubles)

    def fated(line: int) -> LineFate:
        made = tuple(rows.get(line, ()))
        if line in left_out:
            return LineFate(line, Fate.LEFT_OUT, made)
        if line not in said and line not in unsure:
            return LineFate(line, Fate.THERE if line in there else Fate.TAKEN, made)
        wrong, doubtful = said.get(line, []), unsure.get(line, [])
        fate = Fate.HELD if line in held else Fate.REFUSED
        if doubtful and not set(wrong) - set(doubtful):
            fate = Fate.DOUBTFUL
        return LineFate(
            line,
            fate,
            made,
            tuple(dict.fromkeys(p.text for p in (wrong or doubtful))),
            frozenset(p.column for p in (*wrong, *doubtful)),
        )

    return tuple(map(fated, sorted({*rows, *said})))


class _Names:
    """What names stand for: as known here, and as the coach said."""

    def __init__(self, repository: Repository, decisions: Decisions) -> None:
        self.answers = {name: meant for name, meant in decisions.names if meant != LEAVE_OUT}
        self._said = {folded(name): meant for name, meant in decisions.names}
        stored = repository.exercises(retired=True)
        found = (*stored, *decisions.new_exercises)
        self._active = tuple(one for one in stored if not one.retired)
        self._stored = {
            folded(name) for one in stored for name in (one.key, one.name, *one.other_names)
        }
        self._exercises: dict[str, Exercise] = {}
        for names in (lambda e: (e.key, e.name), lambda e: e.other_names):
            for exercise in found:
                for name in names(exercise):
                    self._exercises.setdefault(folded(name), exercise)
        self._trainees = {folded(t.name): t.name for t in repository.trainees(archived=True)}
        self.shown = {name: one.name for name, one in self._exercises.items()} | {
            name: self._exercises[folded(meant)].name
            for name, meant in self._said.items()
            if folded(meant) in self._exercises
        }

    def left_out(self, rows: Sequence[LogRow]) -> set[int]:
        """The lines of which the coach said so by their trainee or exercise."""
        names = {name for name, meant in self._said.items() if meant == LEAVE_OUT}
        if not names:
            return set()
        return {
            row.line
            for row in rows
            if folded(row.exercise) in names or folded(row.trainee) in names
        }

    def weighted(self, name: str) -> bool:
        """Whether a name stands for an exercise with weights; which exercise is asked first."""
        one = self._exercises.get(folded(self._said.get(folded(name), name)))
        return one is not None and one.loading not in _UNLOADED

    def questions(self, rows: Sequence[LogRow], added: set[str]) -> tuple[NameQuestion, ...]:
        """The names that are not known here, in order of appearance; trainees ``added`` by
        themselves, because they are unlike everybody, count as answered.
        """
        counts: dict[tuple[str, str], set[int]] = defaultdict(set)
        people = _strange({row.trainee for row in rows}, self._trainees)
        exercises = _strange({row.exercise for row in rows}, self._stored)
        for row in rows if people or exercises else ():
            if row.trainee in people:
                counts["trainee", row.trainee].add(row.line)
            if row.exercise in exercises:
                counts["exercise", row.exercise].add(row.line)
        return tuple(
            self._question(kind, name, len(lines), name if name in added else "")
            for (kind, name), lines in counts.items()
        )

    def _question(self, kind: str, name: str, lines: int, usual: str) -> NameQuestion:
        answer = self._said.get(folded(name), usual)
        if kind == "exercise":
            near = find_exercises(name, self._active, _MOST_NEAR)
            return NameQuestion(kind, name, lines, tuple((e.key, e.name) for e in near), answer)
        like = nearest(name, self._trainees.values())
        return NameQuestion(kind, name, lines, tuple((n, n) for n in like), answer)


def _strange(names: Iterable[str], known: Container[str]) -> set[str]:
    """Those of the names as written that are not known."""
    return {name for name in names if name and folded(name) not in known}
