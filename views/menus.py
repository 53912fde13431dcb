"""The menu bar: what can be done, each with its mnemonic and key."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal
from PySide6.QtGui import QAction, QActionGroup, QKeySequence
from PySide6.QtWidgets import QMainWindow, QMenu

from views.record import Record
from views.theme import Scheme, Theme
from views.work_areas import DAYS_AWAY, GOALS, IMPORT, TRAINEE, UNNUMBERED, WORK_AREAS, area_word

if TYPE_CHECKING:
    from views.guide import Guide
    from views.keyboard_map import Keys

_TEXT_STEP = 25
LOCK_MINUTES = (0, 5, 15, 30)
"""After how many idle minutes the window may be locked; 0 is never."""

LANGUAGE_NAMES = {"en": "&English", "de": "&Deutsch", "es": "Españ&ol"}
"""Each language as it calls itself, whatever the screens speak."""


class Menus(QObject):
    """Builds the menus of a window and says by signals what was chosen."""

    area_chosen = Signal(str)
    new_trainee = Signal()
    search = Signal()
    step = Signal(int)
    map_wanted = Signal()
    open_wanted = Signal()
    demo_wanted = Signal()
    backup_wanted = Signal()
    keeping_wanted = Signal(str)
    part_wanted = Signal(str)
    give_wanted = Signal()
    language_wanted = Signal(str)

    def __init__(self, window: QMainWindow, record: Record, theme: Theme) -> None:
        super().__init__(window)
        self._window, self._theme = window, theme
        self._menus: list[QMenu] = []
        self._areas: dict[str, QAction] = {}
        self._locks: dict[int, QAction] = {}
        self._shown = ""
        self.guide: Guide | None = None
        self._file()
        self.undo = record.undo_stack.createUndoAction(self, self.tr("&Undo"))
        self.redo = record.undo_stack.createRedoAction(self, self.tr("&Redo"))
        self._edit()
        self._trainee()
        self._view()
        self._help()

    def add_below_import(self, menu: QMenu) -> None:
        """Put a menu under File > Import."""
        self._menus[0].insertMenu(self.below_import, menu)

    def show_guide(self) -> None:
        """Open the guide at the page of the area shown."""
        from views.guide import Guide

        if self.guide is None:
            self.guide = Guide(self._theme, self._window)
        self.guide.open_page(self._shown)

    def mark_area(self, key: str) -> None:
        """Tick the area that is shown."""
        self._shown = key
        for each, action in self._areas.items():
            action.setChecked(each == key)

    def key_groups(self) -> list[tuple[str, Keys]]:
        """Every action with a key, by menu, and the keys that hold everywhere."""
        from views.keyboard_map import keys_of

        groups: list[tuple[str, Keys]] = []
        for menu in self._menus:
            actions = [*menu.actions()]
            for action in menu.actions():
                below = action.menu()
                if isinstance(below, QMenu):
                    actions += below.actions()
            if keys := keys_of(actions):
                groups.append((menu.title().replace("&", ""), keys))
        everywhere = [
            (self.tr("Next field"), self.tr("Return")),
            (self.tr("Next part of the screen"), self.tr("Tab")),
            (self.tr("Menus"), self.tr("Alt and the letter")),
        ]
        return [*groups, (self.tr("Everywhere"), everywhere)]

    def _menu(self, title: str) -> QMenu:
        menu = self._window.menuBar().addMenu(title)
        self._menus.append(menu)
        return menu

    def _add(self, menu: QMenu, text: str, slot: Callable[[], object], key: str = "") -> QAction:
        action = QAction(text, self)
        if key:
            action.setShortcut(QKeySequence(key))
        action.triggered.connect(lambda _checked=False: slot())
        menu.addAction(action)
        return action

    def _file(self) -> None:
        menu = self._menu(self.tr("&File"))
        self._add(menu, self.tr("&Open data file…"), self.open_wanted.emit, "Ctrl+O")
        self._add(menu, self.tr("&Back up now"), self.backup_wanted.emit, "Ctrl+B")
        self._keeping(menu)
        menu.addSeparator()
        self._add(menu, self.tr("&Import…"), lambda: self.area_chosen.emit(IMPORT), "Ctrl+I")
        self._add(
            menu,
            self.tr("&Take over everything…"),
            lambda: self.keeping_wanted.emit("take over"),
        )
        self.below_import = menu.addSeparator()
        self._add(menu, self.tr("Open the &demo scenario"), self.demo_wanted.emit)
        menu.addSeparator()
        self._add(menu, self.tr("&Quit"), self._window.close, "Ctrl+Q")

    def _keeping(self, menu: QMenu) -> None:
        wish = self.keeping_wanted.emit
        self._add(menu, self.tr("Bac&kups…"), lambda: wish("backups"))
        self._add(menu, self.tr("&Passphrase…"), lambda: wish("passphrase"))
        self._add(menu, self.tr("&Lock"), lambda: wish("lock"), "Ctrl+Shift+L")
        below = menu.addMenu(self.tr("Lock &when idle"))
        group = QActionGroup(self)
        for minutes in LOCK_MINUTES:
            text = self.tr("After {count} minutes") if minutes else self.tr("Never")
            action = self._add(
                below,
                text.format(count=minutes),
                lambda after=minutes: wish(f"lock after {after}"),  # type: ignore[misc]
            )
            action.setCheckable(True)
            group.addAction(action)
            self._locks[minutes] = action

    def mark_lock(self, minutes: int) -> None:
        """Tick after how many idle minutes the window is locked."""
        for each, action in self._locks.items():
            action.setChecked(each == minutes)

    def _edit(self) -> None:
        menu = self._menu(self.tr("&Edit"))
        self.undo.setShortcut(QKeySequence("Ctrl+Z"))
        self.redo.setShortcut(QKeySequence("Ctrl+Shift+Z"))
        menu.addActions([self.undo, self.redo])

    def _trainee(self) -> None:
        menu = self._menu(self.tr("&Trainee"))
        self._add(menu, self.tr("&Find…"), self.search.emit, "Ctrl+L")
        self._add(menu, self.tr("&Next"), lambda: self.step.emit(1), "Alt+Down")
        self._add(menu, self.tr("&Previous"), lambda: self.step.emit(-1), "Alt+Up")
        menu.addSeparator()
        self._add(menu, self.tr("&Add…"), self.new_trainee.emit, "Ctrl+N")
        self._add(menu, self.tr("&Edit"), lambda: self.area_chosen.emit(TRAINEE), "Ctrl+E")
        part = self.part_wanted.emit
        self._add(menu, self.tr("Set a &goal…"), lambda: part(GOALS), "Ctrl+Shift+G")
        self._add(menu, self.tr("Note &days away…"), lambda: part(DAYS_AWAY), "Ctrl+Shift+A")
        menu.addSeparator()
        self._add(menu, self.tr("Gi&ve them their data…"), self.give_wanted.emit)
        self._add(menu, self.tr("E&rase for good…"), lambda: self.keeping_wanted.emit("erase"))

    def _view(self) -> None:
        menu = self._menu(self.tr("&View"))
        group = QActionGroup(self)
        numbered = [entry for entry in WORK_AREAS if entry.key not in UNNUMBERED]
        for place, entry in enumerate(numbered, start=1):
            action = self._add(
                menu,
                area_word(entry.key),
                lambda key=entry.key: self.area_chosen.emit(key),  # type: ignore[misc]
                f"Ctrl+{place}",
            )
            action.setCheckable(True)
            group.addAction(action)
            self._areas[entry.key] = action
        menu.addSeparator()
        self._colours(menu)
        self._languages = menu.addMenu(self.tr("Lan&guage"))
        percent = self._theme
        self._add(menu, self.tr("&Larger text"), lambda: self._resize(_TEXT_STEP), "Ctrl++")
        self._add(menu, self.tr("S&maller text"), lambda: self._resize(-_TEXT_STEP), "Ctrl+-")
        self._add(menu, self.tr("&Usual text"), lambda: percent.resize_text(100), "Ctrl+0")

    def _colours(self, menu: QMenu) -> None:
        below = menu.addMenu(self.tr("&Colours"))
        group = QActionGroup(self)
        texts = {
            Scheme.SYSTEM: self.tr("As the &system"),
            Scheme.LIGHT: self.tr("&Light"),
            Scheme.DARK: self.tr("&Dark"),
        }
        for scheme, text in texts.items():
            action = self._add(below, text, lambda chosen=scheme: self._theme.choose(chosen))  # type: ignore[misc]
            action.setCheckable(True)
            action.setChecked(scheme is self._theme.scheme)
            group.addAction(action)

    def offer_languages(self, codes: Sequence[str], chosen: str) -> None:
        """Fill the menu of languages; ``chosen`` is a code, or "" for the system's."""
        self._languages.clear()
        group = QActionGroup(self._languages)
        texts = {"": self.tr("As the &system")} | {code: LANGUAGE_NAMES[code] for code in codes}
        for code, text in texts.items():
            action = self._add(
                self._languages,
                text,
                lambda wish=code: self.language_wanted.emit(wish),  # type: ignore[misc]
            )
            action.setCheckable(True)
            action.setChecked(code == chosen)
            group.addAction(action)

    def _resize(self, by: int) -> None:
        self._theme.resize_text(self._theme.text_percent + by)

    def _help(self) -> None:
        menu = self._menu(self.tr("&Help"))
        self._add(menu, self.tr("&Keyboard map"), self.map_wanted.emit, "F1")
        self._add(menu, self.tr("&Guide"), self.show_guide, "Shift+F1")
