"""One set edited in a long record: in the window, by real keys, until what changed is painted.

The session is one on record, opened in the form. A key changes a set: its cell is painted anew.
Saving says first what it changes, where it changes anything; then what comes next is shown, and
the cautions above.
"""

from __future__ import annotations

import statistics
import tempfile
import time
from collections.abc import Callable, Iterator
from pathlib import Path

from PySide6.QtCore import QEvent, QObject, Qt, qInstallMessageHandler
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLineEdit

from db.database import Database
from db.repository import Repository
from tests.benches.measure import Line, growth
from tests.benches.people import TODAY, one_for_weeks
from views.gallery import ForgottenSettings
from views.main_window import MainWindow
from views.record import Record
from views.session_form import SessionForm
from views.theme import Scheme, Theme
from views.work_areas import SESSION

FRAME_MS, TARGETS_MS = 16.7, 50.0
WEEKS = (5, 52, 520)
ROUNDS = 9


def lines() -> Iterator[Line]:
    """A digit, what it changes, and saving, with ten years on record; and how each grows."""
    qInstallMessageHandler(lambda *_: None)
    application = QApplication.instance() or QApplication([])
    assert isinstance(application, QApplication)
    told: list[tuple[float, float, float]] = []
    with tempfile.TemporaryDirectory() as folder:
        for weeks in WEEKS:
            path = one_for_weeks(Path(folder) / f"{weeks}.db", weeks)
            told.append(_edited(path, application))
    cell, effects, saved = told[-1]
    name = "a set edited in a record of 10 years"
    yield Line(f"{name}: its cell painted", cell, goal=FRAME_MS)
    yield Line(f"{name}: what that changes is said", effects, goal=TARGETS_MS)
    yield Line(f"{name}: saved, targets and banner painted", saved, goal=TARGETS_MS)
    for what, times in zip(
        ("cell", "what it changes", "saved"), zip(*told, strict=True), strict=True
    ):
        yield growth(f"a set edited, {what}, by weeks on record", WEEKS, times)


def _edited(path: Path, application: QApplication) -> tuple[float, float, float]:
    """Milliseconds until the cell is painted, until effects are said, and until all is saved."""
    repository = Repository(Database.open(path))
    record = Record(repository)
    window = MainWindow(record, TODAY, Theme(Scheme.LIGHT, calm=True), ForgottenSettings())
    window.resize(1280, 800)
    window.show()
    window.roster.choose(1)
    window.show_trainee(1)
    window.show_area(SESSION)
    form = window.areas.area
    assert isinstance(form, SessionForm)
    session_id = repository.sessions(1)[-1].id
    assert session_id is not None
    for _ in range(5):
        QTest.qWait(50)
        window.activateWindow()
    hand = _Hand(application)
    hand.wait_for_roster(record)
    digits = iter("456" * ROUNDS)
    cells, effects, saves = [], [], []
    for _ in range(ROUNDS):
        form.show_session(session_id)
        hand.settle()
        hand.press(Qt.Key.Key_Right)
        cells.append(hand.painted(lambda: hand.type(next(digits))))
        hand.settle()
        effects.append(hand.settled(lambda: hand.press(Qt.Key.Key_Return, save=True)))
        saved = 0.0
        if not _is_saved(form):
            saved = hand.settled(lambda: hand.press(Qt.Key.Key_Return))
        assert _is_saved(form), "the set was not saved"
        saves.append(saved or effects.pop())
        hand.wait_for_roster(record)
    window.close()
    window.deleteLater()
    repository.database.close()
    return statistics.median(cells), statistics.median(effects or [0.0]), statistics.median(saves)


def _is_saved(form: SessionForm) -> bool:
    return form.showing_outcomes


class _Hand(QObject):
    """Presses keys where the cursor is, and watches the field being painted."""

    def __init__(self, application: QApplication) -> None:
        super().__init__()
        self._application = application
        self._paints = 0

    def type(self, letter: str) -> None:
        """Type a letter over what is selected."""
        QTest.keyClicks(self._focus(), letter)

    def press(self, key: Qt.Key, *, save: bool = False) -> None:
        """Press a key, with Ctrl to save."""
        held = Qt.KeyboardModifier.ControlModifier if save else Qt.KeyboardModifier.NoModifier
        QTest.keyClick(self._focus(), key, held)

    def settle(self) -> None:
        """Let everything that waits be done and painted."""
        for _ in range(3):
            self._application.processEvents()

    def wait_for_roster(self, record: Record) -> None:
        """Let what follows an edit on the desk be done."""
        while not record.roster_complete:
            self._application.processEvents()

    def painted(self, do: Callable[[], None]) -> float:
        """Milliseconds until the field with the cursor is painted."""
        field = self._focus()
        assert isinstance(field, QLineEdit)
        before, paints = field.text(), self._paints
        field.installEventFilter(self)
        began = time.perf_counter()
        do()
        while self._paints == paints:
            self._application.processEvents()
        took = (time.perf_counter() - began) * 1000
        field.removeEventFilter(self)
        assert field.text() != before, "nothing was typed"
        return took

    def settled(self, do: Callable[[], None]) -> float:
        """Milliseconds until everything that follows is done and painted."""
        began = time.perf_counter()
        do()
        self.settle()
        return (time.perf_counter() - began) * 1000

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        self._paints += event.type() is QEvent.Type.Paint
        return super().eventFilter(watched, event)

    def _focus(self) -> QLineEdit:
        target = self._application.focusWidget()
        assert target is not None
        return target  # type: ignore[return-value]
