"""The list of the past: a trainee's sessions, searched by exercise, day, name and note."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence

from db.past_rows import PastLine as PastLine
from db.past_rows import PastSession as PastSession
from db.past_rows import past_sessions
from db.repository import Repository


def past_list(repository: Repository, trainee_id: int) -> tuple[PastSession, ...]:
    """The trainee's sessions, the latest first, in one query."""
    return past_sessions(repository.database, trainee_id)


def found(
    sessions: Sequence[PastSession],
    search: str,
    line_name: Callable[[PastLine], str],
    day_texts: Callable[[PastSession], Iterable[str]],
) -> tuple[tuple[PastSession, tuple[PastLine, ...]], ...]:
    """The sessions in which every word of ``search`` is found, each with the exercises that a word
    names (all of them where none does).

    ``line_name`` and ``day_texts`` say how exercise and day are written; notes, the name of the
    day and the date as 2026-11-26 are searched as they are.
    """
    wanted = search.casefold().split()
    rows = []
    for session in sessions:
        told = " ".join(
            (
                session.day.isoformat(),
                session.day_name,
                session.note,
                *day_texts(session),
                *(part.note for part in session.lines),
            )
        ).casefold()
        names = [line_name(part).casefold() for part in session.lines]
        if all(word in told or any(word in name for name in names) for word in wanted):
            named = tuple(
                part
                for part, name in zip(session.lines, names, strict=True)
                if any(word in name for word in wanted)
            )
            rows.append((session, named or session.lines))
    return tuple(rows)
