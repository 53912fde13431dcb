"""The figures behind the pictures of week and load as tables: days, weeks, and weeks to come."""

from __future__ import annotations

from typing import Final

from db.books import BookTable, Cell
from desktop.planning.deload_plan import DeloadPlan
from desktop.planning.load import DayLoad, LoadHistory, TrainedWeek
from desktop.training.exercises import Muscle
from desktop.training.volume import Volume

DAY_COLUMNS: Final = (
    "date",
    "load_of_sessions",
    "load_of_activities",
    "sessions_without_rating",
    "away",
    "deload",
    "planned_not_done",
    "average_7_days",
    "average_28_days",
)
"""Loads are effort (0-10) times minutes; averages are exponentially weighted."""

WEEK_COLUMNS: Final = (
    "first_day",
    "last_day",
    "load",
    "incomplete",
    "monotony",
    "strain",
    "sessions_done",
    "sessions_planned",
    "sets_done",
    "sets_planned",
    "deload",
    *(f"{muscle.name.lower()}_done" for muscle in Muscle),
    *(f"{muscle.name.lower()}_planned" for muscle in Muscle),
)
"""Sets by muscle are hard sets: 1 for a direct muscle, 0.5 for an indirect one."""

AHEAD_COLUMNS: Final = (
    "first_day",
    "deload",
    "sets",
    "sets_without_it",
    "minutes",
    "minutes_without_it",
)


def day_table(told: LoadHistory) -> BookTable:
    """One row a day of the weeks shown, up to the day on which they are looked at."""
    averages = _averages(told)
    days = [day for week in told.weeks for day in week.days if day.day <= told.today]
    return BookTable("days", DAY_COLUMNS, tuple(_day(day, averages) for day in days))


def week_table(told: LoadHistory) -> BookTable:
    """One row a week."""
    return BookTable("weeks", WEEK_COLUMNS, tuple(_week(week) for week in told.weeks))


def ahead_table(plan: DeloadPlan) -> BookTable:
    """One row for each week to come, with the easier week and without it."""
    rows = tuple(
        (
            week.first,
            _yes(week.eased),
            week.sets,
            week.usual_sets,
            round(week.minutes),
            round(week.usual_minutes),
        )
        for week in plan.weeks
    )
    return BookTable("weeks to come", AHEAD_COLUMNS, rows)


def _averages(told: LoadHistory) -> dict[int, tuple[float, float]]:
    if told.trend is None:
        return {}
    days, short, long = (
        each.tolist() for each in (told.trend.days, told.trend.short, told.trend.long)
    )
    return {int(day): (near, far) for day, near, far in zip(days, short, long, strict=True)}


def _day(day: DayLoad, averages: dict[int, tuple[float, float]]) -> tuple[Cell, ...]:
    near, far = averages.get(day.day.toordinal(), (None, None))
    return (
        day.day,
        day.sessions,
        day.activities,
        day.unrated,
        _yes(day.away),
        _yes(day.eased),
        _yes(day.planned),
        None if near is None else round(near, 2),
        None if far is None else round(far, 2),
    )


def _week(week: TrainedWeek) -> tuple[Cell, ...]:
    return (
        week.first,
        week.last,
        week.load.load,
        _yes(week.load.incomplete),
        _rounded(week.load.monotony),
        _rounded(week.load.strain),
        week.done,
        week.planned,
        _sets(week.sets_done),
        _sets(week.sets_planned),
        _yes(week.eased),
        *(week.sets_done.by_muscle.get(muscle, 0.0) for muscle in Muscle),
        *(week.sets_planned.by_muscle.get(muscle, 0.0) for muscle in Muscle),
    )


def _sets(volume: Volume) -> int:
    return round(sum(volume.by_pattern.values()))


def _rounded(value: float | None) -> float | None:
    return None if value is None else round(value, 4)


def _yes(value: bool) -> str:
    return "yes" if value else "no"
