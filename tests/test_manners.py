"""The window behaves: mirrored, in large text, by mnemonics and keys; every control has a name."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from datetime import date
from pathlib import Path

import pytest
from PySide6.QtCore import QRect, Qt
from PySide6.QtGui import QAccessible, QAction, QShortcut
from PySide6.QtWidgets import (
    QAbstractItemView,
    QAbstractScrollArea,
    QAbstractSpinBox,
    QApplication,
    QHeaderView,
    QMenu,
    QWidget,
)
from pytestqt.qtbot import QtBot

from desktop.planning.everything_files import Held, Person
from desktop.planning.safe_keeping import SafeKeeping
from tests.scenario import TODAY, open_club
from views.erase_question import EraseQuestion
from views.gallery import ForgottenSettings
from views.guide import Guide
from views.lock_panel import LockPanel
from views.main_window import MainWindow
from views.notice import Notice
from views.passphrase import PassphraseChange, PassphraseQuestion
from views.record import Record
from views.safe_keeping import SafeKeepingPanel
from views.step_strip import StepStrip
from views.take_over import TakeOverPanel
from views.theme import Scheme, Theme
from views.work_areas import WORK_AREAS
from views.work_panel import WorkPanel

AREAS = [entry.key for entry in WORK_AREAS]
DESK_SIZE = (1280, 800)  # the smallest window that is promised to hold everything

pytestmark = pytest.mark.usefixtures("english")


@pytest.fixture(scope="module")
def record(tmp_path_factory: pytest.TempPathFactory, qapp: QApplication) -> Iterator[Record]:
    repository = open_club(tmp_path_factory.mktemp("club"), weeks=2)
    yield Record(repository)
    repository.database.close()


@pytest.fixture
def mirrored(qapp: QApplication) -> Iterator[None]:
    """Words are read from the right."""
    qapp.setLayoutDirection(Qt.LayoutDirection.RightToLeft)
    yield
    qapp.setLayoutDirection(Qt.LayoutDirection.LeftToRight)


def opened(qtbot: QtBot, record: Record, percent: int = 100) -> MainWindow:
    theme = Theme(Scheme.LIGHT, percent, calm=True)
    theme.apply(QApplication.instance())  # type: ignore[arg-type]
    window = MainWindow(record, TODAY, theme, ForgottenSettings())
    qtbot.addWidget(window)
    window.resize(*DESK_SIZE)
    with qtbot.waitExposed(window):
        window.show()
    window.roster.step(1)
    return window


def shown_children(parent: QWidget) -> list[QWidget]:
    direct = Qt.FindChildOption.FindDirectChildrenOnly
    return [
        child
        for child in parent.findChildren(QWidget, options=direct)
        if child.isVisible() and not child.isWindow() and not child.size().isEmpty()
    ]


def overlapping(root: QWidget) -> list[str]:
    """Widgets side by side of which one covers a part of the other."""
    found = []
    for parent in (root, *root.findChildren(QWidget)):
        # A view places its own parts, scroll bars and headings; choosers lie upon a heading.
        if isinstance(parent, (QAbstractItemView, QAbstractScrollArea, QHeaderView)):
            continue
        children = shown_children(parent) if parent.isVisible() else []
        for place, one in enumerate(children):
            for other in children[place + 1 :]:
                both = one.geometry() & other.geometry()
                if both.width() > 1 and both.height() > 1:
                    pair = f"{type(one).__name__} and {type(other).__name__}"
                    where = f"{type(parent).__name__} of {type(parent.parent()).__name__}"
                    found.append(f"{pair} in {where}: {both.getRect()}")
    return found


def settled(qtbot: QtBot, window: QWidget) -> list[str]:
    """What still overlaps once layouts have run; the first one may take a few rounds."""
    for _ in range(20):
        qtbot.wait(30)
        found = overlapping(window)
        if not found:
            break
    return found


def place_in(window: QWidget, widget: QWidget) -> QRect:
    return QRect(widget.mapTo(window, widget.rect().topLeft()), widget.size())


# Read from the right


@pytest.mark.slow
def test_mirrored_nothing_covers_anything_and_figures_stay_as_they_are(
    qtbot: QtBot, record: Record, mirrored: None
) -> None:
    window = opened(qtbot, record)
    assert place_in(window, window.roster).left() > place_in(window, window.areas).left()
    for key in AREAS:
        window.show_area(key)
        assert settled(qtbot, window) == [], key
    strips = window.findChildren(StepStrip)
    assert strips
    assert {strip.layoutDirection() for strip in strips} == {Qt.LayoutDirection.LeftToRight}


# Text from 100 to 200 %


@pytest.mark.slow
@pytest.mark.parametrize("percent", [100, 150, 200])
def test_every_screen_fits_the_smallest_window_in_any_size_of_text(
    qtbot: QtBot, record: Record, percent: int
) -> None:
    window = opened(qtbot, record, percent)
    for key in AREAS:
        window.show_area(key)
        left = settled(qtbot, window)
        assert window.width() == DESK_SIZE[0], f"{key} wants {window.width()} pixels"
        if percent <= 150:
            assert left == [], key


# Menus and keys


def menus_of(window: MainWindow) -> list[tuple[str, list[QAction]]]:
    """Every menu with its entries, the bar itself first."""
    window.export.menu.aboutToShow.emit()
    bar = window.menuBar()
    found = [("menu bar", bar.actions())]
    for menu in bar.findChildren(QMenu):
        actions = [action for action in menu.actions() if not action.isSeparator()]
        if actions:
            found.append((menu.title(), actions))
    return found


def mnemonic(text: str) -> str:
    plain = text.replace("&&", "")
    at = plain.find("&")
    return plain[at + 1].casefold() if 0 <= at < len(plain) - 1 else ""


def test_no_two_entries_of_a_menu_share_a_mnemonic(qtbot: QtBot, record: Record) -> None:
    window = opened(qtbot, record)
    for title, actions in menus_of(window):
        letters = [letter for action in actions if (letter := mnemonic(action.text()))]
        assert len(set(letters)) == len(letters), (title, [each.text() for each in actions])


def test_every_entry_of_the_menus_has_a_mnemonic(qtbot: QtBot, record: Record) -> None:
    window = opened(qtbot, record)
    listed = {"&Export", "Lock &when idle"}  # lists of names and of minutes
    without = [
        action.text()
        for title, actions in menus_of(window)
        if title not in listed and "anguage" not in title
        for action in actions
        if not mnemonic(action.text())
    ]
    assert without == []


def test_the_keyboard_map_tells_every_key_of_the_menus(qtbot: QtBot, record: Record) -> None:
    window = opened(qtbot, record)
    told = {key for _, group in window.menus.key_groups() for _, key in group}
    there = {
        action.shortcut().toString()
        for action in window.findChildren(QAction)
        if not action.shortcut().isEmpty()
    }
    assert there <= told


@pytest.mark.parametrize("key", AREAS)
def test_no_key_means_two_things_on_a_screen(qtbot: QtBot, record: Record, key: str) -> None:
    window = opened(qtbot, record)
    window.show_area(key)
    area = window.areas.area
    assert area is not None
    keys = [
        (shortcut.key().toString(), shortcut.parent())
        for shortcut in (*window.findChildren(QShortcut), *area.findChildren(QShortcut))
        if shortcut.isEnabled() and shortcut.context() is Qt.ShortcutContext.WindowShortcut
    ]
    shown = {
        text for text, parent in keys if isinstance(parent, QWidget) and parent.isVisibleTo(window)
    }
    menu = {
        action.shortcut().toString()
        for action in window.findChildren(QAction)
        if not action.shortcut().isEmpty()
    }
    assert shown & menu == set()


# Names of controls outside the window itself


def dialogs(record: Record, theme: Theme, window: MainWindow) -> list[Callable[[], QWidget]]:
    held = Held(2, date(2026, 3, 2))
    keeping = SafeKeeping(Path("club.db"), Path("backups"))
    return [
        lambda: SafeKeepingPanel(theme, keeping, TODAY),
        lambda: TakeOverPanel(theme, "all.json", [Person("Bow", None, held)], TODAY),
        lambda: EraseQuestion(theme, "Bow"),
        lambda: PassphraseQuestion(theme, "It is locked."),
        lambda: PassphraseChange(theme, there=True),
        lambda: LockPanel(theme, window, ""),
        lambda: Notice(theme, "Something is wrong.", "Do something.", "details"),
        lambda: Guide(theme, window),
        lambda: WorkPanel(theme, window),
    ]


def test_every_control_of_every_dialog_has_a_name(qtbot: QtBot, record: Record) -> None:
    window = opened(qtbot, record)
    nameless = []
    for make in dialogs(record, window.theme, window):
        dialog = make()
        qtbot.addWidget(dialog)
        dialog.show()
        for widget in dialog.findChildren(QWidget):
            takes = widget.focusPolicy() & Qt.FocusPolicy.TabFocus
            if not takes or not widget.isVisible() or isinstance(widget.parent(), QAbstractSpinBox):
                continue
            interface = QAccessible.queryAccessibleInterface(widget)
            if not interface.text(QAccessible.Text.Name).strip():
                nameless.append(f"{type(widget).__name__} in {type(dialog).__name__}")
        dialog.close()
    assert nameless == []


def test_tab_reaches_every_control_of_every_screen(qtbot: QtBot, record: Record) -> None:
    window = opened(qtbot, record)
    for key in AREAS:
        window.show_area(key)
        qtbot.wait(10)
        start: QWidget = window.roster.filter
        chain, widget = {start}, start.nextInFocusChain()
        while widget is not start and widget is not None and len(chain) < 5000:
            chain.add(widget)
            widget = widget.nextInFocusChain()
        missing = [
            type(each).__name__
            for each in window.findChildren(QWidget)
            if each.focusPolicy() & Qt.FocusPolicy.TabFocus
            and each.isVisible()
            and each not in chain
        ]
        assert missing == [], key
