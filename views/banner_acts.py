"""What the window does about a caution: from its banner, or from where the desk speaks of it."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date

from PySide6.QtCore import QObject

from db.errors import StoreError
from desktop.planning.caution_ways import Way
from desktop.planning.cautions import dismissal
from desktop.planning.history import History, read_history
from desktop.training.recovery import Caution
from views.area_stack import AreaStack
from views.caution_acts import CautionWords, take, words_of
from views.proposals import screen_for
from views.record import Record
from views.way_texts import AREAS
from views.work_areas import LOAD


class BannerActs(QObject):
    """``trainee_id`` tells whose cautions are shown; acts are done in ``areas`` or on the spot."""

    def __init__(
        self, record: Record, today: date, areas: AreaStack, trainee_id: Callable[[], int | None]
    ) -> None:
        super().__init__(areas)
        self._record, self._today = record, today
        self._areas, self._trainee_id = areas, trainee_id

    def words(self, caution: Caution) -> CautionWords | None:
        """What can be done about ``caution``; None where the trainee cannot be read."""
        history = self._history()
        if history is None:
            return None
        return words_of(self._record, history, caution, self._today)

    def take(self, caution: Caution, way: Way) -> None:
        """Do what a way says at once, or go where it leads."""
        if way.changed is not None:
            history = self._history()
            if history is not None:
                take(self._record, history, caution, way, self._today)
            return
        area = AREAS.get(way.kind, LOAD)
        self._areas.show_area(area)
        if area == LOAD and self._areas.area is not None:
            self._areas.area.follow(caution, way.kind)

    def propose(self, caution: Caution) -> None:
        """Open the screen on which ``caution`` is dealt with, with the cursor there."""
        self._areas.show_area(screen_for(caution.proposal))
        self._areas.take_up(caution)

    def set_aside(self, caution: Caution, why: str) -> None:
        """Set ``caution`` aside until its evidence changes."""
        trainee_id = self._trainee_id()
        if trainee_id is not None:
            aside = dismissal(caution, trainee_id, self._today, why)
            self._record.save(self.tr("Set a caution aside"), aside)

    def _history(self) -> History | None:
        trainee_id = self._trainee_id()
        if trainee_id is None:
            return None
        try:
            return read_history(self._record.repository, trainee_id)
        except StoreError as error:
            self._record.reported(error)
            return None
