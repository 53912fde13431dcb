"""Typing a session by real keys: how many it takes, and how long each is felt.

A key is timed until what it changed is painted, in the form with three years of history and the
draft kept in the data file; the floor is the same key in a bare line edit.
"""

from __future__ import annotations

import statistics
import tempfile
import time
from collections.abc import Iterator
from datetime import timedelta
from pathlib import Path

from PySide6.QtCore import Qt, qInstallMessageHandler
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLineEdit, QWidget

from db.database import Database
from db.repository import Repository
from tests.benches.measure import Line
from tests.benches.people import TODAY, one_for_years
from views.record import Record
from views.session_form import SessionForm
from views.theme import Scheme, Theme

GOAL_KEYS, GOAL_MS = 40, 8.0
YEARS = 3
_MONDAY = TODAY + timedelta(days=7 - TODAY.weekday())
_KEY = Qt.Key
_CTRL = Qt.KeyboardModifier.ControlModifier
_NONE = Qt.KeyboardModifier.NoModifier

Stroke = tuple[Qt.Key | str, Qt.KeyboardModifier]


def strokes(text: str, *keys: Qt.Key) -> list[Stroke]:
    """A text, then keys, none with a modifier."""
    return [*((letter, _NONE) for letter in text), *((key, _NONE) for key in keys)]


AS_ASKED_BUT_THREE: list[Stroke] = [
    *strokes("", _KEY.Key_Right, _KEY.Key_Right),
    *strokes("5", _KEY.Key_PageDown, _KEY.Key_PageDown, _KEY.Key_Right, _KEY.Key_Right),
    *strokes("4", _KEY.Key_PageDown, _KEY.Key_PageDown, _KEY.Key_Right),
    *strokes("12", _KEY.Key_F9),
    *strokes("7", _KEY.Key_Return),
    *strokes("55"),
    (_KEY.Key_Return, _CTRL),
    (_KEY.Key_Return, _CTRL),
]
"""Six exercises with three sets, three of them different, effort and minutes; saved, and on."""


class Hand:
    """Presses real keys, counts them, and times each until it is painted."""

    def __init__(self, application: QApplication) -> None:
        self._application = application
        self.times_ms: list[float] = []

    def press(self, *given: Stroke) -> None:
        """Press keys where the cursor is."""
        for key, modifier in given:
            target = self._application.focusWidget()
            assert target is not None
            began = time.perf_counter()
            if isinstance(key, str):
                QTest.keyClicks(target, key, modifier)
            else:
                QTest.keyClick(target, key, modifier)
            self._application.processEvents()
            self.times_ms.append((time.perf_counter() - began) * 1000)


def lines() -> Iterator[Line]:
    """Keys for a session as asked but three sets, milliseconds a key, and for saving."""
    qInstallMessageHandler(lambda *_: None)
    application = QApplication.instance() or QApplication([])
    assert isinstance(application, QApplication)
    with tempfile.TemporaryDirectory() as folder:
        path = one_for_years(Path(folder) / "years.db", YEARS)
        repository = Repository(Database.open(path))
        form = SessionForm(
            Record(repository), _MONDAY + timedelta(days=30), Theme(Scheme.LIGHT, calm=True)
        )
        form.resize(1040, 760)
        form.show()
        form.show_trainee(1)
        _stand(form)
        yield _count(application, form, repository)
        yield from _times(application, form)
        form.close()
        repository.database.close()


def _count(application: QApplication, form: SessionForm, repository: Repository) -> Line:
    form.open_day(_MONDAY)
    hand = Hand(application)
    hand.press(*AS_ASKED_BUT_THREE)
    (session,) = repository.session_on(1, _MONDAY)
    asked = [
        done.reps != (part.asked[at].reps)
        for part in session.lines
        for at, done in enumerate(part.sets)
    ]
    assert (len(asked), sum(asked)) == (18, 3), "another session was typed than was meant"
    assert (session.effort, session.minutes) == (7, 55)
    name = "keys: 6 exercises x 3 sets as asked, 3 sets different, saved, next"
    return Line(name, len(hand.times_ms), unit="keys", goal=GOAL_KEYS)


def _times(application: QApplication, form: SessionForm) -> Iterator[Line]:
    cells = [strokes(f"{number % 10}", _KEY.Key_Return) for number in range(18)]
    typed = [
        *(stroke for cell in cells for stroke in cell),
        *strokes("7", _KEY.Key_Return),
        *strokes("55", _KEY.Key_Return),
        *strokes("knee fine, slept badly, last set slow"),
    ]
    field = QLineEdit()
    rounds: list[list[float]] = []
    bare: list[list[float]] = []
    saving = Hand(application)
    for number in (3, 7, 10, 14, 17):
        form.open_day(_MONDAY + timedelta(days=number))
        _stand(form)
        form.typing.begin()
        rounds.append(_timed(application, typed))
        saving.press((_KEY.Key_Return, _CTRL))
        field.clear()
        _stand(field)
        field.setFocus()
        bare.append(_timed(application, typed))
        field.hide()
    name = f"a key in the session form, {YEARS} years on record, draft kept"
    yield Line(f"{name}: median", _at(rounds, 50), _at(bare, 50), "in a bare line edit")
    yield Line(f"{name}: 99th percentile", _at(rounds, 99), goal=GOAL_MS)
    yield Line("the same key in a bare line edit: 99th percentile", _at(bare, 99))
    yield Line("saving, with what comes next shown", statistics.median(saving.times_ms))


def _timed(application: QApplication, typed: list[Stroke]) -> list[float]:
    hand = Hand(application)
    hand.press(*typed)
    return hand.times_ms


def _stand(window: QWidget) -> None:
    """Show a window and make it the active one, which takes the platform some rounds."""
    window.show()
    for _ in range(5):
        QTest.qWait(50)
        window.activateWindow()


def _at(rounds: list[list[float]], percentile: int) -> float:
    """A percentile over the keys, each key by its median over the rounds: what others do on the
    machine meanwhile is no property of a key.
    """
    keys = [statistics.median(times) for times in zip(*rounds, strict=True)]
    return float(statistics.quantiles(keys, n=100)[percentile - 1])
