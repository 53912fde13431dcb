"""The order of the desk's rows: by need, or by what stands in a column.

Nothing of the model is imported here: the desk stands before the model is read.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any, NamedTuple, TypeVar

from PySide6.QtCore import QCoreApplication

from views.desk_columns import Column

translate = QCoreApplication.translate

Row = TypeVar("Row")

_DOWN, _UP = "\N{DOWNWARDS ARROW}", "\N{UPWARDS ARROW}"
_TURNED = "-"


class Order(NamedTuple):
    """What rows are sorted by: need (`Column.NEED`), or another column; ``turned`` round."""

    column: Column = Column.NEED
    turned: bool = False

    @property
    def by_need(self) -> bool:
        """Whether rows stand as they come."""
        return self.column is Column.NEED

    def after(self, column: Column) -> Order:
        """The order once ``column`` was asked for: the same one again is turned round."""
        again = column is self.column and column is not Column.NEED
        return Order(column, again and not self.turned)

    @property
    def code(self) -> str:
        """The order as a setting: "last", "-last" turned round."""
        return f"{_TURNED if self.turned else ''}{self.column.name.lower()}"


def order_of(code: str) -> Order:
    """The order that a setting names; by need where it names none."""
    for column in Column:
        for order in (Order(column), Order(column, turned=True)):
            if order.code == code and not (order.by_need and order.turned):
                return order
    return Order()


def in_order(
    rows: Sequence[Row], order: Order, rank_of: Callable[[Row, Column], Any]
) -> Sequence[Row]:
    """The rows sorted; those without a rank (None) last either way, by need among themselves."""
    if order.by_need:
        return rows
    ranks = [rank_of(row, order.column) for row in rows]
    places = [place for place, rank in enumerate(ranks) if rank is not None]
    places.sort(key=ranks.__getitem__, reverse=order.turned)
    places += [place for place, rank in enumerate(ranks) if rank is None]
    return [rows[place] for place in places]


def marked_heading(heading: str, turned: bool) -> str:
    """The word above the column that rows are sorted by."""
    return f"{heading} {_UP if turned else _DOWN}"


def order_text(order: Order) -> str:
    """Which order is on, in words."""
    usual, turned = {
        Column.NEED: (translate("Desk", "Sorted by need"),) * 2,
        Column.NAME: (
            translate("Desk", "Sorted by name"),
            translate("Desk", "Sorted by name, backwards"),
        ),
        Column.LAST: (
            translate("Desk", "Longest ago first"),
            translate("Desk", "Trained last first"),
        ),
        Column.NEXT: (
            translate("Desk", "Next to train first"),
            translate("Desk", "Next to train last"),
        ),
        Column.DONE: (
            translate("Desk", "Least of the plan done first"),
            translate("Desk", "Most of the plan done first"),
        ),
        Column.STILL: (
            translate("Desk", "Most plateaus first"),
            translate("Desk", "Fewest plateaus first"),
        ),
        Column.DELOAD: (
            translate("Desk", "Next deload first"),
            translate("Desk", "Next deload last"),
        ),
        Column.GOAL: (
            translate("Desk", "Nearest goal first"),
            translate("Desk", "Farthest goal first"),
        ),
        Column.COURSE: (
            translate("Desk", "Least gained first"),
            translate("Desk", "Most gained first"),
        ),
    }[order.column]
    return turned if order.turned else usual
