"""Training weeks of one line: its volume, and hard sets done beside those planned."""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from desktop.planning.best_sets import BestSet
from desktop.planning.history import History
from desktop.planning.schedule import DAY, WEEK, phase_spans, place_on, slot_of
from desktop.training.program import Line


@dataclass(frozen=True, slots=True)
class Week:
    """One week of the line: volume (grams of effective load x repetitions, both implements),
    hard sets done, and those that the program asked for.
    """

    first: date
    volume_g: float
    hard_sets: int
    planned_sets: int


def weeks_of(
    history: History, line: Line, bests: Sequence[BestSet], today: date, week_starts: int
) -> tuple[Week, ...]:
    """Every week from the first session to ``today``. ``week_starts``: 0 = Monday."""
    if not bests:
        return ()
    implements = history.exercise_of(line).implements
    volume: dict[int, float] = {}
    sets: dict[int, int] = {}
    begun = week_of(bests[0].day, week_starts)
    for best in bests:
        week = (best.day - begun).days // 7
        volume[week] = volume.get(week, 0.0) + best.volume_g * implements
        sets[week] = sets.get(week, 0) + len(best.working)
    planned = _Planned(history, line)
    return tuple(
        Week(first, volume.get(week, 0.0), sets.get(week, 0), planned.in_week(first))
        for week in range((today - begun).days // 7 + 1)
        for first in (begun + week * WEEK,)
    )


def week_of(day: date, week_starts: int) -> date:
    """The first day of the week that ``day`` lies in."""
    return day - timedelta(days=(day.weekday() - week_starts) % 7)


class _Planned:
    """Sets of a line that a program asks for in a week, by its slots: once for each phase."""

    def __init__(self, history: History, line: Line) -> None:
        self._history, self._line = history, line
        # What holds changes on these days only: between them, one look is enough.
        turns = {one.start for one in history.assignments}
        for one in history.assignments:
            spans = phase_spans(one, history.library.programs[one.program_id])
            turns |= {turn for span in spans for turn in (span.first, span.last + DAY)}
        self._turns = sorted(turns)
        self._by_span: dict[int, int] = {}

    def in_week(self, first: date) -> int:
        """Of the program's week around ``first``."""
        middle = first + 3 * DAY
        span = bisect_right(self._turns, middle)
        if span not in self._by_span:
            self._by_span[span] = self._on(middle)
        return self._by_span[span]

    def _on(self, day: date) -> int:
        place = place_on(self._history, day)
        if place is None or place.phase is None:
            return 0
        slots = (slot_of(day, self._line.exercise, self._line.name) for day in place.phase.days)
        return sum(slot.start.sets for slot in slots if slot is not None)
