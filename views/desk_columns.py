"""The columns of the desk, and what is said in them by dates alone.

Nothing of the model is imported here: the desk stands before the model is read.
"""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date
from enum import IntEnum
from typing import NamedTuple

from PySide6.QtCore import QCoreApplication

from views import calendar_words

translate = QCoreApplication.translate

NOTHING = "\N{EN DASH}"


class Column(IntEnum):
    """The columns, from left to right."""

    NAME = 0
    NEED = 1
    LAST = 2
    NEXT = 3
    DONE = 4
    STILL = 5
    DELOAD = 6
    GOAL = 7
    COURSE = 8


class Cells(NamedTuple):
    """One trainee's cells: words and the screen each leads to, by column. ``why`` says in full
    what there is to look at, ``severity`` is that of the first caution ("" for none). ``marked``
    are the columns that matter now; ``course`` holds the spark line's values by ordinal; ``known``
    is False while only dates are; ``proposal`` is what the first caution proposes.
    """

    trainee_id: int
    texts: tuple[str, ...]
    areas: tuple[str, ...]
    why: str = ""
    severity: str = ""
    due: bool = False
    marked: frozenset[Column] = frozenset()
    course: tuple[tuple[int, float], ...] = ()
    known: bool = True
    proposal: str = ""

    @property
    def spoken(self) -> str:
        """The row read aloud."""
        return self.told([column for column in Column if column > Column.NEED])

    def told(self, columns: Iterable[Column]) -> str:
        """Who, why, and what these columns say, a sentence each."""
        said = [self.texts[Column.NAME], self.why or self.texts[Column.NEED]]
        said += [
            f"{heading(column)}: {self.texts[column]}"
            for column in columns
            if self.texts[column] not in ("", NOTHING)
        ]
        return ". ".join(each.rstrip(".") for each in said if each) + "."


def heading(column: Column) -> str:
    """The word above a column."""
    return {
        Column.NAME: translate("Desk", "Trainee"),
        Column.NEED: translate("Desk", "What to look at"),
        Column.LAST: translate("Desk", "Last"),
        Column.NEXT: translate("Desk", "Next"),
        Column.DONE: translate("Desk", "Done"),
        Column.STILL: translate("Desk", "Plateau"),
        Column.DELOAD: translate("Desk", "Deload"),
        Column.GOAL: translate("Desk", "Goal"),
        Column.COURSE: translate("Desk", "Course"),
    }[column]


def explanation(column: Column) -> str:
    """What a column shows, in a sentence."""
    return {
        Column.NAME: translate("Desk", "Sorted by need: stops, who trains today, cautions."),
        Column.NEED: translate("Desk", "The most serious caution, or what goes on."),
        Column.LAST: translate("Desk", "Days since the last session."),
        Column.NEXT: translate("Desk", "The next training day of the program."),
        Column.DONE: translate("Desk", "Days trained of those planned, in the last four weeks."),
        Column.STILL: translate("Desk", "Lines that have probably stopped gaining."),
        Column.DELOAD: translate(
            "Desk",
            "The next deload: planned, due by the program's rhythm, or advised by what is seen.",
        ),
        Column.GOAL: translate("Desk", "When the trend reaches the goal, with 80 % certainty."),
        Column.COURSE: translate(
            "Desk",
            "Estimated maximum of the main line, week by week; "
            "hard sets a week where there is none.",
        ),
    }[column]


def since_words(last: date | None, today: date) -> str:
    """How long ago the last session was."""
    if last is None:
        return translate("Desk", "never")
    ago = (today - last).days
    return translate("Desk", "today") if ago == 0 else calendar_words.days(ago)


def when_words(next_day: date | None, today: date) -> str:
    """When the next training day is."""
    if next_day is None:
        return NOTHING
    if next_day == today:
        return translate("Desk", "today")
    return calendar_words.short_day(next_day, today)
