"""python -m desktop [--database FILE] [FILE] opens the window, a file that comes in with it; with a
verb it works without one.
"""

from __future__ import annotations

import gc
import os
import sys
from collections.abc import Sequence
from datetime import date
from importlib import import_module
from pathlib import Path
from typing import TYPE_CHECKING

from desktop.startup_guard import (
    has_display,
    refuse_crashing_pair,
    refuse_without_display,
    refuse_without_library,
)
from desktop.straight_imports import import_straight

if TYPE_CHECKING:
    from db.repository import Repository
    from desktop.verbs.terminal import Sheets

_DATABASE = "--database"


def main(arguments: Sequence[str] | None = None) -> int:
    """Open the window, or hand over to the command line; the exit code."""
    given = list(sys.argv[1:] if arguments is None else arguments)
    refuse_crashing_pair()
    try:
        return _started(given)
    except ImportError as error:
        refuse_without_library(error)
        raise


def _started(given: Sequence[str]) -> int:
    wanted, database, arriving = _window_wanted(given)
    if not wanted:
        return _command_line(given)
    refuse_without_display()
    # What is imported now stays: to look for garbage meanwhile takes time and finds none. The
    # window has it looked for again once it is painted.
    gc.disable()
    import_straight()
    from desktop.application import run

    return run(database, arriving)


def _window_wanted(given: Sequence[str]) -> tuple[bool, Path | None, Path | None]:
    """Whether nothing but files are named, and which: the data file, and one to bring in, as a
    double click names it. Verbs have no suffix.
    """
    match list(given):
        case []:
            return True, None, None
        case [option, path, *rest] if option == _DATABASE:
            wanted, _, arriving = _window_wanted(rest)
            return wanted, Path(path), arriving
        case [option, *rest] if option.startswith(f"{_DATABASE}="):
            return _window_wanted([_DATABASE, option.partition("=")[2], *rest])
        case [path] if not path.startswith("-") and Path(path).suffix:
            return (True, Path(path), None) if path.endswith(".db") else (True, None, Path(path))
    return False, None, None


def _command_line(given: Sequence[str]) -> int:
    """The command line knows neither screens nor Qt: it is handed the words, which need QtCore
    only, and ways to make sheets and pictures, which are fetched when they are asked for. It speaks
    English, so that days and numbers are English too.
    """
    from PySide6.QtCore import QLocale

    from desktop import command_line
    from desktop.translators import english_for
    from views import reason_texts

    before = QLocale()
    QLocale.setDefault(english_for(QLocale.system()))
    try:
        return command_line.main(given, reason_texts, _sheets, _pictures)
    finally:
        QLocale.setDefault(before)


def _sheets() -> Sheets:
    sheets: Sheets = import_module("views.sheets")
    return sheets


def _pictures(repository: Repository, today: date, out: Path) -> tuple[Path, ...]:
    """Every screen as a picture; without a display they are drawn all the same."""
    if not has_display(os.environ, sys.platform):
        os.environ["QT_QPA_PLATFORM"] = "offscreen"
    from PySide6.QtCore import qInstallMessageHandler
    from PySide6.QtWidgets import QApplication

    from views.gallery import draw_all
    from views.record import Record

    application = QApplication.instance() or QApplication(sys.argv[:1])
    before = qInstallMessageHandler(_tell)
    try:
        drawn = draw_all(Record(repository), today, out)
        application.processEvents()
    finally:
        qInstallMessageHandler(before)
    return drawn


def _tell(_kind: object, _context: object, message: str) -> None:
    """Qt's messages, save that without a display a window's size limits mean nothing."""
    if not message.startswith("This plugin does not support"):
        print(message, file=sys.stderr)


if __name__ == "__main__":
    raise SystemExit(main())
