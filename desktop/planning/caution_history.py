"""The cautions of past weeks: what was to be seen of somebody, from when on and until when.

Nothing of it is stored: each day is computed from what was on record of it, as it would have been
on that day's evening. What was set aside counts too.
"""

from __future__ import annotations

from collections.abc import Generator, Iterable
from dataclasses import dataclass, replace
from datetime import date, timedelta
from typing import Final

from desktop.planning.cautions import cautions_in
from desktop.planning.history import History
from desktop.planning.schedule import WEEK
from desktop.training.limits import LimitId
from desktop.training.recovery import Caution

WEEKS: Final = 16

SAME: Final = timedelta(days=14)
"""What is out of sight for no longer (a deload, say) and then seen again is one and the same."""

UNDATED: Final = frozenset(
    {LimitId.MINOR, LimitId.OLDER, LimitId.SCREENING, LimitId.LOAD_INCOMPLETE}
)
"""These rest on the trainee as they are now, so of the past they tell nothing."""


@dataclass(frozen=True, slots=True)
class SeenCaution:
    """A caution as it was last seen, between the ``first`` and the ``last`` day; ``now``: it still
    is.
    """

    caution: Caution
    first: date
    last: date
    now: bool


def seen_cautions(
    history: History, today: date, weeks: int = WEEKS
) -> Generator[float, None, tuple[SeenCaution, ...]]:
    """The cautions seen in the last ``weeks`` up to ``today``, the latest first; yields the share
    done after each day that is looked at.
    """
    bare = replace(history, dismissed=())
    days = _days(history, today, weeks)
    seen: dict[tuple[LimitId, int | None], list[SeenCaution]] = {}
    for place, day in enumerate(days, start=1):
        known = bare.with_sessions(one for one in bare.sessions if one.day <= day)
        for caution in cautions_in(known, day):
            if caution.limit not in UNDATED:
                _note(seen.setdefault((caution.limit, caution.line_id), []), caution, day, today)
        yield place / len(days)
    found = [one for spans in seen.values() for one in spans]
    return tuple(sorted(found, key=lambda one: (one.last, one.first), reverse=True))


def _note(spans: list[SeenCaution], caution: Caution, day: date, today: date) -> None:
    """Go on with the last span, or begin another one."""
    if spans and day - spans[-1].last <= SAME:
        spans[-1] = replace(spans[-1], caution=caution, last=day, now=day == today)
    else:
        spans.append(SeenCaution(caution, day, day, day == today))


def _days(history: History, today: date, weeks: int) -> list[date]:
    """Days trained, the Mondays between them, and today."""
    first = today - weeks * WEEK
    begun = min((one.day for one in history.sessions), default=today)
    trained = (one.day for one in history.sessions if first < one.day <= today)
    return sorted({*trained, *_mondays(max(first, begun), today), today})


def _mondays(first: date, last: date) -> Iterable[date]:
    day = first + timedelta(days=-first.weekday() % 7)
    while day <= last:
        yield day
        day += WEEK
