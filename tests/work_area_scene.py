"""A work area in use: over a record, in an active window, what it says written down."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from typing import TypeVar

from pytestqt.qtbot import QtBot

from db.repository import Repository
from views.record import MessageKind, Record
from views.theme import Scheme, Theme
from views.work_area import WorkArea

Area = TypeVar("Area", bound=WorkArea)
Said = list[tuple[str, MessageKind]]


def area_in_use(
    make: Callable[[Record, date, Theme], Area],
    store: Repository,
    today: date,
    said: Said,
    qtbot: QtBot,
) -> Area:
    """What ``make`` makes, shown; its messages go into ``said``."""
    theme, record = Theme(Scheme.LIGHT, calm=True), Record(store)
    record.message.connect(lambda text, kind: said.append((text, kind)))
    area = make(record, today, theme)
    record.setParent(area)
    theme.setParent(area)
    qtbot.addWidget(area)
    area.resize(1000, 720)
    with qtbot.waitExposed(area):
        area.show()
    area.activateWindow()
    qtbot.waitUntil(area.isActiveWindow)
    return area
