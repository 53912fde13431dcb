"""The figures of a report as tables: sessions of every line, sets by muscle, a coach's month."""

from __future__ import annotations

from typing import Final

from db.books import BookTable, Cell
from desktop.planning.coach_month import CoachMonth, progressed
from desktop.planning.progress_export import COLUMNS, progress_rows
from desktop.planning.report import TraineeReport, weekly_sets
from desktop.training.limits import Severity

MONTH_COLUMNS: Final = (
    "trainee",
    "sessions",
    "days_trained",
    "days_planned",
    "minutes",
    "hard_sets",
    "lines_up",
    "lines_down",
    "cautions",
    "stops",
)
"""A line is up or down where the 80 % band of its trend lies on one side of level."""


def session_table(report: TraineeReport) -> BookTable:
    """The sessions of all lines, one below the other; see `progress_export.COLUMNS`."""
    unit = report.trainee.unit
    rows = [row for line in report.lines for row in progress_rows(line.progress, unit)]
    return BookTable("sessions", COLUMNS, tuple(rows))


def line_tables(report: TraineeReport) -> tuple[BookTable, ...]:
    """The same, a table for each line, and the hard sets a week by muscle."""
    unit = report.trainee.unit
    muscles = tuple((muscle.value, round(sets, 2)) for muscle, sets in weekly_sets(report))
    return (
        *(
            BookTable(line.name, COLUMNS, progress_rows(line.progress, unit))
            for line in report.lines
        ),
        BookTable("muscles", ("muscle", "hard_sets_a_week"), muscles),
    )


def month_table(month: CoachMonth) -> BookTable:
    """One row a trainee."""
    return BookTable("trainees", MONTH_COLUMNS, tuple(_row(report) for report in month.reports))


def sets_table(month: CoachMonth) -> BookTable:
    """Everybody's hard sets, one row a week."""
    return BookTable("weeks", ("week", "hard_sets"), tuple(month.weeks))


def _row(report: TraineeReport) -> tuple[Cell, ...]:
    up, down = progressed(report)
    return (
        report.trainee.name,
        report.sessions,
        report.days,
        report.planned,
        report.minutes,
        sum(line.hard_sets for line in report.lines),
        len(up),
        len(down),
        len(report.cautions),
        sum(one.severity is Severity.STOP for one in report.cautions),
    )
