"""A trainee's past as a list: every session with its exercises and sets, in one query."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from itertools import groupby
from operator import itemgetter
from typing import Any

from db.database import Database
from desktop.training.session import SetDone

_QUERY = """
SELECT s.id, s.day, s.entry, s.day_name, s.effort, s.minutes, s.note,
       l.place, l.line_id, l.exercise, n.name, l.note,
       d.load_g, d.reps, d.seconds, d.variation, d.warm_up, d.pain, d.side
FROM session s
LEFT JOIN line_done l ON l.session_id = s.id
LEFT JOIN line n ON n.id = l.line_id
LEFT JOIN set_done d ON d.session_id = s.id AND d.line_place = l.place
WHERE s.trainee_id = ?
ORDER BY s.day DESC, s.entry DESC, s.id, l.place, d.place
"""


@dataclass(frozen=True, slots=True)
class PastLine:
    """One exercise of a session: which line, by which name, and the sets done."""

    line_id: int
    exercise: str
    line_name: str
    note: str
    sets: tuple[SetDone, ...] = ()


@dataclass(frozen=True, slots=True)
class PastSession:
    """One session of the list."""

    session_id: int
    day: date
    entry: int
    day_name: str
    effort: float | None
    minutes: int | None
    note: str
    lines: tuple[PastLine, ...] = ()


def past_sessions(database: Database, trainee_id: int) -> tuple[PastSession, ...]:
    """The trainee's sessions, the latest first."""
    known: dict[tuple[Any, ...], SetDone] = {}
    rows = database.stream(_QUERY, (trainee_id,))
    return tuple(
        _session(head, _lines(list(of_session), known))
        for head, of_session in groupby(rows, key=itemgetter(slice(0, 7)))
    )


def _session(head: tuple[Any, ...], lines: tuple[PastLine, ...]) -> PastSession:
    session_id, day, entry, day_name, effort, minutes, note = head
    return PastSession(
        session_id, date.fromordinal(day), entry, day_name, effort, minutes, note, lines
    )


def _lines(
    rows: list[tuple[Any, ...]], known: dict[tuple[Any, ...], SetDone]
) -> tuple[PastLine, ...]:
    found = []
    for (place, *part), of_line in groupby(rows, key=itemgetter(slice(7, 12))):
        if place is not None:
            line_id, exercise, line_name, note = part
            sets = tuple(_set(row[12:], known) for row in of_line if row[12] is not None)
            found.append(PastLine(line_id, exercise, line_name, note, sets))
    return tuple(found)


def _set(values: tuple[Any, ...], known: dict[tuple[Any, ...], SetDone]) -> SetDone:
    """The same set comes again and again in a record: it is made once and shared."""
    done = known.get(values)
    if done is None:
        load_g, reps, seconds, variation, warm_up, pain, side = values
        done = known[values] = SetDone(
            load_g, reps, seconds, variation, warm_up=bool(warm_up), pain=pain, side=side
        )
    return done
