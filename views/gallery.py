"""Draws every screen into PNG files: for the eye, for the documentation, and without a display."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from datetime import date
from pathlib import Path

from PySide6.QtCore import QEventLoop, QSize, QTimer
from PySide6.QtWidgets import QApplication

from views.main_window import MainWindow
from views.record import Record
from views.theme import Scheme, Theme
from views.work_areas import WORK_AREAS

_SETTLE_MS = 60
_ROUNDS = 3  # what is fetched in the first may still lay itself out in the next


class ForgottenSettings:
    """Window settings that start empty and are kept nowhere."""

    geometry: bytes = b""
    last_trainee: int | None = None
    last_screen: str = ""

    def __init__(self) -> None:
        self._left: dict[str, str] = {}

    def recalled(self, screen: str) -> str:
        """What was kept of how a screen was left."""
        return self._left.get(screen, "")

    def keep(self, screen: str, left: str) -> None:
        """Keep how a screen was left, for as long as these settings live."""
        self._left[screen] = left


def draw_all(
    record: Record,
    today: date,
    out: Path,
    *,
    dark: bool = False,
    text_percent: int = 100,
    size: tuple[int, int] = (1280, 800),
    trainee: str = "",
    screens: Sequence[str] = (),
) -> tuple[Path, ...]:
    """Draw every work area (or those named) as OUT/AREA-light.png or -dark.png; their paths.

    Shown is the trainee of that name, else the first one of the roster. Needs a QApplication.
    """
    out.mkdir(parents=True, exist_ok=True)
    drawn: list[Path] = []
    with _window(record, today, dark, text_percent, size) as window:
        entries = record.roster(today)
        named = [entry for entry in entries if entry.trainee.name == trainee]
        for entry in (named or list(entries))[:1]:
            window.roster.choose(entry.trainee.id)
        for key in screens or [entry.key for entry in WORK_AREAS]:
            window.show_area(key)
            for _ in range(_ROUNDS):
                settle()
            drawn.append(save(window, out / _name(key, dark, text_percent)))
    return tuple(drawn)


def save(window: MainWindow, path: Path) -> Path:
    """The window as it stands, as a PNG."""
    if not window.grab().save(str(path), "PNG"):
        raise OSError(f"the picture cannot be written: {path}")
    return path


def settle(milliseconds: int = _SETTLE_MS) -> None:
    """Let layouts, timers and slices of work run."""
    loop = QEventLoop()
    QTimer.singleShot(milliseconds, loop.quit)
    loop.exec()


@contextmanager
def _window(
    record: Record, today: date, dark: bool, text_percent: int, size: tuple[int, int]
) -> Iterator[MainWindow]:
    application = QApplication.instance()
    if not isinstance(application, QApplication):
        raise RuntimeError("make a QApplication first")
    theme = Theme(Scheme.DARK if dark else Scheme.LIGHT, text_percent, calm=True)
    theme.apply(application)
    window = MainWindow(record, today, theme, ForgottenSettings())
    window.resize(QSize(*size))
    window.show()
    settle()
    while not record.roster_complete:
        settle()
    try:
        yield window
    finally:
        window.close()
        window.deleteLater()
        settle(0)


def _name(key: str, dark: bool, text_percent: int) -> str:
    size = "" if text_percent == 100 else f"-{text_percent}"
    return f"{key}-{'dark' if dark else 'light'}{size}.png"
