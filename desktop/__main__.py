"""python -m desktop [--database FILE] opens the window; with a verb it works without one."""

from __future__ import annotations

import os
import sys
from collections.abc import Sequence
from datetime import date
from importlib import import_module
from pathlib import Path
from typing import TYPE_CHECKING

from desktop.startup_guard import has_display, refuse_crashing_pair, refuse_without_display

if TYPE_CHECKING:
    from db.repository import Repository
    from desktop import command_line

_DATABASE = "--database"


def main(arguments: Sequence[str] | None = None) -> int:
    """Open the window, or hand over to the command line; the exit code."""
    given = list(sys.argv[1:] if arguments is None else arguments)
    refuse_crashing_pair()
    wanted, database = _window_wanted(given)
    if not wanted:
        return _command_line(given)
    refuse_without_display()
    from desktop.application import run

    return run(database)


def _window_wanted(given: Sequence[str]) -> tuple[bool, Path | None]:
    """Whether nothing but a data file is named, and which."""
    match list(given):
        case []:
            return True, None
        case [option, path] if option == _DATABASE:
            return True, Path(path)
        case [option] if option.startswith(f"{_DATABASE}="):
            return True, Path(option.partition("=")[2])
    return False, None


def _command_line(given: Sequence[str]) -> int:
    """The command line knows neither screens nor Qt: it is handed the words, which need QtCore
    only, and ways to make sheets and pictures, which are fetched when they are asked for.
    """
    from desktop import command_line
    from views import reason_texts

    return command_line.main(given, reason_texts, _sheets, _pictures)


def _sheets() -> command_line.Sheets:
    sheets: command_line.Sheets = import_module("views.sheets")
    return sheets


def _pictures(repository: Repository, today: date, out: Path) -> tuple[Path, ...]:
    """Every screen as a picture; without a display they are drawn all the same."""
    if not has_display(os.environ, sys.platform):
        os.environ["QT_QPA_PLATFORM"] = "offscreen"
    from PySide6.QtWidgets import QApplication

    from views.gallery import draw_all
    from views.record import Record

    application = QApplication.instance() or QApplication(sys.argv[:1])
    drawn = draw_all(Record(repository), today, out)
    application.processEvents()
    return drawn


if __name__ == "__main__":
    raise SystemExit(main())
