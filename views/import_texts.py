"""Words of the import: roles of columns, what becomes of lines, what was taken in."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from itertools import groupby
from typing import Final

from PySide6.QtCore import QCoreApplication

from db.changes import Changes
from desktop.planning.arriving_files import ArrivingTable, LogRow
from desktop.planning.log_prospect import Fate, LineFate, Prospect
from desktop.planning.taking_in import TraineeFile
from desktop.training.program import Program
from desktop.training.quantities import Unit
from desktop.training.session import SetDone
from desktop.training.table_mapping import Role
from views import words
from views.blocks import Tone
from views.sentences import worded

translate = QCoreApplication.translate

FATE_TONES: Final[dict[Fate, Tone]] = {
    Fate.TAKEN: "text",
    Fate.DOUBTFUL: "caution",
    Fate.REFUSED: "stop",
    Fate.HELD: "stop",
}
_MARKS: Final = {
    Fate.TAKEN: "\N{CHECK MARK}",
    Fate.DOUBTFUL: "?",
    Fate.REFUSED: "\N{MULTIPLICATION SIGN}",
    Fate.HELD: "\N{MULTIPLICATION SIGN}",
    Fate.THERE: "=",
    Fate.LEFT_OUT: "\N{EN DASH}",
}


def role_word(role: Role) -> str:
    """What a column holds, in a word."""
    return {
        Role.NOTHING: translate("Import", "not read"),
        Role.TRAINEE: translate("Import", "trainee"),
        Role.DATE: translate("Import", "date"),
        Role.EXERCISE: translate("Import", "exercise"),
        Role.VARIATION: translate("Import", "variation"),
        Role.LINE: translate("Import", "name of the line"),
        Role.SET: translate("Import", "number of the set"),
        Role.SETS: translate("Import", "how many sets"),
        Role.REPS: translate("Import", "reps, or 3x5"),
        Role.LOAD: translate("Import", "load"),
        Role.UNIT: translate("Import", "unit of the load"),
        Role.SECONDS: translate("Import", "seconds held"),
        Role.RIR: translate("Import", "reps in reserve"),
        Role.RPE: translate("Import", "RPE of the set"),
        Role.TEMPO: translate("Import", "tempo"),
        Role.SIDE: translate("Import", "side"),
        Role.WARM_UP: translate("Import", "warm-up, yes or no"),
        Role.PAIN: translate("Import", "pain, 0-10"),
        Role.NOTE: translate("Import", "note"),
        Role.EFFORT: translate("Import", "effort of the session"),
        Role.MINUTES: translate("Import", "minutes"),
        Role.SESSION_NOTE: translate("Import", "note on the session"),
        Role.BODY_MASS: translate("Import", "body mass"),
    }[role]


def fate_word(fate: Fate) -> str:
    """What becomes of a line: a mark and a word, never colour alone."""
    word = {
        Fate.TAKEN: translate("Import", "good"),
        Fate.DOUBTFUL: translate("Import", "doubtful"),
        Fate.REFUSED: translate("Import", "refused"),
        Fate.HELD: translate("Import", "held back"),
        Fate.THERE: translate("Import", "is there"),
        Fate.LEFT_OUT: translate("Import", "left out"),
    }[fate]
    return f"{_MARKS[fate]} {word}"


def line_text(line: LineFate, exercise: Callable[[str], str], unit: Unit) -> str:
    """A line as read, or why not: "24/11/2026 · Bow · Back squat · 3 × 5 at 60 kg"."""
    why = "; ".join(map(worded, line.reasons))
    if line.fate in (Fate.REFUSED, Fate.HELD) or not line.rows:
        return why
    read = _read(line.rows, exercise, unit)
    return f"{why}{words.DOT}{read}" if why else read


def _read(rows: Sequence[LogRow], exercise: Callable[[str], str], unit: Unit) -> str:
    row = rows[0]
    parts = [words.full_day(row.day), row.trainee]
    if row.said.activity:
        parts.append(row.said.activity)
    if row.exercise:
        parts.append(exercise(row.exercise))
        named = row.variation or row.line_name
        parts += [named] if named else []
    done = [each.done for each in rows if each.done is not None]
    if done:
        parts.append(sets_text(done, row.unit or unit))
    if row.said.body_mass_g is not None:
        mass = words.load(row.said.body_mass_g, row.unit or unit)
        parts.append(translate("Import", "body mass {mass}").format(mass=mass))
    if row.said.minutes is not None:
        parts.append(words.minutes(row.said.minutes))
    return words.DOT.join(parts)


def sets_text(done: Sequence[SetDone], unit: Unit) -> str:
    """Sets in short: "3 × 5 at 60 kg", "5, 5, 4 at 60 kg", "2 × 20 s"."""
    runs = []
    for load_g, group in groupby(done, key=lambda each: each.load_g):
        sets = list(group)
        amounts = [
            words.hold(each.seconds) if each.seconds is not None else f"{each.reps or 0}"
            for each in sets
        ]
        text = ", ".join(amounts)
        if len(sets) > 1 and len(set(amounts)) == 1:
            text = f"{len(sets)} {words.TIMES} {amounts[0]}"
        if load_g:
            at = translate("Import", "{work} at {load}")
            text = at.format(work=text, load=words.load(load_g, unit))
        runs.append(text)
    reserve = {each.rir for each in done}
    text = "; ".join(runs)
    rir = next(iter(reserve)) if len(reserve) == 1 else None
    return text if rir is None else f"{text}, {words.number(rir)} RIR"


def table_text(arriving: ArrivingTable) -> str:
    """What came in, in muted words beside its name."""
    table = arriving.table
    if arriving.own:
        kind = translate("Import", "a training log")
    elif table.sheets:
        kind = translate("Import", "a workbook")
    else:
        kind = translate("Import", "a table")
    return translate("Import", "{kind}, {lines} lines, {columns} columns").format(
        kind=kind,
        lines=words.number(len(arriving.columns.lines)),
        columns=words.number(len(arriving.columns.headers)),
    )


def prospect_text(prospect: Prospect, *, taken: bool = False) -> str:
    """What taking the file in would add, or has added, and what not."""
    plan = prospect.plan
    parts = []
    if plan.sessions:
        text = translate("Import", "{sets} in {sessions}")
        parts.append(
            text.format(sets=words.sets(prospect.sets), sessions=sessions_word(len(plan.sessions)))
        )
    if plan.body_masses:
        text = translate("Import", "{count} body masses")
        parts.append(text.format(count=words.number(len(plan.body_masses))))
    if plan.activities:
        text = translate("Import", "{count} other activities")
        parts.append(text.format(count=words.number(len(plan.activities))))
    if plan.new_trainees:
        names = words.listed([name for name, _ in plan.new_trainees[:4]])
        parts.append(translate("Import", "new on the roster: {names}").format(names=names))
    if plan.new_exercises:
        names = words.listed([each.name for each in plan.new_exercises[:4]])
        parts.append(translate("Import", "new exercises: {names}").format(names=names))
    said = (
        translate("Import", "Brought {what}.") if taken else translate("Import", "Brings {what}.")
    )
    text = said.format(what=", ".join(parts)) if parts else ""
    there = prospect.count(Fate.THERE)
    if there:
        said = translate("Import", "{count} lines are there already.")
        text = f"{text} {said.format(count=words.number(there))}".strip()
    return text or translate("Import", "Nothing in it can be taken in yet.")


def sessions_word(count: int) -> str:
    """A number of sessions: "1 session", "8 sessions"."""
    if count == 1:
        return translate("Import", "1 session")
    return translate("Import", "{count} sessions").format(count=words.number(count))


def take_word(prospect: Prospect) -> str:
    """The main action, with how much it takes."""
    if prospect.sets:
        return translate("Import", "Take in {sets}").format(sets=words.sets(prospect.sets))
    return translate("Import", "Take it in")


def program_text(program: Program) -> str:
    """A program in one line: weeks, days, exercises."""
    days = [day for phase in program.phases for day in phase.days]
    slots = {slot.exercise for day in days for slot in day.slots}
    return translate("Import", "{weeks}, {phases} phases, {exercises} exercises").format(
        weeks=words.weeks(sum(phase.weeks for phase in program.phases)),
        phases=words.number(len(program.phases)),
        exercises=words.number(len(slots)),
    )


def thing_text(thing: Program | TraineeFile) -> tuple[str, str]:
    """A program or a trainee in a file: the name, and what belongs to it."""
    if isinstance(thing, Program):
        return thing.name, program_text(thing)
    parts = []
    if thing.programs:
        parts.append(words.listed([each.program for each in thing.programs]))
    if thing.lines:
        text = translate("Import", "lines of exercises: {count}")
        parts.append(text.format(count=words.number(len(thing.lines))))
    if thing.goals:
        text = translate("Import", "goals: {count}")
        parts.append(text.format(count=words.number(len(thing.goals))))
    return thing.trainee.name, words.DOT.join(parts)


def brought(changes: Changes) -> str:
    """Names of what was added, for the page after."""
    names = [each.name for each in changes.saved if hasattr(each, "name") and each.name]
    return words.listed(list(dict.fromkeys(names))[:8])
