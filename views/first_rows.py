"""The roster and the desk at first sight: names and dates, before the model is there."""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QCoreApplication

from desktop.training.name_order import name_key
from views.calendar_words import days, short_day
from views.desk_columns import Cells, Column, since_words, when_words
from views.roster_line import RosterLine
from views.work_areas import SESSION

if TYPE_CHECKING:
    from db.first_look import Glimpse

translate = QCoreApplication.translate


def glimpsed_line(glimpse: Glimpse, today: date) -> RosterLine:
    """The roster's two lines of somebody seen at first sight."""
    if glimpse.is_due(today):
        return RosterLine(
            glimpse.trainee_id, glimpse.name, translate("Roster", "due today"), "text"
        )
    text = ""
    if glimpse.next is not None:
        text = translate("Roster", "next {day}").format(day=short_day(glimpse.next, today))
    elif glimpse.last is not None:
        ago = days((today - glimpse.last).days)
        text = translate("Roster", "{days} since last").format(days=ago)
    return RosterLine(glimpse.trainee_id, glimpse.name, text, "muted")


def glimpsed_cells(glimpse: Glimpse, today: date) -> Cells:
    """The desk's row of somebody seen at first sight."""
    texts = dict.fromkeys(Column, "") | {
        Column.NAME: glimpse.name,
        Column.LAST: since_words(glimpse.last, today),
        Column.NEXT: when_words(glimpse.next, today) if glimpse.looked_up else "",
    }
    return Cells(
        trainee_id=glimpse.trainee_id,
        texts=tuple(texts.values()),
        areas=(SESSION,) * len(Column),
        due=glimpse.is_due(today),
        known=False,
    )


def glimpsed_rank(glimpse: Glimpse, column: Column) -> Any:
    """What somebody seen at first sight is sorted by; None where that is not known yet."""
    match column:
        case Column.NAME:
            return name_key(glimpse.name)
        case Column.LAST:
            return glimpse.last
        case Column.NEXT:
            return glimpse.next
    return None
