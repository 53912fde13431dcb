"""From a log as read to records: what its names stand for, what is new, what is already there."""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date
from typing import Any, Final

from db.log_files import LogPreview
from db.log_groups import (
    PlannedPart,
    SessionKey,
    SessionRows,
    by_session,
    contradictions,
    planned_part,
)
from db.log_names import KnownNames, NewTrainees, UnknownName
from db.log_rows import FEELINGS, LogRow, Problem
from db.repository import Repository
from db.steps import Steps, finished
from desktop.training.exercises import Exercise
from desktop.training.quantities import Unit
from desktop.training.sentence import sentence
from desktop.training.session import Activity, LineDone, Session, Wellness
from desktop.training.trainee import BodyMass

_SLICE: Final = 200


@dataclass(frozen=True, slots=True)
class PlannedSession:
    """A session to be saved: new, or ``existing`` with more in it.

    ``parts`` are the new ones; their lines come with saving.
    """

    trainee: str
    session: Session
    parts: tuple[PlannedPart, ...] = ()


@dataclass(frozen=True, slots=True)
class ImportPlan:
    """What an import would do; nothing is written yet.

    ``problems`` name every line that is not taken, with ``held_back`` those that are good but
    belong to an exercise with a bad line. ``doubles`` are lines whose content is already there.
    ``new_trainees`` would be added with these units, and ``new_exercises``. ``unknown`` names what
    has to be told.
    """

    preview: LogPreview
    sessions: tuple[PlannedSession, ...] = ()
    body_masses: tuple[tuple[str, BodyMass], ...] = ()
    activities: tuple[tuple[str, Activity], ...] = ()
    new_trainees: tuple[tuple[str, Unit], ...] = ()
    new_exercises: tuple[Exercise, ...] = ()
    unknown: tuple[UnknownName, ...] = ()
    problems: tuple[Problem, ...] = ()
    held_back: tuple[Problem, ...] = ()
    doubles: tuple[int, ...] = ()
    taken: tuple[int, ...] = ()
    remarks: tuple[str, ...] = ()

    @property
    def reasons(self) -> dict[int, str]:
        """Why each line that is handed back was not taken."""
        found: dict[int, list[str]] = defaultdict(list)
        for problem in (*self.problems, *self.held_back):
            text = f"{problem.column}: {problem.text}" if problem.column else problem.text
            found[problem.line].append(text)
        return {line: "; ".join(texts) for line, texts in found.items()}


def plan_import(
    repository: Repository,
    preview: LogPreview,
    names: Mapping[str, str] | None = None,
    new_trainees: NewTrainees = "unlike",
    new_exercises: Sequence[Exercise] = (),
) -> ImportPlan:
    """What taking ``preview`` into the data would do, at once; see `planning_import`."""
    return finished(planning_import(repository, preview, names, new_trainees, new_exercises))


def planning_import(
    repository: Repository,
    preview: LogPreview,
    names: Mapping[str, str] | None = None,
    new_trainees: NewTrainees = "unlike",
    new_exercises: Sequence[Exercise] = (),
) -> Steps[ImportPlan]:
    """What taking ``preview`` into the data would do, step by step; reads only.

    ``names`` says what names of the log stand for (trainees and exercises). A trainee who is not
    there is added when ``new_trainees`` is "always", or "unlike" every name known, or when
    ``names`` says so; a name close to a known one is a question first. ``new_exercises`` are known
    as well, and added where a line that is taken names them.
    """
    known = KnownNames(repository, names or {}, new_trainees, new_exercises)
    problems: list[Problem] = list(preview.problems)
    good: list[LogRow] = []
    for start in range(0, len(preview.rows), _SLICE):
        yield 0.6 * start / len(preview.rows)
        for row in preview.rows[start : start + _SLICE]:
            resolved, wrong = known.resolve(row)
            if wrong:
                problems += wrong
            else:
                good.append(resolved)
    groups = by_session(good)
    problems += contradictions(good, groups)
    if not problems:
        return (yield from _Draft(repository, known, good, groups).plan(preview, new_exercises))
    bad_lines = {problem.line for problem in problems}
    bad_parts = {
        known.part_of(row): row.line
        for row in (*preview.spoiled, *preview.rows)
        if row.exercise and row.line in bad_lines
    }
    held = [
        Problem(
            row.line,
            "",
            sentence(
                "held back with line {bad_parts}, {why_held}",
                bad_parts=bad_parts[known.part_of(row)],
                why_held=_WHY_HELD,
            ),
        )
        for row in good
        if row.line not in bad_lines and row.exercise and known.part_of(row) in bad_parts
    ]
    left = bad_lines | {problem.line for problem in held}
    taken = [row for row in good if row.line not in left]
    draft = _Draft(repository, known, taken, by_session(taken))
    return (yield from draft.plan(preview, new_exercises, problems, held))


_WHY_HELD: Final = sentence("so that the exercise is not judged by a part of its sets")


# --- planning -----------------------------------------------------------------------------------


