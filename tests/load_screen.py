"""The area of week and load over the invented strength room; shared by the tests of its parts."""

from __future__ import annotations

from datetime import date

from pytestqt.qtbot import QtBot

from tests.strength_room import Room
from views.load_area import LoadArea
from views.record import Record
from views.theme import Theme


def load_area(qtbot: QtBot, room: Room, today: date, part: str = "") -> LoadArea:
    """The area, shown; ``part`` names one of its parts."""
    area = LoadArea(Record(room.repository), today, Theme("light", calm=True))
    qtbot.addWidget(area)
    area.resize(1064, 776)
    area.show_trainee(room.trainee_id)
    with qtbot.waitExposed(area):
        area.show()
    if part:
        area.show_part(part)
    return area
