"""From a log as read to records: what its names stand for, what is new, what is already there."""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, fields, replace
from datetime import date
from typing import Any, Final

from db.log_files import LogPreview
from db.log_names import KnownNames, NewTrainees, UnknownName
from db.log_rows import LogRow, Problem
from db.repository import Repository
from db.steps import Steps, finished
from desktop.training.exercises import Exercise
from desktop.training.quantities import Unit
from desktop.training.sentence import sentence
from desktop.training.session import Activity, LineDone, Session, SetDone, Wellness
from desktop.training.trainee import BodyMass

_SLICE: Final = 200
_SESSION_FIELDS: Final = ("effort", "minutes", "session_note", "program", "week", "day_name")


@dataclass(frozen=True, slots=True)
class PlannedSession:
    """A session to be saved: new, or ``existing`` with more in it.

    ``lines`` are the new parts with exercise key and line name; their line ids come with saving.
    """

    trainee: str
    session: Session
    lines: tuple[tuple[str, str, LineDone], ...] = ()


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
    for number, row in enumerate(preview.rows):
        if number % _SLICE == 0:
            yield 0.6 * number / len(preview.rows)
        resolved, wrong = known.resolve(row)
        problems += wrong
        if not wrong:
            good.append(resolved)
    problems += _contradictions(good)
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
    draft = _Draft(repository, known, [row for row in good if row.line not in left])
    return (yield from draft.plan(preview, problems, held, new_exercises))


_WHY_HELD: Final = sentence("so that the exercise is not judged by a part of its sets")


# --- planning -----------------------------------------------------------------------------------


def _contradictions(rows: Sequence[LogRow]) -> list[Problem]:
    """Lines of one session that do not go together: a set twice, two efforts, two body masses."""
    problems: list[Problem] = []
    sets: dict[tuple[object, ...], int] = {}
    told: dict[tuple[object, ...], tuple[Any, int]] = {}
    for row in rows:
        who = (row.trainee, row.day)
        if row.set_number is not None and (row.done or row.asked):
            side = row.done.side if row.done else ""
            key = (*who, row.entry, row.exercise, row.line_name, row.set_number, side)
            if key in sets:
                text = sentence(
                    "set {number} of {exercise} stands in line {line} already",
                    number=row.set_number,
                    exercise=row.exercise,
                    line=sets[key],
                )
                problems.append(Problem(row.line, "set", text))
            sets.setdefault(key, row.line)
        for name, value in _told_once(row):
            place = (*who, name) if name == "body_mass" else (*who, row.entry, name)
            before, line = told.setdefault(place, (value, row.line))
            if value != before:
                problems.append(
                    Problem(
                        row.line,
                        name,
                        sentence("line {line} says {before}", line=line, before=before),
                    )
                )
    return problems


def _told_once(row: LogRow) -> list[tuple[str, Any]]:
    """What the line says of the whole session or day."""
    found: list[tuple[str, Any]] = []
    if row.body_mass_g is not None:
        found.append(("body_mass", row.body_mass_g))
    if row.session:
        told = ((name, getattr(row, name)) for name in _SESSION_FIELDS)
        found += [(name, value) for name, value in told if value not in ("", None)]
        found += [(n, v) for n, v in _feelings(row.wellness) if v is not None]
    return found


def _feelings(wellness: Wellness) -> list[tuple[str, int | None]]:
    return [(field.name, getattr(wellness, field.name)) for field in fields(wellness)]


