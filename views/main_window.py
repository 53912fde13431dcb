"""The window: puts the roster, the caution banner, the work areas and the menus together."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import date
from functools import cached_property, partial
from pathlib import Path
from typing import TYPE_CHECKING, Protocol

from PySide6.QtCore import QByteArray, Qt, QTimer, Signal, SignalInstance
from PySide6.QtGui import QCloseEvent, QPaintEvent
from PySide6.QtWidgets import QHBoxLayout, QMainWindow, QVBoxLayout, QWidget

from db.changes import Changes
from db.errors import StoreError
from views.area_stack import AreaStack
from views.desk_words import roster_lines
from views.export_menu import ExportMenu
from views.file_drop import FileDrop
from views.menus import Menus
from views.record import Record
from views.roster import Roster
from views.status_line import StatusLine
from views.theme import Theme
from views.work_area import WorkArea
from views.work_areas import (
    CAUTION,
    CAUTIONS,
    DAYS_AWAY,
    DELOAD,
    DESK,
    GOALS,
    IMPORT,
    LOAD,
    PROGRESS,
    TRAINEE,
    WEEK,
    WORK_AREAS,
)

if TYPE_CHECKING:
    from desktop.planning.roster import RosterEntry
    from views.banner_acts import BannerActs
    from views.caution_banner import CautionBanner
    from views.keyboard_map import KeyboardMap
    from views.trainee_form import TraineeForm

_ABOUT_ONE = frozenset({TRAINEE, *(entry.key for entry in WORK_AREAS if entry.needs_trainee)})
"""Areas that are about one person."""

_BREATH_MS = 10
"""Between the first paint and what follows it, so that the picture is on the screen."""


class WindowSettings(Protocol):
    """What this computer remembers of the window."""

    geometry: bytes
    last_trainee: int | None
    last_screen: str

    def recalled(self, screen: str) -> str:
        """What was kept of how a screen was left; "" for nothing."""
        ...

    def keep(self, screen: str, left: str) -> None:
        """Keep how a screen was left."""
        ...


class MainWindow(QMainWindow):
    """One window over one record. Wishes that concern files go out as signals; ``painted`` follows
    the first paint.

    It stands before the record's file is open, with what a first look gave; what is not needed for
    that is made when it is first asked for. ``area_waiting``: the area that is shown as soon as the
    file is open ("" for none); ``waiting_painted`` follows when it stands there.
    """

    painted = Signal()
    open_wanted = Signal()
    demo_wanted = Signal()
    backup_wanted = Signal()
    language_wanted = Signal(str)
    keeping_wanted = Signal(str)
    everything_brought = Signal(Path)
    waiting_painted = Signal()

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
        self._was_painted = self._left = False
        self.area_waiting = ""
        self.setWindowTitle(self.tr("Rungwise"))
        self.roster = Roster(theme)
        self.areas = AreaStack(WORK_AREAS, record, today, theme)
        self.menus = Menus(self, record, theme)
        self.export = ExportMenu(self, record, theme, lambda: self.roster.trainee_id)
        self.menus.add_below_import(self.export.menu)
        self.drop = FileDrop(self)
        self.status = StatusLine(theme, self.menus.undo)
        self.theme = theme
        self._assemble()
        self._connect()
        self._space()
        record.begin_roster(today)
        self._read_roster()
        self._restore()
        if record.attached:
            self._resume()
        else:
            record.opened.connect(self._resume)

    @cached_property
    def banner(self) -> CautionBanner:
        """The cautions of the trainee chosen."""
        from views.caution_banner import CautionBanner

        made = CautionBanner(
            self.theme, self._today, lambda: self._record.limits, lambda one: self.acts.words(one)
        )
        made.taken.connect(lambda caution, way: self.acts.take(caution, way))
        made.proposed.connect(lambda caution: self.acts.propose(caution))
        made.dismissed.connect(lambda caution, why: self.acts.set_aside(caution, why))
        made.session_wanted.connect(self.areas.show_session)
        self._above.addWidget(made)
        return made

    @cached_property
    def acts(self) -> BannerActs:
        """What is done about cautions."""
        from views.banner_acts import BannerActs

        return BannerActs(self._record, self._today, self.areas, lambda: self.roster.trainee_id)

    @cached_property
    def map(self) -> KeyboardMap:
        """The keyboard map at the right."""
        from views.keyboard_map import KeyboardMap

        made = KeyboardMap(self.theme)
        self._across.addWidget(made)
        return made

    def _assemble(self) -> None:
        self._above = QVBoxLayout()
        middle = QVBoxLayout()
        middle.setContentsMargins(0, 0, 0, 0)
        middle.setSpacing(0)
        middle.addLayout(self._above)
        middle.addWidget(self.areas, 1)
        middle.addWidget(self.status)
        ground = QWidget()
        self._across = QHBoxLayout(ground)
        self._across.setContentsMargins(0, 0, 0, 0)
        self._across.setSpacing(0)
        self._across.addWidget(self.roster)
        self._across.addLayout(middle, 1)
        self.setCentralWidget(ground)

    def _connect(self) -> None:
        self._record.changed.connect(self._record_changed)
        self._record.message.connect(self.status.say)
        self.theme.changed.connect(self._space)
        self.roster.chosen.connect(self.show_trainee)
        self.areas.trainee_wanted.connect(self.roster.choose)
        self.areas.area_wanted.connect(self._area_wanted)
        self.areas.everything_brought.connect(self.everything_brought)
        self.areas.area_shown.connect(self.menus.mark_area)
        self.areas.area_shown.connect(self._keep_map)
        self.areas.area_built.connect(self._recall)
        self.menus.area_chosen.connect(self._area_chosen)
        self.menus.new_trainee.connect(self.add_trainee)
        self.menus.search.connect(self.roster.start_search)
        self.menus.step.connect(self.roster.step)
        self.menus.map_wanted.connect(self._toggle_map)
        self.menus.open_wanted.connect(self.open_wanted)
        self.menus.demo_wanted.connect(self.demo_wanted)
        self.menus.backup_wanted.connect(self.backup_wanted)
        self.menus.language_wanted.connect(self.language_wanted)
        self.drop.dropped.connect(self.bring_in)
        self.menus.give_wanted.connect(self.export.all_about_one)
        self.menus.keeping_wanted.connect(self.keeping_wanted)
        self.menus.part_wanted.connect(self._part_chosen)

    def show_area(self, key: str) -> None:
        """Show a work area."""
        self.areas.show_area(key)

    def _area_chosen(self, key: str) -> None:
        """Show an area; where it is about one person, for whom the cursor stands on."""
        if key in _ABOUT_ONE:
            self._choose_stood_on()
        self.areas.show_area(key)

    def _part_chosen(self, part: str) -> None:
        """Show a part of an area that is about one person, for whom the cursor stands on."""
        self._choose_stood_on()
        self._area_wanted(part)

    def _choose_stood_on(self) -> None:
        area = self.areas.area
        if area is not None and area.stood_on is not None:
            self.roster.choose(area.stood_on)

    def bring_in(self, path: Path) -> None:
        """Open a file where files are brought in."""
        self.areas.show_area(IMPORT)
        if self.areas.area is not None:
            self.areas.area.open_file(path)

    def say_wrong(self, error: StoreError) -> None:
        """Say what went wrong with a file."""
        self._record.reported(error)

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

    def _recall(self, key: str, area: WorkArea) -> None:
        kept = self._settings.recalled(key)
        if kept:
            area.recall(kept)

    def _area_wanted(self, wish: str) -> None:
        """A work area asks for another area, or for something that only the window can do."""
        wishes: dict[str, Callable[[], object]] = {
            "add trainee": self.add_trainee,
            "open demo": self.demo_wanted.emit,
            DAYS_AWAY: lambda: self._type_about(lambda form: form.begin_absence()),
            GOALS: lambda: self._type_about(lambda form: form.begin_goal()),
            CAUTION: self._do_first_proposal,
            **{part: partial(self._show_load, part) for part in (WEEK, DELOAD, CAUTIONS)},
        }
        wishes.get(wish, lambda: self.areas.show_area(wish))()

    def _type_about(self, begin: Callable[[TraineeForm], None]) -> None:
        """Open the trainee's own screen at one of its parts."""
        if self.roster.trainee_id is None:
            self._record.say(self.tr("Choose a trainee first."))
            return
        from views.trainee_form import TraineeForm

        self.areas.show_area(TRAINEE)
        if isinstance(self.areas.area, TraineeForm):
            begin(self.areas.area)

    def _show_load(self, part: str) -> None:
        """Show a part of week and load, with the cursor in it."""
        self.areas.show_area(LOAD)
        if self.areas.area is not None:
            self.areas.area.show_part(part)

    def _record_changed(self, _changes: Changes) -> None:
        self._read_roster()

    def _read_roster(self) -> None:
        try:
            lines = roster_lines(self._record, self._today)
        except StoreError as error:
            self._record.reported(error)
            return
        self.roster.set_lines(lines)
        if self.roster.trainee_id not in (None, *self.roster.known):
            self.roster.choose(None)
            self.areas.show_trainee(None)
        self._show_cautions()

    def _entry(self) -> RosterEntry | None:
        return self._record.entry(self.roster.trainee_id)

    def _show_cautions(self) -> None:
        entry = self._entry()
        if entry is not None and entry.cautions:
            names = self._record.line_names(entry.trainee.id)
            self.banner.show_cautions(entry.cautions, entry.trainee.unit, names)
        elif "banner" in self.__dict__:
            self.banner.hide_all()
        self._space()

    def _do_first_proposal(self) -> None:
        entry = self._entry()
        if entry is not None and entry.cautions:
            self.acts.propose(entry.cautions[0])

    def _toggle_map(self) -> None:
        if self.map.isVisible():
            self.map.put_away()
        else:
            self.map.open(self._key_groups())

    def _key_groups(self) -> list[tuple[str, Sequence[tuple[str, str]]]]:
        here: Sequence[tuple[str, str]] = self.areas.area.keys() if self.areas.area else ()
        groups = [(self.tr("On this screen"), here)] if here else []
        return [*groups, *self.menus.key_groups()]

    def _keep_map(self) -> None:
        """Another screen has other keys."""
        if "map" in self.__dict__ and self.map.isVisible():
            self.map.show_keys(self._key_groups())

    def _space(self) -> None:
        edge = self.theme.grid(3)
        bare = "banner" not in self.__dict__ or self.banner.isHidden()
        above = 0 if bare else self.theme.grid(2)
        self._above.setContentsMargins(edge, above, edge, 0)

    def _restore(self) -> None:
        if not (
            self._settings.geometry and self.restoreGeometry(QByteArray(self._settings.geometry))
        ):
            high = self.screen().availableSize().height() - self.theme.grid(5)  # its frame
            self.resize(1280, min(800, high))
        if self._settings.last_trainee in self.roster.known:
            self.roster.choose(self._settings.last_trainee)
        keys = {entry.key for entry in WORK_AREAS} - {TRAINEE}
        last = self._settings.last_screen
        if last not in keys or (last != PROGRESS and not self._record.attached):
            last = DESK
        if last == DESK or self._record.attached:
            self._open_on(last)
        else:
            self.area_waiting = last

    def _open_on(self, key: str) -> None:
        self.areas.show_area(key)
        if self.areas.area is not None:
            self.areas.area.setFocus(Qt.FocusReason.OtherFocusReason)

    def _resume(self) -> None:
        """The file is open: the area that waited for it, and what was being typed when the program
        was killed.
        """
        if self.area_waiting:
            waiting, self.area_waiting = self.area_waiting, ""
            self._open_on(waiting)
            if self.areas.area is not None:
                self.areas.area.drawn.connect(partial(self._breathe, self.waiting_painted))
        from desktop.planning.kept_drafts import at_work

        draft = at_work(self._record.repository)
        if draft is not None and draft.trainee_id in self.roster.known:
            self.roster.choose(draft.trainee_id)
            self.areas.resume(draft)
            self._record.say(self.tr("Here is what was being typed when the program ended."))

    def paintEvent(self, event: QPaintEvent) -> None:
        super().paintEvent(event)
        if not self._was_painted:
            self._was_painted = True
            self._breathe(self.painted)

    def _breathe(self, then: SignalInstance) -> None:
        """What was painted is on the screen before ``then`` is told."""
        breath = QTimer(self)
        breath.setSingleShot(True)
        breath.timeout.connect(then)
        breath.timeout.connect(breath.deleteLater)
        breath.start(_BREATH_MS)

    def closeEvent(self, event: QCloseEvent) -> None:
        if not self._left:
            self.leave()
        super().closeEvent(event)

    def leave(self) -> None:
        """Keep what is being typed, and how the window stands, once before it goes."""
        self._left = True
        self.areas.leave()
        self._settings.geometry = bytes(self.saveGeometry().data())
        self._settings.last_trainee = self.roster.trainee_id
        self._settings.last_screen = self.areas.key
        for key, left in self.areas.to_recall().items():
            if left != self._settings.recalled(key):
                self._settings.keep(key, left)
