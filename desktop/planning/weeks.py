"""Weeks ahead of one trainee: the program unrolled from where every line stands today."""

from __future__ import annotations

from datetime import date, timedelta
from itertools import takewhile

from desktop.planning.cautions import last_easier
from desktop.planning.history import History
from desktop.planning.progress import points_of, surroundings_by_day, trend_of
from desktop.planning.rules import rule_revisions
from desktop.planning.schedule import DAY, deload_windows, place_on, training_days
from desktop.planning.standing import LineKey, Standing, key_of, lines_of_slots, standings_on
from desktop.training.program import Line, TrainingDay
from desktop.training.trainee import DeloadWindow
from desktop.training.weeks import (
    Forecast,
    Outlook,
    WeekAhead,
    planned_deloads,
    weeks_ahead,
)


def weeks_of(
    history: History, today: date, weeks: int, *, expected: bool = True
) -> tuple[WeekAhead, ...]:
    """The next ``weeks`` weeks from what was read; easier weeks are placed as the program says."""
    place = place_on(history, today)
    if place is None:
        return ()
    end = today + timedelta(weeks=weeks)
    days = list(takewhile(lambda each: each[0] < end, training_days(history, today - DAY)))
    standings = _standings(history, today, days)
    eased = deload_windows(history)
    monday = today - timedelta(days=today.weekday())
    planned = planned_deloads(
        weeks, place.program.deload_every, monday, eased, usual_deload(history)
    )
    outlook = Outlook(
        states={key: standing.state for key, standing in standings.items()},
        exercises=history.library.exercises,
        context=history.context,
        deloads=(*eased, *planned),
        rules={
            key: tuple(r for r in rule_revisions(history, standing.line) if r.day > today)
            for key, standing in standings.items()
        },
        forecasts=_forecasts(history, standings) if expected else None,
        since=last_easier(history, today),
        experience=history.trainee.experience,
        limits=history.library.limits,
    )
    return weeks_ahead(days, outlook)


def _standings(
    history: History, today: date, days: list[tuple[date, TrainingDay]]
) -> dict[LineKey, Standing]:
    """Where the lines of all coming days stand; each day's own assignment gives their start."""
    lines: dict[LineKey, Line] = {}
    for day, planned in days:
        place = place_on(history, day)
        if place is not None:
            for line in lines_of_slots(history, planned.slots, place.assignment):
                lines.setdefault(key_of(line), line)
    return standings_on(history, today, lines.values())


def usual_deload(history: History) -> DeloadWindow:
    """An easier span as the coach's settings say, without days."""
    settings = history.library.settings
    return DeloadWindow(
        history.trainee_id,
        date.min,
        date.min,
        settings.deload_sets_factor,
        settings.deload_load_percent,
    )


def _forecasts(history: History, standings: dict[LineKey, Standing]) -> dict[LineKey, Forecast]:
    found: dict[LineKey, Forecast] = {}
    for key, standing in standings.items():
        forecast = forecast_of(history, standing.line)
        if forecast is not None:
            found[key] = forecast
    return found


def forecast_of(history: History, line: Line) -> Forecast | None:
    """What the trend of a line expects; None where there is no trend."""
    if line.id is None:
        return None
    done = history.done(line.id)
    if not done:
        return None
    around = surroundings_by_day(history, line, [session.day for session, _ in done])
    trend = trend_of(points_of(history, line, done, around), history.library.settings)
    if trend is None:
        return None

    def forecast(day: date) -> tuple[float, float]:
        mean, sd = trend.forecast([day.toordinal()])
        return float(mean[0]), float(sd[0])

    return forecast
