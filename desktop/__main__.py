"""python -m desktop [--database FILE] opens the window; with a verb it works without one."""

from __future__ import annotations

import sys
from collections.abc import Sequence
from importlib import import_module
from pathlib import Path

from desktop.startup_guard import refuse_crashing_pair, refuse_without_display

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
    only, and a way to fetch the sheets, which is used when one is asked for.
    """
    command_line = import_module("desktop.command_line")
    words = import_module("views.reason_texts")
    code: int = command_line.main(given, words=words, sheets=lambda: import_module("views.sheets"))
    return code


if __name__ == "__main__":
    raise SystemExit(main())
