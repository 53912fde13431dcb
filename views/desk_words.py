"""The roster and the desk in words: at first sight from glimpses, then from the whole record."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import date
from functools import partial
from typing import Any

from views.desk_columns import Cells
from views.record import Record
from views.roster_line import RosterLine


def roster_lines(record: Record, today: date) -> tuple[RosterLine, ...]:
    """The lines of the roster by need."""
    if not record.attached:
        from views.first_rows import glimpsed_line

        return tuple(glimpsed_line(one, today) for one in record.glimpses)
    from views.caution_texts import roster_line

    return tuple(roster_line(entry) for entry in record.roster(today))


def desk_cells(record: Record, today: date) -> tuple[Sequence[Any], Callable[[Any], Cells]]:
    """The desk's rows by need, and what gives the words of one."""
    if not record.attached:
        from views.first_rows import glimpsed_cells

        return record.glimpses, partial(glimpsed_cells, today=today)
    from views.desk_cells import cells_of

    return record.desk_rows(today), partial(cells_of, today=today, limits=record.limits)


def counted(record: Record, today: date) -> tuple[int, int]:
    """How many train today, and how many need attention, as far as known."""
    if not record.attached:
        return sum(one.is_due(today) for one in record.glimpses), 0
    entries = record.roster(today)
    urgent = ("caution", "stop")
    return (
        sum(entry.due_today for entry in entries),
        sum(bool(e.cautions) and e.cautions[0].severity.value in urgent for e in entries),
    )
