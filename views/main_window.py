"""The window: puts the roster, the caution banner, the work areas and the menus together."""

from __future__ import annotations

from datetime import date
from typing import Protocol

from PySide6.QtCore import QByteArray, Signal
from PySide6.QtGui import QCloseEvent
from PySide6.QtWidgets import QHBoxLayout, QMainWindow, QVBoxLayout, QWidget

from db.changes import Changes
from db.errors import StoreError
from desktop.planning.kept_drafts import at_work
from desktop.planning.roster import RosterEntry
from desktop.training.recovery import Caution, evidence_key
from desktop.training.trainee import DismissedCaution
from views.area_stack import AreaStack
from views.caution_banner import CautionBanner
from views.keyboard_map import KeyboardMap
from views.menus import Menus
from views.proposals import carry_out
from views.record import Record
from views.roster import Roster
from views.status_line import StatusLine
from views.theme import Theme
from views.work_areas import DESK, TRAINEE, WORK_AREAS


class WindowSettings(Protocol):
    """What this computer remembers of the window."""

    geometry: bytes
    last_trainee: int | None
    last_screen: str


class MainWindow(QMainWindow):
    """One window over one record. Wishes that concern files go out as signals."""

    open_wanted = Signal()
    demo_wanted = Signal()
    backup_wanted = Signal()

    def __init__(
        self,
        record: Record,
        today: date,
        theme: Theme,
        settings: WindowSettings,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._record, self._today, self._settings = record, today, settings
        self.setWindowTitle(self.tr("Rungwise"))
        self.roster = Roster(theme)
        self.areas = AreaStack(WORK_AREAS, record, today, theme)
        self.banner = CautionBanner(theme, today, lambda: record.limits)
        self.map = KeyboardMap(theme)
        self.menus = Menus(self, record, theme)
        self.status = StatusLine(theme, self.menus.undo)
        self.theme = theme
        self._assemble()
        self._connect()
        self._space()
        record.begin_roster(today)
        self._read_roster()
        self._restore()

    def _assemble(self) -> None:
        self._above = QVBoxLayout()
        self._above.addWidget(self.banner)
        middle = QVBoxLayout()
        middle.setContentsMargins(0, 0, 0, 0)
        middle.setSpacing(0)
        middle.addLayout(self._above)
        middle.addWidget(self.areas, 1)
        middle.addWidget(self.status)
        ground = QWidget()
        row = QHBoxLayout(ground)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(0)
        row.addWidget(self.roster)
        row.addLayout(middle, 1)
        row.addWidget(self.map)
        self.setCentralWidget(ground)

    def _connect(self) -> None:
        self._record.changed.connect(self._record_changed)
        self._record.message.connect(self.status.say)
        self.theme.changed.connect(self._space)
        self.roster.chosen.connect(self.show_trainee)
        self.areas.trainee_wanted.connect(self.roster.choose)
        self.areas.area_wanted.connect(self._area_wanted)
        self.areas.area_shown.connect(self.menus.mark_area)
        self.banner.proposed.connect(self._do_proposal)
        self.banner.dismissed.connect(self._set_aside)
        self.menus.area_chosen.connect(self.areas.show_area)
        self.menus.new_trainee.connect(self.add_trainee)
        self.menus.search.connect(self.roster.start_search)
        self.menus.step.connect(self.roster.step)
        self.menus.map_wanted.connect(self._toggle_map)
        self.menus.open_wanted.connect(self.open_wanted)
        self.menus.demo_wanted.connect(self.demo_wanted)
        self.menus.backup_wanted.connect(self.backup_wanted)

    def show_area(self, key: str) -> None:
        """Show a work area."""
        self.areas.show_area(key)

    def show_trainee(self, trainee_id: int | None) -> None:
        """Show a trainee in the area that stands there; the desk gives way to the session."""
        self.areas.show_trainee(trainee_id)
        self._show_cautions()

    def add_trainee(self) -> None:
        """Open an empty form for somebody new."""
        self.roster.choose(None)
        self.areas.show_trainee(None)
        self.areas.show_area(TRAINEE)
        self._show_cautions()

    def _area_wanted(self, wish: str) -> None:
        """A work area asks for another area, or for something that only the window can do."""
        wishes = {"add trainee": self.add_trainee, "open demo": self.demo_wanted.emit}
        wishes.get(wish, lambda: self.areas.show_area(wish))()

    def _record_changed(self, _changes: Changes) -> None:
        self._read_roster()

    def _read_roster(self) -> None:
        try:
            entries = self._record.roster(self._today)
        except StoreError as error:
            self._record.reported(error)
            return
        self.roster.set_entries(entries)
        if self._entry() is None and self.roster.trainee_id is not None:
            self.roster.choose(None)
            self.areas.show_trainee(None)
        self._show_cautions()

    def _entry(self) -> RosterEntry | None:
        wanted = self.roster.trainee_id
        entries = self._record.roster(self._today)
        return next((entry for entry in entries if entry.trainee.id == wanted), None)

    def _show_cautions(self) -> None:
        entry = self._entry()
        if entry is None:
            self.banner.hide_all()
        else:
            names = self._record.line_names(entry.trainee.id)
            self.banner.show_cautions(entry.cautions, entry.trainee.unit, names)
        self._space()

    def _do_proposal(self, caution: Caution) -> None:
        entry = self._entry()
        if entry is not None:
            area = carry_out(caution, entry.trainee, self._record, self._today)
            if area:
                self.areas.show_area(area)

    def _set_aside(self, caution: Caution, why: str) -> None:
        entry = self._entry()
        if entry is None or entry.trainee.id is None:
            return
        aside = DismissedCaution(
            entry.trainee.id, caution.limit, evidence_key(caution), self._today, why
        )
        self._record.save(self.tr("Set a caution aside"), aside)

    def _toggle_map(self) -> None:
        self.map.setVisible(self.map.isHidden())
        if self.map.isVisible():
            here = tuple(self.areas.area.keys()) if self.areas.area else ()
            groups = [(self.tr("On this screen"), here)] if here else []
            self.map.show_keys([*groups, *self.menus.key_groups()])
            self.map.close_button.setFocus()

    def _space(self) -> None:
        edge = self.theme.grid(3)
        above = 0 if self.banner.isHidden() else self.theme.grid(2)
        self._above.setContentsMargins(edge, above, edge, 0)

    def _restore(self) -> None:
        if not (
            self._settings.geometry and self.restoreGeometry(QByteArray(self._settings.geometry))
        ):
            self.resize(1280, 800)
        known = {entry.trainee.id for entry in self._record.roster(self._today)}
        if self._settings.last_trainee in known:
            self.roster.choose(self._settings.last_trainee)
        keys = {entry.key for entry in WORK_AREAS}
        last = self._settings.last_screen
        self.areas.show_area(last if last in keys and last != TRAINEE else DESK)
        draft = at_work(self._record.repository)
        if draft is not None and draft.trainee_id in known:
            self.roster.choose(draft.trainee_id)
            self.areas.resume(draft)
            self._record.say(self.tr("Here is what was being typed when the program ended."))

    def closeEvent(self, event: QCloseEvent) -> None:
        self.areas.leave()
        self._settings.geometry = bytes(self.saveGeometry().data())
        self._settings.last_trainee = self.roster.trainee_id
        self._settings.last_screen = self.areas.key
        super().closeEvent(event)
