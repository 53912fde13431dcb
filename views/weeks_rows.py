"""The rows of the weeks ahead: training days with their slots, then hard sets and balance."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass

from PySide6.QtCore import QCoreApplication

from desktop.planning.program_weeks import DayWeeks, ProgramWeeks, SlotWeeks, WeekColumn
from desktop.training.exercises import Muscle, Pattern
from desktop.training.volume import MARKS, Volume
from views import words
from views.day_words import day_name, held_words
from views.exercise_words import muscle_word, pattern_word

translate = QCoreApplication.translate


@dataclass(frozen=True, slots=True)
class DayRow:
    """A training day: minutes in each week."""

    name: str
    weeks: DayWeeks


@dataclass(frozen=True, slots=True)
class SlotRow:
    """A slot: its target in each week."""

    name: str
    weeks: SlotWeeks


@dataclass(frozen=True, slots=True)
class TitleRow:
    """What stands above a part of the table."""

    name: str
    detail: str = ""


@dataclass(frozen=True, slots=True)
class BarRow:
    """A number in each week, as bars on one scale; ``marked`` against the published marks."""

    name: str
    values: tuple[float, ...]
    most: float
    marked: bool


@dataclass(frozen=True, slots=True)
class RatioRow:
    """Sets of one kind for each set of another, in each week; None where there is none of it."""

    name: str
    values: tuple[float | None, ...]


Row = DayRow | SlotRow | TitleRow | BarRow | RatioRow


def weeks_rows(weeks: ProgramWeeks) -> tuple[Row, ...]:
    """All rows, from the first training day to the balance."""
    exercises = weeks.history.library.exercises
    rows: list[Row] = []
    for day in weeks.days:
        rows.append(DayRow(day_name(day.day, held_words(day.day, exercises)), day))
        rows += [SlotRow(slot_row_name(each), each) for each in day.rows]
    volumes = [column.volume for column in weeks.columns]
    if any(volume.by_pattern for volume in volumes):
        rows += _muscle_rows(volumes)
        rows += _balance_rows(volumes)
    return tuple(rows)


def slot_row_name(row: SlotWeeks) -> str:
    """The exercise with its line's name."""
    return ", ".join(part for part in (row.exercise.name, row.slot.line_name) if part)


def _muscle_rows(volumes: list[Volume]) -> Iterator[Row]:
    yield TitleRow(
        translate("Weeks", "Hard sets a week"),
        translate(
            "Weeks", "by muscle; dotted: published marks at {marks}; hollow: under {least}"
        ).format(
            marks=words.listed([words.number(mark.sets) for mark in MARKS]),
            least=words.number(MARKS[0].sets),
        ),
    )
    most = max((sets for volume in volumes for sets in volume.by_muscle.values()), default=0.0)
    for muscle in Muscle:
        values = tuple(volume.by_muscle.get(muscle, 0.0) for volume in volumes)
        yield BarRow(muscle_word(muscle), values, max(most, 12.0), marked=True)


def _balance_rows(volumes: list[Volume]) -> Iterator[Row]:
    yield TitleRow(
        translate("Weeks", "Sets a week"),
        translate("Weeks", "by pattern; no published range exists: what counts is the balance"),
    )
    most = max((sets for volume in volumes for sets in volume.by_pattern.values()), default=0.0)
    for pattern in Pattern:
        values = tuple(volume.by_pattern.get(pattern, 0.0) for volume in volumes)
        if any(values):
            yield BarRow(pattern_word(pattern), values, max(most, 6.0), marked=False)
    ratios: tuple[tuple[str, Callable[[Volume], float | None]], ...] = (
        (translate("Weeks", "push for each pull"), lambda volume: volume.push_to_pull),
        (translate("Weeks", "upper for each lower"), lambda volume: volume.upper_to_lower),
    )
    for name, ratio in ratios:
        yield RatioRow(name, tuple(ratio(volume) for volume in volumes))


def easier_word(column: WeekColumn) -> str:
    """What is said of an easier week."""
    if column.easier:
        return translate("Weeks", "deload")
    return translate("Weeks", "deload?") if column.proposed else ""


def number_text(value: float | None) -> str:
    """A number of sets or a ratio in a cell."""
    return "" if value is None else words.number(value, 1)
