"""The words of a printed program: phases, days, slots, and what each week asks.

QtCore only, and nothing measured: what is said here can be tested without paper.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from PySide6.QtCore import QCoreApplication

from desktop.planning.program_weeks import (
    DayWeeks,
    ProgramWeeks,
    SlotSession,
    SlotWeeks,
    WeekColumn,
)
from desktop.training.program import Program, Slot
from desktop.training.quantities import Unit
from views import words
from views.day_words import day_name, held_words
from views.exercise_words import muscle_word
from views.general_caution import general_caution, red_flags
from views.phase_line import phase_name
from views.program_shelf import days_words
from views.slot_face import asks_text, difficulty_text, work_text
from views.slot_texts import plain
from views.weeks_rows import easier_word, slot_row_name

translate = QCoreApplication.translate


@dataclass(frozen=True, slots=True)
class PrintedCell:
    """What one week asks of a slot; both empty where it is not trained."""

    above: str = ""
    below: str = ""


@dataclass(frozen=True, slots=True)
class PrintedSlot:
    """A slot: name, how it is done, and a cell for each week."""

    name: str
    how: str
    cells: tuple[PrintedCell, ...]


@dataclass(frozen=True, slots=True)
class PrintedDay:
    """A training day in some weeks of a phase; ``weeks`` heads its columns."""

    name: str
    weeks: tuple[PrintedCell, ...]
    slots: tuple[PrintedSlot, ...]


@dataclass(frozen=True, slots=True)
class PrintedPhase:
    """A phase: its name and weeks, its days, and the hard sets of its first week."""

    name: str
    detail: str
    days: tuple[PrintedDay, ...]
    volume: str


@dataclass(frozen=True, slots=True)
class ProgramText:
    """All words of a printed program."""

    name: str
    whose: str
    detail: str
    about: str
    phases: tuple[PrintedPhase, ...]
    caution: str


def program_text(weeks: ProgramWeeks, most_weeks: int = 8) -> ProgramText:
    """The words of a program; the weeks of a phase stand in tables of at most ``most_weeks``."""
    program = weeks.program
    days = max((len(phase.days) for phase in program.phases), default=0)
    return ProgramText(
        name=plain(program.name),
        whose=plain(weeks.trainee.name) if weeks.dated else "",
        detail=_detail(weeks, days),
        about=plain(program.about),
        phases=tuple(_phase(weeks, number, most_weeks) for number in range(len(program.phases))),
        caution=f"{general_caution()} {red_flags()}",
    )


def _detail(weeks: ProgramWeeks, days: int) -> str:
    parts = [words.weeks(weeks.program.weeks), days_words(days)]
    if weeks.dated and weeks.columns:
        text = translate("ProgramPrint", "from {day}")
        parts.append(text.format(day=words.short_day(weeks.columns[0].first)))
        parts.append(translate("ProgramPrint", "targets if all goes as asked"))
    else:
        parts.append(translate("ProgramPrint", "from the starts of its slots"))
    return words.DOT.join(parts)


def _phase(weeks: ProgramWeeks, number: int, most: int) -> PrintedPhase:
    phase = weeks.program.phases[number]
    columns = [column for column in weeks.columns if column.phase == number]
    first, last = columns[0].number, columns[-1].number
    text = translate("ProgramPrint", "week {first}")
    if last > first:
        text = translate("ProgramPrint", "weeks {first} to {last}")
    days = tuple(
        day
        for chunk in _chunks(columns, most)
        for group in weeks.days
        if (day := _day(weeks, group, number, chunk)) is not None
    )
    return PrintedPhase(
        plain(phase_name(phase)),
        text.format(first=words.number(first), last=words.number(last)),
        days,
        _volume(columns[0]),
    )


def _chunks(columns: list[WeekColumn], most: int) -> Iterator[list[WeekColumn]]:
    """Weeks in tables of equal width."""
    count = -(-len(columns) // most)
    each = -(-len(columns) // count)
    for start in range(0, len(columns), each):
        yield columns[start : start + each]


def _day(
    weeks: ProgramWeeks, group: DayWeeks, phase: int, columns: list[WeekColumn]
) -> PrintedDay | None:
    unit = weeks.trainee.unit
    slots = tuple(
        slot
        for row in group.rows
        if (slot := _slot(weeks.program, row, phase, columns, unit)) is not None
    )
    if not slots:
        return None
    exercises = weeks.history.library.exercises
    day = next(
        (
            each
            for each in weeks.program.phases[phase].days
            if (each.weekday, each.weekday is None and each.name)
            == (group.day.weekday, group.day.weekday is None and group.day.name)
        ),
        group.day,
    )
    name = day_name(day, held_words(day, exercises))
    minutes = [
        each.minutes(exercises) for column in columns for each in group.cells[column.number - 1]
    ]
    if minutes:
        text = translate("ProgramPrint", "{name} · about {time}")
        name = text.format(name=name, time=words.minutes(round(max(minutes))))
    return PrintedDay(plain(name), tuple(_week(weeks, each) for each in columns), slots)


def _week(weeks: ProgramWeeks, column: WeekColumn) -> PrintedCell:
    below = easier_word(column)
    if not below and weeks.dated:
        below = words.short_day(column.first).split(" ", 1)[-1]
    return PrintedCell(words.number(column.number), below)


def _slot(
    program: Program, row: SlotWeeks, phase: int, columns: list[WeekColumn], unit: Unit
) -> PrintedSlot | None:
    sessions = [row.cells[column.number - 1] for column in columns]
    if not any(sessions):
        return None
    slots = [
        each.slot
        for cell in sessions
        for each in cell
        if each.place is not None and each.place.phase == phase
    ]
    slot = slots[0] if slots else _own_slot(program, row, phase)
    return PrintedSlot(
        plain(slot_row_name(row)),
        plain(asks_text(slot, slot.start)),
        tuple(_cell(row, cell, unit) for cell in sessions),
    )


def _own_slot(program: Program, row: SlotWeeks, phase: int) -> Slot:
    """The phase's slot of the row's line; the row's own where it has none."""
    wanted = (row.slot.exercise, row.slot.line_name)
    every = (slot for day in program.phases[phase].days for slot in day.slots)
    return next((s for s in every if (s.exercise, s.line_name) == wanted), row.slot)


def _cell(row: SlotWeeks, sessions: tuple[SlotSession, ...], unit: Unit) -> PrintedCell:
    if not sessions or sessions[-1].position is None:
        return PrintedCell()
    last = sessions[-1]
    assert last.position is not None
    here = (last.position, row.exercise, row.around, unit)
    return PrintedCell(work_text(last.slot, last.position), difficulty_text(last.slot, *here))


def _volume(column: WeekColumn) -> str:
    sets = [
        f"{muscle_word(muscle)} {words.number(count, 1)}"
        for muscle, count in sorted(column.volume.by_muscle.items(), key=lambda pair: -pair[1])
    ]
    if not sets:
        return ""
    text = translate("ProgramPrint", "Hard sets in week {number}: {sets}.")
    return text.format(number=words.number(column.number), sets=", ".join(sets))