class _Draft:
    """The plan in the making, over lines that all can be taken."""

    def __init__(self, repository: Repository, known: KnownNames, rows: Sequence[LogRow]) -> None:
        self._repository = repository
        self._known = known
        self._rows = rows
        self._problems: list[Problem] = []
        self._doubles: list[int] = []
        self._remarks: list[str] = []

    def plan(
        self,
        preview: LogPreview,
        problems: Sequence[Problem],
        held: Sequence[Problem],
        new_exercises: Sequence[Exercise],
    ) -> Steps[ImportPlan]:
        """The whole plan."""
        sessions = yield from self._sessions()
        trained = {exercise for planned in sessions for exercise, _, _ in planned.lines}
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
        groups: dict[tuple[str, date, int], list[LogRow]] = defaultdict(list)
        for row in self._rows:
            if row.session:
                groups[(row.trainee, row.day, row.entry)].append(row)
        planned: list[PlannedSession] = []
        for number, (key, rows) in enumerate(groups.items()):
            if number % _SLICE == 0:
                yield 0.7 + 0.3 * number / len(groups)
            session = self._session(*key, rows)
            if session is not None:
                planned.append(session)
        return planned

    def _session(
        self, trainee: str, day: date, entry: int, rows: Sequence[LogRow]
    ) -> PlannedSession | None:
        existing = self._known.session(trainee, day, entry)
        parts = self._parts(trainee, rows, existing)
        base = existing or Session(trainee_id=0, day=day, entry=entry)
        told = self._told(base, rows)
        if told == existing:
            self._doubles += [row.line for row in rows if not row.exercise]
            if not parts:
                return None
        return PlannedSession(trainee, told, tuple(parts))

    def _parts(
        self, trainee: str, rows: Sequence[LogRow], existing: Session | None
    ) -> list[tuple[str, str, LineDone]]:
        groups: dict[tuple[str, str], list[LogRow]] = defaultdict(list)
        for row in rows:
            if row.exercise:
                groups[(row.exercise, row.line_name)].append(row)
        new: list[tuple[str, str, LineDone]] = []
        for (exercise, name), group in groups.items():
            done = _line_done(exercise, group)
            there = self._known.part(trainee, exercise, name, existing)
            if there is None:
                new.append((exercise, name, done))
            elif _same_part(there, done):
                self._doubles += [row.line for row in group]
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
                    for row in group
                ]
        return new

    def _told(self, session: Session, rows: Sequence[LogRow]) -> Session:
        """The session with what the lines say of the whole; what is recorded stays."""
        said = {name: value for row in rows for name, value in _told_once(row)}
        feelings = {
            name: value if value is not None else said.get(name)
            for name, value in _feelings(session.wellness)
        }
        program_id = session.program_id
        if program_id is None and "program" in said:
            program_id = self._known.program_id(str(said["program"]))
            if program_id is None:
                self._remarks.append(
                    sentence(
                        "there is no program {program!r}: its sessions are taken without it",
                        program=said["program"],
                    )
                )
        return replace(
            session,
            effort=_first(session.effort, said.get("effort")),
            minutes=_first(session.minutes, said.get("minutes")),
            note=session.note or said.get("session_note", ""),
            wellness=Wellness(**feelings),
            red_flag=session.red_flag or any(row.red_flag for row in rows),
            program_id=program_id,
            week=_first(session.week, said.get("week")),
            day_name=session.day_name or said.get("day_name", ""),
        )

    def _body_masses(self) -> list[tuple[str, BodyMass]]:
        new: dict[tuple[str, date], BodyMass] = {}
        for row in self._rows:
            if row.body_mass_g is None:
                continue
            there = self._known.body_mass(row.trainee, row.day)
            if there is None:
                new[(row.trainee, row.day)] = BodyMass(0, row.day, row.body_mass_g)
            elif there == row.body_mass_g:
                if not row.session and not row.activity:
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
        for trainee in dict.fromkeys(row.trainee for row in self._rows if row.activity):
            there.update((trainee, activity) for activity in self._known.activities(trainee))
        new: list[tuple[str, Activity]] = []
        for row in self._rows:
            if not row.activity:
                continue
            # That minutes and effort are given was checked on reading.
            activity = Activity(0, row.day, row.activity, row.minutes or 0, row.effort or 0.0)
            if there[(row.trainee, activity)]:
                there[(row.trainee, activity)] -= 1
                self._doubles.append(row.line)
            else:
                new.append((row.trainee, activity))
        return new


def _line_done(exercise: str, rows: Sequence[LogRow]) -> LineDone:
    """One exercise of one session; sets in the order of their numbers, else of the file."""
    ordered = sorted(rows, key=lambda row: row.set_number or 0)
    if any(row.set_number is None for row in rows if row.done or row.asked):
        ordered = list(rows)
    states = {state for row in rows for state in row.states}
    return LineDone(
        line_id=0,
        exercise=exercise,
        asked=tuple(row.asked for row in ordered if row.asked is not None),
        sets=tuple(row.done for row in ordered if row.done is not None),
        deload="deload" in states,
        test="test" in states,
        skipped="skipped" in states,
        reason=next((row.reason for row in rows if row.reason), ""),
        note=next((row.exercise_note for row in rows if row.exercise_note), ""),
    )


def _same_part(there: LineDone, new: LineDone) -> bool:
    return _plain(there.sets) == _plain(new.sets) and there.skipped == new.skipped


def _plain(sets: Iterable[SetDone]) -> tuple[SetDone, ...]:
    return tuple(replace(done, note="") for done in sets)


def _first(kept: Any, given: Any) -> Any:
    return kept if kept is not None else given