class _Draft:
    """The plan in the making, over lines that all can be taken."""

    def __init__(
        self,
        repository: Repository,
        known: KnownNames,
        rows: Sequence[LogRow],
        groups: Mapping[SessionKey, SessionRows],
    ) -> None:
        self._repository = repository
        self._known = known
        self._rows = rows
        self._groups = groups
        self._problems: list[Problem] = []
        self._doubles: list[int] = []
        self._remarks: list[str] = []

    def plan(
        self,
        preview: LogPreview,
        new_exercises: Sequence[Exercise],
        problems: Sequence[Problem] = (),
        held: Sequence[Problem] = (),
    ) -> Steps[ImportPlan]:
        """The whole plan."""
        sessions = yield from self._sessions()
        trained = {part.exercise for planned in sessions for part in planned.parts}
        masses, activities = self._body_masses(), self._activities()
        not_taken = {p.line for p in self._problems} | set(self._doubles)
        taken = tuple(row.line for row in self._rows if row.line not in not_taken)
        wanted = {row.trainee for row in self._rows}
        return ImportPlan(
            preview=preview,
            sessions=tuple(sessions),
            body_masses=tuple(masses),
            activities=tuple(activities),
            new_trainees=tuple(
                (name, unit) for name, unit in self._known.new_trainees if name in wanted
            ),
            new_exercises=tuple(one for one in new_exercises if one.key in trained),
            unknown=self._known.unknown,
            problems=tuple(sorted((*problems, *self._problems), key=lambda p: p.line)),
            held_back=tuple(held),
            doubles=tuple(sorted(self._doubles)),
            taken=taken,
            remarks=(*preview.remarks, *dict.fromkeys(self._remarks)),
        )

    def _sessions(self) -> Steps[list[PlannedSession]]:
        planned: list[PlannedSession] = []
        for number, (key, group) in enumerate(self._groups.items()):
            if number % _SLICE == 0:
                yield 0.7 + 0.3 * number / len(self._groups)
            session = self._session(key, group)
            if session is not None:
                planned.append(session)
        return planned

    def _session(self, key: SessionKey, group: SessionRows) -> PlannedSession | None:
        trainee, day, entry = key
        existing = self._known.session(trainee, day, entry)
        parts = tuple(self._parts(trainee, group, existing))
        facts = self._facts(existing, group.telling)
        if existing is None:
            session = Session(0, day, entry=entry, **facts)
            return PlannedSession(trainee, session, parts)
        session = replace(existing, **facts) if facts else existing
        if session == existing:
            self._doubles += [row.line for row in group.bare]
            if not parts:
                return None
        return PlannedSession(trainee, session, parts)

    def _parts(
        self, trainee: str, group: SessionRows, existing: Session | None
    ) -> Iterator[PlannedPart]:
        """The parts that are new."""
        for (exercise, name), rows in group.parts.items():
            done = planned_part(exercise, name, rows)
            there = self._known.part(trainee, exercise, name, existing)
            if there is None:
                yield done
            elif _same_part(there, done):
                self._doubles += [row.line for row in rows]
            else:
                self._problems += [
                    Problem(
                        row.line,
                        "exercise",
                        sentence(
                            "{exercise} is already recorded on {day}, with other sets; change it "
                            "in the session itself",
                            exercise=exercise,
                            day=row.day,
                        ),
                    )
                    for row in rows
                ]

    def _facts(self, existing: Session | None, telling: Sequence[LogRow]) -> dict[str, Any]:
        """What the lines say of the whole session that is not recorded of it."""
        said = {name: value for row in telling for name, value in row.said.told}
        if any(row.said.red_flag for row in telling):
            said["red_flag"] = True
        feelings = {name: said.pop(name) for name in FEELINGS if name in said}
        facts = {"note" if name == "session_note" else name: v for name, v in said.items()}
        if "program" in facts:
            facts["program_id"] = self._program(existing, facts.pop("program"))
        if existing is not None:
            facts = {n: v for n, v in facts.items() if _is_blank(getattr(existing, n))}
            before = existing.wellness
            feelings = {n: v for n, v in feelings.items() if getattr(before, n) is None}
            if feelings:
                facts["wellness"] = replace(before, **feelings)
        elif feelings:
            facts["wellness"] = Wellness(**feelings)
        return facts

    def _program(self, existing: Session | None, name: str) -> int | None:
        if existing is not None and existing.program_id is not None:
            return existing.program_id
        found = self._known.program_id(name)
        if found is None:
            self._remarks.append(
                sentence(
                    "there is no program {program!r}: its sessions are taken without it",
                    program=name,
                )
            )
        return found

    def _body_masses(self) -> list[tuple[str, BodyMass]]:
        new: dict[tuple[str, date], BodyMass] = {}
        for row in self._rows:
            if row.said.body_mass_g is None:
                continue
            there = self._known.body_mass(row.trainee, row.day)
            if there is None:
                new[(row.trainee, row.day)] = BodyMass(0, row.day, row.said.body_mass_g)
            elif there == row.said.body_mass_g:
                if not row.session and not row.said.activity:
                    self._doubles.append(row.line)
            else:
                text = sentence(
                    "{kilograms:g} kg are already recorded on {day}",
                    kilograms=there / 1000,
                    day=row.day,
                )
                self._problems.append(Problem(row.line, "body_mass", text))
        return [(trainee, mass) for (trainee, _), mass in new.items()]

    def _activities(self) -> list[tuple[str, Activity]]:
        there: Counter[tuple[str, Activity]] = Counter()
        for trainee in dict.fromkeys(row.trainee for row in self._rows if row.said.activity):
            there.update((trainee, activity) for activity in self._known.activities(trainee))
        new: list[tuple[str, Activity]] = []
        for row in self._rows:
            if not row.said.activity:
                continue
            # That minutes and effort are given was checked on reading.
            activity = Activity(
                0, row.day, row.said.activity, row.said.minutes or 0, row.said.effort or 0.0
            )
            if there[(row.trainee, activity)]:
                there[(row.trainee, activity)] -= 1
                self._doubles.append(row.line)
            else:
                new.append((row.trainee, activity))
        return new


def _is_blank(value: object) -> bool:
    return value is None or value is False or value == ""


def _same_part(there: LineDone, new: PlannedPart) -> bool:
    """Whether the same was done; notes aside."""
    if there.skipped != new.skipped or len(there.sets) != len(new.sets):
        return False
    return all(
        one == other or replace(one, note="") == replace(other, note="")
        for one, other in zip(there.sets, new.sets, strict=True)
    )
