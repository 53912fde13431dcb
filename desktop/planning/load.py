"""Load: training load by day and week, its trend, hard sets done and planned, of one trainee.

Weeks without training are weeks too, and days without an entry count 0: where nothing was recorded
is said (`unrated`, `recorded`), never guessed.
"""

from __future__ import annotations

from collections.abc import Collection, Iterable, Sequence
from dataclasses import dataclass, field
from datetime import date, timedelta
from itertools import takewhile
from statistics import fmean
from typing import TYPE_CHECKING, Final

from desktop.planning.history import History
from desktop.planning.schedule import (
    DAY,
    WEEK,
    absence_on,
    deload_on,
    place_on,
    training_day_on,
    training_days,
    weekdays_of,
)
from desktop.training.deload import eased_sets
from desktop.training.exercises import Exercise
from desktop.training.program import TrainingDay
from desktop.training.session import Activity, Session, Wellness
from desktop.training.trainee import Trainee
from desktop.training.volume import Volume, exercise_of, hard_sets, volume_done, week_start
from desktop.training.workload import (
    LONG_DAYS,
    SHORT_DAYS,
    Rated,
    WeekLoad,
    daily_loads,
    ewma,
    week_loads,
)

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

WEEKS: Final = 16
USUAL_WEEKS: Final = 4
"""A week is held against the mean of so many whole weeks before it (common practice)."""

_BEFORE: Final = 4 * WEEK


@dataclass(frozen=True, slots=True)
class DayLoad:
    """One day: the load of its sessions and of other activities (effort 0-10 x minutes), and how
    many sessions have no effort or no minutes and so add nothing. ``planned``: the program names a
    training day that was left out or is still to come.
    """

    day: date
    sessions: float = 0.0
    activities: float = 0.0
    unrated: int = 0
    away: bool = False
    eased: bool = False
    planned: bool = False

    @property
    def load(self) -> float:
        """All of the day's load."""
        return self.sessions + self.activities


@dataclass(frozen=True, slots=True)
class WellnessMeans:
    """Means of the answers given in a week, 1 (bad) to 5 (good); None where none was."""

    answers: int = 0
    sleep: float | None = None
    soreness: float | None = None
    stress: float | None = None
    motivation: float | None = None


@dataclass(frozen=True, slots=True)
class TrainedWeek:
    """One week. `planned` counts training days of the program, None where it names no weekdays;
    `sets_planned` is what was asked in sessions, and the program's sets of days left out.
    """

    load: WeekLoad
    days: tuple[DayLoad, ...]
    done: int = 0
    planned: int | None = 0
    sets_done: Volume = field(default_factory=Volume)
    sets_planned: Volume = field(default_factory=Volume)
    wellness: WellnessMeans = WellnessMeans()
    activities: tuple[Activity, ...] = ()

    @property
    def first(self) -> date:
        """The first day of the week."""
        return self.load.first

    @property
    def last(self) -> date:
        """The last day of the week."""
        return self.load.first + 6 * DAY

    @property
    def eased(self) -> bool:
        """Whether any day lies in an easier span."""
        return any(day.eased for day in self.days)


@dataclass(frozen=True, slots=True, eq=False)
class LoadTrend:
    """Moving averages of the daily load, one entry for each of `days` (ordinals): over 7 and over
    28 days. They begin with the first entry on record.
    """

    days: NDArray[np.float64]
    short: NDArray[np.float64]
    long: NDArray[np.float64]


@dataclass(frozen=True, slots=True, eq=False)
class LoadHistory:
    """The last weeks of one trainee, oldest first; the last one holds `today`. `trend` None: there
    is nothing on record. `recorded`: the coach says that every other activity is here.
    """

    trainee: Trainee
    today: date
    weeks: tuple[TrainedWeek, ...]
    trend: LoadTrend | None = None
    recorded: bool = True

    @property
    def empty(self) -> bool:
        """Whether nothing at all was recorded in these weeks."""
        return not any(week.done or week.activities for week in self.weeks)

    def averages_on(self, day: date) -> tuple[float, float] | None:
        """The averages over 7 and over 28 days in the evening of ``day``, or of today where that
        is earlier; None before anything was recorded.
        """
        trend = self.trend
        place = None if trend is None else min(day, self.today).toordinal() - int(trend.days[0])
        if trend is None or place is None or not 0 <= place < len(trend.days):
            return None
        return float(trend.short[place]), float(trend.long[place])

    def usual_load(self, index: int) -> float | None:
        """The mean load of the four weeks before the week at ``index``, since training began;
        None with fewer than two.
        """
        before = self.weeks[max(0, index - USUAL_WEEKS) : index]
        begun = [i for i, week in enumerate(self.weeks) if week.done or week.activities]
        lived = [week for i, week in enumerate(self.weeks) if begun and i >= begun[0]]
        loads = [week.load.load for week in before if week in lived]
        return fmean(loads) if len(loads) >= 2 else None


