"""One line's part of every session, without the rest of the session: what a chart reads."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date

from db.database import Database
from db.sessions import SET_COLUMNS, AskedSets, gathered
from desktop.training.session import LineDone, Session

_PARTS = (
    "SELECT l.session_id, l.place, s.day, s.entry, s.trainee_id, l.exercise, {asked}, l.deload,"
    " l.test, l.skipped FROM line_done l JOIN session s ON s.id = l.session_id"
    " WHERE l.line_id = ? AND s.day <= ? ORDER BY s.day, s.entry, s.id, l.place"
)
# What no chart shows is left unread: a fifth of the time.
_COLUMNS = SET_COLUMNS.removesuffix(", side, note") + ", '', ''"
_SETS = (
    f"SELECT session_id, line_place, {_COLUMNS} FROM set_done"
    " WHERE line_id = ? AND day <= ? ORDER BY session_id, line_place, place"
)
_LAST = (
    "SELECT d.day FROM set_done d"
    " JOIN line_done l ON l.session_id = d.session_id AND l.place = d.line_place"
    " WHERE d.line_id = ? AND d.exercise = ? AND d.day <= ? AND d.warm_up = 0 AND NOT l.skipped"
    " ORDER BY d.day DESC LIMIT 1"
)
_RIVALS = (
    "SELECT l.id, l.trainee_id FROM line l JOIN trainee t ON t.id = l.trainee_id"
    " WHERE l.exercise = ? AND l.trainee_id <> ? AND NOT t.archived"
)


def line_parts(
    database: Database, line_id: int, last: date, *, asked: bool = False
) -> tuple[Session, ...]:
    """The sessions of one line up to ``last`` by day and entry, cut down to this line.

    Each holds its id, day, entry, trainee and the line's part: sets and flags, with what was asked
    only where ``asked`` says so; sides, reasons, notes and whatever else a session tells are left
    out.
    Parts alike are one object.
    """
    until = last.toordinal()
    texts = AskedSets()
    known: dict[tuple[object, ...], tuple[LineDone]] = {}
    with database.snapshot():
        sets = gathered(database.stream(_SETS, (line_id, until)))
        sessions: list[Session] = []
        before = None
        sql = _PARTS.format(asked="l.asked" if asked else "'[]'")
        for row in database.stream(sql, (line_id, until)):
            session_id, place, day, entry, trainee_id, exercise, text, deload, test, skipped = row
            done = sets.get((session_id, place), ())
            alike = (*map(id, done), exercise, text, deload, test, skipped)
            parts = known.get(alike)
            if parts is None:
                flags = bool(deload), bool(test), bool(skipped)
                part = LineDone(line_id, exercise, texts[text], tuple(done), *flags)
                parts = known[alike] = (part,)
            both = parts if session_id != before else (*sessions.pop().lines, *parts)
            before = session_id
            sessions.append(Session(trainee_id, date.fromordinal(day), both, entry, id=session_id))
    return tuple(sessions)


def last_trained(database: Database, lines: Mapping[int, str], last: date) -> dict[int, date]:
    """Of ``lines`` (exercise by id), the last day up to ``last`` on which each was trained: its
    own exercise, with working sets. Lines never trained are left out.
    """
    found: dict[int, date] = {}
    for line_id, exercise in lines.items():
        for (day,) in database.execute(_LAST, (line_id, exercise, last.toordinal())):
            found[line_id] = date.fromordinal(day)
    return found


def lines_of_others(database: Database, exercise: str, trainee_id: int) -> dict[int, int]:
    """The lines of ``exercise`` of everybody but one trainee: trainee by line; nobody archived."""
    return dict(database.execute(_RIVALS, (exercise, trainee_id)))
