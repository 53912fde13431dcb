"""The roster and the desk in words: at first sight from glimpses, then from the whole record."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import date
from functools import partial
from typing import Any, NamedTuple

from views.desk_columns import Cells, Column
from views.record import Record
from views.roster_line import RosterLine


class DeskRows(NamedTuple):
    """The desk's rows by need, what gives the words of one, and by what it is sorted in a column
    (None: by nothing there).
    """

    rows: Sequence[Any]
    cells_of: Callable[[Any], Cells]
    rank_of: Callable[[Any, Column], Any]


def roster_lines(record: Record, today: date) -> tuple[RosterLine, ...]:
    """The lines of the roster by need."""
    if not record.reads_roster:
        from views.first_rows import glimpsed_line

        return tuple(glimpsed_line(one, today) for one in record.glimpses)
    from views.caution_texts import roster_line

    return tuple(roster_line(entry) for entry in record.roster(today))


def desk_cells(record: Record, today: date) -> DeskRows:
    """What stands on the desk, as far as it is known."""
    if not record.reads_roster:
        from views.first_rows import glimpsed_cells, glimpsed_rank

        return DeskRows(record.glimpses, partial(glimpsed_cells, today=today), glimpsed_rank)
    from views.desk_cells import cells_of, rank_of

    words_of = partial(cells_of, today=today, limits=record.limits)
    return DeskRows(record.desk_rows(today), words_of, rank_of)


def counted(record: Record, today: date) -> tuple[int, int]:
    """How many train today, and how many need attention, as far as known."""
    if not record.reads_roster:
        return sum(one.is_due(today) for one in record.glimpses), 0
    entries = record.roster(today)
    urgent = ("caution", "stop")
    return (
        sum(entry.due_today for entry in entries),
        sum(bool(e.cautions) and e.cautions[0].severity.value in urgent for e in entries),
    )