def load_history_of(
    history: History, today: date, weeks: int = WEEKS, week_starts: int = 0
) -> LoadHistory:
    """The last ``weeks`` weeks up to ``today``; ``week_starts``: 0 = Monday. The running week is
    part of it; its monotony and strain are None until it is over.
    """
    first = week_start(today, week_starts) - (weeks - 1) * WEEK
    recorded = history.trainee.activities_recorded
    entries: list[Rated] = [*history.sessions, *history.activities]
    loads = week_loads(
        entries,
        first,
        today,
        week_starts=week_starts,
        activities_recorded=recorded,
        sample=history.library.settings.monotony_sample,
    )
    near = history.with_sessions(s for s in history.sessions if s.day >= first - _BEFORE)
    return LoadHistory(
        history.trainee,
        today,
        tuple(_week(near, load, today) for load in loads),
        _trend(entries, first, today),
        recorded,
    )


def _week(history: History, load: WeekLoad, today: date) -> TrainedWeek:
    days = tuple(load.first + ahead * DAY for ahead in range(7))
    sessions = [s for s in history.sessions if s.day in days and s.day <= today]
    activities = tuple(a for a in history.activities if a.day in days and a.day <= today)
    exercises = history.library.exercises
    planned = _planned_days(history, days, today)
    open_ones = _not_done(planned or (), sessions)
    return TrainedWeek(
        load,
        _days(history, days, sessions, activities, {day for day, _ in open_ones}),
        done=sum(any(part.sets for part in session.lines) for session in sessions),
        planned=None if planned is None else len(planned),
        sets_done=volume_done(sessions, exercises),
        sets_planned=_sets_planned(history, open_ones, sessions),
        wellness=wellness_means(session.wellness for session in sessions),
        activities=activities,
    )


def _days(
    history: History,
    days: Sequence[date],
    sessions: Sequence[Session],
    activities: Sequence[Activity],
    planned: Collection[date],
) -> tuple[DayLoad, ...]:
    trained = daily_loads(sessions, days[0], days[-1])
    others = daily_loads(activities, days[0], days[-1])
    unrated = [s.day for s in sessions if s.effort is None or s.minutes is None]
    return tuple(
        DayLoad(
            day,
            trained[index],
            others[index],
            unrated.count(day),
            away=absence_on(history, day) is not None,
            eased=deload_on(history, day) is not None,
            planned=day in planned,
        )
        for index, day in enumerate(days)
    )


def _planned_days(
    history: History, days: Sequence[date], today: date
) -> tuple[tuple[date, TrainingDay], ...] | None:
    """The program's training days of a week, those to come as if each were done; None where the
    program leaves the weekdays open, so that no day can be said to have been left out.
    """
    places = [place for place in (place_on(history, day) for day in days) if place]
    named = [weekdays_of(history, place) for place in places if place.phase is not None]
    if named and not any(named):
        return None
    past = [
        (day, planned)
        for day in days
        if day < today and absence_on(history, day) is None
        for planned in (training_day_on(history, day),)
        if planned is not None
    ]
    if days[-1] < today:
        return tuple(past)
    ahead = takewhile(lambda each: each[0] <= days[-1], training_days(history, today - DAY))
    return (*past, *ahead)


def _not_done(
    planned: Iterable[tuple[date, TrainingDay]], sessions: Sequence[Session]
) -> tuple[tuple[date, TrainingDay], ...]:
    """The training days that were not done, on their day or under their name on another one."""
    days = {session.day for session in sessions}
    names = {session.day_name for session in sessions if session.day_name}
    return tuple(
        (day, training_day)
        for day, training_day in planned
        if day not in days and training_day.name not in names
    )


def _sets_planned(
    history: History, open_ones: Iterable[tuple[date, TrainingDay]], sessions: Sequence[Session]
) -> Volume:
    """What sessions asked, and the program's sets of the days that nobody trained on."""
    exercises = history.library.exercises
    counted: list[tuple[Exercise, float]] = [
        (exercise_of(exercises, part.exercise), len(part.asked))
        for session in sessions
        for part in session.lines
    ]
    for day, training_day in open_ones:
        window = deload_on(history, day)
        for slot in training_day.slots:
            sets = slot.start.sets
            eased = sets if window is None else eased_sets(sets, window.sets_factor)
            counted.append((exercise_of(exercises, slot.exercise), eased))
    return hard_sets(counted)


def wellness_means(answers: Iterable[Wellness]) -> WellnessMeans:
    """The means of some sessions' answers; ``answers`` counts sessions with any."""
    given = [each for each in answers if each != Wellness()]

    def mean(values: Iterable[int | None]) -> float | None:
        told = [value for value in values if value is not None]
        return fmean(told) if told else None

    return WellnessMeans(
        len(given),
        mean(each.sleep for each in given),
        mean(each.soreness for each in given),
        mean(each.stress for each in given),
        mean(each.motivation for each in given),
    )


def _trend(entries: Sequence[Rated], first: date, today: date) -> LoadTrend | None:
    begun = min((entry.day for entry in entries if entry.day <= today), default=None)
    if begun is None:
        return None
    import numpy as np  # here, so that a start without charts does not wait for it

    loads = daily_loads(entries, begun, today)
    shown = max(0, (first - begun) // timedelta(days=1))
    days = np.arange(begun.toordinal(), today.toordinal() + 1, dtype=np.float64)
    return LoadTrend(days[shown:], ewma(loads, SHORT_DAYS)[shown:], ewma(loads, LONG_DAYS)[shown:])
